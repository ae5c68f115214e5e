package walk

import (
	"slices"

	"baybinder/generator/model"
)

// plan is what can be said of a procedure's steps before they are walked. It is as
// long as the procedure, however often a hold is taken and asked about.
type plan struct {
	asks    map[*model.Link][]taking // of if-not: and if:, the takings before it, the latest last
	asked   map[*model.Hold][]asking // in the order of the steps
	from    map[*model.Link]int      // of a taking, the first of these that asks about it
	answers []question
}

// taking is where a hold is taken: by hold: or again:.
type taking struct {
	link *model.Link
	step *model.Step
}

// asking is where a step asks how a hold went that was taken so often before it.
type asking struct {
	link   *model.Link
	step   *model.Step
	before int
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
	pl := &plan{asks: map[*model.Link][]taking{}, asked: map[*model.Hold][]asking{}, from: map[*model.Link]int{}}
	taken := map[*model.Hold][]taking{}
	var holds []*model.Hold // in the order in which they are asked about
	for _, ph := range p.Phases {
		for _, s := range ph.Steps {
			holds = pl.step(s, taken, holds)
		}
	}
	for _, hold := range holds {
		pl.questions(hold, taken[hold])
	}
	return pl
}

func (pl *plan) step(s *model.Step, taken map[*model.Hold][]taking, holds []*model.Hold) []*model.Hold {
	for _, l := range s.Links {
		if hold, asked := askedOf(l); asked {
			if len(pl.asked[hold]) == 0 {
				holds = append(holds, hold)
			}
			pl.asks[l] = slices.Clip(taken[hold])
			pl.asked[hold] = append(pl.asked[hold], asking{l, s, len(taken[hold])})
		}
	}
	for _, it := range items(s) {
		switch {
		case it.sub != nil:
			holds = pl.step(it.sub, taken, holds)
		case takes(it.link):
			if hold, _ := it.link.To.(*model.Hold); hold != nil {
				pl.from[it.link] = len(pl.asked[hold])
				taken[hold] = append(taken[hold], taking{it.link, s})
			}
		}
	}
	return holds
}

// questions notes which answers of a hold are asked for, of its latest taking first:
// a later one's conditions come later in the order of the diagram, and what is put on
// top of it costs nothing.
func (pl *plan) questions(hold *model.Hold, takings []taking) {
	asked, answers := pl.asked[hold], []string(nil)
	upTo := func(taken int, t taking) {
		for ; len(asked) > 0 && asked[len(asked)-1].before > taken; asked = asked[:len(asked)-1] {
			if l := asked[len(asked)-1].link; l.Is(model.LinkIf) && !slices.Contains(answers, l.Frag()) {
				answers = append(answers, l.Frag())
			}
		}
		if len(answers) > 0 {
			pl.answers = append(pl.answers, question{hold, t, slices.Clip(answers)})
		}
	}
	for i, t := range slices.Backward(takings) {
		upTo(i, t)
	}
	answers = nil // those that are asked for before it was ever taken
	upTo(-1, taking{})
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
