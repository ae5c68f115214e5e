package judge

import (
	"testing"

	"baybinder/generator/manual"
	"baybinder/generator/quantity"
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
		"dry, above":              bolt("⟦torque-over-proof⟧" + head + "torque: 35 N·m, condition: dry }"),
		"unsaid is dry":           bolt(head + "torque: 33 N·m }"),
		"unsaid, above":           bolt("⟦torque-over-proof⟧" + head + "torque: 35 N·m }"),
		"zinc, below":             bolt(head + "torque: 28 N·m, condition: zinc }"),
		"zinc, above":             bolt("⟦torque-over-proof⟧" + head + "torque: 30 N·m, condition: zinc }"),
		"lubricated, below":       bolt(head + "torque: 25 N·m, condition: lubricated }"),
		"lubricated, above":       bolt("⟦torque-over-proof⟧" + head + "torque: 27 N·m, condition: lubricated }"),
		"in pounds, above":        bolt("⟦torque-over-proof⟧" + head + "torque: 26 lbf·ft }"),
		"in pounds, below":        bolt(head + "torque: 24 lbf·ft }"),
		"the upper end, above":    bolt("⟦torque-over-proof⟧" + head + "torque: 30 to 35 N·m }"),
		"its tolerance, above":    bolt("⟦torque-over-proof⟧" + head + "torque: 32 N·m ± 10 % }"),
		"its tolerance, below":    bolt(head + "torque: 30 N·m ± 10 % }"),
		"a stage, above":          bolt("⟦torque-over-proof⟧" + head + "stages: [20 N·m, 40 N·m, 90°] }"),
		"stages go before torque": bolt(head + "torque: 90 N·m, stages: [20 N·m, 90°] }"),
		"fine thread, below":      bolt("seat-bolt: { name: seat bolt, thread: M8x1, class: 8.8, torque: 35 N·m }"), // 39.2 mm² · 580 MPa
		"no class":                bolt("seat-bolt: { name: seat bolt, thread: M8, torque: 90 N·m }"),
		"another standard":        bolt("seat-bolt: { name: seat bolt, thread: M8, class: A2-70, torque: 90 N·m }"),
		"an inch thread":          bolt("seat-bolt: { name: seat bolt, thread: 5/16-18 UNC, class: 8.8, torque: 90 N·m }"),
	})
	says(t, bolt(head+"torque: 40 N·m }"),
		"40 N·m pull 25.0 kN into the seat bolt, M8x1.25, class 8.8, and its proof load is 21.2 kN",
		"look up torque, thread, class and condition again; F = T/(K·d) = 40 N·m/(0.20 · 8 mm) = 25.0 kN, 118 % of the proof load of 21.2 kN; source: T = K·d·F, short form of the trade; proof load ISO 898-1, tables 4 and 5")
}

// The tug's charge of 100 kΩ · 1000 µF at 360 V takes 179.2 s to 60 V.
func TestWaitTooShort(t *testing.T) {
	front := "holds: [short-wait, long-wait]"
	wait := func(energy string) files {
		return replaced("machines/tug.yaml", "kind: electric, voltage: 360 V dc, points: [plug], stored: { capacitance: 1000 µF, resistance: 100 kΩ }", energy)
	}
	short := jobOf(front, "[Wait](hold:short-wait).")
	expect(t, map[string]files{
		"two minutes": jobOf(front, "[Pull it](isolate:traction). ⟦wait-too-short⟧[Wait](hold:short-wait)."),
		"three":       jobOf(front, "[Wait](hold:long-wait)."),
		"each link is told": jobOf(front, "⟦wait-too-short⟧[Wait](hold:short-wait).",
			"Then:\n\n   1. Read, ⟦wait-too-short⟧[wait](hold:short-wait).\n"),
		"at the refit": jobOf(front, "Hang it.\n\n   [When you refit it](on:refit), ⟦wait-too-short⟧[wait](hold:short-wait).\n"),
		"outside the steps it is no wait": jobOf(front,
			"lead: First [the wait](hold:short-wait).", "Work."),
		"at the safe voltage already":        short.with(wait("kind: electric, voltage: 48 V dc, points: [plug], stored: { capacitance: 1 F, resistance: 1 MΩ }")),
		"230 V ac is 325 V at its peak":      jobOf(front, "⟦wait-too-short⟧[Wait](hold:short-wait).").with(wait("kind: electric, voltage: 230 V ac, points: [plug], stored: { capacitance: 1000 µF, resistance: 75 kΩ }")), // 126.8 s; of 230 V: 100.8 s
		"230 V dc":                           short.with(wait("kind: electric, voltage: 230 V dc, points: [plug], stored: { capacitance: 1000 µF, resistance: 75 kΩ }")),
		"stored, and nothing more":           short.with(wait("kind: electric, voltage: 360 V dc, points: [plug], stored: yes")),
		"another kind of energy":             short.with(wait("kind: spring, voltage: 360 V dc, points: [plug], stored: { capacitance: 1000 µF, resistance: 100 kΩ }")),
		"a wait of nothing in particular":    jobOf(front, "[Wait](hold:short-wait).").with(replaced("register/holds.yaml", "short-wait: { name: short wait, kind: wait, for: 2 min, of: traction }", "short-wait: { name: short wait, kind: wait, for: 2 min }")),
		"the shop's own safe voltage":        short.with(files{"shop.yaml": "title: Test shop\nlimits: { safe-voltage-dc: 120 V }\nalso: [es]\n"}), // 109.9 s
		"a wait of another machine's energy": short.with(files{"machines/tug.yaml": "name: Tug\n", "machines/cart.yaml": "name: Cart\nenergies: { traction: { kind: electric, points: [] } }\n"}),
	})
	says(t, short, "a wait of 2 min is too short: the charge of the traction battery takes 3 min to fall to 60 V dc",
		"wait at least 3 min; t = R·C·ln(V/safe) = 100 kΩ · 1000 µF · ln(360 V dc/60 V dc) = 179 s, so at least 3 min; source: exponential discharge, V = V0·e^(−t/RC)")
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
		"the shop lifts less":                  jobOf("tools: [socket-13]", "⟦lift-over-limit⟧[Lift the seat](remove:seat).").with(files{"shop.yaml": "title: Test shop\nlimits: { lift: 25 lb }\nalso: [es]\n"}),
		"gear that a called procedure leaves":  jobOf(lid, "[Hang it](do:hang).", "[Lift the lid](remove:lid).").with(files{"procedures/hang.md": procedure("tools: [hoist]\nleaves: { hoist: placed }", "[Hang](place:hoist).")}),
		"as many as a called procedure takes":  jobOf(lid, "[Steady it](do:steady) and [lift the lid](remove:lid).").with(files{"procedures/steady.md": procedure("people: 2", "Hold it.")}),
		"gear that is expected":                jobOf(lid+"\nexpects: { hoist: placed }", "[Lift the lid](remove:lid)."),
		"gear that a called procedure takes away": jobOf(lid, "[Hang the hoist](place:hoist).", "[Away](do:away).", "⟦lift-over-limit⟧[Lift the lid](remove:lid).").with(
			files{"procedures/away.md": procedure("tools: [hoist]\nexpects: { hoist: placed }", "[Away](clear:hoist).")}),
	})
	says(t, jobOf(lid, "[Lift the lid](remove:lid)."), "the inverter lid is 30 kg: too much for one person at 23 kg each", "ask for 2 people, [](people:2), or name lifting gear")
	says(t, jobOf(lid, "[Lift the block](remove:block). [](people:2)"), "the valve block is 620 kg: too much for 2 people at 23 kg each", "name lifting gear in this step: [](tool:…)")
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
		"run out yesterday": tool("⟦calibration-due⟧angle-gauge: { name: g, kind: other, calibration: { every: 12 months, last: 2025-11-24 } }"),
		"runs out today":    tool("angle-gauge: { name: g, kind: other, calibration: { every: 12 months, last: 2025-11-25 } }"),
		"one of two":        tool("⟦calibration-due⟧angle-gauge: { name: g, kind: other, calibration: { every: 12 months, units: { g-1: 2025-11-24, g-2: 2026-04-01 } } }"),
		"both good":         tool("angle-gauge: { name: g, kind: other, calibration: { every: 12 months, units: { g-1: 2026-11-24, g-2: 2026-04-01 } } }"),
		"in days":           tool("⟦calibration-due⟧angle-gauge: { name: g, kind: other, calibration: { every: 30 days, last: 2026-10-25 } }"),
		"a day to come":     tool("⟦calibration-due⟧angle-gauge: { name: g, kind: other, calibration: { every: 12 months, last: 2062-03-02 } }"),
	})
	says(t, tool("angle-gauge: { name: gauge, kind: other, calibration: { every: 12 months, units: { g-1: 2025-11-24, g-2: 2026-04-01, g-3: 2024-02-29 } } }"),
		"the calibration ran out: g-1 on 2026-11-24 and g-3 on 2025-02-28", "send it to calibration, and write the new day as its last")
	says(t, tool("angle-gauge: { name: gauge, kind: other, calibration: { every: 12 months, last: 2062-03-02 } }"),
		"calibrated on a day that has not come: gauge on 2062-03-02", "write the day as year-month-day")
}

func TestCalibrationDueIsAdvice(t *testing.T) {
	if CalibrationDue.Level.String() != "advice" {
		t.Error("a calibration that is due stops the build")
	}
	if due, ok := DueOf(quantity.Quantity{}, manual.Date{Year: 2026, Month: 1, Day: 1}); ok {
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
		"no torque at all":            bolt("⟦quantity⟧clip: { name: clip, torque: 0 N·m }"),
		"a stage of nothing":          bolt("⟦quantity⟧clip: { name: clip, stages: [0 N·m, 90°] }"),
		"a length for a pitch":        bolt("⟦quantity⟧clip: { name: clip, thread: M8x25 }"),
		"a decimal comma in a thread": bolt("⟦quantity⟧clip: { name: clip, thread: \"M8x1,25\" }"),
		"a pipe thread":               bolt("clip: { name: clip, thread: G1/4, across-flats: 19 mm }"),
		"a class that is none":        bolt("⟦quantity⟧clip: { name: clip, thread: M8, class: 8.9 }"),
		"a stainless class":           bolt("clip: { name: clip, thread: M8, class: A2-70 }"),
		"a head inside its thread":    bolt("⟦quantity⟧clip: { name: clip, thread: M8, across-flats: 6 mm }"),
		"a key inside its head":       bolt("clip: { name: clip, thread: M8, drive: hex 6 mm }"),
		"a drive without a unit":      bolt("⟦quantity⟧clip: { name: clip, drive: hex 6 }"),
		"flats of nothing":            bolt("⟦quantity⟧clip: { name: clip, across-flats: 0 mm }"),
		"C and no R":                  battery("⟦missing-field⟧lift: { kind: electric, voltage: 80 V dc, points: [plug], stored: { capacitance: 1 mF } }"),
		"R and no C":                  battery("⟦missing-field⟧lift: { kind: electric, voltage: 80 V dc, points: [plug], stored: { resistance: 1 kΩ } }"),
		"no voltage":                  battery("⟦missing-field⟧lift: { kind: electric, points: [plug], stored: { capacitance: 1 mF, resistance: 1 kΩ } }"),
		"0 V":                         battery("⟦quantity⟧lift: { kind: electric, voltage: 0 V dc, points: [plug] }"),
		"0 F":                         battery("⟦quantity⟧lift: { kind: electric, voltage: 80 V dc, points: [plug], stored: { capacitance: 0 mF, resistance: 1 kΩ } }"),
		"no mass":                     replaced("machines/tug.yaml", "  seat: { name: seat base, held-by: { seat-bolt: 4 }, mass: 14 kg }", "  ⟦quantity⟧seat: { name: seat base, mass: 0 kg }"),
		"a wrench in bar":             tool("⟦quantity⟧stand: { name: w, kind: torque-wrench, range: 0 to 100 bar }"),
		"a wrench at a single torque": tool("⟦quantity⟧stand: { name: w, kind: torque-wrench, range: at most 100 N·m }"),
		"a gauge in bar":              tool("stand: { name: g, kind: tester, range: 0 to 100 bar }"),
		"a wrench of no length":       tool("⟦quantity⟧stand: { name: w, kind: torque-wrench, range: 20 to 100 N·m, length: 0 mm }"),
		"a socket without a unit":     tool("⟦quantity⟧stand: { name: s, kind: socket, fits: [13] }"),
		"a socket for a thread":       tool("⟦quantity⟧stand: { name: s, kind: socket, fits: [M8] }"),
		"a socket in inches":          tool("stand: { name: s, kind: socket, fits: [9/16 in, T30] }"),
		"a calibration without a day": tool("⟦missing-field⟧stand: { name: s, kind: aid, calibration: { every: 12 months } }"),
		"a calibration every never":   tool("⟦quantity⟧stand: { name: s, kind: aid, calibration: { every: 0 months, last: 2026-11-01 } }"),
		"an unknown statement":        files{"register/supplies.yaml": "⟦unknown-reference⟧oil: { name: hydraulic oil, unit: L, ghs: [H3O4] }\n"},
		"a safe voltage of nothing":   files{"shop.yaml": "⟦quantity⟧title: Test shop\nlimits: { safe-voltage-dc: 0 V }\nalso: [es]\n"},
		"a safe voltage of ac for dc": files{"shop.yaml": "⟦quantity⟧title: Test shop\nlimits: { safe-voltage-dc: 60 V ac }\nalso: [es]\n"},
		"a lift of nothing":           files{"shop.yaml": "⟦quantity⟧title: Test shop\nlimits: { lift: 0 kg }\nalso: [es]\n"},
	})
	says(t, bolt("clip: { name: clip, thread: M8x25 }"), `thread: "M8x25" has a pitch that no such thread has`, "write M8x1.25, or a finer pitch; a length does not belong here")
	says(t, bolt("clip: { name: clip, thread: M8, across-flats: 6 mm }"), "across-flats: a head of 6 mm is no wider than its thread, M8", "write the width of the head; for a key inside the head write drive: hex 6 mm")
	says(t, files{"register/supplies.yaml": "oil: { name: hydraulic oil, unit: L, ghs: [H3O4] }\n"}, `ghs: "H3O4" is not a hazard statement that the manual knows`, "did you mean H304? Look it up in section 2 of the safety data sheet")
}

func TestMachineFindingsAreSilent(t *testing.T) {
	mustFindNothing(t, "a fastener that could not be read", base.with(replaced("machines/tug.yaml", "torque: 22 N·m, condition: dry", "torque: 90 N·m, condition: damp")))
	mustFindNothing(t, "an energy that could not be read", base.with(jobOf("holds: [short-wait]", "[Wait](hold:short-wait).")).with(replaced("machines/tug.yaml", "voltage: 360 V dc", "voltage: 360 A")))
	mustFindNothing(t, "a wait that could not be read", base.with(jobOf("holds: [short-wait]", "[Wait](hold:short-wait).")).with(replaced("register/holds.yaml", "for: 2 min,", "for: 2 min, what: [x],")))
	mustFindNothing(t, "a shop that could not be read", base.with(jobOf("tools: [socket-10]", "[Lid](remove:lid). [Wait](hold:short-wait).")).with(files{"shop.yaml": "title: T\nalso: [es]\nlimits: { lift: 23 bar }\n"}))
	mustFindNothing(t, "a part that could not be read", base.with(jobOf("tools: [socket-13]", "[Lid](remove:lid).")).with(replaced("machines/tug.yaml", "mass: 30 kg", "mass: 30 V")))
	mustFindNothing(t, "people that could not be read", base.with(jobOf("tools: [socket-10]\npeople: 2", "[Lid](remove:lid). [](people:zwei)")))
	mustFindNothing(t, "a front matter that could not be read", base.with(jobOf("people: zwei", "Push. [](people:3)")))
	mustFindNothing(t, "a tool that could not be read", base.with(replaced("register/tools.yaml", "stand: { name: axle stand, kind: aid }", "stand: { name: axle stand, kind: aid, fits: [13], owned: x, calibration: { every: 12 months, last: 2020-01-01 } }")))
}
