package model_test

import (
	"reflect"
	"testing"

	"baybinder/generator/model"
)

// Two kinds that are one act differ in their word alone.
func TestKindsOfOneActAreAlike(t *testing.T) {
	first := map[model.Act]model.Kind{}
	for _, k := range model.Kinds {
		row := *k
		row.Name, row.Says = "", ""
		if before, seen := first[k.Act]; seen && k.Act != model.NoAct && before != row {
			t.Errorf("%s: is not as the kind before it that is the same act: %+v, %+v", k.Name, row, before)
		}
		if _, seen := first[k.Act]; !seen {
			first[k.Act] = row
		}
	}
}

// What is said of acts is said of acts, and of each where it cannot be
// otherwise: an energy that is switched, locked or proved is one that people
// are hurt by.
func TestFacetsFitTheirKinds(t *testing.T) {
	for _, k := range model.Kinds {
		ofAct := k.Undo != model.NoAct || k.TakesOff || k.PutsBack || k.Opens || k.HandsOff || k.Live || k.Guarded || k.Empties || k.Sets || k.Spills || k.AfterPart
		if ofAct && k.Act == model.NoAct {
			t.Errorf("%s: has what only acts have", k.Name)
		}
		if k.Act != model.NoAct && (k.Silent || k.InStep || k.Conditional || k.Branches) {
			t.Errorf("%s: an act is in the fingerprint, stands in a step and is no condition", k.Name)
		}
		switch k.Target {
		case model.ToEnergy, model.ToPoint, model.ToEnergyOrPoint:
			if k.Guarded != (k.Act != model.NoAct) {
				t.Errorf("%s: Guarded is %v", k.Name, k.Guarded)
			}
		default: // other things do not hurt by themselves
		}
		if k.TakesOff && (k.PutsBack || !k.Opens || k.Undo != model.Refit) {
			t.Errorf("%s: takes a part off: it opens, and a refit undoes it", k.Name)
		}
		if k.Branches && !k.Conditional {
			t.Errorf("%s: a branch is a condition", k.Name)
		}
	}
}

// A facet that no kind has, or that all have, says nothing.
func TestEveryFacetTellsKindsApart(t *testing.T) {
	row := reflect.TypeFor[model.Kind]()
	for i := range row.NumField() {
		if row.Field(i).Type.Kind() != reflect.Bool {
			continue
		}
		has := 0
		for _, k := range model.Kinds {
			if reflect.ValueOf(k).Elem().Field(i).Bool() {
				has++
			}
		}
		if has == 0 || has == len(model.Kinds) {
			t.Errorf("%s: %d of %d kinds", row.Field(i).Name, has, len(model.Kinds))
		}
	}
}
