package words

import "strings"

// Readings are the words of the pages about plans, people and exercises. Those
// with a %s or %d say what goes there in the comment.
type Readings struct {
	// plans
	Plans, InPlans, InPlansNote, PlanIntro       string
	LeadsTo, WithinTime, Assessor, AnyAssessor   string // LeadsTo: roles; WithinTime: a duration; Assessor: a role
	InAll, TimeRule, BuildsOn, AddedToPlan       string // InAll: how many, a time; BuildsOn: numbers
	Read, Watched, PerformedOf, Performed        string // PerformedOf: which, of how many
	Date, AssessorSign, Reader, Started, AllRead string

	// the folder of the readings
	Front, FrontNote, Matrix, MatrixOf        string // FrontNote: a day; MatrixOf: a plan
	People, Procedures                        string
	RolesRunOut, RunsOutOn, RanOutOn          string // a day
	Overdue, Stale, Due, Good, ActsLeft       string // with the letters below
	OverdueMark, StaleMark, DueMark, GoodMark string
	ActsMark, NobodyIs, AndMore, By, ByDay    string // AndMore: how many; ByDay: a day
	MatrixNote, PeopleFrom, NotAsked          string // PeopleFrom: from, to
	NobodyInTraining, Person, State, LastRead string
	OpenInManual, NoPlan                      string

	// a person
	RolesHeld, NoRoles, HeldSince, NoEnd, NotYetGained    string // HeldSince, NotYetGained: a day
	Next, NothingNext, Record, NoRecord, WitnessedBy      string
	StillTrue, NoLongerTrue, Taught, Done, ToWatch, SoFar string

	// a procedure
	WhoMay, WhoMayNote, HoldAll, HoldSome, NobodyHolds string // WhoMayNote: a day; NobodyHolds: roles
	NobodyElse, Anyone, Between                        string // Between: people
	HowAllStand, NobodyAsked                           string
	MakesStale, MakesStaleNote, MakesStaleNone         string
	LookAtCallers, WhatChanged, ReadRevision           string // ReadRevision: number
	ReadUnissued, WordsNotKept, NothingForThem         string
	NotHeld, NotRead                                   string

	// exercises
	Exercise, Answers, ExerciseTitle, AnswersTitle string // the titles: a procedure
	ExerciseMark, AnswersMark, ExerciseHow         string
	WorkFrom, Score, SignalWord                    string
	ExerciseDone, NoSteps                          string
}

// ReadingsIn are these words in a language; English where the theme does not
// speak it.
func ReadingsIn(language string) *Readings {
	if language == "es" {
		return &readingsInSpanish
	}
	return &readingsInEnglish
}

var readingsInEnglish = Readings{
	Plans: "Reading plans", InPlans: "Reading plans that include it",
	InPlansNote: "Whoever follows one of them reads this. When a revision is issued to be read again, their reading of it is out of date.",
	PlanIntro:   "Read in this order: nothing comes before what it builds on. Tick, date and have signed what is done.",
	LeadsTo:     "Leads to: %s", WithinTime: "Within %s of the start", Assessor: "Performed under the eye of someone who is: %s", AnyAssessor: "what the plan leads to",
	InAll: "%d procedures, about %s of reading.", TimeRule: "Words at 238 a minute (Brysbaert 2019); 12 s for a picture and 20 s for a table, by our own rule.",
	BuildsOn: "Builds on %s", AddedToPlan: "here because a procedure of the plan performs it",
	Read: "Read", Watched: "Watched", PerformedOf: "Performed, %d of %d", Performed: "Performed",
	Date: "Date", AssessorSign: "Assessor", Reader: "Reader", Started: "Started", AllRead: "All of it done",

	Front: "Readings", FrontNote: "As of %s. These pages name people: they are not part of the manual's site.",
	Matrix: "Matrix", MatrixOf: "Matrix: %s", People: "People", Procedures: "Procedures",
	RolesRunOut: "Roles that ran out or soon do", RunsOutOn: "runs out after %s", RanOutOn: "ran out after %s",
	Overdue: "overdue", Stale: "stale: changed since it was read", Due: "due", Good: "read: still true", ActsLeft: "acts left: read, still to be watched or performed",
	OverdueMark: "O", StaleMark: "S", DueMark: "D", GoodMark: "R", ActsMark: "A",
	NobodyIs: "Nobody.", AndMore: "and %d more", By: "By", ByDay: "by %s",
	MatrixNote: "An empty field: no plan of that person asks for it, and there is no record of it.", PeopleFrom: "People %d to %d",
	NotAsked: "asked by no plan", NobodyInTraining: "Nobody follows a plan, and nothing is recorded.", Person: "Person", State: "State", LastRead: "Last read",
	OpenInManual: "Open it in the manual", NoPlan: "It is in no plan.",

	RolesHeld: "Roles", NoRoles: "No role is written.", HeldSince: "since %s", NoEnd: "does not run out", NotYetGained: "from %s",
	Next: "What is next", NothingNext: "Nothing is left to do.", Record: "What is recorded", NoRecord: "Nothing is recorded.", WitnessedBy: "Under the eye of",
	StillTrue: "still true", NoLongerTrue: "changed since", Taught: "Taught", Done: "Done", ToWatch: "to be watched", SoFar: "performed %d of %d times",

	WhoMay: "Who may do this today", WhoMayNote: "By the roles in the manual's files, on %s. It says nothing of who is well, rested or here: the foreman decides, and local codes come first.",
	HoldAll: "Hold every role that it needs", HoldSome: "Hold some of them, or held them", NobodyHolds: "Nobody holds on this day: %s.",
	NobodyElse: "Whoever is not named here holds none of these roles.", Anyone: "No role is asked for: anyone trained in the shop.", Between: "%d people at once hold them between them.",
	HowAllStand: "Who has read it", NobodyAsked: "No plan asks anybody to read it, and no reading is recorded.",
	MakesStale: "What a change here makes stale", MakesStaleNote: "If the next revision is issued to be read again, these readings are out of date:", MakesStaleNone: "No reading of it is true now, so none goes out of date.",
	LookAtCallers: "These perform it, at any depth: look at them when it changes", WhatChanged: "What changed for those whose reading is stale", ReadRevision: "Since revision %s", ReadUnissued: "Since a text that was never issued",
	WordsNotKept: "The words that were read were not kept: what changed cannot be said.", NothingForThem: "Nothing that a reader acts on.", NotHeld: "not held", NotRead: "not read as it stands: %s",

	Exercise: "Blank-out sheet", Answers: "Answers to it", ExerciseTitle: "Exercise: %s", AnswersTitle: "Answers: %s",
	ExerciseMark: "EXERCISE. Never work from this sheet.", AnswersMark: "ANSWERS TO AN EXERCISE. Never work from this sheet.",
	ExerciseHow: "In each phase the steps stand in a wrong order. Write into each square the place that the step has in its phase; write in the torques and angles, and the signal word of each caution. Pictures, reasons and text between the steps are left out.",
	WorkFrom:    "The procedure to work from", Score: "Right", SignalWord: "Signal word",
	ExerciseDone: "Looked through by", NoSteps: "This procedure has no steps.",
}

var readingsInSpanish = Readings{
	Plans: "Planes de lectura", InPlans: "Planes de lectura que lo incluyen",
	InPlansNote: "Quien sigue uno de ellos lee esto. Cuando una revisión se publica para leerla de nuevo, su lectura queda anticuada.",
	PlanIntro:   "Lea en este orden: nada está antes de aquello en lo que se apoya. Marque, ponga fecha y haga firmar lo hecho.",
	LeadsTo:     "Lleva a: %s", WithinTime: "En %s desde el comienzo", Assessor: "Hecho bajo la mirada de alguien que es: %s", AnyAssessor: "aquello a lo que lleva el plan",
	InAll: "%d procedimientos, unos %s de lectura.", TimeRule: "Palabras a 238 por minuto (Brysbaert 2019); 12 s por imagen y 20 s por tabla, por regla nuestra.",
	BuildsOn: "Se apoya en %s", AddedToPlan: "está aquí porque un procedimiento del plan lo realiza",
	Read: "Leído", Watched: "Visto hacer", PerformedOf: "Hecho, %d de %d", Performed: "Hecho",
	Date: "Fecha", AssessorSign: "Evaluador", Reader: "Lector", Started: "Comienzo", AllRead: "Todo hecho",

	Front: "Lecturas", FrontNote: "A fecha de %s. Estas páginas nombran a personas: no son parte del sitio del manual.",
	Matrix: "Matriz", MatrixOf: "Matriz: %s", People: "Personas", Procedures: "Procedimientos",
	RolesRunOut: "Funciones vencidas o por vencer", RunsOutOn: "vence después del %s", RanOutOn: "venció después del %s",
	Overdue: "vencido", Stale: "caducado: cambió desde que se leyó", Due: "pendiente", Good: "leído: vigente", ActsLeft: "falta algo: leído, falta verlo o hacerlo",
	OverdueMark: "V", StaleMark: "C", DueMark: "P", GoodMark: "L", ActsMark: "F",
	NobodyIs: "Nadie.", AndMore: "y %d más", By: "Hasta", ByDay: "hasta el %s",
	MatrixNote: "Un campo vacío: ningún plan de esa persona lo pide y no hay registro.", PeopleFrom: "Personas %d a %d",
	NotAsked: "ningún plan lo pide", NobodyInTraining: "Nadie sigue un plan y nada está registrado.", Person: "Persona", State: "Estado", LastRead: "Última lectura",
	OpenInManual: "Abrirlo en el manual", NoPlan: "No está en ningún plan.",

	RolesHeld: "Funciones", NoRoles: "No hay ninguna función escrita.", HeldSince: "desde el %s", NoEnd: "no vence", NotYetGained: "a partir del %s",
	Next: "Qué sigue", NothingNext: "No queda nada por hacer.", Record: "Lo registrado", NoRecord: "No hay nada registrado.", WitnessedBy: "Bajo la mirada de",
	StillTrue: "vigente", NoLongerTrue: "cambió después", Taught: "Enseñado", Done: "Hecho", ToWatch: "falta verlo hacer", SoFar: "hecho %d de %d veces",

	WhoMay: "Quién puede hacerlo hoy", WhoMayNote: "Según las funciones en los archivos del manual, a %s. No dice quién está bien, descansado o presente: decide el encargado, y las normas locales van primero.",
	HoldAll: "Tienen todas las funciones que pide", HoldSome: "Tienen alguna, o la tuvieron", NobodyHolds: "Nadie tiene ese día: %s.",
	NobodyElse: "Quien no está nombrado aquí no tiene ninguna de estas funciones.", Anyone: "No se pide ninguna función: cualquiera formado en el taller.", Between: "%d personas a la vez las reúnen entre ellas.",
	HowAllStand: "Quién lo ha leído", NobodyAsked: "Ningún plan pide a nadie leerlo y no hay lecturas registradas.",
	MakesStale: "Qué caduca con un cambio aquí", MakesStaleNote: "Si la próxima revisión se publica para leerla de nuevo, estas lecturas quedan anticuadas:", MakesStaleNone: "Ninguna lectura está vigente ahora: ninguna caduca.",
	LookAtCallers: "Estos lo realizan, a cualquier nivel: mírelos cuando cambie", WhatChanged: "Qué cambió para aquellos cuya lectura caducó", ReadRevision: "Desde la revisión %s", ReadUnissued: "Desde un texto que nunca se publicó",
	WordsNotKept: "El texto leído no se conservó: no se puede decir qué cambió.", NothingForThem: "Nada de lo que un lector hace.", NotHeld: "no la tiene", NotRead: "sin leer como está ahora: %s",

	Exercise: "Hoja para completar", Answers: "Sus respuestas", ExerciseTitle: "Ejercicio: %s", AnswersTitle: "Respuestas: %s",
	ExerciseMark: "EJERCICIO. No trabaje nunca con esta hoja.", AnswersMark: "RESPUESTAS DE UN EJERCICIO. No trabaje nunca con esta hoja.",
	ExerciseHow: "En cada fase los pasos están en un orden equivocado. Escriba en cada cuadro el lugar que el paso tiene en su fase; escriba los pares y ángulos, y la palabra de señal de cada aviso. Se omiten imágenes, razones y textos entre los pasos.",
	WorkFrom:    "El procedimiento con el que se trabaja", Score: "Correctas", SignalWord: "Palabra de señal",
	ExerciseDone: "Revisado por", NoSteps: "Este procedimiento no tiene pasos.",
}

// Around is what stands before and behind the %s of a format.
func Around(format string) (before, after string) {
	before, after, _ = strings.Cut(format, "%s")
	return before, after
}
