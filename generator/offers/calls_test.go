package offers_test

import (
	"slices"
	"strings"
	"testing"
)

// locked is a job whose battery is locked from step 1.1 on.
var locked = strings.Replace(begun, "1. Tell the foreman.", "1. [Off](isolate:plug) and [lock](lock:plug).", 1)

// A procedure that expects something is offered where that is so, and one that leaves
// something where that is not so yet.
func TestAProcedureIsOfferedWhereItCanBePerformed(t *testing.T) {
	const safe = "---\ntitle: Make safe\nfor: rig\nleaves: { power: locked }\n---\n\n## Off\n\n1. [Off](isolate:plug) and [locked](lock:plug).\n"
	const back = "---\ntitle: Back to service\nfor: rig\nexpects: { power: locked }\n---\n\n## On\n\n1. [Unlock](unlock:plug).\n2. [On](restore:power).\n"
	for job, want := range map[string]string{begun: "do:safe: it leaves things ready for what follows", locked: "do:back: things stand as it expects them"} {
		files := manual(rig, job)
		files["procedures/safe.md"], files["procedures/back.md"] = safe, back
		var got []string
		for _, o := range at(t, files, "1.1") {
			if o.Kind == "do" {
				got = append(got, o.Address+": "+o.Why)
			}
		}
		if !slices.Equal(got, []string{want}) {
			t.Errorf("offered %q, want %q", got, want)
		}
	}
}

// What is written before a step cures what is found in it: right before it, behind
// the step that stands there; where it is the first of its phase, at the beginning
// of that; and among sub-steps, behind the sub-step before.
func TestCuresStandBeforeTheirStep(t *testing.T) {
	const lid = "[Take the lid off](remove:lid). [](hazard:shock)"
	for _, c := range []struct{ name, steps, step, before string }{
		{"in the middle", "1. Clean the seat.\n2. Clean the floor.\n3. " + lid + "\n", "2.3", "2. Clean the floor.\n"},
		{"the first", "1. " + lid + "\n", "2.1", "## Strip\n\n"},
		{"a sub-step", "1. Strip it:\n   1. Clean the seat.\n   2. Clean the floor.\n   3. " + lid + "\n", "2.1.3", "   2. Clean the floor.\n"},
	} {
		front := "leaves: { power: locked, seat: off, lid: off }\nhazards: [shock]\n"
		job := strings.Replace(strings.Replace(locked, "for: rig\n", "for: rig\n"+front, 1), "1. Clean the seat.\n", c.steps, 1)
		files := manual(rig, job)
		b := bench(files)
		cured := false
		for _, f := range found(files) {
			if f.Code != "not-reachable" {
				continue
			}
			for _, o := range b.Cures(b.Procedure("procedures/job.md").FindStep(c.step), f) {
				after := take(files, o)["procedures/job.md"]
				at := strings.Index(after, c.before)
				cured = cured || o.Address == "remove:seat" && at >= 0 && strings.Contains(strings.SplitN(after[at+len(c.before):], "\n", 2)[0], "(remove:seat)")
			}
		}
		if !cured {
			t.Errorf("%s: taking the seat off is no cure in\n%s", c.name, job)
		}
	}
}

// A circuit that was opened is looked at for a leak: by the looks for one of that
// circuit alone, which are listed with it; one that was not opened is not.
func TestALookForALeakIsOfferedOfWhatWasOpen(t *testing.T) {
	const press = "name: Press\nparts:\n  oil-line: { name: oil line, kind: line, carries: oil }\n  water-line: { name: water line, kind: line, carries: water }\nfluids:\n  oil: { name: oil }\n  water: { name: water }\n"
	job := strings.Replace(begun, "1. Tell the foreman.", "1. [Undo the line](disconnect:oil-line).", 1)
	for step, want := range map[string][]string{"1.1": {"hold:dry"}, "none": nil} {
		files := manual(press, job)
		if step == "none" {
			files["procedures/job.md"] = begun
		}
		files["register/holds.yaml"] += "dry: { name: dry, kind: look, of: oil, what: every joint, good: dry, looks-for: leak }\n" +
			"wet: { name: wet, kind: look, of: water, what: every joint, good: dry, looks-for: leak }\n" +
			"level: { name: level, kind: look, of: oil, what: the glass, good: full }\n"
		var got []string
		for _, o := range at(t, files, "1.1") {
			if o.Kind != "hold" {
				continue
			}
			got = append(got, o.Address)
			if after := take(files, o)["procedures/job.md"]; !strings.Contains(after, "holds: [dry]") {
				t.Errorf("%s is not listed:\n%s", o.Address, after)
			}
		}
		if !slices.Equal(got, want) {
			t.Errorf("offered %q, want %q", got, want)
		}
	}
}

// Why an energy is let out or proved says how it stands, and since when.
func TestAnOfferSaysSinceWhen(t *testing.T) {
	files := manual(rig, locked)
	for address, want := range map[string]string{
		"release:power": "it is locked since step 1.1, and some of it stays behind",
		"prove:power":   "it is locked since step 1.1, and not proved dead",
	} {
		if o := offered(t, files, "1.1", address); o.Why != want {
			t.Errorf("%s: %q, want %q", address, o.Why, want)
		}
	}
}
