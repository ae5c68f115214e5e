package numbers

import (
	"strconv"

	"baybinder/generator/base/quantity"
	"baybinder/generator/language"
)

// longestUnit is more than any unit takes, with its space.
const longestUnit = 40

// Spelled are the amounts of a text whose number is written out in a language, in
// order: "three minutes", "cuarenta y cinco N·m".
func Spelled(text, tag string) []quantity.Found {
	spoken := language.Known(tag)
	if spoken == nil {
		return nil
	}
	var out []quantity.Found
	for _, c := range spoken.Numbers.Counted(text) {
		number := strconv.Itoa(c.Value)
		found := quantity.Find(number + text[c.End:min(c.End+longestUnit, len(text))])
		if len(found) > 0 && found[0].Start == 0 {
			end := c.End + found[0].End - len(number)
			out = append(out, quantity.Found{Quantity: found[0].Quantity, Start: c.Start, End: end})
		}
	}
	return out
}

// hasNumber says that a text of the procedure has a figure, or an amount whose number
// is written out.
func (j *job) hasNumber(text string) bool {
	return hasFigure(text) || len(Spelled(text, j.language())) > 0
}
