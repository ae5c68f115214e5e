package main

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"text/tabwriter"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/quantity"
	"baybinder/generator/derive/schedule"
	"baybinder/generator/model"
)

type timesCommand struct{ asked }

// Help is the longer text of plan --help.
func (*timesCommand) Help() string {
	return "The steps are taken one after another, as they are written; each kind of unit that differs has its own table. What is measured and looked at counts as right, a question has its first answer, optional steps are left out. " +
		"During a wait go on only the sub-steps of its own step that have nothing to do with it. " +
		"Work is each step's time for each of its people. In the picture # is work, = a procedure that is performed, and . a wait.\n\n" +
		"The shortest that the same work can be follows from the people and from the longest chain of steps " +
		"that touch the same thing, stop for a hold or stand in one step; it is a bound, and no plan. " +
		"As CSV the times are seconds, and critical are the steps of that chain."
}

// Run tells how long a job takes.
func (c *timesCommand) Run(g *globals, d *output) error {
	r, p, err := c.read(g)
	if err != nil {
		return err
	}
	d.speaks(&r.Verdict)
	if err := d.whole(r, p); err != nil {
		return err
	}
	d.rests(r, p)
	book := schedule.NewCache(r.Walks)
	rows := book.Rows(p)
	if c.CSV {
		return d.table(secondRows(rows, p.For.To))
	}
	if least, most := schedule.Range(rows); least < most {
		d.inform("%s to %s in the bay, by the unit.", quantity.Elapsed(least), quantity.Elapsed(most))
	}
	for _, r := range rows {
		if err := d.row(r, p.For.To); err != nil {
			return err
		}
	}
	d.moves(book.Moves(p))
	return nil
}

// row tells the times of one kind of unit.
func (d *output) row(r schedule.Row, m *model.Machine) error {
	if r.Where != nil {
		d.inform("\nThe times %s:", r.Where.Words(m))
	}
	if err := d.plan(r.Plan); err != nil {
		return err
	}
	d.say("")
	d.inform("The steps are taken one after another, as they are written.")
	d.untimed(r.Plan)
	for _, ph := range r.Phases {
		for _, second := range ph.Seconds {
			d.inform("Step %s needs one person besides, to see a check done: %s.", second.Step.Number, second.By.Label())
		}
	}
	d.shortest(r.Plan)
	d.waits(r.Plan)
	return nil
}

// untimed says how many steps have no time, on some of the units or on all.
func (d *output) untimed(p *schedule.Plan) {
	switch {
	case p.Untimed == 0:
	case p.Varies && p.Untimed == 1:
		d.inform("On some of these units 1 step has no time: the job takes longer than this.")
	case p.Varies:
		d.inform("On some of these units up to %d steps have no time: the job takes longer than this.", p.Untimed)
	case p.Untimed == 1:
		d.inform("1 step has no time: the job takes longer than this.")
	default:
		d.inform("%d steps have no time: the job takes longer than this.", p.Untimed)
	}
}

// shortest says what the time cannot go below, and why.
func (d *output) shortest(plan *schedule.Plan) {
	if plan.Bay == 0 {
		return
	}
	d.say("")
	people := finding.Count(max(plan.People, 1), "%d person", "%d people")
	d.inform("The same work takes %s at least with %s, in whatever order.", quantity.Elapsed(schedule.Rough(plan.Least)), people)
	if plan.Least > plan.Chain {
		d.inform("The people decide that: with enough of them it is %s.", quantity.Elapsed(schedule.Rough(plan.Chain)))
	}
	d.inform("The longest chain of steps that must follow each other (%s): %s.", quantity.Elapsed(schedule.Rough(plan.Chain)), numbers(plan.Critical))
}

// waits names the waits and what they are of the time in the bay.
func (d *output) waits(plan *schedule.Plan) {
	for _, w := range plan.LongWaits() {
		name := ""
		for _, l := range w.Step.Links {
			if h, is := l.To.(*model.Hold); is && h.Kind == "wait" {
				name = " (" + h.Label() + ")"
			}
		}
		d.inform("Step %s%s waits %s, %d %% of the time in the bay.", w.Step.Number, name, quantity.Elapsed(w.To-w.From), 100*(w.To-w.From)/plan.Bay)
	}
}

// moves tells the writer what could go on during a wait.
func (d *output) moves(moves []schedule.Move) {
	if len(moves) == 0 {
		return
	}
	d.say("")
	for _, m := range moves {
		d.inform("Step %s shares nothing that is typed with the wait of step %s (%s). As a sub-step of it, it would be done while the clock runs: %s less.",
			m.Step.Number, m.Wait.Number, m.Hold.Label(), quantity.Elapsed(schedule.Rough(m.Gain)))
	}
	d.inform("Whether it is safe there is for the writer to say, at the machine.")
}

func numbers(steps []*model.Step) string {
	var out []string
	for _, s := range steps {
		out = append(out, s.Number)
	}
	return strings.Join(out, ", ")
}

func (d *output) plan(plan *schedule.Plan) error {
	w := tabwriter.NewWriter(d.out, 0, 0, 2, ' ', 0)
	fmt.Fprintln(w, d.inShop("\tfrom\tto\twork\tof it waits\tpeople\tno time\t"))
	row := func(title string, from, to int, t schedule.Times, drawn string) {
		fmt.Fprintf(w, "%s\t%s\t%s\t%s\t%s\t%d\t%d\t%s\n", title, quantity.Elapsed(from), quantity.Elapsed(to),
			quantity.Elapsed(schedule.Rough(t.Work)), quantity.Elapsed(t.Waits), t.People, t.Untimed, drawn)
	}
	for i := range plan.Phases {
		ph := &plan.Phases[i]
		row(finding.Printable(strings.ReplaceAll(ph.Title.Plain, "\t", " ")), ph.From, ph.To, ph.Times, bar(ph.Spans, plan.Bay))
	}
	row(d.inShop("In all"), 0, plan.Bay, plan.Times, "")
	return w.Flush()
}

// barWidth is how many letters the time in the bay is drawn with.
const barWidth = 40

// bar draws spans in letters; the shortest is one letter.
func bar(spans []schedule.Span, bay int) string {
	drawn := slices.Repeat([]byte{' '}, barWidth)
	for _, s := range spans {
		sign := map[schedule.Doing]byte{schedule.Work: '#', schedule.Wait: '.', schedule.Call: '='}[s.Doing]
		from := min(s.From*barWidth/bay, barWidth-1)
		for i := from; i < max(s.To*barWidth/bay, from+1); i++ {
			drawn[i] = sign
		}
	}
	return strings.TrimRight(string(drawn), " ")
}

func secondRows(rows []schedule.Row, m *model.Machine) [][]string {
	out := [][]string{{"phase", "title", "work", "bay", "waits", "untimed", "from", "to", "people", "critical", "units", "besides"}}
	for _, r := range rows {
		out = append(out, phaseRows(r, m)...)
	}
	return out
}

func phaseRows(r schedule.Row, m *model.Machine) [][]string {
	var out [][]string
	for _, ph := range r.Phases {
		row := []string{ph.ID, ph.Title.Plain}
		for _, n := range []int{ph.Work, ph.Bay, ph.Waits, ph.Untimed, ph.From, ph.To, ph.People} {
			row = append(row, strconv.Itoa(n))
		}
		var critical []string
		for _, s := range r.Critical {
			if s.Phase == ph.Phase {
				critical = append(critical, s.Number)
			}
		}
		var besides []string
		for _, second := range ph.Seconds {
			besides = append(besides, second.Step.Number+":"+second.By.ID)
		}
		out = append(out, append(row, strings.Join(critical, " "), r.Where.Words(m).String(), strings.Join(besides, " ")))
	}
	return out
}
