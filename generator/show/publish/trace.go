package publish

import (
	"bytes"
	"crypto/sha256"
	"errors"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"slices"

	"baybinder/generator/base/kept"
)

// Trace is how the files of a site stand, by which it is known again. The times
// of files are those of the site's own disk.
type Trace map[string]Mark

// Mark is how a file stands. A change of its bytes shows in its size or in its
// times, as far as the disk's clock goes: of a file that is as young as the site
// the bytes themselves count.
type Mark struct {
	Size              int64
	Modified, Changed int64  // ns since 1970; Changed is 0 where the system does not tell
	Sum               []byte // of its bytes; nil where it is older than the site
}

var errNotWhole = errors.New("the site is not whole")

// TraceOf looks at the files that the program wrote into a site.
func TraceOf(to string) (Trace, error) {
	site, err := resolve(to)
	if err != nil {
		return nil, err
	}
	end, err := os.Lstat(filepath.Join(site, list)) // it was written behind all others
	if err != nil {
		return nil, err
	}
	ours, trace := ours(site), Trace{}
	err = walk(site, func(name string, info fs.FileInfo) error {
		if !ours[name] {
			return nil
		}
		m := markOf(info)
		if m.Modified >= end.ModTime().UnixNano() {
			if m.Sum, err = sumOf(filepath.Join(site, filepath.FromSlash(name))); err != nil {
				return err
			}
		}
		trace[name] = m
		return nil
	})
	delete(ours, "") // behind the last line's end
	if err == nil && len(trace) != len(ours) {
		err = errNotWhole
	}
	return trace, err
}

// Names are the files, in order.
func (t Trace) Names() []string {
	return slices.DeleteFunc(slices.Sorted(maps.Keys(t)), func(name string) bool { return name == list })
}

// Stands says whether a site stands as it did, and which files are in it that
// the program did not write.
func (t Trace) Stands(to string) (kept []string, stands bool) {
	site, err := resolve(to)
	if err != nil {
		return nil, false
	}
	seen := 0
	err = walk(site, func(name string, info fs.FileInfo) error {
		was, ours := t[name]
		switch {
		case ours && !was.is(filepath.Join(site, filepath.FromSlash(name)), info):
			return errNotWhole
		case ours:
			seen++
		case named(name):
			kept = append(kept, name)
		}
		return nil
	})
	return kept, err == nil && seen == len(t) && seen > 0
}

// is says that a file stands as it did.
func (m Mark) is(full string, info fs.FileInfo) bool {
	now := markOf(info)
	if !info.Mode().IsRegular() || now.Size != m.Size || now.Modified != m.Modified || now.Changed != m.Changed {
		return false
	}
	if m.Sum == nil {
		return true
	}
	sum, err := sumOf(full)
	return err == nil && bytes.Equal(sum, m.Sum)
}

func markOf(info fs.FileInfo) Mark {
	return Mark{Size: info.Size(), Modified: info.ModTime().UnixNano(), Changed: kept.Changed(info)}
}

func sumOf(full string) ([]byte, error) {
	data, err := os.ReadFile(full)
	sum := sha256.Sum256(data)
	return sum[:], err
}

// walk goes through the files of a site, in order.
func walk(site string, see func(name string, info fs.FileInfo) error) error {
	return filepath.WalkDir(site, func(full string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		rel, err := filepath.Rel(site, full)
		if err != nil {
			return err
		}
		info, err := d.Info()
		if err != nil {
			return err
		}
		return see(filepath.ToSlash(rel), info)
	})
}
