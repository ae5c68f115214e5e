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

func (l Level) String() string { return l.says().String() }

func (l Level) says() Words {
	if l == Advice {
		return Say("advice")
	}
	return Say("error")
}

// Rule is one thing that is looked for. All that is known of it stands in its
// literal, beside what looks for it. Code is stable: it is part of the format's
// contract.
type Rule struct {
	Code       string // "not-listed"
	Level      Level
	Acceptable bool   // advice that a writer may weigh and not follow: accepts:
	Ours       bool   // beyond the format's table of findings
	Title      string // one line: what is wrong, for lists
	Why        string // why it matters at the bay
	Mend       string // what to do about it in general
	Names      bool   // its findings name people: no page of the site shows them
}

// Finding is one thing found: the rule that it is of, and what is so here. Only
// a rule makes one (Rule.At), so that no code is told that no rule has.
type Finding struct {
	*Rule
	Level   Level // the rule's, unless something softens it
	At      position.Pos
	Message string
	Mend    string // what to do here; "" where the message says it
	Says    Words  // what the message was made of
	Asks    Words  // what the mend was made of
	Related []Place
	Fixes   []Fix // what an editor can put in place of what is wrong; each is one way
	Settled bool  // baybinder settle mends it
	Aside   bool  // it is about people: it stops neither a page nor an issue

	Lang string // the language that it is told in, a BCP 47 tag; "" is English
}

// Place is another place that matters to a finding, and why.
type Place struct {
	At      position.Pos
	Message string
	Says    Words // what the message was made of
}

// At makes a finding of the rule.
func (r *Rule) At(at position.Pos, format string, args ...any) Finding {
	return Finding{Rule: r, Level: r.Level, At: at, Message: fmt.Sprintf(format, args...), Says: Words{format, args}}
}

// WithMend is the finding with what to do about it.
func (f Finding) WithMend(format string, args ...any) Finding {
	f.Mend, f.Asks = fmt.Sprintf(format, args...), Words{format, args}
	return f
}

// WithSettle is the finding as one that baybinder settle mends.
func (f Finding) WithSettle() Finding {
	f.Settled = true
	return f
}

// See is the finding with one more place that matters.
func (f Finding) See(at position.Pos, format string, args ...any) Finding {
	f.Related = append(slices.Clip(f.Related), Place{At: at, Message: fmt.Sprintf(format, args...), Says: Words{format, args}})
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
// drops what is said twice: the first of it stays.
func Sort(list []Finding) []Finding {
	slices.SortStableFunc(list, compare)
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
