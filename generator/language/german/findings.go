package german

import (
	"maps"

	"baybinder/generator/base/finding"
)

// findings is what is told of a manual: the tables of the files beside this one
// together. What energy control is called is from DIN VDE 0105-100 (from memory):
// Freischalten, gegen Wiedereinschalten sichern, Spannungsfreiheit feststellen; of
// what is not electric it is Energiefreiheit, and getrennt, since "freigeschaltet"
// is said of what was let in as well.
var findings = finding.Tongue{
	Lang:  "de",
	Texts: together(findingsReport, findingsWords, findingsRules, findingsFiles, findingsRead, findingsCheck, findingsRecords, findingsAmounts, findingsNumbers, findingsWalk, findingsOffers, findingsCommand, findingsPeople, findingsRefusals),
}

func together(tables ...map[string]string) map[string]string {
	all := map[string]string{}
	for _, table := range tables {
		maps.Copy(all, table)
	}
	return all
}
