package words

import (
	"fmt"
	"strings"
)

// Counted are the words for what the typed acts of a procedure are, one and
// several of each.
type Counted struct {
	Link, Links, Call, Calls, Derived, DerivedAll string // Links, Calls, DerivedAll: how many
}

// CountedIn are these words in a language; English where the theme does not
// speak it.
func CountedIn(language string) *Counted {
	if language == "es" {
		return &countedInSpanish
	}
	return &countedInEnglish
}

// Say says how many there are of each, those that there are none of left out.
func (c *Counted) Say(links, calls, derived int) string {
	var out []string
	for _, x := range []struct {
		n         int
		one, many string
	}{{links, c.Link, c.Links}, {calls, c.Call, c.Calls}, {derived, c.Derived, c.DerivedAll}} {
		switch {
		case x.n == 1:
			out = append(out, x.one)
		case x.n > 1:
			out = append(out, fmt.Sprintf(x.many, x.n))
		}
	}
	return strings.Join(out, ", ")
}

var countedInEnglish = Counted{
	Link: "1 link", Links: "%d links", Call: "1 procedure performed", Calls: "%d procedures performed",
	Derived: "1 step that follows from the strip", DerivedAll: "%d steps that follow from the strip",
}

var countedInSpanish = Counted{
	Link: "1 enlace", Links: "%d enlaces", Call: "1 procedimiento que se hace", Calls: "%d procedimientos que se hacen",
	Derived: "1 paso que se deduce del desmontaje", DerivedAll: "%d pasos que se deducen del desmontaje",
}
