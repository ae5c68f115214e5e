package source

import (
	"crypto/sha256"
	"fmt"
	"io"
	"regexp"
	"slices"
	"strings"

	"baybinder/generator/base/parallel"
	"baybinder/generator/base/position"
)

// sum is the hash of a file's path and bytes.
type sum [sha256.Size]byte

func sumOf(name string, data []byte) sum {
	h := sha256.New()
	fmt.Fprintf(h, "%d %s %d\n", len(name), name, len(data))
	_, _ = h.Write(data) // a hash takes all
	return sum(h.Sum(nil))
}

// Sum is the hash of everything in the manual from which a build can end
// otherwise: which files there are, the bytes of the texts as they were read,
// those of all others as they are now, and what could not be read and why. The
// times of files do not count.
func (t *Tree) Sum() []byte {
	all := sha256.New()
	for _, s := range slices.Concat(t.sums, t.sumOthers()) {
		_, _ = all.Write(s[:])
	}
	for _, p := range t.Problems {
		fmt.Fprintf(all, "%q %q\n", p.File.Path, p.Why)
	}
	return all.Sum(nil)
}

// Parts are the hashes of the procedures' and of the registers' files, by path;
// rest is that of everything else that is in Sum.
func (t *Tree) Parts() (procedures, registers map[string]string, rest []byte) {
	procedures, registers = map[string]string{}, map[string]string{}
	all := sha256.New()
	for i, name := range t.texts {
		switch folder, _, _ := strings.Cut(name, "/"); folder {
		case "procedures":
			procedures[name] = string(t.sums[i][:])
		case "register":
			registers[name] = string(t.sums[i][:])
		default:
			_, _ = all.Write(t.sums[i][:])
		}
	}
	for _, s := range t.sumOthers() {
		_, _ = all.Write(s[:])
	}
	return procedures, registers, all.Sum(nil)
}

// Dated says that a file may hold a date: a row of people, jobs or revisions, or a
// text with what reads as one, as such or in signs that stand for others. What is
// made of a manual without dates is the same on every day.
func (t *Tree) Dated() bool {
	for name := range t.Paths {
		top, _, _ := strings.Cut(name, "/")
		if top == "readings" || top == "records" || top == "revisions" || top == "revisions.csv" {
			return true
		}
	}
	return slices.ContainsFunc(t.Files, func(f *position.File) bool {
		return !strings.HasPrefix(f.Path, "procedures/") && (strings.Contains(f.Text, `\`) || date.MatchString(f.Text))
	})
}

var date = regexp.MustCompile(`[0-9]{4}-[0-9]{2}-[0-9]{2}`)

func (t *Tree) sumOthers() []sum {
	others := t.notRead()
	sums := make([]sum, len(others))
	parallel.Each(len(others), func(i int) { sums[i] = t.sumOther(others[i]) })
	return sums
}

// notRead are the files whose bytes are looked at when they are asked for:
// pictures, and records, of which every byte is proof.
func (t *Tree) notRead() []string {
	var names []string
	for name := range t.Paths {
		if !IsText(name) || strings.HasPrefix(name, "records/") {
			names = append(names, name)
		}
	}
	slices.Sort(names)
	return names
}

func (t *Tree) sumOther(name string) sum {
	f, err := t.Open(name)
	if err != nil {
		return sumOf(name, []byte("! "+reason(err)))
	}
	defer f.Close()
	h := sha256.New()
	n, err := io.Copy(h, f)
	if err != nil {
		return sumOf(name, []byte("! "+reason(err)))
	}
	return sumOf(fmt.Sprint(name, " ", n), h.Sum(nil))
}

// File is the text file of a path; nil where the manual has none that could be
// read.
func (t *Tree) File(name string) *position.File {
	i, found := slices.BinarySearchFunc(t.Files, name, func(f *position.File, name string) int { return strings.Compare(f.Path, name) })
	if !found {
		return nil
	}
	return t.Files[i]
}
