package jotting

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"golang.org/x/text/runes"
	"golang.org/x/text/transform"
	"golang.org/x/text/unicode/norm"
)

// token is a word or a number of a text, in small letters without accents.
type token struct {
	word       string
	start, end int
	stop       stop // what stands in front of it
	inside     bool // in brackets
}

// stop is what parts a word from the one before it.
type stop uint8

const (
	together stop = iota
	comma
	clauseEnd   // a colon, a dash, a bracket
	sentenceEnd // a full stop, a semicolon, an end of line
)

// plain is a text in small letters without accents; ñ keeps its tilde, which
// makes another letter of it.
func plain(text string) string {
	ascii := true
	for i := 0; i < len(text); i++ {
		ascii = ascii && text[i] < utf8.RuneSelf
	}
	text = strings.ToLower(text)
	if ascii {
		return text
	}
	text = strings.ReplaceAll(norm.NFC.String(text), "ñ", "\x02")
	out, _, err := transform.String(transform.Chain(norm.NFD, runes.Remove(runes.In(unicode.Mn)), norm.NFC), text)
	if err != nil {
		return text
	}
	return strings.ReplaceAll(out, "\x02", "ñ")
}

// tokens parts a text into words. Letters and figures that touch are words of
// their own (13mm), an apostrophe joins (don't), a hyphen parts.
func tokens(text string, skip func(int) bool) []token {
	var out []token
	next, depth := sentenceEnd, 0
	for i := 0; i < len(text); {
		c, size := utf8.DecodeRuneInString(text[i:])
		switch {
		case skip != nil && skip(i):
			out = hole(out, i, next)
			next = together
		case unicode.IsLetter(c) || unicode.IsDigit(c):
			end := wordEnd(text, i, unicode.IsDigit(c))
			out = append(out, token{plain(strings.NewReplacer("'", "", "’", "").Replace(text[i:end])), i, end, next, depth > 0})
			next, size = together, end-i
		case c == '(' || c == '[':
			depth, next = depth+1, max(next, clauseEnd)
		case c == ')' || c == ']':
			depth, next = max(0, depth-1), max(next, clauseEnd)
		default:
			next = max(next, stopOf(text[i:], c, size))
		}
		i += size
	}
	return out
}

// hole puts a word that is none where something is skipped.
func hole(out []token, at int, before stop) []token {
	if n := len(out); n > 0 && out[n-1].word == "" && out[n-1].end == at {
		out[n-1].end++
		return out
	}
	return append(out, token{start: at, end: at + 1, stop: before})
}

func stopOf(rest string, c rune, size int) stop {
	behind, _ := utf8.DecodeRuneInString(rest[size:])
	apart := len(rest) == size || unicode.IsSpace(behind) || strings.ContainsRune(`*_"')”»`, behind)
	switch {
	case c == '\n':
		return lineStop(rest[1:])
	case c == ';':
		return sentenceEnd
	case (c == '.' || c == '!' || c == '?' || c == '…') && apart:
		return sentenceEnd
	case c == ',':
		return comma
	case c == ':' && apart, c == '—', c == '–', c == '=', c == '→', c == '-' && apart, c == '+', c == '&', c == '|':
		return clauseEnd
	}
	return together
}

// lineStop is what the end of a line parts: a paragraph goes on in the next
// line, unless that is empty or begins an item or a row.
func lineStop(next string) stop {
	next = strings.TrimLeft(next, " \t")
	if next == "" || strings.ContainsRune("\n|", rune(next[0])) || len(next) > 1 && strings.ContainsRune("-*+", rune(next[0])) && next[1] == ' ' {
		return sentenceEnd
	}
	return together
}

// wordEnd is where a word or a number ends that begins at i. A point or comma
// between figures belongs to the number.
func wordEnd(text string, i int, figures bool) int {
	for i < len(text) {
		c, size := utf8.DecodeRuneInString(text[i:])
		behind, _ := utf8.DecodeRuneInString(text[i+size:])
		switch {
		case figures && unicode.IsDigit(c), !figures && unicode.IsLetter(c):
		case figures && (c == '.' || c == ',') && unicode.IsDigit(behind):
		case !figures && (c == '\'' || c == '’') && unicode.IsLetter(behind):
		default:
			return i
		}
		i += size
	}
	return i
}

// sentences parts tokens where a sentence ends.
func sentences(all []token) [][]token {
	var out [][]token
	begin := 0
	for i := range all {
		if i > begin && all[i].stop == sentenceEnd {
			out, begin = append(out, all[begin:i]), i
		}
	}
	if begin < len(all) {
		out = append(out, all[begin:])
	}
	return out
}
