package check

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
	"baybinder/generator/read/decode"
)

// runSupplyUnit asks that a supply is counted in a unit that amounts have, and
// that a fluid's capacity can be counted in its supply's.
func runSupplyUnit(c *Context) []finding.Finding {
	var found []finding.Finding
	for _, s := range c.Manual.Supplies {
		if _, known := quantity.UnitNamed(s.Unit); !known && !s.Lost("unit") {
			f := decode.Quantity.At(s.FieldAt("unit"), "%s is counted in %q, which is not a unit", s.ID, s.Unit)
			if meant, ok := quantity.MeantUnit(s.Unit); ok {
				found = append(found, f.WithMend("write unit: %s", meant))
				continue
			}
			found = append(found, f.WithMend("write a unit that amounts have, such as L, kg or m; what is counted by the piece has unit: each"))
		}
	}
	for _, m := range c.Manual.Machines {
		for _, f := range m.Fluids {
			if want, ok := dimensionOf(f.Supply.To); ok && f.Capacity.Unit != quantity.Bare && !f.Capacity.Fits(want) {
				found = append(found, decode.Quantity.At(f.FieldAt("capacity"), "the capacity of %s is %s, and %s is counted in %s", f.ID, f.Capacity, f.Supply.ID, f.Supply.To.Unit).
					WithMend("write %s, such as %s", want.InWords(), want.Example()).See(f.Supply.To.At, "the supply is here"))
			}
		}
	}
	return found
}

// dimensionOf is what a supply is counted by; nothing can be said where its
// unit could not be read.
func dimensionOf(s *model.Supply) (quantity.Dimension, bool) {
	if s == nil || s.Lost("unit") {
		return quantity.None, false
	}
	unit, known := quantity.UnitNamed(s.Unit)
	return unit.Dimension(), known
}

// runSupplyAmount asks that the amounts of a procedure's supplies can be counted
// in the supply's unit, and that one is there where a count of pieces says
// nothing.
func runSupplyAmount(_ *Context, p *model.Procedure) []finding.Finding {
	var found []finding.Finding
	for _, use := range p.Supplies {
		if want, ok := dimensionOf(use.To); ok {
			found = append(found, judgeAmount(use, want)...)
		}
	}
	return found
}

func judgeAmount(use model.Use[model.Supply], want quantity.Dimension) []finding.Finding {
	if use.Amount == "" {
		if want == quantity.Count {
			return nil
		}
		return []finding.Finding{decode.Quantity.At(use.At, "supplies does not say how much %s", use.ID).
			WithMend("write it into %s: [%s: how much, in %s]", "supplies", use.ID, use.To.Unit).See(use.To.At, "it is counted in %s", use.To.Unit)}
	}
	amount, err := quantity.Parse(use.Amount, want)
	if err != nil {
		return []finding.Finding{decode.BadAmount(err, use.AmountAt, use.ID).See(use.To.At, "it is counted in %s", use.To.Unit)}
	}
	if amount.Value <= 0 {
		return []finding.Finding{decode.Quantity.At(use.AmountAt, "%s: %q is nothing to fetch", use.ID, use.Amount).
			WithMend("write how much the job needs, or take it out of supplies")}
	}
	return nil
}
