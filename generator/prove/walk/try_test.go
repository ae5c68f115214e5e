package walk_test

import (
	"slices"
	"strings"
	"testing"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// What is tried in place of a procedure brings its callers what a walk of the
// manual finds that has it so: a tool too that no procedure put in place before,
// with callers that perform other procedures besides, and with one that performs
// itself and is not walked.
func TestCallersOfWhatIsTriedAreWalkedWhole(t *testing.T) {
	const before = "---\ntitle: Lift it\nfor: rig\n---\n## Work\n\n1. Look.\n"
	const after = "---\ntitle: Lift it\nfor: rig\nleaves: { drain-tray: placed }\n---\n## Work\n\n1. [Put the tray under](place:drain-tray).\n2. [Look](do:look).\n"
	files := shopFiles(t)
	files["machines/rig.yaml"] = "name: Rig\nparts: { lid: { name: lid }, door: { name: door } }\n"
	files["procedures/lift.md"] = before
	files["procedures/open.md"] = "---\ntitle: Open it\nfor: rig\nleaves: { lid: off }\n---\n## Work\n\n1. [Take the lid off](remove:lid).\n"
	files["procedures/job.md"] = "---\ntitle: Job\nfor: rig\n---\n## Work\n\n1. [Open it](do:open).\n2. [Lift it](do:lift).\n"
	files["procedures/other.md"] = "---\ntitle: Other job\n---\n## Work\n\n1. [Look](do:look).\n2. [Lift it](do:lift).\n"
	files["procedures/look.md"] = "---\ntitle: Look\n---\n## Work\n\n1. Look.\n"
	files["procedures/ring.md"] = "---\ntitle: Ring\nfor: rig\n---\n## Work\n\n1. [Again](do:ring).\n2. [Lift it](do:lift).\n"
	b := bind.All(source.FromText(files))
	if len(b.Findings) > 0 {
		t.Fatal(b.Findings)
	}
	r := walk.All(b.Manual)
	instead, _ := b.Try(position.NewFile("procedures/lift.md", after))
	tried := r.TryCallers(procedureNamed(b.Manual, "lift"), instead, []*model.Procedure{procedureNamed(b.Manual, "ring"), procedureNamed(b.Manual, "job"), procedureNamed(b.Manual, "other")})

	files["procedures/lift.md"] = after
	m, _ := bind.Manual(source.FromText(files))
	whole := walk.All(m)
	want := slices.Concat(whole.Of(procedureNamed(m, "job")).Findings, whole.Of(procedureNamed(m, "other")).Findings)
	if got, want := saidIn(tried), saidIn(want); !slices.Equal(got, want) || len(want) < 2 {
		t.Errorf("tried:\n%q\nwalked:\n%q", got, want)
	}
}

// Nobody else has to call what is tried for its callers to be walked with it in its place.
func TestOneCallerOfWhatIsTried(t *testing.T) {
	const before = "---\ntitle: Lift it\nfor: rig\n---\n## Work\n\n1. Look.\n"
	const after = "---\ntitle: Lift it\nfor: rig\nleaves: { lid: off }\n---\n## Work\n\n1. [Take the lid off](remove:lid).\n"
	files := shopFiles(t)
	files["machines/rig.yaml"] = "name: Rig\nparts: { lid: { name: lid } }\n"
	files["procedures/lift.md"] = before
	files["procedures/job.md"] = "---\ntitle: Job\nfor: rig\n---\n## Work\n\n1. [Lift it](do:lift).\n"
	b := bind.All(source.FromText(files))
	instead, _ := b.Try(position.NewFile("procedures/lift.md", after))
	tried := walk.All(b.Manual).TryCallers(procedureNamed(b.Manual, "lift"), instead, []*model.Procedure{procedureNamed(b.Manual, "job")})
	if got := codesOf(tried); !slices.Equal(got, []string{"left-off"}) {
		t.Errorf("told %q, want that the lid is left off", got)
	}
}

// What is tried alone is told what a walk of the manual tells that has it so: where it
// performs what nobody performed on its machine before, where it puts a tool in place
// that nobody did (and waits less than its machine takes, 100 s · ln(360/60) = 179 s),
// and where it performs itself, and is not walked.
func TestWhatIsTriedIsWalkedAsInTheManual(t *testing.T) {
	const head = "---\ntitle: Job\nfor: yard-tug\n"
	for name, c := range map[string]struct {
		text string
		want []string
	}{
		"performs": {head + "---\n## Work\n\n1. [Tray](do:tray).\n", []string{"left-in-place"}},
		"places": {head + "holds: [two, bus-dead]\nleaves: { traction: dead }\n---\n## Work\n\n1. [Off](isolate:traction), [lock](lock:traction).\n2. [Tray](place:drain-tray).\n3. [Wait](hold:two).\n4. [Dead](prove:traction). [](hold:bus-dead)\n",
			[]string{"left-in-place", "wait-too-short"}},
		"itself by another": {head + "---\n## Work\n\n1. [More](do:ring).\n2. [Off](remove:seat-base).\n", nil},
		"itself":            {head + "---\n## Work\n\n1. [Again](do:job).\n2. [Off](remove:seat-base).\n", nil},
	} {
		files := shopFiles(t)
		files["machines/yard-tug.yaml"] = strings.Replace(files["machines/yard-tug.yaml"], "points: [service-plug], stored: yes", "points: [service-plug], stored: { capacitance: 1000 µF, resistance: 100 kΩ }", 1)
		files["register/holds.yaml"] += "two: { name: two, kind: wait, for: 2 min, of: traction }\n"
		files["procedures/job.md"] = head + "---\n## Work\n\n1. Look.\n"
		files["procedures/ring.md"] = "---\ntitle: Ring\nfor: yard-tug\n---\n## Work\n\n1. [Do it](do:job).\n"
		if name != "places" {
			files["procedures/tray.md"] = "---\ntitle: Tray\nleaves: { drain-tray: placed }\n---\n## Work\n\n1. [Put the tray under](place:drain-tray).\n"
		}
		b := bind.All(source.FromText(files))
		p, _ := b.Try(position.NewFile("procedures/job.md", c.text))
		tried := walk.All(b.Manual).Try(p).Findings

		files["procedures/job.md"] = c.text
		m, _ := bind.Manual(source.FromText(files))
		whole := walk.All(m).Of(procedureNamed(m, "job")).Findings
		if got, want := saidIn(tried), saidIn(whole); !slices.Equal(got, want) {
			t.Errorf("%s: tried:\n%q\nwalked:\n%q", name, got, want)
		}
		if got := codesOf(tried); !slices.Equal(slices.Sorted(slices.Values(got)), c.want) {
			t.Errorf("%s: told %q, want %q", name, got, c.want)
		}
	}
}

func procedureNamed(m *model.Manual, id string) *model.Procedure {
	return m.Procedures[slices.IndexFunc(m.Procedures, func(p *model.Procedure) bool { return p.ID == id })]
}

func saidIn(list []finding.Finding) (out []string) {
	for _, f := range list {
		out = append(out, f.At.Path()+": "+f.Message)
	}
	return out
}
