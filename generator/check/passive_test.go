package check

import (
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"testing"

	"baybinder/generator/base/needed"
)

// Known: SEEN.

// orders are sentences with a passive order, active are sentences without one.
var (
	orders = []string{
		"The bolts must be tightened.", "The lid should not be opened.", "The hose has to be cut.", "Both levers are to be pulled.",
		"The seal must always be renewed.", "Each hose shall be cleaned.", "The oil needs to be drained.", "The tag must be hung up.",
	}
	active = []string{
		"Tighten the bolts.", "Do not open the lid.", "Cut the hose.", "Keep the lever down for 5 s.",
		"The reading must be at most 5 V dc.", "The tank must be empty.", "The spring is to the left of the valve.",
	}
)

// passiveThere says where the npm package passive-voice, an unrelated matcher,
// sees a passive.
func passiveThere(t *testing.T, sentences []string) []bool {
	t.Helper()
	tools, err := filepath.Abs(filepath.Join("..", "..", ".ci", "node_modules", "passive-voice"))
	if err != nil {
		t.Fatal(err)
	}
	_, err = os.Stat(tools)
	node, noNode := exec.LookPath("node")
	needed.Judge(t, err == nil && noNode == nil, "passive-voice")
	in, err := json.Marshal(sentences)
	if err != nil {
		t.Fatal(err)
	}
	const script = `const p = require(process.argv[1]); console.log(JSON.stringify(JSON.parse(process.argv[2]).map((s) => p(s).length > 0)))`
	out, err := exec.Command(node, "-e", script, tools, string(in)).Output()
	if err != nil {
		t.Fatal(err)
	}
	var is []bool
	if err := json.Unmarshal(out, &is); err != nil || len(is) != len(sentences) {
		t.Fatalf("%s: %v", out, err)
	}
	return is
}

func passiveHere(sentence string) bool {
	found := findIn(map[string]string{"procedures/a.md": "---\ntitle: A\n---\n## Work\n\n1. " + sentence + "\n"})
	for _, f := range found {
		if f.Code == passive.Code {
			return true
		}
	}
	return false
}

// What is told as passive, the package sees as passive too. It is asked for
// more than orders: "the lid is closed" is a passive to it and a state here.
func TestPassiveOrdersAreThePackages(t *testing.T) {
	all := slices.Concat(orders, active)
	for i, there := range passiveThere(t, all) {
		if want := i < len(orders); passiveHere(all[i]) != want || there != want {
			t.Errorf("%q: here %v, there %v, want %v", all[i], passiveHere(all[i]), there, want)
		}
	}
	if slow := "Each hose shall be carefully cleaned."; !passiveHere(slow) || passiveThere(t, []string{slow})[0] {
		t.Errorf("%q: the package looks behind no adverb", slow)
	}
	if state := "The lid is closed."; passiveHere(state) || !passiveThere(t, []string{state})[0] {
		t.Errorf("%q is a state here, and a passive there", state)
	}
}
