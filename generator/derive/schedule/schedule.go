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
// they are written. Beside it stands a bound, the shortest that the same work can be: the longest
// chain of steps that follow each other because they touch the same thing, stop for a hold or
// stand in one step, or the work shared out among the people without a gap. A job takes no less;
// that it can be done in it is not said. A step that could go on during a wait is a thought for
// the writer, in `plan` alone: it has a time and an act, shares nothing with the wait or with a
// step that it would pass, passes no step of words only and no hold but the measuring of something
// else, and while an energy is waited for, hands stay out.
package schedule

import (
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
type Book struct {
	walks  *walk.Result
	plans  map[*model.Procedure]*Plan
	called map[*model.Procedure]*touches
}

// NewBook makes an empty book. The walks say what a reverse: link takes back.
func NewBook(walks *walk.Result) *Book {
	return &Book{walks: walks, plans: map[*model.Procedure]*Plan{}, called: map[*model.Procedure]*touches{}}
}

// Forget adds up the times of a procedure anew when they are asked for next.
func (b *Book) Forget(p *model.Procedure) {
	delete(b.plans, p)
	delete(b.called, p)
}

// Of is the time of a procedure with everything that it calls. Only steps at
// the top that have no sub-steps with times, and the sub-steps, count. In a
// ring of calls a procedure counts once.
func (b *Book) Of(p *model.Procedure) Times { return b.Plan(p).Times }

// Plan is the time line of a procedure. Asked again, the book is read and not
// written to.
func (b *Book) Plan(p *model.Procedure) *Plan {
	if plan := b.plans[p]; plan != nil {
		return plan
	}
	b.plans[p] = &Plan{}
	for _, call := range p.Calls {
		if to, is := call.To.(*model.Procedure); is {
			b.Plan(to)
			b.touched(to)
		}
	}
	plan := b.plan(p)
	b.plans[p] = plan
	return plan
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
		case l.Is("time"):
			seconds = int(l.Amount().Base())
		case l.Is("people"):
			people = int(l.Amount().Value)
		}
	}
	return seconds, people
}

// Rough is a time as people say it: from ten minutes on without its seconds,
// which come of sharing a phase's time out. It is never more than the time.
func Rough(seconds int) int {
	if seconds < 600 {
		return seconds
	}
	return seconds / 60 * 60
}
