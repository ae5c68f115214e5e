package check

import (
	"maps"
	"slices"
	"strconv"
	"strings"

	"golang.org/x/tools/txtar"

	"baybinder/generator/base/casefile"
	"baybinder/generator/prove/walk"
)

// Example shows a finding: a short file with a fault, its name above it and
// the faulty lines marked with >, and the same file mended. It is the code's
// first case, so that what is shown is what is tested; of a rule about effects,
// whose cases are whole jobs, it is what of its shortest case the fault and its
// mend are about. A code without a case is not ok.
func Example(code string) (bad, good string, ok bool) {
	if a, err := caseNamed(code + ".txtar"); err == nil {
		name, faulty := firstWanted(casefile.Part(a, "")["want"])
		return listing(name, casefile.Part(a, "bad/")[name], faulty), listing(name, casefile.Part(a, "good/")[name], nil), true
	}
	for _, data := range walk.CasesOf(code) {
		a := txtar.Parse(data)
		want := casefile.Part(a, "")["want"]
		if !strings.Contains(want, ": "+code) {
			continue
		}
		name, faulty := firstWanted(want)
		before, after := casefile.Part(a, "bad/"), casefile.Part(a, "good/")
		if other := mendedIn(before, after, name); other != name {
			return listing(name, before[name], faulty), listing(other, after[other], nil), true
		}
		head := sameHead(before[name], after[name], faulty)
		return skipped(listing(name, before[name], faulty), head), skipped(listing(name, after[name], nil), head), true
	}
	return "", "", false
}

// mendedIn is the file in which two manuals differ: the named one, if it does.
func mendedIn(bad, good map[string]string, name string) string {
	if bad[name] != good[name] {
		return name
	}
	for _, other := range slices.Sorted(maps.Keys(good)) {
		if bad[other] != good[other] {
			return other
		}
	}
	return name
}

// above is how many lines are shown above the first that matters.
const above = 3

// sameHead is how many lines at the top of two files say nothing of the fault
// or its mend: the same in both, and not marked.
func sameHead(bad, good string, faulty map[int]bool) int {
	a, b := strings.Split(bad, "\n"), strings.Split(good, "\n")
	n := 0
	for n < len(a) && n < len(b) && a[n] == b[n] && !faulty[n+1] {
		n++
	}
	return max(0, n-above)
}

// skipped is a listing without so many of its first lines.
func skipped(text string, lines int) string {
	name, rest, _ := strings.Cut(text, "\n")
	if lines < 2 {
		return text
	}
	for range lines {
		_, rest, _ = strings.Cut(rest, "\n")
	}
	return name + "\n  …\n" + rest
}

// firstWanted is the file of the first finding of a want, and the lines of all
// findings in it.
func firstWanted(want string) (name string, lines map[int]bool) {
	lines = map[int]bool{}
	for row := range strings.Lines(want) {
		fields := strings.Split(row, ":")
		if name == "" {
			name = fields[0]
		}
		if n, err := strconv.Atoi(fields[1]); err == nil && fields[0] == name {
			lines[n] = true
		}
	}
	return name, lines
}

func listing(name, text string, marked map[int]bool) string {
	var b strings.Builder
	b.WriteString(name + "\n")
	n := 0
	for line := range strings.Lines(text) {
		n++
		mark := "  "
		if marked[n] {
			mark = "> "
		}
		b.WriteString(strings.TrimRight(mark+line, " \n") + "\n")
	}
	return b.String()
}
