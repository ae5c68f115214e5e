package kept

import (
	"io/fs"
	"syscall"
)

// Changed is when anything about a file changed last, in ns since 1970: no
// program can set it back.
func Changed(info fs.FileInfo) int64 {
	if s, is := info.Sys().(*syscall.Stat_t); is {
		return s.Ctim.Nano()
	}
	return 0
}
