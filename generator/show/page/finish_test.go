package page

import (
	"bytes"
	"testing"

	"baybinder/generator/trade/working"
)

// The signs become elements in text, and go from where none can stand.
func TestForeign(t *testing.T) {
	s := siteOf(t, map[string]string{})
	for from, want := range map[string]string{
		"<p>" + foreign("lid") + "</p>":                                    `<p><span lang="en">lid</span></p>`,
		`<a title="` + foreign("lid") + `">` + foreign("x") + `</a>`:       `<a title="lid"><span lang="en">x</span></a>`,
		"<title>" + foreign("lid") + "</title><b>" + foreign("x") + "</b>": `<title>lid</title><b><span lang="en">x</span></b>`,
		closes + "a" + foreign("b"):                                        `a<span lang="en">b</span>`,
		"plain":                                                            "plain",
		"a\x1b[2J\rb\x7fc\u0085d\te\nf\u00a0g":                             "a\ufffd[2J\ufffdb\ufffdc\ufffdd\te\nf\u00a0g", // controls: HTML Standard, 13.2.3.5
	} {
		var got bytes.Buffer
		s.Finish(&got, []byte(from), nil)
		if got.String() != want {
			t.Errorf("%q becomes %q, want %q", from, got.String(), want)
		}
	}
}

func foreign(text string) string { return opens + text + closes }

// One reader finds all signs: they begin alike and are of one length.
func TestSignsAreAlike(t *testing.T) {
	for _, sign := range []string{opens, closes, borrows, worksOut, isShown, wasShown, between, footHere} {
		if sign[0] != firstOfSign || len(sign) != len(opens) {
			t.Errorf("%q is not as the others", sign)
		}
	}
}

// A number in another language's text leads to its working, and the working is
// marked in its turn; in a title, and on a page without a foot, it stays plain.
func TestNumbersAndLanguagesOfOnePage(t *testing.T) {
	s := siteOf(t, map[string]string{})
	number := Worked(foreign("4 kg"), Computed{Title: foreign("Mass"), Working: working.Working{Formula: "m", Put: "2 · 2", Result: "4", Source: foreign("a book")}})
	foot := func(to *bytes.Buffer, w Workings) {
		for _, c := range w.List {
			to.WriteString(`<p id="` + c.Anchor + `">` + c.Title + " " + c.Working.Source + "</p>")
		}
	}
	link := `<a class="computed" href="#working-1"><span lang="en"><bdi>4 kg</bdi></span></a>`
	for from, want := range map[string]string{
		"<title>" + number + "</title><p>" + number + " and " + number + "</p>" + footHere + "<p>" + foreign("end") + "</p>": "<title>4 kg</title><p>" + link + " and " + link + `</p><p id="working-1"><span lang="en">Mass</span> <span lang="en">a book</span></p><p><span lang="en">end</span></p>`,
		"<p>" + number + "</p>":             `<p><span lang="en"><bdi>4 kg</bdi></span></p>`,
		"<p>none</p>" + footHere + "\ue123": "<p>none</p>\ue123",
	} {
		var got bytes.Buffer
		s.Finish(&got, []byte(from), foot)
		if got.String() != want {
			t.Errorf("%q becomes\n%s, want\n%s", from, got.String(), want)
		}
	}
}
