// Package slips scores how easily a step is missed, so that the page can say which.
//
// Omissions are the most common slips in maintenance, and some steps are
// predictably prone to them (J. Reason, "Combating omission errors through
// task analysis and good reminders", Quality and Safety in Health Care 11,
// 2002). The seven signs and the threshold are the shop trade's common
// practice after that literature, one point each; no source gives weights.
//
// # Decided where the format is silent
//
// The job's visible goal is the first part that goes back on after the last one came off; without
// parts, the last step that proves, restores or fills. A step follows a break if the one before it
// waits, calls a procedure or pauses. Nothing shows of a torque without `mark-after`, a bleeding
// or a setting. Hidden is what a later part covers by `under:`. In the close-out list counts are
// the machine file's, locks one a person where the shop says so.
package slips

// Flags are the signs that a step is easily missed.
type Flags struct {
	After     bool // it comes after the step that reaches the job's visible goal
	Follows   bool // it follows a wait, a call's return or a stopping place
	Repeats   bool // it is done to several things alike
	NoTrace   bool // nothing shows afterwards whether it was done
	Hidden    bool // a part that goes on later covers it
	Different bool // its tools are not those of the steps around it
	Small     bool // a cap, a clip, an earth strap
}

// Threshold is the score from which a step gets a line and a tick of its own.
const Threshold = 3

// Score is how many of the signs a step has.
func (f Flags) Score() int {
	n := 0
	for _, is := range []bool{f.After, f.Follows, f.Repeats, f.NoTrace, f.Hidden, f.Different, f.Small} {
		if is {
			n++
		}
	}
	return n
}

// Easily says that the step is one that people are known to miss.
func (f Flags) Easily() bool { return f.Score() >= Threshold }
