package walk

import (
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// What can be wrong with conditions.
var (
	NeverApplies = rule{
		Code:  "never-applies",
		Level: finding.Advice,
		Title: "A step or an act for no unit",
		Why:   "No machine of the shop has these options, so nobody ever does it.",
		Mend:  "Correct the condition, or take the step out.",
	}
	TooManyConditions = rule{
		Code:  "too-many-conditions",
		Title: "More conditions meet at one act than can be checked",
		Why:   "What cannot be checked is not vouched for, and nobody at the bay can follow it either.",
		Mend:  "Make procedures of their own for the variants.",
	}
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
	*diagram.Table
	machine  *model.Machine
	vars     []variable
	own      map[variable]int32 // the procedure's own options, outcomes and optional steps
	options  []int32
	together diagram.Func // what must hold between outcomes
	worlds   diagram.Func
	counted  int // how many options the worlds were made of
}

func newConditions(t *diagram.Table, m *model.Machine) conditions {
	return conditions{Table: t, machine: m, together: diagram.Yes, worlds: diagram.Yes}
}

// id is the number of a condition of the procedure itself.
func (c *conditions) id(v variable) int32 {
	if id, has := c.own[v]; has {
		return id
	}
	id := c.add(v, 2)
	if c.own == nil {
		c.own = map[variable]int32{}
	}
	c.own[v] = id
	if v.kind == anOption {
		c.options = append(c.options, id)
	}
	return id
}

// add makes a condition that there was not before.
func (c *conditions) add(v variable, values int) int32 {
	c.vars = append(c.vars, v)
	return c.Variable(values)
}

// holds says yes where the condition holds.
func (c *conditions) holds(v variable) diagram.Func { return c.Literal(c.id(v), 1) }

// option says yes where a unit meets the machine file's condition.
func (c *conditions) option(need model.Condition) diagram.Func {
	if need.Option == "" {
		return diagram.Yes
	}
	f := c.holds(variable{kind: anOption, option: need.Option})
	if need.Not {
		return c.Not(f)
	}
	return f
}

// possible says whether a function holds in some world.
func (c *conditions) possible(f diagram.Func) bool {
	if f.Constant() {
		return f != diagram.No
	}
	return c.Meet(f, c.all())
}

// all is the worlds that there are: the rows of units where all could be read,
// or at most one of each group of options.
func (c *conditions) all() diagram.Func {
	if c.machine != nil && c.counted != len(c.options) {
		c.counted = len(c.options)
		if len(c.machine.Units) > 0 && !c.machine.Lost("units") {
			c.worlds = c.rows()
		} else {
			c.worlds = c.onlyOne()
		}
	}
	return c.And(c.worlds, c.together)
}

func (c *conditions) rows() diagram.Func {
	any := diagram.No
	for _, u := range c.machine.Units {
		row := diagram.Yes
		for _, id := range slices.Backward(c.options) {
			has := 0
			if slices.Contains(u.Options, c.vars[id].option) {
				has = 1
			}
			row = c.And(c.Literal(id, has), row)
		}
		any = c.Or(any, row)
	}
	return any
}

func (c *conditions) onlyOne() diagram.Func {
	f := diagram.Yes
	for _, group := range c.machine.OnlyOneOf {
		var of []diagram.Func
		for _, id := range c.options {
			if slices.Contains(group, c.vars[id].option) {
				of = append(of, c.Literal(id, 1))
			}
		}
		f = c.And(f, c.atMostOne(of))
	}
	return f
}

func (c *conditions) atMostOne(of []diagram.Func) diagram.Func {
	one, f := diagram.No, diagram.Yes
	for _, x := range of {
		f = c.AndNot(f, c.And(one, x))
		one = c.Or(one, x)
	}
	return f
}

// answers says that a question has one answer: of those that are asked about
// at most one, and where all are, exactly one.
func (c *conditions) answers(of []diagram.Func, all bool) {
	c.together = c.And(c.together, c.atMostOne(of))
	if all {
		any := diagram.No
		for _, x := range of {
			any = c.Or(any, x)
		}
		c.together = c.And(c.together, any)
	}
}

// meeting counts the conditions that a function depends on.
func (c *conditions) meeting(f diagram.Func) int {
	n := 0
	seen := make([]bool, len(c.vars))
	c.Support(f, func(v int32) {
		if k := c.vars[v].kind; k != aStart && k != aLoner && !seen[v] {
			seen[v] = true
			n++
		}
	})
	return n
}

// somehow says where a function holds in some outcome: what happens inside a
// procedure is no concern of its callers.
func (c *conditions) somehow(f diagram.Func) diagram.Func {
	if c.plain(f) {
		return f
	}
	f = c.And(f, c.together)
	done := map[diagram.Func]diagram.Func{}
	var rec func(f diagram.Func) diagram.Func
	rec = func(f diagram.Func) diagram.Func {
		if f.Constant() {
			return f
		}
		if g, known := done[f]; known {
			return g
		}
		n := *c.Node(f)
		for i := range int(c.Values[n.Var]) {
			n.Kids[i] = rec(n.Kids[i])
		}
		g := diagram.No
		if c.outer(n.Var) {
			g = c.Make(n.Var, n.Kids)
		} else {
			g = c.Or(n.Kids[0], n.Kids[1])
		}
		done[f] = g
		return g
	}
	return rec(f)
}

// inner counts the conditions that a function depends on and that are no
// concern of a caller.
func (c *conditions) inner(f diagram.Func) int {
	n := 0
	seen := make([]bool, len(c.vars))
	c.Support(f, func(v int32) {
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
func (c *conditions) plain(f diagram.Func) bool {
	return f.Constant() || c.outer(c.Node(f).Var) && c.Flat(c.Node(f))
}
