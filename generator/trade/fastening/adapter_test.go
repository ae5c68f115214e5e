package fastening

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator/base/quantity"
)

// Known: SEEN, FROM MEMORY.

// Torque, length and what the adapter adds are each in one unit throughout, so
// a ratio is left and any unit will do. Tolerances are half of the last digit
// that is printed, except where the source says what it divided by.
func TestSettingFor(t *testing.T) {
	for _, c := range []struct {
		torque, length, adds, angle float64
		want, tolerance             float64
		source                      string
	}{
		{135, 10, 1.5, 0, 117.39, 0.005, "an aircraft maintenance manual, p. 20.4: 1350/11.5"},
		{135, 10, -1.5, 0, 158.82, 0.005, "the same: 1350/8.5"},
		{300, 10, 4, 0, 214, 0.5, "US Army TM 1-1500-204-23-9, sec. 8"},
		{40, 12, 4, 0, 30, 0.5, "US Army TM 9-2350-277-40&P, p. 44"},
		{19, 22, 3, 0, 17, 0.5, "US Army TM 5-3805-274-13&P, fig. 4, which divides by a rounded 1.14"},
		{20, 14, 3, 0, 16.5, 0.05, "a workshop handbook"},
		{80, 0.40, 0.05, 0, 71.1, 0.05, "a public calculator"},
		{80, 0.40, 0.05, 90, 80, 0.05, "the same, at 90°"},
	} {
		if got := SettingFor(c.torque, c.length, c.adds, c.angle); !within(got, c.want, c.tolerance) {
			t.Errorf("%g with %g + %g at %g°: %.4f, printed %g (%s)", c.torque, c.length, c.adds, c.angle, got, c.want, c.source)
		}
	}
}

// The printed figures must see the common slip, T·(L + A)/L.
func TestSettingForIsNotTurnedOver(t *testing.T) {
	if within(135*11.5/10, 117.39, 0.005) || within(AppliedBy(135, 10, 1.5, 0), 117.39, 0.005) {
		t.Error("the formula upside down passes")
	}
}

// Set to 60 in·lb on 12 in with 2 in more: 70 at the fastener (US Army TM
// 9-254, fig. 45).
func TestAppliedBy(t *testing.T) {
	if got := AppliedBy(60, 12, 2, 0); !within(got, 70, 0.5) {
		t.Errorf("%g, printed 70", got)
	}
}

func TestSettingAndAppliedAreInverse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		torque := rapid.Float64Range(1, 400).Draw(t, "torque")
		length := rapid.Float64Range(0.1, 1).Draw(t, "length")
		adds := rapid.Float64Range(-0.09, 0.3).Draw(t, "adds")
		angle := rapid.Float64Range(0, 180).Draw(t, "angle")
		set := SettingFor(torque, length, adds, angle)
		if math.IsNaN(set) {
			t.Skip("no lever") // a long adapter turned back over the wrench
		}
		if back := AppliedBy(set, length, adds, angle); !near(back, torque, 1e-9) {
			t.Fatalf("%g comes back as %g", torque, back)
		}
		if longer := SettingFor(torque, length, adds+0.01, 0); longer >= SettingFor(torque, length, adds, 0) {
			t.Fatal("a longer adapter does not lower the setting")
		}
	})
}

func TestSettingWithoutALever(t *testing.T) {
	for _, c := range [][2]float64{{0, 0.05}, {-0.4, 0.05}, {0.04, -0.05}, {0.05, -0.05}} {
		if got := SettingFor(80, c[0], c[1], 0); !math.IsNaN(got) {
			t.Errorf("%g + %g sets %g", c[0], c[1], got)
		}
		if got := AppliedBy(80, c[0], c[1], 0); !math.IsNaN(got) {
			t.Errorf("%g + %g applies %g", c[0], c[1], got)
		}
	}
	if _, err := Setting(amount(t, "80 N·m"), amount(t, "0 mm"), amount(t, "45 mm")); err == nil {
		t.Error("a wrench without a length has a setting")
	}
}

// As the page shows it: three digits without empty ones, as the sources print
// theirs; the last three by hand.
func TestSettingAsShown(t *testing.T) {
	for _, c := range []struct{ torque, length, adds, want string }{
		{"135 lbf·in", "10 in", "1.5 in", "117 lbf·in"}, // "set 117", the maintenance manual
		{"135 lbf·in", "10 in", "-1.5 in", "159 lbf·in"},
		{"40 lbf·ft", "12 in", "4 in", "30 lbf·ft"},
		{"20 lbf·ft", "14 in", "3 in", "16.5 lbf·ft"}, // 16 would be 2.9 % low
		{"80 N·m", "40 cm", "5 cm", "71.1 N·m"},       // as the public calculator prints it
		{"9 N·m", "280 mm", "30 mm", "8.13 N·m"},
		{"9 N·m", "280 mm", "35 mm", "8 N·m"}, // 8 exactly
		{"110 N·m", "640 mm", "0 mm", "110 N·m"},
	} {
		got, err := Setting(amount(t, c.torque), amount(t, c.length), amount(t, c.adds))
		if err != nil || got.String() != c.want {
			t.Errorf("%s through %s on %s: %s, %v; want %s", c.torque, c.adds, c.length, got, err, c.want)
		}
	}
}

// ISO 6789-1 range of use from memory: not below 20 % of the maximum. The test
// points of 20, 60 and 100 % are those of a test house's page.
func TestWrenchCovers(t *testing.T) {
	wide, _ := WrenchOf(limit(t, "5 to 100 N·m"))
	narrow, _ := WrenchOf(limit(t, "20 to 110 N·m"))
	for _, c := range []struct {
		w      Wrench
		torque float64
		want   bool
	}{
		{wide, 20, true}, {wide, 60, true}, {wide, 100, true}, {wide, 19.9, false}, {wide, 5, false}, {wide, 100.1, false},
		{narrow, 22, true}, {narrow, 21.9, false}, {narrow, 110, true}, {narrow, 120, false},
	} {
		if got := c.w.Covers(c.torque); got != c.want {
			t.Errorf("%v covers %g N·m: %t", c.w, c.torque, got)
		}
	}
	pounds, _ := WrenchOf(limit(t, "10 to 50 lbf·ft"))
	if ends := amount(t, "50 lbf·ft"); !pounds.Covers(ends.Base()) {
		t.Error("the end of a range is lost in the conversion")
	}
}

func TestWrenchOfSomethingElse(t *testing.T) {
	for _, text := range []string{"0 to 400 bar", "at most 20 N·m", "20 N·m"} {
		if w, ok := WrenchOf(limit(t, text)); ok {
			t.Errorf("%s is a wrench of %v", text, w)
		}
	}
}

func limit(t testing.TB, text string) quantity.Limit {
	t.Helper()
	l, err := quantity.ParseLimit(text, quantity.None)
	if err != nil {
		t.Fatal(err)
	}
	return l
}

// AppliedBy is the torque at the fastener when the wrench is set to a value:
// SettingFor turned round.
func AppliedBy(setting, length, adds, angle float64) float64 {
	arm := reach(length, adds, angle)
	if length <= 0 || arm <= 0 {
		return math.NaN()
	}
	return setting * arm / length
}
