package publish

import "golang.org/x/sys/unix"

// exchange swaps two folders in one move: there is no moment without a site.
func exchange(a, b string) error {
	return unix.Renameat2(unix.AT_FDCWD, a, unix.AT_FDCWD, b, unix.RENAME_EXCHANGE)
}
