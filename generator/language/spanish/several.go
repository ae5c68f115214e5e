package spanish

import "baybinder/generator/language/words"

var several = words.Language{Name: "Español", Languages: "Esta página en otro idioma", AtThe: "%s de: %s",
	OnUnits: "en unidades %s", With: "con %s", Without: "sin %s", Where: "si %s", And: " y ", OrElse: ", o ", OtherCases: "en los demás casos",
	Failed: "no se cumplió: %s (paso %s)", Passed: "se cumplió: %s (paso %s)", Was: "%s (paso %s) es: %s", WasNot: "%s (paso %s) no es: %s",
	StepDone: "se hizo el paso %s", StepLeftOut: "no se hizo el paso %s",
	BoltLoad: "Carga del tornillo", NotJudged: "no se ha juzgado: ninguna tabla tiene esta rosca y esta clase", ByHand: "a mano", About: "aproximadamente", AtMost: "como máximo", AtLeast: "como mínimo", To: "a"}
