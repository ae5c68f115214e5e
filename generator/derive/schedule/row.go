package schedule

import (
	"slices"
	"strings"

	"baybinder/generator/derive/implied"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
)

// Row is the plan of the units that it is the same for.
type Row struct {
	*Plan
	Where walk.Cases // the units, in options; nil where the plan is every unit's
}

// mostOptions is how many options are told apart where the machine file lists
// no units: 1024 kinds of unit.
const mostOptions = 10

// Rows are the plans of a procedure: one for each kind of unit whose plan is its
// own, in the order of the machine's list. A kind for which nothing is done has
// none, unless nothing is done at all. Asked again, the book is read and not
// written to.
func (b *Cache) Rows(p *model.Procedure) []Row {
	if rows := b.rows[p]; rows != nil {
		return rows
	}
	asked := b.askedIn(p)
	var rows []Row
	var kinds []kind
	for _, u := range unitsOf(p.For.To, asked) {
		kinds = append(kinds, kind{u, b.planFor(p, u)})
	}
	asked = needed(asked, kinds)
	if slices.ContainsFunc(kinds, func(k kind) bool { return !k.plan.idle() }) {
		kinds = slices.DeleteFunc(kinds, func(k kind) bool { return k.plan.idle() })
	}
	for _, k := range kinds {
		at := slices.IndexFunc(rows, func(r Row) bool { return r.Plan.same(k.plan) })
		if at < 0 {
			at = len(rows)
			rows = append(rows, Row{Plan: k.plan})
		}
		rows[at].Plan = rows[at].with(k.plan)
		rows[at].add(k.unit, asked)
	}
	if len(rows) == 1 {
		rows[0].Where = nil
	}
	b.rows[p] = rows
	return rows
}

// Range is the shortest and the longest time in the bay of a procedure's rows.
func Range(rows []Row) (least, most int) {
	for i, r := range rows {
		if i == 0 {
			least = r.Bay
		}
		least, most = min(least, r.Bay), max(most, r.Bay)
	}
	return least, most
}

// unit is the options that a unit has, sorted.
type unit []string

// kind is a kind of unit and its plan.
type kind struct {
	unit unit
	plan *Plan
}

// key is a unit in the options that a procedure asks about.
func (u unit) key(asked []string) string {
	var has []string
	for _, o := range asked {
		if slices.Contains(u, o) {
			has = append(has, o)
		}
	}
	return strings.Join(has, " ")
}

// unitsOf are the kinds of unit that options tell apart: the rows of the
// machine's list, or each combination of which a unit can have all. Of more than
// mostOptions options the later ones are taken as absent.
func unitsOf(m *model.Machine, asked []string) []unit {
	if m == nil {
		return []unit{nil}
	}
	var out []unit
	if len(m.Units) > 0 {
		told := map[string]bool{}
		for _, row := range m.Units {
			if u := unit(row.Options); !told[u.key(asked)] {
				told[u.key(asked)] = true
				out = append(out, u)
			}
		}
		return out
	}
	some := asked[:min(len(asked), mostOptions)]
	for bits := range 1 << len(some) {
		var u unit
		for i, o := range some {
			if bits>>i&1 == 1 {
				u = append(u, o)
			}
		}
		if allowed(m, u) {
			out = append(out, u)
		}
	}
	return out
}

// allowed says that a unit can have all the options.
func allowed(m *model.Machine, u unit) bool {
	return !slices.ContainsFunc(m.OnlyOneOf, func(group []string) bool {
		both := 0
		for _, o := range u {
			if slices.Contains(group, o) {
				both++
			}
		}
		return both > 1
	})
}

// askedIn are the options that a procedure's conditions, and those of what it
// performs, ask about.
func (b *Cache) askedIn(p *model.Procedure) []string {
	if asked, known := b.asked[p]; known {
		return asked
	}
	b.asked[p] = nil // in a ring of calls
	var out []string
	add := func(links []*model.Link) {
		for _, l := range links {
			if l.Is(model.LinkWhen) && !l.Bad && !slices.Contains(out, l.ID) {
				out = append(out, l.ID)
			}
		}
	}
	for _, phase := range p.Phases {
		if phase.Lead != nil {
			add(phase.Lead.Links)
		}
	}
	for _, s := range p.Steps {
		add(s.Links)
		if c, is := implied.When(s); is && !slices.Contains(out, c.Option) {
			out = append(out, c.Option)
		}
	}
	for _, call := range p.Calls {
		if to, is := call.To.(*model.Procedure); is {
			for _, o := range b.askedIn(to) {
				if !slices.Contains(out, o) {
					out = append(out, o)
				}
			}
		}
	}
	slices.Sort(out)
	b.asked[p] = out
	return out
}

// needed leaves out options that tell no two plans apart beside the others.
func needed(asked []string, kinds []kind) []string {
	had := map[string]bool{} // of options that no unit has there may be hundreds
	for _, k := range kinds {
		for _, o := range k.unit {
			had[o] = true
		}
	}
	asked = slices.DeleteFunc(slices.Clone(asked), func(o string) bool { return !had[o] })
	for _, o := range asked {
		rest := slices.DeleteFunc(slices.Clone(asked), func(other string) bool { return other == o })
		if tells(rest, kinds) {
			asked = rest
		}
	}
	return asked
}

// tells says that the options tell all kinds with different plans apart.
func tells(asked []string, kinds []kind) bool {
	first := map[string]*Plan{}
	for _, k := range kinds {
		key := k.unit.key(asked)
		if plan := first[key]; plan != nil && !plan.same(k.plan) {
			return false
		}
		first[key] = k.plan
	}
	return true
}

// add adds a kind of unit to those that a row is for.
func (r *Row) add(u unit, asked []string) {
	some := []walk.Condition{}
	for _, o := range asked {
		some = append(some, walk.Condition{Option: o, Is: slices.Contains(u, o)})
	}
	if !slices.ContainsFunc(r.Where, func(c []walk.Condition) bool { return slices.Equal(c, some) }) {
		r.Where = append(r.Where, some)
	}
}

// idle says that no step is done.
func (p *Plan) idle() bool { return len(p.Phases) == 0 }

// same says that two plans say the same of time. How many steps have none does
// not tell them apart.
func (p *Plan) same(o *Plan) bool {
	return p.Times.same(o.Times) && p.Chain == o.Chain && slices.Equal(p.Critical, o.Critical) &&
		slices.EqualFunc(p.Phases, o.Phases, func(a, b Phase) bool {
			return a.Phase == b.Phase && a.Times.same(b.Times) && a.From == b.From && a.To == b.To && slices.Equal(a.Spans, b.Spans)
		})
}

// same says that two times differ in nothing but how much has none.
func (t Times) same(o Times) bool {
	t.Untimed = o.Untimed
	return t == o
}

// with is a plan that also stands for another that says the same of time: each
// phase has as many steps without a time as it has in either.
func (p *Plan) with(o *Plan) *Plan {
	if p.Untimed == o.Untimed && slices.EqualFunc(p.Phases, o.Phases, func(a, b Phase) bool { return a.Untimed == b.Untimed }) {
		return p
	}
	both := *p
	both.Phases, both.Untimed, both.Varies = slices.Clone(p.Phases), 0, true
	for i := range both.Phases {
		ph := &both.Phases[i]
		ph.Varies = ph.Varies || ph.Untimed != o.Phases[i].Untimed
		ph.Untimed = max(ph.Untimed, o.Phases[i].Untimed)
		both.Untimed += ph.Untimed
	}
	return &both
}

// view is the book as it is read for one kind of unit and the ordinary outcome.
type view struct {
	*Cache
	unit       unit
	everything bool // every step counts as done
}

// everything is the book as it is read for all units and outcomes at once: what
// the writer is told holds for every one of them.
func everything(b *Cache) *view { return &view{Cache: b, everything: true} }

// done says that a step is done on the unit in the ordinary outcome: what is
// measured and looked at is as it should be, a question has the first of its
// answers, and what may be left out is left out.
func (v *view) done(s *model.Step) bool {
	if v.everything {
		return true
	}
	for at := s; at != nil; at = at.Parent {
		if slices.ContainsFunc(at.Links, func(l *model.Link) bool { return !l.Bad && (v.other(l) || unusual(l)) }) {
			return false
		}
	}
	if c, is := implied.When(s); is && slices.Contains(v.unit, c.Option) == c.Not {
		return false
	}
	return !v.skips(s.Phase)
}

// skips says that a phase is for other units.
func (v *view) skips(phase *model.Phase) bool {
	return !v.everything && phase.Lead != nil && slices.ContainsFunc(phase.Lead.Links, v.other)
}

// other says that a link asks for another unit.
func (v *view) other(l *model.Link) bool {
	return l.Is(model.LinkWhen) && !l.Bad && slices.Contains(v.unit, l.ID) == l.Not
}

// unusual says that a link asks for what ordinarily is not so.
func unusual(l *model.Link) bool {
	if l.Is(model.LinkIf) {
		h, is := l.To.(*model.Hold)
		return !is || slices.IndexFunc(h.Answers, func(a model.Pair) bool { return a.Key == l.Frag() }) > 0
	}
	return l.Is(model.LinkIfNot) || l.Is(model.LinkOptional)
}
