package offers

import (
	"slices"
	"strings"

	"baybinder/generator/base/position"
	"baybinder/generator/language"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/trade/fastening"
	"baybinder/generator/trade/signal"
)

// Here is what stands at a place of a procedure.
type Here struct {
	Procedure *model.Procedure
	Step      *model.Step // nil outside steps
	Link      *model.Link // nil where there is none
	Cautions  []Caution   // of the step, the gravest first
	Torques   []Torque    // of the fasteners that the step turns
	Before    []walk.Standing
	After     []walk.Standing
	Refit     *walk.Reversal // what a reverse: link expands to; nil elsewhere
}

// Caution is a box that is shown before a step.
type Caution struct {
	Word   signal.Word
	Spoken string // the word, in the shop's language
	Hazard *model.Hazard
}

// Torque is what a fastener is tightened to, and how each torque is set.
type Torque struct {
	Fastener *model.Fastener
	Words    string
	Ways     []fastening.Way
}

// Here says what stands at an offset of a procedure's file; false in others.
func (b *Bench) Here(path string, offset int) (Here, bool) {
	p := b.Procedure(path)
	if p == nil {
		return Here{}, false
	}
	h := Here{Procedure: p, Link: linkAt(p, offset), Step: stepAt(p, offset)}
	if h.Step == nil {
		return h, true
	}
	h.Cautions = b.cautions(h.Step)
	h.Torques = b.torques(h.Step)
	if w := b.Walks.Of(p); w.Done {
		h.Before, h.After = w.Stand(h.Step.Done-1-below(h.Step)), w.Stand(h.Step.Done)
		if h.Link != nil {
			h.Refit = w.Reversal(h.Link)
		}
	}
	return h, true
}

// below is how many sub-steps a step has: they are done before it is.
func below(s *model.Step) int {
	n := 0
	for _, sub := range s.Subs {
		n += 1 + below(sub)
	}
	return n
}

func linkAt(p *model.Procedure, offset int) *model.Link {
	for _, l := range p.Links() {
		if l.At.File == p.File && l.At.Start <= offset && offset <= l.At.End {
			return l
		}
	}
	return nil
}

// stepAt is the innermost step whose lines hold an offset.
func stepAt(p *model.Procedure, offset int) *model.Step {
	var found *model.Step
	for _, s := range p.Steps {
		from, _ := lineAround(p.File.Text, s.At.Start)
		_, to := lineAround(p.File.Text, ending(s))
		if from <= offset && offset <= to {
			found = s
		}
	}
	return found
}

// Extent is where the lines of a step and its sub-steps stand.
func Extent(s *model.Step) position.Pos {
	from, _ := lineAround(s.At.File.Text, s.At.Start)
	_, to := lineAround(s.At.File.Text, ending(s))
	return s.At.File.At(from, to)
}

// cautions are the hazards that a step meets, by itself, by its phase or by
// what it uses.
func (b *Bench) cautions(s *model.Step) []Caution {
	links := s.Links
	if s.Phase.Lead != nil {
		links = slices.Concat(links, s.Phase.Lead.Links)
	}
	var out []Caution
	add := func(h *model.Hazard) {
		h = met(s.Of, h)
		if !slices.ContainsFunc(out, func(c Caution) bool { return c.Hazard.ID == h.ID }) {
			word := signal.Of(h.Harm, h.Happens)
			out = append(out, Caution{word, b.spoken(word), h})
		}
	}
	for _, l := range links {
		if h, is := l.To.(*model.Hazard); is && l.Is(model.LinkHazard) && !l.Bad {
			add(h)
		}
	}
	for _, h := range model.SuppliedHazards(s.Links) {
		add(h)
	}
	slices.SortStableFunc(out, func(x, y Caution) int { return int(y.Word) - int(x.Word) })
	return out
}

// met is a hazard as a procedure meets it, its overrides in it.
func met(p *model.Procedure, h *model.Hazard) *model.Hazard {
	for _, u := range p.Hazards {
		if u.To == h && u.Met != nil {
			return u.Met
		}
	}
	return h
}

// spoken is a signal word in the shop's language.
func (b *Bench) spoken(w signal.Word) string {
	words := language.Of(b.Manual().Shop.Language).Words
	return words.Signal(w.String())
}

// torques are those of the fasteners that a step turns or whose part it moves.
func (b *Bench) torques(s *model.Step) []Torque {
	var out []Torque
	add := func(f *model.Fastener) {
		if f == nil || torqueWords(f) == "" || slices.ContainsFunc(out, func(t Torque) bool { return t.Fastener == f }) {
			return
		}
		out = append(out, Torque{f, torqueWords(f), b.ways(s, f)})
	}
	for _, l := range s.Links {
		switch to := l.To.(type) {
		case *model.Fastener:
			add(to)
		case *model.Part:
			for _, h := range to.HeldBy {
				add(h.To)
			}
		}
	}
	return out
}

// ways are how the torques of a fastener are set with the tools of a step.
func (b *Bench) ways(s *model.Step, f *model.Fastener) []fastening.Way {
	var at fastening.AtHand
	for _, l := range s.Links {
		if t, is := l.To.(*model.Tool); is {
			at.Named = append(at.Named, t)
		}
	}
	for _, u := range s.Of.Tools {
		if u.To != nil {
			at.Listed = append(at.Listed, u.To)
		}
	}
	var out []fastening.Way
	for _, q := range fastening.Torques(f) {
		out = append(out, fastening.Ways(f, q, at.Wrenches(), at.Drivers())...)
	}
	return out
}

// Choice is an id, or a kind of link, that can be written in an address.
type Choice struct {
	Text  string // what is written: "traction", "isolate:"
	Label string // what it is called
	Entry model.Named
}

// Choices are what can be written in the address of a link, of which what
// stands before the place is known: "", "isol", "isolate:tra", "tighten:nut#".
func (b *Bench) Choices(p *model.Procedure, address string) []Choice {
	name, rest, has := strings.Cut(address, ":")
	if !has {
		var out []Choice
		for _, k := range model.Kinds {
			out = append(out, Choice{Text: k.Name + ":", Label: k.Says})
		}
		return out
	}
	k, known := model.KindNamed(name)
	if !known {
		return nil
	}
	if id, _, second := strings.Cut(rest, "#"); second {
		return b.seconds(p, k, id)
	}
	return b.named(p, k)
}

// named are what a kind of link can name.
func (b *Bench) named(p *model.Procedure, k *model.Kind) []Choice {
	m, machine := b.Manual(), p.For.To
	if machine == nil {
		machine = &model.Machine{}
	}
	var out []Choice
	switch k.Target {
	case model.ToTool:
		out = choicesOf(m.Tools)
	case model.ToSupply:
		out = choicesOf(m.Supplies)
	case model.ToRole:
		out = choicesOf(m.Roles)
	case model.ToHazard:
		out = choicesOf(m.Hazards)
	case model.ToHold, model.ToOutcome, model.ToAnswer, model.ToNote:
		out = choicesOf(m.Holds)
	case model.ToEnergy:
		out = choicesOf(machine.Energies)
	case model.ToPoint:
		out = choicesOf(machine.Points)
	case model.ToEnergyOrPoint:
		out = append(choicesOf(machine.Energies), choicesOf(machine.Points)...)
	case model.ToPart:
		out = choicesOf(machine.Parts)
	case model.ToFastener:
		out = choicesOf(machine.Fasteners)
	case model.ToGroup:
		out = choicesOf(machine.Groups)
	case model.ToFluid:
		out = choicesOf(machine.Fluids)
	case model.ToSetting:
		out = choicesOf(machine.Settings)
	case model.ToMachine:
		out = choicesOf(m.Machines)
	case model.ToProcedure:
		out = choicesOf(slices.DeleteFunc(slices.Clone(m.Procedures), func(q *model.Procedure) bool {
			return q == p || k.Act == model.Call && q.For.To != nil && q.For.To != p.For.To
		}))
	case model.ToPhase:
		for _, ph := range p.Phases {
			out = append(out, Choice{Text: ph.ID, Label: ph.Title.Plain})
		}
	case model.ToOption:
		for _, o := range machine.Options {
			out = append(out, Choice{Text: o.Key, Label: o.Value}, Choice{Text: "!" + o.Key, Label: o.Value})
		}
	case model.ToOrder:
		for i := range machine.Orders {
			out = append(out, Choice{machine.Orders[i].ID, machine.Orders[i].Label(), &machine.Orders[i]})
		}
	case model.ToPost:
		for _, post := range p.Posts {
			out = append(out, Choice{Text: post.Key, Label: post.Value})
		}
	case model.ToRefit:
		out = []Choice{{Text: "refit", Label: k.Says}}
	case model.NoTarget, model.ToPause, model.ToName, model.ToPeople, model.ToTime, model.ToWithin, model.ToAddress:
	}
	return out
}

// seconds are what can stand behind the # of an address.
func (b *Bench) seconds(p *model.Procedure, k *model.Kind, id string) []Choice {
	var out []Choice
	switch k.Target {
	case model.ToFastener:
		if f, is := p.For.To.Find(id).(*model.Fastener); is {
			out = choicesOf(f.Holds)
		}
	case model.ToPhase:
		if ph := p.FindPhase(id); ph != nil {
			for _, s := range ph.Steps {
				for _, l := range s.Links {
					if part, is := l.To.(*model.Part); is && l.Kind.Act == model.Remove {
						out = append(out, Choice{part.ID, part.Label(), part})
					}
				}
			}
		}
	case model.ToProcedure:
		for _, q := range b.Manual().Procedures {
			for _, s := range q.Steps {
				if q.ID == id && s.Name != "" {
					out = append(out, Choice{Text: s.Name, Label: s.Number})
				}
			}
		}
	default: // the others are no concern of this
	}
	for i := range out {
		out[i].Text = id + "#" + out[i].Text
	}
	return out
}

func choicesOf[T model.Named](list []T) []Choice {
	var out []Choice
	for _, n := range list {
		if id := n.Base().ID; id != "" {
			out = append(out, Choice{id, n.Label(), n})
		}
	}
	return out
}
