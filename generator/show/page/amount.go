package page

import (
	"bytes"
	"cmp"
	"iter"
	"slices"
	"strings"

	"baybinder/generator/base/quantity"
)

// A number stays on one line with its unit (SI Brochure, 5.4.3, from memory: a space
// stands between them, and they belong together). The space stays a plain one: who
// copies, searches or keeps a text has what the shop wrote. The element is the
// shortest that may stand in any text and says nothing else of it.
const (
	amountBegins = "<bdi>"
	amountEnds   = "</bdi>"
)

// words writes a piece of a page that holds no tag, each amount in it as one that
// is not parted.
func (f *finishing) words(text []byte) {
	if [noText]bool(f.inside[:noText]) != [noText]bool{} {
		f.out.Write(text)
		return
	}
	from := 0
	for start, end := range f.site.amounts(text) {
		f.out.Write(text[from:start])
		f.out.WriteString(amountBegins)
		f.out.Write(text[start:end])
		f.out.WriteString(amountEnds)
		from = end
	}
	f.out.Write(text[from:])
}

// amounts are where the amounts of a text begin and end.
func (s *Site) amounts(text []byte) iter.Seq2[int, int] {
	return func(yield func(start, end int) bool) {
		from := 0
		for i := 1; i+1 < len(text); i++ {
			if !isFigure(text[i-1]) || text[i] != ' ' && text[i] != '\n' {
				continue
			}
			size := s.unitAt(text[i+1:])
			if size == 0 {
				continue
			}
			start := from + numberIn(text[from:i])
			from = i + 1 + size
			if !yield(start, from) {
				return
			}
			i = from
		}
	}
}

// AmountsIn are the amounts that names hold, each once: for the scripts, which put
// such names on a page themselves.
func (s *Site) AmountsIn(names []string) []string {
	var out []string
	for _, name := range names {
		for start, end := range s.amounts([]byte(name)) {
			if amount := name[start:end]; !slices.Contains(out, amount) {
				out = append(out, amount)
			}
		}
	}
	slices.SortFunc(out, func(a, b string) int { return cmp.Or(cmp.Compare(len(b), len(a)), cmp.Compare(a, b)) })
	return out
}

func isFigure(b byte) bool { return b >= '0' && b <= '9' }

// longestUnit is as many bytes as are looked at for a unit.
const longestUnit = 24

// unitAt is how many bytes at the start of a text are a unit: a symbol, with what
// stands behind it of a voltage or a current, or a word for calendar time in the
// page's language.
func (s *Site) unitAt(text []byte) int {
	near, w := string(text[:min(len(text), longestUnit)]), &s.Speaks.Several
	if size := quantity.UnitAt(near); size > 0 {
		for _, kind := range [...]string{w.Direct, w.Alternating} {
			if strings.HasPrefix(near[size:], " "+kind) {
				return size + 1 + len(kind)
			}
		}
		return size
	}
	for _, word := range [...]string{w.Days, w.Day, w.Weeks, w.Week, w.Months, w.Month, w.Years, w.Year} {
		if strings.HasPrefix(near, word) {
			return len(word)
		}
	}
	return 0
}

// numberIn is where the number begins that a text ends with.
func numberIn(text []byte) int {
	at := len(text)
	for at > 0 {
		switch b := text[at-1]; {
		case isFigure(b), bytes.IndexByte([]byte(".,/+-"), b) >= 0:
			at--
		case bytes.HasSuffix(text[:at], []byte("−")):
			at -= len("−")
		default:
			return at
		}
	}
	return at
}
