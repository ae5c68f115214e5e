package issue

import (
	"os"
	"path/filepath"
	"testing"

	"baybinder/generator/model"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
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

func bound(t *testing.T, root string) *model.Manual {
	t.Helper()
	tree, err := source.Read(root)
	if err != nil {
		t.Fatal(err)
	}
	m, _ := bind.Manual(tree)
	return m
}

func order(root, day, readers string) Order {
	date, _ := model.ParseDate(day)
	return Order{Folder: root, Procedures: []string{"lid"}, Date: date, Reason: "Why.", Written: "t-04", Checked: "t-07", Approved: "foreman", Readers: readers}
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
