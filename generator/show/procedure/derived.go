package procedure

import (
	"fmt"
	"slices"
	"strconv"

	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/show/page"
)

// Derived is one step of the refit that follows from the strip.
type Derived struct {
	Number   string
	Anchor   string
	Text     string // "Refit the seat base"
	Lines    []string
	Notes    []page.HTML // what the strip says of the refit
	When     string
	Terms    Terms
	Boxes    []page.Box
	Tools    []page.Link
	People   int
	Pictures []page.HTML
	Computed []page.Computed // settings and lifts
	Orders   []page.HTML     // sequences drawn
	Reverses page.Link       // the step that it takes back
	Missed   *Missed
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
		v.NotBack = fmt.Sprintf(s.Words.NotBack, page.Joined(numbers))
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

func (s *Pages) derivedStep(up string, p *model.Procedure, d *walk.Derived, by *model.Step) Derived {
	v := Derived{
		Number: d.Label, Anchor: derivedAnchor(d), Text: s.Undoing(d), When: s.where(p.For.To, d.Where), Terms: reversedTerms(d),
		Boxes: s.Boxes(up, HazardsOf(p, d.From.Links)), People: d.From.People,
		Reverses: page.Link{Name: fmt.Sprintf(s.Words.Reverses, d.From.Number), Address: "#" + page.Anchor(d.From)},
	}
	if d.Capped {
		v.Lines = append(v.Lines, s.Uncap(p, d))
	}
	for _, f := range d.Fasteners {
		v.Lines = append(v.Lines, s.fastened(d, f))
		if !d.Begun && !pictured(p, f.Fastener) {
			v.Orders = append(v.Orders, s.order(f.Fastener, f.Count)...)
		}
	}
	if d.New != nil {
		v.Lines = append(v.Lines, fmt.Sprintf(s.Words.NewFastener, s.Name(d.New)))
	}
	for _, n := range d.Notes {
		v.Notes = append(v.Notes, s.wrapped(up, s.NoteOf(d.From, n)))
	}
	s.fromStep(&v, up, d.From)
	v.Computed = s.ComputedBack(d, by)
	return v
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
			return fmt.Sprintf(w.SetBackTo, s.Name(thing), s.Say(thing, "value", thing.Value))
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

// fastened is one line on the fasteners of a derived step: how many, how they
// are begun, the torque or its stages, and whether they are new.
func (s *Pages) fastened(d *walk.Derived, f walk.Fastened) string {
	line := s.Name(f.Fastener)
	if f.Count > 0 {
		line = strconv.Itoa(f.Count) + " × " + line
	}
	parts := []string{line}
	if f.New != nil {
		parts = append(parts, fmt.Sprintf(s.Words.NewFastener, s.Name(f.New)))
	}
	if f.Fastener.Start != "" && d.Verb != model.Tighten {
		parts = append(parts, fmt.Sprintf(s.Words.Start, s.Say(f.Fastener, "start", f.Fastener.Start)))
	}
	if d.Begun {
		return page.Phrase(append(parts, s.Words.BeginByHand)...)
	}
	return page.Phrase(append(parts, s.tightness(f.Fastener)...)...)
}

// tightness is a fastener's torque, or its stages one by one, and its sequence.
func (s *Pages) tightness(f *model.Fastener) []string {
	var out []string
	switch {
	case len(f.Stages) > 0:
		for i, stage := range f.Stages {
			out = append(out, strconv.Itoa(i+1)+": "+s.Both(stage))
		}
	case !f.Torque.IsZero():
		out = append(out, s.BothLimit(f.Torque))
	}
	if len(f.Sequence) > 0 {
		out = append(out, fmt.Sprintf(s.Words.Sequence, page.Joined(s.SayAll(f, "sequence", f.Sequence))))
	}
	if f.MarkAfter != "" {
		out = append(out, fmt.Sprintf(s.Words.MarkWith, s.Say(f, "mark-after", f.MarkAfter)))
	}
	return out
}
