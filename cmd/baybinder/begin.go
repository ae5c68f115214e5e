package main

import (
	"path/filepath"

	"baybinder/generator/begin"
)

type beginCommand struct {
	New       beginManual    `cmd:"" name:"manual" default:"withargs" help:"Write a small manual of invented entries, to change into yours."`
	Procedure beginProcedure `cmd:"" help:"Write a new procedure, as a draft, with every section and a worked step."`
}

type beginManual struct{}

// Run writes a new manual.
func (*beginManual) Run(g *globals, d *desk) error {
	files, err := begin.Manual(g.Manual)
	if err != nil {
		return err
	}
	for _, name := range files {
		d.say("wrote %s", filepath.Join(g.Manual, filepath.FromSlash(name)))
	}
	d.say("Everything in it is invented. Change it into your own, then: baybinder build")
	return nil
}

type beginProcedure struct {
	ID    string `arg:"" help:"Its id, which is the name of its file: renew-ram-seal."`
	Title string `placeholder:"TEXT" help:"Its title (default: the id in words)."`
	For   string `placeholder:"MACHINE" help:"The machine it is for, a file of machines/ (default: any machine)."`
	Topic string `placeholder:"FOLDER" help:"The folder below procedures/ (default: none)."`
}

// Run writes a new procedure.
func (c *beginProcedure) Run(g *globals, d *desk) error {
	name, err := begin.Procedure(begin.New{Manual: g.Manual, ID: c.ID, Title: c.Title, Machine: c.For, Topic: c.Topic})
	if err != nil {
		return err
	}
	d.say("wrote %s", filepath.Join(g.Manual, filepath.FromSlash(name)))
	d.say("It is a draft: baybinder build --preview shows it. Delete its line status: when it is right.")
	return nil
}
