package numbers

import (
	"fmt"
	"maps"
	"regexp"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// A test manual is a shop with a machine and a few tools, and what a case puts
// in their place or beside them: path → text. Where something should be found,
// the code stands in double brackets right before it, ⟦tool-does-not-fit⟧, and
// is taken out before the text is read. Each place must have its finding and
// each finding its place.
type files map[string]string

var base = files{
	"shop.yaml": "title: Test shop\nalso: [es]\n",
	"register/tools.yaml": `
socket-10: { name: 10 mm socket, kind: socket, fits: [10 mm] }
socket-13: { name: 13 mm socket, kind: socket, fits: [13 mm], or: [spanner-set] }
spanner-set: { name: spanner set, kind: spanner, fits: [10 mm, 13 mm, 17 mm] }
crow-foot-17: { name: 17 mm crow-foot, kind: spanner, fits: [17 mm], adds: 45 mm }
hex-key-6: { name: 6 mm hex key, kind: screwdriver, fits: [hex 6 mm] }
old-set: { name: old socket set, kind: socket }
wrench-5-25: { name: small torque wrench, kind: torque-wrench, range: 5 to 25 N·m, length: 280 mm }
wrench-20-100: { name: "torque wrench, 20 to 100 N·m", kind: torque-wrench, range: 20 to 100 N·m, length: 380 mm }
wrench-no-range: { name: found wrench, kind: torque-wrench }
angle-gauge: { name: angle gauge, kind: angle-gauge }
hoist: { name: shop hoist, kind: lifting }
stand: { name: axle stand, kind: aid }
`,
	"register/holds.yaml": `
short-wait: { name: short wait, kind: wait, for: 2 min, of: traction }
long-wait: { name: capacitor wait, kind: wait, for: 3 min, of: traction }
pad: { name: brake pad, kind: measure, what: thickness, limit: at least 2 mm, near: 2 to 3 mm, again-in: 50 h }
density: { name: density, kind: measure, what: density, limit: 1.22 to 1.28 }
dose: { name: chlorine, kind: measure, what: chlorine, limit: at most 60 mg/L }
cure: { name: cure, kind: wait, for: 24 to 72 h }
bus-dead: { name: bus voltage, kind: measure, what: drop from 210 bar, limit: at most 5 V dc, of: traction }
`,
	"register/supplies.yaml": "oil: { name: hydraulic oil, unit: L, ghs: [H304] }\n",
	"machines/tug.yaml": `
name: Yard tug
options: { cab: Enclosed cab }
points: { plug: { name: service plug } }
energies:
  traction: { name: traction battery, kind: electric, voltage: 360 V dc, points: [plug], stored: { capacitance: 1000 µF, resistance: 100 kΩ } }
  lift: { name: lift hydraulics, kind: pressure, pressure: 180 bar, points: [plug] }
  air: { name: shop air, kind: pressure, pressure: 6 to 8 bar, points: [] }
  plate: { name: hot plate, kind: heat, temperature: 165 °C, points: [] }
parts:
  seat: { name: seat base, held-by: { seat-bolt: 4 }, mass: 14 kg }
  lid: { name: inverter lid, held-by: { lid-bolt: 8, clip: 2 }, mass: 30 kg }
  block: { name: valve block, held-by: { lid-bolt: 2 }, mass: 620 kg }
  line: { name: lift line, kind: line, held-by: { line-nut: 1 } }
  head: { name: head, held-by: { head-bolt: 6 } }
  screen: { name: screen, held-by: { key-bolt: 2 } }
fasteners:
  seat-bolt: { name: seat bolt, thread: M8x1.25, class: 8.8, across-flats: 13 mm, torque: 22 N·m, condition: dry, retorque: after 8 h }
  lid-bolt: { name: lid bolt, thread: M6x1, class: 8.8, across-flats: 10 mm, torque: 9 N·m }
  line-nut: { name: line nut, across-flats: 17 mm, torque: 60 N·m }
  head-bolt: { name: head bolt, across-flats: 13 mm, stages: [22 N·m, 60 N·m, 90°] }
  key-bolt: { name: key bolt, drive: hex 6 mm, torque: 22 N·m }
  clip: { name: clip }
  knob: { name: knob, thread: M6x1, torque: hand }
fluids:
  lift-oil: { name: lift oil, supply: oil, capacity: 4 L }
settings:
  relief: { name: relief valve, value: 180 ± 4 bar }
`,
}

// procedure makes a procedure for the tug of front matter lines and steps.
func procedure(front string, steps ...string) string {
	var b strings.Builder
	b.WriteString("---\ntitle: Job\nfor: tug\n" + front + "\n---\n\n## Strip\n\n")
	n := 0
	for _, s := range steps {
		if rest, is := strings.CutPrefix(s, "## "); is {
			fmt.Fprintf(&b, "\n## %s\n\n", rest)
			n = 0
			continue
		}
		if n > 0 || !strings.HasPrefix(s, "lead: ") {
			n++
			fmt.Fprintf(&b, "%d. %s\n", n, s)
			continue
		}
		b.WriteString(strings.TrimPrefix(s, "lead: ") + "\n\n")
	}
	return b.String()
}

// job is a manual with one procedure.
func jobOf(front string, steps ...string) files {
	return files{"procedures/job.md": procedure(front, steps...)}
}

func (f files) with(more files) files {
	all := maps.Clone(f)
	maps.Copy(all, more)
	return all
}

// replaced is the base's file with one text changed.
func replaced(name, old, new string) files {
	if !strings.Contains(base[name], old) {
		panic(name + " does not hold " + old)
	}
	return files{name: strings.Replace(base[name], old, new, 1)}
}

var mark = regexp.MustCompile(`⟦[^⟧]*⟧`)

// unmark takes the marks out of a manual and returns what they ask for.
func unmark(marked files) (plain files, want []string) {
	plain = files{}
	for name, text := range marked {
		for {
			at := mark.FindStringIndex(text)
			if at == nil {
				break
			}
			code := strings.Trim(text[at[0]:at[1]], "⟦⟧")
			before := text[:at[0]]
			line := strings.Count(before, "\n") + 1
			column := utf8.RuneCountInString(before[strings.LastIndex(before, "\n")+1:]) + 1
			want = append(want, fmt.Sprintf("%s:%d:%d: %s", name, line, column, code))
			text = before + text[at[1]:]
		}
		plain[name] = text
	}
	return plain, want
}

var today = model.Date{Year: 2026, Month: 11, Day: 25}

// look judges a manual that binds without an error.
func look(t testing.TB, f files) []finding.Finding {
	t.Helper()
	m, bad := bind.Manual(source.FromText(f))
	for _, b := range bad {
		t.Fatalf("the test manual is wrong: %s: %s: %s", place(b), b.Message, b.Mend)
	}
	return finding.Sort(all(m))
}

func place(f finding.Finding) string {
	line, col := f.At.LineCol()
	return fmt.Sprintf("%s:%d:%d: %s", f.At.Path(), line, col, f.Code)
}

// expect judges the base with a case's files over it, against their marks.
func expect(t *testing.T, cases map[string]files) {
	t.Helper()
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			plain, want := unmark(base.with(c))
			for _, f := range look(t, plain) {
				if i := slices.Index(want, place(f)); i >= 0 {
					want = slices.Delete(want, i, i+1)
					continue
				}
				t.Errorf("surplus: %s (%s)", place(f), f.Message)
			}
			for _, w := range want {
				t.Errorf("missing: %s", w)
			}
		})
	}
}

// says judges one manual with one finding, and compares its words.
func says(t *testing.T, c files, message, mend string) {
	t.Helper()
	plain, _ := unmark(base.with(c))
	found := look(t, plain)
	if len(found) != 1 || found[0].Message != message || found[0].Mend != mend {
		for _, f := range found {
			t.Errorf("got  %s\n     %s", f.Message, f.Mend)
		}
		t.Errorf("want %s\n     %s", message, mend)
	}
}

func TestBaseIsClean(t *testing.T) { expect(t, map[string]files{"the base alone": nil}) }

// mustFindNothing judges a manual that has a fault of another kind: what rests
// on it is not judged.
func mustFindNothing(t *testing.T, why string, f files) {
	t.Helper()
	m, bad := bind.Manual(source.FromText(f))
	if len(bad) == 0 {
		t.Errorf("%s: the test manual has no fault", why)
	}
	for _, found := range all(m) {
		t.Errorf("%s: %s (%s)", why, place(found), found.Message)
	}
}

// all is everything that the rules find in a manual.
func all(m *model.Manual) []finding.Finding {
	found := Whole(m, today)
	for _, p := range slices.Concat(m.Procedures, m.Translated) {
		found = append(found, Procedure(m, &Book{}, p)...)
	}
	return found
}
