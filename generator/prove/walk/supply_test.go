package walk_test

import (
	"fmt"
	"strings"
	"testing"
)

// Forty plates that a unit may have, each held by a bolt of which a new one goes
// in: the unit with all of them wants forty. Each plate more must not make it
// twice as long, or this never ends.
func TestWhatManyOptionsWantIsFound(t *testing.T) {
	const plates = 40
	var options, parts, steps strings.Builder
	for i := range plates {
		fmt.Fprintf(&options, "  o%d: option %d\n", i, i)
		fmt.Fprintf(&parts, "  p%d: { name: plate %d, only-with: o%d, held-by: { bolt: 1 } }\n", i, i, i)
		fmt.Fprintf(&steps, "1. [Off](remove:p%d) with the [](tool:socket).\n", i)
	}
	for listed, want := range map[int]string{plates: "", plates - 1: "not-supplied"} {
		found := walked(t, map[string]string{
			"shop.yaml":              "title: Shop\n",
			"register/tools.yaml":    "socket: { name: socket, kind: socket, fits: [13 mm] }\n",
			"register/supplies.yaml": "bolt: { name: new bolt, unit: each }\n",
			"machines/rig.yaml":      "name: Rig\noptions:\n" + options.String() + "parts:\n" + parts.String() + "fasteners: { bolt: { name: bolt, across-flats: 13 mm, renew-with: bolt } }\n",
			"procedures/job.md": fmt.Sprintf("---\ntitle: Job\nfor: rig\ntools: [socket]\nsupplies: [bolt: %d]\n---\n## Strip\n\n%s\n## Back\n\n1. [All back](reverse:strip) with the [](tool:socket).\n",
				listed, steps.String()),
		}, false)
		var codes []string
		for _, f := range found {
			codes = append(codes, f.Code)
		}
		if got := strings.Join(codes, " "); got != want {
			t.Errorf("with %d listed: %q, want %q", listed, got, want)
		}
	}
}
