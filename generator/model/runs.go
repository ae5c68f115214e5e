package model

import (
	"html"
	"iter"
	"strings"
)

// Run is a stretch of a text: words, a mark (a tag of the markup) or, between
// the parts of a block, a link.
type Run struct {
	Markup string // as it stands in HTML
	Mark   bool
	Link   *Link // nil where it is none
}

// Words are the words of a run without markup; "" of a mark and of a link.
func (r Run) Words() string {
	if r.Mark {
		return ""
	}
	return html.UnescapeString(r.Markup)
}

// Name is the name of a mark: "em", "/li"; "" of words and of a link.
func (r Run) Name() string {
	if !r.Mark {
		return ""
	}
	name, _, _ := strings.Cut(strings.Trim(r.Markup, "<>"), " ")
	return name
}

// Value is what an attribute of a mark says; "" where the mark has none of that
// name.
func (r Run) Value(attribute string) string {
	if !r.Mark {
		return ""
	}
	_, rest, _ := strings.Cut(r.Markup, " "+attribute+`="`)
	value, _, _ := strings.Cut(rest, `"`)
	return html.UnescapeString(value)
}

// Emphasis says that a mark changes how words look and parts none.
func (r Run) Emphasis() bool {
	switch strings.TrimPrefix(r.Name(), "/") {
	case "em", "strong", "code", "del":
		return true
	}
	return false
}

// Runs are the runs of a block, its links in their places.
func (b *Block) Runs() iter.Seq[Run] {
	return func(yield func(Run) bool) {
		for i, part := range b.Parts {
			for r := range Runs(part) {
				if !yield(r) {
					return
				}
			}
			if i < len(b.Links) && !yield(Run{Link: b.Links[i]}) {
				return
			}
		}
	}
}

// Runs are the runs of a piece of HTML as the reader and the templates write it:
// no sign < but at the beginning of a tag, and none > in one.
func Runs(markup string) iter.Seq[Run] {
	return func(yield func(Run) bool) {
		for markup != "" {
			end := strings.IndexByte(markup, '<')
			mark := end == 0
			if mark {
				end = strings.IndexByte(markup, '>') + 1
			}
			if end <= 0 {
				end, mark = len(markup), false
			}
			if !yield(Run{Markup: markup[:end], Mark: mark}) {
				return
			}
			markup = markup[end:]
		}
	}
}

// Unmarked is the words of a piece of HTML without its markup.
func Unmarked(markup string) string {
	if !strings.ContainsAny(markup, "<&") {
		return markup
	}
	var out strings.Builder
	for r := range Runs(markup) {
		out.WriteString(r.Words())
	}
	return out.String()
}
