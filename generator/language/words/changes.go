package words

import (
	"cmp"
	"strings"
)

// Changes are the words for what is another in a revision, step by step. Those
// with a %s or %d say what goes there in the comment.
type Changes struct {
	Step, Phase, Job                  string // Step, Phase: a number
	Gone, New, Silent                 string // Gone, New: a step, what it says
	Renumbered, Reordered             string // Renumbered: a step, what it was; Reordered: a step
	Other, Also, NoLonger             string // Other: a step, what, what it was; the rest: a step, what
	Says, Reason, AtRefit             string
	Performs, Performed, NotPerformed string // a procedure

	Terms map[string]string // kinds of links and fields, by the format's own word
}

// Term is what a kind of link or a field is called. Of a field with a name inside
// (held-by cover screw torque) it is the first and the last word that are so.
func (c *Changes) Term(field string) string {
	if said, known := c.Terms[field]; known {
		return said
	}
	list := strings.Fields(field)
	for _, i := range []int{0, len(list) - 1} {
		if i >= 0 {
			list[i] = cmp.Or(c.Terms[list[i]], list[i])
		}
	}
	return strings.Join(list, " ")
}

// Marks are the words for what was amiss with those who did a job.
type Marks struct {
	Away   string // who, a day
	Unread string // who, procedures, a day
	Lacks  string // roles, a day
	Signed string // who, a hold, a role, a day
}
