// Package implied says for which units a step is done where that follows from what it acts on.
//
// An act on a thing that is only-with an option does nothing on other units, and
// no rule asks for it there. So nobody has to write when: beside it: a step in
// which every sentence is such an act is for the units that have the thing, and
// the page and the times say so.
//
// # Decided where the format is silent
//
// What is walked and found does not change: the step's tools, hazards and holds
// are judged on every unit, as for any step without when:. So a step at which work
// stops, or that has sub-steps, a call or an act on anything else, is for all
// units, and so is one with a sentence of words only.
package implied

import (
	"slices"
	"strings"
	"unicode"

	"baybinder/generator/model"
	"baybinder/generator/read/sentence"
)

// When is the condition that a step's acts imply. It is false where they imply
// none, and where a when: says it already.
func When(s *model.Step) (model.Condition, bool) {
	var c model.Condition
	if len(s.Subs) > 0 {
		return c, false
	}
	acts := 0
	for _, l := range s.Links {
		switch {
		case l.Bad || l.Kind.Stops || l.Kind.Branches:
			return c, false
		case l.Kind.Act == model.NoAct:
			continue
		}
		of := conditionOf(l.To)
		if of.Option == "" || acts > 0 && !same(of, c) {
			return c, false
		}
		c, acts = of, acts+1
	}
	return c, acts > 0 && !said(s, c) && everySentenceActs(s)
}

func same(a, b model.Condition) bool { return a.Option == b.Option && a.Not == b.Not }

// conditionOf is the option without which a thing is not there: of a fastener
// its own, else that of all parts that it holds.
func conditionOf(n model.Named) model.Condition {
	switch to := n.(type) {
	case *model.Part:
		return to.OnlyWith
	case *model.Energy:
		return to.OnlyWith
	case *model.Point:
		return to.OnlyWith
	case *model.Fluid:
		return to.OnlyWith
	case *model.Setting:
		return to.OnlyWith
	case *model.Fastener:
		if to.OnlyWith.Option != "" || len(to.Holds) == 0 {
			return to.OnlyWith
		}
		first := to.Holds[0].OnlyWith
		if slices.ContainsFunc(to.Holds, func(p *model.Part) bool { return !same(p.OnlyWith, first) }) {
			return model.Condition{}
		}
		return first
	}
	return model.Condition{}
}

// said says that a when: of the step, of one that holds it or of its phase says
// the condition, or any other of the same option.
func said(s *model.Step, c model.Condition) bool {
	says := func(l *model.Link) bool { return l.Is(model.LinkWhen) && l.ID == c.Option }
	for at := s; at != nil; at = at.Parent {
		if slices.ContainsFunc(at.Links, says) {
			return true
		}
	}
	return s.Phase.Lead != nil && slices.ContainsFunc(s.Phase.Lead.Links, says)
}

// everySentenceActs says that no sentence of the step tells to do anything else.
func everySentenceActs(s *model.Step) bool {
	for i := range s.Blocks {
		b := &s.Blocks[i]
		if !b.Instructs() || b.Role != model.Said {
			continue
		}
		for _, one := range sentence.Of(b) {
			acts := slices.ContainsFunc(one.Links, func(l sentence.Placed) bool { return l.Kind.Act != model.NoAct })
			if !acts && strings.ContainsFunc(one.Text, unicode.IsLetter) {
				return false
			}
		}
	}
	return true
}
