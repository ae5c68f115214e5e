package german

import "baybinder/generator/language/words"

var frontWords = words.Front{
	MakeSafe:      "Sichern",
	Check:         "Prüfen",
	Repair:        "Instandsetzen und warten",
	BringBack:     "Wieder in Betrieb nehmen",
	AndMore:       "%d weitere",
	ToReach:       "Um an ein Teil zu kommen",
	ComesOffFirst: "Kommt vorher ab, in dieser Reihenfolge",
	Part:          "Teil",
	Inspection:    "Prüfung",
	Inspected:     "Prüfung fällig %s",
	InspectedUnit: "%s: Prüfung fällig %s",
}
