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
	for at := 0; at+length <= len(text); at++ {
		end := at + length
		if !begins(text, at) || !capitals(text[at:end]) || !standsAlone(text, at, end) {
			continue
		}
		f := Found{Start: at, End: end}
		f.Code, f.Err = Parse(text[at:end])
		if f.Err == nil || announces.MatchString(text[:at]) {
			all = append(all, f)
		}
	}
	return all
}

// length is how many characters a code has.
const length = 5

// begins says whether what may be meant for a code begins at a place: one of
// the four letters and a figure.
func begins(text string, at int) bool {
	switch text[at] {
	case 'P', 'C', 'B', 'U':
		return isFigure(text[at+1])
	}
	return false
}

// capitals says whether a word is of figures and capital letters alone.
func capitals(word string) bool {
	for i := range len(word) {
		if !isFigure(word[i]) && (word[i] < 'A' || word[i] > 'Z') {
			return false
		}
	}
	return true
}

func isFigure(b byte) bool { return '0' <= b && b <= '9' }

// standsAlone reports whether what is around a word leaves it a word of its
// own: no letter, no figure, and no sign that joins it to another word, as
// in a part number. A slash and an en dash do not join.
func standsAlone(text string, start, end int) bool {
	return !joinedBefore.MatchString(text[:start]) && !joinedBehind.MatchString(text[end:])
}

var (
	joinedBefore = regexp.MustCompile(`(?:[\pL\pM\d_.#]|[\pL\d]-)$`)
	joinedBehind = regexp.MustCompile(`^(?:[\pL\pM\d_]|[.\-][\pL\d])`)

	// announces is words that a code follows, English or Spanish.
	announces = regexp.MustCompile(`(?i)(?:^|[^\pL])(?:(?:fault|trouble) codes?|faults?|dtcs?|códigos? de (?:avería|error|fallo)|averías?):? ["“'(]?$`)
)
