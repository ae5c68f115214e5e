package syntax

import (
	"bytes"
	"strings"
	"unicode/utf8"

	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/extension"
	"github.com/yuin/goldmark/parser"
	"github.com/yuin/goldmark/renderer"
	"github.com/yuin/goldmark/renderer/html"
	"github.com/yuin/goldmark/text"
	"github.com/yuin/goldmark/util"

	"baybinder/generator/base/arena"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
)

// hole stands in rendered HTML for a link; U+0000 cannot stand in a file.
const hole = "\x00"

// markdown reads CommonMark with tables. It keeps no state and may be used by
// many readers at once.
var markdown = goldmark.New(
	goldmark.WithParser(parser.NewParser(
		parser.WithBlockParsers(parser.DefaultBlockParsers()...),
		parser.WithInlineParsers(parser.DefaultInlineParsers()...),
		parser.WithParagraphTransformers(util.Prioritized(references{}, 100)), // the library's own priority
	)),
	goldmark.WithExtensions(extension.NewTable(extension.WithTableCellAlignMethod(extension.TableCellAlignNone))),
	goldmark.WithRendererOptions(
		html.WithXHTML(),
		renderer.WithNodeRenderers(util.Prioritized(holes{}, 0)),
	),
)

// references takes the definitions of links out of a paragraph, as the library
// does; where none can stand it does not look for one.
type references struct{}

func (references) Transform(p *ast.Paragraph, reader text.Reader, pc parser.Context) {
	lines := p.Lines()
	for i := range lines.Len() {
		if line := lines.At(i); bytes.Contains(line.Value(reader.Source()), []byte("]:")) {
			parser.LinkReferenceParagraphTransformer.Transform(p, reader, pc)
			return
		}
	}
}

// holes renders links as holes, HTML as the text it is, and code by classes.
type holes struct{}

func (holes) RegisterFuncs(reg renderer.NodeRendererFuncRegisterer) {
	for _, kind := range []ast.NodeKind{ast.KindLink, ast.KindImage, ast.KindAutoLink} {
		reg.Register(kind, renderHole)
	}
	reg.Register(ast.KindRawHTML, renderRawHTML)
	reg.Register(ast.KindHTMLBlock, renderHTMLBlock)
	reg.Register(ast.KindFencedCodeBlock, renderFenced)
}

// renderHole writes the hole of a link, and behind it one for each picture
// inside it: a picture is bound like any other, and no link holds another.
func renderHole(w util.BufWriter, _ []byte, n ast.Node, entering bool) (ast.WalkStatus, error) {
	if entering {
		_, _ = w.WriteString(strings.Repeat(hole, 1+len(picturesIn(n))))
	}
	return ast.WalkSkipChildren, nil
}

// picturesIn are the pictures inside a link's words.
func picturesIn(n ast.Node) []*ast.Image {
	if n.Kind() != ast.KindLink {
		return nil
	}
	var out []*ast.Image
	_ = ast.Walk(n, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		if image, is := n.(*ast.Image); is && entering {
			out = append(out, image)
			return ast.WalkSkipChildren, nil
		}
		return ast.WalkContinue, nil
	})
	return out
}

func renderRawHTML(w util.BufWriter, src []byte, n ast.Node, entering bool) (ast.WalkStatus, error) {
	if entering {
		_, _ = w.Write(util.EscapeHTML(n.(*ast.RawHTML).Segments.Value(src)))
	}
	return ast.WalkSkipChildren, nil
}

func renderHTMLBlock(w util.BufWriter, src []byte, n ast.Node, entering bool) (ast.WalkStatus, error) {
	if entering {
		_, _ = w.Write(util.EscapeHTML(n.Lines().Value(src)))
	}
	return ast.WalkSkipChildren, nil
}

func renderFenced(w util.BufWriter, src []byte, n ast.Node, entering bool) (ast.WalkStatus, error) {
	if entering {
		writeCode(w, string(n.(*ast.FencedCodeBlock).Language(src)), string(n.Lines().Value(src)))
	}
	return ast.WalkSkipChildren, nil
}

// mdReader reads the body of one file, which begins at offset base.
type mdReader struct {
	file *position.File
	base int
	src  []byte
	buf  buffer
	said bytes.Buffer // the words of a node

	searched, blank int // between these two offsets no blank line begins

	all    arena.Of[model.Link]
	pieces arena.Of[model.Block]
	places arena.Of[*model.Link]
	parts  arena.Of[string]
	text   arena.Text
}

// buffer is a buffer in memory that the library's renderer writes to as it is.
type buffer struct{ bytes.Buffer }

func (b *buffer) Buffered() int { return 0 }
func (b *buffer) Flush() error  { return nil }

// block renders one block of the tree.
func (m *mdReader) block(n ast.Node) model.Block {
	para := n.Kind() == ast.KindParagraph || n.Kind() == ast.KindTextBlock || n.Kind() == ast.KindHeading
	rendered := ""
	if para {
		rendered = m.inside(n)
	} else {
		rendered = m.render(n)
	}
	at, parts := m.span(n), m.between(rendered)
	return model.Block{
		Para:  para,
		Parts: parts,
		Links: m.links(n, len(parts)-1),
		Plain: m.plain(n),
		Code:  m.code(n, at),
		At:    at,
	}
}

// code are the places of a block's code.
func (m *mdReader) code(n ast.Node, at position.Pos) []position.Pos {
	if n.Kind() != ast.KindFencedCodeBlock && !strings.ContainsAny(at.Text(), "`~") {
		return nil
	}
	var out []position.Pos
	_ = ast.Walk(n, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		if !entering {
			return ast.WalkContinue, nil
		}
		switch n.Kind() {
		case ast.KindCodeSpan:
			out = append(out, m.codeSpan(n))
		case ast.KindFencedCodeBlock:
			out = append(out, m.fenced(n))
		}
		return ast.WalkContinue, nil
	})
	return out
}

// codeSpan is the place of code in a line, from its first backtick to its last.
func (m *mdReader) codeSpan(n ast.Node) position.Pos {
	first, is := n.FirstChild().(*ast.Text)
	if !is {
		return m.span(n)
	}
	text, start := m.file.Text, m.base+first.Segment.Start
	end := m.base + n.LastChild().(*ast.Text).Segment.Stop
	for start > 0 && text[start-1] != '`' { // the space inside the opening backticks
		start--
	}
	for start > 0 && text[start-1] == '`' {
		start--
	}
	for end < len(text) && text[end] != '`' { // the space inside the closing backticks
		end++
	}
	for end < len(text) && text[end] == '`' {
		end++
	}
	return m.file.At(start, end)
}

// fenced is the place of a code block, from its opening fence to the end of its
// closing one.
func (m *mdReader) fenced(n ast.Node) position.Pos {
	at := m.span(n)
	if lines := n.Lines(); lines.Len() > 0 {
		at.End = m.base + lines.At(lines.Len()-1).Stop
	}
	if fence, _, _ := strings.Cut(m.file.Text[at.End:], "\n"); strings.Trim(fence, " \t>`~") == "" {
		at.End += len(fence)
	}
	return at
}

// between is what stands before, between and behind the holes.
func (m *mdReader) between(rendered string) []string {
	parts := m.parts.Slice(1 + strings.Count(rendered, hole))
	for i := range parts {
		parts[i], rendered, _ = strings.Cut(rendered, hole)
	}
	return parts
}

// render is the HTML of a node.
func (m *mdReader) render(n ast.Node) string {
	m.buf.Reset()
	m.write(n)
	return m.text.Keep(m.buf.Bytes())
}

// inside is the HTML of what a node holds.
func (m *mdReader) inside(n ast.Node) string {
	m.buf.Reset()
	for c := n.FirstChild(); c != nil; c = c.NextSibling() {
		m.write(c)
	}
	return m.text.Keep(bytes.TrimSuffix(m.buf.Bytes(), []byte("\n")))
}

// write adds the HTML of a node. A buffer does not fail to be written.
func (m *mdReader) write(n ast.Node) { _ = markdown.Renderer().Render(&m.buf, m.src, n) }

// links are the links of a node in reading order, one for each hole.
func (m *mdReader) links(n ast.Node, holes int) []*model.Link {
	if holes == 0 {
		return nil
	}
	out := m.places.Slice(holes)[:0]
	_ = ast.Walk(n, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		if !entering {
			return ast.WalkContinue, nil
		}
		switch n := n.(type) {
		case *ast.Link:
			out = append(out, m.link(n, model.UnknownLink, n.Destination, n.Title))
			for _, p := range picturesIn(n) {
				out = append(out, m.link(p, model.PictureLink, p.Destination, p.Title))
			}
		case *ast.Image:
			out = append(out, m.link(n, model.PictureLink, n.Destination, n.Title))
		case *ast.AutoLink:
			out = append(out, m.autoLink(n))
		default:
			return ast.WalkContinue, nil
		}
		return ast.WalkSkipChildren, nil
	})
	return out
}

func (m *mdReader) link(n ast.Node, kind *model.Kind, address, title []byte) *model.Link {
	at, written, from := m.linkPlace(n, string(address))
	l := m.all.New()
	l.Kind, l.Address, l.From, l.At = kind, resolve(written), from, at
	if len(title) > 0 {
		l.Besides().Title = resolve(string(title))
	}
	if l.Text = m.simple(n); l.Text == "" && n.HasChildren() {
		l.Text = m.plain(n)
		marked(l, m.words(n))
	}
	return l
}

// marked gives a link its words with their markup.
func marked(l *model.Link, words string) {
	if words != l.Text {
		l.Besides().HTML = words
	}
}

// simple is what stands in a node that holds one run of words and nothing that
// is written otherwise in HTML: most links. It is "" for every other node.
func (m *mdReader) simple(n ast.Node) string {
	only, is := n.FirstChild().(*ast.Text)
	if !is || only.NextSibling() != nil || only.Segment.Padding > 0 || only.SoftLineBreak() || only.HardLineBreak() {
		return ""
	}
	words := m.file.Text[m.base+only.Segment.Start : m.base+only.Segment.Stop]
	if strings.ContainsAny(words, "\\&<>\"") || !oneSpaced(words) {
		return ""
	}
	return words
}

// oneSpaced says that a text has white space between words alone, one space at
// a time.
func oneSpaced[T string | []byte](text T) bool {
	space := true // nothing stands before the first word
	for i := range len(text) {
		switch c := text[i]; {
		case c == ' ' && !space:
			space = true
		case c <= ' ' || c >= utf8.RuneSelf: // it may be a space of another kind
			return false
		default:
			space = false
		}
	}
	return !space
}

// blankLine is the offset of the first blank line behind another offset, or that
// of the text's end. Links come in order, and many stand before one blank line.
func (m *mdReader) blankLine(from int) int {
	if from < m.searched || from > m.blank {
		m.searched, m.blank = from, len(m.file.Text)
		if i := strings.Index(m.file.Text[from:], "\n\n"); i >= 0 {
			m.blank = from + i
		}
	}
	return m.blank
}

// linkPlace is the place of a link: to its closing bracket where that is found,
// else its first sign. Where its address stands in the link, it is the file's
// own words that come back, and not one more copy of them, and from is where
// they stand.
func (m *mdReader) linkPlace(n ast.Node, address string) (at position.Pos, written string, from int) {
	at = m.file.At(m.base+n.Pos(), m.base+n.Pos()+1)
	rest := m.file.Text[at.Start:m.blankLine(at.Start)]
	if ref := referenceOf(n); ref != nil {
		at.End = at.Start + max(1, referenceEnd(rest, ref))
		return at, address, 0
	}
	end, offset := inlineEnd(rest, address)
	at.End = at.Start + max(1, end)
	if end > 0 {
		from, written = at.Start+offset, rest[offset:offset+len(address)]
		return at, written, from
	}
	return at, address, 0
}

// referenceOf is how a link names its address, where that is written elsewhere.
func referenceOf(n ast.Node) *ast.ReferenceLink {
	switch n := n.(type) {
	case *ast.Link:
		return n.Reference
	case *ast.Image:
		return n.Reference
	}
	return nil
}

// referenceEnd is how long a link by reference is: [words][name], [name][] or
// [name]; 0 where that is not seen.
func referenceEnd(text string, ref *ast.ReferenceLink) int {
	closing := string(ref.Value) + "]"
	switch ref.Type {
	case ast.ReferenceLinkFull:
		closing = "][" + closing
	case ast.ReferenceLinkCollapsed:
		closing += "[]"
	}
	if i := strings.Index(text, closing); i >= 0 {
		return i + len(closing)
	}
	return 0
}

// inlineEnd is how long a link is whose address stands in it: [words](address),
// without what may follow the address, and where in it the address begins; both
// are 0 where that is not seen.
func inlineEnd(text, address string) (end, offset int) {
	for from := 0; ; {
		i := strings.Index(text[from:], "](")
		if i < 0 {
			return 0, 0
		}
		from += i + len("](")
		inside := strings.TrimLeft(text[from:], " \t\n")
		inside, pointed := strings.CutPrefix(inside, "<")
		if !strings.HasPrefix(inside, address) {
			continue
		}
		offset, inside = len(text)-len(inside), inside[len(address):]
		if pointed {
			inside = strings.TrimPrefix(inside, ">")
		}
		inside = strings.TrimPrefix(inside, ")")
		return len(text) - len(inside), offset
	}
}

// words is the HTML of a link's words; a picture among them is its words, as
// the picture itself follows the link.
func (m *mdReader) words(n ast.Node) string {
	if n.Kind() == ast.KindImage {
		return string(util.EscapeHTML([]byte(m.plain(n))))
	}
	out := m.inside(n)
	for _, p := range picturesIn(n) {
		out = strings.Replace(out, hole, string(util.EscapeHTML([]byte(m.plain(p)))), 1)
	}
	return out
}

// resolve takes backslashes and character references out of an address or a
// title: &#106;avascript: must not pass for something else.
func resolve(text string) string {
	if !strings.ContainsAny(text, "\\&") {
		return text
	}
	return string(resolved([]byte(text)))
}

// resolved is a text without backslashes and character references; the text
// itself where it has none.
func resolved(text []byte) []byte {
	if bytes.IndexByte(text, '\\') < 0 && bytes.IndexByte(text, '&') < 0 {
		return text
	}
	return util.ResolveEntityNames(util.ResolveNumericReferences(util.UnescapePunctuations(text)))
}

func (m *mdReader) autoLink(n *ast.AutoLink) *model.Link {
	label := string(n.Label(m.src))
	address := string(n.URL(m.src))
	if n.AutoLinkType == ast.AutoLinkEmail && !strings.HasPrefix(address, "mailto:") {
		address = "mailto:" + address
	}
	start := m.base + n.Pos()
	l := &model.Link{
		Kind: model.UnknownLink, Address: address, From: start + len("<"), Text: label,
		At: m.file.At(start, start+len(label)+len("<>")),
	}
	marked(l, string(util.EscapeHTML([]byte(label))))
	return l
}

// plain is the words of a node, white space made one.
func (m *mdReader) plain(n ast.Node) string {
	b := &m.said
	b.Reset()
	_ = ast.Walk(n, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		if !entering {
			if n.Type() == ast.TypeBlock {
				b.WriteByte(' ')
			}
			return ast.WalkContinue, nil
		}
		switch n := n.(type) {
		case *ast.Text:
			b.Write(resolved(n.Segment.Value(m.src)))
			if n.SoftLineBreak() || n.HardLineBreak() {
				b.WriteByte(' ')
			}
		case *ast.String:
			b.Write(n.Value)
		case *ast.AutoLink:
			b.Write(n.Label(m.src))
		case *ast.FencedCodeBlock, *ast.CodeBlock:
			b.Write(n.Lines().Value(m.src))
		}
		return ast.WalkContinue, nil
	})
	said := bytes.TrimSpace(b.Bytes())
	if oneSpaced(said) {
		return m.text.Keep(said)
	}
	return strings.Join(strings.Fields(string(said)), " ")
}

// span is the place of a block: from its first to its last line of text.
func (m *mdReader) span(n ast.Node) position.Pos {
	start, end := -1, -1
	_ = ast.Walk(n, func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		if !entering {
			return ast.WalkContinue, nil
		}
		if p := n.Pos(); p >= 0 && (start < 0 || p < start) {
			start = p
		}
		if n.Type() == ast.TypeBlock && n.Lines() != nil && n.Lines().Len() > 0 {
			end = max(end, n.Lines().At(n.Lines().Len()-1).Stop)
			return intoBlocks(n), nil // what stands in its lines stands behind its first sign
		}
		return ast.WalkContinue, nil
	})
	return m.file.At(m.base+start, m.base+max(start, end))
}
