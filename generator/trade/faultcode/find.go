package faultcode

import "regexp"

// Found is a code in a text.
type Found struct {
	Code       Code
	Start, End int   // bytes of the text
	Err        error // why it is no code, where the words before it say that it should be one
}

// Find returns the codes of a sentence, in order. A code stands on its own and
// in capitals: P50, C1, M8x1.25 and LW-P0101 hold none. What looks like a code
// and is none, P5123, is returned with its Err only behind words that announce
// one, such as "fault code": anything else may be a part number, which is not
// the business of this package.
func Find(text string) []Found {
	var all []Found
	for at := 0; at < len(text); {
		start, end := word(text, at)
		at = end
		if end-start != length || !looksRight(text[start:end]) || !standsAlone(text, start, end) {
			continue
		}
		f := Found{Start: start, End: end}
		f.Code, f.Err = Parse(text[start:end])
		if f.Err == nil || announces.MatchString(text[:start]) {
			all = append(all, f)
		}
	}
	return all
}

// length is how many characters a code has.
const length = 5

// word is the next run of letters and figures from a place on; at the end of
// the text it is empty.
func word(text string, from int) (start, end int) {
	start = from
	for start < len(text) && !plain(text[start]) {
		start++
	}
	end = start
	for end < len(text) && plain(text[end]) {
		end++
	}
	return start, end
}

func plain(b byte) bool { return isFigure(b) || 'A' <= b && b <= 'Z' || 'a' <= b && b <= 'z' }

func isFigure(b byte) bool { return '0' <= b && b <= '9' }

// looksRight says whether a word may be meant for a code: one of the four
// letters, a figure, and no small letter.
func looksRight(word string) bool {
	if word[0] != 'P' && word[0] != 'C' && word[0] != 'B' && word[0] != 'U' || !isFigure(word[1]) {
		return false
	}
	for i := range len(word) {
		if 'a' <= word[i] && word[i] <= 'z' {
			return false
		}
	}
	return true
}

// standsAlone reports whether what is around a word leaves it a word of its
// own: no letter with an accent, and no sign that joins it to another word, as
// in a part number. A slash and an en dash do not join.
func standsAlone(text string, start, end int) bool {
	return !joinedBefore.MatchString(text[max(0, start-8):start]) && !joinedBehind.MatchString(text[end:])
}

var (
	joinedBefore = regexp.MustCompile(`(?:[\pL\pM_.#]|[\pL\d]-)$`)
	joinedBehind = regexp.MustCompile(`^(?:[\pL\pM_]|[.\-][\pL\d])`)

	// announces is words that a code follows, English or Spanish.
	announces = regexp.MustCompile(`(?i)(?:^|[^\pL])(?:(?:fault|trouble) codes?|faults?|dtcs?|códigos? de (?:avería|error|fallo)|averías?):? ["“'(]?$`)
)
