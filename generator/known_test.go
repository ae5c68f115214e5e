package generator_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// knownWords are what a check may say of where its expectations come from.
var knownWords = []string{"SEEN", "DERIVED", "FROM MEMORY"}

var (
	knownMark = regexp.MustCompile(`(?m)^// Known: (.*)\.$`)
	knownRow  = regexp.MustCompile(`(?m)^\| (.*?) \| .* \| ([A-Z, ]+) \| (.*) \|$`)
	inQuotes  = regexp.MustCompile("`([^`]+_test\\.go)`")
)

// marksOf are the words behind the mark of a test file; none where it has no
// mark.
func marksOf(t *testing.T, text string) []string {
	t.Helper()
	m := knownMark.FindStringSubmatch(text)
	if m == nil {
		return nil
	}
	list := strings.Split(m[1], ", ")
	for _, word := range list {
		if !slices.Contains(knownWords, word) {
			t.Errorf("%q is none of %v", word, knownWords)
		}
	}
	return list
}

// The table of DEVELOPERS.md says of each check what the file beside it says:
// whether its source was seen, was derived, or is from memory. A test that says
// "from memory" anywhere has the mark, and none has it that does not say what.
func TestTableSaysWhatIsKnown(t *testing.T) {
	t.Parallel()
	marked, told := map[string][]string{}, map[string][]string{}
	must(t, filepath.WalkDir("..", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() && (d.Name() == "node_modules" || d.Name() == ".git") {
			return firstOf(err, fs.SkipDir)
		}
		if !strings.HasSuffix(name, "_test.go") || filepath.Base(name) == "known_test.go" {
			return nil
		}
		data, err := os.ReadFile(name)
		marks := marksOf(t, string(data))
		says := strings.Contains(strings.ToLower(strings.Join(strings.Fields(strings.ReplaceAll(knownMark.ReplaceAllString(string(data), ""), "//", " ")), " ")), "from memory")
		if says != slices.Contains(marks, "FROM MEMORY") {
			t.Errorf("%s: says that something is from memory: %t; its mark: %v", name, says, marks)
		}
		if marks != nil {
			marked[filepath.ToSlash(strings.TrimPrefix(name, ".."+string(filepath.Separator)))] = marks
		}
		return err
	}))
	table, err := os.ReadFile("../DEVELOPERS.md")
	must(t, err)
	rows := knownRow.FindAllStringSubmatch(string(table), -1)
	if len(rows) < 30 {
		t.Fatalf("only %d rows of the table say what is known", len(rows))
	}
	for _, row := range rows {
		var want []string
		says := strings.Split(row[2], ", ")
		for _, file := range inQuotes.FindAllStringSubmatch(row[3], -1) {
			if marked[file[1]] == nil {
				t.Errorf("%s: %s is not there, or has no mark", row[1], file[1])
			}
			told[file[1]] = append(told[file[1]], says...)
			want = append(want, marked[file[1]]...)
		}
		for _, word := range says {
			if !slices.Contains(want, word) {
				t.Errorf("%s: the table says %s, and the files %v", row[1], row[2], want)
			}
		}
	}
	for file, marks := range marked {
		for _, word := range marks {
			if !slices.Contains(told[file], word) {
				t.Errorf("%s is marked %s, and no row of the table that names it says so", file, word)
			}
		}
	}
}

func firstOf(a, b error) error {
	if a != nil {
		return a
	}
	return b
}

// skips are the tests that leave something out by themselves, with why: every
// outside judge is asked for through one helper, which fails where none may be
// missing.
var skips = map[string]string{
	"TestCostIsLinear":           "a measurement that takes long",
	"TestCtrlCDuringABuild":      "a system on which a test cannot press Ctrl-C",
	"TestReadOfWhatMayNotBeRead": "a user who may read everything",
}

// ownSkips are the functions of a test file that skip by themselves. What skips
// a drawn value, in a call of Fuzz or Check, draws another.
func ownSkips(file *ast.File) []string {
	var out []string
	for _, d := range file.Decls {
		f, is := d.(*ast.FuncDecl)
		if !is {
			continue
		}
		ast.Inspect(f, func(n ast.Node) bool {
			call, is := n.(*ast.CallExpr)
			if !is {
				return true
			}
			s, is := call.Fun.(*ast.SelectorExpr)
			switch {
			case !is:
			case s.Sel.Name == "Fuzz" || s.Sel.Name == "Check":
				return false
			case slices.Contains([]string{"Skip", "Skipf", "SkipNow"}, s.Sel.Name) && !slices.Contains(out, f.Name.Name):
				out = append(out, f.Name.Name)
			}
			return true
		})
	}
	return out
}

// A test that skips by itself, where it should ask for its judge, is found.
func TestJudgesAreAskedForInOneWay(t *testing.T) {
	t.Parallel()
	met := map[string]bool{}
	must(t, filepath.WalkDir("..", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() && (d.Name() == "node_modules" || d.Name() == ".git") {
			return firstOf(err, fs.SkipDir)
		}
		if !strings.HasSuffix(name, "_test.go") || strings.Contains(filepath.ToSlash(name), "base/needed/") {
			return nil
		}
		file, err := parser.ParseFile(token.NewFileSet(), name, nil, 0)
		if err != nil {
			return err
		}
		for _, f := range ownSkips(file) {
			if met[f] = true; skips[f] == "" {
				t.Errorf("%s: %s skips by itself: ask for what it needs with needed.Judge", name, f)
			}
		}
		return nil
	}))
	for name := range skips {
		if !met[name] {
			t.Errorf("%s skips nothing", name)
		}
	}
}

// The test above sees a skip, and passes over a drawn value.
func TestASkipIsSeen(t *testing.T) {
	t.Parallel()
	for body, want := range map[string]int{
		`if gone { t.Skip("no judge") }`: 1, `t.Skipf("%s", x)`: 1, `needed.Judge(t, there, "it")`: 0, `f.Fuzz(func(t *testing.T, s string) { t.Skip() })`: 0,
	} {
		file, err := parser.ParseFile(token.NewFileSet(), "a.go", "package a\nfunc TestA() { "+body+" }", 0)
		must(t, err)
		if got := ownSkips(file); len(got) != want {
			t.Errorf("%s: %v", body, got)
		}
	}
}
