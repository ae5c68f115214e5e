package theme

import (
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"baybinder/generator/base/needed"
)

// Known: SEEN.

// luminance is the relative luminance of a colour like #1a2b3c (WCAG 2.2,
// "relative luminance").
func luminance(hex string) float64 {
	n, _ := strconv.ParseUint(strings.TrimPrefix(hex, "#"), 16, 32)
	linear := func(c uint64) float64 {
		s := float64(c&0xff) / 255
		if s <= 0.04045 {
			return s / 12.92
		}
		return math.Pow((s+0.055)/1.055, 2.4)
	}
	return 0.2126*linear(n>>16) + 0.7152*linear(n>>8) + 0.0722*linear(n)
}

// contrast is the contrast ratio of two colours, 1 to 21 (WCAG 2.2).
func contrast(a, b string) float64 {
	la, lb := luminance(a), luminance(b)
	return (max(la, lb) + 0.05) / (min(la, lb) + 0.05)
}

// The formula against figures worked out from WCAG's text, to 0.005; the ends
// of the range are W3C's.
func TestContrastFormula(t *testing.T) {
	for _, c := range []struct {
		a, b string
		want float64
	}{
		{"#ffffff", "#000000", 21}, {"#ffffff", "#ffffff", 1},
		{"#767676", "#ffffff", 4.542}, {"#777777", "#ffffff", 4.478}, {"#949494", "#ffffff", 3.033},
		{"#595959", "#ffffff", 7.005}, {"#ff0000", "#ffffff", 3.998}, {"#0000ff", "#ffffff", 8.592}, {"#008000", "#ffffff", 5.137},
	} {
		if got := contrast(c.a, c.b); math.Abs(got-c.want) > 0.005 {
			t.Errorf("%s on %s: %.3f, want %.3f", c.a, c.b, got, c.want)
		}
	}
}

// palettes are the theme's own colours by name, by day and in the dark; in the
// dark those that are not set anew are the day's.
func palettes(t *testing.T) (day, dark map[string]string) {
	t.Helper()
	css, err := joined("styles/baybinder/%s.css", components)()
	if err != nil {
		t.Fatal(err)
	}
	light, rest, found := strings.Cut(string(css), "@media screen and (prefers-color-scheme: dark) {")
	if !found {
		t.Fatal("the styles have no dark palette for the screen")
	}
	day, dark = map[string]string{}, map[string]string{}
	set := func(into map[string]string, text string) {
		for _, m := range regexp.MustCompile(`--([a-z-]+): (#[0-9a-f]{6})`).FindAllStringSubmatch(text, -1) {
			into[m[1]] = m[2]
		}
	}
	light, _, _ = strings.Cut(light, "@media print")
	set(day, light)
	set(dark, light)
	set(dark, rest)
	return day, dark
}

// What is dark differs from what is light in its colours, and in room round what
// stays on white: it hides nothing, and shows nothing else.
func TestTheDarkIsColours(t *testing.T) {
	css, err := joined("styles/baybinder/%s.css", components)()
	if err != nil {
		t.Fatal(err)
	}
	parts := strings.Split(string(css), "(prefers-color-scheme: dark) {")
	if len(parts) != 2 {
		t.Fatalf("the styles ask %d times whether it is dark", len(parts)-1)
	}
	dark, _, _ := strings.Cut(parts[1], "\n}")
	set := regexp.MustCompile(`(?m)^ +([a-z-]+): `).FindAllStringSubmatch(dark, -1)
	for _, m := range set {
		if !strings.HasPrefix(m[1], "--") && !slices.Contains([]string{"color-scheme", "background", "border-radius", "padding", "outline"}, m[1]) {
			t.Errorf("the dark sets %s: then all rules are to judge it in generator/browser_test.go", m[1])
		}
	}
	if len(set) < 10 {
		t.Errorf("the dark sets %d things: the test looks at nothing", len(set))
	}
}

// The colours of ANSI Z535.1 and ISO 3864 are the same in the dark, and paper
// is never dark: the dark palette is for the screen only.
func TestSafetyColoursStay(t *testing.T) {
	day, dark := palettes(t)
	for _, name := range []string{"danger", "warning", "caution", "notice", "on-danger", "on-warning", "on-caution", "on-notice"} {
		if day[name] == "" || day[name] != dark[name] {
			t.Errorf("%s is %q by day and %q in the dark", name, day[name], dark[name])
		}
	}
	if day["paper"] == dark["paper"] {
		t.Error("the dark palette is not read")
	}
}

// pairs are the colours of text with the grounds that it stands on, and the
// least ratio: 7 for text (level AAA, which the design asks for), 4.5 for the
// signal words, which are large and bold (level AAA for large text).
var pairs = []struct {
	text, ground string
	least        float64
}{
	{"ink", "paper", 7}, {"ink", "fill", 7}, {"ink", "white", 7}, {"soft", "paper", 7}, {"soft", "fill", 7}, {"soft", "white", 7},
	{"accent", "paper", 7}, {"accent", "fill", 7}, {"accent", "white", 7}, {"on-accent", "accent", 7}, {"white", "ink", 7},
	{"on-strip", "strip", 7}, {"code-number", "white", 7}, {"code-bad", "white", 7}, {"code-good", "white", 7},
	{"on-danger", "danger", 4.5}, {"on-warning", "warning", 4.5}, {"on-caution", "caution", 4.5}, {"on-notice", "notice", 4.5},
}

func TestContrastOfTheTheme(t *testing.T) {
	day, dark := palettes(t)
	for name, have := range map[string]map[string]string{"by day": day, "in the dark": dark} {
		for _, p := range pairs {
			if have[p.text] == "" || have[p.ground] == "" {
				t.Fatalf("no colour %s or %s", p.text, p.ground)
			}
			if got := contrast(have[p.text], have[p.ground]); got < p.least {
				t.Errorf("%s: %s on %s: %.2f, want %.1f at least", name, p.text, p.ground, got, p.least)
			}
		}
	}
}

// The npm package wcag-contrast 3.0 must agree with the formula.
func TestContrastSecondOpinion(t *testing.T) {
	tool, err := filepath.Abs(filepath.Join("..", ".ci", "node_modules", "wcag-contrast"))
	if err != nil {
		t.Fatal(err)
	}
	_, err = os.Stat(tool)
	needed.Judge(t, err == nil, "wcag-contrast")
	day, dark := palettes(t)
	for i, p := range append(slices.Clone(pairs), pairs...) {
		have := day
		if i >= len(pairs) {
			have = dark
		}
		out, err := exec.Command("node", "-e", "console.log(require(process.argv[1]).hex(process.argv[2],process.argv[3]))", tool, have[p.text], have[p.ground]).Output()
		if err != nil {
			t.Fatal(err)
		}
		want, err := strconv.ParseFloat(strings.TrimSpace(string(out)), 64)
		if got := contrast(have[p.text], have[p.ground]); err != nil || math.Abs(got-want) > 0.005 {
			t.Errorf("%s on %s: %.3f, the other opinion %.3f %v", p.text, p.ground, got, want, err)
		}
	}
}
