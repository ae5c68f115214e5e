// Package syntax reads YAML with positions, CSV, and a procedure's Markdown as a tree of steps: what was written, not yet what it means.
//
// # Decided where the format is silent
//
// A file of more than 8 MB, one that is not UTF-8, a link out of the manual and a folder that
// cannot be read are `syntax`; hidden files are not read. Brackets and indents that nest deeper
// than 40 are `syntax`. A text such as `[x](time:20 min)`, whose address holds a space, is no link
// to Markdown and would be printed as it stands: it is `syntax`. `raw-html` stands at the opening
// tag; the closing one is not told again. Tables (GitHub style) are read.
package syntax

import (
	"errors"
	"regexp"
	"strings"
	"unicode/utf8"

	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/lexer"
	"github.com/goccy/go-yaml/parser"
	"github.com/goccy/go-yaml/token"

	yaml "github.com/goccy/go-yaml"

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

// maxEntries is how many lines may stand beside each other under one key: the
// library recurses over the keys of a map, and its time grows with their square.
// The largest register of a depot has some thousands.
const maxEntries = 20_000

// maxDepth is how deep brackets and indents may nest. A manual needs five.
const maxDepth = 40

// YAML reads the piece of a file from offset start up to end. The node is nil
// where it could not be read; a key that is written twice is a finding, and
// its first value stands.
func YAML(f *position.File, start, end int) (*Node, []finding.Finding) {
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

// tooDeep looks for brackets or indents that nest without end: the library
// recurses over them.
func tooDeep(text string) (at int, deep bool) {
	depth, indent, atStart := 0, 0, true
	for i := 0; i < len(text); i++ {
		switch c := text[i]; {
		case c == '\n':
			indent, atStart = 0, true
			continue
		case atStart && (c == ' ' || c == '-' || c == '?'):
			if indent++; indent > 4*maxDepth {
				return i, true
			}
			continue
		case c == '[' || c == '{':
			if depth++; depth > maxDepth {
				return i, true
			}
		case (c == ']' || c == '}') && depth > 0:
			depth--
		}
		atStart = false
	}
	return 0, false
}

// tooMany looks for the line that is one too many of those that stand equally far
// in under one key.
func tooMany(text string) (at int, many bool) {
	type level struct{ indent, lines int }
	levels := []level{{}}
	for line := range strings.Lines(text) {
		words := strings.TrimLeft(line, " ")
		indent := len(line) - len(words)
		if words == "\n" || strings.HasPrefix(words, "#") {
			at += len(line)
			continue
		}
		for len(levels) > 1 && levels[len(levels)-1].indent > indent {
			levels = levels[:len(levels)-1]
		}
		if levels[len(levels)-1].indent < indent {
			levels = append(levels, level{indent: indent})
		}
		if levels[len(levels)-1].lines++; levels[len(levels)-1].lines > maxEntries {
			return at + indent, true
		}
		at += len(line)
	}
	return 0, false
}

// refusals are the signs to which YAML gives a meaning and the format none.
var refusals = map[token.Type]*words{
	token.AnchorType:     {finding.Say("an anchor (&) is not part of the format"), finding.Say("put the text in quotes, or write the value out at each place")},
	token.AliasType:      {finding.Say("an alias (*) is not part of the format"), finding.Say("put the text in quotes, or write the value out")},
	token.TagType:        {finding.Say("a tag (!) is not part of the format"), finding.Say("put the text in quotes: \"!cab\"")},
	token.MergeKeyType:   {finding.Say("a merge key (<<) is not part of the format"), finding.Say("write the fields out")},
	token.MappingKeyType: {finding.Say("a key after a question mark is not part of the format"), finding.Say("write a plain key: name: text")},
	token.DirectiveType:  {finding.Say("a text that starts with %%"), finding.Say("put the text in quotes")},
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
	}
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

// failed turns the library's error into a finding in our words.
func (y *yamlReader) failed(err error) finding.Finding {
	var bad *yaml.SyntaxError
	if !errors.As(err, &bad) || bad.Token == nil {
		return Syntax.At(y.file.At(y.file.Offset(y.line+1, 1), 0), "this file cannot be read from here on")
	}
	at := y.pos(bad.Token)
	w := inOurWords(bad.Message)
	if tab := y.tabBefore(at.Start); tab >= 0 {
		return tabIndent.at(y.file.At(tab, tab+1))
	}
	switch {
	case w == misplaced && y.tooFarIn(at):
		return deeper.at(at)
	case w == notEnded && pastedSpace.MatchString(at.Text()):
		return pasted.at(at)
	case w == notEnded && noSpaceColon.MatchString(at.Text()):
		return glued.at(at)
	case w == openMap:
		return w.at(y.opened(at))
	case w == secondColon:
		return y.colonAfter(at)
	case w == noEscape:
		at = y.file.At(strings.LastIndexByte(y.file.Text[:at.Start], '\\'), at.Start)
	}
	return w.at(at)
}

// noSpaceColon is a key with its text set against the colon.
var noSpaceColon = regexp.MustCompile(`^[A-Za-z0-9-]+:[^\s/]`)

// pastedSpace is a key with a space behind it that is none to YAML.
var pastedSpace = regexp.MustCompile(`^[A-Za-z0-9-]+:[\x{00A0}\x{2007}\x{202F}\x{2003}]`)

// tooFarIn says that a line begins further in than the key above it, which holds
// a text already: nothing can stand under that.
func (y *yamlReader) tooFarIn(at position.Pos) bool {
	line, col := at.LineCol()
	for line--; line > y.line; line-- {
		above := y.file.Line(line)
		words := strings.TrimLeft(above, " ")
		if words == "" || words[0] == '#' {
			continue
		}
		return len(above)-len(words) < col-1
	}
	return false
}

// opened is the bracket that the map at a place was opened with, where that is
// in a line above: the last one before the place that nothing closes.
func (y *yamlReader) opened(at position.Pos) position.Pos {
	depth := 0
	for i := at.Start - 1; i >= y.file.Offset(y.line+1, 1); i-- {
		switch y.file.Text[i] {
		case '}':
			depth++
		case '{':
			if depth--; depth >= 0 {
				continue
			}
			if line, _ := at.LineCol(); y.file.Offset(line, 1) > i {
				return y.file.At(i, i+1)
			}
			return at
		}
	}
	return at
}

// colonAfter is the finding for a colon that stands in the text at a place.
func (y *yamlReader) colonAfter(at position.Pos) finding.Finding {
	text := y.file.Text[at.Start:]
	i := strings.Index(strings.ReplaceAll(text, "\n", " ")+" ", ": ")
	if i < 0 {
		return secondColon.at(at)
	}
	colon := y.file.At(at.Start+i, at.Start+i+1)
	if strings.Contains(text[:i], "\n") {
		return goesOn.at(colon)
	}
	return secondColon.at(colon)
}

// words are a fault and its mend as a person at a desk would say them.
type words struct{ say, mend finding.Words }

func (w *words) at(at position.Pos) finding.Finding {
	return Syntax.At(at, "%s", w.say).WithMend("%s", w.mend)
}

var quoteMend = finding.Say("put the text in quotes where it holds a colon and a space, a comma inside { } or [ ], or starts with a sign")

var (
	secondColon = &words{finding.Say("a second colon in this line"), finding.Say("write a comma between two fields; %s", quoteMend)}
	goesOn      = &words{finding.Say("a colon in a line that continues the text above it"), finding.Say("indent it like the fields around it, or put the text in quotes")}
	tabIndent   = &words{finding.Say("a tab where spaces belong"), finding.Say("indent with spaces")}
	noEscape    = &words{finding.Say(`a \ that begins no known sign`), finding.Say("write the text in single quotes: '…'")}
	keptSign    = &words{finding.Say("a text that starts with a sign that YAML keeps for itself"), finding.Say("put the text in quotes")}
	deeper      = &words{finding.Say("this line stands further in than the one above it, which takes nothing under it"), finding.Say("begin it in the column of the keys around it; where # was taken away, take the space behind it away too")}
	notEnded    = &words{finding.Say("a key where the text before it has not ended"), finding.Say("put one key a line, with the same indent")}
	glued       = &words{finding.Say("a colon without a space after it"), finding.Say("write a space after the colon")}
	pasted      = &words{finding.Say("a space after the colon that is none: it was pasted from a word processor"), finding.Say("write a plain space after the colon")}
	misplaced   = &words{finding.Say("something that does not belong here"), finding.Say("look at the indent of this line and the one above; %s", quoteMend)}
	openMap     = &words{finding.Say("a map in { } that is not whole"), finding.Say("write key: value pairs with commas between, and } at the end")}
	openList    = &words{finding.Say("a list in [ ] that is not whole"), finding.Say("write commas between the entries, and ] at the end")}
)

// inOurWords says the library's more frequent errors; what it does not know is
// passed on as it is.
func inOurWords(message string) *words {
	for _, known := range []struct {
		has   string
		words *words
	}{
		{"mapping value is not allowed", secondColon},
		{"sequence end token", openList},
		{"']' must be specified", openList},
		{"flow map", openMap},
		{"'}' must be specified", openMap},
		{"could not find '", &words{finding.Say("a bracket that nothing opens"), finding.Say("take it out, or write the one that opens it")}},
		{"end character of", &words{finding.Say("a quoted text that is not closed"), finding.Say("write the closing quote")}},
		{"reserved character", keptSign},
		{"cannot start any token", tabIndent},
		{"unknown escape", noEscape},
		{"invalid key for this map", &words{finding.Say("a line that is no key of this map"), finding.Say("write key: value, with the indent of the lines above")}},
		{"unexpected key name", notEnded},
		{"value is not allowed", misplaced},
	} {
		if strings.Contains(message, known.has) {
			return known.words
		}
	}
	return &words{finding.Say("this cannot be read: %s", message), quoteMend}
}
