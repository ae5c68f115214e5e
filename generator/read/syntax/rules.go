package syntax

import "baybinder/generator/base/finding"

// What can be wrong before anything has a meaning.
var (
	Syntax = finding.Rule{
		Code:  "syntax",
		Title: "A file that cannot be read as what it is",
		Why:   "What cannot be read cannot be checked, and it is left out of everything that rests on it.",
		Mend:  "Mend the spelling at the place shown. Put text in quotes where it holds a colon and a space, a space and #, or starts with one of ! # & * @ % | > [ {.",
	}
	DuplicateID = finding.Rule{
		Code:  "duplicate-id",
		Title: "An id or a field that is written twice",
		Why:   "Of two entries with one id only one can be meant; the other is read by people and by nobody else.",
		Mend:  "Keep one, or give the second an id of its own.",
	}
	RowCut = finding.Rule{
		Code:  "row-cut",
		Level: finding.Advice,
		Title: "A last row whose line does not end",
		Why:   "Each row that the program adds ends its line. Where the last one does not, the file was cut: a disk was full, or a copy broke off. Half a name or half a fingerprint looks like a whole one.",
		Mend:  "See whether the row is whole, and end its line with Enter; else take the row out and record it again. No row is added behind it before.",
	}
	Heading = finding.Rule{
		Code:  "heading",
		Title: "A heading or a list that does not make phases and steps",
		Why:   "A heading at level 2 opens a phase and a numbered list under it holds the steps. Another level, a phase of the same name or a list before the first phase leaves steps without a number to call out.",
		Mend:  "Write ## before each phase's name, give each phase a name of its own, and put the numbered list under a phase.",
	}
	NoSteps = finding.Rule{
		Code:  "no-steps",
		Title: "A procedure without a step",
		Why:   "A page with nothing to do is found at the bay and helps nobody.",
		Mend:  "Write a phase (## Work) and a numbered list under it, or make it a draft.",
	}
	RawHTML = finding.Rule{
		Code:  "raw-html",
		Title: "HTML in a procedure",
		Why:   "HTML prints differently in every viewer, and it can carry scripts into the shop's pages.",
		Mend:  "Write it as Markdown. A comment belongs into the front matter, after #. A literal < is written \\<.",
	}
)

// Rules are the package's rules.
func Rules() []*finding.Rule {
	return []*finding.Rule{&Syntax, &RowCut, &DuplicateID, &Heading, &NoSteps, &RawHTML}
}
