// Package schedule works out how long a job takes: the time line as it is written, what decides the time, and what could go on during a wait.
//
// The order of steps is a matter of safety, so nothing is moved: a plan is the
// steps one after another. Beside it stand a bound, the shortest that the same
// work can be (path.go), and moves that the writer may think about (moves.go).
// Both rest on what each step touches (touch.go).
//
// # Decided where the format is silent
//
// The order of steps is a matter of safety, so nothing is moved: the time line is the steps as
// they are written. It is that of one kind of unit and of the ordinary outcome: a measurement and a
// look are as they should be, a question has the first answer of its register, and an optional step
// is left out. Where the machine file lists no units, every combination of the options that are
// asked about is one, within only-one-of; of more than ten options the later ones count as absent.
// A kind of unit for which no step is done is left out.
//
// Beside the time line stands a bound, the shortest that the same work can be: the longest
// chain of steps that follow each other because they touch the same thing, stop for a hold or
// stand in one step, or the work shared out among the people without a gap. A job takes no less;
// that it can be done in it is not said. A step that could go on during a wait is a thought for
// the writer, in `plan` alone: it has a time and an act, shares nothing with the wait or with a
// step that it would pass, passes no step of words only and no hold but the measuring of something
// else, and while an energy is waited for, hands stay out.
package schedule

import (
	"maps"

	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
)

// Times is how long a job takes as it is written. Seconds.
type Times struct {
	Work    int // hours of work: each step's time for each of its people
	Bay     int // time in the bay, waits included
	Waits   int // of Bay
	Untimed int // steps without a time
	People  int // at once, at most
	Least   int // the shortest that the same work can be: see Plan
}

// Book makes and remembers the times of a manual's procedures.
type Cache struct {
	walks  *walk.Result
	rows   map[*model.Procedure][]Row
	asked  map[*model.Procedure][]string
	plans  map[entry]*Plan
	called map[entry]*touches
}

// entry is a procedure on a kind of unit.
type entry struct {
	*model.Procedure
	unit string
}

// NewBook makes an empty book. The walks say what a reverse: link takes back.
func NewCache(walks *walk.Result) *Cache {
	return &Cache{
		walks: walks, rows: map[*model.Procedure][]Row{}, asked: map[*model.Procedure][]string{},
		plans: map[entry]*Plan{}, called: map[entry]*touches{},
	}
}

// Forget adds up the times of a procedure anew when they are asked for next.
func (b *Cache) Forget(p *model.Procedure) {
	delete(b.rows, p)
	delete(b.asked, p)
	maps.DeleteFunc(b.plans, func(e entry, _ *Plan) bool { return e.Procedure == p })
	maps.DeleteFunc(b.called, func(e entry, _ *touches) bool { return e.Procedure == p })
}

// entry is a procedure on a unit: the options that it does not ask about say
// nothing.
func (b *Cache) entry(p *model.Procedure, u unit) entry { return entry{p, u.key(b.askedIn(p))} }

// planFor is the time line of a procedure on a kind of unit, with everything
// that it calls. In a ring of calls a procedure counts once.
func (b *Cache) planFor(p *model.Procedure, u unit) *Plan {
	at := b.entry(p, u)
	if plan := b.plans[at]; plan != nil {
		return plan
	}
	b.plans[at] = &Plan{}
	b.plans[at] = (&view{Cache: b, unit: u}).plan(p)
	return b.plans[at]
}

// Lead is the time in seconds and the people that a phase's first paragraph
// gives to all its steps.
func Lead(phase *model.Phase) (seconds, people int) {
	people = 1
	if phase.Lead == nil {
		return 0, people
	}
	for _, l := range phase.Lead.Links {
		switch {
		case l.Bad:
		case l.Is(model.LinkTime):
			seconds = int(l.Amount().Base())
		case l.Is(model.LinkPeople):
			people = int(l.Amount().Value)
		}
	}
	return seconds, people
}

// Rough is a time as people say it: from ten minutes on without its seconds,
// which come of sharing a phase's time out. It is never more than the time.
func Rough(seconds int) int {
	if seconds/60 < 10 {
		return seconds
	}
	return seconds / 60 * 60
}
