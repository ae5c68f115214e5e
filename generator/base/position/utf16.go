package position

import (
	"strings"
	"unicode/utf8"
)

// UTF16 tells the line and the column, both from 0, of a byte offset; a column
// counts UTF-16 code units, as editors do.
func (f *File) UTF16(offset int) (line, col int) {
	offset = min(max(offset, 0), len(f.Text))
	line, _ = f.LineCol(offset)
	start := f.index()[line-1]
	for _, r := range f.Text[start:offset] {
		col += units(r)
	}
	return line - 1, col
}

// FromUTF16 is the byte offset of a line and a column, both from 0, the column
// in UTF-16 code units. A place past the end of its line is the end of the line,
// one past the last line the end of the text; one within a sign is before it.
func (f *File) FromUTF16(line, col int) int {
	starts := f.index()
	if line < 0 {
		return 0
	}
	if line >= len(starts) {
		return len(f.Text)
	}
	rest, _, _ := strings.Cut(f.Text[starts[line]:], "\n")
	offset := 0
	for col > 0 && offset < len(rest) {
		r, size := utf8.DecodeRuneInString(rest[offset:])
		if col -= units(r); col < 0 {
			break
		}
		offset += size
	}
	return starts[line] + offset
}

// units is how many UTF-16 code units a code point takes.
func units(r rune) int {
	if r >= 0x10000 {
		return 2
	}
	return 1
}
