package numbers

import (
	"fmt"
	"testing"
)

// rightSentences are what a fitter writes beside tools, holds, supplies, parts
// and energies, with numbers that are none of theirs or that are right. They
// were written before the rule was asked.
var rightSentences = []string{
	// Angles, torques, what is not to be done.
	"[Tighten](tighten:head-bolt) in three stages: 22 N·m, 60 N·m, then 2 x 45°.",
	"[Tighten the bolts](tighten:seat-bolt) to 22 N·m, not 220 N·m.",
	"[Tighten the bolts](tighten:seat-bolt) to 22 N·m instead of the 25 N·m of the old plate.",
	"[Tighten the bolts](tighten:seat-bolt), 4 x 22 N·m.",
	"[Tighten the bolts](tighten:seat-bolt) to 22 N·m with a 25 N·m wrench.",
	"[Tighten the bolts](tighten:seat-bolt) with a 13 mm socket on a 250 mm extension.",
	"Chamfer the edge, 2 x 45°, before you [tighten the bolts](tighten:head-bolt).",
	"The [bolts](fastener:seat-bolt) are 40 mm long; those in front are 55 mm.",
	// Voltages.
	"Hang up the 24 V inspection lamp and [pull the plug](isolate:traction).",
	"[Pull the plug](isolate:traction); the lamp's 24 V stay on.",
	"Below 60 V dc nobody is hurt: [bus](hold:bus-dead).",
	"Set the tester to its 1000 V range and [measure the bus](hold:bus-dead).",
	"[Measure the bus](hold:bus-dead): it falls from 360 V dc and reads 0 V at the end.",
	"[Prove the battery dead](prove:traction) with a 9 V tester lamp in reach: 0 V between all poles. [](hold:bus-dead)",
	"[Pull the plug](isolate:traction) by the light of a 12 V torch.",
	// Times.
	"[Wait 3 min](hold:long-wait), then work within 10 min.",
	"Wait for the drive, and look at the lamp every 30 s. [](hold:long-wait)",
	"Wait for the drive; is it still warm, wait another 10 min. [](hold:long-wait)",
	"Wait 3 min for the drive, 10 min more if it is warm. [](hold:long-wait)",
	"[Measure the bus](hold:bus-dead) for 10 s at each pair.",
	"Glue it with 5 min epoxy, and wait for the drive. [](hold:long-wait)",
	"Run the [hoist](tool:hoist) for 30 s without a load.",
	// Temperatures.
	"The [plate](energy:plate) has 165 °C; wear the 250 °C gloves.",
	"[Fill it](fill:lift-oil) with the oil at 40 °C.",
	"Warm the [seat](part:seat) to 60 °C before you pull it.",
	"Grease the [plate](energy:plate)'s rail with 200 °C grease.",
	// Lengths.
	"Measure the pad 10 mm from the edge. [](hold:pad)",
	"Read the density, 1.22 to 1.28, at each of the 3 to 6 cells. [](hold:density)",
	"Read the density twice, 1.5 to 2 min apart. [](hold:density)",
	"Set the scale to 1.1 to 1.3 g/mL and read the density. [](hold:density)",
	"Measure the pad at four places 30 mm apart. [](hold:pad)",
	"Measure the pad with the 150 mm caliper. [](hold:pad)",
	"Measure the pad every 20 mm; it has at least 2 mm. [](hold:pad)",
	"Slide the [stand](tool:stand) 300 mm in from the sill.",
	// Masses, pressures, amounts.
	"[Lift the seat out](remove:seat), 14 kg, with the 500 kg chain hoist.",
	"[Lift the seat out](remove:seat) with a sling for 1 t.",
	"[Let the pressure out](release:lift), and blow the port out with 2 bar of air.",
	"The [lift hydraulics](energy:lift) have 180 bar; the 6 bar hose stays on.",
	"[Let the pressure out](release:lift) until the 250 bar dial shows 0 bar.",
	"[Let the pressure down below 0.5 bar](release:lift).",
	"[Let it out until the gauge shows less than 0.3 bar](release:lift).",
	"[Pump it down from 180 bar to less than 0.3 bar](release:lift).",
	"[Drain it until less than 0.2 L is left](drain:lift-oil).",
	"[Fill it](fill:lift-oil) from the 20 L drum, 0.5 L at a time.",
	"Wipe it with 50 mL of [oil](supply:oil) on a 30 cm rag.",
	"[Drain the oil](drain:lift-oil) into a drum for 200 L.",
	"[Drain the oil](drain:lift-oil) into a drum of 60 L, or two 20 L cans.",
	"Pour [oil](supply:oil) from the 400 mL cartridge into the 10 L bucket.",
	"[Set the valve back](reset:relief) to 180 bar, never to 200 bar.",
}

var rightInSpanish = []string{
	"[Apriete los tornillos](tighten:seat-bolt) a 22 N·m, no a 220 N·m.",
	"[Apriete los tornillos](tighten:seat-bolt) a 22 N·m en vez de 25 N·m.",
	"[Apriete](tighten:head-bolt) a 22 N·m, a 60 N·m y después 2 x 45°.",
	"[Apriete los tornillos](tighten:seat-bolt) con un vaso de 13 mm y una prolongación de 250 mm.",
	"Cuelgue la lámpara de 24 V y [saque el enchufe](isolate:traction).",
	"Por debajo de 60 V dc no hay daño: [bus](hold:bus-dead).",
	"Ponga el comprobador en la escala de 1000 V y [mida el bus](hold:bus-dead).",
	"[Espere 3 min](hold:long-wait) y trabaje antes de 10 min.",
	"Espere, y mire la lámpara cada 30 s. [](hold:long-wait)",
	"Espere; si sigue caliente, espere otros 10 min. [](hold:long-wait)",
	"Espere 3 min, y 10 min más si está caliente. [](hold:long-wait)",
	"Mida la pastilla a 10 mm del borde. [](hold:pad)",
	"Mida la pastilla cada 20 mm con el calibre de 150 mm. [](hold:pad)",
	"[Saque el asiento](remove:seat), de 14 kg, con el polipasto de 500 kg.",
	"[Saque el asiento](remove:seat) con una eslinga de 1 t.",
	"[Suelte la presión](release:lift) y sople con aire de 2 bar.",
	"[Suelte la presión hasta menos de 0,5 bar](release:lift).",
	"[Llene](fill:lift-oil) con el bidón de 20 L, en tandas de 0,5 L.",
	"Limpie con 50 mL de [aceite](supply:oil) del cartucho de 400 mL.",
	"[Reponga la válvula](reset:relief) a 180 bar, nunca a 200 bar.",
	"[Vacíe el aceite](drain:lift-oil) en un bidón de 200 L.",
	"Engrase el carril de la [placa](energy:plate) con grasa de 200 °C.",
}

// wrongSentences have a number of the linked thing that is not its own: ten
// times too much or too little, another unit, a bare one, inside and outside
// the brackets.
var wrongSentences = []string{
	"[Tighten the bolts](tighten:seat-bolt) to ⟦value-disagrees⟧220 N·m.",
	"[Tighten the bolts](tighten:seat-bolt) to ⟦value-disagrees⟧2.2 N·m, not more.",
	"[Tighten the bolts](tighten:seat-bolt), not more than ⟦value-disagrees⟧220 N·m.",
	"[Tighten the bolts](tighten:seat-bolt) to ⟦value-disagrees⟧22 lbf·ft.",
	"[Tighten the bolts](tighten:seat-bolt) to ⟦value-disagrees⟧220, with the [wrench](tool:wrench-20-100).",
	"[Tighten](tighten:head-bolt) to 22 N·m, 60 N·m, then 2 x ⟦value-disagrees⟧60°.",
	"[Tighten](tighten:head-bolt) to 22 N·m, 60 N·m, then another ⟦value-disagrees⟧60°.",
	"[Tighten the bolts](tighten:seat-bolt), 4 x ⟦value-disagrees⟧220 N·m.",
	"⟦value-disagrees⟧[Tighten the bolts to 220 N·m](tighten:seat-bolt).",
	"[Pull the plug](isolate:traction) of the ⟦value-disagrees⟧36 V battery.",
	"[Pull the plug](isolate:traction): there are ⟦value-disagrees⟧3600 V behind it.",
	"The [bus](hold:bus-dead) reads at most ⟦value-disagrees⟧50 V dc.",
	"The [bus](hold:bus-dead) reads at most ⟦value-disagrees⟧60 V dc.",
	"Below ⟦value-disagrees⟧50 V dc the [bus](hold:bus-dead) is dead.",
	"Wait ⟦value-disagrees⟧30 min for the drive. [](hold:long-wait)",
	"Wait ⟦value-disagrees⟧3 s for the drive. [](hold:long-wait)",
	"The [plate](energy:plate) has ⟦value-disagrees⟧16.5 °C.",
	"Read the density, 1.22 to ⟦value-disagrees⟧1.82. [](hold:density)",
	"[Read the density](hold:density): 1.22 to ⟦value-disagrees⟧12.8.",
	"The pad has at least ⟦value-disagrees⟧20 mm. [](hold:pad)",
	"[Lift the seat out](remove:seat), ⟦value-disagrees⟧1.4 kg, with the [hoist](tool:hoist).",
	"The [lift hydraulics](energy:lift) have ⟦value-disagrees⟧18 bar.",
	"[Let the pressure out](release:lift) from ⟦value-disagrees⟧180 psi.",
	"[Drain it](drain:lift-oil) and [fill in](fill:lift-oil) ⟦value-disagrees⟧40 L of oil.",
	"Pour ⟦value-disagrees⟧50 L of [oil](supply:oil) over it.",
	"[Set the valve back](reset:relief) to ⟦value-disagrees⟧1800 bar.",
	"[Set the valve back](reset:relief) to ⟦value-disagrees⟧18.",
}

var wrongInSpanish = []string{
	"[Apriete los tornillos](tighten:seat-bolt) a ⟦value-disagrees⟧220 N·m.",
	"[Apriete los tornillos](tighten:seat-bolt), no más de ⟦value-disagrees⟧220 N·m.",
	"[Apriete los tornillos](tighten:seat-bolt) a ⟦value-disagrees⟧2,2 con la [llave](tool:wrench-20-100).",
	"[Saque el enchufe](isolate:traction) de la batería de ⟦value-disagrees⟧36 V.",
	"Espere ⟦value-disagrees⟧30 min. [](hold:long-wait)",
	"La pastilla tiene al menos ⟦value-disagrees⟧20 mm. [](hold:pad)",
	"[Saque el asiento](remove:seat), de ⟦value-disagrees⟧140 kg.",
	"Vierta ⟦value-disagrees⟧50 L de [aceite](supply:oil).",
	"[Reponga la válvula](reset:relief) a ⟦value-disagrees⟧18 bar.",
	"[Vacíe](drain:lift-oil) y [llene](fill:lift-oil) ⟦value-disagrees⟧40 L.",
}

const practiceFront = "tools: [socket-13, wrench-20-100, wrench-5-25, hoist, stand, angle-gauge]\nholds: [long-wait, bus-dead, pad]\nsupplies: [oil: 5 L]"

// The sentences are common practice, no source.
func TestPracticeIsNotFound(t *testing.T) {
	practice(t, "title: Shop\nalso: [es]\n", rightSentences, 40)
	practice(t, "title: Taller\nlanguage: es\n", rightInSpanish, 20)
}

func TestWrongNumbersAreFound(t *testing.T) {
	practice(t, "title: Shop\nalso: [es]\n", wrongSentences, 20)
	practice(t, "title: Taller\nlanguage: es\n", wrongInSpanish, 10)
}

func practice(t *testing.T, shop string, sentences []string, atLeast int) {
	t.Helper()
	if len(sentences) < atLeast {
		t.Fatalf("only %d sentences", len(sentences))
	}
	cases := map[string]files{}
	for i, s := range sentences {
		cases[fmt.Sprintf("%d %.40s", i+1, s)] = jobOf(practiceFront, s).with(files{"shop.yaml": shop})
	}
	expect(t, cases)
}
