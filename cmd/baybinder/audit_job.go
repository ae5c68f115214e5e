package main

import (
	"cmp"
	"fmt"
	"path"
	"slices"
	"strconv"
	"strings"
	"time"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/nearest"
	"baybinder/generator/derive/training"
	"baybinder/generator/language"
	"baybinder/generator/language/words"
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
	if near := nearest.Of(clean, names); near != "" {
		return nil, finding.Refuse("there is no record %s: did you mean %s?", name, near)
	}
	return nil, finding.Refuse("there is no record %s: the records are the files of records/", name)
}

// evidence tells all that the files show of a job.
func (d *output) evidence(hall *training.Standings, m *model.Manual, j *model.Job, today model.Date) {
	d.say("records/%s.json: %s (%s)", j.Name, cmp.Or(j.Title, j.Procedure), j.Procedure)
	d.inform("  begun %s, saved %s%s", d.clock(j.Started), d.clock(j.Saved), d.withUnit(j))
	if j.To == nil {
		d.inform("  The manual has no such procedure: what it was is not known here.")
	} else {
		d.doneBy(m, j, today)
	}
	fit := hall.Fitness(j)
	d.doers(hall, &fit)
	d.steps(j)
	d.holdsOf(&fit)
	d.rest(j)
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
		d.inform("  done %s", d.doneWith(use))
		if r := use.Issued; r != nil {
			d.say("  %s: %s", d.stood(r), r.Reason)
			d.issuedBy(r)
		}
		return
	}
	d.inform("  A later file of the same job stands in its place: its revision is %q.", j.Revision)
}

// doers tells who did a job, what they held and had read on its day, and what is
// marked.
func (d *output) doers(hall *training.Standings, fit *training.Fitness) {
	d.inform("done by:")
	for _, w := range fit.Workers {
		if w.Person == nil {
			d.say("  %s: %s", w.Typed, d.notKnown(w.Alike))
			continue
		}
		d.inform("  %s (%s): held %s", w.Person.Label(), w.Person.ID, d.heldBy(fit.Job, hall, w, fit.Day))
		for _, r := range w.Read {
			d.inform("    had read %s on %s%s", r.Procedure.To.Label(), r.Date, d.ofRevision(hall.RevisionRead(r)))
		}
		for _, p := range w.Unread {
			d.inform("    had not read %s as it stood", p.Label())
		}
	}
	if len(fit.Workers) == 0 {
		d.say("  %s", d.inShop("somebody who is not named"))
	}
	d.marks(fit)
}

func (d *output) ofRevision(r *model.Revision) string {
	if r == nil {
		return d.inShop(", which was never issued")
	}
	return d.inShop(", revision %s", r.Number)
}

func (d *output) heldBy(j *model.Job, hall *training.Standings, w training.Worker, day model.Date) string {
	if j.To != nil && len(j.To.Needs) == 0 {
		return d.inShop("what it needs: no role")
	}
	var out []string
	if j.To != nil {
		for _, need := range j.To.Needs {
			if need.To == nil || !hall.HoldsRole(w.Person, need.ID, day) {
				continue
			}
			until, _ := hall.UntilOn(w.Person, need.ID, day)
			out = append(out, need.To.Label()+d.until(until))
		}
	}
	if len(out) == 0 {
		return d.inShop("none of the roles that it needs")
	}
	return strings.Join(out, ", ")
}

// steps tells how each step stood.
func (d *output) steps(j *model.Job) {
	d.inform("steps:")
	for _, s := range j.Steps {
		line := s.Number + " " + d.jobs().OfState(s.State)
		if !s.At.IsZero() {
			line += " " + d.clock(s.At)
		}
		if s.Late {
			line += d.inShop(", late: by %s", d.clock(s.Latest))
		}
		if s.Reason != "" {
			line += ", " + s.Reason
		}
		d.say("  %s: %s", line, oneLine(s.Words))
	}
}

// jobs are the words around jobs that were done.
func (d *output) jobs() *words.Jobs { return &language.Of(d.language).Jobs }

// holdsOf tells what was waited for, measured, looked at and signed.
func (d *output) holdsOf(fit *training.Fitness) {
	j := fit.Job
	if len(j.Holds) > 0 {
		d.inform("holds:")
	}
	for i := range j.Holds {
		h := &j.Holds[i]
		met := d.jobs().Met
		if !h.Met {
			met = d.jobs().NotMet
		}
		line := h.Step + " " + h.Hold + " (" + h.Kind + "): " + met
		if !h.At.IsZero() {
			line += " " + d.clock(h.At)
		}
		d.say("  %s%s", line, d.holdResult(h))
		for _, f := range h.Failed {
			d.inform("    before it %s: %s", d.clock(f.At), d.measured(f.Values, h))
		}
		for _, s := range fit.Signed {
			if s.Hold == h {
				d.inform("    signed by %s", d.signedBy(s))
			}
		}
	}
}

// notKnown says why a name is nobody's.
func (d *output) notKnown(alike []*model.Person) string {
	if len(alike) == 0 {
		return d.inShop("not known in readings/people.csv")
	}
	return d.inShop("not known, as %s have that name", finding.ListOf(" and ", model.IDs(alike)))
}

func (d *output) signedBy(s training.Signature) string {
	name := oneLine(s.Hold.Signed.Name) + " " + d.clock(s.Hold.Signed.At)
	switch {
	case s.Person == nil:
		return name + d.inShop(", who is %s", d.notKnown(s.Alike))
	case s.By == nil:
		return name
	case s.Holds:
		return name + d.inShop(", who held %s", s.By.Label())
	}
	return name + d.inShop(", who did not hold %s", s.By.Label())
}

// holdResult is what a hold showed.
func (d *output) holdResult(h *model.JobHold) string {
	out := ""
	if !h.From.IsZero() || !h.Until.IsZero() {
		out += d.inShop(", from %s until %s", d.clock(h.From), d.clock(h.Until))
	}
	if len(h.Values) > 0 {
		out += ", " + d.measured(h.Values, h)
	}
	if h.Proved != nil {
		out += d.inShop(", tester proved: %s", yesNo(*h.Proved))
	}
	if h.Good != nil {
		out += d.inShop(", good: %s", yesNo(*h.Good))
	}
	if len(h.Ticked) > 0 {
		out += d.inShop(", looked at %s", strings.Join(h.Ticked, ", "))
	}
	for _, said := range []string{h.Answer, h.Words} {
		if said != "" {
			out += ", " + oneLine(said)
		}
	}
	return out
}

// measured are values with the limit that they were held against.
func (d *output) measured(values []model.JobReading, h *model.JobHold) string {
	var out []string
	for _, v := range values {
		out = append(out, strings.TrimSpace(v.Where+" "+v.Typed+" "+h.Unit))
	}
	text := strings.Join(out, "; ")
	if limit := d.jobs().LimitOf(d.number(h.Low), d.number(h.High)); limit != "" {
		text += d.inShop(" (limit %s)", limit)
	}
	return text
}

// number is an end of a limit; "" where it is open.
func (d *output) number(v *float64) string {
	if v == nil {
		return ""
	}
	return language.Marker(d.language).Write(strconv.FormatFloat(*v, 'g', -1, 64))
}

func yesNo(is bool) finding.Words {
	if is {
		return finding.Say("yes")
	}
	return finding.Say("no")
}

// rest tells of gaps, notes, hand-overs and clocks that were set back.
func (d *output) rest(j *model.Job) {
	for _, g := range j.Gaps {
		d.inform("gap: %s was ticked %s before %s", g.Step, d.clock(g.At), strings.Join(slices.Concat(g.Unticked, g.Holds), ", "))
	}
	if len(j.Gaps) == 0 {
		d.inform("no gap")
	}
	for _, n := range j.Notes {
		d.inform("note at %s %s: %s", n.Step, d.clock(n.At), oneLine(n.Words))
	}
	for _, h := range j.HandOvers {
		locks := oneLine(h.Locks)
		if locks == "" {
			locks = d.inShop("none")
		}
		d.inform("handed over at %s %s: %s to %s, locks %s", h.Step, d.clock(h.At), cmp.Or(oneLine(h.From), "?"), cmp.Or(oneLine(h.To), "?"), locks)
	}
	for _, b := range j.Clock {
		d.inform("the clock was set back by %s %s", fmt.Sprintf("%d min", b.Back), d.clock(b.At))
	}
}

// clock is a time as the bay wrote it.
func (d *output) clock(t time.Time) string {
	if t.IsZero() {
		return d.inShop("at no time")
	}
	return t.Format("2006-01-02 15:04:05 -07:00")
}

func oneLine(text string) string { return strings.Join(strings.Fields(text), " ") }
