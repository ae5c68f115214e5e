package main

import (
	"baybinder/generator"
	"baybinder/generator/base/finding"
	"baybinder/generator/check"
)

// findings tells of what was found, for people.
func (d *output) findings(r *generator.Verdict, all bool) error {
	return finding.Text(d.out, r.Findings, finding.TextOptions{All: all, First: check.Causes(), Tongue: r.Tongue()})
}

// sarif tells of what was found, for programs.
func (d *output) sarif(r *generator.Verdict) error {
	return finding.SARIF(d.out, r.Findings, check.Catalogue(), r.Tongue())
}

// verdict is how a check ends.
func verdict(r *generator.Verdict) error {
	if r.Errors() > 0 {
		return errFound
	}
	return nil
}
