package syntax

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"baybinder/generator/base/position"
)

// Nearly every front matter is lines of a key with a plain text, a list in [ ] or
// a map in { } of such texts. plainMap reads these without the library, to the
// same nodes; at the first sign of anything else it gives up, and the library
// reads the whole. FuzzPlainMap holds the two together.
//
//	title: Swap the pump
//	tools: [socket-10, wheel-chock: 4]
//	leaves: { supply: dead }

// plainReader is where plainMap stands.
type plainReader struct {
	file    *position.File
	at, end int
}

// plainMap reads the piece of a file from start up to end; nil where the library
// has to.
func plainMap(f *position.File, start, end int) *Node {
	r := &plainReader{f, start, end}
	out := &Node{Kind: Map}
	for r.at < r.end {
		pair, ok := r.pair(r.value)
		if !ok || !r.sign("\n") || len(out.Pairs) == maxEntries || !addNew(out, pair) {
			return nil
		}
	}
	if len(out.Pairs) == 0 {
		return nil
	}
	out.At = out.Pairs[0].KeyAt
	return out
}

// addNew adds a pair to a map that does not have its key.
func addNew(to *Node, p Pair) bool {
	if slices.ContainsFunc(to.Pairs, func(other Pair) bool { return other.Key == p.Key }) {
		return false
	}
	to.Pairs = append(to.Pairs, p)
	return true
}

// pair reads a key, ": " and its value.
func (r *plainReader) pair(value func() *Node) (Pair, bool) {
	key := r.text("")
	if key == nil || !r.sign(": ") {
		return Pair{}, false
	}
	v := value()
	return Pair{Key: key.Text, KeyAt: key.At, Value: v}, v != nil
}

// value reads what stands behind a key at the margin.
func (r *plainReader) value() *Node {
	switch {
	case r.sees('['):
		return r.list()
	case r.sees('{'):
		return r.braces()
	}
	return r.text(",;")
}

// inside reads a text in brackets.
func (r *plainReader) inside() *Node { return r.text("") }

// list reads [ ], whose entries are texts, or a text with a value each.
func (r *plainReader) list() *Node {
	out := &Node{Kind: List, At: r.file.At(r.at, r.at+1)}
	r.at++
	for {
		entry := r.inside()
		if entry != nil && r.sign(": ") {
			value := r.inside()
			if value == nil {
				return nil
			}
			entry = &Node{Kind: Map, Pairs: []Pair{{entry.Text, entry.At, value}}, At: entry.At}
		}
		if entry == nil {
			return nil
		}
		out.Items = append(out.Items, entry)
		if r.sign("]") {
			return out
		}
		if !r.sign(", ") {
			return nil
		}
	}
}

// braces reads { } on one line.
func (r *plainReader) braces() *Node {
	out := &Node{Kind: Map, At: r.file.At(r.at, r.at+1)}
	r.at++
	r.sign(" ")
	for {
		pair, ok := r.pair(r.inside)
		if !ok || !addNew(out, pair) {
			return nil
		}
		if r.sign("}") || r.sign(" }") {
			return out
		}
		if !r.sign(", ") {
			return nil
		}
	}
}

func (r *plainReader) sees(sign byte) bool { return r.at < r.end && r.file.Text[r.at] == sign }

// sign reads a sign, if it comes next.
func (r *plainReader) sign(sign string) bool {
	is := strings.HasPrefix(r.file.Text[r.at:r.end], sign)
	if is {
		r.at += len(sign)
	}
	return is
}

// text reads letters, figures and signs that mean nothing to YAML, with single
// spaces between them; nil where none comes next, or a word that YAML knows.
func (r *plainReader) text(signs string) *Node {
	start, from := r.at, r.file.Text[:r.end]
	end := start
	for i := start; i < r.end; {
		c, size := utf8.DecodeRuneInString(from[i:])
		switch {
		case 'a' <= c && c <= 'z', 'A' <= c && c <= 'Z', '0' <= c && c <= '9', c >= utf8.RuneSelf && unicode.IsLetter(c):
			end = i + size
		case i == start || i > end: // it begins with no sign, and a space and a sign behind one another are rare
			i = r.end
			continue
		case c == ' ':
		case strings.ContainsRune("-.()/", c) || strings.ContainsRune(signs, c):
			end = i + size
		default:
			i = r.end
			continue
		}
		i += size
	}
	text := from[start:end]
	if r.at = end; text == "" || known(text) {
		return nil
	}
	return &Node{Kind: Scalar, Text: text, At: r.file.At(start, end)}
}

// known are the words that YAML 1.2 reads as something else than a text (10.3.2).
func known(text string) bool {
	return len(text) == 4 && (strings.EqualFold(text, "null") || strings.EqualFold(text, "true")) || strings.EqualFold(text, "false")
}
