package spanish

import "baybinder/generator/language/words"

var counted = words.Counted{
	Link: "1 enlace", Links: "%d enlaces", Call: "1 procedimiento que se hace", Calls: "%d procedimientos que se hacen",
	Derived: "1 paso que se deduce del desmontaje", DerivedAll: "%d pasos que se deducen del desmontaje",
}
