package page

import (
	"html"
	"strings"
	"unicode"

	"baybinder/generator/base/quantity"
)

// Joined is a list in a sentence.
func Joined(list []string) string { return strings.Join(list, ", ") }

// Duration writes seconds as hours and minutes.
func Duration(seconds int) string { return quantity.ElapsedText(seconds) }

// Phrase puts what is there of several texts behind each other.
func Phrase(texts ...string) string {
	var out []string
	for _, t := range texts {
		if t != "" {
			out = append(out, t)
		}
	}
	return strings.Join(out, "; ")
}

// Titled is a folder's name as a heading: "tug/battery" is "Tug: battery".
func Titled(topic string) string {
	text := strings.ReplaceAll(strings.ReplaceAll(topic, "/", ": "), "-", " ")
	r := []rune(text)
	if len(r) > 0 {
		r[0] = unicode.ToUpper(r[0])
	}
	return string(r)
}

// CompareText orders texts by their bytes.
func CompareText(a, b string) int { return strings.Compare(a, b) }

// Escaped is text made safe for a page.
func Escaped(text string) HTML { return HTML(html.EscapeString(strings.TrimSpace(text))) }
