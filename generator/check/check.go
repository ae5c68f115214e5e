// Package check holds the catalogue of everything that is looked for, and the rules that are looked for once a manual is bound.
//
// A rule is one file: its words, then a short run. Its cases are in cases/:
// manuals with a fault and where it is told, and the same manuals mended. A
// rule reads the model and nothing else, and knows no other rule.
//
// # Decided where the format is silent
//
// Supplies: Opening a line is taking it off; `dry:` brings no hazard. A `reverse:` shows no box of
// a supply: it is shown at the steps that fill. `wrong-supply` stands at the `fill:`.
//
// The first hour: `not-a-step` (ours, advice, because the format lets links outside steps stand)
// tells an act, a hold, or a condition outside the numbered steps, once a block. On the screen of
// `check` errors come before advice, and of each the causes first (`check.Causes`: syntax, fields,
// names); `--all` keeps the order of files. A number whose comma ended it inside brackets is one
// `quantity` finding, and its field is not judged. A line of a paragraph that begins with `1.` or `##`
// without a plain space is `heading`. A link with a space between its brackets is `syntax` where
// its address is `kind:id`. A tool that a step names and the list lacks counts as listed for the
// rules about tools; it is `not-listed` all the same. Placing the tool that holds a load, and
// `release:` of that load, are one action. `begin` writes in the shop's language where it knows it
// (`begin/speech.go`).
//
// Writing advice: `too-long`, `two-actions`, `vague` and `no-time` look at the steps' own
// paragraphs and lists, and at each note for the refit by itself; a reason (`why:`) tells nobody
// to do anything and is left out. The limits without an entry in `shop.yaml` are ASD-STE100's,
// rules 5.1 (20 words in a sentence) and 5.2 (one instruction, unless actions are simultaneous). A
// hyphenated term, a number with its unit, a range, a text in quotes or in code is one word; text
// in brackets is not counted; a colon, a semicolon and a dash end a sentence: where the rules of
// counting are not sure, the fewer words are counted. An action is a typed act, or an imperative
// at the start of a sentence, behind its condition, or behind *and* or *then* with an object after
// it. One act on several things is one action; so is what a colon explains, undoing the fasteners
// of what is taken off, and the measurement of a proof. English and Spanish; in other languages
// only typed acts and words are counted. The list of vague words is ours.
//
// Accepted advice: `accepts: [{ code: vague, at: 2.3, because: The maker's sheet says so. }]` in
// the front matter takes out that advice at that step (its number or its `step:` name). Without
// `because` it is `missing-field` and accepts nothing; where there is nothing to accept it is
// `not-used`. Errors cannot be accepted.
//
// Findings of our own: `fault-code` goes beyond the format's table: a code behind words that
// announce one ("fault code P5123") that no reader can show. A rule about numbers lives in
// `generator/trade/judge`, with its case in `check/cases`.
//
// `not-qualified` (ours, advice) marks a job by somebody who, on the day on which it was begun, was not
// there, had not read what had been issued of it by then, or, between all who did it, held none of a
// role that it needs; and a signature of somebody without the hold's role. Of a job with one who is not
// known no lacking role is said. A job that was begun before the shop kept rows that name the one
// before them, or revisions with a hash of their words is not judged; the audit of it shows the
// marks all the same.
//
// Languages: A procedure that nobody has translated is no finding; what is translated must be
// whole. `not-translated` is a phase or step that is missing, a step of five words or more left as
// in the original, or a hazard or hold on the page without its texts. `translation-differs`
// compares steps, typed links (order within a step is free), figures and list lengths. A
// translation takes the machine, posts and phase ids of its original. Beyond the format:
// `machines/<id>.<lang>.yaml` and `shop.<lang>.yaml`. A text without translation is printed in the
// shop's language and marked with `lang`. Indexes, registers and machine pages stay in the shop's
// language.
// As advice, at its entry, `not-translated` is told of what every page of that translation is
// sure to print: the shop's notice and emergency line (its title is a name), the roles, tools and
// supplies that the procedure lists, the gear of its hazards, the tools and roles of its holds, the
// machine's name, its options where a step asks for one, and the things that acts change. What only
// the derived refit prints (fasteners that hold a part, a setting's value) and what a called
// procedure fetches is marked on the page and not told. A text that is read is read by the rules of
// its own language; in one that the program does not speak nothing is looked for.
//
// Advice on writing of our own: `passive` tells only an order that does not say who acts ("must be
// tightened", "debe ser apretado": ASD-STE100 rule 3.6, from memory); what is only told ("the lid
// is closed") may be a state that is looked for, and is left alone, as are *can* and *may*.
// `unwritten` tells of the words that `begin` writes to be written over, in a procedure that is no
// draft.
package check

import (
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/parallel"
	"baybinder/generator/check/numbers"
	"baybinder/generator/derive/training"
	"baybinder/generator/model"
)

// Rule is one rule over a bound manual. It has one of the four functions. Two
// rules that say the same thing of different places share their words:
//
//	Rule: &decode.MissingField
type Rule struct {
	*finding.Rule
	Translations bool                                                          // translations are looked at too
	Entries      bool                                                          // of Manual: it looks at the machines' and the registers' entries, and how procedures meet them
	Manual       func(c *Context) []finding.Finding                            // over the whole manual
	Together     func(c *Context, list []*model.Procedure) [][]finding.Finding // over some procedures: what is found in each
	Procedure    func(c *Context, p *model.Procedure) []finding.Finding        // over each procedure, some at once
	Text         func(w *writing, text []sentence) []finding.Finding           // over each text of a step that tells what to do
}

// Context is what a rule may know besides the procedure.
type Context struct {
	Manual  *model.Manual
	Today   model.Date
	Preview bool // the site is marked as a preview: what is not issued may stand in it

	trained  *training.Standings
	followed numbers.Book
}

// staff is how people stand today, worked out once for the rules over the whole
// manual, which are looked for one after another.
func (c *Context) staff() *training.Standings {
	if c.trained == nil {
		c.trained = training.NewStandings(c.Manual, c.Today)
	}
	return c.trained
}

// rules are the package's own, in families.
var rules = slices.Concat(formRules, writingRules, fieldRules, listRules, hazardRules, callRules, recordRules, languageRules, datedRules)

// Run looks for everything in a bound manual. The findings are in no order.
func Run(c *Context) []finding.Finding {
	return slices.Concat(Whole(c), slices.Concat(Procedures(c, slices.Concat(c.Manual.Procedures, c.Manual.Translated))...))
}

// Whole looks for what takes the whole manual to see, or stands in no
// procedure.
func Whole(c *Context) []finding.Finding {
	list := numbers.Whole(c.Manual, c.Today)
	for _, r := range rules {
		if r.Manual != nil {
			list = append(list, r.Manual(c)...)
		}
	}
	return list
}

// Entries looks through the entries of registers and machines, and through how
// the procedures that are there meet them: what is found is among what Whole finds.
func Entries(c *Context) []finding.Finding {
	list := numbers.Whole(c.Manual, c.Today)
	for _, r := range rules {
		if r.Entries {
			list = append(list, r.Manual(c)...)
		}
	}
	return list
}

// Procedures looks through some procedures and translations: what is found in
// each.
func Procedures(c *Context, procedures []*model.Procedure) [][]finding.Finding {
	found := make([][]finding.Finding, len(procedures))
	parallel.Each(len(procedures), func(i int) { found[i] = Procedure(c, procedures[i]) })
	for _, r := range rules {
		if r.Together == nil {
			continue
		}
		for i, more := range r.Together(c, procedures) {
			found[i] = append(found[i], more...)
		}
	}
	return found
}

// Procedure looks through one procedure or translation.
func Procedure(c *Context, p *model.Procedure) []finding.Finding {
	list := numbers.Procedure(c.Manual, &c.followed, p)
	for _, r := range rules {
		if r.Procedure != nil && (r.Translations || p.Language == "") {
			list = append(list, r.Procedure(c, p)...)
		}
	}
	return append(list, runTexts(c, p)...)
}

// Soften takes out the advice that a writer accepted, and makes advice of what
// is found in drafts: they stop nobody's build.
func Soften(m *model.Manual, list []finding.Finding) []finding.Finding {
	drafts := map[string]bool{}
	for _, p := range slices.Concat(m.Procedures, m.Translated) {
		if p.Draft() {
			drafts[p.File.Path] = true
		}
		list = accept(p, list)
	}
	for i := range list {
		if drafts[list[i].At.Path()] {
			list[i].Level = finding.Advice
		}
	}
	return list
}
