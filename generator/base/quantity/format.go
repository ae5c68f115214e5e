package quantity

import (
	"strconv"
	"strings"
)

// String returns the amount as it is printed: the number with the digits that
// were typed, a true minus sign, the unit's symbol, and ac or dc.
func (q Quantity) String() string {
	if q.written != "" {
		return q.written
	}
	return attach(q.Number(), q.unitText(), q.Flow)
}

// About reports whether the amount was typed as one that is not measured out,
// "about 0.8 L". Nothing else tells it from the amount without the word.
func (q Quantity) About() bool { return q.about }

// Number returns the number alone, as it is printed. For a compound it is the
// whole in the last unit: "90" for 1 h 30 min.
func (q Quantity) Number() string {
	if q.fraction != "" {
		return withMinus(q.fraction, q.Value)
	}
	number := strconv.FormatFloat(q.shown(), 'f', max(q.Decimals, 0), 64)
	return withMinus(strings.TrimPrefix(number, "-"), q.shown())
}

func withMinus(number string, value float64) string {
	if value < 0 {
		return "−" + number
	}
	return number
}

// unitText returns the symbol; days and longer are words, and take an s.
func (q Quantity) unitText() string {
	symbol := q.Unit.Symbol()
	if q.Value != 1 || q.Unit != Week && q.Unit != Turn && q.Unit != Drop && q.Unit.Dimension() != Calendar {
		return symbol
	}
	return strings.TrimSuffix(symbol, "s")
}

// attach puts a unit behind a number: with a space, save the sign of degrees.
func attach(number, unit string, flow Flow) string {
	text := number
	if unit != "" && unit != Degree.Symbol() {
		text += " "
	}
	text += unit
	if flow != Unsaid {
		text += " " + flow.String()
	}
	return text
}
