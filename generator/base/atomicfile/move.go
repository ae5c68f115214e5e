package atomicfile

import (
	"os"
	"time"

	"baybinder/generator/base/finding"
)

// waits are what Move waits between its attempts, a little over two seconds in
// all: as long as a scanner or a browser holds a file that it has just read.
var waits = milliseconds(10, 20, 50, 100, 200, 400, 600, 800)

func milliseconds(all ...int) []time.Duration {
	var out []time.Duration
	for _, n := range all {
		out = append(out, time.Duration(n)*time.Millisecond)
	}
	return out
}

// Move puts a file or a folder in another place. Where another program holds it,
// or a file in it, it tries again for a while (Windows; elsewhere nothing is
// held), and then says that a program has to be closed.
func Move(from, to string) error {
	return patient(func() error { return os.Rename(from, to) }, held, time.Sleep)
}

// patient does something again as long as its error says that a file is held.
func patient(do func() error, held func(error) bool, wait func(time.Duration)) error {
	err := do()
	for _, w := range waits {
		if err == nil || !held(err) {
			return err
		}
		wait(w)
		err = do()
	}
	if err != nil && held(err) {
		return finding.Refuse("%s: another program has a file open there (a browser, an editor, a scanner): close it and try again", err)
	}
	return err
}
