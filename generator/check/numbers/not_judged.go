package numbers

import (
	"errors"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/trade/domain"
	"baybinder/generator/trade/fastening"
)

// NotJudged is told where something is written that the program has no table
// for, so that a check that people count on is not made.
var NotJudged = finding.Rule{
	Code:  "not-judged",
	Level: finding.Advice,
	Title: "Something that the program cannot judge",
	Why:   "A thread or a class that no table has, or a sign that is not drawn, may be right. But nothing was worked out from it, and a page without a finding looks as if it had been.",
	Mend:  "Look the number up again; where it is right, leave it as it is.",
}

// notInTables looks for a thread or a class that sets out to be of ISO 898-1 and
// that the tables do not know. What is of another standard (G 1/4, 3/8-16 UNC,
// A2-70) is no finding.
func notInTables(f *model.Fastener) []finding.Finding {
	var found []finding.Finding
	if fastening.MeansMetric(f.Thread) {
		_, err := fastening.ParseThread(f.Thread)
		found = append(found, notInTable(err, f, "thread")...)
	}
	if fastening.MeansClass(f.Class) {
		_, err := fastening.ParseClass(f.Class)
		found = append(found, notInTable(err, f, "class")...)
	}
	return found
}

func notInTable(err error, f *model.Fastener, field string) []finding.Finding {
	var bad *domain.Error
	if !errors.As(err, &bad) {
		return nil
	}
	return []finding.Finding{NotJudged.At(f.FieldAt(field), "%s: %v, so that the bolt load of %s is not judged", field, bad, f.Label()).WithMend("%s", bad.Mend())}
}
