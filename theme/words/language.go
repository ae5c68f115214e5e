package words

// Language are the words of pages in more than one language.
type Language struct {
	Name      string // the language's own name
	Languages string // what the switch is called
	AtThe     string // a fastener, a part

	// Where something holds: units with and without options; what happened.
	OnUnits, With, Without, Where string // OnUnits, Where: a list
	And, OrElse, OtherCases       string // between the items, between the cases; -
	Failed, Passed                string // a hold, a step's number
	Was, WasNot                   string // a hold, a step's number, an answer
	StepDone, StepLeftOut         string // a step's number

	BoltLoad, NotJudged string // of a thread or a class that no table has
	ByHand              string // how tight a fastener is
	About               string // of an amount that is not measured out
	AtMost, AtLeast, To string // of a limit: "at most 5 V", "2 to 6 bar"

	KeptPlug                string // of a point: it takes no padlock
	KeptAlone, KeptByNobody string // a plug: where one works alone, and where several work
	TestedAltered           string // a setting, while its energy is on for a test
	FreedBy                 string // fasteners elsewhere that a part needs loose
}

// LanguageIn are those words in a language; English where the theme does not
// speak it.
func LanguageIn(language string) *Language {
	if language == "es" {
		return &languageInSpanish
	}
	return &languageInEnglish
}

// NameOf is a language's own name; its code where the theme does not speak it.
func NameOf(language string) string {
	if language == "en" || language == "es" {
		return LanguageIn(language).Name
	}
	return language
}

var languageInEnglish = Language{Name: "English", Languages: "This page in another language", AtThe: "%s at the %s",
	OnUnits: "on units %s", With: "with %s", Without: "without %s", Where: "where %s", And: " and ", OrElse: ", or ", OtherCases: "in other cases",
	Failed: "the %s in step %s failed", Passed: "the %s in step %s passed", Was: "the %s in step %s is %s", WasNot: "the %s in step %s is not %s",
	StepDone: "step %s is done", StepLeftOut: "step %s is left out",
	BoltLoad: "Bolt load", NotJudged: "not judged: no table here has this thread and class", ByHand: "hand-tight", About: "about", AtMost: "at most", AtLeast: "at least", To: "to",
	KeptPlug: "a plug that is kept by whoever works alone", KeptAlone: "%s: keep it with you, or in reach and in sight. It is your lock only while you work alone",
	KeptByNobody: "%s: with more than one person at work it is no lock", TestedAltered: "%s is altered during this test",
	FreedBy: "Comes off and goes on only with these loose"}

var languageInSpanish = Language{Name: "Español", Languages: "Esta página en otro idioma", AtThe: "%s de: %s",
	OnUnits: "en unidades %s", With: "con %s", Without: "sin %s", Where: "si %s", And: " y ", OrElse: ", o ", OtherCases: "en los demás casos",
	Failed: "no se cumplió: %s (paso %s)", Passed: "se cumplió: %s (paso %s)", Was: "%s (paso %s) es: %s", WasNot: "%s (paso %s) no es: %s",
	StepDone: "se hizo el paso %s", StepLeftOut: "no se hizo el paso %s",
	BoltLoad: "Carga del tornillo", NotJudged: "no se ha juzgado: ninguna tabla tiene esta rosca y esta clase", ByHand: "a mano", About: "aproximadamente", AtMost: "como máximo", AtLeast: "como mínimo", To: "a",
	KeptPlug: "una clavija que guarda quien trabaja solo", KeptAlone: "%s: llévela consigo, o téngala a mano y a la vista. Es su candado solo mientras trabaje solo",
	KeptByNobody: "%s: si trabaja más de una persona no sirve de candado", TestedAltered: "durante esta prueba está cambiado: %s",
	FreedBy: "Solo se quita y se pone con esto flojo"}
