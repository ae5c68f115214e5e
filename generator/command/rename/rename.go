// Package rename gives a thing of a manual another id, everywhere it is named, and touches nothing else.
//
// The places come from the bound manual: each reference knows where it was
// written. Before anything is written the changed manual is bound and checked in
// memory: the new id must be named as often as the old one was, and the check
// must find what it found before. Rows of records and revisions are never
// changed: a procedure's old id stays in its was:, and history follows.
package rename

import (
	"cmp"
	"fmt"
	"maps"
	"path"
	"slices"
	"strings"

	"baybinder/generator/base/atomicfile"
	"baybinder/generator/base/finding"
	"baybinder/generator/base/patch"
	"baybinder/generator/base/position"
	"baybinder/generator/check"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/decode"
	"baybinder/generator/read/source"
	"baybinder/generator/read/syntax"
)

// Options say what is renamed.
type Options struct {
	Manual  string
	Today   model.Date
	Kind    string // one of Kinds
	Old     string
	New     string
	Machine string // whose thing it is; "" where only one machine has it
	Show    bool   // say what would be done, and write nothing
}

// Result is what was done.
type Result struct {
	Files   []File // by path
	Places  int    // where the id stood
	Machine *model.Machine
	Reissue []*model.Procedure // issued, and another now than their last revision: a fingerprint holds ids
}

// File is one file in which something was done.
type File struct {
	Path   string
	To     string // its new path, where it has one
	Places []position.Pos
	Was    position.Pos // where the old id was added to was:; nowhere if it was not
}

// Run renames. The error says why not; then nothing was written.
func Run(o Options) (*Result, error) {
	r, all, err := Changes(o)
	if err != nil || o.Show {
		return r, err
	}
	if err := atomicfile.WriteAll(o.Manual, all); err != nil {
		return r, finding.Refuse("the files could not be written, and are as they were: %s", err)
	}
	return r, nil
}

// Changes are what a rename makes of the files, by path, for who writes them. The
// error says why it cannot be done.
func Changes(o Options) (*Result, []atomicfile.Change, error) {
	tree, err := source.Read(o.Manual)
	if err != nil {
		return nil, nil, err
	}
	p, r, err := prepare(tree, o)
	if err != nil {
		return r, nil, err
	}
	all, err := p.files(tree)
	return r, all, err
}

// prepare works out what is to be done, and judges it.
func prepare(tree *source.Tree, o Options) (*plan, *Result, error) {
	m, bound := bind.Manual(tree)
	if err := readable(bound, o.Old); err != nil {
		return nil, nil, err
	}
	t, err := find(m, o)
	if err != nil {
		return nil, nil, err
	}
	c := collect(m, t)
	if err := cmp.Or(c.sure(), free(m, t, o.New)); err != nil {
		return nil, nil, err
	}
	p, err := changes(c, o.New)
	if err != nil {
		return nil, nil, err
	}
	r := p.result(t)
	r.Reissue, err = compare(tree, p.tree(tree), c, o.New, o.Today)
	return p, r, err
}

// hiding are the rules of findings behind which a reference may hide: what is
// not read names nothing.
var hiding = []*finding.Rule{&syntax.Syntax, &decode.UnknownField, &decode.WrongType, &syntax.DuplicateID}

func readable(bound []finding.Finding, old string) error {
	for _, f := range finding.Sort(bound) {
		if slices.Contains(hiding, f.Rule) {
			return finding.Refuse("%s: %s: mend this first, as %s may be named in what cannot be read", where(f.At), f.Says, old)
		}
	}
	return nil
}

func where(at position.Pos) string {
	line, _ := at.LineCol()
	return fmt.Sprintf("%s:%d", at.Path(), line)
}

// plan is what is to be done: pieces by file, and new paths.
type plan struct {
	c      *collector
	pieces map[*position.File][]patch.Piece
	was    map[*position.File]position.Pos
	moves  map[string]string // old path → new path
}

func changes(c *collector, to string) (*plan, error) {
	p := &plan{c: c, pieces: map[*position.File][]patch.Piece{}, was: map[*position.File]position.Pos{}, moves: map[string]string{}}
	for _, at := range c.places {
		p.pieces[at.File] = append(p.pieces[at.File], patch.Piece{At: at.Start, Cut: at.End - at.Start, Text: to})
	}
	for name := range c.files {
		p.moves[name] = path.Join(path.Dir(name), to+strings.TrimPrefix(path.Base(name), c.id))
	}
	return p, p.keepOld()
}

// touched are the files of the plan, by path.
func (p *plan) touched(files []*position.File) []*position.File {
	var out []*position.File
	for _, f := range files {
		if len(p.pieces[f]) > 0 || p.moves[f.Path] != "" {
			out = append(out, f)
		}
	}
	return out
}

// tree is the manual as it will be.
func (p *plan) tree(old *source.Tree) *source.Tree {
	texts := map[string]string{}
	for _, f := range old.Files {
		texts[cmp.Or(p.moves[f.Path], f.Path)] = patch.Applied(f, p.pieces[f]).Text
	}
	after := source.FromText(texts)
	for name := range old.Paths {
		if p.moves[name] == "" {
			after.Paths[name] = true
		}
	}
	return after
}

func (p *plan) result(t target) *Result {
	r := &Result{Places: len(p.c.places), Machine: t.machine}
	for _, f := range p.touched(p.c.all()) {
		file := File{Path: f.Path, To: p.moves[f.Path], Was: p.was[f]}
		for _, at := range p.c.places {
			if at.File == f {
				file.Places = append(file.Places, at)
			}
		}
		r.Files = append(r.Files, file)
	}
	slices.SortFunc(r.Files, func(a, b File) int { return cmp.Compare(a.Path, b.Path) })
	return r
}

// files are the changes of the files on the disk.
func (p *plan) files(tree *source.Tree) ([]atomicfile.Change, error) {
	var all []atomicfile.Change
	for _, f := range p.touched(tree.Files) {
		old, err := tree.Bytes(f.Path)
		if err != nil {
			return nil, err
		}
		if position.NewFile(f.Path, string(old)).Text != f.Text {
			return nil, finding.Refuse("%s was changed meanwhile; nothing was written: run it again", f.Path)
		}
		all = append(all, atomicfile.Change{Path: f.Path, To: p.moves[f.Path], Was: old, Now: patch.Apply(old, p.pieces[f])})
	}
	return all, nil
}

// moved are the rules of findings that a new id may bring: a fingerprint holds
// ids. They are told as what to issue anew.
var moved = []*finding.Rule{&check.ChangedSinceIssue, &check.ReadingStale}

// told is what a finding tells, wherever in its file it stands.
type told struct {
	rule *finding.Rule
	file string
}

func (t told) compare(other told) int {
	return cmp.Or(cmp.Compare(t.rule.Code, other.rule.Code), cmp.Compare(t.file, other.file))
}

// compare binds and checks the manual before and after. It returns the issued
// procedures that are to be issued anew.
func compare(before, after *source.Tree, was *collector, id string, today model.Date) ([]*model.Procedure, error) {
	_, old := look(before, today)
	m, now := look(after, today)
	is := collect(m, was.in(m).named(id))
	if len(is.places) != len(was.places) || len(is.lost) > 0 {
		return nil, finding.Refuse("%s stands at %d places and %s would stand at %d: nothing was written; this is a fault of the program, please report it", was.id, len(was.places), id, len(is.places))
	}
	count := map[told]int{}
	for _, f := range old {
		count[told{f.Rule, was.newPath(f.At.Path(), id)}]++
	}
	for _, f := range now {
		key := told{f.Rule, f.At.Path()}
		if count[key]--; count[key] < 0 && !slices.Contains(moved, f.Rule) {
			return nil, finding.Refuse("with this id check would say at %s: %s [%s]: nothing was written", where(f.At), f.Says, f.Code)
		}
	}
	for _, key := range slices.SortedFunc(maps.Keys(count), told.compare) {
		if count[key] > 0 && !slices.Contains(moved, key.rule) {
			return nil, finding.Refuse("with this id check would no longer say %s in %s: nothing was written", key.rule.Code, key.file)
		}
	}
	return changed(m, old, now), nil
}

// changed are the procedures that the rename alone made another than their last
// revision.
func changed(m *model.Manual, old, now []finding.Finding) []*model.Procedure {
	says := func(list []finding.Finding, name string) bool {
		return slices.ContainsFunc(list, func(f finding.Finding) bool {
			return f.Rule == &check.ChangedSinceIssue && path.Base(f.At.Path()) == name
		})
	}
	var out []*model.Procedure
	for _, p := range m.Procedures {
		if name := path.Base(p.File.Path); says(now, name) && !says(old, name) {
			out = append(out, p)
		}
	}
	return out
}

// look is what check does.
func look(tree *source.Tree, today model.Date) (*model.Manual, []finding.Finding) {
	m, found := bind.Manual(tree)
	found = append(found, walk.All(m).Findings(m)...)
	found = append(found, check.Run(&check.Context{Manual: m, Today: today})...)
	return m, check.Soften(m, found)
}
