package chemical

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator/base/finding"
	"baybinder/generator/language"
)

// Known: SEEN, FROM MEMORY.

var english = &language.Default().Worked.Chemical

// The table of the statements, typed a second time from CLP annex I (tables
// 2.3.1 and 2.6.2), a public list of H200 to H224 and a public dump of the GHS
// table: code, word, pictogram. A star marks a pictogram or a word that is from
// memory, or where two categories share the code; it is not judged here.
const published = `
H220 Danger GHS02, H221 Danger GHS02, H222 Danger GHS02, H223 Warning GHS02, H224 Danger GHS02, H225 Danger GHS02,
H226 Warning GHS02, H228 * *, H229 Warning -, H250 Danger GHS02, H251 Danger GHS02, H252 Warning GHS02,
H260 Danger GHS02, H261 * GHS02, H270 Danger GHS03, H271 Danger GHS03, H272 * GHS03, H280 Warning GHS04,
H281 Warning GHS04, H290 Warning GHS05, H300 Danger GHS06, H301 Danger GHS06, H302 Warning GHS07, H304 Danger GHS08,
H310 Danger GHS06, H311 Danger GHS06, H312 Warning GHS07, H314 Danger *, H315 Warning GHS07, H317 Warning *,
H318 Danger GHS05, H319 Warning GHS07, H330 Danger GHS06, H331 Danger GHS06, H332 Warning GHS07, H334 Danger *,
H335 Warning GHS07, H336 Warning GHS07, H340 Danger GHS08, H341 Warning GHS08, H350 Danger GHS08, H351 Warning GHS08,
H360 Danger GHS08, H361 Warning GHS08, H370 Danger GHS08, H371 Warning GHS08, H372 Danger GHS08, H373 Warning GHS08,
H400 Warning GHS09, H410 Warning GHS09, H411 * GHS09, H412 * -, H413 * -, H420 Warning GHS07`

func TestStatementsAreThePublishedOnes(t *testing.T) {
	rows := strings.Split(strings.TrimSpace(published), ",")
	if len(rows) != len(statements) {
		t.Errorf("%d rows are published, %d in the set", len(rows), len(statements))
	}
	for _, row := range rows {
		word := strings.Fields(row)
		s := find(t, word[0])
		if word[1] != "*" && s.Word.In(english) != word[1] {
			t.Errorf("%s: %q, published %s", s.Code, s.Word.In(english), word[1])
		}
		if sign := strings.Trim(word[2], "-"); word[2] != "*" && s.Sign.String() != sign {
			t.Errorf("%s: %q, published %q", s.Code, s.Sign, sign)
		}
	}
}

func find(t testing.TB, code string) Statement {
	t.Helper()
	s, err := Find(code)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// What the public dump prints wrongly, corrected from memory of the UN GHS. Its
// slips must not be in the set: an exclamation mark for H314 and H334, corrosion
// for H317, "Causes damage" for H373, P-codes for the words of H411 to H413.
func TestBadCopyIsNotInTheSet(t *testing.T) {
	for code, bad := range map[string]Sign{"H314": ExclamationMark, "H334": ExclamationMark, "H317": Corrosion} {
		if find(t, code).Sign == bad {
			t.Errorf("%s has the bad copy's %s", code, bad)
		}
	}
	if strings.HasPrefix(find(t, "H373").Text, "Causes") {
		t.Error("H373 has the bad copy's text")
	}
	for _, code := range []string{"H411", "H412", "H413"} {
		if w := find(t, code).Word; w != NoWord {
			t.Errorf("%s has the word %s", code, w.In(english))
		}
	}
}

// Texts that were seen, of those that the demo manual's supplies carry and a
// few more.
func TestTexts(t *testing.T) {
	for code, want := range map[string]string{
		"H317": "May cause an allergic skin reaction", "H319": "Causes serious eye irritation", "H336": "May cause drowsiness or dizziness",
		"H280": "Contains gas under pressure; may explode if heated", "H304": "May be fatal if swallowed and enters airways",
		"H225": "Highly flammable liquid and vapour", "H314": "Causes severe skin burns and eye damage",
	} {
		if got := find(t, code).Text; got != want {
			t.Errorf("%s: %q, published %q", code, got, want)
		}
	}
}

// What European law adds has neither a signal word nor a pictogram, and takes none
// from the others: CLP article 25(1) and annex II, part 1, from memory. The texts
// are those on cans of bleach, acetone and instant glue, from memory.
func TestSupplements(t *testing.T) {
	for _, s := range supplements {
		l, err := LabelOf([]string{"H315", s.Code})
		if err != nil || l.Word != Warning || !slices.Equal(l.Signs, []Sign{ExclamationMark}) || len(l.Statements) != 2 {
			t.Errorf("%s: %+v, %v", s.Code, l, err)
		}
	}
	for code, want := range map[string]string{
		"EUH031": "Contact with acids liberates toxic gas", "EUH066": "Repeated exposure may cause skin dryness or cracking",
	} {
		if got := find(t, code).Text; got != want {
			t.Errorf("%s: %q, published %q", code, got, want)
		}
	}
}

// The kind of hazard is the first figure (UN GHS, annex 3): each statement
// speaks of what its code says.
func TestPartsFollowTheCodes(t *testing.T) {
	for _, s := range statements {
		physical, environment := s.part <= eatsMetal, s.part >= water
		if (s.Code[1] == '2') != physical || (s.Code[1] == '4') != environment || !code.MatchString(s.Code) {
			t.Errorf("%s is sorted under %d", s.Code, s.part)
		}
	}
	if codes := Codes()[:len(statements)]; !slices.IsSorted(codes) || len(slices.Compact(codes)) != len(statements) {
		t.Error("the codes are not in order, or come twice")
	}
}

func TestFindRefuses(t *testing.T) {
	for code, want := range map[string]string{
		"H3I9":   `"H3I9" is not a hazard statement that the manual knows: did you mean H319? Look it up in section 2 of the safety data sheet`,
		"H299":   `"H299" is not a hazard statement that the manual knows: did you mean H229? Look it up in section 2 of the safety data sheet`,
		"P210":   `"P210" is a precaution, and no hazard: write its code as the safety data sheet has it, as in H319`,
		"":       `"" is not the code of a hazard statement: write its code as the safety data sheet has it, as in H319`,
		"EUH39":  `"EUH39" is not the code of a hazard statement: write its code as the safety data sheet has it, as in H319`,
		"EUH013": `"EUH013" is not a hazard statement that the manual knows: did you mean EUH014? Look it up in section 2 of the safety data sheet`,
	} {
		s, err := Find(code)
		if err == nil {
			t.Errorf("%q is %v", code, s)
			continue
		}
		if got := err.Error() + ": " + err.(interface{ Mend() finding.Words }).Mend().String(); got != want {
			t.Errorf("got  %s\nwant %s", got, want)
		}
	}
	if s, err := Find(" h319 "); err != nil || s.Code != "H319" {
		t.Errorf("a small letter is refused: %v", err)
	}
}

// The precedence rules: UN GHS 1.4.10.5.3 and CLP articles 20 and 26, from
// memory; a page on the order of the pictograms and a page on the articles were
// seen, the texts themselves were not.
func TestPrecedence(t *testing.T) {
	for _, c := range []struct{ codes, word, signs, covered, optional string }{
		{"H319", "Warning", "GHS07", "", ""},
		{"H301 H319", "Danger", "GHS06", "", ""},
		{"H301 H302 H336", "Danger", "GHS06", "", ""},
		{"H314 H315 H319", "Danger", "GHS05", "", ""},
		{"H314 H336", "Danger", "GHS05 GHS07", "", ""}, // drowsiness is neither skin nor eyes
		{"H314 H317", "Danger", "GHS05 GHS07", "", ""}, // nor is an allergy irritation
		{"H334 H317 H315", "Danger", "GHS08", "", ""},
		{"H334 H335", "Danger", "GHS07 GHS08", "", ""},
		{"H304 H315", "Danger", "GHS07 GHS08", "", ""}, // another health hazard than the lungs' allergy
		{"H314 H318", "Danger", "GHS05", "H318", ""},
		{"H400 H410", "Warning", "GHS09", "H400", ""},
		{"H220 H280", "Danger", "GHS02 GHS04", "", "GHS04"},
		{"H331 H280", "Danger", "GHS04 GHS06", "", "GHS04"},
		{"H270 H280", "Danger", "GHS03 GHS04", "", ""},
		{"H225 H304 H336 H411", "Danger", "GHS02 GHS07 GHS08 GHS09", "", ""},
		{"H412", "", "", "", ""},
		{"H319 H319", "Warning", "GHS07", "", ""},
		{"", "", "", "", ""},
	} {
		l, err := LabelOf(strings.Fields(c.codes))
		if err != nil {
			t.Fatal(err)
		}
		if l.Word.In(english) != c.word || join(l.Signs) != c.signs || join(l.Optional) != c.optional {
			t.Errorf("%s: %s, %s, optional %s", c.codes, l.Word.In(english), join(l.Signs), join(l.Optional))
		}
		var covered []string
		for _, s := range l.Covered {
			covered = append(covered, s.Code)
		}
		if got := strings.Join(covered, " "); got != c.covered {
			t.Errorf("%s covers %s, want %s", c.codes, got, c.covered)
		}
	}
}

func join(signs []Sign) string {
	var out []string
	for _, s := range signs {
		out = append(out, s.String())
	}
	return strings.Join(out, " ")
}

func TestLabelOfAnUnknownCode(t *testing.T) {
	if l, err := LabelOf([]string{"H319", "H999"}); err == nil {
		t.Errorf("H999 makes %v", l)
	}
}

func drawCodes(t *rapid.T) []string {
	return rapid.SliceOfN(rapid.SampledFrom(Codes()), 1, 6).Draw(t, "codes")
}

// The order of the codes changes nothing but the order of the statements; one
// more code never weakens the word, nor takes a pictogram other than the
// exclamation mark away, nor a precaution.
func TestOneMoreHazardNeverWeakens(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		codes := drawCodes(t)
		less, err := LabelOf(codes[1:])
		if err != nil {
			t.Fatal(err)
		}
		more, err := LabelOf(codes)
		if err != nil {
			t.Fatal(err)
		}
		if more.Word < less.Word {
			t.Fatalf("%v: %s falls to %s", codes, less.Word.In(english), more.Word.In(english))
		}
		for _, s := range less.Signs {
			if s != ExclamationMark && !slices.Contains(more.Signs, s) {
				t.Fatalf("%v: %s is lost", codes, s)
			}
		}
		for _, p := range less.Precautions() {
			if !slices.Contains(more.Precautions(), p) {
				t.Fatalf("%v: %q is lost", codes, p.Text)
			}
		}
		slices.Reverse(codes)
		if turned, err := LabelOf(codes); err != nil || !slices.Equal(turned.Signs, more.Signs) || turned.Word != more.Word {
			t.Fatalf("%v: the order matters", codes)
		}
	})
}

// Every statement calls for something, and what it calls for is said once, in
// the order of the stages.
func TestPrecautions(t *testing.T) {
	for _, s := range statements {
		l, err := LabelOf([]string{s.Code})
		if err != nil || len(l.Precautions()) == 0 {
			t.Errorf("%s calls for nothing", s.Code)
		}
	}
	l, _ := LabelOf([]string{"H319"})
	var said []string
	for _, p := range l.Precautions() {
		said = append(said, p.ID)
	}
	if got := strings.Join(said, " "); got != "eye-protection rinse-eyes" {
		t.Errorf("H319 calls for %s", got)
	}
	if !slices.IsSortedFunc(advices, func(a, b advice) int { return int(a.Stage) - int(b.Stage) }) {
		t.Error("the precautions are not in the order of the stages")
	}
	seen := map[string]bool{}
	for _, a := range advices {
		if seen[a.ID] {
			t.Errorf("two precautions %s", a.ID)
		}
		seen[a.ID] = true
	}
}

func TestSignNames(t *testing.T) {
	if Flame.String() != "GHS02" || Environment.String() != "GHS09" || NoSign.String() != "" {
		t.Error("the pictograms are misnumbered")
	}
}

// Every language but English has each statement and each precaution in words of
// its own, and none that no label has. A few statements as CLP annex III has them
// in Spanish and German, from memory.
func TestLabelsAreSaidInEveryLanguage(t *testing.T) {
	for _, l := range language.All() {
		say := &l.Worked.Chemical
		if l == language.Default() {
			continue
		}
		if len(say.Statements) != len(statements) || len(say.Precautions) != len(advices) {
			t.Errorf("%s has %d statements of %d, and %d precautions of %d", l.Code, len(say.Statements), len(statements), len(say.Precautions), len(advices))
		}
		for _, s := range statements {
			if here := say.Statements[s.Code]; here == "" || here == s.Text || s.In(say) != here {
				t.Errorf("%s: %s is %q", l.Code, s.Code, here)
			}
		}
		for _, a := range advices {
			if here := say.Precautions[a.ID]; here == "" || here == a.Text || a.In(say) != here {
				t.Errorf("%s: %s is %q", l.Code, a.ID, here)
			}
		}
	}
	for code, want := range map[string][2]string{
		"H225": {"Líquido y vapores muy inflamables", "Flüssigkeit und Dampf leicht entzündbar"},
		"H304": {"Puede ser mortal en caso de ingestión y penetración en las vías respiratorias", "Kann bei Verschlucken und Eindringen in die Atemwege tödlich sein"},
		"H315": {"Provoca irritación cutánea", "Verursacht Hautreizungen"},
		"H319": {"Provoca irritación ocular grave", "Verursacht schwere Augenreizung"},
	} {
		s, err := Find(code)
		if es, de := s.In(&language.Of("es").Worked.Chemical), s.In(&language.Of("de").Worked.Chemical); err != nil || es != want[0] || de != want[1] {
			t.Errorf("%s: %q, %q", code, es, de)
		}
	}
	for tag, want := range map[string]string{"en": "Danger Warning", "es": "Peligro Atención", "de": "Gefahr Achtung"} {
		say := &language.Of(tag).Worked.Chemical
		if got := Danger.In(say) + " " + Warning.In(say); got != want {
			t.Errorf("%s: %s, want %s", tag, got, want)
		}
	}
}
