package numbers

import (
	"fmt"
	"strings"
	"testing"
)

// manyTrades is a machine and holds of a brewery, a garage, a boiler room, a
// bakery, a machine shop and an electrician's bench, beside what the base has.
var manyTrades = files{
	"machines/tug.yaml": strings.NewReplacer(
		"energies:\n", `energies:
  mains: { name: mains, kind: electric, voltage: 400 V ac, points: [plug] }
  steam: { name: steam, kind: pressure, pressure: 6 to 8 bar, points: [plug] }
`,
		"fasteners:\n", `fasteners:
  wheel-nut: { name: wheel nut, across-flats: 19 mm, torque: 110 N·m }
  flange-bolt: { name: flange bolt, across-flats: 24 mm, torque: 180 to 200 N·m }
`,
		"fluids:\n", `fluids:
  coolant: { name: coolant, supply: glycol, capacity: 6 L }
`,
		"settings:\n", `settings:
  thermostat: { name: thermostat, value: 58 to 62 °C }
  trip: { name: speed trip, value: at most 2800 rpm }
  slack: { name: chain slack, value: at least 12 mm }
  needle: { name: needle valve, value: 1.5 turns }
  blow-off: { name: blow-off valve, value: 8.5 bar }
`,
	).Replace(base["machines/tug.yaml"]),
	"register/tools.yaml": base["register/tools.yaml"] + `
socket-19-24: { name: deep socket, kind: socket, fits: [19 mm, 24 mm] }
wrench-40-220: { name: long torque wrench, kind: torque-wrench, range: 40 to 220 N·m }
`,
	"register/supplies.yaml": base["register/supplies.yaml"] + "glycol: { name: coolant, unit: L }\nrope: { name: rope, unit: m }\n",
	"register/holds.yaml": base["register/holds.yaml"] + `
settle: { name: settling, kind: wait, for: 30 min }
purge: { name: purge of the burner, kind: wait, for: 90 s }
soak: { name: soak, kind: wait, for: 1.5 h }
proof: { name: proof of the dough, kind: wait, for: 2 to 4 h }
tread: { name: tread, kind: measure, what: depth, limit: at least 1.6 mm }
earth: { name: earth, kind: measure, what: resistance of the earth, limit: at most 0.5 Ω }
insulation: { name: insulation, kind: measure, what: insulation, limit: at least 1 MΩ }
noise: { name: noise, kind: measure, what: noise at the ear, limit: at most 85 dB }
boiler: { name: boiler, kind: measure, what: pressure of the heating, limit: 1.2 to 1.5 bar }
fridge: { name: cold room, kind: measure, what: temperature, limit: 2 to 8 °C }
outlet: { name: tap, kind: measure, what: temperature at the tap, limit: at least 60 °C }
bag: { name: bag, kind: measure, what: weight, limit: 495 to 505 g }
drift: { name: drift, kind: measure, what: drift in a day, limit: -3 to 3 s }
freezer: { name: freezer, kind: measure, what: temperature, limit: -20 to -16 °C }
lap: { name: coating, kind: wait, for: 20 min }
`,
}

const tradesFront = "tools: [socket-13, socket-19-24, wrench-20-100, wrench-40-220, hoist]\nholds: [settle, purge, soak, proof, tread, earth, insulation, noise, boiler, fridge, outlet, bag, drift, freezer, lap]\nsupplies: [glycol: 8 L, rope: 15 m]"

// rightInManyTrades were written from the format's text before the rule was
// asked. Common practice, no source.
var rightInManyTrades = map[string][]string{
	"en": {
		// What a good reading has, and what is turned away.
		"The [tread](hold:tread) has more than 1.6 mm.",
		"A tyre with less than 1.6 mm of tread comes off: measure it. [](hold:tread)",
		"Is the tread below 1.6 mm, fit another tyre. [](hold:tread)",
		"Measure the earth: below 0.5 Ω it is good. [](hold:earth)",
		"Measure the earth: above 0.5 Ω call the foreman. [](hold:earth)",
		"The earth must be under 0.5 Ω. [](hold:earth)",
		"The earth must not be over 0.5 Ω. [](hold:earth)",
		"If the earth must be more than 0.5 Ω for the bell to ring, call the foreman. [](hold:earth)",
		"Insulation has to be more than 1 MΩ. [](hold:insulation)",
		"Insulation must not be below 1 MΩ. [](hold:insulation)",
		"Insulation must never be less than 1 MΩ. [](hold:insulation)",
		"Reject it if the insulation is less than 1 MΩ. [](hold:insulation)",
		"What must not read less than 1 MΩ is the coil. [](hold:insulation)",
		"The noise stays under 85 dB; over 85 dB wear plugs. [](hold:noise)",
		"It must never read more than 85 dB. [](hold:noise)",
		"Fill the heating up to 1.5 bar. [](hold:boiler)",
		"Fill the heating to above 1.2 bar, but not over 1.5 bar. [](hold:boiler)",
		"Below 1.2 bar, top it up. [](hold:boiler)",
		"Let water out until it has less than 1.5 bar. [](hold:boiler)",
		"The cold room is at no more than 8 °C and no less than 2 °C. [](hold:fridge)",
		"Water of 60 °C or more comes out. [](hold:outlet)",
		"With less than 60 °C at the tap, look at the mixing valve. [](hold:outlet)",
		"The bags must weigh more than 495 g and less than 505 g. [](hold:bag)",
		"Bags of 495 g or less and 505 g or more go back. [](hold:bag)",
		"[The earth is less than 0.5 Ω](hold:earth).",
		"[Not more than 0.5 Ω](hold:earth) from the frame to the plug.",
		"[Look for a reading of more than 0.5 Ω](hold:earth), and mark where it is.",
		"You must wear plugs at more than 85 dB. [](hold:noise)",
		"A tyre with no more than 1.6 mm of tread comes off: measure it. [](hold:tread)",
		"Renew a tyre of at most 1.6 mm. [](hold:tread)",
		"The bag must stay on the scale, and more than 505 g are taken off. [](hold:bag)",
		"Set aside bags of less than 495 g. [](hold:bag)",
		"Top up bags under 495 g. [](hold:bag)",
		"Fill bags of less than 495 g up. [](hold:bag)",
		"The pressure falls to less than 1.2 bar over night: top it up. [](hold:boiler)",
		"Let water out to below 1.2 bar, then fill up to 1.5 bar. [](hold:boiler)",
		"The insulation must be 1 MΩ or more. [](hold:insulation)",
		"The insulation must not be 1 MΩ or less. [](hold:insulation)",
		"No bag must weigh more than 505 g. [](hold:bag)",
		// Waits.
		"Wait more than 30 min for the wort. [](hold:settle)",
		"Let it settle for over 30 min. [](hold:settle)",
		"Wait at least half an hour. [](hold:settle)",
		"Less than 30 min is not enough for the wort to settle. [](hold:settle)",
		"Do not open the tap in less than 30 min. [](hold:settle)",
		"Never wait less than 30 min. [](hold:settle)",
		"If you waited less than 30 min, wait again. [](hold:settle)",
		"[Wait half an hour](hold:settle), and look at the tap for less than a minute.",
		"[Purge the burner](hold:purge), and wait outside for less than a minute.",
		"[Wait 90 s](hold:purge) outside, in less than 3 min be back.",
		"Purge the burner for one and a half minutes. [](hold:purge)",
		"Purge it for a minute and a half. [](hold:purge)",
		"Purge it for ninety seconds. [](hold:purge)",
		"Let it prove for more than two and less than four hours. [](hold:proof)",
		"Let it prove no longer than four hours. [](hold:proof)",
		"Soak it for one and a half hours. [](hold:soak)",
		"Soak it for an hour and a half. [](hold:soak)",
		"Hold the lid for half a turn and wait. [](hold:settle)",
		// How wrong a clock goes, and what takes so long a day.
		"The drift is -3 to 3 s a day. [](hold:drift)",
		"Between -3 and 3 s a day the clock goes right. [](hold:drift)",
		"It may lose at most 3 s a day. [](hold:drift)",
		"Compare it after a day: it may go wrong by 3 s. [](hold:drift)",
		"After 24 h it shows -3 to 3 s. [](hold:drift)",
		"[Purge the burner](hold:purge), whose clock is slow by 2 min a day.",
		"The clock of the burner may be wrong by 5 s a day: purge it. [](hold:purge)",
		// Thirds.
		"Let it coat for a third of an hour. [](hold:lap)",
		"[Top it up](fill:coolant) with two thirds of a litre.",
		// Settings, torques, energies.
		"[Tighten the nuts](tighten:wheel-nut) one by one to 110 N·m.",
		"[Tighten the nuts](tighten:wheel-nut), each of four to 110 N·m.",
		"[Tighten the nuts](tighten:wheel-nut), all five to 110 N·m.",
		"[Tighten the nuts](tighten:wheel-nut), begin at one to 110 N·m.",
		"[Tighten the nuts](tighten:wheel-nut) two to 110 N·m, then the others.",
		"[Turn the needle back](reset:needle) half a turn at a time.",
		"[Set the blow-off valve back](reset:blow-off) to 8 bar.", // both ways of rounding are in use
		"[Set the blow-off valve back](reset:blow-off) to 9 bar.",
		"After two thousand hours [set the trip back](reset:trip) to 2800 rpm.",
		"[Set the trip back](reset:trip) to below 2800 rpm.",
		"[Set the trip back](reset:trip) if it comes at more than 2800 rpm.",
		"[Set the chain back](reset:slack) to more than 12 mm.",
		"[Set the chain back](reset:slack), for it has less than 12 mm.",
		"[Turn the needle back](reset:needle) to one and a half turns.",
		"[Set the thermostat back](reset:thermostat) to between fifty-eight and sixty-two °C.",
		"[Set the thermostat back](reset:thermostat) to 62 to 58 °C.",
		"[Set the blow-off valve back](reset:blow-off) to 8.5 bar.",
		"[Tighten](tighten:flange-bolt) to more than 180 N·m and less than 200 N·m.",
		"[Tighten](tighten:flange-bolt), from 200 down to 180 N·m.",
		"[Tighten the nuts](tighten:wheel-nut) to one hundred and ten N·m.",
		"[Tighten the nuts](tighten:wheel-nut) to 110 N·m, not over 110 N·m.",
		"[Tighten the nuts](tighten:wheel-nut) to 110 N·m with a bar under 600 mm.",
		"[Tighten the nuts](tighten:wheel-nut) to 110 N·m with a wrench for more than 200 N·m.",
		"The [steam](energy:steam) falls from 8 to 6 bar.",
		"The [steam](energy:steam) has between six and eight bar.",
		"The [steam](energy:steam) has six to eight bar.",
		"The [mains](energy:mains) have four hundred volts.",
		"Three hundred and sixty volts stand on the [battery](energy:traction).",
		"Keep your hands more than 500 mm from the fan of the [mains](energy:mains).",
		"Stand at least two and a half metres from the [steam](energy:steam).",
		"[Lift the seat out](remove:seat), 14 kg, with a sling for more than 100 kg.",
		"[Lift the seat out](remove:seat) with two hundred and fifty screws in the box.",
		// Amounts.
		"[Drain it](drain:coolant), then [fill in](fill:coolant) no more than 6 L.",
		"[Top it up](fill:coolant) with less than a litre.",
		"[Top it up](fill:coolant) with half a litre.",
		"[Top it up](fill:coolant) with up to 6 L.",
		"[Top it up](fill:coolant) with a litre and a half.",
		"Cut 14 m from the [rope](supply:rope), 300 mm off the end.",
		"Pour no more than half a litre of [coolant](supply:glycol) over it.",
		"Pour less than 8 L of [coolant](supply:glycol) into the trough.",
		"Pour one and a half litres of [coolant](supply:glycol) into the bucket for more than 10 L.",
	},
	"es": {
		"El [dibujo](hold:tread) tiene más de 1,6 mm.",
		"Atrasa como máximo 3 s al día. [](hold:drift)",
		"La cámara tiene de −20 a −16 °C. [](hold:freezer)",
		"Compare al cabo de un día: −3 a 3 s. [](hold:drift)",
		"[Purgue](hold:purge); el reloj atrasa 5 s al día.",
		"Deje secar un tercio de hora. [](hold:lap)",
		"[Rellene](fill:coolant) con dos tercios de litro.",
		"Con menos de 1,6 mm se cambia el neumático: mídalo. [](hold:tread)",
		"Por encima de 0,5 Ω, llame al encargado: mida la tierra. [](hold:earth)",
		"La tierra debe estar por debajo de 0,5 Ω. [](hold:earth)",
		"El aislamiento debe ser superior a 1 MΩ. [](hold:insulation)",
		"La tierra no debe ser superior a 0,5 Ω. [](hold:earth)",
		"Si es inferior a 1 MΩ, rechace la bobina. [](hold:insulation)",
		"El aislamiento nunca debe ser menos de 1 MΩ. [](hold:insulation)",
		"Llene hasta 1,5 bar. [](hold:boiler)",
		"Espere más de 30 minutos. [](hold:settle)",
		"Espere media hora. [](hold:settle)",
		"Menos de 30 minutos no bastan. [](hold:settle)",
		"Si esperó menos de 30 minutos, espere otra vez. [](hold:settle)",
		"Purgue un minuto y medio. [](hold:purge)",
		"[Purgue](hold:purge) y espere fuera menos de un minuto.",
		"Remoje una hora y media. [](hold:soak)",
		"Remoje hora y media. [](hold:soak)",
		"[Reponga el disparo](reset:trip) a menos de 2800 rpm.",
		"[Reponga el disparo](reset:trip) si salta a más de 2800 rpm.",
		"[Reponga la aguja](reset:needle) a una vuelta y media.",
		"[Reponga el termostato](reset:thermostat) entre cincuenta y ocho y sesenta y dos °C.",
		"El [vapor](energy:steam) baja de 8 a 6 bar.",
		"El [vapor](energy:steam) tiene entre seis y ocho bar.",
		"La [red](energy:mains) tiene cuatrocientos voltios.",
		"Trescientos sesenta voltios quedan en la [batería](energy:traction).",
		"[Apriete](tighten:wheel-nut) a ciento diez N·m.",
		"[Rellene](fill:coolant) con medio litro.",
		"[Apriete](tighten:wheel-nut) uno por uno a 110 N·m.",
		"[Apriete](tighten:wheel-nut) de dos en dos a 110 N·m.",
		"[Apriete](tighten:wheel-nut) una a una a 110 N·m.",
		"[Apriete](tighten:wheel-nut) dos a 110 N·m.",
		"Empiece con una a 110 N·m: [tuercas](fastener:wheel-nut).",
		"Debe llevar tapones a más de 85 dB. [](hold:noise)",
		"Aparte los sacos de menos de 495 g. [](hold:bag)",
		"[Rellene](fill:coolant) con menos de un litro.",
		"Vierta un litro y medio de [líquido](supply:glycol).",
		"[Vacíe](drain:coolant) y [llene](fill:coolant) con seis litros.",
	},
	"de": {
		"Das Profil hat mehr als 1,6 mm. [](hold:tread)",
		"Die Uhr geht höchstens 3 s am Tag falsch. [](hold:drift)",
		"Vergleichen Sie nach einem Tag: −3 bis 3 s. [](hold:drift)",
		"Die Truhe hat −20 bis −16 °C. [](hold:freezer)",
		"Die Truhe hat zwischen −20 und −16 °C. [](hold:freezer)",
		"[Spülen Sie](hold:purge); die Uhr geht 5 s am Tag nach.",
		"Lassen Sie es ein Drittel Stunden trocknen. [](hold:lap)",
		"[Füllen Sie](fill:coolant) zwei Drittel Liter nach.",
		"Unter 1,6 mm Profil kommt der Reifen ab: messen. [](hold:tread)",
		"Die Erdung muss unter 0,5 Ω liegen. [](hold:earth)",
		"Die Erdung darf nicht über 0,5 Ω liegen. [](hold:earth)",
		"Über 0,5 Ω rufen Sie den Meister: Erdung messen. [](hold:earth)",
		"Die Isolation muss über 1 MΩ liegen. [](hold:insulation)",
		"Die Isolation darf nicht unter 1 MΩ liegen. [](hold:insulation)",
		"Liegt die Isolation unter 1 MΩ, ist die Spule hin. [](hold:insulation)",
		"Füllen Sie die Heizung bis zu 1,5 bar. [](hold:boiler)",
		"Warten Sie mehr als 30 Minuten. [](hold:settle)",
		"Warten Sie länger als 30 Minuten. [](hold:settle)",
		"Warten Sie eine halbe Stunde. [](hold:settle)",
		"Weniger als 30 Minuten reichen nicht. [](hold:settle)",
		"Warten Sie nie weniger als 30 Minuten. [](hold:settle)",
		"Spülen Sie anderthalb Minuten. [](hold:purge)",
		"Spülen Sie eineinhalb Minuten. [](hold:purge)",
		"[Spülen Sie](hold:purge) und warten Sie weniger als eine Minute draußen.",
		"Weichen Sie es eineinhalb Stunden ein. [](hold:soak)",
		"[Stellen Sie den Auslöser zurück](reset:trip), auf unter 2800 rpm.",
		"[Stellen Sie den Auslöser zurück](reset:trip), wenn er bei mehr als 2800 rpm kommt.",
		"[Stellen Sie die Nadel zurück](reset:needle), auf eineinhalb Umdrehungen.",
		"[Stellen Sie zurück](reset:thermostat), auf zwischen achtundfünfzig und zweiundsechzig °C.",
		"Der [Dampf](energy:steam) fällt von 8 auf 6 bar.",
		"Der [Dampf](energy:steam) hat zwischen sechs und acht bar.",
		"Das [Netz](energy:mains) hat vierhundert Volt.",
		"Dreihundertsechzig Volt stehen an der [Batterie](energy:traction).",
		"[Ziehen Sie](tighten:wheel-nut) mit einhundertzehn N·m an.",
		"[Ziehen Sie](tighten:wheel-nut) mit hundertzehn N·m an.",
		"[Füllen Sie](fill:coolant) einen halben Liter nach.",
		"Bei mehr als 85 dB muss man Stöpsel tragen. [](hold:noise)",
		"Man muss über 85 dB Stöpsel tragen. [](hold:noise)",
		"Man muss bei über 85 dB Stöpsel tragen. [](hold:noise)",
		"Säcke unter 495 g füllen Sie nach. [](hold:bag)",
		"Gehen Sie von einer auf 110 N·m: [Muttern](fastener:wheel-nut).",
		"[Ziehen Sie](tighten:wheel-nut) alle fünf bis 110 N·m an.",
		"Gießen Sie anderthalb Liter [Kühlmittel](supply:glycol) darüber.",
	},
}

// wrongInManyTrades were written with them.
var wrongInManyTrades = map[string][]string{
	"en": {
		"The drift is ⟦value-disagrees⟧-5 to 3 s a day. [](hold:drift)",
		"The drift is at most ⟦value-disagrees⟧5 s a day. [](hold:drift)",
		"The drift is at most ⟦value-disagrees⟧3 min a day. [](hold:drift)",
		"Let it coat for a ⟦value-disagrees⟧third of an hour. [](hold:settle)",
		"[Turn the needle back](reset:needle) to ⟦value-disagrees⟧two and a third turns.",
		"The earth must be more than ⟦value-disagrees⟧0.5 Ω. [](hold:earth)",
		"The earth must be above ⟦value-disagrees⟧0.5 Ω. [](hold:earth)",
		"⟦value-disagrees⟧[The earth must be more than 0.5 Ω](hold:earth).",
		"Insulation must be less than ⟦value-disagrees⟧1 MΩ. [](hold:insulation)",
		"Insulation has to be under ⟦value-disagrees⟧1 MΩ. [](hold:insulation)",
		"Insulation must be no more than ⟦value-disagrees⟧1 MΩ. [](hold:insulation)",
		"The tread must not be over ⟦value-disagrees⟧1.6 mm. [](hold:tread)",
		"The earth must be ⟦value-disagrees⟧0.5 Ω or more. [](hold:earth)",
		"The insulation must not be ⟦value-disagrees⟧1 MΩ or more. [](hold:insulation)",
		"The noise must not be below ⟦value-disagrees⟧85 dB. [](hold:noise)",
		"Fill the heating to more than ⟦value-disagrees⟧1.5 bar. [](hold:boiler)",
		"Fill the heating to above ⟦value-disagrees⟧1.5 bar. [](hold:boiler)",
		"Fill the heating to less than ⟦value-disagrees⟧1.2 bar. [](hold:boiler)",
		"The cold room must be above ⟦value-disagrees⟧8 °C. [](hold:fridge)",
		"The cold room must be below ⟦value-disagrees⟧2 °C. [](hold:fridge)",
		"The bags must weigh more than ⟦value-disagrees⟧505 g. [](hold:bag)",
		"The tap must have less than ⟦value-disagrees⟧6 °C. [](hold:outlet)",
		"Wait less than ⟦value-disagrees⟧30 min. [](hold:settle)",
		"Wait under ⟦value-disagrees⟧30 min. [](hold:settle)",
		"Wait not over ⟦value-disagrees⟧30 min. [](hold:settle)",
		"Let it settle for less than ⟦value-disagrees⟧30 min. [](hold:settle)",
		"⟦value-disagrees⟧[Wait less than 30 min](hold:settle).",
		"Wait for no more than ⟦value-disagrees⟧half an hour. [](hold:settle)",
		"Wait ⟦value-disagrees⟧half an hour for the burner. [](hold:purge)",
		"Purge it for ⟦value-disagrees⟧two and a half minutes. [](hold:purge)",
		"Purge it for ⟦value-disagrees⟧half a minute. [](hold:purge)",
		"⟦value-disagrees⟧[Wait half a minute](hold:purge).",
		"Let it prove for more than ⟦value-disagrees⟧4 h. [](hold:proof)",
		"Let it prove for less than ⟦value-disagrees⟧two hours. [](hold:proof)",
		"[Set the trip back](reset:trip) to more than ⟦value-disagrees⟧2800 rpm.",
		"[Set the trip back](reset:trip) to above ⟦value-disagrees⟧2800 rpm.",
		"[Set the chain back](reset:slack) to less than ⟦value-disagrees⟧12 mm.",
		"⟦value-disagrees⟧[Set the chain back to under 12 mm](reset:slack).",
		"[Turn the needle back](reset:needle) to ⟦value-disagrees⟧two and a half turns.",
		"[Turn the needle back](reset:needle) to ⟦value-disagrees⟧half a turn.",
		"[Set the thermostat back](reset:thermostat) to between ⟦value-disagrees⟧forty-eight and sixty-two °C.",
		"[Set the thermostat back](reset:thermostat) to between fifty-eight and ⟦value-disagrees⟧seventy-two °C.",
		"[Set the thermostat back](reset:thermostat) to ⟦value-disagrees⟧82 to 58 °C.",
		"[Set the blow-off valve back](reset:blow-off) to ⟦value-disagrees⟧7 bar.",
		"[Set the blow-off valve back](reset:blow-off) to ⟦value-disagrees⟧10 bar.",
		"[Tighten](tighten:flange-bolt) to less than ⟦value-disagrees⟧180 N·m.",
		"[Tighten](tighten:flange-bolt) to more than ⟦value-disagrees⟧200 N·m.",
		"[Tighten](tighten:flange-bolt), from ⟦value-disagrees⟧220 down to 180 N·m.",
		"The [steam](energy:steam) falls from ⟦value-disagrees⟧nine to six bar.",
		"[Tighten](tighten:flange-bolt) to 200 to ⟦value-disagrees⟧80 N·m.",
		"[Tighten the nuts](tighten:wheel-nut) to ⟦value-disagrees⟧one hundred and twenty N·m.",
		"[Tighten the nuts](tighten:wheel-nut) to ⟦value-disagrees⟧two hundred N·m.",
		"The [steam](energy:steam) has 8 to ⟦value-disagrees⟧5 bar.",
		"The [steam](energy:steam) has between ⟦value-disagrees⟧five and eight bar.",
		"The [steam](energy:steam) has ⟦value-disagrees⟧five to eight bar.",
		"The [mains](energy:mains) have ⟦value-disagrees⟧two hundred volts.",
		"⟦value-disagrees⟧Two hundred and thirty volts stand on the [battery](energy:traction).",
		"[Drain it](drain:coolant)! Then [fill in](fill:coolant) ⟦value-disagrees⟧half a litre.",
		"[Top it up](fill:coolant) with more than ⟦value-disagrees⟧6 L.",
		"Cut ⟦value-disagrees⟧41 m from the [rope](supply:rope).",
		"Cut ⟦value-disagrees⟧41 m off the [rope](supply:rope).",
		"Pour more than ⟦value-disagrees⟧8 L of [coolant](supply:glycol) into the trough.",
		"Pour over ⟦value-disagrees⟧8 L of [coolant](supply:glycol) into the trough.",
		"Pour ⟦value-disagrees⟧ten and a half litres of [coolant](supply:glycol) into the trough.",
		"Pour ⟦value-disagrees⟧one hundred litres of [coolant](supply:glycol) into the trough.",
	},
	"es": {
		"La cámara tiene de ⟦value-disagrees⟧−25 a −16 °C. [](hold:freezer)",
		"Atrasa de ⟦value-disagrees⟧−5 a 3 s al día. [](hold:drift)",
		"Deje secar un ⟦value-disagrees⟧tercio de hora. [](hold:settle)",
		"La tierra debe ser más de ⟦value-disagrees⟧0,5 Ω. [](hold:earth)",
		"El aislamiento debe ser inferior a ⟦value-disagrees⟧1 MΩ. [](hold:insulation)",
		"El aislamiento debe estar por debajo de ⟦value-disagrees⟧1 MΩ. [](hold:insulation)",
		"Espere menos de ⟦value-disagrees⟧30 minutos. [](hold:settle)",
		"Espere ⟦value-disagrees⟧media hora. [](hold:purge)",
		"Purgue ⟦value-disagrees⟧dos minutos y medio. [](hold:purge)",
		"[Reponga el disparo](reset:trip) a más de ⟦value-disagrees⟧2800 rpm.",
		"[Reponga el termostato](reset:thermostat) entre ⟦value-disagrees⟧cuarenta y ocho y sesenta y dos °C.",
		"El [vapor](energy:steam) tiene entre ⟦value-disagrees⟧cinco y ocho bar.",
		"El [vapor](energy:steam) baja de 8 a ⟦value-disagrees⟧5 bar.",
		"La [red](energy:mains) tiene ⟦value-disagrees⟧doscientos voltios.",
		"⟦value-disagrees⟧Doscientos treinta voltios quedan en la [batería](energy:traction).",
		"[Apriete](tighten:wheel-nut) a ⟦value-disagrees⟧ciento veinte N·m.",
		"Vierta más de ⟦value-disagrees⟧8 L de [líquido](supply:glycol).",
		"[Vacíe](drain:coolant). [Llene](fill:coolant) ⟦value-disagrees⟧medio litro.",
	},
	"de": {
		"Schneiden Sie ⟦value-disagrees⟧41 m vom [Seil](supply:rope) ab.",
		"Die Truhe hat ⟦value-disagrees⟧−25 bis −16 °C. [](hold:freezer)",
		"Vergleichen Sie nach einem Tag: ⟦value-disagrees⟧−5 bis 3 s. [](hold:drift)",
		"Lassen Sie es ein ⟦value-disagrees⟧Drittel Stunden trocknen. [](hold:settle)",
		"Die Erdung muss über ⟦value-disagrees⟧0,5 Ω liegen. [](hold:earth)",
		"Die Isolation muss unter ⟦value-disagrees⟧1 MΩ liegen. [](hold:insulation)",
		"Die Isolation muss weniger als ⟦value-disagrees⟧1 MΩ haben. [](hold:insulation)",
		"Warten Sie weniger als ⟦value-disagrees⟧30 Minuten. [](hold:settle)",
		"Warten Sie eine ⟦value-disagrees⟧halbe Stunde. [](hold:purge)",
		"Spülen Sie ⟦value-disagrees⟧zweieinhalb Minuten. [](hold:purge)",
		"[Stellen Sie den Auslöser zurück](reset:trip), auf über ⟦value-disagrees⟧2800 rpm.",
		"[Stellen Sie zurück](reset:thermostat), auf zwischen ⟦value-disagrees⟧achtundvierzig und zweiundsechzig °C.",
		"Der [Dampf](energy:steam) hat zwischen ⟦value-disagrees⟧fünf und acht bar.",
		"Der [Dampf](energy:steam) fällt von ⟦value-disagrees⟧9 auf 6 bar.",
		"Der [Dampf](energy:steam) hat 8 bis ⟦value-disagrees⟧5 bar.",
		"Das [Netz](energy:mains) hat ⟦value-disagrees⟧zweihundert Volt.",
		"⟦value-disagrees⟧Zweihundertdreißig Volt stehen an der [Batterie](energy:traction).",
		"[Ziehen Sie](tighten:wheel-nut) mit ⟦value-disagrees⟧hundertzwanzig N·m an.",
		"Gießen Sie mehr als ⟦value-disagrees⟧8 L [Kühlmittel](supply:glycol) darüber.",
		"[Lassen Sie es ab](drain:coolant). [Füllen Sie](fill:coolant) einen ⟦value-disagrees⟧halben Liter ein.",
	},
}

// What a message quotes of the sentence.
func TestWhatIsSaidOfABound(t *testing.T) {
	for step, message := range map[string]string{
		"The tread must not be over 1.6 mm. [](hold:tread)":         "the sentence says not be over 1.6 mm, and the register says at least 1.6 mm for the tread",
		"It must never still read less than 85 dB. [](hold:noise)":  "the sentence says never still read less than 85 dB, and the register says at most 85 dB for the noise",
		"Wait less than half an hour. [](hold:settle)":              "the sentence says less than half an hour, and the register says at least 30 min for the settling",
		"The earth must be 0.5 Ω or more. [](hold:earth)":           "the sentence says 0.5 Ω or more, and the register says at most 0.5 Ω for the earth",
		"The earth must be ≥ 0.5 Ω. [](hold:earth)":                 "the sentence says ≥ 0.5 Ω, and the register says at most 0.5 Ω for the earth",
		"Pour more than 8 L of [coolant](supply:glycol) into it.":   "the sentence says more than 8 L, and the list of supplies says at most 8 L for the coolant",
		"[Wait less than 30 min](hold:settle).":                     "the words say less than 30 min, and the register says at least 30 min",
		"Wait for an hour and a half. [](hold:settle)":              "the sentence says an hour and a half, and the register says 30 min for the settling",
		"[Tighten](tighten:flange-bolt), from 220 down to 180 N·m.": "the sentence says 220 N·m, and the machine's file says 180 to 200 N·m for the flange bolt",
		"The [steam](energy:steam) has between five and eight bar.": "the sentence says five bar, and the machine's file says 6 to 8 bar for the steam",
	} {
		found := look(t, base.with(manyTrades).with(jobOf(tradesFront, step)))
		if len(found) != 1 || found[0].Message != message {
			t.Errorf("%s: %v, want %s", step, found, message)
		}
	}
}

// What makes a bound of a comparison, in each language.
func TestComparedIsBounded(t *testing.T) {
	for _, c := range []struct{ tag, text, want string }{
		{"en", "It must be more than 2 L.", "[more than 2 L]"},
		{"en", "It must not be more than 2 L.", "[not be more than 2 L]"},
		{"en", "No drum must never be more than 2 L.", "[]"},
		{"en", "It must always be under 2 L.", "[under 2 L]"},
		{"en", "It must under 2 L.", "[]"},
		{"en", "It must be at more than 2 L.", "[]"},
		{"en", "It is more than 2 L.", "[]"},
		{"en", "If it must be more than 2 L, stop.", "[]"},
		{"en", "Fill it to less than 2 L.", "[less than 2 L]"},
		{"en", "Then fill to more than 2 L.", "[more than 2 L]"},
		{"en", "Do not fill it to more than 2 L.", "[]"},
		{"en", "Never pour more than 2 L.", "[]"},
		{"en", "Fill with less than 2 L.", "[]"},
		{"en", "Fill for less than 2 L.", "[]"},
		{"en", "Wait for less than 2 L.", "[]"},
		{"en", "Wait for less than 2 min.", "[less than 2 min]"},
		{"en", "Wait to less than 2 min.", "[]"},
		{"en", "Fill for less than 2 min.", "[]"},
		{"en", "Wait 2 min, or pour up to 2 L.", "[]"},
		{"en", "Pour up to 2 L.", "[up to 2 L]"},
		{"en", "It has 2 L or less.", "[2 L or less]"},
		{"es", "Debe ser inferior a 2 L.", "[inferior a 2 L]"},
		{"es", "No debe ser superior a 2 L.", "[no debe ser superior a 2 L]"},
		{"es", "Tiene que tener más de 2 L.", "[más de 2 L]"},
		{"es", "Llene a más de 2 L.", "[más de 2 L]"},
		{"es", "Espere hasta 2 minutos.", "[hasta 2 min]"},
		{"es", "Llene hasta que marque más de 2 L.", "[]"},
		{"de", "Es muss über 2 L haben.", "[über 2 L]"},
		{"de", "Man muss über 2 L tragen.", "[]"},
		{"de", "Es muss 2 L oder weniger sein.", "[2 L oder weniger]"},
		{"de", "Warten Sie bis zu 2 Minuten.", "[bis zu 2 min]"},
		{"de", "Warten Sie bis weniger als 2 Minuten bleiben.", "[]"},
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

// Amounts of one and a half, with and without a number, from memory.
//
// Known: FROM MEMORY.
func TestAmountsWrittenOut(t *testing.T) {
	for _, c := range []struct{ tag, text, want string }{
		{"en", "an hour and a half", "[an hour and a half=1.5 h]"},
		{"en", "soak an hour and a half or a minute and a half", "[an hour and a half=1.5 h a minute and a half=1.5 min]"},
		{"en", "two hours and a half, half an hour", "[two hours and a half=2.5 h half an hour=0.5 h]"},
		{"en", "2 hours and a half", "[]"},
		{"en", "a lid and a half", "[]"},
		{"en", "a lid and a half, an hour and a half", "[an hour and a half=1.5 h]"},
		{"en", "three hundred lids, two litres", "[two litres=2 L]"},
		{"es", "hora y media", "[hora y media=1.5 h]"},
		{"es", "litro y medio, dos minutos y medio", "[litro y medio=1.5 L dos minutos y medio=2.5 min]"},
		{"de", "eine halbe Stunde, zweihundert Volt", "[halbe Stunde=0.5 h zweihundert Volt=200 V]"},
		{"xx", "two litres", "[]"},
	} {
		var got []string
		for _, f := range Spelled(c.text, c.tag) {
			got = append(got, c.text[f.Start:f.End]+"="+f.Quantity.String())
		}
		if said := fmt.Sprint(got); said != c.want {
			t.Errorf("%s: %q: %s, want %s", c.tag, c.text, said, c.want)
		}
	}
}

func manyFitters(t *testing.T, shop files, front string, said map[string][]string) {
	t.Helper()
	cases := map[string]files{}
	for language, sentences := range said {
		for i, s := range sentences {
			cases[fmt.Sprintf("%s %d %.50s", language, i+1, s)] = shop.with(jobOf(front, s)).with(files{"shop.yaml": "title: Shop\nlanguage: " + language + "\n"})
		}
	}
	expect(t, cases)
}

func TestRightByAFitterOfManyTrades(t *testing.T) {
	manyFitters(t, manyTrades, tradesFront, rightInManyTrades)
}

func TestWrongByAFitterOfManyTrades(t *testing.T) {
	manyFitters(t, manyTrades, tradesFront, wrongInManyTrades)
}
