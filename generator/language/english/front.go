package english

import "baybinder/generator/language/words"

var frontWords = words.Front{
	MakeSafe:      "Make safe",
	Check:         "Check",
	Repair:        "Repair and service",
	BringBack:     "Bring back",
	AndMore:       "%d more",
	ToReach:       "To reach a part",
	ComesOffFirst: "Comes off first, in this order",
	Part:          "Part",
	Inspection:    "Inspection",
	Inspected:     "inspection due %s",
	InspectedUnit: "%s: inspection due %s",
}
