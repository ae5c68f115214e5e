//go:build unix

package editor_test

import (
	"syscall"
	"time"
)

// worked is the processor's time that this program took so far.
func worked() time.Duration {
	var u syscall.Rusage
	if err := syscall.Getrusage(syscall.RUSAGE_SELF, &u); err != nil {
		panic(err)
	}
	return time.Duration(u.Utime.Nano() + u.Stime.Nano())
}
