package rename

import (
	"slices"

	"baybinder/generator/base/patch"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
	"baybinder/generator/read/source"
)

// Thing is what an id at some place names.
type Thing struct {
	Kind    string // one of Kinds
	ID      string
	Machine *model.Machine // whose thing it is; nil for what is no machine's
	At      position.Pos   // the id alone
}

// At finds what is named at an offset of a file: where it is defined, listed or
// linked.
func At(m *model.Manual, path string, offset int) (Thing, bool) {
	f := fileOf(m, path)
	if f == nil {
		return Thing{}, false
	}
	start, end := word(f.Text, offset)
	id := f.Text[start:end]
	if id == "" {
		return Thing{}, false
	}
	for _, t := range targets(m, id) {
		for _, at := range collect(m, t).places {
			if at.Path() == path && at.Start <= offset && offset <= at.End {
				return Thing{t.kind, t.id, t.machine, at}, true
			}
		}
	}
	return Thing{}, false
}

// fileOf is a file of the manual that can name things.
func fileOf(m *model.Manual, path string) *position.File {
	for _, p := range slices.Concat(m.Procedures, m.Translated) {
		if p.File.Path == path {
			return p.File
		}
	}
	for _, list := range [][]model.Named{model.AsNamed(m.Machines), model.AsNamed(m.Tools), model.AsNamed(m.Hazards), model.AsNamed(m.Holds), model.AsNamed(m.Supplies), model.AsNamed(m.Roles), model.AsNamed(m.Plans)} {
		for _, n := range list {
			if n.Base().At.Path() == path {
				return n.Base().At.File
			}
		}
	}
	return nil
}

// word is where the id around an offset begins and ends.
func word(text string, offset int) (start, end int) {
	start = min(max(offset, 0), len(text))
	end = start
	for start > 0 && inID(text[start-1]) {
		start--
	}
	for end < len(text) && inID(text[end]) {
		end++
	}
	return start, end
}

func inID(c byte) bool { return c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c == '-' }

// targets are all things that have an id.
func targets(m *model.Manual, id string) []target {
	var out []target
	for _, kind := range Kinds {
		if !ofMachine(kind) {
			if t := (target{kind: kind, id: id}); slices.Contains(t.ids(m), id) {
				out = append(out, t)
			}
			continue
		}
		for _, machine := range m.Machines {
			if t := (target{kind, id, machine}); slices.Contains(t.ids(m), id) {
				out = append(out, t)
			}
		}
	}
	return out
}

// Places are all places where a thing is named, its definition among them.
func (t Thing) Places(m *model.Manual) []position.Pos {
	return collect(m, target{t.Kind, t.ID, t.Machine}).places
}

// Change is what a rename changes: pieces by file, and the new paths of files.
type Change struct {
	Pieces map[*position.File][]patch.Piece
	Moves  map[string]string
}

// Would is what a rename would change in a manual as it was read; the error says
// why it cannot be done.
func Would(tree *source.Tree, o Options) (*Change, error) {
	p, _, err := prepare(tree, o)
	if err != nil {
		return nil, err
	}
	return &Change{p.pieces, p.moves}, nil
}
