package decode

import (
	"fmt"
	"reflect"
	"strings"
	"testing"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
	"baybinder/generator/read/syntax"
)

func node(t *testing.T, text string) *syntax.Node {
	t.Helper()
	f := position.NewFile("a.yaml", text)
	n, findings := syntax.YAML(f, 0, len(f.Text))
	if len(findings) > 0 {
		t.Fatalf("%q: %v", text, findings)
	}
	return n
}

// decoded reads a text into out and returns what is told, as code and message.
func decoded(t *testing.T, text string, out any) []string {
	t.Helper()
	n := node(t, text)
	d := &Decoder{}
	d.Struct(n, out, finding.Say("this entry"), n.At)
	var told []string
	for _, f := range d.Findings {
		told = append(told, f.Code+": "+f.Message)
	}
	return told
}

func TestFieldsAreReadByTheirTags(t *testing.T) {
	var tool model.Tool
	told := decoded(t, "name: torque wrench\nkind: torque-wrench\nrange: 20 to 100 N·m\nlength: 38 cm\nfits: [13 mm, T30]\nowned: 2\nor: [a, b]\ncalibration: { every: 12 months, units: { tw-07: 2026-03-02 } }\n", &tool)
	if len(told) > 0 || tool.Unread {
		t.Fatal(told)
	}
	got := fmt.Sprint(tool.Name, tool.Kind, tool.Range, tool.Length, tool.Fits, tool.Owned, tool.Or[1].ID, tool.Calibration.Every, tool.Calibration.Units[0].Name, tool.Calibration.Units[0].Last)
	if want := "torque wrenchtorque-wrench20 to 100 N·m38 cm[13 mm T30]2b12 monthstw-072026-03-02"; strings.ReplaceAll(got, " ", "") != strings.ReplaceAll(want, " ", "") {
		t.Errorf("read %s, want %s", got, want)
	}
}

// Every kind of amount that has units may be shown in those of the shop, those that
// version 4 of the format added too.
func TestUnitsToShow(t *testing.T) {
	for text, want := range map[string]string{
		"{ torque: [N·m, lbf·ft] }":        "[{torque [N·m lbf·ft]}]",
		"{ conductivity: [µS/cm, mS/cm] }": "[{conductivity [µS/cm mS/cm]}]",
		"{ concentration: [mg/L, g/L] }":   "[{concentration [mg/L g/L]}]",
		"{ colour: [red] }":                "wrong-type: colour is not a kind of amount",
		"{ conductivity: [mg/L] }":         "quantity: mg/L is not a unit of conductivity",
	} {
		var shop model.Shop
		told := decoded(t, "title: x\nshow-units: "+text+"\n", &shop)
		got := fmt.Sprint(shop.ShowUnits)
		if len(told) > 0 {
			got = strings.Join(told, "; ")
		}
		if got != want {
			t.Errorf("%s: %s, want %s", text, got, want)
		}
	}
}

// What each kind of field refuses, and what it says.
func TestFieldsThatCannotBeRead(t *testing.T) {
	for text, want := range map[string]string{
		"name: x\nkind: socket\nkepd: a":                                           "unknown-field: this entry has no field kepd",
		"name: x\nkind: hammer":                                                    `wrong-type: kind cannot be "hammer"`,
		"name: x":                                                                  "missing-field: this entry has no kind",
		"kind: socket":                                                             "missing-field: this entry has no name",
		"name: [x]\nkind: socket":                                                  "wrong-type: name is a list; it must be a text",
		"name:\nkind: socket":                                                      "wrong-type: name is nothing; it must be a text",
		"name: x\nkind: socket\nowned: 1.5":                                        `wrong-type: owned is "1.5"; it must be a whole number`,
		"name: x\nkind: socket\nowned: 010":                                        `wrong-type: owned is "010"; it must be a whole number`,
		"name: x\nkind: socket\nowned: -1":                                         `wrong-type: owned is "-1"; it must be a whole number`,
		"name: x\nkind: socket\nowned: +1":                                         `wrong-type: owned is "+1"; it must be a whole number`,
		"name: x\nkind: socket\nowned: 99999999999999999999":                       `wrong-type: owned is "99999999999999999999"; it must be a whole number`,
		"name: x\nkind: socket\nfits: 13 mm":                                       `wrong-type: fits is "13 mm"; it must be a list`,
		"name: x\nkind: socket\nfits: [[13 mm]]":                                   "wrong-type: fits is a list; it must be a text",
		"name: x\nkind: socket\nlength: 38":                                        `quantity: length: "38" has no unit`,
		"name: x\nkind: socket\nlength: 38 bar":                                    `quantity: length: "38 bar" is a pressure, not a length`,
		"name: x\nkind: socket\nlength: [38 mm]":                                   "wrong-type: length is a list; it must be an amount",
		"name: x\nkind: socket\ncalibration: yearly":                               "wrong-type: calibration is a text; it must be a map of fields",
		"name: x\nkind: socket\ncalibration: { last: 2026-03-02 }":                 "missing-field: calibration has no every",
		"name: x\nkind: socket\ncalibration: { every: 12 months, last: 2.3.2026 }": `wrong-type: last is "2.3.2026"; it must be a day of the calendar`,
		"name: x\nkind: socket\nor: [\"\"]":                                        `wrong-type: or is ""; it must be the id of a thing`,
		"name: x\nkind: socket\nor: { a: b }":                                      "wrong-type: or is a map; it must be a list",
	} {
		var tool model.Tool
		told := decoded(t, text, &tool)
		if len(told) != 1 || told[0] != want {
			t.Errorf("%q:\ntold %v\nwant %s", text, told, want)
		}
		if label := strings.Contains(want, "has no name"); tool.Misread == label {
			t.Errorf("%q: unread is %v", text, tool.Misread)
		}
	}
}

func TestSwitches(t *testing.T) {
	for text, want := range map[string]bool{"yes": true, "no": false} {
		var p model.Point
		if told := decoded(t, "lock: "+text, &p); len(told) > 0 || p.Lock != want {
			t.Errorf("%s is read as %v %v", text, p.Lock, told)
		}
	}
	for _, text := range []string{"true", "on", "Yes", "NO", "1", "[yes]"} {
		var p model.Point
		if told := decoded(t, "lock: "+text, &p); len(told) != 1 || !strings.HasPrefix(told[0], "wrong-type: ") {
			t.Errorf("%s is told as %v", text, told)
		}
	}
}

// A list of ids may hold amounts, or be a map from id to amount; an empty
// amount means the entry as it is.
func TestListsWithAmounts(t *testing.T) {
	for text, want := range map[string]string{
		"tools: [a, b: 4, c]":           "a= b=4 c=",
		"tools: { a: , b: 4 }":          "a= b=4",
		"tools:\n- a\n- b: 4\n  c: 5\n": "a= b=4 c=5",
		"tools: []":                     "",
	} {
		var p model.Procedure
		told := decoded(t, "title: x\n"+text, &p)
		var got []string
		for _, u := range p.Tools {
			got = append(got, u.ID+"="+u.Amount)
		}
		if strings.Join(got, " ") != want || len(told) > 0 {
			t.Errorf("%q is read as %v %v", text, got, told)
		}
	}
	for _, text := range []string{"tools: a", "tools: [[a]]", "tools: [a: [b]]", "tools: [a: { b: c }]", "tools:"} {
		var p model.Procedure
		if told := decoded(t, "title: x\n"+text, &p); len(told) != 1 || !strings.HasPrefix(told[0], "wrong-type: ") {
			t.Errorf("%q is told as %v", text, told)
		}
	}
}

// The ids of the contract: a to z, 0 to 9 and single hyphens, at most 64, and
// none that Windows keeps for itself whatever the ending ("Naming Files,
// Paths, and Namespaces" in the Windows documentation lists them).
func TestIDs(t *testing.T) {
	for _, id := range []string{"a", "7", "socket-13", "a-b-c", "null", "no", "010", "con-1", "com", "com10", "lpt", "nul-plug", strings.Repeat("a", 64)} {
		if why := BadIDWhy(id); !why.IsZero() {
			t.Errorf("%s %s", id, why)
		}
	}
	for _, id := range []string{"", "A", "a_b", "a b", "a--b", "-a", "a-", "é", "a.b", "a/b", "con", "prn", "aux", "nul", "com0", "com1", "com9", "lpt1", "lpt9", strings.Repeat("a", 65)} {
		if BadIDWhy(id).IsZero() {
			t.Errorf("%q is taken for an id", id)
		}
	}
}

func TestBadIDsAreMended(t *testing.T) {
	for id, want := range map[string]string{
		"Socket_13": "write socket-13", "señal": "write senal", "…": "use a to z, 0 to 9 and single hyphens",
		"con": "take another name", strings.Repeat("a", 65): "take another name",
	} {
		d := &Decoder{}
		if d.ID(id, position.Pos{}) || d.Findings[0].Mend != want {
			t.Errorf("%s: %v, want %s", id, d.Findings, want)
		}
	}
}

// Every field of the model that has a name has a case in the decoder: a new
// kind of field without one would panic at the first manual that uses it.
func TestEveryFieldOfTheModelCanBeRead(t *testing.T) {
	for _, text := range []string{"x", "[x]", "{ x: y }", "[{ x: y }]", "[[x]]", "{ x: [y] }", "{ x: { y: z } }", "''", "2 mm"} {
		n := node(t, "value: "+text).Get("value")
		for _, model := range []any{
			model.Shop{}, model.Tool{}, model.Hazard{}, model.Hold{}, model.Supply{}, model.Role{}, model.Machine{}, model.Point{}, model.Energy{},
			model.Part{}, model.Fastener{}, model.Fluid{}, model.Setting{}, model.Procedure{}, model.HazardOverride{}, model.Plan{}, model.Locks{},
			model.Limits{}, model.Writing{}, model.Calibration{}, model.Stored{}, model.Unit{},
		} {
			kind := reflect.TypeOf(model)
			for _, f := range fieldsOf(kind) {
				v := reflect.New(kind).Elem()
				(&Decoder{}).value(n, v.FieldByIndex(f.index), f, n.At)
				if f.dim == quantity.None && kind.FieldByIndex(f.index).Tag.Get("dim") != "" {
					t.Errorf("%s.%s has a dimension that there is not", kind.Name(), f.name)
				}
			}
		}
	}
}

// What a field that has another name here is told.
func TestOtherNamesOfFields(t *testing.T) {
	for text, want := range map[string]string{
		"name: x\nweight: 14 kg":         "did you mean mass?",
		"name: x\nmass: 3\nwheels: four": "the fields are: name,",
	} {
		var part model.Part
		n, d := node(t, text), &Decoder{}
		d.Struct(n, &part, finding.Say("x"), n.At)
		if last := d.Findings[len(d.Findings)-1]; !strings.HasPrefix(last.Mend, want) {
			t.Errorf("%q: the mend is %q, want %q", text, last.Mend, want)
		}
	}
	var hazard model.Hazard
	n, d := node(t, "name: x\nsignal-word: WARNING"), &Decoder{}
	d.Struct(n, &hazard, finding.Say("x"), n.At)
	if got, want := d.Findings[0].Mend, "take it out: the signal word is worked out from harm and happens"; got != want {
		t.Errorf("the mend is %q, want %q", got, want)
	}
}

func TestADecimalCommaInBracketsIsToldOnce(t *testing.T) {
	for text, want := range map[string]string{
		"{ name: x, mass: 3,5 kg }":     "write 3.5 kg, with a decimal point",
		"{ name: x, mass: 1,500 g }":    "write 1.500 g, with a decimal point, or 1500 g without the comma",
		"{ name: x, mass: 0,125 kg }":   "write 0.125 kg, with a decimal point",
		"{ name: x, mass: 3, 5 kg }":    "", // a space: perhaps another thing
		"{ name: x, mass: \"3,5 kg\" }": "write 3.5, with a decimal point",
	} {
		var part model.Part
		n, d := node(t, text), &Decoder{}
		d.Struct(n, &part, finding.Say("x"), n.At)
		if want == "" {
			if len(d.Findings) != 2 {
				t.Errorf("%q: told %v", text, d.Findings)
			}
			continue
		}
		if len(d.Findings) != 1 || d.Findings[0].Mend != want || !part.Misread {
			t.Errorf("%q: told %v, want the mend %q", text, d.Findings, want)
		}
	}
}

// A field that could not be read is lost, and no other; a field inside a field
// has a dot in its name. A field by another name is the one that was meant.
func TestLostFields(t *testing.T) {
	for text, want := range map[string]string{
		"name: x\nkind: socket\nfits: 13 mm":                   "fits",
		"name: x\nkind: socket\nowned: many\nlength: 38 kg":    "owned length",
		"name: x\nknd: socket":                                 "kind",
		"name: x\nkind: socket\nlocation: shelf 4":             "kept",
		"name: x\nkind: socket\ncolour: red":                   "",
		"name: x\nkind: socket\ncalibration: { every: often }": "calibration calibration.every",
		"name: x\nkind: socket\ncalibration: yearly":           "calibration calibration.every calibration.last",
		"name: x": "kind",
		"name: x\nkind: socket\ncalibration: { every: 1 years, last: soon }": "calibration calibration.last",
	} {
		tool := &model.Tool{}
		decoded(t, text, tool)
		var lost []string
		for _, f := range []string{"name", "kind", "fits", "owned", "length", "kept", "calibration", "calibration.every", "calibration.last"} {
			if tool.Lost(f) {
				lost = append(lost, f)
			}
		}
		if got := strings.Join(lost, " "); got != want {
			t.Errorf("%q: lost %q, want %q", text, got, want)
		}
		if tool.Unread {
			t.Errorf("%q: nothing of it is said to be read", text)
		}
	}
}
