package page

import (
	"cmp"
	"strings"

	"baybinder/generator/model"
	"baybinder/generator/trade/ppe"
	"baybinder/generator/trade/signal"
	"baybinder/theme/signs"
)

// Box is a safety message: a header band with the signal word, then for each
// hazard its nature, its consequence and how to avoid it (ANSI Z535.6, message
// content in that order as two makers' manuals give it).
type Box struct {
	Class    string // danger, warning, caution, notice
	Word     string // DANGER, in the page's language
	Alert    HTML   // the safety alert symbol; none beside NOTICE
	Messages []Message
	Wear     []Gear
	Met      bool // all of it was said whole before in the phase
}

// Message is what a box says of one hazard.
type Message struct {
	Name        string
	Address     string
	Sign        HTML
	Nature      string
	Consequence string
	Avoid       []string
	Told        bool // it was said whole before in the phase
}

// Gear is a piece of protective gear with its mandatory sign.
type Gear struct {
	Name    string
	Address string
	Sign    HTML
}

// Boxes makes the boxes for the hazards of a step: one for harm to people,
// whose word is that of the greatest hazard (Z535.4-2007 as quoted: a label
// for more than one hazard takes the word of the greatest), and one for
// damage, which is not about people.
func (s *Site) Boxes(up string, hazards []*model.Hazard) []Box {
	var people, things []*model.Hazard
	for _, h := range hazards {
		switch word := WordOf(h); {
		case word.Injures():
			people = append(people, h)
		case word == signal.Notice:
			things = append(things, h)
		}
	}
	var out []Box
	for _, group := range [][]*model.Hazard{people, things} {
		if len(group) > 0 {
			out = append(out, s.box(up, group))
		}
	}
	return out
}

// WordOf is the signal word of a hazard.
func WordOf(h *model.Hazard) signal.Word { return signal.Of(h.Harm, h.Happens) }

// Greatest is the most serious word of hazards.
func Greatest(hazards []*model.Hazard) signal.Word {
	word := signal.None
	for _, h := range hazards {
		word = max(word, WordOf(h))
	}
	return word
}

func (s *Site) box(up string, hazards []*model.Hazard) Box {
	word := Greatest(hazards)
	b := Box{Class: word.String(), Word: s.Words.Signal(word.String())}
	if word.Injures() {
		b.Alert = HTML(signs.Alert())
	}
	for w := signal.Danger; w > signal.None; w-- { // the most serious first
		for _, h := range hazards {
			if WordOf(h) == w {
				b.Messages = append(b.Messages, s.message(up, h))
			}
		}
	}
	b.Wear = s.Gear(up, Wears(hazards))
	return b
}

func (s *Site) message(up string, h *model.Hazard) Message {
	return Message{
		Name: s.Name(h), Address: s.Address(up, h), Sign: s.Sign(h.Symbol),
		Nature: s.Say(h, "nature", h.Nature), Consequence: s.Say(h, "consequence", h.Consequence), Avoid: s.SayAll(h, "avoid", h.Avoid),
	}
}

// Sign is the drawing of an ISO 7010 sign with its name for a screen reader.
func (s *Site) Sign(number string) HTML {
	sign, ok := signs.Find(number)
	if !ok {
		return s.undrawn(number)
	}
	return HTML(sign.Inline("sign", cmp.Or(s.Speaks.Signs[number], sign.Name)))
}

// undrawn is a sign that is not drawn, by its number and what it is called.
func (s *Site) undrawn(number string) HTML {
	if number == "" {
		return ""
	}
	return `<span class="sign-name">` + Escaped(strings.TrimSpace(number+" "+cmp.Or(s.Speaks.Signs[number], signs.Undrawn()[number]))) + `</span>`
}

// Wears is the gear against hazards, each once.
func Wears(hazards []*model.Hazard) []*model.Tool {
	var out []*model.Tool
	seen := map[*model.Tool]bool{}
	for _, h := range hazards {
		for _, w := range h.Wear {
			if w.To != nil && !seen[w.To] {
				seen[w.To] = true
				out = append(out, w.To)
			}
		}
	}
	return out
}

func (s *Site) Gear(up string, tools []*model.Tool) []Gear {
	var out []Gear
	for _, t := range tools {
		out = append(out, Gear{Name: s.Name(t), Address: s.Address(up, t), Sign: s.Sign(ppe.Sign(t.Name))})
	}
	return out
}
