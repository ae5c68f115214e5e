package procedure

import (
	"fmt"
	"slices"
	"strings"

	"baybinder/generator/model"
)

// Condition is what must be so for a phase or step to be done, as a reader says
// it. What is asked of the unit is known once the unit is chosen.
type Condition struct {
	Text   string
	OfUnit bool
}

// Conditions are the conditions of a step as a reader says them.
func (s *Pages) Conditions(p *model.Procedure, links []*model.Link) []string {
	var out []string
	for _, c := range s.untold(p, links, nil) {
		out = append(out, c.Text)
	}
	return out
}

// untold are the conditions among links, without those of the unit that were
// said before: of the whole procedure, or above the phase.
func (s *Pages) untold(p *model.Procedure, links []*model.Link, told []string) []Condition {
	var out []Condition
	for _, l := range links {
		switch {
		case l.Bad, l.Is(model.LinkWhen) && slices.Contains(told, optionTerm(l.ID, l.Not)):
		case l.Is(model.LinkWhen):
			out = append(out, Condition{s.onlyWith(p, l.ID, l.Not), true})
		case l.Is(model.LinkIfNot):
			out = append(out, Condition{Text: fmt.Sprintf(s.Words.OnlyIfFailed, s.Name(l.To))})
		case l.Is(model.LinkIf):
			out = append(out, Condition{Text: fmt.Sprintf(s.Words.OnlyIfAnswer, s.Name(l.To), s.answerText(l))})
		}
	}
	return out
}

// options are what links ask of the unit, in the script's form.
func options(links []*model.Link) []string { return strings.Fields(terms(links).Options) }

// leadOptions are what a phase asks of the unit.
func leadOptions(phase *model.Phase) []string {
	if phase.Lead == nil {
		return nil
	}
	return options(phase.Lead.Links)
}

// wholly are the conditions on the unit that every step of a procedure has, by
// itself or by its phase: they are said once, at its head.
func wholly(p *model.Procedure) []string {
	var whole []string
	first := true
	for _, st := range p.Steps {
		if st.Parent != nil {
			continue
		}
		has := slices.Concat(leadOptions(st.Phase), options(st.Links))
		if first {
			whole, first = has, false
		}
		whole = slices.DeleteFunc(whole, func(term string) bool { return !slices.Contains(has, term) })
	}
	return whole
}

// wholeWords are these conditions as a reader says them.
func (s *Pages) wholeWords(p *model.Procedure, whole []string) []Condition {
	var out []Condition
	for _, term := range whole {
		id, not := strings.CutPrefix(term, "!")
		out = append(out, Condition{s.onlyWith(p, id, not), true})
	}
	return out
}

// told are the conditions on the unit that a reader of a step was told before.
func (c *course) told(st *model.Step) []string {
	told := slices.Concat(c.whole, leadOptions(st.Phase))
	for up := st.Parent; up != nil; up = up.Parent {
		told = append(told, options(up.Links)...)
	}
	return told
}

// onlyWhen says of a paragraph that it says for which units the phase is, and
// nothing else: the line of its conditions says the same.
func onlyWhen(b *model.Block) bool {
	for _, l := range b.Links {
		if l.Bad || l.Text != "" && !l.Is(model.LinkWhen) {
			return false
		}
	}
	said := strings.Join(strings.Fields(b.Plain), " ")
	for _, l := range b.Links {
		said = strings.Replace(said, strings.Join(strings.Fields(l.Text), " "), "", 1)
	}
	return len(b.Links) > 0 && strings.Trim(said, " .,:;") == ""
}
