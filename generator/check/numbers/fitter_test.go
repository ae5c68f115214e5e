package numbers

import (
	"fmt"
	"strings"
	"testing"
)

// fitted is what states two ends, or one, beside what the base has: a torque, a
// gap, the pressure of tyres, settings.
var fitted = files{
	"machines/tug.yaml": strings.NewReplacer(
		"fasteners:\n", "fasteners:\n  rail-bolt: { name: rail bolt, across-flats: 13 mm, torque: 40 to 44 N·m }\n",
		"settings:\n", "settings:\n  governor: { name: governor, value: at most 3000 rpm }\n  float: { name: float, value: at least 40 mm }\n  belt: { name: belt, value: 8 to 10 mm }\n",
	).Replace(base["machines/tug.yaml"]),
	"register/holds.yaml": base["register/holds.yaml"] + `
tyre: { name: tyre, kind: measure, what: pressure, limit: 2.2 to 2.4 bar }
gap: { name: gap, kind: measure, what: gap, limit: 2.0 ± 0.1 mm }
drop: { name: drop, kind: measure, what: drop of pressure in 10 min, limit: at most 0.4 bar }
acid: { name: acid, kind: measure, what: pH, limit: pH 7.2 to 7.6 }
mix: { name: mix, kind: measure, what: mix ratio, limit: 1.25 to 2 }
`,
}

// rightByAFitter are sentences with sizes, threads, part numbers, dates, times of
// a clock, bounds and number words, none of which says another thing than the
// files. Common practice, no source; written before the rules were asked.
var rightByAFitter = []string{
	// Threads, tool sizes, inch sizes, part numbers.
	"[Tighten the bolts](tighten:seat-bolt) to 22 N·m with the 13 mm [socket](tool:socket-13).",
	"[Undo the bolts](loosen:seat-bolt), M8x1.25, 25 mm long, with the [socket](tool:socket-13).",
	"Tap the hole M10x1.5, drilled to 8.5 mm, and [put the seat in](refit:seat).",
	"[Tighten the bolts](tighten:seat-bolt) to 22 N·m with a 1/2 in drive wrench.",
	"The 3/8 in adapter fits the 1/2 in drive of the [wrench](tool:wrench-20-100).",
	"Fetch seal 4711-22 from drawer 25, and [put the seat in](refit:seat).",
	"The ISO 4762 [bolts](fastener:seat-bolt) of class 8.8 take 22 N·m.",
	"Wind 2 turns of 12 mm tape round the thread of the [line](part:line).",
	"A 1 1/4 in pipe leads to the [lift hydraulics](energy:lift).",
	// Dates and times of a clock.
	"[Tighten the bolts](tighten:seat-bolt) at 10:05, and look at them at 16:00.",
	"On 2026-05-04 the [valve](setting:relief) was set to 180 bar.",
	"[Fill in](fill:lift-oil) 0.5 L by 14:30 at the latest.",
	"Wait 3 min for the drive, from 10:05 to 10:08. [](hold:long-wait)",
	"The [air](energy:air), looked at in 05/2024, has 6 to 8 bar.",
	// Bounds that are those of the files.
	"Wait for the drive [](hold:long-wait), and 10 min later look again.",
	"[Wait](hold:long-wait); who comes 10 min earlier waits too.",
	"[It holds, and drops 0 bar](hold:drop).",
	"Wait at least 3 min for the drive. [](hold:long-wait)",
	"Wait 3 min or longer for the drive. [](hold:long-wait)",
	"Wait a minimum of 3 min. [](hold:long-wait)",
	"[Wait no less than 3 min](hold:long-wait).",
	"[Let it cure](hold:cure) for 24 to 72 h.",
	"Let it cure, all 4 to 72 h. [](hold:cure)",
	"Let it cure for at least 24 h and at most 72 h. [](hold:cure)",
	"The pad has at least 2 mm. [](hold:pad)",
	"[Set the governor back](reset:governor) with two or more 3000 rpm strobes.",
	"Renew the pad at 2 mm or less. [](hold:pad)",
	"Renew the pad at ≤ 2 mm. [](hold:pad)",
	"Less than 2 mm is worn out: measure the pad. [](hold:pad)",
	"The [bus](hold:bus-dead) shows at most 5 V dc; more than 5 V dc is not dead.",
	"Give it more chlorine until it has no more than 60 mg/L. [](hold:dose)",
	"Read the density: at least 1.22 and at most 1.28. [](hold:density)",
	"Read the mix: 1.25 to 2. [](hold:mix)",
	"Read the density by table 2.5. [](hold:density)",
	"Draw at least 2.5 tubes of acid, and read the density. [](hold:density)",
	"Fill the tyre up to 2.4 bar, and measure. [](hold:tyre)",
	"The gap is 1.9 to 2.1 mm, at least 1.9 mm. [](hold:gap)",
	"The pH is at least pH 7.2 and at most pH 7.6. [](hold:acid)",
	"[Set the valve back](reset:relief), to between 176 and 184 bar.",
	"[Set the valve back](reset:relief), to at least 176 bar and at most 184 bar.",
	"[Set the governor back](reset:governor) to at most 3000 rpm.",
	"[Set the float back](reset:float) to at least 40 mm.",
	"[Set the float back](reset:float) to 40 mm or more.",
	"[Raise the governor](alter:governor) to at least 3000 rpm.",
	"[Tighten](tighten:rail-bolt) to at least 40 N·m, at most 44 N·m.",
	"The [air](energy:air) has no less than 6 bar and no more than 8 bar.",
	// Amounts, decimals, other units.
	"[Lift the seat out](remove:seat), 14.0 kg (30.9 lb).",
	"[Set the valve back](reset:relief) to 18.0 MPa (2610 psi).",
	"Pour 250 mL of [oil](supply:oil) at 20 to 25 °C.",
	"[Drain the oil](drain:lift-oil), about 3.5 L, for 15 min.",
	"[Fill it](fill:lift-oil) to 10 mm below the rim.",
	"Run the pump for 2 min at 1500 rpm, then [let the pressure out](release:lift).",
	// How finely, and what an instrument is set to.
	"[Set the valve back](reset:relief) to 180 bar, in steps of 5 bar.",
	"Let air out of the tyre, 0.1 bar at a time. [](hold:tyre)",
	"Measure the pad to the nearest 0.1 mm. [](hold:pad)",
	"The pad wears by at most 2 mm a year. [](hold:pad)",
	"Set the tester to 1000 V dc and measure the bus. [](hold:bus-dead)",
	// A wrench's own range, however it is written.
	"[Tighten the bolts](tighten:seat-bolt) with the [wrench](tool:wrench-20-100) for between 20 and 100 N·m.",
	"[Tighten the bolts](tighten:seat-bolt) with the 20-100 N·m [wrench](tool:wrench-20-100).",
	"[Tighten the bolts](tighten:seat-bolt) with the 20 – 100 N·m [wrench](tool:wrench-20-100).",
	// Counts and number words.
	"[Lift the seat out](remove:seat); undo its four [bolts](fastener:seat-bolt) first.",
	"Undo two of the four [bolts](fastener:seat-bolt) and [lift the seat out](remove:seat).",
	"Wait three minutes for the drive. [](hold:long-wait)",
	"Wait for the drive, and look at the lamp every two minutes. [](hold:long-wait)",
	"Wait for the drive, then another five minutes. [](hold:long-wait)",
	"[Lift the seat out](remove:seat), fourteen kg, at its four corners.",
	"[Tighten the bolts](tighten:seat-bolt) to twenty-two N·m.",
	"[Fill in](fill:lift-oil) two litres, one after the other.",
	"Pour 2 x 2 L of [oil](supply:oil).",
	"[Lift the seat out](remove:seat); undo [two of the four](fastener:seat-bolt).",
	"[Set the belt back](reset:belt) to 8 mm, read to ± 0.5 mm.",
}

// wrongByAFitter say another thing than the files.
var wrongByAFitter = []string{
	// Bounds turned round.
	"Wait at most ⟦value-disagrees⟧3 min for the drive. [](hold:long-wait)",
	"Wait ⟦value-disagrees⟧3 min or less for the drive. [](hold:long-wait)",
	"Wait no longer than ⟦value-disagrees⟧3 min. [](hold:long-wait)",
	"Wait up to ⟦value-disagrees⟧3 min. [](hold:long-wait)",
	"Wait a maximum of ⟦value-disagrees⟧3 min. [](hold:long-wait)",
	"⟦value-disagrees⟧[Wait max. 3 min](hold:long-wait).",
	"Wait ⟦value-disagrees⟧3 min maximum. [](hold:long-wait)",
	"Let it cure for at least ⟦value-disagrees⟧72 h. [](hold:cure)",
	"Let it cure for no longer than ⟦value-disagrees⟧24 h. [](hold:cure)",
	"The pad has a maximum of ⟦value-disagrees⟧2 mm. [](hold:pad)",
	"[Set the float back](reset:float) to ≤ ⟦value-disagrees⟧40 mm.",
	"The [bus](hold:bus-dead) shows a minimum of ⟦value-disagrees⟧5 V dc.",
	"The [bus](hold:bus-dead) shows min. ⟦value-disagrees⟧5 V dc.",
	"The [bus](hold:bus-dead) shows no lower than ⟦value-disagrees⟧5 V dc.",
	"The chlorine has at least ⟦value-disagrees⟧60 mg/L. [](hold:dose)",
	"Read the density: at most ⟦value-disagrees⟧1.22. [](hold:density)",
	"Read the mix: ⟦value-disagrees⟧1.35 to 2. [](hold:mix)",
	"The tyre has at least ⟦value-disagrees⟧2.4 bar. [](hold:tyre)",
	"⟦value-disagrees⟧[The tyre has at most 2.2 bar](hold:tyre).",
	"The gap is at least ⟦value-disagrees⟧2.1 mm. [](hold:gap)",
	"The pH is at most pH ⟦value-disagrees⟧7.2. [](hold:acid)",
	"[Set the valve back](reset:relief) to at most ⟦value-disagrees⟧176 bar.",
	"[Set the valve back](reset:relief) to ⟦value-disagrees⟧184 bar or more.",
	"[Set the governor back](reset:governor) to at least ⟦value-disagrees⟧3000 rpm.",
	"⟦value-disagrees⟧[Set the governor back to at least 3000 rpm](reset:governor).",
	"[Set the float back](reset:float) to no more than ⟦value-disagrees⟧40 mm.",
	"[Set the belt back](reset:belt), at least ⟦value-disagrees⟧10 mm.",
	"[Tighten](tighten:rail-bolt) to at least ⟦value-disagrees⟧44 N·m.",
	"⟦value-disagrees⟧[Tighten to at most 40 N·m](tighten:rail-bolt).",
	"The [air](energy:air) has at least ⟦value-disagrees⟧8 bar.",
	"The [air](energy:air) has at most ⟦value-disagrees⟧6 bar.",
	// Ranges, tolerances, units, tens.
	"The tyre has ⟦value-disagrees⟧2.0 to 2.4 bar. [](hold:tyre)",
	"[Set the belt back](reset:belt) to ⟦value-disagrees⟧8 to 10 cm.",
	"The gap is 2.0 ± ⟦value-disagrees⟧0.2 mm. [](hold:gap)",
	"Let it cure ⟦value-disagrees⟧2 to 72 h. [](hold:cure)",
	"[Let it cure](hold:cure) for ⟦value-disagrees⟧2 to 72 h.",
	"The tyre is good for ⟦value-disagrees⟧0 to 2.4 bar. [](hold:tyre)",
	"The tyre has ⟦value-disagrees⟧0.0 to 2.4 bar. [](hold:tyre)",
	"[Tighten](tighten:rail-bolt) to ⟦value-disagrees⟧4.0 to 4.4 N·m.",
	"[Tighten the bolts](tighten:seat-bolt) to ⟦value-disagrees⟧22 lbf·in.",
	"The [plate](energy:plate) has ⟦value-disagrees⟧165 °F.",
	"Wait ⟦value-disagrees⟧3 h for the drive. [](hold:long-wait)",
	// In steps that are none.
	"Wait ⟦value-disagrees⟧5 min at a time. [](hold:long-wait)",
	"Pour ⟦value-disagrees⟧50 L of [oil](supply:oil) at a time.",
	"Prove it dead to ⟦value-disagrees⟧50 V dc. [](hold:bus-dead)",
	"[Set the valve back](reset:relief) to ⟦value-disagrees⟧5 bar.",
	// Counts and number words.
	"[Lift the seat out](remove:seat); undo its six ⟦count-disagrees⟧[bolts](fastener:seat-bolt) first.",
	"Undo two of the 6 ⟦count-disagrees⟧[bolts](fastener:seat-bolt) and [lift the seat out](remove:seat).",
	"Wait ⟦value-disagrees⟧five minutes for the drive. [](hold:long-wait)",
	"⟦value-disagrees⟧[Wait two minutes](hold:long-wait).",
	"[Tighten the bolts](tighten:seat-bolt) to ⟦value-disagrees⟧twenty N·m.",
	"[Tighten the bolts](tighten:seat-bolt) to ⟦value-disagrees⟧twenty-five N·m.",
	"[Lift the seat out](remove:seat), ⟦value-disagrees⟧forty kilograms.",
	"Pour ⟦value-disagrees⟧50 litres of [oil](supply:oil).",
	"[Set the governor back](reset:governor) to 3000 rpm and [the valve](reset:relief) to 180 ± ⟦value-disagrees⟧5 bar.",
	"Pour 3 x ⟦value-disagrees⟧2 L of [oil](supply:oil).",
	"[Pull the plug](isolate:traction) at ⟦value-disagrees⟧36 V, lamp on.",
	"[Lift the seat out](remove:seat); undo ⟦count-disagrees⟧[two of the](fastener:seat-bolt).",
	"Wait at most ⟦value-disagrees⟧three minutes. [](hold:long-wait)",
	"The [bus](hold:bus-dead) shows at most ⟦value-disagrees⟧50 volts.",
}

var rightInAnotherTongue = map[string][]string{
	"es": {
		"[Apriete](tighten:seat-bolt) con la [llave](tool:wrench-20-100), entre 20 y 100 N·m.",
		"[Apriete](tighten:seat-bolt) con la [llave](tool:wrench-20-100), desde 20 hasta 100 N·m.",
		"Espere tres minutos, como mínimo. [](hold:long-wait)",
		"Espere 3 minutos o más. [](hold:long-wait)",
		"Déjelo de 24 a 72 horas, un mínimo de 24 horas. [](hold:cure)",
		"Cambie la pastilla con 2 mm o menos. [](hold:pad)",
		"[Reponga la válvula](reset:relief), a no menos de 176 bar y no más de 184 bar.",
		"[Reponga el flotador](reset:float) a un mínimo de 40 mm.",
		"[Apriete](tighten:rail-bolt) a 40 N·m como mínimo, 44 N·m como máximo.",
		"[Saque el asiento](remove:seat), de catorce kilos, y quite una a una las dos cintas.",
		"Ciento ochenta bar dice la placa de la [válvula](setting:relief).",
		"Espere, y mire cada cinco minutos. [](hold:long-wait)",
		"Baje la rueda de 0,1 bar a la vez. [](hold:tyre)",
		"Ponga el comprobador a 1000 V y mida. [](hold:bus-dead)",
		"La bomba da 2 litros por minuto: [llene](fill:lift-oil) con 4 litros.",
	},
	"de": {
		"[Ziehen Sie an](tighten:seat-bolt), mit dem [Schlüssel](tool:wrench-20-100) für zwischen 20 und 100 N·m.",
		"Warten Sie mindestens drei Minuten. [](hold:long-wait)",
		"Warten Sie 3 Minuten oder länger. [](hold:long-wait)",
		"Lassen Sie es 24 bis 72 Stunden härten, höchstens 72 Stunden. [](hold:cure)",
		"Mit 2 mm oder weniger ist der Belag am Ende. [](hold:pad)",
		"[Stellen Sie das Ventil zurück](reset:relief), auf mindestens 176 und höchstens 184 bar.",
		"[Stellen Sie den Regler zurück](reset:governor), maximal 3000 rpm.",
		"[Ziehen Sie](tighten:rail-bolt) mit min. 40 N·m, max. 44 N·m an.",
		"[Heben Sie den Sitz aus](remove:seat), vierzehn Kilogramm, und sieben Sie das Öl.",
		"Hundertachtzig bar stehen auf dem [Ventil](setting:relief).",
		"[Ziehen Sie die Schrauben](tighten:seat-bolt) mit zweiundzwanzig N·m an.",
		"[Stellen Sie das Ventil zurück](reset:relief), in Schritten von 5 bar.",
		"Stellen Sie den Prüfer auf 1000 V und messen Sie. [](hold:bus-dead)",
		"Die Pumpe gibt 20 Liter pro Minute: [füllen Sie](fill:lift-oil) 4 Liter ein.",
	},
}

var wrongInAnotherTongue = map[string][]string{
	"es": {
		"[Reponga la válvula](reset:relief), desde ⟦value-disagrees⟧160 hasta 184 bar.",
		"[Apriete](tighten:seat-bolt) con la [llave](tool:wrench-20-100), desde ⟦value-disagrees⟧30 hasta 100 N·m.",
		"Espere ⟦value-disagrees⟧cinco minutos. [](hold:long-wait)",
		"Espere ⟦value-disagrees⟧30 minutos. [](hold:long-wait)",
		"Espere ⟦value-disagrees⟧3 minutos como máximo. [](hold:long-wait)",
		"Espere ⟦value-disagrees⟧tres minutos o menos. [](hold:long-wait)",
		"Déjelo al menos ⟦value-disagrees⟧72 horas. [](hold:cure)",
		"La pastilla tiene un máximo de ⟦value-disagrees⟧2 mm. [](hold:pad)",
		"[Reponga la válvula](reset:relief) a un mínimo de ⟦value-disagrees⟧184 bar.",
		"[Reponga el flotador](reset:float) a ⟦value-disagrees⟧40 mm o menos.",
		"[Apriete](tighten:rail-bolt) a no más de ⟦value-disagrees⟧40 N·m.",
		"⟦value-disagrees⟧[Apriete a treinta y cinco N·m](tighten:rail-bolt).",
		"[Saque el asiento](remove:seat), de ⟦value-disagrees⟧cuarenta kilos.",
		"Vierta ⟦value-disagrees⟧cincuenta litros de [aceite](supply:oil).",
	},
	"de": {
		"Warten Sie ⟦value-disagrees⟧fünf Minuten. [](hold:long-wait)",
		"Warten Sie ⟦value-disagrees⟧30 Minuten. [](hold:long-wait)",
		"Warten Sie höchstens ⟦value-disagrees⟧3 Minuten. [](hold:long-wait)",
		"Warten Sie ⟦value-disagrees⟧drei Minuten oder weniger. [](hold:long-wait)",
		"Lassen Sie es mindestens ⟦value-disagrees⟧72 Stunden härten. [](hold:cure)",
		"Der Belag hat maximal ⟦value-disagrees⟧2 mm. [](hold:pad)",
		"[Stellen Sie das Ventil zurück](reset:relief), auf mindestens ⟦value-disagrees⟧184 bar.",
		"[Stellen Sie den Schwimmer zurück](reset:float), auf max. ⟦value-disagrees⟧40 mm.",
		"[Ziehen Sie](tighten:rail-bolt) mit nicht mehr als ⟦value-disagrees⟧40 N·m an.",
		"⟦value-disagrees⟧[Mit fünfunddreißig N·m anziehen](tighten:rail-bolt).",
		"[Heben Sie den Sitz aus](remove:seat), ⟦value-disagrees⟧vierzig Kilogramm.",
		"Gießen Sie ⟦value-disagrees⟧fünfzig Liter [Öl](supply:oil) darüber.",
	},
}

const fitterFront = "tools: [socket-13, wrench-20-100, hoist]\nholds: [long-wait, bus-dead, pad, cure, dose, density, tyre, gap, acid, mix]\nsupplies: [oil: 5 L]"

func TestBoundsAreTold(t *testing.T) {
	says(t, fitted.with(jobOf(fitterFront, "[Set the valve back](reset:relief) to at most 176 bar.")),
		"the sentence says at most 176 bar, and the machine's file says at least 176 bar for the relief valve",
		"write at least 176 bar; what is said of another thing stands in a sentence of its own")
	says(t, fitted.with(jobOf(fitterFront, "[Wait three minutes or less](hold:long-wait).")),
		"the words say three minutes or less, and the register says at least 3 min",
		"write at least 3 min, or leave the words empty; a number of another thing goes outside the link")
}

func fitters(t *testing.T, language string, sentences []string) {
	t.Helper()
	cases := map[string]files{}
	for i, s := range sentences {
		cases[fmt.Sprintf("%s %d %.40s", language, i+1, s)] = fitted.with(jobOf(fitterFront, s)).with(files{"shop.yaml": "title: Shop\nlanguage: " + language + "\n"})
	}
	expect(t, cases)
}

func TestRightByAFitter(t *testing.T) {
	fitters(t, "en", rightByAFitter)
	for language, sentences := range rightInAnotherTongue {
		fitters(t, language, sentences)
	}
}

func TestWrongByAFitter(t *testing.T) {
	fitters(t, "en", wrongByAFitter)
	for language, sentences := range wrongInAnotherTongue {
		fitters(t, language, sentences)
	}
}

// What a text bounds, in each language, as it says that.
func TestBoundedIn(t *testing.T) {
	for _, c := range []struct{ tag, text, want string }{
		{"en", "Fill in at least 2 L and 3 kg or less, 4 bar, ≥ 5 mm.", "[at least 2 L 3 kg or less ≥ 5 mm]"},
		{"en", "If it is at least 2 L, stop.", "[]"},
		{"es", "Llene con dos litros como máximo.", "[dos litros como máximo]"},
		{"de", "Mindestens 2 L einfüllen.", "[mindestens 2 L]"},
		{"xx", "at least 2 L", "[]"},
	} {
		var said []string
		for _, b := range BoundedIn(c.text, c.tag) {
			said = append(said, b.Said)
		}
		if got := fmt.Sprint(said); got != c.want {
			t.Errorf("%s: %q: %s, want %s", c.tag, c.text, got, c.want)
		}
	}
}
