package walk_test

import (
	"baybinder/generator/model"
)

func (x *run) undo(u refUndo) {
	if !x.derived {
		u.depth = len(x.frames)
		if u.id == "" {
			u.id = key("part", u.part.ID)
		}
		u.pos = x.frame().link.At.Start
		x.undos = append(x.undos, u)
	}
}

func (x *run) stillSo(u refUndo) bool {
	switch u.kind {
	case "part":
		return x.get(u.id) != "on"
	case "fastening":
		return x.hasAt(u.fast, u.part) && x.get(key("part", u.part.ID)) == "on" && x.get(u.id) == "loose"
	}
	return x.get(u.id) != normalOf(u.id)
}

func (x *run) reverse(l *model.Link, s *model.Step) {
	var mine []refUndo
	for _, u := range x.undos {
		if u.step.Phase == l.Phase() && u.depth == len(x.frames) && u.pos >= firstRemoval(l) && x.stillSo(u) {
			mine = append(mine, u)
		}
	}
	// A reverse: is judged where its procedure is walked alone.
	own := len(x.frames) == 1 && x.frames[0].path == "" && x.top == x.reference.top
	if own {
		x.reversed[l] = true
	}
	for _, p := range l.Parts() {
		off := false
		for _, u := range mine {
			off = off || u.kind == "part" && u.part == p
		}
		if own && !off && x.has(p.OnlyWith) {
			x.fault("reverse", key("part", p.ID))
			return
		}
	}
	var todo []refUndo
	for i := len(mine) - 1; i >= 0; i-- {
		u := mine[i]
		if l.Sign == '!' && u.kind == "part" && isIn(l.Parts(), u.part) {
			continue
		}
		todo = append(todo, u)
		if l.Part() != nil && u.kind == "part" && u.part == l.Part() {
			break
		}
	}
	if len(todo) == 0 {
		return // nothing in this world; whether in none is judged later
	}
	if own {
		x.something[l] = true
	}
	x.derive(todo)
}

// derive refits, clears and resets, last first; what is begun by hand is
// tightened before the next that is not.
func (x *run) derive(todo []refUndo) {
	x.derived = true
	var inRun []*model.Part
	end := func() {
		for _, p := range inRun {
			x.tightAll(p)
		}
		inRun = nil
	}
	for i, u := range todo {
		if !x.stillSo(u) {
			continue
		}
		starts := u.kind == "part" && hasStart(u.part)
		if !starts {
			end()
		}
		switch u.kind {
		case "part":
			x.refit(u.part, u.id, inRun, todo[i+1:])
			if starts {
				inRun = append(inRun, u.part)
			} else {
				x.tightAll(u.part)
			}
		case "fastening", "fastener":
			x.set(u.id, "tight")
		case "tool":
			x.clear(u.tool, u.id)
		case "setting":
			x.set(u.id, "reset")
		}
	}
	end()
	x.derived = false
}

func hasStart(p *model.Part) bool {
	for _, h := range p.HeldBy {
		if h.To.Start != "" {
			return true
		}
	}
	return false
}

func (x *run) tightAll(p *model.Part) {
	for _, h := range p.HeldBy {
		if x.has(h.To.OnlyWith) {
			x.set(fasteningKey(h.To.ID, p.ID), "tight")
		}
	}
}

// firstRemoval is where the part after # first comes off.
func firstRemoval(l *model.Link) int {
	if l.Part() == nil {
		return 0
	}
	first := 0
	for _, s := range l.Phase().Steps {
		firstIn(s, l.Part(), &first)
	}
	return first
}

func firstIn(s *model.Step, p *model.Part, first *int) {
	for _, l := range s.Links {
		takesOff := l.Is("remove") || l.Is("disconnect") || l.Is("renew")
		if takesOff && l.To == model.Named(p) && (*first == 0 || l.At.Start < *first) {
			*first = l.At.Start
		}
	}
	for _, sub := range s.Subs {
		firstIn(sub, p, first)
	}
}
