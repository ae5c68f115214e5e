package quantity

import (
	"strings"
	"unicode/utf8"
)

// InThrees is an amount whose figures are parted in threes, "81 000 g", "1,500
// psi", "1.500 bar". What the sign between them is can often be read in two ways.
type InThrees struct {
	Found            // as one number, all figures of it
	Other []Quantity // the other readings that it has
}

// FindInThrees returns the amounts of a sentence whose figures are parted in
// threes by spaces, commas or points, in order. Find leaves all of them alone but
// those with one point, which it reads as a decimal point.
//
// "81 000 g" can only be 81000 g. "3 120 g" may be of three things of 120 g,
// "1,500 psi" and "1.500 bar" have a decimal sign elsewhere: the other reading
// is kept beside. Figures behind the last three are decimals, "1.500,5 bar".
func FindInThrees(text string) []InThrees {
	f := finder{r: reader{text: text, prose: true}}
	var out []InThrees
	for f.seek() {
		at := f.r.at
		number := threesAt(text[at:])
		if number.size == 0 {
			f.r.at += len(numberToken(f.r.rest()))
			continue
		}
		f.r.at += number.size
		if l := f.lead(at, number.first); !l.ok || l.negative {
			continue
		}
		if q, size, ok := measuredBehind(number.whole, text[f.r.at:]); ok {
			f.r.at += size
			out = append(out, InThrees{Found{q, at, f.r.at, false}, number.others(q, text[at+number.size:])})
		}
	}
	return out
}

// threes is a number in groups of three.
type threes struct {
	whole, first, rest string // figures: of all, of the first group, of those behind it
	sign               rune
	groups             int // behind the first
	decimals           bool
	size               int // in bytes; nothing where there is none
}

// threesAt reads a number in groups of three at the start of a text, which is a
// figure.
func threesAt(text string) threes {
	first := figures(text)
	if len(first) > 3 || first[0] == '0' {
		return threes{}
	}
	t := threes{first: first}
	at := len(first)
	for at < len(text) {
		sign, size := utf8.DecodeRuneInString(text[at:])
		group := figures(text[at+size:])
		if len(group) != 3 || t.groups > 0 && sign != t.sign || !strings.ContainsRune(" \u00A0\u2009\u202F,.", sign) {
			break
		}
		t.sign = sign
		t.groups++
		at += size + len(group)
	}
	if t.groups == 0 {
		return threes{}
	}
	t.whole = strings.ReplaceAll(text[:at], string(t.sign), "")
	t.rest = t.whole[len(first):]
	if at+1 < len(text) && strings.IndexByte(".,", text[at]) >= 0 && isDigit(text[at+1]) {
		after := figures(text[at+1:])
		if rune(text[at]) == t.sign {
			return threes{} // "1.500.2"
		}
		t.whole, t.decimals = t.whole+"."+after, true
		at += 1 + len(after)
	}
	t.size = at
	return t
}

func figures(text string) string {
	end := 0
	for end < len(text) && isDigit(text[end]) {
		end++
	}
	return text[:end]
}

// others are the readings of a number beside that as one: of two groups with a
// comma or a point a decimal one, with a space that of the second alone.
func (t threes) others(whole Quantity, rest string) []Quantity {
	if t.groups > 1 || t.decimals {
		return nil
	}
	read := t.rest
	if t.sign == ',' || t.sign == '.' {
		read = t.first + "." + t.rest
	} else if t.rest[0] == '0' {
		return nil
	}
	if q, _, ok := measuredBehind(read, rest); ok && q.Unit == whole.Unit {
		return []Quantity{q}
	}
	return nil
}

// unitBytes is more than any unit takes, with its space, or the rest of "1 h 30
// min": what is read again for each number of a text is no longer than that.
const unitBytes = 40

// measuredBehind reads figures with the unit behind them, and says how many bytes
// that takes.
func measuredBehind(figures, behind string) (q Quantity, size int, ok bool) {
	if len(behind) > unitBytes {
		behind = behind[:unitBytes]
	}
	f := finder{r: reader{text: figures + behind, prose: true}}
	q, ok = f.amount(0, false)
	return q, f.r.at - len(figures), ok
}
