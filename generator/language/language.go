// Package language holds the languages that the program speaks and finds the one that serves a tag.
//
// A language is one folder beside this file and one line in all. What a
// language has is said by shape.Language, the words of pages by words.
package language

import (
	"slices"
	"strings"

	bcp47 "golang.org/x/text/language"
	"golang.org/x/text/message"
	"golang.org/x/text/number"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/quantity"
	"baybinder/generator/language/english"
	"baybinder/generator/language/german"
	"baybinder/generator/language/shape"
	"baybinder/generator/language/spanish"
)

// all are the languages; the first serves where none is near.
var all = []*shape.Language{&english.Language, &spanish.Language, &german.Language}

var matcher = bcp47.NewMatcher(tags())

func tags() []bcp47.Tag {
	var out []bcp47.Tag
	for _, l := range all {
		out = append(out, bcp47.Make(l.Code))
	}
	return out
}

// All are the languages that the program speaks, English first.
func All() []*shape.Language { return slices.Clone(all) }

// Default is the language of a manual that names none.
func Default() *shape.Language { return all[0] }

// Of is the language that serves a tag: that of es for es-MX, and for one that
// the program does not speak the nearest.
func Of(tag string) *shape.Language {
	if l := coded(tag); l != nil {
		return l
	}
	_, i, _ := matcher.Match(bcp47.Make(tag))
	return all[i]
}

// Known is the language whose words are those of a tag; nil where the program
// does not speak it.
func Known(tag string) *shape.Language {
	if l := coded(tag); l != nil {
		return l
	}
	asked, sure := bcp47.Make(tag).Base()
	for _, l := range all {
		if asked.String() == l.Code && sure == bcp47.Exact {
			return l
		}
	}
	return nil
}

// coded is the language whose code a tag is, as nearly all are; nil elsewhere.
func coded(tag string) *shape.Language {
	for _, l := range all {
		if l.Code == tag {
			return l
		}
	}
	return nil
}

// Tag writes a BCP 47 tag the one way in which the manual's files and pages
// have it: es-MX of ES-mx. It is false for what is no tag.
func Tag(text string) (tag string, ok bool) {
	parsed, err := bcp47.Parse(text)
	if _, unknown := err.(bcp47.ValueError); err != nil && !unknown {
		return text, false
	}
	if tag = parsed.String(); tag == "und" {
		return strings.ToLower(text), true // of the right form, and nobody's language
	}
	return tag, true
}

// NameOf is a language's own name; its tag where the program does not speak it.
func NameOf(tag string) string {
	if l := Known(tag); l != nil {
		return l.Several.Name
	}
	return tag
}

// SignNumber is the number of the sign that a language calls so, "" for none.
func SignNumber(name string) string {
	for _, l := range all {
		for number, called := range l.Signs {
			if strings.EqualFold(called, name) {
				return number
			}
		}
	}
	return ""
}

// Marker is what parts a number in a language, as the Unicode locale data has it
// for every tag: the comma for es and de, the point for es-MX and de-CH.
func Marker(tag string) quantity.Marker {
	if strings.Contains(message.NewPrinter(bcp47.Make(tag)).Sprint(number.Decimal(0.5)), ",") {
		return quantity.Comma
	}
	return quantity.Point
}

// Limit is a limit in the words of a language: "at most 5 V".
func Limit(l quantity.Limit) finding.Spoken {
	return func(tag string) string {
		w := &Of(tag).Several
		return l.Worded(w.AtMost, w.AtLeast, w.To)
	}
}

// Stem is the stem of a form in the language that serves a tag.
func Stem(tag, form string) string { return Of(tag).Stem(form) }

// Supposes says whether a word begins a condition in one of the languages: once,
// unless, wenn, hasta.
func Supposes(word string) bool {
	return slices.ContainsFunc(all, func(l *shape.Language) bool { return l.Asides.Supposing[word] })
}

// IsOf says that a word is the of in some language: "socket of 17 mm", "vaso de
// 17 mm".
func IsOf(word string) bool {
	return slices.ContainsFunc(all, func(l *shape.Language) bool { return l.Numbers.Of == word })
}
