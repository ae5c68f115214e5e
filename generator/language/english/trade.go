package english

import "baybinder/generator/language/words"

var discharge = words.Discharge{
	R: "resistance that discharges it", C: "capacitance", V: "voltage before it is switched off", AtItsPeak: ", at its peak", Safe: "the shop's safe voltage, direct",
	AtLeast: "%s, so at least %s",
	Whole:   "The discharge resistor is whole. If it is not, no wait is long enough: measure before hands go in.",
	Marked:  "Resistance and capacitance are as marked. With a capacitor 20 %% and a resistor 5 %% above, it takes %s.",
	Alone:   "Nothing feeds the circuit any more. At the start it holds %s J: E = ½·C·V².",
	Maker:   "The maker's wait goes before this one.",
	Source:  "exponential discharge, V = V0·e^(−t/RC)",
}

var bolt = words.Bolt{
	Share: "%s, %.0f %% of the proof load of %s",
	T:     "torque", K: "nut factor, %s", D: "diameter of the thread", Fp: "proof load of %s, class %s",
	Conditions: map[string]string{"dry": "dry", "zinc": "zinc", "lubricated": "lubricated"},
	Span:       "The nut factor of a real joint is somewhere between %.2f and %.2f, so the pull is between %s and %s.",
	Thread:     "The torque is the turning of the thread alone: a lock nut, a tight thread or a dry seal takes its own.",
	Source:     "T = K·d·F, short form of the trade; proof load %s", Tables: "ISO 898-1, tables 4 and 5", Stress: "As·Sp by ISO 898-1",
}

var adapter = words.Adapter{
	T: "torque at the fastener", L: "%s, from hand to square", A: "what the %s adds",
	InLine: "The adapter is in line with the wrench. Square to it, at 90°, it needs no correction: set the torque itself.",
	Grip:   "The hand is at the middle of the grip; nothing is put on to lengthen it.",
	Source: "US Army TM 9-254, fig. 45",
}

var gas = words.Gas{
	Gas: "%s of gas, at the pressure of the air", Fluid: "%s of fluid",
	Vessel: "volume of the vessel", Gauge: "pressure that the gauge says", Air: "pressure of the air around",
	FluidOut: "volume of the gas with the fluid out", Precharge: "precharge of the gas, by its gauge", Before: "pressure before it is let go, by its gauge",
	Warm:        "The gas has become as warm as before it was let out. While it comes out it is colder, and there is less of it.",
	Breathed:    "In a closed bay a gas other than air takes the place of the air that is breathed.",
	AloneIs:     "This is the accumulator alone: what the circuit itself drains comes on top.",
	Keeps:       "The gas keeps its precharge when the fluid is out. It is another energy, with a release of its own.",
	Right:       "The precharge is right. Of a gas that has leaked away, more fluid has taken the place.",
	GivesOff:    "Let go at once, the gas gives up about %s: E = p·V/(k − 1)·(1 − (p2/p)^((k − 1)/k)), k = 1.4, from its absolute pressure p to p2.",
	SourceGas:   "Boyle's law; standard atmosphere 101.325 kPa; energy in the form of ASME PCC-2, 501-II, k = 1.4",
	SourceFluid: "Boyle's law, p·V = constant; standard atmosphere 101.325 kPa; energy in the form of ASME PCC-2, 501-II, k = 1.4",
}

var lift = words.Lift{
	Index: "%.1f, with a limit of %.1f %s", None: "none: this is not lifted by hand",
	L: "load", LOfSeveral: "load: of %s for %d people, each has", LC: "what may be lifted at the best",
	HM: "hands in front of the ankles, H = %s", VM: "hands above the floor, V = %s", DM: "travel, D = %s", AM: "turn of the body, A = %s°",
	FM: "how often, F = %s, for %s in a shift", CM: "grip of the hands, %s", Minute: "%s lifts/min",
	Hours:   map[string]string{"up to 1 h": "up to 1 h", "1 to 2 h": "1 to 2 h", "2 to 8 h": "2 to 8 h"},
	Holds:   map[string]string{"good": "good", "fair": "fair", "poor": "poor"},
	Hands:   "Two hands, standing, room to move, a dry floor, and a load that keeps still.",
	Above:   "An index above 1 is a strain for some people, above 3 for nearly all.",
	Several: "The equation is for one person; NIOSH has none for several. That all have an equal share is assumed here: the one at the heavy end has more.",
	Worse:   "Of the two ends of the lift this is the worse: %s.", AtMachine: "where the part sits on the machine", WhereItGoes: "where it is set down, and picked up again",
	Source: "NIOSH 94-110, rev. 9/2021",
}

var safety = words.Safety{
	Formula: "signal word = the harm, and how surely it follows where the hazard is not avoided", Put: "%s that %s follow",
	Harms:   map[string]string{"death": "death", "serious-injury": "serious injury", "minor-injury": "minor injury", "damage": "damage"},
	Happens: map[string]string{"will": "will", "could": "could"},
	Words:   "Death or serious injury that will follow is DANGER, that could follow is WARNING; a minor injury is CAUTION; damage alone is NOTICE.",
	Most:    "A box for several hazards takes the word of the greatest.",
	Source:  "ANSI Z535.4-2007, 4.14, as quoted",
}

var chemical = words.Chemical{
	Danger: "Danger", Warning: "Warning",
	Formula: "signal word = the strongest of the statements", None: "none",
	Source: "UN GHS 1.4.10.5.3, CLP articles 20 and 26 (from memory); statements as the CLP regulation prints them",
	NoSign: "no pictogram", GivesWay: "%s gives way to a graver pictogram",
	Signs: map[string]string{
		"GHS01": "exploding bomb", "GHS02": "flame", "GHS03": "flame over circle", "GHS04": "gas cylinder", "GHS05": "corrosion",
		"GHS06": "skull and crossbones", "GHS07": "exclamation mark", "GHS08": "health hazard", "GHS09": "environment",
	},
	Twofold:  "%s is category %s (%s) or %s (%s). Which it is here is not said, so the graver one is shown.",
	WithSign: "%s, %s", NoPictogram: "%s, no pictogram",
	Covered: "The label may leave %s out: a graver statement says it.", Optional: "The label may leave %s out beside the flame or the skull.",
	OfTheChemical: "This word is of the chemical's label. It is no DANGER, WARNING or CAUTION of a step.",
}
