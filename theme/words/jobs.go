package words

import "fmt"

// Jobs are the words around jobs that were done. Those with a %s or %d say what
// goes there in the comment.
type Jobs struct {
	Done, Procedure, Saved, Unit, Revision, StepsDone, Gaps, Who string // headings
	TickNoProof, NamesApart                                      string
	OfSteps                                                      string // how many, of how many
	MadeWith, NotIssuedThen                                      string // a revision that is not the one that stands; -
	NoUnit, OptionsOnly, UnitNo, NoGaps, GapsAt                  string // -; options; serial; -; how many, steps
	FoldedRows                                                   string // how many

	WhatMeasured, Value, Where, When, Verdict, LimitHead, Limit string // headings, and the word at the line
	Within, Out, NotJudged, GivenUp, Numbers                    string
	Ticked                                                      string // places
	WasLate                                                     string // by when it was to end
	Near, NearAgain                                             string // NearAgain: how soon
	PlotOne                                                     string // value with unit, date, a sentence on the limit
	PlotDay                                                     string // how many, date, least, greatest, unit, limit, how many out
	PlotText                                                    string // how many, first date, last date, least, greatest, unit, limit, how many out
	LimitIs, NoLimit                                            string // a limit; -
	AtMost, AtLeast, Between                                    string // a number; a number; two numbers

	Said, SaidIntro, SaidHere                string // heading; -; how many
	NotAnswered, Answered                    string // -; a date
	AnswerHow, AnswerHead, NothingSaid, Step string // a file; -; -; -

	Record, RecordOf, Begun, SavedAt, DoneBy, NobodyNamed string // -; a title; a time; a time; who; -
	PartlyDone, Clock, ClockBack                          string // -; heading; a time, minutes
	Words, State, Holds                                   string // headings
	WaitFrom, WaitOver, WaitRuns, NotMet, Met             string // two times; -; -; -; -
	Proved, NotProved, Good, NotGood, Signed, SignedBy    string // Signed: a time; SignedBy: name, time
	GapBefore, GapHolds, GivenUpAt                        string // step, steps; step, holds; a time

	NotYet, InHand, StepDone, DoesNotApply, NotOnUnit, NotNeeded string
}

// JobsIn are the words in a language; English where the theme does not speak it.
func JobsIn(language string) *Jobs {
	if language == "es" {
		return &jobsInSpanish
	}
	return &jobsInEnglish
}

// OfState is a state of a step as a record has it.
func (w *Jobs) OfState(state string) string {
	switch state {
	case "not yet":
		return w.NotYet
	case "in hand":
		return w.InHand
	case "done":
		return w.StepDone
	case "does not apply":
		return w.DoesNotApply
	case "not on this unit":
		return w.NotOnUnit
	case "not needed":
		return w.NotNeeded
	}
	return state
}

// LimitOf writes the ends of a limit; "" is an open end.
func (w *Jobs) LimitOf(low, high string) string {
	switch {
	case low == "" && high == "":
		return ""
	case low == "":
		return fmt.Sprintf(w.AtMost, high)
	case high == "":
		return fmt.Sprintf(w.AtLeast, low)
	}
	return fmt.Sprintf(w.Between, low, high)
}

var jobsInEnglish = Jobs{
	Done: "Jobs done", Procedure: "Procedure", Saved: "Saved", Unit: "Unit", Revision: "Revision", StepsDone: "Steps done", Gaps: "Gaps", Who: "Done by",
	TickNoProof: "A tick says who marked a step and when. It proves nothing by itself.",
	NamesApart:  "Names stand in the shop's readings, not on these pages.",
	OfSteps:     "%d of %d",
	MadeWith:    "made with revision %s", NotIssuedThen: "made before the first revision",
	NoUnit: "no unit chosen", OptionsOnly: "with: %s", UnitNo: "unit %s", NoGaps: "none", GapsAt: "%d, at step %s",
	FoldedRows:   "Older ones: %d",
	WhatMeasured: "What was measured", LimitHead: "Limit then", Value: "Value", Where: "Where", When: "When", Verdict: "Judged then", Limit: "limit",
	Ticked: "looked at: %s", WasLate: "later than %s, when it was due",
	Near: "near the limit", NearAgain: "near the limit, again in %s",
	Within: "within the limit", Out: "out of the limit", NotJudged: "limit not recorded", GivenUp: "out of the limit, measured again", Numbers: "All values as numbers",
	PlotOne:  "One value, %s, on %s. %s",
	PlotDay:  "%d values on %s: the least is %s, the greatest %s %s. %s Out of the limit: %d.",
	PlotText: "%d values from %s to %s: the least is %s, the greatest %s %s. %s Out of the limit: %d.",
	LimitIs:  "Limit: %s.", NoLimit: "No limit stands in the manual.",
	AtMost: "at most %s", AtLeast: "at least %s", Between: "%s to %s",
	Said: "Said to be wrong", SaidIntro: "What technicians said of a step, and the writer's answer.", SaidHere: "Said to be wrong: %d, see the foot of the page",
	NotAnswered: "Not answered yet.", Answered: "Answer, %s:",
	AnswerHow: "To answer, add the line below to %s, with your words between the quotes.", AnswerHead: "The file's first line is:", NothingSaid: "Nobody said that a step is wrong.", Step: "Step",
	Record: "Record", RecordOf: "Record: %s", Begun: "begun %s", SavedAt: "saved %s", DoneBy: "Done by: %s", NobodyNamed: "nobody named",
	PartlyDone: "This record was saved before every step was done.", Clock: "Clock", ClockBack: "%s: the computer's clock was set back by %d min. Times before it cannot be trusted.",
	Words: "Words", State: "State", Holds: "Holds",
	WaitFrom: "from %s to %s", WaitOver: "over", WaitRuns: "not over when it was saved", NotMet: "not met", Met: "met",
	Proved: "tester proved before and after", NotProved: "tester not proved", Good: "good", NotGood: "not good", Signed: "signed %s", SignedBy: "signed by %s, %s",
	GapBefore: "Gap: step %s was ticked before %s.", GapHolds: "Gap: step %s was ticked with a hold still open: %s.", GivenUpAt: "given up %s:",
	NotYet: "not yet", InHand: "in hand", StepDone: "done", DoesNotApply: "does not apply", NotOnUnit: "not on this unit", NotNeeded: "not needed",
}

var jobsInSpanish = Jobs{
	Done: "Trabajos hechos", Procedure: "Procedimiento", Saved: "Guardado", Unit: "Unidad", Revision: "Revisión", StepsDone: "Pasos hechos", Gaps: "Huecos", Who: "Hecho por",
	TickNoProof: "Una marca dice quién marcó un paso y cuándo. Por sí sola no prueba nada.",
	NamesApart:  "Los nombres están en las lecturas del taller, no en estas páginas.",
	OfSteps:     "%d de %d",
	MadeWith:    "hecho con la revisión %s", NotIssuedThen: "hecho antes de la primera revisión",
	NoUnit: "sin unidad elegida", OptionsOnly: "con: %s", UnitNo: "unidad %s", NoGaps: "ninguno", GapsAt: "%d, en el paso %s",
	FoldedRows:   "Más antiguos: %d",
	WhatMeasured: "Lo medido", LimitHead: "Límite entonces", Value: "Valor", Where: "Dónde", When: "Cuándo", Verdict: "Juzgado entonces", Limit: "límite",
	Ticked: "mirado: %s", WasLate: "después de las %s, cuando debía estar",
	Near: "cerca del límite", NearAgain: "cerca del límite, de nuevo en %s",
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
}
