package check

import (
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/prove/fingerprint"
)

var unknownFingerprint = finding.Rule{
	Code:  "unknown-fingerprint",
	Level: finding.Advice,
	Title: "A record of words that were never issued",
	Why:   "It says that someone read something, and nobody can say what: another manual's page, a draft, or a row that was edited by hand. It counts as stale.",
	Mend:  "Find out what was read. If it was this procedure, have it read again and recorded: baybinder readings record PERSON PROCEDURE read.",
}

// runUnknownFingerprint looks at what was read once there were revisions: of
// the time before, what stood is not known.
func runUnknownFingerprint(c *Context) []finding.Finding {
	book := fingerprint.NewBook()
	first, known := issuedPrints(c.Manual)
	var found []finding.Finding
	for i := range c.Manual.Record {
		r := &c.Manual.Record[i]
		p := r.Procedure.To
		since, issued := first[p]
		if r.Act != "read" || !issued || r.Date.Before(since) || uncertain(p) || !strings.HasPrefix(r.Fingerprint, fingerprint.Version) {
			continue
		}
		if !known[print{p, r.Fingerprint}] && r.Fingerprint != book.Of(p) {
			found = append(found, unknownFingerprint.At(r.FingerprintAt, "no revision of %s has the fingerprint %s", p.Label(), r.Fingerprint).
				WithMend("find out what was read on %s; it may be of another manual, or of a draft", r.Date))
		}
	}
	return found
}

type print struct {
	procedure *model.Procedure
	text      string
}

// issuedPrints are the day of each procedure's first revision, and the
// fingerprints of all.
func issuedPrints(m *model.Manual) (first map[*model.Procedure]model.Date, known map[print]bool) {
	first, known = map[*model.Procedure]model.Date{}, map[print]bool{}
	for i := range m.Revisions {
		r := &m.Revisions[i]
		if _, has := first[r.Procedure.To]; !has && r.Procedure.To != nil {
			first[r.Procedure.To] = r.Date // the list is by date
		}
		known[print{r.Procedure.To, r.Fingerprint}] = true
	}
	return first, known
}
