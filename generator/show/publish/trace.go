package publish

import (
	"bytes"
	"crypto/sha256"
	"encoding/binary"
	"errors"
	"io/fs"
	"os"
	"path/filepath"

	"baybinder/generator/base/kept"
)

// Standing is how a site stands.
type Standing struct {
	Sum   []byte   // of its files: names, sizes, times, and the bytes of those that are as young as the site
	Names []string // of the files that the program wrote, in the order of the folder
	Kept  []string // of those that it did not, but for hidden ones
}

var errNotWhole = errors.New("the site is not whole")

// Look says how a site stands. A change of a file's bytes shows in its size or in
// its times, as far as the disk's clock goes: of a file that is as young as the
// site the bytes themselves count.
func Look(to string) (*Standing, error) {
	site, err := resolve(to)
	if err != nil {
		return nil, err
	}
	end, err := os.Lstat(filepath.Join(site, list)) // it was written behind all others
	if err != nil {
		return nil, err
	}
	ours, s, sums := ours(site), &Standing{}, []byte(nil)
	err = walk(site, func(name string, info fs.FileInfo) error {
		if !ours[name] {
			if named(name) {
				s.Kept = append(s.Kept, name)
			}
			return nil
		}
		if name != list {
			s.Names = append(s.Names, name)
		}
		sums, err = marked(sums, name, info, filepath.Join(site, name), info.ModTime().Before(end.ModTime()))
		return err
	})
	delete(ours, "") // behind the last line's end
	if err == nil && len(s.Names)+1 != len(ours) {
		err = errNotWhole
	}
	sum := sha256.Sum256(sums)
	s.Sum = sum[:]
	return s, err
}

// Stands says whether a site stands as it did with this sum; nil where it does
// not.
func Stands(to string, sum []byte) *Standing {
	if s, err := Look(to); err == nil && bytes.Equal(s.Sum, sum) {
		return s
	}
	return nil
}

// marked adds how a file stands: its bytes too, unless it is older than the site.
func marked(sums []byte, name string, info fs.FileInfo, full string, older bool) ([]byte, error) {
	if !info.Mode().IsRegular() {
		return nil, errNotWhole
	}
	sums = append(append(sums, name...), 0)
	for _, n := range []int64{info.Size(), info.ModTime().UnixNano(), kept.Changed(info)} {
		sums = binary.LittleEndian.AppendUint64(sums, uint64(n))
	}
	if older {
		return sums, nil
	}
	data, err := os.ReadFile(full)
	sum := sha256.Sum256(data)
	return append(sums, sum[:]...), err
}

// walk goes through the files of a site, in order.
func walk(site string, see func(name string, info fs.FileInfo) error) error {
	return filepath.WalkDir(site, func(full string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		info, err := d.Info()
		if err != nil {
			return err
		}
		return see(filepath.ToSlash(full[len(site)+1:]), info)
	})
}
