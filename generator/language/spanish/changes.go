package spanish

import "baybinder/generator/language/words"

// changes are the words for what is another in a revision.
var changes = words.Changes{
	Step:         "paso %s",
	Phase:        "fase %d",
	Job:          "todo el trabajo",
	Gone:         "%s ya no está: %s",
	New:          "%s es nuevo: %s",
	Silent:       "no dice nada",
	Renumbered:   "%s era %s",
	Reordered:    "%s tiene lo mismo en otro orden",
	Other:        "%s: %s; antes, %s",
	Also:         "%s: ahora también: %s",
	NoLonger:     "%s: ya no: %s",
	Says:         "dice",
	Reason:       "la razón es",
	AtRefit:      "al montar dice",
	Performs:     "ahora realiza: %s",
	Performed:    "cambió lo que realiza: %s",
	NotPerformed: "ya no se realiza: %s",
	Terms: map[string]string{
		"tool": "herramienta", "supply": "material", "role": "función", "post": "puesto", "hazard": "peligro", "hold": "parada",
		"isolate": "cortar", "lock": "bloquear", "release": "descargar", "prove": "probar", "unlock": "quitar el candado", "restore": "devolver",
		"test-live": "poner con energía para una prueba", "remove": "desmontar", "disconnect": "desconectar", "refit": "montar", "connect": "conectar", "renew": "renovar",
		"cap": "tapar", "loosen": "aflojar", "tighten": "apretar", "mark": "marcar", "place": "poner", "clear": "retirar",
		"alter": "cambiar", "reset": "reponer", "drain": "vaciar", "fill": "llenar", "bleed": "purgar", "dry": "secar",
		"part": "pieza", "fastener": "tornillo", "energy": "energía", "point": "punto", "fluid": "fluido", "setting": "ajuste",
		"machine": "máquina", "noted": "anotado", "do": "realizar un procedimiento", "see": "véase", "reverse": "a la inversa", "each": "cada",
		"between": "entre", "when": "cuando", "if-not": "si no", "if": "si", "again": "de nuevo", "optional": "opcional",
		"people": "personas", "time": "tiempo", "within": "dentro de", "pause": "pausa", "adds": "alarga", "again-in": "de nuevo en",
		"alike": "parecidas", "amount": "cantidad", "answer": "respuesta", "at": "en", "avoid": "cómo evitarlo", "before-isolate": "antes de cortar",
		"before-restore": "antes de devolver", "blocked-by": "sujeta con", "by": "por", "call": "avisar a", "capacity": "capacidad", "carries": "lleva",
		"consequence": "consecuencia", "contained-by": "contenida con", "first-aid": "primeros auxilios", "fits": "sirve para", "for": "para", "freed-by": "se suelta con",
		"gas-volume": "volumen de gas", "ghs": "SGA", "good": "bien", "guards": "resguarda", "happens": "ocurre", "harm": "daño",
		"hazards": "peligros", "held-by": "sujeta por", "how": "cómo", "kind": "clase", "length": "longitud", "limit": "límite",
		"looks-for": "se busca", "mass": "masa", "name": "nombre", "nature": "qué es", "near": "cerca del límite", "needed-by": "lo necesita",
		"needs": "pide", "note": "nota", "of": "de", "old": "lo viejo", "option": "opción", "or": "o",
		"places": "lugares", "precharge": "precarga", "pressure": "presión", "prove-dead": "probar sin energía", "proved-on": "probado en", "range": "alcance",
		"rated": "carga admisible", "serial": "número de serie", "stored": "acumulada", "symbol": "señal", "temperature": "temperatura", "tries": "intentos",
		"under": "debajo de", "unit": "unidad", "value": "valor", "voltage": "tensión", "wait": "espera", "waste": "residuo", "wear": "llevar puesto",
		"what": "qué", "why": "por qué", "with": "con", "where": "dónde", "only-with": "solo con", "travel": "recorrido",
		"frequency": "frecuencia", "duration": "duración", "coupling": "agarre", "lift": "levantamiento", "horizontal": "horizontal", "vertical": "vertical",
		"asymmetry": "giro", "thread": "rosca", "class": "clase de resistencia", "across-flats": "entre caras", "drive": "huella", "torque": "par",
		"stage": "etapa", "condition": "estado", "lubricant": "lubricante", "sequence": "orden", "start": "comienzo", "mark-after": "marcar después",
		"retorque": "reapriete", "renew-with": "renovar con", "expects": "espera", "leaves": "deja",
	},
}

// marks are the words for what was amiss with those who did a job.
var marks = words.Marks{
	Away:   "%s no estaba el %s",
	Unread: "%s no había leído %s como estaba el %s",
	Lacks:  "nadie de quienes lo hicieron tenía %s el %s",
	Signed: "%s, que firmó %s, no tenía %s el %s",
}
