// Package training says who must read what, in which order, and whether it is still true.
//
// # Decided where the format is silent
//
// Readings: A picture takes 12 s to read and a table 20 s. A fingerprint that was never issued is
// stale. A last day counts as in time. Nobody witnesses their own performance. Records and
// revisions dated after `--today` do not count.
//
// Roles and plans: A plan counts for people whose row names it, as it stands today; finishing it
// gives its roles as of the day of its last act, and again when it is gone through again. Whoever
// saw a performance must have held the assessor's role that day; one that may not count is
// recorded all the same, and told (`unwitnessed`). What is to be watched or performed is read too.
// A reading is recorded as the last issued revision. Revisions count by date. A callee issued anew
// with `reread` or `tell` is advice at its caller's `do:`. `not-yet`, `unknown-fingerprint` and
// `words-altered` are ours. A review is due `review-every` after the last revision; it is in
// nobody's list, in the calendar at once, and told 60 days before, on the front page too. An
// inspection by who holds no role for it is not recorded: the row would be an error for ever.
//
// People over time: of a span in `left` the first day is the last day there and the second the first
// day again; on both they were there. Who starts later is in the lists already. A role that was
// withdrawn is gained again by a plan only through what is done after that day. What was read before
// anything was issued counts as the first revision where its fingerprint is that. A role whose day
// cannot be read is not held, nor one without a day where the start cannot be read; who left on a
// day that cannot be read is in no list.
package training

import (
	"math"
	"slices"
	"strconv"
	"strings"
	"unicode"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
)

// Reading is one procedure of a plan, in the order in which it is read.
type Reading struct {
	Procedure *model.Procedure
	BuildsOn  []*model.Procedure // what it performs: read before it
	Added     bool               // not in the plan's own list: something in it performs it
	Seconds   int
	Watch     bool // it is to be watched
	Perform   int  // times that it is to be performed under an eye
}

// Order is a plan's reading list, closed over do:, in an order in which nothing
// comes before what it builds on. What is to be watched or performed is read
// too, after what the plan lists. Among those that are free the plan's own
// order holds; one that the plan does not list has the place of the first that
// performs it. A ring of calls, which is a finding of its own, is broken at the
// first of it. What is retired is read by nobody.
func Order(plan *model.Plan) []Reading {
	return ordered(plan, func(p *model.Procedure) bool { return p.Status != "retired" })
}

// ordered is the order of what is wanted of a plan: what is not, and what only
// that performs, is left out.
func ordered(plan *model.Plan, wanted func(*model.Procedure) bool) []Reading {
	waiting, listed := closure(plan, wanted)
	read := map[*model.Procedure]bool{}
	var out []Reading
	for len(waiting) > 0 {
		i := max(0, slices.IndexFunc(waiting, func(p *model.Procedure) bool { return free(p, read, wanted) }))
		p := waiting[i]
		waiting = slices.Delete(waiting, i, i+1)
		read[p] = true
		reading := Reading{Procedure: p, BuildsOn: slices.DeleteFunc(performs(p), func(c *model.Procedure) bool { return !wanted(c) }), Added: !listed[p], Seconds: Seconds(p)}
		reading.Watch, reading.Perform = acts(plan, p)
		out = append(out, reading)
	}
	return out
}

// acts say whether a plan has a procedure watched, and how often performed.
func acts(plan *model.Plan, p *model.Procedure) (watch bool, perform int) {
	watch = slices.ContainsFunc(plan.Watch, func(ref model.Ref[model.Procedure]) bool { return ref.To == p })
	for _, use := range plan.Perform {
		if use.To == p {
			times, _ := strconv.Atoi(use.Amount)
			perform = max(times, 1)
		}
	}
	return watch, perform
}

// free says that all that a procedure performs has been read.
func free(p *model.Procedure, read map[*model.Procedure]bool, wanted func(*model.Procedure) bool) bool {
	return !slices.ContainsFunc(performs(p), func(callee *model.Procedure) bool { return wanted(callee) && !read[callee] })
}

// closure is what a plan lists and what that performs, each once, in the plan's
// order, what is not listed before the first that performs it.
func closure(plan *model.Plan, wanted func(*model.Procedure) bool) (all []*model.Procedure, listed map[*model.Procedure]bool) {
	listed = map[*model.Procedure]bool{}
	var roots []*model.Procedure
	for _, ref := range plan.Read {
		listed[ref.To] = true
		roots = append(roots, ref.To)
	}
	for _, ref := range plan.Watch {
		roots = append(roots, ref.To)
	}
	for _, use := range plan.Perform {
		roots = append(roots, use.To)
	}
	seen := map[*model.Procedure]bool{}
	var add func(p *model.Procedure)
	add = func(p *model.Procedure) {
		if p == nil || seen[p] || !wanted(p) {
			return
		}
		seen[p] = true
		for _, callee := range performs(p) {
			if !listed[callee] {
				add(callee)
			}
		}
		all = append(all, p)
	}
	for _, p := range roots {
		add(p)
	}
	return all, listed
}

// performs are the procedures that one performs, each once, in reading order.
func performs(p *model.Procedure) []*model.Procedure {
	var out []*model.Procedure
	for _, link := range p.Calls {
		if to, is := link.To.(*model.Procedure); is && to != p && !slices.Contains(out, to) {
			out = append(out, to)
		}
	}
	return out
}

// WordsPerMinute is the silent reading of non-fiction by adults: Brysbaert
// (2019), Journal of Memory and Language 109, 104047.
const WordsPerMinute = 238

// What a picture and a table take to look at: our own rule, as no study of
// shop drawings was found.
const (
	pictureSeconds = 12
	tableSeconds   = 20
)

// Seconds is how long a procedure takes to read.
func Seconds(p *model.Procedure) int { return MatterOf(p).seconds() }

// MatterOf is what there is to read of a procedure.
func MatterOf(p *model.Procedure) Matter {
	var m Matter
	m.blocks(p.Intro)
	for _, phase := range p.Phases {
		m.blocks([]model.Block{phase.Title})
		if phase.Lead != nil {
			m.blocks([]model.Block{*phase.Lead})
		}
		for _, part := range phase.Body {
			if part.Prose != nil {
				m.blocks([]model.Block{*part.Prose})
			}
		}
	}
	for _, s := range p.Steps {
		m.blocks(s.Blocks)
	}
	return m
}

// Matter is what there is to read.
type Matter struct{ Words, Pictures, Tables int }

func (m *Matter) blocks(blocks []model.Block) {
	for _, b := range blocks {
		m.Words += wordsIn(b.Plain)
		m.Tables += strings.Count(strings.Join(b.Parts, ""), "<table")
		for _, link := range b.Links {
			switch {
			case link.Kind == model.PictureLink:
				m.Pictures++
			case strings.TrimSpace(link.Text) == "" && link.To != nil:
				m.Words += wordsIn(link.To.Label())
			}
		}
	}
}

// wordsIn counts the words of a text. A sign by itself, as the dot behind an empty
// link, is none.
func wordsIn(text string) (n int) {
	for word := range strings.FieldsSeq(text) {
		if strings.ContainsFunc(word, func(r rune) bool { return unicode.IsLetter(r) || unicode.IsNumber(r) }) {
			n++
		}
	}
	return n
}

func (m Matter) seconds() int {
	return int(math.Round(float64(m.Words)*60/WordsPerMinute)) + m.Pictures*pictureSeconds + m.Tables*tableSeconds
}

// Minutes is a reading time in whole minutes, at least one.
func Minutes(seconds int) int { return max(1, int(math.Round(float64(seconds)/60))) }

// Named finds a plan by its id.
func Named(m *model.Manual, id string) (*model.Plan, error) {
	if plan := model.ByID(m.Plans, id); plan != nil {
		return plan, nil
	}
	return nil, finding.Refuse("there is no reading plan %s", id)
}
