package collect

import (
	"bytes"
	"fmt"
	"os"

	"baybinder/generator/base/atomicfile"
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
		if err := atomicfile.NewIn(root, "records/"+file, text, 0o644); !exists(err) {
			return file, err
		}
	}
}
