package generator

import (
	"bytes"
	"context"
	"errors"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/graph"
	"baybinder/generator/model"
	"baybinder/generator/read/source"
	"baybinder/generator/show/page"
	"baybinder/generator/show/publish"
	"baybinder/theme"
)

// Session builds one manual again and again. A writer waits for the page that
// was saved, so that comes first and alone (Saved); then everything is built
// as Build does it (Build), and what the save reaches elsewhere follows. The
// second is a full build: whatever the first knows or not, the site and the
// findings end as those of a build from nothing.
type Session struct {
	o Options

	mu      sync.Mutex
	last    *Result         // the last that was published whole, with what was saved since
	pages   *pages          // made from it
	changed map[string]bool // files that it does not hold as they are now
}

// NewSession begins with nothing built.
func NewSession(o Options) *Session { return &Session{o: o, changed: map[string]bool{}} }

// Build builds everything. Once ctx is done nothing is put in place any more,
// and ctx's error is returned.
func (s *Session) Build(ctx context.Context) (*Result, error) {
	s.mu.Lock()
	before := s.changed
	s.changed = map[string]bool{}
	s.mu.Unlock()
	r, done, err := s.build(ctx)
	if !done {
		s.mu.Lock()
		for name := range before {
			s.changed[name] = true // the last good manual still lacks them
		}
		s.mu.Unlock()
	}
	return r, err
}

// check checks the manual. It comes back once ctx is done, whatever is being
// read: a file on a network that does not answer holds nobody.
func (s *Session) check(ctx context.Context) (r *Result, err error) {
	checked := make(chan struct{})
	var got *Result
	var failed error
	go func() {
		defer close(checked)
		got, failed = Check(s.o)
	}()
	select {
	case <-checked:
		return got, errors.Join(failed, ctx.Err())
	case <-ctx.Done():
		return nil, ctx.Err()
	}
}

// build says also whether the manual is now the last good one.
func (s *Session) build(ctx context.Context) (*Result, bool, error) {
	r, err := s.check(ctx)
	if err != nil || r.Stopped() {
		return r, false, err
	}
	pages := pagesOf(r, s.o)
	site, err := stage(ctx, r, s.o, pages)
	if err != nil {
		return r, false, err
	}
	s.mu.Lock() // a page that was saved meanwhile is not put back
	defer s.mu.Unlock()
	if err := ctx.Err(); err != nil {
		site.abort()
		return r, false, err
	}
	if err := site.commit(r); err != nil {
		return r, false, err
	}
	s.last, s.pages = r, pages
	return r, true, nil
}

// Saved is a procedure whose page was put in place by itself.
type Saved struct {
	Page string // its path in the site: "procedures/swap-pump.html"
	Step string // the anchor of the first step that reads otherwise than before; "" for none
}

// Saved takes in files that changed. Where all of them are procedures that the
// last good manual has, it looks at these again, and puts their pages in place
// unless there is an error; the findings are those of the last build, with what
// is found in these procedures now. Else it leaves all to Build and returns nil.
// names are paths inside the manual.
func (s *Session) Saved(names []string) (*Result, []Saved, error) {
	s.mu.Lock()
	defer s.mu.Unlock()
	for _, name := range names {
		s.changed[name] = true
	}
	edits := s.edits()
	r := s.last.again(s.o, edits)
	if r == nil {
		return nil, nil, nil
	}
	if r.Stopped() {
		s.last.undo(edits)
		return r, nil, nil
	}
	s.last = r
	var saved []Saved
	for _, e := range edits {
		s.pages.procedure.Changed(e.now)
		if err := s.put(e.now); err != nil {
			return r, saved, err
		}
		if slices.Contains(names, e.now.File.Path) {
			saved = append(saved, Saved{page.PageOf(e.now), e.place()})
		}
	}
	return r, saved, nil
}

// edit is a procedure that was saved, as it is now and as it was.
type edit struct {
	now *model.Procedure
	was model.Procedure
}

// edits are the procedures that changed since the last good manual; none where
// something else changed too.
func (s *Session) edits() []edit {
	if s.last == nil || len(s.changed) > few {
		return nil
	}
	var edits []edit
	for _, name := range slices.Sorted(maps.Keys(s.changed)) {
		if p := s.last.procedure(name); p != nil {
			edits = append(edits, edit{p, *p})
		} else if s.matters(name) {
			return nil
		}
	}
	return edits
}

// matters says whether a build may end otherwise because this file changed;
// an editor's copy of a file matters to nobody.
func (s *Session) matters(name string) bool {
	_, err := os.Stat(filepath.Join(s.o.Manual, filepath.FromSlash(name)))
	_, shown := s.last.Manual.Pictures[name]
	return s.last.Tree.Has(name) != (err == nil) || source.IsText(name) || shown
}

// again binds, walks and checks procedures anew, and walks and checks what calls
// them; nil where there is nothing to do, or a file is not to be read.
func (r *Result) again(o Options, edits []edit) *Result {
	if len(edits) == 0 {
		return nil
	}
	last := r
	copied := *r
	r = &copied
	r.own = maps.Clone(r.own)
	r.read = slices.DeleteFunc(slices.Clone(r.read), func(f finding.Finding) bool {
		return slices.ContainsFunc(edits, func(e edit) bool { return f.At.Path() == e.was.File.Path })
	})
	for i, e := range edits {
		f := r.Tree.Reread(e.was.File.Path)
		if f == nil {
			last.undo(edits[:i])
			return nil
		}
		r.read = append(r.read, r.bound.Again(e.now, f)...)
	}
	touched := r.touched(edits)
	r.Walks.Again(touched...)
	r.look(o, touched)
	r.settle()
	return r
}

// many is how many procedures are looked at before a page is shown.
const many = 100

// touched are what was saved and all that performs it, by whatever way; where
// that is much of the manual, the callers are left to Build.
func (r *Result) touched(edits []edit) []*model.Procedure {
	var saved []*model.Procedure
	performs := map[model.Named][]*model.Procedure{}
	for _, e := range edits {
		saved = append(saved, e.now)
	}
	for _, p := range r.Manual.Procedures {
		for _, l := range p.Calls {
			performs[l.To] = append(performs[l.To], p)
		}
	}
	all := graph.Reach(saved, func(p *model.Procedure) []*model.Procedure { return performs[p] })
	if len(all) > many {
		return saved
	}
	return all
}

// procedure is the one whose file has a path; nil where there is none.
func (r *Result) procedure(name string) *model.Procedure {
	for _, p := range r.Manual.Procedures {
		if p.File.Path == name {
			return p
		}
	}
	return nil
}

// undo goes back to what the manual held.
func (r *Result) undo(edits []edit) {
	for _, e := range edits {
		*e.now = e.was
	}
	r.Walks.Again(r.touched(edits)...)
}

// put puts a procedure's page into the site that stands.
func (s *Session) put(p *model.Procedure) error {
	text := whole(s.pages.Site, func(w *bytes.Buffer) { theme.WriteProcedure(w, s.pages.procedure.Procedure(p)) })
	return publish.Replace(s.o.To, page.PageOf(p), text)
}

// place is the anchor of the first step that reads otherwise than before.
func (e edit) place() string {
	for i, step := range e.now.Steps {
		if i >= len(e.was.Steps) || words(step) != words(e.was.Steps[i]) {
			return page.Anchor(step)
		}
	}
	return ""
}

// words is a step as it was written.
func words(s *model.Step) string {
	var out strings.Builder
	for _, b := range s.Blocks {
		out.WriteString(b.At.Text())
	}
	return out.String()
}
