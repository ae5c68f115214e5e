// Package oracle puts questions of the tests to GNU units, which computes with units and knows nothing of this program.
package oracle

import (
	"os/exec"
	"strconv"
	"strings"
	"testing"

	"baybinder/generator/base/needed"
)

// Units is what GNU units makes of an expression in a unit, or of a bare number
// where the unit is "1". The test fails where the program does not
// answer; see needed.Judge for where it is not installed.
func Units(t testing.TB, expression, unit string) float64 {
	t.Helper()
	path, err := exec.LookPath("units")
	needed.Judge(t, err == nil, "GNU units")
	out, err := exec.Command(path, "-q", "-t", "-o", "%.15g", expression, unit).Output()
	if err != nil {
		t.Fatalf("units does not compute %s in %s: %v, %s", expression, unit, err, out)
	}
	answer, err := strconv.ParseFloat(strings.TrimSpace(string(out)), 64)
	if err != nil {
		t.Fatalf("units says %q to %s in %s", out, expression, unit)
	}
	return answer
}
