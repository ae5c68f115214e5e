package syntax

import (
	"strings"
	"testing"
	"unicode/utf8"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
)

// hostile are texts that have broken readers: bombs, depth, signs that no
// editor shows, lines without an end. Each is tried in every reader.
var hostile = map[string]string{
	"an alias bomb":           "a: &a [x, x]\nb: &b [*a, *a]\nc: &c [*b, *b]\nd: [*c, *c, *c]\n",
	"a merge bomb":            "a: &a { x: 1 }\nb: { <<: *a, <<: *a }\n",
	"brackets without end":    strings.Repeat("[", 10_000),
	"braces without end":      strings.Repeat("{a: ", 10_000),
	"brackets and their ends": strings.Repeat("[", 10_000) + strings.Repeat("]", 10_000),
	"dashes without end":      strings.Repeat("- ", 10_000),
	"indents without end":     deep(func(i int) string { return strings.Repeat(" ", i) + "a:\n" }, 2_000),
	"quotes within quotes":    strings.Repeat("> ", 10_000) + "x",
	"lists within lists":      deep(func(i int) string { return strings.Repeat("  ", i) + "- x\n" }, 1_000),
	"numbers within numbers":  deep(func(i int) string { return strings.Repeat("   ", i) + "1. x\n" }, 500),
	"links within links":      strings.Repeat("[a](", 3_000),
	"pictures within words":   strings.Repeat("![", 10_000),
	"stars without end":       strings.Repeat("*a **b ", 5_000),
	"backticks without end":   strings.Repeat("`a``b```", 3_000),
	"tables without end":      strings.Repeat("|a", 5_000) + "\n" + strings.Repeat("|-", 5_000) + "\n",
	"a line of a megabyte":    strings.Repeat("é", 1<<19),
	"NUL":                     "a: \x00\n---\n1. \x00 [\x00](\x00)\n",
	"a mark and CR":           "\ufeff---\r\ntitle: a\r\n---\r\n## W\r\n\r\n1. x\r\n",
	"CR alone":                "---\rtitle: a\r---\r## W\r",
	"line and paragraph ends": "a: \u2028b\u2029c\u0085d\n",
	"quotes that never close": "a: \"\\\nb: '\n",
	"signs in keys":           "? [a, b]\n: {c: d}\n! x: y\n% z\n",
	"references":              strings.Repeat("&#0;&#1114112;&amp;&nonsense;", 200) + "\n",
	"references to nowhere":   strings.Repeat("[a]: <\n", 2_000) + "[a]\n",
}

func deep(line func(int) string, n int) string {
	var b strings.Builder
	for i := range n {
		b.WriteString(line(i))
	}
	return b.String()
}

// Every reader gets done with every hostile text: one that does not is ended with the
// whole run, which then says where it was.
func TestHostileTextsAreRead(t *testing.T) {
	for _, text := range hostile {
		for _, read := range readers {
			read(t, text)
		}
	}
}

// Alias bombs, and anything else by which a text grows, are refused before
// they grow.
func TestBombsAreRefused(t *testing.T) {
	for _, what := range []string{"an alias bomb", "a merge bomb", "brackets without end", "brackets and their ends", "dashes without end", "indents without end"} {
		f := position.NewFile("a.yaml", hostile[what])
		if node, findings := YAML(f, 0, len(f.Text)); node != nil || len(findings) == 0 {
			t.Errorf("%s is read", what)
		}
	}
}

// Lists and quotes that nest without end are told; a hundred levels are not.
func TestDeepMarkdownIsTold(t *testing.T) {
	for _, what := range []string{"quotes within quotes", "lists within lists", "numbers within numbers"} {
		d, findings := Read(position.NewFile("a.md", "---\ntitle: a\n---\n"+hostile[what]))
		if len(findings) != 1 || findings[0].Code != "syntax" || !d.Broken || d.Front.Get("title") == nil {
			t.Errorf("%s: %v", what, findings)
		}
	}
	ninety := deep(func(i int) string { return strings.Repeat("  ", i) + "- x\n" }, 90)
	if _, findings := Read(position.NewFile("a.md", "## W\n\n1. x\n\n"+ninety+"\n---\n"+strings.Repeat("> ", 90)+"x\n")); len(findings) > 0 {
		t.Errorf("ninety levels are told: %v", findings)
	}
}

var readers = map[string]func(*testing.T, string){
	"YAML":     readYAML,
	"CSV":      readCSV,
	"Markdown": readMarkdown,
}

func readYAML(t *testing.T, text string) {
	f := position.NewFile("a.yaml", text)
	node, findings := YAML(f, 0, len(f.Text))
	inside(t, f, findings)
	if node == nil && len(findings) == 0 {
		t.Errorf("nothing is read and nothing is told of %.200q", text)
	}
	if node != nil {
		nodeInside(t, f, node)
		if !strings.Contains(text, "\t") { // the library's columns drift behind a tab
			placesAreRight(t, node)
		}
	}
}

func nodeInside(t *testing.T, f *position.File, n *Node) {
	posInside(t, f, n.At)
	for _, item := range n.Items {
		nodeInside(t, f, item)
	}
	for _, p := range n.Pairs {
		posInside(t, f, p.KeyAt)
		nodeInside(t, f, p.Value)
	}
}

func readCSV(t *testing.T, text string) {
	f := position.NewFile("a.csv", text)
	table, findings := CSV(f, Columns{Need: []string{"a", "b"}})
	inside(t, f, findings)
	for _, row := range append(table.Rows, table.Header) {
		for _, c := range row {
			posInside(t, f, c.At)
		}
	}
	for _, row := range table.Rows {
		if len(row) != len(table.Header) {
			t.Errorf("a row of %d cells under a header of %d", len(row), len(table.Header))
		}
	}
}

func readMarkdown(t *testing.T, text string) {
	f := position.NewFile("a.md", text)
	d, findings := Read(f)
	inside(t, f, findings)
	if !d.Broken && d.Front == nil {
		t.Error("there is no front matter, and nothing is broken")
	}
	posInside(t, f, d.FrontAt)
	for _, l := range allLinks(d) {
		posInside(t, f, l.At)
		if l.From != 0 && (l.From <= l.At.Start || l.From > l.At.End) {
			t.Errorf("the address of a link at %d to %d stands at %d", l.At.Start, l.At.End, l.From)
		}
		if strings.Contains(l.HTML(), hole) {
			t.Errorf("a hole is left in the words of a link: %q", l.HTML())
		}
	}
	for _, b := range allBlocks(d) {
		posInside(t, f, b.At)
		for _, at := range b.Code {
			posInside(t, f, at)
		}
		if len(b.Parts) != len(b.Links)+1 {
			t.Errorf("%d parts and %d links in %q", len(b.Parts), len(b.Links), b.Plain)
		}
	}
}

func allBlocks(d *Document) []model.Block {
	out := append([]model.Block{}, d.Intro...)
	for _, p := range d.Phases {
		out = append(out, p.Title)
		for _, part := range p.Body {
			if part.Block != nil {
				out = append(out, *part.Block)
			} else {
				out = append(out, part.Item.Blocks...)
			}
		}
	}
	return out
}

func inside(t *testing.T, f *position.File, findings []finding.Finding) {
	for _, found := range findings {
		posInside(t, f, found.At)
		for _, r := range found.Related {
			posInside(t, f, r.At)
		}
		if found.Message == "" || !utf8.ValidString(found.Message) {
			t.Errorf("the message is %q", found.Message)
		}
	}
}

func posInside(t *testing.T, f *position.File, at position.Pos) {
	if at.File != f || at.Start < 0 || at.End < at.Start || at.End > len(f.Text) {
		t.Fatalf("the place %d to %d is not inside the %d bytes of the file", at.Start, at.End, len(f.Text))
	}
	if at.Start < len(f.Text) && !utf8.RuneStart(f.Text[at.Start]) {
		t.Errorf("the place %d is inside a sign", at.Start)
	}
}

func fuzz(f *testing.F, read func(*testing.T, string), seeds ...string) {
	for _, text := range hostile {
		if len(text) < 1000 {
			f.Add(text)
		}
	}
	for _, text := range append(tricky, seeds...) {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		if !utf8.ValidString(text) || len(text) > 1<<16 {
			t.Skip() // what is not UTF-8 is not read at all
		}
		read(t, text)
	})
}

func FuzzYAML(f *testing.F) { fuzz(f, readYAML) }

func FuzzCSV(f *testing.F) {
	fuzz(f, readCSV, "a,b\n1,2\n", "a,\"b\n\"\"c\"\n1,\"2\"\n", "a\n\"", "a,b\n1\n", "\n\n a , b \n")
}

func FuzzMarkdown(f *testing.F) {
	fuzz(f, readMarkdown, pump, "## W\n\n1. [a](b)\n", "<b>x</b>\n<!-- [a](b) -->\n", "[![a](b)](c)", "---\n---\n", "1. x\n\n## A\n\n## a\n")
}
