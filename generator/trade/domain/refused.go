// Package domain is the error of a formula that does not compute: what was given, why it will not do, and what to write instead.
//
// The formulas of the trade guess nothing. A thread, a class or a code that
// they do not know is an error with its mend, never a nearest value.
package domain

import "baybinder/generator/base/finding"

// Error is why something that was given cannot be computed with.
type Error struct {
	Given string        // what was given, as it was written
	Why   finding.Words // "is not a metric thread"
	Write finding.Words // how to mend it: "write it as M8x1.25"
}

// Error says what is wrong in a fitter's words.
func (e *Error) Error() string { return e.Says().String() }

// Says is what is wrong, as words.
func (e *Error) Says() finding.Words { return finding.Say("%q %s", e.Given, e.Why) }

// Mend says how to write it.
func (e *Error) Mend() finding.Words { return e.Write }
