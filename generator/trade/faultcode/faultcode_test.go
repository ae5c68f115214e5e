package faultcode

import (
	"fmt"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// Known: SEEN.

// A code reader's manual, p. 18, sorts the ranges. P0101, P0301 and P0420, with
// P02A7 for figures above 9, are the codes of workshop manual copies and a code
// site; the areas are in our words.
func TestParse(t *testing.T) {
	for text, want := range map[string]Code{
		"P0101": {"P0101", Powertrain, Generic, "fuel and air"},
		"P0301": {"P0301", Powertrain, Generic, "ignition, misfire"},
		"P0420": {"P0420", Powertrain, Generic, "extra emission control"},
		"P02A7": {"P02A7", Powertrain, Generic, "fuel and air, injectors"},
		"p0a80": {"P0A80", Powertrain, Generic, "hybrid drive"},
		"P1234": {"P1234", Powertrain, Manufacturer, "fuel and air, injectors"},
		"P2463": {"P2463", Powertrain, Generic, "extra emission control"},
		"P3000": {"P3000", Powertrain, Manufacturer, ""}, "P33FF": {"P33FF", Powertrain, Manufacturer, ""},
		"P3400": {"P3400", Powertrain, Generic, ""}, "P3999": {"P3999", Powertrain, Generic, ""},
		"C0035": {"C0035", Chassis, Generic, ""}, "C1201": {"C1201", Chassis, Manufacturer, ""}, "C2100": {"C2100", Chassis, Manufacturer, ""},
		"B1342": {"B1342", Body, Manufacturer, ""}, "B3000": {"B3000", Body, Generic, ""},
		"U0100": {"U0100", Network, Generic, ""}, "U2011": {"U2011", Network, Manufacturer, ""}, "U3000": {"U3000", Network, Generic, ""},
	} {
		if got, err := Parse(text); err != nil || got != want {
			t.Errorf("%s is %+v, %v; want %+v", text, got, err, want)
		}
	}
}

func TestParseRefuses(t *testing.T) {
	for text, why := range map[string]string{
		"P4101":  "has a second character that is not 0 to 3",
		"X0301":  "begins with none of P, C, B and U",
		"P030":   "is not five characters long",
		"P/301":  "has a second character that is not 0 to 3",
		"P03011": "is not five characters long",
		"P0G01":  "has a character that is not 0 to 9 or A to F",
		"P03O1":  "has a character that is not 0 to 9 or A to F", // the letter O
		"PO301":  "has a second character that is not 0 to 3",
		"":       "is no code",
	} {
		code, err := Parse(text)
		if err == nil {
			t.Errorf("%q is %v", text, code)
			continue
		}
		if got, want := err.Error(), fmt.Sprintf("%q %s", text, why); got != want {
			t.Errorf("got %s, want %s", got, want)
		}
	}
}

func TestWords(t *testing.T) {
	for got, want := range map[string]string{
		Powertrain.String(): "powertrain", Chassis.String(): "chassis", Body.String(): "body", Network.String(): "network",
		Generic.String(): "generic", Manufacturer.String(): "manufacturer's own",
	} {
		if got != want {
			t.Errorf("got %q, want %q", got, want)
		}
	}
}

// said is what is found in a text: codes, and what is wrong with those that are none.
func said(text string) string {
	var out []string
	for _, f := range Find(text) {
		if f.Err != nil {
			out = append(out, "not "+text[f.Start:f.End])
			continue
		}
		if text[f.Start:f.End] != f.Code.Text {
			out = append(out, "misplaced")
		}
		out = append(out, f.Code.Text)
	}
	return strings.Join(out, " ")
}

func TestFind(t *testing.T) {
	for text, want := range map[string]string{
		"When the tug shows P0301, go on.":            "P0301",
		"P0101/P0102 or (U0100)":                      "P0101 P0102 U0100",
		"«B1342»: the lamp. C0035.":                   "B1342 C0035",
		"P0101–P0104":                                 "P0101 P0104",
		"Press P50 and P100, panel C1, bolt M8x1.25":  "",
		"Serial C12345, number P012, B10, U2":         "",
		"Stock number LW-P0101 and P0101-2, P0101.4":  "",
		"part_P0101, #P0101, éP0101, P0101é":          "",
		"Store it in B4711 beside BEACH and CAFE1":    "", // no code, and nothing says that it should be
		"fault code P5123":                            "not P5123",
		"Fault codes: P0G01":                          "not P0G01",
		"the fault P03O1 and a part P03O1":            "not P03O1",
		"avería P9101, código de error C0035":         "not P9101 C0035",
		"fault code E021 of another machine":          "", // not ours to judge
		"fault code E0213 of another machine":         "",
		"fault code P03a1":                            "", // capitals alone
		"default P5123, a code P5123, by fault. P512": "",
		"":            "",
		"p0301":       "",
		"at P0301P":   "",
		"P03":         "",
		"1P030 P030A": "P030A",
		"0P0301 9P0301 AP0301 ZP0301 aP0301 zP0301": "",
		"fault code P03Z0":                          "not P03Z0",
		"fault code P03[0":                          "", // no capital
	} {
		if got := said(text); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// Whatever code is written into a sentence is found there, and nowhere else.
func TestFindWhatIsThere(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		code := rapid.StringMatching(`[PCBU][0-3][0-9A-F]{3}`).Draw(t, "code")
		before := rapid.StringMatching(`[a-z ,;(]{0,20} `).Draw(t, "before")
		behind := rapid.StringMatching(`(?:[ ,;):/][a-z ]{0,20})?`).Draw(t, "behind")
		found := Find(before + code + behind)
		if len(found) != 1 || found[0].Code.Text != code || found[0].Start != len(before) || found[0].Err != nil {
			t.Fatalf("%q: %v", before+code+behind, found)
		}
	})
}

func FuzzFind(f *testing.F) {
	f.Add("fault code P0301, P5123")
	f.Add("é\xff P0301")
	f.Fuzz(func(t *testing.T, text string) {
		last := 0
		for _, found := range Find(text) {
			if found.Start < last || found.End <= found.Start || found.End > len(text) {
				t.Fatalf("%q: %v", text, found)
			}
			last = found.End
		}
	})
}
