package german

import "baybinder/generator/language/words"

var counted = words.Counted{
	Link: "1 Link", Links: "%d Links", Call: "1 ausgeführte Anweisung", Calls: "%d ausgeführte Anweisungen",
	Derived: "1 Schritt, der aus dem Ausbau folgt", DerivedAll: "%d Schritte, die aus dem Ausbau folgen",
}
