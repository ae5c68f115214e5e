package syntax

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/goccy/go-yaml/token"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
)

// strict looks through the words of a text that parsed for what YAML 1.2
// forbids and the library lets pass. It reads such a place as something, and
// silently as something else than was meant: a comma that is missing makes two
// fields one text, and a tab between two figures makes them one number.
func (y *yamlReader) strict(tokens token.Tokens) {
	depth, block := 0, false
	for i, t := range tokens {
		switch t.Type {
		case token.SequenceStartType, token.MappingStartType:
			depth++
		case token.SequenceEndType, token.MappingEndType:
			depth--
		case token.SequenceEntryType:
			if depth > 0 {
				y.refuse(y.pos(t), &words{finding.Say("a dash inside brackets"), finding.Say("separate the entries of [ ] with commas")})
			}
		case token.MappingValueType:
			y.colon(t, depth)
		case token.DoubleQuoteType:
			y.indent(t)
			y.escapes(t)
		case token.DocumentHeaderType:
			y.second(t, i > 0)
		case token.DocumentEndType:
			y.second(t, slices.ContainsFunc(tokens[i+1:], func(t *token.Token) bool { return t.Type != token.CommentType }))
		case token.CommentType:
			continue
		case token.SingleQuoteType:
			y.indent(t)
		case token.CollectEntryType:
		case token.LiteralType, token.FoldedType:
			block = true
			continue
		default:
			if !block {
				y.plain(t, depth > 0)
			}
		}
		block = false
	}
}

func (y *yamlReader) second(t *token.Token, is bool) {
	if is {
		y.refuse(y.pos(t), &words{finding.Say("a second document in one file"), finding.Say("keep one document: remove the line %s", t.Value)})
	}
}

// colon asks for a space after a colon inside brackets: without one, and
// without quotes around the key, the colon is part of the text.
func (y *yamlReader) colon(t *token.Token, depth int) {
	at := y.pos(t)
	next := y.file.Text[at.End:]
	quoted := t.Prev != nil && (t.Prev.Type == token.DoubleQuoteType || t.Prev.Type == token.SingleQuoteType)
	if depth > 0 && !quoted && next != "" && !strings.ContainsAny(next[:1], " \t\n,]}") {
		y.refuse(at, &words{finding.Say("a colon without a space after it"), finding.Say("write a space after the colon")})
	}
}

// plain looks at a text without quotes.
func (y *yamlReader) plain(t *token.Token, inBrackets bool) {
	at := y.pos(t)
	raw := y.raw(at.Start, t.Value)
	sign := func(i int) position.Pos { return y.file.At(at.Start+i, at.Start+i+1) }
	tab, bracket := strings.IndexByte(raw, '\t'), strings.IndexAny(raw, "[]{}")
	switch {
	case tab >= 0:
		y.refuse(sign(tab), &words{finding.Say("a tab in a text"), finding.Say("write a space")})
	case strings.Contains(strings.ReplaceAll(raw, "\n", " ")+" ", ": "):
		y.refuseAs(y.colonAfter(at))
	case raw != "" && strings.ContainsAny(raw[:1], ",[]{}"):
		y.refuse(sign(0), keptSign)
	case inBrackets && bracket >= 0:
		y.refuse(sign(bracket), &words{finding.Say("a bracket in a text inside brackets"), finding.Say("put the text in quotes, or close the bracket")})
	default:
		y.indent(t)
	}
}

// indent asks that no tab stands before the first word of a line.
func (y *yamlReader) indent(t *token.Token) {
	if tab := y.tabBefore(y.pos(t).Start); tab >= 0 {
		y.refuse(y.file.At(tab, tab+1), tabIndent)
	}
}

// raw is what stands in the file for a text without quotes that begins at
// start: as much as holds the same signs, white space left aside.
func (y *yamlReader) raw(start int, value string) string {
	text := y.file.Text[start:]
	end := 0
	for _, r := range value {
		if unicode.IsSpace(r) {
			continue
		}
		i := strings.IndexRune(text[end:], r)
		if i < 0 {
			break
		}
		// a byte that is no sign reads as one of three bytes and stands as one
		_, size := utf8.DecodeRuneInString(text[end+i:])
		end += i + size
	}
	return text[:end]
}

// tabBefore is the first tab in the white space that a line begins with, where
// nothing else stands before start; else -1.
func (y *yamlReader) tabBefore(start int) int {
	before := y.file.Text[:start]
	words := strings.TrimRight(before, " \t")
	tab := strings.IndexByte(before[len(words):], '\t')
	if tab < 0 || words != "" && !strings.HasSuffix(words, "\n") {
		return -1
	}
	return len(words) + tab
}

// escapes looks at what stands after each backslash of a quoted text.
func (y *yamlReader) escapes(t *token.Token) {
	start := y.pos(t).Start + 1
	text := y.file.Text[min(start, len(y.file.Text)):]
	for i := 0; i < len(text) && text[i] != '"'; i++ {
		if text[i] != '\\' {
			continue
		}
		if !knownEscape(text[i+1:]) {
			y.refuse(y.file.At(start+i, start+i+2), noEscape)
		}
		i++
	}
}

// hexDigits is how many follow the letter of an escape.
var hexDigits = map[byte]int{'x': 2, 'u': 4, 'U': 8}

// knownEscape says whether what follows a backslash is an escape of YAML 1.2
// (5.7, "Escaped Characters").
func knownEscape(rest string) bool {
	if rest == "" {
		return false
	}
	n := hexDigits[rest[0]]
	if n == 0 {
		return strings.IndexByte("0abt\tnvfre \"/\\N_LP\n", rest[0]) >= 0
	}
	return len(rest) > n && strings.Trim(rest[1:n+1], "0123456789abcdefABCDEF") == ""
}
