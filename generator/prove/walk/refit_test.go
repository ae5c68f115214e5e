package walk_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// Known: DERIVED.

// walkText binds and walks one procedure for the yard tug. Lines that begin
// with ## begin a phase; the others are steps, or what stands in one where they
// are indented.
func walkText(t *testing.T, front string, others map[string]string, lines ...string) (*walk.Result, *model.Manual, *model.Procedure) {
	t.Helper()
	files := shopFiles(t)
	for name, text := range others {
		files[name] = text
	}
	files["procedures/job.md"] = procedureText(front, lines...)
	m, found := bind.Manual(source.FromText(files))
	if len(found) > 0 {
		t.Fatalf("%s: %s", found[0].At.Path(), found[0].Message)
	}
	r, p := walk.All(m), only(t, m, "job")
	for _, f := range r.Of(p).Findings {
		t.Errorf("%s: %s", placed(f), f.Message)
	}
	return r, m, p
}

func procedureText(front string, lines ...string) string {
	text := "---\ntitle: Job\nfor: yard-tug\n" + front + "---\n\n"
	for _, l := range lines {
		switch {
		case strings.HasPrefix(l, "##"):
			text += "\n" + l + "\n\n"
		case strings.HasPrefix(l, "   "):
			text += "\n" + l + "\n"
		default:
			text += "1. " + l + "\n"
		}
	}
	return text
}

var safeLines = []string{
	"## Safe",
	"[Switch the pump off](isolate:lift).", "[Work the lever](release:lift).", "[Prove it](prove:lift) [](hold:lift-zero).",
	"[Pull the plug](isolate:traction) and [lock it](lock:traction).", "[Wait](hold:capacitor-wait).", "[Prove it](prove:traction). [](hold:bus-dead)",
}

var backLines = []string{
	"## Back", "[Fill](fill:lift-oil) and [bleed](bleed:lift-oil).",
	"[Take the lock off](unlock:traction).", "[Switch the pump on](restore:lift).", "[Put the plug in](restore:traction).",
}

// derived puts a derived step into words.
func derived(d walk.Derived) string {
	verb := map[model.Act]string{model.Refit: "refit", model.Tighten: "tighten", model.Clear: "clear", model.Reset: "reset"}[d.Verb]
	out := fmt.Sprintf("%s %s %s of %s", d.Label, verb, d.Thing.Label(), d.From.Number)
	if d.Renew {
		out += " new"
	}
	if d.New != nil {
		out += " " + d.New.ID
	}
	if d.Begun {
		out += " by hand"
	}
	for _, f := range d.Fasteners {
		out += fmt.Sprintf(" [%d %s", f.Count, f.ID)
		if f.New != nil {
			out += " new " + f.New.ID
		}
		out += "]"
	}
	if d.When != "" {
		out += " " + d.When
	}
	return out
}

// The refit that follows from a strip: last off first on, new where it was
// renewed, with the fasteners; lines that are begun by hand are tightened, in
// the order of refit, before the next that is not.
func TestDerivedRefit(t *testing.T) {
	lines := slices.Concat(safeLines, []string{
		"## Strip",
		"[Set the tray](place:drain-tray).",
		"[With a cab](when:cab), [lift the door off](remove:cab-door).",
		"[Undo all but two](loosen:seat-bolt).",
		"[Take the seat base off](remove:seat-base).",
		"   [When you refit it](on:refit), press the clip home first.",
		"[Mark them](mark:lift-lines).",
		"[Take line A off](disconnect:lift-line-a) and [cap it](cap:lift-line-a).",
		"[Take line B off](disconnect:lift-line-b) and [cap it](cap:lift-line-b).",
		"[Take the lid off](remove:inverter-lid).",
		"[Take the inverter out](renew:inverter).",
		"[Raise it](alter:relief).",
		"[Undo the wheel](loosen:wheel-nut). [](hazard:charged-capacitors)",
		"## Refit", "[In reverse](reverse:strip).",
	}, backLines)
	lines = slices.Insert(lines, 1, "[Jack it up](release:raised-tug) and [see that it rests](prove:raised-tug) [](hold:push-test).")
	lines = append(lines, "[Let it down](restore:raised-tug).")
	r, _, p := walkText(t, "supplies: [new-seat-bolt: 4, new-inverter: 1]\n", nil, lines...)
	rev := r.Of(p).Reversals
	if len(rev) != 1 {
		t.Fatalf("%d reversals", len(rev))
	}
	var got []string
	for _, d := range rev[0].Steps {
		got = append(got, derived(d))
	}
	want := []string{
		"3.1.1 tighten wheel nut of 2.11 [5 wheel-nut]",
		"3.1.2 reset relief valve of 2.10",
		"3.1.3 refit inverter of 2.9 new new-inverter [4 lid-bolt]",
		"3.1.4 refit inverter lid of 2.8 [8 lid-bolt]",
		"3.1.5 refit lift line B of 2.7 by hand [1 line-nut]",
		"3.1.6 refit lift line A of 2.6 by hand [1 line-nut]",
		"3.1.7 tighten lift line B of 2.7 [1 line-nut]",
		"3.1.8 tighten lift line A of 2.6 [1 line-nut]",
		"3.1.9 refit seat base of 2.4 [4 seat-bolt new new-seat-bolt]",
		"3.1.10 refit cab door of 2.2 on units with Enclosed cab",
		"3.1.11 clear drain tray of 2.1",
	}
	if !slices.Equal(got, want) {
		t.Errorf("derived:\n%s\nwant:\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
	if n := rev[0].Steps[8].Notes; len(n) != 1 || !strings.Contains(n[0].Plain, "press the clip home") {
		t.Errorf("the note for the refit of the seat base is %v", n)
	}
	none := numbersOf(rev[0].NoReversal)
	if want := []string{"2.5"}; !slices.Equal(none, want) {
		t.Errorf("no reversal of %v, want %v: the mark", none, want)
	}
}

// As far as a part, and then the rest; all but some.
func TestReverseInParts(t *testing.T) {
	strip := []string{"## Strip", "[Base off](remove:seat-base).", "[Lid off](remove:inverter-lid).", "[Inverter out](remove:inverter)."}
	for _, c := range []struct {
		about string
		refit []string
		want  [][]string
	}{
		{"as far as the lid", []string{"[So far](reverse:strip#inverter-lid).", "[The rest](reverse:strip)."}, [][]string{{"inverter", "inverter lid"}, {"seat base"}}},
		{"all but the base", []string{"[All but the base](reverse:strip!seat-base).", "[The rest](reverse:strip)."}, [][]string{{"inverter", "inverter lid"}, {"seat base"}}},
	} {
		lines := slices.Concat(safeLines[:1], safeLines[4:], strip, []string{"## Refit"}, c.refit, []string{"[Unlock](unlock:traction).", "[On](restore:traction)."})
		r, _, p := walkText(t, "supplies: [new-seat-bolt: 4]\n", nil, lines...)
		for i, rev := range r.Of(p).Reversals {
			var got []string
			for _, d := range rev.Steps {
				got = append(got, d.Thing.Label())
			}
			if !slices.Equal(got, c.want[i]) {
				t.Errorf("%s: %v, want %v", c.about, got, c.want[i])
			}
		}
	}
}

// Links of a note for the refit act where the step is reversed, and only there.
func TestNotesActAtTheRefit(t *testing.T) {
	lines := slices.Concat(safeLines[:4], []string{
		"## Strip", "[Base off](remove:seat-base).",
		"[Line A off](disconnect:lift-line-a) and [cap it](cap:lift-line-a).",
		"   [When you refit it](on:refit), [fill](fill:lift-oil) and [bleed](bleed:lift-oil).",
		"## Refit", "[In reverse](reverse:strip).", "[On](restore:lift).",
	})
	walkText(t, "supplies: [new-seat-bolt: 4]\n", nil, lines...)
}
