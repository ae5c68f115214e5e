package main

import (
	"cmp"
	"fmt"
	"path"
	"strconv"
	"strings"
	"time"

	"baybinder/generator/base/nearest"
	"baybinder/generator/derive/training"
	"baybinder/generator/language"
	"baybinder/generator/model"
	"baybinder/generator/read/record"
)

// isRecord says whether what is asked for is a job's file.
func isRecord(name string) bool {
	return strings.HasSuffix(name, ".json") || strings.Contains(name, "records/")
}

// recordNamed finds a job by its file: records/NAME.json, with the manual's folder
// before it or without.
func recordNamed(m *model.Manual, name string) (*model.Job, error) {
	clean := path.Clean(strings.ReplaceAll(name, `\`, "/"))
	var names []string
	for _, j := range m.Jobs {
		file := "records/" + j.Name + ".json"
		if clean == file || strings.HasSuffix(clean, "/"+file) {
			return j, nil
		}
		names = append(names, file)
	}
	return nil, notThere("record "+name, nearest.Of(clean, names), "the records are the files of records/")
}

// evidence tells all that the files show of a job.
func (d *output) evidence(hall *training.Standings, m *model.Manual, j *model.Job, today model.Date) {
	d.say("records/%s.json: %s (%s)", j.Name, cmp.Or(j.Title, j.Procedure), j.Procedure)
	d.say("  begun %s, saved %s%s", clock(j.Started), clock(j.Saved), withUnit(j))
	if j.To == nil {
		d.say("  The manual has no such procedure: what it was is not known here.")
	} else {
		d.doneBy(m, j, today)
	}
	fit := hall.Fitness(j)
	d.doers(hall, fit)
	d.steps(j)
	d.holdsOf(fit)
	d.rest(j)
}

func withUnit(j *model.Job) string {
	if unit := unitOf(j); unit != "" {
		return ", unit " + unit
	}
	return ""
}

// doneBy tells which revision a job was done with, and its words.
func (d *output) doneBy(m *model.Manual, j *model.Job, today model.Date) {
	day := today
	if day.Before(j.Day()) {
		day = j.Day()
	}
	for _, use := range record.Used(m, j.To, day) {
		if use.Job != j {
			continue
		}
		d.say("  done %s", doneWith(use))
		if r := use.Issued; r != nil {
			d.issuedAs(r)
		}
		return
	}
	d.say("  A later file of the same job stands in its place: its revision is %q.", j.Revision)
}

// issuedAs tells of a revision who wrote, checked, approved and walked it, and
// where its words are.
func (d *output) issuedAs(r *model.Revision) {
	d.say("  revision %s of %s, its words %s: %s", r.Number, r.Date, training.WordsOf(r), r.Reason)
	d.say("  written: %s; checked: %s; approved: %s; walked through: %s; readers: %s",
		orNobody(r.Written), orNobody(r.Checked), orNobody(r.Approved), orNobody(r.Walked), r.Readers)
	d.say("  fingerprint: %s", r.Fingerprint)
	if r.Kept != nil {
		d.say("  words: %s", r.Kept.Path)
	}
}

// doers tells who did a job, what they held and had read on its day, and what is
// marked.
func (d *output) doers(hall *training.Standings, fit training.Fitness) {
	d.say("done by:")
	for _, w := range fit.Workers {
		if w.Person == nil {
			d.say("  %s: %s", w.Typed, notKnown(w.Alike))
			continue
		}
		d.say("  %s (%s): held %s", w.Person.Label(), w.Person.ID, cmp.Or(heldBy(fit.Job, hall, w, fit.Day), "none of the roles that it needs"))
		for _, r := range w.Read {
			d.say("    had read %s on %s%s", r.Procedure.To.Label(), r.Date, ofRevision(hall.RevisionRead(r)))
		}
		for _, p := range w.Unread {
			d.say("    had not read %s as it stood", p.Label())
		}
	}
	if len(fit.Workers) == 0 {
		d.say("  somebody who is not named")
	}
	for _, mark := range fit.Marks(&language.Default().Readings.Marks) {
		d.say("  marked: %s", mark)
	}
}

func ofRevision(r *model.Revision) string {
	if r == nil {
		return ", which was never issued"
	}
	return ", revision " + r.Number
}

func heldBy(j *model.Job, hall *training.Standings, w training.Worker, day model.Date) string {
	if j.To == nil {
		return ""
	}
	if len(j.To.Needs) == 0 {
		return "what it needs: no role"
	}
	var out []string
	for _, need := range j.To.Needs {
		if need.To == nil || !hall.HoldsRole(w.Person, need.ID, day) {
			continue
		}
		name := need.To.Label()
		if until, runs := hall.UntilOn(w.Person, need.ID, day); runs {
			name += " (until " + until.String() + ")"
		}
		out = append(out, name)
	}
	return strings.Join(out, ", ")
}

// steps tells how each step stood.
func (d *output) steps(j *model.Job) {
	d.say("steps:")
	for _, s := range j.Steps {
		line := s.Number + " " + s.State
		if !s.At.IsZero() {
			line += " " + clock(s.At)
		}
		if s.Late {
			line += ", late: by " + clock(s.Latest)
		}
		if s.Reason != "" {
			line += ", " + s.Reason
		}
		d.say("  %s: %s", line, oneLine(s.Words))
	}
}

// holdsOf tells what was waited for, measured, looked at and signed.
func (d *output) holdsOf(fit training.Fitness) {
	j := fit.Job
	if len(j.Holds) > 0 {
		d.say("holds:")
	}
	for i := range j.Holds {
		h := &j.Holds[i]
		met := "met"
		if !h.Met {
			met = "not met"
		}
		line := h.Step + " " + h.Hold + " (" + h.Kind + "): " + met
		if !h.At.IsZero() {
			line += " " + clock(h.At)
		}
		d.say("  %s%s", line, holdResult(h))
		for _, f := range h.Failed {
			d.say("    before it %s: %s", clock(f.At), measured(f.Values, h))
		}
		for _, s := range fit.Signed {
			if s.Hold == h {
				d.say("    signed by %s", signedBy(s))
			}
		}
	}
}

// notKnown says why a name is nobody's.
func notKnown(alike []*model.Person) string {
	if len(alike) == 0 {
		return "not known in readings/people.csv"
	}
	var ids []string
	for _, p := range alike {
		ids = append(ids, p.ID)
	}
	return "not known, as " + strings.Join(ids, " and ") + " have that name"
}

func signedBy(s training.Signature) string {
	name := oneLine(s.Hold.Signed.Name) + " " + clock(s.Hold.Signed.At)
	switch {
	case s.Person == nil:
		return name + ", who is " + notKnown(s.Alike)
	case s.By == nil:
		return name
	case s.Holds:
		return name + ", who held " + s.By.Label()
	}
	return name + ", who did not hold " + s.By.Label()
}

// holdResult is what a hold showed.
func holdResult(h *model.JobHold) string {
	out := ""
	if !h.From.IsZero() || !h.Until.IsZero() {
		out += ", from " + clock(h.From) + " until " + clock(h.Until)
	}
	if len(h.Values) > 0 {
		out += ", " + measured(h.Values, h)
	}
	if h.Proved != nil {
		out += ", tester proved: " + yesNo(*h.Proved)
	}
	if h.Good != nil {
		out += ", good: " + yesNo(*h.Good)
	}
	if len(h.Ticked) > 0 {
		out += ", looked at " + strings.Join(h.Ticked, ", ")
	}
	for _, said := range []string{h.Answer, h.Words} {
		if said != "" {
			out += ", " + oneLine(said)
		}
	}
	return out
}

// measured are values with the limit that they were held against.
func measured(values []model.JobReading, h *model.JobHold) string {
	var out []string
	for _, v := range values {
		out = append(out, strings.TrimSpace(v.Where+" "+v.Typed+" "+h.Unit))
	}
	text := strings.Join(out, "; ")
	if h.Low != nil || h.High != nil {
		text += " (limit " + limitEnds(h.Low, h.High) + ")"
	}
	return text
}

func limitEnds(low, high *float64) string {
	number := func(v *float64) string { return strconv.FormatFloat(*v, 'g', -1, 64) }
	switch {
	case low == nil:
		return "at most " + number(high)
	case high == nil:
		return "at least " + number(low)
	}
	return number(low) + " to " + number(high)
}

func yesNo(is bool) string {
	if is {
		return "yes"
	}
	return "no"
}

// rest tells of gaps, notes, hand-overs and clocks that were set back.
func (d *output) rest(j *model.Job) {
	for _, g := range j.Gaps {
		d.say("gap: %s was ticked %s before %s", g.Step, clock(g.At), strings.Join(append(g.Unticked[:len(g.Unticked):len(g.Unticked)], g.Holds...), ", "))
	}
	if len(j.Gaps) == 0 {
		d.say("no gap")
	}
	for _, n := range j.Notes {
		d.say("note at %s %s: %s", n.Step, clock(n.At), oneLine(n.Words))
	}
	for _, h := range j.HandOvers {
		d.say("handed over at %s %s: %s to %s, locks %s", h.Step, clock(h.At), cmp.Or(oneLine(h.From), "?"), cmp.Or(oneLine(h.To), "?"), cmp.Or(oneLine(h.Locks), "none"))
	}
	for _, b := range j.Clock {
		d.say("the clock was set back by %s %s", fmt.Sprintf("%d min", b.Back), clock(b.At))
	}
}

// clock is a time as the bay wrote it.
func clock(t time.Time) string {
	if t.IsZero() {
		return "at no time"
	}
	return t.Format("2006-01-02 15:04:05 -07:00")
}

func oneLine(text string) string { return strings.Join(strings.Fields(text), " ") }
