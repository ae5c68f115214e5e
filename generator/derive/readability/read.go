package readability

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"baybinder/generator/base/quantity"
)

// Reader counts texts of one language. It remembers the words that it has met,
// so it is for one user at a time; what it counts does not hang on that.
type Reader struct {
	text      string
	at        int
	ahead     []quantity.Place // the amounts behind the place
	syllables func(word []byte) int
	met       map[string]int
	count     Count
	sentence  int // words since the last stop
	letters   []byte
}

// NewReader begins in a language.
func NewReader(tag string) *Reader {
	return &Reader{syllables: syllablesOf(tag), met: map[string]int{}}
}

// Read counts a text without markup, as the advice on sentences does: a
// hyphenated term is one word; so is a number with its unit, a range, and what
// stands in quotes or between backticks; what stands in brackets is not
// counted; a colon, a semicolon, a dash and the end of a line end a sentence
// too. Figures, codes and quotes have no syllables, and no part in the mean of
// them (Flesch leaves figures out where there are several; from memory).
func (r *Reader) Read(text string) Count {
	r.text, r.at, r.sentence, r.count = text, 0, 0, Count{}
	r.ahead = quantity.Places(text)
	for r.at < len(text) {
		r.step()
	}
	r.stop()
	return r.count
}

// step takes what stands at the place: a word, an amount, a quote, brackets or
// a sign.
func (r *Reader) step() {
	if r.text[r.at] == ' ' {
		r.at++
		return
	}
	for len(r.ahead) > 0 && r.ahead[0].Start < r.at {
		r.ahead = r.ahead[1:] // it stood in a quote or in brackets
	}
	if len(r.ahead) > 0 && r.ahead[0].Start == r.at {
		r.figure(r.ahead[0].End)
		return
	}
	c, size := utf8.DecodeRuneInString(r.text[r.at:])
	switch {
	case unicode.IsLetter(c) || unicode.IsNumber(c):
		r.word()
		return
	case c == '(':
		r.brackets()
		return
	case c == '"', c == '`', c == '“', c == '«':
		r.quote(c, size)
		return
	case c == '\n' || c == '—' || c == '–' || strings.ContainsRune(".!?;:…", c) && ends(r.text[r.at+size:]):
		r.stop()
	}
	r.at += size
}

// ends says that a stop in front of this rest ends a sentence: it stands in no
// number and in no name.
func ends(rest string) bool {
	c, size := utf8.DecodeRuneInString(rest)
	return size == 0 || strings.ContainsRune(" \u00a0\t\n\")”»'", c)
}

// stop ends the sentence, if it has a word.
func (r *Reader) stop() {
	if r.sentence > 0 {
		r.count.Sentences++
		r.count.Longest = max(r.count.Longest, r.sentence)
	}
	r.sentence = 0
}

// figure is a word without syllables up to here.
func (r *Reader) figure(end int) {
	r.sentence++
	r.count.Words++
	r.at = end
}

// brackets passes over what stands in them; one that nothing closes is a sign.
func (r *Reader) brackets() {
	depth := 0
	for i := r.at; i < len(r.text); i++ {
		switch r.text[i] {
		case '(':
			depth++
		case ')':
			depth--
		case '\n':
			depth = -1
		}
		if depth == 0 {
			r.at = i + 1
			return
		}
		if depth < 0 {
			break
		}
	}
	r.at++
}

var closing = map[rune]string{'"': `"`, '`': "`", '“': "”", '«': "»"}

// quote is one word; one that nothing closes is a sign.
func (r *Reader) quote(opens rune, size int) {
	rest := r.text[r.at+size:]
	end := strings.Index(rest, closing[opens])
	if end < 0 || strings.IndexByte(rest[:end], '\n') >= 0 {
		r.at += size
		return
	}
	last := strings.TrimRight(rest[:end], " ")
	r.figure(r.at + size + end + len(closing[opens]))
	if last != "" && strings.IndexByte(".!?", last[len(last)-1]) >= 0 {
		r.stop()
	}
}

// word takes letters and figures, and between two of them one of the signs that
// join. One with a figure in it is a code or a number.
func (r *Reader) word() {
	letters, code := r.letters[:0], false
	end, joined := r.at, false
loop:
	for i := r.at; i < len(r.text); {
		c, size := rune(r.text[i]), 1
		if c >= utf8.RuneSelf {
			c, size = utf8.DecodeRuneInString(r.text[i:])
		}
		switch {
		case 'a' <= c && c <= 'z':
			letters = append(letters, byte(c))
		case 'A' <= c && c <= 'Z':
			letters = append(letters, byte(c)+'a'-'A')
		case '0' <= c && c <= '9' || unicode.IsNumber(c):
			code = true
		case unicode.IsLetter(c):
			letters = utf8.AppendRune(letters, unicode.ToLower(c))
		case unicode.IsMark(c): // an accent that stands by itself; it joins nothing
			i += size
			end = i
			continue
		case !joined && JoinsWords(c):
			joined = true
			if c == '’' {
				c = '\''
			}
			letters = utf8.AppendRune(letters, c)
			i += size
			continue
		default:
			break loop
		}
		joined = false
		i += size
		end = i
	}
	if joined {
		_, size := utf8.DecodeLastRune(letters)
		letters = letters[:len(letters)-size]
	}
	r.letters = letters
	r.figure(end)
	if !code && r.syllables != nil {
		r.count.Spoken++
		r.count.Syllables += r.heard()
	}
}

// JoinsWords says that a sign makes one word of the letters and figures on both
// sides of it.
func JoinsWords(c rune) bool {
	switch c {
	case '-', '\'', '’', '·', '.', '/', '_', '×':
		return true
	}
	return false
}

// heard are the syllables of the word at hand.
func (r *Reader) heard() int {
	n := r.met[string(r.letters)]
	if n == 0 {
		n = r.pieces(r.letters)
		r.met[string(r.letters)] = n
	}
	return n
}

// pieces are the syllables of a word, each of its parts by itself. Each word
// has one at least.
func (r *Reader) pieces(word []byte) int {
	n, start := 0, 0
	for i := 0; i <= len(word); i++ {
		if i < len(word) && (word[i] >= utf8.RuneSelf || word[i] == '\'' || 'a' <= word[i] && word[i] <= 'z') {
			continue
		}
		if i > start {
			n += max(1, r.syllables(word[start:i]))
		}
		start = i + 1
	}
	return max(1, n)
}
