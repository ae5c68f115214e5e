// Package page is what every page of the site stands on: its frame, its links and languages, the
// caution boxes, holds, amounts and computed numbers, as plain values. What one kind of page shows
// stands in a room of its own, beside this one: jobs (what records say), and on it procedure,
// register, front, and readings (the pages that name people), which stands on procedure. The theme's
// templates write all of it down.
//
// # Decided where the format is silent
//
// Pages: The hazards of a step stand in one box under the word of the greatest (ANSI Z535.4-2007
// as quoted: a label for more than one hazard takes the word of the greatest); what is damage only
// stands in a box of its own, which has no alert symbol. The mandatory sign of protective gear is
// found by its name. In a text links to procedures and machines lead somewhere, tools are bold
// (they are links in the kit), and the rest is plain words. A link that only marks its step and
// makes a sentence of its own with its full stop, "[Wait 60 min](hold:w).", or opens one, "[With a
// cab](when:cab), lift", is printed. *Where things stand* is told after each step that changes it.
// Times are added one after another; during a wait only the sub-steps of its own step go on that
// have nothing to do with it.
package page

import (
	"sort"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/parallel"
	"baybinder/generator/base/quantity"
	"baybinder/generator/derive/backlinks"
	"baybinder/generator/derive/kit"
	"baybinder/generator/derive/schedule"
	"baybinder/generator/derive/training"
	"baybinder/generator/language"
	"baybinder/generator/language/shape"
	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
)

// HTML is text that is markup already.
type HTML string

// Site is what every page is made from.
type Site struct {
	Manual   *model.Manual
	Shown    []*model.Procedure // the procedures that are published, by path
	Links    *backlinks.Index
	Kits     *kit.Cache
	Times    *schedule.Cache
	Walks    *walk.Result
	Findings []finding.Finding
	Words    *words.Words
	Today    model.Date
	Preview  bool

	Speaks *shape.Language
	Marker quantity.Marker // of the language's numbers
	shown  map[*model.Procedure]bool
	Rows   []Row // what other pages show of the published procedures, by path
	Coded  bool  // their steps name fault codes
	users  map[string][]UsedBy
	plans  planBook
	spoken map[*model.Procedure][]string       // the languages that a procedure is translated into
	read   *reading                            // nil in the shop's own language
	looked map[*model.Procedure]*model.Reading // the last inspections; nil where no review is asked for
}

// NewSite gathers what the pages of a checked manual need.
func NewSite(m *model.Manual, walks *walk.Result, findings []finding.Finding, today model.Date, preview bool) *Site {
	speaks := Speaking(m.Shop.Language)
	s := &Site{
		Manual: m, Walks: walks, Findings: findings, Today: today, Preview: preview, Words: &speaks.Words, Speaks: speaks, Marker: language.Marker(m.Shop.Language),
		Kits: kit.NewCache(m.Shop, walks), Times: schedule.NewCache(walks), shown: map[*model.Procedure]bool{}, spoken: map[*model.Procedure][]string{},
	}
	for _, p := range m.Procedures {
		if !p.Draft() || preview {
			s.Shown = append(s.Shown, p)
			s.shown[p] = true
		}
	}
	for _, t := range m.Translated {
		if p := t.Original; p != nil && s.shown[p] && (!t.Draft() || preview) {
			s.spoken[p] = append(s.spoken[p], t.Language)
		}
	}
	parallel.Do( // the books are full before pages are made side by side
		func() { s.Links = backlinks.Of(s.Shown) },
		func() { s.plans = s.planBook() },
		func() { s.looked = s.inspected() },
		func() { fill(s.Shown, s.Kits.Of) },
		func() { fill(s.Shown, s.Times.Rows) },
	)
	s.Take(s.rows())
	return s
}

// inspected are the last inspections, where the shop asks for reviews.
func (s *Site) inspected() map[*model.Procedure]*model.Reading {
	if _, ok := s.Manual.Shop.ReviewEvery.Span(); !ok {
		return nil
	}
	return training.NewStandings(s.Manual, s.Today).Inspected()
}

// Looked is the day on which a procedure was last looked over: that of its last
// revision, or of a later inspection.
func (s *Site) Looked(p *model.Procedure, r *model.Revision) model.Date {
	if last := s.looked[p]; last != nil && r.Date.Before(last.Date) {
		return last.Date
	}
	return r.Date
}

// fill asks a book for all procedures, so that it need not be written to again.
func fill[T any](list []*model.Procedure, of func(*model.Procedure) T) {
	for _, p := range list {
		of(p)
	}
}

// Publishes says that a procedure has a page.
func (s *Site) Publishes(p *model.Procedure) bool { return s.shown[p] }

// Changed forgets what was worked out of a procedure before it was bound anew.
// What other procedures get through their calls of it stays as it was.
func (s *Site) Changed(p *model.Procedure) {
	s.Kits.Forget(p)
	s.Times.Forget(p)
}

// Frame is what every page has around its own matter.
type Frame struct {
	*words.Words
	Lang      string
	Comma     bool // it parts its numbers so, and not with a point
	Shop      string
	Notice    string
	Emergency string
	Title     string
	Up        string  // from this page to the site's folder: "" or "../"
	Here      string  // the page's path in the site: "tools/index.html"
	Tabs      []Tab   // what is asked for at the bay
	Others    []Tab   // what the writer asks for
	FirstAid  []Aid   // what to do after each hazard that the page names
	Cut       []CutAt // where energy is cut
	Preview   bool
	Running   string         // stands at the foot of every printed page; "" for none
	Named     bool           // it names people: no page of the site, and without its search
	Style     string         // a style of its own, besides the one of every page
	Tongues   []LanguageLink // the page's languages; none where it has one
}

// Tab is one tab of the binder.
type Tab struct {
	Name    string
	Address string
	Current bool
}

// Aid is the first aid for one hazard.
type Aid struct {
	ID     string // the hazard's
	Hazard string
	Text   string
}

// CutAt is a point where energy is cut.
type CutAt struct {
	Point string
	Where string
	Cuts  string
}

// Link is a name with an address relative to the page; the address is "" where
// there is no page to go to.
type Link struct {
	Name    string
	Address string
	Note    string
}

// Frame makes the frame of a page at a path.
func (s *Site) Frame(here, title string) Frame {
	shop := s.Manual.Shop
	f := Frame{
		Words: s.Words, Lang: s.Language(), Comma: s.Marker == quantity.Comma, Shop: s.Say(shop, "title", shop.Title), Notice: s.Say(shop, "notice", strings.TrimSpace(shop.Notice)),
		Emergency: s.Say(shop, "emergency", strings.TrimSpace(shop.Emergency)), Title: title, Here: here,
		Up: strings.Repeat("../", strings.Count(here, "/")), Preview: s.Preview,
	}
	tabs, others := s.tabs()
	f.Tabs, f.Others = f.at(tabs), f.at(others)
	return f
}

// at are tabs as a page sees them.
func (f *Frame) at(tabs []Tab) []Tab {
	for i := range tabs {
		t := &tabs[i]
		t.Current = t.Address == f.Here || (strings.HasSuffix(t.Address, "/index.html") && strings.HasPrefix(f.Here, strings.TrimSuffix(t.Address, "index.html"))) || PartOf(t.Address, f.Here)
		t.Address = f.Up + t.Address
	}
	return tabs
}

// tabs are the site's indexes; one that would be empty is left out. At the bay
// one looks for a machine, a tool, a supply, a hazard; the shop's name leads to
// the front.
func (s *Site) tabs() (bay, others []Tab) {
	w, m := s.Words, s.Manual
	add := func(to *[]Tab, n int, name, address string) {
		if n > 0 {
			*to = append(*to, Tab{Name: name, Address: address})
		}
	}
	add(&bay, len(m.Machines), w.Machines, "machines/index.html")
	add(&bay, len(m.Tools), w.Tools, "tools/index.html")
	add(&bay, len(m.Supplies), w.Supplies, "supplies/index.html")
	add(&bay, len(m.Hazards), w.Hazards, "hazards/index.html")
	add(&others, 1, w.Front, "index.html")
	if s.Coded {
		add(&others, 1, w.FaultCodes, "codes.html")
	}
	add(&others, len(m.Holds), w.Holds, "holds/index.html")
	add(&others, len(m.Roles), w.Roles, "roles/index.html")
	add(&others, 1, w.Snags, "snags.html")
	return bay, others
}

// Folder is the site's folder for entries of a kind.
func folder(n model.Named) string {
	switch n.(type) {
	case *model.Procedure:
		return "procedures"
	case *model.Machine:
		return "machines"
	case *model.Tool:
		return "tools"
	case *model.Supply:
		return "supplies"
	case *model.Hazard:
		return "hazards"
	case *model.Hold:
		return "holds"
	case *model.Role:
		return "roles"
	case *model.Plan:
		return "plans"
	}
	return ""
}

// Address is the page of an entry, from a page that is up away from the site's
// folder; "" where the entry has no page, as a draft in a published site.
func (s *Site) Address(up string, n model.Named) string {
	if p, ok := n.(*model.Procedure); ok {
		if !s.Publishes(p) {
			return ""
		}
		return up + s.PageOf(p)
	}
	if folder(n) == "" {
		return ""
	}
	return pageFrom(up, n)
}

// Link is a link to an entry's page.
func (s *Site) Link(up string, n model.Named) Link {
	return Link{Name: s.Name(n), Address: s.Address(up, n)}
}

// PageOf is the path of an entry's own page in the site. An entry called index
// leaves that name to the list of its kind: no id ends with a hyphen.
func PageOf(n model.Named) string { return pageFrom("", n) }

// pageFrom is that, from a page that is up away from the site's folder.
func pageFrom(up string, n model.Named) string {
	name := n.Base().ID
	if _, procedure := n.(*model.Procedure); name == "index" && !procedure {
		name += "-"
	}
	return up + folder(n) + "/" + name + ".html"
}

// AidFor is the first aid for all that a procedure meets, calls included.
func (s *Site) AidFor(p *model.Procedure) []Aid { return s.FirstAid(s.Kits.Of(p).Hazards) }

// FirstAid gathers the first aid of hazards, each once. Where a person can be
// hurt and nothing is written, that is said.
func (s *Site) FirstAid(hazards []*model.Hazard) []Aid {
	out := make([]Aid, 0, len(hazards))
	seen := make(map[string]bool, len(hazards))
	for _, h := range hazards {
		if seen[h.ID] || h.FirstAid == "" && h.Harm == "damage" {
			continue
		}
		seen[h.ID] = true
		aid := Aid{ID: h.ID, Hazard: s.Name(h), Text: s.Say(h, "first-aid", h.FirstAid)}
		if aid.Text == "" {
			aid.Text = s.Words.NoAidWritten
		}
		out = append(out, aid)
	}
	return out
}

// CutAt are points where energy is cut, in the page's language.
func (s *Site) CutAt(points []*model.Point) []CutAt {
	var out []CutAt
	for _, p := range points {
		var cuts []string
		for _, e := range p.Cuts {
			cuts = append(cuts, s.Name(e))
		}
		out = append(out, CutAt{Point: s.Name(p), Where: s.Say(p, "where", p.Where), Cuts: strings.Join(cuts, ", ")})
	}
	return out
}

// Scripts are the scripts of the page; it reads without them.
func (f *Frame) Scripts() []string {
	if f.Named {
		return nil
	}
	return []string{"words-" + f.Words.Lang + ".js", "baybinder.js"}
}

// ByName sorts links by name, then by address.
func ByName(links []Link) []Link {
	sort.Slice(links, func(i, j int) bool {
		if links[i].Name != links[j].Name {
			return links[i].Name < links[j].Name
		}
		return links[i].Address < links[j].Address
	})
	return links
}

// windowTitle is how many letters a window's title may have: search engines
// and validators cut or refuse longer ones.
const windowTitle = 70

// WindowTitle is the page's title with the shop's, where both fit.
func (f *Frame) WindowTitle() string {
	long := f.Title + " · " + f.Shop
	switch r := []rune(f.Title); {
	case f.Title != f.Shop && len([]rune(long)) <= windowTitle:
		return long
	case len(r) > windowTitle:
		return string(r[:windowTitle-1]) + "…"
	}
	return f.Title
}
