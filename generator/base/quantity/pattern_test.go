package quantity_test

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator/base/quantity"
)

func allDimensions() []quantity.Dimension {
	return append([]quantity.Dimension{quantity.None}, quantity.Dimensions()...)
}

// ways are the readers and the patterns that must not refuse what they read.
func ways() map[string]struct {
	read    func(string) error
	pattern *regexp.Regexp
} {
	type way = struct {
		read    func(string) error
		pattern *regexp.Regexp
	}
	out := map[string]way{
		"serials": {func(s string) error { _, _, err := quantity.ParseSerials(s); return err }, regexp.MustCompile(quantity.SerialsPattern())},
	}
	for _, d := range allDimensions() {
		out[d.String()] = way{func(s string) error { _, err := quantity.Parse(s, d); return err }, regexp.MustCompile(quantity.Pattern(d))}
		out["limit of "+d.String()] = way{func(s string) error { _, err := quantity.ParseLimit(s, d); return err }, regexp.MustCompile(quantity.LimitPattern(d))}
	}
	return out
}

// drawPieces draws texts that are amounts now and then: numbers, units, signs
// and spaces in a likely order.
func drawPieces(t *rapid.T) string {
	spaces := []string{"", " ", "  ", "\u00A0", "\u202F"}
	number := rapid.SampledFrom([]string{"0", "-0", "−0.00", "5", "-5", "−5", "010", "1.5", "1,5", "12", "999999", "0.50", "1e3", ""})
	unit := rapid.SampledFrom(append(spelled(), "", "stones", "dc", "V dc", "V d.c.", "Vdc", "V  ac", "A AC"))
	joiner := rapid.SampledFrom([]string{"", "", " to ", " ± ", "+/-", "-", " TO ", " and "})
	lead := rapid.SampledFrom([]string{"", "", "", "at most ", "at least ", " ", "at most"})
	var b strings.Builder
	b.WriteString(lead.Draw(t, "lead"))
	for i := range rapid.IntRange(1, 3).Draw(t, "pieces") {
		if i > 0 {
			b.WriteString(joiner.Draw(t, "joiner"))
		}
		b.WriteString(number.Draw(t, "number") + rapid.SampledFrom(spaces).Draw(t, "space") + unit.Draw(t, "unit") + rapid.SampledFrom(spaces).Draw(t, "space"))
	}
	return b.String()
}

// spelled are the units of the handbook's table and other ways to write them.
func spelled() []string {
	out := strings.Fields("Nm N.m ft-lb lb-ft lbf·ft day days week month year N⋅m μF Ω 60° kΩ ℃ m³")
	for _, u := range quantity.Units(quantity.None) {
		out = append(out, u.Symbol())
	}
	return append(out, "N m", "gal (US)", "lbf ft")
}

// What the parser reads, the pattern must not refuse. Pieces seldom make an
// amount; beside them stands one in each draw, so that something is always read.
func TestPatternsRefuseNothingThatIsRead(t *testing.T) {
	all := ways()
	read := map[string]int{}
	rapid.Check(t, func(t *rapid.T) {
		made, _ := drawAmount(t)
		for _, text := range []string{drawPieces(t), made, "at most " + made} {
			for name, w := range all {
				if w.read(text) != nil {
					continue
				}
				read[name]++
				if !w.pattern.MatchString(text) {
					t.Fatalf("%q is read as %s, and the pattern refuses it", text, name)
				}
			}
		}
	})
	for _, text := range hostile {
		for name, w := range all {
			if w.read(text) == nil && !w.pattern.MatchString(text) {
				t.Errorf("%q is read as %s, and the pattern refuses it", text, name)
			}
		}
	}
	if read["amount"] < 5 || read["limit of amount"] < 5 {
		t.Errorf("too few texts were read to say anything: %v", read)
	}
}

// And what nobody could mean as an amount of the dimension, it does refuse.
// What the format writes otherwise than a number and its unit: plain ratios, pH and
// inch fractions.
func TestPatternsKnowWhatIsUnusual(t *testing.T) {
	for _, c := range []struct {
		text string
		of   []quantity.Dimension
	}{
		{"1.26", []quantity.Dimension{quantity.Ratio, quantity.None}},
		{"7.4 pH", []quantity.Dimension{quantity.Acidity, quantity.None}},
		{"pH 7.4", []quantity.Dimension{quantity.Acidity, quantity.None}},
		{"7/8 in", []quantity.Dimension{quantity.Length, quantity.None}},
		{"1 1/2 in", []quantity.Dimension{quantity.Length, quantity.None}},
		{"1 1/2 turns", []quantity.Dimension{quantity.Turns, quantity.None}},
		{"3 drops", []quantity.Dimension{quantity.Drops, quantity.None}},
	} {
		for _, d := range allDimensions() {
			want := slices.Contains(c.of, d)
			if _, err := quantity.Parse(c.text, d); (err == nil) != want {
				t.Errorf("%q as %s: %v", c.text, d, err)
			}
			if got := regexp.MustCompile(quantity.Pattern(d)).MatchString(c.text); got != want {
				t.Errorf("%q as %s: the pattern says %v", c.text, d, got)
			}
		}
	}
	for text, d := range map[string]quantity.Dimension{
		"1.2 to 2": quantity.Ratio, "6.8 to 7.4 pH": quantity.Acidity, "pH 6.8 to 7.4": quantity.Acidity, "pH 6.8 to pH 7.4": quantity.Acidity, "pH 7.0 ± 0.2": quantity.Acidity,
		"1/2 to 3/4 in": quantity.Length, "at most pH 8": quantity.Acidity,
	} {
		if _, err := quantity.ParseLimit(text, d); err != nil {
			t.Errorf("%q is no limit of %s: %v", text, d, err)
		}
		if !regexp.MustCompile(quantity.LimitPattern(d)).MatchString(text) {
			t.Errorf("%q is no limit of %s by its pattern", text, d)
		}
	}
}

func TestPatternsRefuseOtherUnits(t *testing.T) {
	for _, d := range allDimensions()[1:] {
		pattern := regexp.MustCompile(quantity.Pattern(d))
		limit := regexp.MustCompile(quantity.LimitPattern(d))
		for _, text := range []string{"", "5 stones", "1,5 bar", "010 V", "some", "5 kg x", "5 bar dc", "2 mm ac", "at most", "20 bis 100 N·m"} {
			if pattern.MatchString(text) || limit.MatchString(text) {
				t.Errorf("the pattern of %s takes %q", d, text)
			}
		}
		for _, other := range allDimensions()[1:] {
			if text := other.Example(); other != d && pattern.MatchString(text) {
				if _, err := quantity.Parse(text, d); err != nil {
					t.Errorf("the pattern of %s takes %q", d, text)
				}
			}
		}
	}
	for _, d := range allDimensions() {
		takes := regexp.MustCompile(quantity.Pattern(d)).MatchString("pH 7.2")
		if _, err := quantity.Parse("pH 7.2", d); takes != (err == nil) {
			t.Errorf("the pattern of %s takes pH 7.2: %t, and reading it: %v", d, takes, err)
		}
	}
	for _, text := range []string{"at most 5 V dc", "20 to 100 V", "5 V ± 5 %"} {
		if regexp.MustCompile(quantity.Pattern(quantity.Voltage)).MatchString(text) {
			t.Errorf("the pattern of an amount takes the limit %q", text)
		}
	}
}
