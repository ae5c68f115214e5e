package walk_test

import (
	"slices"
	"testing"

	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
)

// turned are a procedure's close-out lines, in short.
func turned(r *walk.Result, p *model.Procedure) []string {
	var out []string
	for _, t := range r.Turned(p) {
		name := t.Thing.Base().ID
		if t.Part != nil {
			name += "#" + t.Part.ID
		}
		out = append(out, name+" "+t.Opened.Number+" "+t.Closed.Number)
	}
	return out
}

// A branch and an optional step, in which a thing is opened and closed again,
// do not close it for those who never go there.
func TestABranchClosesForNobodyElse(t *testing.T) {
	r, _, p := walkText(t, "", nil,
		"## Work",
		"[Undo](loosen:seat-bolt).",
		"[Tighten](tighten:seat-bolt).",
		"[Count](hold:tank-cold).",
		"[If it is not](if-not:tank-cold), do this.",
		"   1. [Undo](loosen:seat-bolt).",
		"   2. [Tighten](tighten:seat-bolt).",
		"[If you like](optional:), [raise it](alter:relief).",
		"[Set it back](reset:relief).",
	)
	if got, want := turned(r, p), []string{"seat-bolt#seat-base 1.1 1.2", "relief 1.5 1.6"}; !slices.Equal(got, want) {
		t.Errorf("got %q, want %q", got, want)
	}
}

// A screw that one step opens and closes is counted, too.
func TestAScrewThatAStepOpensIsCounted(t *testing.T) {
	r, _, p := walkText(t, "", nil,
		"## Work",
		"[Open](loosen:bleed-screw), [close](tighten:bleed-screw).",
		"[Open](loosen:bleed-screw).",
		"[Close](tighten:bleed-screw).",
	)
	if got, want := turned(r, p), []string{"bleed-screw 1.1 1.3"}; !slices.Equal(got, want) {
		t.Errorf("got %q, want %q", got, want)
	}
}

// What is tightened although it never was loosened is no line.
func TestACheckOfATorqueIsNoLine(t *testing.T) {
	r, _, p := walkText(t, "", nil, "## Work", "[Check](tighten:bleed-screw).")
	if got := turned(r, p); len(got) > 0 {
		t.Errorf("got %q", got)
	}
}

// In its own phase a reverse: says of the steps before it alone that nothing of
// them comes back: those after it come later at the bay.
func TestNothingComesBackOfTheStepsBeforeAReverseInItsPhase(t *testing.T) {
	r, _, p := walkText(t, "supplies: [new-seat-bolt: 4]\n", nil,
		"## Work", "Look.", "[Base off](remove:seat-base).", "Wipe.", "[Back](reverse:work).", "Sweep.")
	rev := r.Of(p).Reversals
	if len(rev) != 1 {
		t.Fatalf("%d reversals", len(rev))
	}
	numbers := numbersOf(rev[0].NoReversal)
	if want := []string{"1.1", "1.3"}; !slices.Equal(numbers, want) {
		t.Errorf("got %q, want %q", numbers, want)
	}
}

// "A cap is taken out when the line is connected: the derived refit says so"
// (the format): of a step that only caps a line something comes back, unless the
// line itself is put back by hand.
func TestTheCapComesOutByItself(t *testing.T) {
	strip := []string{"## Strip", "[Seat off](remove:seat-base).", "[Mark](mark:lift-lines).", "[Off](disconnect:lift-line-a).", "[Cap it](cap:lift-line-a)."}
	for _, c := range []struct {
		before string
		want   []string
	}{
		{"", []string{"2.2"}},
		{"[On](connect:lift-line-a), [tight](tighten:line-nut#lift-line-a).", []string{"2.2", "2.4"}},
	} {
		lines := slices.Concat(safeLines, strip, []string{"## Refit"})
		if c.before != "" {
			lines = append(lines, c.before)
		}
		r, _, p := walkText(t, "supplies: [new-seat-bolt: 4]\n", nil, slices.Concat(lines, []string{"[Back](reverse:strip)."}, backLines)...)
		rev := r.Of(p).Reversals
		if len(rev) != 1 {
			t.Fatalf("%d reversals", len(rev))
		}
		numbers := numbersOf(rev[0].NoReversal)
		if !slices.Equal(numbers, c.want) {
			t.Errorf("%q first: got %q, want %q", c.before, numbers, c.want)
		}
	}
}

// numbersOf are the numbers of steps.
func numbersOf(steps []*model.Step) (out []string) {
	for _, s := range steps {
		out = append(out, s.Number)
	}
	return out
}
