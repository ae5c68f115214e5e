// Package publish writes a site beside the last one and swaps it in whole.
//
// It is the only package that touches the site's folder. A build that fails or
// is killed leaves the last good site as it was: the new one is a folder of
// its own until the swap. Files that the program did not write are carried
// over; which files it wrote stands in the site itself, in the file .written.
//
// # Decided where the format is silent
//
// The new site is made beside the old one and exchanged with it in one move (two renames where the
// system has no exchange; a build killed between them is mended by the next). `.written` in the
// site names what the program wrote; other files are carried over, and said. A folder that is not
// empty and has no `.written` is refused: a slip in `--to` must cost nobody's files. Nothing is
// flushed to the disk before the swap: a power cut may cost the new site, and `build` makes it
// again.
package publish

import (
	"bytes"
	"errors"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"sync"

	"baybinder/generator/base/atomicfile"
	"baybinder/generator/base/finding"
	"baybinder/generator/base/turn"
)

// list is the file of a site that names what the program wrote.
const list = ".written"

// Site is a site in the making.
type Site struct {
	to      string // the site's folder
	staging string // the new site, beside it
	stands  bool   // there is a last site
	unlock  func()

	mu      sync.Mutex
	written map[string]bool
	folders map[string]bool
}

// Begin starts a new site for a folder. It waits for another build of the same
// folder to end, and tells waiting, which may be nil, for whom. The caller ends
// it with Commit or Abort.
func Begin(to string, waiting func(who string)) (*Site, error) {
	to, err := resolve(to)
	if err != nil {
		return nil, err
	}
	s := &Site{to: to, written: map[string]bool{}, folders: map[string]bool{}}
	if err := os.MkdirAll(filepath.Dir(to), 0o755); err != nil {
		return nil, finding.Refuse("the site's folder cannot be made: %s", err)
	}
	unlock, err := turn.Take(s.beside("lock"), waiting)
	if err != nil {
		return nil, err
	}
	s.unlock = unlock
	if err := s.prepare(); err != nil {
		unlock()
		return nil, err
	}
	return s, nil
}

// resolve makes the folder's path absolute, and follows a link to it.
func resolve(to string) (string, error) {
	abs, err := filepath.Abs(to)
	if err != nil {
		return "", finding.Refuse("the site's folder: %s", err)
	}
	real, err := filepath.EvalSymlinks(abs)
	if err == nil {
		return real, nil
	}
	if info, notThere := os.Lstat(abs); notThere == nil && info.Mode()&fs.ModeSymlink != 0 {
		return "", finding.Refuse("%s is a link that leads nowhere: remove it, or make the folder that it leads to", to)
	}
	return abs, nil
}

func (s *Site) prepare() error {
	if err := s.mayReplace(); err != nil {
		return err // before anything is touched
	}
	s.staging = s.beside("new")
	for _, folder := range []string{s.staging, s.beside("old")} {
		if err := mayRemove(folder); err != nil {
			return err
		}
	}
	if err := s.recover(); err != nil {
		return err
	}
	if err := remove(s.staging); err != nil { // of a build that was killed
		return finding.Refuse("what a broken-off build left cannot be removed: %s", err)
	}
	_, err := os.Lstat(s.to)
	s.stands = err == nil
	if err := s.folder(s.staging); err != nil {
		return finding.Refuse("the new site cannot be made: %s", err)
	}
	return os.WriteFile(filepath.Join(s.staging, list), nil, 0o644) // so that the next build knows whose it is
}

// folder makes a folder of the new site, and those above it. Who may write beside
// the site may write in it: another account that builds there takes it away.
func (s *Site) folder(dir string) error {
	err := os.Mkdir(dir, 0o755)
	if errors.Is(err, fs.ErrNotExist) {
		if err := s.folder(filepath.Dir(dir)); err != nil {
			return err
		}
		err = os.Mkdir(dir, 0o755)
	}
	if errors.Is(err, fs.ErrExist) {
		return nil
	}
	if err != nil {
		return err
	}
	return share(dir, filepath.Dir(s.to))
}

// share lets those write in a folder who may write in another, unless there each
// may take away only what is theirs (as in a folder for temporary files).
func share(dir, as string) error {
	other, err := os.Stat(as)
	if err != nil {
		return err
	}
	writers := other.Mode().Perm() & 0o022
	if writers == 0 || other.Mode()&fs.ModeSticky != 0 {
		return nil
	}
	own, err := os.Stat(dir)
	if err != nil {
		return err
	}
	return os.Chmod(dir, own.Mode()|writers)
}

// mayRemove refuses a folder beside the site that is to be removed and that no
// build of ours left: it has another's files and not our list.
func mayRemove(folder string) error {
	info, err := os.Lstat(folder)
	if errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	if err == nil && info.IsDir() {
		entries, err := os.ReadDir(folder)
		if err == nil && len(entries) == 0 {
			return nil
		}
		if _, err := os.Lstat(filepath.Join(folder, list)); err == nil {
			return nil
		}
	}
	return finding.Refuse("%s was not written by baybinder and is in the way of a build: move it elsewhere", folder)
}

// beside is a folder next to the site's, for a purpose.
func (s *Site) beside(purpose string) string {
	return filepath.Join(filepath.Dir(s.to), "."+filepath.Base(s.to)+"."+purpose)
}

// recover puts the old site back where a swap without an exchange was killed
// between its two renames.
func (s *Site) recover() error {
	old := s.beside("old")
	if _, err := os.Stat(s.to); !errors.Is(err, fs.ErrNotExist) {
		return remove(old)
	}
	if _, err := os.Stat(old); err == nil {
		return atomicfile.Move(old, s.to)
	}
	return nil
}

// remove takes a folder of ours away, its list last: were it killed on the way,
// the next build would still know whose the rest is.
func remove(folder string) error {
	entries, err := os.ReadDir(folder)
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return err
	}
	for _, e := range entries {
		if e.Name() == list {
			continue
		}
		if err := os.RemoveAll(filepath.Join(folder, e.Name())); err != nil {
			return err
		}
	}
	return os.RemoveAll(folder)
}

// mayReplace refuses a folder that is not a site of ours and not empty: a slip
// in --to must not cost anybody's files.
func (s *Site) mayReplace() error {
	entries, err := os.ReadDir(s.to)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil
	case err != nil:
		return finding.Refuse("the site's folder cannot be read: %s", err)
	}
	for _, e := range entries {
		if e.Name() == list {
			return nil
		}
	}
	for _, e := range entries {
		if !strings.HasPrefix(e.Name(), ".") {
			return finding.Refuse("%s holds files that baybinder did not write, such as %s: name an empty folder, or a new one", s.to, e.Name())
		}
	}
	return nil
}

// Put writes a file of the new site. It may be called from many goroutines.
// What is as it was in the last site is the same file in both, with its old
// date: a browser need not fetch it again.
func (s *Site) Put(name string, data []byte) error {
	full := filepath.Join(s.staging, filepath.FromSlash(name))
	if err := s.mark(name, filepath.Dir(full)); err != nil {
		return err
	}
	if last := filepath.Join(s.to, filepath.FromSlash(name)); s.stands && holds(last, data) && os.Link(last, full) == nil {
		return nil
	}
	if err := os.WriteFile(full, data, 0o644); err != nil {
		return finding.Refuse("the page %s cannot be written: %s", name, err)
	}
	return nil
}

// Keep takes a file of the last site over as it stands. It may be called from
// many goroutines.
func (s *Site) Keep(name string) error {
	full, last := filepath.Join(s.staging, filepath.FromSlash(name)), filepath.Join(s.to, filepath.FromSlash(name))
	if err := s.mark(name, filepath.Dir(full)); err != nil {
		return err
	}
	if os.Link(last, full) == nil {
		return nil
	}
	data, err := os.ReadFile(last) // a file system without links
	if err != nil {
		return err
	}
	return os.WriteFile(full, data, 0o644)
}

// holds says whether a plain file holds these bytes and no others.
func holds(name string, data []byte) bool {
	info, err := os.Lstat(name)
	if err != nil || !info.Mode().IsRegular() || info.Size() != int64(len(data)) {
		return false
	}
	old, err := os.ReadFile(name)
	return err == nil && bytes.Equal(old, data)
}

// Replace puts one file of a site that stands into its place, in one move.
func Replace(to, name string, data []byte) error {
	to, err := resolve(to)
	if err != nil {
		return err
	}
	full := filepath.Join(to, filepath.FromSlash(name))
	if holds(full, data) {
		return nil
	}
	s := Site{to: to}
	fresh := s.beside("page") // not in the site: a killed run leaves no litter there
	err = os.WriteFile(fresh, data, 0o644)
	if err == nil {
		err = atomicfile.Move(fresh, full)
	}
	if err != nil {
		_ = os.Remove(fresh)
		return finding.Refuse("the page %s cannot be written: %s", name, err)
	}
	return nil
}

// mark notes a file and makes its folder.
func (s *Site) mark(name, folder string) error {
	s.mu.Lock()
	defer s.mu.Unlock()
	if s.written[name] {
		return finding.Refuse("two pages would be %s", name)
	}
	s.written[name] = true
	if s.folders[folder] {
		return nil
	}
	s.folders[folder] = true
	return s.folder(folder)
}

// Abort throws the new site away.
func (s *Site) Abort() {
	_ = remove(s.staging) // what is left is removed by the next build
	s.unlock()
}

// Commit swaps the new site in. It returns the files that the program did not
// write and carried over, by path; hidden ones are carried over and not named.
func (s *Site) Commit() (kept []string, err error) {
	defer s.unlock()
	if err := s.writeList(); err != nil {
		return nil, err
	}
	kept, err = s.carryOver()
	if err != nil {
		return nil, err
	}
	if err := s.swap(); err != nil {
		return nil, finding.Refuse("the new site cannot be put in place, the last one stays: %s", err)
	}
	return kept, nil
}

func (s *Site) writeList() error {
	names := make([]string, 0, len(s.written)+1)
	for name := range s.written {
		names = append(names, name)
	}
	names = append(names, list)
	slices.Sort(names)
	return os.WriteFile(filepath.Join(s.staging, list), []byte(strings.Join(names, "\n")+"\n"), 0o644)
}

// ours reads what the program wrote into a site.
func ours(site string) map[string]bool {
	data, err := os.ReadFile(filepath.Join(site, list))
	if err != nil {
		return nil
	}
	ours := map[string]bool{}
	for name := range strings.SplitSeq(string(data), "\n") {
		ours[name] = true
	}
	return ours
}

// carryOver brings the files that the program did not write into the new site.
// They are linked, not moved: until the swap they are in both.
func (s *Site) carryOver() ([]string, error) {
	ours := ours(s.to)
	var kept []string
	err := filepath.WalkDir(s.to, func(full string, d fs.DirEntry, err error) error {
		if errors.Is(err, fs.ErrNotExist) {
			return nil
		}
		if err != nil {
			return err
		}
		rel, err := filepath.Rel(s.to, full)
		name := filepath.ToSlash(rel)
		if err != nil || d.IsDir() || ours[name] {
			return err
		}
		as := s.freeName(name)
		if named(name) {
			kept = append(kept, as)
		}
		return s.carry(full, as, d)
	})
	return kept, err
}

// named says that a file is told of where it is kept; nobody asks after a hidden
// one, such as .gitkeep.
func named(name string) bool { return !strings.HasPrefix(path.Base(name), ".") }

// freeName is the name under which a file is kept: its own, unless the new
// site has a page of that name.
func (s *Site) freeName(name string) string {
	for s.written[name] {
		name += ".kept"
	}
	return name
}

func (s *Site) carry(full, name string, d fs.DirEntry) error {
	to := filepath.Join(s.staging, filepath.FromSlash(name))
	if err := s.folder(filepath.Dir(to)); err != nil {
		return err
	}
	if d.Type()&fs.ModeSymlink != 0 {
		target, err := os.Readlink(full)
		if err != nil {
			return err
		}
		return os.Symlink(target, to)
	}
	if os.Link(full, to) == nil {
		return nil
	}
	data, err := os.ReadFile(full) // a file system without links
	if err != nil {
		return err
	}
	return os.WriteFile(to, data, 0o644)
}

// swap puts the new site in the place of the last one, in one move where the
// system can do that.
func (s *Site) swap() error {
	if _, err := os.Stat(s.to); errors.Is(err, fs.ErrNotExist) {
		return atomicfile.Move(s.staging, s.to)
	}
	if exchange(s.staging, s.to) == nil {
		_ = remove(s.staging) // the last site; the next build removes what is left
		return nil
	}
	old := s.beside("old")
	if err := atomicfile.Move(s.to, old); err != nil {
		return err
	}
	if err := atomicfile.Move(s.staging, s.to); err != nil {
		return errors.Join(err, atomicfile.Move(old, s.to))
	}
	_ = remove(old)
	return nil
}
