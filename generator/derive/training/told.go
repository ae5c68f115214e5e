package training

import (
	"slices"
	"strings"

	"baybinder/generator/model"
)

// toTell is what a person is still to be told of: a revision that was issued with
// tell after the one that they read, while their reading is good. Of a revision
// without a hash of its words nobody is told.
func (h *Standings) toTell(person *model.Person) []Item {
	var out []Item
	for _, p := range h.m.Procedures {
		last := h.lastRead(person, p)
		if last == nil || !p.Issued() || !h.Holds(last) {
			continue
		}
		if rev := h.renditionSince(last); rev != nil && !h.toldSince(person, p, rev.Date) {
			out = append(out, Item{Person: person, What: p, State: Due, Act: "tell", Left: 1, Told: rev})
		}
		revisions := h.since[p]
		at, known := readRevision(revisions, last)
		if !known {
			continue
		}
		for i := len(revisions) - 1; i > at; i-- {
			if rev := revisions[i]; rev.Readers == "tell" && rev.Words != "" {
				if !h.toldSince(person, p, rev.Date) {
					out = append(out, Item{Person: person, What: p, State: Due, Act: "tell", Left: 1, Told: rev})
				}
				break
			}
		}
	}
	return out
}

// renditionSince is the last revision of the translation that was read, issued
// after that day, of which readers are to know; nil where there is none.
func (h *Standings) renditionSince(r *model.Reading) *model.Revision {
	for i := len(h.m.Renditions) - 1; i >= 0 && r.Language != ""; i-- {
		rev := &h.m.Renditions[i]
		if rev.Procedure.To != r.Procedure.To || !strings.EqualFold(rev.Language, r.Language) || h.today.Before(rev.Date) {
			continue
		}
		if !r.Date.Before(rev.Date) {
			break
		}
		if rev.Readers != "none" && rev.Words != "" {
			return rev
		}
	}
	return nil
}

// toldSince says whether a person was told of a procedure, or read it, on a day
// or later.
func (h *Standings) toldSince(person *model.Person, p *model.Procedure, day model.Date) bool {
	return slices.ContainsFunc(h.read[key{person, p}], func(r *model.Reading) bool {
		return (r.Act == "told" || r.Act == "read") && !r.Date.Before(day)
	})
}
