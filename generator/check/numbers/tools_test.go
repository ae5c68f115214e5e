package numbers

import "testing"

func TestToolDoesNotFit(t *testing.T) {
	expect(t, map[string]files{
		"named, wrong": jobOf("tools: [socket-10, socket-13]",
			"⟦tool-does-not-fit⟧[Lift the seat out](remove:seat) with the [](tool:socket-10)."),
		"named, right": jobOf("tools: [socket-10, socket-13]",
			"[Lift the seat out](remove:seat) with the [](tool:socket-13)."),
		"one of two that are named": jobOf("tools: [socket-10, socket-13]",
			"[Lift the seat out](remove:seat) with the [](tool:socket-10) and the [](tool:socket-13)."),
		"none named, one listed": jobOf("tools: [socket-10, socket-13]", "[Lift the seat out](remove:seat)."),
		"none named, none listed that fits": jobOf("tools: [socket-10]",
			"Crème off, ⟦tool-does-not-fit⟧[lift the seat out](remove:seat)."),
		"no tool at all": jobOf("tools: []", "⟦tool-does-not-fit⟧[Undo the bolts](loosen:seat-bolt)."),
		"a substitute of one that is named": jobOf("tools: [socket-13]",
			"[Undo the nut](loosen:line-nut) with the [](tool:socket-13)."),
		"a substitute of one that is listed": jobOf("tools: [socket-13]", "[Undo the nut](loosen:line-nut)."),
		"a key for a hexagon inside": jobOf("tools: [hex-key-6, socket-13]",
			"[Take the screen off](remove:screen) with the [](tool:hex-key-6)."),
		"a socket for a hexagon inside": jobOf("tools: [hex-key-6, socket-13]",
			"⟦tool-does-not-fit⟧[Take the screen off](remove:screen) with the [](tool:socket-13)."),
		"a clip asks for nothing, a bolt beside it does": jobOf("tools: [socket-13, hoist]",
			"⟦tool-does-not-fit⟧[Take the lid off](remove:lid) with [](tool:socket-13), [](tool:hoist).").with(
			replaced("register/tools.yaml", ", or: [spanner-set]", "")),
		"clips alone": jobOf("tools: []", "[Unclip it](loosen:clip)."),
		"refit and tighten are acts too": jobOf("tools: [socket-13, socket-10, wrench-20-100]",
			"[Lift the seat out](remove:seat) with the [](tool:socket-13).",
			"⟦tool-does-not-fit⟧[Put it back](refit:seat) with the [](tool:socket-10).",
			"⟦tool-does-not-fit⟧[Tighten it](tighten:seat-bolt) with [](tool:socket-10), [](tool:wrench-20-100)."),
		"told once for a step": jobOf("tools: [socket-10]",
			"⟦tool-does-not-fit⟧[Undo the bolts](loosen:seat-bolt) and [lift the seat](remove:seat) with [](tool:socket-10)."),
		"a step is its own paragraphs": jobOf("tools: [socket-10, socket-13]",
			"Seat, with the [](tool:socket-10):\n\n   1. [Lift it out](remove:seat).\n"),
		"a mention is no act": jobOf("tools: [socket-10]",
			"Count the [](fastener:seat-bolt) of the [](part:seat) with the [](tool:socket-10)."),
		"a set that does not say what it fits": jobOf("tools: [old-set]", "[Lift the seat out](remove:seat) with [](tool:old-set)."),
		"another kind of tool may help": jobOf("tools: [stand, socket-10]",
			"[Lift the seat out](remove:seat) with [](tool:stand) and [](tool:socket-10).").with(
			replaced("register/tools.yaml", "kind: aid", "kind: aid, fits: [13 mm]")),
	})
}

func TestToolDoesNotFitWhereItIsReversed(t *testing.T) {
	expect(t, map[string]files{
		"the strip's tools come along": jobOf("tools: [socket-13, wrench-20-100]",
			"[Lift the seat out](remove:seat) with the [](tool:socket-13).", "## Refit",
			"[In reverse](reverse:strip) with the [](tool:wrench-20-100)."),
		"told at the strip, and there alone": jobOf("tools: [socket-10, wrench-20-100]",
			"⟦tool-does-not-fit⟧[Lift the seat out](remove:seat) with the [](tool:socket-10).", "## Refit",
			"[In reverse](reverse:strip) with the [](tool:wrench-20-100)."),
		"another tool for the refit alone": jobOf("tools: [socket-10, socket-13, wrench-20-100]",
			"[Lift the seat out](remove:seat).", "## Refit",
			"⟦tool-does-not-fit⟧[In reverse](reverse:strip) with the [](tool:wrench-20-100) and the [](tool:socket-10)."),
		"the strip's tool beside another": jobOf("tools: [socket-10, socket-13, wrench-20-100]",
			"[Lift the seat out](remove:seat) with the [](tool:socket-13).", "## Refit",
			"[In reverse](reverse:strip) with the [](tool:wrench-20-100) and the [](tool:socket-10)."),
		"a wrench of the note for the refit": jobOf("tools: [spanner-set, wrench-20-100, wrench-5-25]",
			"[Take the line off](disconnect:line).\n\n   [When you refit it](on:refit), use the [](tool:wrench-20-100).\n", "## Refit",
			"[In reverse](reverse:strip) with the [](tool:wrench-5-25)."),
		"a tool of the note for the refit": jobOf("tools: [socket-13, wrench-20-100, wrench-5-25]",
			"[Lift the seat out](remove:seat) with the [](tool:socket-13).\n\n   [When you refit it](on:refit), use the [](tool:wrench-20-100).\n", "## Refit",
			"[In reverse](reverse:strip)."),
	})
}

func TestTorqueTools(t *testing.T) {
	expect(t, map[string]files{
		"none at all":                 jobOf("tools: [socket-13]", "⟦no-torque-tool⟧[Tighten it](tighten:seat-bolt)."),
		"one is listed":               jobOf("tools: [socket-13, wrench-20-100]", "[Tighten it](tighten:seat-bolt)."),
		"undoing asks for no torque":  jobOf("tools: [socket-13]", "[Lift the seat out](remove:seat)."),
		"a plain refit asks for none": jobOf("tools: [socket-13]", "[Put the seat back](refit:seat)."),
		"out of range": jobOf("tools: [spanner-set, wrench-5-25, wrench-20-100]",
			"⟦tool-out-of-range⟧[Tighten it](tighten:line-nut) with the [](tool:wrench-5-25)."),
		"in range, but below 20 % of the maximum": jobOf("tools: [socket-13, big-wrench]",
			"⟦tool-out-of-range⟧[Tighten it](tighten:seat-bolt) with the [](tool:big-wrench).").with(
			replaced("register/tools.yaml", "stand:", "big-wrench: { name: big wrench, kind: torque-wrench, range: 10 to 120 N·m }\nstand:")),
		"listed, not in range": jobOf("tools: [socket-10, wrench-20-100]",
			"⟦tool-out-of-range⟧[Tighten it](tighten:lid-bolt)."),
		"each stage may have its own wrench": jobOf("tools: [socket-13, wrench-5-25, wrench-20-100, angle-gauge]",
			"[In three stages](tighten:head-bolt) with [](tool:wrench-5-25), [](tool:wrench-20-100) and [](tool:angle-gauge)."),
		"a stage that no wrench reaches": jobOf("tools: [socket-13, wrench-5-25, angle-gauge]",
			"⟦tool-out-of-range⟧[In three stages](tighten:head-bolt) with the [](tool:wrench-5-25)."),
		"a wrench that says no range": jobOf("tools: [spanner-set, wrench-no-range]", "[Tighten it](tighten:line-nut) with the [](tool:wrench-no-range)."),
		"both ends of a torque":       jobOf("tools: [socket-13, wrench-20-100]", "⟦tool-out-of-range⟧[Tighten it](tighten:seat-bolt).").with(replaced("machines/tug.yaml", "torque: 22 N·m, condition", "torque: 18 to 22 N·m, condition")),
		"a wrench that is left in place is named": jobOf("tools: [spanner-set, wrench-5-25, wrench-20-100]",
			"[Hang it on](place:wrench-5-25).", "⟦tool-out-of-range⟧[Tighten it](tighten:line-nut).", "[Off](clear:wrench-5-25).", "[Tighten it](tighten:line-nut)."),
		"a clip has no torque": jobOf("tools: []", "[Press the clips in](tighten:clip)."),
		"no wrench for the reversed": jobOf("tools: [socket-13, wrench-5-25]",
			"[Take the line off](disconnect:line), [socket](tool:socket-13).",
			"[Lift the seat out](remove:seat) with the [](tool:socket-13).", "## Refit",
			"⟦tool-out-of-range⟧[In reverse](reverse:strip) with the [](tool:wrench-5-25)."),
	})
}

// 20 N·m through 45 mm on 380 mm is a setting of 17.9 N·m, which a wrench from
// 20 N·m has not; on a wrench of 280 mm it is 17.2 N·m.
func TestTorqueThroughAnAdapter(t *testing.T) {
	nut := replaced("machines/tug.yaml", "torque: 60 N·m", "torque: 20 N·m")
	expect(t, map[string]files{
		"the setting is below the range": jobOf("tools: [crow-foot-17, wrench-20-100]",
			"⟦tool-out-of-range⟧[Tighten it](tighten:line-nut) with [](tool:crow-foot-17), [](tool:wrench-20-100).").with(nut),
		"the setting is in another wrench's": jobOf("tools: [crow-foot-17, wrench-5-25]",
			"[Tighten it](tighten:line-nut) with [](tool:crow-foot-17), [](tool:wrench-5-25).").with(nut),
		"a socket needs no adapter": jobOf("tools: [spanner-set, crow-foot-17, wrench-20-100]",
			"[Tighten it](tighten:line-nut) with [](tool:spanner-set), [](tool:crow-foot-17), [](tool:wrench-20-100).").with(nut),
	})
	says(t, jobOf("tools: [crow-foot-17, wrench-20-100]", "[Tighten it](tighten:line-nut).").with(nut),
		"the line nut is tightened to 20 N·m; the torque wrench, 20 to 100 N·m is used from 20 N·m to 100 N·m, and an adapter lowers its setting",
		"name a wrench whose range holds the torque, at or above 20 % of its maximum")
}

func TestNoAngleTool(t *testing.T) {
	wrenches := "socket-13, wrench-20-100"
	expect(t, map[string]files{
		"none":   jobOf("tools: ["+wrenches+"]", "⟦no-angle-tool⟧[In stages](tighten:head-bolt)."),
		"listed": jobOf("tools: ["+wrenches+", angle-gauge]", "[In stages](tighten:head-bolt) with the [](tool:wrench-20-100)."),
		"reversed": jobOf("tools: ["+wrenches+"]", "[Take the head off](remove:head) with the [](tool:socket-13).", "## Refit",
			"⟦no-angle-tool⟧[In reverse](reverse:strip)."),
		"no angle, no gauge": jobOf("tools: ["+wrenches+"]", "[Tighten it](tighten:seat-bolt)."),
	})
	mustFindNothing(t, "a width that could not be read, and a drive that no tool fits", base.with(jobOf("tools: [socket-13]", "[Take the screen off](remove:screen).")).with(
		replaced("machines/tug.yaml", "drive: hex 6 mm", "drive: hex 6 mm, across-flats: 6 bar")))
	mustFindNothing(t, "a wrench in the list that nobody knows", base.with(jobOf("tools: [socket-13, wrench-20-1000]", "[Tighten it](tighten:seat-bolt) with the [](tool:socket-13).")))
	mustFindNothing(t, "an adapter behind a tool in the list that nobody knows", base.with(jobOf("tools: [wrench-20-1000, crow-foot-17, wrench-20-100]", "[Tighten it](tighten:line-nut) with the [](tool:wrench-20-100).")).with(
		replaced("machines/tug.yaml", "across-flats: 17 mm, torque: 60 N·m", "across-flats: 17 mm, torque: 110 N·m"))) // 110 · 380/(380 + 45) = 98.4
	mustFindNothing(t, "an angle gauge in the list that nobody knows", base.with(jobOf("tools: [socket-13, wrench-5-25, wrench-20-100, angle-guage]", "[In stages](tighten:head-bolt).")))
	for _, tool := range []string{"[](tool:sockett-13)", "[](tol:socket-13)", "[](hodl:socket-13)"} {
		mustFindNothing(t, "a socket in the step that nobody knows", base.with(jobOf("tools: [socket-10, wrench-5-25]", "[Undo the bolts](loosen:seat-bolt) with the [](tool:socket-10) and the "+tool+".")))
	}
	mustFindNothing(t, "an angle gauge in the step that nobody knows", base.with(jobOf("tools: [socket-13, wrench-5-25, wrench-20-100]",
		"[In stages](tighten:head-bolt) with [](tool:angle-guage), [](tool:wrench-5-25) and [](tool:wrench-20-100).")))
}

// What a reverse: brings back is what its phase took off and is still off.
func TestReverseBringsBackWhatIsStillOff(t *testing.T) {
	strip := []string{
		"[Lift the seat out](remove:seat) with the [](tool:socket-13).",
		"[Take the line off](disconnect:line) with the [](tool:spanner-set).",
		"[Undo the lid bolts](loosen:lid-bolt) with the [](tool:socket-10).",
	}
	tools := "tools: [socket-13, socket-10, spanner-set, wrench-5-25, wrench-20-100, hoist]"
	small, large := "with the [](tool:wrench-5-25).", "with the [](tool:wrench-20-100)."
	steps := func(refit ...string) files { return jobOf(tools, append(append(strip, "## Refit"), refit...)...) }
	expect(t, map[string]files{
		"all of it at once": steps("⟦tool-out-of-range⟧[All](reverse:strip) " + large),
		"as far as the line, then the rest": steps("⟦tool-out-of-range⟧[To the line](reverse:strip#line) "+large,
			"[The seat](reverse:strip) "+small),
		"without the line, then the line": steps("[Seat and lid](reverse:strip!line) "+small,
			"[The line](reverse:strip) "+large),
		"without two": steps("⟦tool-out-of-range⟧[The lid](reverse:strip!line,seat) "+large,
			"⟦tool-out-of-range⟧[The rest](reverse:strip) "+small),
		"what was refitted by hand is back": steps("[Line](refit:line) with the [](tool:spanner-set).", "[Nut](tighten:line-nut) "+large,
			"[Seat and lid](reverse:strip) "+small),
		"what was tightened is tight": steps("[Lid](tighten:lid-bolt) "+small, "[The line](reverse:strip!seat) "+large,
			"[The seat](reverse:strip) "+large),
		"a part that is on expands to nothing": steps("[All but the line](reverse:strip!line) "+small,
			"[As far as the seat](reverse:strip#seat) "+small, "[The line](reverse:strip) "+large),
		"as far as the lid, and no farther": steps("[Lid](reverse:strip!line,seat) "+small, "[To the line](reverse:strip#line) "+large, "[Seat](reverse:strip) "+small),
		"it stops at the part": jobOf(tools, append(append([]string{"[Block](remove:block) with [](tool:socket-10), [](tool:hoist).", "[Line](disconnect:line).", "[Seat](remove:seat)."}, "## Refit"),
			"[Seat](reverse:strip#seat) "+small, "[Line](reverse:strip#line) "+large, "[Block](reverse:strip) "+small)...),
		"another phase is its own": jobOf(tools, "[Seat](remove:seat).", "## More", "[Line](disconnect:line).", "## Refit",
			"[Seat](reverse:strip) "+small, "[Line](reverse:more) "+large),
		"a called procedure refits it": steps("[Line](do:refit-line).", "[Seat and lid](reverse:strip) "+small).with(files{
			"procedures/refit-line.md": procedure(tools, "[Line](refit:line).", "[Nut](tighten:line-nut) "+large)}),
	})
}

func TestToolsAreSilent(t *testing.T) {
	m, _ := unmark(base.with(jobOf("tools: [socket-10, no-such-tool]", "[Lift the seat out](remove:seat).")))
	mustFindNothing(t, "an unknown tool in the list", m)
	m, _ = unmark(base.with(jobOf("tools: [socket-10]", "[Lift the seat out](remove:seat) with [](tool:socket-10) or [](tool:soket).")))
	mustFindNothing(t, "an unknown tool in the step", m)
	m, _ = unmark(base.with(jobOf("tools: socket-10", "[Lift the seat out](remove:seat).")))
	mustFindNothing(t, "a front matter that could not all be read", m)
	m, _ = unmark(base.with(jobOf("tools: [socket-10]", "[Lift the seat out](remove:seat).")).with(
		replaced("machines/tug.yaml", "across-flats: 13 mm, torque: 22 N·m, condition", "across-flats: 13 V, torque: 22 N·m, condition")))
	mustFindNothing(t, "a fastener that could not be read", m)
}

func TestWordsOfTheToolFindings(t *testing.T) {
	says(t, jobOf("tools: [socket-10]", "[Lift the seat out](remove:seat)."),
		"the seat bolt is 13 mm: the 10 mm socket fits 10 mm", "name a tool that fits, or mend the size in the machine's file")
	says(t, jobOf("tools: []", "[Lift the seat out](remove:seat)."),
		"the seat bolt is 13 mm: no socket, spanner or screwdriver is named here or listed", "name a tool that fits, or mend the size in the machine's file")
	says(t, jobOf("tools: [socket-13]", "[Tighten it](tighten:seat-bolt)."),
		"the seat bolt is tightened to 22 N·m, and no torque wrench is named here or listed", "name the torque wrench in this step: [](tool:…)")
	says(t, jobOf("tools: [spanner-set, wrench-5-25]", "[Tighten it](tighten:line-nut)."),
		"the line nut is tightened to 60 N·m; the small torque wrench is used from 5 N·m to 25 N·m", "name a wrench whose range holds the torque, at or above 20 % of its maximum")
	says(t, jobOf("tools: [socket-13, wrench-20-100]", "[Tighten it](tighten:head-bolt)."),
		"the head bolt is turned by 90°, and no angle gauge is named here or listed", "name the angle gauge in this step: [](tool:…)")
}

// 20 % of 111.2 N·m is 22.24 N·m, and 22.2 N·m is below it; 20 % of 90 lbf·ft is 18 lbf·ft.
func TestTheFloorIsNotRounded(t *testing.T) {
	for ends, floor := range map[string]string{"10 to 111.2 N·m": "22.24 N·m to 111.2 N·m", "10 to 90 lbf·ft": "18 lbf·ft to 90 lbf·ft"} {
		says(t, jobOf("tools: [socket-13, long-wrench]", "[Tighten it](tighten:seat-bolt).").with(
			replaced("register/tools.yaml", "stand:", "long-wrench: { name: long wrench, kind: torque-wrench, range: "+ends+" }\nstand:")).with(
			replaced("machines/tug.yaml", "torque: 22 N·m, condition", "torque: 22.2 N·m, condition")),
			"the seat bolt is tightened to 22.2 N·m; the long wrench is used from "+floor, "name a wrench whose range holds the torque, at or above 20 % of its maximum")
	}
}

func TestOutOfRangeNamesWhatIsNotReached(t *testing.T) {
	says(t, jobOf("tools: [socket-13, wrench-5-25, angle-gauge]", "[In three stages](tighten:head-bolt)."),
		"the head bolt is tightened to 60 N·m; the small torque wrench is used from 5 N·m to 25 N·m", "name a wrench whose range holds the torque, at or above 20 % of its maximum")
	says(t, jobOf("tools: [socket-13, socket-10, hoist, spanner-set, wrench-20-100]\npeople: 2",
		"[Lid](remove:lid) with the [](tool:socket-10) and [](tool:hoist).", "[Line](disconnect:line) with the [](tool:spanner-set).", "[Block](remove:block) with the [](tool:socket-10) and [](tool:hoist).",
		"## Refit", "[In reverse](reverse:strip)."),
		"the lid bolt is tightened to 9 N·m; the torque wrench, 20 to 100 N·m is used from 20 N·m to 100 N·m", "name a wrench whose range holds the torque, at or above 20 % of its maximum")
}
