// Package model is the bound model of a shop's manual: plain values whose references lead to what they name.
//
// The yaml tags are the source format's field names; decode reads them and the
// schema is made from them. Tags: `yaml:"name,need"` a field that must be
// there; `one:"a b"` the words it may hold; `dim:"torque"` the dimension of an
// amount; `asked:"wait"` the kinds of entry that cannot do without it, * for
// all; `doc:"…"` what it says, for editors. Nothing here reads a file, a clock or a flag.
//
// # Decided where the format is silent
//
// A hole between two rows that is longer than either row is the space between two series, and no
// `unit-gap`.
package model

import (
	"slices"
	"strings"
	"time"

	"baybinder/generator/base/position"
)

// Entry is what everything with an id has.
type Entry struct {
	ID      string       `yaml:"-"`
	At      position.Pos `yaml:"-"` // its key, or its file's first line
	Unread  bool         `yaml:"-"` // nothing of it could be read: what rests on it is not judged
	Misread bool         `yaml:"-"` // a field of it could not be read

	fields []fieldPlace
	lost   []string // the fields that could not be read
}

// fieldPlace is where a field's value stands.
type fieldPlace struct {
	name string
	at   position.Pos
}

// Wrote notes where the value of a field stands.
func (e *Entry) Wrote(field string, at position.Pos) {
	e.fields = append(e.fields, fieldPlace{field, at})
}

// Lose notes that a field could not be read, or names what is not there: what
// it says is unknown.
func (e *Entry) Lose(field string) {
	if !slices.Contains(e.lost, field) {
		e.lost = append(e.lost, field)
	}
}

// What an entry is told by others can be lost as a field is: which parts a
// fastener holds, which lines a fluid runs in, which energies a point cuts.
const (
	Holding = "-holds"
	Running = "-lines"
	Cutting = "-cuts"
)

// Losses is how many fields could not be read.
func (e *Entry) Losses() int { return len(e.lost) }

// Lost says that one of some fields could not be read, or nothing at all. A
// field inside a field is written with a dot: "limits.lift".
func (e *Entry) Lost(fields ...string) bool {
	if e.Unread {
		return true
	}
	for _, lost := range e.lost {
		for _, f := range fields {
			if lost == f || strings.HasPrefix(lost, f+".") || strings.HasPrefix(f, lost+".") {
				return true
			}
		}
	}
	return false
}

// Doubtful says that a field of the entry's own could not be read, or names what is not
// there. What others tell of it is not its own.
func (e *Entry) Doubtful() bool {
	return e.Unread || e.Misread || slices.ContainsFunc(e.lost, func(field string) bool { return !strings.HasPrefix(field, "-") })
}

// FieldAt is where the value of a field stands; the entry's key where it has no
// such field.
func (e *Entry) FieldAt(field string) position.Pos {
	for _, f := range e.fields {
		if f.name == field {
			return f.at
		}
	}
	return e.At
}

// Named is a thing that a link or a list can name.
type Named interface {
	Base() *Entry
	Label() string // the words that an empty link prints
}

// ByID is the thing of an id in a list, nil where there is none.
func ByID[T Named](list []T, id string) T {
	var none T
	for _, n := range list {
		if n.Base().ID == id {
			return n
		}
	}
	return none
}

// IDs are the ids of a list's things, in its order.
func IDs[T Named](list []T) []string {
	var out []string
	for _, n := range list {
		out = append(out, n.Base().ID)
	}
	return out
}

// Base is the entry itself.
func (e *Entry) Base() *Entry { return e }

// Common is what every entry of a register may carry.
type Common struct {
	Entry   `yaml:",inline"`
	Name    string `yaml:"name,need" doc:"what people call it: an empty link prints it"`
	Number  string `yaml:"number" doc:"stock number"`
	Picture string `yaml:"picture" doc:"a picture, by its path from the manual’s folder"`
	Note    string `yaml:"note" doc:"anything else worth knowing"`
}

// Label is the entry's name.
func (c *Common) Label() string { return labelOr(c.Name, c.ID) }

func labelOr(name, id string) string {
	if name != "" {
		return name
	}
	return id
}

// Ref is a reference that was written, and what it leads to.
type Ref[T any] struct {
	ID string
	At position.Pos
	To *T // nil where nothing has that id
}

// Set notes what was written.
func (r *Ref[T]) Set(id string, at position.Pos) { r.ID, r.At = id, at }

// Written is what was written, and where.
func (r *Ref[T]) Written() (id string, at position.Pos) { return r.ID, r.At }

// Kind is a thing of the kind that is named: a nil pointer to its type.
func (r *Ref[T]) Kind() any { return (*T)(nil) }

// Use is one line of a list that may hold amounts.
type Use[T any] struct {
	Ref[T]
	Amount   string // as written, "" where none is
	AmountAt position.Pos
}

// SetAmount notes the amount that was written.
func (u *Use[T]) SetAmount(text string, at position.Pos) { u.Amount, u.AmountAt = text, at }

// Pair is one line of a map from a word to a text.
type Pair struct {
	Key     string
	KeyAt   position.Pos
	Value   string
	ValueAt position.Pos
}

// Date is a day of the calendar.
type Date struct {
	Year  int
	Month time.Month
	Day   int
}

// DateOf is the day of a time.
func DateOf(t time.Time) Date {
	y, m, d := t.Date()
	return Date{y, m, d}
}

// firstYear is the first whole one of the Gregorian calendar. ISO 8601 leaves
// those before it to an agreement; in a shop they are a slip, as 0026 for 2026
// (from memory).
const firstYear = 1583

// ParseDate reads 2026-03-02.
func ParseDate(text string) (Date, bool) {
	t, err := time.Parse(time.DateOnly, text)
	if err != nil || t.Year() < firstYear {
		return Date{}, false
	}
	return DateOf(t), true
}

// Time is the day's start in UTC.
func (d Date) Time() time.Time { return time.Date(d.Year, d.Month, d.Day, 0, 0, 0, 0, time.UTC) }

func (d Date) String() string { return d.Time().Format(time.DateOnly) }

// IsZero says that no day was given.
func (d Date) IsZero() bool { return d == Date{} }

// Before says whether d is earlier than other.
func (d Date) Before(other Date) bool { return d.Time().Before(other.Time()) }

// AsNamed is a list of entries of one type as entries of any.
func AsNamed[T Named](list []T) []Named {
	out := make([]Named, len(list))
	for i, n := range list {
		out[i] = n
	}
	return out
}
