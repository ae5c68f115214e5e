package walk

import (
	"fmt"
	"slices"
	"strconv"

	"baybinder/generator/base/position"
	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// NotSupplied is told at the entry of supplies, or where there is none, at the link.
var NotSupplied = rule{
	Code:  "not-supplied",
	Title: "Too little of a supply for the refit",
	Why:   "The job stands open while somebody fetches one bolt, or the old one goes back in.",
	Mend:  "Write the amount in supplies:.",
}

// want is an amount of a supply that a link uses in some worlds.
type want struct {
	supply *model.Supply
	amount float64 // a count, or in the base unit
	volume quantity.Quantity
	where  diagram.Func
	at     position.Pos
}

func (w *walk) wants(s *model.Supply, amount float64, where diagram.Func) {
	if s != nil && !s.Unread && !w.free && where != diagram.No {
		w.wanted = append(w.wanted, want{supply: s, amount: amount, where: where, at: w.here.link.At})
	}
}

// newPart is the new one of a part that was taken off for good.
func (w *walk) newPart(p *model.Part, g diagram.Func) { w.wants(p.RenewWith.To, 1, g) }

// newFasteners are the new ones that go in at each refit of a part.
func (w *walk) newFasteners(p *model.Part, g diagram.Func) {
	for _, h := range p.HeldBy {
		if h.To == nil || h.To.RenewWith.To == nil {
			continue
		}
		if n := countOf(h); n > 0 {
			w.wants(h.To.RenewWith.To, float64(n), w.And(g, w.option(h.To.OnlyWith)))
		}
	}
}

// countOf is how many of a fastener hold a part; 0 where that could not be
// read.
func countOf(h model.Use[model.Fastener]) int {
	if h.Amount == "" {
		return 1
	}
	n, err := strconv.Atoi(h.Amount)
	if err != nil {
		return 0
	}
	return n
}

// refill is what goes into a circuit that was drained. It stands at the drain:
// where that is the procedure's own.
func (w *walk) refill(f *model.Fluid, x thing, g diagram.Func) {
	if f.Supply.To == nil || f.Capacity.Unit == quantity.Bare || w.free {
		return
	}
	w.each(w.last[x], g, func(e event, where diagram.Func) {
		at := w.here.link.At
		if e.link != nil && e.link.Kind != nil && e.link.Kind.Act == model.Drain {
			at = e.link.At
		}
		w.wanted = append(w.wanted, want{
			supply: f.Supply.To, amount: f.Capacity.Base(), volume: f.Capacity, where: where, at: at,
		})
	})
}

// supplied compares what the steps use with the procedure's supplies.
func (w *walk) supplied() {
	var done []*model.Supply
	for _, first := range w.wanted {
		if slices.Contains(done, first.supply) {
			continue
		}
		done = append(done, first.supply)
		w.suppliedOf(first.supply)
	}
}

func (w *walk) suppliedOf(s *model.Supply) {
	var uses []want
	for _, u := range w.wanted {
		if u.supply == s {
			uses = append(uses, u)
		}
	}
	most, way := w.most(uses)
	have, at, ok := w.listed(s, uses[0])
	if !ok || have >= most-1e-9*most {
		return
	}
	if at.File == nil {
		at = w.firstUse(uses, way)
	}
	w.missing = append(w.missing, missing{supply: s, use: uses[0], most: most, have: have, at: at})
}

// missing is a supply of which the list holds too little.
type missing struct {
	supply     *model.Supply
	use        want
	most, have float64
	at         position.Pos
}

// most is the largest amount that is used in one world, and which that is. A
// world in which all that is left would not make it more is not gone into: uses
// that have nothing to do with each other would make it twice as long each.
func (w *walk) most(uses []want) (float64, diagram.Func) {
	left := make([]float64, len(uses)+1)
	for i, u := range slices.Backward(uses) {
		left[i] = left[i+1] + u.amount
	}
	best, where := 0.0, diagram.Yes
	var rec func(i int, sum float64, world diagram.Func)
	rec = func(i int, sum float64, world diagram.Func) {
		if sum+left[i] <= best {
			return
		}
		if i == len(uses) {
			best, where = sum, world
			return
		}
		if with := w.And(world, uses[i].where); w.possible(with) {
			rec(i+1, sum+uses[i].amount, with)
			if without := w.AndNot(world, uses[i].where); without != diagram.No && w.possible(without) {
				rec(i+1, sum, without)
			}
			return
		}
		rec(i+1, sum, world)
	}
	rec(0, 0, diagram.Yes)
	return best, where
}

func (w *walk) firstUse(uses []want, way diagram.Func) position.Pos {
	for _, u := range uses {
		if w.possible(w.And(u.where, way)) {
			return u.at
		}
	}
	return uses[0].at
}

// listed is how much of a supply the procedure lists. It is not known where a
// line could not be read, or says nothing: that is told there.
func (w *walk) listed(s *model.Supply, use want) (have float64, at position.Pos, ok bool) {
	if w.p.Lost("supplies") {
		return 0, at, false
	}
	for _, u := range w.p.Supplies {
		if u.To == nil {
			return 0, at, false
		}
		if u.To != s {
			continue
		}
		amount, ok := amountOf(u, use)
		if !ok {
			return 0, at, false
		}
		have += amount
		at = u.At
	}
	return have, at, true
}

func amountOf(u model.Use[model.Supply], use want) (float64, bool) {
	if use.volume.Unit == quantity.Bare {
		if u.Amount == "" {
			return 1, true
		}
		q, err := quantity.Parse(u.Amount, quantity.Count)
		return q.Value, err == nil && q.Value > 0
	}
	q, err := quantity.Parse(u.Amount, use.volume.Unit.Dimension())
	return q.Base(), err == nil && q.Value > 0
}

// amount is an amount of a supply in words, all of it: of a rounded one the list
// would still hold too little.
func (m missing) amount(a float64) string {
	if m.use.volume.Unit == quantity.Bare {
		return strconv.FormatFloat(a, 'f', -1, 64)
	}
	q := m.use.volume
	return fmt.Sprintf("%s %s", strconv.FormatFloat(a/q.Base()*q.Value, 'g', 10, 64), q.Unit)
}
