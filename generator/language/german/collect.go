package german

import "baybinder/generator/language/words"

var collect = words.Collect{
	Kept:      "Der Nachweis ist beim Handbuch abgelegt.",
	NotKept:   "Der Nachweis konnte nicht beim Handbuch abgelegt werden; er liegt bei den Downloads.",
	FirstTime: "Den Code eingeben, den der Rechner der Werkstatt zeigt. Danach ist dieses Gerät eine Zeit lang bekannt.",
	Wrong:     "Der Code ist falsch. Die sechs Ziffern eingeben, die der Rechner der Werkstatt zeigt.",
	Code:      "Code",
	Send:      "Nachweis senden",
}
