package page

import (
	"fmt"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"baybinder/generator/base/quantity"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"

	"baybinder/generator/model"
)

// siteOf makes the pages' values of a manual that is written as texts.
func siteOf(t *testing.T, files map[string]string) *Site {
	t.Helper()
	if files["shop.yaml"] == "" {
		files["shop.yaml"] = "title: Shop\nshow-units: { torque: [N·m, lbf·ft], pressure: [bar, psi] }\n"
	}
	m, findings := bind.Manual(source.FromText(files))
	for _, f := range findings {
		if f.Code == bind.LanguageUnknown.Code {
			continue // what is borrowed then is looked at
		}
		t.Fatalf("%s: %s [%s]", f.At.Path(), f.Message, f.Code)
	}
	return NewSite(m, walk.All(m), nil, model.Date{Year: 2026, Month: 5, Day: 4}, false)
}

const cardMachine = `name: Rig
points: { plug: { name: plug, where: left } }
energies: { bus: { name: bus, kind: electric, voltage: 360 V dc, points: [plug], stored: { capacitance: 1000 µF, resistance: 100 kΩ } } }
parts:
  lid: { name: lid, held-by: { lid-bolt: 5, long-bolt: 4 } }
fasteners:
  lid-bolt: { name: lid bolt, thread: M10x1.5, class: 8.8, across-flats: 16 mm, torque: 50 N·m, sequence: star }
  long-bolt: { name: long bolt, stages: [25 N·m, 60°, 30°], start: "by hand, two turns" }
  clip: { name: clip }
`

// Stages are never added up (tightening in stages, an OEM repair text as
// quoted in the trade notes): three lines, and no line with their sum.
func TestTorqueCard(t *testing.T) {
	s := siteOf(t, map[string]string{"machines/rig.yaml": cardMachine})
	card := s.TorqueCard(s.Manual.Machines[0])
	if len(card.Rows) != 3 {
		t.Fatalf("%d rows for 3 fasteners", len(card.Rows))
	}
	if got := strings.Join(card.Rows[1].Torques, " | "); got != "1: 25 N·m (18.4 lbf·ft) | 2: 60° | 3: 30°" {
		t.Error(got)
	}
	// 50 N·m is 36.878 lbf·ft (GNU units 2.22).
	if got := strings.Join(card.Rows[0].Torques, " | "); got != "50 N·m (37 lbf·ft)" {
		t.Error(got)
	}
	// F = 50 N·m/(0.20 · 10 mm) = 25 kN: a worked example on an engineering
	// site, "Bolt torque", M10 8.8.
	if !strings.HasPrefix(card.Rows[0].Clamp, "25") || !strings.Contains(card.Rows[0].Working.String(), "T/(K·d)") {
		t.Errorf("%s: %s", card.Rows[0].Clamp, card.Rows[0].Working)
	}
	if card.Rows[2].Clamp != "" || len(card.Rows[2].Torques) != 0 {
		t.Error("a clip has a torque")
	}
}

// A bolt in torque stages is judged at its last one: F = 50 N·m/(0.20 · 10 mm) =
// 25 kN, the worked example above, whatever the stages before it. After an angle
// nothing is worked out, and the card and the machine's page say so (a bolt that
// is turned past a torque is pulled by the angle: common practice, no source).
func TestLoadOfStages(t *testing.T) {
	s := siteOf(t, map[string]string{"machines/rig.yaml": `name: Rig
fasteners:
  head-bolt: { name: head bolt, thread: M10x1.5, class: 8.8, across-flats: 16 mm, stages: [20 N·m, 50 N·m] }
  rod-bolt: { name: rod bolt, thread: M10x1.5, class: 8.8, across-flats: 16 mm, stages: [50 N·m, 90°] }
`})
	rows := s.TorqueCard(s.Manual.Machines[0]).Rows
	if !strings.HasPrefix(rows[0].Clamp, "25") || rows[0].NoClamp != "" {
		t.Errorf("torque stages: %q, %q", rows[0].Clamp, rows[0].NoClamp)
	}
	if rows[1].Clamp != "" || !strings.Contains(rows[1].NoClamp, "says nothing of the load") {
		t.Errorf("after an angle: %q, %q", rows[1].Clamp, rows[1].NoClamp)
	}
	thing := s.machineFastener(s.Manual.Machines[0], s.Manual.Machines[0].Fasteners[1])
	if !slices.ContainsFunc(thing.Facts, func(f Fact) bool { return strings.Contains(fmt.Sprint(f), "says nothing of the load") }) {
		t.Errorf("the machine's page: %+v", thing.Facts)
	}
}

// Five wheel nuts go 1, 3, 5, 2, 4 round the circle: the usual step rule
// (derived, not printed in a handbook).
func TestSequenceDrawing(t *testing.T) {
	drawing := string(sequenceDrawing([]string{"star"}, 5, "star"))
	if n := strings.Count(drawing, "<circle"); n != 5 {
		t.Fatalf("%d circles", n)
	}
	x, y := onCircle(2, 5)
	second := circleOf(2, drawing)
	if !strings.Contains(second, "cx=\""+strconv.Itoa(x)+"\" cy=\""+strconv.Itoa(y)+"\"") {
		t.Errorf("the second nut is not the third round the circle: %s", second)
	}
	if sequenceDrawing([]string{"left", "right"}, 2, "") != "" {
		t.Error("an order in words is drawn")
	}
}

// No fastener of a drawing lies over another, nor over its edge, however many
// there are.
func TestSequenceDrawingHasRoom(t *testing.T) {
	circles := regexp.MustCompile(`<circle cx="(\d+)" cy="(\d+)" r="(\d+)"/>`)
	for _, kind := range []string{"star", "spiral"} {
		for n := 2; n <= 24; n += 2 {
			drawing := string(sequenceDrawing([]string{kind}, n, kind))
			var size int
			_, err := fmt.Sscanf(drawing[strings.Index(drawing, "viewBox"):], `viewBox="0 0 %d`, &size)
			all := circles.FindAllStringSubmatch(drawing, -1)
			if err != nil || len(all) != n {
				t.Fatalf("%s of %d: %d circles, %v", kind, n, len(all), err)
			}
			var at [][3]float64
			for _, c := range all {
				x, _ := strconv.ParseFloat(c[1], 64)
				y, _ := strconv.ParseFloat(c[2], 64)
				r, _ := strconv.ParseFloat(c[3], 64)
				if min(x, y) < r || max(x, y)+r > float64(size) {
					t.Errorf("%s of %d: a circle at %v, %v is cut off", kind, n, x, y)
				}
				for _, o := range at {
					if math.Hypot(x-o[0], y-o[1]) <= r+o[2] {
						t.Errorf("%s of %d: circles at %v, %v and %v, %v touch", kind, n, x, y, o[0], o[1])
					}
				}
				at = append(at, [3]float64{x, y, r})
			}
		}
	}
}

// A check at the last stage does not begin at the first again; a step that
// names no stage, or several, prints them all.
func TestACheckPrintsTheLastStage(t *testing.T) {
	q := func(text string) quantity.Quantity {
		v, err := quantity.Parse(text, quantity.Torque)
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
	f := &model.Fastener{Stages: []quantity.Quantity{q("25 N·m"), q("40 N·m"), q("48 N·m")}}
	for words, want := range map[string]bool{
		"Check the six head bolts at 48 N·m": true, "Compruebe los seis a 48 N·m": true, "Tighten the head bolts": false,
		"Tighten the head bolts in stages, 25 N·m, 40 N·m, 48 N·m": false, "Bring them to 25 N·m": false, "Check six bolts": false,
	} {
		if got := lastOnly(&model.Link{Text: words}, f); got != want {
			t.Errorf("%q: the last stage only: %v", words, got)
		}
	}
}

// circleOf is the drawing's n-th circle.
func circleOf(n int, drawing string) string {
	parts := strings.Split(drawing, "<circle")
	return parts[n]
}

// 5 bar is 72.5 psi (NIST SP 811: 1 psi is 6.894 757 kPa).
func TestLimitInBothUnits(t *testing.T) {
	s := siteOf(t, map[string]string{"machines/rig.yaml": cardMachine})
	for text, want := range map[string]string{
		"at most 5 bar":  "at most 5 bar (73 psi)",
		"5 to 10 bar":    "5 to 10 bar (73–145 psi)",
		"at most 5 V dc": "at most 5 V dc",
	} {
		l, err := quantity.ParseLimit(text, quantity.None)
		if err != nil {
			t.Fatal(err)
		}
		if got := s.bothLimit(l); got != want {
			t.Errorf("%s: %s, want %s", text, got, want)
		}
	}
}

// t = R·C·ln(V/safe) = 100 kΩ · 1000 µF · ln(360/60) = 179.2 s, by hand from
// the textbook form V = V0·e^(−t/RC).
func TestLeastWait(t *testing.T) {
	s := siteOf(t, map[string]string{
		"machines/rig.yaml":   cardMachine,
		"register/holds.yaml": "settle: { name: settling, kind: wait, for: 10 min, of: bus }\nother: { name: other, kind: wait, for: 1 min }\n",
	})
	least, working := s.leastWait(s.Manual.Machines[0], s.Manual.Holds[0])
	if least != "3 min" || !strings.Contains(working.Formula, "ln") {
		t.Errorf("%s: %s", least, working)
	}
	if least, _ := s.leastWait(s.Manual.Machines[0], s.Manual.Holds[1]); least != "" {
		t.Error("a wait of nothing has a computed minimum")
	}
	if least, _ := s.leastWait(nil, s.Manual.Holds[0]); least != "" {
		t.Error("a wait without a machine has a computed minimum")
	}
}
