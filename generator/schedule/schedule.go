// Package schedule adds up the times, people and waits of a job.
package schedule

import (
	"baybinder/generator/manual"
)

// Times is how long a job takes as it is written: one step after another, and
// nothing done during a wait. Seconds.
type Times struct {
	Work    int // hours of work: each step's time for each of its people
	Bay     int // time in the bay, waits included
	Waits   int // of Bay
	Untimed int // steps without a time
}

// Book makes and remembers the times of a manual's procedures.
type Book struct {
	times map[*manual.Procedure]*Times
}

// NewBook makes an empty book.
func NewBook() *Book { return &Book{times: map[*manual.Procedure]*Times{}} }

// Forget adds up the times of a procedure anew when they are asked for next.
func (b *Book) Forget(p *manual.Procedure) { delete(b.times, p) }

// Of is the time of a procedure with everything that it calls. Only steps at
// the top that have no sub-steps with times, and the sub-steps, count.
func (b *Book) Of(p *manual.Procedure) Times {
	if t := b.times[p]; t != nil {
		return *t
	}
	t := &Times{}
	b.times[p] = t
	for _, phase := range p.Phases {
		b.phase(t, phase)
	}
	return *t
}

// Phase is the time of one phase with everything that it calls.
func (b *Book) Phase(phase *manual.Phase) Times {
	t := &Times{}
	b.phase(t, phase)
	return *t
}

// phase adds a phase: its own time is shared out among the steps without one.
func (b *Book) phase(t *Times, phase *manual.Phase) {
	shared, people := Lead(phase)
	sharing := 0
	for _, s := range phase.Steps {
		sharing += b.step(t, s, people)
	}
	if shared > 0 && sharing > 0 {
		t.Work += shared * people
		t.Bay += shared
		return
	}
	t.Untimed += sharing
}

// Lead is the time in seconds and the people that a phase's first paragraph
// gives to all its steps.
func Lead(phase *manual.Phase) (seconds, people int) {
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

// step adds a step and returns how many steps, of it and its sub-steps, have
// no time of their own.
func (b *Book) step(t *Times, s *manual.Step, people int) (untimed int) {
	people = max(s.People, people)
	b.stops(t, s)
	seconds := int(s.Time().Base())
	t.Work += seconds * people
	t.Bay += seconds
	for _, sub := range s.Subs {
		untimed += b.step(t, sub, people)
	}
	if seconds > 0 {
		return 0
	}
	if len(s.Subs) == 0 && !onlyStops(s) {
		untimed++
	}
	return untimed
}

// stops adds the waits and the called procedures of a step.
func (b *Book) stops(t *Times, s *manual.Step) {
	for _, l := range s.Links {
		switch to := l.To.(type) {
		case *manual.Hold:
			if to.Kind == "wait" && l.Is("hold") {
				t.Bay += int(to.For.Base())
				t.Waits += int(to.For.Base())
			}
		case *manual.Procedure:
			if l.Kind.Act == manual.Call {
				called := b.Of(to)
				t.Work += called.Work
				t.Bay += called.Bay
				t.Waits += called.Waits
				t.Untimed += called.Untimed
			}
		}
	}
}

// onlyStops says that a step is a wait or a call, whose time is known already.
func onlyStops(s *manual.Step) bool {
	for _, l := range s.Links {
		if hold, ok := l.To.(*manual.Hold); ok && hold.Kind == "wait" {
			return true
		}
		if l.Kind.Act == manual.Call {
			return true
		}
	}
	return false
}
