package schema

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	judge "github.com/santhosh-tekuri/jsonschema/v6"
	"golang.org/x/tools/txtar"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/needed"
	"baybinder/generator/base/position"
	"baybinder/generator/check"
	"baybinder/generator/model"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
	"baybinder/generator/read/syntax"
)

// Known: SEEN.

// The judges are two unrelated validators of JSON Schema 2020-12: the npm
// package ajv 8.20.0, which reads the YAML with the npm package yaml 2.9.1, and
// santhosh-tekuri/jsonschema v6.0.3 for Go, given the same values.

// asked is one text and how it is to be read.
type question struct {
	Schema string `json:"schema"`
	Text   string `json:"text"`
	Reader string `json:"reader"`
	name   string
}

// answer is what both judges say, which is the same.
type answer struct {
	Value  any
	Unread string
	Valid  bool
	Places []string // where ajv objects, as JSON pointers
}

// readers: "words" as the program reads, the others as editors do.
var readers = []string{"words", "core", "yaml-1.1"}

func compiled(t testing.TB) map[string]*judge.Schema {
	t.Helper()
	out := map[string]*judge.Schema{}
	for _, f := range Files {
		c := judge.NewCompiler()
		c.DefaultDraft(judge.Draft4) // so that $schema must say which it is
		c.AssertVocabs()
		value, err := judge.UnmarshalJSON(bytes.NewReader(f.Schema().JSON()))
		if err != nil {
			t.Fatal(err)
		}
		if err := c.AddResource(f.Name+".json", value); err != nil {
			t.Fatal(err)
		}
		s, err := c.Compile(f.Name + ".json")
		if err != nil {
			t.Fatalf("%s: %v", f.Name, err)
		}
		if s.DraftVersion != 2020 {
			t.Fatalf("%s is of draft %d", f.Name, s.DraftVersion)
		}
		out[f.Name] = s
	}
	return out
}

// ask puts texts to both judges, which must agree.
func ask(t *testing.T, list []question) []answer {
	t.Helper()
	folder, err := filepath.Abs(filepath.Join("..", "..", "..", ".ci", "node_modules"))
	if err != nil {
		t.Fatal(err)
	}
	_, err = os.Stat(filepath.Join(folder, "ajv"))
	needed.Judge(t, err == nil, "ajv")
	schemas := map[string]*Schema{}
	for _, f := range Files {
		schemas[f.Name] = f.Schema()
	}
	in, err := json.Marshal(map[string]any{"schemas": schemas, "texts": list})
	if err != nil {
		t.Fatal(err)
	}
	cmd := exec.Command("node", filepath.Join("testdata", "judge.cjs"), folder)
	cmd.Stdin = bytes.NewReader(in)
	var errors bytes.Buffer
	cmd.Stderr = &errors
	out, err := cmd.Output()
	if err != nil {
		t.Fatalf("the judge did not run: %v\n%s", err, errors.String())
	}
	var answers []answer
	if err := json.Unmarshal(out, &answers); err != nil || len(answers) != len(list) {
		t.Fatalf("the judge answered %d of %d: %v", len(answers), len(list), err)
	}
	second := compiled(t)
	for i, a := range answers {
		if a.Unread != "" {
			continue
		}
		if valid := second[list[i].Schema].Validate(a.Value) == nil; valid != a.Valid {
			t.Fatalf("%s read as %s: ajv says %v %v, the other %v", list[i].name, list[i].Reader, a.Valid, a.Places, valid)
		}
	}
	return answers
}

// describes is the schema of a file of the manual, and the text that it is of.
func describes(f *position.File) (name, text string, ok bool) {
	if strings.HasPrefix(f.Path, "procedures/") && path.Ext(f.Path) == ".md" {
		rest, has := strings.CutPrefix(f.Text, "---\n")
		front, _, closed := strings.Cut(rest, "\n---")
		if !has || !closed {
			return "", "", false
		}
		return "procedure", front + "\n", true
	}
	is, ok := Of(f.Path)
	return is.Name, f.Text, ok
}

// Both judges accept the demo manual, and a new one, however an editor reads it.
func TestTheDemoManualIsValid(t *testing.T) {
	demo, err := source.Read(filepath.Join("..", "..", "..", "content"))
	needed.Judge(t, err == nil, "the demo manual")
	fresh, err := source.Read(filepath.Join("..", "begin", "manual"))
	if err != nil {
		t.Fatal(err)
	}
	var list []question
	for _, f := range append(demo.Files, fresh.Files...) {
		if name, text, ok := describes(f); ok {
			for _, reader := range readers {
				list = append(list, question{name, text, reader, f.Path})
			}
		}
	}
	for i, a := range ask(t, list) {
		if !a.Valid {
			t.Errorf("%s read as %s: %s %v", list[i].name, list[i].Reader, a.Unread, a.Places)
		}
	}
	if len(list) < 3*40 {
		t.Errorf("only %d texts were judged", len(list))
	}
}

// caseFile is a file of a seeded fault, or of its mended twin.
type caseFile struct {
	*position.File
	name  string
	found []finding.Finding
}

// caseFiles are the files of every case in the repository, with what is found
// in each.
func caseFiles(t testing.TB) []caseFile {
	t.Helper()
	var all []caseFile
	for _, pattern := range []string{"../../check/cases/*.txtar", "../../prove/walk/testdata/*.txtar"} {
		names, err := filepath.Glob(pattern)
		if err != nil {
			t.Fatal(err)
		}
		for _, name := range names {
			archive, err := txtar.ParseFile(name)
			if err != nil {
				t.Fatal(err)
			}
			for _, which := range []string{"bad/", "good/", ""} {
				all = append(all, filesOf(archive, which, filepath.Base(name))...)
			}
		}
	}
	return all
}

func filesOf(archive *txtar.Archive, which, name string) []caseFile {
	texts := map[string]string{}
	for _, f := range archive.Files {
		rest, is := strings.CutPrefix(f.Name, which)
		if is && !strings.HasPrefix(rest, "bad/") && !strings.HasPrefix(rest, "good/") {
			texts[rest] = string(f.Data)
		}
	}
	tree := source.FromText(texts)
	m, found := bind.Manual(tree)
	found = append(found, check.Run(&check.Context{Manual: m, Today: model.Date{Year: 2026, Month: 11, Day: 25}})...)
	found = check.Soften(m, found)
	var out []caseFile
	for _, f := range tree.Files {
		c := caseFile{File: f, name: name + " " + which}
		for _, one := range found {
			if one.At.File == f {
				c.found = append(c.found, one)
			}
		}
		out = append(out, c)
	}
	return out
}

// shapes are the codes that say what a schema can say.
var shapes = strings.Fields("unknown-field wrong-type missing-field bad-id quantity")

// What a schema cannot see.
const (
	fileName  = "the id is the file's name"
	otherFile = "another file says what the thing is counted in, or what kind it is"
	twoFields = "what two fields say together"
	unitWord  = "a supply may be counted in any word; a unit is asked only where an amount needs one"
	measure   = "how large an amount may be, whatever its unit, is the check's"
	either    = "it may be a duration or a calendar time; which amounts are times is the check's"
	size      = "which texts are sizes that a tool fits is the check's"
	tag       = "what is well-formed as the tag of a language is BCP 47's to say"
	broken    = "to YAML the comma ends the value: it is the rest of the number behind it that a schema refuses"
	nobody    = "that nobody is no number of people is the check's"
	sentence  = "which entries are one sentence is the check's"
	editor    = "an editor has made a number or a switch of the word before it asks"
)

// beyond are the faults that a schema cannot see, and why; by case and place.
var beyond = map[string]string{
	"language-unknown.files.txtar bad/shop.yaml:2:16 wrong-type":             tag,
	"tool-does-not-fit.unread.txtar bad/register/tools.yaml:2:54 quantity":   size,
	"quantity.wait.txtar bad/register/holds.yaml:1:38 quantity":              measure,
	"bad-id.ways.txtar bad/machines/con.yaml:1:1 bad-id":                     fileName,
	"bad-id.ways.txtar bad/procedures/nul.md:1:1 bad-id":                     fileName,
	"quantity.comma.txtar bad/procedures/fill.md:4:22 quantity":              broken,
	"quantity.lists.txtar bad/machines/tug.yaml:3:57 quantity":               otherFile,
	"quantity.lists.txtar bad/procedures/sweep.md:5:3 quantity":              otherFile,
	"quantity.lists.txtar bad/procedures/sweep.md:6:8 quantity":              otherFile,
	"quantity.lists.txtar bad/procedures/sweep.md:7:8 quantity":              otherFile,
	"quantity.lists.txtar bad/procedures/sweep.md:8:8 quantity":              otherFile,
	"quantity.lists.txtar bad/register/supplies.yaml:5:27 quantity":          unitWord,
	"quantity.lift.txtar bad/machines/yard-tug.yaml:9:43 quantity":           twoFields,
	"quantity.lift.txtar bad/machines/yard-tug.yaml:11:59 quantity":          measure,
	"quantity.lift.txtar bad/machines/yard-tug.yaml:12:76 quantity":          measure,
	"quantity.lift.txtar bad/machines/yard-tug.yaml:13:113 quantity":         measure,
	"quantity.ways.txtar bad/register/tools.yaml:1:53 quantity":              twoFields,
	"quantity.ways.txtar bad/register/tools.yaml:2:65 quantity":              twoFields,
	"quantity.of.txtar bad/register/holds.yaml:1:72 quantity":                otherFile,
	"quantity.of.txtar bad/register/holds.yaml:2:73 quantity":                otherFile,
	"wrong-type.temperature.txtar bad/machines/boiler.yaml:3:51 quantity":    measure,
	"wrong-type.temperature.txtar bad/machines/boiler.yaml:3:92 wrong-type":  twoFields,
	"missing-field.bled-live.txtar bad/machines/tug.yaml:5:3 missing-field":  twoFields,
	"wrong-type.kept.txtar bad/machines/washer.yaml:3:29 wrong-type":         twoFields,
	"wrong-type.kept.txtar bad/machines/washer.yaml:4:37 wrong-type":         twoFields,
	"wrong-type.locks.txtar bad/shop.yaml:2:16 wrong-type":                   otherFile,
	"wrong-type.meaning.txtar bad/machines/tug.yaml:3:3 wrong-type":          "a ring of parts under each other",
	"wrong-type.sentence.txtar bad/register/hazards.yaml:1:137 wrong-type":   sentence,
	"wrong-type.sentence.txtar bad/register/hazards.yaml:7:25 wrong-type":    sentence,
	"wrong-type.meaning.txtar bad/procedures/sweep.md:4:9 wrong-type":        nobody,
	"wrong-type.meaning.txtar bad/procedures/sweep.md:5:18 wrong-type":       otherFile,
	"wrong-type.meaning.txtar bad/register/hazards.yaml:7:10 wrong-type":     otherFile,
	"wrong-type.silenced.txtar bad/machines/saw.yaml:5:29 wrong-type":        twoFields,
	"wrong-type.silenced.txtar bad/procedures/shut-air.md:4:9 wrong-type":    nobody,
	"quantity.near.txtar bad/register/holds.yaml:1:79 quantity":              twoFields,
	"quantity.near.txtar bad/register/holds.yaml:2:81 quantity":              twoFields,
	"quantity.near.txtar bad/register/holds.yaml:3:85 quantity":              twoFields,
	"quantity.near.txtar bad/register/holds.yaml:4:77 quantity":              twoFields,
	"quantity.near.txtar bad/register/holds.yaml:5:100 quantity":             either,
	"missing-field.again-in.txtar bad/register/holds.yaml:1:1 missing-field": twoFields,
}

// inEditors are the faults that a schema does not see where an editor has made
// something of an unquoted word before it asked.
var inEditors = map[string]string{
	"wrong-type.ways.txtar bad/machines/tug.yaml:2:37 wrong-type":   editor,
	"wrong-type.ways.txtar bad/register/tools.yaml:3:39 wrong-type": editor,
	"quantity.lists.txtar bad/procedures/sweep.md:3:26 quantity":    editor,
}

// elsewhere are names that are refused though nothing of their form is told of them: an
// id that cannot be used is told where it is made, and a text of the machine itself
// beside the ids of its things as an id that leads nowhere.
var elsewhere = strings.Fields("unknown-reference.machine-words.txtar:bad/machines/press.es.yaml bad-id.ways.txtar:bad/procedures/all.md bad-id.ways.txtar:bad/procedures/Sweep_Bay.md")

// misread are names of which an editor has made something else before it asked:
// null and no, unquoted, which the format reads as they stand.
var misread = strings.Fields("bad-id.words.txtar:good/procedures/null.md bad-id.words.txtar:good/register/tools.yaml")

// Each seeded fault of form is refused where it stands, and all that is not at
// fault is accepted.
func TestSeededFaultsAreRefused(t *testing.T) {
	var list []question
	var files []caseFile
	for _, c := range caseFiles(t) {
		name, text, ok := describes(c.File)
		if !ok || slices.ContainsFunc(c.found, func(f finding.Finding) bool { return f.Code == "syntax" || f.Code == "duplicate-id" }) {
			continue
		}
		for _, reader := range readers {
			list = append(list, question{name, text, reader, c.name + c.Path})
			files = append(files, c)
		}
	}
	answers := ask(t, list)
	seen := map[string]bool{}
	refused := 0
	for i, c := range files {
		a := answers[i]
		if a.Unread != "" {
			t.Errorf("%s: %s", list[i].name, a.Unread)
			continue
		}
		wrong := false
		for _, f := range c.found {
			pointer, in := pointerTo(c.File, f.At.Start)
			if !slices.Contains(shapes, f.Code) || !in {
				continue
			}
			wrong = true
			line, col := f.At.LineCol()
			key := fmt.Sprintf("%s%s:%d:%d %s", c.name, c.Path, line, col, f.Code)
			_, excused := beyond[key]
			if _, also := inEditors[key]; also && list[i].Reader != "words" {
				excused = true
				seen[key] = true
			}
			told := slices.ContainsFunc(a.Places, func(place string) bool { return about(place, pointer) })
			switch {
			case excused && !told:
				seen[key] = true
			case !told:
				t.Errorf("read as %s, not refused: %q (%s), at %s; refused are %v", list[i].Reader, key, f.Message, pointer, a.Places)
			default:
				refused++
			}
		}
		name := strings.Replace(c.name+c.Path, " ", ":", 1)
		made := list[i].Reader != "words" && slices.Contains(misread, name)
		if made && a.Valid {
			t.Errorf("%s read as %s: excused and accepted", list[i].name, list[i].Reader)
		}
		if !wrong && !made && !a.Valid && !slices.Contains(elsewhere, name) {
			t.Errorf("%s read as %s: nothing is wrong, and refused is %v", list[i].name, list[i].Reader, a.Places)
		}
	}
	for _, excuses := range []map[string]string{beyond, inEditors} {
		for key := range excuses {
			if !seen[key] {
				t.Errorf("excused and refused all the same, or not there: %q", key)
			}
		}
	}
	if refused < 3*30 {
		t.Errorf("only %d faults were refused", refused)
	}
}

// about says whether an objection is about the thing that a pointer leads to:
// that very thing, what holds it, or something in it. What stands at a file's
// beginning is about the file or one of its fields.
func about(place, pointer string) bool {
	if pointer == "" {
		return strings.Count(place, "/") <= 1
	}
	return place == pointer || place == path.Dir(pointer) || path.Dir(pointer) == "/" && place == "" || strings.HasPrefix(place, pointer+"/")
}

// pointerTo is the JSON pointer of the value that stands at a place of a file,
// or whose key does.
func pointerTo(f *position.File, at int) (string, bool) {
	var root *syntax.Node
	if path.Ext(f.Path) == ".md" {
		doc, _ := syntax.Read(f)
		root = doc.Front
	} else {
		root, _ = syntax.YAML(f, 0, len(f.Text))
	}
	if root == nil {
		return "", false
	}
	if found, ok := pointerIn(root, "", at); ok && (at > 0 || strings.HasPrefix(f.Path, "register/")) {
		return found, true
	}
	return "", at == 0 // told of the file as a whole
}

func pointerIn(n *syntax.Node, pointer string, at int) (string, bool) {
	for _, p := range n.Pairs {
		here := pointer + "/" + p.Key
		if found, ok := pointerIn(p.Value, here, at); ok {
			return found, true
		}
		if p.KeyAt.Start == at {
			return here, true
		}
	}
	for i, item := range n.Items {
		if found, ok := pointerIn(item, fmt.Sprintf("%s/%d", pointer, i), at); ok {
			return found, true
		}
	}
	return pointer, n.Kind != syntax.Empty && n.At.Start == at
}
