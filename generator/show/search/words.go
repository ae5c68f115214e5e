package search

import (
	"cmp"
	"strings"
	"unicode"
	"unicode/utf8"

	"baybinder/generator/language"
	"golang.org/x/text/unicode/norm"
)

// splitter splits one text after another, in memory that it uses again.
type splitter struct{ apart, word []byte }

// each calls do with every word of a text, which is good until do returns.
func (s *splitter) each(text string, do func(word []byte)) {
	s.apart = norm.NFD.AppendString(s.apart[:0], text) // accents stand behind their letters
	s.word = s.word[:0]
	end := func() {
		if len(s.word) > 0 {
			do(s.word)
			s.word = s.word[:0]
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
		case unicode.Is(unicode.Mn, c): // an accent
		default:
			if c = unicode.ToLower(c); unicode.IsLetter(c) || unicode.IsNumber(c) {
				s.word = utf8.AppendRune(s.word, c)
			} else {
				end()
			}
		}
	}
	end()
}

// stem is a form's stem. A word that is mostly figures is its own. Accents are
// gone by then: what Spanish endings lose by that, the browser's cutting finds.
func stem(tag, form string) string {
	if strings.ContainsFunc(form, unicode.IsDigit) {
		return form
	}
	return cmp.Or(language.Stem(tag, form), form)
}
