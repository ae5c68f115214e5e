package theme

import (
	"bytes"
	"compress/gzip"
	"io/fs"
	"path"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/language"
)

// mostScript and mostStyle are what a page may load of each, compressed.
const mostScript, mostStyle = 24 << 10, 12 << 10

// TestScriptsAndStylesAreSmall: what a page at the bay loads stays small, with
// the words of any one language.
func TestScriptsAndStylesAreSmall(t *testing.T) {
	for _, l := range language.All() {
		files, err := Files(l)
		if err != nil {
			t.Fatal(err)
		}
		script, style := 0, 0
		for name, data := range files {
			switch {
			case strings.HasSuffix(name, ".js"):
				script += packed(t, data)
			case name == "baybinder.css":
				style += packed(t, data)
			}
		}
		t.Logf("%s: scripts %.1f kB, style %.1f kB compressed", l.Code, float64(script)/1024, float64(style)/1024)
		if script > mostScript || style > mostStyle || min(script, style) == 0 {
			t.Errorf("%s: scripts are %d bytes compressed, the style %d; %d and %d are allowed", l.Code, script, style, mostScript, mostStyle)
		}
	}
}

// TestEveryWordIsSentOnce: each word of the scripts has a short name of its own,
// and no long one is left; the words of each language are as many lines.
func TestEveryWordIsSentOnce(t *testing.T) {
	files, err := Files(language.All()...)
	if err != nil {
		t.Fatal(err)
	}
	for _, l := range language.All() {
		if lines := bytes.Count(files["words-"+l.Code+".js"], []byte(`\n`)) + 1; lines != len(shortNames)+1 { // and the one that parts them
			t.Errorf("%s: %d lines for %d words", l.Code, lines, len(shortNames))
		}
	}
	sent, seen := string(files["baybinder.js"]), map[string]string{}
	for name, short := range shortNames {
		if other, twice := seen[short]; twice {
			t.Errorf("%s and %s are both sent as %s", name, other, short)
		}
		seen[short] = name
		if !strings.Contains(sent, "."+short) || strings.Contains(sent, "."+name+",") {
			t.Errorf("%s is not sent as %s", name, short)
		}
	}
	if len(seen) < 100 {
		t.Errorf("only %d words are sent: the test looks at nothing", len(seen))
	}
}

// TestEveryScriptIsSent: each script is in the file that pages get, once.
func TestEveryScriptIsSent(t *testing.T) {
	all, err := fs.ReadDir(files, "scripts")
	if err != nil {
		t.Fatal(err)
	}
	var names []string
	for _, d := range all {
		names = append(names, strings.TrimSuffix(d.Name(), ".js"))
	}
	sent := slices.Sorted(slices.Values(scripts))
	if !slices.Equal(names, sent) {
		t.Errorf("the scripts are %v, sent are %v", names, sent)
	}
}

// Every component's style is in the style of every page, and those of plans and
// people in that of theirs.
func TestEveryComponentHasItsPlace(t *testing.T) {
	for folder, listed := range map[string][]string{"baybinder": components, "readings": ofReadings} {
		names, err := fs.Glob(files, "styles/"+folder+"/*.css")
		if err != nil {
			t.Fatal(err)
		}
		for _, name := range names {
			if c := strings.TrimSuffix(path.Base(name), ".css"); !slices.Contains(listed, c) {
				t.Errorf("theme.go does not say where the style %s stands", name)
			}
		}
		if len(names) != len(listed) {
			t.Errorf("%d styles of %s, %d listed", len(names), folder, len(listed))
		}
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
