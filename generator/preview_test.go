package generator_test

import (
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"baybinder/generator"
)

var hidden = regexp.MustCompile(`[^{}]*\.preview[^{}]*\{[^{}]*display:\s*none`)

// What was not issued must not be taken for what was: a preview says so on
// every page, on the screen and on paper, and no other site does.
func TestEveryPageOfAPreviewSaysSo(t *testing.T) {
	t.Parallel()
	for _, preview := range []bool{true, false} {
		to := filepath.Join(t.TempDir(), "site")
		_, err := generator.Build(generator.Options{Manual: "../content", To: to, Today: demoDay, Preview: preview})
		must(t, err)
		all := pages(t, to)
		seen := 0
		for name, data := range all {
			if !strings.HasSuffix(name, ".html") {
				continue
			}
			seen++
			if marked := strings.Contains(string(data), `<p class="preview">`); marked != preview {
				t.Errorf("preview %v: %s is marked: %v", preview, name, marked)
			}
		}
		if seen == 0 {
			t.Fatal("there is no page")
		}
		for name, data := range all {
			if strings.HasSuffix(name, ".css") && hidden.Match(data) {
				t.Errorf("%s hides the mark", name)
			}
		}
	}
}
