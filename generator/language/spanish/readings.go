package spanish

import "baybinder/generator/language/words"

var readings = words.Readings{
	Changes: changes, Marks: marks,
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
	Reviews: "Revisiones e inspecciones vencidas o por vencer", ReviewIs: "hay que revisarlo hasta el %s", ReviewWas: "había que revisarlo hasta el %s",
	InspectIs: "hay que inspeccionar el trabajo con él hasta el %s", InspectWas: "había que inspeccionar el trabajo con él hasta el %s",
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
	WordsNotKept: "El texto leído no se conservó: no se puede decir qué cambió.", NothingForThem: "Nada de lo que un lector hace.", NotHeld: "no la tiene",

	Exercise: "Hoja para completar", Answers: "Sus respuestas", ExerciseTitle: "Ejercicio: %s", AnswersTitle: "Respuestas: %s",
	ExerciseMark: "EJERCICIO. No trabaje nunca con esta hoja.", AnswersMark: "RESPUESTAS DE UN EJERCICIO. No trabaje nunca con esta hoja.",
	ExerciseHow: "En cada fase los pasos están en un orden equivocado. Escriba en cada cuadro el lugar que el paso tiene en su fase; escriba los pares y ángulos, y la palabra de señal de cada aviso. Se omiten imágenes, razones y textos entre los pasos.",
	WorkFrom:    "El procedimiento con el que se trabaja", Score: "Correctas", SignalWord: "Palabra de señal",
	ExerciseDone: "Revisado por", NoSteps: "Este procedimiento no tiene pasos.",
	NotRead: "sin leer como está ahora: %s",
	SignIn:  "Hoja de firmas de una clase", SignInOf: "Firmas: %s", SignInNote: "Quien firma ha visto la revisión que se nombra aquí. Después: readings record --people … --did read.", Trainer: "Instructor", Signature: "Firma",
	Again: "Para leer de nuevo", AgainOf: "Para leer de nuevo: %s", ReadOn: "leído el %s", NothingAgain: "No hay nada que leer de nuevo.",
	Told: "Informado de un cambio", Inspected: "Inspeccionado en el trabajo", ScoreIs: "correctas: %s", Open: "Falta", OnlyOpen: "Solo lo que falta", MarkedJob: "Marcado",

	Revisions: "Revisiones", RevisionNo: "Rev", Reason: "Por qué", Written: "Escrito", Checked: "Revisado", Approved: "Aprobado", Walked: "Recorrido",
	Readers: "Lectores", Reread: "lo leen de nuevo", Tell: "se les informa", Spared: "no necesitan saberlo", RetiredThen: "retirado del uso", ToAll: "lo leen",
	Inspections: "Inspecciones", InspectBy: "Hay que inspeccionarlo hasta el %s.", NoInspection: "Nadie fue inspeccionado trabajando con él.", Worked: "Trabajó", Inspector: "Inspeccionó",
	OnUnit: "En", Found: "Hallado", Withdrawn: "retirada el %s",
}
