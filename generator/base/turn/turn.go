// Package turn lets those who change one folder do so one after another.
//
// Who has the turn holds a lock on a file that is there only meanwhile. It says
// who that is, for those who wait. A lock ends with its process: the file that a
// killed one left keeps nobody out, and the next one takes it away. It may be
// written by everybody who may write in its folder, so that two accounts can
// share one.
package turn

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"os/user"
	"path/filepath"
	"strings"

	"baybinder/generator/base/finding"
)

// Waiting is what somebody is told who waits for a turn.
func Waiting(who string) finding.Words {
	return finding.Say("Waiting for %s, which is at work on the same folder. Ctrl-C ends the waiting.", who)
}

// In is Take for a whole folder. Where the folder is not there, there is nothing
// to change and no turn to wait for.
func In(folder string, waiting func(who string)) (done func(), err error) {
	if info, err := os.Stat(folder); err != nil || !info.IsDir() {
		return func() {}, nil
	}
	return Take(filepath.Join(folder, ".lock"), waiting)
}

// most is how much of the file is read for who has the turn, in bytes.
const most = 200

// Take waits until a lock file is nobody else's, and returns what gives it
// back. Where it must wait, waiting is told first for whom; it may be nil.
func Take(name string, waiting func(who string)) (done func(), err error) {
	for told := false; ; told = true {
		f, err := open(name)
		if err != nil {
			return nil, finding.Refuse("one at a time may change this, and the lock %s cannot be made: %s", name, err)
		}
		if !told && !try(f) {
			if waiting != nil {
				waiting(holder(f))
			}
		}
		if err := lock(f); err != nil {
			_ = f.Close()
			return nil, finding.Refuse("the lock %s: %s", name, err)
		}
		if stands(f, name) {
			sign(f)
			return func() { give(f, name) }, nil
		}
		_ = f.Close() // the one before took the file away: there is another, or none
	}
}

// open opens the lock file, and makes it where there is none. What is no plain
// file is not touched.
func open(name string) (*os.File, error) {
	for {
		f, err := os.OpenFile(name, os.O_RDWR|os.O_CREATE|os.O_EXCL, 0o666)
		if err == nil {
			_ = f.Chmod(0o666) // whatever this account usually keeps from others
			return f, nil
		}
		if !errors.Is(err, fs.ErrExist) {
			return nil, err
		}
		info, err := os.Lstat(name)
		if errors.Is(err, fs.ErrNotExist) {
			continue // it was taken away just now
		}
		if err == nil && !info.Mode().IsRegular() {
			return nil, finding.Refuse("there is something else of that name")
		}
		f, err = os.OpenFile(name, os.O_RDWR, 0)
		if errors.Is(err, fs.ErrPermission) {
			f, err = os.Open(name) // a lock needs no more
		}
		if !errors.Is(err, fs.ErrNotExist) {
			return f, err
		}
	}
}

// stands says that an open file is the one of that name still.
func stands(f *os.File, name string) bool {
	mine, err := f.Stat()
	if err != nil {
		return false
	}
	now, err := os.Lstat(name)
	return err == nil && os.SameFile(mine, now)
}

// sign writes into the file who has the turn. Where it cannot, those who wait
// are told less.
func sign(f *os.File) {
	who := "somebody"
	if u, err := user.Current(); err == nil {
		who = u.Username
	}
	if host, err := os.Hostname(); err == nil {
		who += " on " + host
	}
	_ = f.Truncate(0)
	_, _ = f.WriteAt(fmt.Appendf(nil, "%s, process %d\n", who, os.Getpid()), 0)
}

// holder is what a lock file says of who has the turn.
func holder(f *os.File) string {
	text, _ := io.ReadAll(io.NewSectionReader(f, 0, most))
	if who := strings.TrimSpace(string(text)); who != "" {
		return who
	}
	return "another run"
}
