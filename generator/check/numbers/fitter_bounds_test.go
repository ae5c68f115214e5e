package numbers

import (
	"strings"
	"testing"
)

// bounded is a workshop with what is set in parts of a turn, kept warm or cold and
// filled in parts of a litre, beside that of many trades.
var bounded = manyTrades.with(files{
	"machines/tug.yaml": strings.NewReplacer(
		"settings:\n", `settings:
  choke: { name: choke, value: 3/4 turns }
  idle: { name: idle screw, value: 1/4 turns }
  air-screw: { name: air screw, value: 1 to 2 turns }
  float-height: { name: float height, value: 8 to 10 mm }
`,
		"fluids:\n", `fluids:
  grease-oil: { name: gear oil, supply: glycol, capacity: 0.75 L }
`,
	).Replace(manyTrades["machines/tug.yaml"]),
	"register/holds.yaml": manyTrades["register/holds.yaml"] + `
hot-oil: { name: oil, kind: measure, what: temperature of the oil, limit: at most 60 °C }
press: { name: press, kind: measure, what: pressure, limit: 1 to 2 bar }
rinse: { name: rinse, kind: wait, for: 15 min }
bake: { name: bake, kind: wait, for: 45 min }
level: { name: level, kind: measure, what: level, limit: at least 40 mm }
spindle: { name: spindle, kind: measure, what: speed, limit: at most 1450 rpm }
`,
})

const boundedFront = "tools: [socket-13, socket-19-24, wrench-20-100, wrench-40-220, hoist]\nholds: [settle, purge, soak, proof, tread, earth, insulation, noise, boiler, fridge, outlet, bag, hot-oil, press, rinse, bake, level, spindle]\nsupplies: [glycol: 8 L]"

// rightBounds and wrongBounds were written before the rule was asked: orders with
// several words before their amount, orders at the end, parts of one, numbers in
// words. Common practice, no source.
var rightBounds = map[string][]string{
	"en": {
		"Keep the room above 2 °C. [](hold:fridge)",
		"Keep the room in the cellar below 8 °C while you work. [](hold:fridge)",
		"Hold the oil in the tank under 60 °C. [](hold:hot-oil)",
		"Keep the [room](part:seat) above 2 °C and below 8 °C. [](hold:fridge)",
		"[Keep the room](hold:fridge) above 2 °C.",
		"Keep the room at 8 °C or less. [](hold:fridge)",
		"Let it out by the [cock](part:seat) to less than 1.2 bar, then fill it up. [](hold:boiler)",
		"Never let the oil get over 60 °C. [](hold:hot-oil)",
		"Do not let the oil in the tank rise above 60 °C. [](hold:hot-oil)",
		"Do not let the room fall below 2 °C. [](hold:fridge)",
		"The room must be kept above 2 °C. [](hold:fridge)",
		"The room must not fall below 2 °C. [](hold:fridge)",
		"Keep bags under 495 g apart. [](hold:bag)",
		"Keep the bags under 495 g for the foreman. [](hold:bag)",
		"Keep the bags that weigh over 505 g in the box. [](hold:bag)",
		"Keep your feet over 40 mm of water dry. [](hold:level)",
		"Keep a pan for the oil above 60 °C ready. [](hold:hot-oil)",
		"Keep hands off oil that is over 60 °C. [](hold:hot-oil)",
		"If you cannot keep the room above 8 °C, call the foreman. [](hold:fridge)",
		"The pump can keep the oil above 60 °C. [](hold:hot-oil)",
		"Do not keep the oil above 60 °C. [](hold:hot-oil)",
		"Close the lid and keep the level above 40 mm. [](hold:level)",
		"Keep the lid on and the oil above 60 °C in the can. [](hold:hot-oil)",
		"Keep the level warm, over 40 mm of it. [](hold:level)",
		"Fill the gear with three quarters of a litre: [fill](fill:grease-oil).",
		"[Fill in](fill:grease-oil) a quarter of a litre.",
		"[Turn the choke back](reset:choke) three quarters of a turn.",
		"[Turn the choke back](reset:choke) 3/4 of a turn.",
		"[Turn the idle screw back](reset:idle) a quarter turn.",
		"[Turn the idle screw back](reset:idle) by a quarter of a turn.",
		"Wait a quarter of an hour for the rinse. [](hold:rinse)",
		"Wait three quarters of an hour. [](hold:bake)",
		"Wait half of an hour. [](hold:settle)",
		"The fourth quarter of the sheet is for the settling. [](hold:settle)",
		"Pump it to one to two bar. [](hold:press)",
		"It has one to two bar. [](hold:press)",
		"Read the press: one to two bar is good. [](hold:press)",
		"[Turn the air screw back](reset:air-screw) one to two turns.",
		"[Tighten the nuts](tighten:wheel-nut) one by one to 110 N·m.",
		"Pump it up one by one to two bar. [](hold:press)",
		"The spindle turns at 1450 min-1 after the wait. [](hold:settle)",
		"The spindle turns at 1450 min⁻¹. [](hold:spindle)",
	},
	"es": {
		"Mantenga la sala por encima de 2 °C. [](hold:fridge)",
		"Mantenga el aceite del depósito por debajo de 60 °C. [](hold:hot-oil)",
		"Mantener la sala por debajo de los 8 °C durante el trabajo. [](hold:fridge)",
		"Manténgalo por debajo de 60 °C. [](hold:hot-oil)",
		"No deje que el aceite pase de 60 °C. [](hold:hot-oil)",
		"No deje que la sala baje de 2 °C. [](hold:fridge)",
		"Vigile que no supere los 60 °C. [](hold:hot-oil)",
		"Baje de 8 a 2 °C despacio. [](hold:fridge)",
		"La bomba que mantiene el aceite por encima de 60 °C está fuera. [](hold:hot-oil)",
		"Mantenga aparte los sacos de menos de 495 g. [](hold:bag)",
		"[Llene](fill:grease-oil) con tres cuartos de litro.",
		"[Llene](fill:grease-oil) con un cuarto de litro.",
		"[Gire el estrangulador](reset:choke) tres cuartos de vuelta.",
		"[Gire el tornillo](reset:idle) un cuarto de vuelta.",
		"[Gire la aguja](reset:needle) una vuelta y media.",
		"[Gire la aguja](reset:needle) 1,5 vueltas.",
		"[Gire el tornillo](reset:air-screw) de una a dos vueltas.",
		"Espere un cuarto de hora. [](hold:rinse)",
		"Espere tres cuartos de hora. [](hold:bake)",
		"Ponga de uno a dos bar. [](hold:press)",
		"Ponga entre uno y dos bar. [](hold:press)",
		"Marca de uno a dos bares. [](hold:press)",
		"En el cuarto a 8 °C como máximo: mida. [](hold:fridge)",
		"Apriete el cuarto a 110 N·m: [tuercas](fastener:wheel-nut).",
		"El husillo va a 1450 vueltas por minuto. [](hold:settle)",
	},
	"de": {
		"Halten Sie den Raum über 2 °C. [](hold:fridge)",
		"Halten Sie das Öl im Tank unter 60 °C. [](hold:hot-oil)",
		"Den Druck im Kessel unter 1,5 bar halten. [](hold:boiler)",
		"Raum über 2 °C halten. [](hold:fridge)",
		"Druck im [Kessel](part:seat) unter 1,5 bar halten und messen. [](hold:boiler)",
		"Lassen Sie das Öl nie über 60 °C steigen. [](hold:hot-oil)",
		"Der Raum muss unter 8 °C gehalten werden. [](hold:fridge)",
		"60 °C nicht überschreiten. [](hold:hot-oil)",
		"Kann man den Druck unter 1,2 bar halten, ist das Ventil dicht. [](hold:boiler)",
		"Wer den Druck unter 1,2 bar halten will, füllt nach. [](hold:boiler)",
		"Mehr als 30 Minuten warten. [](hold:settle)",
		"Die Würze mehr als 30 Minuten stehen lassen. [](hold:settle)",
		"Nie weniger als 30 Minuten warten. [](hold:settle)",
		"Wer weniger als 30 Minuten warten will, ruft den Meister. [](hold:settle)",
		"Nach weniger als 30 Minuten stehen lassen, was noch trüb ist. [](hold:settle)",
		"[Schrauben auf mehr als 180 N·m anziehen](tighten:flange-bolt).",
		"Man darf sie auf weniger als 180 N·m anziehen, wenn der Meister es sagt: [Schrauben](fastener:flange-bolt).",
		"Schrauben nicht auf weniger als 180 N·m anziehen: [Flansch](fastener:flange-bolt).",
		"Auslöser auf unter 2800 rpm einstellen. [Zurückstellen](reset:trip).",
		"[Füllen Sie](fill:grease-oil) drei viertel Liter ein.",
		"[Füllen Sie](fill:grease-oil) einen Viertelliter ein.",
		"[Stellen Sie die Drossel](reset:choke) um eine dreiviertel Umdrehung zurück.",
		"[Stellen Sie die Schraube](reset:idle) um eine Viertelumdrehung zurück.",
		"[Drehen Sie die Nadel](reset:needle) anderthalb Umdrehungen zurück.",
		"[Drehen Sie die Nadel](reset:needle) 1,5 Umdrehungen zurück.",
		"[Drehen Sie die Luftschraube](reset:air-screw) ein bis zwei Umdrehungen zurück.",
		"Warten Sie eine Viertelstunde. [](hold:rinse)",
		"Warten Sie eine Dreiviertelstunde. [](hold:bake)",
		"Auf ein bis zwei bar aufpumpen. [](hold:press)",
		"Er hat ein bis zwei bar. [](hold:press)",
		"Die Spindel läuft mit 1450 min-1. [](hold:settle)",
	},
}

var wrongBounds = map[string][]string{
	"en": {
		"Keep the room above ⟦value-disagrees⟧8 °C. [](hold:fridge)",
		"Keep the room in the cellar below ⟦value-disagrees⟧2 °C while you work. [](hold:fridge)",
		"Hold the oil in the tank above ⟦value-disagrees⟧60 °C. [](hold:hot-oil)",
		"Keep the [room](part:seat) above ⟦value-disagrees⟧8 °C. [](hold:fridge)",
		"Keep the [](part:seat) above ⟦value-disagrees⟧8 °C. [](hold:fridge)",
		"[Keep the room](part:seat) above ⟦value-disagrees⟧8 °C. [](hold:fridge)",
		"[](hold:fridge) Keep the room above ⟦value-disagrees⟧8 °C.",
		"[Keep the room](hold:fridge) above ⟦value-disagrees⟧8 °C.",
		"⟦value-disagrees⟧[Keep the room above 8 °C](hold:fridge).",
		"Keep the room at ⟦value-disagrees⟧8 °C or more. [](hold:fridge)",
		"Keep it warmer than ⟦value-disagrees⟧60 °C. [](hold:hot-oil)",
		"Never let the oil fall below ⟦value-disagrees⟧60 °C. [](hold:hot-oil)",
		"Do not let the room in the cellar get colder than ⟦value-disagrees⟧8 °C. [](hold:fridge)",
		"The room must be kept above ⟦value-disagrees⟧8 °C. [](hold:fridge)",
		"The room must not rise above ⟦value-disagrees⟧2 °C. [](hold:fridge)",
		"Close the lid and keep the level below ⟦value-disagrees⟧40 mm. [](hold:level)",
		"Never more than ⟦value-disagrees⟧40 mm. [](hold:level)",
		"[Drain it](drain:grease-oil)! [Fill in](fill:grease-oil) a ⟦value-disagrees⟧quarter of a litre.",
		"[Turn the choke back](reset:choke) ⟦value-disagrees⟧half a turn.",
		"[Turn the choke back](reset:choke) ⟦value-disagrees⟧1/4 of a turn.",
		"[Turn the idle screw back](reset:idle) ⟦value-disagrees⟧three quarters of a turn.",
		"Wait ⟦value-disagrees⟧three quarters of an hour for the rinse. [](hold:rinse)",
		"[Wait](hold:settle) for a ⟦value-disagrees⟧quarter of a day at most.",
		"Pump it to one to ⟦value-disagrees⟧three bar. [](hold:press)",
		"It has two to ⟦value-disagrees⟧three bar. [](hold:press)",
		"[Turn the air screw back](reset:air-screw) one to ⟦value-disagrees⟧four turns.",
		"The spindle turns at ⟦value-disagrees⟧1650 min-1. [](hold:spindle)",
	},
	"es": {
		"Mantenga la sala por encima de ⟦value-disagrees⟧8 °C. [](hold:fridge)",
		"Mantenga el aceite del depósito por encima de ⟦value-disagrees⟧60 °C. [](hold:hot-oil)",
		"Mantener la sala por debajo de los ⟦value-disagrees⟧2 °C durante el trabajo. [](hold:fridge)",
		"Manténgalo por encima de ⟦value-disagrees⟧60 °C. [](hold:hot-oil)",
		"No deje que el aceite baje de ⟦value-disagrees⟧60 °C. [](hold:hot-oil)",
		"No deje que la sala pase de ⟦value-disagrees⟧2 °C. [](hold:fridge)",
		"[Vacíe](drain:grease-oil). [Llene](fill:grease-oil) un ⟦value-disagrees⟧cuarto de litro.",
		"[Gire el estrangulador](reset:choke) un ⟦value-disagrees⟧cuarto de vuelta.",
		"[Gire el tornillo](reset:idle) ⟦value-disagrees⟧tres cuartos de vuelta.",
		"[Gire la aguja](reset:needle) ⟦value-disagrees⟧dos vueltas y media.",
		"[Gire la aguja](reset:needle) ⟦value-disagrees⟧2,5 vueltas.",
		"Espere un ⟦value-disagrees⟧cuarto de hora. [](hold:bake)",
		"Ponga de uno a ⟦value-disagrees⟧tres bar. [](hold:press)",
		"Marca de dos a ⟦value-disagrees⟧tres bares. [](hold:press)",
	},
	"de": {
		"Halten Sie den Raum über ⟦value-disagrees⟧8 °C. [](hold:fridge)",
		"Halten Sie das Öl im Tank über ⟦value-disagrees⟧60 °C. [](hold:hot-oil)",
		"Den Druck im Kessel unter ⟦value-disagrees⟧1,2 bar halten. [](hold:boiler)",
		"Druck im [Kessel](part:seat) über ⟦value-disagrees⟧1,5 bar halten und messen. [](hold:boiler)",
		"Lassen Sie das Öl nie unter ⟦value-disagrees⟧60 °C sinken. [](hold:hot-oil)",
		"Der Raum muss über ⟦value-disagrees⟧8 °C gehalten werden. [](hold:fridge)",
		"⟦value-disagrees⟧60 °C nicht unterschreiten. [](hold:hot-oil)",
		"Weniger als ⟦value-disagrees⟧30 Minuten warten. [](hold:settle)",
		"Die Würze weniger als ⟦value-disagrees⟧30 Minuten stehen lassen. [](hold:settle)",
		"⟦value-disagrees⟧[Schrauben auf mehr als 200 N·m anziehen](tighten:flange-bolt).",
		"Die [Schrauben](fastener:flange-bolt) mit weniger als ⟦value-disagrees⟧180 N·m anziehen.",
		"Auf über ⟦value-disagrees⟧2800 rpm einstellen: [zurückstellen](reset:trip).",
		"[Lassen Sie es ab](drain:grease-oil). [Füllen Sie](fill:grease-oil) einen ⟦value-disagrees⟧Viertelliter ein.",
		"[Stellen Sie die Drossel](reset:choke) um eine ⟦value-disagrees⟧viertel Umdrehung zurück.",
		"[Stellen Sie die Schraube](reset:idle) um eine ⟦value-disagrees⟧dreiviertel Umdrehung zurück.",
		"[Drehen Sie die Nadel](reset:needle) ⟦value-disagrees⟧2,5 Umdrehungen zurück.",
		"Warten Sie eine ⟦value-disagrees⟧Dreiviertelstunde. [](hold:rinse)",
		"Auf ein bis ⟦value-disagrees⟧drei bar aufpumpen. [](hold:press)",
		"Die Spindel läuft mit ⟦value-disagrees⟧1650 min-1. [](hold:spindle)",
	},
}

func TestRightBoundsByAFitter(t *testing.T) { manyFitters(t, bounded, boundedFront, rightBounds) }

func TestWrongBoundsByAFitter(t *testing.T) { manyFitters(t, bounded, boundedFront, wrongBounds) }
