package spanish

import "baybinder/generator/language/words"

var jobs = words.Jobs{
	Done: "Trabajos hechos", Procedure: "Procedimiento", Saved: "Guardado", Unit: "Unidad", Revision: "Revisión", StepsDone: "Pasos hechos", Gaps: "Huecos", Who: "Hecho por",
	TickNoProof: "Una marca dice quién marcó un paso y cuándo. Por sí sola no prueba nada.",
	NamesApart:  "Los nombres están en las lecturas del taller, no en estas páginas.",
	OfSteps:     "%d de %d",
	MadeWith:    "hecho con la revisión %s", NotIssuedThen: "hecho antes de la primera revisión",
	NoUnit: "sin unidad elegida", OptionsOnly: "con: %s", UnitNo: "unidad %s", NoGaps: "ninguno", GapsAt: "%d, en el paso %s",
	FoldedRows:   "Más antiguos: %d",
	WhatMeasured: "Lo medido", LimitHead: "Límite entonces", Value: "Valor", Where: "Dónde", When: "Cuándo", Verdict: "Juzgado entonces", Limit: "límite",
	Within: "dentro del límite", Out: "fuera del límite", NotJudged: "límite no registrado", GivenUp: "fuera del límite, medido de nuevo", Numbers: "Todos los valores en números",
	PlotOne:  "Un valor, %s, el %s. %s",
	PlotDay:  "%d valores el %s: el menor es %s, el mayor %s %s. %s Fuera del límite: %d.",
	PlotText: "%d valores del %s al %s: el menor es %s, el mayor %s %s. %s Fuera del límite: %d.",
	LimitIs:  "Límite: %s.", NoLimit: "El manual no tiene límite.",
	AtMost: "como máximo %s", AtLeast: "como mínimo %s", Between: "%s a %s",
	Said: "Señalado como erróneo", SaidIntro: "Lo que los técnicos dijeron de un paso, y la respuesta de quien escribe.", SaidHere: "Señalado como erróneo: %d, vea el pie de la página",
	NotAnswered: "Aún sin respuesta.", Answered: "Respuesta, %s:",
	AnswerHow: "Para responder, añada la línea de abajo a %s, con sus palabras entre las comillas.", AnswerHead: "La primera línea del archivo es:", NothingSaid: "Nadie dijo que un paso esté mal.", Step: "Paso",
	Record: "Registro", RecordOf: "Registro: %s", Begun: "empezado %s", SavedAt: "guardado %s", DoneBy: "Hecho por: %s", NobodyNamed: "sin nombre",
	PartlyDone: "Este registro se guardó antes de terminar todos los pasos.", Clock: "Reloj", ClockBack: "%s: el reloj del ordenador se atrasó %d min. Las horas anteriores no son fiables.",
	Words: "Texto", State: "Estado", Holds: "Paradas",
	WaitFrom: "de %s a %s", WaitOver: "terminada", WaitRuns: "sin terminar al guardar", NotMet: "no cumplida", Met: "cumplida",
	Proved: "comprobador probado antes y después", NotProved: "comprobador no probado", Good: "bien", NotGood: "no está bien", Signed: "firmado %s", SignedBy: "firmado por %s, %s",
	GapBefore: "Hueco: el paso %s se marcó antes que %s.", GapHolds: "Hueco: el paso %s se marcó con una parada abierta: %s.", GivenUpAt: "descartado %s:",
	NotYet: "todavía no", InHand: "en curso", StepDone: "hecho", DoesNotApply: "no corresponde", NotOnUnit: "no en esta unidad", NotNeeded: "no hace falta",
	HandedOver:  "Relevo en el paso %s, %s.",
	HandedTo:    "De %s a %s.",
	HandedLocks: "Números de candado: %s.",
}
