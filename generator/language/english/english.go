// Package english is what the program knows of English: values only.
package english

import (
	"maps"

	stemmer "github.com/kljensen/snowball/english"

	"baybinder/generator/language/shape"
	drawn "baybinder/theme/signs"
)

// Language is English.
var Language = shape.Language{
	Code: "en",

	Words: page, Bay: bay, Front: frontWords, CloseOut: closeOut, Jobs: jobs, Readable: readable, Readings: readings, Several: several,
	TimeLine: timeLine, Watch: watch, Collect: collect, Worked: worked, Write: write, Counted: counted, Signs: signs,

	Speech: speech, Procedure: procedure,

	Grammar: grammar, Passive: passive, Vague: vague, ByHand: []string{"hand tight", "finger tight"}, Denials: denials, Numbers: numbers, Acts: acts, Verbs: verbs, Asides: asides, Bounds: bounds, Jotted: jotted,
	Signals: []string{"DANGER", "WARNING", "CAUTION", "NOTICE"},
	Gear: map[string][]string{
		"M003": {"ear", "hearing"}, "M004": {"goggles", "glasses", "eye protection", "spectacles"}, "M008": {"boot", "shoe", "footwear"},
		"M009": {"glove", "gauntlet"}, "M010": {"overall", "coverall", "suit", "clothing"}, "M013": {"face shield", "visor", "arc hood"},
		"M014": {"helmet", "hard hat"}, "M015": {"high-visibility", "hi-vis"}, "M016": {"mask"}, "M017": {"respirator", "breathing"},
		"M018": {"harness"}, "M019": {"welding"}, "M026": {"apron"},
	},
	Small: []string{"cap", "caps", "clip", "clips", "strap", "straps"}, // the trade's examples

	Stem:      func(form string) string { return stemmer.Stem(form, true) },
	Syllables: syllables,
	Ease:      &shape.Formula{Base: 206.835, Sentence: -1.015, Word: -84.6}, // Flesch Reading Ease, as VA HSR&D's archive prints it
	Grade:     &shape.Formula{Base: -15.59, Sentence: 0.39, Word: 11.8},     // Flesch and Kincaid, as VA HSR&D's archive prints it
}

// signs are the registered names, which stand with the drawings.
var signs = func() map[string]string {
	out := map[string]string{}
	for _, s := range drawn.All() {
		out[s.Number] = s.Name
	}
	maps.Copy(out, drawn.Undrawn())
	return out
}()
