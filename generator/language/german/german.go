// Package german is what the program knows of German: values only. The words
// are our own; a native speaker has not read them yet.
package german

import (
	"github.com/blevesearch/snowballstem"
	stemmer "github.com/blevesearch/snowballstem/german"

	"baybinder/generator/language/shape"
)

// Language is German. Passive orders, two actions in a step and how hard a text is
// are not looked for.
var Language = shape.Language{
	Code:  "de",
	Lacks: []string{"Jotted", "Grammar", "Passive", "Syllables", "Ease", "Grade"},

	Words: page, Bay: bay, Front: frontWords, CloseOut: closeOut, Jobs: jobs, Readable: readable, Readings: readings, Several: several,
	TimeLine: timeLine, Watch: watch, Collect: collect, Worked: worked, Write: write, Speech: speech, Procedure: procedure, Counted: counted, Signs: signs,

	Findings: findings,

	Numbers: numbers, Acts: acts, Verbs: verbs, Asides: asides, Bounds: bounds,
	Vague: []string{
		"nach bedarf", "bei bedarf", "falls nötig", "wenn nötig", "falls erforderlich", "wenn erforderlich", "gegebenenfalls",
		"ausreichend", "genügend", "geeignet", "angemessen", "ordnungsgemäß", "vorsichtig", "fest genug",
		"einige", "mehrere", "ein paar", "ein wenig", "etwas", "leicht", "regelmäßig", "von zeit zu zeit", "usw", "und so weiter",
	},
	ByHand:  []string{"handfest", "fingerfest"},
	Denials: []string{"nicht", "nichts", "nie", "niemals", "niemand", "ohne", "weder", "kein", "keine", "keinen", "keinem", "keiner", "keines", "nirgends"},
	Signals: []string{"GEFAHR", "WARNUNG", "VORSICHT", "ACHTUNG", "HINWEIS"},
	Gear: map[string][]string{
		"M003": {"gehörschutz", "ohrstöpsel", "kapselgehörschützer"}, "M004": {"schutzbrille", "brille", "augenschutz"}, "M008": {"sicherheitsschuh", "stiefel", "schuh"},
		"M009": {"handschuh", "schutzhandschuh"}, "M010": {"schutzkleidung", "schutzanzug", "overall"}, "M013": {"gesichtsschutz", "visier"},
		"M014": {"helm", "schutzhelm"}, "M015": {"warnweste", "warnkleidung"}, "M016": {"maske"}, "M017": {"atemschutz"},
		"M018": {"auffanggurt"}, "M019": {"schweißmaske", "schweißerschutz"}, "M026": {"schürze", "schutzschürze"},
	},
	Small: []string{"kappe", "kappen", "stopfen", "klammer", "klammern", "masseband"},

	Stem: stem,
}

func stem(form string) string {
	env := snowballstem.NewEnv(form)
	stemmer.Stem(env)
	return env.Current()
}
