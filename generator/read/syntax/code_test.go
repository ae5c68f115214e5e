package syntax

import (
	"strings"
	"testing"
)

func code(language, text string) string {
	var out strings.Builder
	writeCode(&out, language, text)
	return out.String()
}

// A log of a controller: time stamps, levels, values and codes each have a
// class of their own, and nothing is lost.
func TestFaultLogIsHighlighted(t *testing.T) {
	const log = "2026-05-04 07:12:03 panel=0417 limit=320 ok\nfault code P0301 0x1F # cold <start>\n"
	got := code("fault-log", log)
	for _, want := range []string{
		`<span class="ld">2026-05-04 07:12:03</span>`, `<span class="na">panel</span>`, `<span class="m">320</span>`,
		`<span class="kc">P0301</span>`, `<span class="mh">0x1F</span>`, `<span class="c"># cold &lt;start&gt;</span>`,
		`<span class="gr">fault</span>`, `<span class="gi">ok</span>`,
	} {
		if !strings.Contains(got, want) {
			t.Errorf("no %s in %s", want, got)
		}
	}
}

// Classes only: the pages' security policy allows no style in the page.
func TestCodeHasNoStyle(t *testing.T) {
	for _, language := range []string{"", "fault-log", "json", "c", "no-such-language"} {
		got := code(language, "{\"a\": 1} // <b>\n")
		if strings.Contains(got, "style=") || strings.Contains(got, "<b>") {
			t.Errorf("%q: %s", language, got)
		}
		if !strings.Contains(got, "&lt;b&gt;") {
			t.Errorf("%q: the text is not there: %s", language, got)
		}
	}
	if !strings.Contains(code("json", "{}"), "<span class=") || strings.Contains(code("", "{}"), "<span") {
		t.Error("a known language is highlighted, no language is not")
	}
}
