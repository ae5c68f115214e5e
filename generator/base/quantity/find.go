package quantity

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Found is an amount in a sentence.
type Found struct {
	Quantity
	Start, End int  // bytes of the text; of a range's lower end the number alone
	Tolerance  bool // it stands behind ±, and is no amount of the thing
}

// Find returns every amount in a sentence, in order. Both ends of "20 to 100
// N·m", "20–100 N·m", "between 20 and 100 N·m" and "2.0 ± 0.1 mm" are found.
//
// A unit must follow the number, after a space, a no-break space or none; so
// "step 4", "4 bolts" and "M8x1.25" hold no amount. It would rather miss than
// invent: "4 in the box" is not four inches, and numbers that can be read in
// two ways ("1,500 psi", "1 500 psi") are left alone; FindInThrees has them. A decimal comma is read,
// "7,5 bar", for translations; counts, "4 each", are not amounts here.
func Find(text string) []Found {
	f := finder{r: reader{text: text, prose: true}}
	for f.seek() {
		f.take()
	}
	return f.found
}

// Place is where something stands in a text, in bytes.
type Place struct{ Start, End int }

// Places are where the amounts of a sentence stand, two that make one range
// taken as one: "20 N·m to 30 N·m".
func Places(text string) []Place {
	var out []Place
	for _, f := range Find(text) {
		if last := len(out) - 1; last >= 0 && slices.Contains(rangeWords, strings.TrimSpace(text[out[last].End:f.Start])) {
			out[last].End = f.End
			continue
		}
		out = append(out, Place{f.Start, f.End})
	}
	return out
}

// rangeWords are the words and signs that make one range of two amounts.
var rangeWords = []string{"to", "a", "-", "–", "±", "+"}

// finder collects the amounts of one text.
type finder struct {
	r     reader
	end   int // of the last amount found
	found []Found
}

// seek goes on to the next figure.
func (f *finder) seek() bool {
	for at := f.r.at; at < len(f.r.text); at++ {
		if isDigit(f.r.text[at]) {
			f.r.at = at
			return true
		}
	}
	return false
}

// take tries the number that begins here, and leaves it behind either way.
func (f *finder) take() {
	at := f.r.at
	token := numberToken(f.r.rest())
	lead := f.lead(at, token)
	f.r.acid = strings.HasSuffix(strings.TrimRightFunc(f.r.text[:at], isSpace), "pH")
	if lead.ok && f.amountOf(lead) {
		f.end = f.r.at
		return
	}
	f.r.at = at + len(token)
}

// amountOf reads an amount of the number that begins here, alone or as the first
// of a pair.
func (f *finder) amountOf(l lead) bool {
	at := f.r.at
	n, fault := f.r.number()
	if fault.bad() {
		return false
	}
	behind := f.r
	if f.r.acid && f.pair(n, l) {
		return true
	}
	f.back(behind)
	if f.single(at, n, l) {
		return true
	}
	f.back(behind)
	return f.pair(n, l)
}

// back goes back to behind a number.
func (f *finder) back(behind reader) { f.r.at, f.r.split = behind.at, behind.split }

// lead is what stands before a number.
type lead struct {
	ok        bool // the number stands on its own
	start     int  // bytes of the text, the sign included
	negative  bool
	tolerance bool // behind ±
}

// lead looks at what stands before the number at a place.
func (f *finder) lead(at int, token string) lead {
	before := f.r.text[:at]
	last, size := utf8.DecodeLastRuneInString(before)
	l := lead{ok: true, start: at}
	switch {
	case size == 0:
	case isSpace(last):
		l.ok = !grouped(before, token)
	case last == '±' || strings.HasSuffix(before, "+/-"):
	case f.end > 0 && f.end == at-size: // "60°-90°", "12 V/24 V": the sign only joins
	case minusAt(before[at-size:]) > 0:
		l.start, l.negative = at-size, true
		l.ok = opens(before[:at-size])
	case unicode.IsLetter(last) || unicode.IsMark(last) || strings.ContainsRune("_#.,'’/×–", last):
		l.ok = false // a name such as M8, a fraction, a part of another number
	case last == ':':
		l.ok = at < 2 || !isDigit(before[at-2])
	}
	spaced := strings.TrimRightFunc(before, isSpace)
	l.tolerance = strings.HasSuffix(spaced, "±") || strings.HasSuffix(spaced, "+/-")
	return l
}

// grouped reports whether a token may be the thousands' rest of the number
// before it, "1 500".
func grouped(before, token string) bool {
	figures, _, _ := strings.Cut(token, ".")
	spaced := strings.TrimRightFunc(before, isSpace)
	return len(figures) == 3 && spaced != "" && isDigit(spaced[len(spaced)-1])
}

// opens reports whether a minus sign behind before is a sign and no dash.
func opens(before string) bool {
	r, size := utf8.DecodeLastRuneInString(before)
	return size == 0 || isSpace(r) || strings.ContainsRune("([{\"'“‘„«=<>≤≥~≈±:", r)
}

// single reads the unit of a number, whose figures begin at a place.
func (f *finder) single(at int, n number, l lead) bool {
	q, ok := f.measured(at, n, l.negative)
	if ok {
		f.add(q, l.start, f.r.at, l.tolerance)
	}
	return ok
}

// amount reads an amount whose figures begin at a place.
func (f *finder) amount(at int, negative bool) (Quantity, bool) {
	f.r.at = at
	n, fault := f.r.number()
	if fault.bad() {
		return Quantity{}, false
	}
	return f.measured(at, n, negative)
}

// measured reads the unit of a number whose figures begin at a place.
func (f *finder) measured(at int, n number, negative bool) (Quantity, bool) {
	if negative {
		n.value = 0 - n.value // and zero stays without a sign
	}
	q, fault := f.r.measured(at, n)
	return q, !fault.bad() && q.Unit != Each
}

// pair reads the number with which one shares its unit.
func (f *finder) pair(n number, l lead) bool {
	end := f.r.at
	joined := f.joiner(l.start)
	if joined == Exact {
		return false
	}
	f.r.spaces()
	start := f.r.at
	minus := 0
	if joined == Between {
		minus = minusAt(f.r.rest())
	}
	second, ok := f.amount(start+minus, minus > 0)
	if !ok {
		return false
	}
	if first, ok := n.as(second, l.negative); ok {
		f.add(first, l.start, end, l.tolerance)
	}
	f.add(second, start, f.r.at, joined == PlusMinus)
	return true
}

// as returns a number with the unit of the amount behind it. A compound such
// as "1 h 30 min" does not say in which of its units the number is.
func (n number) as(next Quantity, negative bool) (Quantity, bool) {
	q := Quantity{Value: n.value, Unit: next.Unit, Flow: next.Flow, Digits: n.digits, Decimals: n.decimals, fraction: n.fraction}
	if negative {
		q.Value = 0 - q.Value
	}
	q.span = spanOf(q.Value, q.Unit)
	return q, next.written == "" && (q.refused() == unexplained || q.deviates(next))
}

// joiner reads what joins two numbers in a sentence: what a limit has, a dash
// with a space on both sides or on none, and the "and" of "between". The first
// number begins at start.
func (f *finder) joiner(start int) LimitKind {
	if kind := f.r.joiner(); kind != Exact {
		return kind
	}
	mark := f.r.at
	f.r.spaces()
	spaced := f.r.at > mark
	if dash := dashAt(f.r.rest()); dash > 0 && spaced == startsWithSpace(f.r.rest()[dash:]) {
		f.r.at += dash
		return dashed
	}
	rest, ok := strings.CutPrefix(f.r.rest(), "and")
	if ok && spaced && startsWithSpace(rest) && endsInBetween(f.r.text[:start]) {
		f.r.at += len("and")
		return Between
	}
	f.r.at = mark
	return Exact
}

func endsInBetween(text string) bool {
	const word = "between"
	text = strings.TrimRightFunc(text, isSpace)
	return len(text) >= len(word) && strings.EqualFold(text[len(text)-len(word):], word)
}

// dashed is Between by a dash, behind which no minus sign is read.
const dashed = PlusMinus + 1

func (f *finder) add(q Quantity, start, end int, tolerance bool) {
	f.found = append(f.found, Found{q, start, end, tolerance})
}
