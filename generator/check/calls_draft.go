package check

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/model"
)

var CallsDraft = finding.Rule{
	Code:  "calls-draft",
	Title: "A job that performs a draft or a retired procedure",
	Why:   "Drafts are not published, and what is retired is no longer how the shop works. Whoever follows the job would stand before a link that leads nowhere.",
	Mend:  "Issue the draft, perform what stands instead, or make this procedure a draft until the other is ready.",
}

func runCallsDraft(_ *Context, p *model.Procedure) []finding.Finding {
	if unread(p) || p.Lost("status") || p.Status == "retired" {
		return nil
	}
	var found []finding.Finding
	for _, link := range callsOf(p) {
		callee := link.To.(*model.Procedure)
		switch {
		case callee.Draft() && p.Issued():
			found = append(found, CallsDraft.At(link.At, "%s is a draft, and this procedure is issued", callee.Label()).
				WithMend("issue %s (take status: draft out), or make this procedure a draft too", callee.ID).
				See(callee.At, "the draft is here"))
		case callee.Status == "retired":
			found = append(found, CallsDraft.At(link.At, "%s is retired", callee.Label()).
				WithMend("%s", standsInstead(callee)).See(callee.At, "the retired procedure is here"))
		}
	}
	return found
}

func standsInstead(retired *model.Procedure) finding.Words {
	if retired.Instead.ID != "" {
		return finding.Say("perform what stands instead: do:%s", retired.Instead.ID)
	}
	return finding.Say("perform another procedure; the retired one names none instead")
}

// callsOf are the do: links of a procedure's steps, those that act only at the
// refit among them.
func callsOf(p *model.Procedure) []*model.Link {
	var calls []*model.Link
	for _, link := range uses(p) {
		if link.Kind.Act == model.Call && !link.Bad {
			calls = append(calls, link)
		}
	}
	return calls
}
