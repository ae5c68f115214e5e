// Command baybinder turns a workshop's own procedures into a static manual that checks itself.
//
// Every command is one file here: its flags, one call to the generator, its
// exit code. Nothing outside this folder prints or exits.
package main

import (
	"io"
	"os"
	"runtime/debug"

	"baybinder/generator"
)

// commands are what can be asked for, in the order in which --help shows them.
type commands struct {
	globals

	Begin    beginCommand       `cmd:"" help:"Write a new manual, a new machine or a new procedure."`
	Check    checkCommand       `cmd:"" help:"Say what is wrong in the manual, and write nothing."`
	Build    buildCommand       `cmd:"" help:"Check the manual and write its site."`
	Watch    watchCommand       `cmd:"" help:"Build at every change, and show the pages to a browser as they become."`
	Editor   serveEditorCommand `cmd:"" name:"serve-editor" help:"Answer a writer's editor: findings as you type, and what can be written next."`
	Browse   browseCommand      `cmd:"" help:"Show the site to a browser on this machine."`
	Open     openCommand        `cmd:"" help:"Show the manual beside the program in the browser, as a double click does."`
	Settle   settleCommand      `cmd:"" help:"Mend what needs no judgement: lists from the steps, words into empty links."`
	Rename   renameCommand      `cmd:"" help:"Give a thing another id, everywhere it is named."`
	Issue    issueCommand       `cmd:"" help:"Issue a revision: why, by whom, and who must read it again."`
	Readings readingsCommand    `cmd:"" help:"Say what is due to be read and renewed; record what was read or done."`
	Kit      kitCommand         `cmd:"" help:"Say what a job needs before it starts: what to fetch where, who may do it, how many people."`
	Stand    standCommand       `cmd:"" help:"Say where things stand after a step: what is live, off, loose, low or left in place."`
	Plan     timesCommand       `cmd:"" help:"Say how long a job takes, phase by phase."`
	Schema   schemaCommand      `cmd:"" help:"Describe the manual's files for editors, as JSON Schema."`
	Explain  explainCommand     `cmd:"" help:"Say why a finding matters, with an example and its mend."`
}

func main() {
	if len(os.Args) == 1 && doubleClicked() {
		code := run([]string{"open"}, os.Stdout, os.Stderr)
		if code != exitClean {
			stays()
		}
		os.Exit(code)
	}
	os.Exit(run(os.Args[1:], os.Stdout, os.Stderr))
}

// run is the program: what it was asked for, what it said, how it ended.
func run(args []string, stdout, stderr io.Writer) int {
	debug.SetMemoryLimit(generator.SoftLimit)
	debug.SetGCPercent(generator.Garbage)
	return guarded(stderr, func() int {
		c, d := &commands{}, newDesk(stdout, stderr)
		asked, err := parse(c, args, stdout, stderr)
		if err != nil {
			return d.failed(err)
		}
		return d.ended(d.asked(c, asked))
	})
}
