package main

import (
	"baybinder/generator/derive/training"
	"baybinder/generator/language"
	"baybinder/generator/model"
)

// personAccount tells what the files show of a person on a day.
func (d *output) personAccount(a training.PersonAccount, today model.Date) {
	there := "there"
	if !a.There {
		there = "not there"
	}
	if !a.Person.Started.IsZero() {
		there += ", started " + a.Person.Started.String()
	}
	d.say("%s (%s) on %s: %s%s", a.Person.Label(), a.Person.ID, today, there, absences(a.Person, today))
	for _, r := range a.Roles {
		d.say("  %s", roleLine(r, today))
	}
	if len(a.Roles) == 0 {
		d.say("  no role")
	}
	for _, deed := range a.Deeds {
		d.say("%s %s%s", deed.Date, did(deed), ofProcedure(deed))
	}
	if len(a.Deeds) == 0 {
		d.say("They had read, watched and performed nothing.")
	}
	for _, job := range a.Jobs {
		d.say("%s: %s", useLine(job.Use), job.Job.To.Label())
		for _, mark := range job.Fitness.Marks(&language.Default().Readings.Marks) {
			d.say("  marked: %s", mark)
		}
	}
	if len(a.Jobs) == 0 {
		d.say("They had done no job of records/.")
	}
}

// absences are ", left on 2026-05-03" and ", away from … to …", up to a day.
func absences(p *model.Person, today model.Date) string {
	out := ""
	for _, a := range p.Left {
		switch {
		case today.Before(a.Last):
		case a.Back.IsZero():
			out += ", last day " + a.Last.String()
		default:
			out += ", away after " + a.Last.String() + " until " + a.Back.String()
		}
	}
	return out
}

// roleLine is "held Cleaner from 2026-05-05 until 2027-05-05".
func roleLine(r training.RoleOn, today model.Date) string {
	line := "held "
	switch {
	case r.Anew:
		line = "held before "
	case !r.Held:
		line = "did not hold "
	}
	line += r.Role.Label()
	if !r.From.IsZero() {
		line += ", from " + r.From.String()
	}
	switch {
	case !r.Ended.IsZero() && !today.Before(r.Ended):
		line += ", withdrawn on " + r.Ended.String()
		if r.Why != "" {
			line += ": " + r.Why
		}
	case !r.Until.IsZero() && r.Until.Before(today):
		line += ", ran out after " + r.Until.String()
	case !r.Until.IsZero():
		line += ", until " + r.Until.String()
	}
	return line
}

// ofProcedure is " Lid off revision 1: stale on the day".
func ofProcedure(deed training.Deed) string {
	return " " + deed.Procedure.To.Label() + deedRest(deed)
}

func personRows(a training.PersonAccount) [][]string {
	rows := [][]string{{"person", "kind", "what", "date", "until", "revision", "by", "state", "record", "unit", "note"}}
	row := func(cells ...string) { rows = append(rows, append([]string{a.Person.ID}, cells...)) }
	for _, r := range a.Roles {
		state := "held"
		switch {
		case r.Anew:
			state = "held before"
		case !r.Held:
			state = "not held"
		}
		row("role", r.Role.ID, dayOf(r.From), dayOf(r.Until), "", "", state, "", "", r.Why)
	}
	for _, deed := range a.Deeds {
		row(deed.Act, deed.Procedure.ID, deed.Date.String(), "", numberOf(deed.Revision), deed.By, string(deed.State), "", deed.On, deed.Note)
	}
	for _, job := range a.Jobs {
		state := ""
		if !job.Fitness.UpToDate() {
			state = "marked"
		}
		row("job", job.Job.To.ID, job.Job.Day().String(), "", job.Revision, "", state, "records/"+job.Job.Name+".json", unitOf(job.Job), "")
	}
	return rows
}

func dayOf(d model.Date) string {
	if d.IsZero() {
		return ""
	}
	return d.String()
}

func numberOf(r *model.Revision) string {
	if r == nil {
		return ""
	}
	return r.Number
}
