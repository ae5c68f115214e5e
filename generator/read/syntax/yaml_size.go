package syntax

import "strings"

// maxEntries is how many lines may stand beside each other under one key: the
// library recurses over the keys of a map, and its time grows with their square.
// The largest register of a depot has some thousands.
const maxEntries = 20_000

// maxDepth is how deep brackets and indents may nest. A manual needs five.
const maxDepth = 40

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
