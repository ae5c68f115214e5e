package finding

import (
	"regexp"
	"strings"
)

// number is what a spreadsheet reads as a number: -20, +1.5, -1,000.
var number = regexp.MustCompile(`^[-+][0-9][0-9.,]*$`)

// Cell is a text for one cell of a table. What a spreadsheet would run as a
// formula begins with an apostrophe, which spreadsheets take as "this is text";
// numbers stay numbers.
func Cell(text string) string {
	runs := text != "" && strings.Contains("=+-@\t\r\n", text[:1]) && !number.MatchString(text)
	if text = Printable(text); runs {
		return "'" + text
	}
	return text
}
