package procedure

import (
	"slices"
	"testing"

	"baybinder/generator/derive/slips"
)

// A fastener at a part is one row: it is opened where it was first loosened,
// and closed where it is tightened, by a step that everybody does.
func TestAFastenerIsOneRow(t *testing.T) {
	s := siteOf(t, map[string]string{
		"machines/press.yaml": "name: Press\nparts:\n  lid: { name: lid, held-by: { bolt: 4 } }\n  pipe: { name: pipe, kind: line, held-by: { nut: 1 } }\n" +
			"fasteners:\n  bolt: { name: bolt }\n  nut: { name: nut }\n  screw: { name: bleed screw }\n",
		"procedures/job.md": "---\ntitle: T\nfor: press\n---\n## Work\n\n1. [Undo](loosen:nut).\n2. [Off](disconnect:pipe).\n3. [Off](remove:lid).\n" +
			"4. [On](refit:lid).\n5. [On](connect:pipe).\n6. [Tight](tighten:nut) and [tight](tighten:bolt).\n7. [Open](loosen:screw), [close](tighten:screw).\n" +
			"8. [If you like](optional:), [again](tighten:nut).\n",
	})
	p := procedureOf(t, s, "job")
	var got []string
	for _, r := range s.closeOut(p, slips.Of(p, s.Walks.Of(p)), nil).Rows {
		got = append(got, r.Key+" "+r.Opened.Name+" "+r.Closed.Name)
	}
	slices.Sort(got)
	want := []string{"fastener:bolt#lid 1.3 1.6", "fastener:nut#pipe 1.1 1.6", "fastener:screw 1.7 1.7", "part:lid 1.3 1.4", "part:pipe 1.2 1.5"}
	if !slices.Equal(got, want) {
		t.Errorf("got %q\nwant %q", got, want)
	}
}
