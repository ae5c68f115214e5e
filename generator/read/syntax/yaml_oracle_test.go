package syntax

import (
	"bytes"
	"encoding/json"
	"fmt"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"reflect"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/base/needed"
	"baybinder/generator/base/position"
	"baybinder/generator/read/source"
)

// Known: SEEN.

// tricky are texts at which YAML readers are known to differ: numbers and
// words that older versions of YAML read as something else, quoting, folding,
// indents, comments.
var tricky = []string{
	"a: 010\nb: 0x1f\nc: 0o17\nd: 1_000\ne: 1e3\nf: .5\ng: +1\nh: 12:30:45\n",
	"a: no\nb: yes\nc: on\nd: Off\ne: y\nf: ~\ng: null\nh: True\ni: NaN\nj: .inf\n",
	"a: 2026-03-02\nb: 2026-03-02T10:00:00Z\nc: 1.10\nd: 1.0\ne: -0\n",
	"null: a\ntrue: b\n12: c\n~: d\n",
	"a: 'it''s'\nb: \"tab\\there\"\nc: \"\\u00e9\\x41\"\nd: 'back\\slash'\n",
	"a: \"a long\n  line\"\nb: 'a long\n\n  line'\nc: a long\n  line\n",
	"a: >\n  folded\n  text\n\n  more\nb: |\n  kept\n    text\n\n  more\nc: >-\n  x\nd: |+\n  y\n\ne: z\n",
	"a: |\n  # no comment\n  x # nor this\n# a comment\nb: x # a comment\nc: x#y\nd: 'x # y'\n",
	"a: [x, y z, 'p, q', [1, 2], { k: v }]\nb: { x: 1, y: [2, 3], z }\nc: []\nd: {}\n",
	"a: [socket-10, wheel-chock: 4]\nb: [a: 1, b, c: [2]]\n",
	"a:\n- x\n- y\nb:\n  - x\n  -\n    - y\n  - k: v\n    l: w\n",
	"a:\nb:\n  c:\nd: { e: , f: }\n",
	"a: http://shop-pc/manual/\nb: x:y\nc: {d: http://a/}\n",
	"a: 60°\nb: 22 N·m ± 5 %\nc: −20 °C\nd: señal\ne: 🔧\n",
	"a: at most 5 V dc\nb: 20 to 100 N·m\nc: \"x, y\"\nd: [20 to 100 N·m, \"x, y\"]\n",
	"a: - x\n", "a: b: c\n", "a: [x\n", "a: {x: 1\n", "a: 'x\n", "\ta: x\n", "a: x\n b: y\n", "a: @x\n", "a: `x`\n", "- a\nb: c\n",
	"a: x\na: y\n", "a: x\n---\nb: y\n", "---\na: x\n", "a: x\n...\n", "", "# only a comment\n", "just a text\n", "- a\n- b\n",
	"a: x\r\nb: y\r\n", "a:   x   \nb:\tx\n", "a : x\n\"b\": y\n'c d': z\ne f: g\n",
	"a: \"x: y\"\nb: x - y\nc: -x\nd: ?x\ne: :x\nf: a ? b\n",
	"a: x\n\n\n  # deep comment\n\nb: y\n",
	"options: { cab: Enclosed cab, \"!x\": y }\nonly: \"!cab\"\n",
	"a: { b: 'c', d: \"e\" }\nf: {\n  g: h,\n  i: [j,\n    k],\n}\n",
	"a: 50 %\nb: 5% off\nc: a & b\nd: a * b\ne: x ! y\nf: a | b\ng: a > b\n",
}

// The judge is the npm package yaml 2.9.1, told to read YAML 1.2 with every
// scalar as text: what it reads, we must read; what it refuses, we must
// refuse. We refuse more (anchors, aliases, tags), and read less (the last
// line end of a block text is no part of it).
func TestYAMLIsReadAsAnIndependentReaderReadsIt(t *testing.T) {
	texts := append([]string{}, tricky...)
	for _, f := range manualTexts(t) {
		texts = append(texts, f.Text)
	}
	for i, judged := range judge(t, texts) {
		node, findings := YAML(position.NewFile("a.yaml", texts[i]), 0, len(position.NewFile("a.yaml", texts[i]).Text))
		ours := len(findings) == 0
		switch theirs := len(judged.Errors) == 0; {
		case ours != theirs:
			t.Errorf("we read it: %v, the judge reads it: %v %v\n%s%v", ours, theirs, judged.Errors, texts[i], findings)
		case ours && !reflect.DeepEqual(plainValue(node), judged.Value):
			t.Errorf("%s\nwe read   %v\nthe judge %v", texts[i], plainValue(node), judged.Value)
		}
	}
}

// 010 must stay 010: as a number it is 8 or 10, by the reader.
func TestScalarsStayAsTheyAreWritten(t *testing.T) {
	for _, text := range []string{"010", "0x1f", "1_000", "no", "NO", "null", "~", "1e3", "2026-03-02", "12:30", "0.50", ".5", "-0", "+1"} {
		node, findings := YAML(position.NewFile("a.yaml", "a: "+text+"\n"), 0, 4+len(text))
		if len(findings) > 0 || node.Get("a") == nil || node.Get("a").Kind != Scalar || node.Get("a").Text != text {
			t.Errorf("%s is read as %+v %v", text, node.Get("a"), findings)
		}
	}
	if got := judge(t, []string{"a: 010"}); fmt.Sprint(got[0].Value) != "map[a:010]" {
		t.Errorf("the judge reads 010 as %v", got[0].Value)
	}
}

// plainValue is a node as JSON has it.
func plainValue(n *Node) any {
	switch n.Kind {
	case Scalar:
		return strings.TrimRight(n.Text, "\n")
	case List:
		list := []any{}
		for _, item := range n.Items {
			list = append(list, plainValue(item))
		}
		return list
	case Map:
		m := map[string]any{}
		for _, p := range n.Pairs {
			m[p.Key] = plainValue(p.Value)
		}
		return m
	}
	return "" // the judge's text for a value that is left out
}

type judged struct {
	Value  any
	Errors []string
}

// judge asks the independent reader.
func judge(t *testing.T, texts []string) []judged {
	t.Helper()
	in, err := json.Marshal(texts)
	if err != nil {
		t.Fatal(err)
	}
	cmd := exec.Command("node", filepath.Join("testdata", "read.cjs"), judges(t, "yaml"))
	cmd.Stdin = bytes.NewReader(in)
	out, err := cmd.Output()
	if err != nil {
		t.Fatalf("the judge did not run: %v", err)
	}
	var list []judged
	if err := json.Unmarshal(out, &list); err != nil || len(list) != len(texts) {
		t.Fatalf("the judge answered %d of %d: %v", len(list), len(texts), err)
	}
	for i := range list {
		list[i].Value = trimmed(list[i].Value)
	}
	return list
}

// trimmed takes the last line ends off every text; an empty value is none.
func trimmed(v any) any {
	switch v := v.(type) {
	case string:
		return strings.TrimRight(v, "\n")
	case []any:
		for i := range v {
			v[i] = trimmed(v[i])
		}
		return v
	case map[string]any:
		for k := range v {
			v[k] = trimmed(v[k])
		}
		return v
	}
	return "" // an empty document
}

// judges is the folder of the outside judges, which npm ci in .ci fills.
func judges(t *testing.T, name string) string {
	t.Helper()
	folder, err := filepath.Abs(filepath.Join("..", "..", "..", ".ci", "node_modules"))
	if err != nil {
		t.Fatal(err)
	}
	_, err = os.Stat(filepath.Join(folder, name))
	needed.Judge(t, err == nil, name)
	return folder
}

// manualTexts is every YAML text of the demo manual.
func manualTexts(t *testing.T) []*position.File {
	t.Helper()
	tree, err := source.Read(filepath.Join("..", "..", "..", "content"))
	needed.Judge(t, err == nil, "the demo manual")
	var out []*position.File
	for _, f := range tree.Files {
		switch filepath.Ext(f.Path) {
		case ".yaml":
			out = append(out, f)
		case ".md":
			if end := frontEnd(f.Text); end >= 0 {
				out = append(out, position.NewFile(f.Path, f.Text[len(fence):end]))
			}
		}
	}
	return out
}

// Texts of the demo manual, cut, joined and bent at random: where both read
// one, both read the same. What only one of them reads is no matter here: to
// refuse is safe, to read something else is not.
func TestBentYAMLIsNeverReadOtherwise(t *testing.T) {
	texts := bentTexts(t, 1500)
	both := 0
	for i, judged := range judge(t, texts) {
		f := position.NewFile("a.yaml", texts[i])
		node, findings := YAML(f, 0, len(f.Text))
		if len(findings) > 0 || len(judged.Errors) > 0 {
			continue
		}
		both++
		if !reflect.DeepEqual(plainValue(node), judged.Value) {
			t.Errorf("%q\nwe read   %v\nthe judge %v", texts[i], plainValue(node), judged.Value)
		}
		placesAreRight(t, node)
	}
	if both < len(texts)/3 {
		t.Errorf("only %d of %d texts were read by both: too few to say anything", both, len(texts))
	}
}

// bentTexts makes texts from the lines of the demo manual and of the tricky
// ones, the same every time.
func bentTexts(t *testing.T, n int) []string {
	t.Helper()
	r := rand.New(rand.NewPCG(1, 2))
	var lines []string
	for _, f := range manualTexts(t) {
		lines = append(lines, strings.Split(f.Text, "\n")...)
	}
	for _, text := range tricky {
		lines = append(lines, strings.Split(text, "\n")...)
	}
	bits := []string{":", ": ", " ", "  ", "\t", "- ", "#", " #", "'", "\"", "[", "]", "{", "}", ",", "|", ">", "\n", "x", "é", "\\", "~", "---", "...", "\u00a0"}
	texts := make([]string, n)
	for i := range texts {
		from := r.IntN(len(lines))
		var some []string
		for j := range 1 + r.IntN(5) {
			some = append(some, lines[(from+j)%len(lines)])
		}
		text := []rune(strings.Join(some, "\n") + "\n")
		for range r.IntN(4) {
			at := r.IntN(len(text) + 1)
			if r.IntN(2) == 0 {
				text = slices.Insert(text, at, []rune(bits[r.IntN(len(bits))])...)
			} else if at < len(text) {
				text = slices.Delete(text, at, at+1)
			}
		}
		texts[i] = string(text) + "\n"
	}
	return texts
}

// Every text stands where its place says, white space behind it or not.
func TestPlacesOfYAML(t *testing.T) {
	texts := append([]string{}, tricky...)
	texts = append(texts, "a: x   \nb:   y z \t\n  # c\nd: [ p , q  ]\ne:\n  -   r  \nf: { g : h  , i: j }\n\"k\":  'l'  \n")
	for _, f := range manualTexts(t) {
		texts = append(texts, f.Text)
	}
	seen := 0
	for _, text := range texts {
		f := position.NewFile("a.yaml", text)
		if node, findings := YAML(f, 0, len(f.Text)); len(findings) == 0 {
			seen += placesAreRight(t, node)
		}
	}
	if seen < 1000 {
		t.Errorf("only %d places were looked at", seen)
	}
}

func placesAreRight(t *testing.T, n *Node) int {
	t.Helper()
	seen := 0
	right := func(at position.Pos, text string) {
		seen++
		there, quoted := at.Text(), at.Start < len(at.File.Text) && strings.ContainsAny(at.File.Text[at.Start:at.Start+1], "\"'|>")
		first, _, _ := strings.Cut(text, "\n")
		if !quoted && there != first && !strings.HasPrefix(first, strings.Trim(there, " \t")+" ") {
			t.Errorf("%q is said to stand at %q in %q", text, there, at.File.Text)
		}
	}
	if n.Kind == Scalar {
		right(n.At, n.Text)
	}
	for _, item := range n.Items {
		seen += placesAreRight(t, item)
	}
	for _, p := range n.Pairs {
		right(p.KeyAt, p.Key)
		seen += placesAreRight(t, p.Value)
	}
	return seen
}
