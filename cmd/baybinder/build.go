package main

import (
	"os"
	"path/filepath"

	"baybinder/generator"
	"baybinder/generator/base/finding"
)

type buildCommand struct {
	siteFlag
	freshFlag
	Preview  bool   `help:"Publish drafts too, marked as drafts."`
	Readings string `placeholder:"FOLDER" help:"Write the pages that name people too, into a folder of their own: who must read what, who may do which job, exercises."`
}

// Help is the longer text of build --help.
func (*buildCommand) Help() string {
	return "Where what is issued has an error, nothing is published and the last good site stays. Drafts never stop a build. " +
		"It ends with 0 where there is no error, with 1 where there is one, and with 2 where it could not run."
}

// Run checks the manual and publishes its site.
func (c *buildCommand) Run(g *globals, d *output) error {
	o := g.options()
	o.To, o.Preview, o.Readings, o.Waiting = c.To, c.Preview, c.Readings, d.waitsFor
	o.Progress, o.Kept = d.bar(d.inShop("pages")), c.kept()
	d.progress("Reading %s …", g.Manual)
	r, err := generator.Build(o)
	if err != nil {
		return err
	}
	d.speaks(&r.Verdict)
	if err := d.findings(&r.Verdict, false); err != nil {
		return err
	}
	d.notIssued(&r.Verdict)
	for _, name := range r.Kept {
		d.remark("%s was not written by baybinder and stays.", filepath.Join(c.To, filepath.FromSlash(name)))
	}
	for _, name := range r.KeptReadings {
		d.remark("%s was not written by baybinder and stays.", filepath.Join(c.Readings, filepath.FromSlash(name)))
	}
	if r.Stopped() {
		d.stopped(r.Errors(), c.To)
		return errFound
	}
	if r.Unchanged {
		d.progress("Nothing has changed since the last build: all stays as it is.")
	}
	d.progress("%s in %s. Show them with baybinder browse, or open %s.", finding.Count(r.Pages, "%d page", "%d pages"), c.To, filepath.Join(c.To, "index.html"))
	if r.Errors() > 0 {
		d.remark("%s in what is recorded of people and jobs: the site was published all the same.", finding.Count(r.Errors(), "%d error", "%d errors"))
	}
	if c.Readings != "" {
		d.progress("%s in %s. They name people: open %s, and do not publish them.", finding.Count(r.ReadingsPages, "%d page", "%d pages"), c.Readings, filepath.Join(c.Readings, "index.html"))
	}
	return verdict(&r.Verdict)
}

// stopped says that nothing was published, and that an older site stands, where
// there is one.
func (d *output) stopped(errors int, site string) {
	found := finding.Count(errors, "%d error", "%d errors")
	if _, err := os.Stat(filepath.Join(site, "index.html")); err != nil {
		d.remark("Nothing was published: %s.", found)
		return
	}
	d.remark("Nothing was published: %s. The site in %s is as it was.", found, site)
}
