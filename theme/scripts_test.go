package theme

import (
	"bytes"
	"compress/gzip"
	"io/fs"
	"path"
	"slices"
	"strings"
	"testing"
)

// most is what the design allows all scripts together, compressed.
const most = 40 << 10

// The styles of one page stay within what the design allows, compressed.
func TestStylesAreSmall(t *testing.T) {
	files, err := Files()
	if err != nil {
		t.Fatal(err)
	}
	total := 0
	for name, data := range files {
		if strings.HasSuffix(name, ".css") {
			total += packed(t, data)
		}
	}
	t.Logf("%.1f kB compressed", float64(total)/1024)
	if total == 0 || total > 12<<10 {
		t.Errorf("the styles are %d bytes compressed", total)
	}
}

// Every component's style is in the style of every page.
func TestEveryComponentHasItsPlace(t *testing.T) {
	names, err := fs.Glob(files, "styles/baybinder/*.css")
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range names {
		if c := strings.TrimSuffix(path.Base(name), ".css"); !slices.Contains(components, c) {
			t.Errorf("theme.go does not say where the style of %s stands", c)
		}
	}
	if len(names) != len(components) {
		t.Errorf("%d styles, %d components", len(names), len(components))
	}
}

func packed(t *testing.T, data []byte) int {
	t.Helper()
	var out bytes.Buffer
	w := gzip.NewWriter(&out)
	if _, err := w.Write(data); err != nil {
		t.Fatal(err)
	}
	if err := w.Close(); err != nil {
		t.Fatal(err)
	}
	return out.Len()
}

// The scripts, with the words of every language, stay small.
func TestScriptsAreSmall(t *testing.T) {
	files, err := Files()
	if err != nil {
		t.Fatal(err)
	}
	total, scripts := 0, 0
	for name, data := range files {
		if !strings.HasSuffix(name, ".js") {
			continue
		}
		scripts++
		total += packed(t, data)
	}
	if scripts < 5 {
		t.Fatalf("only %d scripts: the test looks in the wrong place", scripts)
	}
	t.Logf("%d scripts, %.1f KB compressed", scripts, float64(total)/1024)
	if total >= most {
		t.Errorf("the scripts are %d bytes compressed, %d are allowed", total, most)
	}
}
