package numbers

import "testing"

func TestValueDisagrees(t *testing.T) {
	front := "tools: [socket-13, wrench-20-100, wrench-5-25, crow-foot-17, hex-key-6, angle-gauge, spanner-set]\nholds: [long-wait, bus-dead]\nsupplies: [oil: 4 L]"
	expect(t, map[string]files{
		"a torque":                        jobOf(front, "⟦value-disagrees⟧[Tighten to 25 N·m](tighten:seat-bolt)."),
		"the torque":                      jobOf(front, "[Tighten to 22 N·m](tighten:seat-bolt)."),
		"in pounds":                       jobOf(front, "[Tighten to 16 lbf·ft](tighten:seat-bolt)."), // 16.23
		"in both units":                   jobOf(front, "[Tighten to 22 N·m (16 lbf·ft)](tighten:seat-bolt)."),
		"in pounds, another":              jobOf(front, "⟦value-disagrees⟧[Tighten to 17 lbf·ft](tighten:seat-bolt)."),
		"one of two stages":               jobOf(front, "[In three stages, 22 N·m, 60 N·m and 90°](tighten:head-bolt)."),
		"no stage":                        jobOf(front, "⟦value-disagrees⟧[22 N·m, then 70 N·m and 90°](tighten:head-bolt)."),
		"an angle":                        jobOf(front, "⟦value-disagrees⟧[22 N·m, 60 N·m and 60°](tighten:head-bolt)."),
		"an angle of what has none":       jobOf(front, "[Tighten, then look at 90° from it](tighten:seat-bolt)."),
		"a mention":                       jobOf(front, "Undo the ⟦value-disagrees⟧[12 mm seat bolts](fastener:seat-bolt)."),
		"a width across flats":            jobOf(front, "Undo the [13 mm seat bolts](fastener:seat-bolt)."),
		"a thread's diameter":             jobOf(front, "Undo the [8 mm seat bolts](fastener:seat-bolt)."),
		"a key":                           jobOf(front, "Undo the [6 mm key bolts](fastener:key-bolt), not the ⟦value-disagrees⟧[5 mm ones](fastener:key-bolt)."),
		"a thread by its name":            jobOf(front, "Undo the [M10x1 seat bolts](fastener:seat-bolt)."),
		"when to tighten again":           jobOf(front, "[Again after 8 h](tighten:seat-bolt).", "⟦value-disagrees⟧[Again after 10 h](tighten:seat-bolt)."),
		"a wait":                          jobOf(front, "⟦value-disagrees⟧[Wait 5 min](hold:long-wait)."),
		"the wait":                        jobOf(front, "[Wait 180 s](hold:long-wait)."),
		"a limit":                         jobOf(front, "⟦value-disagrees⟧[At most 50 V dc](hold:bus-dead)."),
		"ac for dc":                       jobOf(front, "⟦value-disagrees⟧[At most 5 V ac](hold:bus-dead)."),
		"the limit":                       jobOf(front, "[Below 5 V](hold:bus-dead), [if it is above 5 V](if-not:bus-dead)."),
		"a number of its description":     jobOf(front, "[The drop from 210 bar](hold:bus-dead)."),
		"a mass":                          jobOf(front, "⟦value-disagrees⟧[Lift the seat, 15 kg, out](remove:seat)."),
		"the mass":                        jobOf(front, "[Lift the seat, 14 kg or 31 lb, out](remove:seat)."),
		"a part of a capacity":            jobOf(front, "[Top up 0.5 L](fill:lift-oil)."),
		"a part of what was let out":      jobOf(front, "[Let it out](drain:lift-oil).", "⟦value-disagrees⟧[Fill in 0.5 L](fill:lift-oil)."),
		"a capacity":                      jobOf(front, "⟦value-disagrees⟧[Fill in 5 L](fill:lift-oil)."),
		"how often a tool is looked at":   jobOf(front, "Take the [socket, looked at every 12 months](tool:socket-13), not ⟦value-disagrees⟧[every 6 months](tool:socket-13).").with(replaced("register/tools.yaml", "or: [spanner-set]", "or: [spanner-set], calibration: { every: 12 months, last: 2026-11-01 }")),
		"how long a role is good":         jobOf(front+"\nneeds: [hydraulics]", "A ⟦value-disagrees⟧[fitter, every 24 months](role:hydraulics), a [fitter, every 36 months](role:hydraulics).").with(files{"register/roles.yaml": "hydraulics: { name: Hydraulics, renew-every: 36 months }\n"}),
		"a voltage":                       jobOf(front, "⟦value-disagrees⟧[Pull the 400 V plug](isolate:traction)."),
		"a pressure let down to nothing":  jobOf(front, "[Let it down to 0 bar](release:lift)."),
		"a pressure let down to too much": jobOf(front, "⟦value-disagrees⟧[Let it down to 10 bar](release:lift)."),
		"a pressure let down below more than there is": jobOf(front, "⟦value-disagrees⟧[Let it down below 400 bar](release:lift)."),
		"a pressure let down from below":               jobOf(front, "⟦value-disagrees⟧[Let it out, at least 10 bar](release:lift)."),
		"a pressure let down":                          jobOf(front, "⟦value-disagrees⟧[Let it down from 200 bar to 0 bar](release:lift)."),
		"a proof by the limit beside it":               jobOf(front, "[Prove it below 5 V dc](prove:traction) with [](hold:bus-dead)."),
		"a proof by no limit":                          jobOf(front, "⟦value-disagrees⟧[Prove it below 50 V dc](prove:traction) with [](hold:bus-dead)."),
		"a setting":                                    jobOf(front, "⟦value-disagrees⟧[Set it back to 170 bar](reset:relief)."),
		"a setting, and its tolerance":                 jobOf(front, "[Set it back to 180 ± 4 bar](reset:relief)."),
		"a setting, as a range":                        jobOf(front, "[Set it back to 176 to 184 bar](reset:relief)."),
		"a setting, as another range":                  jobOf(front, "⟦value-disagrees⟧[Set it back to 176 to 190 bar](reset:relief)."),
		"a setting that is changed":                    jobOf(front, "[Lower it to 50 bar](alter:relief)."),
		"a range":                                      jobOf(front, "Take the ⟦value-disagrees⟧[wrench, 20 to 110 N·m](tool:wrench-20-100)."),
		"the range":                                    jobOf(front, "Take the [wrench, 20 to 100 N·m](tool:wrench-20-100)."),
		"one of a set":                                 jobOf(front, "Take the [17 mm spanner](tool:spanner-set), not the ⟦value-disagrees⟧[19 mm spanner](tool:spanner-set)."),
		"what an adapter adds":                         jobOf(front, "Take the [crow-foot, 45 mm longer](tool:crow-foot-17)."),
		"a drive that has no width":                    jobOf(front, "Take the [key, 25 mm long](tool:hex-key-6).").with(replaced("register/tools.yaml", "fits: [hex 6 mm]", "fits: [T30]")),
		"a kind that is not stated":                    jobOf(front, "Take the [gauge, 360°](tool:angle-gauge) and [4 L of oil](supply:oil)."),
		"a time":                                       jobOf(front, "Look. ⟦value-disagrees⟧[About 10 min](time:8min)"),
		"the time":                                     jobOf(front, "Look. [About 8 min](time:8min)"),
		"the register's own words":                     jobOf(front, "Take [](tool:wrench-20-100), [](hold:long-wait)."),
		"outside the link":                             jobOf(front, "Tighten to ⟦value-disagrees⟧25 N·m [by hand](tighten:seat-bolt)."),
		"in prose too":                                 jobOf(front, "lead: Bolts of ⟦value-disagrees⟧[23 N·m](fastener:seat-bolt).", "Look."),
		"in a heading":                                 jobOf(front, "Look.", "## Bolts of ⟦value-disagrees⟧[23 N·m](fastener:seat-bolt)", "Look."),
		"at the refit":                                 jobOf(front, "Look.\n\n   [When you refit it](on:refit), ⟦value-disagrees⟧[25 N·m](tighten:seat-bolt).\n"),
		"because":                                      jobOf(front, "Look.\n\n   [Because](why:) of ⟦value-disagrees⟧[400 V](energy:traction).\n"),
		"one finding for a link":                       jobOf(front, "⟦value-disagrees⟧[25 N·m on 12 mm](tighten:seat-bolt)."),
		"two links, two findings":                      jobOf(front, "⟦value-disagrees⟧[25 N·m](tighten:seat-bolt), ⟦value-disagrees⟧[26 N·m](tighten:seat-bolt)."),
	})
	says(t, jobOf(front, "[Tighten to 18 lbf·ft](tighten:seat-bolt)."),
		"the words say 18 lbf·ft, and the machine's file says 22 N·m",
		"write 16.2 lbf·ft, or leave the words empty; a number of another thing goes outside the link")
	says(t, jobOf(front, "[Tighten to 25 N·m on 12 mm](tighten:seat-bolt)."),
		"the words say 25 N·m and 12 mm, and the machine's file says 22 N·m and 13 mm",
		"write 22 N·m and 13 mm, or leave the words empty; a number of another thing goes outside the link")
}

func TestCountDisagrees(t *testing.T) {
	front := "tools: [socket-13, socket-10, hoist]"
	lift := func(words string) files { return jobOf(front, "[Lift the seat out](remove:seat); undo "+words+".") }
	expect(t, map[string]files{
		"before the link":             lift("its five ⟦count-disagrees⟧[bolts](fastener:seat-bolt)"),
		"before the link, right":      lift("its four [bolts](fastener:seat-bolt)"),
		"in figures":                  lift("its 5 ⟦count-disagrees⟧[bolts](fastener:seat-bolt)"),
		"in bold":                     lift("its **five** ⟦count-disagrees⟧[bolts](fastener:seat-bolt)"),
		"in the link":                 lift("its ⟦count-disagrees⟧[five bolts](fastener:seat-bolt)"),
		"in the link, right":          lift("its [four bolts](fastener:seat-bolt)"),
		"in capitals":                 lift("its ⟦count-disagrees⟧[Five bolts](fastener:seat-bolt)"),
		"in an act, before its name":  lift("its bolts: ⟦count-disagrees⟧[Undo the five bolts](loosen:seat-bolt)"),
		"in the link, not first":      lift("its [long five bolts](fastener:seat-bolt)"),
		"in an act, without article":  lift("its bolts: ⟦count-disagrees⟧[Undo five bolts](loosen:seat-bolt)"),
		"a count of the tools":        lift("them: [Undo the bolts with two spanners](loosen:seat-bolt)"),
		"an act":                      jobOf(front, "[Lift the seat out](remove:seat): ⟦count-disagrees⟧[five bolts](loosen:seat-bolt)."),
		"two of the four":             lift("two of the four [bolts](fastener:seat-bolt)"),
		"two of the five":             lift("two of the five ⟦count-disagrees⟧[bolts](fastener:seat-bolt)"),
		"two of the four, inside":     lift("[two of the four bolts](fastener:seat-bolt)"),
		"two of four, inside":         lift("[two of four bolts](fastener:seat-bolt)"),
		"two of five, inside":         lift("⟦count-disagrees⟧[two of five bolts](fastener:seat-bolt)"),
		"two, and inside of the four": lift("two [of the four bolts](fastener:seat-bolt)"),
		"an amount is no count":       lift("its [13 mm bolts](fastener:seat-bolt) to [22 N·m](fastener:seat-bolt)"),
		"a number of something else":  lift("bolts of M8 [](fastener:seat-bolt), step 5, [bolts](fastener:seat-bolt)"),
		"twenty-one is not one":       lift("twenty-one [bolts](fastener:seat-bolt)"),
		"no count":                    lift("all [bolts](fastener:seat-bolt)"),
		"another fastener than its":   lift("its six [clips](fastener:clip)"),
		"without a part":              jobOf(front, "Undo six [bolts](fastener:seat-bolt)."),
		"a part that is only named":   jobOf(front, "Look at the six [bolts](fastener:seat-bolt) of the [seat](part:seat)."),
		"a refit":                     jobOf(front, "[Put the seat in](refit:seat), five ⟦count-disagrees⟧[bolts](fastener:seat-bolt)."),
		"a note for the refit":        jobOf(front, "[Lift the seat out](remove:seat).\n\n   [When you refit it](on:refit), start five ⟦count-disagrees⟧[bolts](fastener:seat-bolt) by hand.\n"),
		"a sub-step has no part":      jobOf(front, "[Lift the seat out](remove:seat).\n\n   1. Undo five [bolts](fastener:seat-bolt).\n"),
		"two parts, either":           jobOf(front+"\npeople: 2", "[Lid](remove:lid) and [block](remove:block): eight [lid bolts](fastener:lid-bolt), two [lid bolts](fastener:lid-bolt), [](tool:hoist)."),
		"two parts, both":             jobOf(front+"\npeople: 2", "[Lid](remove:lid) and [block](remove:block) with [](tool:hoist): ten [lid bolts](fastener:lid-bolt)."),
		"two parts, neither":          jobOf(front+"\npeople: 2", "[Lid](remove:lid) and [block](remove:block) with [](tool:hoist): nine ⟦count-disagrees⟧[lid bolts](fastener:lid-bolt)."),
		"of one part by its name":     jobOf(front+"\npeople: 2", "[Lid](remove:lid) and [block](remove:block) with [](tool:hoist): ⟦count-disagrees⟧[ten bolts](loosen:lid-bolt#lid)."),
		"one that is held by one":     jobOf(front, "[Line off](remove:line), two ⟦count-disagrees⟧[nuts](fastener:line-nut), one [nut](fastener:line-nut)."),
		"two hundred":                 lift("its 200 ⟦count-disagrees⟧[bolts](fastener:seat-bolt)"),
		"none":                        lift("its 0 [bolts](fastener:seat-bolt), its 04 [bolts](fastener:seat-bolt)"),
		"twenty":                      lift("its twenty ⟦count-disagrees⟧[bolts](fastener:seat-bolt), its one ⟦count-disagrees⟧[bolt](fastener:seat-bolt)"),
		"right, of one by its name":   jobOf(front+"\npeople: 2", "[Lid](remove:lid) and [block](remove:block) with [](tool:hoist): [eight bolts](loosen:lid-bolt#lid), [two bolts](loosen:lid-bolt#block)."),
		"of the other by its name":    jobOf(front+"\npeople: 2", "[Lid](remove:lid) and [block](remove:block) with [](tool:hoist): ⟦count-disagrees⟧[two bolts](loosen:lid-bolt#lid)."),
		"a number that is none":       lift("five [bolts](fastener:seat-bolt)").with(replaced("machines/tug.yaml", "{ seat-bolt: 4 }", "{ seat-bolt: -4 }")), // its own rule tells of it
		"no number in the file":       lift("five [bolts](fastener:seat-bolt)").with(replaced("machines/tug.yaml", "{ seat-bolt: 4 }", "[seat-bolt]")),
		"Spanish words in English":    lift("sus cinco [bolts](fastener:seat-bolt)"),
	})
	mustFindNothing(t, "fasteners that could not be read", base.with(lift("its five [bolts](fastener:seat-bolt)")).with(replaced("machines/tug.yaml", "held-by: { seat-bolt: 4 }", "held-by: 4")))
	says(t, jobOf(front+"\npeople: 2", "[Lid](remove:lid) with [](tool:hoist), [seat](remove:seat): five [bolts](fastener:seat-bolt)."),
		"the words count 5, and the seat base is held by 4", "write 4, or mend held-by in the machine's file")
	says(t, lift("its five [bolts](fastener:seat-bolt)"), "the words count 5, and the seat base is held by 4", "write 4, or mend held-by in the machine's file")
}

func TestCountDisagreesInSpanish(t *testing.T) {
	translated := func(words string) files {
		return jobOf("tools: [socket-13]", "[Lift the seat out](remove:seat).").with(files{
			"procedures/job.es.md": procedure("tools: [socket-13]", "[Saque el asiento](remove:seat); afloje "+words+".")})
	}
	expect(t, map[string]files{
		"four":              translated("sus cuatro [tornillos](fastener:seat-bolt)"),
		"five":              translated("sus cinco ⟦count-disagrees⟧[tornillos](fastener:seat-bolt)"),
		"sixteen":           translated("sus dieciséis ⟦count-disagrees⟧[tornillos](fastener:seat-bolt)"),
		"two of the four":   translated("dos de los cuatro [tornillos](fastener:seat-bolt)"),
		"two of the five":   translated("⟦count-disagrees⟧[dos de los cinco tornillos](fastener:seat-bolt)"),
		"an article":        translated("un [tornillo](fastener:seat-bolt) tras otro, una [tuerca](fastener:seat-bolt)"),
		"English words":     translated("five [tornillos](fastener:seat-bolt)"),
		"figures":           translated("5 ⟦count-disagrees⟧[tornillos](fastener:seat-bolt)"),
		"a torque, a comma": translated("con ⟦value-disagrees⟧[22,5 N·m](fastener:seat-bolt) los [tornillos](fastener:seat-bolt)"),
		"a Spanish shop": jobOf("tools: [socket-13]", "[Saque el asiento](remove:seat), sus cinco ⟦count-disagrees⟧[tornillos](fastener:seat-bolt).").with(
			files{"shop.yaml": "title: Taller\nlanguage: es-MX\n"}),
	})
}

// What is done is judged in the original alone: a translation of a fault would
// tell it twice.
func TestTranslationsAreWords(t *testing.T) {
	expect(t, map[string]files{"a tool that does not fit": jobOf("tools: [socket-10]", "⟦tool-does-not-fit⟧[Lift the seat out](remove:seat).").with(files{
		"procedures/job.es.md": procedure("tools: [socket-10]", "[Saque el asiento](remove:seat).")})})
}

func TestWordsAreSilent(t *testing.T) {
	mustFindNothing(t, "a fastener that could not be read", base.with(jobOf("tools: [socket-13]", "[Seat](remove:seat), four [25 N·m bolts](fastener:seat-bolt).")).with(
		replaced("machines/tug.yaml", "torque: 22 N·m, condition: dry", "torque: 22 bar, condition: dry")))
	mustFindNothing(t, "a link that could not be bound", base.with(jobOf("tools: [socket-13]", "[25 N·m](tighten:seat-bolts).")))
	mustFindNothing(t, "a part that could not be read", base.with(jobOf("tools: [socket-13]", "[Seat](remove:seat), five [bolts](fastener:seat-bolt).")).with(
		replaced("machines/tug.yaml", "seat: { name: seat base, held-by: { seat-bolt: 4 }", "seat: { name: seat base, held-by: { seat-bolts: 4 }")))
	for _, n := range []string{"four", "4.5", "0", "-1"} {
		expect(t, map[string]files{"a number of bolts that is none, " + n: jobOf("tools: [socket-13]", "[Seat](remove:seat), five [bolts](fastener:seat-bolt).").with(
			replaced("machines/tug.yaml", "held-by: { seat-bolt: 4 }", "held-by: { seat-bolt: "+n+" }"))})
	}
}
