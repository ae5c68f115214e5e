// Package spanish is what the program knows of Spanish: values only. The words
// are our own; a native speaker has not read them yet.
package spanish

import (
	stemmer "github.com/kljensen/snowball/spanish"

	"baybinder/generator/language/shape"
)

// Language is Spanish.
var Language = shape.Language{
	Code:  "es",
	Lacks: []string{"Grade"}, // the school year was worked out for English alone

	Words: page, Bay: bay, Front: frontWords, CloseOut: closeOut, Jobs: jobs, Readable: readable, Readings: readings, Several: several,
	TimeLine: timeLine, Watch: watch, Collect: collect, Worked: worked, Write: write, Counted: counted, Signs: signs,

	Findings: findings,

	Speech: speech, Procedure: procedure,

	Grammar: grammar, Passive: passive, Vague: vague, ByHand: []string{"apretado a mano", "apretada a mano"}, Denials: denials, Numbers: numbers, Acts: acts, Verbs: verbs, Asides: asides, Bounds: bounds, Jotted: jotted,
	Signals: []string{"PELIGRO", "ADVERTENCIA", "PRECAUCIÓN", "PRECAUCION", "ATENCIÓN", "ATENCION", "AVISO"}, // accents left off as well
	Gear: map[string][]string{
		"M003": {"oído", "auricular"}, "M004": {"gafas"}, "M008": {"calzado", "bota"}, "M009": {"guante"}, "M010": {"ropa", "traje"},
		"M013": {"pantalla facial", "careta"}, "M014": {"casco"}, "M015": {"alta visibilidad"}, "M016": {"mascarilla"}, "M017": {"respirador"},
		"M018": {"arnés"}, "M019": {"soldar", "soldadura"}, "M026": {"delantal", "mandil"},
	},
	Small: []string{"tapón", "tapones", "grapa", "grapas", "trenza"}, // from memory

	Stem:      func(form string) string { return stemmer.Stem(form, true) },
	Syllables: syllables,
	Ease:      &shape.Formula{Base: 206.835, Sentence: -1, Word: -62.3}, // the perspicuity of Szigriszt-Pazos (1993), from memory
}
