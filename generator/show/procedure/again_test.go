package procedure

import (
	"strings"
	"testing"

	"baybinder/generator/show/page"
)

// yard is a machine with an option, and hazards to meet at it.
var yard = map[string]string{
	"register/hazards.yaml": "heat: { name: heat, nature: It is hot., harm: minor-injury, consequence: It burns., avoid: [Wait.], symbol: W017 }\n" +
		"edge: { name: edge, nature: It is sharp., harm: minor-injury, consequence: It cuts., avoid: [Look.], symbol: W024 }\n" +
		"dent: { name: dent, nature: It is soft., harm: damage, consequence: It is dented., avoid: [Lay cloth under it.] }\n",
	"register/holds.yaml": "seat: { name: seat, kind: ask, answers: { good: clean, worn: scored } }\n",
	"machines/tug.yaml": "name: Tug\noptions: { cab: Cab, pack: Cold pack }\nparts:\n  door: { name: door, only-with: cab }\n  seat: { name: seat base }\n" +
		"  rail: { name: rail, only-with: \"!cab\" }\n  pump: { name: pump }\n",
}

// with is a manual with more files.
func with(base map[string]string, more ...string) map[string]string {
	out := map[string]string{}
	for name, text := range base {
		out[name] = text
	}
	for i := 0; i+1 < len(more); i += 2 {
		out[more[i]] = more[i+1]
	}
	return out
}

// jobAt is the page of one procedure at a manual's machine.
func jobAt(t *testing.T, base map[string]string, head, body string) *Procedure {
	t.Helper()
	s := siteOf(t, with(base, "procedures/job.md", "---\ntitle: Job\n"+head+"---\n"+body))
	return s.Procedure(procedureOf(t, s, "job"))
}

// saidIn are the messages of boxes; those that were said before stand in
// brackets, and a box of such alone ends in a dot.
func saidIn(boxes []page.Box) (out []string) {
	for _, b := range boxes {
		for _, m := range b.Messages {
			name := m.Name
			if m.Told {
				name = "(" + name + ")"
			}
			out = append(out, name)
		}
		if b.Met {
			out[len(out)-1] += "."
		}
	}
	return out
}

func saidAt(st *Step) []string {
	out := []string{st.Number + ":"}
	out = append(out, saidIn(st.Boxes)...)
	for i := range st.Derived {
		out = append(append(out, st.Derived[i].Number+":"), saidIn(st.Derived[i].Boxes)...)
	}
	for i := range st.Subs {
		out = append(out, saidAt(&st.Subs[i])...)
	}
	return out
}

// "A hazard that was said whole before in the phase, by a step that every unit
// passes, is said again in one line" (decided above): by its first paragraph, a
// step, a sub-step or a step of the refit; not where that was left out by some.
func TestWhatIsSaidAgain(t *testing.T) {
	for body, want := range map[string]string{
		"1. A. [](hazard:heat)\n2. B. [](hazard:heat)\n3. C. [](hazard:heat) [](hazard:edge)\n4. D. [](hazard:edge) [](hazard:heat)\n": "1.1: heat 1.2: (heat). 1.3: (heat) edge 1.4: (edge) (heat).",
		"[](hazard:heat)\n\n1. A. [](hazard:heat)\n":                                                                         "1.1: (heat).",
		"1. A. [](hazard:heat) [](hazard:dent)\n2. B. [](hazard:dent) [](hazard:edge)\n":                                     "1.1: heat dent 1.2: edge (dent).",
		"1. [With a cab](when:cab), a. [](hazard:heat)\n2. B. [](hazard:heat)\n3. C. [](hazard:heat)\n":                      "1.1: heat 1.2: heat 1.3: (heat).",
		"1. [If you like](optional:), a. [](hazard:heat)\n   1. A. [](hazard:edge)\n2. B. [](hazard:heat) [](hazard:edge)\n": "1.1: heat 1.1.1: edge 1.2: heat edge",
		"1. A. [](hold:seat)\n2. [Worn](if:seat=worn), b. [](hazard:heat)\n3. C. [](hazard:heat)\n":                          "1.1: 1.2: heat 1.3: heat",
		"1. [With a cab](when:cab), these.\n   1. A. [](hazard:heat)\n2. B. [](hazard:heat)\n":                               "1.1: 1.1.1: heat 1.2: heat",
		"1. These.\n   1. A. [](hazard:heat)\n   2. B. [](hazard:heat)\n2. C. [](hazard:heat)\n":                             "1.1: 1.1.1: heat 1.1.2: (heat). 1.2: (heat).",
		"1. A. [](hazard:heat)\n\n## Next\n\n1. B. [](hazard:heat)\n":                                                        "1.1: heat 2.1: heat",
	} {
		v := jobAt(t, yard, "for: tug\nholds: [seat]\nhazards: [heat, edge, dent]\n", "## Work\n\n"+body)
		var got []string
		for _, phase := range v.Phases {
			for _, part := range phase.Parts {
				got = append(got, saidAt(part.Step)...)
			}
		}
		if said := strings.Join(got, " "); said != want {
			t.Errorf("%s\n got %s\nwant %s", body, said, want)
		}
	}
}

// Of a refit the messages are those of the steps that it takes back; what only
// some units refit, or who likes, leaves the next to say it whole.
func TestWhatTheRefitSaysAgain(t *testing.T) {
	for reversing, want := range map[string]string{
		"[In reverse](reverse:strip)":                           "2.1: 2.1.1: edge 2.1.2: heat 2.2: heat (edge)",
		"[If you like](optional:), [in reverse](reverse:strip)": "2.1: 2.1.1: edge 2.1.2: heat 2.2: heat edge",
	} {
		v := jobAt(t, yard, "for: tug\nhazards: [heat, edge]\n",
			"## Strip\n\n1. [Off](remove:door). [](hazard:heat)\n2. [Off](remove:seat). [](hazard:edge)\n\n## Refit\n\n1. "+reversing+"\n2. Look. [](hazard:heat) [](hazard:edge)\n")
		got := append(saidAt(v.Phases[1].Parts[0].Step), saidAt(v.Phases[1].Parts[1].Step)...)
		if said := strings.Join(got, " "); said != want {
			t.Errorf("%s: %s, want %s", reversing, said, want)
		}
	}
}
