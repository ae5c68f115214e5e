package page

import (
	"fmt"
	"slices"
	"strconv"

	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
)

// Derived is one step of the refit that follows from the strip.
type Derived struct {
	Number   string
	Anchor   string
	Text     string // "Refit the seat base"
	Lines    []string
	Notes    []HTML // what the strip says of the refit
	When     string
	Terms    Terms
	Boxes    []Box
	Tools    []Link
	People   int
	Pictures []HTML
	Computed []Computed // settings and lifts
	Orders   []HTML     // sequences drawn
	Reverses Link       // the step that it takes back
	Missed   *Missed
}

func derivedAnchor(d *walk.Derived) string { return "r" + hyphens(d.Label) }

// derived shows what a reverse: link expands to.
func (s *Site) derived(v *Step, up string, p *model.Procedure, l *model.Link) {
	r := s.Walks.Of(p).Reversal(l)
	if r == nil {
		return
	}
	for i := range r.Steps {
		step := s.derivedStep(up, p, &r.Steps[i], r.Step)
		if saidByPhase(r.Step.Phase, r.Steps[i].Where) {
			step.When = ""
		}
		v.Derived = append(v.Derived, step)
	}
	var numbers []string
	for _, st := range r.NoReversal {
		numbers = append(numbers, st.Number)
	}
	if len(numbers) > 0 {
		v.NotBack = fmt.Sprintf(s.Words.NotBack, joined(numbers))
	}
}

// saidByPhase says that a condition stands above the whole phase already.
func saidByPhase(phase *model.Phase, where walk.Cases) bool {
	if phase.Lead == nil || len(where) != 1 || len(where[0]) != 1 || !where[0][0].Is {
		return false
	}
	return slices.ContainsFunc(phase.Lead.Links, func(l *model.Link) bool {
		return l.Is(model.LinkWhen) && !l.Not && l.ID == where[0][0].Option
	})
}

func (s *Site) derivedStep(up string, p *model.Procedure, d *walk.Derived, by *model.Step) Derived {
	v := Derived{
		Number: d.Label, Anchor: derivedAnchor(d), Text: s.undoing(d), When: s.where(p.For.To, d.Where), Terms: reversedTerms(d),
		Boxes: s.boxes(up, hazardsOf(p, d.From.Links)), People: d.From.People,
		Reverses: Link{Name: fmt.Sprintf(s.Words.Reverses, d.From.Number), Address: "#" + Anchor(d.From)},
	}
	if d.Capped {
		v.Lines = append(v.Lines, s.uncap(p, d))
	}
	for _, f := range d.Fasteners {
		v.Lines = append(v.Lines, s.fastened(d, f))
		if !d.Begun && !pictured(p, f.Fastener) {
			v.Orders = append(v.Orders, s.order(f.Fastener, f.Count)...)
		}
	}
	if d.New != nil {
		v.Lines = append(v.Lines, fmt.Sprintf(s.Words.NewFastener, s.name(d.New)))
	}
	for _, n := range d.Notes {
		v.Notes = append(v.Notes, s.wrapped(up, s.noteOf(d.From, n)))
	}
	s.fromStep(&v, up, d.From)
	v.Computed = s.computedBack(d, by)
	return v
}

// fromStep brings the tools and pictures of the step that is taken back.
func (s *Site) fromStep(v *Derived, up string, from *model.Step) {
	for _, l := range from.Links {
		if t, ok := l.To.(*model.Tool); ok && l.Is(model.LinkTool) {
			v.Tools = append(v.Tools, s.link(up, t))
		}
	}
}

// undoing says what a derived step does, by the kind of part.
func (s *Site) undoing(d *walk.Derived) string {
	w := s.Words
	switch thing := d.Thing.(type) {
	case *model.Part:
		if d.Verb == model.Tighten {
			return fmt.Sprintf(w.TightenNow, s.name(thing))
		}
		if d.Renew {
			return fmt.Sprintf(w.FitNew, s.name(thing))
		}
		return fmt.Sprintf(s.refitWords(thing.Kind), s.name(thing))
	case *model.Fastener:
		return fmt.Sprintf(w.TightenFastener, s.name(thing))
	case *model.Tool:
		return fmt.Sprintf(w.TakeAway, s.name(thing))
	case *model.Setting:
		if thing.Value != "" {
			return fmt.Sprintf(w.SetBackTo, s.name(thing), s.say(thing, "value", thing.Value))
		}
		return fmt.Sprintf(w.SetBack, s.name(thing))
	}
	return s.name(d.Thing)
}

// uncap says that the cap comes out of a line before it is connected, or the
// tape off the end of a wire.
func (s *Site) uncap(p *model.Procedure, d *walk.Derived) string {
	words := s.Words.CapOut
	if part, is := d.Thing.(*model.Part); is && part.Kind != "line" {
		words = s.Words.TapeOff
	}
	if units := s.where(p.For.To, d.CappedOn); units != "" {
		return words + " (" + units + ")"
	}
	return words
}

func (s *Site) refitWords(kind string) string {
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

// fastened is one line on the fasteners of a derived step: how many, how they
// are begun, the torque or its stages, and whether they are new.
func (s *Site) fastened(d *walk.Derived, f walk.Fastened) string {
	line := s.name(f.Fastener)
	if f.Count > 0 {
		line = strconv.Itoa(f.Count) + " × " + line
	}
	parts := []string{line}
	if f.New != nil {
		parts = append(parts, fmt.Sprintf(s.Words.NewFastener, s.name(f.New)))
	}
	if f.Fastener.Start != "" && d.Verb != model.Tighten {
		parts = append(parts, fmt.Sprintf(s.Words.Start, s.say(f.Fastener, "start", f.Fastener.Start)))
	}
	if d.Begun {
		return phrase(append(parts, s.Words.BeginByHand)...)
	}
	return phrase(append(parts, s.tightness(f.Fastener)...)...)
}

// tightness is a fastener's torque, or its stages one by one, and its sequence.
func (s *Site) tightness(f *model.Fastener) []string {
	var out []string
	switch {
	case len(f.Stages) > 0:
		for i, stage := range f.Stages {
			out = append(out, strconv.Itoa(i+1)+": "+s.both(stage))
		}
	case !f.Torque.IsZero():
		out = append(out, s.bothLimit(f.Torque))
	}
	if len(f.Sequence) > 0 {
		out = append(out, fmt.Sprintf(s.Words.Sequence, joined(s.sayAll(f, "sequence", f.Sequence))))
	}
	if f.MarkAfter != "" {
		out = append(out, fmt.Sprintf(s.Words.MarkWith, s.say(f, "mark-after", f.MarkAfter)))
	}
	return out
}
