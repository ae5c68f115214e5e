package procedure

import (
	"fmt"
	"slices"
	"strings"

	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/show/page"
)

// where says which units and outcomes something holds for; "" for all.
func (s *Pages) where(m *model.Machine, cases walk.Cases) string {
	w := &s.Speaks.Several
	var out []string
	for _, c := range cases {
		if c == nil {
			out = append(out, w.OtherCases)
			continue
		}
		out = append(out, s.caseWords(w, m, c))
	}
	return strings.Join(out, w.OrElse)
}

// without are cases without the terms that hold for all that is asked about;
// nil where one of them has no other condition.
func without(whole []string, cases walk.Cases) walk.Cases {
	var out walk.Cases
	for _, some := range cases {
		left := slices.DeleteFunc(slices.Clone(some), func(c walk.Condition) bool {
			return c.Option != "" && slices.Contains(whole, optionTerm(c.Option, !c.Is))
		})
		if len(left) == 0 && len(some) > 0 {
			return nil
		}
		out = append(out, left)
	}
	return out
}

// optionCases are the units that something holds for, in the ids that a unit's
// choice is made of; "" where units of every kind can have it.
func optionCases(cases walk.Cases) string {
	var out []string
	for _, some := range cases {
		var ids []string
		for i := range some {
			if some[i].Option != "" {
				ids = append(ids, optionTerm(some[i].Option, !some[i].Is))
			}
		}
		if len(ids) == 0 {
			return ""
		}
		out = append(out, strings.Join(ids, " "))
	}
	return strings.Join(out, "|")
}

// optionTerm is one condition of a unit, as the script reads it.
func optionTerm(id string, not bool) string {
	if not {
		return "!" + id
	}
	return id
}

func (s *Pages) caseWords(w *words.Language, m *model.Machine, some []walk.Condition) string {
	var unit, happened []string
	for i := range some {
		c := &some[i]
		switch {
		case c.Option == "":
			happened = append(happened, s.happened(w, c))
		case c.Is:
			unit = append(unit, fmt.Sprintf(w.With, s.optionOr(m, c.Option)))
		default:
			unit = append(unit, fmt.Sprintf(w.Without, s.optionOr(m, c.Option)))
		}
	}
	var parts []string
	if len(unit) > 0 {
		parts = append(parts, fmt.Sprintf(w.OnUnits, strings.Join(unit, w.And)))
	}
	if len(happened) > 0 {
		parts = append(parts, fmt.Sprintf(w.Where, strings.Join(happened, w.And)))
	}
	return page.Joined(parts)
}

// optionOr is the words of an option, or its id.
func (s *Pages) optionOr(m *model.Machine, id string) string {
	if text := s.Option(m, id); text != "" {
		return text
	}
	return id
}

// happened says what a measurement, a look or a question came to, or whether a
// step was done.
func (s *Pages) happened(w *words.Language, c *walk.Condition) string {
	number := ""
	if c.Step != nil {
		number = c.Step.Number
	}
	pick := func(then, otherwise string) string {
		if c.Is {
			return then
		}
		return otherwise
	}
	switch {
	case c.Hold == nil:
		return fmt.Sprintf(pick(w.StepDone, w.StepLeftOut), number)
	case c.Answer == "":
		return fmt.Sprintf(pick(w.Failed, w.Passed), s.Name(c.Hold), number)
	}
	answer := c.Answer
	for _, a := range s.Answers(c.Hold) {
		if a.Key == c.Answer && a.Value != "" {
			answer = a.Value
		}
	}
	return fmt.Sprintf(pick(w.Was, w.WasNot), s.Name(c.Hold), number, answer)
}
