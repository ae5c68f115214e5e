package check

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/model"
)

var MissingQualification = finding.Rule{
	Code:  "missing-qualification",
	Title: "A role that the job takes and the procedure does not ask for",
	Why:   "Who may do the job is read off the first lines of the page. A role that shows up halfway stops the job, or is passed over.",
	Mend:  "Write the role into needs: in the front matter.",
}

func runMissingQualification(c *Context, p *model.Procedure) []finding.Finding {
	held, sure := listedIDs(linesOf(p.Needs))
	if unread(p) || !sure || p.Lost("needs") {
		return nil
	}
	var found []finding.Finding
	for _, link := range uses(p) {
		if link.Bad {
			continue
		}
		for _, d := range demandsOf(c, p, link) {
			if held[d.role.ID] {
				continue
			}
			held[d.role.ID] = true // told once
			found = append(found, MissingQualification.At(link.At, "%s, and needs: in the front matter does not list that role", d.says).
				WithMend("write %s into needs: [ ]", d.role.ID).WithSettle().See(d.role.At, "the role is asked for here"))
		}
	}
	return found
}

// demand is a role that someone must hold, and who asks for it.
type demand struct {
	role model.Ref[model.Role]
	says finding.Words
}

// demandsOf are the roles that a link asks for.
func demandsOf(c *Context, p *model.Procedure, link *model.Link) []demand {
	var list []demand
	ask := func(by model.Named, roles []model.Ref[model.Role]) {
		for _, r := range roles {
			if r.To != nil {
				list = append(list, demand{r, finding.Say("%s is for people with the role %s", by.Label(), r.ID)})
			}
		}
	}
	switch to := link.To.(type) {
	case *model.Role:
		ref := model.Ref[model.Role]{ID: to.ID, At: to.At, To: to}
		return []demand{{ref, finding.Say("%s does this", to.Label())}}
	case *model.Procedure:
		if link.Kind.Act == model.Call && !to.Broken {
			ask(to, to.Needs)
		}
	}
	for _, tool := range toolsOf(c, p, link) {
		ask(tool, tool.Needs)
	}
	return list
}

func linesOf[T any](refs []model.Ref[T]) []listLine {
	var out []listLine
	for _, r := range refs {
		out = append(out, lineOf(r))
	}
	return out
}
