// Package walk follows the effects of every step: what is live, off, loose, low or left in place, on every unit, and the refit that follows from the strip.
//
// Every thing of a machine is a small automaton. A walk goes through a
// procedure once and keeps, for each thing, its state as a function of the
// conditions: options, outcomes and optional steps (diagram.go, ledger.go). So
// all worlds are walked at once and exactly. A procedure that is called is
// walked a second time from every start at once; what comes of it is its
// summary (summary.go), which a caller applies without walking it again
// (act_do.go). The cost grows with the acts and the calls, not with the worlds
// or the depth of calls.
//
// Nothing here reads a file, and nothing imports the checks or the pages.
//
// # Decided where the format is silent
//
// A look at another thing (live-work, not-reachable, not-marked …) is told once per code and thing
// until that thing moves. Where a procedure has more than three groups of findings, what one phase
// left open is told at its first link, naming all. What a callee, walked alone, leaves otherwise
// than it should is told there, and not again at the end of its callers; else they get what its
// walk found. What one act leaves undone at the end of many is counted with those that perform them
// in turn; whether they are many, only those say at whose end it would be told. "locked" of what takes no lock means isolated. A fastener that the same `reverse:`
// tightens later is no `refit-over-open`: it was loosened with the part on. `cap:` needs a line. A
// hold beside a proof is of that energy, or of nothing that the machine has. `reverse:…#PART` cuts
// by place in the text. A part is in a run of hand starts if any of its fasteners has `start`.
// `each:` is walked once, and supplies are not multiplied by its entries. A link that cannot be
// read makes what it was probably meant for unknown, with what moves with that; where nothing is
// near, everything of its kind. What is unknown stays so to the end. A measurement beside a proof whose limit is of
// another dimension than its energy is not judged there; electric energies at or below the safe
// voltage may be shown by a look or a check. `dead-branch` is judged where a procedure is walked
// alone, and names every world in which the hold was not taken, at the first link that asks about
// it. A first look for a leak without pressure counts as made up for by a later one, in a callee too. A load counts as put back by
// `clear:` where it was released or proved. `leaves: { POINT: locked }` says of every energy that
// the point cuts that it stays so. `act-in-words` wants the verb at the beginning of a clause with
// the thing's name after its article; in a step with act links the name ends there, and none of
// them is of the thing or of what moves with it. Of a unit that has none of
// an energy's points, `unit-gap` is told at the machine's file and nothing else of that energy,
// nor of its points where they cut nothing; what the same points leave without is one gap.
// `clear:` of a tool that is not in place puts a load back that nothing else brings back. A
// kept plug that is still in is no confirmation for `lock:`. What a plug alone cuts stays dead
// over `unlock:`. An energy with `contained-by` is filled by `fill:` of a fluid that it needs
// where it has `points: []`: a circuit that is filled with its pump off pushes nothing. A hold of
// `before-isolate` or `before-restore` is asked where something goes off or comes back, not of a
// confirmation and not of `test-live:`; of a load with nothing to switch off where the last tool
// that holds it is taken away. It counts until a part comes off or a fastener is
// loosened; a tool put in place or a fluid drained ends it not. In its own step it stands before
// the act. A wait counts once the energy is isolated; waits are held against what they take at the
// first proof, and where the energy is left released, let out by hand or brought back; after
// `release:` or a `blocked-by` tool none is asked. What a callee leaves released was judged there.
// A measurement in ac says nothing of a charge. A heat with nothing to switch on
// is not judged at the end: it is hot again once the machine runs. An energy with nothing to switch off counts as on
// until it is released or proved. What else a step asks of holds is taken as so where
// `dead-branch` is judged.
package walk

import (
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/parallel"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// Result is what the walks of a manual's procedures found.
type Result struct {
	Machines []finding.Finding // of the machine files: serial numbers
	Common   []finding.Finding // what many procedures leave undone by one act of what they perform

	walks  map[*model.Procedure]*Walk
	shared *shared
}

// Walk is what the walk of one procedure found.
type Walk struct {
	Done      bool              // false where the procedure, or one that it calls, could not be walked
	Findings  []finding.Finding // in no order
	Acts      int               // typed acts whose order was checked, derived ones included
	Words     []*model.Step     // steps that are words only
	Reversals []Reversal        // of its reverse: links, in reading order
	Confirms  map[*model.Link]bool
	Locked    int // the most points that it has locked at once, through its calls

	changes []change
	debts   []debt
	openers map[spot]*model.Link
}

// Of is what the walk of a procedure found; never nil.
func (r *Result) Of(p *model.Procedure) *Walk {
	if w := r.walks[p]; w != nil {
		return w
	}
	return &Walk{}
}

// Reversal is what a reverse: link expands to.
func (w *Walk) Reversal(l *model.Link) *Reversal {
	for i := range w.Reversals {
		if w.Reversals[i].Link == l {
			return &w.Reversals[i]
		}
	}
	return nil
}

// Findings is everything that was found, in no order.
func (r *Result) Findings(m *model.Manual) []finding.Finding {
	list := slices.Concat(r.Machines, r.Common)
	for _, p := range m.Procedures {
		list = append(list, r.Of(p).Findings...)
	}
	return list
}

// Owes says that the procedure leaves undone what a call did: how that is told
// hangs on what others leave.
func (w *Walk) Owes() bool { return len(w.debts) > 0 }

// All walks every procedure of a manual.
func All(m *model.Manual) *Result { return all(newShared(m, Placed(m))) }

// Some walks the procedures of a part of a manual that holds all that they
// perform. placed are the tools of the whole.
func Some(m *model.Manual, placed []*model.Tool) *Result { return all(newShared(m, placed)) }

func all(s *shared) *Result {
	m := s.manual
	s.summarizeAll()
	walks := make([]*Walk, len(m.Procedures))
	parallel.Each(len(walks), func(i int) { walks[i] = s.walk(m.Procedures[i]) })
	r := &Result{walks: make(map[*model.Procedure]*Walk, len(walks)), shared: s}
	for i, p := range m.Procedures {
		r.walks[p] = walks[i]
	}
	s.walks = r.walks
	r.Common = s.tellOnce(walks)
	for i, p := range m.Procedures {
		r.walks[p] = walks[i]
	}
	for _, machine := range m.Machines {
		r.Machines = append(r.Machines, serials(machine)...)
	}
	return r
}

// Again walks procedures anew, after some of them were bound anew: those, and
// of what performs them as much as is to be known.
func (r *Result) Again(list ...*model.Procedure) {
	s := r.shared
	ring := inCycle(list)
	for _, p := range list {
		s.place(p)
		s.inCycle[p] = ring[p]
	}
	for c := range s.summaries {
		if slices.Contains(list, c.procedure) {
			delete(s.summaries, c)
		}
	}
	for _, p := range list {
		if s.walkable(p) {
			s.summarizeBelow(called{p, s.layouts[p.For.To]})
		}
		r.walks[p] = s.walk(p)
	}
}

// Forget gives up what Again needs; at ten thousand procedures that is much.
func (r *Result) Forget() { r.shared = nil }

// summarizeBelow makes the summaries that are missing of what a procedure
// calls.
func (s *shared) summarizeBelow(c called) {
	for _, q := range s.calls(c) {
		if s.summaries[q] == nil {
			s.summarizeBelow(q)
			s.summaries[q] = summarize(s, q.procedure, q.layout)
		}
	}
}

// shared is what the walks of a manual have in common.
type shared struct {
	manual    *model.Manual
	layouts   map[*model.Machine]*layout
	summaries map[called]*summary
	walks     map[*model.Procedure]*Walk
	elsewhere map[act]bool              // told at the act, and not where it is performed
	inCycle   map[*model.Procedure]bool // in a ring of calls, or calling into one
	tellAll   bool                      // tests: what stands as it stood is told again
}

// called is a procedure as it is called by one for a machine: a procedure for
// no machine can be called by those for any.
type called struct {
	procedure *model.Procedure
	layout    *layout
}

func newShared(m *model.Manual, tools []*model.Tool) *shared {
	s := &shared{manual: m, layouts: map[*model.Machine]*layout{}, summaries: map[called]*summary{}}
	s.layouts[nil] = newLayout(nil, tools)
	for _, machine := range m.Machines {
		s.layouts[machine] = newLayout(machine, tools)
		s.layouts[machine].timings(m.Shop)
	}
	s.inCycle = inCycle(m.Procedures)
	return s
}

// walkable says whether a procedure can be walked: it and its machine could be
// read, and it is in no ring of calls.
func (s *shared) walkable(p *model.Procedure) bool {
	if p.Broken || p.Unread || s.inCycle[p] {
		return false
	}
	if p.For.ID == "" {
		return !p.Lost("for")
	}
	return p.For.To != nil && !p.For.To.Unread
}

// summary is what a caller needs of a procedure; nil where it was not walked.
func (s *shared) summary(p *model.Procedure, lay *layout) *summary {
	return s.summaries[called{p, lay}]
}

// walk walks one procedure from what it expects.
func (s *shared) walk(p *model.Procedure) *Walk {
	out := &Walk{Words: wordsOnly(p)}
	if !s.walkable(p) {
		return out
	}
	w := newWalk(s, p, s.layouts[p.For.To], false)
	w.out = out
	w.run()
	w.supplied()
	out.Done = true
	out.debts, out.openers = w.debts(), w.openers()
	out.Locked = w.mostLocked()
	out.Acts = w.followed + derivedActs(out.Reversals)
	out.Findings = append(w.findings(), actsInWords(p, w.lay, tongueOf(w.manual.Shop.Language))...)
	w.Free()
	return out
}

// walk is one walk of one procedure.
type walk struct {
	ledger
	*shared
	p           *model.Procedure
	plan        *plan
	guardOf     map[*model.Step]pathCondition
	outcomes    map[outcome]latest             // of the holds that were asked about so far
	gone        map[*model.Hold][]diagram.Func // where one of the steps that ask is done, from each on
	leadOf      map[*model.Phase]pathCondition
	home        []diagram.Func // how things stand at the start where the procedure is walked alone
	unlikeHomes bool           // some stand one way on one unit and another way on another
	out         *Walk

	issues   []issue
	left     []issue        // what is left undone at the end
	never    []position.Pos // links that apply to no unit
	missing  []missing
	wanted   []want
	needs    []need
	faults   map[fault]int
	athome   []diagram.Func // by fault, where it is there when the procedure is walked alone
	openings []opening
	counted  []debt                // what is left undone and told in what is performed
	owed     map[owed]diagram.Func // where a call left a thing as its callee should not
	firsts   []diagram.Func        // by group, the first opening in each world, counted from 1
	waiting  []tooEarly
	lost     map[*model.Hold][]lostProof
	undoings []undoing
	moments  []moment // after each act that locks, also in calls
	looks    []look
	taken    map[*model.Hold]diagram.Func // where a hold was taken; of nil, where any may have been
	missed   map[*model.Hold]diagram.Func // where it is told that it was not
	deriving bool
	byHand   map[*model.Part]diagram.Func // where what holds it is begun by hand, and what is under it is judged when it is tightened
	followed int                          // acts of its own steps that were followed
	waited   []diagram.Func               // by energy, which of the tallies is so
	tallies  []tally
	demands  []demand
	applying bool // how a call leaves things is taken over

	openedBefore bool         // the line under judgement was opened before the procedure began
	from         *need        // the callee's need that is judged
	movedIn      diagram.Func // where the callee moved the thing of that need
	shown        []diagram.Func
	screws       []thing        // that the step under way opened
	anyOpen      diagram.Func   // where anything is off, loose or altered
	tested       []diagram.Func // by energy, where it was put on for a test
	completed    int
}

func newWalk(s *shared, p *model.Procedure, lay *layout, free bool) *walk {
	n := len(lay.things)
	w := &walk{
		ledger: newLedger(lay), shared: s, p: p, plan: newPlan(p),
		leadOf: map[*model.Phase]pathCondition{}, home: make([]diagram.Func, n),
		firsts: make([]diagram.Func, n), faults: map[fault]int{}, owed: map[owed]diagram.Func{}, lost: map[*model.Hold][]lostProof{}, byHand: map[*model.Part]diagram.Func{}, taken: map[*model.Hold]diagram.Func{}, missed: map[*model.Hold]diagram.Func{},
	}
	w.free = free
	w.waited, w.tallies, w.tested = make([]diagram.Func, n), firstTallies(), make([]diagram.Func, n)
	return w
}

// run walks the procedure from its start to its end.
func (w *walk) run() {
	w.begin()
	if !w.free {
		copy(w.start, w.home)
		w.shown = make([]diagram.Func, len(w.home))
		w.standsAtStart()
		for _, x := range w.lay.slow {
			if !w.waitsAtHome(x) {
				w.waited[x] = notKnown
			}
		}
	}
	w.guards()
	if !w.free {
		w.applies()
		w.out.Confirms = map[*model.Link]bool{}
	}
	w.steps()
	w.finish()
}

// actsOf are the typed acts of a procedure's own steps.
func (s *shared) actsOf(p *model.Procedure) []*model.Link {
	var out []*model.Link
	for _, step := range p.Steps {
		for _, l := range step.Links {
			if l.Kind.Act != model.NoAct && !l.Bad {
				out = append(out, l)
			}
		}
	}
	return out
}

// wordsOnly are the steps without an act or a hold that have no sub-steps.
func wordsOnly(p *model.Procedure) []*model.Step {
	var out []*model.Step
	for _, s := range p.Steps {
		typed := func(l *model.Link) bool { return l.Kind.Act != model.NoAct || takes(l) }
		if len(s.Subs) == 0 && !slices.ContainsFunc(s.Links, typed) {
			out = append(out, s)
		}
	}
	return out
}
