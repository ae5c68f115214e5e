package main

import (
	"fmt"
	"path/filepath"

	"baybinder/generator/base/finding"
	"baybinder/generator/command/settle"
)

type settleCommand struct {
	Show bool `help:"Say what would be done, and write nothing."`
	Acts bool `help:"Also make links of the acts, tools and supplies that stand in words and are certain."`
}

// Help is the longer text of settle --help.
func (*settleCommand) Help() string {
	return "It adds to the lists of each front matter (hazards, tools, supplies, holds, and needs) what the steps use and the list lacks, " +
		"writes what a procedure that only switches off leaves, and what its counterpart expects, and the names of things into links without words. It only puts in: nothing else in a file is touched. " +
		"What needs judgement is left and told: a line that no step uses, an amount.\n\n" +
		"With --acts it also makes links of words that certainly say an act on a thing of the machine, or name a tool or a supply, " +
		"as long as the check finds no more errors for it. What could be meant is told."
}

// Run mends what needs no judgement.
func (c *settleCommand) Run(g *globals, d *output) error {
	o := g.options()
	changes, err := settle.Run(settle.Options{Manual: o.Manual, Today: o.Today, Show: c.Show, Acts: c.Acts})
	mended := 0
	for _, change := range changes {
		d.change(g.Manual, change)
		mended += min(1, len(change.Did))
	}
	switch {
	case err != nil:
		return err
	case c.Show:
		d.progress("%s would be mended.", finding.Count(mended, "%d file", "%d files"))
	default:
		d.progress("%s mended.", finding.Count(mended, "%d file", "%d files"))
	}
	return nil
}

// change tells what was done in a file, and what was left there.
func (d *output) change(folder string, c settle.Change) {
	d.say("%s", filepath.Join(folder, filepath.FromSlash(c.Path)))
	for _, did := range c.Did {
		d.inform("  %s: %s", place(did), did.Says)
	}
	for _, left := range c.Left {
		d.inform("  %s: left to you: %s", place(left), left.Says)
	}
}

func place(n settle.Note) string {
	line, col := n.At.LineCol()
	return fmt.Sprintf("%d:%d", line, col)
}
