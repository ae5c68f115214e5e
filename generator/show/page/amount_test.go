package page

import (
	"bytes"
	"slices"
	"strings"
	"testing"
)

// Known: FROM MEMORY.

// The units are those of the SI Brochure (5.4.3, from memory: a number, a space and the unit) and of the trade as the format lists them.
// What a page says does not change: without its tags it is what it was.
func TestAnAmountIsNotParted(t *testing.T) {
	english, german := siteOf(t, map[string]string{}), siteOf(t, map[string]string{"shop.yaml": "title: T\nlanguage: de\n"})
	for _, c := range []struct {
		s    *Site
		want string
	}{
		{english, "<p>Tighten it to <bdi>25 N·m</bdi> (<bdi>18.4 lbf·ft</bdi>).</p>"},
		{english, "<p>20 to <bdi>100 N·m</bdi>, at most <bdi>5 V dc</bdi>, 2.0 ± <bdi>0.1 mm</bdi>, <bdi>−20 °C</bdi>, <bdi>1 h</bdi> <bdi>30 min</bdi></p>"},
		{english, "<p>about <bdi>0.8 L</bdi> of oil, <bdi>25 Nm</bdi>, <bdi>7/8 in</bdi>, <bdi>1,500 psi</bdi>, <bdi>12 months</bdi></p>"},
		{english, "<p>Wait <bdi>10\nmin</bdi>.</p>"},
		{english, "<td><bdi>5 min</bdi></td><td>5</td><td>min</td>"},
		{english, "<p>step 4.7 of 12, 4 bolts, part 4 Vent, 5 volts' worth, M8x1.25</p>"},
		{english, `<p title="5 V" data-limit="at most 5 V">a</p>`},
		{english, "<title>Wait 5 min</title><p><bdi>5 min</bdi></p>"},
		{english, `<script type="application/json">{"limit": "at most 5 V"}</script><p><bdi>5 V</bdi></p>`},
		{english, "<svg><title>5 V</title><text>6 V</text></svg><p><bdi>5 V</bdi></p>"},
		{english, "<select><option>5 V</option></select>"},
		{english, `<a href="x"><bdi>5 V</bdi></a><summary><bdi>5 V</bdi></summary>`},
		{german, "<p><bdi>48,5 V DC</bdi></p>"},
		{german, "<p>alle <bdi>12 Monate</bdi>, <bdi>7,5 bar</bdi>, <bdi>2 Wochen</bdi></p>"},
		{english, "<p>5 </p>"},
		{english, "5 V<"},
	} {
		from := strings.NewReplacer("<bdi>", "", "</bdi>", "").Replace(c.want)
		if c.want == "5 V<" {
			c.want = "<bdi>5 V</bdi><"
		}
		var got bytes.Buffer
		c.s.Finish(&got, []byte(from), nil)
		if got.String() != c.want {
			t.Errorf("%q becomes\n%s, want\n%s", from, got.String(), c.want)
		}
	}
}

// What the scripts keep on one line are the amounts alone, the longest first: "36 V dc"
// is not looked for as "36 V".
func TestAmountsInNamesOfOptions(t *testing.T) {
	s := siteOf(t, map[string]string{})
	got := s.AmountsIn([]string{"Lithium pack, 36 V dc", "Pump, 7.5 bar", "Cab", "Second pump, 7.5 bar", "Heater, 36 V"})
	if want := []string{"36 V dc", "7.5 bar", "36 V"}; !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
	if none := s.AmountsIn([]string{"Cab", "Mod 3"}); none != nil {
		t.Errorf("%q are amounts", none)
	}
}
