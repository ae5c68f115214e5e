package words

// Worked are the words over a computed result, which opens to its working.
type Worked struct {
	LiftAlone, LiftTogether string // index, part, mass, limit; LiftTogether: people before limit
	GasOut, FluidOut        string // energy, amount
	Setting                 string // fastener, torque, adapter, wrench, setting
	Label, Signal           string
	AfterAngle              string
	Section                 string // over the workings at a page's foot
	Calibration             string // tool or individual, day
}

// WorkedIn are these words in a language; English where the theme does not
// speak it.
func WorkedIn(language string) *Worked {
	if language == "es" {
		return &workedInSpanish
	}
	return &workedInEnglish
}

var workedInEnglish = Worked{
	LiftAlone:    "Lifting index %s: %s, %s, by hand by one person; recommended limit %s. How this was worked out",
	LiftTogether: "Lifting index %s: %s, %s, by hand by %d people; recommended limit %s each. How this was worked out",
	GasOut:       "Letting down the %s lets out about %s of gas. How this was worked out",
	FluidOut:     "Letting down the %s lets out about %s of fluid from its accumulator. How this was worked out",
	Setting:      "%s, %s: behind the %s, set the %s to %s. How this was worked out",
	Label:        "Signal word and pictograms. How this was worked out", Signal: "The signal word. How this was worked out",
	Section:     "How the numbers were worked out",
	AfterAngle:  "It is turned by an angle: the torque says nothing of the load of the bolt.",
	Calibration: "%s: good to %s. How this was worked out",
}

var workedInSpanish = Worked{
	LiftAlone:    "Índice de levantamiento %s: %s, %s, a mano por una persona; límite recomendado %s. Cómo se calculó",
	LiftTogether: "Índice de levantamiento %s: %s, %s, a mano por %d personas; límite recomendado %s cada una. Cómo se calculó",
	GasOut:       "Al descargar: %s; salen unos %s de gas. Cómo se calculó",
	FluidOut:     "Al descargar: %s; salen unos %s de fluido del acumulador. Cómo se calculó",
	Setting:      "%s, %s: con %s, ajuste %s a %s. Cómo se calculó",
	Label:        "Palabra de advertencia y pictogramas. Cómo se calculó", Signal: "La palabra de advertencia. Cómo se calculó",
	Section:     "Cómo se calcularon los números",
	AfterAngle:  "Se gira un ángulo: el par no dice nada de la carga del tornillo.",
	Calibration: "%s: vale hasta %s. Cómo se calculó",
}
