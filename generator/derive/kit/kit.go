// Package kit rolls up what a job needs before it starts: tools, supplies, gear and roles, through every called procedure.
//
// # Decided where the format is silent
//
// Of a tool the most that is needed by any one procedure on the way, of a supply the sum. Locks
// reach the kit by themselves: as many as the job that is done needs at once, counted by the walk
// (`walk.Walk.Locked`), of each of its own people; locks that are on before it begins (`expects`)
// are not fetched. The setting behind an adapter (`fastening.Ways`) is shown for each wrench that
// covers it, of the same tools that the rule chooses from.
// The second person of a check that is not made apart is told beside the people, not added to
// them: at the step, or at the step that performs the procedure with the check.
package kit

import (
	"slices"
	"strconv"

	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
)

// Kit is what one job needs.
type Kit struct {
	Tools    []Tool   // in the order in which they are first needed
	Supplies []Supply // likewise
	Hazards  []*model.Hazard
	Roles    []*model.Role
	People   int             // at once, without the seconds
	Seconds  []model.Second  // who is needed besides at a step of this job, or at one that performs another
	Energies []*model.Energy // that the job isolates
	Points   []*model.Point  // where they are cut
}

// Tool is a tool and how many of it are in use at once.
type Tool struct {
	Tool  *model.Tool
	Count int
}

// Supply is a supply and how much of it is used up, in the unit in which it is
// stocked where the amount can be counted in that. Amounts holds more than
// one sum where the amounts cannot be added.
type Supply struct {
	Supply *model.Supply
	Amount quantity.Quantity // zero where no amount is written
	Said   bool
	Parts  []Part // what Amount is the sum of, in the order of the calls
}

// Part is what one procedure by itself uses up of a supply.
type Part struct {
	Of     *model.Procedure
	Amount quantity.Quantity
}

// Cache makes and remembers the kits of a manual's procedures.
type Cache struct {
	kits  map[*model.Procedure]*Kit // with the shop's locks
	bare  map[*model.Procedure]*Kit // without
	locks *model.Locks
	walks *walk.Result
}

// NewCache makes an empty one for a shop whose procedures were walked.
func NewCache(shop *model.Shop, walks *walk.Result) *Cache {
	return &Cache{kits: map[*model.Procedure]*Kit{}, bare: map[*model.Procedure]*Kit{}, locks: shop.Locks, walks: walks}
}

// Forget makes the kit of a procedure anew when it is asked for next.
func (b *Cache) Forget(p *model.Procedure) {
	delete(b.kits, p)
	delete(b.bare, p)
}

// Of is the kit of a procedure with everything that it calls. A procedure in a
// ring of calls counts once.
func (b *Cache) Of(p *model.Procedure) *Kit {
	if k := b.kits[p]; k != nil {
		return k
	}
	k := *b.without(p)
	k.Tools = slices.Clone(k.Tools)
	if n := b.walks.Of(p).Locked; n > 0 && b.locks != nil {
		k.tool(b.locks.Tool.To, n*LocksAt(b.locks, p))
	}
	b.kits[p] = &k
	return &k
}

// LocksAt is how many locks a job puts on each point that stands locked: one, or
// one for each of its people, which those of a procedure that it calls do not
// add to. One where the shop says nothing of it.
func LocksAt(locks *model.Locks, job *model.Procedure) int {
	if locks == nil || locks.Each == "job" {
		return 1
	}
	return max(1, job.People)
}

// without is the kit of a procedure and of all that it calls, but for the locks:
// how many are needed is a matter of the whole job.
func (b *Cache) without(p *model.Procedure) *Kit {
	if k := b.bare[p]; k != nil {
		return k
	}
	k := &Kit{People: p.People}
	b.bare[p] = k
	k.list(p)
	k.steps(b, p)
	for _, call := range p.Calls {
		if to, ok := call.To.(*model.Procedure); ok {
			k.add(b.without(to))
		}
	}
	return k
}

// list takes what the front matter lists.
func (k *Kit) list(p *model.Procedure) {
	for _, t := range p.Tools {
		count, err := strconv.Atoi(t.Amount)
		if err != nil {
			count = 1
		}
		k.tool(t.To, max(1, count))
	}
	for _, s := range p.Supplies {
		use := UseOf(s)
		if use.Said {
			use.Parts = []Part{{p, use.Amount}}
		}
		k.supply(use)
	}
	for _, h := range p.Hazards {
		k.hazard(h.Met)
	}
	for _, r := range p.Needs {
		k.role(r.To)
	}
}

// UseOf reads a line of supplies. A bare number counts pieces; an amount is in
// the unit in which the supply is stocked.
func UseOf(u model.Use[model.Supply]) Supply {
	s := Supply{Supply: u.To}
	if u.Amount == "" {
		return s
	}
	text := u.Amount
	if _, err := strconv.Atoi(text); err == nil {
		text += " each"
	}
	if q, err := quantity.Parse(text, quantity.None); err == nil {
		s.Amount, s.Said = q, true
	}
	if u.To != nil {
		s.Amount = s.Amount.Beside(u.To.Stock())
	}
	return s
}

// steps takes what reaches the kit by itself: the testers of holds, what is
// isolated, and who is needed besides.
func (k *Kit) steps(b *Cache, p *model.Procedure) {
	for _, s := range p.Steps {
		for _, second := range s.Seconds() {
			k.Seconds = model.AddSecond(k.Seconds, second)
		}
		for _, l := range s.Links {
			k.link(l)
			if to, ok := l.To.(*model.Procedure); ok && l.Kind.Act == model.Call {
				k.secondsAt(s, b.without(to))
			}
		}
	}
}

// secondsAt takes those who are needed besides in a procedure that a step
// performs.
func (k *Kit) secondsAt(s *model.Step, callee *Kit) {
	for _, second := range callee.Seconds {
		k.Seconds = model.AddSecond(k.Seconds, model.Second{Step: s, By: second.By})
	}
}

func (k *Kit) link(l *model.Link) {
	switch to := l.To.(type) {
	case *model.Hold:
		k.tool(to.With.To, 1)
		k.tool(to.ProvedOn.To, 1)
	case *model.Energy:
		if l.Kind.Act == model.Isolate {
			k.energy(to)
			for _, p := range to.Points { // a point cuts every energy that names it
				k.cut(p.To)
			}
		}
	case *model.Point:
		if l.Kind.Act == model.Isolate {
			k.cut(to)
		}
	}
}

// cut takes the energies that a point cuts.
func (k *Kit) cut(p *model.Point) {
	if p == nil {
		return
	}
	for _, e := range p.Cuts {
		k.energy(e)
	}
}

// add takes the kit of a called procedure: of a tool the most that is needed
// at once, of a supply the sum.
func (k *Kit) add(other *Kit) {
	for _, t := range other.Tools {
		k.tool(t.Tool, t.Count)
	}
	for _, s := range other.Supplies {
		k.supply(s)
	}
	for _, h := range other.Hazards {
		k.hazard(h)
	}
	for _, r := range other.Roles {
		k.role(r)
	}
	for _, e := range other.Energies {
		k.energy(e)
	}
	k.People = max(k.People, other.People)
}

func (k *Kit) tool(t *model.Tool, count int) {
	if t == nil {
		return
	}
	for i := range k.Tools {
		if k.Tools[i].Tool == t {
			k.Tools[i].Count = max(k.Tools[i].Count, count)
			return
		}
	}
	k.Tools = append(k.Tools, Tool{t, count})
}

func (k *Kit) supply(s Supply) {
	if s.Supply == nil {
		return
	}
	for i := range k.Supplies {
		have := &k.Supplies[i]
		if have.Supply != s.Supply || (have.Said && s.Said && have.Amount.Unit.Dimension() != s.Amount.Unit.Dimension()) {
			continue
		}
		have.plus(s)
		return
	}
	k.Supplies = append(k.Supplies, s)
}

// plus adds an amount in the unit of the first.
func (s *Supply) plus(other Supply) {
	s.Parts = slices.Concat(s.Parts, other.Parts)
	switch {
	case !other.Said:
	case !s.Said:
		s.Amount, s.Said = other.Amount, true
	default:
		s.Amount = s.Amount.Plus(other.Amount)
	}
}

// hazard takes a hazard and the gear against it.
func (k *Kit) hazard(h *model.Hazard) {
	if h == nil || slices.Contains(k.Hazards, h) {
		return
	}
	k.Hazards = append(k.Hazards, h)
	for _, w := range h.Wear {
		k.tool(w.To, 1)
	}
}

func (k *Kit) role(r *model.Role) {
	if r == nil || slices.Contains(k.Roles, r) {
		return
	}
	k.Roles = append(k.Roles, r)
}

func (k *Kit) energy(e *model.Energy) {
	if slices.Contains(k.Energies, e) {
		return
	}
	k.Energies = append(k.Energies, e)
	for _, p := range e.Points {
		k.point(p.To)
	}
}

func (k *Kit) point(p *model.Point) {
	if p == nil || slices.Contains(k.Points, p) {
		return
	}
	k.Points = append(k.Points, p)
}
