package syntax

import (
	"fmt"
	"strings"
	"testing"

	"baybinder/generator/base/position"
	"baybinder/generator/model"
	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/text"
)

// Letters are by the categories of Unicode; what is composed is so by its
// normalization form C.
func TestPhaseID(t *testing.T) {
	for title, want := range map[string]string{
		"Make safe":                 "make-safe",
		"Antes de empezar: ¡señal!": "antes-de-empezar-senal",
		"sen\u0303al":               "senal",
		"Größe der Fuge":            "große-der-fuge",
		"Łożysko – wyjąć":           "łozysko-wyjac",
		"ΑΒΓ":                       "αβγ",
		"Демонтаж: Край":            "демонтаж-край",
		"Крайний":                   "крайний",
		"分解 2":                      "分解-2",
		"がぎ":                        "がぎ",
		"किताब":                     "किताब",
		"می\u200cخواهم":             "میخواهم",
		"Zero\u200cwidth":           "zero-width",
		"１２":                        "",
		"…":                         "",
	} {
		if got := PhaseID(title); got != want {
			t.Errorf("PhaseID(%q) = %q, want %q", title, got, want)
		}
	}
}

func TestPlainID(t *testing.T) {
	for title, want := range map[string]string{
		"Make safe":                 "make-safe",
		"  Make   safe!  ":          "make-safe",
		"Antes de empezar: ¡señal!": "antes-de-empezar-senal",
		"Über-Prüfung":              "uber-prufung",
		"sen\u0303al":               "senal", // the tilde as a sign of its own
		"ﬁt":                        "t",     // a ligature is no letter of a to z
		"ΑΒΓ":                       "",      // nor is Greek
		"4.7 Bleed — rear":          "4-7-bleed-rear",
		"…":                         "",
		"":                          "",
		"a--b":                      "a-b",
		"ß":                         "",
		"İ":                         "i", // a dotted capital i loses its dot
		"Torque: 22 N·m":            "torque-22-n-m",
		"\u200bZero\u200bwidth":     "zero-width",
		"UPPER_case":                "upper-case",
		strings.Repeat("a", 100):    strings.Repeat("a", 100),
		"Step 1":                    "step-1",
		"１２":                        "", // full-width figures are not 0 to 9
		"e\u0301\u0301":             "e",
	} {
		if got := PlainID(title); got != want {
			t.Errorf("PlainID(%q) = %q, want %q", title, got, want)
		}
	}
}

const pump = `---
title: Replace the pump
---
What it is for.

## Make safe

Both people. [](people:2)

This stands before the steps too.

1. Pull the plug.
2. Wait.

   [Because](why:) it holds a charge.

   1. Look at the lamp.
   2. Look again.

      - a list
      - in a sub-step

Between the steps.

3. Measure.

## Strip

1) Undo the bolts
   with care.
`

// outline shows a document's tree.
func outline(d *Document) string {
	var b strings.Builder
	for _, block := range d.Intro {
		fmt.Fprintf(&b, "intro %s\n", block.Plain)
	}
	for _, p := range d.Phases {
		fmt.Fprintf(&b, "phase %s\n", p.ID)
		if p.Lead != nil {
			fmt.Fprintf(&b, " lead %s\n", p.Lead.Plain)
		}
		for _, part := range p.Body {
			if part.Block != nil {
				fmt.Fprintf(&b, " prose %s\n", part.Block.Plain)
				continue
			}
			outlineItem(&b, part.Item, " ")
		}
	}
	return b.String()
}

func outlineItem(b *strings.Builder, item *Item, indent string) {
	for i, block := range item.Blocks {
		fmt.Fprintf(b, "%s%s %s\n", indent, map[bool]string{true: "step", false: "and"}[i == 0], block.Plain)
	}
	for _, sub := range item.Subs {
		outlineItem(b, sub, indent+" ")
	}
}

func TestReadMakesPhasesAndSteps(t *testing.T) {
	d, findings := Read(position.NewFile("procedures/pump.md", pump))
	want := `intro What it is for.
phase make-safe
 lead Both people.
 prose This stands before the steps too.
 step Pull the plug.
 step Wait.
 and Because it holds a charge.
  step Look at the lamp.
  step Look again.
  and a list in a sub-step
 prose Between the steps.
 step Measure.
phase strip
 step Undo the bolts with care.
`
	if got := outline(d); got != want || len(findings) > 0 || d.Broken {
		t.Errorf("got\n%s\nwant\n%s\n%v", got, want, findings)
	}
	if d.Front.Get("title").Text != "Replace the pump" || d.FrontAt.Text() != "---" {
		t.Errorf("the front matter is %v at %q", d.Front, d.FrontAt.Text())
	}
}

// Links and blocks stand where their places say, whatever is before them.
func TestPlacesOfLinks(t *testing.T) {
	for text, want := range map[string]string{
		"1. Pull [the plug](isolate:plug) out.":              "[the plug](isolate:plug)",
		"1. [](time:20min)":                                  "[](time:20min)",
		"1. Señal: ![seat](../pictures/seat.svg)":            "![seat](../pictures/seat.svg)",
		"1. [**bold** `code`](tool:a)":                       "[**bold** `code`](tool:a)",
		"1. See <https://example.com/>.":                     "<https://example.com/>",
		"1. [two\n   lines](tool:a)":                         "[two\n   lines](tool:a)",
		"1. [a](b.md \"title\") [](tool:c)":                  "[a](b.md",
		"- x\n\n1. a\n\n   > quoted [q](tool:a)":             "[q](tool:a)",
		"1. | a | b |\n   |---|---|\n   | [t](tool:a) | x |": "[t](tool:a)",
		"1. [[x](y.md)](z.md)":                               "[x](y.md)",
		"1. [a](<b.md>), [b](b.md)":                          "[a](<b.md>)",
		"1. [a]( b.md), [b](b.md)":                           "[a]( b.md)",
	} {
		f := position.NewFile("a.md", "---\ntitle: é\n---\n## Work\n\n"+text+"\n")
		d, _ := Read(f)
		links := allLinks(d)
		if len(links) == 0 {
			t.Errorf("%q: no link", text)
			continue
		}
		if got := links[0].At.Text(); got != want {
			t.Errorf("%q: the link is said to stand at %q, want %q", text, got, want)
		}
	}
}

// A link by reference stands at its words, whatever link with the same address
// follows in its paragraph.
func TestPlaceOfALinkByReference(t *testing.T) {
	for _, want := range []string{"[the plug][p]", "[p][]", "[p]", "[two\n   lines][P]", "![seat][p]", "[**p**][p]"} {
		f := position.NewFile("a.md", "## Work\n\n1. See "+want+" and [the plug](see:x).\n\nAnd [the plug](see:x).\n\n[p]: see:x\n")
		d, _ := Read(f)
		if got := allLinks(d)[0].At.Text(); got != want {
			t.Errorf("the link stands at %q, want %q", got, want)
		}
	}
}

func allLinks(d *Document) []*model.Link {
	var out []*model.Link
	add := func(b model.Block) { out = append(out, b.Links...) }
	for _, b := range d.Intro {
		add(b)
	}
	for _, p := range d.Phases {
		add(p.Title)
		if p.Lead != nil {
			add(*p.Lead)
		}
		for _, part := range p.Body {
			if part.Block != nil {
				add(*part.Block)
				continue
			}
			addItem(part.Item, add)
		}
	}
	return out
}

func addItem(item *Item, add func(model.Block)) {
	for _, b := range item.Blocks {
		add(b)
	}
	for _, sub := range item.Subs {
		addItem(sub, add)
	}
}

// A hole for each link, a picture in a link behind it, and no sign of the
// holes left in a link's own words.
func TestHolesMatchLinks(t *testing.T) {
	for _, text := range []string{
		"a [b](c) d ![e](f) g <http://h/> i",
		"[![moon](moon.jpg)](see:x)",
		"[a ![b](c) d ![e **f**](g)](h)",
		"![a [b](c) ![d](e)](f)",
		"| [a](b) | ![c](d) |\n|---|---|\n| [e](f) | g |",
		"> [a](b)\n>\n> - ![c](d)",
		"a NUL \x00 [b](c)",
	} {
		for _, b := range Blocks(position.NewFile("a.md", text)) {
			if len(b.Parts) != len(b.Links)+1 {
				t.Errorf("%q: %d parts and %d links", text, len(b.Parts), len(b.Links))
			}
			for _, l := range b.Links {
				if strings.Contains(l.HTML(), hole) || strings.Contains(l.Text, hole) {
					t.Errorf("%q: a hole is left in %q", text, l.HTML())
				}
			}
		}
	}
	blocks := Blocks(position.NewFile("a.md", "[See ![the moon](moon.jpg)](see:x)"))
	if links := blocks[0].Links; len(links) != 2 || links[0].HTML() != "See the moon" || links[1].Kind != model.PictureLink || links[1].Address != "moon.jpg" {
		t.Errorf("a picture in a link: %+v %+v", links[0], links[1:])
	}
}

// Code shows no link and no HTML of its own; a language that is known is
// marked with classes, never with styles.
func TestCodeIsShownByClasses(t *testing.T) {
	blocks := Blocks(position.NewFile("a.md", "```go\nfunc main() {}\n```\n\n```nonsense\n<b>\n```\n\n```fault-log\n2026-03-02 10:15 P0A1F pressure=12 fault\n```\n"))
	for i, want := range []string{`<span class="`, "&lt;b&gt;", `<span class="kc">P0A1F</span>`} {
		if got := strings.Join(blocks[i].Parts, ""); !strings.Contains(got, want) || strings.Contains(got, "style=") {
			t.Errorf("block %d is %q, want %q in it", i, got, want)
		}
	}
}

func TestFrontMatterEnds(t *testing.T) {
	for text, want := range map[string]string{
		"---\ntitle: a\n---\n## W\n\n1. x\n":     "a",
		"---\ntitle: a\n---":                     "a", // nothing after it
		"---\ntitle: a\n---  \n## W\n\n1. x\n":   "a", // spaces behind the line
		"---\ntitle: a --- b\n---\n## W\n":       "a --- b",
		"---\ntitle: |\n  ---\n  x\n---\n## W\n": "---\nx",
		"---\n---\n## W\n":                       "", // empty
		"## W\n\n1. x\n":                         "", // none
		"\n---\ntitle: a\n---\n":                 "", // not on the first line
	} {
		d, findings := Read(position.NewFile("a.md", text))
		got := ""
		if node := d.Front.Get("title"); node != nil {
			got = node.Text
		}
		if got != want || d.Broken {
			t.Errorf("%q: the title is %q, want %q %v", text, got, want, findings)
		}
	}
}

// Where only a bracket or a backslash is meant, nothing is told.
func TestBracketsInWords(t *testing.T) {
	for _, text := range []string{`a \[b](c d)`, "a ](b) c", "`[a](b c)`", "array[0] (zero)", "a [b] c"} {
		if _, findings := Read(position.NewFile("a.md", "## W\n\n1. "+text+"\n")); len(findings) > 0 {
			t.Errorf("%q: %v", text, findings[0].Message)
		}
	}
}

// Blocks reads a text that is Markdown and nothing else, such as a field that
// may hold several paragraphs.
func Blocks(f *position.File) []model.Block {
	m := &mdReader{file: f, src: []byte(f.Text)}
	return m.blocks(markdown.Parser().Parse(text.NewReader(m.src)))
}

func (m *mdReader) blocks(parent ast.Node) []model.Block {
	var out []model.Block
	for n := parent.FirstChild(); n != nil; n = n.NextSibling() {
		if n.Kind() != ast.KindLinkReferenceDefinition {
			out = append(out, m.block(n))
		}
	}
	return out
}
