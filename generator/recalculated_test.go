package generator_test

import (
	"fmt"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"golang.org/x/net/html"
)

// Known: DERIVED.

// recalculated works every printed working out again from its own printed
// inputs, knowing nothing of the program: sums, products, the most and the least
// of a list, days, conversions, reading times and figures. It says how many it
// could; the formulas of the trade, which are judged beside their own packages,
// are not among them.
func recalculated(t *testing.T, name string, sections []*html.Node) (known int) {
	t.Helper()
	for _, section := range sections {
		for _, code := range all(section, false, func(n *html.Node) bool { return n.Data == "code" && n.Parent.Data == "p" }) {
			parts := strings.Split(pointed(textOf(code)), " = ")
			if len(parts) < 3 {
				continue
			}
			put, result := parts[len(parts)-2], parts[len(parts)-1]
			is, why := agrees(put, result)
			if is {
				known++
			}
			if why != "" {
				t.Errorf("%s: %s = %s: %s", name, put, result, why)
			}
		}
	}
	return known
}

var (
	aside       = regexp.MustCompile(` \((?:[^()]|\([^()]*\))*\)`)
	dayAndTime  = regexp.MustCompile(`^(\d{4}-\d\d-\d\d) \+ (\d+) (day|week|month|year|día|semana|mes|año)(?:e?s)?$`)
	conversion  = regexp.MustCompile(`^(.+) · (-?[\d.]+) (\S+)/(\S+?)(?: \+ (-?[\d.]+) \S+)?$`)
	reading     = regexp.MustCompile(`^(\d+)/238 min \+ (\d+) · 12 s \+ (\d+) · 20 s$`)
	ofAll       = regexp.MustCompile(`^(\d+)/\((\d+) − (\d+)\)$`)
	readingEase = regexp.MustCompile(`^([\d.]+) ([−+]) ([\d.]+) · (\d+)/(\d+) ([−+]) ([\d.]+) · (\d+)/(\d+)$`)
	tenth       = regexp.MustCompile(`^min\((\d+)/10; (\d+)\)$`)
	product     = regexp.MustCompile(`^(\d+) · (\d+)$`)
	first       = regexp.MustCompile(`^-?\d+(?:\.\d+)?`)
	measured    = regexp.MustCompile(`-?\d+(?:\.\d+)?`)
)

// agrees says whether a working is of a form that is known here, and what is
// wrong with it; "" for nothing.
func agrees(put, result string) (known bool, why string) {
	bare := aside.ReplaceAllString(put, "")
	number := func(text string) float64 { n, _ := strconv.ParseFloat(text, 64); return n }
	same := func(got, want float64) string {
		if math.Abs(got-want) > 1e-9 {
			return fmt.Sprintf("it comes to %v", got)
		}
		return ""
	}
	if m := dayAndTime.FindStringSubmatch(put); m != nil {
		if day := later(m[1], int(number(m[2])), m[3]); day != result {
			return true, day
		}
		return true, ""
	}
	if m := reading.FindStringSubmatch(put); m != nil {
		seconds := math.Round(number(m[1])*60/238) + 12*number(m[2]) + 20*number(m[3])
		return true, same(max(1, math.Round(seconds/60))*60, float64(inSeconds(result)))
	}
	if m := ofAll.FindStringSubmatch(put); m != nil {
		if want := fmt.Sprintf("%s of %v", m[1], number(m[2])-number(m[3])); want != result {
			return true, want
		}
		return true, ""
	}
	if m := readingEase.FindStringSubmatch(put); m != nil {
		signed := func(sign, text string) float64 { return number(strings.Replace(sign, "−", "-", 1) + text) }
		value := number(m[1]) + signed(m[2], m[3])*number(m[4])/number(m[5]) + signed(m[6], m[7])*number(m[8])/number(m[9])
		return true, same(math.Round(value), number(result))
	}
	if m := tenth.FindStringSubmatch(put); m != nil {
		return true, same(min(math.Ceil(number(m[1])/10), number(m[2])), number(result))
	}
	if m := product.FindStringSubmatch(put); m != nil {
		return true, same(number(m[1])*number(m[2]), number(result))
	}
	if m := conversion.FindStringSubmatch(put); m != nil {
		return true, converts(m[1], number(m[2]), number(m[5]), result)
	}
	if list, is := strings.CutPrefix(bare, "max("); is {
		var values []float64
		for _, one := range strings.Split(strings.TrimSuffix(list, ")"), "; ") {
			values = append(values, amount(one))
		}
		return true, same(slices.Max(values), amount(result))
	}
	if strings.Contains(bare, "; ") && strings.Contains(bare, " min") {
		return true, spreads(bare, result)
	}
	if first.MatchString(bare) && (strings.Contains(bare, " + ") || strings.TrimSpace(bare) == result) && !strings.ContainsAny(bare, "·/,") {
		sum := 0.0
		for _, term := range strings.Split(bare, " + ") {
			sum += amount(term)
		}
		return true, same(sum, amount(result))
	}
	return false, ""
}

// amount is a time in seconds, one that is shared among so many, or the number
// that a text begins with.
func amount(text string) float64 {
	time, shared, is := strings.Cut(text, " / ")
	time, _, _ = strings.Cut(time, " of work")
	time, _, _ = strings.Cut(time, " de trabajo")
	if seconds, only := secondsIn(time); only && seconds > 0 {
		if n, err := strconv.Atoi(shared); is && err == nil {
			return math.Ceil(float64(seconds) / float64(n))
		}
		return float64(seconds)
	}
	n, _ := strconv.ParseFloat(first.FindString(text), 64)
	return n
}

func inSeconds(text string) int { seconds, _ := secondsIn(text); return seconds }

// later is a day so much later; of a month without that day the last.
func later(from string, n int, unit string) string {
	day, _ := time.Parse(time.DateOnly, from)
	switch unit {
	case "day", "día":
		return day.AddDate(0, 0, n).Format(time.DateOnly)
	case "week", "semana":
		return day.AddDate(0, 0, 7*n).Format(time.DateOnly)
	case "year", "año":
		n *= 12
	}
	to := time.Date(day.Year(), day.Month()+time.Month(n), 1, 0, 0, 0, 0, time.UTC)
	last := to.AddDate(0, 1, -1).Day()
	return to.AddDate(0, 0, min(day.Day(), last)-1).Format(time.DateOnly)
}

// converts compares numbers in two units: 1 %, the rule of the pages; a
// tolerance, which is a difference, is rounded to two digits.
func converts(from string, by, plus float64, to string) string {
	there, here := measured.FindAllString(from, -1), measured.FindAllString(to, -1)
	if len(there) != len(here) {
		return "other numbers"
	}
	for i := range there {
		a, _ := strconv.ParseFloat(there[i], 64)
		b, _ := strconv.ParseFloat(here[i], 64)
		want, most := a*by+plus, 0.01
		if i > 0 && strings.Contains(from, "±") {
			want, most = a*by, 0.05
		}
		if math.Abs(b-want) > most*math.Abs(want)+1e-9 {
			return fmt.Sprintf("%s is %v", there[i], want)
		}
	}
	return ""
}

// spreads compares the shortest and the longest of several sums with a range.
func spreads(put, result string) string {
	var sums []int
	for _, one := range strings.Split(put, "; ") {
		sum := 0
		for _, term := range strings.Split(one, " + ") {
			sum += inSeconds(term)
		}
		sums = append(sums, sum)
	}
	least, most, _ := strings.Cut(result, " to ")
	if inSeconds(least) != slices.Min(sums) || inSeconds(most) != slices.Max(sums) {
		return fmt.Sprintf("%d s to %d s", slices.Min(sums), slices.Max(sums))
	}
	return ""
}

// A working that does not come to its result is found, in each form.
func TestAWrongWorkingIsFound(t *testing.T) {
	t.Parallel()
	for _, c := range []struct{ put, right, wrong string }{
		{"0 min + 2 min (1.1) + 46 min (2.1)", "48 min", "47 min"},
		{"6 (A service) + 1 (Tighten (in stages))", "7", "8"},
		{"2 · 4", "8", "6"},
		{"max(2 (one); 3 (two))", "3", "2"},
		{"max(27 min 30 s (steps 1.3, 2.1); 26 min of work / 2)", "27 min 30 s", "26 min"},
		{"2026-01-31 + 1 month", "2026-02-28", "2026-03-03"},
		{"2024-02-29 + 12 months", "2025-02-28", "2025-03-01"},
		{"22 N·m · 0.737562 lbf·ft/N·m", "16.2 lbf·ft", "17 lbf·ft"},
		{"230 ± 5 bar · 14.5038 psi/bar", "3340 ± 73 psi", "3340 ± 5 psi"},
		{"65 °C · 1.8 °F/°C + 32 °F", "149 °F", "117 °F"},
		{"411/238 min + 2 · 12 s + 0 · 20 s", "2 min", "3 min"},
		{"17/(19 − 2)", "17 of 17", "17 of 19"},
		{"206.835 − 1.015 · 583/70 − 84.6 · 762/565", "84", "85"},
		{"min(30/10; 2)", "2", "3"},
		{"6 min + 4 min; 6 min + 12 min", "10 min to 18 min", "10 min to 12 min"},
		{"18 + 5 + 3", "26", "25"},
	} {
		if known, why := agrees(c.put, c.right); !known || why != "" {
			t.Errorf("%s = %s: %t, %s", c.put, c.right, known, why)
		}
		if _, why := agrees(c.put, c.wrong); why == "" {
			t.Errorf("%s = %s is taken", c.put, c.wrong)
		}
	}
}
