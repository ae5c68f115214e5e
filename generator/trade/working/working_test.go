package working_test

import (
	"testing"

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
