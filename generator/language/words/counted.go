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
