package quantity_test

import (
	"slices"
	"strings"
	"testing"

	"baybinder/generator/base/quantity"
)

// TestFind gives each amount as it is printed, with the text that it stands
// for in quotes; a tolerance has a ± before it.
func TestFind(t *testing.T) {
	for _, c := range []struct {
		text string
		want []string
	}{
		{"Tighten to 110 N·m.", []string{`110 N·m "110 N·m"`}},
		{"Tighten to 110 Nm (81 ft-lb), then 60°.", []string{`110 N·m "110 Nm"`, `81 lbf·ft "81 ft-lb"`, `60° "60°"`}},
		{"110\u00A0N·m and 110\u202FN·m", []string{`110 N·m "110` + "\u00A0" + `N·m"`, `110 N·m "110` + "\u202F" + `N·m"`}},
		{"Turn it by\n60\n° more", []string{"60° \"60\n°\""}},
		{"20 to 100 N·m", []string{`20 N·m "20"`, `100 N·m "100 N·m"`}},
		{"20–100 N·m, 20-100 N·m, 20 – 100 N·m", []string{
			`20 N·m "20"`, `100 N·m "100 N·m"`, `20 N·m "20"`, `100 N·m "100 N·m"`, `20 N·m "20"`, `100 N·m "100 N·m"`}},
		{"Between 20 and 100 N·m", []string{`20 N·m "20"`, `100 N·m "100 N·m"`}},
		{"Between 1/2 and 3/4 in", []string{`1/2 in "1/2"`, `3/4 in "3/4 in"`}},
		{"between 20 and 100 N·m", []string{`20 N·m "20"`, `100 N·m "100 N·m"`}},
		{"bolts 20 and 100 N·m", []string{`100 N·m "100 N·m"`}},
		{"-20 to -5 °C", []string{`−20 °C "-20"`, `−5 °C "-5 °C"`}},
		{"from −20 °C to 65 °C", []string{`−20 °C "−20 °C"`, `65 °C "65 °C"`}},
		{"between -3 and 3 s", []string{`−3 s "-3"`, `3 s "3 s"`}},
		{"-0.5 to 0.5 g", []string{`−0.5 g "-0.5"`, `0.5 g "0.5 g"`}},
		{"-5 to -1 s", nil},
		{"(-0.8 bar)", []string{`−0.8 bar "-0.8 bar"`}},
		{"valve 3 -20 °C", []string{`−20 °C "-20 °C"`}},
		{"60°-90°", []string{`60° "60°"`, `90° "90°"`}},
		{"12 V/24 V dc", []string{`12 V "12 V"`, `24 V dc "24 V dc"`}},
		{"2.0 ± 0.1 mm", []string{`2.0 mm "2.0"`, `±0.1 mm "0.1 mm"`}},
		{"2.0 mm ± 0.1 mm", []string{`2.0 mm "2.0 mm"`, `±0.1 mm "0.1 mm"`}},
		{"2.0 mm±0.1 mm", []string{`2.0 mm "2.0 mm"`, `±0.1 mm "0.1 mm"`}},
		{"5 +/- 1 bar", []string{`5 bar "5"`, `±1 bar "1 bar"`}},
		{"at most 5 V dc", []string{`5 V dc "5 V dc"`}},
		{"above 60 Vdc or 30 V a.c.", []string{`60 V dc "60 Vdc"`, `30 V ac "30 V a.c."`}},
		{"a 12 V DC-DC converter", []string{`12 V "12 V"`}},
		{"Wait 1 h 30 min, then 90s", []string{`1 h 30 min "1 h 30 min"`, `90 s "90s"`}},
		{"Wait 1h30min.", []string{`1 h 30 min "1h30min"`}},
		{"Wait 60 minutes", []string{`60 min "60 minutes"`}},
		{"Wait 5 Minuten, 2 horas, 3 segundos", []string{`5 min "5 Minuten"`, `2 h "2 horas"`, `3 s "3 segundos"`}},
		{"4 litres, 2 Liter, 3 litros or 1 millilitre", []string{`4 L "4 litres"`, `2 L "2 Liter"`, `3 L "3 litros"`, `1 mL "1 millilitre"`}},
		{"2 Umdrehungen, 3 vueltas, eine Viertelumdrehung, 2 vueltas por minuto", []string{`2 turns "2 Umdrehungen"`, `3 turns "3 vueltas"`}},
		{"1450 min-1, 1450 min⁻¹, 900 U/min", []string{`1450 rpm "1450 min-1"`, `1450 rpm "1450 min⁻¹"`, `900 rpm "900 U/min"`}},
		{"30 min-1 h", []string{`30 min "30 min"`, `1 h "1 h"`}},
		{"6 bares, 10 amperios, 0,5 Ohm", []string{`6 bar "6 bares"`, `10 A "10 amperios"`, `0.5 Ω "0,5 Ohm"`}},
		{"3/4 of a turn, 1/4 de vuelta, 3/4 of an hour, 3/4 of the way", []string{`3/4 turns "3/4 of a turn"`, `1/4 turns "1/4 de vuelta"`, `3/4 h "3/4 of an hour"`}},
		{"1 1/2 of a turn", []string{`1 1/2 turns "1 1/2 of a turn"`}},
		{"14 kilos, 22 newton metres, 24 volts dc", []string{`14 kg "14 kilos"`, `22 N·m "22 newton metres"`, `24 V dc "24 volts dc"`}},
		{"40 degrees Celsius, 40 Grad Celsius", []string{`40 °C "40 degrees Celsius"`, `40 °C "40 Grad Celsius"`}},
		{"5 min per pair", []string{`5 min "5 min"`}},
		{"Wait 5 min 30 N·m", []string{`5 min "5 min"`, `30 N·m "30 N·m"`}},
		{"every 12 months or 50 h", []string{`12 months "12 months"`, `50 h "50 h"`}},
		{"7,5 bar, 0,125 mm", []string{`7.5 bar "7,5 bar"`, `0.125 mm "0,125 mm"`}},
		{"a 13 mm socket and a 1 in drive", []string{`13 mm "13 mm"`, `1 in "1 in"`}},
		{"1 in. and 2in in all", []string{`1 in "1 in"`, `2 in "2in"`}},
		{"5 lbf in the hand", []string{`5 lbf "5 lbf"`}},
		{"heat to 80°C", []string{`80 °C "80°C"`}},
		{"half, 50 %", []string{`50 % "50 %"`}},
		{"press 5 m in", []string{`5 m "5 m"`}},
		{"+60°", []string{`60° "60°"`}},

		{"", nil},
		{"no figures at all", nil},
		{"the voltage –5 V", nil}, // a dash, or a minus sign
		{"2 litres per minute, 2 litros por minuto, 2 Liter pro Minute", nil}, // a rate, and no volume
		{"on its 4 feet, with 2 meters", nil},
		{"step 4", nil},
		{"Go back to step 4.", nil},
		{"undo 4 bolts", nil},
		{"M8x1.25", nil},
		{"an M8x1.25 V-thread", nil},
		{"M8×1.25 mm", nil},
		{"the 4-pin plug", nil},
		{"5 V-belts", nil},
		{"put 4 in the box", nil},
		{"the 4 in 10 that fail", nil},
		{"W012", nil},
		{"TG-4 m", nil},
		{"ISO 898-1 class 8.8", nil},
		{"3/8 kg", nil},
		{"1,500 psi", nil},
		{"1 500 psi", nil},
		{"1,500.5 psi", nil},
		{"2026-11-02", nil},
		{"14:30 h", nil},
		{"010 bar", nil},
		{"1.2.3 V", nil},
		{"5 kg/m³", nil},
		{"5 m²", nil},
		{"5 m^2", nil},
		{"5 N*m", nil},
		{"5 N·mm", nil},
		{"4 each", nil},
		{"-5 N·m", nil},
		{"the 2nd and 3rd", nil},
		{"99999999999999999999 V", nil},
		{"5 amps of 10", nil},
		{"1h30x", nil},
		{"5 A\u030A", nil}, // A with a ring
	} {
		var got []string
		for _, f := range quantity.Find(c.text) {
			said := f.String() + ` "` + c.text[f.Start:f.End] + `"`
			if f.Tolerance {
				said = "±" + said
			}
			got = append(got, said)
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("in %q: found %q, want %q", c.text, got, c.want)
		}
	}
}

// A long text must not be searched again from each of its figures: two megabytes take
// a tenth of a second, and would take so long if they were that the whole run is ended
// and says where it was.
func TestFindIsLinear(t *testing.T) {
	for _, piece := range []string{"1-", "1x", "1 to ", "1 in", "1 in-", "1h", "1 h ", "1,", "1 ± ", "9", "1 \u00A0", "between 1 and "} {
		quantity.Find(strings.Repeat(piece, 2<<20/len(piece)))
	}
}
