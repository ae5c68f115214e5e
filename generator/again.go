package generator

import (
	"bytes"
	"errors"
	"fmt"
	"maps"
	"path/filepath"
	"runtime"
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/graph"
	"baybinder/generator/base/parallel"
	"baybinder/generator/check"
	"baybinder/generator/derive/face"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// What an edit of procedures reaches is looked at again in an excerpt of the
// manual: all of its files but the procedures that have nothing to do with it.
// What is not there cannot be looked at: a link to it leads nowhere, which is a
// finding that was not there before, and whoever goes through all procedures
// meets a nil among them. Either way the whole manual is read again. So what is
// told of the reached ones is as from nothing; that nothing is told otherwise of
// the others rests on their faces (derive/face), and on the rows of people and
// jobs, in which none of them is named.

// past is how a manual stood, by which it is known what an edit reaches.
type past struct {
	Today      string
	Preview    bool
	Rest       []byte   // the hash of all files but the procedures
	Placed     []string // the tools that walks of the whole manual know of
	Read       []string // what was found in the files as they were read, but for rows about people and jobs
	Procedures []had    // every file of them, by path
	Verdict    keptVerdict
}

// had is a procedure's file as it was.
type had struct {
	Path, Sum string
	Face      face.Face
	Leads     []int // the files of the procedures that its text leads to
	Alone     bool  // its findings stand in its file, no others do, and it is in one language
	Recorded  bool  // it is named in a plan, or in what is recorded of people, jobs and revisions
}

// few is how many files may have changed for what they reach to be looked at
// alone, and most how many procedures that may be.
const (
	few  = 8
	most = 400
)

// again is a manual of which only what was reached was looked at.
type again struct {
	*Result                    // of the excerpt
	reached []*model.Procedure // which were looked at
	words   bool               // nothing but their own pages shows what was edited
	past    *past              // how the manual stands now
	verdict *Verdict
	today   model.Date
}

func (m *memory) pastKey() []byte {
	manual, _ := filepath.Abs(m.o.Manual)
	return fmt.Appendf(nil, "past %q %s %v", manual, m.o.Today, m.o.Preview)
}

// past is how the manual stood when it was last checked; nil where that is not
// known.
func (m *memory) past() *past {
	if m == nil {
		return nil
	}
	var p past
	if !decode(m.store.Get(m.pastKey()), &p) {
		return nil
	}
	return &p
}

// reached looks at what was edited since the manual was as it was, and at what
// that reaches; nil where that is not enough.
func (m *memory) reached(p *past) (a *again) {
	if m == nil || p == nil || len(m.tree.Problems) > 0 || p.Today != m.o.Today.String() || p.Preview != m.o.Preview {
		return nil
	}
	was := *p
	p = &was
	p.Procedures = slices.Clone(was.Procedures) // it becomes the present
	edited := p.edited(m.tree)
	if edited == nil {
		return nil
	}
	above := graph.Reach(edited, p.turned())
	below := graph.Reach(above, func(i int) []int { return p.Procedures[i].Leads })
	if len(below) > min(most, len(p.Procedures)-1) || slices.ContainsFunc(above, func(i int) bool { return p.Procedures[i].Recorded }) {
		return nil
	}
	defer func() {
		if v := recover(); v != nil {
			if !missed(v) {
				panic(v)
			}
			a = nil
		}
	}()
	return m.look(p, edited, above, below)
}

// missed says that a panic is one over what is not in an excerpt.
func missed(v any) bool {
	if fault, is := v.(*parallel.Fault); is {
		v = fault.Value
	}
	_, is := v.(runtime.Error)
	return is
}

// edited are the procedures whose text is another one; nil where there is none,
// or more is new.
func (p *past) edited(tree *source.Tree) []int {
	sums, rest := tree.Procedures()
	if !bytes.Equal(rest, p.Rest) || len(sums) != len(p.Procedures) {
		return nil
	}
	var out []int
	for i := range p.Procedures {
		switch sum, there := sums[p.Procedures[i].Path]; {
		case !there:
			return nil
		case sum != p.Procedures[i].Sum:
			p.Procedures[i].Sum = sum
			out = append(out, i)
		}
	}
	if len(out) > few {
		return nil
	}
	return out
}

// turned gives the files whose texts lead to one.
func (p *past) turned() func(i int) []int {
	leads := make([][]int, len(p.Procedures))
	for i := range p.Procedures {
		for _, to := range p.Procedures[i].Leads {
			leads[to] = append(leads[to], i)
		}
	}
	return func(i int) []int { return leads[i] }
}

// look looks at an excerpt.
func (m *memory) look(p *past, edited, above, below []int) *again {
	here := map[string]bool{}
	for _, i := range below {
		here[p.Procedures[i].Path] = true
	}
	bound := bind.All(m.tree.Only(here))
	if slices.ContainsFunc(readOf(bound), func(f string) bool { return !slices.Contains(p.Read, f) }) {
		return nil
	}
	byPath := map[string]*model.Procedure{}
	for _, q := range bound.Manual.Procedures {
		byPath[q.File.Path] = q
	}
	a := &again{past: p, words: true, today: m.o.Today}
	for _, i := range edited {
		was, now := &p.Procedures[i].Face, byPath[p.Procedures[i].Path]
		if now == nil {
			return nil
		}
		is := face.Of(now)
		if is.Wide != was.Wide {
			return nil
		}
		a.words = a.words && is.Near == was.Near
		*was = is
	}
	if a.words {
		above = edited
	}
	for _, i := range above {
		q := byPath[p.Procedures[i].Path]
		if q == nil || !p.Procedures[i].Alone {
			return nil
		}
		a.reached = append(a.reached, q)
	}
	a.Result = &Result{Tree: m.tree, Manual: bound.Manual, Walks: walk.Some(bound.Manual, toolsOf(bound.Manual, p.Placed)), bound: bound}
	if a.check(m) != nil {
		return nil
	}
	return a
}

var errReachesFurther = errors.New("an edit reaches further")

// check looks for what is wrong in what is reached.
func (a *again) check(m *memory) error {
	whole := *a.Manual
	whole.Procedures = append(slices.Clip(a.Manual.Procedures), nil) // who goes through all of them stops here
	whole.Translated = []*model.Procedure{nil}
	c := &check.Context{Manual: &whole, Today: m.o.Today, Preview: m.o.Preview}
	var list []finding.Finding
	paths := map[string]bool{}
	for i, found := range check.Procedures(c, a.reached) {
		p := a.reached[i]
		w := a.Walks.Of(p)
		found = slices.Concat(w.Findings, found)
		if w.Owes() || slices.ContainsFunc(found, func(f finding.Finding) bool { return f.At.Path() != p.File.Path }) {
			return errReachesFurther
		}
		paths[p.File.Path] = true
		list = append(list, found...)
	}
	v := a.past.Verdict.restored(m.tree)
	if v == nil || slices.ContainsFunc(v.Findings, func(f finding.Finding) bool { return !paths[f.At.Path()] && pointsInto(f, paths) }) {
		return errReachesFurther
	}
	kept := slices.DeleteFunc(v.Findings, func(f finding.Finding) bool { return paths[f.At.Path()] })
	fresh := v.Tongue().TellAll(finding.Sort(check.Soften(&model.Manual{Procedures: a.reached}, list)))
	v.Findings = slices.Concat(kept, fresh)
	slices.SortStableFunc(v.Findings, func(a, b finding.Finding) int { return strings.Compare(a.At.Path(), b.At.Path()) })
	a.verdict = v
	return nil
}

// pointsInto says that a finding names a place in one of some files.
func pointsInto(f finding.Finding, paths map[string]bool) bool {
	return slices.ContainsFunc(f.Related, func(p finding.Place) bool { return paths[p.At.Path()] }) ||
		slices.ContainsFunc(f.Fixes, func(x finding.Fix) bool { return paths[x.At.Path()] })
}

// readOf is what was found in the files as they were read, but for rows about
// people and jobs: which procedures these name is not known from an excerpt.
func readOf(bound *bind.Bound) []string {
	var out []string
	for _, f := range bound.Findings {
		if top, _, _ := strings.Cut(f.At.Path(), "/"); top != "readings" && top != "records" && top != "revisions" && top != "revisions.csv" {
			out = append(out, fmt.Sprintf("%s %s %d %s %s", f.Code, f.At.Path(), f.At.Start, f.Message, f.Mend))
		}
	}
	return out
}

func toolsOf(m *model.Manual, ids []string) []*model.Tool {
	var out []*model.Tool
	for _, t := range m.Tools {
		if slices.Contains(ids, t.ID) {
			out = append(out, t)
		}
	}
	return out
}

// learn keeps how a manual stands that was looked at whole; nil where there is
// nothing to be known again.
func (m *memory) learn(r *Result) *past {
	if m == nil || m.changed() || len(m.tree.Problems) > 0 || len(r.Walks.Common) > 0 {
		return nil
	}
	sums, rest := m.tree.Procedures()
	p := &past{Today: m.o.Today.String(), Preview: m.o.Preview, Rest: rest, Read: readOf(r.bound), Verdict: keptOf(&r.Verdict, m.tree)}
	for _, t := range walk.Placed(r.Manual) {
		p.Placed = append(p.Placed, t.ID)
	}
	at := map[string]int{}
	for i, path := range slices.Sorted(maps.Keys(sums)) {
		at[path] = i
		p.Procedures = append(p.Procedures, had{Path: path, Sum: sums[path]})
	}
	for _, q := range r.everything() {
		h := &p.Procedures[at[q.File.Path]]
		h.Face, h.Alone = face.Of(q), !r.Walks.Of(q).Owes()
		for _, to := range face.Leads(q) {
			h.Leads = append(h.Leads, at[to.File.Path])
		}
		if q.Original != nil { // each is read with the other
			original := at[q.Original.File.Path]
			h.Leads = append(h.Leads, original)
			p.Procedures[original].Leads = append(p.Procedures[original].Leads, at[q.File.Path])
		}
	}
	r.notAlone(func(path string) {
		if i, is := at[path]; is {
			p.Procedures[i].Alone = false
		}
	})
	for q := range recorded(r.Manual) {
		p.Procedures[at[q.File.Path]].Recorded = true
	}
	m.keepPast(p)
	return p
}

func (m *memory) keepPast(p *past) { _ = m.store.Put(m.pastKey(), encode(p)) }

// reachedOnly keeps how a manual stands of which only what was reached was
// looked at.
func (m *memory) reachedOnly(a *again) {
	if m.changed() {
		return
	}
	m.told(a.verdict)
	a.past.Verdict = keptOf(a.verdict, m.tree)
	m.keepPast(a.past)
}

// notAlone tells of the procedures' files that hold what was not found in them
// alone, or whose findings stand elsewhere, or that are in several languages.
func (r *Result) notAlone(tell func(path string)) {
	for _, f := range slices.Concat(r.whole, r.read) {
		tell(f.At.Path())
	}
	for p, found := range r.own {
		for _, f := range found {
			if f.At.Path() != p.File.Path {
				tell(p.File.Path)
				tell(f.At.Path())
			}
		}
	}
	for _, p := range r.Manual.Translated {
		tell(p.File.Path)
		if p.Original != nil {
			tell(p.Original.File.Path)
		}
	}
}

// recorded are the procedures that plans name, and what is recorded of people,
// jobs and revisions.
func recorded(m *model.Manual) map[*model.Procedure]bool {
	all := map[*model.Procedure]bool{}
	for _, r := range slices.Concat(m.Revisions, m.Renditions) {
		all[r.Procedure.To] = true
	}
	for _, r := range m.Record {
		all[r.Procedure.To] = true
	}
	for _, j := range m.Jobs {
		all[j.To] = true
	}
	for _, plan := range m.Plans {
		for _, r := range slices.Concat(plan.Read, plan.Watch) {
			all[r.To] = true
		}
		for _, u := range plan.Perform {
			all[u.To] = true
		}
	}
	delete(all, nil)
	return all
}
