package main

import (
	"slices"

	"baybinder/generator"
	"baybinder/generator/command/issue"
	"baybinder/generator/derive/training"
)

type issueCommand struct {
	Procedure string `arg:"" help:"The procedure's id."`
	Reason    string `required:"" placeholder:"TEXT" help:"Why there is a new revision; readers are told this."`
	Written   string `placeholder:"WHO" help:"Who wrote it."`
	Checked   string `placeholder:"WHO" help:"Who checked it."`
	Approved  string `placeholder:"WHO" help:"Who approved it."`
	Walked    string `placeholder:"WHO" help:"Who walked it through at the machine."`
	Readers   string `enum:"reread,tell,none" default:"reread" placeholder:"reread|tell|none" help:"What its readers must do (default: reread)."`
	Revision  int    `placeholder:"N" help:"The revision's number (default: one more than the last)."`
}

// Help is the longer text of issue --help.
func (*issueCommand) Help() string {
	return "A row is added to revisions.csv and the words are kept in revisions/. It says what changed for the reader since the last revision. " +
		"A manual with errors is not issued from. --readers none is refused where a hazard, a hold, a limit or an energy act moved."
}

// Run issues a revision of a procedure.
func (c *issueCommand) Run(g *globals, d *output) error {
	o := g.options()
	r, err := generator.Check(o)
	if err != nil {
		return err
	}
	done, err := issue.Run(r.Manual, r.Findings, issue.Order{
		Folder: g.Manual, Procedure: c.Procedure, Number: c.Revision, Date: o.Today, Reason: c.Reason,
		Written: c.Written, Checked: c.Checked, Approved: c.Approved, Walked: c.Walked, Readers: c.Readers,
	})
	if err != nil {
		return err
	}
	d.say("%s, revision %d, %s, fingerprint %s", done.Procedure.ID, done.Number, o.Today, done.Fingerprint)
	for _, change := range done.Changes {
		d.say("  %s", change)
	}
	switch {
	case done.First:
		d.say("  It is the first.")
	case done.Unkept:
		d.say("  The last revision's words were not kept: what changed cannot be said.")
	case len(done.Changes) == 0:
		d.say("  Nothing changed for the reader.")
	}
	d.toKnow(c.Readers, training.NewStandings(r.Manual, o.Today).Crew(done.Procedure))
	return nil
}

// toKnow says who must read a new revision, or be told of it: those who read
// an earlier one.
func (d *output) toKnow(readers string, crew training.Crew) {
	read := slices.Concat(crew.Readers, crew.Stale)
	for _, p := range crew.Partly {
		read = append(read, p.Person)
	}
	names := someOf(labels(read))
	switch {
	case names == "" || readers == "none":
	case readers == "tell":
		d.say("  To be told: %s.", names)
	default:
		d.say("  To read it again: %s.", names)
	}
}
