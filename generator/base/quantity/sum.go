package quantity

// Plus is the sum in q's unit, with the decimals of the finer of the two as
// they show in that unit. An amount of another dimension is left out.
func (q Quantity) Plus(other Quantity) Quantity {
	other, ok := other.As(q.Unit.Dimension())
	if !ok {
		return q
	}
	other = other.In(q.Unit)
	typed := max(min(q.Decimals, other.Decimals), 0)
	finer := max(q.Decimals, other.Decimals, 0)
	value := roundTo(q.Value+other.Value, finer)
	for finer > typed && roundTo(value, finer-1) == value {
		finer-- // a zero at the end that nobody typed
	}
	sum := Of(value, q.Unit, leadingPlace(value)+1+finer)
	sum.Flow = q.Flow
	return sum
}

// IsZero says that no amount was given at all.
func (q Quantity) IsZero() bool { return q == Quantity{} }

// IsZero says that no limit was given at all.
func (l Limit) IsZero() bool { return l == Limit{} }
