package offers

import (
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
)

// Cures are the steps that, written before a step, take a finding away which
// stands in it, and bring no error of their own.
func (b *Bench) Cures(s *model.Step, f finding.Finding) []Offer {
	slot, ok := b.slotBefore(s)
	if !ok {
		return nil
	}
	return slices.DeleteFunc(b.Offers(slot), func(o Offer) bool {
		return !o.Possible() || slices.ContainsFunc(o.Brings, breaks) || b.stands(f, s.Of, o.Edits)
	})
}

// slotBefore is the slot behind the step before one, or the first of a phase.
func (b *Bench) slotBefore(s *model.Step) (Slot, bool) {
	among := s.Phase.Steps
	if s.Parent != nil {
		among = s.Parent.Subs
	}
	switch i := slices.Index(among, s); {
	case i > 0:
		return behind(among[i-1])
	case s.Parent == nil:
		return b.SlotFirst(s.Of, s.Phase), true
	}
	return Slot{}, false
}

// stands says whether a finding is still there once edits are in the file.
func (b *Bench) stands(f finding.Finding, p *model.Procedure, edits []Edit) bool {
	after := b.try(p.File.Path, Apply(p.File, edits))
	return slices.ContainsFunc(after.found, func(g finding.Finding) bool {
		return g.Rule == f.Rule && g.At.Path() == f.At.Path() && g.At.Start == now(f.At.Start, edits)
	})
}
