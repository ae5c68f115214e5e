//go:build !windows

package turn

import (
	"errors"
	"os"

	"golang.org/x/sys/unix"
)

// try takes the lock where that needs no waiting.
func try(f *os.File) bool { return unix.Flock(int(f.Fd()), unix.LOCK_EX|unix.LOCK_NB) == nil }

// lock waits for the lock. To take it again is nothing.
func lock(f *os.File) error {
	for {
		if err := unix.Flock(int(f.Fd()), unix.LOCK_EX); !errors.Is(err, unix.EINTR) {
			return err
		}
	}
}

// give takes the file away and gives the lock back, in that order: who waits
// sees that the file is gone. One of another account may have to stay.
func give(f *os.File, name string) {
	_ = os.Remove(name)
	_ = f.Close()
}
