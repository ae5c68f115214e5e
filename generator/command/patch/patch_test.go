package patch

import (
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator/base/atomicfile"
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

// WriteAll makes all changes or none.
func TestWriteAllIsAllOrNothing(t *testing.T) {
	folder := t.TempDir()
	for name, text := range map[string]string{"a": "1", "b/c": "2", "b/d": "3", "taken": "4"} {
		if err := os.MkdirAll(filepath.Dir(filepath.Join(folder, name)), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join(folder, name), []byte(text), 0o640); err != nil {
			t.Fatal(err)
		}
	}
	before := listing(t, folder)
	changes := []atomicfile.Change{{Path: "a", Was: []byte("1"), Now: []byte("one")}, {Path: "b/c", To: "b/e", Was: []byte("2"), Now: []byte("two")}}
	for name, bad := range map[string]atomicfile.Change{
		"a path that is taken": {Path: "b/d", To: "taken", Was: []byte("3"), Now: []byte("three")},
		"a file that is gone":  {Path: "gone", Was: []byte("5"), Now: []byte("five")},
		"a folder that is not": {Path: "b/d", To: "nowhere/d", Was: []byte("3"), Now: []byte("three")},
	} {
		if err := atomicfile.WriteAll(folder, append(slices.Clone(changes), bad)); err == nil {
			t.Errorf("%s: no error", name)
		}
		if after := listing(t, folder); after != before {
			t.Errorf("%s:\n%s\nbecame\n%s", name, before, after)
		}
	}
	if err := atomicfile.WriteAll(folder, changes); err != nil {
		t.Fatal(err)
	}
	if got, want := listing(t, folder), "a -rw-r----- one\nb/d -rw-r----- 3\nb/e -rw-r----- two\ntaken -rw-r----- 4\n"; got != want {
		t.Errorf("%s\nwant\n%s", got, want)
	}
	if err := putBack(folder, changes); err != nil {
		t.Fatal(err)
	}
	if got := listing(t, folder); strings.ReplaceAll(got, "-rw-r--r--", "-rw-r-----") != before {
		t.Errorf("put back as\n%s", got)
	}
}

// listing is every file of a folder with its mode and text.
func listing(t *testing.T, folder string) string {
	t.Helper()
	var b strings.Builder
	err := filepath.WalkDir(folder, func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		info, err := d.Info()
		if err != nil {
			return err
		}
		text, err := os.ReadFile(name)
		rel, _ := filepath.Rel(folder, name)
		mode := info.Mode().String()
		if runtime.GOOS == "windows" {
			mode = "-rw-r-----"
		}
		b.WriteString(filepath.ToSlash(rel) + " " + mode + " " + string(text) + "\n")
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return b.String()
}
