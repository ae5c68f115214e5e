package schema

import (
	"fmt"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/check"
	"baybinder/generator/model"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/decode"
	"baybinder/generator/read/source"
	"baybinder/generator/read/syntax"
)

// scribbles are values that someone may write by mistake, or rightly.
var scribbles = []string{
	"x", "12", "1.5", "yes", "no", "true", "null", "~", "010", "0", "-1", "Socket 13", "socket-13", "con", "a--b", "", " ", "!cab", "cab",
	"5 bar", "5 bar", "20 to 100 N·m", "at most 5 V dc", "60°", "1 h 30 min", "12 months", "14 days", "3 kg", "1000 µF", "2.0 ± 0.1 mm", "2 L", "101 to 130",
	"2026-03-02", "2026-02-30", "2026-02-31", "26-3-2", "on", "off", "dead", "isolated", "low", "wait", "ask", "death", "could", "star", "ppe", "line", "dry",
}

// scribbled changes one thing somewhere in a value: a word, a field's name, a
// field left out or added, a list for a word, a word for a list.
func scribbled(t *rapid.T, n *syntax.Node) *syntax.Node {
	out := *n
	out.Items, out.Pairs = slices.Clone(n.Items), slices.Clone(n.Pairs)
	deeper := rapid.IntRange(0, 5).Draw(t, "deeper") > 0
	switch {
	case deeper && len(n.Items) > 0:
		i := rapid.IntRange(0, len(n.Items)-1).Draw(t, "item")
		out.Items[i] = scribbled(t, n.Items[i])
		return &out
	case deeper && len(n.Pairs) > 0:
		i := rapid.IntRange(0, len(n.Pairs)-1).Draw(t, "pair")
		out.Pairs[i].Value = scribbled(t, n.Pairs[i].Value)
		return &out
	}
	word := &syntax.Node{Kind: syntax.Scalar, Text: rapid.SampledFrom(scribbles).Draw(t, "word")}
	switch rapid.IntRange(0, 7).Draw(t, "change") {
	case 0:
		return &syntax.Node{Kind: syntax.List, Items: []*syntax.Node{word}}
	case 1:
		return &syntax.Node{Kind: syntax.Map, Pairs: []syntax.Pair{{Key: rapid.SampledFrom(scribbles).Draw(t, "key"), Value: word}}}
	case 2:
		return &syntax.Node{Kind: syntax.Empty}
	case 3:
		if len(out.Pairs) > 0 {
			i := rapid.IntRange(0, len(out.Pairs)-1).Draw(t, "left out")
			out.Pairs = slices.Delete(out.Pairs, i, i+1)
			return &out
		}
	case 4:
		if len(out.Pairs) > 0 {
			i := rapid.IntRange(0, len(out.Pairs)-1).Draw(t, "renamed")
			out.Pairs[i].Key = rapid.SampledFrom(append(scribbles, "nam", "kind", "note")).Draw(t, "as")
			return &out
		}
	case 5:
		if n.Kind == syntax.Map {
			out.Pairs = append(out.Pairs, syntax.Pair{Key: rapid.SampledFrom([]string{"note", "of", "kind", "fits", "x"}).Draw(t, "added"), Value: word})
			return &out
		}
	case 6:
		if n.Kind == syntax.List {
			out.Items = append(out.Items, word)
			return &out
		}
	}
	return word
}

// written is a value as YAML in brackets, every word in quotes.
func written(n *syntax.Node) string {
	var parts []string
	switch n.Kind {
	case syntax.Scalar:
		return strconv.Quote(n.Text)
	case syntax.List:
		for _, item := range n.Items {
			parts = append(parts, written(item))
		}
		return "[" + strings.Join(parts, ", ") + "]"
	case syntax.Map:
		for _, p := range n.Pairs {
			parts = append(parts, strconv.Quote(p.Key)+": "+written(p.Value))
		}
		return "{ " + strings.Join(parts, ", ") + " }"
	}
	return ""
}

// plain is a value as the second judge takes it.
func plain(n *syntax.Node) any {
	switch n.Kind {
	case syntax.Scalar:
		return n.Text
	case syntax.List:
		list := []any{}
		for _, item := range n.Items {
			list = append(list, plain(item))
		}
		return list
	case syntax.Map:
		m := map[string]any{}
		for _, p := range n.Pairs {
			m[p.Key] = plain(p.Value)
		}
		return m
	}
	return nil
}

// decoders read what a file holds by itself, as bind does.
var decoders = map[string]func(d *decode.Decoder, n *syntax.Node){
	"procedure": asStruct[model.Procedure], "shop": asStruct[model.Shop], "machine": asStruct[model.Machine], "plan": asStruct[model.Plan],
	"tools": asEntries[model.Tool], "hazards": asEntries[model.Hazard], "holds": asEntries[model.Hold],
	"supplies": asEntries[model.Supply], "roles": asEntries[model.Role],
}

func asStruct[T any](d *decode.Decoder, n *syntax.Node) {
	d.Struct(n, new(T), finding.Say("this"), n.At)
}

func asEntries[T any, P interface {
	*T
	model.Named
}](d *decode.Decoder, n *syntax.Node) {
	for _, p := range n.Pairs {
		d.Entry(p, P(new(T)))
	}
}

// formatPage is a manual that uses every field of the format.
func formatPage(t *testing.T) *source.Tree {
	t.Helper()
	tree, err := source.Read(filepath.Join("..", "..", "read", "bind", "testdata", "format"))
	if err != nil {
		t.Fatal(err)
	}
	return tree
}

// refusals are the findings that say that something is not as it must be.
func refusals(texts map[string]string) []string {
	m, found := bind.Manual(source.FromText(texts))
	found = append(found, check.Run(&check.Context{Manual: m, Today: model.Date{Year: 2026, Month: 11, Day: 25}})...)
	var out []string
	for _, f := range found {
		if slices.Contains(append(shapes, "unknown-reference", "missing-picture", "duplicate-id", "syntax"), f.Code) {
			out = append(out, fmt.Sprintf("%s: %s [%s]", f.At.Path(), f.Message, f.Code))
		}
	}
	return out
}

// A manual of every field, one thing in it changed at random: what the schema
// refuses, the program refuses too; and what the decoder refuses in the form of
// a value, the schema does.
func TestSchemaAndDecoderAgree(t *testing.T) {
	tree := formatPage(t)
	texts := map[string]string{}
	for _, f := range tree.Files {
		texts[f.Path] = f.Text
	}
	known := refusals(texts) // the page's example names things that it does not show
	judges := compiled(t)
	counts := map[string]int{}
	rapid.Check(t, func(t *rapid.T) {
		f := rapid.SampledFrom(tree.Files).Filter(func(f *position.File) bool { name, _, ok := describes(f); return ok && decoders[name] != nil }).Draw(t, "file")
		name, text, _ := describes(f)
		whole := position.NewFile(f.Path, text)
		before, _ := syntax.YAML(whole, 0, len(whole.Text))
		after := written(scribbled(t, before))
		node, found := syntax.YAML(position.NewFile("a.yaml", after), 0, len(after))
		if len(found) > 0 {
			t.Skip()
		}
		err := judges[name].Validate(plain(node))
		d := &decode.Decoder{}
		if node.Kind == syntax.Map {
			decoders[name](d, node)
		}
		changed := map[string]string{}
		for p, text := range texts {
			changed[p] = text
		}
		if changed[f.Path] = after; name == "procedure" {
			changed[f.Path] = strings.Replace(f.Text, text, after+"\n", 1)
		}
		told := slices.DeleteFunc(refusals(changed), func(line string) bool { return slices.Contains(known, line) })
		switch {
		case err != nil && len(told) == 0:
			t.Fatalf("%s: refused, and the program takes it:\n%s\n%v", f.Path, after, err)
		case err == nil && slices.ContainsFunc(d.Findings, formal):
			t.Fatalf("%s: taken, and the program refuses it: %v\n%s", f.Path, d.Findings, after)
		case err != nil:
			counts["refused"]++
		case len(told) == 0:
			counts["taken"]++
		}
	})
	if counts["refused"] < 10 || counts["taken"] < 10 {
		t.Errorf("too few to say anything: %v", counts)
	}
}

// formal says of what the decoder found that a schema must find it too: all but
// the fine print of amounts and the leap days.
func formal(f finding.Finding) bool {
	return f.Code != "quantity" && !strings.Contains(f.Message, `"2026-02-30"`) && !strings.Contains(f.Message, "-02-29")
}

// Every field says what it is.
func TestEveryFieldIsDescribed(t *testing.T) {
	for _, f := range Files {
		if strings.HasSuffix(f.Name, "-words") {
			continue
		}
		s := f.Schema()
		all := map[string]*Schema{f.Name: s}
		for name, def := range s.Defs {
			all[name] = def
		}
		for name, def := range all {
			for field, is := range def.Properties {
				if is.Description == "" {
					t.Errorf("%s: %s has no description", name, field)
				}
			}
		}
	}
}

// The files of the format are all described, and by one schema each.
func TestEveryFileIsDescribed(t *testing.T) {
	for at, want := range map[string]string{
		"shop.yaml": "shop", "register/tools.yaml": "tools", "register/tools.es.yaml": "tools-words", "machines/yard-tug.es.yaml": "machine-words", "shop.es.yaml": "shop-words", "machines/yard-tug.yaml": "machine",
		"readings/plans/first-week.yaml": "plan", "procedures/tug/change-wheel.md": "procedure", "procedures/x.es.md": "procedure",
	} {
		if got, _, ok := describes(position.NewFile(at, "---\ntitle: x\n---\n")); !ok || got != want {
			t.Errorf("%s is described by %q, want %s", at, got, want)
		}
	}
	f, _ := Named("plan")
	if got := f.Setting("readings/plans/a.yaml"); got != "# yaml-language-server: $schema=../../.schema/plan.json" {
		t.Error(got)
	}
}
