package bigmanual

import (
	"bytes"
	"errors"
	"io/fs"
	"os"
	"path/filepath"

	"github.com/yuin/goldmark"

	"baybinder/generator/base/parallel"
)

// Floor does what no build of a manual can leave out, on all processors as the
// build does: it reads the manual's files, runs bare goldmark over the
// procedures, and writes as many files of the same sizes as there are in site,
// to another folder.
func Floor(manual, site, to string) error {
	files, err := filesOf(manual)
	if err != nil {
		return err
	}
	pages, err := filesOf(site)
	if err != nil {
		return err
	}
	failed := make([]error, len(files)+len(pages))
	parallel.Each(len(files), func(i int) {
		data, err := os.ReadFile(filepath.Join(manual, files[i].name))
		failed[i] = err
		if filepath.Ext(files[i].name) == ".md" && err == nil {
			var out bytes.Buffer
			failed[i] = goldmark.Convert(data, &out)
		}
	})
	largest := 0
	for _, p := range pages {
		if err := os.MkdirAll(filepath.Dir(filepath.Join(to, p.name)), 0o755); err != nil {
			return err
		}
		largest = max(largest, p.size)
	}
	filler := bytes.Repeat([]byte("x"), largest)
	parallel.Each(len(pages), func(i int) {
		failed[len(files)+i] = os.WriteFile(filepath.Join(to, pages[i].name), filler[:pages[i].size], 0o644)
	})
	return errors.Join(failed...)
}

type sized struct {
	name string // below the folder
	size int    // bytes
}

// filesOf lists the files below a folder.
func filesOf(folder string) (files []sized, err error) {
	err = filepath.WalkDir(folder, func(full string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		info, err := d.Info()
		if err != nil {
			return err
		}
		name, err := filepath.Rel(folder, full)
		files = append(files, sized{name, int(info.Size())})
		return err
	})
	return files, err
}
