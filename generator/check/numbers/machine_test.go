package numbers

import (
	"strings"
	"testing"

	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
)

// M8 8.8, dry: the proof load of 21.2 kN (ISO 898-1) is reached at 21.2 kN ·
// 0.20 · 8 mm = 33.9 N·m; lubricated at 25.4 N·m, zinc plated at 28.8 N·m.
func TestTorqueOverProof(t *testing.T) {
	bolt := func(marked string) files {
		return replaced("machines/tug.yaml", "seat-bolt: { name: seat bolt, thread: M8x1.25, class: 8.8, across-flats: 13 mm, torque: 22 N·m, condition: dry, retorque: after 8 h }", marked)
	}
	const head = "seat-bolt: { name: seat bolt, thread: M8x1.25, class: 8.8, "
	expect(t, map[string]files{
		"dry, below":              bolt(head + "torque: 33 N·m, condition: dry }"),
		"dry, above":              bolt(head + "torque: ⟦torque-over-proof⟧35 N·m, condition: dry }"),
		"unsaid is dry":           bolt(head + "torque: 33 N·m }"),
		"unsaid, above":           bolt(head + "torque: ⟦torque-over-proof⟧35 N·m }"),
		"zinc, below":             bolt(head + "torque: 28 N·m, condition: zinc }"),
		"zinc, above":             bolt(head + "torque: ⟦torque-over-proof⟧30 N·m, condition: zinc }"),
		"lubricated, below":       bolt(head + "torque: 25 N·m, condition: lubricated }"),
		"lubricated, above":       bolt(head + "torque: ⟦torque-over-proof⟧27 N·m, condition: lubricated }"),
		"in pounds, above":        bolt(head + "torque: ⟦torque-over-proof⟧26 lbf·ft }"),
		"in pounds, below":        bolt(head + "torque: 24 lbf·ft }"),
		"the upper end, above":    bolt(head + "torque: ⟦torque-over-proof⟧30 to 35 N·m }"),
		"its tolerance, above":    bolt(head + "torque: ⟦torque-over-proof⟧32 N·m ± 10 % }"),
		"its tolerance, below":    bolt(head + "torque: 30 N·m ± 10 % }"),
		"a stage, above":          bolt(head + "stages: ⟦torque-over-proof⟧[20 N·m, 40 N·m, 90°] }"),
		"one stage, above":        bolt(head + "stages: ⟦torque-over-proof⟧[40 N·m] }"),
		"stages go before torque": bolt(head + "torque: 90 N·m, stages: [20 N·m, 90°] }"),
		"fine thread, below":      bolt("seat-bolt: { name: seat bolt, thread: M8x1, class: 8.8, torque: 35 N·m }"), // 39.2 mm² · 580 MPa
		"no class":                bolt("seat-bolt: { name: seat bolt, thread: M8, torque: 90 N·m }"),
		"another standard":        bolt("seat-bolt: { name: seat bolt, thread: M8, class: A2-70, torque: 90 N·m }"),
		"an inch thread":          bolt("seat-bolt: { name: seat bolt, thread: 5/16-18 UNC, class: 8.8, torque: 90 N·m }"),
	})
	// 35.2 N·m/(0.20 · 8 mm) = 22.0 kN, 104 % of 21.2 kN.
	says(t, bolt(head+"torque: 32 N·m ± 10 % }"),
		"35.2 N·m pull 22.0 kN into the seat bolt, M8x1.25, class 8.8, and its proof load is 21.2 kN",
		"look up torque, thread, class and condition again; F = T/(K·d) = 35.2 N·m/(0.20 · 8 mm) = 22.0 kN, 104 % of the proof load of 21.2 kN; source: T = K·d·F, short form of the trade; proof load ISO 898-1, tables 4 and 5")
	says(t, bolt(head+"torque: 40 N·m }"),
		"40 N·m pull 25.0 kN into the seat bolt, M8x1.25, class 8.8, and its proof load is 21.2 kN",
		"look up torque, thread, class and condition again; F = T/(K·d) = 40 N·m/(0.20 · 8 mm) = 25.0 kN, 118 % of the proof load of 21.2 kN; source: T = K·d·F, short form of the trade; proof load ISO 898-1, tables 4 and 5")
}

// The shop's limit is 23 kg for each; the lid has 30 kg, the block 620 kg.
func TestLiftOverLimit(t *testing.T) {
	lid := "tools: [socket-10, hoist, wrench-5-25]\npeople: 2"
	expect(t, map[string]files{
		"one person":                           jobOf(lid, "⟦lift-over-limit⟧[Lift the lid](remove:lid)."),
		"two":                                  jobOf(lid, "[Lift the lid](remove:lid). [](people:2)"),
		"two by the phase":                     jobOf(lid, "lead: [](people:2)", "[Lift the lid](remove:lid)."),
		"the step says otherwise":              jobOf(lid, "lead: [](people:2)", "⟦lift-over-limit⟧[Lift the lid](remove:lid). [](people:1)"),
		"a sub-step has its own people":        jobOf(lid, "Together: [](people:2)\n\n   1. ⟦lift-over-limit⟧[Lift the lid](remove:lid).\n"),
		"gear":                                 jobOf(lid, "[Lift the lid](remove:lid) with the [](tool:hoist)."),
		"gear in place":                        jobOf(lid, "[Hang the hoist](place:hoist).", "[Lift the lid](remove:lid).", "[Hoist](clear:hoist)."),
		"gear taken away":                      jobOf(lid, "[Hang the hoist](place:hoist).", "[Hoist](clear:hoist).", "⟦lift-over-limit⟧[Lift the lid](remove:lid)."),
		"gear listed, not named":               jobOf(lid, "⟦lift-over-limit⟧[Lift the lid](remove:lid)."),
		"putting it back too":                  jobOf(lid, "⟦lift-over-limit⟧[Lid on](refit:lid)."),
		"two cannot do all":                    jobOf(lid, "⟦lift-over-limit⟧[Lift the block](remove:block). [](people:2)"),
		"light":                                jobOf("tools: [socket-13]", "[Lift the seat](remove:seat)."),
		"a reversed lift is that of its strip": jobOf(lid, "[Lift the lid](remove:lid). [](people:2)", "## Refit", "[In reverse](reverse:strip)."),
		"the shop lifts more":                  jobOf(lid, "[Lift the lid](remove:lid).").with(files{"shop.yaml": "title: Test shop\nlimits: { lift: 66 lb }\nalso: [es]\n"}).with(replaced("machines/tug.yaml", "mass: 30 kg", "mass: 29.9 kg")),
		"the shop lifts nearly nothing":        jobOf("tools: [socket-13]", "⟦lift-over-limit⟧[Lift the seat](remove:seat).").with(files{"shop.yaml": "title: Test shop\nlimits: { lift: 1 kg }\nalso: [es]\n"}),
		"the shop lifts less":                  jobOf("tools: [socket-13]", "⟦lift-over-limit⟧[Lift the seat](remove:seat).").with(files{"shop.yaml": "title: Test shop\nlimits: { lift: 25 lb }\nalso: [es]\n"}),
		"gear that a called procedure leaves":  jobOf(lid, "[Hang it](do:hang).", "[Lift the lid](remove:lid).").with(files{"procedures/hang.md": procedure("tools: [hoist]\nleaves: { hoist: placed }", "[Hang](place:hoist).")}),
		"as many as a called procedure takes":  jobOf(lid, "[Steady it](do:steady) and [lift the lid](remove:lid).").with(files{"procedures/steady.md": procedure("people: 2", "Hold it.")}),
		"gear that is expected":                jobOf(lid+"\nexpects: { hoist: placed }", "[Lift the lid](remove:lid)."),
		"gear that a called procedure takes away": jobOf(lid, "[Hang the hoist](place:hoist).", "[Away](do:away).", "⟦lift-over-limit⟧[Lift the lid](remove:lid).").with(
			files{"procedures/away.md": procedure("tools: [hoist]\nexpects: { hoist: placed }", "[Away](clear:hoist).")}),
	})
	says(t, jobOf(lid, "[Lift the lid](remove:lid)."), "the inverter lid is 30 kg: too much for one person at 23 kg each", "ask for 2 people, [](people:2), or name lifting gear")
	// More than four find no room around a part: common practice, no source.
	for mass, mend := range map[string]string{"92 kg": "ask for 4 people, [](people:4), or name lifting gear", "93 kg": "name lifting gear in this step: [](tool:…)"} {
		says(t, jobOf(lid, "[Lift the lid](remove:lid).").with(replaced("machines/tug.yaml", "mass: 30 kg", "mass: "+mass)),
			"the inverter lid is "+mass+": too much for one person at 23 kg each", mend)
	}
	says(t, jobOf(lid, "[Lift the block](remove:block). [](people:2)"), "the valve block is 620 kg: too much for 2 people at 23 kg each", "name lifting gear in this step: [](tool:…)")
}

// The seat of 14 kg, by hand from NIOSH 94-110: with H 60 cm, V 30 cm, D 45 cm,
// A 45°, a poor hold, 23 · .42 · .87 · .92 · .86 · 1 · .90 = 5.98 kg for each,
// so an index of 2.3 for one person, 1.2 for two and 0.8 for three; with H 25
// cm, V 75 cm, D 25 cm it is 23 kg.
func TestLiftingIndex(t *testing.T) {
	seat := func(lift string) files {
		return replaced("machines/tug.yaml", "seat: { name: seat base, held-by: { seat-bolt: 4 }, mass: 14 kg }", "seat: { name: seat base, held-by: { seat-bolt: 4 }, mass: 14 kg, lift: "+lift+" }")
	}
	const far, near = "{ horizontal: 60 cm, vertical: 30 cm, travel: 45 cm, asymmetry: 45°, coupling: poor }", "{ horizontal: 25 cm, vertical: 75 cm, travel: 25 cm, coupling: good }"
	front := "tools: [socket-13, hoist, wrench-20-100]\npeople: 3"
	expect(t, map[string]files{
		"one person":               jobOf(front, "⟦lifting-index⟧[Lift the seat](remove:seat).").with(seat(far)),
		"putting it back":          jobOf(front, "⟦lifting-index⟧[Seat on](refit:seat).").with(seat(far)),
		"two":                      jobOf(front, "⟦lifting-index⟧[Lift the seat](remove:seat). [](people:2)").with(seat(far)),
		"three":                    jobOf(front, "[Lift the seat](remove:seat). [](people:3)").with(seat(far)),
		"three by the phase":       jobOf(front, "lead: [](people:3)", "[Lift the seat](remove:seat).").with(seat(far)),
		"gear":                     jobOf(front, "[Lift the seat](remove:seat) with the [](tool:hoist).").with(seat(far)),
		"a measure that cannot be": jobOf(front, "[Lift the seat](remove:seat).").with(seat("{ horizontal: 60 cm, vertical: ⟦quantity⟧300 cm, travel: 45 cm, asymmetry: 45°, coupling: poor }")), // NIOSH 94-110: at most 175 cm
		"near":                     jobOf(front, "[Lift the seat](remove:seat).").with(seat(near)),
		"the far end is worse": jobOf(front, "⟦lifting-index⟧[Lift the seat](remove:seat).").with(
			seat("{ horizontal: 25 cm, vertical: 75 cm, coupling: good, to: { horizontal: 60 cm, vertical: 30 cm, asymmetry: 45° } }")),
		"over the shop's limit is told once": jobOf("tools: [socket-10]", "⟦lift-over-limit⟧[Lift the lid](remove:lid).").with(
			replaced("machines/tug.yaml", "mass: 30 kg }", "mass: 30 kg, lift: "+far+" }")),
		"a reversed lift is that of its strip": jobOf(front, "[Lift the seat](remove:seat). [](people:3)", "## Refit", "[In reverse](reverse:strip).").with(seat(far)),
	})
	says(t, jobOf(front, "[Lift the seat](remove:seat). [](people:2)").with(seat(far)),
		"the seat base is 14 kg for 2 people: a lifting index of 1.2, where at most 1 is recommended",
		"ask for 3 people, [](people:3), name lifting gear, or bring it nearer; LI = L/(LC·HM·VM·DM·AM·FM·CM) = 7 kg/(23 kg · 0.42 · 0.87 · 0.92 · 0.86 · 1.00 · 0.90) = 1.2, with a limit of 6.0 kg; source: NIOSH 94-110, rev. 9/2021")
	// The limit is 6.0 kg for each: 11.9 kg are for two, 23.6 kg for four, 26 kg for nobody.
	for mass, mend := range map[string]string{"11.9 kg": "ask for 2 people, [](people:2), ", "23.6 kg": "ask for 4 people, [](people:4), ", "26 kg": "name lifting gear in this step: [](tool:…), "} {
		people := map[bool]string{true: "", false: " [](people:3)"}[mass == "11.9 kg"]
		plain, _ := unmark(base.with(jobOf(front, "[Lift the seat](remove:seat)."+people)).with(seat(far)))
		plain["machines/tug.yaml"] = strings.Replace(plain["machines/tug.yaml"], "mass: 14 kg", "mass: "+mass, 1)
		if found := look(t, plain); len(found) != 1 || found[0].Code != LiftingIndex.Code || !strings.HasPrefix(found[0].Mend, mend) {
			t.Errorf("%s: %v, want %s", mass, found, mend)
		}
	}
}

// The limits of NIOSH 94-110, pp. 8 to 15, from both sides.
func TestPlausibleLift(t *testing.T) {
	part := func(mark, rest string) files {
		return replaced("machines/tug.yaml", "  screen: { name: screen, held-by: { key-bolt: 2 } }", "  "+mark+"screen: { name: screen, "+rest+" }")
	}
	lift := func(mark, h, v, more string) files {
		return part(mark, "mass: 5 kg, lift: { horizontal: "+h+", vertical: "+v+", coupling: fair, "+more+" }")
	}
	expect(t, map[string]files{
		"as far as it goes":      lift("", "63 cm", "175 cm", "travel: 175 cm, asymmetry: 135°, frequency: 9, duration: 8 h"),
		"as near as it goes":     lift("", "250 mm", "0 cm", "travel: 10 cm"),
		"too near":               lift("", "⟦quantity⟧24 cm", "75 cm", "travel: 30 cm"),
		"too far":                lift("", "⟦quantity⟧64 cm", "75 cm", "travel: 30 cm"),
		"too high":               lift("", "30 cm", "⟦quantity⟧1.76 m", "travel: 30 cm"),
		"below the floor":        lift("", "30 cm", "⟦quantity⟧-5 cm", "travel: 30 cm"),
		"too long a way":         lift("", "30 cm", "75 cm", "travel: ⟦quantity⟧176 cm"),
		"over the shoulder":      lift("", "30 cm", "75 cm", "travel: 30 cm, asymmetry: ⟦quantity⟧136°"),
		"too often":              lift("", "30 cm", "75 cm", "travel: 30 cm, frequency: ⟦quantity⟧16"),
		"too long":               lift("", "30 cm", "75 cm", "travel: 30 cm, duration: ⟦quantity⟧9 h"),
		"too often for so long":  part("", "mass: 5 kg, lift: ⟦quantity⟧{ horizontal: 30 cm, vertical: 70 cm, coupling: fair, travel: 30 cm, frequency: 12, duration: 6 h }"),
		"no travel":              lift("⟦missing-field⟧", "30 cm", "75 cm", ""),
		"travel twice":           lift("", "30 cm", "75 cm", "travel: ⟦quantity⟧10 cm, to: { horizontal: 30 cm, vertical: 65 cm }"),
		"too far at the far end": lift("", "30 cm", "75 cm", "to: { horizontal: ⟦quantity⟧80 cm, vertical: 65 cm }"),
		"no mass":                part("⟦missing-field⟧", "lift: { horizontal: 30 cm, vertical: 75 cm, travel: 30 cm, coupling: good }"),
		"in inches":              part("", "mass: 12 lb, lift: { horizontal: 10 in, vertical: 70 in, travel: 70 in, coupling: good }"),
		"in inches, too high":    part("", "mass: 12 lb, lift: { horizontal: 10 in, vertical: ⟦quantity⟧71 in, travel: 70 in, coupling: good }"),
		"more than one is wrong": lift("", "⟦quantity⟧10 cm", "⟦quantity⟧180 cm", "travel: 30 cm"),
	})
	says(t, lift("", "0 cm", "75 cm", "travel: 30 cm"), "lift: horizontal is 0 cm, which cannot be", "write what it is, from 25 cm to 63 cm")
	says(t, lift("", "30 cm", "-5 cm", "travel: 30 cm"), "lift: vertical is −5 cm, which cannot be", "write what it is, from 0 to 175 cm")
	says(t, lift("", "20 cm", "75 cm", "travel: 30 cm"), "lift: horizontal is 20 cm: the hands are never nearer to the ankles than 25 cm",
		"measure from the middle of the ankles to the middle of the hands; write 25 cm where it is less")
	says(t, lift("", "30 cm", "75 cm", "travel: 30 cm, frequency: 20"), "lift: frequency is 20 lifts a minute: beyond 15 lifts a minute nothing is lifted by hand",
		"look it up again; if it is so, lift it with gear and take lift out")
	says(t, lift("", "30 cm", "180 cm", "travel: 30 cm"), "lift: vertical is 180 cm: beyond 175 cm nothing is lifted by hand",
		"look it up again; if it is so, lift it with gear and take lift out")
	mustFindNothing(t, "an unknown hold of the hands", base.with(part("", "mass: 5 kg, lift: { horizontal: 63 cm, vertical: 75 cm, travel: 30 cm, coupling: slippery }")))
	mustFindNothing(t, "a mass for a height", base.with(part("", "mass: 5 kg, lift: { horizontal: 63 cm, vertical: 75 kg, travel: 30 cm, coupling: good }")))
	mustFindNothing(t, "no height", base.with(part("", "mass: 5 kg, lift: { horizontal: 63 cm, travel: 30 cm, coupling: good }")))
}

// A mass at the beginning of rated: counts: "Lifting" of version 4. The seat has 14 kg,
// the lid 30 kg.
func TestLiftOverRating(t *testing.T) {
	rated := func(what string, steps ...string) files {
		return jobOf("tools: [socket-10, socket-13, hoist, wrench-20-100]", steps...).with(replaced("register/tools.yaml", "name: shop hoist, kind: lifting", "name: shop hoist, kind: lifting, rated: "+what))
	}
	const out = "[Lift the seat out](remove:seat) with the [](tool:hoist)."
	expect(t, map[string]files{
		"as much":                rated("14 kg", out),
		"less":                   rated("13.9 kg", "⟦lift-over-limit⟧"+out),
		"less, and more words":   rated("\"13 kg, one leg\"", "⟦lift-over-limit⟧"+out),
		"in pounds":              rated("30 lb", "⟦lift-over-limit⟧"+out), // 13.6 kg
		"not at the beginning":   rated("\"two legs, 10 kg\"", out),
		"no mass":                rated("10 kN", out),
		"off and on in one step": rated("20 kg", "[Lift the seat out](remove:seat), [turn it and put it in](refit:seat) with the [](tool:hoist)."),
		"two at once":            rated("40 kg", "⟦lift-over-limit⟧[Lift the seat](remove:seat) and [the lid](remove:lid) out with the [](tool:hoist)."),
		"one after the other":    rated("40 kg", out, "[Lift the lid](remove:lid) with the [](tool:hoist)."),
		"each is too much":       rated("10 kg", "⟦lift-over-limit⟧"+out, "⟦lift-over-limit⟧[Lift the lid](remove:lid) with the [](tool:hoist)."),
	})
	mustFindNothing(t, "what could not be read", base.with(rated("[10 kg]", out)))
	says(t, rated("40 kg", "[Lift the seat](remove:seat) and [the lid](remove:lid) out with the [](tool:hoist)."),
		"the shop hoist is rated for 40 kg, and this step lifts 44.0 kg", "name lifting gear that carries it all, or lift in steps of their own")
}

func TestLiftingIndexIsAdvice(t *testing.T) {
	if LiftingIndex.Level.String() != "advice" {
		t.Error("a recommended limit stops the build")
	}
}

func TestTooFewPeople(t *testing.T) {
	expect(t, map[string]files{
		"a step":        jobOf("people: 2", "Push. ⟦too-few-people⟧[](people:3)"),
		"as many":       jobOf("people: 3", "Push. [](people:3)"),
		"one if unsaid": jobOf("summary: Push", "Push. ⟦too-few-people⟧[](people:2)"),
		"a phase":       jobOf("people: 2", "lead: All of it: ⟦too-few-people⟧[](people:3)", "Push."),
		"a sub-step":    jobOf("people: 1", "Push:\n\n   1. Now. ⟦too-few-people⟧[](people:2)\n"),
		"prose is none": jobOf("people: 1", "Push.").with(files{"procedures/two.md": procedure("people: 1", "lead: First.", "Push.") + "\nThen more, [](people:4).\n"}),
		"a called procedure takes more": jobOf("people: 2", "⟦too-few-people⟧[Push](do:push).").with(
			files{"procedures/push.md": procedure("people: 3", "Push.")}),
		"and as many": jobOf("people: 3", "[Push](do:push).").with(files{"procedures/push.md": procedure("people: 3", "Push.")}),
		"to be read":  jobOf("people: 1", "[Push](see:push).").with(files{"procedures/push.md": procedure("people: 3", "Push.")}),
	})
	says(t, jobOf("people: 2", "Push. [](people:3)"), "this needs 3 people, and this procedure has 2 people", "write people: 3 in the front matter")
}

func TestCalibrationDue(t *testing.T) {
	tool := func(calibration string) files {
		return replaced("register/tools.yaml", "\nangle-gauge: { name: angle gauge, kind: angle-gauge }", "\n"+calibration)
	}
	expect(t, map[string]files{
		"run out yesterday": tool("angle-gauge: { name: g, kind: other, calibration: ⟦calibration-due⟧{ every: 12 months, last: 2025-11-24 } }"),
		"runs out today":    tool("angle-gauge: { name: g, kind: other, calibration: { every: 12 months, last: 2025-11-25 } }"),
		"one of two":        tool("angle-gauge: { name: g, kind: other, calibration: ⟦calibration-due⟧{ every: 12 months, units: { g-1: 2025-11-24, g-2: 2026-04-01 } } }"),
		"both good":         tool("angle-gauge: { name: g, kind: other, calibration: { every: 12 months, units: { g-1: 2026-11-24, g-2: 2026-04-01 } } }"),
		"in days":           tool("angle-gauge: { name: g, kind: other, calibration: ⟦calibration-due⟧{ every: 30 days, last: 2026-10-25 } }"),
		"every day":         tool("angle-gauge: { name: g, kind: other, calibration: ⟦calibration-due⟧{ every: 1 day, last: 2026-11-23 } }"),
		"a day to come":     tool("angle-gauge: { name: g, kind: other, calibration: ⟦calibration-due⟧{ every: 12 months, last: 2062-03-02 } }"),
	})
	says(t, tool("angle-gauge: { name: gauge, kind: other, calibration: { every: 12 months, units: { g-1: 2025-11-24, g-2: 2026-04-01, g-3: 2024-02-29 } } }"),
		"the calibration ran out: g-1 on 2026-11-24 and g-3 on 2025-02-28", "send it to calibration, and write the new day as its last")
	says(t, tool("angle-gauge: { name: gauge, kind: other, calibration: { every: 12 months, last: 2062-03-02 } }"),
		"calibrated on a day that has not come: gauge on 2062-03-02", "write a day that has come, as year, month and day: 2026-03-02")
}

func TestCalibrationDueIsAdvice(t *testing.T) {
	if CalibrationDue.Level.String() != "advice" {
		t.Error("a calibration that is due stops the build")
	}
	if due, ok := DueOf(quantity.Quantity{}, model.Date{Year: 2026, Month: 1, Day: 1}); ok {
		t.Errorf("without an interval it is due on %s", due)
	}
}

// Numbers that parse, and that nothing can be.
func TestPlausible(t *testing.T) {
	bolt := func(marked string) files {
		return replaced("machines/tug.yaml", "clip: { name: clip }", marked)
	}
	battery := func(marked string) files {
		return replaced("machines/tug.yaml", "lift: { name: lift hydraulics, kind: pressure, pressure: 180 bar, points: [plug] }", marked)
	}
	tool := func(marked string) files {
		return replaced("register/tools.yaml", "stand: { name: axle stand, kind: aid }", marked)
	}
	expect(t, map[string]files{
		"no torque at all":              bolt("clip: { name: clip, torque: ⟦quantity⟧0 N·m }"),
		"a stage of nothing":            bolt("clip: { name: clip, stages: ⟦quantity⟧[0 N·m, 90°] }"),
		"a length for a pitch":          bolt("clip: { name: clip, thread: ⟦not-judged⟧M8x25, torque: hand }"),
		"a decimal comma in a thread":   bolt("clip: { name: clip, thread: ⟦not-judged⟧\"M8x1,25\", torque: hand }"),
		"a pipe thread":                 bolt("clip: { name: clip, thread: G1/4, across-flats: 19 mm, torque: hand }"),
		"a class that is none":          bolt("clip: { name: clip, thread: M8, class: ⟦not-judged⟧8.9, torque: hand }"),
		"a stainless class":             bolt("clip: { name: clip, thread: M8, class: A2-70, torque: hand }"),
		"a head inside its thread":      bolt("clip: { name: clip, thread: M8, across-flats: ⟦quantity⟧6 mm, torque: hand }"),
		"a key inside its head":         bolt("clip: { name: clip, thread: M8, drive: hex 6 mm, torque: hand }"),
		"a drive without a unit":        bolt("clip: { name: clip, drive: ⟦quantity⟧hex 6 }"),
		"flats of nothing":              bolt("clip: { name: clip, across-flats: ⟦quantity⟧0 mm }"),
		"C and no R":                    battery("⟦missing-field⟧lift: { kind: electric, voltage: 80 V dc, points: [plug], stored: { capacitance: 1 mF } }"),
		"R and no C":                    battery("⟦missing-field⟧lift: { kind: electric, voltage: 80 V dc, points: [plug], stored: { resistance: 1 kΩ } }"),
		"no voltage":                    battery("⟦missing-field⟧lift: { kind: electric, points: [plug], stored: { capacitance: 1 mF, resistance: 1 kΩ } }"),
		"0 V":                           battery("lift: { kind: electric, voltage: ⟦quantity⟧0 V dc, points: [plug] }"),
		"0 F":                           battery("lift: { kind: electric, voltage: 80 V dc, points: [plug], stored: { capacitance: ⟦quantity⟧0 mF, resistance: 1 kΩ } }"),
		"a charge that stays for days":  battery("lift: { kind: electric, voltage: 360 V dc, points: [plug], stored: ⟦quantity⟧{ capacitance: 1000 mF, resistance: 100 kΩ } }"), // 6.8 days to 1 V
		"a charge that stays a day":     battery("lift: { kind: electric, voltage: 360 V dc, points: [plug], stored: ⟦quantity⟧{ capacitance: 147 mF, resistance: 100 kΩ } }"),  // 86 526 s to 1 V
		"a charge that stays almost so": battery("lift: { kind: electric, voltage: 360 V dc, points: [plug], stored: { capacitance: 146 mF, resistance: 100 kΩ } }"),            // 85 937 s
		"plus at the frame":             battery("lift: { kind: electric, voltage: -48 V dc, points: [plug] }"),
		"a head as wide as its thread":  bolt("clip: { name: clip, thread: M8, across-flats: ⟦quantity⟧8 mm, torque: hand }"),
		"a head that is wider":          bolt("clip: { name: clip, thread: M8, across-flats: 8.1 mm, torque: hand }"),
		"a star, a spiral":              bolt("clip: { name: clip, sequence: star }\n  other: { name: other, sequence: spiral }"),
		"an order that is none":         bolt("clip: { name: clip, sequence: ⟦wrong-type⟧round }"),
		"an order in places":            bolt("clip: { name: clip, sequence: [left, right] }"),
		"a class without its point":     bolt("clip: { name: clip, thread: M8, class: ⟦not-judged⟧88, torque: hand }"),
		"a capacitance in a spring":     battery("lift: { kind: spring, points: [plug], stored: ⟦quantity⟧{ capacitance: 1 mF } }"),
		"a resistance in a spring":      battery("lift: { kind: spring, points: [plug], stored: ⟦quantity⟧{ resistance: 1 kΩ } }"),
		"a charge in a spring":          battery("lift: { kind: spring, points: [plug], stored: ⟦quantity⟧{ capacitance: 1 mF, resistance: 1 kΩ } }"),
		"gas":                           battery("lift: { kind: pressure, pressure: 180 bar, points: [plug], stored: { gas-volume: 4 L } }"),
		"gas over a fluid":              battery("lift: { kind: pressure, pressure: 180 bar, points: [plug], stored: { gas-volume: 4 L, precharge: 90 bar } }"),
		"gas and no pressure":           battery("⟦missing-field⟧lift: { kind: pressure, points: [plug], stored: { gas-volume: 4 L } }"),
		"a precharge and no gas":        battery("⟦missing-field⟧lift: { kind: pressure, pressure: 180 bar, points: [plug], stored: { precharge: 90 bar } }"),
		"no gas at all":                 battery("lift: { kind: pressure, pressure: 180 bar, points: [plug], stored: { gas-volume: ⟦quantity⟧0 L } }"),
		"no pressure at all":            battery("lift: { kind: pressure, pressure: ⟦quantity⟧0 bar, points: [plug], stored: { gas-volume: 4 L } }"),
		"a precharge below the air":     battery("lift: { kind: pressure, pressure: 180 bar, points: [plug], stored: { gas-volume: 4 L, precharge: ⟦quantity⟧-1 bar } }"),
		"no room for a fluid":           battery("lift: { kind: pressure, pressure: 90 bar, points: [plug], stored: { gas-volume: 4 L, precharge: ⟦quantity⟧90 bar } }"),
		"no room in a low tank":         battery("lift: { kind: pressure, pressure: 0.5 bar, points: [plug], stored: { gas-volume: 4 L, precharge: ⟦quantity⟧0.6 bar } }"),
		"gas in a weight":               battery("lift: { kind: gravity, points: [plug], stored: ⟦quantity⟧{ gas-volume: 4 L } }"),
		"no mass":                       replaced("machines/tug.yaml", "  seat: { name: seat base, held-by: { seat-bolt: 4 }, mass: 14 kg }", "  seat: { name: seat base, mass: ⟦quantity⟧0 kg }"),
		"a wrench in bar":               tool("stand: { name: w, kind: torque-wrench, range: ⟦quantity⟧0 to 100 bar }"),
		"a wrench at a single torque":   tool("stand: { name: w, kind: torque-wrench, range: ⟦quantity⟧at most 100 N·m }"),
		"a gauge in bar":                tool("stand: { name: g, kind: tester, range: 0 to 100 bar }"),
		"a wrench of no length":         tool("stand: { name: w, kind: torque-wrench, range: 20 to 100 N·m, length: ⟦quantity⟧0 mm }"),
		"a socket without a unit":       tool("stand: { name: s, kind: socket, fits: ⟦quantity⟧[13] }"),
		"a socket for a thread":         tool("stand: { name: s, kind: socket, fits: ⟦quantity⟧[M8] }"),
		"a socket in inches":            tool("stand: { name: s, kind: socket, fits: [9/16 in, T30] }"),
		"a calibration without a day":   tool("⟦missing-field⟧stand: { name: s, kind: aid, calibration: { every: 12 months } }"),
		"a calibration every never":     tool("stand: { name: s, kind: aid, calibration: { every: ⟦quantity⟧0 months, last: 2026-11-01 } }"),
		"an unknown statement":          files{"register/supplies.yaml": "oil: { name: hydraulic oil, unit: L, ghs: [⟦unknown-reference⟧H3O4] }\n"},
		"a safe voltage of nothing":     files{"shop.yaml": "title: Test shop\nlimits: { safe-voltage-dc: ⟦quantity⟧0 V }\nalso: [es]\n"},
		"a safe voltage of ac for dc":   files{"shop.yaml": "title: Test shop\nlimits: { safe-voltage-dc: ⟦quantity⟧60 V ac }\nalso: [es]\n"},
		"a lift of nothing":             jobOf("tools: [socket-13]", "[Lift the seat](remove:seat).").with(files{"shop.yaml": "title: Test shop\nlimits: { lift: ⟦quantity⟧0 kg }\nalso: [es]\n"}),
	})
	says(t, bolt("clip: { name: clip, thread: M8x25, torque: hand }"), `thread: "M8x25" has a pitch that no such thread has, so that the bolt load of clip is not judged`, "write M8x1.25, or a finer pitch; a length does not belong here")
	says(t, bolt("clip: { name: clip, thread: M8, across-flats: 6 mm, torque: hand }"), "across-flats: a head of 6 mm is no wider than its thread, M8", "write the width of the head; for a key inside the head write drive: hex 6 mm")
	says(t, files{"register/supplies.yaml": "oil: { name: hydraulic oil, unit: L, ghs: [H3O4] }\n"}, `ghs: "H3O4" is not a hazard statement that the manual knows`, "did you mean H304? Look it up in section 2 of the safety data sheet")
}

func TestMachineFindingsAreSilent(t *testing.T) {
	mustFindNothing(t, "a fastener that could not be read", base.with(replaced("machines/tug.yaml", "torque: 22 N·m, condition: dry", "torque: 90 N·m, condition: damp")))
	mustFindNothing(t, "an energy that could not be read", base.with(jobOf("holds: [short-wait]", "[Wait](hold:short-wait).")).with(replaced("machines/tug.yaml", "voltage: 360 V dc", "voltage: 360 A")))
	mustFindNothing(t, "a wait that could not be read", base.with(jobOf("holds: [short-wait]", "[Wait](hold:short-wait).")).with(replaced("register/holds.yaml", "for: 2 min,", "for: 2 bar,")))
	mustFindNothing(t, "a shop that could not be read", base.with(jobOf("tools: [socket-10]", "[Lid](remove:lid). [Wait](hold:short-wait).")).with(files{"shop.yaml": "title: T\nalso: [es]\nlimits: { lift: 23 bar, safe-voltage-dc: 60 bar }\n"}))
	mustFindNothing(t, "a part that could not be read", base.with(jobOf("tools: [socket-13]", "[Lid](remove:lid).")).with(replaced("machines/tug.yaml", "mass: 30 kg", "mass: 30 V")))
	mustFindNothing(t, "people that could not be read", base.with(jobOf("tools: [socket-10]\npeople: 2", "[Lid](remove:lid). [](people:zwei)")))
	mustFindNothing(t, "a front matter that could not be read", base.with(jobOf("people: zwei", "Push. [](people:3)")))
	mustFindNothing(t, "a tool that could not be read", base.with(replaced("register/tools.yaml", "stand: { name: axle stand, kind: aid }", "stand: { name: axle stand, kind: aid, fits: 13, owned: x, calibration: { every: often, last: 2020-01-01 } }")))
}
