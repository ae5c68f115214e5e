package check

import (
	"strings"

	"baybinder/generator/finding"
	"baybinder/generator/fingerprint"
	"baybinder/generator/manual"
)

var changedSinceIssue = finding.Rule{
	Code:  "changed-since-issue",
	Title: "A procedure that is another than its last issued revision",
	Why:   "Readers trust that what is on the page was checked and that they are told of changes. What was never issued was neither.",
	Mend:  "Have the change checked, then issue it: baybinder issue PROCEDURE --reason … Until then, build --preview shows it, marked as a preview.",
}

func runChangedSinceIssue(c *Context) []finding.Finding {
	var found []finding.Finding
	book := fingerprint.NewBook()
	for p, r := range lastRevisions(c.Manual) {
		if unread(p) || !p.Issued() || !book.Unissued(p, r) {
			continue
		}
		f := changedSinceIssue.At(p.At, "this is not revision %s as it was issued: %s", r.Number, whatChanged(book, p, r)).
			WithMend("baybinder issue %s --reason \"why\"", p.ID).See(r.At, "the revision was issued here")
		if c.Preview {
			f.Level = finding.Advice
		}
		found = append(found, f)
	}
	return found
}

// shownChanges is how many changes a finding tells of.
const shownChanges = 2

func whatChanged(book *fingerprint.Book, p *manual.Procedure, r *manual.Revision) string {
	was, kept := fingerprint.Kept(r)
	if !kept {
		return "its fingerprint is " + book.Of(p) + ", and the words of the revision are not in revisions/ as they were"
	}
	changes := fingerprint.Changes(was.Own(), book.Form(p).Own())
	if len(changes) > shownChanges {
		changes = append(changes[:shownChanges], "and more")
	}
	return strings.TrimRight(strings.Join(changes, "; "), ".")
}

// lastRevisions is the last issued revision of each procedure that has one.
func lastRevisions(m *manual.Manual) map[*manual.Procedure]*manual.Revision {
	last := map[*manual.Procedure]*manual.Revision{}
	for i := range m.Revisions {
		if to := m.Revisions[i].Procedure.To; to != nil {
			last[to] = &m.Revisions[i]
		}
	}
	return last
}
