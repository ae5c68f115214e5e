// Package generator is the compiler: it reads a manual's folder, binds and checks it, works out what people otherwise keep in their heads, and publishes a site.
package generator

import (
	"context"
	"slices"
	"time"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/kept"
	"baybinder/generator/check"
	"baybinder/generator/model"
	"baybinder/generator/offers"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
	"baybinder/generator/show/search"
)

// Options say what to build from, and where to.
type Options struct {
	Manual   string     // the manual's folder
	To       string     // the site's folder
	Today    model.Date // the only clock there is
	Preview  bool       // drafts are published too
	Readings string     // the folder of the pages that name people; "" for none

	Waiting  func(who string)   // told for whom a build waits that wants the same folder; may be nil
	Progress func(done, of int) // told after each page that is written; may be nil

	Kept *kept.Store // what earlier runs worked out; nil for nothing

	unsaved map[string]string // what an editor holds over the files, by path inside the manual
}

// Result is what a run found and wrote.
type Result struct {
	Tree          *source.Tree
	Manual        *model.Manual // nil where nothing had changed since an earlier build, as Walks
	Walks         *walk.Result  // what every step does, and where things stand
	Verdict                     // what is told of it
	Unchanged     bool          // the site stands as an earlier build of the same wrote it
	Pages         int           // pages published
	Stood         int           // of these, pages that stood as they were
	Kept          []string      // files in the site's folder that the program did not write
	ReadingsPages int           // pages of the readings
	KeptReadings  []string      // files in the readings' folder that the program did not write

	bound *bind.Bound
	book  *search.Book                           // what the search was made from
	read  []finding.Finding                      // found in the files as they were read, before any is softened
	whole []finding.Finding                      // found in the manual as a whole, likewise
	own   map[*model.Procedure][]finding.Finding // found in each procedure and translation, likewise
}

// Errors is the number of errors that were found.
func (v *Verdict) Errors() int { return finding.Errors(v.Findings) }

// Stopped says that an error keeps the site from being published. One in what is
// recorded of people and jobs does not.
func (v *Verdict) Stopped() bool { return slices.ContainsFunc(v.Findings, finding.Finding.Stops) }

// Check reads, binds and checks a manual. The error says that there is none to
// read; what is wrong inside it is in the findings.
func Check(o Options) (*Result, error) {
	tree, err := o.read()
	if err != nil {
		return nil, err
	}
	return checkTree(tree, o), nil
}

// Judge tells what Check finds. Where the manual, the day and the program are
// those of an earlier run, it tells what was found then.
func Judge(o Options) (*Verdict, error) {
	tree, err := o.read()
	if err != nil {
		return nil, err
	}
	o.Today = o.day(tree)
	m := memoryOf(tree, o)
	if v := m.verdict(); v != nil {
		return v, nil
	}
	if a := m.reached(m.past()); a != nil {
		m.reachedOnly(a)
		return a.verdict, nil
	}
	r := checkTree(tree, o)
	m.told(&r.Verdict)
	m.learn(r)
	return &r.Verdict, nil
}

// read reads the manual's files.
func (o *Options) read() (*source.Tree, error) {
	tree, err := source.ReadOver(o.Manual, o.unsaved)
	if err == nil {
		makeRoom(tree)
	}
	return tree, err
}

// day is the day that dated rules and pages use: always the same one where
// nothing is dated, so that another day is no reason to do anything again.
func (o *Options) day(tree *source.Tree) model.Date {
	if o.Readings != "" || tree.Dated() { // the readings say of which day they are
		return o.Today
	}
	return model.Date{Year: 2000, Month: time.January, Day: 1}
}

func checkTree(tree *source.Tree, o Options) *Result {
	bound := bind.All(tree)
	r := &Result{Tree: tree, Manual: bound.Manual, Walks: walk.All(bound.Manual), bound: bound}
	r.read = bound.Findings
	r.whole = slices.Concat(check.Whole(r.context(o)), r.Walks.Machines, r.Walks.Common)
	r.own = map[*model.Procedure][]finding.Finding{}
	r.look(o, r.everything())
	r.settle()
	r.count()
	return r
}

// everything is every procedure and translation.
func (r *Result) everything() []*model.Procedure {
	return slices.Concat(r.Manual.Procedures, r.Manual.Translated)
}

// look notes what is found in each of some procedures that were walked.
func (r *Result) look(o Options, procedures []*model.Procedure) {
	for i, found := range check.Procedures(r.context(o), procedures) {
		p := procedures[i]
		r.own[p] = slices.Concat(r.Walks.Of(p).Findings, found)
	}
}

func (r *Result) context(o Options) *check.Context {
	return &check.Context{Manual: r.Manual, Today: o.Today, Preview: o.Preview}
}

// Bench is the manual as a writer's editor asks about it.
func (r *Result) Bench(o Options) *offers.Bench {
	return &offers.Bench{Bound: r.bound, Walks: r.Walks, Context: r.context(o)}
}

// settle puts together what was found, and tells it in the shop's language.
func (r *Result) settle() {
	r.Language = r.Manual.Shop.Language
	list := slices.Concat(r.whole, r.read)
	for _, p := range r.everything() {
		list = append(list, r.own[p]...)
	}
	r.Findings = r.Tongue().TellAll(finding.Sort(check.Soften(r.Manual, list)))
}

// Build checks a manual and publishes its site. Where an error stops it
// nothing is published and the last good site stays. Where an earlier build of
// the same wrote the site, and it stands as it was written, nothing is done
// again. The error says that the run itself failed.
func Build(o Options) (*Result, error) {
	tree, err := o.read()
	if err != nil {
		return nil, err
	}
	o.Today = o.day(tree)
	m := memoryOf(tree, o)
	last := m.site()
	if r := m.built(last); r != nil {
		return r, nil
	}
	if r, err := m.rebuilt(last); r != nil {
		return r, err
	}
	r := checkTree(tree, o)
	m.told(&r.Verdict)
	past := m.learn(r)
	if r.Stopped() {
		return r, nil
	}
	r.Walks.Forget()
	pages := pagesOf(r, o)
	pages.standing = func() map[string]bool { return m.standing(last, past, pages) }
	staged, err := stage(context.Background(), r, o, pages)
	if err != nil {
		return r, err
	}
	if err := staged.commit(r); err != nil {
		return r, err
	}
	if past != nil {
		m.published(r, keptPages{Past: past, Rows: m.keepRows(pages.Rows), Coded: pages.Coded, Survey: pages.front.Survey, Book: r.book})
	} else {
		m.published(r, keptPages{})
	}
	return r, nil
}
