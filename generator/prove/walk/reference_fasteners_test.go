package walk_test

import (
	"baybinder/generator/model"
)

func (x *run) fastenerAct(l *model.Link, f *model.Fastener, s *model.Step) {
	if !l.Is("loosen") && !l.Is("tighten") {
		return
	}
	bleeds := bleedingStep(s)
	if len(f.Holds) == 0 {
		k := key("fastener", f.ID)
		if !x.has(f.OnlyWith) {
			return
		}
		switch {
		case l.Is("tighten"):
			x.set(k, "tight")
		default:
			if x.get(k) == "tight" {
				x.undo(refUndo{kind: "fastener", fast: f, id: k, step: s})
				x.forgetAsked()
			}
			x.set(k, "loose")
		}
		return
	}
	parts, whole := scopeOf(l, f, s)
	if l.Is("loosen") {
		for _, p := range parts {
			k := fasteningKey(f.ID, p.ID)
			if !x.hasAt(f, p) || x.get(key("part", p.ID)) != "on" || x.get(k) == "loose" || !isIn(f.Holds, p) {
				continue
			}
			if !x.bleedingAllows(p, s, bleeds) {
				x.liveWork(p)
			}
			x.undo(refUndo{kind: "fastening", part: p, fast: f, id: k, step: s})
			x.set(k, "loose")
			x.forgetAsked()
		}
		return
	}
	some := false
	for _, p := range parts {
		if isIn(f.Holds, p) && x.hasAt(f, p) && x.get(key("part", p.ID)) == "on" {
			x.set(fasteningKey(f.ID, p.ID), "tight")
			some = true
		}
	}
	for _, p := range parts {
		if isIn(f.Holds, p) && x.hasAt(f, p) && x.get(key("part", p.ID)) == "on" {
			x.tightensByHand(p)
		}
	}
	for _, p := range parts {
		switch {
		case !isIn(f.Holds, p):
			x.fault("act-order", key("part", p.ID))
		case x.hasAt(f, p) && x.get(key("part", p.ID)) != "on" && !(whole && some):
			x.waiting = append(x.waiting, refWaiting{p, fasteningKey(f.ID, p.ID), l, x.frame().path})
		}
	}
}

func scopeOf(l *model.Link, f *model.Fastener, s *model.Step) (parts []*model.Part, whole bool) {
	if l.Part() != nil {
		return []*model.Part{l.Part()}, false
	}
	for _, o := range s.Links {
		p, is := o.To.(*model.Part)
		if !is || !isIn(f.Holds, p) || isIn(parts, p) {
			continue
		}
		switch o.Kind.Name {
		case "remove", "disconnect", "renew", "refit", "connect":
			parts = append(parts, p)
		}
	}
	if len(parts) > 0 {
		return parts, false
	}
	return f.Holds, true
}

func bleedingStep(s *model.Step) *model.Step {
	for ; s != nil; s = s.Parent {
		for _, l := range s.Links {
			if l.Is("bleed") {
				return s
			}
		}
	}
	return nil
}

func (x *run) bleedingAllows(p *model.Part, s, bleeds *model.Step) bool {
	for b := bleeds; b != nil; b = bleedingStep(b.Parent) {
		carries := false
		for _, l := range b.Links {
			carries = carries || l.Is("bleed") && p.Carries.To != nil && l.To == model.Named(p.Carries.To)
		}
		warned := true
		for _, e := range deadAt(p) {
			warned = warned && (meets(s, e.ID) || meets(b, e.ID))
		}
		if carries && warned {
			return true
		}
	}
	return false
}
