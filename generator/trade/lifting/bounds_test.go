package lifting

import (
	"strings"
	"testing"

	"baybinder/generator/model"
)

// The limits of the equation (NIOSH 94-110, pp. 8 to 15): H from 25 to 63 cm (10
// to 25 in), V up to 175 cm (70 in), D up to 175 cm (70 in), A up to 135°, F up
// to 15 lifts a minute, up to 8 h; each end is within. They are in the units of
// the part's mass.
func TestBoundsOfALift(t *testing.T) {
	for _, c := range []struct {
		mass, h, v, a, travel, often, long string
		want                               string
	}{
		{"10 kg", "25 cm", "0 cm", "0°", "175 cm", "15", "8 h", ""},
		{"10 kg", "63 cm", "175 cm", "135°", "25 cm", "0.2", "1 h", ""},
		{"10 kg", "24 cm", "75 cm", "", "30 cm", "", "", "horizontal below 25 cm"},
		{"10 kg", "64 cm", "75 cm", "", "30 cm", "", "", "horizontal above 63 cm"},
		{"10 kg", "30 cm", "176 cm", "", "30 cm", "", "", "vertical above 175 cm"},
		{"10 kg", "30 cm", "-1 cm", "", "30 cm", "", "", "vertical below 0"},
		{"10 kg", "30 cm", "75 cm", "136°", "30 cm", "", "", "asymmetry above 135°"},
		{"10 kg", "30 cm", "75 cm", "", "176 cm", "", "", "travel above 175 cm"},
		{"10 kg", "30 cm", "75 cm", "", "30 cm", "16", "", "frequency above 15 lifts a minute"},
		{"10 kg", "30 cm", "75 cm", "", "30 cm", "", "9 h", "duration above 8 h"},
		{"10 kg", "250 mm", "75 cm", "", "30 cm", "", "480 min", ""},
		{"20 lb", "10 in", "70 in", "", "70 in", "", "", ""},
		{"20 lb", "25 in", "30 in", "", "10 in", "", "", ""},
		{"20 lb", "9.9 in", "30 in", "", "10 in", "", "", "horizontal below 10 in"},
		{"20 lb", "25.1 in", "30 in", "", "10 in", "", "", "horizontal above 25 in"},
		{"20 lb", "12 in", "70.1 in", "", "10 in", "", "", "vertical above 70 in"},
	} {
		p := &model.Part{Mass: measured(t, c.mass), Lift: &model.Lift{LiftEnd: end(t, c.h, c.v, c.a), Travel: measured(t, c.travel), Frequency: measured(t, c.often), Duration: measured(t, c.long), Coupling: "good"}}
		if got := outside(p); got != c.want {
			t.Errorf("%+v: %q, want %q", c, got, c.want)
		}
		other := &model.Part{Mass: p.Mass, Lift: &model.Lift{LiftEnd: end(t, "30 cm", "75 cm", ""), To: &p.Lift.LiftEnd, Coupling: "good"}}
		want := ""
		if h, _, _ := strings.Cut(c.want, " "); h == "horizontal" || h == "vertical" || h == "asymmetry" {
			want = "to: " + c.want
		}
		if got := outside(other); got != want {
			t.Errorf("%+v at the other end: %q, want %q", c, got, want)
		}
	}
}

// outside are the measures that are past a bound, in words.
func outside(p *model.Part) string {
	var out []string
	for _, b := range Bounds(p) {
		switch {
		case b.Below() && b.Least.IsZero():
			out = append(out, b.Field+" below 0")
		case b.Below():
			out = append(out, b.Field+" below "+b.Least.String())
		case b.Above():
			out = append(out, b.Field+" above "+b.Say(b.Most).String())
		}
	}
	return strings.Join(out, ", ")
}
