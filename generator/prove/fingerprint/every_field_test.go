package fingerprint

import (
	"fmt"
	"maps"
	"reflect"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// notActedOn are the fields that no reader acts on, by type. The format names
// kept, owned, number, calibration and the summary; who the words are found by
// (also-called, symptoms), the procedure's own state and history, an entry's
// small picture and how long a role lasts are the same. Every other field of
// every type that a step can name must move the fingerprint: a new field that
// is forgotten here and in the form fails the test.
var notActedOn = map[string]string{
	"Tool":      "number picture kept owned calibration",
	"Supply":    "number picture kept",
	"Hazard":    "number picture",
	"Hold":      "number picture",
	"Role":      "number picture renew-every was",
	"Procedure": "title summary status instead also-called symptoms was accepts",
}

// full is a manual whose one procedure names a thing of every type.
var full = map[string]string{
	"shop.yaml":              "title: Shop\n",
	"register/tools.yaml":    "wrench: { name: torque wrench, kind: torque-wrench, range: 4 to 50 N·m }\npin: { name: pin, kind: lock }\n",
	"register/hazards.yaml":  "jet: { name: oil jet, nature: Oil is under pressure., harm: serious-injury, consequence: It cuts., avoid: [Stand aside.] }\n",
	"register/holds.yaml":    "look: { name: seat, kind: look, what: the seat, good: dry }\n",
	"register/supplies.yaml": "oil-32: { name: oil, unit: L }\n",
	"register/roles.yaml":    "fitter: { name: Fitter }\n",
	"machines/press.yaml": "name: Press\npoints: { valve: { name: valve, where: left, lock: yes } }\nenergies: { oil: { kind: pressure, pressure: 200 bar, points: [valve] } }\n" +
		"parts: { lid: { held-by: { bolt: 4 } }, line-a: { kind: line, alike: lines, carries: lube }, line-b: { alike: lines } }\n" +
		"fasteners: { bolt: { torque: 22 N·m }, clip: { name: clip } }\nfluids: { lube: { supply: oil-32 } }\nsettings: { relief: { value: 180 bar } }\norders: { round: [left, right] }\n",
	"procedures/lid.md": "---\ntitle: Lid off\nfor: press\npeople: 2\nneeds: [fitter]\nhazards: [jet]\ntools: [wrench]\nholds: [look]\nsupplies: { oil-32: 1 L }\n---\n## Work\n\n" +
		"1. [Shut](isolate:oil), [lock](lock:valve). [](hazard:jet) [](role:fitter)\n2. [](hold:look) [Lift](remove:lid) with the [](tool:wrench).\n" +
		"3. [Mark](mark:lines), [undo](loosen:clip), [fill](fill:lube) with [](supply:oil-32), [set](alter:relief).\n4. [In turn](each:round):\n   1. Wipe it. [](time:2min)\n",
}

func quantityOf(text string) quantity.Quantity {
	for _, d := range []quantity.Dimension{quantity.Length, quantity.Torque} {
		if q, err := quantity.Parse(text, d); err == nil {
			return q
		}
	}
	panic(text)
}

// another makes a field's value another one, of whatever type it is.
func another(t *testing.T, v reflect.Value) {
	t.Helper()
	switch x := v.Addr().Interface().(type) {
	case *string:
		*x += " other"
		*x = strings.TrimSpace(*x)
	case *bool:
		*x = !*x
	case *int:
		*x += 3
	case *quantity.Quantity:
		*x = quantityOf("77 mm")
	case *[]quantity.Quantity:
		*x = append(*x, quantityOf("77 mm"))
	case *quantity.Stretch:
		x.Least, x.Most = quantityOf("77 mm"), quantityOf("78 mm")
	case *quantity.Limit:
		limit, err := quantity.ParseLimit("at most 77 N·m", quantity.Torque)
		if err != nil {
			t.Fatal(err)
		}
		*x = limit
	case *[]string:
		*x = append(*x, "other")
	case *[]model.Pair:
		*x = append(*x, model.Pair{Key: "other", Value: "thing"})
	case *[]model.State:
		*x = append(*x, model.State{ID: "lid", Word: "off"})
	case *model.Condition:
		x.Option = "cab"
	case *model.Stored:
		x.Yes = true
	case **model.Calibration:
		*x = &model.Calibration{Last: model.Date{Year: 2026, Month: 5, Day: 4}}
	case *[]model.HazardUse:
		met := *(*x)[0].To
		met.Harm = "death"
		(*x)[0].Met = &met
	case **model.Lift:
		*x = &model.Lift{Coupling: "poor"}
	case **model.LiftEnd:
		*x = &model.LiftEnd{Vertical: quantityOf("77 mm")}
	case *[]model.Acceptance:
		*x = append(*x, model.Acceptance{Code: "vague"})
	default:
		anotherRef(t, v)
	}
}

// anotherRef changes a Ref, a list of them, or of Uses.
func anotherRef(t *testing.T, v reflect.Value) {
	t.Helper()
	if v.Kind() == reflect.Slice {
		if v.Len() > 0 && v.Index(0).FieldByName("Amount").IsValid() {
			v.Index(0).FieldByName("Amount").SetString("9 L")
			return
		}
		one := reflect.New(v.Type().Elem()).Elem()
		one.FieldByName("ID").SetString("other")
		v.Set(reflect.Append(v, one))
		return
	}
	id := v.FieldByName("ID")
	if !id.IsValid() {
		t.Fatalf("the test does not know how to change a %s: teach it", v.Type())
	}
	id.SetString("other")
	v.FieldByName("To").SetZero() // what was named before is not what this leads to
}

// fieldsOf are the fields of a struct by their names in the source, those of what
// is inlined too.
func fieldsOf(v reflect.Value) map[string]reflect.Value {
	out := map[string]reflect.Value{}
	for i := range v.NumField() {
		name, inline, _ := strings.Cut(v.Type().Field(i).Tag.Get("yaml"), ",")
		switch {
		case name == "-":
		case name == "" && strings.HasPrefix(inline, "inline"):
			maps.Copy(out, fieldsOf(v.Field(i)))
		case name != "":
			out[name] = v.Field(i)
		}
	}
	return out
}

func boundFull(t *testing.T) (*model.Manual, *model.Procedure) {
	t.Helper()
	m, found := bind.Manual(source.FromText(full))
	if len(found) > 0 {
		t.Fatalf("the test's manual has a finding: %v", found)
	}
	return m, m.Procedures[0]
}

// thingsOf is one thing of every type that a step can name.
func thingsOf(m *model.Manual) []any {
	x := m.Machines[0]
	return []any{
		m.Tools[0], m.Hazards[0], m.Holds[0], m.Supplies[0], m.Roles[0],
		x.Points[0], x.Energies[0], x.Parts[0], x.Fasteners[0], x.Fasteners[1], x.Fluids[0], x.Settings[0], m.Procedures[0],
	}
}

func TestEveryFieldMovesItOrIsListed(t *testing.T) {
	m, _ := boundFull(t)
	for n, thing := range thingsOf(m) {
		kind := reflect.TypeOf(thing).Elem().Name()
		for name := range fieldsOf(reflect.ValueOf(thing).Elem()) {
			m, p := boundFull(t) // fresh: the change stays in it
			before := NewCache().Form(p).Print()
			another(t, fieldsOf(reflect.ValueOf(thingsOf(m)[n]).Elem())[name])
			moved := NewCache().Form(p).Print() != before
			if want := !slices.Contains(strings.Fields(notActedOn[kind]), name); moved != want && !byLink(kind, name) {
				t.Errorf("%s of a %s: moved %v, want %v", name, kind, moved, want)
			}
		}
	}
}

// insides are the values inside entries that have fields of their own.
func insides(m *model.Manual) []any {
	lid, oil := m.Machines[0].Parts[0], m.Machines[0].Energies[0]
	lid.Lift = &model.Lift{Coupling: "poor", To: &model.LiftEnd{}}
	oil.Stored.Yes = true
	return []any{lid.Lift, lid.Lift.To, &oil.Stored}
}

// What a lift and what is stored say is acted on, each field of it.
func TestEveryFieldInsideMovesIt(t *testing.T) {
	m, _ := boundFull(t)
	for n, inside := range insides(m) {
		for name := range fieldsOf(reflect.ValueOf(inside).Elem()) {
			m, p := boundFull(t)
			field := fieldsOf(reflect.ValueOf(insides(m)[n]).Elem())[name]
			before := NewCache().Form(p).Print()
			another(t, field)
			if NewCache().Form(p).Print() == before {
				t.Errorf("%s of a %T moves nothing", name, inside)
			}
		}
	}
}

// byLink are fields that are no words of the entry: the front matter's list of
// holds says what the steps say, and its tools' amounts are written at the link.
func byLink(kind, name string) bool { return kind == "Procedure" && name == "holds" }

// Words: any word of any step that becomes another moves it, and its case and
// a comma too, for a reader reads them; white space and line ends do not.
func TestEveryWordOfAStepMovesIt(t *testing.T) {
	words := []string{"Shut the valve", "lock it", "Lift the lid off", "look at the seat", "Put on", "Tell the foreman"}
	before := formOf(t, press, "lid")
	rapid.Check(t, func(t *rapid.T) {
		files := maps.Clone(press)
		phrase := rapid.SampledFrom(words).Draw(t, "phrase")
		at := rapid.IntRange(0, len(strings.Fields(phrase))-1).Draw(t, "word")
		changed := strings.Fields(phrase)
		changed[at] = rapid.SampledFrom([]string{changed[at] + ",", strings.ToUpper(changed[at]), "not " + changed[at], "x" + changed[at]}).Draw(t, "change")
		edit{"procedures/lid.md", phrase, strings.Join(changed, " ")}.in(t, files)
		now := formOf(t, files, "lid")
		if now.Print() == before.Print() {
			t.Fatalf("%q for %q did not move it", changed, phrase)
		}
		if said := Changes(before, now, english); len(said) != 1 || !strings.Contains(said[0], strings.Join(changed, " ")) {
			t.Fatalf("%q for %q is told as %q", changed, phrase, said)
		}
		spaced := maps.Clone(press)
		edit{"procedures/lid.md", phrase, strings.Join(strings.Fields(phrase), rapid.SampledFrom([]string{"  ", "\n   ", " \n   ", "\t"}).Draw(t, "space"))}.in(t, spaced)
		if formOf(t, spaced, "lid").Print() != before.Print() {
			t.Fatal("white space moved it")
		}
	})
}

// A step that any reader does comes, goes, or changes its place: it moves.
func TestEveryStepMovesIt(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		steps := []string{"Sit down.", "Stand up.", "Look at the seat. [](hold:seat-look)", "Open the lid.", "Go home."}
		write := func(list []string) Form {
			text := "---\ntitle: Lid\nholds: [seat-look]\n---\n## Work\n\n"
			for i, s := range list {
				text += fmt.Sprintf("%d. %s\n", i+1, s)
			}
			files := maps.Clone(press)
			files["procedures/lid.md"] = text
			return formOf(t, files, "lid")
		}
		order := rapid.Permutation(steps).Draw(t, "order")[:rapid.IntRange(1, len(steps)).Draw(t, "n")]
		before, now := write(steps), write(order)
		if same := slices.Equal(steps, order); same != (before.Print() == now.Print()) || same != (len(Changes(before, now, english)) == 0) {
			t.Fatalf("the same: %v; the fingerprints: %s and %s; told: %q", same, before.Print(), now.Print(), Changes(before, now, english))
		}
	})
}

// Whatever moves of a hazard, a hold, an energy or a point where it is cut, and
// every amount of anything, and what names hazards and energies, cannot be kept from the readers.
func TestNoDangerMovesUnnoticed(t *testing.T) {
	guarded := strings.Fields("Hazard Hold Energy Point")
	named := strings.Fields("hazards ghs prove-dead guards needed-by expects leaves")
	m, _ := boundFull(t)
	for n, thing := range thingsOf(m) {
		kind := reflect.TypeOf(thing).Elem().Name()
		for name, field := range fieldsOf(reflect.ValueOf(thing).Elem()) {
			amount := strings.Contains(field.Type().String(), "quantity.") && kind != "Role"
			listed := slices.Contains(strings.Fields(notActedOn[kind]), name)
			if listed || !amount && !slices.Contains(guarded, kind) && !slices.Contains(named, name) {
				continue
			}
			m, p := boundFull(t)
			before := NewCache().Form(p)
			another(t, fieldsOf(reflect.ValueOf(thingsOf(m)[n]).Elem())[name])
			if !DangerMoved(before, NewCache().Form(p)) {
				t.Errorf("%s of a %s moved, and the readers could be spared it", name, kind)
			}
		}
	}
}
