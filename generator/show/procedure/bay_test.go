package procedure

import (
	"testing"

	"baybinder/generator/model"
	"baybinder/generator/show/page"
)

// What the script asks of a unit, in JSON: the options in words, the rows of
// serial numbers, and of which options a unit has at most one.
func TestTheBayKnowsTheMachine(t *testing.T) {
	base := map[string]string{
		"shop.yaml":         "title: Shop\nshow-units: { length: [m, ft] }\n",
		"machines/tug.yaml": "name: Tug\noptions: { cab: Cab, roof: Canopy, boom: boom of 3 m, mast: mast of 4 m }\nonly-one-of: [[cab, roof]]\nunits:\n  - { serials: 1 to 9, options: [cab] }\n  - { serials: 10 to 12, options: [] }\n",
	}
	b := jobAt(t, base, "for: tug\n", "## Work\n\n1. A.\n").Bay
	for what, c := range map[string][2]string{
		"shop":     {b.Shop, "Shop"},
		"job":      {b.Procedure, "job"},
		"machine":  {b.Machine, "tug"},
		"options":  {b.Options, `{"boom":"boom of 3 m","cab":"Cab","mast":"mast of 4 m","roof":"Canopy"}`},
		"units":    {b.Units, `[{"from":1,"to":9,"options":["cab"]},{"from":10,"to":12,"options":[]}]`},
		"only one": {b.OnlyOne, `[["cab","roof"]]`},
		"amounts":  {b.Amounts, `(3 m|4 m)`},
		"revision": {b.Revision + b.Fingerprint, ""},
	} {
		if c[0] != c[1] {
			t.Errorf("%s: %s, want %s", what, c[0], c[1])
		}
	}
	plain := jobAt(t, map[string]string{"machines/tug.yaml": "name: Tug\noptions: { cab: Cab }\n"}, "for: tug\n", "## Work\n\n1. A.\n").Bay
	if plain.Amounts != "" || plain.Units != "[]" || plain.OnlyOne != "[]" {
		t.Errorf("%+v", plain)
	}
	one := jobAt(t, with(base, "machines/tug.yaml", "name: Tug\noptions: { boom: boom of 3 m }\n"), "for: tug\n", "## Work\n\n1. A.\n").Bay
	if one.Amounts != "(3 m)" {
		t.Errorf("%+v", one)
	}
	if general := jobAt(t, nil, "", "## Work\n\n1. A.\n").Bay; general.Machine != "" || general.Options != "" {
		t.Errorf("%+v", general)
	}
}

// An issued procedure's record names the revision and the words that it is of.
func TestTheBayKnowsTheRevision(t *testing.T) {
	v := jobAt(t, with(yard, "revisions.csv", "procedure,revision,date,fingerprint,reason,written,checked,approved,walked,readers\njob,1,2026-03-01,1-0000000000000000,First.,a,b,c,a,none\n"+
		"other,9,2026-04-02,1-2222222222222222,Other.,a,b,c,a,none\njob,2,2026-04-01,1-1111111111111111,Longer.,a,b,c,a,none\n", "procedures/other.md", "---\ntitle: Other\n---\n## Work\n\n1. A.\n"),
		"for: tug\n", "## Work\n\n1. A.\n")
	if v.Bay.Revision != "2" || v.Bay.Fingerprint != "1-1111111111111111" {
		t.Errorf("%+v", v.Bay)
	}
	if len(v.Changes) != 2 || v.Changes[0].Revision != "1" || page.Unworked(v.Plate[1]) != "rev 2 · 2026-04-01" {
		t.Errorf("%+v, %q", v.Changes, v.Plate)
	}
}

// A step carries its conditions, what it changes, and whether it can be
// skipped: "A step with a hold, an energy act or a caution above NOTICE cannot
// be skipped" (decided above).
func TestWhatAStepCarries(t *testing.T) {
	base := with(yard, "register/holds.yaml", "seat: { name: seat, kind: ask, answers: { good: clean, worn: scored } }\nbus: { name: bus, kind: look, what: it, good: dry }\n",
		"machines/tug.yaml", yard["machines/tug.yaml"]+"points: { plug: { name: plug } }\nenergies: { mains: { name: mains, kind: electric, points: [plug] } }\n",
		"register/tools.yaml", "chock: { name: chock, kind: aid }\n", "procedures/other.md", "---\ntitle: Other\n---\n## Work\n\n1. A.\n")
	for _, c := range []struct {
		words, options, outcomes, changes string
		guarded                           bool
	}{
		{words: "A."},
		{words: "[With](when:cab) and [without](when:!pack), a.", options: "cab !pack"},
		{words: "[Worn](if:seat=worn), [failed](if-not:bus), a.", outcomes: "if:seat=worn if-not:bus"},
		{words: "[Off](remove:seat), [place it](place:chock).", changes: "remove:seat place:chock"},
		{words: "[Do it](do:other). Mind [the seat](part:seat)."},
		{words: "[In reverse](reverse:work)"},
		{words: "[Off](isolate:mains).", changes: "isolate:mains", guarded: true},
		{words: "Look. [](hold:bus)", guarded: true},
		{words: "A. [](hazard:dent)"},
		{words: "A. [](hazard:heat)", guarded: true},
		{words: "A. [](hazard:dent) [](hazard:heat)", guarded: true},
	} {
		v := jobAt(t, base, "for: tug\nholds: [seat, bus]\nhazards: [heat, dent]\ntools: [chock]\n", "## Work\n\n1. Ask. [](hold:seat) [](hold:bus)\n2. [Off](remove:pump).\n\n## Then\n\n1. "+c.words+"\n")
		st := v.Phases[1].Parts[0].Step
		if st.Terms != (Terms{c.options, c.outcomes}) || st.Changes != c.changes || st.Guarded != c.guarded {
			t.Errorf("%s: %+v, %q, guarded %v", c.words, st.Terms, st.Changes, st.Guarded)
		}
	}
}

// A step of the refit is done on the units of the step that it takes back, of
// what holds that step, and of the part: never again for what a hold came to.
func TestTheRefitAsksOfTheUnit(t *testing.T) {
	for strip, want := range map[string]string{
		"1. [Off](remove:seat).\n":                                         "",
		"1. [Off](remove:door).\n":                                         "cab",
		"1. [Off](remove:rail).\n":                                         "!cab",
		"1. [With a pack](when:pack), [off](remove:seat).\n":               "pack",
		"1. [Worn](if:state=worn), [off](remove:seat).\n":                  "",
		"[With a pack](when:pack).\n\n1. [Off](remove:seat).\n":            "pack",
		"1. [With a pack](when:pack), these.\n   1. [Off](remove:door).\n": "pack cab",
		"1. [Not with a pack](when:!pack), [off](remove:rail).\n":          "!pack !cab",
		"1. Undo [the stop](alter:stop).\n":                                "",
		"1. [With a pack](when:pack), undo [the stop](alter:stop).\n":      "pack",
	} {
		base := with(yard, "machines/tug.yaml", yard["machines/tug.yaml"]+"settings: { stop: { name: stop } }\n", "register/holds.yaml", "state: { name: state, kind: ask, answers: { good: clean, worn: scored } }\n")
		v := jobAt(t, base, "for: tug\nholds: [state]\n", "## First\n\n1. Ask. [](hold:state)\n\n## Strip\n\n"+strip+"\n## Refit\n\n1. [In reverse](reverse:strip)\n")
		derived := v.Phases[2].Parts[0].Step.Derived
		if len(derived) != 1 || derived[0].Terms != (Terms{Options: want}) {
			t.Errorf("%s: %+v, want %q", strip, derived, want)
		}
	}
}

// The short view keeps a text that holds an amount.
func TestATextWithAnAmountIsKept(t *testing.T) {
	for text, want := range map[string]bool{"It moves by 3 mm.": true, "It moves.": false} {
		if got := valued(&model.Block{Plain: text}); got != want {
			t.Errorf("%s: %v", text, got)
		}
	}
	v := jobAt(t, nil, "", "It takes 5 kN.\n\nThat is much.\n\n## Work\n\n1. A.\n\n   [Because](why:) it moves by 3 mm.\n\n   [Because](why:) it moves.\n")
	why := v.Phases[0].Parts[0].Step.Why
	if !v.IntroKeeps || len(why) != 2 || !why[0].Keeps || why[1].Keeps {
		t.Errorf("%v %+v", v.IntroKeeps, why)
	}
	if v := jobAt(t, nil, "", "That is much.\n\n## Work\n\n1. A.\n"); v.IntroKeeps || len(v.Intro) != 1 {
		t.Errorf("%v %v", v.IntroKeeps, v.Intro)
	}
}
