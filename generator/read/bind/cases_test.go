package bind_test

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"golang.org/x/tools/txtar"

	"baybinder/generator/base/casefile"
	"baybinder/generator/base/finding"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/decode"
	"baybinder/generator/read/source"
	"baybinder/generator/read/syntax"
)

// elsewhere says how many lines of a case are told by rules outside this package
// under one of these codes.
var elsewhere = map[string]int{
	"duplicate-id.ways.txtar": 1, "missing-field.acceptance.txtar": 1, "missing-field.again-in.txtar": 1, "missing-field.answers.txtar": 1, "missing-field.txtar": 1,
	"missing-field.ways.txtar": 8, "not-authorised.txtar": 2, "unknown-person.record.txtar": 2, "unknown-reference.lists.txtar": 2, "unknown-reference.options.txtar": 1,
	"unknown-reference.record-file.txtar": 2, "unknown-reference.within.txtar": 3, "wrong-type.locks.txtar": 1, "wrong-type.meaning.txtar": 1, "wrong-type.temperature.txtar": 1,
}

// readCodes are the codes of what is told while a manual is read.
func readCodes() (codes []string) {
	for _, r := range []*finding.Rule{
		&bind.UnknownReference, &bind.UnknownKind, &bind.UnsafeLink, &bind.BrokenLink, &bind.MissingPicture, &bind.UnknownPerson, &bind.LanguageUnknown,
		&syntax.Syntax, &syntax.DuplicateID, &decode.BadID, &decode.MissingField, &decode.WrongType, &decode.UnknownField,
	} {
		codes = append(codes, r.Code)
	}
	return codes
}

// What is told while a manual is read stands in the cases of the rules, each with
// its place as it was worked out from the texts; of the mended manual nothing is.
func TestWhatIsToldWhileReading(t *testing.T) {
	t.Parallel()
	names, err := filepath.Glob(filepath.Join("..", "..", "check", "cases", "*.txtar"))
	if err != nil || len(names) == 0 {
		t.Fatalf("no cases: %v", err)
	}
	codes := readCodes()
	for _, name := range names {
		data, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		archive := txtar.Parse(data)
		var want []string
		for _, line := range strings.Split(casefile.Part(archive, "")["want"], "\n") {
			if code := line[strings.LastIndexByte(line, ' ')+1:]; slices.Contains(codes, code) {
				want = append(want, line)
			}
		}
		name = filepath.Base(name)
		if missing := untold(t, name, casefile.Part(archive, "bad/"), want); len(missing) != elsewhere[name] {
			t.Errorf("%s: not told: %q", name, missing)
		}
		untold(t, name, casefile.Part(archive, "good/"), nil)
	}
}

// untold are the wanted lines that are not told; what is told besides is an error.
func untold(t *testing.T, name string, files map[string]string, want []string) []string {
	t.Helper()
	if files["shop.yaml"] == "" {
		files["shop.yaml"] = "title: Test shop\n"
	}
	_, found := bind.Manual(source.FromText(files))
	left, codes := slices.Clone(want), readCodes()
	for _, f := range found {
		line, col := f.At.LineCol()
		text := fmt.Sprintf("%s:%d:%d: %s", f.At.Path(), line, col, f.Code)
		if i := slices.Index(left, text); i >= 0 {
			left = slices.Delete(left, i, i+1)
		} else if slices.Contains(codes, f.Code) {
			t.Errorf("%s: surplus: %s (%s)", name, text, f.Message)
		}
	}
	return left
}
