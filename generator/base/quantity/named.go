package quantity

// DimensionNamed is the dimension whose String is the word, or None.
func DimensionNamed(word string) Dimension {
	for d := None; d <= Count; d++ {
		if d.String() == word {
			return d
		}
	}
	return None
}
