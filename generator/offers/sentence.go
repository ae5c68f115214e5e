package offers

import (
	"fmt"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"baybinder/generator/language/shape"
	"baybinder/generator/model"
	"baybinder/generator/read/edit"
)

// sentence is a step on its way: its acts, what is said beside them, what it
// names.
type sentence struct {
	*shape.Speech
	kind, address string
	entry         model.Named
	label, detail string
	acts          []string
	beside        []string
	needs         []Need
	amounts       map[model.Named]string
}

// say begins a sentence with an act.
func (d *drawing) say(kind, words string, n model.Named) *sentence {
	s := &sentence{Speech: d.speech(), kind: kind, address: kind + ":" + n.Base().ID, entry: n}
	s.label = capital(fmt.Sprintf(words, n.Label()))
	s.acts = []string{link(fmt.Sprintf(words, n.Label()), s.address)}
	return s
}

// also adds a second act to the first.
func (s *sentence) also(kind, words string, n model.Named) {
	s.acts = append(s.acts, link(words, kind+":"+n.Base().ID))
}

// uses names tools, and asks for the roles that may use them.
func (s *sentence) uses(tools ...*model.Tool) {
	var each []string
	for _, t := range tools {
		s.need(model.LinkTool, t)
		each = append(each, fmt.Sprintf(s.The, of(model.LinkTool, t)))
	}
	if len(each) > 0 {
		s.beside = append(s.beside, capital(fmt.Sprintf(s.Use, strings.Join(each, s.And))))
	}
}

// mind names a hazard that the step meets.
func (s *sentence) mind(h *model.Hazard) {
	if h == nil {
		return
	}
	s.need(model.LinkHazard, h)
	s.beside = append(s.beside, fmt.Sprintf(s.Mind, of(model.LinkHazard, h)))
}

func (s *sentence) need(kind string, n model.Named) {
	if !slices.Contains(s.needs, Need{kind, n}) {
		s.needs = append(s.needs, Need{kind, n})
	}
	var gear []model.Ref[model.Tool]
	switch n := n.(type) {
	case *model.Tool:
		for _, r := range n.Needs {
			if r.To != nil {
				s.need(model.LinkRole, r.To)
			}
		}
	case *model.Hazard:
		gear = n.Wear
	case *model.Hold:
		gear = append(gear, n.With, n.ProvedOn)
	}
	for _, g := range gear {
		if g.To != nil {
			s.roles(g.To)
		}
	}
}

// roles asks for those who may use a tool that reaches the kit by itself.
func (s *sentence) roles(t *model.Tool) {
	for _, r := range t.Needs {
		if r.To != nil && !slices.Contains(s.needs, Need{model.LinkRole, model.Named(r.To)}) {
			s.needs = append(s.needs, Need{model.LinkRole, r.To})
		}
	}
}

func (s *sentence) offer() Offer {
	words := append([]string{capital(strings.Join(s.acts, s.And)) + "."}, s.beside...)
	return Offer{
		Kind: s.kind, Entry: s.entry, Address: s.address, Label: s.label, Detail: s.detail,
		Sentence: strings.Join(words, " "), Needs: s.needs, amounts: s.amounts,
	}
}

// of is a link with the entry's own name.
func of(kind string, n model.Named) string { return link(n.Label(), kind+":"+n.Base().ID) }

func link(words, address string) string {
	return "[" + edit.LinkText(strings.Join(strings.Fields(words), " ")) + "](" + address + ")"
}

// capital makes the first letter of a sentence, in a link or not, a capital.
func capital(text string) string {
	i := len(text) - len(strings.TrimLeft(text, "[\\"))
	r, size := utf8.DecodeRuneInString(text[i:])
	return text[:i] + string(unicode.ToUpper(r)) + text[i+size:]
}
