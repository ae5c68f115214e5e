package rename

import (
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/patch"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
	"baybinder/generator/read/edit"
	"baybinder/generator/read/syntax"
)

// keepOld keeps the old id of a procedure or a role in its was:, by which rows
// that are never changed still lead to it.
func (p *plan) keepOld() error {
	switch p.c.kind {
	case "procedure":
		return p.keepOldProcedure()
	case "role":
		return p.keepOldRole()
	}
	return nil
}

func (p *plan) keepOldProcedure() error {
	for _, proc := range p.c.m.Procedures {
		if proc.ID != p.c.id || slices.Contains(proc.Was, p.c.id) {
			continue
		}
		piece, safe := edit.Grow(proc.File, "was", []string{p.c.id})
		if !safe {
			return finding.Refuse("%s: there is no safe place for was: in its front matter: write was: [%s] there by hand first", proc.File.Path, p.c.id)
		}
		p.keep(proc.File, piece)
	}
	return nil
}

func (p *plan) keepOldRole() error {
	for _, role := range p.c.m.Roles {
		if role.ID != p.c.id || slices.Contains(role.Was, p.c.id) {
			continue
		}
		piece, safe := wasOf(role.At.File, role)
		if !safe {
			return finding.Refuse("%s: there is no safe place for was: at the role: write was: [%s] there by hand first", where(role.At), p.c.id)
		}
		p.keep(role.At.File, piece)
	}
	return nil
}

func (p *plan) keep(f *position.File, piece patch.Piece) {
	p.pieces[f] = append(p.pieces[f], piece)
	p.was[f] = f.At(piece.At, piece.At)
}

// wasOf is the piece that adds a role's id to its was:. It is judged by reading
// the result.
func wasOf(f *position.File, role *model.Role) (patch.Piece, bool) {
	root, _ := syntax.YAML(f, 0, len(f.Text))
	i := slices.IndexFunc(root.Pairs, func(p syntax.Pair) bool { return p.Key == role.ID })
	if i < 0 {
		return patch.Piece{}, false
	}
	piece, ok := wasPiece(f, root.Pairs[i], role.ID)
	if !ok {
		return piece, false
	}
	after, _ := syntax.YAML(patch.Applied(f, []patch.Piece{piece}), 0, len(f.Text)+len(piece.Text))
	now := after.Get(role.ID)
	if now == nil || len(after.Pairs) != len(root.Pairs) || now.Get("name") == nil || now.Get("name").Text != role.Name {
		return piece, false
	}
	was := now.Get("was")
	return piece, was != nil && len(was.Items) == len(role.Was)+1 && was.Items[len(role.Was)].Text == role.ID
}

// wasPiece finds the place: a list that is there grows, else it comes behind the
// entry's bracket or below its key.
func wasPiece(f *position.File, entry syntax.Pair, id string) (patch.Piece, bool) {
	if had := entry.Value.Get("was"); had != nil {
		n := len(had.Items)
		if n == 0 || !strings.HasPrefix(f.Text[had.At.Start:], "[") {
			return patch.Piece{}, false
		}
		return patch.Piece{At: had.Items[n-1].At.End, Text: ", " + id}, true
	}
	switch {
	case strings.HasPrefix(f.Text[entry.Value.At.Start:], "{"):
		return patch.Piece{At: entry.Value.At.Start + 1, Text: " was: [" + id + "],"}, len(entry.Value.Pairs) > 0
	case len(entry.Value.Pairs) > 0:
		first := entry.Value.Pairs[0].KeyAt.Start
		line := strings.LastIndexByte(f.Text[:first], '\n') + 1
		return patch.Piece{At: line - 1, Text: "\n" + f.Text[line:first] + "was: [" + id + "]"}, line > 0
	}
	return patch.Piece{}, false
}
