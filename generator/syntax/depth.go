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
