package walk_test

import (
	"slices"
	"strings"
	"testing"

	"baybinder/generator/base/finding"
	"baybinder/generator/language"
)

// Where it is plain what to write, the mend says it.
func TestMendsSayWhatToWrite(t *testing.T) {
	const proof = "leaves: { traction: dead }\n---\n## Work\n\n1. [Off](isolate:traction), [lock](lock:traction).\n2. [Wait](hold:capacitor-wait).\n3. [Dead](prove:traction). "
	const pressed = "leaves: { lift: dead }\n---\n## Work\n\n1. [Off](isolate:lift).\n2. [Out](release:lift).\n3. [Dead](prove:lift). "
	for _, c := range []struct{ code, body, want string }{
		{"act-order", "---\n## Work\n\n1. [Away](clear:wheel-chock).\n", "expects: { wheel-chock: placed }"},
		{"left-loose", "supplies: [new-seat-bolt: 4]\n---\n## Work\n\n1. [Off](remove:seat-base).\n2. [On](refit:seat-base).\n", "write [tighten it](tighten:seat-bolt) "},
		{"left-loose", "leaves: { seat-base: off }\n---\n## Work\n\n1. [Off](remove:seat-base).\n2. [Off](remove:inverter-lid). [x](hazard:bus)\n3. [On](refit:inverter-lid).\n", "tighten:lid-bolt#inverter-lid"},
		{"state-mismatch", "leaves: { seat-base: on }\n---\n## Work\n\n1. [Off](remove:seat-base).\n", "or write seat-base: off in leaves"},
		{"state-mismatch", "leaves: { traction: dead }\n---\n## Work\n\n1. Look at it.\n", "or take traction out of leaves"},
		{"state-mismatch", "leaves: { seat-base: off }\n---\n## Work\n\n1. [Off](remove:seat-base).\n2. [On](refit:seat-base), [tight](tighten:seat-bolt).\n", "or take seat-base out of leaves"},
		{"proof-without-measure", proof + "[x](hold:bus-dead-ac)\n", "the hold bus-dead-ac does not count: its limit is ac, and the energy is dc"},
		{"proof-without-measure", proof + "[x](hold:bus-low)\n", "the hold bus-low does not count: its limit is above the shop's safe voltage"},
		{"proof-without-measure", proof + "[x](hold:lift-zero)\n", "write [](hold:bus-dead) beside the proof"},
		{"proof-without-measure", pressed + "[x](hold:lift-high)\n", "the hold lift-high does not count: its limit, at most 5 bar, goes above the shop's safe-pressure, 0.5 bar"},
		{"proof-without-measure", pressed + "[x](hold:lift-up)\n", "the hold lift-up does not count: its limit, at least 0 bar, has no upper end"},
		{"proof-without-measure", pressed + "\n", "write [](hold:lift-zero) beside the proof"},
		{"proof-without-measure", "leaves: { forks: dead }\n---\n## Work\n\n1. [Off](isolate:forks).\n2. [Down](release:forks).\n3. [Dead](prove:forks).\n", "write [](hold:forks-down) beside the proof"},
		{"proof-without-measure", "leaves: { raised-tug: dead }\n---\n## Work\n\n1. [Down](release:raised-tug).\n2. [Dead](prove:raised-tug).\n", "write [](hold:push-test) beside the proof"},
		{"not-reachable", "leaves: { level-plug: off }\n---\n## Work\n\n1. [Off](remove:level-plug).\n", "write [slacken it](loosen:bleed-screw) in a step before"},
		{"energy-order", "---\n## Work\n\n1. [Off](isolate:traction).\n2. [Off](isolate:lift).\n3. [On](restore:traction).\n4. [On](restore:lift).\n", "bring the lift hydraulics back in a step before this one"},
		{"not-released", "leaves: { traction: dead }\n---\n## Work\n\n1. [Off](isolate:traction), [lock](lock:traction).\n2. [Dead](prove:traction). [x](hold:bus-dead)\n", "write [](hold:capacitor-wait) or [let it out](release:traction) in a step before"},
		{"guard-off-live", "leaves: { seat-base: off, inverter-lid: off }\n---\n## Work\n\n1. [Off](remove:seat-base).\n2. [Off](remove:inverter-lid).\n", "and [](hazard:charged-capacitors) in this one"},
		{"guard-off-live", "leaves: { level-plug: off }\n---\n## Work\n\n1. [Off](remove:level-plug).\n", "nothing switches it off: let it out, wait, or block it, and write [see that it is out](prove:raised-tug) in a step before"},
		{"left-isolated", "---\n## Work\n\n1. [Down](release:raised-tug).\n", "write [bring it back](restore:raised-tug) in a later step, or raised-tug: released in leaves"},
		{"live-work", "leaves: { seat-base: off, inverter-lid: off, inverter: off }\n---\n## Work\n\n1. [Off](isolate:traction), [lock](lock:traction).\n2. [Off](remove:seat-base).\n3. [Off](remove:inverter-lid). [x](hazard:charged-capacitors)\n4. [Off](remove:inverter).\n5. [Off](isolate:lift).\n6. [Out](release:lift).\n7. [Dead](prove:lift). [x](hold:lift-zero)\n", "and [see that it is out](prove:traction) with [](hold:bus-dead) in a step before this"},
		{"energy-order", "leaves: { traction: dead }\n---\n## Work\n\n1. [Off](isolate:traction).\n2. [Wait](hold:capacitor-wait).\n3. [Dead](prove:traction). [x](hold:bus-dead)\n", "write [lock it](lock:traction) in a step right behind step 1.1"},
		{"energy-order", "leaves: { traction: dead }\n---\n## Work\n\n1. [Wait](hold:capacitor-wait).\n2. [Dead](prove:traction). [x](hold:bus-dead)\n", "write [cut it off](isolate:traction), [lock it](lock:traction) and [let it out](release:traction) in a step before this"},
		{"not-released", "leaves: { traction: dead }\n---\n## Work\n\n1. [Off](isolate:traction), [lock](lock:traction).\n2. [Dead](prove:traction). [x](hold:bus-dead)\n3. [Wait](hold:capacitor-wait).\n", "move this step behind step 1.3"},
		{"restored-while-open", "leaves: { seat-base: off }\n---\n## Work\n\n1. [Off](isolate:traction), [lock](lock:traction).\n2. [Off](remove:seat-base).\n3. [Off](remove:inverter-lid). [x](hazard:charged-capacitors)\n4. [Unlock](unlock:traction), [on](restore:traction).\n5. [On](refit:inverter-lid).\n6. [Tight](tighten:lid-bolt#inverter-lid).\n", "move this step behind step 1.6"},
		{"refit-over-open", "leaves: { level-plug: on }\n---\n## Work\n\n1. [Slack](loosen:bleed-screw).\n2. [Down](release:raised-tug).\n3. [Down](prove:raised-tug). [x](hold:push-test)\n4. [Off](remove:level-plug).\n5. [Tight](tighten:bleed-screw).\n6. [On](refit:level-plug).\n7. [Up](restore:raised-tug).\n", "move step 1.5 behind step 1.6"},
		{"refit-over-open", "leaves: { level-plug: on }\n---\n## Work\n\n1. [Slack](loosen:bleed-screw).\n2. [Down](release:raised-tug).\n3. [Down](prove:raised-tug). [x](hold:push-test)\n4. [Off](remove:level-plug).\n5. [Tight](tighten:bleed-screw).\n6. [On](refit:level-plug).\n7. [Slack](loosen:bleed-screw).\n8. [Off](remove:level-plug).\n9. [On](refit:level-plug).\n10. [Tight](tighten:bleed-screw).\n11. [Up](restore:raised-tug).\n", "move step 1.5 behind step 1.6"},
		{"bad-pause", "leaves: { seat-base: off, lift: dead, lift-line-a: off }\n---\n## Work\n\n1. [Mark](mark:lift-lines), [off](remove:seat-base).\n2. [Off](isolate:lift).\n3. [Out](release:lift).\n4. [Dead](prove:lift). [x](hold:lift-zero)\n5. [Off](disconnect:lift-line-a). [](pause:)\n", "write [cap it](cap:lift-line-a) in this step, or stop at another place"},
		{"energy-order", "leaves: { heat: dead }\n---\n## Work\n\n1. [Cold](prove:heat). [x](hold:tank-cold)\n", "write [cut it off](isolate:heat) and [lock it](lock:heat) in a step before this"},
		{"energy-order", "leaves: { lift: released }\n---\n## Work\n\n1. [Out](release:lift).\n", "write [cut it off](isolate:lift) in a step before this"},
		{"dead-branch", "---\n## Work\n\n1. [More](if-not:lift-zero): call the foreman.\n2. [Measure](hold:lift-zero).\n", "move this step behind step 1.2"},
		{"dead-branch", "---\n## Work\n\n1. [Measure](hold:lift-zero). [More](if-not:lift-zero): call the foreman.\n", "put this, with all that is done then, into a step of its own behind this one"},
		{"dead-branch", "---\n## Work\n\n1. [More](if-not:lift-zero): call the foreman.\n", "write [](hold:lift-zero) in a step before"},
		{"bad-pause", "leaves: { traction: isolated }\n---\n## Work\n\n1. [Off](isolate:traction).\n\n## Next\n\n[](pause:)\n\n1. Look.\n", "write [lock it](lock:traction) in a step before this, or stop at another place"},
		{"refit-over-open", "expects: { traction: dead, lift: dead }\nleaves: { traction: dead, lift: dead }\nsupplies: [new-seat-bolt: 8]\n---\n## Work\n\n1. [Off](remove:seat-base).\n2. [Off](remove:inverter-lid).\n\n## Refit\n\n1. [On](refit:seat-base).\n2. [Back](reverse:work).\n", "take this step out: step 2.2 puts it back"},
		{"refit-over-open", "expects: { traction: dead, lift: dead }\nleaves: { traction: dead, lift: dead }\nsupplies: [new-seat-bolt: 8]\n---\n## Work\n\n1. [Off](remove:seat-base).\n2. [Off](remove:inverter-lid).\n\n## Refit\n\n1. [On](refit:seat-base), [tight](tighten:seat-bolt).\n2. [Back](reverse:work).\n", "take this step out: step 2.2 puts it back"},
		{"refit-over-open", "expects: { traction: dead, lift: dead }\nleaves: { traction: dead, lift: dead }\nsupplies: [new-seat-bolt: 8]\n---\n## Work\n\n1. [Off](remove:seat-base).\n2. [Off](remove:inverter-lid).\n\n## Refit\n\n1. [On](refit:seat-base), [tight](tighten:wheel-nut).\n2. [Back](reverse:work).\n", "take this out: step 2.2 puts it back"},
		{"refit-over-open", "expects: { traction: dead, lift: dead }\nleaves: { traction: dead, lift: dead }\nsupplies: [new-seat-bolt: 8]\n---\n## Work\n\n1. [Off](remove:seat-base).\n2. [Off](remove:inverter-lid).\n\n## Refit\n\n1. [On](refit:seat-base), [turn](alter:relief).\n2. [Back](reverse:work), [set](reset:relief).\n", "take this out: step 2.2 puts it back"},
		{"refit-over-open", "expects: { traction: dead, lift: dead }\nleaves: { traction: dead, lift: dead }\nsupplies: [new-seat-bolt: 8]\n---\n## Work\n\n1. [Off](remove:seat-base).\n2. [Off](remove:inverter-lid).\n\n## Refit\n\n1. [On](refit:seat-base), [tight](tighten:seat-bolt).\n2. [On](refit:inverter-lid).\n3. [Tight](tighten:lid-bolt#inverter-lid).\n", "move this step behind step 2.3"},
		{"refit-over-open", "expects: { traction: dead, lift: dead }\nleaves: { traction: dead, lift: dead }\nsupplies: [new-seat-bolt: 8]\n---\n## Work\n\n1. [Off](remove:seat-base).\n2. [Off](remove:inverter-lid).\n\n## Refit\n\n1. [On](refit:seat-base), [tight](tighten:seat-bolt).\n", "write [put it back](refit:inverter-lid)"},
		{"reverse", "---\n## Work\n\n1. [Off](remove:seat-base).\n\n## Refit\n\n1. [Back](reverse:work!wheel).\n", "take wheel out of this link"},
		{"reverse", "---\n## Work\n\n1. [Off](remove:seat-base).\n\n## Refit\n\n1. [Back](reverse:work#wheel).\n", "write reverse:work#seat-base"},
		{"reverse", "supplies: [new-seat-bolt: 4]\n---\n## Work\n\n1. [Off](remove:seat-base).\n2. [On](refit:seat-base), [tight](tighten:seat-bolt).\n\n## Refit\n\n1. [Back](reverse:work#wheel).\n", "take #wheel out of this link"},
		{"reverse", "expects: { traction: dead, lift: dead }\nleaves: { traction: dead, lift: dead }\n---\n## Work\n\n1. [Mark](mark:lift-lines), [off](remove:seat-base).\n2. [Off](remove:inverter-lid).\n3. [Off](remove:inverter).\n4. [Off](disconnect:lift-line-a).\n5. [Off](disconnect:lift-line-b).\n\n## Refit\n\n1. [Back](reverse:work#wheel).\n", "take #wheel out of this link"},
		{"act-order", "---\n## Work\n\n1. [Tight](tighten:seat-bolt#wheel).\n", "write tighten:seat-bolt#seat-base"},
		{"not-asked", "---\n## Work\n\n1. [Off](isolate:heat).\n2. [On](restore:heat).\n", "write [](hold:foreman-release) in a step before this"},
	} {
		files := shopFiles(t)
		files["register/holds.yaml"] += "lift-high: { name: gauge, kind: measure, of: lift, what: gauge, limit: at most 5 bar }\n" +
			"lift-up: { name: gauge, kind: measure, of: lift, what: gauge, limit: at least 0 bar }\nlift-seals: { name: seals, kind: look, of: lift, what: every seal, good: dry, looks-for: leak }\n"
		files["machines/yard-tug.yaml"] = strings.Replace(files["machines/yard-tug.yaml"], "kind: connector, under: [cab-door]", "kind: connector, freed-by: [bleed-screw], guards: [raised-tug]", 1)
		files["machines/yard-tug.yaml"] = strings.Replace(files["machines/yard-tug.yaml"], "kind: heat, ", "kind: heat, before-restore: [foreman-release], ", 1)
		files["procedures/job.md"] = "---\ntitle: Job\nfor: yard-tug\n" + c.body
		told := false
		for _, f := range walked(t, files, strings.Contains(c.body, "hazard:bus")) {
			if f.Code == c.code {
				told = true
				if !strings.Contains(f.Mend, c.want) {
					t.Errorf("%s: the mend is %q, want %q in it", c.code, f.Mend, c.want)
				}
			}
		}
		if !told {
			t.Errorf("%s is not told of\n%s", c.code, c.body)
		}
	}
}

// What stays as it is stands in leaves: by the format's own word, whatever the
// shop speaks.
func TestWhatStaysIsWrittenAsTheFormatHasIt(t *testing.T) {
	files := shopFiles(t)
	files["procedures/job.md"] = "---\ntitle: Job\nfor: yard-tug\n---\n## Work\n\n1. [Off](remove:seat-base).\n"
	found := walked(t, files, false)
	for _, l := range []string{"de", "es"} {
		told := language.Of(l).Findings.TellAll(found)
		if !slices.ContainsFunc(told, func(f finding.Finding) bool {
			return strings.Contains(f.Mend, "seat-base: off in leaves") || strings.Contains(f.Mend, "seat-base: off en leaves")
		}) {
			t.Errorf("%s: %v", l, told)
		}
	}
}

// Of several points the message names the one that is not locked.
func TestMessagesNameThePoint(t *testing.T) {
	files := shopFiles(t)
	files["machines/boiler.yaml"] = `name: Boiler
points:
  crown-valve: { name: crown valve, lock: yes }
  gas-cock: { name: gas cock, lock: yes }
energies:
  steam: { name: steam, kind: pressure, pressure: 7 bar, points: [crown-valve, gas-cock], stored: yes }
`
	for body, want := range map[string]string{
		"[Shut](isolate:steam), [lock it](lock:crown-valve).": "released before it is locked at the gas cock: steam",
		"[Shut](isolate:steam).":                              "released before it is locked: steam",
	} {
		files["procedures/job.md"] = "---\ntitle: Job\nfor: boiler\nleaves: { steam: released }\n---\n## Work\n\n1. " + body + "\n2. [Out](release:steam).\n"
		found := walked(t, files, false)
		if len(found) != 1 || !strings.HasPrefix(found[0].Message, want) {
			t.Errorf("%s: found %v, want %q", body, found, want)
		}
	}
}

// Messages say what a fitter asks next: on which units it is so, in which step a
// thing was left as it is though a later act names it too, how long a wait takes.
// 100 s · ln(360/5) = 427.7 s, and 100 s · ln(360/60) = 179.2 s.
func TestMessagesSayWhereAndHowLong(t *testing.T) {
	const head = "---\ntitle: Job\nfor: yard-tug\nholds: [capacitor-wait, bus-dead]\n"
	for _, c := range []struct{ code, body, message, mend string }{
		{"left-off", "---\n## Work\n\n1. [With a cab](when:cab), [take the door off](remove:cab-door).\n", "left off at the end: cab door (off since step 1.1); on units with Enclosed cab", ""},
		{"left-loose", "---\n## Work\n\n1. [Undo it](loosen:bleed-screw).\n2. [Undo it](loosen:wheel-nut).\n3. [Tighten it](tighten:wheel-nut).\n", "bleed screw (loose since step 1.1)", ""},
		{"wait-short-of-limit", "leaves: { traction: dead }\n---\n## Work\n\n1. [Off](isolate:traction), [lock](lock:traction).\n2. [Wait](hold:three).\n3. [Dead](prove:traction). [x](hold:bus-dead)\n", "7 min 8 s", "wait 7 min 8 s"},
		{"wait-too-short", "leaves: { traction: dead }\n---\n## Work\n\n1. [Off](isolate:traction), [lock](lock:traction).\n2. [Wait](hold:two).\n3. [Dead](prove:traction). [x](hold:bus-dead)\n", "3 min", "wait at least 3 min"},
	} {
		files := shopFiles(t)
		files["machines/yard-tug.yaml"] = strings.Replace(files["machines/yard-tug.yaml"], "points: [service-plug], stored: yes", "points: [service-plug], stored: { capacitance: 1000 µF, resistance: 100 kΩ }", 1)
		files["register/holds.yaml"] += "three: { name: three, kind: wait, for: 3 min, of: traction }\ntwo: { name: two, kind: wait, for: 2 min, of: traction }\n"
		files["procedures/job.md"] = head + c.body
		told := false
		for _, f := range walked(t, files, false) {
			if f.Code == c.code {
				told = true
				if !strings.Contains(f.Message, c.message) || !strings.Contains(f.Mend, c.mend) {
					t.Errorf("%s: %q, mend %q; want %q and %q in them", c.code, f.Message, f.Mend, c.message, c.mend)
				}
			}
		}
		if !told {
			t.Errorf("%s is not told of\n%s", c.code, c.body)
		}
	}
}

// A finding names each thing once, and where it is of no thing none.
func TestMessagesNameEachThingOnce(t *testing.T) {
	files := shopFiles(t)
	files["register/hazards.yaml"] += "moving: { name: moving belt, nature: It runs., harm: serious-injury, consequence: It pulls a hand in., avoid: [Wait.], of: feed }\n"
	files["machines/rig.yaml"] = "name: Rig\npoints: { switch: { name: switch, lock: no } }\nenergies: { feed: { name: feed, kind: motion, points: [switch] } }\n" +
		"parts: { lid: { name: lid, guards: [feed] }, door: { name: door, guards: [feed] } }\n"
	for body, want := range map[string]string{
		"1. Look.\n\n## Refit\n\n1. [In reverse](reverse:work).\n": "nothing that this phase took off is still off here",
		"1. [Off](isolate:feed).\n2. [Lid off](remove:lid) [](hazard:moving), [door off](remove:door).\n3. [On](restore:feed).\n4. [Lid](refit:lid), [door](refit:door).\n": "as it was: lid (off since step 1.2), door (off since step 1.2)",
	} {
		files["procedures/job.md"] = "---\ntitle: Job\nfor: rig\nhazards: [moving]\n---\n## Work\n\n" + body
		found := walked(t, files, false)
		if len(found) != 1 || !strings.HasSuffix(found[0].Message, want) || strings.HasPrefix(found[0].Message, ":") {
			t.Errorf("%s: found %v, want %q", body, found, want)
		}
	}
}

// A finding that holds only for some units says which options, and no more than it
// takes: "Findings" of the format.
func TestMessagesNameNoOptionTooMany(t *testing.T) {
	files := shopFiles(t)
	files["machines/rig.yaml"] = "name: Rig\noptions: { jib: Jib, mast: Mast, winch: Winch }\npoints: { switch: { name: switch, lock: no } }\n" +
		"energies: { feed: { name: feed, kind: motion, points: [switch] } }\nparts: { lid: { name: lid, held-by: { bolt: 2 }, guards: [feed] } }\nfasteners: { bolt: { name: bolt } }\n"
	files["procedures/job.md"] = "---\ntitle: Job\nfor: rig\n---\n## Work\n\n1. [Off](isolate:feed).\n2. [With a jib](when:jib), [undo it](loosen:bolt).\n" +
		"3. [With a mast](when:mast), [undo it](loosen:bolt).\n4. [With a winch](when:winch), [undo it](loosen:bolt).\n5. [On](restore:feed).\n6. [Tighten](tighten:bolt).\n"
	found := walked(t, files, false)
	if len(found) != 1 {
		t.Fatalf("found %v", found)
	}
	for _, option := range []string{"with Jib", "with Mast", "with Winch"} {
		if strings.Count(found[0].Message, option) != 1 {
			t.Errorf("%s is not named once: %s", option, found[0].Message)
		}
	}
	if strings.Contains(found[0].Message, "without") {
		t.Error(found[0].Message)
	}
}

// What one link does to a thing on some units by one derived step and on the others
// by another is told once; and where each thing says on which units it is so, the
// finding does not say it again.
func TestMessagesSayOnceOnWhichUnits(t *testing.T) {
	files := shopFiles(t)
	files["register/holds.yaml"] += "still: { name: still, kind: look, of: feed, what: the feed, good: still }\n"
	files["machines/rig.yaml"] = "name: Rig\noptions: { jib: Jib, mast: Mast }\npoints: { switch: { name: switch, lock: no } }\nenergies: { feed: { name: feed, kind: motion, points: [switch] } }\n" +
		"parts: { lid: { name: lid, prove-dead: [feed] }, arm: { name: arm, only-with: jib, prove-dead: [feed] } }\n"
	const head = "---\ntitle: Job\nfor: rig\nholds: [still]\n---\n## Work\n\n1. [Off](isolate:feed).\n2. [Dead](prove:feed). [](hold:still)\n"
	for code, c := range map[string]struct{ body, want string }{
		"live-work": {"3. [Lid off](remove:lid).\n4. [Arm off](remove:arm).\n5. [On](restore:feed).\n\n## Refit\n\n1. [In reverse](reverse:work).\n",
			"hands go in before it is proved dead: feed (live since step 1.5)"},
		"restored-while-open": {"3. [Arm off](remove:arm).\n4. [Lid off](remove:lid).\n5. [With a jib](when:jib), [lid on](refit:lid).\n6. [On](restore:feed).\n7. [Off](isolate:feed).\n",
			"it comes back on, and this is not back as it was: lid (off since step 1.4) on units without Jib, arm (off since step 1.3) on units with Jib"},
	} {
		files["procedures/job.md"] = head + c.body
		var said []string
		for _, f := range walked(t, files, false) {
			if f.Code == code {
				said = append(said, f.Message)
			}
		}
		if !slices.Contains(said, c.want) {
			t.Errorf("%s: said %q, want %q", code, said, c.want)
		}
	}
}

// What stands round an energy is taken away once that is off; where nothing switches
// it off, once it is seen to be dead.
func TestMendsOfWhatStandsRoundAnEnergy(t *testing.T) {
	for id, want := range map[string]string{
		"drum": "write [cut it off](isolate:drum) in a step before this",
		"tyre": "write [let it out](release:tyre) and [see that it is out](prove:tyre) with [](hold:gauge) in a step before this",
	} {
		files := shopFiles(t)
		files["register/tools.yaml"] += "cage: { name: cage, kind: aid }\n"
		files["register/holds.yaml"] += "gauge: { name: gauge, kind: measure, of: tyre, what: gauge, limit: at most 0.5 bar }\n"
		files["machines/rig.yaml"] = "name: Rig\npoints: { switch: { name: switch, lock: no } }\nenergies:\n" +
			"  drum: { name: drum, kind: motion, points: [switch] }\n  tyre: { name: tyre, kind: pressure, points: [], stored: yes }\n"
		files["machines/rig.yaml"] = strings.Replace(files["machines/rig.yaml"], "{ name: "+id, "{ contained-by: [cage], name: "+id, 1)
		files["procedures/job.md"] = "---\ntitle: Job\nfor: rig\n---\n## Work\n\n1. [Put it round](place:cage).\n2. [Take it away](clear:cage).\n"
		found := walked(t, files, false)
		if len(found) != 1 || found[0].Code != "restored-while-open" || !strings.Contains(found[0].Mend, want) {
			t.Errorf("%s: found %v, want a mend with %q", id, found, want)
		}
	}
}

// A step that finds an energy dead where a procedure takes it cut off is told which
// word its point stands by: locked where that takes a lock, isolated where none does.
func TestMendsNameHowThePointStands(t *testing.T) {
	for lock, c := range map[string]struct{ step, want string }{
		"yes": {"[Off](isolate:feed), [lock](lock:feed)", "write switch: locked in expects of callee in place of feed"},
		"no":  {"[Off](isolate:feed)", "write switch: isolated in expects of callee in place of feed"},
	} {
		files := shopFiles(t)
		files["register/holds.yaml"] += "still: { name: still, kind: look, of: feed, what: the feed, good: still }\n"
		files["machines/rig.yaml"] = "name: Rig\npoints: { switch: { name: switch, lock: " + lock + " } }\nenergies: { feed: { name: feed, kind: motion, points: [switch] } }\n"
		files["procedures/callee.md"] = "---\ntitle: Callee\nfor: rig\nexpects: { feed: isolated }\nleaves: { feed: isolated }\n---\n## Work\n\n1. Look.\n"
		files["procedures/job.md"] = "---\ntitle: Job\nfor: rig\nleaves: { feed: dead }\n---\n## Work\n\n1. " + c.step + ".\n2. [Dead](prove:feed). [](hold:still)\n3. [Call](do:callee).\n"
		if found := walked(t, files, false); !slices.ContainsFunc(found, func(f finding.Finding) bool { return f.Code == "state-mismatch" && strings.Contains(f.Mend, c.want) }) {
			t.Errorf("lock: %s: found %v, want a mend with %q", lock, found, c.want)
		}
	}
}
