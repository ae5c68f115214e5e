// Package finding holds what a check has to say as data: a rule, a place, words and a mend.
package finding

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"baybinder/generator/base/position"
)

// Level says what a finding does to a build.
type Level uint8

// An error ends a check with 1, and stops a build where it Stops; advice does not.
const (
	Error Level = iota
	Advice
)

func (l Level) String() string {
	if l == Advice {
		return "advice"
	}
	return "error"
}

// Rule is one thing that is looked for. Code is stable: it is part of the
// format's contract.
type Rule struct {
	Code  string // "not-listed"
	Level Level
	Title string // one line: what is wrong, for lists
	Why   string // why it matters at the bay
	Mend  string // what to do about it in general
	Names bool   // its findings name people: no page of the site shows them
}

// Finding is one thing found.
type Finding struct {
	Code    string
	Level   Level
	At      position.Pos
	Message string
	Mend    string // what to do here; "" where the message says it
	Related []Place
	Fixes   []Fix // what an editor can put in place of what is wrong; each is one way
	Settled bool  // baybinder settle mends it
	Aside   bool  // it is about people: it stops neither a page nor an issue
	Names   bool  // it names people: no page of the site shows it
}

// Place is another place that matters to a finding, and why.
type Place struct {
	At      position.Pos
	Message string
}

// At makes a finding of the rule.
func (r *Rule) At(at position.Pos, format string, args ...any) Finding {
	return Finding{Code: r.Code, Level: r.Level, Names: r.Names, At: at, Message: fmt.Sprintf(format, args...)}
}

// WithMend is the finding with what to do about it.
func (f Finding) WithMend(format string, args ...any) Finding {
	f.Mend = fmt.Sprintf(format, args...)
	return f
}

// WithSettle is the finding as one that baybinder settle mends.
func (f Finding) WithSettle() Finding {
	f.Settled = true
	return f
}

// See is the finding with one more place that matters.
func (f Finding) See(at position.Pos, message string) Finding {
	f.Related = append(slices.Clip(f.Related), Place{At: at, Message: message})
	return f
}

// Fix is a text that mends a finding where it is put in place of another.
type Fix struct {
	At   position.Pos
	Text string
}

// WithFix is the finding with a text that may be put in place of a wrong one,
// which stands in the text at the finding's place, the last time; where it does
// not, nothing is said.
func (f Finding) WithFix(wrong, right string) Finding {
	if i := strings.LastIndex(f.At.Text(), wrong); i >= 0 && wrong != "" && right != "" {
		f.Fixes = append(slices.Clip(f.Fixes), Fix{f.At.Part(i, i+len(wrong)), right})
	}
	return f
}

// Sort puts findings in their total order, by file, place, code and words, and
// drops what is said twice.
func Sort(list []Finding) []Finding {
	slices.SortFunc(list, compare)
	return slices.CompactFunc(list, func(a, b Finding) bool { return compare(a, b) == 0 })
}

func compare(a, b Finding) int {
	return cmp.Or(
		cmp.Compare(a.At.Path(), b.At.Path()),
		cmp.Compare(a.At.Start, b.At.Start),
		cmp.Compare(a.Code, b.Code),
		cmp.Compare(a.Message, b.Message),
		cmp.Compare(a.Level, b.Level),
	)
}

// Stops says whether a finding keeps pages from being published and procedures
// from being issued: an error does, unless it stands in what is recorded of
// people and jobs.
func (f Finding) Stops() bool {
	if f.Level != Error || f.Aside {
		return false
	}
	folder, _, _ := strings.Cut(f.At.Path(), "/")
	return folder != "readings" && folder != "records"
}

// Errors counts the errors: check and build end with 1 where there is one.
func Errors(list []Finding) int {
	n := 0
	for _, f := range list {
		if f.Level == Error {
			n++
		}
	}
	return n
}
