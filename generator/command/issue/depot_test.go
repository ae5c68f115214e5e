package issue

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"baybinder/generator/bigmanual"
	"baybinder/generator/derive/training"
)

// The depot's scenario, on a copy of the demo manual: a wait became longer, and
// everybody who read the shorter one reads again; a comma spares them; a
// torque that was passed off as a comma is refused. All invented.
func TestTheDepotIssuesThreeRevisions(t *testing.T) {
	root := t.TempDir()
	if err := bigmanual.Begun(filepath.Join("..", "..", "..", "content"), root); err != nil {
		t.Fatal(err)
	}
	put(t, root, "readings/plans/depot.yaml", "title: Depot\nread: [isolate-tug-traction, change-drive-wheel, replace-ram-seal]\nwithin: 14 days\n")
	put(t, root, "readings/people.csv", "person,name,roles,started,plans\na-v,A.V.,,2026-04-01,depot\ng-m,G.M.,,2026-04-01,depot\nt-07,Checker,trainer,,\nforeman,Approver,foreman,,\n")
	issue := func(id, day, readers string) error {
		o := order(root, day, readers)
		o.Procedures = []string{id}
		_, err := Run(bound(t, root), nil, o)
		return err
	}
	for _, id := range []string{"isolate-tug-traction", "change-drive-wheel", "replace-ram-seal"} {
		if err := issue(id, "2026-04-10", "reread"); err != nil {
			t.Fatal(err)
		}
		for _, person := range []string{"a-v", "g-m"} {
			e := training.Entry{Folder: root, Person: person, Procedure: id, Act: "read", Date: date(t, "2026-04-12")}
			if _, err := training.RecordAll(bound(t, root), root, []training.Entry{e}); err != nil {
				t.Fatal(err)
			}
		}
	}
	swap := func(file, from, to string) {
		t.Helper()
		data, err := os.ReadFile(filepath.Join(root, file))
		if err != nil || !strings.Contains(string(data), from) {
			t.Fatalf("%s does not hold %q: %v", file, from, err)
		}
		put(t, root, file, strings.Replace(string(data), from, to, 1))
	}

	swap("register/holds.yaml", "for: 10 min\n", "for: 12 min\n")
	swap("procedures/tug/isolate-tug-traction.md", "[wait 10 min]", "[wait 12 min]")
	if err := issue("isolate-tug-traction", "2026-04-29", "none"); err == nil {
		t.Error("a longer wait was kept from the readers")
	}
	if err := issue("isolate-tug-traction", "2026-04-29", "reread"); err != nil {
		t.Fatal(err)
	}
	swap("procedures/tug/change-drive-wheel.md", "Roll the old wheel to", "Roll the old wheel, slowly, to")
	if err := issue("change-drive-wheel", "2026-04-30", "none"); err != nil {
		t.Errorf("a comma was not spared them: %v", err)
	}
	swap("machines/shop-press.yaml", "80 N·m, 110 N·m]", "80 N·m, 120 N·m]")
	if err := issue("replace-ram-seal", "2026-05-01", "none"); err == nil || !strings.Contains(err.Error(), "120 N·m, was 110 N·m") {
		t.Errorf("a torque passed for a comma: %v", err)
	}

	m := bound(t, root)
	staff := training.NewStandings(m, date(t, "2026-05-04"))
	var got []string
	items := staff.Items()
	for _, i := range items {
		if i.State != training.Stale { // what they perform is read too, and was not
			continue
		}
		got = append(got, fmt.Sprint(i.Person.ID, " ", i.What.Base().ID, " ", i.State, " ", i.By))
	}
	want := "a-v isolate-tug-traction stale 2026-05-13\ng-m isolate-tug-traction stale 2026-05-13"
	if strings.Join(got, "\n") != want {
		t.Errorf("stale:\n%s\nwant:\n%s", strings.Join(got, "\n"), want)
	}
	changes := staff.Changes(items)
	if len(changes) != 1 || len(changes[0].People) != 2 || !strings.Contains(strings.Join(changes[0].Steps, "\n"), "hold capacitor wait, for: 12 min, was 10 min") {
		t.Errorf("changes: %+v", changes)
	}
}
