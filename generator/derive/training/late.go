package training

import (
	"slices"

	"baybinder/generator/model"
)

// ByLateness puts items in the order in which they press: what is longest past
// its day first, then what is due soonest, and what has no day last, of that
// what is stale first. Of one day the order stays.
func ByLateness(items []Item) {
	slices.SortStableFunc(items, func(a, b Item) int {
		switch {
		case a.By.IsZero() != b.By.IsZero():
			return truth(a.By.IsZero()) - truth(b.By.IsZero())
		case a.By.IsZero():
			return truth(b.State == Stale) - truth(a.State == Stale)
		}
		return a.By.Time().Compare(b.By.Time())
	})
}

func truth(is bool) int {
	if is {
		return 1
	}
	return 0
}

// FirstOfEach parts items that are in their order: the most pressing of each
// person, and the rest.
func FirstOfEach(items []Item) (first, rest []Item) {
	seen := map[*model.Person]bool{}
	for _, i := range items {
		if i.Person == nil || seen[i.Person] {
			rest = append(rest, i)
			continue
		}
		seen[i.Person] = true
		first = append(first, i)
	}
	return first, rest
}

// Inspections are the days by which working by what locks is to be inspected,
// each procedure once, where the shop says how often.
func (h *Standings) Inspections() []Item {
	var out []Item
	for _, p := range h.m.Procedures {
		by, _, ok := h.InspectBy(p)
		if !ok {
			continue
		}
		item := Item{What: p, State: Due, By: by, Act: "inspect", Left: 1}
		if h.late(by) {
			item.State = Overdue
		}
		out = append(out, item)
	}
	return out
}
