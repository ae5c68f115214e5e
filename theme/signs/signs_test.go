package signs

import (
	"fmt"
	"strings"
	"testing"
)

// Known: SEEN.

// seen holds the names of ISO 7010, names as listed in a public graphics
// package and an encyclopaedia article. Names that no list confirmed are not
// here.
const seen = `
E001 Emergency exit
E003 First aid
E004 Emergency telephone
E009 Doctor
E020 Emergency stop button
F001 Fire extinguisher
F016 Fire blanket
M001 General mandatory action
M002 Refer to instruction manual/booklet
M003 Wear ear protection
M004 Wear eye protection
M005 Connect an earth terminal to the ground
M006 Disconnect mains plug from electrical outlet
M007 Opaque eye protection must be worn
M008 Wear safety footwear
M009 Wear protective gloves
M010 Wear protective clothing
M011 Wash your hands
M012 Use handrail
M013 Wear a face shield
M014 Wear head protection
M015 Wear high-visibility clothing
M016 Wear a mask
M017 Wear respiratory protection
M018 Wear a safety harness
M019 Wear a welding mask
M021 Disconnect before carrying out maintenance or repair
M026 Use protective apron
M028 Keep locked
P003 No open flame
W001 General warning sign
W002 Explosive material
W003 Radioactive material or ionizing radiation
W004 Laser beam
W005 Non-ionizing radiation
W006 Magnetic field
W007 Floor-level obstacle
W008 Drop (fall)
W009 Biological hazard
W010 Low temperature/freezing conditions
W011 Slippery surface
W012 Electricity
W014 Forklift trucks and other industrial vehicles
W015 Overhead load
W016 Toxic material
W017 Hot surface
W018 Automatic start-up
W019 Crushing
W020 Overhead obstacle
W021 Flammable material
W022 Sharp element
W023 Corrosive substance
W024 Crushing of hands
W025 Counterrotating rollers
W026 Battery charging
W027 Optical radiation
W028 Oxidizing substance
W029 Pressurized cylinder
W035 Falling objects
W038 Sudden loud noise
`

// seenGHS holds the names of the GHS pictograms as a public list gives them,
// but for GHS06, which it shortens.
const seenGHS = `
GHS01 Exploding bomb
GHS02 Flame
GHS03 Flame over circle
GHS04 Gas cylinder
GHS05 Corrosion
GHS07 Exclamation mark
GHS08 Health hazard
GHS09 Environment
`

func TestNames(t *testing.T) {
	n := 0
	for line := range strings.Lines(seen + seenGHS) {
		number, name, ok := strings.Cut(strings.TrimSpace(line), " ")
		if !ok {
			continue
		}
		n++
		s, ok := Find(number)
		if !ok {
			t.Errorf("%s: not found", number)
		} else if s.Name != name {
			t.Errorf("%s: %q, want %q", number, s.Name, name)
		}
	}
	if n != 68 {
		t.Errorf("%d names compared, want 68", n)
	}
}

// A sheet in circulation gives these numbers other meanings. They are wrong.
func TestNotTheBadCopy(t *testing.T) {
	for number, wrong := range map[string][]string{
		"W002": {"atmosphere"},
		"W012": {"vehicle", "truck"},
		"W018": {"load", "overhead"},
		"W021": {"slip"},
		"M006": {"hear", "ear "},
	} {
		s, ok := Find(number)
		if !ok {
			t.Fatalf("%s: not found", number)
		}
		drawn, err := parse(s.SVG())
		if err != nil {
			t.Fatal(err)
		}
		for _, w := range wrong {
			if strings.Contains(strings.ToLower(s.Name), w) || strings.Contains(strings.ToLower(drawn.title), w) {
				t.Errorf("%s is %q, drawn as %q, the meaning of the bad copy", number, s.Name, drawn.title)
			}
		}
	}
}

func TestTable(t *testing.T) {
	all := All()
	if len(all) != 106 {
		t.Errorf("%d signs, want 106", len(all))
	}
	for i, s := range all {
		if i > 0 && all[i-1].Number >= s.Number {
			t.Errorf("%s stands after %s", s.Number, all[i-1].Number)
		}
		letters := strings.TrimRight(s.Number, "0123456789")
		if letters != string(s.Family) {
			t.Errorf("%s: family %q", s.Number, s.Family)
		}
		if s.Name == "" {
			t.Errorf("%s has no name", s.Number)
		}
		if got, ok := Find(s.Number); !ok || got != s {
			t.Errorf("Find(%q) = %v, %v", s.Number, got, ok)
		}
	}
	all[0].Name = "changed"
	if All()[0].Name == "changed" {
		t.Error("All hands out the table itself")
	}
	for _, number := range []string{"", "w012", "W12", "W013", "W0120", "alert", "Electricity"} {
		if s, ok := Find(number); ok {
			t.Errorf("Find(%q) = %v", number, s)
		}
	}
}

func TestEveryRowADrawingAndEveryDrawingARow(t *testing.T) {
	entries, err := files.ReadDir(".")
	if err != nil {
		t.Fatal(err)
	}
	drawn := map[string]bool{}
	for _, e := range entries {
		number := strings.TrimSuffix(e.Name(), ".svg")
		if number == "alert" { // no registered sign
			continue
		}
		drawn[number] = true
		if _, ok := Find(number); !ok {
			t.Errorf("%s: a drawing without a row", e.Name())
		}
	}
	for _, s := range All() {
		if !drawn[s.Number] {
			t.Errorf("%s: a row without a drawing", s.Number)
		}
	}
	if (Sign{Number: "alert"}).SVG() != nil || (Sign{}).SVG() != nil || (Sign{Number: "W013"}).Inline("", "") != "" {
		t.Error("a drawing for a sign that is not in the table")
	}
}

func TestInline(t *testing.T) {
	for _, s := range All() {
		in := s.Inline("sign", `5 < 6 "volts" & more`)
		want := `<svg class="sign" role="img" aria-label="5 &lt; 6 &#34;volts&#34; &amp; more" viewBox="0 0 64 64"><`
		if !strings.HasPrefix(in, want) {
			t.Errorf("%s: begins %.120s", s.Number, in)
			continue
		}
		for _, no := range []string{"<?xml", "<title", "xmlns", "\n", "><title", s.Number} {
			if strings.Contains(in, no) {
				t.Errorf("%s: %q in %s", s.Number, no, in)
			}
		}
		// Put back what the file has and the page has not: the shapes must be the same.
		back := `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 64 64"><` + strings.TrimPrefix(in, want)
		got, err := parse([]byte(back))
		if err != nil {
			t.Errorf("%s: %v", s.Number, err)
			continue
		}
		file, err := parse(s.SVG())
		if err != nil {
			t.Fatal(err)
		}
		if fmt.Sprint(got.shapes) != fmt.Sprint(file.shapes) {
			t.Errorf("%s: not the drawing of the file", s.Number)
		}
	}
	s, _ := Find("M013")
	if in := s.Inline("", ""); !strings.HasPrefix(in, `<svg role="img" aria-label="Wear a face shield" viewBox=`) {
		t.Errorf("begins %.80s", in)
	}
	if in := s.Inline(`a" onload="x`, ""); strings.Contains(in, `onload="`) {
		t.Errorf("class not escaped: %.80s", in)
	}
}

func TestAlert(t *testing.T) {
	in := Alert()
	if !strings.HasPrefix(in, `<svg class="alert" aria-hidden="true" viewBox="0 0 64 64"><path`) || !strings.HasSuffix(in, "</svg>") {
		t.Errorf("%s", in)
	}
	b, err := files.ReadFile("alert.svg")
	if err != nil {
		t.Fatal(err)
	}
	d, err := parse(b)
	if err != nil {
		t.Fatal(err)
	}
	if len(d.colour) != 1 || !d.colour["currentColor"] {
		t.Errorf("colours %v", d.colour)
	}
	if strings.Count(d.shapes[0].attr["d"], "z") != 3 || d.shapes[0].attr["fill-rule"] != "evenodd" {
		t.Error("the mark is not cut out of the triangle")
	}
}

func TestNearest(t *testing.T) {
	for in, want := range map[string]string{
		"W012": "W012", "w12": "W012", "W-012": "W012", " w 12 ": "W012", "WO12": "W012", "W0012": "W012", "W.012": "W012",
		"GHS5": "GHS05", "ghs-05": "GHS05", "GHS005": "GHS05", "GHSO5": "GHS05",
		"W013":        "W012", // one digit from many signs, one count from two: the lower
		"W030":        "W035", // one digit, five counts
		"W112":        "W012",
		"M025":        "M026",
		"P035":        "P034",
		"E002":        "E001",
		"electricity": "W012", "No smoking": "P002",
		"W999": "", "GHS10": "", "X012": "", "012": "", "W": "", "": "", "W01A": "", "W123456": "", "banana": "", "W-": "", "WΩ12": "",
	} {
		if got := Nearest(in); got != want {
			t.Errorf("Nearest(%q) = %q, want %q", in, got, want)
		}
	}
	for _, s := range All() {
		if got := Nearest(strings.ToLower(s.Number)); got != s.Number {
			t.Errorf("Nearest of %s in small letters = %q", s.Number, got)
		}
		if got := Nearest(s.Name); got != s.Number {
			t.Errorf("Nearest(%q) = %q, want %q", s.Name, got, s.Number)
		}
	}
}

// A sign whose name alone is known is not drawn.
func TestUndrawnNames(t *testing.T) {
	for number, name := range Undrawn() {
		if _, drawn := Find(number); drawn || name == "" {
			t.Errorf("%s, %q, is drawn or has no name", number, name)
		}
	}
}
