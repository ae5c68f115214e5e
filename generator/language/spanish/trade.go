package spanish

import "baybinder/generator/language/words"

var discharge = words.Discharge{
	R: "resistencia que lo descarga", C: "capacidad", V: "tensión antes de desconectar", AtItsPeak: ", en su cresta", Safe: "la tensión segura del taller, continua",
	AtLeast: "%s, así que al menos %s",
	Whole:   "La resistencia de descarga está entera. Si no lo está, ninguna espera basta: mida antes de meter las manos.",
	Marked:  "Resistencia y capacidad son las marcadas. Con un condensador un 20 %% y una resistencia un 5 %% por encima, tarda %s.",
	Alone:   "Ya nada alimenta el circuito. Al principio guarda %s J: E = ½·C·V².",
	Maker:   "La espera del fabricante va antes que esta.",
	Source:  "descarga exponencial, V = V0·e^(−t/RC)",
}

var bolt = words.Bolt{
	Share: "%s, el %.0f %% de la carga de prueba de %s",
	T:     "par", K: "factor de tuerca, %s", D: "diámetro de la rosca", Fp: "carga de prueba de %s, clase %s",
	Conditions: map[string]string{"dry": "en seco", "zinc": "cincado", "lubricated": "lubricado"},
	Span:       "El factor de tuerca de una unión real está entre %.2f y %.2f, así que la tracción está entre %s y %s.",
	Thread:     "El par es solo el de girar la rosca: una tuerca de seguridad, una rosca dura o una junta seca se llevan el suyo.",
	Source:     "T = K·d·F, forma corta del oficio; carga de prueba: %s", Tables: "ISO 898-1, tablas 4 y 5", Stress: "As·Sp según ISO 898-1",
}

var adapter = words.Adapter{
	T: "par en el tornillo", L: "%s, de la mano al cuadrado", A: "lo que añade: %s",
	InLine: "El adaptador está alineado con la llave. A escuadra, a 90°, no hace falta corregir: ajuste el par mismo.",
	Grip:   "La mano está en el centro de la empuñadura; no se pone nada para alargarla.",
	Source: "US Army TM 9-254, fig. 45",
}

var gas = words.Gas{
	Gas: "%s de gas, a la presión del aire", Fluid: "%s de fluido",
	Vessel: "volumen del depósito", Gauge: "presión que marca el manómetro", Air: "presión del aire de alrededor",
	FluidOut: "volumen del gas con el fluido fuera", Precharge: "precarga del gas, por su manómetro", Before: "presión antes de soltarla, por su manómetro",
	Warm:        "El gas vuelve a estar tan caliente como antes de salir. Mientras sale está más frío y ocupa menos.",
	Breathed:    "En un puesto cerrado, un gas que no sea aire ocupa el lugar del aire que se respira.",
	AloneIs:     "Esto es solo el acumulador: se suma lo que suelte el propio circuito.",
	Keeps:       "El gas conserva su precarga cuando el fluido está fuera. Es otra energía, que se libera aparte.",
	Right:       "La precarga es la correcta. Si se ha escapado gas, más fluido ocupa su lugar.",
	GivesOff:    "Soltado de golpe, el gas entrega unos %s: E = p·V/(k − 1)·(1 − (p2/p)^((k − 1)/k)), k = 1.4, desde su presión absoluta p hasta p2.",
	SourceGas:   "ley de Boyle; atmósfera normal 101.325 kPa; energía en la forma de ASME PCC-2, 501-II, k = 1.4",
	SourceFluid: "ley de Boyle, p·V = constante; atmósfera normal 101.325 kPa; energía en la forma de ASME PCC-2, 501-II, k = 1.4",
}

var lift = words.Lift{
	Index: "%.1f, con un límite de %.1f %s", None: "ninguno: esto no se levanta a mano",
	L: "carga", LOfSeveral: "carga: de %s entre %d personas, cada una lleva", LC: "lo que se puede levantar en el mejor caso",
	HM: "manos delante de los tobillos, H = %s", VM: "manos sobre el suelo, V = %s", DM: "recorrido, D = %s", AM: "giro del cuerpo, A = %s°",
	FM: "con qué frecuencia, F = %s, durante %s de un turno", CM: "agarre de las manos, %s", Minute: "%s levantamientos/min",
	Hours:   map[string]string{"up to 1 h": "hasta 1 h", "1 to 2 h": "de 1 a 2 h", "2 to 8 h": "de 2 a 8 h"},
	Holds:   map[string]string{"good": "bueno", "fair": "regular", "poor": "malo"},
	Hands:   "Dos manos, de pie, sitio para moverse, un suelo seco y una carga que no se mueve.",
	Above:   "Un índice mayor que 1 es un esfuerzo para algunas personas; mayor que 3, para casi todas.",
	Several: "La ecuación es para una persona; NIOSH no tiene ninguna para varias. Aquí se supone que todas llevan lo mismo: quien está en el extremo pesado lleva más.",
	Worse:   "De los dos extremos del levantamiento este es el peor: %s.", AtMachine: "donde la pieza está en la máquina", WhereItGoes: "donde se deja, y de donde se vuelve a coger",
	Source: "NIOSH 94-110, rev. 9/2021",
}

var safety = words.Safety{
	Formula: "palabra de advertencia = el daño, y con qué certeza sigue si no se evita el peligro", Put: "%s que %s seguir",
	Harms:   map[string]string{"death": "muerte", "serious-injury": "lesión grave", "minor-injury": "lesión leve", "damage": "daño material"},
	Happens: map[string]string{"will": "va a", "could": "puede"},
	Words:   "Muerte o lesión grave que va a seguir es PELIGRO, que puede seguir es ADVERTENCIA; una lesión leve es PRECAUCIÓN; solo daño material es AVISO.",
	Most:    "Un recuadro para varios peligros lleva la palabra del mayor.",
	Source:  "ANSI Z535.4-2007, 4.14, según cita",
}

var chemical = words.Chemical{
	Danger: "Peligro", Warning: "Atención", Statements: statements, Precautions: precautions,
	Formula: "palabra de advertencia = la más fuerte de las indicaciones", None: "ninguna",
	Source: "UN GHS 1.4.10.5.3, CLP artículos 20 y 26 (de memoria); indicaciones como las imprime el reglamento CLP",
	NoSign: "sin pictograma", GivesWay: "%s cede ante un pictograma más grave",
	Signs: map[string]string{
		"GHS01": "bomba explotando", "GHS02": "llama", "GHS03": "llama sobre círculo", "GHS04": "bombona de gas", "GHS05": "corrosión",
		"GHS06": "calavera y tibias cruzadas", "GHS07": "signo de exclamación", "GHS08": "peligro para la salud", "GHS09": "medio ambiente",
	},
	Twofold:  "%s es de la categoría %s (%s) o %s (%s). Aquí no se dice cuál, así que se muestra la más grave.",
	WithSign: "%s, %s", NoPictogram: "%s, sin pictograma",
	Covered: "La etiqueta puede omitir %s: lo dice una indicación más grave.", Optional: "La etiqueta puede omitir %s junto a la llama o la calavera.",
	OfTheChemical: "Esta palabra es de la etiqueta del producto químico. No es el PELIGRO, la ADVERTENCIA o la PRECAUCIÓN de un paso.",
}
