package check

import (
	"slices"
	"strings"
	"testing"
	"unicode"

	"baybinder/generator/base/finding"
)

// formCodes are the codes of the format's table of findings that are looked
// for here, without a walk: typed from the table.
var formCodes = strings.Fields(`
	syntax
	unknown-field wrong-type missing-field bad-id duplicate-id
	unknown-reference unknown-kind
	heading no-steps raw-html unsafe-link
	broken-link missing-picture picture-without-words
	not-listed not-used wrong-supply not-judged no-torque
	hazard-incomplete signal-word-typed harm-lowered language-unknown
	call-cycle calls-draft missing-qualification
	quantity hollow-link unknown-person
	too-long two-actions vague no-time
	value-disagrees count-disagrees words-disagree
	tool-does-not-fit tool-out-of-range no-torque-tool no-angle-tool
	torque-over-proof lift-over-limit too-few-people calibration-due
	changed-since-issue review-due reading-stale reading-overdue role-expired same-person record-twice row-missing not-authorised`)

// adviceCodes are those of them that the table calls advice.
var adviceCodes = []string{"picture-without-words", "hollow-link", "too-long", "words-disagree", "two-actions", "vague", "no-time",
	"calibration-due", "not-judged", "language-unknown", "no-torque", "review-due", "reading-stale", "reading-overdue", "role-expired", "same-person", "record-twice", "row-missing"}

// walkCodes are the table's other codes. They are looked for once effects
// are known, and have their cases there.
var walkCodes = strings.Fields(`
	energy-order not-released wait-too-short wait-short-of-limit proof-without-measure tester-not-proved
	live-work guard-off-live restored-while-open live-test
	not-reachable refit-over-open removed-twice refit-not-removed act-order
	left-isolated left-off left-loose left-in-place left-altered left-low not-bled
	not-marked leak-look-while-wet leak-look-without-pressure dead-branch not-asked bad-pause not-capped not-supplied reverse
	wrong-machine state-mismatch unit-gap unit-overlap never-applies too-many-conditions
	act-in-words
	not-translated translation-differs`)

// ourCodes go beyond the format's table; DEVELOPERS.md says why.
var ourCodes = strings.Fields("fault-code acceptance lifting-index unwitnessed not-yet unknown-fingerprint words-altered record-differs record-disagrees passive unwritten row-cut not-a-step not-qualified")

func TestCatalogueHasEveryCodeOfTheForm(t *testing.T) {
	for _, code := range formCodes {
		r := ruleOf(code)
		if r == nil {
			t.Errorf("%s is in the format's table and not in the catalogue", code)
			continue
		}
		if want := slices.Contains(adviceCodes, code); (r.Level == finding.Advice) != want {
			t.Errorf("%s is %s in the catalogue, and the format's table says otherwise", code, r.Level)
		}
	}
	for _, r := range Catalogue() {
		if !slices.Contains(formCodes, r.Code) && !slices.Contains(walkCodes, r.Code) && !slices.Contains(ourCodes, r.Code) {
			t.Errorf("%s is in the catalogue and not in the format's table", r.Code)
		}
	}
}

func ruleOf(code string) *finding.Rule {
	for _, r := range Catalogue() {
		if r.Code == code {
			return r
		}
	}
	return nil
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
	}
	for _, r := range rules {
		have := 0
		for _, has := range []bool{r.Manual != nil, r.Procedure != nil, r.Text != nil} {
			if has {
				have++
			}
		}
		if have != 1 {
			t.Errorf("%s must have one of the three functions", r.Code)
		}
	}
}

func TestEveryCodeHasAFailingAndACleanCase(t *testing.T) {
	failing, clean := map[string]bool{}, map[string]bool{}
	for _, name := range caseNames(t) {
		code, _, _ := strings.Cut(name, ".")
		archive, err := caseNamed(name)
		if err != nil {
			t.Fatal(err)
		}
		failing[code] = failing[code] || strings.Contains(part(archive, "")["want"], ": "+code+"\n")
		clean[code] = clean[code] || len(part(archive, "good/")) > 0
		if strings.TrimSpace(string(archive.Comment)) == "" {
			t.Errorf("%s does not say what is seeded", name)
		}
		if ruleOf(code) == nil {
			t.Errorf("%s is a case of a code that the catalogue does not have", name)
		}
	}
	for _, r := range Catalogue() {
		if slices.Contains(walkCodes, r.Code) {
			continue
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
// word, and it does not end with a full stop. A mend is the same.
func TestMessagesHaveOneVoice(t *testing.T) {
	for _, name := range caseNames(t) {
		archive, err := caseNamed(name)
		if err != nil {
			t.Fatal(err)
		}
		for _, f := range findIn(part(archive, "bad/")) {
			text := string(archive.Files[0].Data)
			for _, file := range archive.Files {
				text += file.Name + string(file.Data)
			}
			voice(t, name, f.Message, text)
			if f.Mend != "" {
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
