package main

import (
	"bytes"
	"os"
	"path/filepath"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"testing"

	"baybinder/generator"
	"baybinder/generator/base/finding"
	"baybinder/generator/check"
	"baybinder/generator/command/handbook"
	"baybinder/generator/model"
)

// ran runs the program and gives back what it said.
func ran(t *testing.T, args ...string) (int, string) {
	t.Helper()
	var out, err bytes.Buffer
	code := run(args, &out, &err)
	return code, out.String() + err.String()
}

// Every example of the handbook works, in the order in which it stands there,
// from an empty folder: commands end without an error, and the manual has none
// after each chapter.
func TestEveryExampleOfTheHandbookWorks(t *testing.T) {
	examples := examples(t)
	t.Chdir(t.TempDir())
	if len(examples) < 30 {
		t.Fatalf("%d examples", len(examples))
	}
	for i, e := range examples {
		if e.Path != "" {
			put(t, e)
		} else {
			for line := range strings.Lines(e.Text) {
				args := spoken(strings.TrimSpace(line))
				if args[0] != "baybinder" {
					t.Errorf("%s: %q is no command of the program", e.Chapter, line)
					continue
				}
				if code, said := ran(t, args[1:]...); code != 0 {
					t.Errorf("%s: %s ends with %d: %s", e.Chapter, line, code, said)
				}
			}
		}
		if i+1 == len(examples) || examples[i+1].Chapter != e.Chapter {
			if code, said := ran(t, "check", "--all"); code != 0 {
				t.Errorf("after %s the manual has errors: %s", e.Chapter, said)
			}
		}
	}
}

// put writes the file that an example is.
func put(t *testing.T, e example) {
	t.Helper()
	name := filepath.Join("content", filepath.FromSlash(e.Path))
	if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
		t.Fatal(err)
	}
	text := e.Text
	if e.More {
		old, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		text = string(old) + text
	}
	if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}

// spoken are the words of a command line; double quotes keep some together.
func spoken(line string) []string {
	var out []string
	for i, part := range strings.Split(line, `"`) {
		if i%2 == 1 {
			out = append(out, part)
			continue
		}
		out = append(out, strings.Fields(part)...)
	}
	return out
}

// The handbook is built by the program without an error, and every field, kind
// and code stands on its pages.
func TestTheHandbookIsWhole(t *testing.T) {
	dir := t.TempDir()
	if err := handbook.Write(filepath.Join(dir, "handbook")); err != nil {
		t.Fatal(err)
	}
	r, err := generator.Build(generator.Options{Manual: filepath.Join(dir, "handbook"), To: filepath.Join(dir, "public"), Today: model.Date{Year: 2026, Month: 5, Day: 4}})
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range r.Findings {
		if f.Level == finding.Error {
			t.Errorf("%v: %s %s", f.At, f.Code, f.Message)
		}
	}
	wantOn(t, dir, "fields", slices.Concat(
		fieldsOf("", reflect.TypeFor[model.Procedure]()), fieldsOf("", reflect.TypeFor[model.Shop]()), fieldsOf("", reflect.TypeFor[model.Tool]()),
		fieldsOf("", reflect.TypeFor[model.Hazard]()), fieldsOf("", reflect.TypeFor[model.Hold]()), fieldsOf("", reflect.TypeFor[model.Supply]()),
		fieldsOf("", reflect.TypeFor[model.Role]()), fieldsOf("", reflect.TypeFor[model.Machine]()), fieldsOf("", reflect.TypeFor[model.Plan]())))
	var kinds, codes []string
	for _, k := range model.Kinds {
		kinds = append(kinds, k.Name+":")
	}
	for _, rule := range check.Catalogue() {
		codes = append(codes, rule.Code)
	}
	wantOn(t, dir, "link-kinds", kinds)
	wantOn(t, dir, "findings", codes)
}

// wantOn asks for terms in code on a page of the reference.
func wantOn(t *testing.T, dir, page string, terms []string) {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(dir, "public", "procedures", page+".html"))
	if err != nil {
		t.Fatal(err)
	}
	for _, term := range terms {
		if !bytes.Contains(data, []byte("<code>"+term+"</code>")) {
			t.Errorf("%s is not on the page %s", term, page)
		}
	}
}

// explain --open builds the handbook and says where it is, also where there is
// no browser to start.
func TestExplainOpen(t *testing.T) {
	dir := t.TempDir()
	t.Setenv("PATH", dir)
	front := filepath.Join(dir, "book", "index.html")
	code, said := ran(t, "explain", "--open", "--to", filepath.Join(dir, "book"))
	if code != 0 || !strings.Contains(said, "the handbook: "+front) {
		t.Errorf("it ends with %d: %s", code, said)
	}
	if data, err := os.ReadFile(front); err != nil || !bytes.Contains(data, []byte("The first procedure")) {
		t.Errorf("the front page: %v", err)
	}
}

// chapters is where the handbook's chapters stand.
const chapters = "../../generator/command/handbook/manual/procedures/chapters"

// example is fenced code of a chapter.
type example struct {
	Chapter string // its file
	Path    string // of the file that it is, "" for commands
	More    bool   // it stands at the end of the file that is there
	Text    string
}

var fence = regexp.MustCompile("(?ms)^( *)```(\\w+)(?: (\\S+))?( \\+)?\n(.*?)^ *```$")

// examples are those of all chapters, in the order in which they are read.
func examples(t *testing.T) []example {
	var out []example
	entries, err := os.ReadDir(chapters)
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		data, err := os.ReadFile(filepath.Join(chapters, e.Name()))
		if err != nil {
			t.Fatal(err)
		}
		for _, m := range fence.FindAllStringSubmatch(string(data), -1) {
			out = append(out, example{e.Name(), m[3], m[4] != "", outdented(m[5], m[1])})
		}
	}
	return out
}

// outdented is a text without the indent of its fence.
func outdented(text, indent string) string {
	var b strings.Builder
	for line := range strings.Lines(text) {
		b.WriteString(strings.TrimPrefix(line, indent))
	}
	return b.String()
}

// fieldsOf are the names of the fields of a struct of the model by their tags,
// nested ones with a dot.
func fieldsOf(prefix string, of reflect.Type) []string {
	var out []string
	for i := range of.NumField() {
		f := of.Field(i)
		name, option, _ := strings.Cut(f.Tag.Get("yaml"), ",")
		in := f.Type
		for in.Kind() == reflect.Slice || in.Kind() == reflect.Pointer {
			in = in.Elem()
		}
		switch nested := in.Kind() == reflect.Struct && in != of && strings.HasSuffix(in.PkgPath(), "/model"); {
		case option == "inline":
			out = append(out, fieldsOf(prefix, in)...)
		case name == "" || name == "-":
		case nested:
			out = append(append(out, prefix+name), fieldsOf(prefix+name+".", in)...)
		default:
			out = append(out, prefix+name)
		}
	}
	return out
}
