package english

import "baybinder/generator/language/words"

var worked = words.Worked{
	LiftAlone:    "Lifting index %s: %s, %s, by hand by one person; recommended limit %s. How this was worked out",
	LiftTogether: "Lifting index %s: %s, %s, by hand by %d people; recommended limit %s each. How this was worked out",
	GasOut:       "Letting down the %s lets out about %s of gas. How this was worked out",
	FluidOut:     "Letting down the %s lets out about %s of fluid from its accumulator. How this was worked out",
	Setting:      "%s, %s: behind the %s, set the %s to %s. How this was worked out",
	Label:        "Signal word and pictograms. How this was worked out", Signal: "The signal word. How this was worked out",
	Calibration: "%s: good to %s. How this was worked out",
	AfterAngle:  "It is turned by an angle: the torque says nothing of the load of the bolt.",
	Section:     "How the numbers were worked out",
	Source:      "source: %s",
	Sum:         "%s: %s in all. How this was worked out", SumFormula: "what each procedure of the job uses up, added",
	SumSource: "the amounts that the procedures list",
	Locks:     "%d of the %s. How this was worked out", LocksFormula: "points locked at once · locks on each",
	LocksPut: "%d · %d", LocksSource: "the order of the steps, and how many locks the shop puts on a point",
	Discharge: discharge, Bolt: bolt, Adapter: adapter, Gas: gas, Lift: lift, Safety: safety, Chemical: chemical, Sums: sums,
}
