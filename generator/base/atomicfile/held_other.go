//go:build !windows

package atomicfile

// held says that another program has a file open, which hinders nobody here.
func held(error) bool { return false }
