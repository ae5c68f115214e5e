package spanish

import "baybinder/generator/language/words"

var closeOut = words.CloseOut{
	Missed: "Se olvida con facilidad: %s.", After: "el trabajo parece hecho antes", Follows: "sigue a una espera, a otro procedimiento o a una pausa",
	Repeats: "son %d", NoTrace: "después no se ve si se hizo", Hidden: "lo tapa una pieza que se monta más tarde",
	Different: "sus herramientas no son las de los pasos vecinos", Small: "es pequeño",
	CountOf: "contado, de %d",
	Title:   "Cierre", Intro: "Todo lo que se abrió, contado y cerrado. Mire la máquina, no las marcas de arriba.",
	Opened: "Abierto", Closed: "Cerrado", What: "Qué", HowMany: "Cuántos", Seen: "Visto", AtTheStart: "al empezar",
	MissedSteps: "Otros pasos que se olvidan con facilidad", MissedAll: "Pasos que se olvidan con facilidad: %d.", MissedMark: "se olvida con facilidad",
	Cap: "tapón: %s", Tape: "aislamiento del extremo: %s", CapOut: "retirado", TapeOff: "retirado",
	On: "en su sitio", Tight: "apretado", Full: "lleno", Away: "retirado", Back: "en su valor", Live: "con energía", LocksOff: "sin candados, con energía",
	CountSeen: "cierre: {0} de {1}", CountMissed: "fáciles de olvidar: {0} de {1}", NotTicked: "sin marcar todavía", TickRow: "Visto cerrado: {0}",
}
