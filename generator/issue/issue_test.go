package issue

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"baybinder/generator/bind"
	"baybinder/generator/fingerprint"
	"baybinder/generator/manual"
	"baybinder/generator/source"
)

const (
	holds = "cool: { name: wait, kind: wait, for: 10 min }\n"
	lid   = "---\ntitle: Lid off\nholds: [cool]\n---\n## Work\n\n1. [Wait](hold:cool).\n2. Lift the lid off.\n"
)

// folder is a manual on the disk.
func folder(t *testing.T) string {
	t.Helper()
	root := t.TempDir()
	put(t, root, "shop.yaml", "title: Shop\n")
	put(t, root, "register/holds.yaml", holds)
	put(t, root, "procedures/lid.md", lid)
	return root
}

func put(t *testing.T, root, name, text string) {
	t.Helper()
	full := filepath.Join(root, name)
	if err := os.MkdirAll(filepath.Dir(full), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(full, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}

func bound(t *testing.T, root string) *manual.Manual {
	t.Helper()
	tree, err := source.Read(root)
	if err != nil {
		t.Fatal(err)
	}
	m, _ := bind.Manual(tree)
	return m
}

func order(root, day, readers string) Order {
	date, _ := manual.ParseDate(day)
	return Order{Folder: root, Procedure: "lid", Date: date, Reason: "Why.", Written: "t-04", Checked: "t-07", Approved: "foreman", Readers: readers}
}

// ISO 9001:2015, 7.5.2 and 7.5.3, point by point, as the clauses are quoted in
// public summaries of the standard.
func TestControlOfDocumentedInformation(t *testing.T) {
	root := folder(t)
	first, err := Run(bound(t, root), nil, order(root, "2026-04-20", "reread"))
	if err != nil {
		t.Fatal(err)
	}

	// 7.5.2 a) identification and description: number, date, author.
	// 7.5.2 c) review and approval: who checked, who approved.
	m := bound(t, root)
	r := fingerprint.Last(m, m.Procedures[0])
	if r == nil || r.Number != "1" || r.Date.String() != "2026-04-20" || r.Written != "t-04" || r.Checked != "t-07" || r.Approved != "foreman" {
		t.Fatalf("7.5.2: the row holds %+v", r)
	}

	// 7.5.3.2 c) control of changes: a changed limit is not passed over.
	put(t, root, "register/holds.yaml", strings.Replace(holds, "10 min", "12 min", 1))
	if _, err := Run(bound(t, root), nil, order(root, "2026-05-04", "none")); err == nil {
		t.Error("7.5.3.2 c): a new limit went unread")
	}
	second, err := Run(bound(t, root), nil, order(root, "2026-05-04", "reread"))
	if err != nil || second.Number != 2 || second.Fingerprint == first.Fingerprint || len(second.Changes) != 1 {
		t.Fatalf("7.5.3.2 c): %+v, %v", second, err)
	}

	// 7.5.3.2 b), d) storage and retention: the words of an old revision stay
	// legible, and its row stays as it was.
	kept, err := os.ReadFile(filepath.Join(root, "revisions", "lid", "1.md"))
	if err != nil || !strings.HasPrefix(string(kept), lid) || !strings.Contains(string(kept), "for: 10 min") {
		t.Errorf("7.5.3.2 d): %v %s", err, kept)
	}
	rows, _ := os.ReadFile(filepath.Join(root, "revisions.csv"))
	if !strings.Contains(string(rows), "\nlid,1,2026-04-20,"+first.Fingerprint+",Why.,t-04,t-07,foreman,,reread\nlid,2,") {
		t.Errorf("7.5.3.2 d): %s", rows)
	}

	// 7.5.3.2, last sentence: evidence is protected from unintended
	// alterations. An edited one no longer has its fingerprint.
	put(t, root, "revisions/lid/2.md", strings.Replace(string(kept), "10 min", "1 min", 1))
	m = bound(t, root)
	if _, ok := fingerprint.Kept(fingerprint.Last(m, m.Procedures[0])); ok {
		t.Error("7.5.3.2: an edited record is taken for the one that was kept")
	}
}

func TestATruncatedTableIsNotAddedTo(t *testing.T) {
	root := folder(t)
	const broken = "procedure,revision,date,fingerprint,reason,written,checked,approved,walked,readers\nlid,1,2026-04-20,\"1-"
	put(t, root, "revisions.csv", broken)
	if _, err := Run(bound(t, root), nil, order(root, "2026-05-04", "reread")); err == nil {
		t.Error("a row was added to a table that does not parse")
	}
	if rows, _ := os.ReadFile(filepath.Join(root, "revisions.csv")); string(rows) != broken {
		t.Errorf("the table was changed: %q", rows)
	}
}
