package check

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"golang.org/x/tools/txtar"

	"baybinder/generator/base/casefile"
	"baybinder/generator/base/finding"
)

// What could not be read is unknown, and not absent: each of these spoils one
// thing of a manual that has no finding, and has the one finding at the cause.
// The place of a finding is the text that stands there.
type unreadCase struct {
	name, file, was, is string
	want                string // code: text
}

var unreadCases = []unreadCase{

	// A called procedure.
	{"callee, front matter", "procedures/open-up.md", "title: Open the tug", `title: "Open the tug`, `syntax: "Open the tug`},
	{"callee, no end of the front matter", "procedures/open-up.md", "relief: altered }\n---\n", "relief: altered }\n", "syntax: ---"},
	{"callee, unknown part", "procedures/open-up.md", "remove:lid)", "remove:lidd)", "unknown-reference: [Lift the lid off](remove:lidd)"},
	{"callee, unknown kind with the id of a thing", "procedures/open-up.md", "remove:lid)", "take:lid)", "unknown-kind: [Lift the lid off](take:lid)"},
	{"callee, unknown kind with no id of a thing", "procedures/open-up.md", "remove:lid)", "remov:lidd)", "unknown-kind: [Lift the lid off](remov:lidd)"},
	{"callee, unknown tool", "procedures/open-up.md", "[](tool:socket-10)", "[](tool:socket-11)", "unknown-reference: [](tool:socket-11)"},
	{"callee, unknown energy", "procedures/make-dead.md", "isolate:traction", "isolate:tractionn", "unknown-reference: [Pull the service plug](isolate:tractionn)"},
	{"callee, unknown hold", "procedures/make-dead.md", "(hold:bus-dead)", "(hold:bus-deadd)", "unknown-reference: [Measure the bus](hold:bus-deadd)"},
	{"callee, unknown hazard", "procedures/make-dead.md", "(hazard:charge)", "(hazard:chargee)", "unknown-reference: [Charge](hazard:chargee)"},
	{"callee, unknown thing in leaves", "procedures/open-up.md", "leaves: { lid: off", "leaves: { lidd: off", "unknown-reference: lidd"},
	{"callee, unknown word in leaves", "procedures/open-up.md", "leaves: { lid: off", "leaves: { lid: away", "wrong-type: away"},
	{"callee, leaves is a text", "procedures/open-up.md", "leaves: { lid: off, line-a: off, line-b: off, lift-oil: low, drip-tray: placed, relief: altered }", "leaves: open", "wrong-type: open"},
	{"callee, leaves by another name", "procedures/open-up.md", "leaves: {", "leave: {", "unknown-field: leave"},
	{"callee, unknown thing in expects", "procedures/close-up.md", "lid: off", "lidd: off", "unknown-reference: lidd"},
	{"callee, unknown word in expects", "procedures/close-up.md", "lid: off", "lid: away", "wrong-type: away"},
	{"callee, expects by another name", "procedures/close-up.md", "expects: {", "expect: {", "unknown-field: expect"},
	{"callee, unknown machine", "procedures/open-up.md", "for: tug", "for: tag", "unknown-reference: tag"},
	{"callee, machine is a list", "procedures/open-up.md", "for: tug", "for: [tug]", "wrong-type: ["},
	{"callee, machine by another name", "procedures/open-up.md", "for: tug", "machine: tug", "unknown-field: machine"},
	{"callee, tools is a text", "procedures/open-up.md", "tools: [socket-10, spanner-17, drip-tray]", "tools: socket-10", "wrong-type: socket-10"},
	{"callee, unknown tool in the list", "procedures/open-up.md", "[socket-10, spanner-17", "[socket-11, spanner-17", "unknown-reference: socket-11"},
	{"callee, list in a list", "procedures/open-up.md", "[socket-10, spanner-17", "[[socket-10], spanner-17", "wrong-type: ["},
	{"callee, tools by another name", "procedures/open-up.md", "tools:", "toolz:", "unknown-field: toolz"},
	{"callee, hazards is a text", "procedures/make-dead.md", "hazards: [charge, oil-jet]", "hazards: charge", "wrong-type: charge"},
	{"callee, holds is a text", "procedures/make-dead.md", "holds: [bus-wait, bus-dead, line-dead]", "holds: bus-wait", "wrong-type: bus-wait"},
	{"callee, supplies is a text", "procedures/close-up.md", "supplies: [oil: 2 L]", "supplies: oil", "wrong-type: oil"},
	{"callee, amount of a supply", "procedures/close-up.md", "supplies: [oil: 2 L]", "supplies: [oil: 2 kg]", "quantity: 2 kg"},
	{"callee, needs is a text", "procedures/make-dead.md", "needs: [fitter]", "needs: fitter", "wrong-type: fitter"},
	{"callee, unknown role", "procedures/make-dead.md", "needs: [fitter]", "needs: [fiter]", "unknown-reference: fiter"},
	{"callee, people in words", "procedures/make-dead.md", "needs: [fitter]", "needs: [fitter]\npeople: two", "wrong-type: two"},
	{"callee, status", "procedures/open-up.md", "for: tug", "for: tug\nstatus: drafft", "wrong-type: drafft"},
	{"caller, unknown callee", "procedures/renew-inverter.md", "do:open-up", "do:open-upp", "unknown-reference: [](do:open-upp)"},
	{"caller, unknown kind for a callee", "procedures/renew-inverter.md", "do:open-up", "perform:open-up", "unknown-kind: [](perform:open-up)"},
	{"caller, unknown phase", "procedures/renew-inverter.md", "reverse:strip", "reverse:stripp", "unknown-reference: [Fit it in reverse](reverse:stripp)"},
	{"caller, unknown part in the phase that is reversed", "procedures/renew-inverter.md", "renew:inverter", "renew:invertr", "unknown-reference: [Lift the inverter out](renew:invertr)"},
	{"caller, unknown supply in the list", "procedures/renew-inverter.md", "[inverter-kit: 1]", "[inverter-kitt: 1]", "unknown-reference: inverter-kitt"},

	// An entry of the machine.
	{"machine, syntax", "machines/tug.yaml", "name: Tug", `name: "Tug`, `syntax: "Tug`},
	{"machine, unknown field", "machines/tug.yaml", "name: Tug", "name: Tug\ncolour: red", "unknown-field: colour"},
	{"machine, no name", "machines/tug.yaml", "name: Tug\n", "", "missing-field: options: { cab: Cab }"},
	{"machine, points by another name", "machines/tug.yaml", "\npoints:\n", "\npointsx:\n", "unknown-field: pointsx"},
	{"machine, energies by another name", "machines/tug.yaml", "\nenergies:\n", "\nenergiesx:\n", "unknown-field: energiesx"},
	{"machine, parts by another name", "machines/tug.yaml", "\nparts:\n", "\npartsx:\n", "unknown-field: partsx"},
	{"machine, fasteners by another name", "machines/tug.yaml", "\nfasteners:\n", "\nfastenersx:\n", "unknown-field: fastenersx"},
	{"machine, fluids by another name", "machines/tug.yaml", "\nfluids:\n", "\nfluidsx:\n", "unknown-field: fluidsx"},
	{"machine, settings by another name", "machines/tug.yaml", "\nsettings:\n", "\nsettingsx:\n", "unknown-field: settingsx"},
	{"options is a list", "machines/tug.yaml", "options: { cab: Cab }", "options: [cab]", "wrong-type: ["},
	{"point, lock", "machines/tug.yaml", "where: behind the seat, lock: yes", "where: behind the seat, lock: maybe", "wrong-type: maybe"},
	{"point, unknown field", "machines/tug.yaml", "where: behind the seat", "where: behind the seat, colour: red", "unknown-field: colour"},
	{"point is a text", "machines/tug.yaml", "plug: { name: service plug, where: behind the seat, lock: yes }", "plug: service plug", "wrong-type: service plug"},
	{"energy, kind", "machines/tug.yaml", "kind: electric", "kind: electrik", "wrong-type: electrik"},
	{"energy, no kind", "machines/tug.yaml", "kind: electric, ", "", "missing-field: traction"},
	{"energy, voltage", "machines/tug.yaml", "voltage: 360 V dc", "voltage: 360 W", "quantity: 360 W"},
	{"energy, unknown point", "machines/tug.yaml", "points: [plug]", "points: [plugg]", "unknown-reference: plugg"},
	{"energy, points is a text", "machines/tug.yaml", "points: [plug]", "points: plug", "wrong-type: plug"},
	{"energy, stored", "machines/tug.yaml", "points: [pump-switch], stored: yes", "points: [pump-switch], stored: some", "wrong-type: some"},
	{"energy, capacitance", "machines/tug.yaml", "capacitance: 100 µF", "capacitance: 100 V", "quantity: 100 V"},
	{"energy, pressure", "machines/tug.yaml", "pressure: 180 bar", "pressure: 180 m", "quantity: 180 m"},
	{"energy is a text", "machines/tug.yaml", "lift: { name: lift hydraulics, kind: pressure, pressure: 180 bar, points: [pump-switch], stored: yes }", "lift: hydraulics", "wrong-type: hydraulics"},
	{"energy, blocked by an unknown tool", "machines/tug.yaml", "stored: yes }", "stored: yes, blocked-by: [prop] }", "unknown-reference: prop"},
	{"part, under an unknown part", "machines/tug.yaml", "under: [lid], held-by: { lid-bolt: 2 }", "under: [lidd], held-by: { lid-bolt: 2 }", "unknown-reference: lidd"},
	{"part, under is a text", "machines/tug.yaml", "under: [lid], held-by: { lid-bolt: 2 }", "under: lid, held-by: { lid-bolt: 2 }", "wrong-type: lid"},
	{"part, held by an unknown fastener", "machines/tug.yaml", "held-by: { lid-bolt: 4 }", "held-by: { lid-bolts: 4 }", "unknown-reference: lid-bolts"},
	{"part, held-by is a text", "machines/tug.yaml", "held-by: { lid-bolt: 4 }", "held-by: four bolts", "wrong-type: four bolts"},
	{"part, no count", "machines/tug.yaml", "held-by: { lid-bolt: 4 }", "held-by: { lid-bolt: 4x }", "quantity: 4x"},
	{"part, nothing held", "machines/tug.yaml", "held-by: { lid-bolt: 4 }", "held-by: { lid-bolt: 0 }", "quantity: 0"},
	{"line, nut of an unknown name", "machines/tug.yaml", "held-by: { line-nut: 1 }", "held-by: { line-nuts: 1 }", "unknown-reference: line-nuts"},
	{"part, guards an unknown energy", "machines/tug.yaml", "guards: [traction]", "guards: [tractionn]", "unknown-reference: tractionn"},
	{"part, proves an unknown energy", "machines/tug.yaml", "prove-dead: [traction]", "prove-dead: [tractionn]", "unknown-reference: tractionn"},
	{"part, renewed with an unknown supply", "machines/tug.yaml", "renew-with: inverter-kit", "renew-with: inverter-kitt", "unknown-reference: inverter-kitt"},
	{"part, mass", "machines/tug.yaml", "mass: 4 kg", "mass: 4 km", "quantity: 4 km"},
	{"part, unknown kind", "machines/tug.yaml", "line A, kind: line", "line A, kind: pipe", "wrong-type: pipe"},
	{"part, alike is a list", "machines/tug.yaml", "alike: lines", "alike: [lines]", "wrong-type: ["},
	{"part, carries an unknown fluid", "machines/tug.yaml", "carries: lift-oil", "carries: lift-oill", "unknown-reference: lift-oill"},
	{"part, only with an unknown option", "machines/tug.yaml", "lid, held-by", "lid, only-with: cabb, held-by", "unknown-reference: cabb"},
	{"part, unknown field", "machines/tug.yaml", "lid, held-by", "lid, colour: red, held-by", "unknown-field: colour"},
	{"part is a text", "machines/tug.yaml", "lid: { name: lid, held-by: { lid-bolt: 4 }, guards: [traction], mass: 4 kg }", "lid: lid", "wrong-type: lid"},
	{"fastener, torque", "machines/tug.yaml", "torque: 9 N·m", "torque: 9 bar", "quantity: 9 bar"},
	{"fastener, torque with a comma", "machines/tug.yaml", "torque: 9 N·m", "torque: 9,5 N·m", "quantity: 9,5 N·m"},
	{"fastener, width", "machines/tug.yaml", "across-flats: 10 mm", "across-flats: 10 kg", "quantity: 10 kg"},
	{"fastener is a text", "machines/tug.yaml", "line-nut: { name: line nut, across-flats: 17 mm, torque: 20 N·m }", "line-nut: M17", "wrong-type: M17"},
	{"fluid, unknown supply", "machines/tug.yaml", "supply: oil,", "supply: oill,", "unknown-reference: oill"},
	{"fluid, bleed", "machines/tug.yaml", "bleed: yes", "bleed: sometimes", "wrong-type: sometimes"},
	{"fluid, capacity", "machines/tug.yaml", "capacity: 2 L", "capacity: 2 Lx", "quantity: 2 Lx"},
	{"fluid, capacity in kg", "machines/tug.yaml", "capacity: 2 L", "capacity: 2 kg", "quantity: 2 kg"},
	{"fluid, needed by an unknown energy", "machines/tug.yaml", "bleed: yes, needed-by: [lift]", "bleed: yes, needed-by: [lif]", "unknown-reference: lif"},
	{"fluid is a text", "machines/tug.yaml", "lift-oil: { name: lift oil, supply: oil, capacity: 2 L, bleed: yes, needed-by: [lift] }", "lift-oil: oil", "wrong-type: oil"},
	{"setting, needed by an unknown energy", "machines/tug.yaml", "4 bar, needed-by: [lift]", "4 bar, needed-by: [lif]", "unknown-reference: lif"},
	{"setting is a text", "machines/tug.yaml", "relief: { name: relief valve, value: 180 ± 4 bar, needed-by: [lift] }", "relief: valve", "wrong-type: valve"},

	// A register.
	{"tools, syntax", "register/tools.yaml", "name: padlock", `name: "padlock`, `syntax: "padlock, kind: lock }`},
	{"hazards, syntax", "register/hazards.yaml", "name: charge", `name: "charge`, `syntax: "charge, nature: The bus holds 360 V dc., harm: death, consequence: A shock kills., avoid: [Prove it dead first.], wear: [gloves], of: traction }`},
	{"holds, syntax", "register/holds.yaml", "name: bus wait", `name: "bus wait`, `syntax: "bus wait, kind: wait, for: 5 min, of: traction }`},
	{"supplies, syntax", "register/supplies.yaml", "name: hydraulic oil", `name: "hydraulic oil`, `syntax: "hydraulic oil, unit: L, hazards: [oil-skin] }`},
	{"roles, syntax", "register/roles.yaml", "name: Fitter", `name: "Fitter`, `syntax: "Fitter }`},
	{"tool, kind", "register/tools.yaml", "kind: socket", "kind: sockit", "wrong-type: sockit"},
	{"tool, no kind", "register/tools.yaml", ", kind: socket,", ",", "missing-field: socket-10"},
	{"tool, kind by another name", "register/tools.yaml", ", kind: socket,", ", knd: socket,", "unknown-field: knd"},
	{"tool, fits is a text", "register/tools.yaml", "fits: [10 mm]", "fits: 10 mm", "wrong-type: 10 mm"},
	{"tool, range", "register/tools.yaml", "range: 2 to 25 N·m", "range: 2-25 N·m", "quantity: 2-25 N·m"},
	{"tool is a text", "register/tools.yaml", "socket-10: { name: 10 mm socket, kind: socket, fits: [10 mm] }", "socket-10: a socket", "wrong-type: a socket"},
	{"tool, needs an unknown role", "register/tools.yaml", "fits: [10 mm]", "fits: [10 mm], needs: [fiter]", "unknown-reference: fiter"},
	{"lock, kind", "register/tools.yaml", "kind: lock", "kind: look", "wrong-type: look"},
	{"wear, kind", "register/tools.yaml", "kind: ppe", "kind: pepe", "wrong-type: pepe"},
	{"hazard, harm", "register/hazards.yaml", "harm: death", "harm: deth", "wrong-type: deth"},
	{"hazard, unknown energy", "register/hazards.yaml", "of: traction", "of: tractionn", "unknown-reference: tractionn"},
	{"hazard, of is a list", "register/hazards.yaml", "of: traction", "of: [traction]", "wrong-type: ["},
	{"hazard, of an unknown name", "register/hazards.yaml", "of: traction", "off: traction", "unknown-field: off"},
	{"hazard, unknown wear", "register/hazards.yaml", "wear: [gloves]", "wear: [glove]", "unknown-reference: glove"},
	{"hazard, avoid is a text", "register/hazards.yaml", "avoid: [Prove it dead first.]", "avoid: Prove it dead first.", "wrong-type: Prove it dead first."},
	{"hazard is a text", "register/hazards.yaml", "oil-skin: { name: oil on skin, nature: Oil takes the fat out of skin., harm: minor-injury, consequence: The skin cracks., avoid: [Wash it off.] }", "oil-skin: bad for the skin", "wrong-type: bad for the skin"},
	{"hold, kind", "register/holds.yaml", "kind: measure, of: traction", "kind: mesure, of: traction", "wrong-type: mesure"},
	{"hold, limit", "register/holds.yaml", "limit: at most 5 V dc", "limit: at most 5 bar", "quantity: at most 5 bar"},
	{"hold, limit in words", "register/holds.yaml", "limit: at most 5 V dc", "limit: low", "quantity: low"},
	{"hold, no limit", "register/holds.yaml", ", limit: at most 5 V dc", "", "missing-field: bus-dead"},
	{"hold, limit by another name", "register/holds.yaml", ", limit: at most 5 V dc", ", lmit: at most 5 V dc", "unknown-field: lmit"},
	{"hold, unknown tool", "register/holds.yaml", "with: tester", "with: testr", "unknown-reference: testr"},
	{"hold, proved on an unknown tool", "register/holds.yaml", "proved-on: proving-unit", "proved-on: proving-unitt", "unknown-reference: proving-unitt"},
	{"hold, proved-on by another name", "register/holds.yaml", "proved-on:", "provd-on:", "unknown-field: provd-on"},
	{"hold, unknown energy", "register/holds.yaml", "measure, of: traction", "measure, of: tractionn", "unknown-reference: tractionn"},
	{"hold, of is a list", "register/holds.yaml", "measure, of: traction", "measure, of: [traction]", "wrong-type: ["},
	{"hold, of by another name", "register/holds.yaml", "measure, of: traction", "measure, off: traction", "unknown-field: off"},
	{"wait, unknown energy", "register/holds.yaml", "5 min, of: traction", "5 min, of: tractionn", "unknown-reference: tractionn"},
	{"wait, time", "register/holds.yaml", "for: 5 min", "for: 5 bar", "quantity: 5 bar"},
	{"wait, no time", "register/holds.yaml", " for: 5 min,", "", "missing-field: bus-wait"},
	{"look, unknown fluid", "register/holds.yaml", "of: lift-oil", "of: lift-oill", "unknown-reference: lift-oill"},
	{"look, looks-for", "register/holds.yaml", "looks-for: leak", "looks-for: leek", "wrong-type: leek"},
	{"sign, unknown role", "register/holds.yaml", "by: foreman", "by: forman", "unknown-reference: forman"},
	{"hold is a text", "register/holds.yaml", "bus-dead: { name: bus voltage, kind: measure, of: traction, what: voltage across the bus, limit: at most 5 V dc, with: tester, proved-on: proving-unit }", "bus-dead: bus voltage", "wrong-type: bus voltage"},
	{"supply, unit", "register/supplies.yaml", "unit: L", "unit: litr", "quantity: litr"},
	{"supply, unit is a list", "register/supplies.yaml", "unit: L", "unit: [L]", "wrong-type: ["},
	{"supply, unit by another name", "register/supplies.yaml", "unit: L", "units: L", "unknown-field: units"},
	{"supply, unknown hazard", "register/supplies.yaml", "hazards: [oil-skin]", "hazards: [oil-skinn]", "unknown-reference: oil-skinn"},
	{"supply, hazards is a text", "register/supplies.yaml", "hazards: [oil-skin]", "hazards: oil-skin", "wrong-type: oil-skin"},
	{"supply is a text", "register/supplies.yaml", "oil: { name: hydraulic oil, unit: L, hazards: [oil-skin] }", "oil: hydraulic oil", "wrong-type: hydraulic oil"},
	{"role is a text", "register/roles.yaml", "fitter: { name: Fitter }", "fitter: Fitter", "wrong-type: Fitter"},

	// The shop.
	{"shop, syntax", "shop.yaml", "title: Test shop", `title: "Test shop`, `syntax: "Test shop`},
	{"shop, unknown lock", "shop.yaml", "tool: padlock", "tool: padlok", "unknown-reference: padlok"},
	{"shop, locks is a text", "shop.yaml", "{ tool: padlock, each: person }", "padlock", "wrong-type: padlock"},
	{"shop, locks each", "shop.yaml", "each: person", "each: persn", "wrong-type: persn"},
	{"shop, limit", "shop.yaml", "locks:", "limits: { safe-voltage-dc: 60 bar }\nlocks:", "quantity: 60 bar"},
	{"shop, lift", "shop.yaml", "locks:", "limits: { lift: 23 m }\nlocks:", "quantity: 23 m"},
	{"shop, also", "shop.yaml", "locks:", "also: es\nlocks:", "wrong-type: es"},
}

func TestUnreadManualIsClean(t *testing.T) {
	if got := textPlaces(findIn(unreadManual(t))); len(got) > 0 {
		t.Errorf("found:\n\t%s", strings.Join(got, "\n\t"))
	}
}

func TestUnread(t *testing.T) {
	spoilEach(t, unreadCases, func() map[string]string { return unreadManual(t) })
}

// translatedManual has a page in a second language, and all that it prints in it.
func translatedManual() map[string]string {
	return map[string]string{
		"shop.yaml":                "title: Test shop\nemergency: Shout.\nalso: [es]\n",
		"shop.es.yaml":             "emergency: Grite.\n",
		"register/tools.yaml":      "gauge: { name: feeler gauge, kind: other, kept: shelf 1 }\nrag: { name: rag, kind: other, kept: shelf 2 }\n",
		"register/tools.es.yaml":   "gauge: { name: galga, kept: estante 1 }\nrag: { name: trapo, kept: estante 2 }\n",
		"register/hazards.yaml":    "hot-oil: { name: hot oil, nature: The oil is hot., harm: minor-injury, consequence: It burns., avoid: [Wait first.] }\n",
		"register/hazards.es.yaml": "hot-oil: { name: aceite caliente, nature: El aceite está caliente., consequence: Quema., avoid: [Espere antes.] }\n",
		"procedures/a.md":          "---\ntitle: Wipe the plug\ntools: [gauge, rag]\nhazards: [hot-oil]\n---\n## Work\n\n1. Wipe the plug with the [rag](tool:rag). Mind [the hot oil](hazard:hot-oil).\n2. Measure it with the [feeler gauge](tool:gauge).\n",
		"procedures/a.es.md":       "---\ntitle: Limpiar el tapón\n---\n## Trabajo\n\n1. Limpie el tapón con el [trapo](tool:rag). Atento [al aceite caliente](hazard:hot-oil).\n2. Mida con la [galga](tool:gauge).\n",
	}
}

var unreadTextCases = []unreadCase{
	{"tool, unknown id", "register/tools.es.yaml", "gauge:", "gage:", "unknown-reference: gage"},
	{"tool, unknown field", "register/tools.es.yaml", "kept: estante 1", "kep: estante 1", "unknown-field: kep"},
	{"tool, empty text", "register/tools.es.yaml", "kept: estante 1", "kept:", "wrong-type: kept"},
	{"tool is a text", "register/tools.es.yaml", "rag: { name: trapo, kept: estante 2 }", "rag: trapo", "wrong-type: trapo"},
	{"tools, syntax", "register/tools.es.yaml", "estante 2 }", "estante 2", "syntax: {"},
	{"tools is a list", "register/tools.es.yaml", "gauge: { name: galga, kept: estante 1 }\nrag: { name: trapo, kept: estante 2 }", "[galga, trapo]", "wrong-type: ["},
	{"hazard, unknown id", "register/hazards.es.yaml", "hot-oil:", "hot-oill:", "unknown-reference: hot-oill"},
	{"hazard, unknown field", "register/hazards.es.yaml", "consequence:", "consequense:", "unknown-field: consequense"},
	{"shop, unknown field", "shop.es.yaml", "emergency:", "emergncy:", "unknown-field: emergncy"},
	{"shop is a text", "shop.es.yaml", "emergency: Grite.", "Grite.", "wrong-type: Grite."},

	// What is read and not there is told all the same.
	{"tool, left out", "register/tools.es.yaml", "rag: { name: trapo, kept: estante 2 }\n", "", "not-translated: rag"},
	{"tool, no name", "register/tools.es.yaml", "name: galga, ", "", "not-translated: gauge"},
}

func TestUnreadTexts(t *testing.T) {
	spoilEach(t, append(unreadTextCases, unreadCase{name: "nothing"}), translatedManual)
}

// at is the file of the finding: what is not translated is told at the original.
func (c unreadCase) at() string {
	if strings.HasPrefix(c.want, "not-translated") {
		return strings.Replace(c.file, ".es", "", 1)
	}
	return c.file
}

// TestUnreadRoles: whose role is not known is not said to have none.
func TestUnreadRoles(t *testing.T) {
	for file, cases := range map[string][]unreadCase{
		"not-authorised": {
			{"inspector", "readings/people.csv", "fitter@", "fiter@", "unknown-reference: fiter"},
			{"issuer", "readings/people.csv", "Boss,checker", "Boss,cheker", "unknown-reference: cheker"},
		},
		"unwitnessed": {{"witness", "readings/people.csv", "teacher@", "teecher@", "unknown-reference: teecher"}},
	} {
		spoilEach(t, cases, func() map[string]string {
			archive, err := txtar.ParseFile("cases/" + file + ".txtar")
			if err != nil {
				t.Fatal(err)
			}
			return casefile.Part(archive, "good/")
		})
	}
}

// spoilEach spoils a manual once for each case.
func spoilEach(t *testing.T, cases []unreadCase, manual func() map[string]string) {
	t.Helper()
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			files := manual()
			if !strings.Contains(files[c.file], c.was) {
				t.Fatalf("%s does not hold %q", c.file, c.was)
			}
			files[c.file] = strings.Replace(files[c.file], c.was, c.is, 1)
			var want []string
			if c.want != "" {
				want = []string{c.at() + ": " + c.want}
			}
			if got := textPlaces(findIn(files)); !slices.Equal(got, want) {
				t.Errorf("found:\n\t%s\nwanted:\n\t%s", strings.Join(got, "\n\t"), strings.Join(want, "\n\t"))
			}
		})
	}
}

func unreadManual(t *testing.T) map[string]string {
	t.Helper()
	archive, err := txtar.ParseFile("testdata/unread.txtar")
	if err != nil {
		t.Fatal(err)
	}
	return casefile.Part(archive, "")
}

// textPlaces are findings as file: code: text, the text being what stands there.
func textPlaces(list []finding.Finding) []string {
	var out []string
	for _, f := range list {
		text, _, _ := strings.Cut(f.At.Text(), "\n")
		out = append(out, fmt.Sprintf("%s: %s: %s", f.At.Path(), f.Code, text))
	}
	return out
}

// A hold that could not be read may be a wait, whose time stands in the register: of
// its step no time is asked, of the step behind it one is. The same of a hold whose
// kind could not be read.
func TestNoTimeIsAskedOfWhatMayBeAWait(t *testing.T) {
	for hold, link := range map[string]string{
		"drying: { name: drying, kind: wait, for: 20 min }":   "dryign",
		"drying: { name: drying, kind: wayt, for: 20 min }":   "drying",
		"drying: { name: drying, kind: [wait], for: 20 min }": "drying",
	} {
		var told []string
		for _, f := range findIn(map[string]string{
			"register/holds.yaml": hold + "\n",
			"procedures/job.md":   "---\ntitle: Job\nholds: [drying]\n---\n## Work\n\n1. Sweep the floor. [](time:8min)\n2. [Wait until it is dry](hold:" + link + ").\n3. Look at the floor.\n",
		}) {
			if f.Code == noTime.Code {
				told = append(told, place(f))
			}
		}
		if want := []string{"procedures/job.md:9:4: no-time"}; !slices.Equal(told, want) {
			t.Errorf("%s: told %v, want %v", hold, told, want)
		}
	}
}
