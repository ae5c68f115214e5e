package page

import (
	"bytes"
	"cmp"
	"html"
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

// amounts writes a piece of a page up to the end of its last amount, each amount
// as one that is not parted, and says how far that is; 0 where there is none.
// What begins at from holds no tag, and is all in which they are looked for.
func (f *finishing) amounts(text []byte, from int) (written int) {
	for i := from + 1; i+1 < len(text); i++ {
		if text[i] != ' ' && text[i] != '\n' || !isFigure(text[i-1]) {
			continue
		}
		size := f.unitAt(text[i+1:])
		if size == 0 {
			continue
		}
		start := max(from, written)
		start += numberIn(text[start:i])
		f.out.Write(text[written:start])
		f.out.WriteString(amountBegins)
		written = i + 1 + size
		f.out.Write(text[start:written])
		f.out.WriteString(amountEnds)
		i = written
	}
	return written
}

// AmountsIn are the amounts that names hold, each once, the longest first: for the
// scripts, which put such names on a page themselves.
func (s *Site) AmountsIn(names []string) []string {
	var out []string
	for _, name := range names {
		var written bytes.Buffer
		s.Finish(&written, []byte(html.EscapeString(name)), nil)
		for _, piece := range strings.Split(written.String(), amountBegins)[1:] {
			amount, _, _ := strings.Cut(piece, amountEnds)
			if amount = html.UnescapeString(amount); !slices.Contains(out, amount) {
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

// unitAt is how many bytes at the start of a text are a unit. What stands behind
// the numbers of one page is mostly what stood behind those of another.
func (f *finishing) unitAt(text []byte) int {
	near := text[:min(len(text), longestUnit)]
	size, known := f.units[string(near)]
	if !known {
		size = f.site.unitAt(string(near))
		f.units[string(near)] = size
	}
	return size
}

// unitAt is how many bytes at the start of a text are a unit: a symbol, with what
// stands behind it of a voltage or a current, or a word for calendar time in the
// page's language.
func (s *Site) unitAt(near string) int {
	w := &s.Speaks.Several
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
