package position

import (
	"strings"
	"testing"
	"unicode/utf8"
)

func TestLineColAndOffset(t *testing.T) {
	// Bytes: é is 2, 🔧 is 4, n with a tilde of its own 1 and 2.
	f := NewFile("a.md", "aé🔧x\n\nsen\u0303al\nend")
	for _, c := range []struct{ offset, line, col int }{
		{0, 1, 1}, {1, 1, 2}, {3, 1, 3}, {7, 1, 4},
		{8, 1, 5},              // the line's end belongs to the line
		{9, 2, 1},              // an empty line
		{10, 3, 1},             // s
		{13, 3, 4},             // the tilde is a code point of its own
		{15, 3, 5},             // a
		{18, 4, 1}, {21, 4, 4}, // the end of the file
	} {
		if line, col := f.LineCol(c.offset); line != c.line || col != c.col {
			t.Errorf("LineCol(%d) = %d:%d, want %d:%d", c.offset, line, col, c.line, c.col)
		}
		if got := f.Offset(c.line, c.col); got != c.offset {
			t.Errorf("Offset(%d, %d) = %d, want %d", c.line, c.col, got, c.offset)
		}
	}
}

func TestOffsetOfWhatIsNotThere(t *testing.T) {
	f := NewFile("a.md", "one\ntwo")
	for _, c := range []struct{ line, col, want int }{
		{1, 99, 3}, // past the end of the line: its end
		{2, 99, 7}, {3, 1, 7}, {0, 1, 7}, {-1, -1, 7}, {1, 0, 0}, {1, -5, 0},
	} {
		if got := f.Offset(c.line, c.col); got != c.want {
			t.Errorf("Offset(%d, %d) = %d, want %d", c.line, c.col, got, c.want)
		}
	}
}

func TestLine(t *testing.T) {
	f := NewFile("a.md", "one\n\nthree\n")
	for n, want := range map[int]string{0: "", 1: "one", 2: "", 3: "three", 4: "", 5: ""} {
		if got := f.Line(n); got != want {
			t.Errorf("Line(%d) = %q, want %q", n, got, want)
		}
	}
	if line, col := NewFile("empty", "").LineCol(0); line != 1 || col != 1 {
		t.Errorf("an empty file begins at %d:%d", line, col)
	}
}

// What a stage sees is UTF-8 without a mark, with LF alone, and without NUL.
func TestNewFileCleans(t *testing.T) {
	for in, want := range map[string]string{
		"\ufeffa\r\nb\r\n": "a\nb\n",
		"a\rb":             "a\nb",
		"a\r\r\nb":         "a\n\nb",
		"a\x00b":           "a\ufffdb",
		"a\ufeffb":         "a\ufeffb", // within a text it is a sign like any other
		"":                 "",
	} {
		if got := NewFile("a", in).Text; got != want {
			t.Errorf("NewFile(%q) = %q, want %q", in, got, want)
		}
	}
}

func TestPos(t *testing.T) {
	f := NewFile("a.md", "one two")
	at := f.At(4, 7)
	if at.Text() != "two" || at.Path() != "a.md" {
		t.Errorf("got %q in %q", at.Text(), at.Path())
	}
	if part := at.Part(1, 3); part.Text() != "wo" {
		t.Errorf("the part is %q", part.Text())
	}
	if far := f.At(-3, 99); far.Start != 0 || far.End != 7 {
		t.Errorf("At does not stay in the text: %v", far)
	}
	if back := f.At(5, 2); back.Start != 5 || back.End != 5 {
		t.Errorf("At ends before it starts: %v", back)
	}
	var nowhere Pos
	if line, col := nowhere.LineCol(); line != 1 || col != 1 || nowhere.Text() != "" || nowhere.Path() != "" {
		t.Error("the zero position is somewhere")
	}
}

// For every offset between two code points, Offset undoes LineCol.
func FuzzLineCol(f *testing.F) {
	for _, text := range []string{"", "\n", "a\nb", "é\n🔧", "\r\n\r", "\ufeffa", "\x00", strings.Repeat("x", 1000)} {
		f.Add(text, 0)
		f.Add(text, len(text)/2)
	}
	f.Fuzz(func(t *testing.T, text string, offset int) {
		if !utf8.ValidString(text) {
			t.Skip() // such a file is not read at all
		}
		file := NewFile("a", text)
		at := file.At(offset, offset)
		if at.Start < len(file.Text) && !utf8.RuneStart(file.Text[at.Start]) {
			t.Skip()
		}
		line, col := file.LineCol(at.Start)
		if got := file.Offset(line, col); got != at.Start {
			t.Errorf("Offset(LineCol(%d)) = %d in %q", at.Start, got, file.Text)
		}
		if col > utf8.RuneCountInString(file.Line(line))+1 {
			t.Errorf("column %d is past the end of line %d of %q", col, line, file.Text)
		}
	})
}
