package check

import "baybinder/generator/base/finding"

var tooLong = finding.Rule{
	Code:       "too-long",
	Level:      finding.Advice,
	Acceptable: true,
	Title:      "A sentence of a step that has too many words",
	Why:        "Who reads at arm's length, with a tool in hand, keeps a short sentence in mind and looks a long one up again.",
	Mend:       "Make two sentences of it, or put the reason into a paragraph of its own that begins with [Because](why:). The limit is words-in-a-step in shop.yaml.",
}

// wordsInAStep is the limit where the shop has none: ASD-STE100, rule 5.1, at
// most 20 words in a sentence of a procedure.
const wordsInAStep = 20

func runTooLong(w *writing, text []sentence) []finding.Finding {
	var found []finding.Finding
	for _, one := range text {
		if n := one.count(); n > w.words {
			found = append(found, tooLong.At(one.at(), "this sentence has %d words; the shop's limit is %d", n, w.words).
				WithMend("make two sentences of it, or take out what nobody acts on"))
		}
	}
	return found
}
