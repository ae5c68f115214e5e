package spanish

import "baybinder/generator/language/words"

var closeOut = words.CloseOut{
	Missed: "Se olvida con facilidad: %s.", After: "el trabajo ya parece hecho", Follows: "sigue a una parada",
	Repeats: "son %d", NoTrace: "después no se nota", Hidden: "la próxima pieza lo tapa",
	Different: "lleva otras herramientas", Small: "es pequeño",
	CountOf: "contado, de %d",
	Title:   "Contado y cerrado", Intro: "Todo lo que se abrió, contado y cerrado. Mire la máquina, no las marcas de arriba.",
	Opened: "Abierto", Closed: "Cerrado", What: "Qué", HowMany: "Cuántos", Seen: "Visto", AtTheStart: "al empezar",
	MissedSteps: "Otros pasos que se olvidan con facilidad", MissedAll: "Pasos que se olvidan con facilidad: %d.", MissedMark: "se olvida con facilidad",
	Cap: "tapón: %s", Tape: "aislamiento del extremo: %s", CapOut: "retirado", TapeOff: "retirado",
	On: "en su sitio", Tight: "apretado", Full: "lleno", Away: "retirado", Back: "en su valor", Live: "con energía", LocksOff: "sin candados, con energía",
	CountSeen: "vistos cerrados: {0} de {1}", CountMissed: "fáciles de olvidar: {0} de {1}", NotTicked: "sin marcar todavía", TickRow: "Visto cerrado: {0}",
}
