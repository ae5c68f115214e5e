package main

import (
	"fmt"
	"io"
	"strconv"
	"text/tabwriter"

	"baybinder/generator/manual"
	"baybinder/generator/quantity"
	"baybinder/generator/schedule"
)

type timesCommand struct{ asked }

// Help is the longer text of plan --help.
func (*timesCommand) Help() string {
	return "The steps are taken one after another, and nothing is done during a wait: " +
		"hours of work are each step's time for each of its people, and the time in the bay has the waits in it. As CSV the times are seconds."
}

// Run tells how long a job takes.
func (c *timesCommand) Run(g *globals, d *desk) error {
	r, p, err := c.read(g)
	if err != nil {
		return err
	}
	d.rests(r, p)
	rows, all := timesOf(p)
	if c.CSV {
		return d.table(secondRows(rows))
	}
	if err := writeTimes(d.out, append(rows, phaseTimes{title: "In all", Times: all})); err != nil {
		return err
	}
	d.say("")
	d.say("The steps are taken one after another, and nothing is done during a wait.")
	switch all.Untimed {
	case 0:
	case 1:
		d.say("1 step has no time: the job takes longer than this.")
	default:
		d.say("%d steps have no time: the job takes longer than this.", all.Untimed)
	}
	return nil
}

// phaseTimes is how long a phase takes.
type phaseTimes struct {
	id, title string
	schedule.Times
}

func timesOf(p *manual.Procedure) (rows []phaseTimes, all schedule.Times) {
	book := schedule.NewBook()
	all = book.Of(p)
	for _, phase := range p.Phases {
		rows = append(rows, phaseTimes{phase.ID, phase.Title.Plain, book.Phase(phase)})
	}
	return rows, all
}

func writeTimes(out io.Writer, rows []phaseTimes) error {
	w := tabwriter.NewWriter(out, 0, 0, 2, ' ', 0)
	fmt.Fprintln(w, "\twork\tin the bay\tof it waits\tsteps without a time")
	for _, r := range rows {
		fmt.Fprintf(w, "%s\t%s\t%s\t%s\t%d\n", r.title, quantity.Elapsed(r.Work), quantity.Elapsed(r.Bay), quantity.Elapsed(r.Waits), r.Untimed)
	}
	return w.Flush()
}

func secondRows(rows []phaseTimes) [][]string {
	out := [][]string{{"phase", "title", "work", "bay", "waits", "untimed"}}
	for _, r := range rows {
		out = append(out, []string{
			r.id, r.title, strconv.Itoa(r.Work), strconv.Itoa(r.Bay), strconv.Itoa(r.Waits), strconv.Itoa(r.Untimed),
		})
	}
	return out
}
