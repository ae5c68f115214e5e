package main

import (
	"path/filepath"
	"strconv"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/command/begin"
	"baybinder/generator/command/schema"
)

type beginCommand struct {
	New       beginManual    `cmd:"" name:"manual" default:"withargs" help:"Write a small manual of invented entries, to change into yours."`
	Machine   beginMachine   `cmd:"" help:"Write a new machine's file, with a pattern of every section, one entry a line."`
	Procedure beginProcedure `cmd:"" help:"Write a new procedure, as a draft: with every section and a worked step, or what comes off to reach a part."`
}

type beginManual struct{}

// Run writes a new manual.
func (*beginManual) Run(g *globals, d *output) error {
	files, err := begin.Manual(g.Manual)
	if err != nil {
		return err
	}
	for _, name := range files {
		if !strings.HasPrefix(name, schema.Folder+"/") {
			d.inform("wrote %s", filepath.Join(g.Manual, filepath.FromSlash(name)))
		}
	}
	d.inform("wrote %s, by which an editor can help (baybinder schema --help)", filepath.Join(g.Manual, schema.Folder))
	d.inform("Everything in it is invented. Change it into your own, then: baybinder build")
	return nil
}

type beginMachine struct {
	ID   string `arg:"" help:"Its id, which is the name of its file: air-press."`
	Name string `placeholder:"TEXT" help:"What people call it (default: the id in words)."`
}

// Run writes a new machine.
func (c *beginMachine) Run(g *globals, d *output) error {
	name, err := begin.Machine(g.Manual, c.ID, c.Name)
	if err != nil {
		return err
	}
	d.inform("wrote %s", filepath.Join(g.Manual, filepath.FromSlash(name)))
	d.inform("Write your machine over its patterns, then: baybinder begin procedure ID --for %s", c.ID)
	return nil
}

type beginProcedure struct {
	ID    string `arg:"" help:"Its id, which is the name of its file: renew-ram-seal."`
	Title string `placeholder:"TEXT" help:"Its title (default: the id in words)."`
	For   string `placeholder:"MACHINE" help:"The machine it is for, a file of machines/ (default: any machine)."`
	Part  string `name:"to" placeholder:"PART" xor:"way" help:"The part of the machine to reach: what comes off for it is worked out."`
	From  string `placeholder:"FILE" xor:"way" type:"path" help:"Notes, or an old procedure as plain text or Markdown: what is certain in it becomes links."`
	Topic string `placeholder:"FOLDER" help:"The folder below procedures/ (default: none)."`
}

// Help is the longer text of begin procedure --help.
func (*beginProcedure) Help() string {
	return "With --to it works out what must come off to reach the part and which energies must be dead, " +
		"and writes make-safe, strip, a place for the work, refit and return. What the registers lack for it stands in the file and is told.\n\n" +
		"With --from it reads notes as they were jotted down, or an old procedure pasted from a document: phases, steps, tools, parts and acts that " +
		"the registers and the machine's file have names for. Only certain words become links, every other word stays as it stands; " +
		"what could be meant is told, line by line, and a typed signal word becomes a hazard to choose."
}

// Run writes a new procedure.
func (c *beginProcedure) Run(g *globals, d *output) error {
	o := g.options()
	n := begin.New{Manual: o.Manual, ID: c.ID, Title: c.Title, Machine: c.For, Topic: c.Topic, Part: c.Part, Today: o.Today}
	if c.Part != "" {
		return d.reach(n)
	}
	if c.From != "" {
		return d.noted(n, c.From)
	}
	name, err := begin.Procedure(n)
	if err != nil {
		return err
	}
	d.inform("wrote %s", filepath.Join(g.Manual, filepath.FromSlash(name)))
	d.inform("It is a draft: baybinder build --preview shows it. Delete its line status: when it is right.")
	return nil
}

// reach writes a procedure that reaches a part, and tells what comes off.
func (d *output) reach(n begin.New) error {
	r, err := begin.Reach(n)
	if err != nil {
		return err
	}
	d.inform("wrote %s", filepath.Join(n.Manual, filepath.FromSlash(r.Path)))
	if off := labels(r.Off); len(off) > 0 {
		d.inform("off, in this order: %s", strings.Join(off, "; "))
	} else {
		d.inform("Nothing has to come off.")
	}
	for _, what := range r.Missing {
		d.inform("missing: %s", what)
	}
	d.inform("It is a draft: write the work, walk it through at the machine, then delete its line status:.")
	return nil
}

// noted writes a procedure from notes, and tells what became of them.
func (d *output) noted(n begin.New, file string) error {
	r, err := begin.Notes(n, file)
	if err != nil {
		return err
	}
	d.inform("wrote %s: %s, %s and %s recognised", filepath.Join(n.Manual, filepath.FromSlash(r.Path)), finding.Count(r.Steps, "%d step", "%d steps"), finding.Count(r.Acts, "%d act", "%d acts"), finding.Count(r.Things, "%d other thing", "%d other things"))
	for _, l := range r.Words {
		d.inform("words only, line %s: %s", strconv.Itoa(l.N), l.Says)
	}
	for _, l := range r.Offered {
		d.inform("for you to decide, line %s: %s", strconv.Itoa(l.N), l.Says)
	}
	d.inform("It is a draft: read it against the notes, run baybinder check, then delete its line status:.")
	return nil
}
