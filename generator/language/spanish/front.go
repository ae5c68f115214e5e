package spanish

import "baybinder/generator/language/words"

var frontWords = words.Front{
	MakeSafe:      "Dejar seguro",
	Check:         "Comprobar",
	Repair:        "Reparar y mantener",
	BringBack:     "Devolver al servicio",
	AndMore:       "%d más",
	ToReach:       "Para llegar a una pieza",
	ComesOffFirst: "Se quita antes, en este orden",
	Part:          "Pieza",
	Inspection:    "Inspección",
	Inspected:     "inspección antes de %s",
	InspectedUnit: "%s: inspección antes de %s",
}
