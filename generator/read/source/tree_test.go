package source

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/base/needed"
)

// folder makes a manual on disk.
func folder(t *testing.T, files map[string]string) string {
	t.Helper()
	root := t.TempDir()
	for name, text := range files {
		full := filepath.Join(root, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(full), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(full, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return root
}

func read(t *testing.T, root string) *Tree {
	t.Helper()
	tree, err := Read(root)
	if err != nil {
		t.Fatal(err)
	}
	return tree
}

func names(t *Tree) []string {
	var out []string
	for _, f := range t.Files {
		out = append(out, f.Path)
	}
	return out
}

func problemAt(t *Tree, name string) *Problem {
	for i := range t.Problems {
		if t.Problems[i].File.Path == name {
			return &t.Problems[i]
		}
	}
	return nil
}

func TestReadTakesTheFilesOfAManual(t *testing.T) {
	tree := read(t, folder(t, map[string]string{
		"shop.yaml": "", "revisions.csv": "", "notes.txt": "", "notes.md": "", "extra.yaml": "",
		"register/tools.yaml": "", "register/tools.es.yaml": "", "register/tools.yml": "",
		"machines/tug.yaml": "", "machines/tug.png": "",
		"procedures/tug/a.md": "", "procedures/tug/deep/er/b.md": "", "procedures/tug/a.png": "",
		"readings/people.csv": "", "readings/plans/start.yaml": "",
		"pictures/a.svg": "", "pictures/a.md": "", "revisions/a/1.md": "", "records/2026/a.json": "",
		".git/config": "", "procedures/.hidden.md": "", ".shop.yaml": "",
	}))
	want := []string{
		"machines/tug.yaml", "procedures/tug/a.md", "procedures/tug/deep/er/b.md",
		"readings/people.csv", "readings/plans/start.yaml", "records/2026/a.json",
		"register/tools.es.yaml", "register/tools.yaml", "revisions.csv", "revisions/a/1.md", "shop.yaml",
	}
	if got := names(tree); !slices.Equal(got, want) {
		t.Errorf("read %v\nwant %v", got, want)
	}
	for name, want := range map[string]bool{"pictures/a.svg": true, "register/tools.yml": true, ".git/config": false, "procedures/.hidden.md": false} {
		if tree.Has(name) != want {
			t.Errorf("Has(%s) = %v", name, tree.Has(name))
		}
	}
}

func TestReadOfWhatIsNoManual(t *testing.T) {
	root := folder(t, map[string]string{"file": "x"})
	for name, want := range map[string]string{
		filepath.Join(root, "missing"): "there is no folder",
		filepath.Join(root, "file"):    "is a file, not a folder",
	} {
		if _, err := Read(name); err == nil || !strings.Contains(err.Error(), want) || !strings.Contains(err.Error(), name) {
			t.Errorf("Read(%s): %v, want the name and %q", filepath.Base(name), err, want)
		}
	}
	tree := read(t, t.TempDir())
	if len(tree.Files) != 0 || len(tree.Problems) != 0 {
		t.Errorf("an empty folder has files %v and problems %v", names(tree), tree.Problems)
	}
}

func TestReadOfWhatMayNotBeRead(t *testing.T) {
	if os.Geteuid() == 0 {
		t.Skip("root may read everything")
	}
	root := folder(t, map[string]string{"shop.yaml": "title: a", "procedures/shut/a.md": "", "procedures/b.md": ""})
	for _, name := range []string{"procedures/shut", "procedures/b.md"} {
		full := filepath.Join(root, name)
		if err := os.Chmod(full, 0); err != nil {
			t.Fatal(err)
		}
		t.Cleanup(func() { _ = os.Chmod(full, 0o755) })
	}
	tree := read(t, root)
	for _, name := range []string{"procedures/shut", "procedures/b.md"} {
		if p := problemAt(tree, name); p == nil || !strings.Contains(p.Why.String(), "cannot be read") || p.Mend.IsZero() {
			t.Errorf("%s is not told: %v", name, tree.Problems)
		}
	}
	if err := os.Chmod(root, 0); err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = os.Chmod(root, 0o755) })
	if _, err := Read(root); err == nil || !strings.Contains(err.Error(), "cannot be read") {
		t.Errorf("a folder that may not be read: %v", err)
	}
}

// A link inside the manual is followed; one that leads out of it, to a folder
// or nowhere is told and not followed.
func TestReadOfLinks(t *testing.T) {
	outside := folder(t, map[string]string{"secret.md": "secret", "dir/deep.md": "deep"})
	root := folder(t, map[string]string{"procedures/a.md": "inside"})
	for name, to := range map[string]string{
		"procedures/inside.md":  filepath.Join(root, "procedures", "a.md"),
		"procedures/outside.md": filepath.Join(outside, "secret.md"),
		"procedures/up.md":      "../../" + filepath.Base(outside) + "/secret.md",
		"procedures/nowhere.md": "gone.md",
		"procedures/itself.md":  "itself.md",
		"procedures/dir":        filepath.Join(outside, "dir"),
		"procedures/loop":       root,
	} {
		needed.Judge(t, os.Symlink(to, filepath.Join(root, name)) == nil, "a file system with symbolic links")
	}
	tree := read(t, root)
	if got := names(tree); !slices.Equal(got, []string{"procedures/a.md", "procedures/inside.md"}) {
		t.Errorf("read %v", got)
	}
	for _, f := range tree.Files {
		if f.Text != "inside" {
			t.Errorf("%s holds %q", f.Path, f.Text)
		}
	}
	for _, name := range []string{"procedures/outside.md", "procedures/nowhere.md", "procedures/itself.md", "procedures/dir", "procedures/loop"} {
		if p := problemAt(tree, name); p == nil || tree.Has(name) {
			t.Errorf("%s is not told, or is there: %v", name, tree.Problems)
		}
	}
}

// The manual's folder may be a link itself.
func TestReadThroughALink(t *testing.T) {
	root := folder(t, map[string]string{"shop.yaml": "title: a"})
	link := filepath.Join(t.TempDir(), "manual")
	needed.Judge(t, os.Symlink(root, link) == nil, "a file system with symbolic links")
	if tree := read(t, link); len(tree.Files) != 1 || tree.Files[0].Text != "title: a" {
		t.Errorf("read %v", names(tree))
	}
}

func TestReadOfFilesThatAreNoText(t *testing.T) {
	root := folder(t, map[string]string{
		"procedures/latin1.md": "se\xf1al",
		"procedures/bom.md":    "\ufeffa\r\nb",
		"procedures/utf16.md":  "\xff\xfea\x00",
		"pictures/a.png":       "\x89PNG\xff",
	})
	huge, err := os.Create(filepath.Join(root, "procedures", "huge.md"))
	if err != nil {
		t.Fatal(err)
	}
	if err := huge.Truncate(100 << 20); err != nil { // 100 MB that take no room on disk
		t.Fatal(err)
	}
	if err := huge.Close(); err != nil {
		t.Fatal(err)
	}
	if err := os.Mkdir(filepath.Join(root, "procedures", "folder.md"), 0o755); err != nil {
		t.Fatal(err)
	}
	tree := read(t, root)
	for name, want := range map[string]string{
		"procedures/latin1.md": "not UTF-8", "procedures/utf16.md": "not UTF-8", "procedures/huge.md": "100 MB",
	} {
		if p := problemAt(tree, name); p == nil || !strings.Contains(p.Why.String(), want) || p.Mend.IsZero() {
			t.Errorf("%s: %v, want %q", name, p, want)
		}
	}
	if got := names(tree); !slices.Equal(got, []string{"procedures/bom.md"}) || tree.Files[0].Text != "a\nb" {
		t.Errorf("read %v", got)
	}
	if data, err := tree.Bytes("pictures/a.png"); err != nil || string(data) != "\x89PNG\xff" {
		t.Errorf("the picture is %q, %v", data, err)
	}
}

// A file as large as may be is read, one byte more is not.
func TestReadUpToTheLimit(t *testing.T) {
	root := folder(t, map[string]string{
		"procedures/a.md": strings.Repeat("a", MaxFile),
		"procedures/b.md": strings.Repeat("b", MaxFile+1),
	})
	if got := names(read(t, root)); !slices.Equal(got, []string{"procedures/a.md"}) {
		t.Errorf("read %v", got)
	}
}

// Names that Windows keeps for itself are files like any other here: what is
// wrong with them is told when they are bound.
func TestReadOfNamesThatWindowsKeeps(t *testing.T) {
	tree := read(t, folder(t, map[string]string{"procedures/con.md": "a", "procedures/nul.md": "b"}))
	if got := names(tree); !slices.Equal(got, []string{"procedures/con.md", "procedures/nul.md"}) {
		t.Errorf("read %v", got)
	}
}

// FromText makes what Read would have made of the same files.
func TestFromTextIsLikeRead(t *testing.T) {
	files := map[string]string{"shop.yaml": "\ufefftitle: a\r\n", "procedures/a.md": "x", "pictures/a.svg": "<svg/>", "register/tools.yml": ""}
	disk, memory := read(t, folder(t, files)), FromText(files)
	if !slices.Equal(names(disk), names(memory)) {
		t.Errorf("read %v and made %v", names(disk), names(memory))
	}
	for i, f := range disk.Files {
		if f.Text != memory.Files[i].Text {
			t.Errorf("%s is %q and %q", f.Path, f.Text, memory.Files[i].Text)
		}
	}
	for name := range disk.Paths {
		if !memory.Has(name) {
			t.Errorf("%s is not there", name)
		}
	}
}
