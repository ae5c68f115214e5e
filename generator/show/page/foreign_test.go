package page

import "testing"

// The signs become elements in text, and go from where none can stand.
func TestForeign(t *testing.T) {
	s := siteOf(t, map[string]string{})
	for from, want := range map[string]string{
		"<p>" + foreign("lid") + "</p>":                                    `<p><span lang="en">lid</span></p>`,
		`<a title="` + foreign("lid") + `">` + foreign("x") + `</a>`:       `<a title="lid"><span lang="en">x</span></a>`,
		"<title>" + foreign("lid") + "</title><b>" + foreign("x") + "</b>": `<title>lid</title><b><span lang="en">x</span></b>`,
		closes + "a" + foreign("b"):                                        `a<span lang="en">b</span>`,
		"plain":                                                            "plain",
	} {
		if got := string(s.foreign([]byte(from))); got != want {
			t.Errorf("%q becomes %q, want %q", from, got, want)
		}
	}
}

func foreign(text string) string { return opens + text + closes }
