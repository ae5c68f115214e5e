package finding_test

import (
	"slices"
	"testing"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
)

// The order is by file, place, code and words; what is said twice is said once.
func TestSortIsATotalOrder(t *testing.T) {
	a, b := position.NewFile("a.md", "one two\n"), position.NewFile("b.md", "one two\n")
	want := []finding.Finding{
		noTool.At(a.At(0, 1), "a"),
		noTool.At(a.At(0, 1), "b"),
		vague.At(a.At(0, 1), "a"),
		noTool.At(a.At(4, 5), "a"),
		noTool.At(b.At(0, 1), "a"),
	}
	mixed := []finding.Finding{want[4], want[2], want[0], want[3], want[1], want[0]}
	for range len(mixed) {
		mixed = append(mixed[1:], mixed[0])
		got := finding.Sort(slices.Clone(mixed))
		if len(got) != len(want) {
			t.Fatalf("%d findings, want %d", len(got), len(want))
		}
		for i := range want {
			if got[i].Message != want[i].Message || got[i].At != want[i].At || got[i].Code != want[i].Code {
				t.Errorf("at %d: %s %v", i, got[i].Message, got[i].At)
			}
		}
	}
	if n := finding.Errors(want); n != 4 {
		t.Errorf("%d errors, want 4: advice is none", n)
	}
}

// A place that is added to a finding is not added to the one it was made from.
func TestSeeKeepsTheOriginal(t *testing.T) {
	f := position.NewFile("a.md", "one")
	base := noTool.At(f.At(0, 1), "a").See(f.At(0, 1), "first")
	one, two := base.See(f.At(1, 2), "second"), base.See(f.At(2, 3), "third")
	if len(base.Related) != 1 || one.Related[1].Message != "second" || two.Related[1].Message != "third" {
		t.Errorf("the lists are shared: %v %v %v", base.Related, one.Related, two.Related)
	}
}
