package search

import (
	"bytes"
	"cmp"
	"strings"
	"unicode"
	"unicode/utf8"

	"baybinder/generator/language"
	"golang.org/x/text/unicode/norm"
)

// splitter splits one text after another, in memory that it uses again.
type splitter struct{ apart, word, gap []byte } // gap is what stood between the last word and this

// each calls do with every word of a text, which is good until do returns.
func (s *splitter) each(text string, do func(word []byte)) {
	s.apart = norm.NFD.AppendString(s.apart[:0], text) // accents stand behind their letters
	s.word, s.gap = s.word[:0], s.gap[:0]
	end := func() {
		if len(s.word) > 0 {
			do(s.word)
			s.word, s.gap = s.word[:0], s.gap[:0]
		}
	}
	for i := 0; i < len(s.apart); {
		c, size := rune(s.apart[i]), 1
		if c >= utf8.RuneSelf {
			c, size = utf8.DecodeRune(s.apart[i:])
		}
		i += size
		switch {
		case 'a' <= c && c <= 'z', '0' <= c && c <= '9':
			s.word = append(s.word, byte(c))
		case 'A' <= c && c <= 'Z':
			s.word = append(s.word, byte(c)+'a'-'A')
		case c < utf8.RuneSelf:
			end()
			s.gap = append(s.gap, byte(c))
		case unicode.Is(unicode.Mn, c): // an accent
		default:
			if c = unicode.ToLower(c); unicode.IsLetter(c) || unicode.IsNumber(c) {
				s.word = utf8.AppendRune(s.word, c)
			} else {
				end()
				s.gap = utf8.AppendRune(s.gap, c)
			}
		}
	}
	end()
}

// joiner makes one word of a code and of an amount, as the browser does with a
// query: T-06 is also t06, and 9 N·m also 9nm.
type joiner struct{ last, before []byte }

var jointUnits = map[string]bool{"nm": true, "mm": true, "bar": true, "v": true, "kg": true}

// next is the joined word that ends with this one; "" where there is none.
func (j *joiner) next(word, gap []byte) string {
	joined, counts := j.joined(word, gap)
	j.before = j.before[:0]
	if counts {
		j.before = append(j.before, j.last...)
	}
	j.last = append(j.last[:0], word...)
	return joined
}

// joined is that word; counts says that the last one counts a unit that may go
// on, N of N·m.
func (j *joiner) joined(word, gap []byte) (joined string, counts bool) {
	last := j.last
	if string(gap) == "·" && string(word) == "m" && string(last) == "n" && len(j.before) > 0 {
		return string(j.before) + "nm", false
	}
	switch {
	case len(last) == 0 || last[len(last)-1] > '9' && !(len(last) <= 2 && string(gap) == "-"):
		return "", false
	case last[len(last)-1] > '9':
		if isDigits(word) {
			return string(last) + string(word), false
		}
	case string(gap) == " " && isDigits(last):
		counts = string(word) == "n"
		if jointUnits[string(word)] {
			joined = string(last) + string(word)
		}
	}
	return joined, counts
}

func isDigits(word []byte) bool {
	return len(word) > 0 && len(bytes.Trim(word, "0123456789")) == 0
}

// stem is a form's stem. A word that is mostly figures is its own. Accents are
// gone by then: what Spanish endings lose by that, the browser's cutting finds.
func stem(tag, form string) string {
	if strings.ContainsFunc(form, unicode.IsDigit) {
		return form
	}
	return cmp.Or(language.Stem(tag, form), form)
}
