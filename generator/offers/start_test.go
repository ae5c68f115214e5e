package offers_test

import (
	"maps"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/base/finding"
	"baybinder/generator/offers"
)

// A return finds its machine as what performs it leaves it there, or as another
// procedure leaves it; with that it has offers, and nothing is found in who
// performs it.
func TestAReturnFindsTheMachineAsOthersLeaveIt(t *testing.T) {
	files := manual(rig, "---\ntitle: Job\nfor: rig\nstatus: draft\ntools: [socket-13]\n---\n\n## Work\n\n1. [Safe](do:safe).\n2. [Take the seat off](remove:seat).\n3. [Back](do:back).\n")
	files["procedures/safe.md"] = "---\ntitle: Safe\nfor: rig\nstatus: draft\nhazards: [shock]\nholds: [wait, dead]\nleaves: { power: dead }\n---\n\n## Work\n\n1. [Off](isolate:plug) and [lock](lock:plug).\n2. [Wait](hold:wait).\n3. [Prove](prove:power): [](hold:dead). Mind: [](hazard:shock)\n"
	files["procedures/back.md"] = "---\ntitle: Back\nfor: rig\nstatus: draft\n---\n\n## Work\n"
	b := bench(files)
	back := b.Procedure("procedures/back.md")
	var said []string
	for _, s := range b.Starts(back) {
		line := s.Of.ID
		if s.At != nil {
			line += " " + s.At.Number
		}
		for _, x := range s.States {
			line += ", " + x.Line()
		}
		said = append(said, line)
	}
	if want := []string{"job 1.3, plug: locked, seat: off", "safe, plug: locked"}; !slices.Equal(said, want) {
		t.Errorf("%q, want %q", said, want)
	}
	slot := b.SlotFirst(back, back.Phases[0])
	if written := addresses(b.Offers(slot)); slices.Contains(written, "unlock:plug") {
		t.Errorf("before it is said how it is found: %q", written)
	}
	files = maps.Clone(files)
	files["procedures/back.md"] = strings.Replace(files["procedures/back.md"], "status", "expects: { plug: locked }\nstatus", 1)
	b = bench(files)
	back = b.Procedure("procedures/back.md")
	if written := addresses(b.Offers(b.SlotFirst(back, back.Phases[0]))); !slices.Contains(written, "unlock:plug") {
		t.Errorf("where the plug is locked: %q", written)
	}
	for _, f := range found(files) {
		if f.Code == "state-mismatch" && f.Level == finding.Error {
			t.Error(f.Message)
		}
	}
}

func addresses(list []offers.Offer) []string {
	var out []string
	for _, o := range list {
		out = append(out, o.Address)
	}
	return out
}
