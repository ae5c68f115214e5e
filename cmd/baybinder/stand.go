package main

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/nearest"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
)

type standCommand struct {
	asked
	Step string `arg:"" optional:"" help:"After which step: its number, such as 4.7, or its name (default: at the end)."`
}

// Help is the longer text of stand --help.
func (*standCommand) Help() string {
	return "It says what is not whole, closed, full and live, one line a thing: how it stands, on which units, and since which step. " +
		"It is what the steps say, and not a look at the machine."
}

// Run tells where things stand after a step.
func (c *standCommand) Run(g *globals, d *output) error {
	r, p, err := c.read(g)
	if err != nil {
		return err
	}
	d.speaks(&r.Verdict)
	if err := d.whole(r, p); err != nil {
		return err
	}
	step, err := stepNamed(p, c.Step)
	if err != nil {
		return err
	}
	if !r.Walks.Of(p).Done {
		return finding.Refuse("%s could not be walked, so where things stand is not known: baybinder check says what in it, in its machine or in what it performs must be mended first", p.ID)
	}
	d.rests(r, p)
	list := r.Walks.Stand(p, step)
	if c.CSV {
		return d.table(standRows(list))
	}
	switch {
	case len(list) > 0:
	case len(r.Walks.StandAtStart(p)) > 0:
		d.inform("Everything is whole, closed, full and live.")
	default:
		d.inform("Everything is as it was.")
	}
	for _, s := range list {
		d.say("%s", d.standLine(s, p.For.To))
	}
	return nil
}

// stepNamed finds a step by its number or name; "" is the end, and gives nil.
func stepNamed(p *model.Procedure, name string) (*model.Step, error) {
	if name == "" {
		return nil, nil
	}
	if s := p.FindStep(name); s != nil {
		return s, nil
	}
	switch near := nearestStep(p, name); {
	case near != "":
		return nil, finding.Refuse("there is no step %s in %s: did you mean %s?", name, p.ID, near)
	case len(p.Steps) == 0:
		return nil, finding.Refuse("there is no step %s in %s: it has no steps", name, p.ID)
	}
	return nil, finding.Refuse("there is no step %s in %s: its steps are %s to %s", name, p.ID, p.Steps[0].Number, p.Steps[len(p.Steps)-1].Number)
}

// nearestStep is the number or name of the step that was probably meant. Of a
// number that there is not it is the last one before it: 5.1 for 5.1.3, which
// is a step that a reverse: makes.
func nearestStep(p *model.Procedure, name string) string {
	var names []string
	before := ""
	for _, s := range p.Steps {
		if s.Name != "" {
			names = append(names, s.Name)
		}
		if slices.Compare(places(s.Number), places(name)) <= 0 {
			before = s.Number
		}
	}
	return cmp.Or(nearest.Of(name, names), before)
}

// places are the numbers of a step's number, 4 and 7 of 4.7.
func places(number string) []int {
	var out []int
	for part := range strings.SplitSeq(number, ".") {
		n, err := strconv.Atoi(part)
		if err != nil {
			return nil
		}
		out = append(out, n)
	}
	return out
}

// standLine is "front guard: off, on units with cab, since step 2.1".
func (d *output) standLine(s walk.Standing, m *model.Machine) string {
	line := s.Label() + ": " + told(d.tongue(), finding.Say(s.Word))
	if when := s.Where.Words(m); !when.IsZero() {
		line += ", " + told(d.tongue(), when)
	}
	if s.Since == nil {
		return line + d.inShop(", since the start")
	}
	return line + d.inShop(", since step %s", s.Since.Number)
}

func standRows(list []walk.Standing) [][]string {
	rows := [][]string{{"id", "part", "name", "state", "when", "since"}}
	for _, s := range list {
		part, since := "", ""
		if s.Part != nil {
			part = s.Part.ID
		}
		if s.Since != nil {
			since = s.Since.Number
		}
		rows = append(rows, []string{s.Thing.Base().ID, part, s.Label(), s.Word, s.When, since})
	}
	return rows
}
