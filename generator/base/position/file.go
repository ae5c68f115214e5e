// Package position says where a text stands: byte offsets inside, lines and columns at the edge.
package position

import (
	"sort"
	"strings"
	"sync"
	"unicode/utf8"
)

// File is one text file of the manual, as the stages see it: UTF-8 without a
// byte-order mark, every line ended by LF.
type File struct {
	Path string // relative to the manual, with slashes: "procedures/press/isolate-press.md"
	Text string

	once  sync.Once
	lines []int // byte offset of the start of each line
}

// Pos is a piece of a file: the bytes from Start up to, not including, End.
// The zero Pos is nowhere.
type Pos struct {
	File       *File
	Start, End int
}

// NewFile makes a file of a text that is in memory already.
func NewFile(path, text string) *File {
	return &File{Path: path, Text: clean(text)}
}

// clean drops the byte-order mark and makes all line ends LF: positions would
// drift between readers that count CR and readers that do not.
func clean(text string) string {
	text = strings.TrimPrefix(text, "\ufeff")
	text = strings.ReplaceAll(text, "\x00", "\ufffd") // as CommonMark reads it
	if !strings.Contains(text, "\r") {
		return text
	}
	text = strings.ReplaceAll(text, "\r\n", "\n")
	return strings.ReplaceAll(text, "\r", "\n")
}

// At makes a position in f, kept within the text.
func (f *File) At(start, end int) Pos {
	start = min(max(start, 0), len(f.Text))
	return Pos{File: f, Start: start, End: min(max(end, start), len(f.Text))}
}

// LineCol tells the line and the column, both from 1, of a byte offset.
// A column counts code points.
func (f *File) LineCol(offset int) (line, col int) {
	starts := f.index()
	line = sort.SearchInts(starts, offset+1)
	return line, utf8.RuneCountInString(f.Text[starts[line-1]:offset]) + 1
}

// Offset is the byte offset of a line and a column, both from 1, the column in
// code points. A place past the end of the line is the end of the line.
func (f *File) Offset(line, col int) int {
	starts := f.index()
	if line < 1 || line > len(starts) {
		return len(f.Text)
	}
	offset := starts[line-1]
	for ; col > 1 && offset < len(f.Text) && f.Text[offset] != '\n'; col-- {
		_, size := utf8.DecodeRuneInString(f.Text[offset:])
		offset += size
	}
	return offset
}

// Line is the text of a line, counted from 1, without its end.
func (f *File) Line(n int) string {
	starts := f.index()
	if n < 1 || n > len(starts) {
		return ""
	}
	line, _, _ := strings.Cut(f.Text[starts[n-1]:], "\n")
	return line
}

func (f *File) index() []int {
	f.once.Do(func() {
		f.lines = append(f.lines, 0)
		for i := 0; i < len(f.Text); i++ {
			if f.Text[i] == '\n' {
				f.lines = append(f.lines, i+1)
			}
		}
	})
	return f.lines
}

// LineCol tells where the position starts; a position that is nowhere is 1:1.
func (p Pos) LineCol() (line, col int) {
	if p.File == nil {
		return 1, 1
	}
	return p.File.LineCol(p.Start)
}

// Text is what stands at the position.
func (p Pos) Text() string {
	if p.File == nil {
		return ""
	}
	return p.File.Text[p.Start:p.End]
}

// Path is the path of the position's file, or "" where it has none.
func (p Pos) Path() string {
	if p.File == nil {
		return ""
	}
	return p.File.Path
}

// Part is the position of the bytes [start,end) of p, counted from p's start.
func (p Pos) Part(start, end int) Pos {
	return Pos{File: p.File, Start: p.Start + start, End: p.Start + end}
}
