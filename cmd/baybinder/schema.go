package main

import (
	"path/filepath"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/nearest"
	"baybinder/generator/command/schema"
)

type schemaCommand struct {
	What  string `arg:"" optional:"" help:"The kind of file: procedure, shop, tools, hazards, holds, supplies, roles, machine, plan; tools-words and so on for the texts in another language."`
	Write bool   `help:"Write all of them into the manual's folder .schema, in place of those that are there."`
}

// Help is the longer text of schema --help.
func (*schemaCommand) Help() string {
	return "It prints a JSON Schema (2020-12) of a kind of file; without a name it lists them. " +
		"An editor that knows JSON Schema helps with them while you write: it offers field names and words, and marks what cannot be read. " +
		"Many editors look for the comment in the first line of a YAML file that the list shows. " +
		"The front matter of a procedure is described too, but editors do not look for a comment there: baybinder check and watch see it. " +
		"A schema sees one file at a time: that names lead somewhere, and that a job is in order, is what check looks at."
}

// Run prints, lists or writes the schemas.
func (c *schemaCommand) Run(g *globals, d *output) error {
	switch {
	case c.Write && c.What != "":
		return finding.Refuse("--write writes all of them: leave out %s", c.What)
	case c.Write:
		return d.writeSchemas(g.Manual)
	case c.What == "":
		d.listSchemas()
		return nil
	}
	file, known := schema.Named(c.What)
	if known {
		_, err := d.out.Write(file.Schema().JSON())
		return err
	}
	var names []string
	for _, f := range schema.Files {
		names = append(names, f.Name)
	}
	if near := nearest.Of(c.What, names); near != "" {
		return finding.Refuse("there is no schema %s: did you mean %s?", c.What, near)
	}
	return finding.Refuse("there is no schema %s: baybinder schema lists them", c.What)
}

func (d *output) listSchemas() {
	for _, f := range schema.Files {
		d.say("  %-15s %s", f.Name, told(d.tongue(), finding.Say(f.Says)))
		if f.Match != "" {
			d.say("  %-15s     %s", "", d.inShop("first line: %s", f.Setting(f.Match)))
		}
	}
	d.inform("\nbaybinder schema NAME prints one; baybinder schema --write writes all into the manual's folder %s.", schema.Folder)
}

func (d *output) writeSchemas(folder string) error {
	files, err := schema.Write(folder)
	for _, name := range files {
		d.inform("wrote %s", filepath.Join(folder, filepath.FromSlash(name)))
	}
	return err
}
