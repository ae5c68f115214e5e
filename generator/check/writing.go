package check

import (
	"cmp"
	"sync"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
)

// writing is what the rules of writing go by in one procedure or translation.
type writing struct {
	words   int // at most, in a sentence
	actions int // at most, in a step
	grammar *grammar
	phrases map[string][][]string // vague ones, by their first words
	byHand  map[string][][]string // and how tight a hand makes it
	passive *passiveWords
}

// readers are read with again: nothing that is found is of theirs.
var readers = sync.Pool{New: func() any { return new(prose) }}

// runTexts reads every text once for all the rules of writing.
func runTexts(c *Context, p *model.Procedure) []finding.Finding {
	code := codeOf(languageOf(c.Manual, p))
	limits := c.Manual.Shop.Writing
	w := &writing{
		words:   cmp.Or(limits.WordsInAStep, wordsInAStep),
		actions: cmp.Or(limits.ActionsInAStep, actionsInAStep),
		grammar: grammars[code],
		phrases: vagueByFirst[code],
		byHand:  byHandByFirst[code],
		passive: passives[code],
	}
	var found []finding.Finding
	reader := readers.Get().(*prose)
	defer readers.Put(reader)
	for _, s := range p.Steps {
		for _, text := range reader.instructions(s) {
			for _, r := range writingRules {
				if r.Text != nil {
					found = append(found, r.Text(w, text)...)
				}
			}
		}
	}
	return found
}
