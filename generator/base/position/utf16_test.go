package position

import (
	"testing"
	"unicode/utf16"
	"unicode/utf8"

	"pgregory.net/rapid"
)

// Known: SEEN.

// The columns are those of the standard library's own UTF-16.
func TestUTF16(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringOfN(rapid.RuneFrom([]rune("aé🔧\nñ\u0303 ")), 0, 30, -1).Draw(t, "text")
		f := NewFile("a.md", text)
		for offset := 0; offset <= len(f.Text); offset++ {
			if offset < len(f.Text) && !utf8.RuneStart(f.Text[offset]) {
				continue
			}
			line, col := f.UTF16(offset)
			n, _ := f.LineCol(offset)
			start := f.index()[n-1]
			if want := len(utf16.Encode([]rune(f.Text[start:offset]))); line != n-1 || col != want {
				t.Fatalf("%d of %q is %d:%d, want %d:%d", offset, text, line, col, n-1, want)
			}
			if back := f.FromUTF16(line, col); back != offset {
				t.Fatalf("%d:%d of %q is %d, want %d", line, col, text, back, offset)
			}
		}
	})
}

func TestUTF16PastTheEnd(t *testing.T) {
	f := NewFile("a.md", "a🔧\nbc")
	for _, c := range []struct{ line, col, want int }{
		{0, 99, 5}, {1, 99, 8}, {2, 0, 8}, {1 << 30, 1 << 30, 8}, {-1, 3, 0}, {0, -3, 0},
		{0, 2, 1}, // within the sign
	} {
		if got := f.FromUTF16(c.line, c.col); got != c.want {
			t.Errorf("%d:%d is %d, want %d", c.line, c.col, got, c.want)
		}
	}
}
