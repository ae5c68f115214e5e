package check

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/model"
)

var NotListed = finding.Rule{
	Code:  "not-listed",
	Title: "Something that a step needs and the front matter does not list",
	Why:   "The lists are what people fetch, and warn each other of, before they start. What is missing there is missing at the bay, with the job open.",
	Mend:  "Write its id into the list, with the amount where it needs one, or let baybinder settle do it.",
}

func runNotListed(_ *Context, p *model.Procedure) []finding.Finding {
	if unread(p) {
		return nil
	}
	var found []finding.Finding
	links := uses(p)
	for _, list := range reconciled {
		listed, sure := listedIDs(list.lines(p))
		if !sure || p.Lost(list.name) {
			continue
		}
		for _, link := range links {
			if link.Kind.List != list.list || link.Bad || listed[link.ID] {
				continue
			}
			listed[link.ID] = true // told once
			f := NotListed.At(link.At, "%s is used here, and %s: in the front matter does not list it", link.ID, list.name)
			if supply, is := link.To.(*model.Supply); is && supply.Unit != "each" {
				// How much, settle cannot know.
				f = f.WithMend("write it into %s: [%s: how much, in %s]", list.name, link.ID, supply.Unit)
			} else {
				f = f.WithMend("write %s into %s: [ ], or let baybinder settle do it", link.ID, list.name).WithSettle()
			}
			found = append(found, f)
		}
	}
	return append(found, hazardsOfSupplies(p, links)...)
}

// hazardsOfSupplies asks that the list has what comes with a supply: told once,
// at the first link that uses it.
func hazardsOfSupplies(p *model.Procedure, links []*model.Link) []finding.Finding {
	listed, sure := listedIDs(hazardLines(p))
	if !sure || p.Lost("hazards") {
		return nil
	}
	for _, link := range links {
		if link.Kind.List == model.ListHazards {
			listed[link.ID] = true // told above
		}
	}
	var found []finding.Finding
	for _, link := range links {
		for _, s := range link.Supplies() {
			for _, h := range s.Hazards {
				if h.To == nil || listed[h.ID] {
					continue
				}
				listed[h.ID] = true
				found = append(found, NotListed.At(link.At, "%s comes with %s, which is used here, and hazards: in the front matter does not list it", h.ID, s.ID).
					WithMend("write %s into hazards: [ ], or let baybinder settle do it", h.ID).WithSettle().See(h.At, "the supply has it here"))
			}
		}
	}
	return found
}

// listedIDs are the ids of a list. A line that leads nowhere may be meant for
// any id, so that nothing is sure.
func listedIDs(lines []listLine) (ids map[string]bool, sure bool) {
	ids, sure = map[string]bool{}, true
	for _, line := range lines {
		ids[line.id] = true
		sure = sure && line.known
	}
	return ids, sure
}
