package chemical

import (
	"strings"
	"testing"

	"baybinder/generator/language"
)

// Known: FROM MEMORY.

// Substances as the harmonised list of CLP (annex VI, table 3) classifies and
// labels them: name, statements, word, pictograms. All from memory: older
// entries of the list may differ, and the second column is what is fed in, so
// that only word and pictograms are judged. Gases under pressure have H280, which
// the list leaves to the seller. Codes of two categories are here only where the
// graver one is meant, or another statement has the same word and pictogram.
const classified = `
acetone: H225 H319 H336: Danger: 02 07
ethanol: H225: Danger: 02
methanol: H225 H331 H311 H301 H370: Danger: 02 06 08
propan-2-ol: H225 H319 H336: Danger: 02 07
toluene: H225 H361 H304 H373 H315 H336: Danger: 02 07 08
xylene: H226 H332 H312 H315: Warning: 02 07
benzene: H225 H350 H340 H372 H304 H319 H315: Danger: 02 07 08
n-hexane: H225 H361 H304 H373 H315 H336 H411: Danger: 02 07 08 09
n-heptane: H225 H304 H315 H336 H400 H410: Danger: 02 07 08 09
butanone: H225 H319 H336: Danger: 02 07
ethyl acetate: H225 H319 H336: Danger: 02 07
diethyl ether: H224 H302 H336: Danger: 02 07
styrene: H226 H361 H332 H372 H319 H315: Danger: 02 07 08
turpentine oil: H226 H332 H312 H302 H304 H319 H315 H317 H411: Danger: 02 07 08 09
dichloromethane: H351: Warning: 08
trichloroethylene: H350 H341 H319 H315 H336 H412: Danger: 07 08
tetrachloroethylene: H351 H411: Warning: 08 09
chloroform: H302 H331 H315 H319 H351 H361 H372: Danger: 06 08
carbon tetrachloride: H351 H331 H311 H301 H372 H412 H420: Danger: 06 08
ethylene glycol: H302: Warning: 07
naphthalene: H351 H302 H400 H410: Warning: 07 08 09
phenol: H341 H331 H311 H301 H373 H314: Danger: 05 06 08
aniline: H351 H341 H331 H311 H301 H372 H318 H317 H400: Danger: 05 06 08 09
formaldehyde solution: H350 H341 H331 H311 H301 H314 H317: Danger: 05 06 08
phthalic anhydride: H302 H335 H315 H318 H334 H317: Danger: 05 07 08
diphenylmethane diisocyanate: H351 H332 H373 H319 H335 H315 H334 H317: Danger: 07 08
toluene diisocyanate: H351 H330 H319 H335 H315 H334 H317 H412: Danger: 06 08
hydrazine: H226 H350 H331 H311 H301 H314 H317 H400 H410: Danger: 02 05 06 08 09
acetic acid: H226 H314: Danger: 02 05
sulphuric acid: H314: Danger: 05
hydrochloric acid: H314 H335: Danger: 05 07
nitric acid: H272 H331 H314: Danger: 03 05 06
phosphoric acid: H314: Danger: 05
hydrogen fluoride: H330 H310 H300 H314: Danger: 05 06
sodium hydroxide: H314: Danger: 05
potassium hydroxide: H302 H314: Danger: 05 07
ammonia solution: H314 H400: Danger: 05 09
sodium hypochlorite solution: H314 H400: Danger: 05 09
hydrogen peroxide: H271 H332 H302 H314: Danger: 03 05 07
potassium permanganate: H272 H302 H400 H410: Danger: 03 07 09
potassium dichromate: H272 H350 H340 H360 H330 H301 H372 H312 H314 H334 H317 H400 H410: Danger: 03 05 06 08 09
sodium nitrite: H272 H301 H400: Danger: 03 06 09
oxygen: H270 H280: Danger: 03 04
chlorine: H270 H280 H331 H319 H335 H315 H400: Danger: 03 04 06 09
nitrogen dioxide: H270 H280 H330 H314: Danger: 03 04 05 06
hydrogen: H220 H280: Danger: 02 04
propane: H220 H280: Danger: 02 04
carbon monoxide: H220 H280 H331 H360 H372: Danger: 02 04 06 08
hydrogen sulphide: H220 H280 H330 H400: Danger: 02 04 06 09
sulphur dioxide: H280 H331 H314: Danger: 04 05 06
sodium: H260 H314: Danger: 02 05
calcium carbide: H260: Danger: 02
white phosphorus: H250 H330 H300 H314 H400: Danger: 02 05 06 09
mercury: H330 H360 H372 H400 H410: Danger: 06 08 09
nickel sulphate: H350 H341 H360 H372 H332 H302 H315 H334 H317 H400 H410: Danger: 07 08 09
zinc chloride: H302 H314 H400 H410: Danger: 05 07 09
copper sulphate: H302 H318 H400 H410: Danger: 05 07 09
sodium azide: H300 H400 H410: Danger: 06 09`

func TestClassifiedSubstances(t *testing.T) {
	rows := strings.Split(strings.TrimSpace(classified), "\n")
	if len(rows) < 50 {
		t.Errorf("%d substances", len(rows))
	}
	for _, row := range rows {
		cell := strings.Split(row, ": ")
		l, err := LabelOf(strings.Fields(cell[1]))
		if err != nil {
			t.Fatal(err)
		}
		want := "GHS" + strings.Join(strings.Fields(cell[3]), " GHS")
		if l.Word.In(english) != cell[2] || join(l.Signs) != want {
			t.Errorf("%s: %s %s; the list has %s %s", cell[0], l.Word.In(english), join(l.Signs), cell[2], want)
		}
	}
}

// H221 alone says no category: CLP table 2.2 has Danger and GHS02 for 1B, Warning
// and nothing for 2. The graver stands, and the working says that it does.
func TestCategoryUnsaid(t *testing.T) {
	for code, want := range map[string]string{"H221": "1B (Danger, GHS02) or 2 (Warning, no pictogram)", "H228": "1 (Danger, GHS02) or 2 (Warning, GHS02)", "H261": "or 3", "H272": "or 3"} {
		l, err := LabelOf([]string{code})
		if said := strings.Join(l.Explain(&language.Default().Worked.Chemical).Assumes, " "); err != nil || l.Word != Danger || !strings.Contains(said, want) {
			t.Errorf("%s: %s, %s", code, l.Word.In(english), said)
		}
	}
	if l, _ := LabelOf([]string{"H220"}); strings.Contains(strings.Join(l.Explain(&language.Default().Worked.Chemical).Assumes, " "), "not said") {
		t.Error("H220 has one category")
	}
}

// CLP table 2.5: a gas under pressure has P410 + P403, out of the sun and well
// aired, and nothing of flames. Of a can (H229, table 2.3) both are asked: P210,
// and P410 + P412; the second from memory.
func TestPrecautionsOfPressure(t *testing.T) {
	for code, want := range map[string]string{"H280": "bottle-upright", "H229": "no-flames can-cool"} {
		l, err := LabelOf([]string{code})
		if err != nil {
			t.Fatal(err)
		}
		var ids []string
		for _, p := range l.Precautions() {
			ids = append(ids, p.ID)
		}
		if got := strings.Join(ids, " "); got != want {
			t.Errorf("%s: %s, want %s", code, got, want)
		}
	}
	l, _ := LabelOf([]string{"H280"})
	if text := l.Precautions()[0].Text; !strings.Contains(text, "sun") || !strings.Contains(text, "air moves") {
		t.Errorf("H280: %s", text)
	}
}

// As CLP spells it: "oxidiser" (table 2.4; H271 and H272 from memory).
func TestOxidiserIsSpelled(t *testing.T) {
	for _, code := range []string{"H270", "H271", "H272"} {
		if s := find(t, code); !strings.HasSuffix(s.Text, "oxidiser") {
			t.Error(s.Text)
		}
	}
}
