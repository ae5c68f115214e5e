package check

import "baybinder/generator/base/finding"

var samePerson = finding.Rule{
	Code:  "same-person",
	Level: finding.Advice,
	Title: "A revision that only its writer has checked, or work that nobody else inspected",
	Why:   "Whoever wrote a text reads what was meant, not what stands there. A second person finds the step that is missing.",
	Mend:  "Have someone else check it or walk it through, and issue it again with their name.",
}

// runSamePerson looks at the last revisions alone: what was issued before
// cannot be checked any more.
func runSamePerson(c *Context) []finding.Finding {
	var found []finding.Finding
	for p, r := range lastRevisions(c.Manual) {
		alone := r.Written != "" && r.Checked == r.Written && (r.Walked == "" || r.Walked == r.Written) // to approve is not to check
		if !p.Issued() || !alone {
			continue
		}
		found = append(found, samePerson.At(r.At, "revision %s of %s was checked by nobody but its writer", r.Number, p.Label()).
			WithMend("have someone else check it, then issue it again"))
	}
	return found
}
