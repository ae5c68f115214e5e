package numbers

import (
	"strconv"

	"baybinder/generator/base/quantity"
	"baybinder/generator/language"
	"baybinder/generator/language/shape"
)

// longestUnit is more than any unit takes, with its space.
const longestUnit = 40

// Spelled are the amounts of a text whose number is written out in a language, in
// order: "three minutes", "cuarenta y cinco N·m".
func Spelled(text, tag string) []quantity.Found {
	var out []quantity.Found
	for _, c := range countedIn(text, tag) {
		number := strconv.Itoa(c.Value)
		found := quantity.Find(number + text[c.End:min(c.End+longestUnit, len(text))])
		if len(found) == 0 || found[0].Start > 0 {
			continue
		}
		out = append(out, quantity.Found{Quantity: found[0].Quantity, Start: c.Start, End: c.End + found[0].End - len(number)})
	}
	return out
}

// countedIn are the numbers that are written out in a text in a language.
func countedIn(text, tag string) []shape.Counted {
	if spoken := language.Known(tag); spoken != nil {
		return spoken.Numbers.Counted(text)
	}
	return nil
}

// hasNumber says that a text of the procedure has a number, in figures or written out.
func (j *job) hasNumber(text string) bool {
	return hasFigure(text) || len(countedIn(text, j.language())) > 0
}
