package syntax

import "bytes"

// maxLevels is how deep lists and quotes may nest. A procedure needs three:
// the library's time grows with the square of the depth and more.
const maxLevels = 100

// deepLine looks for a line whose beginning opens more lists and quotes than
// anybody reads: each > is a level, and each list marker, and each two spaces
// of indent. It is the offset of the line.
func deepLine(text []byte) (at int, deep bool) {
	for at < len(text) {
		line := text[at:]
		if end := bytes.IndexByte(line, '\n'); end >= 0 {
			line = line[:end]
		}
		if levels(line) > maxLevels {
			return at, true
		}
		at += len(line) + 1
	}
	return 0, false
}

// levels counts the levels that a line may open at most.
func levels(line []byte) int {
	marks, spaces := 0, 0
	for i, c := range line {
		switch {
		case c == ' ':
			spaces++
		case c == '\t':
			spaces += 4
		case c == '>':
			marks++
		case c >= '0' && c <= '9':
		case bytes.IndexByte([]byte("-+*.)"), c) >= 0 && i+1 < len(line) && line[i+1] == ' ':
			marks++
		default:
			return max(marks, spaces/2)
		}
	}
	return max(marks, spaces/2)
}

// maxOpen is how many brackets may stand open in a block. A link within a text
// within brackets needs four: for each that stands open the library looks
// through the rest of the block.
const maxOpen = 100

// deepBracket looks for a bracket that stands in more open ones than anybody
// reads. An empty line ends a block, and all that is open in it. It is the
// bracket's offset.
func deepBracket(text []byte) (at int, deep bool) {
	open, blank := 0, true
	for i := 0; i < len(text); i++ {
		switch c := text[i]; c {
		case '\n':
			if blank {
				open = 0
			}
			blank = true
			continue
		case ' ', '\t':
			continue
		case '\\':
			if i+1 < len(text) && text[i+1] != '\n' {
				i++
			}
		case '[', '(':
			if open++; open > maxOpen {
				return i, true
			}
		case ']', ')':
			open = max(0, open-1)
		}
		blank = false
	}
	return 0, false
}
