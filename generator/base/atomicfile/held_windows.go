package atomicfile

import (
	"errors"

	"golang.org/x/sys/windows"
)

// held says that another program has a file open: of a folder that is moved with
// an open file in it, Windows says that access is denied.
func held(err error) bool {
	return errors.Is(err, windows.ERROR_SHARING_VIOLATION) || errors.Is(err, windows.ERROR_LOCK_VIOLATION) || errors.Is(err, windows.ERROR_ACCESS_DENIED)
}
