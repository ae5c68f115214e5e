package bigmanual

import (
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"testing"
)

// What a shop wrote is copied byte for byte; what came of it is left out.
func TestBegunLeavesOutWhatCameLater(t *testing.T) {
	t.Parallel()
	from, to := t.TempDir(), t.TempDir()
	wrote := []string{"procedures/a.md", "readings/plans/start.yaml", "register/tools.yaml", "shop.yaml"}
	later := []string{"revisions.csv", "revisions/a/1.md", "readings/people.csv", "readings/record.csv", "readings/roles.csv", "records/a.json", "records/answers.csv"}
	for _, name := range slices.Concat(wrote, later) {
		full := filepath.Join(from, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(full), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(full, []byte("of "+name), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if err := Begun(from, to); err != nil {
		t.Fatal(err)
	}
	var got []string
	err := fs.WalkDir(os.DirFS(to), ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		got = append(got, name)
		data, err := os.ReadFile(filepath.Join(to, filepath.FromSlash(name)))
		if string(data) != "of "+name {
			t.Errorf("%s holds %q", name, data)
		}
		return err
	})
	if err != nil || !slices.Equal(got, wrote) {
		t.Errorf("%q, want %q: %v", got, wrote, err)
	}
	if err := Begun(filepath.Join(from, "nowhere"), t.TempDir()); err == nil {
		t.Error("a folder that is not there was copied")
	}
}
