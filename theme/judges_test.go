package theme

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"baybinder/generator/base/needed"
)

// Known: SEEN.

// judge runs a tool of .ci/node_modules, and says what it objected to.
func judge(t *testing.T, name string, args ...string) (said string, clean bool) {
	t.Helper()
	tool, err := filepath.Abs("../.ci/node_modules/.bin/" + name)
	if err != nil {
		t.Fatal(err)
	}
	_, missing := os.Stat(tool)
	needed.Judge(t, missing == nil, name)
	out, err := exec.Command(tool, args...).CombinedOutput()
	return string(out), err == nil
}

// The scripts have types that agree, by TypeScript's checker; a script that
// misspells what a page has does not.
func TestScriptsHaveTypes(t *testing.T) {
	if said, clean := judge(t, "tsc", "--project", "../.ci"); !clean {
		t.Error(said)
	}
	bad := filepath.Join(t.TempDir(), "bad.js")
	text := "const step = document.querySelector('li');\nif (step) step.scrolIntoView();\n"
	if err := os.WriteFile(bad, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
	said, clean := judge(t, "tsc", "--allowJs", "--checkJs", "--noEmit", "--types", "", "--target", "es2023", bad)
	if clean || !strings.Contains(said, "scrolIntoView") {
		t.Errorf("the checker lets a bad script pass: %s", said)
	}
}

// The styles hold nothing that browsers do not know or that stands twice, by
// stylelint; a style with a fault of each sort does not pass.
func TestStylesAreKnown(t *testing.T) {
	const rules = "--config=../.ci/stylelint.json"
	if said, clean := judge(t, "stylelint", rules, "styles/*/*.css", "../generator/command/write/*.css"); !clean {
		t.Error(said)
	}
	bad := filepath.Join(t.TempDir(), "bad.css")
	if err := os.WriteFile(bad, []byte("a {\n  colr: red;\n}\na {\n  top: 1pxx;\n}\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	said, clean := judge(t, "stylelint", rules, bad)
	for _, rule := range []string{"property-no-unknown", "no-duplicate-selectors", "declaration-property-value-no-unknown"} {
		if clean || !strings.Contains(said, rule) {
			t.Errorf("the judge lets a bad style pass by its rule %s: %s", rule, said)
		}
	}
}
