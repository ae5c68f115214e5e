package main

import (
	"errors"
	"slices"

	"baybinder/generator"
	"baybinder/generator/base/finding"
	"baybinder/generator/command/issue"
	"baybinder/generator/derive/training"
	"baybinder/generator/model"
)

type issueCommand struct {
	Procedures []string `arg:"" optional:"" name:"procedure" help:"The procedures' ids."`
	Changed    bool     `help:"All that are another than their last revision."`
	All        bool     `help:"All that are not issued as they stand: those without a revision, and those that changed."`
	Reason     string   `required:"" placeholder:"TEXT" help:"Why there is a new revision; readers are told this."`
	Written    string   `placeholder:"WHO" help:"Who wrote it."`
	Checked    string   `placeholder:"WHO" help:"Who checked it."`
	Approved   string   `placeholder:"WHO" help:"Who approved it."`
	Walked     string   `placeholder:"WHO" help:"Who walked it through at the machine."`
	Readers    string   `enum:"reread,tell,none," default:"" placeholder:"reread|tell|none" help:"What its readers must do. A first issue and --retire do not need it."`
	Revision   int      `placeholder:"N" help:"The revision's number (default: one more than the last)."`
	Language   string   `placeholder:"TAG" help:"Issue the translation into this language."`
	Retire     bool     `help:"Take it out of use: a row of its own, and status: retired in its file."`
	Instead    string   `placeholder:"PROCEDURE" help:"With --retire: what stands in its place."`
	Yes        bool     `help:"Issue several without asking. It does not stand for --readers."`
}

// Help is the longer text of issue --help.
func (*issueCommand) Help() string {
	return "A row is added to revisions.csv and the words are kept in revisions/. It says what changed for the reader since the last revision. " +
		"Of several it says first what it will do and for whom, and asks once; all are issued or none. " +
		"A manual with errors is not issued from. --readers none is refused where a hazard, a hold, a limit or an energy act moved. " +
		"A retired procedure that is issued again is back in use."
}

func (c *issueCommand) order(g *globals) issue.Order {
	return issue.Order{
		Folder: g.Manual, Procedures: c.Procedures, Changed: c.Changed, All: c.All, Language: c.Language, Retire: c.Retire, Instead: c.Instead,
		Number: c.Revision, Date: g.options().Today, Reason: c.Reason,
		Written: c.Written, Checked: c.Checked, Approved: c.Approved, Walked: c.Walked, Readers: c.Readers,
	}
}

// Run issues revisions.
func (c *issueCommand) Run(g *globals, d *output) error {
	o := c.order(g)
	r, err := generator.Check(g.options())
	if err != nil {
		return err
	}
	d.speaks(&r.Verdict)
	list, err := issue.Prepare(r.Manual, r.Findings, o)
	if errors.Is(err, issue.ErrNothing) {
		d.inform("Nothing is to be issued: all is issued as it stands.")
		return nil
	}
	if err != nil {
		return finding.Refuse("nothing was issued: %s", err)
	}
	s := &issuing{output: d, hall: training.NewStandings(r.Manual, o.Date), date: o.Date}
	if goOn, err := s.settle(list, o, c.Yes); err != nil || !goOn {
		return err
	}
	if err := issue.Write(list, o); err != nil {
		return err
	}
	for _, i := range list {
		s.done(i, len(list) > 1)
	}
	return nil
}

// issuing tells what is issued, and asks.
type issuing struct {
	*output
	hall *training.Standings
	date model.Date
}

// settle tells what is to be issued where that is asked about, and asks: what the
// readers must do, and of several whether to go on.
func (s *issuing) settle(list []*issue.Issued, o issue.Order, yes bool) (goOn bool, err error) {
	asks := o.Readers == "" && slices.ContainsFunc(list, (*issue.Issued).AsksReaders)
	if asks || len(list) > 1 {
		for _, i := range list {
			s.inform("%s, revision %d, %s", s.name(i), i.Number, whatFor(i))
			s.about(i, o.Readers)
		}
	}
	if asks {
		o.Readers, err = s.answer(s.inShop("What must the readers do: reread, tell or none?"), finding.Say("add --readers reread, --readers tell or --readers none"))
		if err != nil {
			return false, err
		}
		if !slices.Contains([]string{"reread", "tell", "none"}, o.Readers) {
			return false, finding.Refuse("nothing was issued: %q is none of reread, tell and none", o.Readers)
		}
	}
	if err := issue.Settle(list, o.Readers); err != nil {
		return false, finding.Refuse("nothing was issued: %s", err)
	}
	if len(list) == 1 || yes {
		return true, nil
	}
	return s.agreed(s.inShop("Issue these %s?", finding.Count(len(list), "%d revision", "%d revisions")), "--yes")
}

func whatFor(i *issue.Issued) finding.Words {
	switch {
	case i.Retired:
		return finding.Say("which takes it out of use")
	case i.First:
		return finding.Say("its first")
	case i.Back:
		return finding.Say("which brings it back into use")
	}
	return finding.Say("after revision %s of %s", i.Last.Number, i.Last.Date)
}

func (s *issuing) name(i *issue.Issued) string {
	if i.Language != "" {
		return i.Procedure.ID + " (" + i.Language + ")"
	}
	return i.Procedure.ID
}

// done tells what was issued; what was told before it was asked about is not
// told again.
func (s *issuing) done(i *issue.Issued, told bool) {
	s.inform("%s, revision %d, %s, fingerprint %s", s.name(i), i.Number, s.date, i.Fingerprint)
	if !told {
		s.about(i, i.Readers)
	}
}

// about tells what changed, and for whom.
func (s *issuing) about(i *issue.Issued, readers string) {
	for _, change := range i.Changes {
		s.inform("  %s", change)
	}
	switch {
	case i.Retired:
		s.retired(i)
		return
	case i.First:
		s.inform("  It is the first.")
		return
	case i.Unkept:
		s.inform("  The last revision's words were not kept: what changed cannot be said.")
	case len(i.Changes) == 0:
		s.inform("  Nothing changed for the reader.")
	}
	s.toKnow(readers, s.readersOf(i))
}

// retired tells what performs a procedure that is taken out of use, and whose
// readings end with it.
func (s *issuing) retired(i *issue.Issued) {
	s.inform("  It is retired: it is on no list of readings.")
	for _, p := range s.hall.Callers(i.Procedure) {
		s.inform("  %s performs it: let that perform another.", p.ID)
	}
}

// readersOf are those who read an earlier revision; of a translation those who
// read that.
func (s *issuing) readersOf(i *issue.Issued) string {
	return s.someOf(labels(s.hall.HaveRead(i.Procedure, i.Language)))
}

// toKnow says who must read a new revision, or be told of it.
func (s *issuing) toKnow(readers, names string) {
	switch {
	case names == "" && readers == "":
		s.inform("  Nobody has read it.")
	case names == "" || readers == "none":
	case readers == "":
		s.inform("  Have read it: %s.", names)
	case readers == "tell":
		s.inform("  To be told: %s.", names)
	default:
		s.inform("  To read it again: %s.", names)
	}
}

// notIssued says how many procedures in use have no revision.
func (d *output) notIssued(r *generator.Verdict) {
	if r.Unissued == 0 {
		return
	}
	of := finding.Count(r.InUse, "%d procedure", "%d procedures")
	d.say("%s", told(r.Tongue(), finding.Count(r.Unissued, "%d of %s is not issued yet: baybinder issue --all --reason \"First issue\"",
		"%d of %s are not issued yet: baybinder issue --all --reason \"First issue\"", of)))
}
