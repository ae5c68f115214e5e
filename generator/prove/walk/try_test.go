package walk_test

import (
	"slices"
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
	named := func(m *model.Manual, id string) *model.Procedure {
		return m.Procedures[slices.IndexFunc(m.Procedures, func(p *model.Procedure) bool { return p.ID == id })]
	}
	instead, _ := b.Try(position.NewFile("procedures/lift.md", after))
	tried := r.TryCallers(named(b.Manual, "lift"), instead, []*model.Procedure{named(b.Manual, "ring"), named(b.Manual, "job"), named(b.Manual, "other")})

	files["procedures/lift.md"] = after
	m, _ := bind.Manual(source.FromText(files))
	whole := walk.All(m)
	want := slices.Concat(whole.Of(named(m, "job")).Findings, whole.Of(named(m, "other")).Findings)
	if got, want := saidIn(tried), saidIn(want); !slices.Equal(got, want) || len(want) < 2 {
		t.Errorf("tried:\n%q\nwalked:\n%q", got, want)
	}
}

func saidIn(list []finding.Finding) (out []string) {
	for _, f := range list {
		out = append(out, f.At.Path()+": "+f.Message)
	}
	return out
}
