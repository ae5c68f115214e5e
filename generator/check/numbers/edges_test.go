package numbers

import (
	"strings"
	"testing"

	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// dumped has a setting that is one value, with no tolerance.
var dumped = replaced("machines/tug.yaml", "settings:", "settings:\n  dump: { name: dump valve, value: 60 bar }\n  high: { name: 200 bar relief valve, value: 180 bar }")

// rooms has holds of a temperature, of what is left in the lift, of a deviation.
var rooms = files{"register/holds.yaml": base["register/holds.yaml"] + `
room: { name: room, kind: measure, what: temperature, limit: 2 to 8 °C }
lift-out: { name: pressure left, kind: measure, what: pressure, limit: at most 0.3 bar, of: lift }
play: { name: play, kind: measure, what: play, limit: -0.5 to 0.5 mm }
`}

// What stands at the edge of a sentence or of what is stated. Common practice, no
// source; written from the words of the format and of this package.
func TestAtTheEdge(t *testing.T) {
	expect(t, map[string]files{
		// How far something moves, and what only looks so.
		"a torque does not move":     inSentence("Bring the [bolts](tighten:seat-bolt) up by ⟦value-disagrees⟧25 N·m."),
		"an angle does not move":     inSentence("Bring the [bolts](tighten:head-bolt) up by ⟦value-disagrees⟧60°."),
		"told by, and not moved by":  inSentence("Know the [lift hydraulics](energy:lift) by ⟦value-disagrees⟧190 bar on them."),
		"a supply at a time":         inSentence("Pour ⟦value-disagrees⟧50 L at a time of [oil](supply:oil) over it."),
		"a clock a month":            inSentence("Wait for the drive; the clock is 1 s a month wrong. [](hold:long-wait)"),
		"a name with a number":       inSentence("[Set it back](reset:high): the 200 bar relief valve takes 180 bar.").with(dumped),
		"the number, and no name":    inSentence("[Set it back](reset:dump): the ⟦value-disagrees⟧200 bar relief valve takes 180 bar.").with(dumped),
		"at least the one value":     inSentence("[Set it back](reset:dump) to at least 60 bar.").with(dumped),
		"at most the one value":      inSentence("[Set it back](reset:dump) to at most 60 bar.").with(dumped),
		"at least all that there is": inSentence("Pour at least 5 L of [oil](supply:oil) over it."),
		"another phase's setting":    inSentence("[Lift the seat out](remove:seat).", "## Trial", "[Lower the valve](alter:relief).", "## Refit", "[Refit in reverse](reverse:strip), with 200 bar on the gauge."),
		"the phase's own setting":    inSentence("[Lower the valve](alter:relief).", "## Refit", "[Refit in reverse](reverse:strip), with ⟦value-disagrees⟧200 bar on the gauge."),

		"a turn that makes a length":  inSentence("[Tighten](tighten:head-bolt): 60° is 0.2 mm of stretch."),
		"a length that a turn makes":  inSentence("Turn the nut: 90° is 0.5 mm; measure the pad. [](hold:pad)"),
		"a clock a week":              inSentence("Wait for the drive; the clock is 1 s a week wrong. [](hold:long-wait)"),
		"a point's own name":          inSentence("The [plug](point:plug), a 400 V service plug, cuts 360 V.").with(replaced("machines/tug.yaml", "name: service plug", "name: 400 V service plug")),
		"a part's own name":           inSentence("The [lift hydraulics](energy:lift) press on the [](part:screen), a 25 bar screen.").with(replaced("machines/tug.yaml", "name: screen", "name: 25 bar screen")),
		"a setting's name, reversed":  inSentence("[Lower it](alter:high).", "## Refit", "[Refit in reverse](reverse:strip): the 200 bar relief valve to 180 bar.").with(dumped),
		"what is listed of another":   jobOf("supplies: [water: 1 L, oil: 3 L]", "Pour ⟦value-disagrees⟧2 L of [water](supply:water).").with(files{"register/supplies.yaml": base["register/supplies.yaml"] + "water: { name: water, unit: L }\n"}),
		"up to the one value":         inSentence("[Set it back](reset:dump) up to 60 bar.").with(dumped),
		"a tolerance in hundredths":   inSentence("[Set the valve back](reset:relief) to 180 bar ± 2.22 %."), // 4/180
		"two amounts, and no range":   inSentence("[Tighten the bolts](tighten:seat-bolt) to ⟦value-disagrees⟧20 N·m, then 100 N·m with the [wrench](tool:wrench-20-100)."),
		"a proof beside another hold": inSentence("⟦value-disagrees⟧[Prove it below 50 V dc](prove:traction) with [](hold:bus-dead) and [](hold:lift-out).").with(rooms),

		"much too long":                inSentence("Wait ⟦value-disagrees⟧10 h for the drive. [](hold:long-wait)"),
		"what an instrument is set to": inSentence("Tester to 1000 V dc: measure the bus. [](hold:bus-dead)"),
		"no later than that":           inSentence("Look at it.", "Press it no later than 5 min after the wait. [](hold:long-wait) [](within:5min)"),
		"a fluid's own name":           inSentence("[Drain it](drain:lift-oil), the 6 L lift oil.").with(replaced("machines/tug.yaml", "name: lift oil", "name: 6 L lift oil")),
		"tightened again below":        inSentence("[Tighten the bolts](tighten:rail-bolt) again below 40 N·m.").with(fitted),

		// What is to be kept on a side.
		"behind then":                  inSentence("Then keep the room above ⟦value-disagrees⟧8 °C. [](hold:room)").with(rooms),
		"kept at":                      inSentence("Keep at more than ⟦value-disagrees⟧8 °C. [](hold:room)").with(rooms),
		"behind people":                jobOf(sentenceFront+"\npeople: 2", "With [](people:2) wait at least 3 min for the drive. [](hold:long-wait)"),
		"a thing of what is linked":    inSentence("Keep the oil of the [](part:seat) above ⟦value-disagrees⟧8 °C. [](hold:room)").with(rooms),
		"what has at most so much":     inSentence("With at most 2 mm it is worn out: measure it. [](hold:pad)"),
		"so much or more, and no name": inSentence("At 5 V dc or more. [](hold:bus-dead)"),
		"what is measured, or less":    inSentence("Thickness at ⟦value-disagrees⟧2 mm or less. [](hold:pad)"),
		"a deviation below zero":       inSentence("The play is ⟦value-disagrees⟧-0.2 to 0.5 mm. [](hold:play)").with(rooms),
		"the deviation below zero":     inSentence("The play is -0.5 to 0.5 mm. [](hold:play)").with(rooms),

		// Numbers without a unit.
		"a range behind another link":     inSentence("With the [stand](tool:stand), read ⟦value-disagrees⟧1.20 to 1.28. [](hold:density)"),
		"the first that is wrong":         inSentence("[Tighten the bolts](tighten:seat-bolt) to ⟦value-disagrees⟧25, then to 30 N·m."),
		"a range behind to":               inSentence("[Tighten the bolts](tighten:rail-bolt) to 40 to 44.").with(fitted),
		"a range behind to, its end":      inSentence("[Tighten the bolts](tighten:rail-bolt) to 40 to ⟦value-disagrees⟧50.").with(fitted),
		"a bound behind another link":     inSentence("With the [stand](tool:stand), read at least ⟦value-disagrees⟧1.25. [](hold:density)"),
		"a range at the beginning":        inSentence("1.22 to 1.28, that is right: read the density. [](hold:density)"),
		"a wrong range at the beginning":  inSentence("⟦value-disagrees⟧1.20 to 1.28, that is right: read the density. [](hold:density)"),
		"a figure behind the sign":        inSentence("[Tighten the bolts](tighten:seat-bolt) to ⟦value-disagrees⟧48, 2 at a time."),
		"a time behind it":                inSentence("[Tighten the bolts](tighten:seat-bolt) to ⟦value-disagrees⟧48 [](time:5min)"),
		"a thing behind it":               inSentence("[Tighten the bolts](tighten:seat-bolt) to 2 [](fastener:lid-bolt)"),
		"a time of a clock":               inSentence("[Tighten the bolts](tighten:seat-bolt) at 10:00."),
		"all of them, to so much":         inSentence("[Tighten the bolts](tighten:lid-bolt), all four to 9 N·m."),
		"both ends written out":           inSentence("The [air](energy:air) has ⟦value-disagrees⟧four to twelve bar."),
		"a range from one":                inSentence("[Tighten the bolts](tighten:seat-bolt) at ⟦value-disagrees⟧1 to 22 N·m."),
		"two by two":                      inSentence("Two by two to 22 N·m, [tighten the bolts](tighten:seat-bolt)."),
		"a bound behind another sentence": inSentence("[Set the valve back](reset:relief); above 184 bar, call."),

		// Branches say what is out of the limit.
		"out of the limit":             inSentence("[Measure](hold:bus-dead).", "[At least 5 V dc](if-not:bus-dead): stop and call."),
		"in the limit, after a time":   inSentence("[Measure](hold:bus-dead).", "⟦value-disagrees⟧[After 2 min below 5 V dc](if-not:bus-dead), stop."),
		"a setting changed by a bound": inSentence("[Lower it to at most 176 bar](alter:relief)."),
	})
	german := func(steps ...string) files {
		return inSentence(steps...).with(files{"shop.yaml": "title: Werkstatt\nlanguage: de\n"})
	}
	expect(t, map[string]files{
		"a clock a day": german("Warten Sie auf den Antrieb; die Uhr geht 1 s am Tag falsch. [](hold:long-wait)"),
	})
	says(t, inSentence("[Set the valve back](reset:relief) to 170 bar."),
		"the sentence says 170 bar, and the machine's file says 180 ± 4 bar for the relief valve",
		"write that number; what is said of another thing stands in a sentence of its own")
	says(t, jobOf("tools: [hex-key-6]", "Take the [5 mm key](tool:hex-key-6).").with(replaced("register/tools.yaml", "fits: [hex 6 mm]", "fits: [hex 1/4 in]")),
		"the words say 5 mm, and the register says 1/4 in", "write 6.4 mm, or leave the words empty; a number of another thing goes outside the link")
	says(t, german("[Die Schrauben anziehen](loosen:seat-bolt)."),
		`the words say "anziehen", and the link says loosen: the fastener is undone`,
		"change the words or the link; the one that stays is what is done to the seat bolt")
}

// Counts of what the machine's file counts, in orders and in parts of them.
func TestCountsAtTheEdge(t *testing.T) {
	front := "tools: [socket-13, socket-10, hoist, wrench-5-25]"
	order := func(words ...string) files { return jobOf(front, words...) }
	lift := func(words string) files { return jobOf(front, "[Lift the seat out](remove:seat); undo "+words+".") }
	unnumbered := replaced("machines/tug.yaml", "held-by: { lid-bolt: 2 }", "held-by: [lid-bolt]")
	expect(t, map[string]files{
		"one more than hold":              order("⟦count-disagrees⟧[Undo five bolts](loosen:seat-bolt)."),
		"as many as hold one of its":      order("[Tighten the two bolts](tighten:lid-bolt#block)."),
		"more than hold the part named":   order("⟦count-disagrees⟧[Tighten the three bolts](tighten:lid-bolt#block)."),
		"an article of something else":    order("[At the back, undo three bolts](loosen:seat-bolt)."),
		"a dozen, and nothing behind":     order("[Undo half a dozen](loosen:lid-bolt)."),
		"two counts, which of them":       order("[Undo the five bolts, three screws](loosen:seat-bolt)."),
		"all of so many":                  order("[Undo all four](loosen:seat-bolt)."),
		"a dozen":                         order("⟦count-disagrees⟧[Undo a dozen bolts](loosen:lid-bolt)."),
		"several dozen":                   lift("several dozen [bolts](fastener:seat-bolt)"),
		"half a dozen at the beginning":   order("Half a dozen [bolts](fastener:head-bolt) hold it: [take the head off](remove:head)."),
		"a short name":                    order("⟦count-disagrees⟧[Undo the two nuts](loosen:line-nut)."),
		"a number that is none":           lift("its five [bolts](fastener:seat-bolt)").with(replaced("machines/tug.yaml", "held-by: { seat-bolt: 4 }", "held-by: { seat-bolt: four }")),
		"the one of four":                 order("⟦count-disagrees⟧[Undo the one bolt](loosen:seat-bolt)."),
		"several dozen, at the beginning": order("Several dozen [bolts](fastener:head-bolt) hold it: [take the head off](remove:head)."),
		"one":                             lift("⟦count-disagrees⟧[one bolt](fastener:seat-bolt)"),
		"one of so many":                  lift("⟦count-disagrees⟧[one of the five](fastener:seat-bolt)"),
		"one of as many":                  lift("[one of the four](fastener:seat-bolt)"),
		"a part whose number is not said": order("[Undo the twelve bolts](loosen:lid-bolt).").with(unnumbered),
		"such a part beside another":      order("[Lift the lid](remove:lid) and [the block](remove:block) off with the [](tool:hoist); undo their eleven [bolts](fastener:lid-bolt).").with(unnumbered),
		"the part that is meant has one":  order("[Lift the lid](remove:lid) and [the block](remove:block) off with the [](tool:hoist).", "⟦count-disagrees⟧[Tighten the nine bolts](tighten:lid-bolt#lid).").with(unnumbered),
	})
}

// Orders in the words of links, at their edges.
func TestOrdersAtTheEdge(t *testing.T) {
	expect(t, map[string]files{
		"behind a comma alone": jobOf("", "⟦words-disagree⟧[Close the cover, lock](unlock:traction)."),
		"a noun and a noun":    jobOf("", "[Lock and tag off](unlock:traction)."),
	})
}

// What could not be read silences what rests on it, and no other.
func TestWhatIsReadIsStillJudged(t *testing.T) {
	const out = "⟦tool-does-not-fit⟧[Lift the seat out](remove:seat) with the [](tool:socket-10)"
	for name, f := range map[string]files{
		"a measure of a lift beside another": replaced("machines/tug.yaml", "screen: { name: screen, held-by: { key-bolt: 2 } }", "screen: { name: screen, mass: 5 kg, lift: { horizontal: 30 kg, vertical: ⟦quantity⟧300 cm, travel: 30 cm, coupling: good } }"),
		"a hold that is not there":           jobOf("tools: [socket-10]", out+" [](hold:nowhere)."),
	} {
		plain, want := unmark(base.with(f))
		m, bad := bind.Manual(source.FromText(plain))
		if len(bad) == 0 {
			t.Errorf("%s: the test manual has no fault", name)
		}
		var got []string
		for _, found := range all(m) {
			got = append(got, place(found))
		}
		if strings.Join(got, "\n") != strings.Join(want, "\n") {
			t.Errorf("%s: %q, want %q", name, got, want)
		}
	}
	const put = "[Refit in reverse](reverse:strip)."
	mustFindNothing(t, "a torque that could not be read", base.with(jobOf("", "Undo the [12 mm bolts](fastener:seat-bolt).")).with(replaced("machines/tug.yaml", "across-flats: 13 mm, torque: 22 N·m, condition: dry", "across-flats: 13 V, torque: 22 N·m, condition: dry")))
	mustFindNothing(t, "a fastener of the part that is not there", base.with(inSentence("[Put the seat in](refit:seat); its bolts take 99 N·m.")).with(replaced("machines/tug.yaml", "held-by: { seat-bolt: 4 }", "held-by: { seat-bolt: 4, nowhere: 2 }")))
	mustFindNothing(t, "what holds it could not be read", base.with(jobOf("tools: [socket-13]", "[Lift the seat out](remove:seat); undo its five [bolts](fastener:seat-bolt).")).with(replaced("machines/tug.yaml", "held-by: { seat-bolt: 4 }", "held-by: 4")))
	mustFindNothing(t, "a tool of the step that is not there", base.with(jobOf("tools: [socket-10]", "[Lift the seat out](remove:seat) with the [](tool:socket-10) or the [](tool:nowhere).", "## Refit", put)))
	mustFindNothing(t, "a tool whose kind could not be read", base.with(jobOf("tools: [socket-10]", "[Lift the seat out](remove:seat) with the [](tool:socket-10).")).with(replaced("register/tools.yaml", "name: 10 mm socket, kind: socket", "name: 10 mm socket, kind: sockett")))
}

// Each lift is judged, whatever was said of those before it.
func TestEachLiftIsJudged(t *testing.T) {
	const far = "lift: { horizontal: 60 cm, vertical: 30 cm, travel: 45 cm, asymmetry: 45°, coupling: poor }"
	rated := replaced("register/tools.yaml", "name: shop hoist, kind: lifting", "name: shop hoist, kind: lifting, rated: 10 kg")
	front := "people: 3\ntools: [hoist, socket-10, socket-13]"
	expect(t, map[string]files{
		"over what gear carries, twice": jobOf(front, "⟦lift-over-limit⟧[Lift the seat](remove:seat) and [the lid](remove:lid) out with the [](tool:hoist).", "⟦lift-over-limit⟧[Put the lid in](refit:lid) with the [](tool:hoist).").with(rated),
		"by gear, then by hand":         jobOf(front, "[Lift the seat out](remove:seat) with the [](tool:hoist).", "⟦lift-over-limit⟧[Lift the lid out](remove:lid)."),
		"by three, then by one":         jobOf(front, "[Lift the seat out](remove:seat). [](people:3)", "⟦lifting-index⟧[Put the seat in](refit:seat).").with(replaced("machines/tug.yaml", "mass: 14 kg", "mass: 14 kg, "+far)),
		"over a small limit, told once": jobOf(front, "⟦lift-over-limit⟧[Lift the seat out](remove:seat).").with(replaced("machines/tug.yaml", "mass: 14 kg", "mass: 14 kg, "+far)).with(files{"shop.yaml": "title: Test shop\nlimits: { lift: 1 kg }\n"}),
	})
}

// One stage stands in place of the torque, as several do.
func TestOneStageStandsInPlaceOfTheTorque(t *testing.T) {
	expect(t, map[string]files{
		"over proof": replaced("machines/tug.yaml", "class: 8.8, across-flats: 10 mm, torque: 9 N·m", "class: 8.8, across-flats: 10 mm, torque: 9 N·m, stages: ⟦torque-over-proof⟧[60 N·m]"),
	})
}

// A part that is off is no load of the gear with which its fasteners are turned.
func TestWhatIsOffIsNoLoad(t *testing.T) {
	gear := replaced("register/tools.yaml", "hoist: { name: shop hoist, kind: lifting }", "hoist: { name: shop hoist, kind: lifting, rated: 100 kg }\ncrane: { name: crane, kind: lifting, rated: 1 t }")
	loosen := "[Undo the bolts](loosen:lid-bolt) with the [](tool:hoist) on the lid."
	expect(t, map[string]files{
		"on":  jobOf("tools: [hoist, crane, socket-10]", "⟦lift-over-limit⟧"+loosen).with(gear),
		"off": jobOf("tools: [hoist, crane, socket-10]", "[Lift the block off](remove:block) with the [](tool:crane).", loosen).with(gear),
	})
}
