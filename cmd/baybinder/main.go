// Command baybinder turns a workshop's own procedures into a static manual that checks itself.
//
// Every command is one file here: its flags, one call to the generator, its
// exit code. Nothing outside this folder prints or exits.
package main

import (
	"io"
	"os"
	"runtime/debug"
)

// commands are what can be asked for, in the order in which --help shows them.
type commands struct {
	globals

	Begin   beginCommand   `cmd:"" help:"Write a new manual, or a new procedure."`
	Check   checkCommand   `cmd:"" help:"Say what is wrong in the manual, and write nothing."`
	Build   buildCommand   `cmd:"" help:"Check the manual and write its site."`
	Browse  browseCommand  `cmd:"" help:"Show the site to a browser on this machine."`
	Settle  settleCommand  `cmd:"" help:"Mend what needs no judgement: lists from the steps, words into empty links."`
	Issue   issueCommand   `cmd:"" help:"Issue a revision: why, by whom, and who must read it again."`
	Explain explainCommand `cmd:"" help:"Say why a finding matters, with an example and its mend."`
}

func main() { os.Exit(run(os.Args[1:], os.Stdout, os.Stderr)) }

// run is the program: what it was asked for, what it said, how it ended.
func run(args []string, stdout, stderr io.Writer) int {
	debug.SetMemoryLimit(softLimit)
	return guarded(stderr, func() int {
		c := &commands{}
		asked, err := parse(c, args, stdout, stderr)
		if err != nil {
			return failed(stderr, err)
		}
		return ended(stderr, asked.Run(&c.globals, newDesk(stdout, stderr)))
	})
}
