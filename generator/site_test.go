package generator_test

import (
	"bytes"
	"encoding/json"
	"flag"
	"io/fs"
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/txtar"
	"golang.org/x/net/html"

	"baybinder/generator"
)

// Known: SEEN.

var update = flag.Bool("update", false, "write the golden pages anew")

// pages reads every file of a site.
func pages(t *testing.T, site string) map[string][]byte {
	t.Helper()
	all := map[string][]byte{}
	err := filepath.WalkDir(site, func(full string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		rel, err := filepath.Rel(site, full)
		if err != nil {
			return err
		}
		all[filepath.ToSlash(rel)], err = os.ReadFile(full)
		return err
	})
	must(t, err)
	return all
}

// The same input gives the same bytes, on one core and on many.
func TestSameInputSameBytes(t *testing.T) {
	first := pages(t, demoSite(t))
	defer runtime.GOMAXPROCS(runtime.GOMAXPROCS(1))
	second := pages(t, demoAgain(t))
	if len(first) != len(second) {
		t.Fatalf("%d files, then %d", len(first), len(second))
	}
	for name, data := range first {
		if !bytes.Equal(data, second[name]) {
			t.Errorf("%s differs", name)
		}
	}
}

// element is a start tag of a page.
type element struct {
	tag  string
	attr map[string]string
}

func elements(t *testing.T, page []byte) []element {
	t.Helper()
	var out []element
	z := html.NewTokenizer(bytes.NewReader(page))
	for {
		switch z.Next() {
		case html.ErrorToken:
			return out
		case html.StartTagToken, html.SelfClosingTagToken:
			token := z.Token()
			e := element{tag: token.Data, attr: map[string]string{}}
			for _, a := range token.Attr {
				e.attr[a.Key] = a.Val
			}
			out = append(out, e)
		}
	}
}

// Every address leads to a file of the site, every fragment to an id there;
// no id stands twice; nothing runs, and nothing is fetched from elsewhere.
func TestEveryAddressLeads(t *testing.T) {
	t.Parallel()
	site := pages(t, demoSite(t))
	ids := map[string]map[string]bool{}
	for name, data := range site {
		if path.Ext(name) != ".html" {
			continue
		}
		ids[name] = map[string]bool{}
		for _, e := range elements(t, data) {
			if id := e.attr["id"]; id != "" && ids[name][id] {
				t.Errorf("%s: the id %s stands twice", name, id)
			}
			ids[name][e.attr["id"]] = true
		}
	}
	for name, data := range site {
		if path.Ext(name) == ".html" {
			for _, e := range elements(t, data) {
				leads(t, site, ids, name, e)
			}
		}
	}
}

func leads(t *testing.T, site map[string][]byte, ids map[string]map[string]bool, page string, e element) {
	t.Helper()
	if (e.tag == "script" && e.attr["src"] == "") || e.attr["style"] != "" || e.attr["onclick"] != "" {
		t.Errorf("%s: a script or a style in the page: %v", page, e)
	}
	address := e.attr["href"] + e.attr["src"]
	if address == "" || e.attr["class"] == "outside" {
		return
	}
	file, fragment, _ := strings.Cut(address, "#")
	target := page
	if file != "" {
		target = path.Join(path.Dir(page), file)
	}
	if site[target] == nil {
		t.Errorf("%s: %s leads nowhere", page, address)
		return
	}
	if fragment != "" && !ids[target][fragment] {
		t.Errorf("%s: %s has no such place", page, address)
	}
}

// A safety message stands before its step and inside its list item, so that
// nothing parts them.
func TestBoxStandsBeforeItsStep(t *testing.T) {
	t.Parallel()
	boxes := 0
	for name, data := range pages(t, demoSite(t)) {
		if !strings.HasPrefix(name, "procedures/") {
			continue
		}
		text := string(data)
		for from := 0; ; {
			i := strings.Index(text[from:], `<div class="safety`)
			if i < 0 {
				break
			}
			from += i + 1
			item, row := strings.LastIndex(text[:from], `<li class="step`), strings.LastIndex(text[:from], `<div class="row">`)
			heading := strings.LastIndex(text[:from], `<h2 `)
			if item < row && heading < row {
				t.Errorf("%s: a box after its step's words: %.200s", name, text[from:])
			}
			boxes++
		}
	}
	if boxes < 50 {
		t.Errorf("the demo has %d boxes: the test looks at nothing", boxes)
	}
}

// Errors in what is issued publish nothing; the last site stays.
func TestErrorsKeepTheLastSite(t *testing.T) {
	t.Parallel()
	from, to := t.TempDir(), filepath.Join(t.TempDir(), "site")
	write := func(name, text string) {
		must(t, os.MkdirAll(filepath.Dir(filepath.Join(from, name)), 0o755))
		must(t, os.WriteFile(filepath.Join(from, name), []byte(text), 0o644))
	}
	build := func() *generator.Result {
		r, err := generator.Build(generator.Options{Manual: from, To: to, Today: demoDay})
		must(t, err)
		return r
	}
	write("shop.yaml", "title: Shop\n")
	write("procedures/a.md", "---\ntitle: First\n---\n## Work\n\n1. Look.\n")
	if r := build(); len(r.Findings) > 0 {
		t.Fatal(r.Findings)
	}
	before := pages(t, to)
	write("procedures/b.md", "---\ntitle: Second\n---\n## Work\n\n1. Use the [](tool:nothing).\n")
	if r := build(); r.Errors() != 1 {
		t.Fatalf("%d errors", r.Errors())
	}
	if after := pages(t, to); len(after) != len(before) || !bytes.Equal(after["index.html"], before["index.html"]) {
		t.Error("the last site is not as it was")
	}
	write("procedures/b.md", "---\ntitle: Second\nstatus: draft\n---\n## Work\n\n1. Use the [](tool:nothing).\n")
	if r := build(); r.Errors() != 0 || len(r.Findings) != 1 {
		t.Errorf("a draft stops the build: %v", r.Findings)
	}
	if after := pages(t, to); after["procedures/b.html"] != nil || strings.Contains(string(after["index.html"]), "Second") {
		t.Error("a draft is published")
	}
}

// TestGolden compares the pages of a small manual with those that were looked
// at and found good. Rewrite them with: go test ./generator -run Golden -update
func TestGolden(t *testing.T) {
	t.Parallel()
	file := filepath.Join("testdata", "golden.txtar")
	archive, err := txtar.ParseFile(file)
	must(t, err)
	from, to := t.TempDir(), filepath.Join(t.TempDir(), "site")
	var manual []txtar.File
	want := map[string]string{}
	for _, f := range archive.Files {
		if name, is := strings.CutPrefix(f.Name, "site/"); is {
			want[name] = string(f.Data)
			continue
		}
		manual = append(manual, f)
		full := filepath.Join(from, filepath.FromSlash(f.Name))
		must(t, os.MkdirAll(filepath.Dir(full), 0o755))
		must(t, os.WriteFile(full, f.Data, 0o644))
	}
	r, err := generator.Build(generator.Options{Manual: from, To: to, Today: demoDay})
	must(t, err)
	for _, f := range r.Findings {
		t.Errorf("%s: %s [%s]", f.At.Path(), f.Message, f.Code)
	}
	site := pages(t, to)
	if *update {
		rewrite(t, file, archive.Comment, manual, site)
		return
	}
	for _, name := range golden {
		if got := string(site[name]); got != want[name] {
			t.Errorf("%s is not as it was looked at; see what changed with -update and git diff", name)
		}
	}
}

// golden are the pages that are kept: one of each of the two main kinds.
var golden = []string{"procedures/renew-seal.html", "tools/index.html"}

func rewrite(t *testing.T, file string, comment []byte, manual []txtar.File, site map[string][]byte) {
	t.Helper()
	out := &txtar.Archive{Comment: comment, Files: manual}
	for _, name := range golden {
		out.Files = append(out.Files, txtar.File{Name: "site/" + name, Data: site[name]})
	}
	must(t, os.WriteFile(file, txtar.Format(out), 0o644))
}

// judged runs an outside judge over the files of a folder and returns what it
// objects to.
type judged func(t *testing.T, files []string) []string

// htmlValidate is html-validate 10.17 with its recommended rules.
func htmlValidate(t *testing.T, files []string) []string {
	t.Helper()
	tool := npmTool(t, "html-validate/bin/html-validate.mjs")
	config, err := filepath.Abs(filepath.Join("..", ".ci", "html-validate.json"))
	must(t, err)
	out, err := exec.Command("node", append([]string{tool, "--config", config, "--formatter", "json"}, files...)...).Output()
	if err != nil && len(out) == 0 {
		t.Fatal(err)
	}
	var report []struct {
		FilePath string
		Messages []struct{ RuleID, Message string }
	}
	must(t, json.Unmarshal(out, &report))
	var found []string
	for _, r := range report {
		for _, m := range r.Messages {
			found = append(found, filepath.Base(r.FilePath)+": "+m.RuleID+": "+m.Message)
		}
	}
	return found
}

// nuChecker is the HTML and CSS conformance checker, vnu 26.9.
func nuChecker(t *testing.T, files []string) []string {
	t.Helper()
	_, err := exec.LookPath("java")
	needs(t, err == nil, "java")
	jar := npmTool(t, "vnu-jar/build/dist/vnu.jar")
	// Most of its short life the machine would spend on compiling well.
	args := append([]string{"-Xss4m", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-jar", jar, "--format", "json", "--exit-zero-always", "--also-check-css"}, files...)
	var stderr bytes.Buffer
	command := exec.Command("java", args...)
	command.Stderr = &stderr
	must(t, command.Run())
	var report struct {
		Messages []struct{ Type, URL, Message string }
	}
	must(t, json.Unmarshal(stderr.Bytes(), &report))
	var found []string
	for _, m := range report.Messages {
		if m.Type == "error" {
			found = append(found, path.Base(m.URL)+": "+m.Message)
		}
	}
	return found
}

var judges = map[string]judged{"html-validate": htmlValidate, "vnu": nuChecker}

// A sentence whose values do not fit it prints what fmt says of that.
func TestEverySentenceHasItsValues(t *testing.T) {
	t.Parallel()
	demoSite(t)
	for _, folder := range []string{theDemo().site, theDemo().people} {
		for name, data := range pages(t, folder) {
			if i := bytes.Index(data, []byte("%!")); path.Ext(name) == ".html" && i >= 0 {
				t.Errorf("%s says %q", name, data[max(0, i-40):min(len(data), i+40)])
			}
		}
	}
}

func TestPagesAreConformingHTML(t *testing.T) {
	t.Parallel()
	site := demoSite(t)
	var files []string
	for name := range pages(t, site) {
		if ext := path.Ext(name); ext == ".html" || ext == ".css" {
			files = append(files, filepath.Join(site, filepath.FromSlash(name)))
		}
	}
	slices.Sort(files)
	for name, judge := range judges {
		t.Run(name, func(t *testing.T) {
			looked := files
			if name == "html-validate" {
				looked = slices.DeleteFunc(slices.Clone(files), func(f string) bool { return path.Ext(f) != ".html" })
			}
			for _, f := range judge(t, looked) {
				t.Error(f)
			}
		})
	}
}

// Each judge is shown a page with known faults: it must object.
func TestTheHTMLJudgesObject(t *testing.T) {
	t.Parallel()
	bad := filepath.Join(t.TempDir(), "bad.html")
	must(t, os.WriteFile(bad, []byte("<!DOCTYPE html><html lang=\"en\"><title>x</title><p id=a><p id=a><img src=x><center>x</center>\n"), 0o644))
	for name, judge := range judges {
		if len(judge(t, []string{bad})) == 0 {
			t.Errorf("%s finds nothing in a page with faults", name)
		}
	}
}

// An entry of any kind may be called index, which is the name of a list's page:
// each has its own page and the list leads to it.
func TestAnEntryCalledIndexHasItsPage(t *testing.T) {
	t.Parallel()
	all := pages(t, smallSite(t, map[string]string{
		"shop.yaml":              "title: Shop\n",
		"register/tools.yaml":    "index: { name: index pin, kind: aid }\n",
		"register/supplies.yaml": "index: { name: index paste, unit: each }\n",
		"register/hazards.yaml":  "index: { name: index trap, nature: It turns., harm: minor-injury, happens: could, consequence: It can pinch., avoid: [Keep clear.] }\n",
		"register/holds.yaml":    "index: { name: index look, kind: look, what: the index }\n",
		"register/roles.yaml":    "index: { name: Indexer }\n",
		"machines/index.yaml":    "name: Index head\n",
		"procedures/index.md": "---\ntitle: Index\nfor: index\nneeds: [index]\ntools: [index]\nsupplies: [index]\nhazards: [index]\nholds: [index]\n---\n## Turn\n\n" +
			"1. Turn it to the [](role:index) with the [](tool:index) and [](supply:index). [](hazard:index)\n2. [Look](hold:index).\n",
	}))
	for _, kind := range []string{"tools", "supplies", "hazards", "holds", "roles", "machines"} {
		if list := string(all[kind+"/index.html"]); !strings.Contains(list, `href="index-.html"`) && !strings.Contains(list, `href="../`+kind+`/index-.html"`) {
			t.Errorf("%s/index.html does not lead to the entry called index", kind)
		}
		if !strings.Contains(string(all[kind+"/index-.html"]), "procedures/index.html") {
			t.Errorf("%s/index-.html does not lead to what uses it", kind)
		}
	}
}
