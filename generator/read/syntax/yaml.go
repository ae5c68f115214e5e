// Package syntax reads YAML with positions, CSV, and a procedure's Markdown as a tree of steps: what was written, not yet what it means.
//
// # Decided where the format is silent
//
// A file of more than 8 MB, one that is not UTF-8, a link out of the manual and a folder that
// cannot be read are `syntax`; hidden files are not read. Brackets and indents that nest deeper
// than 40 are `syntax`. A text such as `[x](time:20 min)`, whose address holds a space, is no link
// to Markdown and would be printed as it stands: it is `syntax`. `raw-html` stands at the opening
// tag; the closing one is not told again. A control character and a sign that turns the order of
// letters round are advice (`stray-sign`), once a file; in YAML a control character is `syntax`.
// Tables (GitHub style) are read.
package syntax

import (
	"strings"
	"unicode/utf8"

	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/lexer"
	"github.com/goccy/go-yaml/parser"
	"github.com/goccy/go-yaml/token"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
)

// DuplicateID is told at the second of two.
var DuplicateID = finding.Rule{
	Code:  "duplicate-id",
	Title: "An id or a field that is written twice",
	Why:   "Of two entries with one id only one can be meant; the other is read by people and by nobody else.",
	Mend:  "Keep one, or give the second an id of its own.",
}

// Kind says what a YAML node is.
type Kind uint8

// A scalar that was left out is Empty: "name:" or "name: ~" with nothing.
const (
	Empty Kind = iota
	Scalar
	Map
	List
)

// Words for messages.
func (k Kind) String() string {
	return [...]string{"nothing", "a text", "a map", "a list"}[k]
}

// Says is the kind, as words.
func (k Kind) Says() finding.Words { return finding.Say(k.String()) }

// Node is one YAML value. A scalar's Text is what stands in the file: 010 is
// "010", no is "no", null is "null".
type Node struct {
	Kind   Kind
	Text   string
	Quoted bool
	Pairs  []Pair  // of a map, as written
	Items  []*Node // of a list
	At     position.Pos
}

// Pair is one key of a map with its value.
type Pair struct {
	Key   string
	KeyAt position.Pos
	Value *Node
}

// Get is the value of a key, or nil.
func (n *Node) Get(key string) *Node {
	if n == nil {
		return nil
	}
	for i := range n.Pairs {
		if n.Pairs[i].Key == key {
			return n.Pairs[i].Value
		}
	}
	return nil
}

// YAML reads the piece of a file from offset start up to end. The node is nil
// where it could not be read; a key that is written twice is a finding, and
// its first value stands.
func YAML(f *position.File, start, end int) (*Node, []finding.Finding) {
	if node := plainMap(f, start, end); node != nil {
		return node, nil
	}
	return anyYAML(f, start, end)
}

// File reads a file that is one YAML document, as YAML does.
func File(f *position.File) (*Node, []finding.Finding) {
	node, findings := YAML(f, 0, len(f.Text))
	if node != nil {
		findings = append(findings, stray(f)...)
	}
	return node, findings
}

// anyYAML reads it with the library.
func anyYAML(f *position.File, start, end int) (*Node, []finding.Finding) {
	text := f.Text[start:end]
	y := &yamlReader{file: f}
	y.line, _ = f.LineCol(start)
	y.line--
	if at, deep := tooDeep(text); deep {
		return nil, []finding.Finding{Syntax.At(f.At(start+at, start+at+1), "this nests deeper than %d levels", maxDepth).
			WithMend("close the brackets, or split the entry")}
	}
	if at, many := tooMany(text); many {
		return nil, []finding.Finding{Syntax.At(f.At(start+at, start+at+1), "more than %d entries stand under one key", maxEntries).
			WithMend("share them out to several machines or manuals")}
	}
	if i := strings.IndexFunc(text, unprintable); i >= 0 {
		return nil, []finding.Finding{(&words{finding.Say("a sign that no printer knows"), finding.Say("take it out; it may have come along with a copied text")}).at(f.At(start+i, start+i+1))}
	}
	tokens := lexer.Tokenize(text)
	for _, t := range tokens {
		t.Position.Offset = y.start(t)
	}
	if y.refuseTokens(tokens); y.refused {
		return nil, y.findings
	}
	y.strict(tokens) // before the parser puts words of its own between them
	doc, err := parser.Parse(tokens, 0, parser.AllowDuplicateMapKey())
	if err != nil {
		return nil, []finding.Finding{y.failed(err)}
	}
	return y.document(doc, f.At(start, start))
}

// refusals are the signs to which YAML gives a meaning and the format none.
var refusals = map[token.Type]*words{
	token.AnchorType:     {finding.Say("an anchor (&) is not part of the format"), finding.Say("put the text in quotes, or write the value out at each place")},
	token.AliasType:      {finding.Say("an alias (*) is not part of the format"), finding.Say("put the text in quotes, or write the value out")},
	token.TagType:        {finding.Say("a tag (!) is not part of the format"), finding.Say("put the text in quotes, as in \"!cab\"")},
	token.MergeKeyType:   {finding.Say("a merge key (<<) is not part of the format"), finding.Say("write the fields out")},
	token.MappingKeyType: {finding.Say("a key after a question mark is not part of the format"), finding.Say("write a plain key: name: text")},
	token.DirectiveType:  {finding.Say("a text that starts with %s", "%"), finding.Say("put the text in quotes")},
}

// refuseTokens looks for them before anything is parsed: what follows a tag is
// read as part of it, and the fault would be told elsewhere.
func (y *yamlReader) refuseTokens(tokens token.Tokens) {
	for _, t := range tokens {
		if strings.ContainsRune(t.Value, 0) {
			y.refuse(y.pos(t), &words{finding.Say("a NUL, which ends a text early in other programs"), finding.Say("take it out")})
			continue
		}
		if w, is := refusals[t.Type]; is {
			y.refuse(y.pos(t), w)
		}
		if cutByRemark(t) {
			y.refuse(y.pos(t), &words{finding.Say("#%s is not read: a space and # begin a remark", number(t.Value)), finding.Say("put the text in quotes; where it is a remark, write a space behind the #")})
		}
	}
}

// cutByRemark says that a remark was meant as the rest of the text before it:
// "Hose #2". Two such texts would be one.
func cutByRemark(t *token.Token) bool {
	return t.Type == token.CommentType && number(t.Value) != "" && t.Prev != nil && isPlain(t.Prev) &&
		t.Prev.Position.Line == t.Position.Line
}

// number is the figures that a text begins with.
func number(text string) string {
	return text[:len(text)-len(strings.TrimLeft(text, "0123456789"))]
}

// unprintable signs are not part of YAML 1.2 (5.1, "Character Set").
func unprintable(r rune) bool {
	return r < ' ' && r != '\t' && r != '\n' || r == 0x7f || r > 0x7f && r < 0xa0 && r != 0x85
}

type yamlReader struct {
	file     *position.File
	line     int // lines of the file before the piece that is read
	refused  bool
	lineEnd  int // of the line of the last refusal
	findings []finding.Finding

	last place // where offset was last asked for
}

// place is a line and a column, both from 1, and the byte that stands there.
type place struct{ line, col, offset int }

func (y *yamlReader) document(doc *ast.File, at position.Pos) (*Node, []finding.Finding) {
	var node *Node
	for _, d := range doc.Docs {
		if d.Body == nil {
			continue
		}
		if node != nil {
			break // told by strict
		}
		node = y.node(d.Body)
	}
	if y.refused {
		return nil, y.findings
	}
	if node == nil {
		node = &Node{Kind: Empty, At: at}
	}
	return node, y.findings
}

// pos turns a token into a position, by the offset that start gave it.
func (y *yamlReader) pos(t *token.Token) position.Pos {
	start := min(t.Position.Offset, len(y.file.Text))
	length := len(t.Value)
	if trimmed := strings.TrimSpace(t.Origin); t.Type == token.SingleQuoteType || t.Type == token.DoubleQuoteType {
		length = len(trimmed)
	}
	at := y.file.At(start, start+length)
	at.End = at.Start + len(strings.TrimRight(firstLine(at.Text()), " \t"))
	return at
}

// start is the offset of a token in the file. The library's own drifts after
// block texts; its line and column, in code points, do not. But the column of
// a text without quotes moves with the white space behind it, and its line is
// the last of several: such a text starts behind the sign before it, or else
// its line.
func (y *yamlReader) start(t *token.Token) int {
	start := y.offset(t.Position.Line, t.Position.Column)
	if !isPlain(t) {
		return start + leading(y.file.Text[start:])
	}
	from := y.file.Offset(t.Position.Line+y.line, 1)
	if t.Prev != nil && opens(t.Prev) {
		from = t.Prev.Position.Offset + len(t.Prev.Value)
	}
	return from + leading(y.file.Text[min(from, len(y.file.Text)):])
}

// leading is how much white space a text begins with.
func leading(text string) int { return len(text) - len(strings.TrimLeft(text, " \t\n")) }

// offset is the byte of a token's line and column. It goes on from where it was
// last asked for: in a line of a megabyte it would take for ever to count from
// the start each time.
func (y *yamlReader) offset(line, col int) int {
	if line != y.last.line || col < y.last.col {
		y.last = place{line, 1, y.file.Offset(line+y.line, 1)}
	}
	text := y.file.Text
	for ; y.last.col < col && y.last.offset < len(text) && text[y.last.offset] != '\n'; y.last.col++ {
		_, size := utf8.DecodeRuneInString(text[y.last.offset:])
		y.last.offset += size
	}
	return y.last.offset
}

// isPlain says that a token is a text without quotes.
func isPlain(t *token.Token) bool {
	switch t.Type {
	case token.DocumentHeaderType, token.DocumentEndType, token.ImplicitNullType, token.InvalidType:
		return false
	}
	return t.CharacterType == token.CharacterTypeMiscellaneous
}

// opens says that a token is a sign behind which a text begins.
func opens(t *token.Token) bool {
	switch t.Type {
	case token.DocumentHeaderType, token.MappingValueType, token.SequenceEntryType, token.CollectEntryType, token.SequenceStartType, token.MappingStartType:
		return true
	}
	return false
}

// refuse notes a fault for which the whole text is not read, the first of each
// line: where one place is read wrongly, so is what follows it.
func (y *yamlReader) refuse(at position.Pos, w *words) { y.refuseAs(w.at(at)) }

func (y *yamlReader) refuseAs(f finding.Finding) {
	if y.refused && f.At.Start < y.lineEnd {
		return
	}
	y.refused = true
	y.lineEnd = f.At.Start + len(firstLine(y.file.Text[f.At.Start:]))
	y.findings = append(y.findings, f)
}

func (y *yamlReader) node(n ast.Node) *Node {
	t := n.GetToken()
	switch n := n.(type) {
	case *ast.MappingNode:
		return y.mapping(n)
	case *ast.MappingValueNode:
		return y.pairs([]*ast.MappingValueNode{n})
	case *ast.SequenceNode:
		return y.sequence(n)
	case *ast.LiteralNode:
		return &Node{Kind: Scalar, Quoted: true, Text: strings.TrimRight(n.Value.Value, "\n"), At: y.pos(t)}
	case *ast.NullNode:
		return y.null(t)
	case ast.ScalarNode:
		quoted := t.Type == token.SingleQuoteType || t.Type == token.DoubleQuoteType
		at := y.pos(t)
		return &Node{Kind: Scalar, Text: asWritten(at, t.Value), Quoted: quoted, At: at}
	}
	y.refuse(y.pos(t), &words{finding.Say("this way of writing is not part of the format"), finding.Say("write a text, a list or a map")})
	return &Node{Kind: Empty, At: y.pos(t)}
}

// null tells an empty value from the word null, which may be an id.
func (y *yamlReader) null(t *token.Token) *Node {
	at := y.pos(t)
	if strings.TrimSpace(t.Origin) == "" || !strings.HasPrefix(y.file.Text[at.Start:], t.Value) || t.Value == "" {
		at.End = at.Start
		return &Node{Kind: Empty, At: at}
	}
	return &Node{Kind: Scalar, Text: asWritten(at, t.Value), At: at}
}

// asWritten is the file's own words where they are the value, and not one more
// copy of them: most of a front matter is ids, and they are kept.
func asWritten(at position.Pos, value string) string {
	if words := strings.Trim(at.Text(), `"'`); words == value {
		return words
	}
	return value
}

func (y *yamlReader) sequence(n *ast.SequenceNode) *Node {
	out := &Node{Kind: List, At: y.pos(n.GetToken())}
	for _, item := range n.Values {
		out.Items = append(out.Items, y.node(item))
	}
	return out
}

func (y *yamlReader) mapping(n *ast.MappingNode) *Node {
	out := y.pairs(n.Values)
	if n.IsFlowStyle {
		out.At = y.pos(n.GetToken())
	}
	return out
}

func (y *yamlReader) pairs(values []*ast.MappingValueNode) *Node {
	out := &Node{Kind: Map}
	seen := make(map[string]position.Pos, len(values))
	for _, v := range values {
		key := v.Key.GetToken()
		if strings.Contains(key.Value, "\n") {
			y.refuse(y.pos(key), &words{finding.Say("a key over several lines"), finding.Say("put one key a line, with the same indent")})
			continue
		}
		at := y.pos(key)
		pair := Pair{Key: asWritten(at, key.Value), KeyAt: at, Value: y.node(v.Value)}
		if first, twice := seen[pair.Key]; twice {
			y.twice(pair, first)
			continue
		}
		seen[pair.Key] = pair.KeyAt
		out.Pairs = append(out.Pairs, pair)
	}
	if len(out.Pairs) > 0 {
		out.At = out.Pairs[0].KeyAt
	}
	return out
}

// twice tells of a key that its map has already: the first stands.
func (y *yamlReader) twice(p Pair, first position.Pos) {
	y.findings = append(y.findings, DuplicateID.At(p.KeyAt, "%s is written twice", p.Key).
		WithMend("keep one, or give the second an id of its own").See(first, "the first is here"))
}
