package numbers

import (
	"slices"
	"strings"
	"unicode"

	"baybinder/generator/base/quantity"
	"baybinder/generator/language"
	"baybinder/generator/language/shape"
	"baybinder/generator/model"
)

// A limit may be typed by its middle and how far both ends are from it: of 135 to
// 145 bar that is 140 ± 5 bar, "140 bar ±5", "140 bar, give or take 5 bar".

// withTolerances are the amounts of a text, those that say how far another may be off
// marked as that, each joined with the other.
func withTolerances(amounts []amountIn, text, tag string) []amountIn {
	words := toleranceWords(tag)
	out := make([]amountIn, 0, len(amounts))
	for i, a := range amounts {
		behind := len(text)
		if i+1 < len(amounts) {
			behind = amounts[i+1].Start
		}
		if head, said := cutTolerance(text[:a.Start], words); said && !a.Tolerance {
			if n := len(out); n > 0 && head == text[:out[n-1].End] {
				a.Tolerance = true
			} else if low, is := numberAtEnd(head, tag); is {
				out = append(out, sharing(text, low, a, tag)...)
				a.Tolerance = true
			}
		}
		out = append(out, a)
		if width, is := bareTolerance(text[:behind], a, tag, words); is {
			out = append(out, width)
		}
	}
	for i := 1; i < len(out); i++ {
		if nominal, width := &out[i-1], &out[i]; width.Tolerance && !nominal.Tolerance {
			nominal.width, width.nominal = &width.Quantity, &nominal.Quantity
		}
	}
	return out
}

func toleranceWords(tag string) []string {
	if tongue := language.Known(tag); tongue != nil {
		return tongue.Asides.OffBy
	}
	return nil
}

// setsApart says that a sign stands between an amount and how far it may be off.
func setsApart(r rune) bool { return r == ',' || unicode.IsSpace(r) }

// cutTolerance takes the words that make a tolerance of what stands behind them from
// the end of a text.
func cutTolerance(text string, words []string) (head string, is bool) {
	text = strings.TrimRightFunc(text, unicode.IsSpace)
	for _, w := range words {
		if at := len(text) - len(w); at > 0 && strings.EqualFold(text[at:], w) {
			if head := strings.TrimRightFunc(text[:at], setsApart); head != text[:at] {
				return head, true
			}
		}
	}
	return "", false
}

// bareTolerance is how far an amount may be off where that has no unit, "140 bar ±5".
// More said behind it would make it a number of something: "± 2 notches".
func bareTolerance(text string, a amountIn, tag string, words []string) (amountIn, bool) {
	rest := strings.TrimLeftFunc(text[a.End:], setsApart)
	for _, w := range append([]string{"±", "+/-"}, words...) {
		if len(rest) < len(w) || !strings.EqualFold(rest[:len(w)], w) {
			continue
		}
		figures := strings.TrimLeftFunc(rest[len(w):], unicode.IsSpace)
		end := strings.IndexFunc(figures, func(r rune) bool { return !unicode.IsDigit(r) && r != '.' && r != ',' })
		if end < 0 {
			end = len(figures)
		}
		number := strings.TrimRight(figures[:end], ".,")
		if number == "" || namesWhat(figures[len(number):], tag) {
			return amountIn{}, false
		}
		start := len(text) - len(figures)
		all := sharing(text, quantity.Place{Start: start, End: start + len(number)}, a, tag)
		if len(all) != 1 {
			return amountIn{}, false
		}
		all[0].Tolerance = true
		return all[0], true
	}
	return amountIn{}, false
}

// namesWhat says that what stands behind a number says what it is a number of.
func namesWhat(behind, tag string) bool {
	tongue := language.Known(tag)
	r := []rune(behind + ".")[0]
	if !unicode.IsSpace(r) {
		return !unicode.IsPunct(r) || r == '%'
	}
	next := strings.Fields(behind)
	return len(next) > 0 && (tongue == nil || !tongue.Asides.Breaks[shape.PlainWord(next[0])])
}

// middled is a limit that can be said by its middle: the limit's own where it is a
// tolerance, that between its ends where it is a range.
func middled(l quantity.Limit) (middle, width quantity.Quantity, ok bool) {
	if _, _, ok := l.Ends(); !ok {
		return quantity.Quantity{}, quantity.Quantity{}, false
	}
	middle, width = quantity.Of((l.Low+l.High)/2, l.Unit, exactly), quantity.Of((l.High-l.Low)/2, l.Unit, exactly)
	middle.Flow, width.Flow = l.Flow, l.Flow
	return middle, width, true
}

// exactly is more digits than anybody types of a middle.
const exactly = 9

// isMiddleOf says that an amount which has a tolerance is the middle of a range.
func (a amountIn) isMiddleOf(l quantity.Limit) bool {
	middle, _, ok := middled(l)
	return ok && a.width != nil && l.Kind == quantity.Between && quantity.Agrees(a.Quantity, middle)
}

// offOf says whether an amount that says how far another may be off can be held
// against a limit, and whether it is as that says.
func (a amountIn) offOf(l quantity.Limit) (held, right bool) {
	middle, width, ok := middled(l)
	if !ok || !a.Fits(quantity.Ratio) && !a.Fits(l.Unit.Dimension()) {
		return false, false
	}
	if l.Kind == quantity.Between && (a.nominal == nil || !quantity.Agrees(*a.nominal, middle)) {
		return false, false // the middle is wrong, and told
	}
	if a.Fits(quantity.Ratio) && l.Unit.Dimension() != quantity.Ratio {
		width.Value, width.Unit = width.Value/middle.Value*100, quantity.Percent
	}
	return true, quantity.Agrees(spanOf(a.Quantity), spanOf(width))
}

// limitsOf are the limits that what a link names states.
func limitsOf(link *model.Link) []quantity.Limit {
	var out []quantity.Limit
	switch to := link.To.(type) {
	case *model.Hold:
		out = append(out, to.Limit, to.Near)
	case *model.Setting:
		if link.Kind.Act != model.Alter {
			limit, _ := quantity.ParseLimit(to.Value, quantity.None)
			out = append(out, limit)
		}
	case *model.Fastener:
		out = append(out, to.Torque)
	case *model.Energy:
		out = append(out, to.Pressures)
	case *model.Tool:
		out = append(out, to.Range)
	}
	return slices.DeleteFunc(out, quantity.Limit.IsZero)
}

// offBy are the limits that an amount that says how far another may be off should
// have been of, none where it is right, or there is none to hold it against.
func (a amountIn) offBy(limits []quantity.Limit) []quantity.Limit {
	var wrong []quantity.Limit
	for _, l := range limits {
		held, right := a.offOf(l)
		switch {
		case right:
			return nil
		case held:
			wrong = append(wrong, l)
		}
	}
	return wrong
}
