package procedure

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/derive/kit"
	"baybinder/generator/derive/slips"
	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/show/page"
	"baybinder/generator/trade/working"
)

// CloseOut is the list at the end of a procedure in which everything that was
// opened is counted closed, and the easily missed steps stand again.
type CloseOut struct {
	*words.CloseOut
	Rows  []CloseRow // what was opened and is closed, in the order of closing
	Steps []CloseRow // easily missed steps that are not among the rows
	Count string     // easily missed steps in all, in words; "" for none
}

// CloseRow is one line of it.
type CloseRow struct {
	Key    string // what its tick is kept under
	What   string
	State  string     // "on", "tight"
	When   string     // the units it holds for; "" for all
	Count  string     // "" where there is nothing to count
	Opened *page.Link // the step; nil where there is none
	Closed page.Link
	Missed bool // the step that closes it is easily missed
}

// Empty says that there is nothing to list.
func (c *CloseOut) Empty() bool { return len(c.Rows)+len(c.Steps) == 0 }

// Missed is the line of an easily missed step.
type Missed struct {
	Text  string
	Count int // of how many, where there are several

	Counted string // says so, with a place for the number that was counted
}

// missed are the lines of a procedure's easily missed steps, by number: of
// those with score enough, the tenth of the job's steps that score highest. A
// line at every third step is not read.
func (s *Pages) missed(items []slips.Item) map[string]*Missed {
	out := map[string]*Missed{}
	for _, it := range mostMissed(items) {
		m := &Missed{Text: s.whyMissed(it)}
		if it.Count > 1 {
			m.Count, m.Counted = it.Count, words.Count(s.Speaks.CloseOut.CountOf, it.Count)
		}
		out[it.Number()] = m
	}
	return out
}

func mostMissed(items []slips.Item) []*slips.Item {
	var easy []*slips.Item
	for i := range items {
		if items[i].Easily() {
			easy = append(easy, &items[i])
		}
	}
	slices.SortStableFunc(easy, func(a, b *slips.Item) int { return b.Score() - a.Score() })
	return easy[:min(len(easy), (len(items)+9)/10)]
}

// whyMissed is the one sign that says most to who stands there, in five words.
func (s *Pages) whyMissed(it *slips.Item) string {
	w, why := &s.Speaks.CloseOut, ""
	switch {
	case it.Hidden:
		why = w.Hidden
	case it.NoTrace:
		why = w.NoTrace
	case it.After:
		why = w.After
	case it.Follows:
		why = w.Follows
	case it.Repeats:
		why = fmt.Sprintf(w.Repeats, it.Count)
	case it.Different:
		why = w.Different
	default:
		why = w.Small
	}
	return fmt.Sprintf(w.Missed, why)
}

// mark puts the lines on the steps that they belong to. Of a repeated step
// every round has it.
func mark(parts []Part, missed map[string]*Missed) {
	var visit func(v *Step)
	visit = func(v *Step) {
		v.Missed = missed[v.Number]
		for i := range v.Derived {
			v.Derived[i].Missed = missed[v.Derived[i].Number]
		}
		for i := range v.Subs {
			visit(&v.Subs[i])
		}
	}
	for _, p := range parts {
		if p.Step != nil {
			visit(p.Step)
		}
	}
}

func (s *Pages) closeOut(p *model.Procedure, items []slips.Item, missed map[string]*Missed) CloseOut {
	v := CloseOut{CloseOut: &s.Speaks.CloseOut, Count: s.missedCount(items, len(missed))}
	told := map[string]bool{}
	turned := s.Walks.Turned(p)
	for _, t := range turned {
		if t.Part == nil || !slices.ContainsFunc(turned, func(o walk.Turned) bool { return o.Thing == model.Named(t.Part) }) {
			v.Rows = append(v.Rows, s.closeRows(p, t, items, turned)...)
		}
	}
	for i := range v.Rows {
		row := &v.Rows[i]
		if missed[row.Closed.Name] != nil && !told[row.Closed.Name] {
			row.Missed, told[row.Closed.Name] = true, true
		}
	}
	for i := range items {
		it := &items[i]
		if n := it.Number(); missed[n] != nil && !told[n] {
			v.Steps = append(v.Steps, CloseRow{
				Key: "step:" + n, What: s.itemWords(it), Count: numberOf(missed[n].Count), Closed: toItem(it), Missed: true,
			})
		}
	}
	return v
}

// closeRows are the lines of one thing: of a part also those of its fasteners.
// An energy that is cut at points, or held by placed tools, is told by them.
func (s *Pages) closeRows(p *model.Procedure, t walk.Turned, items []slips.Item, all []walk.Turned) []CloseRow {
	w := &s.Speaks.CloseOut
	row := CloseRow{What: s.LabelAt(t.Thing, t.Part), When: s.where(p.For.To, without(wholly(p), t.Where)), Closed: s.closedAt(p, t)}
	if said(p, t.Closed.Phase, t.Where) || t.Opened != nil && said(p, t.Opened.Phase, t.Where) {
		row.When = ""
	}
	if t.Opened != nil {
		opened := toStep(t.Opened)
		row.Opened = &opened
	}
	switch thing := t.Thing.(type) {
	case *model.Energy:
		if len(thing.Points)+len(thing.BlockedBy) > 0 {
			return nil
		}
		row.Key, row.State = "energy:"+thing.ID, w.Live
	case *model.Point:
		row.Key, row.State = "point:"+thing.ID, w.Live
		if slices.Contains(t.Words, "locked") {
			row.State, row.Count = w.LocksOff, s.locksOn(p)
		}
	case *model.Part:
		row.Key, row.State = "part:"+thing.ID, w.On
		return slices.Concat([]CloseRow{row}, s.capRows(row, p, t), s.fastenerRows(row, thing, items, all))
	case *model.Fastener:
		row.Key, row.State, row.Count = "fastener:"+thing.ID, w.Tight, numberOf(slips.Held(t.Part, thing))
		if t.Part != nil {
			row.Key += "#" + t.Part.ID
		}
	case *model.Fluid:
		row.Key, row.State = "fluid:"+thing.ID, w.Full
	case *model.Tool:
		row.Key, row.State, row.Count = "tool:"+thing.ID, w.Away, s.ofTool(p, thing)
	case *model.Setting:
		row.Key, row.State = "setting:"+thing.ID, w.Back
		if thing.Value != "" {
			row.State += ": " + thing.Value
		}
	default:
		return nil
	}
	return []CloseRow{row}
}

// capRows is the line of the cap in a part's open end: it is out where the part
// is back on.
func (s *Pages) capRows(part CloseRow, p *model.Procedure, t walk.Turned) []CloseRow {
	if t.Capped == nil {
		return nil
	}
	w := &s.Speaks.CloseOut
	name := s.LabelAt(t.Thing, nil)
	row, opened := part, toStep(t.Capped)
	row.Key, row.What, row.State, row.Opened = "cap:"+t.Thing.Base().ID, fmt.Sprintf(w.Cap, name), w.CapOut, &opened
	if t.Thing.(*model.Part).Kind != "line" {
		row.What, row.State = fmt.Sprintf(w.Tape, name), w.TapeOff
	}
	if units := s.where(p.For.To, t.CappedOn); units != "" {
		row.When = units
	}
	return []CloseRow{row}
}

// fastenerRows are the lines of the fasteners that hold a part: they came off
// with it, or were loosened before, and are closed where they are tightened.
func (s *Pages) fastenerRows(part CloseRow, of *model.Part, items []slips.Item, all []walk.Turned) []CloseRow {
	w := &s.Speaks.CloseOut
	var out []CloseRow
	for _, h := range of.HeldBy {
		if h.To == nil {
			continue
		}
		row := part
		row.Key, row.State = "fastener:"+h.To.ID+"#"+of.ID, w.Tight
		row.What, row.Count = s.LabelAt(h.To, of), numberOf(slips.Held(of, h.To))
		row.tightenedAt(items, h.To, of)
		row.loosenedFirst(all, h.To, of)
		out = append(out, row)
	}
	return out
}

// tightenedAt closes a row where its fastener is tightened: by the last step
// that everybody does, else by the last.
func (r *CloseRow) tightenedAt(items []slips.Item, f *model.Fastener, part *model.Part) {
	sure := false
	for i := range items {
		it := &items[i]
		if !it.Tightens(f, part) || sure && aside(it.Step) {
			continue
		}
		sure = sure || !aside(it.Step)
		r.Closed = toItem(it)
	}
}

// loosenedFirst opens the row of a fastener where it was loosened before its
// part came off.
func (r *CloseRow) loosenedFirst(all []walk.Turned, f *model.Fastener, part *model.Part) {
	off := slices.IndexFunc(all, func(t walk.Turned) bool { return t.Thing == model.Named(part) })
	i := slices.IndexFunc(all, func(t walk.Turned) bool { return t.Thing == model.Named(f) && t.Part == part })
	if i < 0 || all[i].Opened == nil || all[off].Opened == nil || all[i].Opened.At.Start > all[off].Opened.At.Start {
		return
	}
	opened := toStep(all[i].Opened)
	r.Opened = &opened
}

// aside says that a step is done only where a hold went a certain way, or
// where somebody chooses to.
func aside(st *model.Step) bool {
	for ; st != nil; st = st.Parent {
		for _, l := range st.Links {
			if l.Kind.Branches || l.Is(model.LinkOptional) {
				return true
			}
		}
	}
	return false
}

// closedAt is the step that closed a thing: the derived one, where it is one.
func (s *Pages) closedAt(p *model.Procedure, t walk.Turned) page.Link {
	at := toStep(t.Closed)
	for _, r := range s.Walks.Of(p).Reversals {
		for i := range r.Steps {
			if d := &r.Steps[i]; r.Step == t.Closed && d.Thing == t.Thing && d.Verb != model.Tighten {
				at = toDerived(d)
			}
		}
	}
	return at
}

// toStep is a link to a step of the same page, under its number.
func toStep(st *model.Step) page.Link {
	return page.Link{Name: st.Number, Address: "#" + page.Anchor(st)}
}

func toDerived(d *walk.Derived) page.Link {
	return page.Link{Name: d.Label, Address: "#" + derivedAnchor(d)}
}

func toItem(it *slips.Item) page.Link {
	if it.Derived != nil {
		return toDerived(it.Derived)
	}
	return toStep(it.Step)
}

// ofTool is how many of a tool the job has, its calls included.
func (s *Pages) ofTool(p *model.Procedure, tool *model.Tool) string {
	for _, t := range s.Kits.Of(p).Tools {
		if t.Tool == tool && t.Count > 1 {
			return s.toolCount(p, t)
		}
	}
	return "1"
}

// numberOf is a count that the machine's file has; "" for none.
func numberOf(n int) string {
	if n == 0 {
		return ""
	}
	return strconv.Itoa(n)
}

// locksOn is how many locks a job puts on a point.
func (s *Pages) locksOn(p *model.Procedure) string {
	n := strconv.Itoa(kit.LocksAt(s.Manual.Shop.Locks, p))
	w, people := &s.Speaks.Worked, s.Words.OnePerson
	if p.People > 1 {
		people = words.Count(s.Words.PeopleAtOnce, p.People)
	}
	return page.Worked(n, page.Computed{Title: fmt.Sprintf(w.Sums.How, s.Speaks.CloseOut.LocksOff+": "+n), Working: working.Working{
		Formula: w.Sums.Each, Put: people, Result: n, Source: w.LocksSource,
	}})
}

// missedCount says how many of the steps are easily missed; "" for none.
func (s *Pages) missedCount(items []slips.Item, n int) string {
	if n == 0 {
		return ""
	}
	easy := 0
	for i := range items {
		if items[i].Easily() {
			easy++
		}
	}
	w := &s.Speaks.Worked.Sums
	put := fmt.Sprintf("min(%d/10; %d)", len(items), easy)
	return s.Tallied(words.Count(s.Speaks.CloseOut.MissedAll, n), w.Missed, put, strconv.Itoa(n), w.Page)
}

// mostWords is how much of an easily missed step's words its line has.
const mostWords = 90

func (s *Pages) itemWords(it *slips.Item) string {
	if it.Derived != nil {
		return s.Undoing(it.Derived)
	}
	for i := range it.Step.Blocks {
		if b := &it.Step.Blocks[i]; b.Role == model.Said && strings.TrimSpace(b.Plain) != "" {
			text := []rune(strings.Join(strings.Fields(b.Plain), " "))
			if len(text) <= mostWords {
				return string(text)
			}
			cut := string(text[:mostWords])
			if at := strings.LastIndex(cut, " "); at > 0 {
				cut = cut[:at]
			}
			return cut + " …"
		}
	}
	return strconv.Quote(it.Number())
}
