package write

import (
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/base/patch"
	"baybinder/generator/language"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/edit"
)

// StateLine is a thing with how a procedure finds it.
type StateLine struct {
	Option
	Word string `json:"word"`
	Said string `json:"said"` // the word in the shop's language
}

// Starts is what can be chosen of how a procedure finds things.
type Starts struct {
	Ways     []Choice     `json:"ways"` // as others leave them
	Things   []StartGroup `json:"things"`
	Machines []Option     `json:"machines"`
}

// StartGroup are the things of a section of the machine's file, or the tools,
// with the words of how they can be found.
type StartGroup struct {
	In    string   `json:"in"`
	Of    []Option `json:"of"`
	Words []Option `json:"words"`
}

// whole are the words of how a thing stands on a whole machine: nobody need
// choose them.
var whole = []string{"live", "on", "tight", "full", "cleared", "reset"}

// start is how a procedure says that it finds things.
func (d *Desk) start(p *model.Procedure) []StateLine {
	say, out := &language.Of(d.bench().Manual().Shop.Language).Words, []StateLine{}
	for _, s := range p.Expects {
		label := s.ID
		if s.Thing != nil {
			label = s.Thing.Label()
		}
		out = append(out, StateLine{Option{s.ID, label}, s.Word, say.State(s.Word)})
	}
	return out
}

// starts tells what can be chosen at a procedure's head.
func (d *Desk) starts(a Asked) (*Told, error) {
	p, err := d.asSeen(a)
	if err != nil {
		return nil, err
	}
	b := d.bench()
	out := &Starts{Ways: waysToStart(b, p), Things: []StartGroup{}, Machines: options(b.Manual().Machines)}
	for _, in := range append(slices.Clone(sections), "tools") {
		g := StartGroup{In: in, Of: optionsOf(b, p.For.To, in), Words: []Option{}}
		for _, word := range bind.StateWordsOf(examples[in]) {
			if !slices.Contains(whole, word) {
				g.Words = append(g.Words, Option{word, language.Of(b.Manual().Shop.Language).Words.State(word)})
			}
		}
		if len(g.Of) > 0 {
			out.Things = append(out.Things, g)
		}
	}
	return &Told{Starts: out}, nil
}

// examples are things of each section.
var examples = map[string]model.Named{
	"points": &model.Point{}, "energies": &model.Energy{}, "fasteners": &model.Fastener{}, "parts": &model.Part{},
	"fluids": &model.Fluid{}, "settings": &model.Setting{}, "tools": &model.Tool{},
}

// waysToStart are the ways in which a procedure can find things, each in one
// touch.
func waysToStart(b bench, p *model.Procedure) []Choice {
	l := language.Of(b.Manual().Shop.Language)
	out := []Choice{}
	for _, s := range b.Starts(p) {
		var lines, said []string
		for _, x := range s.States {
			lines = append(lines, x.Line())
			said = append(said, x.Thing.Label()+": "+l.Words.State(x.Word))
		}
		label := filled(l.Write.AsLeftBy, s.Of.Label())
		if s.At != nil {
			label = filled(l.Write.AsFoundIn, s.Of.Label(), s.At.Number)
		}
		out = append(out, Choice{Kind: "expect", Label: label, Detail: strings.Join(said, ", "), Act: &Act{Do: "expect", Texts: lines}})
	}
	return out
}

// unbegun says that a procedure neither says how it finds things nor has done
// anything to one.
func unbegun(p *model.Procedure) bool {
	return len(p.Expects) == 0 && !p.Lost("expects") && !slices.ContainsFunc(p.Links(), func(l *model.Link) bool { return l.Kind.Act != model.NoAct })
}

// expect writes how a procedure finds things: a line for each thing, "id: word".
func expect(b bench, p *model.Procedure, a Act) (string, int, error) {
	to := edit.Value{Items: []string{}}
	for _, line := range a.Texts {
		id, word, _ := strings.Cut(line, ": ")
		if !canStand(b, p, id, word) {
			return "", 0, cannotNow
		}
		to.Items = append(to.Items, id+": "+word)
	}
	if len(to.Items) > 0 {
		to.Text = "{ " + strings.Join(to.Items, ", ") + " }"
	}
	now, ok := edit.Front(p.File, "expects", to)
	if !ok {
		return "", 0, noPlace
	}
	return now.Text, 0, nil
}

// canStand says that the procedure's machine, or a register, has a thing which
// can stand so.
func canStand(b bench, p *model.Procedure, id, word string) bool {
	named := func(o Option) bool { return o.ID == id }
	for in, thing := range examples {
		if slices.ContainsFunc(optionsOf(b, p.For.To, in), named) && slices.Contains(bind.StateWordsOf(thing), word) {
			return true
		}
	}
	return false
}

// leaveSo writes into leaves: how things stand at the end, as meant. Points go
// with what they cut.
func leaveSo(b bench, p *model.Procedure, _ Act) (string, int, error) {
	w := b.Walks.Of(p)
	if !w.Done || len(p.Steps) == 0 {
		return "", 0, cannotNow
	}
	all := leftLines(w.Stand(len(p.Steps)))
	if len(all) == 0 {
		return "", 0, cannotNow
	}
	now, ok := edit.Front(p.File, "leaves", edit.Value{Text: "{ " + strings.Join(all, ", ") + " }", Items: all})
	if !ok {
		return "", 0, noPlace
	}
	return now.Text, 0, nil
}

func leftLines(stand []walk.Standing) []string {
	var all []string
	for _, s := range stand {
		word, id := s.Word, s.Thing.Base().ID
		if word == "capped" {
			word = "off"
		}
		if _, point := s.Thing.(*model.Point); !point && !slices.Contains(all, id+": "+word) {
			all = append(all, id+": "+word)
		}
	}
	return all
}

// setField writes a field of the front matter: the title, the summary, the
// machine, how many people.
func setField(b bench, p *model.Procedure, a Act) (string, int, error) {
	var piece patch.Piece
	var ok bool
	switch n, err := strconv.Atoi(a.Text); {
	case a.Field == "title" || a.Field == "summary":
		if strings.TrimSpace(cleaned(a.Text)) == "" {
			return "", 0, noWords
		}
		piece, ok = edit.Say(p.File, a.Field, cleaned(a.Text))
	case a.Field == "for" && slices.ContainsFunc(b.Manual().Machines, func(m *model.Machine) bool { return m.ID == a.Text }):
		piece, ok = edit.Put(p.File, a.Field, a.Text)
	case a.Field == "people" && err == nil && n > 0 && n < 100:
		piece, ok = edit.Put(p.File, a.Field, a.Text)
	default:
		return "", 0, cannotNow
	}
	if !ok {
		return "", 0, noPlace
	}
	return patch.Applied(p.File, []patch.Piece{piece}).Text, 0, nil
}
