// Package settle mends what needs no judgement in a manual's procedures.
//
// It completes the four lists of the front matter from what the steps use, and
// writes the register's words into empty links. Into needs: it writes the roles
// that the steps, their tools and what is performed ask for, and into a pair of
// procedures of which one only switches off and the other only brings back what
// the one leaves and the other expects. All it does is insert: what
// stood in a file stands in it afterwards, byte for byte. What needs judgement
// (an entry that nothing uses, an amount) is left and told.
//
// With Acts it makes links of what the words of steps certainly say, as long as
// the check finds no more errors for it: the acts on one thing stand or fall
// together. Which words are certain is said by read/jotting.
//
// What a list lacks is not worked out here: it is what the check finds, so the
// two cannot come to differ.
package settle

import (
	"cmp"
	"slices"

	"baybinder/generator/base/atomicfile"
	"baybinder/generator/base/finding"
	"baybinder/generator/base/patch"
	"baybinder/generator/base/position"
	"baybinder/generator/check"
	"baybinder/generator/model"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// Options say which manual is settled.
type Options struct {
	Manual string
	Today  model.Date
	Show   bool // say what would be done, and write nothing
	Acts   bool // make links of acts, tools and supplies that stand in words
}

// Change is what was done in one file, and what in it needs judgement and was
// left.
type Change struct {
	Path string
	Did  []Note
	Left []Note
}

// Note is something done or left, and where it stands in the file as it is
// now.
type Note struct {
	At   position.Pos
	Says finding.Words
}

// Run settles every procedure of a manual. The changes are in the order of the
// files; a file in which nothing was done and nothing is left has none. The
// error says that the run ended early: what the changes tell of was done.
func Run(o Options) ([]Change, error) {
	tree, err := source.Read(o.Manual)
	if err != nil {
		return nil, err
	}
	m, _ := bind.Manual(tree)
	with, links := tree, map[string]*acted{}
	if o.Acts {
		with, links = acts(tree, m, o.Today)
		m, _ = bind.Manual(with)
	}
	m = pair(with, m, o.Today, links)
	found := check.Run(&check.Context{Manual: m, Today: o.Today})
	roles := needed(m, found)
	var changes []Change
	for _, p := range procedures(m) {
		t := &text{manual: m, procedure: p, found: inFile(found, p.File), acted: links[p.File.Path], roles: roles[p]}
		t.acted.notes(t)
		t.settle()
		if len(t.inserts)+len(t.acted.pieces()) > 0 && !o.Show {
			if err := t.write(tree); err != nil {
				return changes, finding.Refuse("%s could not be written: %s", p.File.Path, err)
			}
			t.move()
		}
		if len(t.did)+len(t.left) > 0 {
			changes = append(changes, Change{Path: p.File.Path, Did: t.did, Left: t.left})
		}
	}
	return changes, nil
}

// pair writes what the procedures of a pair leave and expect, and gives the
// manual with it.
func pair(tree *source.Tree, m *model.Manual, today model.Date, told map[string]*acted) *model.Manual {
	if len(pairs(m)) == 0 {
		return m
	}
	before := map[string]*position.File{}
	for _, f := range tree.Files {
		before[f.Path] = f
	}
	with, done := (&actor{today: today}).paired(tree, m)
	for _, s := range done {
		path := s.of.File.Path
		if told[path] == nil {
			told[path] = &acted{file: before[path]}
		}
		told[path].states = append(told[path].states, s)
	}
	m, _ = bind.Manual(with)
	return m
}

func procedures(m *model.Manual) []*model.Procedure {
	all := slices.Concat(m.Procedures, m.Translated)
	slices.SortFunc(all, func(a, b *model.Procedure) int { return cmp.Compare(a.File.Path, b.File.Path) })
	return all
}

// inFile are the findings in a file, in order.
func inFile(list []finding.Finding, f *position.File) []finding.Finding {
	var in []finding.Finding
	for _, one := range list {
		if one.At.File == f {
			in = append(in, one)
		}
	}
	return finding.Sort(in)
}

// text is one procedure's file on its way.
type text struct {
	manual    *model.Manual
	procedure *model.Procedure
	found     []finding.Finding
	roles     []string // that needs: lacks
	inserts   []patch.Piece
	acted     *acted // the links that the file has got already; nil for none
	did       []Note
	left      []Note
}

func (t *text) settle() {
	t.lists()
	t.words()
	for _, f := range t.found {
		if f.Rule == &check.NotUsed {
			t.leave(f.At, "%s is listed, and no step uses it", t.listedAt(f.At.Start))
		}
	}
	slices.SortStableFunc(t.left, func(a, b Note) int { return cmp.Compare(a.At.Start, b.At.Start) })
}

// listedAt is the id that stands at a place in one of the lists.
func (t *text) listedAt(start int) string {
	ids := map[int]string{}
	p := t.procedure
	for _, u := range p.Tools {
		ids[u.At.Start] = u.ID
	}
	for _, u := range p.Supplies {
		ids[u.At.Start] = u.ID
	}
	for _, u := range p.Hazards {
		ids[u.At.Start] = u.ID
	}
	for _, r := range p.Holds {
		ids[r.At.Start] = r.ID
	}
	return ids[start]
}

func (t *text) done(at position.Pos, format string, args ...any) {
	t.did = append(t.did, Note{At: at, Says: finding.Say(format, args...)})
}

func (t *text) leave(at position.Pos, format string, args ...any) {
	t.left = append(t.left, Note{At: at, Says: finding.Say(format, args...)})
}

// move makes the notes' places those in the file with the pieces in it: what
// is left is looked up there.
func (t *text) move() {
	file := patch.Applied(t.procedure.File, t.inserts)
	for _, notes := range [][]Note{t.did, t.left} {
		for i, n := range notes {
			by := 0
			for _, piece := range t.inserts {
				if piece.At <= n.At.Start {
					by += len(piece.Text)
				}
			}
			notes[i].At = file.At(n.At.Start+by, n.At.End+by)
		}
	}
}

// write puts the inserts into the file's own bytes.
func (t *text) write(tree *source.Tree) error {
	name := t.procedure.File.Path
	old, err := tree.Bytes(name)
	if err != nil {
		return err
	}
	was := t.procedure.File
	if t.acted != nil {
		was = t.acted.file
	}
	if position.NewFile(name, string(old)).Text != was.Text {
		return finding.Refuse("it was changed meanwhile; run settle again")
	}
	old = patch.Apply(old, t.acted.pieces())
	return atomicfile.Write(tree.Root, name, patch.Apply(old, t.inserts))
}
