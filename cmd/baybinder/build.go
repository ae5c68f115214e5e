package main

import (
	"os"
	"path/filepath"

	"baybinder/generator"
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
	o.Progress, o.Kept = d.bar("pages"), c.kept()
	d.progress("Reading %s …", g.Manual)
	r, err := generator.Build(o)
	if err != nil {
		return err
	}
	if err := d.findings(&r.Verdict, false); err != nil {
		return err
	}
	d.notIssued(&r.Verdict)
	for _, name := range r.Kept {
		d.note("%s was not written by baybinder and stays.", filepath.Join(c.To, filepath.FromSlash(name)))
	}
	for _, name := range r.KeptReadings {
		d.note("%s was not written by baybinder and stays.", filepath.Join(c.Readings, filepath.FromSlash(name)))
	}
	if r.Stopped() {
		d.note("Nothing was published: %s.%s", count(r.Errors(), "error"), c.stands())
		return errFound
	}
	if r.Unchanged {
		d.progress("Nothing has changed since the last build: all stays as it is.")
	}
	d.progress("%s in %s. Show them with baybinder browse, or open %s.", count(r.Pages, "page"), c.To, filepath.Join(c.To, "index.html"))
	if r.Errors() > 0 {
		d.note("%s in what is recorded of people and jobs: the site was published all the same.", count(r.Errors(), "error"))
	}
	if c.Readings != "" {
		d.progress("%s in %s. They name people: open %s, and do not publish them.", count(r.ReadingsPages, "page"), c.Readings, filepath.Join(c.Readings, "index.html"))
	}
	return verdict(&r.Verdict)
}

// stands says that the last good site stays, where there is one.
func (c *buildCommand) stands() string {
	if _, err := os.Stat(filepath.Join(c.To, "index.html")); err != nil {
		return ""
	}
	return " The site in " + c.To + " is as it was."
}
