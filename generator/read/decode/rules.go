package decode

import "baybinder/generator/base/finding"

// What can be wrong with a field.
var (
	UnknownField = finding.Rule{
		Code:  "unknown-field",
		Title: "A field that the format does not have",
		Why:   "A field that nobody reads looks as if it worked: a misspelt limit is no limit.",
		Mend:  "Write the field's name as the format has it, or take the line out. Inside { } a text with a comma needs quotes.",
	}
	WrongType = finding.Rule{
		Code:  "wrong-type",
		Title: "A value of the wrong kind",
		Why:   "A list where a text belongs, or a word that is not one of the choices, cannot be acted on.",
		Mend:  "Write the kind of value shown. Text that holds a comma inside { } or [ ], or a colon and a space, needs quotes.",
	}
	MissingField = finding.Rule{
		Code:  "missing-field",
		Title: "A field that must be there",
		Why:   "Without it the entry cannot be shown or judged.",
		Mend:  "Write the field.",
	}
	BadID = finding.Rule{
		Code:  "bad-id",
		Title: "An id that cannot be used",
		Why:   "Ids stand in links, file names and addresses on every machine of the shop, so they are plain.",
		Mend:  "Use a to z, 0 to 9 and single hyphens, at most 64 characters, and none of the names that Windows keeps for itself (con, nul …).",
	}
	Quantity = finding.Rule{
		Code:  "quantity",
		Title: "An amount that cannot be read, or of the wrong dimension",
		Why:   "A torque that is read wrongly is worse than one that is missing.",
		Mend:  "Write number, space, unit, as in 110 N·m or 1 h 30 min.",
	}
)

// Rules are the package's rules.
func Rules() []*finding.Rule {
	return []*finding.Rule{&UnknownField, &WrongType, &MissingField, &BadID, &Quantity}
}
