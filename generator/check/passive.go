package check

import (
	"baybinder/generator/language/shape"
	"strings"

	"baybinder/generator/base/finding"
)

var passive = finding.Rule{
	Code:  "passive",
	Level: finding.Advice,
	Ours:  true,
	Title: "An instruction that does not say who acts",
	Why:   "\"Must be tightened\" can be read as said of somebody else, or as done already. \"Tighten\" is said to whoever reads it.",
	Mend:  "Begin with the verb: not \"the bolts must be tightened\", but \"tighten the bolts\". What is looked for (\"the lid is shut\") may stay as it is.",
}

// passiveWords are those of a language. What is only told, "the valve is
// closed", may be a state that is looked for: it is left alone.
type passiveWords struct{ shape.Passive }

var passives = byCode(func(l *shape.Language) *passiveWords { return &passiveWords{l.Passive} })

func runPassive(w *writing, text []sentence) []finding.Finding {
	if w.passive == nil {
		return nil
	}
	var found []finding.Finding
	for _, s := range text {
		for i := range s {
			if n := w.passive.order(s[i:]); n > 0 {
				at := s[i : i+n].at()
				found = append(found, passive.At(at, "%q does not say who acts", strings.Join(strings.Fields(at.Text()), " ")).
					WithMend("begin the instruction with its verb"))
			}
		}
	}
	return found
}

// order is how many words of a passive order a sentence begins with, or 0.
func (p *passiveWords) order(s sentence) int {
	for _, words := range p.Orders {
		last := len(words) - 1
		if !says(s, words[:last]) {
			continue
		}
		i := p.behind(s, last)
		if i == len(s) || s[i].said != words[last] {
			continue
		}
		if i = p.behind(s, i+1); i < len(s) && p.participle(s[i].said) {
			return i + 1
		}
	}
	return 0
}

// behind is the place of the next word that is no adverb.
func (p *passiveWords) behind(s sentence, i int) int {
	for i < len(s) && (p.Between[s[i].said] || strings.HasSuffix(s[i].said, p.AdverbEnds)) {
		i++
	}
	return i
}

func (p *passiveWords) participle(said string) bool {
	if p.Irregular[said] {
		return true
	}
	for _, end := range p.Endings {
		if len(said) > len(end)+2 && strings.HasSuffix(said, end) {
			return true
		}
	}
	return false
}
