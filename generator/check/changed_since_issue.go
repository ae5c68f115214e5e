package check

import (
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/language"
	"baybinder/generator/language/shape"
	"baybinder/generator/model"
	"baybinder/generator/prove/fingerprint"
)

var ChangedSinceIssue = finding.Rule{
	Code:  "changed-since-issue",
	Title: "A procedure that is another than its last issued revision",
	Why:   "Readers trust that what is on the page was checked and that they are told of changes. What was never issued was neither.",
	Mend:  "Have the change checked, then issue it: baybinder issue PROCEDURE --reason … --readers … Until then, build --preview shows it, marked as a preview.",
}

func runChangedSinceIssue(c *Context, list []*model.Procedure) [][]finding.Finding {
	found := make([][]finding.Finding, len(list))
	book := fingerprint.NewCache()
	all := revisionsOf(c.Manual)
	for i, p := range list {
		issued := all[p]
		if len(issued) == 0 || uncertain(p) || !p.Issued() {
			continue
		}
		r := issued[len(issued)-1]
		what := finding.Words{}
		switch {
		case r.Readers == "retired":
			what = finding.Say("it was retired")
		case book.Unissued(p, r):
			what = whatChanged(book, p, r)
		case r.Words != "" && r.Words != fingerprint.Words(p, c.Manual.Sums):
			what = finding.Say("words or a picture of it are others, though nothing that a reader acts on")
		default:
			found[i] = changedBelow(c, all, book, p, r)
			continue
		}
		f := ChangedSinceIssue.At(p.At, "this is not revision %s as it was issued: %s", r.Number, what).
			WithMend("baybinder issue %s --reason \"why\" --readers reread", p.ID).See(r.At, "the revision was issued here")
		if c.Preview {
			f.Level = finding.Advice
		}
		found[i] = []finding.Finding{f}
	}
	return found
}

// runTranslationChanged looks at the translations that were issued; one without a
// row is not judged.
func runTranslationChanged(c *Context) []finding.Finding {
	var found []finding.Finding
	book := fingerprint.NewCache()
	for _, text := range c.Manual.Translated {
		r := fingerprint.LastRendition(c.Manual, text)
		if r == nil || uncertain(text) || text.Original == nil || !text.Original.Issued() {
			continue
		}
		what := finding.Words{}
		switch {
		case book.Unissued(text, r):
			what = whatChanged(book, text, r)
		case r.Words != "" && r.Words != fingerprint.Words(text, c.Manual.Sums):
			what = finding.Say("words or a picture of it are others, though nothing that a reader acts on")
		default:
			continue
		}
		f := ChangedSinceIssue.At(text.At, "this translation is not revision %s of it as it was issued: %s", r.Number, what).
			WithMend("baybinder issue %s --language %s --reason \"why\" --readers tell", text.ID, text.Language).See(r.At, "the revision was issued here")
		if c.Preview {
			f.Level = finding.Advice
		}
		found = append(found, f)
	}
	return found
}

// changedBelow advises where what a procedure performs was issued anew since the
// procedure was, and its readers were to know: whoever walked the whole job
// through walked another. Somebody who was seen to work by it since is enough,
// where nothing of its own is to be changed.
func changedBelow(c *Context, all map[*model.Procedure][]*model.Revision, book *fingerprint.Cache, p *model.Procedure, r *model.Revision) []finding.Finding {
	was, kept := fingerprint.Kept(r)
	if !kept {
		return nil
	}
	var found []finding.Finding
	told := map[*model.Procedure]bool{}
	for _, link := range p.Calls {
		callee, is := link.To.(*model.Procedure)
		if !is || told[callee] {
			continue
		}
		told[callee] = true
		list := all[callee]
		news := newsOf(list, was.Callee(callee))
		if news == nil || uncertain(callee) || book.Unissued(callee, list[len(list)-1]) {
			continue
		}
		if seen := c.staff().Inspected()[p]; seen != nil && !seen.Date.Before(news.Date) {
			continue
		}
		f := ChangedSinceIssue.At(link.At, "%s was issued anew (revision %s: %s) since this was, in revision %s", callee.Label(), news.Number, news.Reason, r.Number).
			WithMend("walk this through as it is now; where nothing of it is to be changed: baybinder readings record WHO %s inspected --by INSPECTOR --note \"what was found\"; else change it and issue it", p.ID).See(news.At, "the revision was issued here")
		f.Level = finding.Advice
		found = append(found, f)
	}
	return found
}

// newsOf is the last revision after the one of a fingerprint of which readers
// were to know; nil where there is none, or no revision has the fingerprint.
func newsOf(list []*model.Revision, print string) *model.Revision {
	var news *model.Revision
	known := false
	for _, r := range list {
		switch {
		case fingerprint.Has(r, print):
			known, news = true, nil
		case known && r.Readers != "none":
			news = r
		}
	}
	return news
}

// shownChanges is how many changes a finding tells of.
const shownChanges = 2

func whatChanged(book *fingerprint.Cache, p *model.Procedure, r *model.Revision) finding.Words {
	was, kept := fingerprint.Kept(r)
	if !kept {
		return finding.Say("its fingerprint is %s, and the words of the revision are not in revisions/ as they were", book.Of(p))
	}
	now := book.Beside(p, was).Own()
	return firstOf(func(in *shape.Language) []string { return fingerprint.Changes(was.Own(), now, &in.Readings.Changes) })
}

// firstOf are the first of the changes, and whether there are more.
func firstOf(changes func(in *shape.Language) []string) finding.Words {
	first := finding.Spoken(func(lang string) string {
		all := changes(language.Of(lang))
		return strings.TrimRight(strings.Join(all[:min(len(all), shownChanges)], "; "), ".")
	})
	if len(changes(language.Default())) > shownChanges {
		return finding.Say("%s; and more", first)
	}
	return finding.Say("%s", first)
}

// revisionsOf are the revisions of each procedure that has one, by date.
func revisionsOf(m *model.Manual) map[*model.Procedure][]*model.Revision {
	all := map[*model.Procedure][]*model.Revision{}
	for i := range m.Revisions {
		if to := m.Revisions[i].Procedure.To; to != nil {
			all[to] = append(all[to], &m.Revisions[i])
		}
	}
	return all
}

// lastRevisions is the last issued revision of each procedure that has one.
func lastRevisions(m *model.Manual) map[*model.Procedure]*model.Revision {
	last := map[*model.Procedure]*model.Revision{}
	for i := range m.Revisions {
		if to := m.Revisions[i].Procedure.To; to != nil {
			last[to] = &m.Revisions[i]
		}
	}
	return last
}
