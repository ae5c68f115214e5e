package check

import (
	"cmp"
	"slices"

	"baybinder/generator/model"
)

// outsideSteps are the blocks that belong to no step and are no title, in
// reading order.
func outsideSteps(p *model.Procedure) []*model.Block {
	var out []*model.Block
	for i := range p.Intro {
		out = append(out, &p.Intro[i])
	}
	for _, phase := range p.Phases {
		if phase.Lead != nil {
			out = append(out, phase.Lead)
		}
		for _, part := range phase.Body {
			if part.Prose != nil {
				out = append(out, part.Prose)
			}
		}
	}
	return out
}

// allLinks are the links of a procedure wherever they stand, in reading order.
func allLinks(p *model.Procedure) []*model.Link {
	return inOrder(p.Links())
}

// uses are the links by which a procedure needs or does something, in reading
// order: those of its steps, with what acts only at the refit, and the hazards
// of a phase's first paragraph. Anything else outside the steps is shown and
// is no use.
func uses(p *model.Procedure) []*model.Link {
	out := make([]*model.Link, 0, 4*len(p.Steps))
	for _, phase := range p.Phases {
		if phase.Lead == nil {
			continue
		}
		for _, link := range phase.Lead.Links {
			if link.Kind.Target == model.ToHazard {
				out = append(out, link)
			}
		}
	}
	for _, s := range p.Steps {
		for _, b := range s.Blocks {
			out = append(out, b.Links...)
		}
	}
	return inOrder(out)
}

func inOrder(links []*model.Link) []*model.Link {
	slices.SortStableFunc(links, func(a, b *model.Link) int { return cmp.Compare(a.At.Start, b.At.Start) }) // nearly always they are
	return links
}

// unread says that a procedure could not all be read: nothing that rests on
// the whole of it is told.
func unread(p *model.Procedure) bool { return p.Broken || p.Unread }

// uncertain says that something could not be read that a reader of the
// procedure acts on: it is not known whether it is what was issued.
func uncertain(p *model.Procedure) bool {
	if p.Broken || p.Doubtful() || p.For.To != nil && (p.For.To.Doubtful() || p.For.To.Name == "") {
		return true
	}
	if slices.ContainsFunc(slices.Concat(p.Expects, p.Leaves), func(s model.State) bool { return s.Unknown }) {
		return true
	}
	return nameless(p.Needs) || slices.ContainsFunc(allLinks(p), func(l *model.Link) bool { return l.Bad || l.To != nil && misread(l.To) })
}

// misread says that a field of an entry, or of what stands in its fields, could
// not be read. Of what is performed it is the title: its own revision is held against
// the rest.
func misread(n model.Named) bool {
	switch n := n.(type) {
	case *model.Procedure:
		return n.Broken || n.Lost("title")
	case *model.Part:
		return n.Doubtful() || doubtful(n.Carries.To) || nameless(n.Under) || nameless(n.ProveDead) || nameless(n.Guards) ||
			slices.ContainsFunc(n.HeldBy, func(u model.Use[model.Fastener]) bool { return doubtful(u.To) })
	case *model.Energy:
		return n.Doubtful() || nameless(n.BlockedBy) || nameless(n.ContainedBy) ||
			slices.ContainsFunc(n.Points, func(r model.Ref[model.Point]) bool { return doubtful(r.To) })
	case *model.Hazard:
		return n.Doubtful() || nameless(n.Wear)
	case *model.Supply:
		return n.Doubtful() || nameless(n.Hazards)
	case *model.Fluid:
		return n.Doubtful() || doubtful(n.Supply.To) || nameless(n.NeededBy)
	case *model.Setting:
		return n.Doubtful() || nameless(n.NeededBy)
	case *model.Hold:
		return n.Doubtful() || doubtful(n.With.To) || doubtful(n.ProvedOn.To) || nameless([]model.Ref[model.Role]{n.By, n.Call})
	}
	return n.Base().Doubtful()
}

// doubtful says that an entry that is there could not all be read.
func doubtful[P interface {
	comparable
	Doubtful() bool
}](to P) bool {
	var none P
	return to != none && to.Doubtful()
}

// nameless says that what one of some references is called could not be read.
func nameless[T any](refs []model.Ref[T]) bool {
	return slices.ContainsFunc(refs, func(r model.Ref[T]) bool {
		to, _ := any(r.To).(model.Named)
		return r.To != nil && to.Base().Lost("name")
	})
}
