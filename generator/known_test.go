package generator_test

import (
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

// skips are the test files that leave something out by themselves, with why:
// every outside judge is asked for through one helper, which fails where none may
// be missing.
var skips = map[string]string{
	"generator/base/needed/needed.go":           "the helper",
	"generator/base/needed/needed_test.go":      "its test",
	"generator/prove/walk/bench_test.go":        "a measurement that takes long",
	"generator/command/schema/fuzz_test.go":     "a drawn text that is none",
	"generator/command/schema/property_test.go": "a drawn text that is none",
	"generator/command/settle/fuzz_test.go":     "a drawn text that is none",
	"generator/command/rename/fuzz_test.go":     "a drawn text that is none",
	"generator/command/begin/reach_test.go":     "a drawn machine without the part",
	"generator/read/source/tree_test.go":        "who may read everything is refused nothing",
}

// TestJudgesAreAskedForInOneWay finds a test that skips by itself.
func TestJudgesAreAskedForInOneWay(t *testing.T) {
	t.Parallel()
	call, met := regexp.MustCompile(`\bt\.Skip(f|Now)?\(`), map[string]bool{}
	must(t, filepath.WalkDir("..", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() && (d.Name() == "node_modules" || d.Name() == ".git") {
			return firstOf(err, fs.SkipDir)
		}
		if filepath.Ext(name) != ".go" || d.Name() == "known_test.go" {
			return nil
		}
		data, err := os.ReadFile(name)
		if at := filepath.ToSlash(strings.TrimPrefix(name, ".."+string(filepath.Separator))); call.Match(data) {
			if met[at] = true; skips[at] == "" {
				t.Errorf("%s skips by itself: ask for a judge with needed.Judge", at)
			}
		}
		return err
	}))
	for name := range skips {
		if !met[name] && !strings.HasPrefix(name, "generator/base/needed/") {
			t.Errorf("%s skips nothing", name)
		}
	}
}
