// Package page works out what each page shows, as plain values; the theme's templates write them down.
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
//
// A hazard that was said whole before in the phase, by a step that every unit passes, is said again
// in one line; the step in hand shows it whole. The rail groups where things stand by what it is. A
// step that was ticked past something open does not fold away. Two presses within 700 ms are one.
//
// At the bay: Jobs are kept by procedure and start, each with its unit; one of the first version
// stays under its old key. A shift is taken as 12 h since a job's last change (common practice, no
// source): what is older, of another person, or one of several is asked about, and until then
// nothing is shown as done. Names that differ in dots, spaces and capitals alone are one person. A
// job is open until its record is saved with nothing left to do; such jobs make room, the oldest
// first, where the store is full. A called procedure's job is that of the calling job's step. Of
// two tabs the newer write wins, and the page says so. A state that a script sets is a class
// `is-…`; a thing's class never is. A step with a hold, an energy act or a caution above NOTICE
// cannot be skipped. A gap stays recorded if it is mended later. A wait runs from the last
// applicable step before it; a clock set back only makes it longer. Readings are typed in the
// limit's own unit. The short view hides pictures, standings, and reasons without an amount. The
// browser has no stemmer: the index holds stems, and up to four letters are cut off an unknown
// word.
//
// Pages of the readings: The folder is known by `names-people.txt`; a folder with an `index.html`
// and without it is never replaced. Of two plans the more pressing state is shown. An exercise
// leaves out torques, the order of steps in a phase and of the refit, and signal words; its order
// comes from SHA-256 of procedure and phase, the same for each print and never the right one;
// answers are a page of their own, so that no duplex print has them on the back.
package page

import (
	"baybinder/generator/language/shape"
	"sort"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/parallel"
	"baybinder/generator/derive/backlinks"
	"baybinder/generator/derive/kit"
	"baybinder/generator/derive/schedule"
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

	speaks *shape.Language
	shown  map[*model.Procedure]bool
	faults []faultRow // the fault codes that steps name
	jobs   jobBook
	plans  planBook
	spoken map[*model.Procedure][]string // the languages that a procedure is translated into
	read   *reading                      // nil in the shop's own language
}

// NewSite gathers what the pages of a checked manual need.
func NewSite(m *model.Manual, walks *walk.Result, findings []finding.Finding, today model.Date, preview bool) *Site {
	speaks := speaking(m.Shop.Language)
	s := &Site{
		Manual: m, Walks: walks, Findings: findings, Today: today, Preview: preview, Words: &speaks.Words, speaks: speaks,
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
		func() { s.Links = backlinks.Of(s.Shown); s.faults = s.faultRows() },
		func() { s.bookJobs(); s.plans = s.planBook() },
		func() { fill(s.Shown, s.Kits.Of) },
		func() { fill(s.Shown, s.Times.Rows) },
	)
	return s
}

// fill asks a book for all procedures, so that it need not be written to again.
func fill[T any](list []*model.Procedure, of func(*model.Procedure) T) {
	for _, p := range list {
		of(p)
	}
}

// Changed forgets what was worked out of a procedure before it was bound anew.
// What other procedures get through their calls of it stays as it was.
func (s *Site) Changed(p *model.Procedure) {
	s.Kits.Forget(p)
	s.Times.Forget(p)
	for _, j := range s.jobs.of[p] {
		s.bookNotes(j) // its steps are others now
	}
}

// Frame is what every page has around its own matter.
type Frame struct {
	*words.Words
	Lang      string
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
		Words: s.Words, Lang: s.Language(), Shop: s.say(shop, "title", shop.Title), Notice: s.say(shop, "notice", strings.TrimSpace(shop.Notice)),
		Emergency: s.say(shop, "emergency", strings.TrimSpace(shop.Emergency)), Title: title, Here: here,
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
		t.Current = t.Address == f.Here || (strings.HasSuffix(t.Address, "/index.html") && strings.HasPrefix(f.Here, strings.TrimSuffix(t.Address, "index.html")))
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
	add(&others, len(s.faults), w.FaultCodes, "codes.html")
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
		if !s.shown[p] {
			return ""
		}
		return up + s.pageOf(p)
	}
	if dir := folder(n); dir != "" {
		return up + dir + "/" + n.Base().ID + ".html"
	}
	return ""
}

// link is a link to an entry's page.
func (s *Site) link(up string, n model.Named) Link {
	return Link{Name: s.name(n), Address: s.Address(up, n)}
}

// PageOf is the path of an entry's own page in the site.
func PageOf(n model.Named) string { return folder(n) + "/" + n.Base().ID + ".html" }

// firstAid gathers the first aid of hazards, each once. Where a person can be
// hurt and nothing is written, that is said.
func (s *Site) firstAid(hazards []*model.Hazard) []Aid {
	var out []Aid
	seen := map[string]bool{}
	for _, h := range hazards {
		if seen[h.ID] || h.FirstAid == "" && h.Harm == "damage" {
			continue
		}
		seen[h.ID] = true
		aid := Aid{Hazard: s.name(h), Text: s.say(h, "first-aid", h.FirstAid)}
		if aid.Text == "" {
			aid.Text = s.Words.NoAidWritten
		}
		out = append(out, aid)
	}
	return out
}

func (s *Site) cutAt(points []*model.Point) []CutAt {
	var out []CutAt
	for _, p := range points {
		var cuts []string
		for _, e := range p.Cuts {
			cuts = append(cuts, s.name(e))
		}
		out = append(out, CutAt{Point: s.name(p), Where: s.say(p, "where", p.Where), Cuts: strings.Join(cuts, ", ")})
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

// byName sorts links by name, then by address.
func byName(links []Link) []Link {
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
