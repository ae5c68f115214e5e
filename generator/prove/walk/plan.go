package walk

import (
	"slices"

	"baybinder/generator/model"
)

// plan is what can be said of a procedure's steps before they are walked.
type plan struct {
	asks    map[*model.Link][]taking      // of if-not: and if:, the takings before it, the latest last
	askers  map[*model.Link][]*model.Step // of a taking, the steps that ask how it went
	answers []question
}

// taking is where a hold is taken: by hold: or again:.
type taking struct {
	link *model.Link
	step *model.Step
}

// question is an ask hold whose answer is asked for.
type question struct {
	hold    *model.Hold
	taking  taking
	answers []string
}

// item is a link of a step or a sub-step, as they stand in the text.
type item struct {
	link *model.Link
	sub  *model.Step
}

// items puts the links and sub-steps of a step in reading order.
func items(s *model.Step) []item {
	out := make([]item, 0, len(s.Links)+len(s.Subs))
	links := s.Links
	for _, sub := range s.Subs {
		for len(links) > 0 && links[0].At.Start < sub.At.Start {
			out = append(out, item{link: links[0]})
			links = links[1:]
		}
		out = append(out, item{sub: sub})
	}
	for _, l := range links {
		out = append(out, item{link: l})
	}
	return out
}

func newPlan(p *model.Procedure) *plan {
	pl := &plan{asks: map[*model.Link][]taking{}, askers: map[*model.Link][]*model.Step{}}
	taken := map[*model.Hold][]taking{}
	for _, ph := range p.Phases {
		for _, s := range ph.Steps {
			pl.step(s, taken)
		}
	}
	return pl
}

func (pl *plan) step(s *model.Step, taken map[*model.Hold][]taking) {
	for _, l := range s.Links {
		if hold, asked := askedOf(l); asked {
			pl.ask(l, hold, s, taken[hold])
		}
	}
	for _, it := range items(s) {
		switch {
		case it.sub != nil:
			pl.step(it.sub, taken)
		case takes(it.link):
			if hold, _ := it.link.To.(*model.Hold); hold != nil {
				taken[hold] = append(taken[hold], taking{it.link, s})
			}
		}
	}
}

func (pl *plan) ask(l *model.Link, hold *model.Hold, s *model.Step, before []taking) {
	pl.asks[l] = slices.Clip(before)
	for _, t := range before {
		pl.askers[t.link] = append(pl.askers[t.link], s)
		pl.question(l, hold, t)
	}
	if len(before) == 0 {
		pl.question(l, hold, taking{})
	}
}

// question notes that an answer is asked for.
func (pl *plan) question(l *model.Link, hold *model.Hold, t taking) {
	if !l.Is(model.LinkIf) {
		return
	}
	for i := range pl.answers {
		q := &pl.answers[i]
		if q.hold == hold && q.taking == t {
			if !slices.Contains(q.answers, l.Frag()) {
				q.answers = append(q.answers, l.Frag())
			}
			return
		}
	}
	pl.answers = append(pl.answers, question{hold, t, []string{l.Frag()}})
}

// askedOf is the hold whose outcome a link asks about.
func askedOf(l *model.Link) (*model.Hold, bool) {
	if l.Bad || !(l.Kind.Branches) {
		return nil, false
	}
	hold, ok := l.To.(*model.Hold)
	return hold, ok
}

// takes says that the link takes a hold.
func takes(l *model.Link) bool { return l.Kind.Stops }
