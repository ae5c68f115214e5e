package check

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/model"
)

var NotUsed = finding.Rule{
	Code:  "not-used",
	Title: "A line of the front matter that no step uses",
	Why:   "A list written from memory sends people for what the job does not need, and hides what a step forgot to name: a hazard without a box, a hold that stops nobody.",
	Mend:  "Link it in the step that uses it, or take it out of the list. A tool that is only worn, measured with or locked with may stay.",
}

func runNotUsed(c *Context, p *model.Procedure) []finding.Finding {
	if unread(p) || len(p.Steps) == 0 {
		return nil
	}
	var found []finding.Finding
	tally := tallyOf(c, p)
	for _, list := range reconciled {
		for _, line := range list.lines(p) {
			if !line.known || tally.doubt[list.list] || tally.used[use{list.list, line.id}] {
				continue
			}
			found = append(found, NotUsed.At(line.at, "%s: lists %s, and no step uses it", list.name, line.id).
				WithMend("link it where it is used, [words](%s:%s), or take it out of the list", list.kind, line.id))
		}
	}
	return found
}
