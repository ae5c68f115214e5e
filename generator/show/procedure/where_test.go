package procedure

import (
	"reflect"
	"testing"

	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
)

// For which units and outcomes something holds, as a reader says it and as the
// script asks for it: a case without conditions is "in other cases".
func TestWhereSomethingHolds(t *testing.T) {
	s := siteOf(t, with(yard, "register/holds.yaml", "seat: { name: seat, kind: ask, answers: { good: clean, worn: scored } }\nbus: { name: bus, kind: measure, what: it, limit: at most 5 V dc }\n"))
	m := s.Manual.Machines[0]
	hold := func(id string) *model.Hold {
		for _, h := range s.Manual.Holds {
			if h.ID == id {
				return h
			}
		}
		return nil
	}
	step := &model.Step{Number: "1.2"}
	cab, noPack := walk.Condition{Option: "cab", Is: true}, walk.Condition{Option: "pack"}
	measured := func(is bool) walk.Condition { return walk.Condition{Hold: hold("bus"), Step: step, Is: is} }
	answered := func(answer string, is bool) walk.Condition {
		return walk.Condition{Hold: hold("seat"), Answer: answer, Step: step, Is: is}
	}
	for _, c := range []struct {
		name       string
		cases      walk.Cases
		says, asks string
	}{
		{"everywhere", nil, "", ""},
		{"with an option", walk.Cases{{cab}}, "on units with Cab", "cab"},
		{"with one and without another", walk.Cases{{cab, noPack}}, "on units with Cab and without Cold pack", "cab !pack"},
		{"either", walk.Cases{{cab}, {noPack}}, "on units with Cab, or on units without Cold pack", "cab|!pack"},
		{"an option that the machine has not", walk.Cases{{{Option: "crane", Is: true}}}, "on units with crane", "crane"},
		{"failed", walk.Cases{{measured(true)}}, "where the bus in step 1.2 failed", ""},
		{"passed", walk.Cases{{measured(false)}}, "where the bus in step 1.2 passed", ""},
		{"an answer", walk.Cases{{answered("worn", true)}}, "where the seat in step 1.2 is scored", ""},
		{"another answer", walk.Cases{{answered("good", false)}}, "where the seat in step 1.2 is not clean", ""},
		{"an answer without words", walk.Cases{{answered("lost", true)}}, "where the seat in step 1.2 is lost", ""},
		{"done", walk.Cases{{{Step: step, Is: true}}}, "where step 1.2 is done", ""},
		{"left out", walk.Cases{{{Step: step}}}, "where step 1.2 is left out", ""},
		{"a unit and an outcome", walk.Cases{{cab, measured(true), answered("worn", true)}}, "on units with Cab, where the bus in step 1.2 failed and the seat in step 1.2 is scored", "cab"},
		{"an outcome on every unit, or an option", walk.Cases{{measured(true)}, {cab}}, "where the bus in step 1.2 failed, or on units with Cab", ""},
		{"and others", walk.Cases{{cab}, nil, {noPack}}, "on units with Cab, or in other cases, or on units without Cold pack", ""},
	} {
		if got := s.where(m, c.cases); got != c.says {
			t.Errorf("%s: %q, want %q", c.name, got, c.says)
		}
		if got := optionCases(c.cases); got != c.asks {
			t.Errorf("%s: the script asks for %q, want %q", c.name, got, c.asks)
		}
	}
	if got := s.where(m, walk.Cases{{{Hold: hold("bus"), Is: true}}}); got != "where the bus in step  failed" {
		t.Errorf("a hold of no step: %q", got)
	}
}

// What all units have is not said again; what is left of no case is all.
func TestWithoutWhatHoldsForAll(t *testing.T) {
	cab, noPack, failed := walk.Condition{Option: "cab", Is: true}, walk.Condition{Option: "pack"}, walk.Condition{Hold: &model.Hold{}, Is: true}
	for i, c := range []struct {
		whole []string
		cases walk.Cases
		want  walk.Cases
	}{
		{nil, nil, nil},
		{nil, walk.Cases{{cab}}, walk.Cases{{cab}}},
		{[]string{"cab"}, walk.Cases{{cab, noPack}}, walk.Cases{{noPack}}},
		{[]string{"cab"}, walk.Cases{{cab}}, nil},
		{[]string{"!cab"}, walk.Cases{{cab}}, walk.Cases{{cab}}},
		{[]string{"!pack"}, walk.Cases{{cab, noPack}, {failed}}, walk.Cases{{cab}, {failed}}},
		{[]string{"cab", ""}, walk.Cases{{failed}}, walk.Cases{{failed}}},
		{[]string{"cab"}, walk.Cases{{noPack}, nil}, walk.Cases{{noPack}, nil}},
		{[]string{"cab"}, walk.Cases{{noPack}, {cab}}, nil},
	} {
		if got := without(c.whole, c.cases); !reflect.DeepEqual(got, c.want) {
			t.Errorf("%d: %v, want %v", i, got, c.want)
		}
	}
}
