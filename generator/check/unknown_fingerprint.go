package check

import (
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/prove/fingerprint"
)

var unknownFingerprint = finding.Rule{
	Code:  "unknown-fingerprint",
	Level: finding.Advice,
	Ours:  true,
	Title: "A record of words that were never issued",
	Why:   "It says that someone read something, and nobody can say what: another manual's page, a draft, or a row that was edited by hand. It counts as stale.",
	Mend:  "Find out what was read. If it was this procedure, have it read again and recorded: baybinder readings record PERSON PROCEDURE read.",
}

// runUnknownFingerprint looks at what was read once there were revisions: of
// the time before, what stood is not known.
func runUnknownFingerprint(c *Context) []finding.Finding {
	book := fingerprint.NewCache()
	all := revisionsOf(c.Manual)
	var found []finding.Finding
	for i := range c.Manual.Record {
		r := &c.Manual.Record[i]
		p := r.Procedure.To
		list := all[p]
		if r.Act != "read" || r.Bad || len(list) == 0 || r.Date.Before(list[0].Date) || uncertain(p) || !fingerprint.Known(r.Fingerprint) {
			continue
		}
		if !slices.ContainsFunc(list, func(rev *model.Revision) bool { return fingerprint.Has(rev, r.Fingerprint) }) && r.Fingerprint != book.Like(p, r.Fingerprint) {
			found = append(found, unknownFingerprint.At(r.FingerprintAt, "no revision of %s has the fingerprint %s", p.Label(), r.Fingerprint).
				WithMend("find out what was read on %s; it may be of another manual, or of a draft", r.Date))
		}
	}
	return found
}
