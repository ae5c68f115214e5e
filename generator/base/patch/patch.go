// Package patch changes pieces of a manual's files, and leaves every other byte as it is: the byte-order mark, line ends, spaces.
package patch

import (
	"cmp"
	"slices"
	"strings"

	"baybinder/generator/base/position"
)

// Piece is a text that is put into a file in place of what stands there. One
// that takes nothing out and begins with a line feed stands at the end of a line
// and makes new lines after it.
type Piece struct {
	At   int // byte offset in the text as the stages see it
	Cut  int // bytes taken out from there; mostly none
	Text string
}

// Apply puts pieces, which do not overlap, into a file's bytes. The offsets
// count in the text that source makes of the bytes: without a byte-order mark,
// every line end one LF, U+0000 as U+FFFD.
func Apply(old []byte, pieces []Piece) []byte {
	list := slices.Clone(pieces)
	slices.SortStableFunc(list, func(a, b Piece) int { return cmp.Compare(a.At, b.At) })
	var out []byte
	r := reader{bytes: old}
	out = append(out, r.mark()...)
	for {
		for len(list) > 0 && list[0].At <= r.seen {
			out = append(out, strings.ReplaceAll(list[0].Text, "\n", r.lineEnd())...)
			for to := list[0].At + list[0].Cut; r.seen < to && r.next() != nil; {
			}
			list = list[1:]
		}
		piece := r.next()
		if piece == nil {
			return out
		}
		out = append(out, piece...)
	}
}

// Applied is a file's text with pieces put in, as a file that can be read.
func Applied(f *position.File, pieces []Piece) *position.File {
	return position.NewFile(f.Path, string(Apply([]byte(f.Text), pieces)))
}

// reader goes through a file's bytes and knows where it is in the text that
// source makes of them.
type reader struct {
	bytes []byte
	pos   int // in the bytes
	seen  int // in the text
}

const byteOrderMark = "\ufeff"

// mark takes the byte-order mark, which the text does not have.
func (r *reader) mark() []byte {
	if strings.HasPrefix(string(r.bytes[:min(3, len(r.bytes))]), byteOrderMark) {
		r.pos = len(byteOrderMark)
	}
	return r.bytes[:r.pos]
}

// next takes the bytes that make one byte of the text, or one of its signs.
func (r *reader) next() []byte {
	if r.pos >= len(r.bytes) {
		return nil
	}
	from, length := r.pos, 1
	if end := lineEndAt(r.bytes, r.pos); end != "" {
		length = len(end)
	}
	r.pos += length
	r.seen++
	if r.bytes[from] == 0 {
		r.seen += len("\ufffd") - 1
	}
	return r.bytes[from:r.pos]
}

// lineEnd is the line end that new lines get here: that of this line, or of
// the first line where this one has none.
func (r *reader) lineEnd() string {
	if end := lineEndAt(r.bytes, r.pos); end != "" {
		return end
	}
	for i := range r.bytes {
		if end := lineEndAt(r.bytes, i); end != "" {
			return end
		}
	}
	return "\n"
}

func lineEndAt(b []byte, i int) string {
	switch {
	case i >= len(b):
		return ""
	case b[i] == '\n':
		return "\n"
	case b[i] == '\r' && i+1 < len(b) && b[i+1] == '\n':
		return "\r\n"
	case b[i] == '\r':
		return "\r"
	}
	return ""
}
