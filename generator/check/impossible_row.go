package check

import (
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/prove/fingerprint"
)

// runImpossibleRow tells of rows of the record that cannot have been: of a day on
// which the person was not there, and of words that were issued later. Rows stay
// as they are; these are looked up and count for no plan, or not as good.
func runImpossibleRow(c *Context) []finding.Finding {
	all := revisionsOf(c.Manual)
	var found []finding.Finding
	add := func(f finding.Finding) {
		f.Level = finding.Advice
		found = append(found, f)
	}
	for i := range c.Manual.Record {
		r := &c.Manual.Record[i]
		switch p := r.Person.To; {
		case r.Bad || p == nil || r.Procedure.To == nil || c.Today.Before(r.Date) || p.LeftUnread:
		case !p.There(r.Date):
			add(recordDisagrees.At(r.At, "%s was not there on %s: this counts for no plan", p.Label(), r.Date).
				WithMend("look up the day; if the row is right, mend started or left in readings/people.csv"))
		default:
			if rev := issuedLater(c.Manual, all[r.Procedure.To], r); rev != nil {
				add(recordDisagrees.At(r.At, "these words of %s were issued later, on %s, as revision %s", r.Procedure.To.Label(), rev.Date, rev.Number).
					WithMend("look up the day and what was read").See(rev.At, "the revision was issued here"))
			}
		}
	}
	return found
}

// issuedLater is the first revision of the words of a row, where that was issued
// after the row's day and others stood; nil else. Who walked it through, and who
// was taught it before, had the words before they were issued.
func issuedLater(m *model.Manual, list []*model.Revision, r *model.Reading) *model.Revision {
	at := slices.IndexFunc(list, func(rev *model.Revision) bool { return r.Fingerprint != "" && fingerprint.Has(rev, r.Fingerprint) })
	if at < 0 || !r.Date.Before(list[at].Date) || r.Date.Before(list[0].Date) {
		return nil
	}
	rev := list[at]
	taught := func(o model.Reading) bool {
		return o.Act == "taught" && o.Person.To == r.Person.To && o.Procedure.To == r.Procedure.To && !r.Date.Before(o.Date) && fingerprint.Has(rev, o.Fingerprint)
	}
	if rev.Walked == r.Person.ID || r.Act == "taught" || slices.ContainsFunc(m.Record, taught) {
		return nil
	}
	return rev
}
