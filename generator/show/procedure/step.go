package procedure

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/base/quantity"
	"baybinder/generator/derive/implied"
	"baybinder/generator/derive/schedule"
	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/show/page"
)

// phase makes a phase of a page.
func (s *Pages) phase(up string, c *course, phase *model.Phase) Phase {
	p := c.Procedure
	own := s.PhaseOf(phase)
	v := Phase{ID: "phase-" + phase.ID, Title: s.Text(up, &own.Title)}
	if own.Lead != nil && !onlyWhen(own.Lead) {
		v.Lead = s.Text(up, own.Lead)
	}
	if phase.Lead != nil {
		v.When = s.untold(p, phase.Lead.Links, c.whole)
		v.Terms = terms(phase.Lead.Links)
		v.Never = slices.ContainsFunc(phase.Lead.Links, func(l *model.Link) bool { return l.Is(model.LinkPause) && l.ID == "never" })
		v.Boxes = s.Boxes(up, HazardsOf(p, phase.Lead.Links))
	}
	if seconds := schedule.Given(phase); seconds > 0 {
		v.Time = page.Duration(seconds)
	}
	v.Parts = make([]Part, 0, len(own.Body))
	n := 0
	for _, part := range own.Body {
		if part.Prose != nil {
			v.Parts = append(v.Parts, Part{Prose: s.wrapped(up, part.Prose)})
		} else if n < len(phase.Steps) {
			v.Parts = append(v.Parts, Part{Step: s.step(up, c, phase.Steps[n])})
			n++
		}
	}
	for _, st := range phase.Steps[n:] { // a draft's translation may lack some
		v.Parts = append(v.Parts, Part{Step: s.step(up, c, st)})
	}
	v.tell()
	return v
}

// step makes a step with its sub-steps.
func (s *Pages) step(up string, c *course, st *model.Step) *Step {
	p := c.Procedure
	v := &Step{Number: st.Number, Anchor: page.Anchor(st), When: s.untold(p, st.Links, c.told(st)), People: st.People}
	v.Boxes = s.Boxes(up, HazardsBefore(st))
	if n := s.OpenNotes(st); n > 0 {
		v.Said = fmt.Sprintf(s.JobWords().SaidHere, n)
	}
	v.Terms, v.Guarded, v.Changes = terms(st.Links), guarded(v.Boxes, st.Links), changes(st.Links)
	if c, is := implied.When(st); is {
		v.When = append(v.When, Condition{s.onlyWith(p, c.Option, c.Not), true})
		v.Terms.Options = strings.TrimSpace(v.Terms.Options + " " + optionTerm(c.Option, c.Not))
	}
	v.Optional = slices.ContainsFunc(st.Links, func(l *model.Link) bool { return l.Is(model.LinkOptional) })
	blocks := s.BlocksOf(st)
	for i := range blocks {
		s.stepBlock(v, up, &blocks[i])
	}
	for _, l := range st.Links {
		s.stepLink(v, up, c, st, l)
	}
	pressWaits(v, st)
	v.Tags = append(append(s.tags(v.Tags, st), s.keptPlugs(st)...), s.testedAltered(st)...)
	v.Computed = s.Computed(st, c.again)
	v.Posts = s.posts(st, v.Posts)
	v.Stand = s.standAfter(c, st)
	order := orderOf(st)
	v.Entries = s.entriesOf(order, st)
	for _, sub := range st.Subs {
		if order == nil {
			v.Subs = append(v.Subs, *s.step(up, c, sub))
		}
	}
	if order != nil {
		v.Subs = s.rounds(up, c, st, order)
	}
	return v
}

func (s *Pages) stepBlock(v *Step, up string, b *model.Block) {
	text := s.wrapped(up, b)
	if page.Blank(text) {
		return
	}
	switch b.Role {
	case model.OnRefit:
		v.Refit = append(v.Refit, text)
	case model.Why:
		v.Why = append(v.Why, Reason{text, valued(b)})
	default:
		v.Text = append(v.Text, text)
	}
}

// stepLink shows what a link makes of its step besides words.
func (s *Pages) stepLink(v *Step, up string, c *course, st *model.Step, l *model.Link) {
	switch to := l.To.(type) {
	case *model.Hold:
		if l.Kind.Stops {
			hold := s.HoldView(to)
			if least, w := s.LeastWait(st.Of.For.To, to); least != "" {
				hold.Computed = []page.Computed{{Title: words.Fill(s.Words.Computed, least), Working: w}}
			}
			v.Holds = append(v.Holds, hold)
		}
	case *model.Procedure:
		if l.Kind.Act == model.Call {
			v.Call = s.call(up, st, to)
			v.Call.Still = s.Walks.Of(st.Of).Confirms[l]
		}
	case *model.Order:
		v.Tags = append(v.Tags, fmt.Sprintf(s.Words.InThisOrder, page.Joined(s.entries(to))))
	case *model.Part:
		v.Tags = append(v.Tags, s.part(st, l, to)...)
	case *model.Fastener:
		v.Tags = append(v.Tags, s.fastener(l, to, c.again[l])...)
		if l.Kind.Act == model.Tighten && !pictured(st.Of, to) {
			v.Orders = append(v.Orders, s.order(to, heldAt(l, to))...)
		}
	}
	switch {
	case l.Is(model.LinkPause) && l.ID == "":
		v.Pause = true
	case l.Is(model.LinkWithin) && !l.Bad:
		s.within(v, l)
	case l.Is(model.LinkPost):
		v.Posts = append(v.Posts, s.post(st.Of, l.ID))
	case l.Kind.Act == model.Reverse && l.Phase() != nil:
		v.Reverse = s.Reverse(l)
		s.derived(v, up, st.Of, l)
	}
}

// within says by when the step ends.
func (s *Pages) within(v *Step, l *model.Link) {
	term, says := strconv.Itoa(int(l.Amount().Base())), fmt.Sprintf(s.Words.WithinOfBefore, l.Amount())
	if l.Step() != nil {
		term += "#" + page.Anchor(l.Step())
		says = fmt.Sprintf(s.Words.WithinOf, l.Amount(), l.Step().Number)
	}
	v.Within = strings.TrimSpace(v.Within + " " + term)
	v.Tags = append(v.Tags, says)
}

// posts are the words of a step's posts; in a step for several people those of
// the others too, who stand there all the while.
func (s *Pages) posts(st *model.Step, named []string) []string {
	if st.People < 2 || len(named) == 0 {
		return named
	}
	for _, post := range st.Of.Posts {
		if words := s.post(st.Of, post.Key); !slices.Contains(named, words) {
			named = append(named, words)
		}
	}
	return named
}

func (s *Pages) post(p *model.Procedure, id string) string {
	for _, post := range p.Posts {
		if post.Key == id {
			return post.Key + ": " + s.Say(p, "posts "+post.Key, post.Value)
		}
	}
	return id
}

func (s *Pages) call(up string, st *model.Step, to *model.Procedure) *Call {
	c := &Call{Link: s.Link(up, to), People: s.Kits.Of(to).People, Then: fmt.Sprintf(s.Words.ThenBack, st.Number)}
	c.Time = s.BayTime(to)
	return c
}

// Reverse says in words what a reverse: expands into.
func (s *Pages) Reverse(l *model.Link) string {
	phase := s.PhaseOf(l.Phase()).Title.Plain
	switch l.Sign {
	case '#':
		return fmt.Sprintf(s.Words.ReverseAsFar, phase, s.Name(l.Part()))
	case '!':
		var names []string
		for _, p := range l.Parts() {
			names = append(names, s.Name(p))
		}
		return fmt.Sprintf(s.Words.ReverseBut, phase, page.Joined(names))
	}
	return fmt.Sprintf(s.Words.ReverseAll, phase)
}

// fastener says what the shop wrote of a fastener that the step tightens: of one
// that is tight already the last stage alone.
func (s *Pages) fastener(l *model.Link, f *model.Fastener, again bool) []string {
	var out []string
	if l.Kind.Act == model.Tighten {
		switch {
		case len(f.Stages) == 1: // of one there is no order
			out = append(out, s.Name(f)+": "+s.Both(f.Stages[0]))
		case len(f.Stages) > 0:
			for i, stage := range f.Stages {
				if !again && !lastOnly(l, f) || i == len(f.Stages)-1 {
					out = append(out, fmt.Sprintf(s.Words.Stage, s.Name(f), i+1, s.Both(stage)))
				}
			}
		case !f.Torque.IsZero():
			out = append(out, s.Name(f)+": "+s.BothLimit(f.Torque))
		case f.ByHand:
			out = append(out, s.Name(f)+": "+s.Speaks.Several.ByHand)
		}
		out = append(out, s.tightenedHow(f)...)
	}
	return out
}

// part says what the shop wrote of a part that the step takes out for good, or
// puts on: what becomes of the old one, what is new, and how its fasteners are
// begun.
func (s *Pages) part(st *model.Step, l *model.Link, p *model.Part) (said []string) {
	switch l.Kind.Act {
	case model.Renew:
		if p.Old != "" {
			said = append(said, fmt.Sprintf(s.Words.OldOne, s.Say(p, "old", p.Old)))
		}
	case model.Refit:
		if renewed(st.Of, p) {
			said = append(said, s.newOne(p)...)
		}
		for _, h := range p.HeldBy {
			said = append(said, s.newFastener(h.To)...)
		}
	default: // of nothing else is more declared
	}
	return said
}

// newFastener is whether a fastener goes in new, and how it is begun.
func (s *Pages) newFastener(f *model.Fastener) (said []string) {
	if f == nil {
		return nil
	}
	if to := f.RenewWith.To; to != nil {
		said = append(said, s.Name(f)+": "+fmt.Sprintf(s.Words.NewFastener, s.Name(to)))
	}
	if f.Start != "" {
		said = append(said, s.Name(f)+": "+fmt.Sprintf(s.Words.Start, s.Say(f, "start", f.Start)))
	}
	return said
}

// renewed says that a procedure takes a part out for good.
func renewed(p *model.Procedure, part *model.Part) bool {
	return slices.ContainsFunc(p.Steps, func(st *model.Step) bool {
		return slices.ContainsFunc(st.Links, func(l *model.Link) bool { return l.Kind.Act == model.Renew && l.To == part })
	})
}

// lastOnly says that the link's own words name the last stage and no other: a
// check of what is tight, which begins with no stage again.
func lastOnly(l *model.Link, f *model.Fastener) bool {
	last, named := f.Stages[len(f.Stages)-1].String(), 0
	for _, q := range quantity.Find(l.Text) {
		if !q.Fits(quantity.Torque) && !q.Fits(quantity.Angle) {
			continue
		}
		if q.String() != last {
			return false
		}
		named++
	}
	return named > 0
}

// heldAt is how many of a fastener a tighten: link is about: those of the part
// that it names, else of the only part that they hold; 0 where that is not one.
func heldAt(l *model.Link, f *model.Fastener) int {
	switch {
	case l.Part() != nil:
		return page.FastenersAt(l.Part(), f)
	case len(f.Holds) == 1:
		return page.FastenersAt(f.Holds[0], f)
	}
	return 0
}

// pictured says that a procedure shows a picture in a step about a fastener: the
// shop's own goes before a drawing that knows only a count, and of two orders on
// one page one too many is followed.
func pictured(p *model.Procedure, f *model.Fastener) bool {
	return slices.ContainsFunc(p.Steps, func(st *model.Step) bool {
		shows, names := false, false
		for _, b := range st.Blocks {
			for _, l := range b.Links {
				shows, names = shows || l.Kind == model.PictureLink, names || l.To == f
			}
		}
		return shows && names
	})
}

// order is the sequence of so many fasteners, drawn.
func (s *Pages) order(f *model.Fastener, n int) []page.HTML {
	drawn := page.SequenceDrawing(f.Sequence, n, f.Label()+", "+s.InOrder(f))
	if drawn == "" {
		return nil
	}
	return []page.HTML{drawn}
}

// tags adds the small facts under a step: tools with their times.
func (s *Pages) tags(out []string, st *model.Step) []string {
	for _, l := range st.Links {
		if l.Is(model.LinkRole) && l.To != nil {
			out = append(out, s.Name(l.To))
		}
		if l.Is(model.LinkOptional) {
			out = append(out, s.Words.MayBeLeftOut)
		}
	}
	if time := st.Time(); !time.IsZero() {
		out = append(out, s.Both(time))
	}
	return out
}

// HazardsOf are the hazards of links as the procedure meets them.
func HazardsOf(p *model.Procedure, links []*model.Link) []*model.Hazard {
	var out []*model.Hazard
	for _, l := range links {
		h, ok := l.To.(*model.Hazard)
		if !ok {
			continue
		}
		if met := metAs(p, h); !slices.Contains(out, met) {
			out = append(out, met)
		}
	}
	return out
}

// HazardsBefore are the hazards whose boxes stand before a step: those that it
// links, and those of the supplies that no step of its phase used before it.
func HazardsBefore(st *model.Step) []*model.Hazard {
	out := HazardsOf(st.Of, st.Links)
	supplied := model.SuppliedHazards(st.Links)
	if len(supplied) == 0 {
		return out
	}
	shown := suppliedBefore(st)
	for _, h := range supplied {
		if met := metAs(st.Of, h); !slices.Contains(shown, h) && !slices.Contains(out, met) {
			out = append(out, met)
		}
	}
	return out
}

// suppliedBefore are the hazards of supplies that stand before a step in its
// phase: in the phase's first paragraph, or before a step that used them.
func suppliedBefore(st *model.Step) []*model.Hazard {
	var shown []*model.Hazard
	if lead := st.Phase.Lead; lead != nil {
		for _, l := range lead.Links {
			if h, is := l.To.(*model.Hazard); is {
				shown = append(shown, h)
			}
		}
	}
	for _, s := range st.Of.Steps {
		if s == st {
			break
		}
		if s.Phase == st.Phase {
			shown = append(shown, model.SuppliedHazards(s.Links)...)
		}
	}
	return shown
}

// metAs is a hazard with the procedure's overrides.
func metAs(p *model.Procedure, h *model.Hazard) *model.Hazard {
	for _, use := range p.Hazards {
		if use.To == h && use.Met != nil {
			return use.Met
		}
	}
	return h
}

// onlyWith says for which units something is.
func (s *Pages) onlyWith(p *model.Procedure, option string, not bool) string {
	name := s.Option(p.For.To, option)
	if not {
		return fmt.Sprintf(s.Words.OnlyWithout, name)
	}
	return fmt.Sprintf(s.Words.OnlyWith, name)
}

func (s *Pages) answerText(l *model.Link) string {
	if hold, ok := l.To.(*model.Hold); ok {
		for _, a := range s.Answers(hold) {
			if a.Key == l.Frag() {
				return a.Value
			}
		}
	}
	return l.Frag()
}
