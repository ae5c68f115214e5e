package numbers

import (
	"fmt"
	"testing"
)

// shopOf is a small manual of one trade: its registers, its machine, and a procedure
// of which the middle step is a row.
type shopOf struct {
	language string
	files    files
	front    string
	around   [2]string // the steps before and behind
	right    []string
	wrong    []string
}

// The trades and their numbers are invented. The sentences were written before the
// rules were asked, as a fitter says them; common practice, no source.
var shops = map[string]shopOf{
	"refrigeration": {
		language: "en",
		files: files{
			"machines/tug.yaml": `
name: Cold room plant
points: { isolator: { name: isolator } }
energies:
  power: { name: compressor supply, kind: electric, voltage: 400 V ac, points: [isolator] }
  charge: { name: refrigerant, kind: pressure, pressure: 12 to 16 bar, points: [isolator] }
parts:
  valve-plate: { name: valve plate, mass: 6 kg, held-by: { plate-bolt: 6 } }
  drier: { name: filter drier, held-by: { flare-nut: 2 } }
fasteners:
  plate-bolt: { name: plate bolt, thread: M8x1.25, class: 8.8, across-flats: 13 mm, torque: 24 N·m }
  flare-nut: { name: flare nut, across-flats: 22 mm, torque: 40 to 45 N·m }
fluids:
  sump-oil: { name: compressor oil, supply: pag-oil, capacity: 1.5 L }
settings:
  superheat: { name: expansion valve, value: 5 to 7 K }
  cut-out: { name: high-pressure cut-out, value: at most 18 bar }
  stem: { name: valve stem, value: 3/4 turns }
`,
			"register/tools.yaml": `
socket-13: { name: 13 mm socket, kind: socket, fits: [13 mm] }
spanner-22: { name: 22 mm spanner, kind: spanner, fits: [22 mm] }
wrench: { name: torque wrench, kind: torque-wrench, range: 10 to 50 N·m }
gauge: { name: vacuum gauge, kind: tester }
`,
			"register/holds.yaml": `
vacuum: { name: vacuum, kind: measure, what: pressure, limit: at most 5 mbar, with: gauge }
standing: { name: standing test, kind: wait, for: 30 min }
room: { name: room, kind: measure, what: temperature, limit: 2 to 4 °C }
tightness: { name: pressure test, kind: measure, what: nitrogen pressure, limit: 10.0 ± 0.2 bar }
`,
			"register/supplies.yaml": "pag-oil: { name: compressor oil, unit: L }\nnitrogen: { name: nitrogen, unit: each }\n",
		},
		front:  "tools: [socket-13, spanner-22, wrench, gauge]\nholds: [vacuum, standing, room, tightness]\nsupplies: [pag-oil: 2 L, nitrogen: 1]",
		around: [2]string{"[Lift the valve plate off](remove:valve-plate), 6 kg, with the [](tool:socket-13).", "[Tighten the flare nuts](tighten:flare-nut) to between 40 and 45 N·m with the [](tool:wrench)."},
		right: []string{
			"Pull it down to below 5 mbar and [read the gauge](hold:vacuum).",
			"Keep the pump on until it shows less than 5 mbar. [](hold:vacuum)",
			"Let it stand half an hour with the pump valved off. [](hold:standing)",
			"Do not let the room get over 4 °C while the doors are open. [](hold:room)",
			"Hold the room between two and four °C. [](hold:room)",
			"Open the bottles one by one to ten bar. [](hold:tightness)",
			"Bring the nitrogen up to 10 bar in three steps, five minutes apart. [](hold:tightness)",
			"[Open the stem back](reset:stem) three quarters of a turn, not a full turn.",
			"[Set the superheat back](reset:superheat) to 5 K, a quarter turn at a time.",
			"[Set the cut-out back](reset:cut-out) so that it trips below 18 bar.",
			"[Top the oil up](fill:sump-oil) with a quarter of a litre, and look at the glass after ten minutes.",
			"Weigh the bottle before and after; a full one has 27 kg gross. [](hold:vacuum)",
			"Valve the pump off; if it climbs from 5 mbar to more than 10 mbar in the first ten minutes, there is water in it. [](hold:standing)",
			"Clamp the 0-20 A meter on L1: 6 A is usual with the [compressor](energy:power) warm.",
			"The suction line frosts back 200 mm from the drier; warm it for a minute or two, and [take the drier out](remove:drier).",
			"[Undo the two flare nuts](loosen:flare-nut) with the 22 mm [spanner](tool:spanner-22) and hold against with the 24 mm one.",
			"[Take the drier out](remove:drier) (1/2 in flare, 305 type), and cap both ends within 2 min.",
			"[Tighten the flare nuts](tighten:flare-nut) to 40 N·m, then look for bubbles for 30 s at each.",
			"Leave 2 mm between the [stem](setting:stem) and the cap.",
			"[Set the superheat back](reset:superheat), a half turn clockwise gives about 1 K more.",
			"Room at 3 °C or colder for two hours before the goods go in? Measure it. [](hold:room)",
			"A 25 mm sight glass shows half the oil; [top it up](fill:sump-oil) to 3/4 of the glass.",
			"[Fill in](fill:sump-oil) up to 1.5 L, 250 mL at a time.",
			"Two people lift the [valve plate](part:valve-plate): 6 kg, and hot up to 90 °C.",
			"Wait until the crankcase heater has been on for 12 h. Then [start it](restore:power).",
			"Close it by half a turn, wait ten minutes, close it by the other half. [](hold:room)",
			"Never run the [compressor](energy:power) for more than 3 min with the valve shut.",
			"Keep it no warmer than 4 °C. [](hold:room)",
			"Make sure that the room stays below 4 °C. [](hold:room)",
			"Make sure the room in the cellar is above 2 °C. [](hold:room)",
			"Check that no gauge shows more than 5 mbar. [](hold:vacuum)",
			"Check that it does not rise above 5 mbar. [](hold:vacuum)",
			"Check whether it shows more than 5 mbar. [](hold:vacuum)",
			"Make sure that the doors close before the room is above 4 °C. [](hold:room)",
			"See that what is above 4 °C goes back to the dock. [](hold:room)",
			"Make sure of the fuse, above 4 °C it trips. [](hold:room)",
			"The gauge has to be under 5 mbar. [](hold:vacuum)",
			"[Set the cut-out back](reset:cut-out), above 18 bar it trips.",
			"[Set the cut-out back](reset:cut-out) below 18 bar.",
			"Keep the bottle upright and the hose above 10 bar away from your face. [](hold:tightness)",
			"Hold the lamp at the joint for 30 s, above 5 mbar you hear it hiss. [](hold:vacuum)",
			"Keep the gauge in sight: more than 5 mbar is a leak. [](hold:vacuum)",
			"Keep the old oil, less than 1.5 L, for the lab: [drain it](drain:sump-oil).",
			"Hold the valve open until the gauge is below 5 mbar. [](hold:vacuum)",
			"Hold it there if it is over 5 mbar. [](hold:vacuum)",
			"Keep pumping while it shows more than 5 mbar. [](hold:vacuum)",
			"Keep pumping as long as it is above 5 mbar. [](hold:vacuum)",
			"Keep the valve open above 5 mbar. [](hold:vacuum)",
			"Keep pumping above 5 mbar. [](hold:vacuum)",
			"Keep a fire watch for 30 min after brazing. [](hold:standing)",
			"Check that the heater comes on below 2 °C. [](hold:room)",
			"Check that the fan stops when the room is below 2 °C. [](hold:room)",
			"Make sure that nobody is in the room, which is under 4 °C. [](hold:room)",
			"Make sure the alarm sounds above 4 °C. [](hold:room)",
			"Make sure the cut-out trips below 18 bar, and [set it back](reset:cut-out).",
			"Check that the door heater has 24 V, and that the room is at 2 to 4 °C. [](hold:room)",
			"Let it stand and look at the gauge in less than 30 min. [](hold:standing)",
			"Let nobody in for less than 30 min. [](hold:standing)",
			"Run the pump, and not for less than 30 min. [](hold:standing)",
			"Wait for the room, at most 4 °C, to settle. [](hold:room)",
			"Maintain pressure at 10 bar for the 30 min of the test. [](hold:tightness) [](hold:standing)",
			"Never let the nitrogen run above 10.2 bar. [](hold:tightness)",
			"Never let the bottle fall. At over 10.2 bar the valve lifts. [](hold:tightness)",
			"Don't let the room get below 2 °C or above 4 °C. [](hold:room)",
			"Bring the room down to below 4 °C. [](hold:room)",
			"Bring goods of more than 4 °C back to the dock. [](hold:room)",
			"Lower the probe to more than 1.5 m. [](hold:room)",
			"Raise the room to above 2 °C. [](hold:room)",
			"A third of the oil, half a litre, stays in; [top up](fill:sump-oil) a litre.",
			"[Drain the oil](drain:sump-oil) with three quarters of a litre at a time.",
			"Look at the glass. [A quarter of an hour](time:15min)",
			"Look at the glass. [Within ten minutes](within:10min)",
			"Undo the six [plate bolts](fastener:plate-bolt) and [lift the plate off](remove:valve-plate).",
			"[Lift the plate off](remove:valve-plate) and undo [both flare nuts](fastener:flare-nut) of the [drier](remove:drier).",
			"[Wait half an hour](hold:standing), or three quarters of an hour if it is cold.",
			"[Room at 4 °C or above](hold:room): what is out of the limit.",
			"[Room at 4 °C or below](hold:room).",
			"[Gauge below 5 mbar](hold:vacuum), [if it is above 5 mbar](if-not:vacuum), look for the leak.",
		},
		wrong: []string{
			"Pull it down until it is under ⟦value-disagrees⟧50 mbar. [](hold:vacuum)",
			"Keep the system above ⟦value-disagrees⟧5 mbar. [](hold:vacuum)",
			"Let it stand a ⟦value-disagrees⟧quarter of an hour. [](hold:standing)",
			"Do not let the room fall below ⟦value-disagrees⟧4 °C. [](hold:room)",
			"Hold the room between two and ⟦value-disagrees⟧six °C. [](hold:room)",
			"Bring the nitrogen up to ⟦value-disagrees⟧16 bar. [](hold:tightness)",
			"[Open the stem back](reset:stem) ⟦value-disagrees⟧1/2 turn.",
			"[Set the superheat back](reset:superheat) to ⟦value-disagrees⟧nine K.",
			"[Set the cut-out back](reset:cut-out) to no less than ⟦value-disagrees⟧18 bar.",
			"[Drain the oil](drain:sump-oil). [Fill in](fill:sump-oil) ⟦value-disagrees⟧three quarters of a litre.",
			"Keep it no warmer than ⟦value-disagrees⟧2 °C. [](hold:room)",
			"Hold the room at ⟦value-disagrees⟧4 °C or above. [](hold:room)",
			"Make sure that the room stays above ⟦value-disagrees⟧4 °C. [](hold:room)",
			"See that the vacuum is at least ⟦value-disagrees⟧5 mbar. [](hold:vacuum)",
			"Check that the gauge shows more than ⟦value-disagrees⟧5 mbar. [](hold:vacuum)",
			"The vacuum should stay above ⟦value-disagrees⟧5 mbar. [](hold:vacuum)",
			"The gauge has to be over ⟦value-disagrees⟧5 mbar. [](hold:vacuum)",
			"Let it stand for a ⟦value-disagrees⟧quarter to half an hour. [](hold:standing)",
			"Let it stand for ⟦value-disagrees⟧one and a quarter hours. [](hold:standing)",
			"[Open the stem back](reset:stem) ⟦value-disagrees⟧one and three quarters turns.",
			"[Open the stem back](reset:stem) by a ⟦value-disagrees⟧half turn.",
			"Pump until it reads ⟦value-disagrees⟧50 mbar or less. [](hold:vacuum)",
			"Bring the nitrogen to ⟦value-disagrees⟧nine and a half bar. [](hold:tightness)",
			"[Tighten the flare nuts](tighten:flare-nut) to at least ⟦value-disagrees⟧45 N·m.",
			"[Tighten the flare nuts](tighten:flare-nut), forty to ⟦value-disagrees⟧fifty N·m.",
			"Look at the glass. ⟦value-disagrees⟧[Half an hour](time:20min)",
			"Look at the glass. ⟦value-disagrees⟧[Within five minutes](within:10min)",
			"Undo the 8 ⟦count-disagrees⟧[plate bolts](fastener:plate-bolt) and [lift the plate off](remove:valve-plate).",
			"⟦value-disagrees⟧[Wait three quarters of an hour](hold:standing).",
			"⟦value-disagrees⟧[Keep the room above 4 °C](hold:room).",
			"⟦value-disagrees⟧[Make sure the gauge is above 5 mbar](hold:vacuum).",
		},
	},
	"ship's winch": {
		language: "en",
		files: files{
			"machines/tug.yaml": `
name: Mooring winch
points: { breaker: { name: deck breaker } }
energies:
  power: { name: winch motor, kind: electric, voltage: 440 V ac, points: [breaker] }
  rope: { name: rope under load, kind: motion, points: [breaker] }
parts:
  brake-lining: { name: brake lining, mass: 11 kg, held-by: { lining-screw: 8 } }
  drum-cover: { name: drum cover, mass: 28 kg, held-by: { cover-bolt: 12 } }
fasteners:
  lining-screw: { name: lining screw, drive: hex 8 mm, torque: 30 N·m }
  cover-bolt: { name: cover bolt, across-flats: 24 mm, stages: [80 N·m, 150 N·m] }
  foundation-bolt: { name: foundation bolt, across-flats: 46 mm, torque: 900 to 1000 N·m }
fluids:
  gear-oil: { name: gear oil, supply: gear-oil-220, capacity: 12 L }
settings:
  slip: { name: slip clutch, value: 40 ± 2 kN }
  spring: { name: brake spring, value: 82 mm }
`,
			"register/tools.yaml": `
hex-8: { name: 8 mm hex key, kind: screwdriver, fits: [hex 8 mm] }
socket-24-46: { name: socket set, kind: socket, fits: [24 mm, 46 mm] }
wrench-100: { name: torque wrench, kind: torque-wrench, range: 30 to 150 N·m }
wrench-1200: { name: long torque wrench, kind: torque-wrench, range: 250 to 1200 N·m }
davit: { name: deck davit, kind: lifting, rated: 250 kg }
feeler: { name: feeler gauges, kind: tester }
`,
			"register/holds.yaml": `
lining: { name: lining, kind: measure, what: thickness of the lining, limit: at least 6 mm, with: feeler }
air-gap: { name: air gap, kind: measure, what: gap of the brake, limit: 0.6 to 0.9 mm, with: feeler }
cool: { name: cooling down, kind: wait, for: 45 min }
gland: { name: gland, kind: measure, what: temperature at the gland, limit: at most 65 °C }
proof: { name: holding test, kind: wait, for: 5 min }
`,
			"register/supplies.yaml": "gear-oil-220: { name: gear oil, unit: L }\n",
		},
		front:  "tools: [hex-8, socket-24-46, wrench-100, wrench-1200, davit, feeler]\nholds: [lining, air-gap, cool, gland, proof]\nsupplies: [gear-oil-220: 15 L]",
		around: [2]string{"[Hang the drum cover](remove:drum-cover), 28 kg, on the [](tool:davit); [undo its twelve bolts](loosen:cover-bolt) with the [](tool:socket-24-46).", "[Tighten the foundation bolts](tighten:foundation-bolt) crosswise with the [](tool:wrench-1200), 900 N·m first, then 1000 N·m."},
		right: []string{
			"Let the drum cool for three quarters of an hour. [](hold:cool)",
			"Let the drum cool for longer than 45 min in the summer. [](hold:cool)",
			"A lining that has worn to under 6 mm comes off; [measure it](hold:lining) at four places, 90° apart.",
			"Set the air gap to 0.6 mm all round, and [measure](hold:air-gap).",
			"Keep the gland below 65 °C; with over 65 °C slacken it a quarter turn. [](hold:gland)",
			"[Set the slip clutch back](reset:slip) to 40 kN, that is about 4 t on the scale.",
			"[Screw the spring back](reset:spring) to 82 mm; one turn is 1.5 mm.",
			"[Screw the spring back](reset:spring) to 82 mm, 1 1/2 turns from where it is loose.",
			"Hold the load on the brake for five minutes with nobody within 10 m of the rope. [](hold:proof)",
			"[Fill the gear](fill:gear-oil) with ten to twelve litres, two cans of 5 L first.",
			"[Fit the lining](refit:brake-lining) and [tighten its eight screws](tighten:lining-screw) to 30 N·m with a 200 mm extension.",
			"Pay out 20 m of rope; 3 turns stay on the drum. [Hang the drum cover](remove:drum-cover) on the [](tool:davit), 28 kg.",
			"[Fit the lining](refit:brake-lining) with the 45° end up; [torque the eight screws](tighten:lining-screw) to 30 N·m.",
			"[Torque the cover bolts](tighten:cover-bolt) to 80 N·m, and in a second round to 150 N·m, 30° at a time.",
			"Measure the lining with the 150 mm rule at the thinnest place: 6 mm or more is good. [](hold:lining)",
			"Set the air gap to between 0.6 and 0.9 mm with the 0.6 and the 0.9 mm feeler. [](hold:air-gap)",
			"Two thirds of a can are 3.3 L, so [fill](fill:gear-oil) no more than 12 L.",
			"Cool it for at least 45 min, in a swell for an hour. [](hold:cool)",
			"The gland drips once every 10 s at 65 °C or less. [](hold:gland)",
			"[Set the slip clutch back](reset:slip) to 40 kN ± 2 kN; the chart has it at 40 kN for the 28 mm rope.",
			"One turn of the nut makes 3 kN: [set the clutch back](reset:slip) to 40 kN.",
			"Mark the nut with 12 o'clock up, and [screw the spring back](reset:spring) to 82 mm.",
			"Hold it 5 min with 1.25 times the load, 50 kN, on the brake. [](hold:proof)",
			"The breaker [opens](isolate:power) 440 V; the 24 V lamps at the desk stay on.",
			"Wind will be below 8 m/s and the swell under 1 m, or the [test](hold:proof) waits.",
			"[Loosen the foundation bolts](loosen:foundation-bolt) with the [](tool:socket-24-46) and a 1.5 m bar.",
			"Six of the twelve [bolts](fastener:cover-bolt) of the [cover](remove:drum-cover) are 20 mm longer; hang it on the [](tool:davit).",
			"The lining may be no thinner than 6 mm. [](hold:lining)",
			"Grind the new lining down to more than 6 mm. [](hold:lining)",
			"Let the drum cool more than 45 min. [](hold:cool)",
			"Run the pump in less than 45 min and wait. [](hold:cool)",
			"[Tighten the foundation bolts](tighten:foundation-bolt) to over 900 N·m.",
		},
		wrong: []string{
			"Let the drum cool for no longer than ⟦value-disagrees⟧three quarters of an hour. [](hold:cool)",
			"Let the drum cool for ⟦value-disagrees⟧half an hour. [](hold:cool)",
			"Keep the lining under ⟦value-disagrees⟧6 mm. [](hold:lining)",
			"Set the air gap to ⟦value-disagrees⟧1.2 mm all round, and [measure](hold:air-gap).",
			"Keep the gland above ⟦value-disagrees⟧65 °C. [](hold:gland)",
			"[Set the slip clutch back](reset:slip) to ⟦value-disagrees⟧14 kN.",
			"One turn of the nut makes 3 kN: [set the clutch back](reset:slip) to ⟦value-disagrees⟧14 kN.",
			"The breaker [opens](isolate:power) ⟦value-disagrees⟧400 V; a turn of it makes nothing.",
			"[Set the slip clutch back](reset:slip), and a turn before that to ⟦value-disagrees⟧14 kN.",
			"[Screw the spring back](reset:spring) to ⟦value-disagrees⟧28 mm.",
			"[Screw the spring back](reset:spring); 82 mm are ⟦value-disagrees⟧2 in.",
			"Hold the load on the brake for ⟦value-disagrees⟧fifteen minutes. [](hold:proof)",
			"[Fill the gear](fill:gear-oil) with twelve to ⟦value-disagrees⟧fifteen litres.",
			"[Fit the lining](refit:brake-lining) and [tighten its eight screws](tighten:lining-screw) to ⟦value-disagrees⟧130 N·m.",
			"Don't go on until the drum has cooled for ⟦value-disagrees⟧15 min. [](hold:cool)",
			"Keep the load on for no more than ⟦value-disagrees⟧five minutes. [](hold:proof)",
			"The lining may be no thicker than ⟦value-disagrees⟧6 mm. [](hold:lining)",
			"Grind the lining down to less than ⟦value-disagrees⟧6 mm. [](hold:lining)",
			"The gland may reach ⟦value-disagrees⟧85 °C. [](hold:gland)",
			"The gland must reach at least ⟦value-disagrees⟧65 °C. [](hold:gland)",
			"[Fill the gear](fill:gear-oil) with ⟦value-disagrees⟧twelve and a half litres.",
			"[Screw the spring back](reset:spring) to ⟦value-disagrees⟧eighty-eight millimetres.",
			"[Tighten the foundation bolts](tighten:foundation-bolt) to over ⟦value-disagrees⟧1000 N·m.",
			"[Tighten the foundation bolts](tighten:foundation-bolt) until the wrench clicks at ⟦value-disagrees⟧1100 N·m.",
		},
	},
	"bakery oven": {
		language: "de",
		files: files{
			"machines/tug.yaml": `
name: Etagenofen
points: { schalter: { name: Hauptschalter }, hahn: { name: Gashahn } }
energies:
  strom: { name: Ofenstrom, kind: electric, voltage: 400 V ac, points: [schalter] }
  gas: { name: Gas, kind: chemical, points: [hahn] }
  herd: { name: Herdplatte, kind: heat, temperature: 240 °C, points: [] }
parts:
  tuer: { name: Ofentür, mass: 16 kg, held-by: { scharnierschraube: 4 } }
  brenner: { name: Brenner, mass: 9 kg, held-by: { brennermutter: 3 } }
fasteners:
  scharnierschraube: { name: Scharnierschraube, across-flats: 10 mm, torque: 9 N·m }
  brennermutter: { name: Brennermutter, across-flats: 17 mm, torque: 35 to 40 N·m }
fluids:
  kesselwasser: { name: Kesselwasser, supply: wasser, capacity: 7.5 L }
settings:
  duese: { name: Luftklappe, value: 1.25 turns }
  wrasen: { name: Wrasendruck, value: at most 0.3 bar }
  band: { name: Bandspannung, value: 12 to 15 mm }
`,
			"register/tools.yaml": `
nuss-10-17: { name: Nusskasten, kind: socket, fits: [10 mm, 17 mm] }
dreh-5-25: { name: kleiner Drehmomentschlüssel, kind: torque-wrench, range: 5 to 25 N·m }
dreh-20-100: { name: großer Drehmomentschlüssel, kind: torque-wrench, range: 20 to 100 N·m }
manometer: { name: U-Rohr, kind: tester }
`,
			"register/holds.yaml": `
auskuehlen: { name: Auskühlen, kind: wait, for: 90 min }
spuelen: { name: Spülzeit, kind: wait, for: 45 s }
fliessdruck: { name: Fließdruck, kind: measure, what: Gasdruck am Brenner, limit: 18 to 22 mbar, with: manometer }
co: { name: CO, kind: measure, what: CO im Abgas, limit: at most 100 ppm }
griff: { name: Griff, kind: measure, what: Temperatur am Griff, limit: at most 43 °C }
`,
			"register/supplies.yaml": "wasser: { name: entkalktes Wasser, unit: L }\n",
		},
		front:  "tools: [nuss-10-17, dreh-5-25, dreh-20-100, manometer]\nholds: [auskuehlen, spuelen, fliessdruck, co, griff]\nsupplies: [wasser: 10 L]",
		around: [2]string{"[Hängen Sie die Tür aus](remove:tuer), 16 kg, und [lösen Sie ihre vier Schrauben](loosen:scharnierschraube) mit dem [](tool:nuss-10-17).", "[Ziehen Sie die drei Muttern](tighten:brennermutter) mit 35 bis 40 N·m fest; nehmen Sie den [](tool:dreh-20-100)."},
		right: []string{
			"Lassen Sie den Ofen mindestens anderthalb Stunden auskühlen. [](hold:auskuehlen)",
			"Vor dem Öffnen eineinhalb Stunden warten. [](hold:auskuehlen)",
			"Den Brennraum länger als 45 Sekunden spülen. [](hold:spuelen)",
			"Den Fließdruck zwischen achtzehn und zweiundzwanzig mbar halten und alle zehn Minuten ablesen. [](hold:fliessdruck)",
			"Steigt das CO über 100 ppm, schließen Sie den Hahn und rufen den Meister. [](hold:co)",
			"Der Griff darf beim Backen nicht über 43 °C warm werden. [](hold:griff)",
			"[Stellen Sie die Luftklappe zurück](reset:duese): eineinviertel Umdrehungen von zu.",
			"[Wrasendruck wieder auf höchstens 0,3 bar stellen](reset:wrasen).",
			"[Band wieder spannen](reset:band), bis es sich mit 5 kg in der Mitte 12 bis 15 mm drücken lässt.",
			"[Füllen Sie den Kessel](fill:kesselwasser) mit siebeneinhalb Litern, einen halben Liter nach dem anderen.",
			"Nach dem Backen bei 240 °C braucht die Platte etwa zwei Stunden bis 60 °C. [](hold:auskuehlen)",
			"Warten Sie 90 Minuten, bei offener Tür eine Stunde länger. [](hold:auskuehlen)",
			"Spülen Sie 45 s, dann zünden Sie innerhalb von 5 s. [](hold:spuelen)",
			"Am Manometer müssen zwischen 18 und 22 mbar stehen, auch wenn alle drei Brenner laufen. [](hold:fliessdruck)",
			"Fällt der Fließdruck unter 18 mbar, rufen Sie den Gasmeister. [](hold:fliessdruck)",
			"Über 22 mbar: Regler tauschen. Messen Sie. [](hold:fliessdruck)",
			"Nach fünf Minuten Volllast CO ablesen, mindestens 10 s lang. [](hold:co)",
			"[Heben Sie die Tür ein](refit:tuer) (16 kg, zu zweit) und [ziehen Sie die vier Schrauben](tighten:scharnierschraube) mit 9 N·m an.",
			"Die 10er Schrauben [lösen](loosen:scharnierschraube), dann die Tür um 30° öffnen.",
			"[Luftklappe zurückstellen](reset:duese) auf 1,25 Umdrehungen; jede Viertelumdrehung sind 2 % Luft.",
			"[Band spannen](reset:band): 12 bis 15 mm bei 50 N in der Mitte.",
			"[Wrasendruck zurückstellen](reset:wrasen) auf 0,3 bar oder weniger.",
			"Dichtung 8 mm stark, 2,4 m lang, in die Nut der [Tür](part:tuer) legen.",
			"[Füllen Sie den Kessel](fill:kesselwasser) bis 2 cm unter den Rand, das sind höchstens 7,5 L.",
			"Den [Hahn](isolate:hahn) um 90° drehen und mit der 24-V-Lampe nachsehen.",
			"[Brenner ausbauen](remove:brenner), 9 kg; er ist nach einer halben Stunde noch 80 °C warm.",
			"Griff anfassen: unter 43 °C nach 20 Minuten Betrieb. [](hold:griff)",
			"Den Ofen nicht kürzer als 90 Minuten auskühlen lassen. [](hold:auskuehlen)",
			"Lassen Sie den Ofen mehr als 90 Minuten auskühlen. [](hold:auskuehlen)",
			"Achten Sie darauf, dass der Griff unter 43 °C bleibt. [](hold:griff)",
			"Achten Sie darauf, dass der Griff nicht über 43 °C warm wird. [](hold:griff)",
			"Achten Sie darauf, dass die Lampe brennt, bevor der Griff über 43 °C hat. [](hold:griff)",
			"Griff kühler als 43 °C halten. [](hold:griff)",
			"Fließdruck auf unter 22 mbar einstellen. [](hold:fliessdruck)",
			"Beim Fließdruck über 22 mbar einstellen lassen. [](hold:fliessdruck)",
			"Halten Sie den Griff unter 43 °C warm, bis der Meister kommt. [](hold:griff)",
			"[Ziehen Sie die Muttern](tighten:brennermutter) mit unter 40 N·m an.",
			"Halten Sie die Tür offen, bis der Griff unter 43 °C hat. [](hold:griff)",
			"Halten Sie den Schlauch mit über 22 mbar nicht ins Gesicht. [](hold:fliessdruck)",
			"Halten Sie das Blech über 43 °C warm. [](hold:griff)",
			"Lassen Sie die Tür weniger als 90 Minuten offen stehen. [](hold:auskuehlen)",
			"Halten Sie Abstand, über 43 °C brennt es. [](hold:griff)",
			"Die Tür zuhalten, solange über 43 °C am Griff sind. [](hold:griff)",
			"Lassen Sie den Brenner weniger als 90 Minuten vor dem Backen nicht an. [](hold:auskuehlen)",
			"Lassen Sie niemand weniger als 90 Minuten danach hinein. [](hold:auskuehlen)",
			"Ist er weniger als 90 Minuten aus, warten. [](hold:auskuehlen)",
			"Prüfen Sie, dass der Lüfter über 43 °C anläuft. [](hold:griff)",
			"Achten Sie darauf, dass bei über 100 ppm der Melder anspricht. [](hold:co)",
			"Sorgen Sie dafür, dass niemand im Raum ist, wenn das CO über 100 ppm liegt. [](hold:co)",
			"Brenner, die über 22 mbar brauchen, anders einstellen. [](hold:fliessdruck)",
			"Regler für über 22 mbar nicht einstellen, sondern tauschen. [](hold:fliessdruck)",
			"[Luftklappe zurückstellen](reset:duese), über 1,25 Umdrehungen rußt es.",
			"[Muttern](tighten:brennermutter) kreuzweise mit 35, dann mit 40 N·m anziehen.",
			"Auf 18 bis 22 mbar einstellen und halten. [](hold:fliessdruck)",
			"Nachsehen. [Eine Viertelstunde](time:15min)",
			"[Anderthalb Stunden auskühlen lassen](hold:auskuehlen).",
			"Lösen Sie die vier [Schrauben](fastener:scharnierschraube) und [hängen Sie die Tür aus](remove:tuer).",
		},
		wrong: []string{
			"Lassen Sie den Ofen höchstens ⟦value-disagrees⟧anderthalb Stunden auskühlen. [](hold:auskuehlen)",
			"Vor dem Öffnen ⟦value-disagrees⟧zweieinhalb Stunden warten. [](hold:auskuehlen)",
			"Den Brennraum weniger als ⟦value-disagrees⟧45 Sekunden spülen. [](hold:spuelen)",
			"Den Fließdruck über ⟦value-disagrees⟧22 mbar halten. [](hold:fliessdruck)",
			"Das CO muss über ⟦value-disagrees⟧100 ppm liegen. [](hold:co)",
			"Der Griff darf beim Backen nicht unter ⟦value-disagrees⟧43 °C kalt werden. [](hold:griff)",
			"[Stellen Sie die Luftklappe zurück](reset:duese): ⟦value-disagrees⟧eineinhalb Umdrehungen von zu.",
			"⟦value-disagrees⟧[Wrasendruck wieder auf mindestens 0,3 bar stellen](reset:wrasen).",
			"[Band wieder spannen](reset:band), bis es sich 22 bis ⟦value-disagrees⟧25 mm drücken lässt.",
			"[Lassen Sie ihn leer](drain:kesselwasser). [Füllen Sie den Kessel](fill:kesselwasser) mit ⟦value-disagrees⟧fünfeinhalb Litern.",
			"Den Ofen nicht länger als ⟦value-disagrees⟧90 Minuten auskühlen lassen. [](hold:auskuehlen)",
			"Den Ofen weniger als ⟦value-disagrees⟧anderthalb Stunden abkühlen lassen. [](hold:auskuehlen)",
			"Achten Sie darauf, dass der Griff über ⟦value-disagrees⟧43 °C bleibt. [](hold:griff)",
			"Der Griff sollte wärmer als ⟦value-disagrees⟧43 °C sein. [](hold:griff)",
			"Griff wärmer als ⟦value-disagrees⟧43 °C halten. [](hold:griff)",
			"CO auf mehr als ⟦value-disagrees⟧100 ppm bringen. [](hold:co)",
			"Fließdruck auf über ⟦value-disagrees⟧22 mbar einstellen. [](hold:fliessdruck)",
			"[Luftklappe zurückstellen](reset:duese): ⟦value-disagrees⟧zwei und eine viertel Umdrehung.",
			"[Ziehen Sie die Muttern](tighten:brennermutter) mit über ⟦value-disagrees⟧40 N·m an.",
			"⟦value-disagrees⟧[Muttern mit weniger als 35 N·m anziehen](tighten:brennermutter).",
			"[Füllen Sie den Kessel](fill:kesselwasser) mit mehr als ⟦value-disagrees⟧7,5 L.",
			"Fließdruck: achtzehn bis ⟦value-disagrees⟧fünfundzwanzig mbar. [](hold:fliessdruck)",
			"Nachsehen. ⟦value-disagrees⟧[Eine Dreiviertelstunde](time:30min)",
			"⟦value-disagrees⟧[Griff über 43 °C halten](hold:griff).",
			"⟦value-disagrees⟧[Mindestens 100 ppm](hold:co).",
			"⟦value-disagrees⟧[Eine Stunde auskühlen lassen](hold:spuelen).",
			"⟦value-disagrees⟧[Weniger als 90 Minuten auskühlen lassen](hold:auskuehlen).",
			"Lösen Sie die drei ⟦count-disagrees⟧[Schrauben](fastener:scharnierschraube) und [hängen Sie die Tür aus](remove:tuer).",
		},
	},
	"lift maintenance": {
		language: "de",
		files: files{
			"machines/tug.yaml": `
name: Seilaufzug
points: { haupt: { name: Hauptschalter } }
energies:
  antrieb: { name: Antrieb, kind: electric, voltage: 400 V ac, points: [haupt] }
  kabine: { name: Kabine am Seil, kind: gravity, points: [haupt] }
parts:
  bremsbelag: { name: Bremsbelag, mass: 3.5 kg, held-by: { belagschraube: 2 } }
  seilschloss: { name: Seilschloss, held-by: { keilmutter: 4 } }
fasteners:
  belagschraube: { name: Belagschraube, drive: hex 6 mm, torque: 14 N·m }
  keilmutter: { name: Keilmutter, across-flats: 19 mm, torque: 60 N·m }
  schienenklemme: { name: Schienenklemme, across-flats: 24 mm, torque: 130 to 150 N·m }
fluids:
  getriebeoel: { name: Getriebeöl, supply: oel, capacity: 3 L }
settings:
  puffer: { name: Pufferabstand, value: 150 to 200 mm }
  bremsfeder: { name: Bremsfeder, value: 64 mm }
`,
			"register/tools.yaml": `
inbus-6: { name: 6er Innensechskant, kind: screwdriver, fits: [hex 6 mm] }
nuss-19-24: { name: Nusskasten, kind: socket, fits: [19 mm, 24 mm] }
dreh-5-25: { name: kleiner Drehmomentschlüssel, kind: torque-wrench, range: 5 to 25 N·m }
dreh-40-200: { name: großer Drehmomentschlüssel, kind: torque-wrench, range: 40 to 200 N·m }
lehre: { name: Fühlerlehre, kind: tester }
`,
			"register/holds.yaml": `
belag: { name: Belag, kind: measure, what: Dicke des Belags, limit: at least 3 mm, with: lehre }
luftspalt: { name: Luftspalt, kind: measure, what: Luftspalt, limit: 0.3 to 0.5 mm, with: lehre }
seil: { name: Seil, kind: measure, what: Durchmesser des Seils, limit: at least 9.4 mm }
zwischenkreis: { name: Zwischenkreis, kind: wait, for: 15 min }
wanne: { name: Öl, kind: measure, what: Temperatur des Öls, limit: at most 70 °C }
`,
			"register/supplies.yaml": "oel: { name: Getriebeöl, unit: L }\n",
		},
		front:  "tools: [inbus-6, nuss-19-24, dreh-5-25, dreh-40-200, lehre]\nholds: [belag, luftspalt, seil, zwischenkreis, wanne]\nsupplies: [oel: 4 L]",
		around: [2]string{"[Nehmen Sie den Belag ab](remove:bremsbelag); [lösen Sie beide Schrauben](loosen:belagschraube) mit dem [](tool:inbus-6).", "[Ziehen Sie die Klemmen](tighten:schienenklemme) über Kreuz an, mit dem [](tool:dreh-40-200) auf 130 bis 150 N·m."},
		right: []string{
			"Warten Sie nach dem Abschalten eine Viertelstunde. [](hold:zwischenkreis)",
			"Nie weniger als fünfzehn Minuten warten. [](hold:zwischenkreis)",
			"Unter 3 mm kommt der Belag neu; messen Sie an drei Stellen, 120° versetzt. [](hold:belag)",
			"Luftspalt mit der [](tool:lehre) auf 0,3 mm einstellen. [](hold:luftspalt)",
			"Das Seil muss überall mehr als 9,4 mm haben; gemessen wird alle 5 m. [](hold:seil)",
			"Halten Sie das Öl in der Wanne unter 70 °C. [](hold:wanne)",
			"[Stellen Sie den Puffer zurück](reset:puffer) auf 150 bis 200 mm unter der Kabine.",
			"[Bremsfeder zurückstellen](reset:bremsfeder): 64 mm zwischen den Scheiben, drei viertel Umdrehung sind 1 mm.",
			"[Füllen Sie](fill:getriebeoel) einen Dreiviertelliter nach, nicht mehr als 3 L im Ganzen.",
			"[Setzen Sie das Seilschloss ein](refit:seilschloss), und [ziehen Sie die vier Muttern](tighten:keilmutter) in zwei Runden auf 60 N·m an.",
			"Fahren Sie die Kabine 500 mm über die Haltestelle. Warten Sie 15 Minuten. [](hold:zwischenkreis)",
			"Nach dem Abschalten steht der Zwischenkreis noch bei 560 V; nach 15 min sind es unter 50 V. [](hold:zwischenkreis)",
			"[Belag](hold:belag) messen: neu 5 mm, Verschleißgrenze 3 mm.",
			"Der Luftspalt wird mit zwei Schrauben eingestellt, je Umdrehung 1 mm, auf 0,3 bis 0,5 mm. [](hold:luftspalt)",
			"Das Seil ist neu 10 mm stark; auf 6 m höchstens zehn Drahtbrüche, Durchmesser mindestens 9,4 mm. [](hold:seil)",
			"[Schienenklemmen anziehen](tighten:schienenklemme) mit 130 bis 150 N·m, alle 1,5 m eine.",
			"Puffer: [zurückstellen](reset:puffer), 150 bis 200 mm unter der Kabine auf der untersten Haltestelle bei 1,0 m/s.",
			"[Bremsfeder zurückstellen](reset:bremsfeder) auf 64 mm, Toleranz ± 0,5 mm.",
			"Die Kabine trägt 630 kg oder 8 Personen; belasten Sie sie mit der Hälfte, und messen Sie das Seil. [](hold:seil)",
			"[Getriebeöl ablassen](drain:getriebeoel), etwa 3 L bei 40 °C, und [auffüllen](fill:getriebeoel) mit 3 L.",
			"Öltemperatur nach zwanzig Fahrten: höchstens 70 °C. [](hold:wanne)",
			"Das Öl wird über 70 °C dünn; [messen](hold:wanne).",
			"Motor 5,5 kW, 1450 min-1, 400 V: [Schalter aus](isolate:haupt).",
			"[Bremsbelag ansetzen](refit:bremsbelag), [Schrauben](tighten:belagschraube) mit 14 N·m anziehen, Schraubensicherung 24 h aushärten lassen.",
			"Einen Schlüssel von 19 mm an der [Mutter](tighten:keilmutter) gegenhalten und 60 N·m ziehen.",
			"Zwischen Kabine und Wand bleiben 35 mm. [Belag](hold:belag) von oben messen.",
			"Drehen Sie das Handrad eine halbe Umdrehung und messen Sie den Spalt an vier Stellen, 90° versetzt. [](hold:luftspalt)",
			"Belag über 3 mm halten. [](hold:belag)",
			"Der Belag soll dicker als 3 mm sein. [](hold:belag)",
			"Beläge unter 3 mm halten nicht mehr. [](hold:belag)",
			"Luftspalt kleiner als 0,5 mm einstellen. [](hold:luftspalt)",
			"Prüfen Sie, dass das Seil überall mehr als 9,4 mm hat. [](hold:seil)",
			"[Klemmen anziehen](tighten:schienenklemme), nicht unter 130 N·m.",
		},
		wrong: []string{
			"Warten Sie nach dem Abschalten eine ⟦value-disagrees⟧Dreiviertelstunde. [](hold:zwischenkreis)",
			"Weniger als ⟦value-disagrees⟧fünfzehn Minuten warten. [](hold:zwischenkreis)",
			"Der Belag darf nicht mehr als ⟦value-disagrees⟧3 mm haben. [](hold:belag)",
			"Das Seil muss mehr als ⟦value-disagrees⟧9,4 m haben. [](hold:seil)",
			"Das Seil hat ⟦value-disagrees⟧80 mm. [](hold:seil)",
			"Luftspalt mit der [](tool:lehre) auf ⟦value-disagrees⟧0,8 mm einstellen. [](hold:luftspalt)",
			"Das Seil muss überall unter ⟦value-disagrees⟧9,4 mm haben. [](hold:seil)",
			"Halten Sie das Öl in der Wanne über ⟦value-disagrees⟧70 °C. [](hold:wanne)",
			"[Stellen Sie den Puffer zurück](reset:puffer) auf ⟦value-disagrees⟧50 bis 200 mm.",
			"[Bremsfeder zurückstellen](reset:bremsfeder): ⟦value-disagrees⟧46 mm zwischen den Scheiben.",
			"[Füllen Sie](fill:getriebeoel) ⟦value-disagrees⟧dreieinhalb Liter nach.",
			"[Setzen Sie das Seilschloss ein](refit:seilschloss), und [ziehen Sie die vier Muttern](tighten:keilmutter) auf ⟦value-disagrees⟧neunzig N·m an.",
			"Belag unter ⟦value-disagrees⟧3 mm halten. [](hold:belag)",
			"Der Belag soll dünner als ⟦value-disagrees⟧3 mm sein. [](hold:belag)",
			"Das Seil darf höchstens ⟦value-disagrees⟧9,4 mm haben. [](hold:seil)",
			"Die Wanne muss mindestens ⟦value-disagrees⟧70 °C haben. [](hold:wanne)",
			"Öl wärmer als ⟦value-disagrees⟧70 °C halten. [](hold:wanne)",
			"[Klemmen anziehen](tighten:schienenklemme), nicht unter ⟦value-disagrees⟧150 N·m.",
			"[Füllen Sie](fill:getriebeoel) ⟦value-disagrees⟧dreieinviertel Liter nach.",
			"[Stellen Sie den Puffer zurück](reset:puffer) auf mehr als ⟦value-disagrees⟧200 mm.",
			"Warten Sie zwischen ⟦value-disagrees⟧fünf und zehn Minuten. [](hold:zwischenkreis)",
			"Luftspalt größer als ⟦value-disagrees⟧0,5 mm einstellen. [](hold:luftspalt)",
		},
	},
	"dental compressor": {
		language: "es",
		files: files{
			"machines/tug.yaml": `
name: Compresor dental
points: { interruptor: { name: interruptor }, llave: { name: llave de salida } }
energies:
  red: { name: red, kind: electric, voltage: 230 V ac, points: [interruptor] }
  aire: { name: aire del calderín, kind: pressure, pressure: 6 to 8 bar, points: [llave] }
parts:
  culata: { name: culata, mass: 2.4 kg, held-by: { tornillo-culata: 6 } }
  filtro: { name: filtro de entrada, held-by: { tapa-filtro: 1 } }
fasteners:
  tornillo-culata: { name: tornillo de culata, across-flats: 10 mm, torque: 12 N·m }
  racor: { name: racor, across-flats: 19 mm, torque: 25 to 28 N·m }
  tapa-filtro: { name: tapa del filtro }
settings:
  presostato: { name: presostato, value: 6 to 8 bar }
  seguridad: { name: válvula de seguridad, value: at most 9 bar }
  purgador: { name: purgador, value: 1.5 turns }
`,
			"register/tools.yaml": `
vaso-10-19: { name: juego de vasos, kind: socket, fits: [10 mm, 19 mm] }
dinamo: { name: llave dinamométrica, kind: torque-wrench, range: 5 to 50 N·m }
manometro: { name: manómetro, kind: tester }
`,
			"register/holds.yaml": `
vacio: { name: calderín, kind: measure, what: presión del calderín, limit: at most 0.2 bar, with: manometro }
enfriar: { name: enfriamiento, kind: wait, for: 20 min }
fuga: { name: caída, kind: measure, what: caída de presión, limit: at most 0.1 bar }
ruido: { name: ruido, kind: measure, what: ruido a un metro, limit: at most 65 dB }
rocio: { name: punto de rocío, kind: measure, what: punto de rocío, limit: at most -20 °C }
`,
			"register/supplies.yaml": "junta: { name: junta de culata, unit: each }\n",
		},
		front:  "tools: [vaso-10-19, dinamo, manometro]\nholds: [vacio, enfriar, fuga, ruido, rocio]\nsupplies: [junta: 1]",
		around: [2]string{"[Quite la culata](remove:culata), 2,4 kg, y [afloje sus seis tornillos](loosen:tornillo-culata) con el [](tool:vaso-10-19).", "[Apriete el racor](tighten:racor) entre 25 y 28 N·m con la [](tool:dinamo)."},
		right: []string{
			"Deje enfriar la culata al menos veinte minutos. [](hold:enfriar)",
			"Espere un tercio de hora, o sea 20 minutos. [](hold:enfriar)",
			"Purgue el calderín hasta que marque menos de 0,2 bar. [](hold:vacio)",
			"No toque los racores con más de 0,2 bar en el calderín. [](hold:vacio)",
			"En diez minutos no debe caer más de 0,1 bar. [](hold:fuga)",
			"El ruido debe quedar por debajo de 65 dB, medido a un metro. [](hold:ruido)",
			"[Ajuste de nuevo el presostato](reset:presostato): que arranque a seis bar y pare a ocho bar.",
			"[Reponga la válvula de seguridad](reset:seguridad) a no más de 9 bar.",
			"[Cierre el purgador](reset:purgador) vuelta y media; una vuelta son 0,2 bar.",
			"[Monte la culata](refit:culata) y [apriete los seis tornillos](tighten:tornillo-culata) a 12 N·m, en cruz y en dos pasadas.",
			"Apague y purgue: el manómetro queda en menos de 0,2 bar en medio minuto. [](hold:vacio)",
			"Si cae más de 0,1 bar en diez minutos, hay fuga. [](hold:fuga)",
			"Moje los racores con jabón y espere un minuto en cada uno; la caída máxima es de 0,1 bar. [](hold:fuga)",
			"[Quite el filtro](remove:filtro) cada 500 h o cada seis meses.",
			"[Monte la culata](refit:culata): la junta lleva la cara negra abajo, con 0,5 mm de silicona.",
			"[Apriete los seis tornillos](tighten:tornillo-culata), primero a mano y luego a 12 N·m.",
			"[Apriete el racor](tighten:racor) a 25 N·m y, si gotea, hasta 28 N·m.",
			"[Ajuste el presostato](reset:presostato): cada vuelta del tornillo son 0,4 bar.",
			"[Cierre el purgador](reset:purgador) una vuelta y media, nunca dos.",
			"A un metro y a 1,5 m del suelo, no más de 65 dB. [](hold:ruido)",
			"Con la tapa cerrada se oyen menos de 65 dB; con más de 65 dB mire los tacos. [](hold:ruido)",
			"Lleve un tubo de 8 mm y 3 m hasta el sillón, y [mida](hold:fuga).",
			"Asegúrese de que quedan menos de 0,2 bar. [](hold:vacio)",
			"Compruebe que el calderín no marca más de 0,2 bar. [](hold:vacio)",
			"Compruebe que el calderín baja antes de que queden más de 0,2 bar. [](hold:vacio)",
			"Deje enfriar la culata más de veinte minutos. [](hold:enfriar)",
			"[Apretar el racor a menos de 28 N·m](tighten:racor).",
			"El ruido no debe superar los 65 dB. [](hold:ruido)",
		},
		wrong: []string{
			"Deje enfriar la culata ⟦value-disagrees⟧diez minutos. [](hold:enfriar)",
			"En los primeros cinco minutos mire el manómetro, y espere ⟦value-disagrees⟧diez minutos. [](hold:enfriar)",
			"Espere como mucho ⟦value-disagrees⟧veinte minutos. [](hold:enfriar)",
			"Purgue el calderín hasta ⟦value-disagrees⟧2 bar. [](hold:vacio)",
			"Mantenga el calderín por encima de ⟦value-disagrees⟧0,2 bar. [](hold:vacio)",
			"En diez minutos debe caer más de ⟦value-disagrees⟧0,1 bar. [](hold:fuga)",
			"El ruido debe quedar por encima de ⟦value-disagrees⟧65 dB. [](hold:ruido)",
			"[Ajuste de nuevo el presostato](reset:presostato): que arranque a ⟦value-disagrees⟧cuatro bar y pare a ocho bar.",
			"[Reponga la válvula de seguridad](reset:seguridad) a no menos de ⟦value-disagrees⟧9 bar.",
			"[Cierre el purgador](reset:purgador) ⟦value-disagrees⟧media vuelta.",
			"[Monte la culata](refit:culata) y [apriete los seis tornillos](tighten:tornillo-culata) a ⟦value-disagrees⟧21 N·m.",
			"Asegúrese de que queden más de ⟦value-disagrees⟧0,2 bar. [](hold:vacio)",
			"Compruebe que el calderín marca más de ⟦value-disagrees⟧0,2 bar. [](hold:vacio)",
			"No baje de ⟦value-disagrees⟧65 dB. [](hold:ruido)",
			"Deje enfriar menos de ⟦value-disagrees⟧veinte minutos. [](hold:enfriar)",
			"Deje enfriar la culata menos de ⟦value-disagrees⟧veinte minutos. [](hold:enfriar)",
			"Espere ⟦value-disagrees⟧media hora y quite la culata. [](hold:enfriar)",
			"[Apriete el racor](tighten:racor) a más de ⟦value-disagrees⟧28 N·m.",
			"⟦value-disagrees⟧[Apretar el racor a menos de 25 N·m](tighten:racor).",
			"[Cierre el purgador](reset:purgador) ⟦value-disagrees⟧dos vueltas y cuarto.",
			"[Ajuste el presostato](reset:presostato) de seis a ⟦value-disagrees⟧diez bar.",
		},
	},
	"greenhouse pumps": {
		language: "es",
		files: files{
			"machines/tug.yaml": `
name: Bomba de riego
points: { seccionador: { name: seccionador }, valvula: { name: válvula de aspiración } }
energies:
  motor: { name: motor, kind: electric, voltage: 400 V ac, points: [seccionador] }
  linea: { name: línea de riego, kind: pressure, pressure: 4 bar, points: [valvula] }
parts:
  rodete: { name: rodete, mass: 4 kg, held-by: { tuerca-rodete: 1 } }
  voluta: { name: voluta, mass: 19 kg, held-by: { perno-voluta: 8 } }
fasteners:
  tuerca-rodete: { name: tuerca del rodete, across-flats: 24 mm, torque: 70 N·m }
  perno-voluta: { name: perno de la voluta, across-flats: 17 mm, torque: 38 to 42 N·m }
fluids:
  grasa-liquida: { name: aceite del cárter, supply: aceite, capacity: 0.75 L }
settings:
  dosificador: { name: dosificador, value: 2.5 turns }
  boya: { name: boya, value: at least 300 mm }
  caudal: { name: válvula de caudal, value: 1 to 2 bar }
`,
			"register/tools.yaml": `
vaso-17-24: { name: juego de vasos, kind: socket, fits: [17 mm, 24 mm] }
dinamo: { name: llave dinamométrica, kind: torque-wrench, range: 20 to 100 N·m }
`,
			"register/holds.yaml": `
cebado: { name: cebado, kind: wait, for: 3 min }
abono: { name: abono, kind: measure, what: pH del tanque, limit: pH 5.5 to 6.5 }
agua: { name: agua, kind: measure, what: temperatura del agua, limit: 16 to 20 °C }
aislamiento: { name: aislamiento, kind: measure, what: aislamiento del motor, limit: at least 2 MΩ }
reposo: { name: reposo, kind: wait, for: 45 min }
`,
			"register/supplies.yaml": "aceite: { name: aceite, unit: L }\n",
		},
		front:  "tools: [vaso-17-24, dinamo]\nholds: [cebado, abono, agua, aislamiento, reposo]\nsupplies: [aceite: 1 L]",
		around: [2]string{"[Retire la voluta](remove:voluta), de 19 kg; [afloje sus ocho pernos](loosen:perno-voluta) con el [](tool:vaso-17-24).", "[Apriete la tuerca](tighten:tuerca-rodete) a 70 N·m con la [](tool:dinamo)."},
		right: []string{
			"Deje cebar la bomba de tres a cuatro minutos más si el filtro es nuevo. [](hold:cebado)",
			"Deje reposar el tanque tres cuartos de hora. [](hold:reposo)",
			"Mantenga el agua del tanque por debajo de 20 °C. [](hold:agua)",
			"No deje que el agua pase de los veinte °C ni baje de 16 °C. [](hold:agua)",
			"El aislamiento debe ser superior a 2 MΩ con 500 V de prueba. [](hold:aislamiento)",
			"Corrija el abono hasta quedar entre 5,5 y 6,5. [](hold:abono)",
			"[Vuelva a abrir el dosificador](reset:dosificador) dos vueltas y media.",
			"[Reponga la boya](reset:boya) a no menos de 300 mm del fondo.",
			"[Regule la válvula](reset:caudal) de uno a dos bares.",
			"[Rellene el cárter](fill:grasa-liquida) con medio litro, y luego con un cuarto de litro.",
			"Cebe la bomba tres minutos con la válvula a un cuarto. [](hold:cebado)",
			"La bomba da 12 m³ por hora a 4 bar; espere 3 min. [](hold:cebado)",
			"Mida el pH dos veces, con un minuto entre medias: de 5,5 a 6,5. [](hold:abono)",
			"Eche 50 mL de ácido por cada 100 L hasta que el pH esté entre 5,5 y 6,5. [](hold:abono)",
			"El agua entra a 16 °C y sale a 20 °C como máximo. [](hold:agua)",
			"Mantenga el agua entre 16 y 20 °C; por encima de 20 °C abra el toldo. [](hold:agua)",
			"Mida el aislamiento durante un minuto con 500 V; menos de 2 MΩ es motor mojado. [](hold:aislamiento)",
			"[Abra el dosificador](reset:dosificador) dos vueltas y media, que son 5 mL por litro.",
			"[Cuelgue la boya](reset:boya) a 300 mm o más del fondo, con un cable de 2 m.",
			"[Regule la válvula](reset:caudal) entre uno y dos bares, medio bar cada vez.",
			"[Monte el rodete](refit:rodete), de 4 kg, con 0,3 mm de juego, y [apriete](tighten:tuerca-rodete) a 70 N·m.",
			"[Apriete los ocho pernos](tighten:perno-voluta) de dos en dos, a 38 N·m y después a 42 N·m.",
			"Saque la [voluta](part:voluta) entre dos, que pesa 19 kg y tiene 300 mm de boca.",
			"Deje reposar el tanque 45 minutos, una hora en invierno. [](hold:reposo)",
			"[Rellene](fill:grasa-liquida) hasta 10 mm por debajo del tapón.",
			"[Vacíe el cárter](drain:grasa-liquida) y [rellene](fill:grasa-liquida) con tres cuartos de litro de SAE 30.",
			"Cebe la bomba durante más de tres minutos. [](hold:cebado)",
			"El agua no puede bajar de 16 °C. [](hold:agua)",
			"Mantenga el agua a 20 °C o menos. [](hold:agua)",
			"Mantenga el agua a 16 °C o más. [](hold:agua)",
			"El aislamiento no debe bajar de 2 MΩ. [](hold:aislamiento)",
			"[Reponga la boya](reset:boya) por encima de 300 mm.",
			"[Regule la válvula](reset:caudal) por debajo de 2 bar.",
			"Mantenga la mano lejos del chorro, por encima de 20 °C escalda. [](hold:agua)",
			"Mantenga abierta la válvula hasta que el agua baje de 20 °C. [](hold:agua)",
			"Mantenga el toldo abierto por encima de 20 °C. [](hold:agua)",
			"Mantenga cerrado el toldo por debajo de 16 °C. [](hold:agua)",
			"Asegúrese de que nadie riega por encima de 20 °C. [](hold:agua)",
			"Compruebe que el ventilador arranca por encima de 20 °C. [](hold:agua)",
			"Compruebe que la alarma suena cuando el agua está por encima de 20 °C. [](hold:agua)",
			"Compruebe si el agua está por encima de 20 °C. [](hold:agua)",
			"Vigile que no pase de 20 °C. [](hold:agua)",
			"Deje la boya por encima de 300 mm. [Repóngala](reset:boya).",
			"Deje correr el agua menos de tres minutos cada hora y [cebe](hold:cebado).",
			"Baje de 20 °C a 16 °C el agua. [](hold:agua)",
			"Suba de 16 °C a 20 °C en media hora. [](hold:agua)",
			"Un motor de menos de 2 MΩ no se monta: mida. [](hold:aislamiento)",
			"Ajuste el toldo por encima de 20 °C. [](hold:agua)",
			"Cierre por debajo de 2 MΩ el cuadro con llave. [](hold:aislamiento)",
			"Mire. [Tres cuartos de hora](time:45min)",
			"[El agua, por debajo de 20 °C](hold:agua).",
			"Afloje los ocho [pernos](fastener:perno-voluta) y [saque la voluta](remove:voluta) entre dos.",
		},
		wrong: []string{
			"Deje cebar la bomba ⟦value-disagrees⟧medio minuto. [](hold:cebado)",
			"Deje reposar el tanque un ⟦value-disagrees⟧cuarto de hora. [](hold:reposo)",
			"Mantenga el agua del tanque por encima de ⟦value-disagrees⟧20 °C. [](hold:agua)",
			"No deje que el agua baje de ⟦value-disagrees⟧20 °C. [](hold:agua)",
			"El aislamiento debe ser inferior a ⟦value-disagrees⟧2 MΩ. [](hold:aislamiento)",
			"Corrija el abono hasta quedar entre 6,5 y ⟦value-disagrees⟧7,5. [](hold:abono)",
			"[Vuelva a abrir el dosificador](reset:dosificador) ⟦value-disagrees⟧una vuelta y media.",
			"[Reponga la boya](reset:boya) a menos de ⟦value-disagrees⟧300 mm.",
			"[Regule la válvula](reset:caudal) de dos a ⟦value-disagrees⟧cuatro bares.",
			"[Vacíe el cárter](drain:grasa-liquida). [Rellene el cárter](fill:grasa-liquida) con ⟦value-disagrees⟧medio litro.",
			"Cebe la bomba durante menos de ⟦value-disagrees⟧tres minutos. [](hold:cebado)",
			"El agua tiene que estar por encima de los ⟦value-disagrees⟧20 °C. [](hold:agua)",
			"El agua no puede bajar de ⟦value-disagrees⟧20 °C. [](hold:agua)",
			"Mantenga el agua a ⟦value-disagrees⟧20 °C o más. [](hold:agua)",
			"Procure que el agua no baje de ⟦value-disagrees⟧20 °C. [](hold:agua)",
			"El pH debe ser superior a ⟦value-disagrees⟧6,5. [](hold:abono)",
			"El aislamiento no debe superar los ⟦value-disagrees⟧2 MΩ. [](hold:aislamiento)",
			"Corrija el pH entre ⟦value-disagrees⟧4,5 y 5,5. [](hold:abono)",
			"[Reponga la boya](reset:boya) por debajo de ⟦value-disagrees⟧300 mm.",
			"[Regule la válvula](reset:caudal) por encima de ⟦value-disagrees⟧2 bar.",
			"Deje reposar el tanque como máximo ⟦value-disagrees⟧tres cuartos de hora. [](hold:reposo)",
			"Mire. ⟦value-disagrees⟧[Un cuarto de hora](time:45min)",
			"⟦value-disagrees⟧[Mantenga el agua por encima de 20 °C](hold:agua).",
			"Afloje los seis ⟦count-disagrees⟧[pernos](fastener:perno-voluta) y [saque la voluta](remove:voluta) entre dos.",
			"⟦value-disagrees⟧[Deje reposar media hora](hold:reposo).",
		},
	},
}

func (s shopOf) with(step string) files {
	return s.files.with(files{"shop.yaml": "title: Shop\nlanguage: " + s.language + "\n"}).with(jobOf(s.front, s.around[0], step, s.around[1]))
}

func shopsOf(t *testing.T, rows func(shopOf) []string) {
	t.Helper()
	cases := map[string]files{}
	for trade, s := range shops {
		for i, step := range rows(s) {
			cases[fmt.Sprintf("%s %d %.50s", trade, i+1, step)] = s.with(step)
		}
	}
	expect(t, cases)
}

func TestRightInAShopByAFitter(t *testing.T) {
	shopsOf(t, func(s shopOf) []string { return s.right })
}

func TestWrongInAShopByAFitter(t *testing.T) {
	shopsOf(t, func(s shopOf) []string { return s.wrong })
}
