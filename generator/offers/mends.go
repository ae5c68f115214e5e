package offers

import (
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/check"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/edit"
)

// Mend is one way to mend a finding by itself, without anything to judge but whether it is
// meant.
type Mend struct {
	Title string
	Edits []Edit
}

// Mends are the ways to mend a finding by itself; none where it takes a person.
func (b *Bench) Mends(f finding.Finding) []Mend {
	var out []Mend
	for _, fix := range f.Fixes {
		out = append(out, Mend{b.told("write %s", fix.Text), []Edit{{fix.At, fix.Text}}})
	}
	p := b.Procedure(f.At.Path())
	if p == nil || p.File.Text != f.At.File.Text {
		return out
	}
	switch f.Rule {
	case &check.NotListed:
		out = append(out, b.list(p, f)...)
	case &check.NotUsed:
		out = append(out, b.unlist(p, f)...)
	case &walk.LeftIsolated:
		out = append(out, b.leaves(p)...)
	case &check.HollowLink:
		if l := linkAt(p, f.At.Start); l != nil && l.To != nil && l.Text == "" {
			at := p.File.At(l.At.Start+1, l.At.Start+1)
			out = append(out, Mend{b.told("write its words: %s", l.To.Label()), []Edit{{at, edit.LinkText(l.To.Label())}}})
		}
	}
	return out
}

// leaves says what a procedure that only switches off leaves, for a writer who
// means it so.
func (b *Bench) leaves(p *model.Procedure) []Mend {
	opens := slices.ContainsFunc(p.Steps, func(s *model.Step) bool {
		return slices.ContainsFunc(s.Links, func(l *model.Link) bool {
			return l.Kind.Opens || slices.Contains([]model.Act{model.Restore, model.Drain, model.Call}, l.Kind.Act)
		})
	})
	if opens {
		return nil
	}
	var entries []string
	for _, s := range b.Walks.Stand(p, nil) {
		if _, energy := s.Thing.(*model.Energy); energy && s.Word != "live" && s.When == "" {
			entries = append(entries, s.Thing.Base().ID+": "+s.Word)
		}
	}
	piece, ok := edit.PutMap(p.File, "leaves", entries)
	if !ok || len(entries) == 0 {
		return nil
	}
	said := b.told("it stays so on purpose, leaves: { %s }", strings.Join(entries, ", "))
	return []Mend{{said, []Edit{{p.File.At(piece.At, piece.At+piece.Cut), piece.Text}}}}
}

// list adds what a link uses to the list that lacks it.
func (b *Bench) list(p *model.Procedure, f finding.Finding) []Mend {
	l := linkAt(p, f.At.Start)
	if l == nil {
		return nil
	}
	var needs []Need
	for _, list := range lists {
		if k, _ := model.KindNamed(list.kind); l.To != nil && k != nil && k.List == l.Kind.List && k.List != model.NoList {
			needs = append(needs, Need{list.kind, l.To})
		}
	}
	for _, h := range model.SuppliedHazards([]*model.Link{l}) {
		needs = append(needs, Need{model.LinkHazard, h})
	}
	edits := b.grown(p, needs, nil)
	if len(edits) == 0 {
		return nil
	}
	var ids []string
	for _, n := range needs {
		ids = append(ids, n.Entry.Base().ID)
	}
	return []Mend{{b.told("list it: %s", strings.Join(ids, ", ")), edits}}
}

// unlist takes a line that no step uses out of its list.
func (b *Bench) unlist(p *model.Procedure, f finding.Finding) []Mend {
	for _, list := range lists {
		if piece, ok := edit.Shrink(p.File, list.name, f.At); ok {
			return []Mend{{b.told("take it out of %s", list.name), []Edit{{p.File.At(piece.At, piece.At+piece.Cut), piece.Text}}}}
		}
	}
	return nil
}
