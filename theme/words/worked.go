package words

// Worked are the words over a computed result, which opens to its working.
type Worked struct {
	Lift                    string // part, mass, who, index, limit
	LiftAlone, LiftTogether string // LiftTogether: people
	GasOut, FluidOut        string // energy, amount
	Setting                 string // fastener, torque, setting
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
	Lift:      "%s, %s, lifted by hand by %s: lifting index %s, recommended limit %s each. How this was worked out",
	LiftAlone: "one person", LiftTogether: "%d people",
	GasOut:   "Letting down the %s lets out about %s of gas. How this was worked out",
	FluidOut: "Letting down the %s lets out about %s of fluid from its accumulator. How this was worked out",
	Setting:  "%s, %s: with the adapter set the wrench to %s. How this was worked out",
}

var workedInSpanish = Worked{
	Lift:      "%s, %s, levantado a mano por %s: índice de levantamiento %s, límite recomendado %s por persona. Cómo se calculó",
	LiftAlone: "una persona", LiftTogether: "%d personas",
	GasOut:   "Al descargar: %s; salen unos %s de gas. Cómo se calculó",
	FluidOut: "Al descargar: %s; salen unos %s de fluido del acumulador. Cómo se calculó",
	Setting:  "%s, %s: con el adaptador ajuste la llave a %s. Cómo se calculó",
}
