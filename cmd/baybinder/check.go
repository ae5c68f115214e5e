package main

import (
	"baybinder/generator"
	"baybinder/generator/base/finding"
)

type checkCommand struct {
	freshFlag
	Report string `enum:"text,sarif" default:"text" placeholder:"text|sarif" help:"How to say it: text, or sarif (SARIF 2.1.0, for editors and reviews)."`
	All    bool   `help:"Say every finding; without it, a text shows the first few of each kind."`
}

// Help is the longer text of check --help.
func (*checkCommand) Help() string {
	return "Each finding names its code in brackets; baybinder explain CODE says more. " +
		"It ends with 0 where there is no error, with 1 where there is one, and with 2 where it could not run."
}

// Run tells of what is wrong in the manual.
func (c *checkCommand) Run(g *globals, d *output) error {
	o := g.options()
	o.Kept = c.kept()
	r, err := generator.Judge(o)
	if err != nil {
		return err
	}
	if c.Report == "sarif" {
		err = d.sarif(r)
	} else {
		err = d.findings(r, c.All)
	}
	if err != nil {
		return err
	}
	if c.Report == "text" {
		d.notIssued(r)
	}
	d.speaks(r)
	d.progress("%s checked.", finding.Count(r.Procedures, "%d procedure", "%d procedures"))
	return verdict(r)
}
