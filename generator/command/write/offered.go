package write

import (
	"fmt"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"baybinder/generator/base/finding"
	"baybinder/generator/language"
	"baybinder/generator/language/shape"
	"baybinder/generator/model"
	"baybinder/generator/offers"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/edit"
	"baybinder/generator/trade/signal"
)

// Choices are what a writer can choose from at a place.
type Choices struct {
	Groups   []Group  `json:"groups"`
	Standing []string `json:"standing"` // what is not as on a whole machine, in words
	Belongs  []Group  `json:"belongs"`  // what can be added to the step that is being written
}

// Group are choices of one sort.
type Group struct {
	Name  string   `json:"name"` // a word of the language tables
	Items []Choice `json:"items"`
}

// Choice is a step, or a piece of one.
type Choice struct {
	Kind   string   `json:"kind"`
	Label  string   `json:"label"`
	Detail string   `json:"detail,omitempty"`
	Why    string   `json:"why,omitempty"`
	Text   string   `json:"text"`             // what it writes
	Way    []string `json:"way,omitempty"`    // what is in the way
	Brings []Found  `json:"brings,omitempty"` // what would be found elsewhere
	Parts  []Named  `json:"parts,omitempty"`  // of a refit: what can be left out
	Act    *Act     `json:"act,omitempty"`    // of what is no step: what it does
}

// Named is a thing to point at.
type Named struct {
	ID    string `json:"id"`
	Label string `json:"label"`
}

// groupOf is the sort of an offer, by the kind of its link. The order of the
// groups is that of their best offers.
func groupOf(o *offers.Offer) string {
	switch o.Kind {
	case "remove", "disconnect":
		if !o.Possible() {
			return "InTheWay"
		}
		return "ComesOff"
	case "isolate", "lock", "release", "prove", "place":
		return "MakesSafe"
	case model.LinkHold:
		return "StopsHere"
	case "mark", "cap", "dry":
		return "DueNow"
	case "reverse", "refit", "connect", "tighten", "clear", "reset", "fill", "bleed", "unlock", "restore":
		return "StillOpen"
	}
	return "OtherWork"
}

// grouped are offers in their groups; what is in the way comes last.
func grouped(b bench, p *model.Procedure, list []offers.Offer, stand []walk.Standing) []Group {
	var out []Group
	for i := range list {
		o := &list[i]
		name := groupOf(o)
		if !o.Possible() && name != "InTheWay" {
			name = "NotYet"
		}
		at := slices.IndexFunc(out, func(g Group) bool { return g.Name == name })
		if at < 0 {
			out = append(out, Group{Name: name})
			at = len(out) - 1
		}
		out[at].Items = append(out[at].Items, choiceOf(b, p, o, stand))
	}
	slices.SortStableFunc(out, func(x, y Group) int { return late(x.Name) - late(y.Name) })
	return out
}

func late(group string) int { return 1 + slices.Index([]string{"InTheWay", "NotYet"}, group) }

func choiceOf(b bench, p *model.Procedure, o *offers.Offer, stand []walk.Standing) Choice {
	c := Choice{Kind: o.Kind, Label: o.Label, Detail: o.Detail, Why: o.Why, Text: o.Sentence, Way: o.InTheWay}
	for _, f := range o.Brings {
		if f.Level == finding.Error && !walk.Leaves(f.Rule) { // what is open is closed by later steps
			c.Brings = append(c.Brings, found(f))
		}
	}
	if id, is := strings.CutPrefix(o.Address, "reverse:"); is {
		c.Parts = opened(p, id, stand)
	}
	return c
}

// opened are the parts that a phase took off and that are still off.
func opened(p *model.Procedure, phase string, stand []walk.Standing) []Named {
	var out []Named
	for _, s := range stand {
		if part, is := s.Thing.(*model.Part); is && s.Since != nil && s.Since.Phase.ID == phase && s.Since.Of == p {
			out = append(out, Named{part.ID, part.Label()})
		}
	}
	return out
}

// choices are what can be written behind a step, or first in a phase; of a step
// that is being written also what belongs to it.
func (d *Desk) choices(p *model.Procedure, a Act) (*Choices, error) {
	b := d.bench()
	slot, stand, err := placeOf(b, p, a)
	if err != nil {
		return nil, err
	}
	out := &Choices{Groups: grouped(b, p, b.Offers(slot), stand), Belongs: belongs(b, p, findStep(p, a.Step), stand)}
	if ways := waysToStart(b, p); len(ways) > 0 && unbegun(p) {
		out.Groups = slices.Insert(out.Groups, 0, Group{"FoundAs", ways})
	}
	say := &language.Of(b.Manual().Shop.Language).Words
	for _, s := range stand {
		said := s.Label() + ": " + say.State(s.Word)
		if s.When != "" {
			said += " (" + s.When + ")"
		}
		if s.Since != nil {
			said += ", " + fmt.Sprintf(say.Since, s.Since.Number)
		}
		out.Standing = append(out.Standing, said)
	}
	return out, nil
}

// placeOf is where an act writes, and how things stand there.
func placeOf(b bench, p *model.Procedure, a Act) (offers.Slot, []walk.Standing, error) {
	if a.After == "" {
		ph := p.FindPhase(a.Phase)
		if ph == nil {
			return offers.Slot{}, nil, noStep
		}
		return b.SlotFirst(p, ph), standing(b, p, lastBefore(p, ph)), nil
	}
	s := findStep(p, a.After)
	if s == nil {
		return offers.Slot{}, nil, noStep
	}
	slot, ok := b.SlotAfter(s)
	if !ok {
		return slot, nil, noPlace
	}
	return slot, standing(b, p, s), nil
}

// lastBefore is the last step of the phases before one; nil where there is none.
func lastBefore(p *model.Procedure, ph *model.Phase) *model.Step {
	var out *model.Step
	for _, s := range p.Steps {
		if s.Phase.At.Start < ph.At.Start && s.Parent == nil {
			out = s
		}
	}
	return out
}

// standing is how things stand behind a step; at the start where it is nil.
func standing(b bench, p *model.Procedure, s *model.Step) []walk.Standing {
	w, done := b.Walks.Of(p), 0
	if s != nil {
		done = s.Done
	}
	if !w.Done {
		return nil
	}
	return w.Stand(done)
}

// few is how many of a sort are shown; the rest is found by a word.
const few = 8

// belongs are cautions, stops and tools that may belong to a step: those of what
// is open at it and of what its procedure lists, without those that it has.
func belongs(b bench, p *model.Procedure, s *model.Step, stand []walk.Standing) []Group {
	if p.Broken {
		return nil
	}
	speech, has := speechOf(b), map[model.Named]bool{}
	if s != nil {
		for _, l := range s.Links {
			has[l.To] = l.To != nil
		}
	}
	near := map[string]bool{}
	for _, x := range stand {
		near[x.Thing.Base().ID] = true
	}
	var cautions, stops, tools []Choice
	for _, h := range b.Manual().Hazards {
		listed := slices.ContainsFunc(p.Hazards, func(u model.HazardUse) bool { return u.To == h })
		if !has[h] && !h.Misread && (listed || near[h.Of.ID] || h.Of.ID == "") {
			cautions = append(cautions, caution(b, speech, h))
		}
	}
	for _, h := range b.Manual().Holds {
		listed := slices.ContainsFunc(p.Holds, func(r model.Ref[model.Hold]) bool { return r.To == h })
		if !has[h] && !h.Misread && (listed || near[h.Of.ID] || h.Of.ID == "") {
			stops = append(stops, piecefor(b, speech, model.LinkHold, h))
		}
	}
	for _, u := range p.Tools {
		if u.To != nil && !has[u.To] {
			tools = append(tools, piecefor(b, speech, model.LinkTool, u.To))
		}
	}
	var out []Group
	for _, g := range []Group{{"Cautions", cautions}, {"Stops", stops}, {"Tools", tools}, {"Conditions", conditions(b, p, s)}, {"More", others(b)}} {
		if len(g.Items) > 0 {
			g.Items = g.Items[:min(most(g.Name), len(g.Items))]
			out = append(out, g)
		}
	}
	return out
}

func most(group string) int {
	if group == "Conditions" { // they are found by no word
		return 3 * few
	}
	return few
}

// conditions are those that a step can have: an option of the machine, what an
// earlier stop of the procedure found. Each is the beginning of the step.
func conditions(b bench, p *model.Procedure, s *model.Step) []Choice {
	l := language.Of(b.Manual().Shop.Language)
	var out []Choice
	add := func(words, address, after string) {
		out = append(out, Choice{Kind: "condition", Label: words, Text: "[" + edit.LinkText(words) + "](" + address + ")" + after})
	}
	for _, h := range asked(p, s) {
		switch h.Kind {
		case "measure", "look":
			add(filled(l.Write.IfNot, h.Label()), "if-not:"+h.ID, ", ")
			out = append(out, Choice{Kind: "again", Label: filled(l.Write.TakeAgain, h.Label()), Text: "[" + edit.LinkText(filled(l.Write.TakeAgain, h.Label())) + "](again:" + h.ID + ")."})
		case "ask":
			for _, answer := range h.Answers {
				add(filled(l.Write.IfAnswer, h.Label(), answer.Value), "if:"+h.ID+"="+answer.Key, ", ")
			}
		}
	}
	if m := p.For.To; m != nil {
		for _, o := range m.Options {
			add(capital(l.Speech.With+o.Value), "when:"+o.Key, ", ")
			add(capital(l.Speech.Without+o.Value), "when:!"+o.Key, ", ")
		}
	}
	return out
}

// asked are the stops that the steps before one take, each once, the last first.
func asked(p *model.Procedure, s *model.Step) []*model.Hold {
	var out []*model.Hold
	for _, x := range p.Steps {
		if s != nil && x.At.Start >= s.At.Start {
			break
		}
		for _, l := range x.Links {
			if h, is := l.To.(*model.Hold); is && l.Is(model.LinkHold) && !slices.Contains(out, h) {
				out = append(out, h)
			}
		}
	}
	slices.Reverse(out)
	return out
}

// filled puts values for {0} and {1}.
func filled(text string, values ...string) string {
	for i, v := range values {
		text = strings.ReplaceAll(text, fmt.Sprintf("{%d}", i), v)
	}
	return text
}

// others are pieces that any step may have.
func others(b bench) []Choice {
	w := &language.Of(b.Manual().Shop.Language).Write
	return []Choice{{Kind: "optional", Label: w.MayBeLeftOut, Text: "[](optional:)"}, {Kind: "pause", Label: w.GoodPause, Text: "[](pause:)"}}
}

func speechOf(b bench) *shape.Speech { return &language.Of(b.Manual().Shop.Language).Speech }

func caution(b bench, speech *shape.Speech, h *model.Hazard) Choice {
	c := piecefor(b, speech, model.LinkHazard, h)
	say := language.Of(b.Manual().Shop.Language).Words
	c.Detail = say.Signal(signal.Of(h.Harm, h.Happens).String())
	for _, g := range h.Wear {
		if g.To != nil {
			c.Detail += " · " + g.To.Label()
		}
	}
	return c
}

// piecefor is a sentence, or a link alone, that names an entry in a step.
func piecefor(b bench, speech *shape.Speech, kind string, n model.Named) Choice {
	link := func(words string) string {
		return "[" + edit.LinkText(strings.Join(strings.Fields(words), " ")) + "](" + kind + ":" + n.Base().ID + ")"
	}
	c := Choice{Kind: kind, Label: n.Label(), Text: link(n.Label())}
	said := facts(b, n)
	c.Detail = strings.Join(said[:min(2, len(said))], " · ")
	switch kind {
	case model.LinkTool:
		c.Text = capital(fmt.Sprintf(speech.Use, fmt.Sprintf(speech.The, c.Text)))
	case model.LinkHazard:
		c.Text = fmt.Sprintf(speech.Mind, c.Text)
	case model.LinkHold:
		c.Text = link(capital(fmt.Sprintf(speech.Stop, n.Label()))) + "."
	case model.LinkDo:
		c.Text = link(capital(fmt.Sprintf(speech.Perform, n.Label()))) + "."
	}
	return c
}

func capital(text string) string {
	r, size := utf8.DecodeRuneInString(text)
	return string(unicode.ToUpper(r)) + text[size:]
}

// sought are the kinds of links among which a word is looked for.
var sought = []string{"part", model.LinkTool, model.LinkHazard, model.LinkHold, "supply", "fastener", "energy", "point", "fluid", "setting", model.LinkDo, model.LinkRole}

// mostHits is how many a search shows.
const mostHits = 24

// find is every entry whose name, id or first facts hold all words.
func (d *Desk) find(p *model.Procedure, text string) []Choice {
	b, out := d.bench(), []Choice{}
	words := strings.Fields(strings.ToLower(text))
	if len(words) == 0 || len(text) > 200 {
		return out
	}
	for _, kind := range sought {
		for _, c := range b.Choices(p, kind+":") {
			if c.Entry == nil || len(out) == mostHits {
				continue
			}
			said := piecefor(b, speechOf(b), kind, c.Entry)
			in := strings.ToLower(c.Label + " " + c.Text + " " + said.Detail)
			if !slices.ContainsFunc(words, func(w string) bool { return !strings.Contains(in, w) }) {
				out = append(out, said)
			}
		}
	}
	return out
}
