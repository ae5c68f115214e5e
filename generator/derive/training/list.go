package training

import (
	"crypto/sha256"
	"encoding/csv"
	"encoding/hex"
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/language"
	"baybinder/generator/language/shape"
	"baybinder/generator/model"
	"baybinder/generator/prove/fingerprint"
)

// Item is one line of what is to be done: to read, watch or perform a
// procedure, to renew a role, or to review a procedure.
type Item struct {
	Person *model.Person // nil of a review: the files do not say whose it is
	What   model.Named
	Plan   string // "" of a role that the list of people names
	State  State  // also "runs out" and "run out", of a role
	By     model.Date
	Act    string          // read, watch, perform, tell, renew, review, inspect
	Told   *model.Revision // of what is to be told, the revision
	Left   int             // how many times
	Last   *model.Reading  // of what is stale, what was read
	Met    *model.Revision // and the revision that it was; nil where none has its fingerprint
	Again  []string        // of a role that a plan of the person's gives: what is to be done again
}

// The states of a role that has a last day.
const (
	RunsOut State = "runs out"
	RunOut  State = "run out"
)

// soon is how many days before its last one a role or a review is told of.
const soon = 60

// Items are what there is to do: what is due, overdue and stale, and the roles
// that ran out or soon do.
func (h *Standings) Items() []Item {
	var out []Item
	for _, s := range h.Standings() {
		out = append(out, h.toDo(&s)...)
	}
	for _, p := range h.Here() {
		out = append(out, h.toTell(p)...)
		out = append(out, h.toRenew(p)...)
	}
	return out
}

// toDo is what is left of a procedure in a plan.
func (h *Standings) toDo(s *Standing) []Item {
	var out []Item
	add := func(state State, act string, left int) *Item {
		out = append(out, Item{Person: s.Person, What: s.Reading.Procedure, Plan: s.Plan.ID, State: state, By: s.By, Act: act, Left: left})
		return &out[len(out)-1]
	}
	if s.State != Good {
		i := add(s.State, "read", 1)
		if s.Last != nil {
			i.Last, i.Met = s.Last, h.RevisionRead(s.Last)
		}
	}
	s.By = h.by(s.Person, s.Plan.To)
	state := Due
	if h.late(s.By) {
		state = Overdue
	}
	if s.MustWatch && !s.Watched {
		add(state, "watch", 1)
	}
	if left := s.Perform - s.Performed; left > 0 {
		add(state, "perform", left)
	}
	return out
}

// RevisionRead is the revision that was read, or nil.
func (h *Standings) RevisionRead(r *model.Reading) *model.Revision {
	revisions := h.since[r.Procedure.To]
	if at, known := readRevision(revisions, r); known {
		return revisions[at]
	}
	return nil
}

// toRenew are the roles of a person that ran out, or soon do. Of a role that
// was gained more than once the last time counts.
func (h *Standings) toRenew(p *model.Person) []Item {
	var out []Item
	roles := h.Roles(p)
	for i := range roles {
		g := &roles[i]
		until, runs := Until(g)
		later := func(o model.Gained) bool {
			return o.ID == g.ID && o.Ended.IsZero() && !h.today.Before(o.On) && (o.On.IsZero() || g.On.Before(o.On))
		}
		same := func(o model.Gained) bool { return o.ID == g.ID && o.On == g.On }
		if !runs || h.today.Before(g.On) || !g.Ended.IsZero() || slices.ContainsFunc(roles, later) || slices.ContainsFunc(roles[:i], same) {
			continue
		}
		item := Item{Person: p, What: g.To, Plan: h.planOf(p, g), By: until, Act: "renew", Left: 1}
		item.Again = h.doAgain(p, g.To)
		switch {
		case until.Before(h.today):
			item.State = RunOut
		case h.near(until):
			item.State = RunsOut
		default:
			continue
		}
		out = append(out, item)
	}
	return out
}

// near says that a day is past, or no more than soon days away.
func (h *Standings) near(day model.Date) bool {
	return !h.today.Before(model.DateOf(day.Time().AddDate(0, 0, -soon)))
}

// Reviews are the days by which what is issued is to be looked over, each
// procedure once.
func (h *Standings) Reviews() []Item {
	var out []Item
	for _, p := range h.m.Procedures {
		by, ok := h.ReviewBy(p)
		if !ok || !p.Issued() {
			continue
		}
		item := Item{What: p, State: Due, By: by, Act: "review", Left: 1}
		if h.late(by) {
			item.State = Overdue
		}
		out = append(out, item)
	}
	return out
}

// ReviewsSoon are the reviews and inspections that are overdue or soon are due.
func (h *Standings) ReviewsSoon() []Item {
	return slices.DeleteFunc(slices.Concat(h.Reviews(), h.Inspections()), func(i Item) bool { return !h.near(i.By) })
}

// planOf is the id of the plan by which a role was gained; "" where the list
// of people names it.
func (h *Standings) planOf(p *model.Person, g *model.Gained) string {
	for _, c := range h.courses[p] {
		if c.plan.At == g.At {
			return c.plan.ID
		}
	}
	return ""
}

// doAgain is what a person is still to do of the plan of theirs that gives a
// role, to go through it again: "read Wash", "perform Sweep 2 times".
func (h *Standings) doAgain(p *model.Person, role *model.Role) []string {
	var out []string
	for _, c := range h.courses[p] {
		if !slices.ContainsFunc(c.plan.To.Gives, func(r model.Ref[model.Role]) bool { return r.To == role }) {
			continue
		}
		for _, a := range c.asks {
			name := a.Procedure.Label()
			if r := c.read[a.Procedure]; r == nil || !h.heldOn(r, h.today) {
				out = append(out, "read "+name)
			}
			if a.Watch && !c.watched[a.Procedure] {
				out = append(out, "watch "+name)
			}
			switch left := a.Perform - c.performed[a.Procedure]; {
			case left > 1:
				out = append(out, fmt.Sprintf("perform %s %d times", name, left))
			case left == 1:
				out = append(out, "perform "+name)
			}
		}
	}
	return out
}

// Change is what changed for the readers of one revision, and for whom.
type Change struct {
	Procedure *model.Procedure
	Read      *model.Revision                // what they read; nil: it was never issued
	Print     string                         // the fingerprint that they read
	Steps     []string                       // step by step; nil where Unkept
	In        func(*shape.Language) []string // the same in the words of a language
	Unkept    bool                           // the words that were read are not there to compare with
	People    []*model.Person
}

// Changes are what changed for those whose readings are stale, each once.
func (h *Standings) Changes(items []Item) []Change {
	type state struct {
		procedure *model.Procedure
		print     string
	}
	var out []Change
	known := map[state]int{}
	for _, i := range items {
		p, is := i.What.(*model.Procedure)
		if !is || i.Last == nil {
			continue
		}
		at, has := known[state{p, i.Last.Fingerprint}]
		if !has {
			at = len(out)
			known[state{p, i.Last.Fingerprint}] = at
			out = append(out, h.change(p, &i))
		}
		if c := &out[at]; !slices.Contains(c.People, i.Person) { // one who reads it in two plans
			c.People = append(c.People, i.Person)
		}
	}
	return out
}

func (h *Standings) change(p *model.Procedure, i *Item) Change {
	c := Change{Procedure: p, Read: i.Met, Print: i.Last.Fingerprint, Unkept: true}
	if i.Met == nil {
		return c
	}
	if was, kept := fingerprint.Kept(i.Met); kept {
		c.Unkept = false
		now := h.book.Beside(p, was)
		c.In = func(in *shape.Language) []string { return fingerprint.Changes(was, now, &in.Readings.Changes) }
		c.Steps = c.In(language.Default())
	}
	return c
}

// CSV writes items as a table.
func CSV(w io.Writer, items []Item) error {
	t := csv.NewWriter(w)
	rows := [][]string{{"person", "what", "plan", "state", "by", "act", "times"}}
	for _, i := range items {
		rows = append(rows, []string{i.personID(), i.What.Base().ID, i.Plan, string(i.State), i.day(), i.Act, strconv.Itoa(i.Left)})
	}
	for _, row := range rows {
		for i := range row {
			row[i] = finding.Cell(row[i])
		}
	}
	return t.WriteAll(rows)
}

// ToDo is "read Lid off", "perform Lid off 2 times", "renew Cleaner".
func (i *Item) ToDo() string { return i.Says().String() }

// Says is the same in words that other languages have.
func (i *Item) Says() finding.Words {
	act := finding.Say("%s %s", finding.Say(i.Act), i.What.Label())
	switch {
	case i.Told != nil:
		return finding.Say("be told of %s, revision %s: %s", i.What.Label(), i.Told.Number, i.Told.Reason)
	case i.Act == "inspect":
		return finding.Say("inspect working by %s", i.What.Label())
	case i.Act == "perform" && i.Left > 1:
		return finding.Say("%s %d times", act, i.Left)
	case i.Last != nil:
		return finding.Say("%s again", act)
	case len(i.Again) > 0:
		return finding.Say("%s: %s", act, strings.Join(i.Again, ", "))
	}
	return act
}

// personID is "" of what nobody in the list is asked for.
func (i *Item) personID() string {
	if i.Person == nil {
		return ""
	}
	return i.Person.ID
}

// line is "First Trainee: read Lid off", and of a review "review Lid off".
func (i *Item) line() string {
	if i.Person == nil {
		return i.ToDo()
	}
	return i.Person.Label() + ": " + i.ToDo()
}

func (i *Item) day() string {
	if i.By.IsZero() {
		return ""
	}
	return i.By.String()
}

// ICal writes the items that have a day as a calendar of whole-day events (RFC
// 5545). The same item has the same UID, so that a calendar that reads it again
// moves it and does not show it twice. What has no day has no place in it.
func ICal(w io.Writer, items []Item, today model.Date) error {
	c := &calendar{w: w}
	c.line("BEGIN:VCALENDAR")
	c.line("VERSION:2.0")
	c.line("PRODID:-//baybinder//readings//EN")
	for _, i := range items {
		if !i.By.IsZero() {
			c.event(&i, today)
		}
	}
	c.line("END:VCALENDAR")
	return c.err
}

type calendar struct {
	w   io.Writer
	err error
}

func (c *calendar) event(i *Item, today model.Date) {
	sum := sha256.Sum256([]byte(i.personID() + "\n" + i.Plan + "\n" + i.Act + "\n" + i.What.Base().ID))
	c.line("BEGIN:VEVENT")
	c.line("UID:" + hex.EncodeToString(sum[:8]) + "@baybinder.invalid")
	c.line("DTSTAMP:" + basic(today) + "T000000Z")
	c.line("DTSTART;VALUE=DATE:" + basic(i.By))
	c.line("SUMMARY:" + escaped(fmt.Sprintf("%s (%s)", i.line(), i.State)))
	c.line("TRANSP:TRANSPARENT")
	c.alarm(i)
	c.line("END:VEVENT")
}

// warning is how long before its day a calendar tells of an item (RFC 5545, 3.8.6.3).
const warning = "-P7D"

// alarm shows an item before its day (RFC 5545, 3.6.6).
func (c *calendar) alarm(i *Item) {
	c.line("BEGIN:VALARM")
	c.line("ACTION:DISPLAY")
	c.line("DESCRIPTION:" + escaped(i.line()))
	c.line("TRIGGER:" + warning)
	c.line("END:VALARM")
}

func basic(d model.Date) string { return strings.ReplaceAll(d.String(), "-", "") }

// escaped is a TEXT value (RFC 5545, 3.3.11), which holds no control signs
// besides the tab.
func escaped(text string) string {
	text = strings.NewReplacer(`\`, `\\`, ";", `\;`, ",", `\,`, "\n", `\n`).Replace(text)
	return strings.Map(func(r rune) rune {
		if r < ' ' && r != '\t' || r == 0x7f {
			return -1
		}
		return r
	}, text)
}

// lineOctets is how long a content line may be without its end (RFC 5545, 3.1).
const lineOctets = 75

// line writes a content line, folded between letters and never inside one.
func (c *calendar) line(text string) {
	var folded strings.Builder
	n := 0
	for _, r := range text {
		size := len(string(r))
		if n+size > lineOctets {
			folded.WriteString("\r\n ")
			n = 1
		}
		folded.WriteRune(r)
		n += size
	}
	if c.err == nil {
		_, c.err = io.WriteString(c.w, folded.String()+"\r\n")
	}
}
