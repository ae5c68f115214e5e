package procedure

import (
	"strings"
	"testing"
)

// "the step's sub-steps are done once for each entry, in this order, labelled
// with it; a sub-step with between: is left out after the last" (the format's
// table of link kinds).
func TestRounds(t *testing.T) {
	s := siteOf(t, map[string]string{
		"machines/rig.yaml": "name: Rig\norders: { wheels: [rear, middle, front] }\n",
		"procedures/a.md": "---\ntitle: A\nfor: rig\n---\n## Work\n\n1. [At each wheel](each:wheels), do these.\n" +
			"   1. Turn it. [](step:turn)\n   2. [Walk to the next](between:).\n2. Look at each wheel. [](each:wheels)\n",
	})
	steps := s.Procedure(s.Manual.Procedures[0]).Phases[0].Parts
	var got []string
	anchors := map[string]bool{}
	for _, sub := range steps[0].Step.Subs {
		got = append(got, sub.Number+" "+sub.Round)
		if anchors[sub.Anchor] {
			t.Errorf("the anchor %s stands twice", sub.Anchor)
		}
		anchors[sub.Anchor] = true
	}
	want := "1.1.1 rear, 1.1.2 rear, 1.1.1 middle, 1.1.2 middle, 1.1.1 front"
	if joined := strings.Join(got, ", "); joined != want {
		t.Errorf("%s, want %s", joined, want)
	}
	if !anchors["turn"] {
		t.Error("the first round has not the sub-step's own anchor")
	}
	if entries := steps[1].Step.Entries; len(entries) != 3 || len(steps[0].Step.Entries) != 0 {
		t.Errorf("a tick for each entry: %v", entries)
	}
}
