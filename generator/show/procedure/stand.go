package procedure

import (
	"fmt"
	"slices"

	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
)

// Stood is one thing that is not as it is on a whole, closed, full and live
// machine.
type Stood struct {
	Name  string
	Word  string // "locked", "off"
	When  string // the units it holds for; "" for all
	Cases string // the same in option ids, for the script: "lithium !cab|mod-3"
	Since string // "since step 2.1"
}

// stood are things as a page says them. What the whole procedure asks of the
// unit is said at its head, and not at each of them.
func (s *Pages) stood(c *course, list []walk.Standing) []Stood {
	out := make([]Stood, 0, len(list))
	for _, x := range list {
		units := without(c.whole, x.Where)
		v := Stood{Name: s.LabelAt(x.Thing, x.Part), Word: s.Words.State(x.Word), When: s.where(c.For.To, units), Cases: optionCases(units)}
		if x.Since != nil {
			v.Since = fmt.Sprintf(s.Words.Since, x.Since.Number)
		}
		out = append(out, v)
	}
	return out
}

// course is a procedure and how things stood when it was last asked: they
// change at few steps.
type course struct {
	*model.Procedure
	walk  *walk.Course
	whole []string // what every step asks of the unit
	turn  int
	stood []Stood
	again map[*model.Link]bool // links that tighten what is tight already
}

// start is the course of a procedure before its first step.
func (s *Pages) start(p *model.Procedure) *course {
	return &course{Procedure: p, walk: s.Walks.Course(p), whole: wholly(p), turn: -1, again: s.TightAlready(p)}
}

// standAfter is how things stand after a step.
func (s *Pages) standAfter(c *course, st *model.Step) []Stood {
	if turn := s.Walks.Turn(c.Procedure, st); turn != c.turn {
		c.turn, c.stood = turn, s.stood(c, c.walk.Stand(c.Procedure, st))
	}
	return c.stood
}

// tellChanges marks the steps after which things stand otherwise than was last
// told: only there the reader needs it again.
func tellChanges(parts []Part, told *[]Stood) {
	for _, p := range parts {
		if p.Step != nil {
			tellChange(p.Step, told)
		}
	}
}

func tellChange(v *Step, told *[]Stood) {
	for i := range v.Subs {
		tellChange(&v.Subs[i], told)
	}
	if v.Changed = !slices.Equal(v.Stand, *told); v.Changed {
		*told = v.Stand
	}
}
