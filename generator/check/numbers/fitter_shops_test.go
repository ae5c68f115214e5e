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
			"Bring the nitrogen up to 10 bar in three steps, five minutes apart. [](hold:tightness)",
			"[Open the stem back](reset:stem) three quarters of a turn, not a full turn.",
			"[Set the superheat back](reset:superheat) to 5 K, a quarter turn at a time.",
			"[Set the cut-out back](reset:cut-out) so that it trips below 18 bar.",
			"[Top the oil up](fill:sump-oil) with a quarter of a litre, and look at the glass after ten minutes.",
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
wrench-100: { name: torque wrench, kind: torque-wrench, range: 10 to 100 N·m }
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
		},
		wrong: []string{
			"Let the drum cool for no longer than ⟦value-disagrees⟧three quarters of an hour. [](hold:cool)",
			"Let the drum cool for ⟦value-disagrees⟧half an hour. [](hold:cool)",
			"Keep the lining under ⟦value-disagrees⟧6 mm. [](hold:lining)",
			"Set the air gap to ⟦value-disagrees⟧1.2 mm all round, and [measure](hold:air-gap).",
			"Keep the gland above ⟦value-disagrees⟧65 °C. [](hold:gland)",
			"[Set the slip clutch back](reset:slip) to ⟦value-disagrees⟧14 kN.",
			"[Screw the spring back](reset:spring) to ⟦value-disagrees⟧28 mm.",
			"[Screw the spring back](reset:spring); 82 mm are ⟦value-disagrees⟧2 in.",
			"Hold the load on the brake for ⟦value-disagrees⟧fifteen minutes. [](hold:proof)",
			"[Fill the gear](fill:gear-oil) with twelve to ⟦value-disagrees⟧fifteen litres.",
			"[Fit the lining](refit:brake-lining) and [tighten its eight screws](tighten:lining-screw) to ⟦value-disagrees⟧130 N·m.",
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
		},
		wrong: []string{
			"Warten Sie nach dem Abschalten eine ⟦value-disagrees⟧Dreiviertelstunde. [](hold:zwischenkreis)",
			"Weniger als ⟦value-disagrees⟧fünfzehn Minuten warten. [](hold:zwischenkreis)",
			"Der Belag darf nicht mehr als ⟦value-disagrees⟧3 mm haben. [](hold:belag)",
			"Luftspalt mit der [](tool:lehre) auf ⟦value-disagrees⟧0,8 mm einstellen. [](hold:luftspalt)",
			"Das Seil muss überall unter ⟦value-disagrees⟧9,4 mm haben. [](hold:seil)",
			"Halten Sie das Öl in der Wanne über ⟦value-disagrees⟧70 °C. [](hold:wanne)",
			"[Stellen Sie den Puffer zurück](reset:puffer) auf ⟦value-disagrees⟧50 bis 200 mm.",
			"[Bremsfeder zurückstellen](reset:bremsfeder): ⟦value-disagrees⟧46 mm zwischen den Scheiben.",
			"[Füllen Sie](fill:getriebeoel) ⟦value-disagrees⟧dreieinhalb Liter nach.",
			"[Setzen Sie das Seilschloss ein](refit:seilschloss), und [ziehen Sie die vier Muttern](tighten:keilmutter) auf ⟦value-disagrees⟧neunzig N·m an.",
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
		},
		wrong: []string{
			"Deje enfriar la culata ⟦value-disagrees⟧diez minutos. [](hold:enfriar)",
			"Espere como mucho ⟦value-disagrees⟧veinte minutos. [](hold:enfriar)",
			"Purgue el calderín hasta ⟦value-disagrees⟧2 bar. [](hold:vacio)",
			"Mantenga el calderín por encima de ⟦value-disagrees⟧0,2 bar. [](hold:vacio)",
			"En diez minutos debe caer más de ⟦value-disagrees⟧0,1 bar. [](hold:fuga)",
			"El ruido debe quedar por encima de ⟦value-disagrees⟧65 dB. [](hold:ruido)",
			"[Ajuste de nuevo el presostato](reset:presostato): que arranque a ⟦value-disagrees⟧cuatro bar y pare a ocho bar.",
			"[Reponga la válvula de seguridad](reset:seguridad) a no menos de ⟦value-disagrees⟧9 bar.",
			"[Cierre el purgador](reset:purgador) ⟦value-disagrees⟧media vuelta.",
			"[Monte la culata](refit:culata) y [apriete los seis tornillos](tighten:tornillo-culata) a ⟦value-disagrees⟧21 N·m.",
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
