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
	NoTimeUpTo:  "hasta %d pasos no tienen tiempo", NoTimeUpToOne: "en algunas de estas unidades 1 paso no tiene tiempo",
	WaitsWorked: "%s de espera. Cómo se calculó", WaitsFormula: "las esperas de los pasos y de los procedimientos que hacen",
	PhaseWorked: "%s: de %s a %s. Cómo se calculó", PhaseFormula: "cuándo empieza, y luego lo que ocurre, una cosa tras otra",
	LeastWorked: "No menos de %s. Cómo se calculó", LeastFormula: "lo que sea más largo: la cadena más larga o el trabajo repartido sin pausas",
	LeastChain: "pasos %s", LeastShared: "%s de trabajo / %d",
	LeastSource: "el camino crítico por los tiempos de esta página; ningún orden del mismo trabajo es más corto",
}
