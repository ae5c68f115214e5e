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

// Each round has anchors of its own, those of its sub-steps and of its refit
// too; a mention of an order repeats nothing.
func TestRoundsHaveTheirAnchors(t *testing.T) {
	v := jobAt(t, map[string]string{"machines/rig.yaml": "name: Rig\norders: { wheels: [rear, front] }\nparts: { cap: { name: cap } }\n"}, "for: rig\n",
		"## Strip\n\n1. [Off](remove:cap).\n\n## Refit\n\n1. [At each](each:wheels), these.\n   1. [Walk](between:).\n   2. Turn.\n      1. Left.\n   3. [In reverse](reverse:strip)\n")
	var got []string
	var add func(list []Step)
	add = func(list []Step) {
		for i := range list {
			got = append(got, list[i].Anchor)
			for _, d := range list[i].Derived {
				got = append(got, d.Anchor)
			}
			add(list[i].Subs)
		}
	}
	add(v.Phases[1].Parts[0].Step.Subs)
	want := "s2-1-1 s2-1-2 s2-1-2-1 s2-1-3 r2-1-3-1 s2-1-2-round-2 s2-1-2-1-round-2 s2-1-3-round-2 r2-1-3-1-round-2"
	if joined := strings.Join(got, " "); joined != want {
		t.Errorf("%s, want %s", joined, want)
	}
	if entries := v.Phases[1].Parts[0].Step.Entries; entries != nil {
		t.Errorf("a step with sub-steps has ticks for %q", entries)
	}
	s := siteOf(t, map[string]string{"machines/rig.yaml": "name: Rig\norders: { wheels: [rear, front] }\n", "procedures/a.md": "---\ntitle: A\nfor: rig\n---\n## Work\n\n1. A.\n   1. B.\n2. [Each](each:wheels).\n3. [Each](each:wheels).\n   1. B.\n"})
	p := s.Manual.Procedures[0]
	if orderOf(p.Steps[0]) != nil || orderOf(p.Steps[2]) == nil {
		t.Errorf("orders: %v %v", orderOf(p.Steps[0]), orderOf(p.Steps[2]))
	}
	if with, without := s.entriesOf(orderOf(p.Steps[2]), p.Steps[2]), s.entriesOf(orderOf(p.Steps[3]), p.Steps[3]); len(with) != 2 || without != nil {
		t.Errorf("ticks %q, and with one sub-step %q", with, without)
	}
}
