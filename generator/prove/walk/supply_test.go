package walk_test

import (
	"strings"
	"testing"
)

// The message says what is needed and what is listed, to the last figure: a list
// that is mended as it says holds enough.
func TestMendedSuppliesAreEnough(t *testing.T) {
	const seat = "1. [Off](remove:seat-base).\n2. [On](refit:seat-base), [tight](tighten:seat-bolt).\n"
	const oil = "1. [Off](isolate:lift).\n2. [Out](release:lift).\n3. [Dead](prove:lift). [](hold:lift-zero)\n4. [Drain](drain:lift-oil).\n5. [Fill](fill:lift-oil).\n6. [Bleed](bleed:lift-oil).\n7. [On](restore:lift).\n"
	for _, c := range []struct{ body, capacity, listed, message, mended string }{
		{seat, "4 L", "new-seat-bolt: 2", "needs 4 of the seat bolt; the list has 2", "new-seat-bolt: 4"},
		{oil, "4 L", "hydraulic-oil: 3.5 L", "needs 4 L of the hydraulic oil; the list has 3.5 L", "hydraulic-oil: 4 L"},
		{oil, "12.344 L", "hydraulic-oil: 12 L", "needs 12.344 L of the hydraulic oil; the list has 12 L", "hydraulic-oil: 12.344 L"},
		{oil, "12344 mL", "hydraulic-oil: 12 L", "needs 12344 mL of the hydraulic oil; the list has 12000 mL", "hydraulic-oil: 12344 mL"},
	} {
		files := shopFiles(t)
		files["machines/yard-tug.yaml"] = strings.Replace(files["machines/yard-tug.yaml"], "capacity: 4 L", "capacity: "+c.capacity, 1)
		job := func(listed string) string {
			return "---\ntitle: Job\nfor: yard-tug\nsupplies: [" + listed + "]\n---\n## Work\n\n" + c.body
		}
		files["procedures/job.md"] = job(c.listed)
		found := walked(t, files, false)
		if len(found) != 1 || !strings.Contains(found[0].Message, c.message) || found[0].Mend != "write "+c.mended+" in supplies" {
			t.Errorf("%s of %s: found %v, want %q", c.listed, c.capacity, found, c.message)
		}
		files["procedures/job.md"] = job(c.mended)
		for _, f := range walked(t, files, false) {
			t.Errorf("mended to %s: %s", c.mended, f.Message)
		}
	}
}
