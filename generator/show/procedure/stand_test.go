package procedure

import (
	"strings"
	"testing"
)

// movesOf are what the steps change of where things stand, and which list all.
func movesOf(v *Procedure) string {
	out := []string{v.StoodAtStart + "|"}
	var step func(st *Step)
	step = func(st *Step) {
		for i := range st.Subs {
			step(&st.Subs[i])
		}
		text := st.Number + ":" + st.Moves
		if st.Listed {
			text += "!"
		}
		out = append(out, text)
	}
	for _, phase := range v.Phases {
		for _, part := range phase.Parts {
			if part.Step != nil {
				step(part.Step)
			}
		}
	}
	return strings.Join(out, " ")
}

// Each thing that ever stands otherwise is told once, with a number; a step says
// which numbers it adds and takes away, "?" with what it proves, and the last of
// a phase that changes anything lists all. By hand, from "How effects are walked".
func TestWhereThingsStandIsToldByNumber(t *testing.T) {
	base := map[string]string{
		"register/tools.yaml":   "tester: { name: tester, kind: tester }\nunit: { name: proving unit, kind: aid }\n",
		"register/holds.yaml":   "dead: { name: dead, kind: measure, of: mains, what: voltage, limit: at most 5 V dc, with: tester, proved-on: unit }\n",
		"machines/rig.yaml":     "name: Rig\npoints: { plug: { name: plug, lock: yes } }\nenergies: { mains: { name: mains, kind: electric, points: [plug] } }\nparts: { lid: { name: lid }, pump: { name: pump } }\n",
		"procedures/dark.md":    "---\ntitle: Dark\nfor: rig\nexpects: { lid: off }\n---\n## Work\n\n1. Look.\n2. [On](refit:lid).\n",
		"procedures/nothing.md": "---\ntitle: Nothing\nfor: rig\n---\n## Work\n\n1. Look.\n",
	}
	head, body := "for: rig\nholds: [dead]\n", "## Strip\n\nBegin.\n\nMind this.\n\n1. Look.\n2. These.\n   1. [Off](isolate:mains).\n   2. [Locked](lock:mains).\n3. [Dead](prove:mains). [](hold:dead)\n4. [Off](remove:lid).\n5. Look.\n\n"+
		"## Refit\n\n1. Look.\n\n## Back\n\n1. [On](refit:lid).\n2. [Unlock](unlock:mains).\n3. [On](restore:mains).\n"
	v := jobAt(t, base, head, body)
	want := "| 1.1: 1.2.1:0 1 1.2.2:-0 -1 2 3 1.2: 1.3:-2? 4? 1.4:5! 1.5: 2.1: 3.1:-5 3.2:-4 -3 6 7 3.3:-6 -7!"
	if got := movesOf(v); got != want {
		t.Errorf("%s\nwant %s", got, want)
	}
	var rows []string
	for _, r := range v.Stood {
		rows = append(rows, strings.TrimSpace(r.Name+" "+r.Word+" "+r.Since))
	}
	told := "mains isolated since step 1.2.1, plug isolated since step 1.2.1, mains locked since step 1.2.2, plug locked since step 1.2.2, " +
		"mains dead since step 1.3, lid off since step 1.4, mains isolated since step 3.2, plug isolated since step 3.2"
	if got := strings.Join(rows, ", "); got != told {
		t.Errorf("%s\nwant %s", got, told)
	}
	if len(v.Stand) != 0 {
		t.Errorf("at the end: %v", v.Stand)
	}
	s := siteOf(t, base)
	dark := s.Procedure(procedureOf(t, s, "dark"))
	if got := movesOf(dark); got != "0 1| 1.1: 1.2:-0 -1!" || dark.Stood[1].Since != "" {
		t.Errorf("what stood so before, and the energy that is on beside it: %s %v", got, dark.Stood)
	}
	if got := movesOf(s.Procedure(procedureOf(t, s, "nothing"))); got != "| 1.1:" {
		t.Errorf("where nothing changes: %s", got)
	}
}

// What was found before is proved anew with no "?"; only the thing that a proof
// adds, and what it takes away of the same thing, has one.
func TestMovesOfProofs(t *testing.T) {
	locked, dead, off := Stood{Name: "mains", Word: "locked"}, Stood{Name: "mains", Word: "dead", Proved: true}, Stood{Name: "lid", Word: "off"}
	told := telling{number: map[Stood]int{}}
	for i, c := range []struct {
		now  []Stood
		want string
	}{
		{nil, ""}, {[]Stood{locked}, "0"}, {[]Stood{off, dead}, "-0? 1 2?"}, {[]Stood{off, dead}, ""}, {[]Stood{dead}, "-1"}, {[]Stood{locked}, "-2 0"}, {[]Stood{dead, off}, "-0? 2? 1"},
	} {
		if got := told.moves(c.now); got != c.want {
			t.Errorf("%d: %q, want %q", i, got, c.want)
		}
	}
	if len(told.rows) != 3 {
		t.Errorf("told: %v", told.rows)
	}
}
