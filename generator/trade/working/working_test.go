package working_test

import (
	"testing"

	"baybinder/generator/base/quantity"
	"baybinder/generator/trade/working"
)

func TestStringIsOneLineFromFormulaToSource(t *testing.T) {
	w := working.Working{Formula: "t = R·C", Put: "2 Ω · 3 F", Result: "6 s", Source: "a textbook"}
	if got, want := w.String(), "t = R·C = 2 Ω · 3 F = 6 s; source: a textbook"; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
}

func TestStringLeavesOutWhatIsNotThere(t *testing.T) {
	w := working.Working{Formula: "F = T/(K·d)", Result: "14 kN"}
	if got, want := w.String(), "F = T/(K·d) = 14 kN"; got != want {
		t.Errorf("got %q, want %q", got, want)
	}
	if (working.Working{}).Known() || !w.Known() {
		t.Error("a working is known by its formula")
	}
}

func TestWithWritesAllButNames(t *testing.T) {
	w := working.Working{
		Formula: "F = T/(K·d)", Put: "0.20 · 12.5 mm", Result: "1.5 kN", Source: "1.4", Assumes: []string{"between 0.1 and 0.2"},
		Terms: []working.Term{{Sign: "Fp", Words: "M8x1.25, class 8.8", Value: "36.6 mm²", Names: true}, {Sign: "HM", Words: "H = 25.5 cm", Value: "1.00"}},
	}
	want := "F = T/(K·d) = 0,20 · 12,5 mm = 1,5 kN; source: 1,4; M8x1.25, class 8.8: 36,6 mm²; H = 25,5 cm: 1,00; between 0,1 and 0,2"
	got := w.With(quantity.Comma)
	if line := got.String() + "; " + got.Terms[0].Words + ": " + got.Terms[0].Value + "; " + got.Terms[1].Words + ": " + got.Terms[1].Value + "; " + got.Assumes[0]; line != want {
		t.Errorf("got %q, want %q", line, want)
	}
	if w.Terms[0].Value != "36.6 mm²" || w.Assumes[0] != "between 0.1 and 0.2" {
		t.Error("the working itself was changed")
	}
}
