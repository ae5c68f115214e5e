package check

import (
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/derive/training"
	"baybinder/generator/model"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/decode"
)

var notAuthorised = finding.Rule{
	Code:  "not-authorised",
	Names: true,
	Title: "Someone checked, approved or inspected without the role for it on that day",
	Why:   "Who may say that a text is right, or that people work by it, is settled before the day and not after. Of energy control, 29 CFR 1910.147(c)(6)(i)(A) has the inspection done by an authorized employee other than those who use the procedure. Local codes come first.",
	Mend:  "Have it done by someone who holds the role, and record that too. Rows stay as they are. Who may check and approve is issue: in shop.yaml.",
}

// runNotAuthorised looks at the revisions from the day on that shop.yaml names,
// and at every inspection.
func runNotAuthorised(c *Context) []finding.Finding {
	return append(inspectors(c), issuers(c)...)
}

func inspectors(c *Context) []finding.Finding {
	var found []finding.Finding
	for i := range c.Manual.Record {
		r := &c.Manual.Record[i]
		if r.Act != "inspected" || r.Bad || r.Person.To == nil || r.Procedure.To == nil || c.Today.Before(r.Date) || rolesUnread(c.Manual, r.By) {
			continue
		}
		switch c.staff().InspectionFault(r) {
		case training.NotAuthorised:
			found = append(found, notAuthorised.At(r.ByAt, "%s is inspected by someone who holds one of its roles on that day, so this counts for nothing", r.Procedure.To.Label()).
				WithMend("have it inspected by someone who holds one of its needs"))
		case training.SamePerson:
			found = append(found, samePerson.At(r.ByAt, "nobody inspects their own work: this counts for nothing").
				WithMend("have someone else inspect it"))
		}
	}
	return found
}

func issuers(c *Context) []finding.Finding {
	rule := c.Manual.Shop.Issue
	if rule == nil || rule.Since.IsZero() {
		return nil
	}
	var found []finding.Finding
	for _, r := range slices.Concat(c.Manual.Revisions, c.Manual.Renditions) {
		if r.Date.Before(rule.Since) || r.Readers == "retired" {
			continue
		}
		for _, f := range []*finding.Finding{
			judgeIssuer(c, &r, &checking, r.Checked, r.CheckedAt, rule.Checked),
			judgeIssuer(c, &r, &approving, r.Approved, r.ApprovedAt, rule.Approved),
		} {
			if f != nil {
				f.Aside = true
				found = append(found, *f)
			}
		}
	}
	return found
}

// issuing is what is told of one of the cells that say who may issue.
type issuing struct{ nobody, name, unknown, unfit, again finding.Words }

var (
	checking = issuing{
		nobody:  finding.Say("revision %s of %s was checked by nobody, and shop.yaml asks who"),
		name:    finding.Say("write into this row who checked it; another revision does not fill it"),
		unknown: finding.Say("%s, who checked this, is not in readings/people.csv"),
		unfit:   finding.Say("%s held no role on %s with which one has checked"),
		again:   finding.Say("if the role was held on that day, record that; else have it checked by someone who holds one of the roles in issue: of shop.yaml, and issue that. This row stays, and with it what is said here"),
	}
	approving = issuing{
		nobody:  finding.Say("revision %s of %s was approved by nobody, and shop.yaml asks who"),
		name:    finding.Say("write into this row who approved it; another revision does not fill it"),
		unknown: finding.Say("%s, who approved this, is not in readings/people.csv"),
		unfit:   finding.Say("%s held no role on %s with which one has approved"),
		again:   finding.Say("if the role was held on that day, record that; else have it approved by someone who holds one of the roles in issue: of shop.yaml, and issue that. This row stays, and with it what is said here"),
	}
)

// rolesUnread says that it is not known which roles a person holds.
func rolesUnread(m *model.Manual, id string) bool {
	p := model.ByID(m.People, id)
	return p != nil && p.Lost("roles")
}

// judgeIssuer judges one cell of a revision; one of the roles suffices.
func judgeIssuer(c *Context, r *model.Revision, say *issuing, who string, at position.Pos, roles []model.Ref[model.Role]) *finding.Finding {
	var f finding.Finding
	switch c.staff().IssuerFault(who, roles, r.Date) {
	case "":
		return nil
	case training.NobodyNamed:
		f = decode.MissingField.At(at, say.nobody.Template, r.Number, r.Procedure.ID).
			WithMend("%s", say.name)
	case training.NotKnown:
		f = bind.UnknownPerson.At(at, say.unknown.Template, who)
		if near := model.WhoIsMeant(c.Manual.People, who); near != "" {
			f = f.WithMend("did you mean %s?", near)
		}
	default:
		if rolesUnread(c.Manual, who) {
			return nil
		}
		f = notAuthorised.At(at, say.unfit.Template, model.ByID(c.Manual.People, who).Label(), r.Date).
			WithMend("%s", say.again)
	}
	return &f
}
