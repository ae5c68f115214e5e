package write

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"

	"baybinder/generator/base/atomicfile"
	"baybinder/generator/base/finding"
	"baybinder/generator/base/patch"
	"baybinder/generator/base/turn"
	"baybinder/generator/model"
	"baybinder/generator/offers"
	"baybinder/generator/read/source"
	"baybinder/generator/show/page"
)

// Manual is a manual while it is written: what the desk asks of it.
type Manual interface {
	Hold(name, text string) // stands over the file
	Drop(name string)
	Quick(name string) bool // looks at one held procedure again
	Whole() (bool, error)   // looks at everything anew; false where something changed meanwhile
	Bench() *offers.Bench
	Findings() []finding.Finding
	Tree() *source.Tree
	Page(name string) (at string, text []byte)
}

// Desk is where a manual is written: one writer at a time, one file after
// another.
type Desk struct {
	root   string // the manual's folder, as it is without links
	manual Manual
	token  string
	today  model.Date

	mu     sync.Mutex
	dirty  bool              // something changed that is not looked at
	seen   map[string]string // by path, the state of a file's bytes when it was looked at
	done   []save            // what can be undone, the last at the end
	undone []save            // what can be done again, the next at the end
}

// save is what was saved in one go.
type save struct {
	Do   string `json:"do"`   // the act
	Path string `json:"file"` // the file
	was  []byte // nil where there was none
	now  []byte // nil where it was taken out

	several []atomicfile.Change // of a rename: all its files
}

// mostSaves is how many steps back are kept.
const mostSaves = 500

// bench is the manual on the desk, with what is found in it.
type bench struct {
	*offers.Bench
	found []finding.Finding
}

func (d *Desk) bench() bench { return bench{d.manual.Bench(), d.manual.Findings()} }

// errChanged is the error of a file that is not as the writer saw it.
var errChanged = errors.New("the file changed underneath")

// inside is the full name of a file of the manual. It is an error for one that
// stands, or leads, outside.
func (d *Desk) inside(name string) (string, error) {
	if !filepath.IsLocal(filepath.FromSlash(name)) || strings.Contains(name, "\\") {
		return "", fmt.Errorf("%s is outside the manual", name)
	}
	full := filepath.Join(d.root, filepath.FromSlash(name))
	for at := full; ; at = filepath.Dir(at) {
		real, err := filepath.EvalSymlinks(at)
		switch {
		case errors.Is(err, os.ErrNotExist) && at != d.root:
			continue // what is to be made lies in the folder that is there
		case err != nil:
			return "", err
		case real != d.root && !strings.HasPrefix(real, d.root+string(filepath.Separator)):
			return "", fmt.Errorf("%s leads outside the manual", name)
		}
		return full, nil
	}
}

// bytes are those of a file; nil where there is none.
func (d *Desk) bytes(name string) ([]byte, error) {
	full, err := d.inside(name)
	if err != nil {
		return nil, err
	}
	data, err := os.ReadFile(full)
	switch {
	case errors.Is(err, os.ErrNotExist):
		return nil, nil
	case err == nil && data == nil:
		data = []byte{}
	}
	return data, err
}

// stateOf tells one state of a file from another; "" of one that is not there.
func stateOf(data []byte) string {
	if data == nil {
		return ""
	}
	sum := sha256.Sum256(data)
	return hex.EncodeToString(sum[:12])
}

// Changed notes that files changed on the disk; without names, that anything
// may have.
func (d *Desk) Changed(names []string) {
	d.mu.Lock()
	defer d.mu.Unlock()
	for _, name := range names {
		data, err := d.bytes(name)
		d.dirty = d.dirty || err != nil || d.seen[name] == "" || d.seen[name] != stateOf(data)
	}
	d.dirty = d.dirty || len(names) == 0
}

// look looks at everything where something changed, and returns a file's bytes.
func (d *Desk) look(name string) ([]byte, error) {
	for {
		data, err := d.bytes(name)
		if err != nil {
			return nil, err
		}
		if state := stateOf(data); d.dirty || d.manual.Bench() == nil || d.seen[name] != state {
			whole, err := d.manual.Whole()
			if err != nil {
				return nil, err
			}
			d.dirty, d.seen[name] = !whole, state
			continue
		}
		return data, nil
	}
}

// try looks at a draft in memory, settles the lists of its front matter, and
// takes it back again.
func (d *Desk) try(to *draft) *Trial {
	path := to.file.Path
	before, kept := counted(d.manual.Findings(), path), unjudged(d.bench().Procedure(path))
	quick := d.hold(path, to.text)
	for range 20 {
		p := d.bench().Procedure(path)
		if p == nil || p.Broken {
			break
		}
		text, more := settle(d.bench(), p, before, kept)
		if !more {
			break
		}
		to.at += len(text) - len(to.text)
		to.text = text
		quick = d.hold(path, text) && quick
	}
	t := d.trial(to, before)
	d.release(path, to.file.Text, quick)
	return t
}

// trial says what is found while a draft is held. before are the findings that
// stood.
func (d *Desk) trial(to *draft, before map[string]int) *Trial {
	b, path, t := d.bench(), to.file.Path, &Trial{}
	_, text := d.manual.Page(path)
	t.HTML = string(text)
	on, _ := b.Here(path, min(max(0, to.at), len(to.text)))
	if on.Step != nil {
		t.On, t.Anchor = on.Step.Number, page.Anchor(on.Step)
	}
	old := clone(before)
	for _, f := range b.found {
		if f.At.Path() != path {
			continue
		}
		here, _ := b.Here(path, f.At.Start)
		switch {
		case here.Step != nil && here.Step == on.Step:
			t.Found = append(t.Found, d.mendable(b, f, on.Step))
		case old[sameFinding(f)] > 0:
			old[sameFinding(f)]--
		default:
			t.Else = append(t.Else, found(f))
		}
	}
	return t
}

// mendable is a finding in a step that is being written, with the words that
// the step has once it is mended.
func (d *Desk) mendable(b bench, f finding.Finding, s *model.Step) Found {
	said := found(f)
	at, ok := wordsOf(s)
	for _, m := range b.Mends(f) {
		inside := ok && !slices.ContainsFunc(m.Edits, func(e offers.Edit) bool {
			return e.At.Path() != f.At.Path() || e.At.Start < at.start || e.At.End > at.end
		})
		if inside {
			text := offers.Apply(s.At.File, m.Edits)
			words := text[at.start : at.end+len(text)-len(s.At.File.Text)]
			said.Ways = append(said.Ways, Way{Title: capital(m.Title), Told: true, Text: outdented(words, at.width)})
		}
	}
	return said
}

// hold puts a text over a file and looks at it, and says whether the rest of
// the manual could stay as it was.
func (d *Desk) hold(path, text string) bool {
	d.manual.Hold(path, text)
	if d.manual.Quick(path) {
		return true
	}
	_, _ = d.manual.Whole() // nobody else changes what is held
	return false
}

// release takes a held text back.
func (d *Desk) release(path, text string, quick bool) {
	if quick {
		d.manual.Hold(path, text)
		quick = d.manual.Quick(path)
	}
	d.manual.Drop(path)
	d.dirty = d.dirty || !quick
}

// put saves a draft: of the file's bytes those change that the draft changes.
// The file must be in the state that the writer saw.
func (d *Desk) put(to *draft, do, state string) error {
	path := to.file.Path
	done, err := turn.In(d.root, nil)
	if err != nil {
		return err
	}
	defer done()
	was, err := d.bytes(path)
	if err != nil {
		return err
	}
	if stateOf(was) != state || to.fresh != (was == nil) {
		return errChanged
	}
	now := []byte(to.text)
	if !to.fresh {
		now = patch.Apply(was, piecesOf(to.file.Text, to.text))
	}
	if was != nil && bytes.Equal(was, now) {
		return nil
	}
	if err := d.write(path, now); err != nil {
		return err
	}
	d.remember(save{Do: do, Path: path, was: was, now: now})
	d.took(path, to.text, now)
	return nil
}

// write puts bytes in a file's place, whole or not at all; nil takes it out.
func (d *Desk) write(path string, now []byte) error {
	full, err := d.inside(path)
	if err != nil {
		return err
	}
	_, err = os.Stat(full)
	switch {
	case now == nil:
		return os.Remove(full)
	case err != nil:
		return atomicfile.Create(d.root, path, now)
	}
	return atomicfile.Write(d.root, path, now)
}

// took looks at a file as it was saved.
func (d *Desk) took(path, text string, now []byte) {
	d.seen[path] = stateOf(now)
	d.manual.Hold(path, text)
	quick := d.manual.Quick(path)
	d.manual.Drop(path)
	d.dirty = d.dirty || !quick
}

func (d *Desk) remember(s save) {
	d.done = append(d.done, s)
	d.done = d.done[max(0, len(d.done)-mostSaves):]
	d.undone = nil
}

// back goes one save back, or forth again. It is refused where the file is not
// as that save left it.
func (d *Desk) back(from, to *[]save, forth bool) (save, error) {
	if len(*from) == 0 {
		return save{}, cannotNow
	}
	s := (*from)[len(*from)-1]
	stands, put := s.now, s.was
	if forth {
		stands, put = s.was, s.now
	}
	done, err := turn.In(d.root, nil)
	if err != nil {
		return s, err
	}
	defer done()
	if s.several != nil {
		err = d.writeSeveral(s.turned(forth))
	} else {
		err = d.swap(s.Path, stands, put)
	}
	if err != nil {
		return s, err
	}
	*from = (*from)[:len(*from)-1]
	*to = append(*to, s)
	d.dirty = true
	return s, nil
}

// swap puts bytes in the place of others. It is refused where those are not there.
func (d *Desk) swap(path string, stands, put []byte) error {
	now, err := d.bytes(path)
	if err != nil {
		return err
	}
	if stateOf(now) != stateOf(stands) {
		return errChanged
	}
	return d.write(path, put)
}

// procedureOf is the procedure whose page has an address in the site.
func (d *Desk) procedureOf(at string) *model.Procedure {
	b := d.manual.Bench()
	if b == nil {
		return nil
	}
	i := slices.IndexFunc(b.Manual().Procedures, func(p *model.Procedure) bool { return page.PageOf(p) == at })
	if i < 0 {
		return nil
	}
	return b.Manual().Procedures[i]
}
