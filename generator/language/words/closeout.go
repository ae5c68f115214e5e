package words

// CloseOut are the words on steps that are easily missed, and of the list at a
// procedure's end in which everything that was opened is counted closed. In
// those for the page's script {0} and {1} stand for numbers.
type CloseOut struct {
	Missed, After, Follows, Repeats, NoTrace, Hidden, Different, Small string // Missed: the reasons; Repeats: how many
	CountOf                                                            string // how many
	Title, Intro, Opened, Closed, What, HowMany, Seen, AtTheStart      string
	MissedSteps, MissedAll, MissedMark                                 string // MissedAll: how many
	On, Tight, Full, Away, Back, Live, LocksOff                        string
	CountSeen, CountMissed, NotTicked, TickRow                         string // for the script
}

// CloseOutIn are the words in a language; English where the theme does not
// speak it.
func CloseOutIn(language string) *CloseOut {
	if language == "es" {
		return &closeOutInSpanish
	}
	return &closeOutInEnglish
}

var closeOutInEnglish = CloseOut{
	Missed: "Easily missed: %s.", After: "the job looks done before it", Follows: "it follows a wait, another procedure or a stop",
	Repeats: "there are %d", NoTrace: "nothing shows afterwards whether it was done", Hidden: "a part that goes on later covers it",
	Different: "its tools are not those of the steps around it", Small: "it is small",
	CountOf: "counted, of %d",
	Title:   "Close-out", Intro: "All that was opened, counted closed. Look at the machine, not at the ticks above.",
	Opened: "Opened", Closed: "Closed", What: "What", HowMany: "How many", Seen: "Seen", AtTheStart: "at the start",
	MissedSteps: "Other steps that are easily missed", MissedAll: "Easily missed steps: %d.", MissedMark: "easily missed",
	On: "on", Tight: "tight", Full: "full", Away: "taken away", Back: "set back", Live: "live", LocksOff: "locks off, live",
	CountSeen: "close-out: {0} of {1}", CountMissed: "easily missed: {0} of {1}", NotTicked: "not ticked yet", TickRow: "Seen closed: {0}",
}

var closeOutInSpanish = CloseOut{
	Missed: "Se olvida con facilidad: %s.", After: "el trabajo parece hecho antes", Follows: "sigue a una espera, a otro procedimiento o a una pausa",
	Repeats: "son %d", NoTrace: "después no se ve si se hizo", Hidden: "lo tapa una pieza que se monta más tarde",
	Different: "sus herramientas no son las de los pasos vecinos", Small: "es pequeño",
	CountOf: "contado, de %d",
	Title:   "Cierre", Intro: "Todo lo que se abrió, contado y cerrado. Mire la máquina, no las marcas de arriba.",
	Opened: "Abierto", Closed: "Cerrado", What: "Qué", HowMany: "Cuántos", Seen: "Visto", AtTheStart: "al empezar",
	MissedSteps: "Otros pasos que se olvidan con facilidad", MissedAll: "Pasos que se olvidan con facilidad: %d.", MissedMark: "se olvida con facilidad",
	On: "en su sitio", Tight: "apretado", Full: "lleno", Away: "retirado", Back: "en su valor", Live: "con energía", LocksOff: "sin candados, con energía",
	CountSeen: "cierre: {0} de {1}", CountMissed: "fáciles de olvidar: {0} de {1}", NotTicked: "sin marcar todavía", TickRow: "Visto cerrado: {0}",
}
