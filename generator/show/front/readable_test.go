package front

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/model"
	"baybinder/generator/show/page"
)

// long and short are sentences of one length in words of many and of few
// syllables.
const (
	long  = "Investigate considerable organizational interdependencies immediately thereafter.\n"
	short = "Put the two nuts in a dry can.\n"
)

// steps is a procedure with each line as a step.
func steps(front string, lines ...string) string {
	var out strings.Builder
	out.WriteString("---\n" + front + "\n---\n## Work\n\n")
	for i, line := range lines {
		fmt.Fprintf(&out, "%d. %s\n", i+1, strings.TrimSpace(line))
	}
	return out.String()
}

func readableSite() map[string]string {
	return map[string]string{
		"shop.yaml":           "title: Shop\nalso: [es]\n",
		"register/tools.yaml": "socket: { name: socket, kind: socket, fits: [13 mm], kept: bench }\n",
		"procedures/easy.md":  steps("title: Easy", slices.Repeat([]string{short}, 15)...),
		"procedures/hard.md":  steps("title: Hard", slices.Repeat([]string{long}, 20)...),
		"procedures/tiny.md":  steps("title: Tiny\ntools: [socket]", "Turn it with the [](tool:socket). [](time:2min)", "[Reason](why:), "+long, "[](step:end) Go on (not now) to `the end`, that is to say [here](see:easy)."),
		"procedures/gone.md":  steps("title: Gone\nstatus: retired\ninstead: easy", long),
		"procedures/tiny.es.md": steps("title: Pequeño", "Gírelo con la [](tool:socket). [](time:2min)", "[Motivo](why:), porque sí.",
			"[](step:end) Siga (ahora no) hasta `the end`, es decir [aquí](see:easy)."),
	}
}

// The hardest stands first, what is too short has no figure, each language has
// its own table, and the longest sentence leads to its step.
func TestHowHardTheStepsAreToRead(t *testing.T) {
	s := siteOf(t, readableSite())
	v := s.Snags(SnagPage{}).Readables
	if len(v) != 2 || v[0].Code != "en" || v[1].Code != "es" || v[0].More != "" {
		t.Fatalf("the tables are %+v", v)
	}
	var names []string
	for _, r := range v[0].Rows {
		names = append(names, r.Procedure.Name)
	}
	if !slices.Equal(names, []string{"Hard", "Easy", "Tiny"}) {
		t.Errorf("the order is %v", names)
	}
	hard, easy, tiny := plainRow(v[0].Rows[0]), plainRow(v[0].Rows[1]), plainRow(v[0].Rows[2])
	if hard.Rough || easy.Rough || !strings.HasPrefix(hard.Ease, "-") || !strings.HasPrefix(easy.Ease, "11") || easy.Longest != "8" || easy.Words != "120" {
		t.Errorf("hard is %+v, easy is %+v", hard, easy)
	}
	// "Turn it with the socket." and "Go on to |the end|, that is to say here.";
	// the reason, the time and what stands in brackets are not counted.
	if !tiny.Rough || tiny.Ease != v[0].TooShort || tiny.Words != "14" || tiny.Longest != "9" || tiny.Step != (page.Link{Name: "1.3", Address: "procedures/tiny.html#end"}) {
		t.Errorf("tiny is %+v", tiny)
	}
	if es := v[1].Rows; len(es) != 1 || es[0].Procedure != (page.Link{Name: "Pequeño", Address: "procedures/tiny.es.html"}) || es[0].Step.Address != "procedures/tiny.es.html#end" || plainRow(es[0]).Words != "10" {
		t.Errorf("in Spanish: %+v", es)
	}
}

// plainRow is a row whose numbers lead nowhere.
func plainRow(r ReadableRow) ReadableRow {
	r.Ease, r.Longest, r.Words = page.Unworked(r.Ease), page.Unworked(r.Longest), page.Unworked(r.Words)
	return r
}

// A Spanish shop's texts go by the Spanish formula, another language's by none.
func TestReadingByLanguage(t *testing.T) {
	text := steps("title: Uno", slices.Repeat([]string{"Ponga las dos tuercas en la caja.\n"}, 15)...)
	for language, want := range map[string]string{"es": "111", "fr": "no formula"} { // by hand: 206.835 - 7 - 62.3 · 10/7
		v := siteOf(t, map[string]string{"shop.yaml": "title: Shop\nlanguage: " + language + "\n", "procedures/a.md": text}).Snags(SnagPage{}).Readables
		if len(v) != 1 || page.Unmarked(v[0].Rows[0].Ease) != want || plainRow(v[0].Rows[0]).Longest != "7" {
			t.Errorf("in %s: %+v", language, v)
		}
	}
}

// Of many procedures the 50 hardest are listed, and the page says so.
func TestAtMostFiftyAreListed(t *testing.T) {
	files := map[string]string{"shop.yaml": "title: Shop\n"}
	for i := range hardest + 2 {
		files[fmt.Sprintf("procedures/p%d.md", i)] = steps("title: P", slices.Repeat([]string{short}, 15)...)
	}
	files["procedures/z.md"] = steps("title: Z", slices.Repeat([]string{long}, 20)...)
	v := siteOf(t, files).Snags(SnagPage{}).Readables[0]
	if len(v.Rows) != hardest || v.Rows[0].Procedure.Name != "Z" || v.More != "The 50 hardest of 53 procedures are listed." {
		t.Errorf("%d rows, %q first, %q", len(v.Rows), v.Rows[0].Procedure.Name, v.More)
	}
}

func TestPlainWordsOfMarkup(t *testing.T) {
	for markup, want := range map[string]string{
		"<p>A &amp; B &lt; <em>C</em>\nD</p>": "A & B < C D\n",
		"<ul><li>One</li><li>Two</li></ul>":   "\nOne\nTwo\n",
		"<code>start</code> now":              "`start` now",
	} {
		if got := string((&Pages{}).plain(nil, &model.Block{Parts: []string{markup}})); got != want+"\n" {
			t.Errorf("%q: %q, want %q", markup, got, want)
		}
	}
}
