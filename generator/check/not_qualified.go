package check

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/language"
	"baybinder/generator/model"
	"baybinder/generator/read/record"
)

var notQualified = finding.Rule{
	Code:  "not-qualified",
	Level: finding.Advice,
	Names: true,
	Ours:  true,
	Title: "A job by somebody who, by the files, was not qualified or not up to date",
	Why:   "The record shows who did the job and on which day. Who had not read what stood, or held none of the roles that it needs, did it without what the shop asks for. Local codes decide who may work.",
	Mend:  "Look the job over with somebody who is qualified. Where the list or the record lacks what was so, add it: rows of a past day are added with --today DAY.",
}

// runNotQualified looks at every job that counts and was begun once the shop kept
// such rows: what was done before that was not to be shown then. Who is not known
// is told as that, and never as unqualified.
func runNotQualified(c *Context) []finding.Finding {
	var found []finding.Finding
	since, kept := keptSince(c.Manual)
	for _, j := range record.Counted(c.Manual.Jobs, c.Today) {
		if j.To == nil || uncertain(j.To) || !kept || model.DateOf(j.Started).Before(since) {
			continue
		}
		fit := c.staff().Fitness(j)
		for i := range fit.Marks(&language.Default().Readings.Marks) {
			mark := finding.Spoken(func(lang string) string { return fit.Marks(&language.Of(lang).Readings.Marks)[i] })
			found = append(found, notQualified.At(j.WorkerAt, "%s", mark).
				WithMend("look the job over with somebody who is qualified; baybinder readings audit records/%s.json shows it whole", j.Name))
		}
	}
	return found
}

// keptSince is the day of the first row that shows what somebody held or had read
// by the rules of today: a row that names the one before it, a revision with a
// hash of its words. Rows of roles are added of days past. A shop that has none has another record of that.
func keptSince(m *model.Manual) (first model.Date, kept bool) {
	look := func(day model.Date) {
		if !kept || day.Before(first) {
			first, kept = day, true
		}
	}
	for i := range m.Record {
		if m.Record[i].After != "" {
			look(m.Record[i].Date)
		}
	}
	for i := range m.Revisions {
		if m.Revisions[i].Words != "" {
			look(m.Revisions[i].Date)
		}
	}
	return first, kept
}
