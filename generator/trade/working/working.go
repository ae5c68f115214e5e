// Package working is the working behind a computed number, so that whoever sees the number can open how it came about.
//
// A result that nobody can follow is not believed at the bay, or believed when
// it should not be. The page shows the result; a press on it opens the formula,
// the numbers put in, the result again, what was assumed and the source.
package working

import (
	"fmt"
	"slices"
	"strings"

	"baybinder/generator/base/quantity"
)

// Working is one computed result and how it came about. All fields are text as
// it is shown; the zero Working is none.
type Working struct {
	Formula string   // in signs: "t = R·C·ln(V/safe)"
	Put     string   // the numbers put in: "100 kΩ · 1000 µF · ln(360 V/60 V)"
	Result  string   // "179 s"
	Terms   []Term   // what the signs of the formula stand for, in its order
	Assumes []string // what must be so for the result to hold, in whole sentences
	Source  string   // what the formula and its constants are from, and by which mark
}

// Term is one sign of a formula: what it stands for and what was put in.
type Term struct {
	Sign  string // "R"
	Words string // "resistance across the capacitor"
	Value string // "100 kΩ"
	Names bool   // Words name a thread, a class or a thing of the manual
}

// Known says that there is a working at all.
func (w Working) Known() bool { return w.Formula != "" }

// With is the working with its numbers written with a marker. The points in
// words that name a thing are its own: M8x1.25, class 8.8.
func (w Working) With(mark quantity.Marker) Working {
	w.Put, w.Result, w.Source = mark.Write(w.Put), mark.Write(w.Result), mark.Write(w.Source)
	w.Terms, w.Assumes = slices.Clone(w.Terms), slices.Clone(w.Assumes)
	for i := range w.Terms {
		t := &w.Terms[i]
		if t.Value = mark.Write(t.Value); !t.Names {
			t.Words = mark.Write(t.Words)
		}
	}
	for i := range w.Assumes {
		w.Assumes[i] = mark.Write(w.Assumes[i])
	}
	return w
}

// String is the working in one line, "t = R·C = 2 Ω · 3 F = 6 s; source: …".
// Every equals sign after the formula's own leads to the next form of the same
// number.
func (w Working) String() string { return w.Line("source: %s") }

// Line is the working in one line, in which what it is from is said so.
func (w Working) Line(source string) string {
	var line strings.Builder
	line.WriteString(w.Formula)
	for _, next := range []string{w.Put, w.Result} {
		if next != "" {
			line.WriteString(" = " + next)
		}
	}
	if w.Source != "" {
		line.WriteString("; " + fmt.Sprintf(source, w.Source))
	}
	return line.String()
}
