package training

import (
	"crypto/sha256"
	"encoding/csv"
	"encoding/hex"
	"fmt"
	"io"
	"slices"
	"strings"

	"baybinder/generator/manual"
)

// Item is one line of what is to be done: a reading, or a role to renew.
type Item struct {
	Person *manual.Person
	What   manual.Named
	Plan   string // "" of a role
	State  State  // also "runs out" and "run out", of a role
	By     manual.Date
}

// The states of a role that has a last day.
const (
	RunsOut State = "runs out"
	RunOut  State = "run out"
)

// soon is how many days before its last one a role is told of.
const soon = 60

// Items are what there is to do: what is due, overdue and stale, and the roles
// that ran out or soon do.
func (h *Hall) Items() []Item {
	var out []Item
	for _, s := range h.Standings() {
		if s.State != Good {
			out = append(out, Item{Person: s.Person, What: s.Reading.Procedure, Plan: s.Plan.ID, State: s.State, By: s.By})
		}
	}
	for _, p := range h.m.People {
		for i := range p.Roles {
			g := &p.Roles[i]
			until, runs := Until(g)
			if !runs || slices.ContainsFunc(p.Roles, func(o manual.Gained) bool { return o.ID == g.ID && g.On.Before(o.On) }) {
				continue
			}
			switch tell := manual.DateOf(until.Time().AddDate(0, 0, -soon)); {
			case until.Before(h.today):
				out = append(out, Item{Person: p, What: g.To, State: RunOut, By: until})
			case !h.today.Before(tell):
				out = append(out, Item{Person: p, What: g.To, State: RunsOut, By: until})
			}
		}
	}
	return out
}

// CSV writes items as a table.
func CSV(w io.Writer, items []Item) error {
	t := csv.NewWriter(w)
	rows := [][]string{{"person", "what", "plan", "state", "by"}}
	for _, i := range items {
		rows = append(rows, []string{i.Person.ID, i.What.Base().ID, i.Plan, string(i.State), i.day()})
	}
	return t.WriteAll(rows)
}

func (i *Item) day() string {
	if i.By.IsZero() {
		return ""
	}
	return i.By.String()
}

// ICal writes the items that have a day as a calendar of whole-day events (RFC
// 5545). The same item has the same UID, so that a calendar that reads it again
// moves it and does not show it twice.
func ICal(w io.Writer, items []Item, today manual.Date) error {
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

func (c *calendar) event(i *Item, today manual.Date) {
	sum := sha256.Sum256([]byte(i.Person.ID + "\n" + i.Plan + "\n" + i.What.Base().ID))
	c.line("BEGIN:VEVENT")
	c.line("UID:" + hex.EncodeToString(sum[:8]) + "@baybinder.invalid")
	c.line("DTSTAMP:" + basic(today) + "T000000Z")
	c.line("DTSTART;VALUE=DATE:" + basic(i.By))
	c.line("SUMMARY:" + escaped(fmt.Sprintf("%s: %s (%s)", i.Person.Label(), i.What.Label(), i.State)))
	c.line("TRANSP:TRANSPARENT")
	c.line("END:VEVENT")
}

func basic(d manual.Date) string { return strings.ReplaceAll(d.String(), "-", "") }

// escaped is a TEXT value (RFC 5545, 3.3.11).
func escaped(text string) string {
	return strings.NewReplacer(`\`, `\\`, ";", `\;`, ",", `\,`, "\n", `\n`, "\r", "").Replace(text)
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
