// Package check holds the catalogue of everything that is looked for, and the rules that are looked for once a manual is bound.
//
// A rule is one file: its words, then a short run. Its cases are in cases/:
// manuals with a fault and where it is told, and the same manuals mended. A
// rule reads the model and nothing else, and knows no other rule.
package check

import (
	"cmp"
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/parallel"
	"baybinder/generator/check/numbers"
	"baybinder/generator/derive/training"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/decode"
	"baybinder/generator/read/syntax"
)

// Rule is one rule over a bound manual. It has one of the three functions. Two
// rules that say the same thing of different places share their words:
//
//	Rule: &decode.MissingField
type Rule struct {
	*finding.Rule
	Translations bool                                                   // translations are looked at too
	Manual       func(c *Context) []finding.Finding                     // over the whole manual
	Procedure    func(c *Context, p *model.Procedure) []finding.Finding // over each procedure, some at once
	Text         func(w *writing, text []sentence) []finding.Finding    // over each text of a step that tells what to do
}

// Context is what a rule may know besides the procedure.
type Context struct {
	Manual  *model.Manual
	Today   model.Date
	Preview bool // the site is marked as a preview: what is not issued may stand in it

	trained *training.Hall
}

// hall is how people stand today, worked out once for the rules over the whole
// manual, which are looked for one after another.
func (c *Context) hall() *training.Hall {
	if c.trained == nil {
		c.trained = training.NewHall(c.Manual, c.Today)
	}
	return c.trained
}

// rules are the package's own, in families.
var rules = slices.Concat(formRules, writingRules, fieldRules, listRules, hazardRules, callRules, recordRules, languageRules, datedRules)

// Catalogue is everything that is looked for, by code.
func Catalogue() []*finding.Rule {
	all := slices.Concat(syntax.Rules(), decode.Rules(), bind.Rules(), walk.Rules(), numbers.Rules())
	for _, r := range rules {
		if !slices.Contains(all, r.Rule) {
			all = append(all, r.Rule)
		}
	}
	slices.SortStableFunc(all, func(a, b *finding.Rule) int { return cmp.Compare(a.Code, b.Code) })
	return all
}

// Causes are the rules from whose findings others follow: what cannot be read
// or names nothing is missing wherever it is needed.
func Causes() []*finding.Rule {
	return slices.Concat(syntax.Rules(), []*finding.Rule{&notAStep}, decode.Rules(), bind.Rules())
}

// Run looks for everything in a bound manual. The findings are in no order.
func Run(c *Context) []finding.Finding {
	return slices.Concat(Whole(c), Procedures(c))
}

// Whole looks for what takes the whole manual to see, or stands in no
// procedure.
func Whole(c *Context) []finding.Finding {
	list := slices.Concat(numbers.Registers(c.Manual), numbers.Calibration(c.Manual, c.Today))
	for _, r := range rules {
		if r.Manual != nil {
			list = append(list, r.Manual(c)...)
		}
	}
	return list
}

// Procedures looks through every procedure and translation.
func Procedures(c *Context) []finding.Finding {
	procedures := slices.Concat(c.Manual.Procedures, c.Manual.Translated)
	found := make([][]finding.Finding, len(procedures))
	parallel.Each(len(procedures), func(i int) { found[i] = Procedure(c, procedures[i]) })
	return slices.Concat(found...)
}

// Procedure looks through one procedure or translation.
func Procedure(c *Context, p *model.Procedure) []finding.Finding {
	list := numbers.Procedure(c.Manual, p)
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
