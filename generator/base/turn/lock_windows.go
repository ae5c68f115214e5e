package turn

import (
	"os"

	"golang.org/x/sys/windows"
)

// far is where the byte lies that is locked: other programs can read who has
// the turn, which stands before it.
const far = 1 << 30

// try takes the lock where that needs no waiting.
func try(f *os.File) bool { return lockFile(f, windows.LOCKFILE_FAIL_IMMEDIATELY) == nil }

// lock waits for the lock. To take it again is nothing: it is given back first.
func lock(f *os.File) error {
	_ = windows.UnlockFileEx(windows.Handle(f.Fd()), 0, 1, 0, &windows.Overlapped{Offset: far})
	return lockFile(f, 0)
}

func lockFile(f *os.File, how uint32) error {
	return windows.LockFileEx(windows.Handle(f.Fd()), windows.LOCKFILE_EXCLUSIVE_LOCK|how, 0, 1, 0, &windows.Overlapped{Offset: far})
}

// give gives the lock back and takes the file away, in that order, as an open
// file cannot be taken away here; where somebody waits for it, it stays.
func give(f *os.File, name string) {
	_ = f.Close()
	_ = os.Remove(name)
}
