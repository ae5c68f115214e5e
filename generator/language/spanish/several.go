package spanish

import "baybinder/generator/language/words"

var several = words.Language{Name: "Español", Languages: "Esta página en otro idioma", AtThe: "%s de: %s",
	OnUnits: "en unidades %s", With: "con %s", Without: "sin %s", Where: "si %s", And: " y ", OrElse: ", o ", OtherCases: "en los demás casos",
	Failed: "no se cumplió: %s (paso %s)", Passed: "se cumplió: %s (paso %s)", Was: "%s (paso %s) es: %s", WasNot: "%s (paso %s) no es: %s",
	StepDone: "se hizo el paso %s", StepLeftOut: "no se hizo el paso %s",
	BoltLoad: "Carga del tornillo", NotJudged: "no se ha juzgado: ninguna tabla tiene esta rosca y esta clase", ByHand: "a mano", Direct: "DC", Alternating: "AC", About: "aproximadamente", AtMost: "como máximo", AtLeast: "como mínimo", To: "a",
	Day: "día", Days: "días", Week: "semana", Weeks: "semanas", Month: "mes", Months: "meses", Year: "año", Years: "años",
	KeptPlug:      "una clavija que guarda quien trabaja solo",
	KeptAlone:     "%s: llévela consigo, o téngala a mano y a la vista. Es su candado solo mientras trabaje solo",
	KeptByNobody:  "%s: si trabaja más de una persona no sirve de candado",
	TestedAltered: "durante esta prueba está cambiado: %s",
	FreedBy:       "Solo se quita y se pone con esto flojo",
}
