package main

import (
	"baybinder/generator/derive/training"
	"baybinder/generator/language"
	"baybinder/generator/model"
)

// personAccount tells what the files show of a person on a day.
func (d *output) personAccount(a training.PersonAccount, today model.Date) {
	there := d.inShop("there")
	if !a.There {
		there = d.inShop("not there")
	}
	if !a.Started.IsZero() {
		there += d.inShop(", started %s", a.Started)
	}
	d.inform("%s (%s) on %s: %s", a.Person.Label(), a.Person.ID, today, there+d.absences(a.Left))
	for _, r := range a.Roles {
		d.say("  %s", d.roleLine(r, today))
	}
	if len(a.Roles) == 0 {
		d.inform("  no role")
	}
	for _, deed := range a.Deeds {
		d.say("%s%s", deed.Date, d.deed(deed, deed.Procedure.To.Label()))
	}
	if len(a.Deeds) == 0 {
		d.inform("They had read, watched and performed nothing.")
	}
	for _, job := range a.Jobs {
		d.say("%s: %s", d.useLine(job.Use), job.Job.To.Label())
		d.marks(&job.Fitness)
	}
	if len(a.Jobs) == 0 {
		d.inform("They had done no job of records/.")
	}
}

// marks tells what was amiss with those who did a job.
func (d *output) marks(fit *training.Fitness) {
	for _, mark := range fit.Marks(&language.Of(d.language).Readings.Marks) {
		d.inform("  marked: %s", mark)
	}
}

// absences are ", last day 2026-05-03" and ", away after … until …".
func (d *output) absences(list []model.Absence) string {
	out := ""
	for _, a := range list {
		if a.Back.IsZero() {
			out += d.inShop(", last day %s", a.Last)
			continue
		}
		out += d.inShop(", away after %s until %s", a.Last, a.Back)
	}
	return out
}

// roleLine is "held Cleaner, from 2026-05-05, until 2027-05-05".
func (d *output) roleLine(r training.RoleOn, today model.Date) string {
	line := d.inShop("held %s", r.Role.Label())
	switch {
	case r.Anew:
		line = d.inShop("held before %s", r.Role.Label())
	case !r.Held:
		line = d.inShop("did not hold %s", r.Role.Label())
	}
	if !r.From.IsZero() {
		line += d.inShop(", from %s", r.From)
	}
	switch {
	case !r.Ended.IsZero():
		line += d.inShop(", withdrawn on %s", r.Ended)
		if r.Why != "" {
			line += ": " + r.Why
		}
	case !r.Until.IsZero() && r.Until.Before(today):
		line += d.inShop(", ran out after %s", r.Until)
	case !r.Until.IsZero():
		line += d.inShop(", until %s", r.Until)
	}
	return line
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
		row("job", job.Job.To.ID, job.Job.Day().String(), "", job.Revision, "", state, "records/"+job.Job.Name+".json", unitOf(job.Job).String(), "")
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
