package generator_test

import (
	"bytes"
	"fmt"
	"maps"
	"math"
	"os/exec"
	"path"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"golang.org/x/net/html"

	"baybinder/generator/base/needed"
)

// Known: SEEN.

// pagePair is an amount with the same in another unit behind it, as a page
// prints them: "90 ± 3 bar (1305 ± 43.5 psi)".
type pagePair struct {
	text     string
	from, to []float64 // one number, or both ends of a range
	within   float64   // of the first unit: the tolerance; 0 for none
	other    float64   // the tolerance in the second unit
	units    [2]string
}

// gnuNames are the units that the demo's pairs are in, as GNU units names them.
var gnuNames = map[string]string{"N·m": "N m", "lbf·ft": "lbf ft", "bar": "bar", "psi": "psi", "kg": "kg", "lb": "lb", "g": "g", "L": "L", "mL": "mL", "qt": "qt", "gal": "gal"}

const (
	figure  = `(−?\d+(?:\.\d+)?)`
	unitsIn = `(N·m|lbf·ft|bar|psi|kg|lb|g|mL|L|qt|gal)`
)

var pairOnPage = regexp.MustCompile(figure + `(?: ` + unitsIn + `)?(?: (?:to|a) ` + figure + `)?(?: ± ` + figure + `)? ` + unitsIn + `(?: ± ` + figure + ` %)? \(` + figure + `(?:–` + figure + `)?(?: ± ` + figure + `)? ` + unitsIn + `\)`)

func numberIn(text string) float64 {
	v, _ := strconv.ParseFloat(strings.ReplaceAll(text, "−", "-"), 64)
	return v
}

// linesOf is the text of a page, each element's words on a line of their own, but
// for numbers that lead to their workings.
func linesOf(n *html.Node) string {
	var b strings.Builder
	for c := range n.Descendants() {
		if c.Type == html.TextNode {
			b.WriteString(c.Data)
			if next := c.NextSibling; !classed(c.Parent, "computed") && (next == nil || !classed(next, "computed")) {
				b.WriteString("\n")
			}
		}
	}
	return b.String()
}

// pairsOn finds the pairs of a text.
func pairsOn(text string) []pagePair {
	var out []pagePair
	for _, m := range pairOnPage.FindAllStringSubmatch(text, -1) {
		p := pagePair{text: m[0], from: []float64{numberIn(m[1])}, to: []float64{numberIn(m[7])}, units: [2]string{m[5], m[10]}}
		switch {
		case m[3] == "":
		case m[8] == "": // "set the 20 to 110 N·m wrench to 22.6 N·m (16.7 lbf·ft)"
			p.from[0] = numberIn(m[3])
		default:
			p.from, p.to = append(p.from, numberIn(m[3])), append(p.to, numberIn(m[8]))
		}
		switch {
		case m[4] != "":
			p.within = numberIn(m[4])
		case m[6] != "":
			p.within = p.from[0] * numberIn(m[6]) / 100
		}
		p.other = numberIn(m[9])
		out = append(out, p)
	}
	return out
}

// gnuFactors are how many of the second unit one of the first is, by GNU units.
func gnuFactors(t *testing.T, units [][2]string) map[[2]string]float64 {
	t.Helper()
	tool, err := exec.LookPath("units")
	needed.Judge(t, err == nil, "GNU units")
	out := map[[2]string]float64{}
	for _, u := range units {
		said, err := exec.Command(tool, "-t", "-o", "%.15g", "1 "+gnuNames[u[0]], gnuNames[u[1]]).Output()
		must(t, err)
		out[u] = numberIn(strings.TrimSpace(string(said)))
	}
	return out
}

// objections are what is wrong with a pair: its second number is 1 % or more off
// the first, or more than a tenth of the tolerance; its tolerance is lost or off.
func (p *pagePair) objections(factor float64) []string {
	var out []string
	add := func(what string, got, want, most float64) {
		if math.Abs(got-want) > most*(1+1e-9) {
			out = append(out, fmt.Sprintf("%s: %s is %g, and %.6g by GNU units", p.text, what, got, want))
		}
	}
	for i, n := range p.from {
		want := n * factor
		most := 0.01 * math.Abs(want)
		if p.within > 0 {
			most = min(most, 0.1*p.within*factor)
		}
		add("the second number", p.to[i], want, most)
	}
	add("its tolerance", p.other, p.within*factor, 0.01*p.within*factor)
	return out
}

// Every pair on the demo's pages is converted from what is printed: GNU units is
// the judge.
func TestUnitPairsOfTheDemo(t *testing.T) {
	t.Parallel()
	pairs, units := map[string]pagePair{}, map[[2]string]bool{}
	for name, data := range unparted(pages(t, demoSite(t))) {
		if path.Ext(name) != ".html" {
			continue
		}
		doc, err := html.Parse(bytes.NewReader(data))
		must(t, err)
		for _, p := range pairsOn(linesOf(doc)) {
			pairs[p.text], units[p.units] = p, true
		}
	}
	if len(pairs) < 25 {
		t.Errorf("only %d pairs", len(pairs))
	}
	factors := gnuFactors(t, slices.Collect(maps.Keys(units)))
	for _, p := range pairs {
		for _, said := range p.objections(factors[p.units]) {
			t.Error(said)
		}
	}
}

// The test of the pairs objects to those that it was written for.
func TestUnitPairsAreJudged(t *testing.T) {
	t.Parallel()
	factors := gnuFactors(t, [][2]string{{"N·m", "lbf·ft"}, {"bar", "psi"}})
	for _, text := range []string{"25 N·m (18 lbf·ft)", "55 N·m (40 lbf·ft)", "0.3 bar (4.4 psi)", "90 ± 3 bar (1310 ± 43.5 psi)", "90 ± 3 bar (1305 psi)", "20 to 110 N·m (15–81 lbf·ft)"} {
		list := pairsOn(text)
		if len(list) != 1 || len(list[0].objections(factors[list[0].units])) == 0 {
			t.Errorf("%s was let through", text)
		}
	}
}
