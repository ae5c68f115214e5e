package numbers

import (
	"strings"
	"testing"

	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// dumped has a setting that is one value, with no tolerance.
var dumped = replaced("machines/tug.yaml", "settings:", "settings:\n  dump: { name: dump valve, value: 60 bar }\n  high: { name: 200 bar relief valve, value: 180 bar }")

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

		// Numbers without a unit.
		"a range at the beginning":        inSentence("1.22 to 1.28, that is right: read the density. [](hold:density)"),
		"a wrong range at the beginning":  inSentence("⟦value-disagrees⟧1.20 to 1.28, that is right: read the density. [](hold:density)"),
		"a figure behind the sign":        inSentence("[Tighten the bolts](tighten:seat-bolt) to ⟦value-disagrees⟧48, 2 at a time."),
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
		"one":                             lift("⟦count-disagrees⟧[one bolt](fastener:seat-bolt)"),
		"one of so many":                  lift("⟦count-disagrees⟧[one of the five](fastener:seat-bolt)"),
		"one of as many":                  lift("[one of the four](fastener:seat-bolt)"),
		"a part whose number is not said": order("[Undo the twelve bolts](loosen:lid-bolt).").with(unnumbered),
		"such a part beside another":      order("[Lift the lid](remove:lid) and [the block](remove:block) off with the [](tool:hoist); undo their eleven [bolts](fastener:lid-bolt).").with(unnumbered),
		"the part that is meant has one":  order("[Lift the lid](remove:lid) and [the block](remove:block) off with the [](tool:hoist).", "⟦count-disagrees⟧[Tighten the nine bolts](tighten:lid-bolt#lid).").with(unnumbered),
	})
}

// What could not be read silences what rests on it, and no other.
func TestWhatIsReadIsStillJudged(t *testing.T) {
	const out = "⟦tool-does-not-fit⟧[Lift the seat out](remove:seat) with the [](tool:socket-10)"
	for name, f := range map[string]files{
		"a hold that is not there": jobOf("tools: [socket-10]", out+" [](hold:nowhere)."),
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
	mustFindNothing(t, "a tool of the step that is not there", base.with(jobOf("tools: [socket-10]", "[Lift the seat out](remove:seat) with the [](tool:socket-10) or the [](tool:nowhere).", "## Refit", put)))
	mustFindNothing(t, "a tool whose kind could not be read", base.with(jobOf("tools: [socket-10]", "[Lift the seat out](remove:seat) with the [](tool:socket-10).")).with(replaced("register/tools.yaml", "name: 10 mm socket, kind: socket", "name: 10 mm socket, kind: sockett")))
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
