package spanish

import "baybinder/generator/language/words"

var timeLine = words.TimeLine{
	Title: "Línea de tiempo", Intro: "Los pasos uno tras otro, tal como están escritos. Lo que se mide y se mira cuenta como correcto, una pregunta tiene su primera respuesta, los pasos opcionales se omiten.",
	Picture: "%d fases en %s, una tras otra; la lista de abajo dice lo mismo.",
	From:    "de %s a %s", People: "hasta %d personas", Waits: "%s son esperas",
	NoTime: "%d pasos no tienen tiempo", NoTimeOne: "1 paso no tiene tiempo",
	Work: "trabajo; tan alto como personas a la vez", Wait: "una espera", Call: "otro procedimiento, que se hace aquí",
	Least:       "El mismo trabajo no puede durar menos de %s con %d personas, en ningún orden.",
	LeastOne:    "El mismo trabajo no puede durar menos de %s con una persona, en ningún orden.",
	Decide:      "Lo deciden los pasos %s. Los pasos siguen en el orden en que están escritos.",
	Range:       "%s a %s",
	WorkWorked:  "%s de trabajo. Cómo se calculó",
	WorkFormula: "el tiempo de cada paso por cada persona, fase por fase",
	BayWorked:   "%s en el puesto. Cómo se calculó",
	BayFormula:  "las fases una tras otra",
	SumSource:   "los tiempos de los pasos, fases, esperas y procedimientos de esta página",
	Second:      "en el paso %s además: %s",
}
