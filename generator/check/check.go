// Package check holds the catalogue of everything that is looked for, and the rules that are looked for once a manual is bound.
package check

import (
	"slices"

	"baybinder/generator/bind"
	"baybinder/generator/decode"
	"baybinder/generator/finding"
	"baybinder/generator/manual"
	"baybinder/generator/parallel"
	"baybinder/generator/syntax"
)

// Rule is one rule over a bound manual. It has one of the two functions.
type Rule struct {
	finding.Rule
	Manual    func(c *Context) []finding.Finding                      // over the whole manual
	Procedure func(c *Context, p *manual.Procedure) []finding.Finding // over each procedure, some at once
}

// Context is what a rule may know besides the manual.
type Context struct {
	Manual *manual.Manual
	Today  manual.Date
}

// rules are the package's own, in families.
var rules = slices.Concat(formRules, listRules, callRules, wordRules)

// Catalogue is everything that is looked for, by code.
func Catalogue() []*finding.Rule {
	all := slices.Concat(syntax.Rules(), decode.Rules(), bind.Rules())
	for _, r := range rules {
		all = append(all, &r.Rule)
	}
	slices.SortFunc(all, func(a, b *finding.Rule) int {
		if a.Code < b.Code {
			return -1
		}
		return 1
	})
	return all
}

// Run looks for everything in a bound manual. The findings are in no order.
func Run(c *Context) []finding.Finding {
	var list []finding.Finding
	for _, r := range rules {
		if r.Manual != nil {
			list = append(list, r.Manual(c)...)
		}
	}
	procedures := slices.Concat(c.Manual.Procedures, c.Manual.Translated)
	found := make([][]finding.Finding, len(procedures))
	parallel.Each(len(procedures), func(i int) {
		for _, r := range rules {
			if r.Procedure != nil {
				found[i] = append(found[i], r.Procedure(c, procedures[i])...)
			}
		}
	})
	return append(list, slices.Concat(found...)...)
}

// Soften makes advice of what is found in drafts: they stop nobody's build.
func Soften(m *manual.Manual, list []finding.Finding) []finding.Finding {
	drafts := map[string]bool{}
	for _, p := range slices.Concat(m.Procedures, m.Translated) {
		if p.Draft() {
			drafts[p.File.Path] = true
		}
	}
	for i := range list {
		if drafts[list[i].At.Path()] {
			list[i].Level = finding.Advice
		}
	}
	return list
}
