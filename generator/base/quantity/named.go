package quantity

// Dimensions are all kinds of amount, in the order of the handbook's table.
func Dimensions() []Dimension {
	var out []Dimension
	for d := range dimensions {
		if Dimension(d) != None {
			out = append(out, Dimension(d))
		}
	}
	return out
}

// DimensionNamed is the dimension whose String is the word, or None.
func DimensionNamed(word string) Dimension {
	for _, d := range Dimensions() {
		if d.String() == word {
			return d
		}
	}
	return None
}
