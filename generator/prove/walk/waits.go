package walk

import (
	"math"
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/quantity"
	"baybinder/generator/language"
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
	"baybinder/generator/trade/electrical"
)

// What can be wrong with a wait.
var (
	WaitTooShort = rule{
		Code:  "wait-too-short",
		Title: "A wait that ends before what is stored is gone",
		Why:   "Who measures too early finds the circuit live, and who does not measure finds it with a hand.",
		Mend:  "Make the wait at least as long as computed and as the maker says, or mend the voltage, capacitance, resistance or wait of the energy.",
	}
	WaitShortOfLimit = rule{
		Code:  "wait-short-of-limit",
		Level: finding.Advice,
		Title: "A measurement that its wait lets fail",
		Why:   "A reading that is expected too high teaches people to expect that, and to pass it.",
		Mend:  "Wait until the charge has fallen to the limit, or let the first measurement have a limit that it has fallen to.",
	}
)

// timing is how long what an energy stores takes to go by itself.
type timing struct {
	store electrical.Store
	safe  electrical.Wait   // to the safe voltage; zero where that cannot be computed
	maker quantity.Quantity // the maker's waiting time
	least float64           // s, the longer of both
}

// timings are the energies whose waits can be judged. Where the shop's limits
// could not be read nothing is judged.
func (l *layout) timings(shop *model.Shop) {
	l.timed = map[thing]*timing{}
	if l.machine == nil || shop.Lost("limits.safe-voltage-dc") {
		return
	}
	for _, e := range l.machine.Energies {
		if t := timingOf(e, shop.Limits.SafeVoltageDC); t.least > 0 && !l.things[l.of[e]].unread && !e.Lost("kind", "voltage", "stored") {
			l.timed[l.of[e]] = t
			l.slow = append(l.slow, l.of[e])
		}
	}
}

func timingOf(e *model.Energy, safe quantity.Quantity) *timing {
	t := &timing{maker: e.Stored.Wait, least: e.Stored.Wait.Base()}
	if e.Kind == "electric" {
		store := electrical.Store{Voltage: e.Voltage, Capacitance: e.Stored.Capacitance, Resistance: e.Stored.Resistance}
		if store.Hardly() {
			return t // that is told at the machine's file
		}
		t.store = store
		t.safe, _ = t.store.WaitFor(safe)
		t.least = max(t.least, t.safe.Seconds)
	}
	return t
}

func (t *timing) enough(seconds float64) bool { return seconds >= t.least*(1-1e-9) }

// tally is how long was waited for an energy since it was last cut.
type tally struct {
	cut      bool // it was cut in this walk; else what was waited before comes on top
	seconds  float64
	waits    int
	at       event // the last of the waits
	judged   bool  // a proof has come, or nothing is known of the waits
	measured bool  // a measurement has come
}

// What was waited before anything is known of it: nothing yet, and where it is
// not known.
const (
	notWaited diagram.Func = iota
	justCut
	notKnown
)

func firstTallies() []tally {
	return []tally{{}, {cut: true}, {cut: true, judged: true, measured: true}}
}

// tallied is the number of a tally.
func (w *walk) tallied(t tally) diagram.Func {
	if i := slices.Index(w.tallies, t); i >= 0 {
		return diagram.Func(i)
	}
	w.tallies = append(w.tallies, t)
	return diagram.Func(len(w.tallies) - 1)
}

// retally changes the tallies of an energy where g holds.
func (w *walk) retally(x thing, g diagram.Func, change func(tally) tally) {
	if g == diagram.No || w.lay.timed[x] == nil {
		return
	}
	was := w.waited[x]
	now := w.Ite(g, w.Apply(was, func(i diagram.Func) diagram.Func { return w.tallied(change(w.tallies[i])) }), was)
	if !now.Constant() && len(w.vars) > Most && w.meeting(now) > Most {
		now = notKnown
	}
	w.waited[x] = now
}

// tallies visits the tallies of an energy, and where each is so.
func (w *walk) eachTally(x thing, g diagram.Func, do func(t tally, where diagram.Func)) {
	if g == diagram.No {
		return
	}
	of := w.waited[x]
	if of.Constant() {
		do(w.tallies[of], g)
		return
	}
	for i := range slices.Clone(w.tallies) {
		if where := w.And(g, w.Equals(of, diagram.Func(i))); where != diagram.No {
			do(w.tallies[i], where)
		}
	}
}

// put changes how a thing stands, with an energy what was waited for it, and
// what was told of it in what is performed.
func (w *walk) put(x thing, g, to diagram.Func) {
	if below, open := w.toldBelow[x], w.foundOpen[x]; w.Or(below, open) != diagram.No {
		was := w.get(x)
		defer func() {
			changed := w.Differs(was, w.get(x))
			w.toldBelow[x], w.foundOpen[x] = w.AndNot(below, w.homely(changed)), w.AndNot(open, changed)
		}()
	}
	if w.lay.timed[x] == nil || w.applying {
		w.ledger.put(x, g, to)
		return
	}
	was := w.get(x)
	w.ledger.put(x, g, to)
	now := w.get(x)
	over := w.And(w.Is(was, states(released)), w.Is(now, states(live, isolated, locked)))
	w.judgeWaits(x, over)
	w.outByHand(x, w.Is(now, states(unknown)))
	cut := w.And(w.Is(was, liveStates), w.Is(now, notLive))
	w.retally(x, cut, func(tally) tally { return w.tallies[justCut] })
}

// shift moves a thing where g holds.
func (w *walk) shift(x thing, g diagram.Func, m diagram.Map) {
	w.put(x, g, w.After(w.get(x), m))
}

// cloud makes one thing unknown where g holds, and what moves with it.
func (w *walk) cloud(n model.Named, g diagram.Func) {
	for _, x := range w.lay.moving(n) {
		w.put(x, g, unknown)
	}
}

// havoc makes the things of some sorts unknown where g holds.
func (w *walk) havoc(g diagram.Func, sorts ...sort) {
	for x := range w.lay.things {
		if slices.Contains(sorts, w.lay.things[x].sort) {
			w.put(thing(x), g, unknown)
		}
	}
}

// outByHand is what an energy stores being out by something else than waits.
func (w *walk) outByHand(x thing, g diagram.Func) {
	w.retally(x, g, func(tally) tally { return w.tallies[notKnown] })
}

// waitsOn adds a wait for an energy that is cut.
func (w *walk) waitsOn(x thing, h *model.Hold, g diagram.Func) {
	g = w.And(w.And(g, w.present(x)), w.Is(w.get(x), notLive))
	w.retally(x, g, func(t tally) tally {
		if h.For.IsZero() {
			return w.tallies[notKnown]
		}
		t.seconds, t.waits, t.at = t.seconds+h.For.Least.Base(), t.waits+1, w.here
		return t
	})
}

// demand is something that asks for a wait which began, or may have begun,
// before the procedure.
type demand struct {
	rule    *rule
	thing   thing
	where   diagram.Func
	before  tally   // what the procedure itself waits before it
	seconds float64 // what it asks for
	of      *model.Hold
}

// unmet says that what was waited is less than a demand asks for. What is too
// short for anybody is told as that alone.
func (t *timing) unmet(d demand) bool {
	waited := d.before.seconds
	return d.before.at.link != nil && waited < d.seconds*(1-1e-9) && t.enough(waited) == (d.rule == &WaitShortOfLimit)
}

// judgeWaits holds what was waited against what it takes, before a proof or
// where the energy is no longer at rest.
func (w *walk) judgeWaits(x thing, g diagram.Func) {
	time := w.lay.timed[x]
	if time == nil || g == diagram.No {
		return
	}
	w.eachTally(x, g, func(t tally, where diagram.Func) {
		if !t.judged {
			w.asksFor(demand{&WaitTooShort, x, where, t, time.least, nil})
		}
	})
	w.retally(x, g, func(t tally) tally { t.judged = true; return t })
}

// measured holds a measurement of a voltage against what the charge has fallen
// to by then. Waits that are too short for anybody have their own finding.
func (w *walk) measuresAfter(x thing, h *model.Hold, g diagram.Func) {
	time := w.lay.timed[x]
	if time == nil || !time.store.Known() || h.Kind != "measure" || w.branching(w.here.step) {
		return
	}
	_, most := h.Limit.Bounds()
	if h.Limit.Unit.Dimension() != quantity.Voltage || h.Limit.Flow == quantity.AC || !(most > 0) || math.IsInf(most, 1) {
		return
	}
	seconds := electrical.DischargeTime(time.store.Resistance.Base(), time.store.Capacitance.Base(), time.store.Start(), most)
	g = w.And(w.And(g, w.present(x)), w.Is(w.get(x), notLive))
	w.eachTally(x, g, func(t tally, where diagram.Func) {
		if !t.measured {
			w.asksFor(demand{&WaitShortOfLimit, x, where, t, seconds, h})
		}
	})
	w.retally(x, g, func(t tally) tally {
		t.measured = t.measured || t.waits > 0 || w.free && !t.cut
		return t
	})
}

// branching says that a step is done only where a hold went a certain way.
func (w *walk) branching(s *model.Step) bool {
	for ; s != nil; s = s.Parent {
		for _, l := range s.Links {
			if l.Kind.Branches {
				return true
			}
		}
	}
	return false
}

// asksFor tells of a demand that is not met; a summary keeps it for the callers.
func (w *walk) asksFor(d demand) {
	if w.free {
		w.demands = append(w.demands, d)
		return
	}
	time := w.lay.timed[d.thing]
	if !time.unmet(d) {
		return
	}
	at := d.before.at
	if d.rule == &WaitShortOfLimit {
		at = w.here
	}
	told := len(w.issues)
	w.at(at, func() { w.findSo(d.rule, nothing, d.where, w.shortWords(d, time)) })
	for i := range w.issues[told:] {
		w.issues[told+i].short = &d
	}
}

// demandsInAll are the demands of a procedure on its callers, without what is
// not met where the procedure is walked alone: that is told there. One that the
// procedure itself began is a demand where it is the callers' people who make it
// one: a kept plug is a lock where one person works.
func (w *walk) demandsInAll() []demand {
	type key struct {
		rule  *rule
		thing thing
		at    event
	}
	athome := map[key]diagram.Func{}
	for _, d := range w.demands {
		if w.lay.timed[d.thing].unmet(d) && (d.before.cut || w.waitsAtHome(d.thing)) {
			k := key{d.rule, d.thing, d.before.at}
			athome[k] = w.Or(athome[k], w.somehow(w.homely(d.where)))
		}
	}
	var out []demand
	for _, d := range w.demands {
		if d.before.cut && !w.lay.timed[d.thing].unmet(d) {
			continue
		}
		d.where = w.fewer(w.AndNot(d.where, athome[key{d.rule, d.thing, d.before.at}]))
		if w.possible(d.where) {
			out = append(out, d)
		}
	}
	return out
}

// waitsAtHome says that a procedure which is walked alone begins before what
// an energy stores is out: what it waits itself must be enough.
func (w *walk) waitsAtHome(x thing) bool {
	return w.home[x] != released && w.home[x] != dead && w.home[x] != unknown
}

// waitedInAll is what was waited at the end of a procedure, for its callers.
func (w *walk) waitedInAll() map[thing]diagram.Func {
	out := map[thing]diagram.Func{}
	for _, x := range w.lay.slow {
		if !w.seen[x] {
			continue
		}
		w.retally(x, w.Is(w.get(x), states(released)), func(t tally) tally {
			t.judged = t.judged || t.cut || t.at.link != nil && w.waitsAtHome(x)
			return t
		})
		if f := w.shortest(w.waited[x]); f != notWaited {
			out[x] = f
		}
	}
	return out
}

// shortest is a tally that depends on few conditions of the procedure's own:
// where there are more, the least that may have been waited.
func (w *walk) shortest(f diagram.Func) diagram.Func {
	if w.inner(f) <= fewInside {
		return f
	}
	var order []diagram.Func
	for i := range w.tallies {
		order = append(order, diagram.Func(i))
	}
	slices.SortStableFunc(order, func(a, b diagram.Func) int { return w.tallies[b].compare(w.tallies[a]) })
	out := notWaited
	for _, i := range order {
		out = w.Ite(w.somehow(w.Equals(f, i)), i, out)
	}
	return out
}

// compare orders tallies, the one that asks most of what follows first.
func (t tally) compare(o tally) int {
	switch {
	case t.judged != o.judged:
		return rankOf(t.judged) - rankOf(o.judged)
	case t.seconds < o.seconds:
		return -1
	case t.seconds > o.seconds:
		return 1
	}
	return rankOf(o.cut) - rankOf(t.cut)
}

func rankOf(yes bool) int {
	if yes {
		return 1
	}
	return 0
}

// inCall puts what a callee waits on top of what was waited before.
func (t tally) inCall(inside tally, here event) tally {
	if inside.at.link != nil {
		inside.at = here
	}
	if inside.cut {
		return inside
	}
	if inside.at.link == nil {
		inside.at = t.at
	}
	inside.cut = t.cut
	inside.seconds += t.seconds
	inside.waits += t.waits
	inside.judged = inside.judged || t.judged
	inside.measured = inside.measured && inside.waits > 0 || t.measured
	return inside
}

// demandsOf judges what a call asks for here.
func (w *walk) demandsOf(in *importer, g diagram.Func) {
	for _, d := range in.sum.demands {
		if d.rule == &WaitShortOfLimit && w.branching(w.here.step) {
			continue
		}
		where := w.And(g, in.take(d.where))
		w.eachTally(d.thing, where, func(t tally, where diagram.Func) {
			d := d
			if !d.before.cut && (t.judged && d.rule == &WaitTooShort || t.measured && d.rule == &WaitShortOfLimit) {
				return
			}
			d.where, d.before = where, t.inCall(d.before, w.here)
			w.asksFor(d)
		})
	}
}

// waitedIn takes over what a call waits.
func (w *walk) waitedIn(in *importer, g diagram.Func) {
	for _, x := range w.lay.slow {
		f, there := in.sum.waited[x]
		if !there {
			continue
		}
		inside := in.take(f)
		was := w.waited[x]
		for i, t := range in.sum.tallies {
			where := w.And(g, w.Equals(inside, diagram.Func(i)))
			if where == diagram.No {
				continue
			}
			now := w.Apply(was, func(n diagram.Func) diagram.Func { return w.tallied(w.tallies[n].inCall(t, w.here)) })
			w.waited[x] = w.Ite(where, now, w.waited[x])
		}
	}
}

// shortWords says what was waited and what it takes.
func (w *walk) shortWords(d demand, time *timing) finding.Words {
	label := w.label(d.thing)
	waited := quantity.Elapsed(int(math.Round(d.before.seconds))).String()
	subject := finding.Say("a wait of %s is", waited)
	if d.before.waits > 1 {
		subject = finding.Say("%d waits, %s together, are", d.before.waits, waited)
	}
	if d.rule == &WaitShortOfLimit {
		left := electrical.VoltageAfter(time.store.Resistance.Base(), time.store.Capacitance.Base(), time.store.Start(), d.before.seconds)
		return finding.Say("by then the %s still has %s, and the %s asks for %s: that takes %s", label,
			quantity.Of(left, quantity.Volt, 3), d.of.Label(), language.Limit(d.of.Limit), inFull(d.seconds))
	}
	if time.safe.Seconds < time.least {
		return finding.Say("%s too short: the maker of the %s asks for %s", subject, label, time.maker)
	}
	return finding.Say("%s too short: the charge of the %s takes %s to fall to %s", subject, label, time.safe.Least, w.manual.Shop.Limits.SafeVoltageDC)
}

// inFull is a time in whole seconds, rounded up.
func inFull(seconds float64) string {
	return quantity.Elapsed(int(math.Ceil(seconds - 1e-9))).String()
}

// mendWait says how long to wait, and how that is known.
func (w *walk) mendWait(i *issue) finding.Words {
	if i.short == nil {
		return finding.Words{}
	}
	time := w.lay.timed[i.short.thing]
	switch {
	case i.rule == &WaitShortOfLimit:
		return finding.Say("wait %s; t = R·C·ln(V/limit) with %s and %s", inFull(i.short.seconds), time.store.Resistance, time.store.Capacitance)
	case time.safe.Seconds < time.least:
		return finding.Say("wait at least %s, as stored: says", time.maker)
	}
	return finding.Say("wait at least %s; %s", time.safe.Least, finding.Spoken(func(lang string) string {
		in := &language.Of(lang).Worked
		return time.safe.Explain(&in.Discharge).Line(in.Source)
	}))
}
