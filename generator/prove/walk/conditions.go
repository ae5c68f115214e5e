package walk

import (
	"slices"

	"baybinder/generator/model"
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
	aLoner                          // the whole job is one person's
)

// variable is one condition. Two of them are the same where they are equal.
type variable struct {
	kind   conditionKind
	option string
	hold   *model.Hold
	taking *model.Link // the link that took the hold; nil where none did
	answer string
	step   *model.Step // the optional step, or that of the taking
	thing  thing       // of a start
}

// conditions are the variables of one walk and the worlds that there are.
type conditions struct {
	*table
	machine  *model.Machine
	vars     []variable
	own      []int32 // the procedure's own options, outcomes and optional steps
	options  []int32
	together fn // what must hold between outcomes
	worlds   fn
	counted  int // how many options the worlds were made of
}

func newConditions(t *table, m *model.Machine) conditions {
	return conditions{table: t, machine: m, together: yes, worlds: yes}
}

// id is the number of a condition of the procedure itself.
func (c *conditions) id(v variable) int32 {
	for _, id := range c.own {
		if c.vars[id] == v {
			return id
		}
	}
	id := c.add(v, 2)
	c.own = append(c.own, id)
	if v.kind == anOption {
		c.options = append(c.options, id)
	}
	return id
}

// add makes a condition that there was not before.
func (c *conditions) add(v variable, values int) int32 {
	c.vars = append(c.vars, v)
	return c.variable(values)
}

// holds says yes where the condition holds.
func (c *conditions) holds(v variable) fn { return c.literal(c.id(v), 1) }

// option says yes where a unit meets the machine file's condition.
func (c *conditions) option(need model.Condition) fn {
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
		if k := c.vars[v].kind; k != aStart && k != aLoner && !seen[v] {
			seen[v] = true
			n++
		}
	})
	return n
}

// somehow says where a function holds in some outcome: what happens inside a
// procedure is no concern of its callers.
func (c *conditions) somehow(f fn) fn {
	if c.plain(f) {
		return f
	}
	f = c.and(f, c.together)
	done := map[fn]fn{}
	var rec func(f fn) fn
	rec = func(f fn) fn {
		if f.constant() {
			return f
		}
		if g, known := done[f]; known {
			return g
		}
		n := *c.node(f)
		for i := range int(c.values[n.v]) {
			n.kids[i] = rec(n.kids[i])
		}
		g := no
		if c.outer(n.v) {
			g = c.make(n.v, n.kids)
		} else {
			g = c.or(n.kids[0], n.kids[1])
		}
		done[f] = g
		return g
	}
	return rec(f)
}

// inner counts the conditions that a function depends on and that are no
// concern of a caller.
func (c *conditions) inner(f fn) int {
	n := 0
	seen := make([]bool, len(c.vars))
	c.depends(f, func(v int32) {
		if !c.outer(v) && !seen[v] {
			seen[v] = true
			n++
		}
	})
	return n
}

// outer says that a condition is one of the unit, or of how things stood.
func (c *conditions) outer(v int32) bool {
	k := c.vars[v].kind
	return k == anOption || k == aStart || k == aLoner
}

// plain says that a function depends on one condition at most, and that an
// outer one.
func (c *conditions) plain(f fn) bool {
	return f.constant() || c.outer(c.node(f).v) && c.flat(c.node(f))
}
