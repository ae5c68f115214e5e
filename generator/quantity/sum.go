package quantity

// Plus is the sum in q's unit, with the decimals of the finer of the two. The
// other must be of the same dimension; one that is not is left out.
func (q Quantity) Plus(other Quantity) Quantity {
	other, ok := other.As(q.Unit.Dimension())
	if !ok {
		return q
	}
	finer := max(q.Decimals, other.Decimals, 0)
	value := roundTo(q.Value+other.valueIn(q.Unit), finer)
	return Of(value, q.Unit, leadingPlace(value)+1+finer)
}

// IsZero says that no amount was given at all.
func (q Quantity) IsZero() bool { return q == Quantity{} }

// IsZero says that no limit was given at all.
func (l Limit) IsZero() bool { return l == Limit{} }
