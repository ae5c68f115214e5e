package settle

import (
	"slices"
	"strings"

	"baybinder/generator/base/quantity"
	"baybinder/generator/check"
	"baybinder/generator/model"
	"baybinder/generator/read/edit"
)

// lists completes the four lists of the front matter: what the steps use and a
// list lacks is added at its end.
func (t *text) lists() {
	if t.procedure.Broken || t.procedure.Misread {
		t.leave(t.procedure.At, "its front matter cannot all be read, so its lists stay as they are: see baybinder check")
		return
	}
	if len(t.roles) > 0 && !t.procedure.Lost("needs") {
		t.complete("needs", t.roles)
	}
	for _, name := range listNames {
		if missing := t.missing(name); len(missing) > 0 {
			t.complete(name, missing)
		}
	}
}

// listNames are the reconciled lists, in the format's order.
var listNames = []string{"hazards", "tools", "supplies", "holds"}

func listName(l model.List) string {
	switch l {
	case model.ListTools:
		return "tools"
	case model.ListSupplies:
		return "supplies"
	case model.ListHazards:
		return "hazards"
	case model.ListHolds:
		return "holds"
	case model.NoList:
	}
	return ""
}

// missing are the ids that a list lacks, in the order in which steps use them.
// A supply that is not counted by the piece needs an amount, which nobody but
// the writer knows.
func (t *text) missing(name string) []string {
	var ids []string
	for _, f := range t.found {
		link := t.linkAt(f.At.Start)
		if f.Rule != &check.NotListed || link == nil {
			continue
		}
		if name == "hazards" {
			ids = t.withSupplied(ids, link)
		}
		if listName(link.Kind.List) != name || slices.Contains(ids, link.ID) {
			continue
		}
		if t.hasSupply(link) {
			continue // it is a hazard of the supply that is not listed
		}
		if supply, is := link.To.(*model.Supply); is && !byThePiece(supply) {
			t.leave(link.At, "%s is used and not listed: write how much into supplies, in %s", supply.ID, supply.Unit)
			continue
		}
		ids = append(ids, link.ID)
	}
	return ids
}

// hasSupply says that the supply which a link names is in the list.
func (t *text) hasSupply(link *model.Link) bool {
	return link.Kind.List == model.ListSupplies &&
		slices.ContainsFunc(t.procedure.Supplies, func(use model.Use[model.Supply]) bool { return use.ID == link.ID })
}

// withSupplied adds the hazards that come with what a link uses, where the list
// lacks them.
func (t *text) withSupplied(ids []string, link *model.Link) []string {
	for _, h := range model.SuppliedHazards([]*model.Link{link}) {
		listed := slices.ContainsFunc(t.procedure.Hazards, func(use model.HazardUse) bool { return use.ID == h.ID })
		if !listed && !h.Unread && !slices.Contains(ids, h.ID) {
			ids = append(ids, h.ID)
		}
	}
	return ids
}

func (t *text) linkAt(start int) *model.Link {
	for _, link := range links(t.procedure) {
		if link.At.Start == start {
			return link
		}
	}
	return nil
}

func byThePiece(s *model.Supply) bool {
	unit, known := quantity.UnitNamed(s.Unit)
	return known && unit.Dimension() == quantity.Count
}

// complete adds ids to a list, if the front matter means afterwards what it
// meant before, and them.
func (t *text) complete(name string, ids []string) {
	piece, ok := edit.Grow(t.procedure.File, name, ids)
	if !ok {
		t.leave(t.procedure.At, "%s lacks %s, and there is no safe place to write it: write it in by hand", name, strings.Join(ids, ", "))
		return
	}
	t.inserts = append(t.inserts, piece)
	t.done(t.procedure.At, "added to %s: %s", name, strings.Join(ids, ", "))
}
