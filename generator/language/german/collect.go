package german

import "baybinder/generator/language/words"

var collect = words.Collect{
	Kept:      "Der Nachweis ist beim Handbuch abgelegt.",
	NotKept:   "Der Nachweis konnte nicht beim Handbuch abgelegt werden; er liegt bei den Downloads.",
	FirstTime: "Dieses Gerät sendet zum ersten Mal. Den Code eingeben, den der Rechner der Werkstatt zeigt.",
	Wrong:     "Der Code ist falsch. Die sechs Ziffern eingeben, die der Rechner der Werkstatt zeigt.",
	Code:      "Code",
	Send:      "Nachweis senden",
}
