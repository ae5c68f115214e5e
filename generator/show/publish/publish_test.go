package publish

import (
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/base/needed"
	"time"
)

func begin(t *testing.T, to string) *Site {
	t.Helper()
	s, err := Begin(to, nil)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func put(t *testing.T, s *Site, name, text string) {
	t.Helper()
	if err := s.Put(name, []byte(text)); err != nil {
		t.Fatal(err)
	}
}

func commit(t *testing.T, s *Site) []string {
	t.Helper()
	kept, err := s.Commit()
	if err != nil {
		t.Fatal(err)
	}
	return kept
}

func read(t *testing.T, parts ...string) string {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(parts...))
	if err != nil {
		return "(" + err.Error() + ")"
	}
	return string(data)
}

func publish(t *testing.T, to string, pages ...string) []string {
	t.Helper()
	s := begin(t, to)
	for _, p := range pages {
		put(t, s, p, p)
	}
	return commit(t, s)
}

func TestSecondSiteReplacesTheFirst(t *testing.T) {
	to := filepath.Join(t.TempDir(), "public")
	publish(t, to, "index.html", "tools/old.html")
	publish(t, to, "index.html", "tools/new.html")
	if got := read(t, to, "tools/new.html"); got != "tools/new.html" {
		t.Error(got)
	}
	if _, err := os.Stat(filepath.Join(to, "tools/old.html")); err == nil {
		t.Error("a page of the last site is still there")
	}
	left, err := os.ReadDir(filepath.Dir(to))
	if err != nil || len(left) != 1 {
		t.Errorf("beside the site there is more: %v %v", left, err)
	}
}

func TestAbortLeavesTheLastSite(t *testing.T) {
	to := filepath.Join(t.TempDir(), "public")
	publish(t, to, "index.html")
	s := begin(t, to)
	put(t, s, "index.html", "half")
	s.Abort()
	if got := read(t, to, "index.html"); got != "index.html" {
		t.Errorf("the last site is gone: %s", got)
	}
}

// A killed build neither commits nor aborts: its folder stays beside the site,
// and the next build takes no harm from it.
func TestKilledBuildLeavesTheLastSite(t *testing.T) {
	to := filepath.Join(t.TempDir(), "public")
	publish(t, to, "index.html")
	s := begin(t, to)
	put(t, s, "index.html", "half")
	s.unlock() // as the system does when a process ends
	if got := read(t, to, "index.html"); got != "index.html" {
		t.Errorf("the last site is gone: %s", got)
	}
	publish(t, to, "index.html", "next.html")
	if got := read(t, to, "next.html"); got != "next.html" {
		t.Error(got)
	}
}

// Between the two renames of a system without an exchange the site is away.
func TestKilledBetweenTwoRenames(t *testing.T) {
	to := filepath.Join(t.TempDir(), "public")
	publish(t, to, "index.html")
	if err := os.Rename(to, filepath.Join(filepath.Dir(to), ".public.old")); err != nil {
		t.Fatal(err)
	}
	begin(t, to).Abort()
	if got := read(t, to, "index.html"); got != "index.html" {
		t.Errorf("the last site did not come back: %s", got)
	}
}

func TestFilesOfOthersAreCarriedOver(t *testing.T) {
	to := filepath.Join(t.TempDir(), "public")
	publish(t, to, "index.html")
	for name, text := range map[string]string{"mine.txt": "mine", "tools/note.txt": "note", "tools/new.html": "not ours"} {
		if err := os.MkdirAll(filepath.Dir(filepath.Join(to, name)), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join(to, name), []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	kept := publish(t, to, "index.html", "tools/new.html")
	slices.Sort(kept)
	if want := []string{"mine.txt", "tools/new.html.kept", "tools/note.txt"}; !slices.Equal(kept, want) {
		t.Errorf("kept %v, want %v", kept, want)
	}
	if got := read(t, to, "tools/new.html.kept"); got != "not ours" {
		t.Errorf("a file of others is gone: %s", got)
	}
	if kept := publish(t, to, "index.html"); len(kept) != 3 {
		t.Errorf("the second time %v are kept", kept)
	}
}

func TestFolderOfOthersIsRefused(t *testing.T) {
	to := t.TempDir()
	if err := os.WriteFile(filepath.Join(to, "thesis.txt"), []byte("x"), 0o644); err != nil {
		t.Fatal(err)
	}
	if _, err := Begin(to, nil); err == nil || !strings.Contains(err.Error(), "thesis.txt") {
		t.Errorf("a folder of other files is taken: %v", err)
	}
}

func TestHiddenFilesDoNotMakeAFolderForeign(t *testing.T) {
	to := t.TempDir()
	if err := os.WriteFile(filepath.Join(to, ".gitkeep"), nil, 0o644); err != nil {
		t.Fatal(err)
	}
	if kept := publish(t, to, "index.html"); len(kept) > 0 {
		t.Errorf("hidden files are named: %v", kept)
	}
	if _, err := os.Stat(filepath.Join(to, ".gitkeep")); err != nil {
		t.Error("a hidden file is gone")
	}
}

func TestTwoPagesOfOneNameAreRefused(t *testing.T) {
	s := begin(t, filepath.Join(t.TempDir(), "public"))
	defer s.Abort()
	put(t, s, "a.html", "one")
	if err := s.Put("a.html", []byte("two")); err == nil {
		t.Error("the second page took the place of the first")
	}
}

// A page that is as it was keeps its date; one that changed does not, even
// where its length is the same.
func TestWhatIsAsItWasStaysTheSameFile(t *testing.T) {
	to := filepath.Join(t.TempDir(), "public")
	s := begin(t, to)
	put(t, s, "same.html", "one")
	put(t, s, "other.html", "one")
	commit(t, s)
	long := time.Now().Add(-time.Hour).Truncate(time.Second)
	for _, name := range []string{"same.html", "other.html"} {
		if err := os.Chtimes(filepath.Join(to, name), long, long); err != nil {
			t.Fatal(err)
		}
	}
	s = begin(t, to)
	put(t, s, "same.html", "one")
	put(t, s, "other.html", "two")
	commit(t, s)
	for name, kept := range map[string]bool{"same.html": true, "other.html": false} {
		info, err := os.Stat(filepath.Join(to, name))
		if err != nil {
			t.Fatal(err)
		}
		if info.ModTime().Equal(long) != kept {
			t.Errorf("%s is of %v, and was of %v", name, info.ModTime(), long)
		}
	}
	if got := read(t, to, "other.html"); got != "two" {
		t.Error(got)
	}
}

// Replacing a page writes a new file: what is linked to the old one, as the
// site in the making is, keeps what it had.
func TestReplaceLeavesWhatIsLinked(t *testing.T) {
	to := filepath.Join(t.TempDir(), "public")
	publish(t, to, "a.html")
	s := begin(t, to)
	put(t, s, "a.html", "a.html")
	if err := Replace(to, "a.html", []byte("new")); err != nil {
		t.Fatal(err)
	}
	if got := read(t, s.staging, "a.html"); got != "a.html" {
		t.Errorf("the site in the making has %q", got)
	}
	s.Abort()
	if got := read(t, to, "a.html"); got != "new" {
		t.Error(got)
	}
	if err := Replace(to, "no/b.html", []byte("b")); err == nil {
		t.Error("a page is put into a folder that is not there")
	}
	if entries, _ := os.ReadDir(filepath.Dir(to)); len(entries) != 1 {
		t.Errorf("beside the site stand %v", entries)
	}
}

// A refused build touches nothing, also not beside the site: a folder with the
// name of our own leavings may be another's.
func TestARefusedBuildTouchesNothing(t *testing.T) {
	for _, stranger := range []string{"public/letter.txt", ".public.old/letter.txt", ".public.new/letter.txt"} {
		dir := t.TempDir()
		for _, name := range []string{stranger, ".public.old/letter.txt"} {
			full := filepath.Join(dir, filepath.FromSlash(name))
			if err := os.MkdirAll(filepath.Dir(full), 0o755); err != nil {
				t.Fatal(err)
			}
			if err := os.WriteFile(full, []byte("mine"), 0o644); err != nil {
				t.Fatal(err)
			}
		}
		if _, err := Begin(filepath.Join(dir, "public"), nil); err == nil {
			t.Errorf("%s: it was not refused", stranger)
		}
		for _, name := range []string{stranger, ".public.old/letter.txt"} {
			if data, err := os.ReadFile(filepath.Join(dir, filepath.FromSlash(name))); err != nil || string(data) != "mine" {
				t.Errorf("%s: %s is %q, %v", stranger, name, data, err)
			}
		}
	}
}

func TestALinkThatLeadsNowhereIsTold(t *testing.T) {
	dir := t.TempDir()
	to := filepath.Join(dir, "public")
	needed.Judge(t, os.Symlink(filepath.Join(dir, "gone"), to) == nil, "a file system with symbolic links")
	if _, err := Begin(to, nil); err == nil || !strings.Contains(err.Error(), "leads nowhere") {
		t.Errorf("got %v", err)
	}
	if _, err := os.Lstat(to); err != nil {
		t.Errorf("the link is gone: %v", err)
	}
}

// Who may write beside the site may write in each of its folders, whatever the
// account that built it usually keeps from others: the next build, of another
// account, takes them away. In a folder for everybody's temporary files nothing is
// shared.
func TestAnotherAccountBuildsInASharedFolder(t *testing.T) {
	for _, c := range []struct {
		beside, want fs.FileMode // what is asked of the writers' bits
	}{
		{0o775, 0o020}, {0o777, 0o022}, {0o755, 0}, {0o777 | fs.ModeSticky, 0},
	} {
		dir := t.TempDir()
		must(t, os.Chmod(dir, c.beside))
		s, err := Begin(filepath.Join(dir, "public"), nil)
		must(t, err)
		must(t, s.Put("tools/deep/a.html", []byte("a")))
		_, err = s.Commit()
		must(t, err)
		for _, name := range []string{"public", "public/tools", "public/tools/deep"} {
			info, err := os.Stat(filepath.Join(dir, filepath.FromSlash(name)))
			must(t, err)
			if got := info.Mode().Perm() & 0o022; got != c.want {
				t.Errorf("beside a folder of %v, %s lets write %o, want %o", c.beside, name, got, c.want)
			}
		}
	}
}

func must(t *testing.T, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}
