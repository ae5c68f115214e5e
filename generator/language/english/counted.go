package english

import "baybinder/generator/language/words"

var counted = words.Counted{
	Link: "1 in a step", Links: "%d in steps", Call: "1 procedure performed", Calls: "%d procedures performed",
	Derived: "1 step that follows from the strip", DerivedAll: "%d steps that follow from the strip",
}
