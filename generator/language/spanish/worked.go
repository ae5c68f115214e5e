package spanish

import "baybinder/generator/language/words"

var worked = words.Worked{
	LiftAlone:    "Índice de levantamiento %s: %s, %s, a mano por una persona; límite recomendado %s. Cómo se calculó",
	LiftTogether: "Índice de levantamiento %s: %s, %s, a mano por %d personas; límite recomendado %s cada una. Cómo se calculó",
	GasOut:       "Al descargar: %s; salen unos %s de gas. Cómo se calculó",
	FluidOut:     "Al descargar: %s; salen unos %s de fluido del acumulador. Cómo se calculó",
	Setting:      "%s, %s: con %s, ajuste %s a %s. Cómo se calculó",
	Label:        "Palabra de advertencia y pictogramas. Cómo se calculó", Signal: "La palabra de advertencia. Cómo se calculó",
	Calibration: "%s: vale hasta %s. Cómo se calculó",
	AfterAngle:  "Se gira un ángulo: el par no dice nada de la carga del tornillo.",
	Section:     "Cómo se calcularon los números",
	Source:      "fuente: %s",
	Sum:         "%s: %s en total. Cómo se calculó", SumFormula: "lo que gasta cada procedimiento del trabajo, sumado",
	SumSource: "las cantidades que enumeran los procedimientos",
	Locks:     "%d de: %s. Cómo se calculó", LocksFormula: "puntos bloqueados a la vez · candados en cada uno",
	LocksPut: "%d · %d", LocksSource: "el orden de los pasos, y cuántos candados pone el taller en un punto",
	Discharge: discharge, Bolt: bolt, Adapter: adapter, Gas: gas, Lift: lift, Safety: safety, Chemical: chemical, Sums: sums,
}
