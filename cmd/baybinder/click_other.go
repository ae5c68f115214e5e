//go:build !windows

package main

import (
	"io/fs"
	"os"
)

// doubleClicked says that the program was started from a desktop: nobody is at a
// terminal, nothing reads what it says, and there is a screen.
func doubleClicked() bool {
	for _, f := range []*os.File{os.Stdin, os.Stdout, os.Stderr} {
		info, err := f.Stat()
		if err != nil || isTerminal(f) || info.Mode()&fs.ModeNamedPipe != 0 {
			return false
		}
	}
	return os.Getenv("DISPLAY") != "" || os.Getenv("WAYLAND_DISPLAY") != ""
}

// stays keeps what was said in sight; here nobody sees it.
func stays() {}
