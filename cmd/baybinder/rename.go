package main

import (
	"path/filepath"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/command/rename"
)

type renameCommand struct {
	Kind    string `arg:"" help:"What it is: procedure, machine, tool, hazard, hold, supply, role; of a machine: part, fastener, energy, point, fluid, setting, option, order, group."`
	Old     string `arg:"" help:"The id that it has."`
	New     string `arg:"" help:"The id that it gets."`
	Machine string `placeholder:"MACHINE" help:"The machine whose part, energy … it is (default: the one that has it)."`
	Show    bool   `help:"Say what would be done, and write nothing."`
}

// Help is the longer text of rename --help.
func (*renameCommand) Help() string {
	return "It changes the id wherever it is named: in front matter, registers, machine files, plans, translations, links and people.csv; " +
		"of a procedure or a machine also the names of its files and the links to them. Nothing else in a file is touched. " +
		"A procedure and a role keep their old id in was:, so that records, revisions and roles.csv, whose rows are never changed, still lead to them. " +
		"Before anything is written the changed manual is checked: check must find what it found before. " +
		"All files are written beside their places first and then put there, each whole; where that fails, all are put back. " +
		"If it is killed just then, some files have the new id and some the old: check says which, and your version control has them as they were."
}

// Run renames.
func (c *renameCommand) Run(g *globals, d *output) error {
	o := g.options()
	r, err := rename.Run(rename.Options{
		Manual: o.Manual, Today: o.Today, Kind: c.Kind, Old: c.Old, New: c.New, Machine: c.Machine, Show: c.Show,
	})
	if err != nil {
		return err
	}
	for _, f := range r.Files {
		d.renamed(g.Manual, f)
	}
	what := finding.Say("%s %s", c.Kind, c.Old)
	if r.Machine != nil {
		what = finding.Say("%s %s of the %s", c.Kind, c.Old, r.Machine.Label())
	}
	places, files := finding.Count(r.Places, "%d place", "%d places"), finding.Count(len(r.Files), "%d file", "%d files")
	if c.Show {
		d.inform("The %s would be %s: %s in %s.", what, c.New, places, files)
	} else {
		d.inform("The %s is now %s: %s in %s.", what, c.New, places, files)
	}
	if len(r.Reissue) > 0 {
		var ids []string
		for _, p := range r.Reissue {
			ids = append(ids, p.ID)
		}
		d.inform("A fingerprint holds ids, so these differ from their last revision now; issue them anew: %s", strings.Join(ids, ", "))
	}
	return nil
}

// renamed tells what was done in a file.
func (d *output) renamed(folder string, f rename.File) {
	name := filepath.Join(folder, filepath.FromSlash(f.Path))
	if f.To != "" {
		d.inform("%s: now %s", name, filepath.Base(filepath.FromSlash(f.To)))
	}
	last := 0
	for _, at := range f.Places {
		line, _ := at.LineCol()
		if line != last {
			d.say("%s:%d: %s", name, line, strings.TrimSpace(at.File.Line(line)))
		}
		last = line
	}
	if f.Was.File != nil {
		d.inform("%s: its old id is kept in was:", name)
	}
}
