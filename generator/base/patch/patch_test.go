package patch

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator/base/position"
)

func TestApply(t *testing.T) {
	for _, c := range []struct {
		name, old string
		pieces    []Piece
		want      string
	}{
		{"nothing", "\ufeffa\r\nb\rc\n", nil, "\ufeffa\r\nb\rc\n"},
		{"after a mark and a line end of two bytes", "\ufeffa\r\nb\r\n", []Piece{{3, 0, "!"}}, "\ufeffa\r\nb!\r\n"},
		{"a new line gets the line's end", "a\r\nb\rc\n", []Piece{{1, 0, "\nx\ny"}, {3, 0, "\nz"}, {5, 0, "\nq"}}, "a\r\nx\r\ny\r\nb\rz\rc\nq\n"},
		{"a new line at the end gets the first line's end", "a\r\nb", []Piece{{3, 0, "\nx"}}, "a\r\nb\r\nx"},
		{"a file of one line", "a", []Piece{{1, 0, "\nx"}}, "a\nx"},
		{"two pieces at one place stay in order", "ab", []Piece{{1, 0, "1"}, {1, 0, "2"}}, "a12b"},
		{"after U+0000, which is read as a sign of three bytes", "a\x00b", []Piece{{4, 0, "!"}}, "a\x00!b"},
		{"an empty file", "", []Piece{{0, 0, "x"}}, "x"},
		{"in place of what stands there", "\ufeffab\r\ncd\r\n", []Piece{{0, 2, "x"}, {3, 1, "yz"}}, "\ufeffx\r\nyzd\r\n"},
		{"and before it", "abc", []Piece{{1, 0, "1"}, {1, 1, "B"}, {2, 1, ""}}, "a1B"},
	} {
		t.Run(c.name, func(t *testing.T) {
			if got := string(Apply([]byte(c.old), c.pieces)); got != c.want {
				t.Errorf("got %q, want %q", got, c.want)
			}
		})
	}
}

// TestApplyIsTheSameInBytesAndInText puts pieces into files with all line ends
// at once: read afterwards, they are what the pieces make of the text.
func TestApplyIsTheSameInBytesAndInText(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		signs := rapid.SampledFrom([]string{"a", " ", "µ", "½", "\n", "\r\n", "\r", "\x00", "\ufeff"})
		old := strings.Join(rapid.SliceOf(signs).Draw(t, "old"), "")
		text := position.NewFile("x", old).Text
		pieces := rapid.SliceOfN(rapid.Custom(func(t *rapid.T) Piece { return drawPiece(t, text) }), 0, 4).Draw(t, "pieces")
		got := position.NewFile("x", string(Apply([]byte(old), pieces))).Text
		if want := put(text, pieces); got != want {
			t.Errorf("%q became %q, want %q", old, got, want)
		}
	})
}

// drawPiece draws a piece and a place between two signs; one that makes new
// lines stands at the end of a line that is not empty.
func drawPiece(t *rapid.T, text string) Piece {
	var places, ends []int
	for i, r := range text + "\n" {
		places = append(places, i)
		if r == '\n' && i > 0 && text[i-1] != '\n' {
			ends = append(ends, i)
		}
	}
	if len(ends) > 0 && rapid.Bool().Draw(t, "new line") {
		return Piece{rapid.SampledFrom(ends).Draw(t, "end"), 0, "\nnew\nlines"}
	}
	return Piece{rapid.SampledFrom(places).Draw(t, "place"), 0, "µ"}
}

// put is apply as simply as it can be written.
func put(text string, pieces []Piece) string {
	for i := len(text); i >= 0; i-- {
		for _, p := range slices.Backward(pieces) {
			if p.At == i {
				text = text[:i] + p.Text + text[i:]
			}
		}
	}
	return text
}
