package collect

import (
	"bytes"
	"fmt"
	"os"
	"strings"
)

// keep writes a record into a manual's folder records as a new file, and says
// its name there. It is written beside its place first and then put there
// whole, where nothing stands; a record that is there already, byte for byte,
// is not written again. A folder that leads out of the manual is not written
// into.
func keep(manual, name string, text []byte) (string, error) {
	root, err := os.OpenRoot(manual)
	if err != nil {
		return "", err
	}
	defer root.Close()
	if err := root.Mkdir("records", 0o755); err != nil && !exists(err) {
		return "", err
	}
	for n := 1; ; n++ {
		file := name + ".json"
		if n > 1 {
			file = fmt.Sprintf("%s-%d.json", name, n)
		}
		old, err := root.ReadFile("records/" + file)
		if err == nil && bytes.Equal(old, text) {
			return file, nil
		}
		if err == nil {
			continue
		}
		if !os.IsNotExist(err) {
			return "", err
		}
		if err := put(root, "records/"+file, text); !exists(err) {
			return file, err
		}
	}
}

// put writes a file where there is none. It fails with fs.ErrExist where there
// is one by then.
func put(root *os.Root, name string, text []byte) (err error) {
	aside := strings.Replace(name, "/", "/.", 1) + ".new"
	_ = root.Remove(aside) // of a run that was ended
	f, err := root.OpenFile(aside, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644)
	if err != nil {
		return err
	}
	defer func() { _ = root.Remove(aside) }()
	_, err = f.Write(text)
	if err == nil {
		err = f.Sync()
	}
	if shut := f.Close(); err == nil {
		err = shut
	}
	if err != nil {
		return err
	}
	if err := root.Link(aside, name); err == nil || exists(err) {
		return err
	}
	return moved(root, aside, name)
}

// moved puts a file into its place where the folder knows no second name for a
// file: the place is taken first, so that nobody else's file stands there.
func moved(root *os.Root, aside, name string) error {
	f, err := root.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644)
	if err != nil {
		return err
	}
	if err := f.Close(); err != nil {
		return err
	}
	return root.Rename(aside, name)
}
