package spanish

import (
	"maps"
	"strings"

	"baybinder/generator/base/finding"
)

// findings is what is told of a manual: the tables of the files beside this one
// together.
var findings = finding.Tongue{
	Lang:  "es",
	Texts: together(findingsReport, findingsWords, findingsRules, findingsFiles, findingsRead, findingsCheck, findingsRecords, findingsAmounts, findingsNumbers, findingsWalk, findingsOffers, findingsCommand, findingsPeople, findingsRefusals),
	And:   and,
}

func together(tables ...map[string]string) map[string]string {
	all := map[string]string{}
	for _, table := range tables {
		maps.Copy(all, table)
	}
	return all
}

// and is " y ", and " e " before the sound of i (Real Academia Española,
// Ortografía de la lengua española, 2010: aceite e imán, but agua y hielo).
func and(next string) string {
	next = strings.ToLower(next)
	for _, sound := range []string{"i", "í", "hi", "hí"} {
		if after, is := strings.CutPrefix(next, sound); is && !strings.ContainsAny(first(after), "aeouáéóú") {
			return " e "
		}
	}
	return " y "
}

func first(text string) string {
	for _, r := range text {
		return string(r)
	}
	return ""
}
