package bind

import "baybinder/generator/base/finding"

// What can be wrong with a name or an address.
var (
	UnknownReference = finding.Rule{
		Code:  "unknown-reference",
		Title: "A name that nothing has",
		Why:   "A link to a tool, an energy or a procedure that is not there sends someone looking for it at the bay.",
		Mend:  "Write the id as its register, machine file or procedure has it, or make the entry.",
	}
	UnknownKind = finding.Rule{
		Code:  "unknown-kind",
		Title: "A link of a kind that the format does not have",
		Why:   "A link whose kind nobody knows does nothing, and looks as if it did.",
		Mend:  "Write one of the link kinds. A page elsewhere begins with https:.",
	}
	UnsafeLink = finding.Rule{
		Code:  "unsafe-link",
		Title: "An address that could run a program or fetch from elsewhere",
		Why:   "The pages run nothing that a text brought along, and they make no request outside the shop.",
		Mend:  "Link to a page with https:, or to a file inside the manual.",
	}
	BrokenLink = finding.Rule{
		Code:  "broken-link",
		Title: "A link to a file that is not in the manual",
		Why:   "It is found broken at the bay, with the job open.",
		Mend:  "Put the file into the manual's folder, or write its path from this file.",
	}
	MissingPicture = finding.Rule{
		Code:  "missing-picture",
		Title: "A picture that is not in the manual",
		Why:   "A step that says \"as shown\" and shows nothing is guessed at.",
		Mend:  "Put the picture into pictures/, or write its path from this file.",
	}
	LanguageUnknown = finding.Rule{
		Code:  "language-unknown",
		Level: finding.Advice,
		Title: "A language for which the program has no words",
		Why:   "What the program itself puts on a page (Before you start, Fetch, Wait) stands there in another language, and what it understands of texts it cannot look for.",
		Mend:  "The manual's own texts stand as they are written. The pages mark the borrowed words with their language, so that a screen reader speaks them right. A language is added to the program as one folder.",
	}
	UnknownPerson = finding.Rule{
		Code:  "unknown-person",
		Names: true,
		Title: "A record of someone who is not in readings/people.csv",
		Why:   "A record that belongs to nobody counts for nobody.",
		Mend:  "Write the person's id as people.csv has it, or add the person.",
	}
)

// Rules are the package's rules.
func Rules() []*finding.Rule {
	return []*finding.Rule{&UnknownReference, &UnknownKind, &UnsafeLink, &BrokenLink, &MissingPicture, &LanguageUnknown, &UnknownPerson}
}
