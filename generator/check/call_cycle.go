package check

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/model"
)

var callCycle = finding.Rule{
	Code:  "call-cycle",
	Title: "Procedures that perform each other in a ring",
	Why:   "A job that performs itself, by whatever way, never ends, and nothing can be worked out of it: no kit, no time, no order.",
	Mend:  "Take one do: out of the ring, or put what both need into a procedure of its own. Further reading is see:.",
}

func runCallCycle(c *Context) []finding.Finding {
	var found []finding.Finding
	g := callGraphOf(c.Manual.Procedures)
	for _, p := range c.Manual.Procedures {
		for _, link := range g.calls[p] {
			callee := link.To.(*model.Procedure)
			if g.ring[p] != g.ring[callee] {
				continue
			}
			back := g.way(callee, p)
			f := callCycle.At(link.At, "%s performs itself%s", p.Label(), byWayOf(callee, back)).
				WithMend("take one do: out of the ring, or write see: where it is only further reading")
			for _, next := range back {
				f = f.See(next.At, "and the ring goes on here")
			}
			found = append(found, f)
		}
	}
	return found
}

// byWayOf names the procedures that a ring goes through, from the one that is
// performed here to the one that performs p again.
func byWayOf(callee *model.Procedure, back []*model.Link) finding.Words {
	if len(back) == 0 {
		return finding.Words{}
	}
	names := []string{callee.Label()}
	for _, link := range back[:len(back)-1] {
		names = append(names, link.To.Label())
	}
	return finding.Say(", by way of %s", finding.ListOf(" and ", names))
}
