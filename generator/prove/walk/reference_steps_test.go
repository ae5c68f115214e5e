package walk_test

import (
	"fmt"
	"maps"
	"sort"
	"strings"

	"baybinder/generator/model"
)

func (x *run) procedure(p *model.Procedure, path string) {
	x.frames = append(x.frames, &frame{p: p, path: path})
	for _, ph := range p.Phases {
		if ph.Lead != nil && x.phaseGuard(ph) {
			for _, l := range ph.Lead.Links {
				if l.Is("pause") && l.ID == "" {
					x.frame().link, x.frame().step = l, nil
					x.unbroken(ph)
					x.pause()
				}
			}
		}
		for _, s := range ph.Steps {
			x.step(s)
		}
	}
	if path == x.frames[0].path && len(x.frames) == 1 {
		return
	}
	x.frames = x.frames[:len(x.frames)-1]
	var mine []refUndo
	for _, u := range x.undos {
		if u.depth <= len(x.frames) {
			mine = append(mine, u)
		}
	}
	x.undos = mine
}

func (x *run) phaseGuard(ph *model.Phase) bool {
	if ph.Lead == nil {
		return true
	}
	for _, l := range ph.Lead.Links {
		if l.Is("when") && x.w.options[l.ID] == l.Not {
			return false
		}
	}
	return true
}

// done says whether a step is done in this world.
func (x *run) done(s *model.Step) bool {
	if s.Parent != nil && !x.done(s.Parent) || !x.phaseGuard(s.Phase) {
		return false
	}
	for _, l := range s.Links {
		switch {
		case l.Is("when"):
			if x.w.options[l.ID] == l.Not {
				return false
			}
		case l.Is("optional"):
			if x.w.choose(x.frame().path+"|optional "+s.Number, 2) == 0 {
				return false
			}
		case l.Is("if-not") || l.Is("if"):
			if !x.went(l, s) {
				return false
			}
		}
	}
	return true
}

// went says whether a hold went as the link asks.
func (x *run) went(l *model.Link, asking *model.Step) bool {
	hold := l.To.(*model.Hold)
	takings := takingsBefore(x.frame().p, hold, asking)
	if len(takings) == 0 {
		for _, own := range asking.Links {
			if own.Is("hold") && own.To == l.To {
				return true // what follows was meant for a step of its own
			}
		}
		return x.outcome(hold, nil, l)
	}
	for i := len(takings) - 1; i >= 0; i-- {
		if x.done(takings[i].step) {
			return x.outcome(hold, takings[i].link, l)
		}
	}
	return false
}

func (x *run) outcome(hold *model.Hold, taking, asks *model.Link) bool {
	k := fmt.Sprintf("%s|%s %p", x.frame().path, hold.ID, taking)
	if asks.Is("if-not") {
		return x.w.choose(k, 2) == 1
	}
	asked := answersAsked(x.frame().p, hold, taking)
	n := len(asked)
	if n < len(hold.Answers) {
		n++
	}
	v := x.w.choose(k, n)
	return v < len(asked) && asked[v] == asks.Frag()
}

// answersAsked are the answers that links ask for of one taking.
func answersAsked(p *model.Procedure, hold *model.Hold, taking *model.Link) []string {
	set := map[string]bool{}
	for _, s := range p.Steps {
		for _, l := range s.Links {
			if !l.Is("if") || l.To != model.Named(hold) {
				continue
			}
			before := takingsBefore(p, hold, s)
			if len(before) == 0 && taking == nil {
				set[l.Frag()] = true
			}
			for _, t := range before {
				if t.link == taking {
					set[l.Frag()] = true
				}
			}
		}
	}
	var out []string
	for a := range set {
		out = append(out, a)
	}
	sort.Strings(out)
	return out
}

// takingsBefore are the takings of a hold in the steps before one.
func takingsBefore(p *model.Procedure, hold *model.Hold, before *model.Step) []refTaking {
	var out []refTaking
	for _, s := range p.Steps {
		if s == before {
			continue
		}
		for _, l := range s.Links {
			if (l.Is("hold") || l.Is("again")) && l.To == model.Named(hold) && l.At.Start < before.At.Start {
				out = append(out, refTaking{l, s})
			}
		}
	}
	sort.Slice(out, func(i, j int) bool { return out[i].link.At.Start < out[j].link.At.Start })
	return out
}

// branchTaken says that the outcome of a taking was a failure and that a step
// for that is done.
func (x *run) branchTaken(l *model.Link) bool {
	hold := l.To.(*model.Hold)
	for _, s := range x.frame().p.Steps {
		for _, ask := range s.Links {
			if !ask.Is("if-not") || ask.To != model.Named(hold) {
				continue
			}
			for _, t := range takingsBefore(x.frame().p, hold, s) {
				if t.link == l && x.done(s) && x.outcome(hold, l, ask) {
					return true
				}
			}
		}
	}
	return false
}

func (x *run) step(s *model.Step) {
	x.comesTo(s)
	type piece struct {
		at   int
		link *model.Link
		sub  *model.Step
	}
	var pieces []piece
	for _, l := range s.Links {
		pieces = append(pieces, piece{at: l.At.Start, link: l})
	}
	for _, sub := range s.Subs {
		pieces = append(pieces, piece{at: sub.At.Start, sub: sub})
	}
	sort.SliceStable(pieces, func(i, j int) bool { return pieces[i].at < pieces[j].at })
	for _, p := range pieces {
		if p.sub != nil {
			x.step(p.sub)
			continue
		}
		if x.done(s) {
			x.do(p.link, s)
		}
	}
	if !x.done(s) {
		return
	}
	for _, l := range s.Links {
		if l.Is("pause") && l.ID == "" {
			x.frame().link, x.frame().step = l, s
			x.unbroken(s.Phase)
			x.pause()
		}
	}
}

func (x *run) do(l *model.Link, s *model.Step) {
	x.frame().link, x.frame().step = l, s
	top := len(x.frames) == 1
	if top {
		x.before = maps.Clone(x.state)
	}
	x.act(l, s)
	if top {
		x.tookOut()
	}
}

// noteBegan notes what the link under way took out of its normal state so far.
func (x *run) noteBegan() {
	x.tookOut()
	x.before = maps.Clone(x.state)
}

// tookOut is what the link under way took out since it was noted last.
func (x *run) tookOut() {
	for k, v := range x.state {
		was := orNormal(x.before[k], k)
		if orNormal(v, k) != was {
			x.movedBy[k] = x.frames[0].link
		}
		if orNormal(v, k) != was && (was == normalOf(k) || was == x.startOf(k) && !strings.HasPrefix(k, "part:")) {
			x.began[k] = x.frames[0].link
		}
	}
}
