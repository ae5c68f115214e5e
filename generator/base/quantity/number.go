package quantity

import (
	"strconv"
	"strings"
)

// maxDigits is what a float64 keeps exactly; no workshop measures as much.
const maxDigits = 15

// number is a number as it was typed, without its sign.
type number struct {
	value            float64
	digits, decimals int
	fraction         string // as typed, "1 1/2"; else empty
}

// numberToken returns the figures at the start of text with whatever joins
// them to further figures, so that "1,5" and "1.2.3" are refused whole.
func numberToken(text string) string {
	end := 0
	for end < len(text) {
		switch {
		case isDigit(text[end]):
			end++
		case end > 0 && end+1 < len(text) && strings.IndexByte(".,_'", text[end]) >= 0 && isDigit(text[end+1]):
			end += 2
		default:
			return text[:end]
		}
	}
	return text
}

// readNumber reads a token; a cause other than unexplained refuses it.
func readNumber(token string) (number, cause) {
	before, after, _ := strings.Cut(token, ".")
	switch {
	case strings.Contains(token, ","):
		return number{}, decimalComma
	case strings.ContainsAny(token, "_'"):
		return number{}, inPieces
	case strings.Contains(after, "."):
		return number{}, notPlain
	case len(before) > 1 && before[0] == '0':
		return number{}, leadingZero
	case len(before)+len(after) > maxDigits:
		return number{}, tooLong
	}
	value, err := strconv.ParseFloat(token, 64)
	if err != nil {
		return number{}, notPlain
	}
	return number{value: value, digits: significant(before, after), decimals: len(after)}, unexplained
}

// significant counts the digits from the first that is not zero.
func significant(before, after string) int {
	if before != "0" {
		return len(before) + len(after)
	}
	return max(1, len(strings.TrimLeft(after, "0")))
}

// fromComma writes a decimal comma as a point, for sentences in languages that
// use one. Before exactly three figures it may part the thousands instead:
// "1,500" is refused, "0,125" and "7,5" are not.
func fromComma(token string) (string, bool) {
	before, after, found := strings.Cut(token, ",")
	if !found {
		return token, true
	}
	if strings.ContainsAny(token, "._'") || strings.Contains(after, ",") || len(after) == 3 && before != "0" {
		return "", false
	}
	return before + "." + after, true
}

// afterNumber returns why a number is refused for what stands behind it:
// another number, a fraction, an exponent, a dash.
func afterNumber(token, rest string) cause {
	if rest == "" {
		return unexplained
	}
	if strings.IndexByte(".,_'/:^", rest[0]) >= 0 || token == "0" && (rest[0] == 'x' || rest[0] == 'X') {
		return notPlain
	}
	if (rest[0] == 'e' || rest[0] == 'E') && isDigitOrSign(rest[1:]) {
		return notPlain
	}
	after := strings.TrimLeftFunc(rest, isSpace)
	switch {
	case after == "":
		return unexplained
	case isDigit(after[0]):
		return inPieces
	case dashAt(after) > 0:
		return dashRange
	}
	return unexplained
}

func isDigitOrSign(text string) bool {
	return text != "" && (isDigit(text[0]) || text[0] == '+' || text[0] == '-')
}

// dashAt returns the bytes of the dash at the start of text: a hyphen, a
// minus sign or an en dash.
func dashAt(text string) int {
	for _, dash := range [...]string{"-", "−", "–"} {
		if strings.HasPrefix(text, dash) {
			return len(dash)
		}
	}
	return 0
}

// minusAt returns the bytes of the minus sign at the start of text. An en dash
// is not one: before a number it more often parts a sentence.
func minusAt(text string) int {
	if strings.HasPrefix(text, "–") {
		return 0
	}
	return dashAt(text)
}
