package generator_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// casesAndTests are the names of all that can judge a clause of the format: the
// cases (a file's name without .txtar) and the test functions of the repository,
// with the folder before them too: of some names there are several.
func casesAndTests(t *testing.T) map[string]bool {
	t.Helper()
	all := map[string]bool{}
	must(t, filepath.WalkDir("..", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() && (d.Name() == "node_modules" || d.Name() == ".git") {
			return firstOf(err, fs.SkipDir)
		}
		if kase, is := strings.CutSuffix(d.Name(), ".txtar"); is {
			all[kase] = true
		}
		if !strings.HasSuffix(name, "_test.go") {
			return nil
		}
		file, err := parser.ParseFile(token.NewFileSet(), name, nil, parser.SkipObjectResolution)
		if err != nil {
			return err
		}
		for _, d := range file.Decls {
			if f, is := d.(*ast.FuncDecl); is && f.Recv == nil && strings.HasPrefix(f.Name.Name, "Test") {
				all[f.Name.Name] = true
				all[filepath.Base(filepath.Dir(name))+"."+f.Name.Name] = true
			}
		}
		return nil
	}))
	return all
}

// unjudged says what a line of a list of clauses lacks: `the sentence | judge,
// judge`. A heading and an empty line lack nothing.
func unjudged(line string, known map[string]bool) (lacks []string) {
	if line == "" || strings.HasPrefix(line, "#") {
		return nil
	}
	clause, names, is := strings.Cut(line, " | ")
	if !is || strings.TrimSpace(clause) == "" {
		return []string{"no sentence and judge with | between them"}
	}
	for name := range strings.SplitSeq(names, ",") {
		if name = strings.TrimSpace(name); !known[name] {
			lacks = append(lacks, "no case and no test has the name "+name)
		}
	}
	return lacks
}

// Each sentence of the source format has a case or a test that fails where it
// is broken. The lists are in testdata/clauses, in the order of the format.
func TestEveryClauseIsJudged(t *testing.T) {
	t.Parallel()
	known := casesAndTests(t)
	lists, err := filepath.Glob("testdata/clauses/*.txt")
	must(t, err)
	if len(lists) == 0 {
		t.Fatal("no list of clauses is there")
	}
	for _, list := range lists {
		data, err := os.ReadFile(list)
		must(t, err)
		said := map[string]bool{}
		for i, line := range strings.Split(string(data), "\n") {
			for _, lack := range unjudged(line, known) {
				t.Errorf("%s:%d: %s", list, i+1, lack)
			}
			if clause, _, is := strings.Cut(line, " | "); is && said[clause] {
				t.Errorf("%s:%d: this sentence stands twice", list, i+1)
			} else {
				said[clause] = is
			}
		}
	}
}

func TestAClauseWithoutAJudgeIsNamed(t *testing.T) {
	t.Parallel()
	known := map[string]bool{"no-time": true, "TestCases": true}
	for line, lacks := range map[string]int{
		"":                             0,
		"# Steps":                      0,
		"A step has a time. | no-time": 0,
		"A step has a time. | no-time, TestCases": 0,
		"A step has a time.":                      1,
		"A step has a time. | ":                   1,
		" | no-time":                              1,
		"A step has a time. | no-thyme":           1,
		"A step has a time. | a, no-time, b":      2,
	} {
		if got := unjudged(line, known); len(got) != lacks {
			t.Errorf("%q: %v, want %d", line, got, lacks)
		}
	}
}
