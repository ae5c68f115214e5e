package quantity

import "strings"

// Flow says whether a voltage or a current is direct or alternating.
type Flow uint8

// The flows. Most amounts do not say.
const (
	Unsaid Flow = iota
	DC
	AC
)

// String returns "dc", "ac" or nothing.
func (f Flow) String() string {
	switch f {
	case DC:
		return "dc"
	case AC:
		return "ac"
	}
	return ""
}

// conflicts reports whether both are said and differ.
func (f Flow) conflicts(other Flow) bool {
	return f != Unsaid && other != Unsaid && f != other
}

// flow reads the ac or dc behind a voltage or a current.
func (r *reader) flow(unit Unit) Flow {
	mark := r.at
	r.spaces()
	flow, size := matchFlow(r.rest(), unit)
	if size == 0 {
		r.at = mark
	}
	r.at += size
	return flow
}

// flows are the ways to write the flow.
var flows = [...]struct {
	text string
	flow Flow
}{{"dc", DC}, {"ac", AC}, {"d.c.", DC}, {"a.c.", AC}, {"DC", DC}, {"AC", AC}}

// matchFlow returns the flow at the start of text and its bytes, if a unit of
// that dimension has one.
func matchFlow(text string, unit Unit) (Flow, int) {
	if d := unit.Dimension(); d != Voltage && d != Current {
		return Unsaid, 0
	}
	for _, f := range flows {
		if strings.HasPrefix(text, f.text) && unitEnds(text[len(f.text):], Bare) {
			return f.flow, len(f.text)
		}
	}
	return Unsaid, 0
}

// isFlow reports whether a unit may end here because its flow is set against
// it, "60 Vdc".
func isFlow(text string, unit Unit) bool {
	_, size := matchFlow(text, unit)
	return size > 0
}
