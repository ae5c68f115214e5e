package front

import (
	"slices"
	"strings"

	"baybinder/generator/model"
	"baybinder/generator/show/page"
	"baybinder/generator/show/search"
)

// Search is the page of the search.
type Search struct{ page.Frame }

// Search makes the page of the search.
func (s *Pages) Search() *Search { return &Search{s.Frame("search.html", s.Words.Search)} }

// What a page is found by, from the name down to the words of its steps.
const (
	byTitle, byAlias, bySymptom, byMachine = 12, 11, 10, 5
	bySummary, byThing, byPhase, byStep    = 5, 4, 3, 1
)

// Book is what the search index is made from.
func (s *Pages) Book() *search.Book {
	var docs []search.Document
	for _, p := range s.Shown {
		if p.Status != "retired" {
			docs = append(docs, s.Found(p))
		}
	}
	docs = append(docs, s.emergency())
	docs = append(docs, entries(s, s.Words.Machines, s.Manual.Machines)...)
	docs = append(docs, s.registers()...)
	for _, language := range s.Manual.Shop.Also {
		in := s.In(language)
		for _, p := range in.Translated() {
			if p.Status != "retired" {
				d := in.Found(p)
				d.Language = language
				docs = append(docs, d)
			}
		}
	}
	var serials []search.Serials
	for _, m := range s.Manual.Machines {
		for _, u := range m.Units {
			serials = append(serials, search.Serials{From: u.From, To: u.To, Name: m.Label(), Address: page.PageOf(m)})
		}
	}
	return search.Collect(s.Language(), docs, serials)
}

// registers are the entries of registers as the search finds them.
func (s *Pages) registers() []search.Document {
	return slices.Concat(entries(s, s.Words.Tools, s.Manual.Tools), entries(s, s.Words.Supplies, s.Manual.Supplies),
		entries(s, s.Words.Hazards, s.Manual.Hazards), entries(s, s.Words.Holds, s.Manual.Holds))
}

// TakeEntries reads the entries of registers anew into a book; false where it has
// none of one.
func (s *Pages) TakeEntries(book *search.Book) bool {
	return !slices.ContainsFunc(s.registers(), func(d search.Document) bool { return !book.Take(d) })
}

func entries[T any, P interface {
	*T
	model.Named
}](s *Pages, sort string, list []P) []search.Document {
	var out []search.Document
	for _, n := range list {
		id := strings.ReplaceAll(n.Base().ID, "-", " ")
		out = append(out, search.Document{Name: n.Label(), Address: page.PageOf(n), Note: page.Unmarked(sort), Texts: []search.Text{{Weight: 9, Text: n.Label()}, {Weight: 6, Text: id}, {Weight: 6, Text: number(n)}}})
	}
	return out
}

// emergency is what to do in one, which stands on every page.
func (s *Pages) emergency() search.Document {
	words := page.Unmarked(s.Words.Emergency + ", " + s.Words.FirstAid)
	return search.Document{Name: words, Address: "index.html#emergency", Note: s.Manual.Shop.Emergency, Texts: []search.Text{{Weight: byTitle, Text: words}, {Weight: bySummary, Text: s.Manual.Shop.Emergency}}}
}

// number is the stock number of an entry that has one.
func number(n model.Named) string {
	switch e := n.(type) {
	case *model.Tool:
		return e.Number
	case *model.Supply:
		return e.Number
	case *model.Hazard:
		return e.Number
	case *model.Hold:
		return e.Number
	}
	return ""
}

// Found is a procedure as the search finds it.
func (s *Pages) Found(p *model.Procedure) search.Document {
	own := s.Own(p)
	d := search.Document{Name: own.Label(), Address: s.PageOf(p), Note: own.Summary}
	add := func(weight int, texts ...string) {
		for _, t := range texts {
			d.Texts = append(d.Texts, search.Text{Weight: weight, Text: t})
		}
	}
	add(byTitle, own.Title)
	add(byAlias, own.AlsoCalled...)
	add(bySymptom, own.Symptoms...)
	add(bySummary, own.Summary, strings.ReplaceAll(p.ID, "-", " "))
	add(bySummary, p.Was...)
	if p.For.To != nil {
		add(byMachine, s.Name(p.For.To))
	}
	for _, phase := range own.Phases {
		add(byPhase, phase.Title.Plain)
	}
	for _, st := range own.Steps {
		for i := range st.Blocks {
			add(byStep, st.Blocks[i].Plain)
		}
		for _, l := range st.Links {
			if l.To != nil && l.Kind.List != model.NoList {
				add(byThing, s.Name(l.To))
			}
		}
	}
	for _, b := range own.Intro {
		add(byStep+1, b.Plain)
	}
	return d
}
