package walk_test

import (
	"slices"
	"strings"
	"testing"

	"golang.org/x/tools/txtar"

	"baybinder/generator/base/casefile"
	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// toldOfJob is what the walk finds in one procedure of the shop, with other files.
func toldOfJob(t *testing.T, front string, others map[string]string, lines ...string) []finding.Finding {
	t.Helper()
	files := shopFiles(t)
	for name, text := range others {
		files[name] = text
	}
	files["procedures/job.md"] = procedureText(front, lines...)
	return walked(t, files, false)
}

func codesOf(list []finding.Finding) []string {
	var out []string
	for _, f := range list {
		out = append(out, f.Code)
	}
	return out
}

// What could not be read is unknown, and no finding of the walk rests on it: "its
// things are unknown from there on … at the caller either; a link of an unknown kind
// makes its thing unknown, if its id is one" ("What could not be read", the contract).
func TestNoFindingRestsOnWhatCouldNotBeRead(t *testing.T) {
	archive, err := txtar.ParseFile("../../check/testdata/unread.txtar")
	if err != nil {
		t.Fatal(err)
	}
	const dead, open, closing, live, whole = "procedures/make-dead.md", "procedures/open-up.md", "procedures/close-up.md", "procedures/go-live.md", "procedures/renew-inverter.md"
	for _, c := range [][3]string{
		// A kind that there is none of, with the id of a thing, of a hold, of a procedure.
		{dead, "isolate:traction", "cut:traction"}, {dead, "lock:traction", "shut:traction"}, {dead, "release:lift", "drop:lift"}, {dead, "prove:lift", "test:lift"},
		{dead, "hold:bus-wait", "wait:bus-wait"}, {dead, "hold:bus-dead", "stop:bus-dead"},
		{open, "remove:lid", "take:lid"}, {open, "remove:line-a", "open:line-a"}, {open, "cap:line-a", "close:line-a"}, {open, "mark:lines", "paint:lines"},
		{open, "place:drip-tray", "put:drip-tray"}, {open, "alter:relief", "turn:relief"},
		{closing, "refit:line-b", "join:line-b"}, {closing, "tighten:line-nut", "turn:line-nut"}, {closing, "fill:lift-oil", "pour:lift-oil"}, {closing, "bleed:lift-oil", "vent:lift-oil"},
		{closing, "dry:lift-oil", "wipe:lift-oil"}, {closing, "clear:drip-tray", "take:drip-tray"}, {closing, "reset:relief", "turn:relief"}, {closing, "refit:lid", "mount:lid"},
		{live, "unlock:traction", "free:traction"}, {live, "restore:traction", "switch:traction"}, {live, "unlock:lift", "free:lift"}, {live, "restore:lift", "switch:lift"}, {live, "hold:leak-look", "look:leak-look"},
		{whole, "do:make-dead", "perform:make-dead"}, {whole, "do:open-up", "perform:open-up"}, {whole, "do:close-up", "perform:close-up"}, {whole, "do:go-live", "perform:go-live"},
		{whole, "renew:inverter", "swap:inverter"},
		// An id that is near, and one that is near nothing.
		{dead, "isolate:traction", "isolate:tractionn"}, {dead, "isolate:traction", "isolate:zzz"}, {dead, "lock:traction", "lock:zzz"}, {dead, "release:lift", "release:zzz"}, {dead, "prove:traction", "prove:zzz"},
		{dead, "hold:bus-wait", "hold:zzz"}, {dead, "hold:bus-dead", "hold:zzz"}, {dead, "hold:line-dead", "hold:zzz"},
		{open, "remove:lid", "remove:zzz"}, {open, "remove:line-a", "remove:zzz"}, {open, "cap:line-a", "cap:zzz"}, {open, "mark:lines", "mark:zzz"}, {open, "place:drip-tray", "place:zzz"}, {open, "alter:relief", "alter:zzz"},
		{closing, "refit:line-b", "refit:zzz"}, {closing, "tighten:line-nut", "tighten:zzz"}, {closing, "fill:lift-oil", "fill:zzz"}, {closing, "bleed:lift-oil", "bleed:zzz"}, {closing, "dry:lift-oil", "dry:zzz"},
		{closing, "clear:drip-tray", "clear:zzz"}, {closing, "reset:relief", "reset:zzz"}, {closing, "refit:lid", "refit:zzz"}, {closing, "tighten:lid-bolt", "tighten:zzz"},
		{live, "unlock:traction", "unlock:zzz"}, {live, "restore:traction", "restore:zzz"}, {live, "restore:lift", "restore:zzz"}, {live, "hold:leak-look", "hold:zzz"},
		{whole, "do:make-dead", "do:zzz"}, {whole, "do:open-up", "do:zzz"}, {whole, "do:close-up", "do:zzz"}, {whole, "do:go-live", "do:zzz"}, {whole, "renew:inverter", "renew:zzz"}, {whole, "reverse:strip", "reverse:zzz"},
		// What an entry says.
		{"machines/tug.yaml", "points: [plug]", "points: [zzz]"}, {"machines/tug.yaml", "points: [plug]", "points: plug"}, {"machines/tug.yaml", "points: [pump-switch]", "points: [zzz]"},
		{"machines/tug.yaml", "carries: lift-oil", "carries: zzz"}, {"machines/tug.yaml", "held-by: { line-nut: 1 }", "held-by: { zzz: 1 }"}, {"machines/tug.yaml", "held-by: { lid-bolt: 4 }", "held-by: [{ zzz: 1 }]"},
		{"register/holds.yaml", "5 min, of: traction", "5 min, of: zzz"}, {"register/holds.yaml", "measure, of: lift", "measure, of: zzz"}, {"register/holds.yaml", "kind: wait", "kind: zzz"},
		{open, "expects: { traction: dead", "expects: { zzz: dead"}, {open, "expects: { traction: dead", "expects: { traction: zzz"}, {closing, "line-a: off", "zzz: off"}, {closing, "expects: {", "expects: [ {"},
	} {
		files := casefile.Part(archive, "")
		if !strings.Contains(files[c[0]], c[1]) {
			t.Errorf("%s does not hold %q", c[0], c[1])
			continue
		}
		files[c[0]] = strings.Replace(files[c[0]], c[1], c[2], 1)
		m, unread := bind.Manual(source.FromText(files))
		if len(unread) == 0 {
			t.Errorf("%s for %s can be read", c[2], c[1])
		}
		for _, f := range walk.All(m).Findings(m) {
			t.Errorf("%s for %s: %s: %s", c[2], c[1], placed(f), f.Message)
		}
	}
}

// What is left undone stands at the link that began it, and is no fault of that act
// ("Findings", the contract).
func TestWhatIsLeft(t *testing.T) {
	left := []*finding.Rule{&walk.LeftIsolated, &walk.LeftOff, &walk.LeftLoose, &walk.LeftInPlace, &walk.LeftAltered, &walk.LeftLow, &walk.NotBled, &walk.NotSupplied, &walk.StateMismatch, &walk.NotMarked, &walk.NotCapped}
	acts := []*finding.Rule{&walk.EnergyOrder, &walk.NotReleased, &walk.LiveWork, &walk.GuardOffLive, &walk.RestoredWhileOpen, &walk.NotReachable, &walk.RefitOverOpen, &walk.ActOrder, &walk.BadPause}
	for _, r := range left {
		if !walk.Leaves(r) {
			t.Errorf("%s is not about how things are left", r.Code)
		}
	}
	for _, r := range acts {
		if walk.Leaves(r) {
			t.Errorf("%s is about how things are left", r.Code)
		}
	}
}

// "An ac voltage with stored is taken at its peak": 28 V ac is 39.6 V, 29 V ac 41.0 V.
// Above the safe voltage a look proves nothing.
func TestAStoredVoltageIsTakenAtItsPeak(t *testing.T) {
	for _, c := range []struct {
		voltage, stored string
		want            []string
	}{
		{"28 V ac", ", stored: yes", nil},
		{"29 V ac", ", stored: yes", []string{"proof-without-measure"}},
		{"29 V ac", "", nil},
		{"31 V ac", "", []string{"proof-without-measure"}},
		{"40 V dc", ", stored: yes", nil},
		{"41 V dc", "", []string{"proof-without-measure"}},
	} {
		files := shopFiles(t)
		machine := strings.Replace(files["machines/yard-tug.yaml"], "restore-order:", "  lamp: { name: lamp, kind: electric, voltage: "+c.voltage+", points: [lamp-plug]"+c.stored+" }\nrestore-order:", 1)
		machine = strings.Replace(machine, "\nenergies:", "\n  lamp-plug: { name: lamp plug, where: dash, lock: yes }\nenergies:", 1)
		steps := []string{"[Pull the lamp plug](isolate:lamp) and [lock it](lock:lamp)."}
		if c.stored != "" {
			steps = append(steps, "[Let it out](release:lamp).")
		}
		steps = append(steps, "[See it dark](prove:lamp). [](hold:lamp-dark)")
		found := toldOfJob(t, "leaves: { lamp: dead }\n", map[string]string{
			"shop.yaml":              "title: Shop\nlimits: { safe-voltage-dc: 40 V, safe-voltage-ac: 30 V }\n",
			"machines/yard-tug.yaml": machine,
			"register/holds.yaml":    files["register/holds.yaml"] + "lamp-dark: { name: lamp, kind: look, of: lamp, what: the lamp, good: dark }\n",
		}, append([]string{"## Work"}, steps...)...)
		if got := codesOf(found); !slices.Equal(got, c.want) {
			t.Errorf("%s%s: %q, want %q", c.voltage, c.stored, got, c.want)
		}
	}
}

// "Where it is measured, the limit can show it": of a load any limit does, of a voltage
// that is safe one that says neither ac nor dc.
func TestWhatAMeasurementShows(t *testing.T) {
	files := shopFiles(t)
	machine := strings.Replace(files["machines/yard-tug.yaml"], "restore-order:", "  lamp: { name: lamp, kind: electric, voltage: 24 V dc, points: [lamp-plug] }\nrestore-order:", 1)
	machine = strings.Replace(machine, "\nenergies:", "\n  lamp-plug: { name: lamp plug, where: dash, lock: yes }\nenergies:", 1)
	others := func(limit string) map[string]string {
		return map[string]string{
			"machines/yard-tug.yaml": machine,
			"register/holds.yaml":    files["register/holds.yaml"] + "lamp-dead: { name: lamp, kind: measure, of: lamp, what: its voltage, limit: " + limit + " }\nstand-low: { name: gap, kind: measure, of: raised-tug, what: gap under the wheel, limit: at most 2 mm }\n",
		}
	}
	for limit, want := range map[string][]string{"at most 50 V": nil, "at most 61 V": {"proof-without-measure"}, "at most 60 V": nil} {
		got := codesOf(toldOfJob(t, "leaves: { lamp: dead }\n", others(limit), "## Work", "[Pull the lamp plug](isolate:lamp) and [lock it](lock:lamp).", "[Measure it](prove:lamp). [](hold:lamp-dead)"))
		if !slices.Equal(got, want) {
			t.Errorf("%s: %q, want %q", limit, got, want)
		}
	}
	got := codesOf(toldOfJob(t, "leaves: { raised-tug: dead, axle-stand: placed }\n", others("at most 5 V"), "## Work", "[Set the stands](place:axle-stand).", "[Measure it](prove:raised-tug). [](hold:stand-low)"))
	if len(got) > 0 {
		t.Errorf("a load by a length: %q", got)
	}
}

// A supply without an amount is one of it: an amount is needed where its unit is not
// each ("Lists", the contract).
func TestASupplyWithoutAnAmountIsOne(t *testing.T) {
	files := shopFiles(t)
	for bolts, want := range map[string][]string{"{ seat-bolt: 1 }": nil, "{ seat-bolt: 2 }": {"not-supplied"}} {
		machine := strings.Replace(files["machines/yard-tug.yaml"], "held-by: { seat-bolt: 4 }", "held-by: "+bolts, 1)
		for _, list := range []string{"[new-seat-bolt]", "[hydraulic-oil: 1 L, new-seat-bolt]"} {
			got := codesOf(toldOfJob(t, "supplies: "+list+"\n", map[string]string{"machines/yard-tug.yaml": machine},
				"## Strip", "[Lift it out](remove:seat-base).", "## Refit", "[Put it in](refit:seat-base) and [tighten it](tighten:seat-bolt)."))
			if !slices.Equal(got, want) {
				t.Errorf("%s of %s: %q, want %q", list, bolts, got, want)
			}
		}
	}
}

// An act in words is done where its sub-steps, or what they have below them, do it.
func TestWordsOfAStepAreDoneBelowIt(t *testing.T) {
	for _, c := range []struct {
		below []string
		want  []string
	}{
		{[]string{"   1. [Undo them](loosen:seat-bolt).", "   2. [Do them up](tighten:seat-bolt)."}, nil},
		{[]string{"   1. Begin at the door.", "      1. [Undo them](loosen:seat-bolt).", "      2. [Do them up](tighten:seat-bolt)."}, nil},
		{[]string{"   1. [Turn the valve](alter:relief).", "   2. [Set it back](reset:relief)."}, []string{"act-in-words"}},
	} {
		got := codesOf(toldOfJob(t, "", nil, append([]string{"## Work", "Undo the seat bolts, one after the other:"}, c.below...)...))
		if !slices.Equal(got, c.want) {
			t.Errorf("%q: %q, want %q", c.below, got, c.want)
		}
	}
}

// What stands after so many steps is what stands after the last of them, and how often
// something changed until then is counted.
func TestWhatStandsAfterSoManySteps(t *testing.T) {
	r, _, p := walkText(t, "leaves: { traction: locked }\n", nil, "## Work", "Look at it.", "[Pull the plug](isolate:traction).", "Wait for nobody.", "[Lock it](lock:traction).")
	w := r.Of(p)
	for i, s := range p.Steps {
		if got, want := standing(w.Stand(i+1)), standing(r.Stand(p, s)); !slices.Equal(got, want) {
			t.Errorf("after %d steps: %q, want %q", i+1, got, want)
		}
	}
	var turns []int
	for _, s := range p.Steps {
		turns = append(turns, r.Turn(p, s))
	}
	if turns[0] != 0 || turns[1] <= turns[0] || turns[2] != turns[1] || turns[3] <= turns[2] || r.Turn(p, nil) != turns[3] {
		t.Errorf("turns: %v, and %d at the end", turns, r.Turn(p, nil))
	}
	for _, s := range r.Stand(p, p.Steps[3]) {
		if s.Proved() {
			t.Errorf("%s is proved", s.Label())
		}
	}
	var proof walk.Standing
	proof.Thing, proof.Word = &model.Part{}, "dead"
	if proof.Proved() {
		t.Error("a part is proved")
	}
	proof.Thing = &model.Energy{}
	if !proof.Proved() {
		t.Error("a dead energy is not proved")
	}
}

// One word of expects that could not be read makes that thing unknown, and no other.
func TestWhatIsReadIsStillTold(t *testing.T) {
	files := shopFiles(t)
	files["procedures/job.md"] = procedureText("expects: { traction: zzz }\n", "## Work", "[Lift it out](remove:seat-base).", "[Put it on](restore:traction).")
	if got := codesOf(walked(t, files, true)); !slices.Equal(got, []string{"left-off"}) {
		t.Errorf("%q", got)
	}
}

// An energy that is there where none of its points is, on a unit that there is, is
// unit-gap ("New fields", the contract).
func TestAGapIsOneOfAUnit(t *testing.T) {
	for units, want := range map[string][]string{
		"": {"unit-gap"},
		"units:\n  - { serials: 1 to 5, options: [cab] }\n  - { serials: 6 to 9, options: [pump] }\n":       {"unit-gap"},
		"units:\n  - { serials: 1 to 5, options: [cab, pump] }\n  - { serials: 6 to 9, options: [pump] }\n": nil,
		"units:\n  - { serials: 1 to 5, options: [] }\n  - { serials: 6 to 9, options: [pump] }\n":          {"unit-gap"},
		"units:\n  - { serials: 1 to 9, options: [pump] }\n":                                                nil,
	} {
		m, bad := bind.Manual(source.FromText(map[string]string{
			"shop.yaml":           "title: Shop\n",
			"machines/press.yaml": "name: Press\noptions: { cab: Cab, pump: Pump }\n" + units + "points: { switch: { name: switch, only-with: pump } }\nenergies: { motor: { name: motor, kind: motion, points: [switch] } }\n",
		}))
		if len(bad) > 0 {
			t.Fatalf("%s: %s", placed(bad[0]), bad[0].Message)
		}
		if got := codesOf(walk.All(m).Findings(m)); !slices.Equal(got, want) {
			t.Errorf("%q: %q, want %q", units, got, want)
		}
	}
}
