package page

import (
	"fmt"
	"html"
	"strings"

	"github.com/yuin/goldmark/util"

	"baybinder/generator/model"
	sentences "baybinder/generator/read/sentence"
)

// Text fills the holes of a block with what its links become on a page. What
// only marks a step and stands behind the end of a sentence is not printed in
// it: the step's boxes and marks say it.
func (s *Site) Text(up string, b *model.Block) HTML {
	if len(b.Links) == 0 {
		return HTML(strings.Join(b.Parts, ""))
	}
	var out strings.Builder
	out.Grow(lengthOf(b))
	hidden := sentences.Behind(b)
	for i, part := range b.Parts {
		if i > 0 && i < len(hidden) && hidden[i-1] && hidden[i] && onlySigns(part) {
			part = "" // a comma between two that are not printed
		}
		out.WriteString(part)
		if i < len(b.Links) && (hidden == nil || !hidden[i]) {
			s.fill(&out, up, b.Links[i])
		}
	}
	return HTML(strings.TrimSpace(out.String()))
}

// lengthOf is about how many bytes a block takes on a page.
func lengthOf(b *model.Block) int {
	n := 0
	for _, part := range b.Parts {
		n += len(part)
	}
	for _, l := range b.Links {
		n += len(l.HTML()) + 24 // a tool's signs, or the name of an entry
	}
	return n
}

// onlySigns says whether nothing is said between two links.
func onlySigns(part string) bool { return strings.Trim(part, " \n,;·") == "" }

// fill writes one link. The reader sees links to procedures and machines, tools
// as bold words (they are links in the kit), and plain words for the rest.
func (s *Site) fill(out *strings.Builder, up string, l *model.Link) {
	switch l.Kind {
	case model.PictureLink:
		s.picture(out, up, l)
		return
	case model.OutsideLink:
		anchor(out, "outside", escapeURL(l.Address), l.HTML(), l.Title())
		return
	case model.FileLink:
		s.file(out, up, l)
		return
	}
	words := l.HTML()
	if words == "" {
		words = html.EscapeString(s.RegisterWords(l))
	}
	if _, is := l.To.(*model.Tool); is && words != "" {
		out.WriteString(`<b class="tool">` + words + `</b>`)
		return
	}
	address, class := s.linked(up, l)
	if address == "" || words == "" {
		out.WriteString(words)
		return
	}
	anchor(out, class, address, words, "")
}

// linked is where a typed link leads to.
func (s *Site) linked(up string, l *model.Link) (address, class string) {
	switch to := l.To.(type) {
	case *model.Machine:
		return s.Address(up, to), l.Kind.Name
	case *model.Procedure:
		address = s.Address(up, to)
		if l.Step() != nil && address != "" {
			address += "#" + Anchor(l.Step())
		}
		return address, "procedure"
	}
	return "", ""
}

// RegisterWords are the words that an empty link prints: those that the shop
// wrote in a register, a machine file or a title.
func (s *Site) RegisterWords(l *model.Link) string {
	switch l.To.(type) {
	case nil, *model.Group, *model.Order:
		return ""
	}
	if l.Kind.Target == model.ToOutcome || l.Kind.Target == model.ToAnswer {
		return ""
	}
	return s.Name(l.To)
}

func anchor(out *strings.Builder, class, address, words, title string) {
	out.WriteString(`<a class="`)
	out.WriteString(class)
	out.WriteString(`" href="`)
	out.WriteString(address)
	if title != "" {
		out.WriteString(`" title="`)
		out.WriteString(html.EscapeString(title))
	}
	out.WriteString(`">`)
	out.WriteString(words)
	out.WriteString(`</a>`)
}

// picture is loaded with its page, not once it is near: a step that somebody jumps to
// would move away when those above it come, and a print would lack them.
func (s *Site) picture(out *strings.Builder, up string, l *model.Link) {
	out.WriteString(string(s.PictureOf(up, l.ID, l.Text)))
}

// highest is how many pixels high a picture is shown at most; the styles say 26rem.
const highest = 416

// PictureOf shows a picture of the manual, by its path there. It says its size, so
// that a page keeps its place and the text below does not move as it comes.
func (s *Site) PictureOf(up, name, words string) HTML {
	size := ""
	if known := s.Manual.Sizes[name]; known.Height > 0 {
		shown := known.Within(highest)
		size = fmt.Sprintf(` width="%d" height="%d"`, shown.Width, shown.Height)
	}
	return HTML(`<img class="picture" src="` + up + escapeURL(name) + `" alt="` + html.EscapeString(words) + `"` + size + `>`)
}

// file links to a file of the manual; a procedure's file is its page.
func (s *Site) file(out *strings.Builder, up string, l *model.Link) {
	address := up + escapeURL(l.ID)
	if l.To != nil {
		address = s.Address(up, l.To)
	}
	if address == "" {
		out.WriteString(l.HTML())
		return
	}
	anchor(out, "file", address, l.HTML(), l.Title())
}

func escapeURL(address string) string {
	return string(util.EscapeHTML(util.URLEscape([]byte(address), false)))
}

// Blank says that a block shows nothing: it held only links such as time:.
func Blank(h HTML) bool { return strings.TrimSpace(string(h)) == "" }

// Anchor is a step's id on its page: its name, else its number.
func Anchor(s *model.Step) string {
	if s.Name != "" {
		return s.Name
	}
	id := append(append(make([]byte, 0, 16), 's'), s.Number...)
	for i, c := range id {
		if c == '.' {
			id[i] = '-'
		}
	}
	return string(id)
}

// Hyphens makes a step's number fit for an id: 4.7 is 4-7.
func Hyphens(number string) string { return strings.ReplaceAll(number, ".", "-") }
