package decode

import (
	"cmp"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/base/quantity"
	"baybinder/generator/read/syntax"
)

// Quantity is told at an amount, by whoever reads or judges it.
var Quantity = finding.Rule{
	Code:  "quantity",
	Title: "An amount that cannot be read, or of the wrong kind",
	Why:   "A torque that is read wrongly is worse than one that is missing.",
	Mend:  "Write number, space, unit, as in 110 N·m or 1 h 30 min.",
}

// amount reads a quantity of the field's dimension.
func (d *Decoder) amount(n *syntax.Node, f field, key position.Pos, read func(string, quantity.Dimension) error) bool {
	if n.Kind != syntax.Scalar {
		return d.wrong(n, f, key, finding.Say("an amount"), finding.Say("write %s: %s", f.name, f.example()))
	}
	if err := read(n.Text, f.dim); err != nil {
		if e, is := err.(*quantity.Error); is {
			e.Like = f.like
		}
		return d.add(BadAmount(err, n.At, f.name))
	}
	return true
}

// example is an amount that a field could have.
func (f field) example() string { return cmp.Or(f.like, f.dim.Example()) }

// BadAmount is the finding for an amount that could not be read.
func BadAmount(err error, at position.Pos, name string) finding.Finding {
	f := Quantity.At(at, "%s: %v", name, err)
	if e, is := err.(*quantity.Error); is {
		f = f.WithFix(e.Text, e.Right())
	}
	if m, ok := err.(interface{ Mend() finding.Words }); ok {
		return f.WithMend("%s", m.Mend())
	}
	return f
}
