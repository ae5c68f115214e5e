package page

import (
	"reflect"
	"regexp"
	"strings"

	"baybinder/generator/language"
	"baybinder/generator/language/shape"
)

// borrows stands before a word of the program in a language that is not the
// page's, as opens does before a text of the shop's; closes stands behind it.
const borrows = "\ue002"

// Speaking is the language in which pages with a tag speak. Where the program
// has none of that tag, it is the nearest, with every word of it marked.
func Speaking(tag string) *shape.Language {
	l := language.Of(tag)
	if language.Known(tag) != nil {
		return l
	}
	marked := *l
	for _, words := range []any{&marked.Words, &marked.CloseOut, &marked.Jobs, &marked.Readable, &marked.Readings, &marked.Several, &marked.TimeLine, &marked.Worked} {
		markWords(reflect.ValueOf(words).Elem())
	}
	marked.Words.Lang = l.Code // a name of files, and no word
	return &marked
}

// markWords puts the signs around every word of a table.
func markWords(table reflect.Value) {
	for i := range table.NumField() {
		switch f := table.Field(i); f.Kind() {
		case reflect.Struct:
			markWords(f)
		case reflect.String:
			f.SetString(borrowed(f.String()))
		case reflect.Map:
			words := reflect.MakeMap(f.Type())
			for _, key := range f.MapKeys() {
				words.SetMapIndex(key, reflect.ValueOf(borrowed(f.MapIndex(key).String())))
			}
			f.Set(words)
		}
	}
}

var (
	filled    = regexp.MustCompile(`%[.0-9]*[sdf]|\{\d\}`)
	hasLetter = regexp.MustCompile(`\pL`)
)

// borrowed marks a text around what is filled into it, which is not borrowed.
func borrowed(text string) string {
	var out strings.Builder
	start := 0
	for _, at := range append(filled.FindAllStringIndex(text, -1), []int{len(text), len(text)}) {
		part := text[start:at[0]]
		if hasLetter.MatchString(part) {
			part = borrows + part + closes
		}
		out.WriteString(part + text[at[0]:at[1]])
		start = at[1]
	}
	return out.String()
}

// Borrows says that pages in the shop's own language have borrowed words.
func (s *Site) Borrows() bool { return language.Known(s.Language()) == nil }

// Unmarked is a text without the private signs, for where none are read.
func Unmarked(text string) string { return marks.Replace(bare(text)) }

var marks = strings.NewReplacer(opens, "", borrows, "", closes, "")
