// Package source reads the files of a manual.
//
// It is the only package that reads the manual. Everything that was looked at
// is in the Tree that Read returns, so that a watcher can watch exactly that.
//
// # Decided where the format is silent
//
// Answers about a procedure are refused (exit 1) where something in its file, in what it performs,
// in its machine's file, in a register or in shop.yaml could not be read; what could not be read
// elsewhere is told first. Of the readings' commands those are refused for which people.csv, a
// plan, the roles or revisions.csv do not parse: what is lost there would ask too little of
// somebody. Rows lost from the record only ask for more: they are told first, and the answer ends
// with 1. In pictures/ only files are published that a browser shows, plays, prints or saves, by
// their ending. A drawing may carry the document type of SVG 1.x without declarations; every other
// one, any processing instruction and every text that is not UTF-8 is refused. A drawing that only
// drafts show is advice, and is published by no build. A cell of a table that begins with = + - @
// or a tab and is no number has an apostrophe before it. More than 100 brackets that stand open in
// a block are `syntax`.
package source

import (
	"errors"
	"io"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"sort"
	"strings"
	"unicode/utf8"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/parallel"
	"baybinder/generator/base/position"
)

// MaxFile is the size in bytes above which a text file is not read. A
// procedure of this size would be a book: it is a slip, not a procedure.
const MaxFile = 8 << 20

// Tree is what a manual's folder holds.
type Tree struct {
	Root     string           // the folder, as it was given
	Files    []*position.File // text files, by path
	Paths    map[string]bool  // every file that is not hidden, text or not
	Problems []Problem        // files that are there and could not be read, by path

	memory map[string]string // the files of a tree that is on no disk
	over   map[string]string // texts that stand over files: what an editor holds unsaved
	texts  []string          // the text files that are there, read or not, by path
	sums   []sum             // of their bytes, as they were read
}

// Problem is a file that is there and could not be read.
type Problem struct {
	File *position.File // empty text
	Why  finding.Words
	Mend finding.Words
}

// Read reads a manual's folder. The error says that there is no manual to
// read at all; what is wrong with a single file is one of the Problems.
func Read(root string) (*Tree, error) { return ReadOver(root, nil) }

// ReadOne reads one file of a manual alone; the tree has none where it cannot be
// read.
func ReadOne(root, name string) *Tree {
	files := map[string]string{}
	if text, err := os.ReadFile(filepath.Join(root, filepath.FromSlash(name))); err == nil {
		files[name] = string(text)
	}
	return FromText(files)
}

// ReadOver is Read with texts that stand over the files, by path inside the
// manual: what an editor holds and has not saved.
func ReadOver(root string, over map[string]string) (*Tree, error) {
	info, err := os.Stat(root)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil, finding.Refuse("there is no folder %s: name the manual's folder with --manual, or write a new one with begin", root)
	case err != nil:
		return nil, finding.Refuse("the manual's folder cannot be read: %s", err)
	case !info.IsDir():
		return nil, finding.Refuse("%s is a file, not a folder: name the folder that holds shop.yaml", root)
	}
	t := &Tree{Root: root, Paths: map[string]bool{}, over: over}
	texts, err := t.list()
	if err != nil {
		return nil, err
	}
	texts = t.unwritten(texts)
	t.readAll(texts)
	sort.Slice(t.Problems, func(i, j int) bool { return t.Problems[i].File.Path < t.Problems[j].File.Path })
	return t, nil
}

// FromText makes a tree of files that are in memory: path → text.
func FromText(files map[string]string) *Tree {
	t := &Tree{Paths: map[string]bool{}, memory: files}
	for name, text := range files {
		t.Paths[name] = true
		if IsText(name) {
			t.Files = append(t.Files, position.NewFile(name, text))
		}
	}
	sort.Slice(t.Files, func(i, j int) bool { return t.Files[i].Path < t.Files[j].Path })
	return t
}

// list walks the folder and returns the paths of the text files, sorted.
func (t *Tree) list() ([]string, error) {
	real, err := filepath.EvalSymlinks(t.Root)
	if err != nil {
		return nil, finding.Refuse("the manual's folder cannot be read: %s", err)
	}
	var texts []string
	err = filepath.WalkDir(real, func(full string, d fs.DirEntry, err error) error {
		rel, relErr := filepath.Rel(real, full)
		if relErr != nil {
			return relErr
		}
		name := filepath.ToSlash(rel)
		if err != nil {
			return t.unlisted(name, d, err)
		}
		if name != "." && strings.HasPrefix(path.Base(name), ".") {
			return skip(d)
		}
		if d.Type()&fs.ModeSymlink != 0 && !t.linkStays(real, full, name) {
			return nil
		}
		if d.IsDir() {
			return nil
		}
		if !d.Type().IsRegular() && !leadsToPlain(full) {
			t.problem(name, finding.Say("this is not a plain file"), finding.Say("put a plain file here"))
			return nil // to open a pipe is to wait for whoever writes into it
		}
		t.Paths[name] = true
		if IsText(name) {
			texts = append(texts, name)
		}
		return nil
	})
	sort.Strings(texts)
	return texts, err
}

// leadsToPlain says whether a link leads to a plain file; a pipe is none. What
// cannot be looked at is told of when it is read.
func leadsToPlain(full string) bool {
	info, err := os.Stat(full)
	return err != nil || info.Mode().IsRegular()
}

func skip(d fs.DirEntry) error {
	if d.IsDir() {
		return fs.SkipDir
	}
	return nil
}

// unwritten adds the files that stand in an editor alone.
func (t *Tree) unwritten(texts []string) []string {
	for name := range t.over {
		if !t.Paths[name] && IsText(name) && fs.ValidPath(name) {
			t.Paths[name] = true
			texts = append(texts, name)
		}
	}
	slices.Sort(texts)
	return texts
}

// Hold puts a text over a file of the tree.
func (t *Tree) Hold(name, text string) {
	if t.over == nil {
		t.over = map[string]string{}
	}
	t.over[name] = text
}

// unlisted notes a folder that could not be listed; the manual's own folder
// must be readable.
func (t *Tree) unlisted(name string, d fs.DirEntry, err error) error {
	if name == "." {
		return finding.Refuse("the manual's folder cannot be read: %s", err)
	}
	t.problem(name, finding.Say("this folder cannot be read: %s", reason(err)), finding.Say("give the program leave to read it"))
	return skip(d)
}

// linkStays says whether a symbolic link leads to a file inside the manual.
// A link out of it would publish what the shop did not mean to publish.
func (t *Tree) linkStays(root, full, name string) bool {
	to, err := filepath.EvalSymlinks(full)
	if err != nil {
		t.problem(name, finding.Say("this link leads nowhere"), finding.Say("remove the link, or put the file itself here"))
		return false
	}
	inside := strings.HasPrefix(to, root+string(filepath.Separator))
	info, err := os.Stat(to)
	if !inside || err != nil || info.IsDir() {
		t.problem(name, finding.Say("this link leads out of the manual, or to a folder"), finding.Say("put the file itself here"))
		return false
	}
	if pictures := root + string(filepath.Separator) + "pictures" + string(filepath.Separator); strings.HasPrefix(name, "pictures/") && !strings.HasPrefix(to, pictures) {
		t.problem(name, finding.Say("this link leads out of pictures/, and would publish what is not a picture"), finding.Say("put the file itself here"))
		return false
	}
	return true
}

// IsText says which files are read as text; the rest is only known to be there.
func IsText(name string) bool {
	top, _, deep := strings.Cut(name, "/")
	ext := path.Ext(name)
	switch {
	case !deep:
		return strings.HasPrefix(name, "shop.") && ext == ".yaml" || name == "revisions.csv" // shop.es.yaml has its texts in Spanish
	case top == "register", top == "machines":
		return ext == ".yaml"
	case top == "procedures", top == "revisions":
		return ext == ".md"
	case top == "readings":
		return ext == ".yaml" || ext == ".csv"
	case top == "records":
		return ext == ".json" || name == "records/answers.csv"
	}
	return false
}

func (t *Tree) problem(name string, why, mend finding.Words) {
	t.Problems = append(t.Problems, Problem{File: position.NewFile(name, ""), Why: why, Mend: mend})
}

// readAll reads the text files, some at once; their order stays.
func (t *Tree) readAll(names []string) {
	files, problems, sums := make([]*position.File, len(names)), make([]Problem, len(names)), make([]sum, len(names))
	parallel.Each(len(names), func(i int) { files[i], problems[i], sums[i] = t.readOne(names[i]) })
	t.texts, t.sums = names, sums
	for i, f := range files {
		if f != nil {
			t.Files = append(t.Files, f)
		} else {
			t.Problems = append(t.Problems, problems[i])
		}
	}
}

func (t *Tree) readOne(name string) (*position.File, Problem, sum) {
	if text, held := t.over[name]; held {
		f, problem := heldText(name, text)
		return f, problem, sumOf(name, []byte(text))
	}
	data, why, mend := t.plain(name)
	if why.IsZero() && !utf8.Valid(data) {
		why, mend = finding.Say("this file is not UTF-8"), finding.Say("save it as UTF-8 (the editor's \"encoding\")")
	}
	if !why.IsZero() {
		return nil, Problem{File: position.NewFile(name, ""), Why: why, Mend: mend}, sumOf(name, data)
	}
	return position.NewFile(name, string(data)), Problem{}, sumOf(name, data)
}

// plain are the bytes of a text file; where they are not to be had, why, and what
// to do.
func (t *Tree) plain(name string) (data []byte, why, mend finding.Words) {
	full := filepath.Join(t.Root, filepath.FromSlash(name))
	info, err := os.Stat(full)
	if err != nil {
		return nil, finding.Say("this file cannot be read: %s", reason(err)), finding.Say("give the program leave to read it")
	}
	if !info.Mode().IsRegular() {
		return nil, finding.Say("this is not a plain file"), finding.Say("put a plain file here")
	}
	if info.Size() > MaxFile {
		why, mend = tooBig(info.Size())
		return nil, why, mend
	}
	if data, err = os.ReadFile(full); err != nil {
		return nil, finding.Say("this file cannot be read: %s", reason(err)), finding.Say("give the program leave to read it")
	}
	return data, finding.Words{}, finding.Words{}
}

func tooBig(bytes int64) (why, mend finding.Words) {
	return finding.Say("this file is %d MB; a file of a manual is at most %d MB", bytes>>20, MaxFile>>20), finding.Say("split it, or move what is not text to pictures/")
}

// heldText is a text as a file would be with it in it.
func heldText(name, text string) (*position.File, Problem) {
	if len(text) > MaxFile {
		why, mend := tooBig(int64(len(text)))
		return nil, Problem{File: position.NewFile(name, ""), Why: why, Mend: mend}
	}
	return position.NewFile(name, strings.ToValidUTF8(text, "\ufffd")), Problem{}
}

// reason is the operating system's word for what went wrong, without the path.
func reason(err error) string {
	var pathErr *fs.PathError
	if errors.As(err, &pathErr) {
		return pathErr.Err.Error()
	}
	return err.Error()
}

// Reread reads one text file of the tree anew and puts it in the place of what
// was read before. It is nil where the file is not one of the tree's, or can
// no longer be read: then the whole folder has to be looked at.
func (t *Tree) Reread(name string) *position.File {
	i, known := slices.BinarySearchFunc(t.Files, name, func(f *position.File, name string) int { return strings.Compare(f.Path, name) })
	if !known {
		return nil
	}
	f, _, _ := t.readOne(name)
	if f != nil {
		t.Files[i] = f
	}
	return f
}

// Only is the tree with some of its procedures alone: the others are there, and
// were not read.
func (t *Tree) Only(procedures map[string]bool) *Tree {
	some := *t
	some.Files = slices.DeleteFunc(slices.Clone(t.Files), func(f *position.File) bool {
		return strings.HasPrefix(f.Path, "procedures/") && !procedures[f.Path]
	})
	return &some
}

// Has says whether the manual holds a file of this path.
func (t *Tree) Has(name string) bool { return t.Paths[name] }

// MaxPicture is the size in bytes above which a picture is not published: it
// would not come up at the bay.
const MaxPicture = 200 << 20

// Open opens a file that is not text, such as a picture: a plain one, and no
// larger than may be.
func (t *Tree) Open(name string) (io.ReadCloser, error) {
	if t.Root == "" {
		return io.NopCloser(strings.NewReader(t.memory[name])), nil
	}
	full := filepath.Join(t.Root, filepath.FromSlash(name))
	info, err := os.Stat(full)
	switch {
	case err != nil:
		return nil, err
	case !info.Mode().IsRegular():
		return nil, finding.Refuse("it is not a plain file")
	case info.Size() > MaxPicture:
		return nil, finding.Refuse("it is %d MB, and may be %d MB", info.Size()>>20, MaxPicture>>20)
	}
	return os.Open(full)
}

// Bytes reads a file that is not text, such as a picture.
func (t *Tree) Bytes(name string) ([]byte, error) {
	f, err := t.Open(name)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	return io.ReadAll(io.LimitReader(f, MaxPicture+1))
}
