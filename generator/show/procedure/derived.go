package procedure

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/show/page"
)

// Derived is one step of the refit that follows from the strip.
type Derived struct {
	Number   string
	Anchor   string
	Text     string // "Refit the seat base"
	Fastened []Fastened
	New      string      // the supply that goes in where the part was renewed
	Uncap    string      // what comes off its end first
	Notes    []page.HTML // what the strip says of the refit
	When     string
	OfUnit   bool // that is known once the unit is chosen
	Terms    Terms
	Boxes    []page.Box
	Tools    []page.Link
	People   int
	Pictures []page.HTML
	Computed []page.Computed // settings and lifts
	Reverses page.Link       // the step that it takes back
	Missed   *Missed
}

// Fastened is one kind of fastener of a derived step.
type Fastened struct {
	Turns  []page.HTML // "4 × 22 N·m", or its stages one by one; what is done first
	Name   string
	More   string      // how it is begun, in which order, how it is marked
	Orders []page.HTML // the sequence drawn
}

func derivedAnchor(d *walk.Derived) string { return "r" + page.Hyphens(d.Label) }

// derived shows what a reverse: link expands to.
func (s *Pages) derived(v *Step, up string, p *model.Procedure, l *model.Link) {
	r := s.Walks.Of(p).Reversal(l)
	if r == nil {
		return
	}
	for i := range r.Steps {
		step := s.derivedStep(up, p, &r.Steps[i], r.Step)
		if said(p, r.Step.Phase, r.Steps[i].Where) {
			step.When = ""
		}
		v.Derived = append(v.Derived, step)
	}
	var numbers []string
	for _, st := range r.NoReversal {
		numbers = append(numbers, st.Number)
	}
	if len(numbers) > 0 {
		v.NotBack = fmt.Sprintf(s.Words.NotBack, page.Joined(numbers))
	}
}

// said says that a condition stands above the phase or the procedure already.
func said(p *model.Procedure, phase *model.Phase, where walk.Cases) bool {
	if len(where) != 1 || len(where[0]) == 0 {
		return false
	}
	told := slices.Concat(wholly(p), leadOptions(phase))
	return !slices.ContainsFunc(where[0], func(c walk.Condition) bool { return !slices.Contains(told, optionTerm(c.Option, !c.Is)) })
}

// ofUnits says that a condition asks of nothing but the unit.
func ofUnits(where walk.Cases) bool {
	return !slices.ContainsFunc(where, func(some []walk.Condition) bool {
		return some == nil || slices.ContainsFunc(some, func(c walk.Condition) bool { return c.Option == "" })
	})
}

func (s *Pages) derivedStep(up string, p *model.Procedure, d *walk.Derived, by *model.Step) Derived {
	v := Derived{
		Number: d.Label, Anchor: derivedAnchor(d), Text: s.Undoing(d), When: s.where(p.For.To, d.Where), OfUnit: ofUnits(d.Where), Terms: reversedTerms(d),
		Boxes: s.Boxes(up, HazardsOf(p, d.From.Links)), People: d.From.People,
		Reverses: page.Link{Name: fmt.Sprintf(s.Words.Reverses, d.From.Number), Address: "#" + page.Anchor(d.From)},
	}
	if d.Capped {
		v.Uncap = s.Uncap(p, d)
	}
	for _, f := range d.Fasteners {
		v.Fastened = append(v.Fastened, s.fastened(d, f))
		if !d.Begun && !pictured(p, f.Fastener) {
			v.Fastened[len(v.Fastened)-1].Orders = s.order(f.Fastener, f.Count)
		}
	}
	v.New = s.newPart(d)
	for _, n := range d.Notes {
		v.Notes = append(v.Notes, s.wrapped(up, s.NoteOf(d.From, n)))
	}
	s.fromStep(&v, up, d.From)
	v.Computed = s.ComputedBack(d, by)
	return v
}

// newPart says which supply a new part is, and that its number is written down.
func (s *Pages) newPart(d *walk.Derived) string {
	part, is := d.Thing.(*model.Part)
	if !is || !d.Renew {
		return ""
	}
	return page.Phrase(s.newOne(part)...)
}

func (s *Pages) newOne(part *model.Part) (said []string) {
	if to := part.RenewWith.To; to != nil {
		said = append(said, fmt.Sprintf(s.Words.NewFastener, s.Name(to)))
	}
	if part.Serial {
		said = append(said, s.Words.SerialNo)
	}
	return said
}

// fromStep brings the tools and pictures of the step that is taken back.
func (s *Pages) fromStep(v *Derived, up string, from *model.Step) {
	for _, l := range from.Links {
		if t, ok := l.To.(*model.Tool); ok && l.Is(model.LinkTool) {
			v.Tools = append(v.Tools, s.Link(up, t))
		}
	}
}

// Undoing says what a derived step does, by the kind of part.
func (s *Pages) Undoing(d *walk.Derived) string {
	w := s.Words
	switch thing := d.Thing.(type) {
	case *model.Part:
		if d.Verb == model.Tighten {
			return fmt.Sprintf(w.TightenNow, s.Name(thing))
		}
		if d.Renew {
			return fmt.Sprintf(w.FitNew, s.Name(thing))
		}
		return fmt.Sprintf(s.refitWords(thing.Kind), s.Name(thing))
	case *model.Fastener:
		return fmt.Sprintf(w.TightenFastener, s.Name(thing))
	case *model.Tool:
		return fmt.Sprintf(w.TakeAway, s.Name(thing))
	case *model.Setting:
		if thing.Value != "" {
			return fmt.Sprintf(w.SetBackTo, s.Name(thing), s.Value(thing))
		}
		return fmt.Sprintf(w.SetBack, s.Name(thing))
	}
	return s.Name(d.Thing)
}

// Uncap says that the cap comes out of a line before it is connected, or the
// tape off the end of a wire.
func (s *Pages) Uncap(p *model.Procedure, d *walk.Derived) string {
	words := s.Words.CapOut
	if part, is := d.Thing.(*model.Part); is && part.Kind != "line" {
		words = s.Words.TapeOff
	}
	if units := s.where(p.For.To, d.CappedOn); units != "" {
		return words + " (" + units + ")"
	}
	return words
}

func (s *Pages) refitWords(kind string) string {
	switch kind {
	case "line":
		return s.Words.RefitLine
	case "wire":
		return s.Words.RefitWire
	case "connector":
		return s.Words.RefitConnector
	}
	return s.Words.RefitPart
}

// fastened is what is said of the fasteners of a derived step: how many and how
// tight, then which, whether they are new, how they are begun and in which order.
func (s *Pages) fastened(d *walk.Derived, f walk.Fastened) Fastened {
	v := Fastened{Name: s.Name(f.Fastener)}
	if f.Count > 0 {
		v.Turns = []page.HTML{page.HTML(strconv.Itoa(f.Count) + " ×")}
	}
	var more []string
	if f.New != nil {
		more = append(more, fmt.Sprintf(s.Words.NewFastener, s.Name(f.New)))
	}
	if f.Fastener.Start != "" && d.Verb != model.Tighten {
		more = append(more, fmt.Sprintf(s.Words.Start, s.Say(f.Fastener, "start", f.Fastener.Start)))
	}
	if d.Begun {
		v.More = page.Phrase(append(more, s.Words.BeginByHand)...)
		return v
	}
	v.turn(s.tightness(f.Fastener))
	v.More = page.Phrase(append(more, s.tightenedHow(f.Fastener)...)...)
	return v
}

// turn puts how tight behind how many: one torque on the same line, stages
// under each other.
func (v *Fastened) turn(tight []string) {
	for _, t := range tight {
		own, other, converted := strings.Cut(t, " (")
		turn := page.Escaped(own)
		if converted {
			turn += " <small>(" + page.Escaped(other) + "</small>"
		}
		if len(tight) == 1 && len(v.Turns) == 1 {
			v.Turns[0] += " " + turn
		} else {
			v.Turns = append(v.Turns, turn)
		}
	}
}

// tightness is a fastener's torque, or its stages one by one.
func (s *Pages) tightness(f *model.Fastener) []string {
	var out []string
	switch {
	case len(f.Stages) == 1: // of one there is no order
		out = append(out, s.Both(f.Stages[0]))
	case len(f.Stages) > 0:
		for i, stage := range f.Stages {
			out = append(out, strconv.Itoa(i+1)+": "+s.Both(stage))
		}
	case !f.Torque.IsZero():
		out = append(out, s.BothLimit(f.Torque))
	}
	return out
}

// tightenedHow is what goes on a fastener's thread, in which order it is
// tightened, how it is marked, and when it is tightened again.
func (s *Pages) tightenedHow(f *model.Fastener) []string {
	var out []string
	if f.Lubricant != "" {
		out = append(out, fmt.Sprintf(s.Words.OnThread, s.Say(f, "lubricant", f.Lubricant)))
	}
	if order := s.InOrder(f); order != "" {
		out = append(out, order)
	}
	if f.MarkAfter != "" {
		out = append(out, fmt.Sprintf(s.Words.MarkWith, s.Say(f, "mark-after", f.MarkAfter)))
	}
	if f.Retorque != "" {
		out = append(out, fmt.Sprintf(s.Words.Retorque, s.Say(f, "retorque", f.Retorque)))
	}
	return out
}
