package generator

import (
	"slices"
	"strings"

	"baybinder/generator/base/parallel"
	"baybinder/generator/model"
	"baybinder/generator/show/front"
	"baybinder/generator/show/jobs"
	"baybinder/generator/show/page"
	"baybinder/generator/show/procedure"
	"baybinder/generator/show/publish"
	"baybinder/generator/show/register"
)

// rebuilt builds a site again after an edit: the pages of what it reaches, those
// that tell of these in lists, the writer's list and the search are made, and all
// else stays as it stands. Nil where that is not enough.
func (m *memory) rebuilt(last *keptSite) (*Result, error) {
	if last == nil || m.o.Readings != "" {
		return nil, nil
	}
	shown := m.shown(last)
	if shown == nil {
		return nil, nil
	}
	a := m.reached(shown.Past)
	if a == nil {
		return nil, nil
	}
	if a.verdict.Stopped() {
		m.told(a.verdict)
		return &Result{Tree: m.tree, Verdict: *a.verdict}, nil
	}
	sheets := a.sheets(m, shown)
	if sheets == nil {
		return nil, nil
	}
	if err := apart(m.o.Manual, m.o.To); err != nil {
		return nil, err
	}
	site, err := publish.Begin(m.o.To, m.o.Waiting)
	if err != nil {
		return &Result{}, err
	}
	r := &Result{Tree: m.tree, Verdict: *a.verdict}
	stands := publish.Stands(m.o.To, last.Site)
	if stands == nil {
		site.Abort()
		return nil, nil
	}
	if err := sheets.put(site, stands.Names, r); err != nil {
		site.Abort()
		return r, err
	}
	if r.Kept, err = site.Commit(); err != nil {
		return r, err
	}
	m.reachedOnly(a)
	shown.Past = a.past
	m.published(r, *shown)
	return r, nil
}

// sheets are the files of a site that are made anew, by path, and whether a page
// of the last one is still to be.
type sheets struct {
	fresh map[string][]byte
	stays func(name string) bool
}

// put writes the sheets, and keeps the other files of the site.
func (s *sheets) put(site *publish.Site, last []string, r *Result) error {
	for name, text := range s.fresh {
		if err := site.Put(name, text); err != nil {
			return err
		}
		if strings.HasSuffix(name, ".html") {
			r.Pages++
		}
	}
	for _, name := range last {
		if s.fresh[name] != nil || !s.stays(name) {
			continue
		}
		if err := site.Keep(name); err != nil {
			return err
		}
		if strings.HasSuffix(name, ".html") {
			r.Pages++
			r.Stood++
		}
	}
	return nil
}

// sheets are what is made anew; nil where more than that is to be.
func (a *again) sheets(m *memory, last *keptPages) (out *sheets) {
	if len(a.Manual.Jobs) > 0 {
		return nil
	}
	defer func() {
		if v := recover(); v != nil {
			if !missed(v) {
				panic(v)
			}
			out = nil
		}
	}()
	s := a.pages(last)
	for _, p := range a.reached {
		if s.Publishes(p) && (p.Status == "retired" || !last.Survey.Count(s.front, p) || !last.Book.Take(s.front.Found(p))) {
			return nil
		}
	}
	if slices.ContainsFunc(a.reached, a.planned) || len(a.entries.ids) > 0 && !s.front.TakeEntries(last.Book) {
		return nil
	}
	fresh := s.reachedBy(a.reached)
	others := func(name string) bool { return !front.IsSnags(name) }
	if !a.words {
		rows := m.rows(last.Rows)
		changed := a.change(s, rows)
		if rows == nil || changed.Far || last.Coded != s.Coded {
			return nil
		}
		there := map[string]bool{}
		for _, l := range s.others(changed) {
			if there[l.name] = true; l.write != nil {
				fresh = append(fresh, l)
			}
		}
		others = func(name string) bool { return there[name] }
		last.Rows = m.keepRows(rows)
	}
	return s.sheets(fresh, others, last)
}

// planned says that a plan has a procedure: its page tells how long that is to
// read.
func (a *again) planned(p *model.Procedure) bool {
	return slices.ContainsFunc(a.past.Procedures, func(h had) bool { return h.Planned && h.Path == p.File.Path })
}

// change puts the rows of what is reached among those of the site, and says what
// of them is another.
func (a *again) change(s *pages, rows []page.Row) *page.Change {
	changed := &page.Change{}
	for _, id := range a.entries.ids {
		changed.Entry(id)
	}
	at, here := map[string]*page.Row{}, map[string]*page.Row{}
	for i := range rows {
		at[rows[i].Address] = &rows[i]
	}
	for i := range s.Rows {
		here[s.Rows[i].Address] = &s.Rows[i]
	}
	for _, p := range a.reached {
		if !s.Publishes(p) {
			continue
		}
		was, now := at[page.PageOf(p)], here[page.PageOf(p)]
		if was == nil {
			return &page.Change{Far: true}
		}
		changed.Note(was, now)
		*was = *now
	}
	s.Take(rows)
	return changed
}

// sheets makes the pages. others says of a page that is of no procedure whether it
// is one of this site.
func (s *pages) sheets(fresh []leaf, others func(name string) bool, last *keptPages) *sheets {
	texts := make([][]byte, len(fresh))
	parallel.Each(len(fresh), func(i int) { texts[i] = whole(s.Site, fresh[i].write) })
	out := &sheets{map[string][]byte{}, func(name string) bool { return stays(name, others) }}
	for i, l := range fresh {
		out.fresh[l.name] = texts[i]
	}
	for name, data := range last.Book.Files() {
		out.fresh["search/"+name] = data
	}
	return out
}

// stays says that a file of the last site is one of this, where it is not made
// anew.
func stays(name string, others func(name string) bool) bool {
	folder, _, deep := strings.Cut(name, "/")
	if page := strings.HasSuffix(name, ".html"); page && !(deep && folder == "procedures") {
		return others(name)
	}
	return folder != "search"
}

// reachedBy are the pages that show the words of procedures.
func (s *pages) reachedBy(procedures []*model.Procedure) []leaf {
	all := s.snags(nil)
	for _, p := range procedures {
		if s.Publishes(p) {
			all = each(all, []*model.Procedure{p}, s.writeProcedure)
		}
	}
	return all
}

// pages makes the pages of what is in the excerpt. Who goes through all
// procedures stops at a nil.
func (a *again) pages(last *keptPages) *pages {
	m := *a.Manual
	site := page.NewSite(&m, a.Walks, a.verdict.Findings, a.today, a.past.Preview)
	m.Procedures, m.Translated = append(m.Procedures, nil), append(m.Translated, nil)
	site.Shown, site.Coded = append(site.Shown, nil), last.Coded
	done := jobs.Of(site)
	return &pages{Pages: done, front: front.Surveyed(done, last.Survey), procedure: procedure.Of(done), register: register.Of(done)}
}
