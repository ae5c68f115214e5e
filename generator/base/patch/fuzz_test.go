package patch

import (
	"strings"
	"testing"
	"unicode/utf8"

	"baybinder/generator/base/position"
)

// FuzzApply puts a hostile piece into hostile bytes: as the stages see the file,
// the piece stands where it was to stand, and all else as it was.
func FuzzApply(f *testing.F) {
	for _, old := range []string{"", "a\nb\n", "a\r\nb\r\n", "\ufeffa", "a\x00b", "ä\r\n\r\nb", "a\n\r\nb"} {
		f.Add(old, 1, 1, "x\ny")
		f.Add(old, 0, 0, "")
	}
	f.Fuzz(func(t *testing.T, old string, at, cut int, text string) {
		if !utf8.ValidString(old+text) || strings.ContainsAny(old, "\r") && !strings.Contains(old, "\r\n") || strings.ContainsAny(text, "\r\x00\ufeff") {
			t.Skip() // what is not UTF-8 is not read; a piece is the program's own text
		}
		seen := position.NewFile("a.md", old).Text
		if strings.Contains(strings.ReplaceAll(old, "\r\n", ""), "\r") || at < 0 || at > len(seen) || cut < 0 || cut > len(seen)-at || !boundary(seen, at) || !boundary(seen, at+cut) {
			t.Skip()
		}
		now := position.NewFile("a.md", string(Apply([]byte(old), []Piece{{At: at, Cut: cut, Text: text}}))).Text
		if want := seen[:at] + text + seen[at+cut:]; now != want {
			t.Errorf("%q with %q at %d in place of %d bytes is %q, want %q", old, text, at, cut, now, want)
		}
	})
}

// boundary says that an offset stands between two signs.
func boundary(text string, at int) bool { return at == len(text) || utf8.RuneStart(text[at]) }
