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
	"baybinder/generator/derive/training"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// What an edit of procedures or registers reaches is looked at again in an excerpt of the
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
	Rest       []byte // the hash of all files but the procedures and the registers
	Registers  []registered
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
	Issued    bool  // it has revisions
	Planned   bool  // a plan names it, or what performs it
	Recorded  bool  // it is named in what is recorded of people and jobs
}

// few is how many files and entries may have changed for what they reach to be
// looked at alone.
const few = 8

// tooMany says that so many procedures are so much of a manual that all of it may
// as well be looked at.
func (p *past) tooMany(n int) bool {
	return n > len(p.Procedures)*2/3 && n > few || n == len(p.Procedures)
}

// again is a manual of which only what was reached was looked at.
type again struct {
	*Result                    // of the excerpt
	reached []*model.Procedure // which were looked at
	words   bool               // nothing but their own pages shows what was edited
	entries changes            // of registers: what is another, or leads to such
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
	p = p.clone() // it becomes the present
	edited, entries, known := p.edited(m.tree)
	if !known || len(edited)+len(entries.ids) == 0 {
		return nil
	}
	above := graph.Reach(p.naming(m.tree, edited, entries), p.turned())
	below := graph.Reach(above, func(i int) []int { return p.Procedures[i].Leads })
	if p.tooMany(len(below)) || slices.ContainsFunc(above, func(i int) bool { return p.Procedures[i].Recorded }) {
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
	return m.look(p, &scope{entries, edited, above, below})
}

// clone is a copy that can be brought up to date.
func (p *past) clone() *past {
	now := *p
	now.Procedures, now.Registers = slices.Clone(p.Procedures), slices.Clone(p.Registers)
	return &now
}

// scope is what an edit reaches.
type scope struct {
	entries              changes
	edited, above, below []int // the procedures that were edited, with those that name the entries and all that leads to one, and with all that these lead to
}

// missed says that a panic is one over what is not in an excerpt.
func missed(v any) bool {
	if fault, is := v.(*parallel.Fault); is {
		v = fault.Value
	}
	_, is := v.(runtime.Error)
	return is
}

// edited are the procedures whose text is another one, and the entries of
// registers; not known where more is new.
func (p *past) edited(tree *source.Tree) (procedures []int, entries changes, known bool) {
	sums, registers, rest := tree.Parts()
	if !bytes.Equal(rest, p.Rest) || len(sums) != len(p.Procedures) || len(registers) != len(p.Registers) {
		return nil, changes{}, false
	}
	for i := range p.Procedures {
		switch sum, there := sums[p.Procedures[i].Path]; {
		case !there:
			return nil, changes{}, false
		case sum != p.Procedures[i].Sum:
			p.Procedures[i].Sum = sum
			procedures = append(procedures, i)
		}
	}
	entries, known = p.editedEntries(tree, registers)
	return procedures, entries, known && len(procedures)+len(entries.ids) <= few
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
func (m *memory) look(p *past, s *scope) *again {
	here := map[string]bool{}
	for _, i := range s.below {
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
	a := &again{past: p, entries: s.entries, today: m.o.Today}
	a.words = len(s.entries.ids) == 0 && !slices.ContainsFunc(s.above, func(i int) bool { return p.Procedures[i].Issued })
	for _, i := range s.edited {
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
	above := s.above
	if a.words {
		above = s.edited
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
	v := a.past.Verdict.restored(m.tree)
	if v == nil || len(a.entries.ids) > 0 && !a.checkEntries(m, v.Findings) {
		return errReachesFurther
	}
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
	if slices.ContainsFunc(v.Findings, func(f finding.Finding) bool { return !paths[f.At.Path()] && pointsInto(f, paths) }) {
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
	sums, registers, rest := m.tree.Parts()
	p := &past{Today: m.o.Today.String(), Preview: m.o.Preview, Rest: rest, Registers: registersOf(m.tree, registers), Read: readOf(r.bound), Verdict: keptOf(&r.Verdict, m.tree)}
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
	mark := func(q *model.Procedure, as func(h *had) *bool) {
		if q != nil {
			*as(&p.Procedures[at[q.File.Path]]) = true
		}
	}
	recorded(r.Manual, mark)
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

// recorded marks the procedures that plans name, with what these perform, and what
// is recorded of people, jobs and revisions.
func recorded(m *model.Manual, mark func(q *model.Procedure, as func(h *had) *bool)) {
	for _, r := range slices.Concat(m.Revisions, m.Renditions) {
		mark(r.Procedure.To, func(h *had) *bool { return &h.Issued })
	}
	for _, r := range m.Record {
		mark(r.Procedure.To, func(h *had) *bool { return &h.Recorded })
	}
	for _, j := range m.Jobs {
		mark(j.To, func(h *had) *bool { return &h.Recorded })
	}
	planned := func(h *had) *bool { return &h.Planned }
	for _, plan := range m.Plans {
		for _, r := range slices.Concat(plan.Read, plan.Watch) {
			mark(r.To, planned)
		}
		for _, u := range plan.Perform {
			mark(u.To, planned)
		}
		for _, r := range training.Order(plan) {
			mark(r.Procedure, planned)
		}
	}
}
