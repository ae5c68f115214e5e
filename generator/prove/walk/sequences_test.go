package walk_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// Known: FROM MEMORY.

// asked is one sentence of a published sequence, as the step that says it. Two
// neighbours of one rank may change places; of another rank they may not. What
// is words only is for people to keep: no act of the format says it.
type asked struct {
	paragraph, says, link string
	rank                  int
	wordsOnly             bool
}

// sequence is a published order of work on a machine that stores a charge, from
// memory.
type sequence struct {
	source string
	steps  []asked
}

var sequences = []sequence{
	{"29 CFR 1910.147 Appendix A, typical minimal lockout procedure", []asked{
		{"lockout (1)", "notify all affected employees", "[](hold:told)", 1, false},
		{"lockout (2)", "identify the type and magnitude of the energy", "Read the plate.", 1, true},
		{"lockout (3)", "shut the machine down by the normal stopping procedure", "Stop the drive at the panel.", 2, true},
		{"lockout (4)", "de-activate the energy isolating device", "[Open it](isolate:drive).", 3, false},
		{"lockout (5)", "lock it with an individual lock", "[Lock it](lock:drive).", 4, false},
		{"lockout (6)", "dissipate or restrain stored energy", "[](hold:charge-out)", 5, false},
		{"lockout (7)", "verify by testing", "[Prove it](prove:drive). [](hold:volts)", 6, false},
		{"work", "servicing", "[Take it out](remove:module).", 7, false},
		{"work", "servicing", "[Put it back](refit:module).", 8, false},
		{"restoring (1)", "check the area, components are operationally intact", "[](hold:area)", 8, false},
		{"restoring (2)", "all employees are safely positioned", "[](hold:clear)", 8, false},
		{"restoring (3)", "the controls are in neutral", "[](hold:neutral)", 8, false},
		{"restoring (4)", "remove the lockout devices", "[Take the lock off](unlock:drive).", 8, false},
		{"restoring (4)", "reenergize the machine", "[Close it](restore:drive).", 9, false},
		{"restoring (5)", "notify affected employees that it is completed", "Tell the line.", 9, true},
	}},
	{"29 CFR 1910.333(b)(2), with the charge let out once it is locked, as 1910.147(d)(5) has it", []asked{
		{"(ii)(A)", "safe procedures are determined before", "[](hold:told)", 1, false},
		{"(ii)(B)", "disconnect from all energy sources", "[Open it](isolate:drive).", 2, false},
		{"(iii)(A)", "a lock and a tag on each disconnecting means", "[Lock it](lock:drive).", 3, false},
		{"(ii)(C)", "stored electric energy is discharged", "[](hold:charge-out)", 4, false},
		{"(iv)(B)", "a qualified person tests that it is deenergized", "[Prove it](prove:drive). [](hold:volts)", 5, false},
		{"work", "the work", "[Take it out](remove:module).", 6, false},
		{"work", "the work", "[Put it back](refit:module).", 7, false},
		{"(v)(A)", "tests and visual inspections: tools, jumpers, shorts, grounds are removed", "[](hold:area)", 7, false},
		{"(v)(B)", "employees are warned to stay clear", "[](hold:clear)", 7, false},
		{"(v)(D)", "all employees are clear", "[](hold:neutral)", 7, false},
		{"(v)(C)", "each lock and tag is removed", "[Take the lock off](unlock:drive).", 7, false},
		{"(v)", "reenergize", "[Close it](restore:drive).", 8, false},
	}},
	{"EN 50110-1, 6.2: the five rules", []asked{
		{"before", "those affected are told", "[](hold:told)", 1, false},
		{"1", "disconnect completely", "[Open it](isolate:drive).", 2, false},
		{"2", "secure against re-connection", "[Lock it](lock:drive).", 3, false},
		{"before 3", "the charge is out", "[](hold:charge-out)", 4, false},
		{"3", "verify that the installation is dead", "[Prove it](prove:drive). [](hold:volts)", 5, false},
		{"4", "carry out earthing and short-circuiting", "[Earth it](place:earths).", 5, false},
		{"5", "provide protection against adjacent live parts", "Hang the screen.", 6, true},
		{"work", "the work", "[Take it out](remove:module).", 6, false},
		{"work", "the work", "[Put it back](refit:module).", 7, false},
		{"4", "take the earths off", "[Take the earths off](clear:earths).", 7, false},
		{"after", "the area is left", "[](hold:area) [](hold:clear) [](hold:neutral)", 7, false},
		{"2", "take the lock off", "[Take the lock off](unlock:drive).", 7, false},
		{"1", "close it", "[Close it](restore:drive).", 8, false},
	}},
}

// plant is the machine of the sequences.
var plant = map[string]string{
	"shop.yaml": "title: Shop\n",
	"machines/plant.yaml": `name: Plant
before-isolate: [told]
before-restore: [area, clear, neutral]
points: { isolator: { name: isolator, lock: yes } }
energies: { drive: { name: drive, kind: electric, voltage: 400 V ac, points: [isolator], stored: { wait: 10 min } } }
parts: { module: { name: module, prove-dead: [drive] } }
`,
	"register/holds.yaml": `told: { name: told, kind: sign, by: boss }
charge-out: { name: charge, kind: wait, for: 10 min, of: drive }
volts: { name: volts, kind: measure, what: volts, limit: at most 5 V ac, of: drive, with: tester, proved-on: proving-unit }
area: { name: area, kind: look, what: the area, good: nothing is left in it }
clear: { name: clear, kind: look, what: the people, good: all are clear }
neutral: { name: neutral, kind: look, what: the controls, good: in neutral }
`,
	"register/tools.yaml": "tester: { name: tester, kind: tester }\nproving-unit: { name: unit, kind: aid }\nearths: { name: earthing set, kind: aid }\n",
	"register/roles.yaml": "boss: { name: Boss }\n",
}

// ways are how shops write a sequence: each gives the procedures of its steps.
var ways = map[string]func(steps []asked) map[string]string{
	"one after another": func(steps []asked) map[string]string {
		return map[string]string{"job": procedureOfSteps("", steps)}
	},
	"for two people": func(steps []asked) map[string]string {
		return map[string]string{"job": procedureOfSteps("people: 2\n", steps)}
	},
	"by the isolator's name": func(steps []asked) map[string]string {
		text := procedureOfSteps("", steps)
		for _, act := range []string{"isolate", "lock", "unlock", "restore"} {
			text = strings.ReplaceAll(text, "("+act+":drive)", "("+act+":isolator)")
		}
		return map[string]string{"job": text}
	},
	"as the sub-steps of one step": func(steps []asked) map[string]string {
		head, list, _ := strings.Cut(procedureOfSteps("", steps), "1. ")
		list = "1. " + strings.TrimSpace(list)
		return map[string]string{"job": head + "1. The whole job:\n   " + strings.ReplaceAll(list, "\n", "\n   ") + "\n"}
	},
	"made safe by a procedure of its own": func(steps []asked) map[string]string {
		work := slices.IndexFunc(steps, func(s asked) bool { return strings.Contains(s.link, "(remove:") })
		if work < 0 {
			return map[string]string{"job": procedureOfSteps("", steps)}
		}
		leaves := "leaves: { isolator: locked, drive: dead"
		if slices.ContainsFunc(steps[:work], func(s asked) bool { return strings.Contains(s.link, "(place:") }) {
			leaves += ", earths: placed"
		}
		call := asked{link: "[Make it safe](do:safe)."}
		return map[string]string{"safe": procedureOfSteps(leaves+" }\n", steps[:work]), "job": procedureOfSteps("", append([]asked{call}, steps[work:]...))}
	},
}

func procedureOfSteps(fields string, steps []asked) string {
	text := "---\ntitle: Job\nfor: plant\n" + fields + "---\n\n## Work\n\n"
	for i, s := range steps {
		text += fmt.Sprintf("%d. %s\n", i+1, s.link)
	}
	return text
}

// told are the codes that the walk tells of the steps in this order.
func told(t *testing.T, steps []asked) []string {
	t.Helper()
	return toldOf(t, ways["one after another"](steps))
}

func toldOf(t *testing.T, procedures map[string]string) []string {
	t.Helper()
	files := map[string]string{}
	for name, text := range plant {
		files[name] = text
	}
	for id, text := range procedures {
		files["procedures/"+id+".md"] = text
	}
	m, found := bind.Manual(source.FromText(files))
	if len(found) > 0 {
		t.Fatalf("%s: %s", found[0].At.Path(), found[0].Message)
	}
	var codes []string
	for _, f := range walk.All(m).Findings(m) {
		codes = append(codes, f.Code)
	}
	return codes
}

// TestPublishedSequences walks each published sequence: as it stands nothing is
// found; with one sentence left out, or two neighbours of another rank changed
// over, something is.
func TestPublishedSequences(t *testing.T) {
	for _, s := range sequences {
		if got := told(t, s.steps); len(got) > 0 {
			t.Errorf("%s: %v", s.source, got)
		}
		for i, step := range s.steps {
			got := told(t, slices.Delete(slices.Clone(s.steps), i, i+1))
			if found := len(got) > 0; found == step.wordsOnly {
				t.Errorf("%s: without %s, %s: %v", s.source, step.paragraph, step.says, got)
			}
			if i == 0 {
				continue
			}
			before := s.steps[i-1]
			swapped := slices.Clone(s.steps)
			swapped[i-1], swapped[i] = step, before
			got = told(t, swapped)
			if free := before.rank == step.rank || before.wordsOnly || step.wordsOnly; free == (len(got) > 0) {
				t.Errorf("%s: %s before %s: %v", s.source, step.paragraph, before.paragraph, got)
			}
		}
	}
}

// TestPublishedSequencesAsShopsWriteThem: whatever way a shop writes a sequence,
// nothing is found in it as it stands, and with one sentence left out something is.
func TestPublishedSequencesAsShopsWriteThem(t *testing.T) {
	for name, way := range ways {
		for _, s := range sequences {
			if got := toldOf(t, way(s.steps)); len(got) > 0 {
				t.Errorf("%s, %s: %v", s.source, name, got)
			}
			for i, step := range s.steps {
				got := toldOf(t, way(slices.Delete(slices.Clone(s.steps), i, i+1)))
				if found := len(got) > 0; found == step.wordsOnly {
					t.Errorf("%s, %s, without %s, %s: %v", s.source, name, step.paragraph, step.says, got)
				}
			}
		}
	}
}
