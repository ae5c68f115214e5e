package generator_test

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"

	"baybinder/generator"
)

// The page beside a procedure that is being written is its page in the site,
// byte for byte.
func TestTheWritersPageIsThePublishedOne(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	w := generator.NewWriting(generator.Options{Manual: "../content", Today: demoDay})
	if _, err := w.Whole(); err != nil {
		t.Fatal(err)
	}
	seen := 0
	for _, p := range w.Bench().Manual().Procedures {
		at, text := w.Page(p.File.Path)
		want, err := os.ReadFile(filepath.Join(site, filepath.FromSlash(at)))
		if err != nil {
			continue // a draft has no page
		}
		if seen++; !bytes.Equal(text, want) {
			t.Errorf("%s: the writer's page is another", at)
		}
	}
	if seen == 0 {
		t.Error("no page was looked at")
	}
}
