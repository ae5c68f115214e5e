package numbers

import "testing"

// What version 4 declares is stated as the rest is: a temperature, both ends of
// a pressure and of a wait, the part of a limit that is near its end. Of what is
// tightened by hand no number is compared.
func TestDeclaredValuesBesideLinks(t *testing.T) {
	beside := func(holds, step string) files { return jobOf("holds: ["+holds+"]", step) }
	expect(t, map[string]files{
		"another temperature":     beside("", "The [plate](energy:plate) is at ⟦value-disagrees⟧48 °C."),
		"the temperature":         beside("", "The [plate](energy:plate) is at 165 °C (329 °F)."),
		"in its own words":        beside("", "Mind ⟦value-disagrees⟧[the plate at 48 °C](energy:plate)."),
		"beyond a pressure":       beside("", "The [air](energy:air) has ⟦value-disagrees⟧10 bar."),
		"both ends of a pressure": beside("", "The [air](energy:air) has 6 to 8 bar."),
		"its lower end":           beside("", "The [air](energy:air) has at least 6 bar."),
		"neither end":             beside("", "The [air](energy:air) has ⟦value-disagrees⟧7 bar."),
		"tightened by hand":       beside("", "[Turn the knob in](tighten:knob), about 2 N·m."),
		"near the limit":          beside("pad", "Measure the pad; between 2 and 3 mm it is near its end. [](hold:pad)"),
		"and when again":          beside("pad", "Measure the pad, and again in 50 h below 3 mm. [](hold:pad)"),
		"not near the limit":      beside("pad", "Measure the pad; ⟦value-disagrees⟧5 mm is near its end. [](hold:pad)"),
		"in the link's words":     beside("pad", "⟦value-disagrees⟧[Measure the pad, near its end below 4 mm](hold:pad)."),
		"in the link's words, so": beside("pad", "[Measure the pad, near its end below 3 mm](hold:pad)."),
		"ten times as much":       beside("dose", "Stop above ⟦value-disagrees⟧0.6 g/L. [](hold:dose)"),
		"as much in grams":        beside("dose", "Stop above 0.06 g/L. [](hold:dose)"),
		"both ends of a wait":     beside("cure", "Let it cure 24 to 72 h. [](hold:cure)"),
		"beyond its longest":      beside("cure", "Let it cure 24 to ⟦value-disagrees⟧96 h. [](hold:cure)"),
	})
}

// What a branch asks opens out of the limit: of what is near it nothing is written.
func TestABranchIsMendedByItsLimit(t *testing.T) {
	says(t, jobOf("holds: [pad]", "Measure it. [Pad](hold:pad)", "⟦value-disagrees⟧[Below 1 mm](if-not:pad), stop."),
		"the words say 1 mm, and the register says 2 mm", "write 2 mm, or leave the words empty; a number of another thing goes outside the link")
}

const sentenceFront = "tools: [socket-13, wrench-20-100, wrench-5-25, hoist, stand, angle-gauge]\nholds: [long-wait, bus-dead]\nsupplies: [oil: 5 L]"

// inSentence is a manual whose only step is this, with more steps behind it.
func inSentence(steps ...string) files { return jobOf(sentenceFront, steps...) }

// performing is a manual that performs a procedure of one step, and then does
// more.
func performing(rest string, steps ...string) files {
	return inSentence(append([]string{"[Do the rest](do:rest)."}, steps...)...).with(files{"procedures/rest.md": procedure("supplies: [oil: 5 L]", rest)})
}

func TestValuesBesideLinks(t *testing.T) {
	thermostat := replaced("machines/tug.yaml", "settings:", "settings:\n  thermostat: { name: thermostat, value: -22 ± 1 °C }")
	expect(t, map[string]files{
		"a torque":                         inSentence("[Tighten the bolts](tighten:seat-bolt) to ⟦value-disagrees⟧25 N·m."),
		"a fill beside another supply":     jobOf("supplies: [water: 1 L, oil: 3 L]", "[Top it up](fill:lift-oil) with 2 L.", "[Top it up](fill:lift-oil) with ⟦value-disagrees⟧3.5 L.").with(files{"register/supplies.yaml": base["register/supplies.yaml"] + "water: { name: water, unit: L }\n"}),
		"the torque":                       inSentence("[Tighten the bolts](tighten:seat-bolt) to 22 N·m."),
		"ten times too much":               inSentence("[Tighten the bolts](tighten:seat-bolt) to ⟦value-disagrees⟧220 N·m."),
		"another unit":                     inSentence("[Tighten the bolts](tighten:seat-bolt) to ⟦value-disagrees⟧22 lbf·ft."),
		"another unit, rounded":            inSentence("[Tighten the bolts](tighten:seat-bolt) to 16 lbf·ft (16.2 lbf·ft)."), // 16.23
		"both units, one wrong":            inSentence("[Tighten the bolts](tighten:seat-bolt) to 22 N·m (⟦value-disagrees⟧19 lbf·ft)."),
		"before the link":                  inSentence("At ⟦value-disagrees⟧24 N·m the [bolts](tighten:seat-bolt) are tight."),
		"in bold":                          inSentence("[Tighten the bolts](tighten:seat-bolt) to **⟦value-disagrees⟧25 N·m**."),
		"a hard space":                     inSentence("[Tighten the bolts](tighten:seat-bolt) to ⟦value-disagrees⟧25&nbsp;N·m."),
		"across a line":                    inSentence("[Tighten the bolts](tighten:seat-bolt) to\n   ⟦value-disagrees⟧25 N·m."),
		"behind a colon":                   inSentence("[Tighten the bolts](tighten:seat-bolt): first by hand; then to ⟦value-disagrees⟧25 N·m."),
		"of another sentence":              inSentence("[Tighten the bolts](tighten:seat-bolt). The plate says 25 N·m."),
		"behind its end":                   inSentence("Turn them to ⟦value-disagrees⟧25 N·m. [](tighten:seat-bolt)"),
		"behind its end, with words":       inSentence("Turn them to ⟦value-disagrees⟧25 N·m. [The bolts](tighten:seat-bolt) [](time:5min)"),
		"behind the next sentence":         inSentence("It reads 25 N·m. Then [tighten them](tighten:seat-bolt)."),
		"the next sentence is a link":      inSentence("It reads 25 N·m. [Tighten them](tighten:seat-bolt) to 22 N·m."),
		"not a full stop":                  inSentence("[Tighten the bolts](tighten:seat-bolt) to approx. ⟦value-disagrees⟧25 N·m."),
		"in code":                          inSentence("[Tighten the bolts](tighten:seat-bolt) until the wrench reads `25 N·m`."),
		"a stage":                          inSentence("[Tighten](tighten:head-bolt) to 22 N·m, then 60 N·m, then by 90°."),
		"another stage":                    inSentence("[Tighten](tighten:head-bolt) to 22 N·m, then ⟦value-disagrees⟧65 N·m, then by 90°."),
		"another angle":                    inSentence("[Tighten](tighten:head-bolt) to 22 N·m, then 60 N·m, then by ⟦value-disagrees⟧60°."),
		"an angle of what has none":        inSentence("Turn the wrench by 45° and [tighten the bolts](tighten:seat-bolt)."),
		"of those that hold a part":        inSentence("[Put the seat in](refit:seat); its bolts take ⟦value-disagrees⟧25 N·m."),
		"of those that hold it, right":     inSentence("[Put the seat in](refit:seat); its bolts take 22 N·m."),
		"a mass":                           inSentence("[Lift the seat out](remove:seat), ⟦value-disagrees⟧140 kg."),
		"the mass":                         inSentence("[Lift the seat out](remove:seat), 14 kg (31 lb)."),
		"a mass of a mention":              inSentence("The [seat](part:seat) weighs ⟦value-disagrees⟧15 kg."),
		"a length of a fastener":           inSentence("[Undo the bolts](loosen:seat-bolt) with a 300 mm bar, 40 mm out."),
		"a wait":                           inSentence("Wait ⟦value-disagrees⟧5 min for the drive. [](hold:long-wait)"),
		"the wait":                         inSentence("Wait 180 s for the drive. [](hold:long-wait)"),
		"a wait that the link states":      inSentence("[Wait 3 min](hold:long-wait), and look after 1 min."),
		"by when a step ends":              inSentence("Look at it.", "Press it within 5 min of the wait. [](hold:long-wait) [](within:5min)"),
		"a time beside no wait":            inSentence("[Tighten the bolts](tighten:seat-bolt) within 10 min of the paste."),
		"a limit":                          inSentence("The [bus](hold:bus-dead) shows at most ⟦value-disagrees⟧50 V dc."),
		"the limit":                        inSentence("The [bus](hold:bus-dead) shows at most 5 V dc."),
		"another flow":                     inSentence("The [bus](hold:bus-dead) shows at most ⟦value-disagrees⟧5 V ac."),
		"what it falls from":               inSentence("The [bus](hold:bus-dead) falls from 360 V to at most 5 V."),
		"what a branch asks":               inSentence("[Prove the battery dead](prove:traction); [](hold:bus-dead).", "If the [bus](if-not:bus-dead) is above 5 V dc, wait 10 min."),
		"a voltage":                        inSentence("[Pull the plug](isolate:traction) of the ⟦value-disagrees⟧460 V battery."),
		"the voltage":                      inSentence("[Pull the plug](isolate:traction) of the 360 V battery."),
		"of a point":                       inSentence("The [plug](point:plug) carries ⟦value-disagrees⟧400 V."),
		"of a point, each":                 inSentence("The [plug](point:plug) cuts 360 V and 180 bar."),
		"down to nothing":                  inSentence("[Let the pressure out](release:lift) down to 0 bar."),
		"down to something":                inSentence("[Let the pressure out](release:lift) down to ⟦value-disagrees⟧10 bar."),
		"nothing where nothing is cut":     inSentence("The [lift hydraulics](energy:lift) show ⟦value-disagrees⟧0 bar."),
		"a setting":                        inSentence("[Set the valve back](reset:relief) to ⟦value-disagrees⟧170 bar."),
		"the setting":                      inSentence("[Set the valve back](reset:relief) to 180 bar, 176 to 184 bar."),
		"its tolerance":                    inSentence("[Set the valve back](reset:relief) to 180 ± 4 bar."),
		"another tolerance":                inSentence("[Set the valve back](reset:relief) to 180 ± ⟦value-disagrees⟧8 bar."),
		"a span in kelvin":                 inSentence("[Set the thermostat back](reset:thermostat) to -22 °C (±1 K).").with(thermostat),
		"another span":                     inSentence("[Set the thermostat back](reset:thermostat) to -22 °C (±⟦value-disagrees⟧2 K).").with(thermostat),
		"a range beyond it":                inSentence("[Set the valve back](reset:relief), 176 to ⟦value-disagrees⟧190 bar."),
		"a setting that is changed":        inSentence("[Lower the valve](alter:relief) to 50 bar with the [lift](energy:lift) down."),
		"filled after draining":            inSentence("[Drain it](drain:lift-oil).", "[Fill in](fill:lift-oil) ⟦value-disagrees⟧3 L."),
		"filled after draining, right":     inSentence("[Drain it](drain:lift-oil).", "[Fill in](fill:lift-oil) about 4 L (1.06 gal)."),
		"filled up":                        inSentence("[Fill in](fill:lift-oil) about 0.5 L."),
		"filled up with too much":          inSentence("[Fill in](fill:lift-oil) ⟦value-disagrees⟧6 L."),
		"drained, too much":                inSentence("[Drain it](drain:lift-oil), ⟦value-disagrees⟧40 L."),
		"drained, a part":                  inSentence("[Drain it](drain:lift-oil), 0.5 L first."),
		"from a can":                       inSentence("[Fill it](fill:lift-oil) from the 20 L can."),
		"a supply":                         inSentence("Pour 2 L of [oil](supply:oil) over it, then 5 L."),
		"more than is listed":              inSentence("Pour ⟦value-disagrees⟧50 L of [oil](supply:oil) over it."),
		"another dimension of a supply":    inSentence("Pour [oil](supply:oil) at 40 °C for 5 min over it."),
		"a wrench's end is no torque":      inSentence("[Tighten the bolts](tighten:seat-bolt) to ⟦value-disagrees⟧100 N·m with the [wrench](tool:wrench-20-100)."),
		"a wrench's own range":             inSentence("[Tighten the bolts](tighten:seat-bolt) with the 20 to 100 N·m [wrench](tool:wrench-20-100)."),
		"what a wrench is called by":       inSentence("[Tighten the bolts](tighten:seat-bolt) with the 100 N·m [wrench](tool:wrench-20-100)."),
		"what a wrench reaches, at it":     inSentence("[Tighten the bolts](tighten:seat-bolt) with the 25 N·m [wrench](tool:wrench-5-25)."),
		"what a hoist is called, at it":    inSentence("[Lift the seat out](remove:seat) with the 2 t [hoist](tool:hoist).").with(replaced("register/tools.yaml", "name: shop hoist", "name: 2 t hoist")),
		"what it is not called by":         inSentence("[Tighten the bolts](tighten:seat-bolt) with the ⟦value-disagrees⟧110 N·m [wrench](tool:wrench-20-100)."),
		"a hoist whose load nobody states": inSentence("[Lift the seat out](remove:seat) with the 500 kg [hoist](tool:hoist)."),
		"a range of no tool":               inSentence("[Tighten the bolts](tighten:seat-bolt), ⟦value-disagrees⟧20 to 100 N·m."),
		"a reverse":                        inSentence("[Lift the seat out](remove:seat).", "## Refit", "[In reverse](reverse:strip), bolts at ⟦value-disagrees⟧25 N·m."),
		"a reverse, right":                 inSentence("[Lift the seat out](remove:seat).", "## Refit", "[In reverse](reverse:strip), 14 kg, bolts at 22 N·m."),
		"a reverse resets":                 inSentence("[Lower the valve](alter:relief).", "## Refit", "[In reverse](reverse:strip), the valve to ⟦value-disagrees⟧150 bar."),
		"a procedure":                      inSentence("[Do the rest](do:rest), 25 N·m in 5 min.").with(files{"procedures/rest.md": procedure("tools: [wrench-20-100, socket-13]", "[Tighten the bolts](tighten:seat-bolt).")}),
		"because":                          inSentence("Look.\n\n   [Because](why:) at 25 N·m the [bolt](fastener:seat-bolt) stretches.\n"),
		"at the refit":                     inSentence("Look.\n\n   [When you refit it](on:refit), [tighten the bolts](tighten:seat-bolt) to ⟦value-disagrees⟧25 N·m.\n"),
		"in a list":                        inSentence("Tighten:\n\n   - [the bolts](tighten:seat-bolt) to ⟦value-disagrees⟧25 N·m\n   - the rest to 25 N·m\n"),
		"outside steps":                    inSentence("Look.", "## Bolts", "lead: x", "Look."),
		"one finding, at the first":        inSentence("[Tighten the bolts](tighten:seat-bolt) to ⟦value-disagrees⟧25 N·m (18 lbf·ft)."),
		"a count before a range is none":   inSentence("[Tighten](tighten:line-nut) all 4 to 60 N·m."),
		"a number of a hold's name":        jobOf("holds: [pad]", "The 12 mm pad has at least 2 mm. [](hold:pad)").with(replaced("register/holds.yaml", "name: brake pad", "name: 12 mm pad")),
		"a proof by another limit":         inSentence("[Prove it dead](prove:traction), at most ⟦value-disagrees⟧50 V dc. [](hold:bus-dead)"),
		"a proof without its hold":         inSentence("[Prove it dead](prove:lift), at most 0.5 bar. [](hold:bus-dead)"), // told by its own rule
		"a number of an energy's name":     inSentence("The [lift](energy:lift), built for 250 bar, has 180 bar.").with(replaced("machines/tug.yaml", "name: lift hydraulics", "name: 250 bar lift hydraulics")),
		"a bare number, behind a tool":     inSentence("Take the [wrench](tool:wrench-20-100) and [tighten the bolts](tighten:seat-bolt) to ⟦value-disagrees⟧25."),
		"a setting in words":               inSentence("[Set it back](reset:lever) to ⟦value-disagrees⟧45 mm.", "[Set it back](reset:lever) to notch 3, 40 mm.").with(replaced("machines/tug.yaml", "settings:", "settings:\n  lever: { name: lever, value: \"notch 3, 40 mm\" }")),
		"a circuit whose supply is open":   inSentence("[Fill it](fill:brake) with ⟦value-disagrees⟧2 L.", "[Fill it](fill:brake) with 1 L.").with(replaced("machines/tug.yaml", "fluids:", "fluids:\n  brake: { name: brake fluid, capacity: 1 L }")),
		"the right one of two supplies":    jobOf("supplies: [grease: 1 L, oil: 2 L]", "[Fill it](fill:lift-oil) with ⟦value-disagrees⟧3 L.", "[Fill it](fill:lift-oil) with 2 L.").with(files{"register/supplies.yaml": base["register/supplies.yaml"] + "grease: { name: grease, unit: L }\n"}),
		"a number of a name behind it":     inSentence("[Tighten the bolts](tighten:seat-bolt) to 25-B plates."),
		"a bare number":                    inSentence("[Tighten the bolts](tighten:seat-bolt) to ⟦value-disagrees⟧25, with the [wrench](tool:wrench-20-100)."),
		"a bare number, right":             inSentence("[Tighten the bolts](tighten:seat-bolt) to 22, with the [wrench](tool:wrench-20-100)."),
		"a bare number at the end":         inSentence("[Tighten the bolts](tighten:seat-bolt) at ⟦value-disagrees⟧25."),
		"a bare number and a noun":         inSentence("[Tighten the bolts](tighten:seat-bolt) at 2 corners."),
		"a bare number and a verb":         inSentence("[Tighten the bolts](tighten:seat-bolt) to ⟦value-disagrees⟧25 and mark them."),
		"a bare stage":                     inSentence("[Tighten](tighten:head-bolt) to 60."),
		"a bare amount":                    inSentence("[Fill it](fill:lift-oil) to ⟦value-disagrees⟧40."),
		"a bare setting":                   inSentence("[Set it back](reset:relief) to ⟦value-disagrees⟧18."),
		"a bare setting, right":            inSentence("[Set it back](reset:relief) to 180 ± 4."),
		"a bare number behind no act":      inSentence("Hold the [bolt](fastener:seat-bolt) at 25."),
		"nothing within a limit":           inSentence("The [bus](hold:bus-dead) shows 0 V."),
		"nothing below a limit":            inSentence("Measure the pad: ⟦value-disagrees⟧0 mm. [](hold:pad)"),
		"nothing of another thing":         inSentence("The [bus](hold:bus-dead) is dead; the [lift hydraulics](energy:lift) show ⟦value-disagrees⟧0 bar."),
		"nothing of a setting":             inSentence("[Set the valve back](reset:relief) to ⟦value-disagrees⟧0 bar.").with(replaced("machines/tug.yaml", "value: 180 ± 4 bar", "value: at most 180 bar")),
		"an edge of 1 mm":                  inSentence("[Tighten](tighten:head-bolt), the edge 1 x 45°."),
		"45° of no edge":                   inSentence("[Tighten](tighten:head-bolt), at the end by ⟦value-disagrees⟧45°."),
		"a range behind its link":          inSentence("[Set the valve back](reset:relief) to ⟦value-disagrees⟧160 to 184 bar."),
		"a range at once behind its link":  inSentence("[Set the valve back](reset:relief) ⟦value-disagrees⟧160 to 184 bar."),
		"a range behind a comma":           inSentence("[Set the valve back](reset:relief), ⟦value-disagrees⟧160 to 184 bar."),
		"a range that begins":              inSentence("⟦value-disagrees⟧160 to 184 bar: [set the valve back](reset:relief)."),
		"a decimal is no count":            inSentence("[Tighten](tighten:line-nut) all ⟦value-disagrees⟧4.5 to 60 N·m."),
		"from one torque to another":       inSentence("[Tighten](tighten:line-nut) all ⟦value-disagrees⟧40 N·m to 60 N·m."),
		"a tolerance in percent":           inSentence("[Set the valve back](reset:relief) to 180 bar ± 2.2 %."), // 4 of 180 bar
		"another in percent":               inSentence("[Set the valve back](reset:relief) to 180 bar ± ⟦value-disagrees⟧5 %."),
		"a span in Fahrenheit":             inSentence("[Set the thermostat back](reset:thermostat) to -22 °C ± 1.8 °F.").with(thermostat),
		"another in Fahrenheit":            inSentence("[Set the thermostat back](reset:thermostat) to -22 °C ± ⟦value-disagrees⟧1 °F.").with(thermostat),
		"a tester's category":              inSentence("See that it is of CAT III 600 V and [measure the bus](hold:bus-dead)."),
		"what a pressure falls from":       inSentence("The gauge falls from 180 bar. [](hold:bus-dead)").with(replaced("register/holds.yaml", "what: drop from 210 bar, limit: at most 5 V dc, of: traction", "what: gauge, limit: at most 0.5 bar, of: lift")),
		"what it does not fall from":       inSentence("The gauge falls from ⟦value-disagrees⟧160 bar. [](hold:bus-dead)").with(replaced("register/holds.yaml", "what: drop from 210 bar, limit: at most 5 V dc, of: traction", "what: gauge, limit: at most 0.5 bar, of: lift")),
		"what a heat falls from":           inSentence("It cools from 165 °C. [](hold:bus-dead)").with(replaced("register/holds.yaml", "what: drop from 210 bar, limit: at most 5 V dc, of: traction", "what: plate, limit: at most 48 °C, of: plate")),
		"filled with more than is listed":  jobOf("supplies: [oil: 2 L]", "[Fill it](fill:lift-oil) with ⟦value-disagrees⟧3 L."),
		"filled with more than the litre":  jobOf("supplies: [oil: 1 L]", "[Fill it](fill:lift-oil) with ⟦value-disagrees⟧3 L."),
		"drained, more than is listed":     jobOf("supplies: [oil: 2 L]", "[Drain it](drain:lift-oil), 3 L of it."),
		"filled from what is listed":       inSentence("[Fill it](fill:lift-oil) with ⟦value-disagrees⟧4.5 L of [oil](supply:oil)."),
		"drained onto what is listed":      inSentence("[Drain it](drain:lift-oil), and pour 5 L of [oil](supply:oil) behind it."),
		"drained and filled in one step":   inSentence("[Drain it](drain:lift-oil). [Fill in](fill:lift-oil) ⟦value-disagrees⟧3 L."),
		"filled up after that":             inSentence("[Drain it](drain:lift-oil).", "[Fill in](fill:lift-oil) 4 L.", "[Fill in](fill:lift-oil) 0.5 L more."),
		"a circuit whose capacity is open": inSentence("[Fill it](fill:lift-oil) with 6 L.").with(replaced("machines/tug.yaml", ", capacity: 4 L", "")),
		"drained by what is performed":     performing("[Drain it](drain:lift-oil).", "[Fill in](fill:lift-oil) ⟦value-disagrees⟧3 L."),
		"and filled there":                 performing("[Drain it](drain:lift-oil), then [fill it](fill:lift-oil).", "[Fill in](fill:lift-oil) 3 L."),
		"drained in the step that fills":   inSentence("[Do the rest](do:rest). [Fill in](fill:lift-oil) ⟦value-disagrees⟧3 L.").with(files{"procedures/rest.md": procedure("supplies: [oil: 5 L]", "[Drain it](drain:lift-oil).")}),
		"a word that ends like another":    inSentence("The [lift hydraulics](energy:lift) have an ⟦value-disagrees⟧18 bar pair of hoses."), // and no air
		"drained further down":             performing("[Do the rest](do:last).", "[Fill in](fill:lift-oil) ⟦value-disagrees⟧3 L.").with(files{"procedures/last.md": procedure("supplies: [oil: 5 L]", "[Drain it](drain:lift-oil).")}),
		"drained by what is only to read":  inSentence("[Read the rest](see:rest).", "[Fill in](fill:lift-oil) 3 L.").with(files{"procedures/rest.md": procedure("supplies: [oil: 5 L]", "[Drain it](drain:lift-oil).")}),
		"a bare range":                     inSentence("[Set the valve back](reset:relief) to 176 to ⟦value-disagrees⟧190."),
		"a bare range, its lower end":      inSentence("[Set the valve back](reset:relief) to ⟦value-disagrees⟧160 to 184."),
		"a bare amount, all of it":         inSentence("[Fill it](fill:lift-oil) to 4."),
		"times of a clock":                 inSentence("[Fill it](fill:lift-oil) at 10:00.", "[Fill it](fill:lift-oil) at 10:59.", "[Fill it](fill:lift-oil) at 10:95."),
		"a bare number and a line":         inSentence("[Tighten the bolts](tighten:seat-bolt) to ⟦value-disagrees⟧25\n   and mark them."),
		"a density anew":                   jobOf("holds: [density]", "Read the density. [](hold:density)", "[If it is not](if-not:density), fill up, and [read it again](again:density), 1.22 to ⟦value-disagrees⟧1.82."),
		"a density of a branch":            jobOf("holds: [density]", "Read the density. [](hold:density)", "[If it is not](if-not:density) 1.22 to 1.28, call the foreman."),
		"a bare number in bold":            inSentence("[Tighten the bolts](tighten:seat-bolt) to **22**."),
		"a bare number, then a bracket":    inSentence("[Tighten the bolts](tighten:seat-bolt) to ⟦value-disagrees⟧25 (by hand)."),
		"a bare number, then a long dash":  inSentence("[Tighten the bolts](tighten:seat-bolt) to ⟦value-disagrees⟧25 — by hand."),
		"a bare number, then a dash":       inSentence("[Tighten the bolts](tighten:seat-bolt) to ⟦value-disagrees⟧25 – by hand."),
		"a step's number":                  inSentence("[Tighten the bolts](tighten:seat-bolt) to 22 N·m as in step 25."),
	})
	says(t, inSentence("[Tighten the bolts](tighten:seat-bolt) to 25 N·m."),
		"the sentence says 25 N·m, and the machine's file says 22 N·m for the seat bolt",
		"write that number; what is said of another thing stands in a sentence of its own")
	says(t, inSentence("[Tighten the bolts](tighten:seat-bolt) to 25 N·m (18 lbf·ft), a bare seat."),
		"the sentence says 25 N·m and 18 lbf·ft, and the machine's file says 22 N·m for the seat bolt",
		"write that number; what is said of another thing stands in a sentence of its own")
	says(t, inSentence("[Tighten the bolts](tighten:seat-bolt) to 25 N·m; wait 5 min. [](hold:long-wait)"),
		"the sentence says 25 N·m and 5 min, and the machine's file and the register say 22 N·m for the seat bolt and 3 min for the capacitor wait",
		"write that number; what is said of another thing stands in a sentence of its own")
	says(t, inSentence("The [air](energy:air) has 9 bar."), "the sentence says 9 bar, and the machine's file says 6 to 8 bar for the shop air",
		"write that number; what is said of another thing stands in a sentence of its own")
}

func TestValuesBesideLinksInSpanish(t *testing.T) {
	spanish := func(steps ...string) files {
		return jobOf(sentenceFront, steps...).with(files{"shop.yaml": "title: Taller\nlanguage: es\n"})
	}
	expect(t, map[string]files{
		"a torque":                    spanish("[Apriete los tornillos](tighten:seat-bolt) a ⟦value-disagrees⟧25 N·m."),
		"the torque":                  spanish("[Apriete los tornillos](tighten:seat-bolt) a 22,0 N·m."),
		"a decimal comma":             spanish("[Apriete los tornillos](tighten:seat-bolt) a ⟦value-disagrees⟧22,5 N·m."),
		"a bare number":               spanish("[Apriete los tornillos](tighten:seat-bolt) a ⟦value-disagrees⟧25, con la [llave](tool:wrench-20-100)."),
		"a bare number with a comma":  spanish("[Apriete los tornillos](tighten:seat-bolt) a ⟦value-disagrees⟧22,5 con la [llave](tool:wrench-20-100)."),
		"up to":                       spanish("[Llene](fill:lift-oil) hasta ⟦value-disagrees⟧6."),
		"a noun":                      spanish("[Apriete los tornillos](tighten:seat-bolt) en 2 esquinas."),
		"a range":                     spanish("[Reponga la válvula](reset:relief) de 176 a 184 bar."),
		"a range, its lower end":      spanish("[Reponga la válvula](reset:relief) de ⟦value-disagrees⟧160 a 184 bar."),
		"a range with between":        spanish("[Reponga la válvula](reset:relief) entre 176 y ⟦value-disagrees⟧190 bar."),
		"a wrench's own range":        spanish("[Apriete](tighten:seat-bolt) con la [llave](tool:wrench-20-100) de 20 a 100 N·m."),
		"a wrench's end is no torque": spanish("[Apriete](tighten:seat-bolt) con la [llave](tool:wrench-20-100) a ⟦value-disagrees⟧100 N·m."),
		"a wait":                      spanish("Espere ⟦value-disagrees⟧5 min. [](hold:long-wait)"),
		"a mass":                      spanish("[Saque el asiento](remove:seat), de ⟦value-disagrees⟧41 kg."),
		"from a can":                  spanish("[Llene](fill:lift-oil) con el bidón de 20 L."),
		"in a translation": jobOf(sentenceFront, "[Tighten the bolts](tighten:seat-bolt) to 22 N·m.", "Pour 2 L of [oil](supply:oil).").with(files{
			"procedures/job.es.md": "---\ntitle: Trabajo\n---\n## Strip\n\n1. [Apriete](tighten:seat-bolt) a ⟦value-disagrees⟧25 N·m.\n2. Vierta ⟦value-disagrees⟧20 L de [aceite](supply:oil).\n"}),
	})
}

func TestValuesBesideLinksInGerman(t *testing.T) {
	german := func(steps ...string) files {
		return jobOf(sentenceFront, steps...).with(files{"shop.yaml": "title: Werkstatt\nlanguage: de\n"})
	}
	expect(t, map[string]files{
		"a torque":                    german("[Ziehen Sie die Schrauben an](tighten:seat-bolt), mit ⟦value-disagrees⟧25 N·m."),
		"the torque":                  german("[Ziehen Sie die Schrauben](tighten:seat-bolt) mit 22,0 N·m an."),
		"a decimal comma":             german("[Ziehen Sie die Schrauben](tighten:seat-bolt) mit ⟦value-disagrees⟧22,5 N·m an."),
		"a bare number":               german("[Ziehen Sie die Schrauben an](tighten:seat-bolt) auf ⟦value-disagrees⟧25, mit dem [Schlüssel](tool:wrench-20-100)."),
		"a bare number before a verb": german("[Die Schrauben](tighten:seat-bolt) mit ⟦value-disagrees⟧25 anziehen."),
		"a bare number, right":        german("[Die Schrauben](tighten:seat-bolt) mit 22 anziehen."),
		"up to":                       german("[Füllen Sie](fill:lift-oil) bis ⟦value-disagrees⟧6 auf."),
		"a noun":                      german("[Ziehen Sie die Schrauben an](tighten:seat-bolt) mit 2 Schlüsseln."),
		"a range":                     german("[Stellen Sie das Ventil zurück](reset:relief), auf 176 bis 184 bar."),
		"a range, its lower end":      german("[Stellen Sie das Ventil zurück](reset:relief), auf ⟦value-disagrees⟧160 bis 184 bar."),
		"a range with between":        german("[Stellen Sie das Ventil zurück](reset:relief), zwischen 176 und ⟦value-disagrees⟧190 bar."),
		"a wrench's own range":        german("[Ziehen Sie fest](tighten:seat-bolt), mit dem [Schlüssel](tool:wrench-20-100) von 20 bis 100 N·m."),
		"a wait":                      german("Warten Sie ⟦value-disagrees⟧5 min. [](hold:long-wait)"),
		"a mass":                      german("[Heben Sie den Sitz aus](remove:seat), ⟦value-disagrees⟧41 kg."),
		"from a can":                  german("[Füllen Sie](fill:lift-oil) aus dem 20-L-Kanister auf."),
		"a lamp":                      german("[Ziehen Sie den Stecker](isolate:traction), mit der 24-V-Handlampe."),
		"a glued vessel":              german("[Füllen Sie](fill:lift-oil) aus der 20-L-Ölkanne auf."),
		"of a can":                    german("[Füllen Sie](fill:lift-oil) aus einem Ölkanister von 20 L auf."),
		"further":                     german("[Warten Sie](hold:long-wait) noch 10 min länger, wenn es kalt ist."),
		"how often":                   german("[Warten Sie](hold:long-wait), und schauen Sie alle 30 s hin."),
	})
}

// A link or an entry that could not be read is unknown: the number may be its.
func TestSentencesAreSilent(t *testing.T) {
	mustFindNothing(t, "a fastener that could not be read", base.with(inSentence("[Tighten](tighten:seat-bolt) to 25 N·m.")).with(
		replaced("machines/tug.yaml", "torque: 22 N·m, condition: dry", "torque: 22 bar, condition: dry")))
	mustFindNothing(t, "a link that could not be bound", base.with(inSentence("[Tighten](tighten:seat-bolt) the [lid's](fastener:lid-bolts) to 25 N·m.")))
	mustFindNothing(t, "a setting in what is reversed that nobody knows", base.with(inSentence("[Lower the valve](alter:relieff) and [lower it](alter:relief).", "## Refit", "[In reverse](reverse:strip), the valve to 150 bar.")))
	mustFindNothing(t, "a hold of what is proved that nobody knows", base.with(inSentence("[Prove it dead](prove:lift), at most 0.5 bar. Look at it. [](hold:nobody)")))
	mustFindNothing(t, "a name of a switch that could not be read", base.with(inSentence("[Close the switch](isolate:traction).")).with(replaced("machines/tug.yaml", "{ name: service plug }", "{ name: [main switch] }")))
	mustFindNothing(t, "one part of two whose fastener could not be read", base.with(jobOf("tools: [socket-13, socket-10, wrench-5-25, hoist]", "[Put the seat in](refit:seat) and [the lid on](refit:lid), at 25 N·m, with the [](tool:hoist).")).with(
		replaced("machines/tug.yaml", "torque: 22 N·m, condition: dry", "torque: 22 bar, condition: dry")))
	mustFindNothing(t, "a part whose fastener could not be read", base.with(inSentence("[Put the seat in](refit:seat), 25 N·m.")).with(
		replaced("machines/tug.yaml", "torque: 22 N·m, condition: dry", "torque: 22 bar, condition: dry")))
	proof := func(limit string) files {
		return inSentence("[Prove it below 50 V dc](prove:traction), at most 50 V dc. [](hold:bus-dead)").with(
			replaced("register/holds.yaml", "limit: at most 5 V dc", "limit: "+limit))
	}
	mustFindNothing(t, "a limit that could not be read", base.with(proof("at most 5 Vx")))
	expect(t, map[string]files{"a limit that shows nothing of the energy": proof("at most 5 bar")})
	expect(t, map[string]files{"a supply whose amount could not be read": jobOf("supplies: [oil: plenty]", "Pour 25 L of [oil](supply:oil).")})
}

// Thousands are parted by a space (NIST SP 811, 10.5.3), in English by a comma, in
// Spanish and German by a point: common practice, no source. Where the sign can be
// read in two ways, either may be right.
func TestThousandsBesideLinks(t *testing.T) {
	spanish := files{"shop.yaml": "title: Taller\nlanguage: es\n"}
	german := files{"shop.yaml": "title: Werkstatt\nlanguage: de\n"}
	in := func(shop files, step string) files { return inSentence(step).with(shop) }
	expect(t, map[string]files{
		"spaces":                     inSentence("The [seat](part:seat) weighs ⟦value-disagrees⟧81 000 g."),
		"hard spaces":                inSentence("The [seat](part:seat) weighs ⟦value-disagrees⟧81\u202F000\u00A0g."),
		"spaces, right":              inSentence("The [seat](part:seat) weighs 14 000 g."),
		"a number of something":      inSentence("At pack 2 360 V stand on the [battery](energy:traction)."),
		"commas":                     inSentence("The [seat](part:seat) weighs ⟦value-disagrees⟧81,000 g."),
		"commas, right":              inSentence("The [seat](part:seat) weighs 14,000 g."),
		"a plain number before":      inSentence("The [seat](part:seat) weighs ⟦value-disagrees⟧15 kg or 14,000 g."),
		"a plain number behind":      inSentence("The [seat](part:seat) weighs 14,000 g or ⟦value-disagrees⟧15 kg."),
		"a point is a decimal point": inSentence("The [seat](part:seat) weighs ⟦value-disagrees⟧14.000 g."),
		"in the link's words":        inSentence("Mind ⟦value-disagrees⟧[the seat, 81 000 g](part:seat)."),
		"in the link's words, right": inSentence("Mind [the seat, 14 000 g](part:seat)."),
		"points":                     in(spanish, "El [asiento](part:seat) pesa ⟦value-disagrees⟧81.000 g."),
		"points, right":              in(spanish, "El [asiento](part:seat) pesa 14.000 g."),
		"points, decimals":           in(spanish, "El [asiento](part:seat) pesa 14.000 kg."),
		"points in German":           in(german, "Der [Sitz](part:seat) wiegt 14.000 g."),
		"points in a link":           in(german, "Heben Sie [den Sitz, 14.000 g](part:seat)."),
		"points in a range":          in(german, "Der [Sitz](part:seat) ist ⟦value-disagrees⟧12.000 bis 14.000 g schwer."),
	})
}
