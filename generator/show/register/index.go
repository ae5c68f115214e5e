package register

import (
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/model"
	"baybinder/generator/show/page"
)

// Index is a list of the entries of one register, in groups.
type Index struct {
	page.Frame
	Name   string
	Groups []Group
	Second []Group // the same entries by another order, as tools by shelf
	First  string  // what the groups are by
	Notes  string  // what stands behind a name
	Counts string  // what is counted
	By     string  // what the second groups are by
	Aside  string  // what stands behind a name in them
	Parts  []page.Part
	To     string // where the first groups begin, as seen from here: "index.html#first"
	ToBy   string // where the second groups begin
}

// Group is one group of an index.
type Group struct {
	Name string
	Rows []Row
}

// Row is one entry of an index.
type Row struct {
	page.Link
	Word  string   // signal word of a hazard
	Dues  []string // when a tool's inspection or calibration runs out
	Class string
	Sign  page.HTML
	Count int    // procedures that use it
	List  string // where they are listed
}

// grouping puts rows into groups in the order of their names.
type grouping struct {
	order []string
	rows  map[string][]Row
}

func (g *grouping) add(group string, r Row) {
	if g.rows == nil {
		g.rows = map[string][]Row{}
	}
	if _, known := g.rows[group]; !known {
		g.order = append(g.order, group)
	}
	g.rows[group] = append(g.rows[group], r)
}

func (g *grouping) groups() []Group {
	var out []Group
	for _, name := range g.order {
		out = append(out, Group{Name: name, Rows: g.rows[name]})
	}
	return out
}

func (s *Pages) row(up string, n model.Named) Row {
	to := s.Link(up, n)
	return Row{Link: to, Count: len(s.UsersOf(n)), List: to.Address + "#used"}
}

// Tools makes the index of tools, by kind and by shelf.
func (s *Pages) Tools() *Index {
	v := &Index{Frame: s.Frame("tools/index.html", s.Words.Tools), Name: s.Words.Tools, First: s.Words.ByKind, By: s.Words.ByShelf, Aside: s.Words.Owned, Notes: s.Words.Kept, Counts: s.Words.Procedures}
	var kinds, shelves grouping
	for _, t := range sortedBy(s.Manual.Tools, func(t *model.Tool) string { return t.Kind }) {
		r := s.row(v.Up, t)
		r.Note, r.Dues = t.Kept, s.dues(t)
		kinds.add(s.Words.Kind(t.Kind), r)
	}
	for _, t := range sortedBy(s.Manual.Tools, func(t *model.Tool) string { return t.Kept }) {
		r := s.row(v.Up, t)
		if t.Owned > 0 {
			r.Note = strconv.Itoa(t.Owned)
		}
		shelves.add(s.place(t.Kept), r)
	}
	v.Groups, v.Second = kinds.groups(), shelves.groups()
	return v
}

func (s *Pages) place(kept string) string {
	if kept == "" {
		return s.Words.NoPlace
	}
	return kept
}

// Supplies makes the index of supplies, by shelf.
func (s *Pages) Supplies() *Index {
	v := &Index{Frame: s.Frame("supplies/index.html", s.Words.Supplies), Name: s.Words.Supplies, First: s.Words.ByShelf, Notes: s.Words.Unit, Counts: s.Words.Procedures}
	var g grouping
	for _, u := range sortedBy(s.Manual.Supplies, func(u *model.Supply) string { return u.Kept }) {
		r := s.row(v.Up, u)
		r.Note = u.Unit
		g.add(s.place(u.Kept), r)
	}
	v.Groups = g.groups()
	return v
}

// Hazards makes the index of hazards, the most serious first.
func (s *Pages) Hazards() *Index {
	v := &Index{Frame: s.Frame("hazards/index.html", s.Words.Hazards), Name: s.Words.Hazards, Counts: s.Words.Procedures}
	var g grouping
	for _, h := range sortedBy(s.Manual.Hazards, func(h *model.Hazard) string { return strconv.Itoa(9 - int(page.WordOf(h))) }) {
		r := s.row(v.Up, h)
		r.Class, r.Sign, r.Note = page.WordOf(h).String(), s.Sign(h.Symbol), h.Nature
		g.add(s.Words.Signal(r.Class), r)
	}
	v.Groups = g.groups()
	return v
}

// Holds makes the index of holds, by kind.
func (s *Pages) Holds() *Index {
	v := &Index{Frame: s.Frame("holds/index.html", s.Words.Holds), Name: s.Words.Holds, First: s.Words.ByKind, Notes: s.Words.Limit, Counts: s.Words.Procedures}
	var g grouping
	for _, h := range sortedBy(s.Manual.Holds, func(h *model.Hold) string { return h.Kind }) {
		r := s.row(v.Up, h)
		r.Note = s.holdNote(h)
		g.add(s.Words.Kind(h.Kind), r)
	}
	v.Groups = g.groups()
	return v
}

func (s *Pages) holdNote(h *model.Hold) string {
	switch {
	case h.Kind == "wait":
		return s.Stretch(h.For)
	case !h.Limit.IsZero():
		return s.BothLimit(h.Limit)
	}
	return h.What
}

// Roles makes the index of roles.
func (s *Pages) Roles() *Index {
	v := &Index{Frame: s.Frame("roles/index.html", s.Words.Roles), Name: s.Words.Roles, Counts: s.Words.Procedures}
	var g grouping
	for _, r := range s.Manual.Roles {
		row := s.row(v.Up, r)
		row.Note = r.Note
		g.add("", row)
	}
	v.Groups = g.groups()
	return v
}

// sortedBy is a list in the order of a key, entries of one key as they stand
// in the register.
func sortedBy[T any](list []T, key func(T) string) []T {
	out := append([]T(nil), list...)
	slices.SortStableFunc(out, func(a, b T) int { return strings.Compare(key(a), key(b)) })
	return out
}
