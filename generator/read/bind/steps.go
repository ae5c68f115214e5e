package bind

import (
	"strconv"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
	"baybinder/generator/read/syntax"
)

// linker binds the links of one procedure.
type linker struct {
	*binder
	*notes
	draft     *draft
	noMachine bool // told already that machine links need a machine

	times map[string]*quantity.Quantity // by what is written: few differ
	named map[string]position.Pos       // where the steps get their names
}

func newLinker(b *binder, own *notes, d *draft) *linker {
	return &linker{binder: b, notes: own, draft: d, times: map[string]*quantity.Quantity{}, named: map[string]position.Pos{}}
}

func (l *linker) add(f finding.Finding) { l.notes.add(f) }

// machine is the procedure's machine, or nil.
func (l *linker) machine() *model.Machine { return l.draft.For.To }

// machineUnread says that nothing can be said of the machine's things: its
// file, or its name here, could not be read.
func (l *linker) machineUnread() bool {
	m := l.machine()
	if m == nil {
		return l.draft.For.ID != "" || l.draft.Broken || l.draft.Lost("for")
	}
	return m.Unread
}

// procedure binds everything in a procedure. The steps of all procedures are
// there already: a see: may point at any of them.
func (l *linker) procedure() {
	l.front()
	d := l.draft
	d.Intro = d.doc.Intro
	for i := range d.Intro {
		l.block(&d.Intro[i], nil)
	}
	for i, p := range d.doc.Phases {
		l.phase(p, d.Phases[i])
	}
}

// outline makes the phases and steps of a procedure, without their links.
func (d *draft) outline(numbers numbers) {
	for i, p := range d.doc.Phases {
		phase := &model.Phase{ID: p.ID, At: p.At}
		n := 0
		for _, part := range p.Body {
			if part.Item == nil {
				continue
			}
			n++
			phase.Steps = append(phase.Steps, d.step(part.Item, phase, nil, numbers, numbers.of(strconv.Itoa(i+1), n)))
		}
		d.Phases = append(d.Phases, phase)
	}
}

// numbers are the numbers of steps, each once: every procedure has a step 1.1.
type numbers map[string]string

// of is the number of the n-th step below another, or below a phase.
func (have numbers) of(above string, n int) string {
	written := strconv.AppendInt(append(append(make([]byte, 0, 16), above...), '.'), int64(n), 10)
	number, is := have[string(written)]
	if !is {
		number = string(written)
		have[number] = number
	}
	return number
}

func (d *draft) step(item *syntax.Item, phase *model.Phase, parent *model.Step, numbers numbers, number string) *model.Step {
	s := d.steps.New()
	*s = model.Step{Number: number, At: item.At, Of: d.Procedure, Phase: phase, Parent: parent, Name: stepName(item)}
	d.Steps = append(d.Steps, s)
	for i, sub := range item.Subs {
		s.Subs = append(s.Subs, d.step(sub, phase, s, numbers, numbers.of(number, i+1)))
	}
	d.done++
	s.Done = d.done
	return s
}

// stepName is what a step: link in the step calls it.
func stepName(item *syntax.Item) string {
	for _, b := range item.Blocks {
		for _, link := range b.Links {
			if scheme, rest, _ := model.SplitAddress(link.Address); scheme == "step" {
				return rest
			}
		}
	}
	return ""
}

func (l *linker) phase(p *syntax.Phase, phase *model.Phase) {
	phase.Title, phase.Lead = p.Title, p.Lead
	l.block(&phase.Title, nil)
	if phase.Lead != nil {
		l.block(phase.Lead, nil)
	}
	n := 0
	for _, part := range p.Body {
		if part.Block != nil {
			l.block(part.Block, nil)
			phase.Body = append(phase.Body, model.PhasePart{Prose: part.Block})
			continue
		}
		step := phase.Steps[n]
		n++
		l.step(part.Item, step)
		phase.Body = append(phase.Body, model.PhasePart{Step: step})
	}
}

func (l *linker) step(item *syntax.Item, s *model.Step) {
	s.Blocks = item.Blocks
	for i := range s.Blocks {
		b := &s.Blocks[i]
		l.block(b, s)
		switch links := b.Links; {
		case b.Role == model.OnRefit:
		case s.Links == nil:
			s.Links = links
		default:
			s.Links = append(s.Links, links...)
		}
	}
	for _, link := range s.Links {
		switch {
		case link.Bad:
		case link.Is(model.LinkPeople):
			s.People = int(link.Amount().Value)
		case link.Kind.Act == model.Call:
			l.draft.Calls = append(l.draft.Calls, link)
		}
	}
	for i, sub := range item.Subs {
		l.step(sub, s.Subs[i])
	}
}

// block binds the links of a block. The first link of a paragraph in a step
// can make it a note for the refit, or the reason.
func (l *linker) block(b *model.Block, s *model.Step) {
	for _, link := range b.Links {
		l.bind(link)
	}
	if s != nil && b.Para && len(b.Links) > 0 {
		switch first := b.Links[0]; {
		case first.Is(model.LinkOn):
			b.Role = model.OnRefit
		case first.Is(model.LinkWhy):
			b.Role = model.Why
		}
	}
}
