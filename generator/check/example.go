package check

import (
	"strconv"
	"strings"
)

// Example shows a finding: a short file with a fault, its name above it and
// the faulty lines marked with >, and the same file mended. It is the code's
// first case, so that what is shown is what is tested; a code without a case
// is not ok.
func Example(code string) (bad, good string, ok bool) {
	a, err := caseNamed(code + ".txtar")
	if err != nil {
		return "", "", false
	}
	name, faulty := firstWanted(part(a, "")["want"])
	return listing(name, part(a, "bad/")[name], faulty), listing(name, part(a, "good/")[name], nil), true
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
