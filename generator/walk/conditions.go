package walk

import (
	"slices"

	"baybinder/generator/manual"
)

// Most is how many conditions may meet at one act.
const Most = 12

// conditionKind is what a condition is about.
type conditionKind uint8

const (
	anOption   conditionKind = iota // the unit has the option
	anOutcome                       // the measurement or look failed
	anAnswer                        // that was the answer
	anOptional                      // the step was done
	aStart                          // how a thing stood when the procedure began
)

// variable is one condition. Two of them are the same where they are equal.
type variable struct {
	kind   conditionKind
	option string
	hold   *manual.Hold
	taking *manual.Link // the link that took the hold; nil where none did
	answer string
	step   *manual.Step // of an optional step
	thing  thing        // of a start
	call   int          // the call that it comes from, counted in this walk; 0 is the procedure itself
}

// conditions are the variables of one walk and the worlds that there are.
type conditions struct {
	*table
	machine  *manual.Machine
	vars     []variable
	byVar    map[variable]int32
	options  []int32
	together fn // what must hold between outcomes
	worlds   fn
	counted  int // how many options the worlds were made of
}

func newConditions(t *table, m *manual.Machine) conditions {
	return conditions{table: t, machine: m, byVar: map[variable]int32{}, together: yes, worlds: yes}
}

// id is the number of a condition.
func (c *conditions) id(v variable) int32 {
	id, known := c.byVar[v]
	if !known {
		values := 2
		if v.kind == aStart {
			values = maxKids
		}
		id = c.variable(values)
		c.vars = append(c.vars, v)
		c.byVar[v] = id
		if v.kind == anOption {
			c.options = append(c.options, id)
		}
	}
	return id
}

// holds says yes where the condition holds.
func (c *conditions) holds(v variable) fn { return c.literal(c.id(v), 1) }

// option says yes where a unit meets the machine file's condition.
func (c *conditions) option(need manual.Condition) fn {
	if need.Option == "" {
		return yes
	}
	f := c.holds(variable{kind: anOption, option: need.Option})
	if need.Not {
		return c.not(f)
	}
	return f
}

// possible says whether a function holds in some world.
func (c *conditions) possible(f fn) bool {
	if f.constant() {
		return f != no
	}
	return c.and(f, c.all()) != no
}

// all is the worlds that there are: the rows of units, or at most one of each
// group of options.
func (c *conditions) all() fn {
	if c.machine != nil && c.counted != len(c.options) {
		c.counted = len(c.options)
		if len(c.machine.Units) > 0 {
			c.worlds = c.rows()
		} else {
			c.worlds = c.onlyOne()
		}
	}
	return c.and(c.worlds, c.together)
}

func (c *conditions) rows() fn {
	any := no
	for _, u := range c.machine.Units {
		row := yes
		for _, id := range slices.Backward(c.options) {
			has := 0
			if slices.Contains(u.Options, c.vars[id].option) {
				has = 1
			}
			row = c.and(c.literal(id, has), row)
		}
		any = c.or(any, row)
	}
	return any
}

func (c *conditions) onlyOne() fn {
	f := yes
	for _, group := range c.machine.OnlyOneOf {
		var of []fn
		for _, id := range c.options {
			if slices.Contains(group, c.vars[id].option) {
				of = append(of, c.literal(id, 1))
			}
		}
		f = c.and(f, c.atMostOne(of))
	}
	return f
}

func (c *conditions) atMostOne(of []fn) fn {
	one, f := no, yes
	for _, x := range of {
		f = c.andNot(f, c.and(one, x))
		one = c.or(one, x)
	}
	return f
}

// answers says that a question has one answer: of those that are asked about
// at most one, and where all are, exactly one.
func (c *conditions) answers(of []fn, all bool) {
	c.together = c.and(c.together, c.atMostOne(of))
	if all {
		any := no
		for _, x := range of {
			any = c.or(any, x)
		}
		c.together = c.and(c.together, any)
	}
}

// meeting counts the conditions that a function depends on.
func (c *conditions) meeting(f fn) int {
	n := 0
	seen := make([]bool, len(c.vars))
	c.depends(f, func(v int32) {
		if c.vars[v].kind != aStart && !seen[v] {
			seen[v] = true
			n++
		}
	})
	return n
}
