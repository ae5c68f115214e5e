package check

import (
	"slices"
	"strings"
	"testing"
	"unicode"

	"golang.org/x/tools/txtar"

	"baybinder/generator/base/casefile"
	"baybinder/generator/base/finding"
	"baybinder/generator/prove/walk"
)

// The codes of the format's table of findings and their levels, typed from the
// table and from the text of Version 4, which adds to it.
var (
	formErrors = strings.Fields(`
		syntax unknown-field wrong-type missing-field bad-id duplicate-id unknown-reference unknown-kind
		heading no-steps raw-html unsafe-link broken-link missing-picture not-listed not-used
		hazard-incomplete signal-word-typed harm-lowered
		energy-order not-released proof-without-measure tester-not-proved live-work guard-off-live restored-while-open live-test
		not-reachable refit-over-open removed-twice refit-not-removed act-order
		left-isolated left-off left-loose left-in-place left-altered left-low not-bled
		not-marked leak-look-while-wet bad-pause not-supplied reverse
		call-cycle wrong-machine state-mismatch calls-draft missing-qualification
		unit-gap unit-overlap too-many-conditions quantity value-disagrees count-disagrees wait-too-short
		tool-does-not-fit tool-out-of-range no-torque-tool no-angle-tool torque-over-proof lift-over-limit too-few-people
		not-translated translation-differs changed-since-issue unknown-person
		wrong-supply dead-branch not-authorised not-asked`)
	formAdvice = strings.Fields(`
		picture-without-words not-capped never-applies act-in-words hollow-link calibration-due
		too-long two-actions vague no-time review-due reading-stale reading-overdue role-expired same-person
		words-disagree wait-short-of-limit leak-look-without-pressure not-judged language-unknown record-twice row-missing no-torque
		record-disagrees`)
)

func TestCatalogueHasEveryCodeOfTheForm(t *testing.T) {
	for level, codes := range map[finding.Level][]string{finding.Error: formErrors, finding.Advice: formAdvice} {
		for _, code := range codes {
			switch r := Named(code); {
			case r == nil:
				t.Errorf("%s is in the format's table and not in the catalogue", code)
			case r.Level != level && code != "record-disagrees": // an error save where the text says so
				t.Errorf("%s is %s in the catalogue, and %s in the format's table", code, r.Level, level)
			}
		}
	}
	for _, r := range Catalogue() {
		if r.Ours == slices.Contains(slices.Concat(formErrors, formAdvice), r.Code) {
			t.Errorf("%s: its literal says Ours: %v", r.Code, r.Ours)
		}
	}
}

func TestCatalogueIsWhole(t *testing.T) {
	seen := map[string]bool{}
	for _, r := range Catalogue() {
		if seen[r.Code] {
			t.Errorf("%s: two rules of one code", r.Code)
		}
		seen[r.Code] = true
		for name, text := range map[string]string{"title": r.Title, "why": r.Why, "mend": r.Mend} {
			if strings.TrimSpace(text) == "" {
				t.Errorf("%s has no %s", r.Code, name)
			}
		}
		if strings.HasSuffix(r.Title, ".") || !strings.HasSuffix(r.Why, ".") || !strings.HasSuffix(r.Mend, ".") {
			t.Errorf("%s: the title is a line without a full stop, why and mend are sentences with one", r.Code)
		}
		if r.Acceptable && r.Level != finding.Advice {
			t.Errorf("%s is an error, and no error is accepted", r.Code)
		}
	}
	for _, r := range rules {
		have := 0
		for _, has := range []bool{r.Manual != nil, r.Procedure != nil, r.Text != nil, r.Together != nil} {
			if has {
				have++
			}
		}
		if have != 1 {
			t.Errorf("%s must have one of the four functions", r.Code)
		}
	}
}

// What no case finds, nothing tells.
func TestEveryCodeHasAFailingAndACleanCase(t *testing.T) {
	failing, clean := map[string]bool{}, map[string]bool{}
	look := func(code string, archive *txtar.Archive) {
		failing[code] = failing[code] || strings.Contains(casefile.Part(archive, "")["want"], ": "+code+"\n")
		clean[code] = clean[code] || len(casefile.Part(archive, "good/")) > 0
	}
	for _, name := range caseNames(t) {
		code, _, _ := strings.Cut(name, ".")
		archive, err := caseNamed(name)
		if err != nil {
			t.Fatal(err)
		}
		look(code, archive)
		if strings.TrimSpace(string(archive.Comment)) == "" {
			t.Errorf("%s does not say what is seeded", name)
		}
		if Named(code) == nil {
			t.Errorf("%s is a case of a code that the catalogue does not have", name)
		}
	}
	for _, r := range Catalogue() {
		for _, data := range walk.CasesOf(r.Code) {
			look(r.Code, txtar.Parse(data))
		}
		if !failing[r.Code] {
			t.Errorf("%s has no case that finds it", r.Code)
		}
		if !clean[r.Code] {
			t.Errorf("%s has no case that is mended", r.Code)
		}
	}
}

func TestExamplesAreShort(t *testing.T) {
	for _, r := range Catalogue() {
		if r.Code == "too-many-conditions" {
			continue // nobody reads a job of a dozen conditions in a terminal
		}
		bad, good, ok := Example(r.Code)
		if !ok || !strings.Contains(bad, "\n> ") || strings.Contains(good, "\n> ") || bad == good {
			t.Errorf("%s: explain has nothing to show:\n%s\n%s", r.Code, bad, good)
		}
		if n := strings.Count(bad, "\n"); n > 14 {
			t.Errorf("%s: the example has %d lines; nobody reads that in a terminal", r.Code, n)
		}
	}
	if _, _, ok := Example("no-such-code"); ok {
		t.Error("a code without a case has an example")
	}
}

// The voice: a message goes on after "error: ", so that it begins with a small
// letter, unless it begins with a name that the manual has or with a shortened
// word, and it does not end with a full stop. A mend is the same, but for a rule's
// own, which is sentences.
func TestMessagesHaveOneVoice(t *testing.T) {
	for _, name := range caseNames(t) {
		archive, err := caseNamed(name)
		if err != nil {
			t.Fatal(err)
		}
		for _, f := range findIn(casefile.Part(archive, "bad/")) {
			text := string(archive.Files[0].Data)
			for _, file := range archive.Files {
				text += file.Name + string(file.Data)
			}
			voice(t, name, f.Message, text)
			if r := Named(f.Code); f.Mend != "" && (r == nil || f.Mend != r.Mend) {
				voice(t, name, f.Mend, text)
			}
		}
	}
}

func voice(t *testing.T, name, says, manual string) {
	t.Helper()
	if strings.TrimSpace(says) != says || says == "" || strings.Contains(says, "\n") {
		t.Errorf("%s: %q is not one line", name, says)
		return
	}
	if strings.HasSuffix(says, ".") {
		t.Errorf("%s: %q ends with a full stop", name, says)
	}
	first, _, _ := strings.Cut(says, " ")
	capital := unicode.IsUpper([]rune(says)[0]) && strings.ToUpper(first) != first
	if capital && !strings.Contains(manual, first) {
		t.Errorf("%s: %q begins with a capital", name, says)
	}
}
