package page

import (
	"fmt"
	"html"
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/manual"
	"baybinder/generator/schedule"
)

// phase makes a phase of a page.
func (s *Site) phase(up string, p *manual.Procedure, phase *manual.Phase) Phase {
	own := s.phaseOf(phase)
	v := Phase{ID: "phase-" + phase.ID, Title: s.text(up, &own.Title)}
	if own.Lead != nil {
		v.Lead = s.text(up, own.Lead)
	}
	if phase.Lead != nil {
		v.When = joined(s.conditions(p, phase.Lead.Links))
		v.Terms = terms(phase.Lead.Links)
		v.Never = slices.ContainsFunc(phase.Lead.Links, func(l *manual.Link) bool { return l.Is("pause") && l.ID == "never" })
		v.Boxes = s.boxes(up, hazardsOf(p, phase.Lead.Links))
	}
	if seconds, _ := schedule.Lead(phase); seconds > 0 {
		v.Time = duration(seconds)
	}
	n := 0
	for _, part := range own.Body {
		if part.Prose != nil {
			v.Parts = append(v.Parts, Part{Prose: s.wrapped(up, part.Prose)})
		} else if n < len(phase.Steps) {
			step := s.step(up, p, phase.Steps[n])
			v.Parts = append(v.Parts, Part{Step: &step})
			n++
		}
	}
	for _, st := range phase.Steps[n:] { // a draft's translation may lack some
		step := s.step(up, p, st)
		v.Parts = append(v.Parts, Part{Step: &step})
	}
	return v
}

// step makes a step with its sub-steps.
func (s *Site) step(up string, p *manual.Procedure, st *manual.Step) Step {
	v := Step{Number: st.Number, Anchor: Anchor(st), When: s.conditions(p, st.Links), People: st.People}
	v.Boxes = s.boxes(up, hazardsOf(p, st.Links))
	v.Terms, v.Guarded, v.Changes = terms(st.Links), guarded(v.Boxes, st.Links), changes(st.Links)
	v.Optional = slices.ContainsFunc(st.Links, func(l *manual.Link) bool { return l.Is("optional") })
	blocks := s.blocksOf(st)
	for i := range blocks {
		s.stepBlock(&v, up, &blocks[i])
	}
	for _, l := range st.Links {
		s.stepLink(&v, up, st, l)
	}
	v.Tags = append(v.Tags, s.tags(st)...)
	v.Settings = settings(st)
	v.Stand = s.stood(p.For.To, s.Walks.Stand(p, st))
	order := orderOf(st)
	v.Entries = s.entriesOf(order, st)
	for _, sub := range st.Subs {
		if order == nil {
			v.Subs = append(v.Subs, s.step(up, p, sub))
		}
	}
	if order != nil {
		v.Subs = s.rounds(up, p, st, order)
	}
	return v
}

func (s *Site) stepBlock(v *Step, up string, b *manual.Block) {
	text := s.wrapped(up, b)
	if blank(text) {
		return
	}
	switch b.Role {
	case manual.OnRefit:
		v.Refit = append(v.Refit, text)
	case manual.Why:
		v.Why = append(v.Why, Reason{text, valued(b)})
	default:
		v.Text = append(v.Text, text)
	}
}

// stepLink shows what a link makes of its step besides words.
func (s *Site) stepLink(v *Step, up string, st *manual.Step, l *manual.Link) {
	switch to := l.To.(type) {
	case *manual.Hold:
		if l.Is("hold") || l.Is("again") {
			hold := s.hold(to)
			hold.Least, hold.Working = s.leastWait(st.Of.For.To, to)
			v.Holds = append(v.Holds, hold)
		}
	case *manual.Procedure:
		if l.Kind.Act == manual.Call {
			v.Call = s.call(up, st, to)
			v.Call.Still = s.Walks.Of(st.Of).Confirms[l]
		}
	case *manual.Order:
		v.Tags = append(v.Tags, fmt.Sprintf(s.Words.InThisOrder, joined(s.entries(to))))
	case *manual.Fastener:
		v.Tags = append(v.Tags, s.fastener(l, to)...)
	}
	switch {
	case l.Is("pause") && l.ID == "":
		v.Pause = true
	case l.Is("post"):
		v.Posts = append(v.Posts, s.post(st.Of, l.ID))
	case l.Kind.Act == manual.Reverse && l.Phase != nil:
		v.Reverse = s.reverse(l)
		s.derived(v, up, st.Of, l)
	}
}

func (s *Site) post(p *manual.Procedure, id string) string {
	for _, post := range p.Posts {
		if post.Key == id {
			return post.Key + ": " + s.say(p, "posts "+post.Key, post.Value)
		}
	}
	return id
}

func (s *Site) call(up string, st *manual.Step, to *manual.Procedure) *Call {
	c := &Call{Link: s.link(up, to), People: s.Kits.Of(to).People, Then: fmt.Sprintf(s.Words.ThenBack, st.Number)}
	if t := s.Times.Of(to); t.Bay > 0 {
		c.Time = duration(t.Bay)
	}
	return c
}

// reverse says in words what a reverse: expands into.
func (s *Site) reverse(l *manual.Link) string {
	phase := s.phaseOf(l.Phase).Title.Plain
	switch l.Sign {
	case '#':
		return fmt.Sprintf(s.Words.ReverseAsFar, phase, s.name(l.Part))
	case '!':
		var names []string
		for _, p := range l.Parts {
			names = append(names, s.name(p))
		}
		return fmt.Sprintf(s.Words.ReverseBut, phase, joined(names))
	}
	return fmt.Sprintf(s.Words.ReverseAll, phase)
}

// fastener says what the shop wrote of a fastener that the step tightens.
func (s *Site) fastener(l *manual.Link, f *manual.Fastener) []string {
	var out []string
	if l.Kind.Act == manual.Tighten {
		switch {
		case len(f.Stages) > 0:
			for i, stage := range f.Stages {
				out = append(out, fmt.Sprintf(s.Words.Stage, s.name(f), i+1, stage))
			}
		case !f.Torque.IsZero():
			out = append(out, s.name(f)+": "+s.torque(f))
		}
		if len(f.Sequence) > 0 {
			out = append(out, fmt.Sprintf(s.Words.Sequence, joined(s.sayAll(f, "sequence", f.Sequence))))
		}
	}
	return out
}

// torque writes a torque with the shop's other units behind it.
func (s *Site) torque(f *manual.Fastener) string {
	text := s.limit(f.Torque)
	for _, shown := range s.Manual.Shop.ShowUnits {
		if shown.Dimension != f.Torque.Unit.Dimension() {
			continue
		}
		for _, n := range f.Torque.Numbers()[:1] {
			for _, u := range shown.Units {
				if u != n.Unit {
					text += " (" + n.In(u).String() + ")"
				}
			}
		}
	}
	return text
}

// tags are the small facts under a step: tools with their times.
func (s *Site) tags(st *manual.Step) []string {
	var out []string
	for _, l := range st.Links {
		if l.Is("role") && l.To != nil {
			out = append(out, s.name(l.To))
		}
		if l.Is("optional") {
			out = append(out, s.Words.MayBeLeftOut)
		}
	}
	if !st.Time.IsZero() {
		out = append(out, st.Time.String())
	}
	return out
}

// hazardsOf are the hazards of links as the procedure meets them.
func hazardsOf(p *manual.Procedure, links []*manual.Link) []*manual.Hazard {
	var out []*manual.Hazard
	for _, l := range links {
		h, ok := l.To.(*manual.Hazard)
		if !ok {
			continue
		}
		if met := metAs(p, h); !slices.Contains(out, met) {
			out = append(out, met)
		}
	}
	return out
}

// metAs is a hazard with the procedure's overrides.
func metAs(p *manual.Procedure, h *manual.Hazard) *manual.Hazard {
	for _, use := range p.Hazards {
		if use.To == h && use.Met != nil {
			return use.Met
		}
	}
	return h
}

// conditions are the conditions of a step as a reader says them.
func (s *Site) conditions(p *manual.Procedure, links []*manual.Link) []string {
	var out []string
	for _, l := range links {
		switch {
		case l.Bad:
		case l.Is("when"):
			name := s.option(p.For.To, l.ID)
			if l.Not {
				out = append(out, fmt.Sprintf(s.Words.OnlyWithout, name))
			} else {
				out = append(out, fmt.Sprintf(s.Words.OnlyWith, name))
			}
		case l.Is("if-not"):
			out = append(out, fmt.Sprintf(s.Words.OnlyIfFailed, s.name(l.To)))
		case l.Is("if"):
			out = append(out, fmt.Sprintf(s.Words.OnlyIfAnswer, s.name(l.To), s.answerText(l)))
		}
	}
	return out
}

func (s *Site) answerText(l *manual.Link) string {
	if hold, ok := l.To.(*manual.Hold); ok {
		for _, a := range s.answers(hold) {
			if a.Key == l.Frag {
				return a.Value
			}
		}
	}
	return l.Frag
}

// PeopleTag is how many people a step needs.
func (v *Step) PeopleTag() string { return strconv.Itoa(v.People) }

// escaped is text made safe for a page.
func escaped(text string) HTML { return HTML(html.EscapeString(strings.TrimSpace(text))) }
