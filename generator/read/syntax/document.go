package syntax

import (
	"bytes"
	"regexp"
	"strings"
	"unicode"

	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/text"
	"golang.org/x/text/unicode/norm"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
)

// What can be wrong with a text before anything in it has a meaning.
var (
	Syntax = finding.Rule{
		Code:  "syntax",
		Title: "A file that cannot be read as what it is",
		Why:   "What cannot be read cannot be checked, and it is left out of everything that rests on it.",
		Mend:  "Mend the spelling at the place shown. Put text in quotes where it holds a colon and a space, a space and #, or starts with one of ! # & * @ % | > [ {.",
	}
	Heading = finding.Rule{
		Code:  "heading",
		Title: "A heading or a list that does not make phases and steps",
		Why:   "A heading at level 2 opens a phase and a numbered list under it holds the steps. Another level, a phase of the same name or a list before the first phase leaves steps without a number to call out.",
		Mend:  "Write ## before each phase's name, give each phase a name of its own, and put the numbered list under a phase.",
	}
	NoSteps = finding.Rule{
		Code:  "no-steps",
		Title: "A procedure without a step",
		Why:   "A page with nothing to do is found at the bay and helps nobody.",
		Mend:  "Write a phase (## Work) and a numbered list under it, or make it a draft.",
	}
	RawHTML = finding.Rule{
		Code:  "raw-html",
		Title: "HTML in a procedure",
		Why:   "HTML prints differently in every viewer, and it can carry scripts into the shop's pages.",
		Mend:  "Write it as Markdown. A comment belongs into the front matter, after #. A literal < is written \\<.",
	}
)

// Document is a procedure's file as it was written.
type Document struct {
	File    *position.File
	Front   *Node         // a map; nil where it did not parse
	FrontAt position.Pos  // its first line
	Intro   []model.Block // before the first phase
	Phases  []*Phase
	Broken  bool // what stands in it could not all be read
}

// Phase is what stands under one heading at level 2, in reading order.
type Phase struct {
	ID    string // "make-safe"
	Title model.Block
	At    position.Pos
	Lead  *model.Block // the first paragraph, where it stands before the first step
	Body  []Part
}

// Part is a step or a block of prose between steps.
type Part struct {
	Item  *Item
	Block *model.Block
}

// Item is a step or a sub-step: its own blocks, and the numbered list in it.
type Item struct {
	At     position.Pos
	Blocks []model.Block
	Subs   []*Item
}

// Read reads a procedure's file.
func Read(f *position.File) (*Document, []finding.Finding) {
	d := &Document{File: f, FrontAt: f.At(0, len(firstLine(f.Text)))}
	findings := d.readFront()
	if d.Front != nil {
		findings = append(findings, stray(f)...)
	}
	base := bodyStart(f.Text)
	m := &mdReader{file: f, base: base, src: []byte(f.Text[base:])}
	b := &docReader{mdReader: m, doc: d, seen: map[string]position.Pos{}}
	if at, deep := deepLine(m.src); deep {
		d.Broken = true
		return d, append(findings, Syntax.At(f.At(base+at, base+at+1), "this nests deeper than %d levels", maxLevels).
			WithMend("start lists and quotes nearer to the margin"))
	}
	if at, deep := deepBracket(m.src); deep {
		d.Broken = true
		return d, append(findings, Syntax.At(f.At(base+at, base+at+1), "more than %d brackets stand open here", maxOpen).
			WithMend("close them, or put an empty line between the paragraphs"))
	}
	tree := markdown.Parser().Parse(text.NewReader(m.src))
	b.body(tree)
	if bytes.IndexByte(m.src, '<') >= 0 {
		b.rawHTML(tree)
	}
	b.brokenLinks(tree)
	b.glued(tree)
	d.Broken = d.Broken || b.stray || b.unread
	if !b.stray && len(b.findings) == 0 && !d.hasSteps() && !neverClosed(f.Text) {
		b.add(NoSteps.At(d.FrontAt, "this procedure has no step").
			WithMend("write a phase (## Work) and a numbered list under it; while it is not finished, write status: draft"))
	}
	return d, append(findings, b.findings...)
}

func (d *Document) hasSteps() bool {
	for _, p := range d.Phases {
		for _, part := range p.Body {
			if part.Item != nil {
				return true
			}
		}
	}
	return false
}

const fence = "---\n"

// frontEnd finds the line that closes the front matter: the offset of its
// first byte, or -1 where there is none.
func frontEnd(text string) int {
	if !strings.HasPrefix(text, fence) {
		return -1
	}
	if strings.HasPrefix(text[len(fence):], fence) {
		return len(fence)
	}
	for from := len(fence) - 1; ; {
		i := strings.Index(text[from:], "\n---")
		if i < 0 {
			return -1
		}
		from += i + 1
		if rest := text[from+3:]; rest == "" || rest[0] == '\n' || strings.TrimRight(firstLine(rest), " \t") == "" {
			return from
		}
	}
}

func firstLine(s string) string {
	line, _, _ := strings.Cut(s, "\n")
	return line
}

func bodyStart(text string) int {
	end := frontEnd(text)
	switch {
	case end >= 0:
		return end + len(firstLine(text[end:])) + min(1, len(text)-end-len(firstLine(text[end:])))
	case neverClosed(text):
		return len(text) // nothing else can be read
	}
	return 0
}

// neverClosed says that a file begins with front matter that has no end.
func neverClosed(text string) bool { return strings.HasPrefix(text, fence) && frontEnd(text) < 0 }

func (d *Document) readFront() []finding.Finding {
	f := d.File
	end := frontEnd(f.Text)
	switch {
	case end >= 0:
		node, findings := YAML(f, len(fence), end)
		d.Front, d.Broken = node, node == nil
		if node != nil && node.Kind == Empty {
			node.Kind = Map
		}
		return findings
	case neverClosed(f.Text):
		d.Broken = true
		return []finding.Finding{Syntax.At(d.FrontAt, "the front matter has no end").WithMend("write a line --- after it")}
	}
	d.Front = &Node{Kind: Map, At: d.FrontAt}
	if first := firstLine(f.Text); first != "---" && strings.TrimSpace(first) == "---" {
		d.Front, d.Broken = nil, true
		return []finding.Finding{Syntax.At(d.FrontAt, "the line --- that opens the front matter has spaces in it").WithMend("take the spaces away")}
	}
	if first := strings.TrimSpace(firstLine(f.Text)); first != "---" && first != "" && strings.Trim(first, "-—–") == "" {
		d.Front, d.Broken = nil, true
		return []finding.Finding{Syntax.At(d.FrontAt, "the front matter opens with %s", first).WithMend("write --- above and below it: three hyphens, which a word processor may make one long dash of")}
	}
	return nil
}

// docReader sorts the blocks of a body into phases and steps.
type docReader struct {
	*mdReader
	doc      *Document
	phase    *Phase
	stray    bool // a numbered list stood before the first phase
	level    bool // a heading that is no phase, and would be one at level 2, was told and stands before it
	unread   bool // a link stood where it is not read as one
	seen     map[string]position.Pos
	findings []finding.Finding
}

func (d *docReader) add(f finding.Finding) { d.findings = append(d.findings, f) }

func (d *docReader) body(tree ast.Node) {
	for n := tree.FirstChild(); n != nil; n = n.NextSibling() {
		switch n := n.(type) {
		case *ast.Heading:
			d.heading(n)
		case *ast.List:
			d.list(n)
		case *ast.LinkReferenceDefinition:
		default:
			d.headingsInside(n)
			d.prose(d.block(n))
		}
	}
}

func (d *docReader) heading(n *ast.Heading) {
	title := d.block(n)
	at := d.file.At(d.base+n.Pos(), title.At.End)
	if n.Level == 1 && d.phase == nil {
		d.add(Heading.At(at, "a heading at level 1").WithMend("take it out where it is the job's name, which the front matter's title has; phases are headings at level 2: ## %s", title.Plain))
		return
	}
	if n.Level != 2 {
		d.level = d.phase == nil
		d.add(Heading.At(at, "a heading at level %d", n.Level).WithMend("phases are headings at level 2: ## %s", title.Plain))
		return
	}
	id := PhaseID(title.Plain)
	if first, twice := d.seen[id]; twice {
		d.add(Heading.At(at, "a second phase named %s", title.Plain).
			WithMend("give it a name of its own, or put its steps under the first").See(first, "the first is here"))
	} else if id == "" {
		d.add(Heading.At(at, "a phase without a name").WithMend("write what the phase is for: ## Make safe"))
	}
	d.seen[id] = at
	d.phase = &Phase{ID: id, Title: title, At: at}
	d.doc.Phases = append(d.doc.Phases, d.phase)
}

func (d *docReader) list(n *ast.List) {
	d.headingsInside(n)
	switch {
	case !n.IsOrdered():
		d.prose(d.block(n))
	case d.phase == nil:
		d.stray = true
		block := d.block(n)
		d.strayList(n)
		d.doc.Intro = append(d.doc.Intro, block)
	default:
		for c := n.FirstChild(); c != nil; c = c.NextSibling() {
			d.phase.Body = append(d.phase.Body, Part{Item: d.item(c)})
		}
	}
}

// strayList is told once: steps under a heading at another level have their phase
// once that is mended.
func (d *docReader) strayList(n *ast.List) {
	if d.level {
		return
	}
	d.add(Heading.At(d.file.At(d.base+n.Pos(), d.base+n.Pos()+1), "numbered steps before the first phase").
		WithMend("write a phase above them, such as ## Work; a list that is not steps starts its lines with -"))
}

func (d *docReader) item(n ast.Node) *Item {
	item := &Item{At: d.file.At(d.base+n.Pos(), d.base+n.Pos()+1), Blocks: d.pieces.Slice(n.ChildCount())[:0]}
	for c := n.FirstChild(); c != nil; c = c.NextSibling() {
		if list, ok := c.(*ast.List); ok && list.IsOrdered() {
			for sub := list.FirstChild(); sub != nil; sub = sub.NextSibling() {
				item.Subs = append(item.Subs, d.item(sub))
			}
			continue
		}
		item.Blocks = append(item.Blocks, d.block(c))
	}
	if len(item.Blocks) > 0 {
		item.At = item.Blocks[0].At
	}
	return item
}

// prose puts a block where it was read: before the phases, as the lead of a
// phase, or between its steps.
func (d *docReader) prose(b model.Block) {
	switch {
	case d.phase == nil:
		d.doc.Intro = append(d.doc.Intro, b)
	case b.Para && d.phase.Lead == nil && len(d.phase.Body) == 0:
		d.phase.Lead = &b
	default:
		d.phase.Body = append(d.phase.Body, Part{Block: &b})
	}
}

// headingsInside looks for headings inside lists and quotes.
func (d *docReader) headingsInside(n ast.Node) {
	_ = ast.Walk(n, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		if h, ok := n.(*ast.Heading); ok && entering {
			d.add(Heading.At(d.file.At(d.base+h.Pos(), d.base+h.Pos()+1), "a heading inside a list or a quote").
				WithMend("write it as text, or start it at the margin"))
		}
		return intoBlocks(n), nil
	})
}

// intoBlocks goes on into what may hold blocks.
func intoBlocks(n ast.Node) ast.WalkStatus {
	switch n.Kind() {
	case ast.KindParagraph, ast.KindTextBlock, ast.KindHeading:
		return ast.WalkSkipChildren
	}
	return ast.WalkContinue
}

func (d *docReader) rawHTML(tree ast.Node) {
	_ = ast.Walk(tree, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		if !entering {
			return ast.WalkContinue, nil
		}
		switch n := n.(type) {
		case *ast.HTMLBlock:
			raw := string(n.Lines().Value(d.src))
			d.unread = d.unread || strings.Contains(raw, "](")
			d.html(n.Pos(), raw)
		case *ast.RawHTML:
			if raw := string(n.Segments.Value(d.src)); !strings.HasPrefix(raw, "</") {
				d.html(n.Pos(), raw)
			}
		}
		return ast.WalkContinue, nil
	})
}

func (d *docReader) html(pos int, raw string) {
	at := d.file.At(d.base+pos, d.base+pos+len(firstLine(raw)))
	f := RawHTML.At(at, "HTML is not shown")
	if strings.HasPrefix(strings.TrimSpace(raw), "<!--") {
		d.add(f.WithMend("a note to yourself goes into the front matter, after #"))
		return
	}
	d.add(f.WithMend("write it as Markdown; a literal < is written \\<"))
}

// brokenLinks looks for what was meant as a typed link and is none, because a
// space stands in its address: it would be printed as it is.
func (d *docReader) brokenLinks(tree ast.Node) {
	_ = ast.Walk(tree, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		t, ok := n.(*ast.Text)
		if !ok || !entering || t.Parent().Kind() == ast.KindCodeSpan {
			return ast.WalkContinue, nil
		}
		value := t.Segment.Value(d.src)
		i := bytes.Index(value, []byte("]("))
		if i < 0 {
			d.parted(t.Segment.Start, value)
			return ast.WalkContinue, nil
		}
		middle := t.Segment.Start + i
		if start := openingBracket(d.src[:middle]); start >= 0 {
			d.unread = true
			f := Syntax.At(d.file.At(d.base+start, d.base+t.Segment.Stop), "this is not read as a link")
			if isPicture(d.src, start) {
				d.add(f.WithMend("write the file's name without spaces, and name the file so; or put < and > around it: ![words](<pictures/belt path.png>)"))
				return ast.WalkContinue, nil
			}
			d.add(f.WithMend("write the address without spaces and close it: [](time:20min); a literal bracket is written \\["))
		}
		return ast.WalkContinue, nil
	})
}

// partedLink is a typed link with a space between its words and its address.
var partedLink = regexp.MustCompile(`\] +\([a-z-]+:[a-z0-9#!=,-]*\)`)

// parted looks for such a link in a text that begins at a byte of the body.
func (d *docReader) parted(start int, text []byte) {
	if !bytes.Contains(text, []byte("] ")) {
		return
	}
	for _, m := range partedLink.FindAllIndex(text, -1) {
		if open := openingBracket(d.src[:start+m[0]]); open >= 0 {
			d.unread = true
			d.add(Syntax.At(d.file.At(d.base+open, d.base+start+m[1]), "this is not read as a link").
				WithMend("take out the space between ] and ("))
		}
	}
}

// gluedMark is the mark of a step or of a phase without a plain space behind it:
// "2.Mop", "##Work", or with a space of a word processor, which is none here.
var gluedMark = regexp.MustCompile(`^(\d{1,3}[.)]|#{2,6})([\x{00A0}\x{2007}\x{202F}\x{2003}]|\pL\pL|\[)`)

// glued looks for lines that were meant as a step or a phase and are read as a
// part of the text before them, so that nobody is told to do them.
func (d *docReader) glued(tree ast.Node) {
	_ = ast.Walk(tree, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		kind := n.Kind()
		if !entering || kind != ast.KindParagraph && kind != ast.KindTextBlock {
			return ast.WalkContinue, nil
		}
		for i := range n.Lines().Len() {
			line := n.Lines().At(i)
			text := line.Value(d.src)
			if len(text) == 0 || text[0] != '#' && (text[0] < '0' || text[0] > '9') {
				continue
			}
			if m := gluedMark.FindSubmatch(text); m != nil {
				at := d.base + line.Start
				d.add(Heading.At(d.file.At(at, at+len(m[1])), "%s without a plain space behind it: this is read as part of the text", m[1]).
					WithMend("write a space behind %s; one that was pasted from a word processor looks the same and is none", m[1]))
			}
		}
		return ast.WalkSkipChildren, nil // no block stands in a paragraph
	})
}

// isPicture says that a bracket opens the words of a picture.
func isPicture(text []byte, bracket int) bool { return bracket > 0 && text[bracket-1] == '!' }

// openingBracket finds the bracket of the same paragraph that a closing one at
// the end of the text belongs to, or -1. One after a backslash is a letter.
func openingBracket(text []byte) int {
	depth := 0
	for i := len(text) - 1; i >= 0; i-- {
		switch {
		case text[i] == '\n' && i > 0 && text[i-1] == '\n':
			return -1
		case i > 0 && text[i-1] == '\\':
		case text[i] == ']':
			depth++
		case text[i] == '[' && depth == 0:
			return i
		case text[i] == '[':
			depth--
		}
	}
	return -1
}

// PhaseID turns a phase's name into its id: the letters of any script, small,
// and 0 to 9; accents of Latin letters are dropped, the rest is made one hyphen.
// "Antes de empezar: ¡señal!" is "antes-de-empezar-senal", "Демонтаж" is
// "демонтаж".
func PhaseID(title string) string {
	latin := false
	return hyphened(title, func(r rune) (keep, join bool) {
		switch {
		case unicode.IsLetter(r):
			latin = unicode.Is(unicode.Latin, r)
			return true, true
		case unicode.IsMark(r):
			return !latin, true
		case r == zeroWidthNonJoiner, r == zeroWidthJoiner:
			return false, !latin // they stand inside words of some scripts
		}
		return r >= '0' && r <= '9', false
	})
}

// What shapes the letters beside it and is no letter.
const (
	zeroWidthNonJoiner = '\u200c'
	zeroWidthJoiner    = '\u200d'
)

// PlainID turns a text into an id of a to z, 0 to 9 and single hyphens, with
// accents dropped.
func PlainID(text string) string {
	return hyphened(text, func(r rune) (keep, join bool) {
		return r >= 'a' && r <= 'z' || r >= '0' && r <= '9', unicode.Is(unicode.Mn, r)
	})
}

// hyphened is a text in small letters, of which is kept what keeps says. Of the
// rest, what does not join parts the words, and is made one hyphen.
func hyphened(text string, keeps func(rune) (keep, join bool)) string {
	var b strings.Builder
	gap := false
	for _, r := range norm.NFD.String(strings.ToLower(text)) {
		keep, join := keeps(r)
		switch {
		case keep && gap && b.Len() > 0 && !unicode.IsMark(r):
			b.WriteByte('-')
			fallthrough
		case keep:
			gap = false
			b.WriteRune(r)
		case !join:
			gap = true
		}
	}
	return norm.NFC.String(b.String())
}
