package generator

import (
	"bytes"
	"strings"

	"baybinder/generator/model"
	"baybinder/generator/show/front"
	"baybinder/generator/show/jobs"
	"baybinder/generator/show/page"
	"baybinder/generator/show/procedure"
	"baybinder/generator/show/publish"
)

// rebuilt builds a site again in which nothing but words of procedures changed:
// their pages, the writer's list and the search are made, and all else stays as
// it stands. Nil where that is not enough.
func (m *memory) rebuilt(last *keptSite) (*Result, error) {
	if last == nil || m.o.Readings != "" {
		return nil, nil
	}
	a := m.reached(last.Past)
	if a == nil {
		return nil, nil
	}
	if a.verdict.Stopped() {
		m.told(a.verdict)
		return &Result{Tree: m.tree, Verdict: *a.verdict}, nil
	}
	sheets := a.sheets(last)
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
	if _, stands := last.Site.Stands(m.o.To); !stands {
		site.Abort()
		return nil, nil
	}
	if err := last.put(site, sheets, r); err != nil {
		site.Abort()
		return r, err
	}
	if r.Kept, err = site.Commit(); err != nil {
		return r, err
	}
	m.reachedOnly(a)
	last.Past = a.past
	m.published(r, *last)
	return r, nil
}

// put writes the sheets, and keeps the other files of the site.
func (k *keptSite) put(site *publish.Site, sheets map[string][]byte, r *Result) error {
	for name, text := range sheets {
		if err := site.Put(name, text); err != nil {
			return err
		}
		if strings.HasSuffix(name, ".html") {
			r.Pages++
		}
	}
	for _, name := range k.Site.Names() {
		if sheets[name] != nil || front.IsSnags(name) || strings.HasPrefix(name, "search/") {
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

// sheets are what is made anew, by path in the site; nil where more than that is
// to be.
func (a *again) sheets(last *keptSite) (sheets map[string][]byte) {
	if !a.words || len(a.Manual.Jobs) > 0 {
		return nil
	}
	defer func() {
		if v := recover(); v != nil {
			if !missed(v) {
				panic(v)
			}
			sheets = nil
		}
	}()
	s := a.pages(last)
	for _, p := range a.reached {
		if !s.Publishes(p) {
			continue
		}
		if p.Status == "retired" || !last.Survey.Count(s.front, p) || !last.Book.Take(s.front.Found(p)) {
			return nil
		}
	}
	sheets = map[string][]byte{}
	for _, l := range finished(s.Site, s.reachedBy(a.reached)) {
		var text bytes.Buffer
		l.write(&text)
		sheets[l.name] = text.Bytes()
	}
	for name, data := range last.Book.Files() {
		sheets["search/"+name] = data
	}
	return sheets
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
func (a *again) pages(last *keptSite) *pages {
	p := a.past
	m := *a.Manual
	site := page.NewSite(&m, a.Walks, a.verdict.Findings, a.today, p.Preview)
	m.Procedures, m.Translated = append(m.Procedures, nil), append(m.Translated, nil)
	site.Shown, site.Faults, site.Coded = append(site.Shown, nil), nil, last.Coded
	done := jobs.Of(site)
	return &pages{Pages: done, front: front.Surveyed(done, last.Survey), procedure: procedure.Of(done)}
}
