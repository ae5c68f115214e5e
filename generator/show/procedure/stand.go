package procedure

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

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
	// Proved: it stands so because it was measured or looked at.
	Proved bool
}

// stood are things as a page says them. What the whole procedure asks of the
// unit is said at its head, and not at each of them.
func (s *Pages) stood(c *course, list []walk.Standing) []Stood {
	out := make([]Stood, 0, len(list))
	for _, x := range list {
		units := without(c.whole, x.Where)
		v := Stood{Name: s.LabelAt(x.Thing, x.Part), Word: s.Words.State(x.Word), When: s.where(c.For.To, units), Cases: optionCases(units), Proved: x.Proved()}
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
	turn  int      // changes so far; before the first of them nothing stands otherwise
	stood []Stood
	again map[*model.Link]bool // links that tighten what is tight already
}

// start is the course of a procedure before its first step.
func (s *Pages) start(p *model.Procedure) *course {
	return &course{Procedure: p, walk: s.Walks.Course(p), whole: wholly(p), again: s.TightAlready(p)}
}

// standAfter is how things stand after a step.
func (s *Pages) standAfter(c *course, st *model.Step) []Stood {
	if turn := s.Walks.Turn(c.Procedure, st); turn != c.turn {
		c.turn, c.stood = turn, s.stood(c, c.walk.Stand(c.Procedure, st))
	}
	return c.stood
}

// telling is what a page has told so far of where things stand. Each thing that
// ever stands otherwise is told once, with a number; a step says only which
// numbers it adds and takes away, for lists of all of them would grow with the
// steps and with the parts.
type telling struct {
	rows    []Stood
	number  map[Stood]int
	now     []Stood
	numbers []int // of these
}

// phase tells the changes of a phase's steps, and lists all where the phase
// leaves something otherwise.
func (t *telling) phase(parts []Part) {
	var last *Step
	for _, p := range parts {
		if p.Step != nil {
			t.step(p.Step, &last)
		}
	}
	if last != nil {
		last.Listed = true
	}
}

func (t *telling) step(v *Step, last **Step) {
	for i := range v.Subs {
		t.step(&v.Subs[i], last)
	}
	if !slices.Equal(v.Stand, t.now) {
		v.Moves, *last = t.moves(v.Stand), v
	}
}

// moves are the numbers that are added and taken away until things stand so, "3"
// and "-3"; with a "?" where it is so only if what is to be proved there is.
func (t *telling) moves(now []Stood) string {
	was, is := t.numbers, make([]int, len(now))
	for i, x := range now {
		is[i] = t.of(x)
	}
	proved := map[string]string{}
	for i, x := range now {
		if x.Proved && !slices.Contains(was, is[i]) {
			proved[x.Name] = "?"
		}
	}
	var out []string
	for _, n := range was {
		if !slices.Contains(is, n) {
			out = append(out, "-"+strconv.Itoa(n)+proved[t.rows[n].Name])
		}
	}
	for i, n := range is {
		if !slices.Contains(was, n) {
			out = append(out, strconv.Itoa(n)+proved[now[i].Name])
		}
	}
	t.now, t.numbers = now, is
	return strings.Join(out, " ")
}

// of is the number of a thing that stands otherwise.
func (t *telling) of(x Stood) int {
	n, told := t.number[x]
	if !told {
		n = len(t.rows)
		t.number[x], t.rows = n, append(t.rows, x)
	}
	return n
}
