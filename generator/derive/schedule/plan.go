package schedule

import (
	"slices"

	"baybinder/generator/model"
)

// Plan is the time line of a procedure on a kind of unit: its steps one after another. During a
// wait go on only the sub-steps of the wait's own step that have nothing to do
// with it.
//
// Least is the shortest that the same work can be, whatever its order: the
// longest chain of steps that follow each other because they touch the same
// thing, stop for a hold, or stand in one step; or, with so many People, the
// work shared out among them without a gap. Sub-steps that go on during a wait
// follow what their step does before it, and not the wait. Steps of words only are
// in no chain but that of their own step: what they touch is not known. So a job
// takes no less than Least; that it can be done in Least is not said.
type Plan struct {
	Times
	Phases   []Phase
	Chain    int           // seconds of the longest chain
	Critical []*model.Step // the steps of the longest chain, in their order
	Varies   bool          // some of its units have fewer steps without a time
}

// Phase is a phase of a plan.
type Phase struct {
	*model.Phase
	Times
	From, To int // seconds after the start
	Spans    []Span
	Seconds  []model.Second // who is needed besides the people, at which step
	Varies   bool           // as of Plan
	Waited   []Waited       // what Waits is the sum of
}

// Waited is how long a step waits by the clock, or what it performs does.
type Waited struct {
	Step    *model.Step
	Seconds int
}

// Doing is what goes on in a span.
type Doing uint8

// What goes on: work, a wait, or a procedure that is performed.
const (
	Work Doing = iota
	Wait
	Call
)

// Span is a time in which one thing goes on.
type Span struct {
	Doing
	Step     *model.Step
	From, To int // seconds after the start
	People   int // 0 in a wait
	Beside   int // people besides, who see a check done
}

func (v *view) plan(p *model.Procedure) *Plan {
	m := v.line(p)
	m.plan.Chain, m.plan.Critical = m.critical()
	m.plan.People = max(m.plan.People, p.People, 1)
	m.plan.Least = AtLeast(m.plan.Chain, m.plan.Work, m.plan.People)
	return m.plan
}

// line is a plan in the making, with the tasks of its bound.
type line struct {
	*view
	plan   *Plan
	phase  *Phase
	now    int                      // seconds after the start
	shares map[*model.Step]int      // seconds of the phase's time that steps without one get
	given  map[*model.Phase]bool    // its time is shared out
	net    map[*model.Step]*touches // what each step touches

	tasks   []Task
	steps   []*model.Step // by task
	spots   map[model.Named]*spot
	barrier int   // the task that all later ones follow; -1 for none
	since   []int // the tasks after it
	top     int   // the last task of this step at the top; -1 for none
	after   []int // of the last task, to be written over
}

// spot says which tasks touched a thing last.
type spot struct {
	changed int // -1 for none
	looked  []int
}

func (v *view) line(p *model.Procedure) *line {
	m := &line{
		view: v, plan: &Plan{}, barrier: -1, spots: map[model.Named]*spot{},
		shares: map[*model.Step]int{}, given: map[*model.Phase]bool{}, net: make(map[*model.Step]*touches, len(p.Steps)),
		tasks: make([]Task, 0, len(p.Steps)), steps: make([]*model.Step, 0, len(p.Steps)),
	}
	for _, phase := range p.Phases {
		m.share(phase)
	}
	phases := m.donePhases(p)
	m.plan.Phases = make([]Phase, len(phases))
	for i, phase := range phases {
		m.phase = &m.plan.Phases[i]
		m.phase.Phase, m.phase.From = phase, m.now
		m.phase.Spans = make([]Span, 0, len(phase.Steps))
		for _, s := range phase.Steps {
			m.top = -1
			m.step(s)
		}
		m.phase.To = m.now
		m.phase.Bay = m.now - m.phase.From
		m.plan.add(m.phase.Times)
	}
	return m
}

// donePhases are the phases of which a step is done, or that have none.
func (v *view) donePhases(p *model.Procedure) []*model.Phase {
	return slices.DeleteFunc(slices.Clone(p.Phases), func(phase *model.Phase) bool {
		return v.skips(phase) || len(phase.Steps) > 0 && !slices.ContainsFunc(phase.Steps, v.done)
	})
}

// add adds what comes after.
func (t *Times) add(o Times) {
	t.Work, t.Bay, t.Waits = t.Work+o.Work, t.Bay+o.Bay, t.Waits+o.Waits
	t.Untimed, t.People = t.Untimed+o.Untimed, max(t.People, o.People)
}

// share shares a phase's own time out among its steps without one, to the
// second: where all that have none are waits and calls, whose times are known,
// it is what is done about them.
func (m *line) share(phase *model.Phase) {
	seconds, _ := Lead(phase)
	if seconds == 0 {
		return
	}
	steps := m.without(phase.Steps, untimed)
	if len(steps) == 0 {
		steps = m.without(phase.Steps, noTime)
	}
	if len(steps) == 0 {
		return
	}
	m.given[phase] = true
	for i, s := range steps {
		m.shares[s] = seconds*(i+1)/len(steps) - seconds*i/len(steps)
	}
}

// without are the steps and sub-steps that are done and have no time.
func (v *view) without(list []*model.Step, time func(*model.Step) bool) []*model.Step {
	var out []*model.Step
	for _, s := range list {
		if !v.done(s) {
			continue
		}
		if time(s) {
			out = append(out, s)
		}
		out = append(out, v.without(s.Subs, time)...)
	}
	return out
}

// Given is the time in seconds that a phase's first paragraph gives to its
// steps; 0 where each of them has its own.
func Given(phase *model.Phase) int {
	seconds, _ := Lead(phase)
	if len((&view{everything: true}).without(phase.Steps, noTime)) == 0 {
		return 0
	}
	return seconds
}

// noTime says that a step without sub-steps has no time of its own.
func noTime(s *model.Step) bool { return s.Time().Base() == 0 && len(s.Subs) == 0 }

// untimed says that a step without sub-steps has no time of its own, and is no
// wait or call, whose time is known already.
func untimed(s *model.Step) bool {
	return noTime(s) && !slices.ContainsFunc(s.Links, func(l *model.Link) bool { return waitOf(l) != nil || l.Kind.Act == model.Call })
}

// waitOf is the wait that a link takes; nil for none.
func waitOf(l *model.Link) *model.Hold {
	if h, is := l.To.(*model.Hold); is && h.Kind == "wait" && l.Is(model.LinkHold) {
		return h
	}
	return nil
}

// step puts a step on the line: its own work, what it performs, its waits, and
// its sub-steps.
func (m *line) step(s *model.Step) {
	if !m.done(s) {
		return
	}
	m.second(s.Seconds())
	m.work(s)
	from, top, barrier := m.now, m.top, m.barrier
	for _, l := range s.Links {
		to, calls := l.To.(*model.Procedure)
		switch hold := waitOf(l); {
		case hold != nil:
			m.wait(s, hold)
		case calls && l.Kind.Act == model.Call:
			m.call(s, m.planFor(to, m.unit))
		}
	}
	if !m.sidesteps(s) {
		m.subs(s)
		return
	}
	// They follow what is done before the wait and not the wait.
	over, wait, stop := m.now, m.top, m.barrier
	m.now, m.top, m.barrier = from, top, barrier
	m.subs(s)
	m.now, m.top, m.barrier = max(m.now, over), wait, stop
}

func (m *line) subs(s *model.Step) {
	for _, sub := range s.Subs {
		m.step(sub)
	}
}

// work puts a step's own time on the line.
func (m *line) work(s *model.Step) {
	people, _ := s.Crew()
	seconds := m.own(s)
	if m.refit(s, seconds, people) {
		return
	}
	if seconds == 0 && untimed(s) && !m.given[s.Phase] {
		m.phase.Untimed++
	}
	m.spend(s, Span{Doing: Work, People: people}, seconds, seconds*people)
}

// own is the time of a step: its own, else its share of its phase's.
func (m *line) own(s *model.Step) int {
	if seconds := int(s.Time().Base()); seconds > 0 {
		return seconds
	}
	return m.shares[s]
}

// refit puts the steps on the line that follow from the strip, each with the
// people of the step that it takes back. They take as long as those steps, or
// share what the reversing step says. It is false where that is no time.
func (m *line) refit(s *model.Step, seconds, people int) bool {
	back := m.takenBack(s)
	if seconds == 0 && untimed(s) {
		for _, from := range back {
			seconds += m.own(from)
		}
	}
	if seconds == 0 || len(back) == 0 {
		return false
	}
	for i, part := range m.parts(back, seconds) {
		crew, _ := back[i].Crew()
		crew = max(crew, people)
		m.spend(s, Span{Doing: Work, People: crew}, part, part*crew)
	}
	return true
}

// parts share a time out as steps have theirs, and evenly where none has any.
func (m *line) parts(steps []*model.Step, seconds int) []int {
	weights, sum := make([]int, len(steps)), 0
	for i, s := range steps {
		weights[i] = m.own(s)
		sum += weights[i]
	}
	out := make([]int, len(steps))
	before, after := 0, 0
	for i := range steps {
		if sum == 0 {
			out[i] = seconds*(i+1)/len(steps) - seconds*i/len(steps)
			continue
		}
		after += weights[i]
		out[i] = seconds*after/sum - seconds*before/sum
		before = after
	}
	return out
}

// takenBack are the steps of the strip that a step takes back.
func (m *line) takenBack(s *model.Step) []*model.Step {
	var out []*model.Step
	for _, l := range s.Links {
		if l.Kind.Act != model.Reverse {
			continue
		}
		if r := m.walks.Of(s.Of).Reversal(l); r != nil {
			for _, d := range r.Steps {
				if m.done(d.From) && !slices.Contains(out, d.From) {
					out = append(out, d.From)
				}
			}
		}
	}
	return out
}

// spend puts time on the line, and its task into the bound.
func (m *line) spend(s *model.Step, span Span, seconds, work int) {
	m.phase.Work += work
	m.phase.People = max(m.phase.People, span.People)
	span.Step, span.From, span.To = s, m.now, m.now+seconds
	if span.Doing == Work {
		span.Beside = len(s.Seconds())
	}
	if m.now = span.To; seconds != 0 {
		m.phase.Spans = append(m.phase.Spans, span)
	}
	m.task(s, Task{Seconds: seconds, People: span.People})
}

// second notes who is needed besides at a step. They are no people of the job:
// its work and its bound are those of its own.
func (m *line) second(list []model.Second) {
	for _, second := range list {
		m.phase.Seconds = model.AddSecond(m.phase.Seconds, second)
	}
}

func (m *line) call(s *model.Step, t *Plan) {
	for _, ph := range t.Phases {
		for _, second := range ph.Seconds {
			m.second([]model.Second{{Step: s, By: second.By}})
		}
	}
	m.spend(s, Span{Doing: Call, People: t.People}, t.Bay, t.Work)
	m.waits(s, t.Waits)
	m.phase.Untimed += t.Untimed
	m.tasks[len(m.tasks)-1].Seconds = t.Least
}

func (m *line) wait(s *model.Step, h *model.Hold) {
	seconds := int(h.For.Least.Base())
	m.waits(s, seconds)
	m.spend(s, Span{Doing: Wait}, seconds, 0)
}

func (m *line) waits(s *model.Step, seconds int) {
	if seconds == 0 {
		return
	}
	m.phase.Waits += seconds
	m.phase.Waited = append(m.phase.Waited, Waited{s, seconds})
}

// task adds a task of a step behind all that it must follow.
func (m *line) task(s *model.Step, t Task) {
	i, after := len(m.tasks), m.after[:0]
	if m.top >= 0 {
		after = append(after, m.top)
	}
	if m.barrier >= 0 {
		after = append(after, m.barrier)
	}
	net := m.net[s]
	if net == nil {
		net = m.view.step(s)
		m.net[s] = net
	}
	for _, n := range net.things {
		after = m.touch(after, n, i)
	}
	if net.all {
		after = append(after, m.since...)
		m.barrier, m.since = i, nil
	} else {
		m.since = append(m.since, i)
	}
	slices.Sort(after)
	t.After, m.after = slices.Clone(slices.Compact(after)), after
	m.tasks, m.steps, m.top = append(m.tasks, t), append(m.steps, s), i
}

// touch notes that a task touches a thing, and adds what it must follow.
func (m *line) touch(after []int, n thing, task int) []int {
	at := m.spots[n.Named]
	if at == nil {
		at = &spot{changed: -1}
		m.spots[n.Named] = at
	}
	if at.changed >= 0 {
		after = append(after, at.changed)
	}
	if !n.changed {
		at.looked = append(at.looked, task)
		return after
	}
	after = append(after, at.looked...)
	at.changed, at.looked = task, nil
	return after
}

// critical is the longest chain and its steps.
func (m *line) critical() (seconds int, steps []*model.Step) {
	seconds, chain := Longest(m.tasks)
	for _, i := range chain {
		if m.tasks[i].Seconds != 0 && (len(steps) == 0 || steps[len(steps)-1] != m.steps[i]) {
			steps = append(steps, m.steps[i])
		}
	}
	return seconds, steps
}

// LongWaits are the waits of a procedure's own steps that are a tenth of the
// time in the bay or more, the longest first.
func (p *Plan) LongWaits() []Span {
	var out []Span
	for _, ph := range p.Phases {
		for _, s := range ph.Spans {
			if s.Doing == Wait && 10*(s.To-s.From) >= p.Bay {
				out = append(out, s)
			}
		}
	}
	slices.SortStableFunc(out, func(a, b Span) int { return (b.To - b.From) - (a.To - a.From) })
	return out
}
