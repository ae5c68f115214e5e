package procedure

import (
	"testing"

	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
)

// A check at the last stage does not begin at the first again; a step that
// names no stage, or several, prints them all.
func TestACheckPrintsTheLastStage(t *testing.T) {
	q := func(text string) quantity.Quantity {
		v, err := quantity.Parse(text, quantity.Torque)
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
	f := &model.Fastener{Stages: []quantity.Quantity{q("25 N·m"), q("40 N·m"), q("48 N·m")}}
	for words, want := range map[string]bool{
		"Check the six head bolts at 48 N·m": true, "Compruebe los seis a 48 N·m": true, "Tighten the head bolts": false,
		"Tighten the head bolts in stages, 25 N·m, 40 N·m, 48 N·m": false, "Bring them to 25 N·m": false, "Check six bolts": false,
	} {
		if got := lastOnly(&model.Link{Text: words}, f); got != want {
			t.Errorf("%q: the last stage only: %v", words, got)
		}
	}
}
