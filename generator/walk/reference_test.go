package walk_test

import (
	"fmt"
	"math"
	"sort"
	"strings"

	"baybinder/generator/manual"
	"baybinder/generator/quantity"
	"baybinder/generator/source"
)

// The reference walk is slow and plain: it takes one world at a time, inlines
// every call, and keeps how things stand as words in a map. It is written from
// the format's text and shares nothing with the package but the model.

// refWorld answers every question about a world. What was never asked before
// is decided by the next choice; the choices are counted through, so that all
// worlds come up.
type refWorld struct {
	options map[string]bool
	choices []int
	sizes   []int
	known   map[string]int
	next    int
}

func (w *refWorld) choose(key string, n int) int {
	if v, ok := w.known[key]; ok {
		return v
	}
	if w.next == len(w.choices) {
		w.choices = append(w.choices, 0)
		w.sizes = append(w.sizes, n)
	}
	v := w.choices[w.next]
	w.next++
	w.known[key] = v
	return v
}

// advance goes to the next world of the same options.
func (w *refWorld) advance() bool {
	w.choices, w.sizes = w.choices[:w.next], w.sizes[:w.next]
	for i := len(w.choices) - 1; i >= 0; i-- {
		if w.choices[i]++; w.choices[i] < w.sizes[i] {
			w.choices, w.sizes = w.choices[:i+1], w.sizes[:i+1]
			w.known, w.next = map[string]int{}, 0
			return true
		}
	}
	return false
}

// optionSets are the sets of options that units have.
func optionSets(m *manual.Machine) []map[string]bool {
	if m == nil {
		return []map[string]bool{{}}
	}
	if len(m.Units) > 0 {
		var out []map[string]bool
		for _, u := range m.Units {
			set := map[string]bool{}
			for _, o := range u.Options {
				set[o] = true
			}
			out = append(out, set)
		}
		return out
	}
	var out []map[string]bool
	for bits := 0; bits < 1<<len(m.Options); bits++ {
		set := map[string]bool{}
		for i, o := range m.Options {
			if bits>>i&1 == 1 {
				set[o.Key] = true
			}
		}
		good := true
		for _, group := range m.OnlyOneOf {
			n := 0
			for _, o := range group {
				if set[o] {
					n++
				}
			}
			good = good && n <= 1
		}
		if good {
			out = append(out, set)
		}
	}
	return out
}

// refFinding is where and what; the reference says no words.
type refFinding struct {
	path string
	line int
	code string
}

func (f refFinding) String() string { return fmt.Sprintf("%s:%d: %s", f.path, f.line, f.code) }

// mostWorlds is how many worlds the reference has the patience for.
const mostWorlds = 120

type reference struct {
	m     *manual.Manual
	dead  map[*manual.Link]bool // reverse: links with a finding
	found map[refFinding]bool

	walked int // worlds; more than mostWorlds are given up

	reversed, something map[*manual.Link]bool // reverse: links that were done; that had something to take back
}

// referenceWalk is everything that the walk of one procedure finds. It is false
// where there are too many worlds.
func referenceWalk(m *manual.Manual, p *manual.Procedure, dead map[*manual.Link]bool) (map[refFinding]bool, bool) {
	r := &reference{m: m, dead: dead}
	idle := map[*manual.Link]bool{}
	for _, l := range reverseLinks(p) {
		r.worlds(p)
		if r.reversed[l] && !r.something[l] {
			idle[l] = true
		}
		if r.found[at(l.At, "reverse")] {
			dead[l] = true
		}
	}
	r.worlds(p)
	for l := range idle {
		r.found[at(l.At, "reverse")] = true
	}
	return r.found, r.walked <= mostWorlds
}

func reverseLinks(p *manual.Procedure) []*manual.Link {
	var out []*manual.Link
	for _, s := range p.Steps {
		for _, l := range s.Links {
			if l.Is("reverse") {
				out = append(out, l)
			}
		}
	}
	return out
}

func (r *reference) worlds(p *manual.Procedure) {
	r.walked = 0
	if r.found == nil {
		r.found = map[refFinding]bool{}
	}
	for f := range r.found {
		if f.code != "reverse" {
			delete(r.found, f)
		}
	}
	r.reversed, r.something = map[*manual.Link]bool{}, map[*manual.Link]bool{}
	for _, set := range optionSets(p.For.To) {
		w := &refWorld{options: set, known: map[string]int{}}
		for {
			f := r.alone(p, p.For.To, w, "")
			for k := range f.out {
				r.found[k] = true
			}
			if r.walked++; !w.advance() || r.walked > mostWorlds {
				break
			}
		}
	}
}

func at(p source.Pos, code string) refFinding {
	line, _ := p.LineCol()
	return refFinding{p.Path(), line, code}
}

// raw is a fault before it is asked whose fault it is.
type raw struct {
	path string // the calls on the way, from the procedure that is walked alone
	link *manual.Link
	code string
	what string
}

// frame is one procedure on the way.
type frame struct {
	p       *manual.Procedure
	path    string
	link    *manual.Link // under way
	step    *manual.Step
	takings map[*manual.Hold][]refTaking
}

type refTaking struct {
	link *manual.Link
	step *manual.Step
}

type refUndo struct {
	kind string // part, fastening, fastener, tool, setting
	id   string
	part *manual.Part
	tool *manual.Tool
	fast *manual.Fastener
	set  *manual.Setting
	step *manual.Step
	pos  int
	new  bool

	depth int
}

type refOpening struct {
	part   *manual.Part
	marked bool
	where  []*manual.Link // path of links
	callee string
}

// run is the walk of one procedure in one world, callees inlined.
type run struct {
	*reference
	w       *refWorld
	machine *manual.Machine
	top     *manual.Procedure
	state   map[string]string
	before  map[string]string // the link under way
	start   map[string]string
	began   map[string]*manual.Link
	moved   map[string]bool // in the call under way, at the top
	told    map[string]bool
	frames  []*frame
	raws    map[raw]bool
	exclude []map[raw]bool
	from    []string // the paths at which the excludes begin
	out     map[refFinding]bool
	opened  map[string][]openedAt // a line's opener
	alike   map[string]*refOpening
	waiting []refWaiting
	undos   []refUndo
	derived bool
	by      string // who opened the line under judgement
	needs   map[*manual.Supply]float64
	lost    map[string][]string // hold|path → energies
}

type openedAt struct {
	link *manual.Link
	step *manual.Step
}

type refWaiting struct {
	part *manual.Part
	key  string
	link *manual.Link
	path string
}

// alone walks a procedure from what it expects.
func (r *reference) alone(p *manual.Procedure, m *manual.Machine, w *refWorld, path string) *run {
	x := &run{
		reference: r, w: w, machine: m, top: p, state: map[string]string{}, began: map[string]*manual.Link{},
		told: map[string]bool{}, raws: map[raw]bool{}, out: map[refFinding]bool{}, moved: map[string]bool{},
		opened: map[string][]openedAt{}, alike: map[string]*refOpening{}, needs: map[*manual.Supply]float64{},
		lost: map[string][]string{},
	}
	x.state = x.expected(p)
	x.start = map[string]string{}
	for k, v := range x.state {
		x.start[k] = v
	}
	x.procedure(p, path)
	if path == "" {
		x.atEnd(p)
	}
	return x
}

// ---- things and their normal states

func key(kind, id string) string       { return kind + ":" + id }
func fasteningKey(f, p string) string  { return "fastening:" + f + "@" + p }
func (x *run) get(k string) string     { return orNormal(x.state[k], k) }
func (x *run) startOf(k string) string { return orNormal(x.start[k], k) }

func orNormal(s, k string) string {
	if s != "" {
		return s
	}
	return normalOf(k)
}

func normalOf(k string) string {
	kind, _, _ := strings.Cut(k, ":")
	switch kind {
	case "energy", "point":
		return "live"
	case "part":
		return "on"
	case "fastening", "fastener":
		return "tight"
	case "fluid":
		return "full"
	case "spill":
		return "dry"
	case "tool":
		return "cleared"
	case "setting":
		return "reset"
	case "group":
		return "unmarked"
	case "gap":
		return "closed"
	}
	return ""
}

func (x *run) set(k, to string) {
	if x.get(k) == to {
		return
	}
	x.state[k] = to
	x.moved[k] = true
	if len(x.frames) == 1 {
		x.untell(k)
	}
}

func (x *run) untell(k string) {
	for t := range x.told {
		if strings.HasSuffix(t, "|"+k) {
			delete(x.told, t)
		}
	}
}

func (x *run) has(c manual.Condition) bool {
	return c.Option == "" || x.w.options[c.Option] != c.Not
}

// wordOf is the word of a line of expects or leaves: what takes no lock cannot
// be more than isolated.
func wordOf(s manual.State) string {
	if s.Word == "locked" {
		switch n := s.Thing.(type) {
		case *manual.Energy:
			if !lockable(n) {
				return "isolated"
			}
		case *manual.Point:
			if !n.Lock {
				return "isolated"
			}
		}
	}
	return s.Word
}

// ---- the start

func (x *run) expected(p *manual.Procedure) map[string]string {
	s := map[string]string{}
	x.state = s
	named := map[string]bool{}
	for _, e := range fastenersLast(p.Expects) {
		x.setNamed(e)
		named[e.Thing.Base().ID] = true
	}
	if x.machine == nil {
		return s
	}
	for _, pt := range x.machine.Points {
		if named[pt.ID] {
			continue
		}
		if n := x.pointNeed(pt, p); n != "live" {
			s[key("point", pt.ID)] = n
		}
	}
	for _, e := range x.machine.Energies {
		if named[e.ID] || len(e.Points) == 0 {
			continue
		}
		if st := x.energyFromPoints(e); st != "live" {
			s[key("energy", e.ID)] = st
		} else if load(e) && x.heldByTool(e) {
			s[key("energy", e.ID)] = "live+"
		}
	}
	return s
}

func fastenersLast(list []manual.State) []manual.State {
	var first, last []manual.State
	for _, s := range list {
		if _, is := s.Thing.(*manual.Fastener); is {
			last = append(last, s)
		} else {
			first = append(first, s)
		}
	}
	return append(first, last...)
}

// setNamed puts what a line of expects names into its state.
func (x *run) setNamed(e manual.State) {
	switch n := e.Thing.(type) {
	case *manual.Energy:
		x.state[key("energy", n.ID)] = wordOf(e)
	case *manual.Point:
		x.state[key("point", n.ID)] = wordOf(e)
	case *manual.Part:
		x.state[key("part", n.ID)] = wordOf(e)
		for _, h := range n.HeldBy {
			if wordOf(e) == "off" {
				x.state[fasteningKey(h.To.ID, n.ID)] = "loose"
			} else {
				x.state[fasteningKey(h.To.ID, n.ID)] = "tight"
			}
		}
	case *manual.Fastener:
		if len(n.Holds) == 0 {
			x.state[key("fastener", n.ID)] = wordOf(e)
		}
		for _, p := range n.Holds {
			x.state[fasteningKey(n.ID, p.ID)] = wordOf(e)
		}
	case *manual.Fluid:
		x.state[key("fluid", n.ID)] = wordOf(e)
	case *manual.Tool:
		x.state[key("tool", n.ID)] = wordOf(e)
	case *manual.Setting:
		x.state[key("setting", n.ID)] = wordOf(e)
	}
}

func (x *run) pointNeed(pt *manual.Point, p *manual.Procedure) string {
	need := "live"
	for _, e := range p.Expects {
		en, is := e.Thing.(*manual.Energy)
		if !is || !cuts(pt, en) {
			continue
		}
		switch wordOf(e) {
		case "locked", "released", "dead":
			if pt.Lock {
				need = "locked"
			} else if need == "live" {
				need = "isolated"
			}
		case "isolated":
			if need == "live" {
				need = "isolated"
			}
		}
	}
	return need
}

func cuts(pt *manual.Point, e *manual.Energy) bool {
	for _, p := range e.Points {
		if p.To == pt {
			return true
		}
	}
	return false
}

func (x *run) energyFromPoints(e *manual.Energy) string {
	locks, shut := 0, 0
	for _, p := range e.Points {
		s := x.get(key("point", p.To.ID))
		if s == "live" {
			return "live"
		}
		if p.To.Lock {
			locks++
			if s == "locked" {
				shut++
			}
		}
	}
	if locks > 0 && locks == shut {
		return "locked"
	}
	return "isolated"
}

func load(e *manual.Energy) bool {
	return e.Kind == "gravity" || e.Kind == "spring" || e.Kind == "motion"
}

func lockable(e *manual.Energy) bool {
	for _, p := range e.Points {
		if p.To.Lock {
			return true
		}
	}
	return false
}

func (x *run) heldByTool(e *manual.Energy) bool {
	for _, t := range e.BlockedBy {
		if x.get(key("tool", t.To.ID)) == "placed" {
			return true
		}
	}
	return false
}

// ---- findings

func (x *run) frame() *frame { return x.frames[len(x.frames)-1] }

// fault reports something wrong at the link under way.
func (x *run) fault(code, what string) {
	x.faultAt(x.frame().link, x.frame().path, code, what, false, nil)
}

// faultOnce reports it once as long as the thing stands as it does.
func (x *run) faultOnce(code, what string) {
	x.faultAt(x.frame().link, x.frame().path, code, what, true, nil)
}

// faultAt reports at the link of a frame, or at the do: of the top where the
// frame is inlined.
func (x *run) faultAt(l *manual.Link, path, code, what string, once bool, topLink *manual.Link) {
	f := raw{path, l, code, what + x.by}
	x.raws[f] = true
	if path != x.frames[0].path {
		for i, ex := range x.exclude {
			if strings.HasPrefix(path, x.from[i]) && ex[f] {
				return
			}
		}
		l = x.frames[0].link
	}
	if topLink != nil {
		l = topLink
	}
	if once {
		t := code + "|" + what
		if x.told[t] && !(len(x.frames) > 1 && x.moved[what]) {
			return
		}
		x.told[t] = true
	}
	x.out[at(l.At, code)] = true
}

// ---- steps

func (x *run) procedure(p *manual.Procedure, path string) {
	x.frames = append(x.frames, &frame{p: p, path: path})
	for _, ph := range p.Phases {
		if ph.Lead != nil && x.phaseGuard(ph) {
			for _, l := range ph.Lead.Links {
				if l.Is("pause") && l.ID == "" {
					x.frame().link, x.frame().step = l, nil
					x.pause()
				}
			}
		}
		for _, s := range ph.Steps {
			x.step(s)
		}
	}
	if path == x.frames[0].path && len(x.frames) == 1 {
		return
	}
	x.frames = x.frames[:len(x.frames)-1]
	var mine []refUndo
	for _, u := range x.undos {
		if u.depth <= len(x.frames) {
			mine = append(mine, u)
		}
	}
	x.undos = mine
}

func (x *run) phaseGuard(ph *manual.Phase) bool {
	if ph.Lead == nil {
		return true
	}
	for _, l := range ph.Lead.Links {
		if l.Is("when") && x.w.options[l.ID] == l.Not {
			return false
		}
	}
	return true
}

// done says whether a step is done in this world.
func (x *run) done(s *manual.Step) bool {
	if s.Parent != nil && !x.done(s.Parent) || !x.phaseGuard(s.Phase) {
		return false
	}
	for _, l := range s.Links {
		switch {
		case l.Is("when"):
			if x.w.options[l.ID] == l.Not {
				return false
			}
		case l.Is("optional"):
			if x.w.choose(x.frame().path+"|optional "+s.Number, 2) == 0 {
				return false
			}
		case l.Is("if-not") || l.Is("if"):
			if !x.went(l, s) {
				return false
			}
		}
	}
	return true
}

// went says whether a hold went as the link asks.
func (x *run) went(l *manual.Link, asking *manual.Step) bool {
	hold := l.To.(*manual.Hold)
	takings := takingsBefore(x.frame().p, hold, asking)
	if len(takings) == 0 {
		return x.outcome(hold, nil, l)
	}
	for i := len(takings) - 1; i >= 0; i-- {
		if x.done(takings[i].step) {
			return x.outcome(hold, takings[i].link, l)
		}
	}
	return false
}

func (x *run) outcome(hold *manual.Hold, taking, asks *manual.Link) bool {
	k := fmt.Sprintf("%s|%s %p", x.frame().path, hold.ID, taking)
	if asks.Is("if-not") {
		return x.w.choose(k, 2) == 1
	}
	asked := answersAsked(x.frame().p, hold, taking)
	n := len(asked)
	if n < len(hold.Answers) {
		n++
	}
	v := x.w.choose(k, n)
	return v < len(asked) && asked[v] == asks.Frag
}

// answersAsked are the answers that links ask for of one taking.
func answersAsked(p *manual.Procedure, hold *manual.Hold, taking *manual.Link) []string {
	set := map[string]bool{}
	for _, s := range p.Steps {
		for _, l := range s.Links {
			if !l.Is("if") || l.To != manual.Named(hold) {
				continue
			}
			before := takingsBefore(p, hold, s)
			if len(before) == 0 && taking == nil {
				set[l.Frag] = true
			}
			for _, t := range before {
				if t.link == taking {
					set[l.Frag] = true
				}
			}
		}
	}
	var out []string
	for a := range set {
		out = append(out, a)
	}
	sort.Strings(out)
	return out
}

// takingsBefore are the takings of a hold in the steps before one.
func takingsBefore(p *manual.Procedure, hold *manual.Hold, before *manual.Step) []refTaking {
	var out []refTaking
	for _, s := range p.Steps {
		if s == before {
			continue
		}
		for _, l := range s.Links {
			if (l.Is("hold") || l.Is("again")) && l.To == manual.Named(hold) && l.At.Start < before.At.Start {
				out = append(out, refTaking{l, s})
			}
		}
	}
	sort.Slice(out, func(i, j int) bool { return out[i].link.At.Start < out[j].link.At.Start })
	return out
}

// branchTaken says that the outcome of a taking was a failure and that a step
// for that is done.
func (x *run) branchTaken(l *manual.Link) bool {
	hold := l.To.(*manual.Hold)
	for _, s := range x.frame().p.Steps {
		for _, ask := range s.Links {
			if !ask.Is("if-not") || ask.To != manual.Named(hold) {
				continue
			}
			for _, t := range takingsBefore(x.frame().p, hold, s) {
				if t.link == l && x.done(s) && x.outcome(hold, l, ask) {
					return true
				}
			}
		}
	}
	return false
}

func (x *run) step(s *manual.Step) {
	type piece struct {
		at   int
		link *manual.Link
		sub  *manual.Step
	}
	var pieces []piece
	for _, l := range s.Links {
		pieces = append(pieces, piece{at: l.At.Start, link: l})
	}
	for _, sub := range s.Subs {
		pieces = append(pieces, piece{at: sub.At.Start, sub: sub})
	}
	sort.SliceStable(pieces, func(i, j int) bool { return pieces[i].at < pieces[j].at })
	for _, p := range pieces {
		if p.sub != nil {
			x.step(p.sub)
			continue
		}
		if x.done(s) {
			x.do(p.link, s)
		}
	}
	if !x.done(s) {
		return
	}
	for _, l := range s.Links {
		if l.Is("pause") && l.ID == "" {
			x.frame().link, x.frame().step = l, s
			x.pause()
		}
	}
}

func (x *run) do(l *manual.Link, s *manual.Step) {
	x.frame().link, x.frame().step = l, s
	top := len(x.frames) == 1
	if top {
		x.before = copyOf(x.state)
	}
	x.act(l, s)
	if top {
		x.noteBegan()
	}
}

// noteBegan notes what the link under way took out of its normal state.
func (x *run) noteBegan() {
	for k, v := range x.state {
		was := orNormal(x.before[k], k)
		if orNormal(v, k) != was && (was == normalOf(k) || was == x.startOf(k)) {
			x.began[k] = x.frames[0].link
		}
	}
	x.before = copyOf(x.state)
}

func copyOf(m map[string]string) map[string]string {
	out := map[string]string{}
	for k, v := range m {
		out[k] = v
	}
	return out
}

// ---- acts

func (x *run) act(l *manual.Link, s *manual.Step) {
	if l.Is("hold") || l.Is("again") {
		x.hold(l, s)
		return
	}
	switch n := l.To.(type) {
	case *manual.Energy, *manual.Point:
		x.energyAct(l.Kind.Name, n, s)
	case *manual.Part:
		x.partAct(l.Kind.Name, n, s)
	case *manual.Fastener:
		x.fastenerAct(l, n, s)
	case *manual.Fluid:
		x.fluidAct(l.Kind.Name, n)
	case *manual.Group:
		if l.Is("mark") {
			x.set(key("group", n.ID), "marked")
		}
	case *manual.Tool:
		x.toolAct(l.Kind.Name, n, s)
	case *manual.Setting:
		x.settingAct(l.Kind.Name, n, s)
	case *manual.Procedure:
		if l.Is("do") {
			x.call(l, n)
		}
	}
	if l.Is("reverse") && !x.dead[l] {
		x.reverse(l, s)
	}
}

func (x *run) energiesCut(n manual.Named) (named *manual.Energy, points []*manual.Point, cut []*manual.Energy) {
	switch n := n.(type) {
	case *manual.Energy:
		named = n
		for _, p := range n.Points {
			points = append(points, p.To)
		}
	case *manual.Point:
		points = []*manual.Point{n}
	}
	for _, e := range x.machine.Energies {
		if !x.has(e.OnlyWith) {
			continue
		}
		hit := e == named
		for _, p := range points {
			hit = hit || cuts(p, e)
		}
		if hit {
			cut = append(cut, e)
		}
	}
	return named, points, cut
}

func (x *run) energyAct(kind string, n manual.Named, s *manual.Step) {
	named, points, cut := x.energiesCut(n)
	if named != nil && !x.has(named.OnlyWith) {
		return
	}
	what := key("point", n.Base().ID)
	if named != nil {
		what = key("energy", named.ID)
	}
	switch kind {
	case "isolate":
		for _, p := range points {
			if x.get(key("point", p.ID)) == "live" {
				x.set(key("point", p.ID), "isolated")
			}
		}
		if named != nil && len(points) == 0 {
			switch x.get(what) {
			case "live":
				x.set(what, "isolated")
			case "live+":
				x.set(what, "released")
			}
		}
		x.rise(cut)
	case "lock":
		if named == nil && !points[0].Lock {
			return
		}
		for _, p := range points {
			k := key("point", p.ID)
			if x.get(k) == "live" {
				x.fault("energy-order", what)
			}
			if p.Lock {
				x.set(k, "locked")
			} else {
				x.set(k, "isolated")
			}
		}
		x.rise(cut)
	case "release":
		x.release(named, what)
	case "prove":
		x.prove(named, s)
		for _, l := range s.Links {
			if (l.Is("hold") || l.Is("again")) && x.judges(l.To.(*manual.Hold), named) && x.branchTaken(l) {
				k := x.frame().path + "|" + l.ID
				x.lost[k] = append(x.lost[k], named.ID)
				return
			}
		}
		x.set(what, "dead")
	case "unlock":
		unlocked := false
		for _, p := range points {
			if k := key("point", p.ID); x.get(k) == "locked" {
				unlocked = true
				x.set(k, "isolated")
			}
		}
		for _, e := range cut {
			if e != named && !unlocked || e == named && len(points) == 0 {
				continue
			}
			k := key("energy", e.ID)
			switch x.get(k) {
			case "locked", "released", "dead":
				x.set(k, "isolated")
				if load(e) && x.heldByTool(e) {
					x.set(k, "isolated+")
					if !lockable(e) {
						x.set(k, "released")
					}
				}
			}
		}
	case "restore":
		x.restore(points, cut, what)
	case "test-live":
		for _, p := range points {
			if x.get(key("point", p.ID)) == "locked" {
				x.fault("energy-order", what)
			}
		}
		signed := false
		for _, l := range s.Links {
			if h, is := l.To.(*manual.Hold); is && l.Is("hold") && (h.Kind == "sign" || h.Kind == "check") {
				signed = true
			}
		}
		if !signed || !meets(s, named.ID) {
			x.fault("live-test", what)
		}
		x.comeOn(points, cut)
	}
}

// rise takes energies as far as their points are.
func (x *run) rise(cut []*manual.Energy) {
	for _, e := range cut {
		k := key("energy", e.ID)
		if len(e.Points) == 0 {
			continue
		}
		switch s := x.energyFromPoints(e); {
		case s == "live":
		case x.get(k) == "live" || x.get(k) == "isolated" && s == "locked":
			x.set(k, s)
		case x.get(k) == "live+" || x.get(k) == "isolated+":
			if s == "locked" || !lockable(e) {
				x.set(k, "released")
			} else {
				x.set(k, "isolated+")
			}
		}
	}
}

func (x *run) release(e *manual.Energy, k string) {
	s := x.get(k)
	if s == "released" || s == "dead" {
		return
	}
	switch {
	case len(e.Points) == 0:
		x.set(k, "released")
	case load(e):
		x.earlyRelease(e, k)
	default:
		if !atRest(e, s) {
			x.fault("energy-order", k)
		}
		x.set(k, "released")
	}
}

func (x *run) earlyRelease(e *manual.Energy, k string) {
	switch s := x.get(k); {
	case atRest(e, s):
		x.set(k, "released")
	case s == "live":
		x.set(k, "live+")
	case s == "isolated":
		x.set(k, "isolated+")
	}
}

// atRest says that an energy is isolated, and locked where it can be, and no
// further.
func atRest(e *manual.Energy, s string) bool {
	switch {
	case len(e.Points) == 0:
		return s == "live" || s == "live+" || s == "isolated" || s == "isolated+"
	case lockable(e):
		return s == "locked"
	}
	return s == "isolated"
}

func (x *run) prove(e *manual.Energy, s *manual.Step) {
	k := key("energy", e.ID)
	if len(e.Points) > 0 {
		switch st := x.get(k); {
		case st == "released" || st == "dead":
		case !atRest(e, st):
			x.fault("energy-order", k)
			return
		case e.Stored.Yes:
			x.fault("not-released", k)
			return
		}
	}
	if e.Kind != "electric" || e.Voltage.Value == 0 {
		return
	}
	limits := x.m.Shop.Limits
	safe := limits.SafeVoltageAC
	if e.Voltage.Flow == quantity.DC {
		safe = limits.SafeVoltageDC
	}
	above := e.Voltage.Base() > safe.Base()
	if e.Voltage.Flow == quantity.AC && e.Stored.Yes && e.Voltage.Base()*math.Sqrt2 > limits.SafeVoltageDC.Base() {
		above = true
	}
	if !above {
		return
	}
	measured, proved := false, false
	for _, l := range s.Links {
		h, is := l.To.(*manual.Hold)
		if !is || !(l.Is("hold") || l.Is("again")) || h.Kind != "measure" || h.Of.ID != e.ID {
			continue
		}
		_, high := h.Limit.Bounds()
		if h.Limit.Flow == e.Voltage.Flow && high <= safe.Base() {
			measured = true
			proved = proved || h.ProvedOn.ID != ""
		}
	}
	switch {
	case !measured:
		x.fault("proof-without-measure", k)
	case !proved:
		x.fault("tester-not-proved", k)
	}
}

// judges says that a hold beside a proof judges it.
func (x *run) judges(h *manual.Hold, e *manual.Energy) bool {
	if h.Of.ID == "" || h.Of.ID == e.ID {
		return true
	}
	for _, o := range x.machine.Energies {
		if o.ID == h.Of.ID {
			return false
		}
	}
	for _, f := range x.machine.Fluids {
		if f.ID == h.Of.ID {
			return false
		}
	}
	return true
}

func meets(s *manual.Step, of string) bool {
	links := s.Links
	if s.Phase.Lead != nil {
		links = append(append([]*manual.Link{}, links...), s.Phase.Lead.Links...)
	}
	for _, l := range links {
		if h, is := l.To.(*manual.Hazard); is && h.Of.ID == of {
			return true
		}
	}
	return false
}

func (x *run) restore(points []*manual.Point, cut []*manual.Energy, what string) {
	isLocked := false
	for _, p := range points {
		isLocked = isLocked || x.get(key("point", p.ID)) == "locked"
	}
	for _, e := range cut {
		if len(e.Points) > 0 && lockable(e) {
			all := true
			for _, p := range e.Points {
				all = all && (!p.To.Lock || x.get(key("point", p.To.ID)) == "locked")
			}
			isLocked = isLocked || all
		}
	}
	if isLocked {
		x.fault("energy-order", what)
	}
	var woken []*manual.Energy
	for _, e := range cut {
		if s := x.get(key("energy", e.ID)); s != "live" && s != "live+" {
			woken = append(woken, e)
			x.openWhen(e)
		}
	}
	x.comeOn(points, cut)
	for _, e := range woken {
		for _, first := range x.machine.RestoreOrder {
			if first.To == e {
				break
			}
			s := x.get(key("energy", first.ID))
			if x.inRestoreOrder(e) && x.has(first.To.OnlyWith) && s != "live" && s != "live+" {
				x.fault("energy-order", key("energy", first.ID))
			}
		}
	}
}

func (x *run) inRestoreOrder(e *manual.Energy) bool {
	for _, o := range x.machine.RestoreOrder {
		if o.To == e {
			return true
		}
	}
	return false
}

// comeOn makes points live, and all that they cut.
func (x *run) comeOn(points []*manual.Point, cut []*manual.Energy) {
	for _, p := range points {
		x.set(key("point", p.ID), "live")
	}
	for _, e := range cut {
		k := key("energy", e.ID)
		switch {
		case load(e) && len(e.Points) > 0 && x.heldByTool(e):
			x.set(k, "live+")
		case x.get(k) != "live+":
			x.set(k, "live")
		}
	}
}

func names(refs []manual.Ref[manual.Energy], e *manual.Energy) bool {
	for _, r := range refs {
		if r.To == e {
			return true
		}
	}
	return false
}

// openWhen looks for what is open when an energy comes back.
func (x *run) openWhen(e *manual.Energy) {
	for _, p := range x.machine.Parts {
		if !x.has(p.OnlyWith) || !names(p.ProveDead, e) && !names(p.Guards, e) {
			continue
		}
		if x.get(key("part", p.ID)) != "on" {
			x.faultOnce("restored-while-open", key("part", p.ID))
			continue
		}
		for _, h := range p.HeldBy {
			if k := fasteningKey(h.To.ID, p.ID); x.get(k) == "loose" {
				x.faultOnce("restored-while-open", k)
			}
		}
	}
	for _, f := range x.machine.Fluids {
		if names(f.NeededBy, e) && isLow(x.get(key("fluid", f.ID))) {
			x.faultOnce("restored-while-open", key("fluid", f.ID))
		}
	}
}

func isLow(s string) bool { return s == "low" || s == "drained" }

func (x *run) partAct(kind string, p *manual.Part, s *manual.Step) {
	if !x.has(p.OnlyWith) {
		return
	}
	k := key("part", p.ID)
	switch kind {
	case "remove", "disconnect", "renew":
		x.remove(p, k, s, kind == "renew")
	case "refit", "connect":
		x.refit(p, k, nil)
	case "cap":
		if p.Kind != "line" || x.get(k) != "off" {
			x.fault("act-order", k)
			return
		}
		x.set(k, "capped")
	}
}

func (x *run) liveWork(p *manual.Part) {
	for _, e := range p.ProveDead {
		if x.has(e.To.OnlyWith) && x.get(key("energy", e.ID)) != "dead" {
			x.faultOnce("live-work", key("energy", e.ID))
		}
	}
}

func (x *run) remove(p *manual.Part, k string, s *manual.Step, renew bool) {
	if x.get(k) != "on" {
		x.fault("removed-twice", k)
		return
	}
	for _, u := range p.Under {
		if x.has(u.To.OnlyWith) && x.get(key("part", u.ID)) == "on" {
			x.faultOnce("not-reachable", key("part", u.ID))
		}
	}
	x.liveWork(p)
	x.guards(p, s)
	x.undo(refUndo{kind: "part", part: p, step: s, new: renew})
	x.set(k, "off")
	for _, h := range p.HeldBy {
		x.set(fasteningKey(h.To.ID, p.ID), "loose")
	}
	if renew {
		x.set(key("gap", p.ID), "new one needed")
	} else {
		x.set(key("gap", p.ID), "closed")
	}
	x.opening(p)
}

func (x *run) guards(p *manual.Part, s *manual.Step) {
	for _, e := range p.Guards {
		if !x.has(e.To.OnlyWith) || names(p.ProveDead, e.To) {
			continue
		}
		k := key("energy", e.ID)
		st := x.get(k)
		ok := st == "locked" || st == "released" || st == "dead" || !lockable(e.To) && (st == "isolated" || st == "isolated+")
		if len(e.To.Points) == 0 {
			ok = true
		}
		if !ok {
			x.faultOnce("guard-off-live", k)
		} else if st != "dead" && !meets(s, e.ID) {
			x.fault("guard-off-live", k)
		}
	}
}

// opening spills a line's fluid and counts look-alikes.
func (x *run) opening(p *manual.Part) {
	var links []*manual.Link
	for _, f := range x.frames {
		links = append(links, f.link)
	}
	if p.Kind == "line" {
		x.opened[p.ID] = x.wayHere()
	}
	if f := p.Carries.To; f != nil {
		if k := key("fluid", f.ID); !isLow(x.get(k)) {
			x.set(k, "low")
		}
		x.set(key("spill", f.ID), "wet")
	}
	if p.Alike == "" {
		return
	}
	first := x.alike[p.Alike]
	if first == nil {
		x.alike[p.Alike] = &refOpening{
			part: p, marked: x.get(key("group", p.Alike)) == "marked", where: links, callee: x.frame().path,
		}
		return
	}
	if first.part != p && !first.marked {
		x.notMarked(p.Alike, first, links)
	}
}

// notMarked stands at the first opening: in the procedure that is walked, at
// its own link or at the do: that opened.
func (x *run) notMarked(group string, first *refOpening, second []*manual.Link) {
	n := 0
	for n < len(first.where)-1 && n < len(second)-1 && first.where[n] == second[n] {
		n++
	}
	path := x.frames[n].path
	x.faultAt(first.where[n], path, "not-marked", key("group", group), true, first.where[0])
}

func (x *run) refit(p *manual.Part, k string, inRun []*manual.Part) {
	if x.get(k) == "on" {
		x.fault("refit-not-removed", k)
		return
	}
	x.liveWork(p)
	for _, q := range x.machine.Parts {
		if !x.has(q.OnlyWith) || !under(q, p) {
			continue
		}
		qk := key("part", q.ID)
		if x.get(qk) != "on" {
			x.faultOnce("refit-over-open", qk)
			continue
		}
		if isIn(inRun, q) {
			continue
		}
		for _, h := range q.HeldBy {
			if f := fasteningKey(h.To.ID, q.ID); x.get(f) == "loose" {
				x.faultOnce("refit-over-open", f)
			}
		}
	}
	x.useForRefit(p)
	x.set(k, "on")
	x.set(key("gap", p.ID), "closed")
	x.tightenedTooEarly(p)
}

func isIn(list []*manual.Part, p *manual.Part) bool {
	for _, q := range list {
		if p == q {
			return true
		}
	}
	return false
}

// under says that p comes off before q.
func under(q, p *manual.Part) bool {
	for _, u := range q.Under {
		if u.To == p {
			return true
		}
	}
	return false
}

func (x *run) use(s *manual.Supply, amount float64) {
	if len(x.frames) > 1 {
		return
	}
	x.needs[s] += amount
}

func (x *run) useForRefit(p *manual.Part) {
	if p.RenewWith.To != nil && x.get(key("gap", p.ID)) != "closed" {
		x.use(p.RenewWith.To, 1)
	}
	for _, h := range p.HeldBy {
		if h.To.RenewWith.To != nil {
			n := 1.0
			if h.Amount != "" {
				fmt.Sscanf(h.Amount, "%g", &n)
			}
			x.use(h.To.RenewWith.To, n)
		}
	}
}

// tightenedTooEarly tells of a tightening while the part was off, now that it
// is on.
func (x *run) tightenedTooEarly(p *manual.Part) {
	var rest []refWaiting
	for _, w := range x.waiting {
		if w.part != p || w.path != x.frame().path {
			rest = append(rest, w)
			continue
		}
		var top *manual.Link
		if w.path == x.frames[0].path {
			top = w.link
		}
		x.faultAt(w.link, w.path, "act-order", w.key, false, top)
		x.set(w.key, "tight")
	}
	x.waiting = rest
}

func (x *run) fastenerAct(l *manual.Link, f *manual.Fastener, s *manual.Step) {
	if !l.Is("loosen") && !l.Is("tighten") {
		return
	}
	bleeds := bleedingStep(s)
	if len(f.Holds) == 0 {
		k := key("fastener", f.ID)
		switch {
		case l.Is("tighten"):
			x.set(k, "tight")
		case bleeds == nil:
			if x.get(k) == "tight" {
				x.undo(refUndo{kind: "fastener", fast: f, id: k, step: s})
			}
			x.set(k, "loose")
		}
		return
	}
	parts, whole := scopeOf(l, f, s)
	if l.Is("loosen") {
		for _, p := range parts {
			k := fasteningKey(f.ID, p.ID)
			if !x.has(p.OnlyWith) || x.get(key("part", p.ID)) != "on" || x.get(k) == "loose" || !isIn(f.Holds, p) {
				continue
			}
			if !x.bleedingAllows(p, s, bleeds) {
				x.liveWork(p)
			}
			x.undo(refUndo{kind: "fastening", part: p, fast: f, id: k, step: s})
			x.set(k, "loose")
		}
		return
	}
	some := false
	for _, p := range parts {
		if isIn(f.Holds, p) && x.has(p.OnlyWith) && x.get(key("part", p.ID)) == "on" {
			x.set(fasteningKey(f.ID, p.ID), "tight")
			some = true
		}
	}
	for _, p := range parts {
		switch {
		case !isIn(f.Holds, p):
			x.fault("act-order", key("part", p.ID))
		case x.has(p.OnlyWith) && x.get(key("part", p.ID)) != "on" && !(whole && some):
			x.waiting = append(x.waiting, refWaiting{p, fasteningKey(f.ID, p.ID), l, x.frame().path})
		}
	}
}

func scopeOf(l *manual.Link, f *manual.Fastener, s *manual.Step) (parts []*manual.Part, whole bool) {
	if l.Part != nil {
		return []*manual.Part{l.Part}, false
	}
	for _, o := range s.Links {
		p, is := o.To.(*manual.Part)
		if !is || !isIn(f.Holds, p) || isIn(parts, p) {
			continue
		}
		switch o.Kind.Name {
		case "remove", "disconnect", "renew", "refit", "connect":
			parts = append(parts, p)
		}
	}
	if len(parts) > 0 {
		return parts, false
	}
	return f.Holds, true
}

func bleedingStep(s *manual.Step) *manual.Step {
	for ; s != nil; s = s.Parent {
		for _, l := range s.Links {
			if l.Is("bleed") {
				return s
			}
		}
	}
	return nil
}

func (x *run) bleedingAllows(p *manual.Part, s, bleeds *manual.Step) bool {
	for b := bleeds; b != nil; b = bleedingStep(b.Parent) {
		carries := false
		for _, l := range b.Links {
			carries = carries || l.Is("bleed") && p.Carries.To != nil && l.To == manual.Named(p.Carries.To)
		}
		warned := true
		for _, e := range p.ProveDead {
			warned = warned && (meets(s, e.ID) || meets(b, e.ID))
		}
		if carries && warned {
			return true
		}
	}
	return false
}

func (x *run) fluidAct(kind string, f *manual.Fluid) {
	k := key("fluid", f.ID)
	switch kind {
	case "drain":
		if x.get(k) == "drained" {
			return
		}
		x.set(k, "drained")
	case "fill":
		if !isLow(x.get(k)) {
			return
		}
		for _, p := range f.Lines {
			if x.has(p.OnlyWith) && x.get(key("part", p.ID)) != "on" {
				x.fault("act-order", key("part", p.ID))
			}
		}
		if x.get(k) == "drained" && f.Supply.To != nil && f.Capacity.Value > 0 {
			x.use(f.Supply.To, f.Capacity.Base())
		}
		if f.Bleed {
			x.set(k, "unbled")
		} else {
			x.set(k, "full")
		}
	case "bleed":
		if isLow(x.get(k)) {
			x.fault("act-order", k)
		}
		x.set(k, "full")
	case "dry":
		x.set(key("spill", f.ID), "dry")
	}
}

func (x *run) toolAct(kind string, t *manual.Tool, s *manual.Step) {
	k := key("tool", t.ID)
	switch kind {
	case "place":
		if x.get(k) == "placed" {
			x.fault("act-order", k)
			return
		}
		x.undo(refUndo{kind: "tool", tool: t, id: k, step: s})
		x.set(k, "placed")
		x.holdLoads(t)
	case "clear":
		if x.get(k) != "placed" {
			x.fault("act-order", k)
			return
		}
		x.clear(t, k)
	}
}

func (x *run) holdLoads(t *manual.Tool) {
	if x.machine == nil {
		return
	}
	for _, e := range x.machine.Energies {
		if !x.has(e.OnlyWith) || !blockedBy(e, t) {
			continue
		}
		k := key("energy", e.ID)
		switch s := x.get(k); {
		case atRest(e, s):
			x.set(k, "released")
		case load(e):
			x.earlyRelease(e, k)
		}
	}
}

func blockedBy(e *manual.Energy, t *manual.Tool) bool {
	for _, b := range e.BlockedBy {
		if b.To == t {
			return true
		}
	}
	return false
}

func (x *run) clear(t *manual.Tool, k string) {
	x.set(k, "cleared")
	if x.machine == nil {
		return
	}
	for _, e := range x.machine.Energies {
		if !x.has(e.OnlyWith) || !blockedBy(e, t) || x.heldByTool(e) {
			continue
		}
		ek := key("energy", e.ID)
		switch x.get(ek) {
		case "released", "dead":
			switch {
			case len(e.Points) == 0:
				x.set(ek, "live")
			case lockable(e):
				x.set(ek, "locked")
			default:
				x.set(ek, "isolated")
			}
		case "live+":
			x.set(ek, "live")
		case "isolated+":
			x.set(ek, "isolated")
		}
	}
}

func (x *run) settingAct(kind string, n *manual.Setting, s *manual.Step) {
	k := key("setting", n.ID)
	switch kind {
	case "alter":
		if x.get(k) == "altered" {
			x.fault("act-order", k)
			return
		}
		x.undo(refUndo{kind: "setting", set: n, id: k, step: s})
		x.set(k, "altered")
	case "reset":
		x.set(k, "reset")
	}
}

// ---- holds and pauses

func (x *run) hold(l *manual.Link, s *manual.Step) {
	h := l.To.(*manual.Hold)
	ofMachine := x.frame().p.For.To
	if ofMachine != nil && h.Of.ID != "" {
		for _, e := range ofMachine.Energies {
			k := key("energy", e.ID)
			if e.ID == h.Of.ID && h.Kind == "wait" && x.has(e.OnlyWith) && atRest(e, x.get(k)) {
				x.set(k, "released")
			}
		}
		for _, f := range ofMachine.Fluids {
			if f.ID == h.Of.ID && h.LooksFor == "leak" && x.get(key("spill", f.ID)) == "wet" {
				x.faultOnce("leak-look-while-wet", key("spill", f.ID))
			}
		}
	}
	x.openLines(s)
	if l.Is("again") {
		x.again(l, s, h)
	}
}

func (x *run) openLines(s *manual.Step) {
	if x.machine == nil {
		return
	}
	for _, p := range x.machine.Parts {
		k := key("part", p.ID)
		if p.Kind != "line" || !x.has(p.OnlyWith) || x.get(k) != "off" {
			continue
		}
		opener := x.opened[p.ID]
		d := len(x.frames) - 1
		if opener == nil {
			continue // it was off at the start
		}
		inFrame := len(opener) > d
		for i := 0; i < d && inFrame; i++ {
			inFrame = opener[i].link == x.frames[i].link
		}
		if inFrame && opener[d].step == s {
			continue
		}
		top := opener[0].link
		x.by = fmt.Sprintf(" by %p", opener[len(opener)-1].link)
		if inFrame {
			x.faultAt(opener[d].link, x.frame().path, "not-capped", k, true, top)
		} else {
			x.faultAt(x.frame().link, x.frame().path, "not-capped", k, true, top)
		}
		x.by = ""
	}
}

func (x *run) again(l *manual.Link, s *manual.Step, h *manual.Hold) {
	for _, id := range x.lost[x.frame().path+"|"+h.ID] {
		for _, e := range x.machine.Energies {
			if e.ID != id || provedIn(s, e) {
				continue
			}
			x.prove(e, s)
			if !x.branchTaken(l) {
				x.set(key("energy", id), "dead")
			}
		}
	}
}

func provedIn(s *manual.Step, e *manual.Energy) bool {
	for _, l := range s.Links {
		if l.Is("prove") && l.To == manual.Named(e) {
			return true
		}
	}
	return false
}

func (x *run) pause() {
	if x.machine == nil {
		return
	}
	for _, e := range x.machine.Energies {
		k := key("energy", e.ID)
		if s := x.get(k); x.has(e.OnlyWith) && lockable(e) && (s == "isolated" || s == "isolated+") {
			x.faultOnce("bad-pause", k)
		}
	}
	for _, p := range x.machine.Parts {
		if !x.has(p.OnlyWith) {
			continue
		}
		k := key("part", p.ID)
		if p.Kind == "line" && x.get(k) == "off" {
			x.faultOnce("bad-pause", k)
		}
		for _, h := range p.HeldBy {
			if f := fasteningKey(h.To.ID, p.ID); x.get(k) == "on" && x.get(f) == "loose" {
				x.faultOnce("bad-pause", f)
			}
		}
	}
}

// ---- reverse

func (x *run) undo(u refUndo) {
	if !x.derived {
		u.depth = len(x.frames)
		if u.id == "" {
			u.id = key("part", u.part.ID)
		}
		u.pos = x.frame().link.At.Start
		x.undos = append(x.undos, u)
	}
}

func (x *run) stillSo(u refUndo) bool {
	switch u.kind {
	case "part":
		return x.get(u.id) != "on"
	case "fastening":
		return x.get(key("part", u.part.ID)) == "on" && x.get(u.id) == "loose"
	}
	return x.get(u.id) != normalOf(u.id)
}

func (x *run) reverse(l *manual.Link, s *manual.Step) {
	var mine []refUndo
	for _, u := range x.undos {
		if u.step.Phase == l.Phase && u.depth == len(x.frames) && u.pos >= firstRemoval(l) && x.stillSo(u) {
			mine = append(mine, u)
		}
	}
	// A reverse: is judged where its procedure is walked alone.
	own := len(x.frames) == 1 && x.frames[0].path == ""
	if own {
		x.reversed[l] = true
	}
	for _, p := range l.Parts {
		off := false
		for _, u := range mine {
			off = off || u.kind == "part" && u.part == p
		}
		if own && !off && x.has(p.OnlyWith) {
			x.fault("reverse", key("part", p.ID))
			return
		}
	}
	var todo []refUndo
	for i := len(mine) - 1; i >= 0; i-- {
		u := mine[i]
		if l.Sign == '!' && u.kind == "part" && isIn(l.Parts, u.part) {
			continue
		}
		todo = append(todo, u)
		if l.Part != nil && u.kind == "part" && u.part == l.Part {
			break
		}
	}
	if len(todo) == 0 {
		return // nothing in this world; whether in none is judged later
	}
	if own {
		x.something[l] = true
	}
	x.derived = true
	var inRun []*manual.Part
	end := func() {
		for _, p := range inRun {
			x.tightAll(p)
		}
		inRun = nil
	}
	for _, u := range todo {
		if !x.stillSo(u) {
			continue
		}
		starts := u.kind == "part" && hasStart(u.part)
		if !starts {
			end()
		}
		switch u.kind {
		case "part":
			x.refit(u.part, u.id, inRun)
			if starts {
				inRun = append(inRun, u.part)
			} else {
				x.tightAll(u.part)
			}
		case "fastening", "fastener":
			x.set(u.id, "tight")
		case "tool":
			x.clear(u.tool, u.id)
		case "setting":
			x.set(u.id, "reset")
		}
	}
	end()
	x.derived = false
}

func hasStart(p *manual.Part) bool {
	for _, h := range p.HeldBy {
		if h.To.Start != "" {
			return true
		}
	}
	return false
}

func (x *run) tightAll(p *manual.Part) {
	for _, h := range p.HeldBy {
		x.set(fasteningKey(h.To.ID, p.ID), "tight")
	}
}

// firstRemoval is where the part after # first comes off.
func firstRemoval(l *manual.Link) int {
	if l.Part == nil {
		return 0
	}
	first := 0
	for _, s := range l.Phase.Steps {
		firstIn(s, l.Part, &first)
	}
	return first
}

func firstIn(s *manual.Step, p *manual.Part, first *int) {
	for _, l := range s.Links {
		takesOff := l.Is("remove") || l.Is("disconnect") || l.Is("renew")
		if takesOff && l.To == manual.Named(p) && (*first == 0 || l.At.Start < *first) {
			*first = l.At.Start
		}
	}
	for _, sub := range s.Subs {
		firstIn(sub, p, first)
	}
}

// ---- calls

func (x *run) call(l *manual.Link, callee *manual.Procedure) {
	if m := callee.For.To; m != nil && m != x.machine {
		x.fault("wrong-machine", "call")
		return
	}
	x.moved = keepIf(x.moved, len(x.frames) > 1)
	x.compare(callee)
	if len(x.frames) == 1 {
		x.moved = map[string]bool{}
		x.noteBegan()
	}
	path := fmt.Sprintf("%s>%d", x.frame().path, l.At.Start)
	before := copyOf(x.state)
	openers := map[string][]openedAt{}
	for id, way := range x.opened {
		openers[id] = way
	}
	inside := x.reference.alone(callee, x.machine, x.w, path)
	x.exclude, x.from = append(x.exclude, inside.raws), append(x.from, path)
	for k, v := range x.moved {
		inside.moved[k] = inside.moved[k] || v
	}
	x.procedure(callee, path)
	x.exclude, x.from = x.exclude[:len(x.exclude)-1], x.from[:len(x.from)-1]
	x.dropWaiting(path)
	for k := range inside.state {
		x.takeTheWord(callee, k, inside, before)
	}
	for _, s := range callee.Leaves {
		for _, k := range keysOf(s) {
			x.takeTheWord(callee, k, inside, before)
		}
	}
	for id, way := range openers {
		if k := key("part", id); before[k] != "" && before[k] != "on" && x.get(k) == "off" {
			x.opened[id] = way // off before and after: still by the same link
		}
	}
	if len(x.frames) == 1 {
		for k := range x.moved {
			x.untell(k)
		}
		x.moved = map[string]bool{}
	}
}

func keepIf(m map[string]bool, keep bool) map[string]bool {
	if keep {
		return m
	}
	return map[string]bool{}
}

// dropWaiting forgets what was tightened too early in a call that is over.
func (x *run) dropWaiting(path string) {
	var rest []refWaiting
	for _, w := range x.waiting {
		if w.path != path {
			rest = append(rest, w)
		}
	}
	x.waiting = rest
}

// takeTheWord: what a callee, walked alone, leaves otherwise than it says is
// told there; the caller goes by its word.
func (x *run) takeTheWord(callee *manual.Procedure, k string, inside *run, before map[string]string) {
	if word, named := leavesWord(callee, k); named {
		if !sameWord(k, word, inside.get(k)) && !sameWord(k, word, x.get(k)) && x.there(k) {
			x.set(k, word)
			x.openedNow(k, word)
		}
		return
	}
	wrong := inside.wrongAtEnd(k)
	if kind, id, _ := strings.Cut(k, ":"); kind == "fastening" {
		_, part, _ := strings.Cut(id, "@")
		wrong = wrong || inside.partLeftWrong(callee, key("part", part))
	}
	if wrong {
		x.set(k, orNormal(before[k], k))
	}
}

// partLeftWrong says that a part is left otherwise than the procedure says.
func (x *run) partLeftWrong(p *manual.Procedure, k string) bool {
	if word, named := leavesWord(p, k); named {
		return x.there(k) && !sameWord(k, word, x.get(k))
	}
	return x.wrongAtEnd(k)
}

// openedNow notes that a line is off because a procedure says so.
func (x *run) openedNow(k, word string) {
	if id, is := strings.CutPrefix(k, "part:"); is && word == "off" {
		x.opened[id] = x.wayHere()
	}
}

func (x *run) wayHere() []openedAt {
	var path []openedAt
	for _, f := range x.frames {
		path = append(path, openedAt{f.link, f.step})
	}
	return path
}

// keysOf are the things that a line of leaves names.
func keysOf(s manual.State) []string {
	switch n := s.Thing.(type) {
	case *manual.Energy:
		return []string{key("energy", n.ID)}
	case *manual.Point:
		return []string{key("point", n.ID)}
	case *manual.Part:
		return []string{key("part", n.ID)}
	case *manual.Fastener:
		if len(n.Holds) == 0 {
			return []string{key("fastener", n.ID)}
		}
		var out []string
		for _, p := range n.Holds {
			out = append(out, fasteningKey(n.ID, p.ID))
		}
		return out
	case *manual.Fluid:
		return []string{key("fluid", n.ID)}
	case *manual.Tool:
		return []string{key("tool", n.ID)}
	case *manual.Setting:
		return []string{key("setting", n.ID)}
	}
	return nil
}

// there says that a thing is there on the unit.
func (x *run) there(k string) bool {
	kind, id, _ := strings.Cut(k, ":")
	switch kind {
	case "energy":
		return x.has(x.machine.Find(id).(*manual.Energy).OnlyWith)
	case "part":
		return x.has(x.machine.Find(id).(*manual.Part).OnlyWith)
	case "fastening":
		_, part, _ := strings.Cut(id, "@")
		return x.has(x.machine.Find(part).(*manual.Part).OnlyWith)
	}
	return true
}

// leavesWord is what a procedure says of a thing that it leaves.
func leavesWord(p *manual.Procedure, k string) (string, bool) {
	_, id, _ := strings.Cut(k, ":")
	fast, _, isFastening := strings.Cut(id, "@")
	for _, s := range p.Leaves {
		kind, _, _ := strings.Cut(k, ":")
		if s.ID == id && kind != "spill" && kind != "gap" || isFastening && s.ID == fast {
			return wordOf(s), true
		}
	}
	return "", false
}

// sameWord says that a state is what a word says.
func sameWord(k, word, state string) bool {
	switch state {
	case "live+":
		state = "live"
	case "isolated+":
		state = "isolated"
	case "capped":
		state = "off"
	case "drained":
		state = "low"
	}
	return word == state
}

// compare compares how things stand with what a callee expects.
func (x *run) compare(callee *manual.Procedure) {
	for _, e := range fastenersLast(callee.Expects) {
		if len(x.frames) == 1 {
			x.noteBegan()
		}
		switch n := e.Thing.(type) {
		case *manual.Energy:
			k := key("energy", n.ID)
			if !x.has(n.OnlyWith) || sameWord(k, wordOf(e), x.get(k)) {
				continue
			}
			x.fault("state-mismatch", k)
			x.set(k, wordOf(e))
			for _, p := range n.Points {
				if !namesThing(callee.Expects, p.To.ID) {
					x.set(key("point", p.To.ID), x.pointNeed(p.To, callee))
				}
				x.restand(p.To, callee)
			}
		case *manual.Point:
			k := key("point", n.ID)
			if x.get(k) == wordOf(e) {
				continue
			}
			x.fault("state-mismatch", k)
			x.set(k, wordOf(e))
			x.restand(n, callee)
		case *manual.Part:
			k := key("part", n.ID)
			if !x.has(n.OnlyWith) || sameWord(k, wordOf(e), x.get(k)) {
				continue
			}
			x.fault("state-mismatch", k)
			x.set(k, wordOf(e))
			x.openedNow(k, wordOf(e))
			for _, h := range n.HeldBy {
				if wordOf(e) == "off" {
					x.set(fasteningKey(h.To.ID, n.ID), "loose")
				} else {
					x.set(fasteningKey(h.To.ID, n.ID), "tight")
				}
			}
		case *manual.Fastener:
			x.compareFastener(n, wordOf(e))
		case *manual.Fluid:
			x.compareOne(key("fluid", n.ID), wordOf(e))
		case *manual.Tool:
			x.compareOne(key("tool", n.ID), wordOf(e))
		case *manual.Setting:
			x.compareOne(key("setting", n.ID), wordOf(e))
		}
	}
}

func namesThing(list []manual.State, id string) bool {
	for _, s := range list {
		if s.ID == id {
			return true
		}
	}
	return false
}

func (x *run) compareOne(k, word string) {
	if !sameWord(k, word, x.get(k)) {
		x.fault("state-mismatch", k)
		x.set(k, word)
	}
}

func (x *run) compareFastener(f *manual.Fastener, word string) {
	if len(f.Holds) == 0 {
		x.compareOne(key("fastener", f.ID), word)
		return
	}
	if x.anyLoose(f) != (word == "loose") {
		x.fault("state-mismatch", key("fastener", f.ID))
		for _, p := range f.Holds {
			x.set(fasteningKey(f.ID, p.ID), word)
		}
	}
}

func (x *run) anyLoose(f *manual.Fastener) bool {
	for _, p := range f.Holds {
		if x.has(p.OnlyWith) && x.get(key("part", p.ID)) == "on" && x.get(fasteningKey(f.ID, p.ID)) == "loose" {
			return true
		}
	}
	return false
}

// restand puts energies that the callee does not name where their points are.
func (x *run) restand(pt *manual.Point, callee *manual.Procedure) {
	for _, e := range x.machine.Energies {
		if !cuts(pt, e) || namesThing(callee.Expects, e.ID) || !x.has(e.OnlyWith) {
			continue
		}
		k := key("energy", e.ID)
		base, now := x.energyFromPoints(e), x.get(k)
		switch {
		case base == "live":
			if now != "live+" {
				x.set(k, "live")
			}
		case base == "isolated" && lockable(e) && (now == "locked" || now == "released" || now == "dead"):
			x.set(k, "isolated")
		default:
			x.rise([]*manual.Energy{e})
		}
	}
}

// ---- the end

// codeAtEnd is the code for a thing that is left so.
func codeAtEnd(k, state string) string {
	kind, _, _ := strings.Cut(k, ":")
	switch kind {
	case "energy", "point":
		return "left-isolated"
	case "part":
		return "left-off"
	case "fastening", "fastener":
		return "left-loose"
	case "fluid":
		if state == "unbled" {
			return "not-bled"
		}
		return "left-low"
	case "tool":
		return "left-in-place"
	case "setting":
		return "left-altered"
	}
	return ""
}

// wrongAtEnd says that a thing which leaves does not name is neither whole nor
// as it was at the start.
func (x *run) wrongAtEnd(k string) bool {
	kind, id, _ := strings.Cut(k, ":")
	s := x.get(k)
	if kind == "spill" || kind == "gap" || kind == "group" || !x.there(k) {
		return false
	}
	if sameWord(k, normalOf(k), s) {
		return false
	}
	switch kind {
	case "fastening":
		_, part, _ := strings.Cut(id, "@")
		if x.get(key("part", part)) != "on" {
			return false
		}
		return x.startOf(k) != "loose" || x.startOf(key("part", part)) != "on"
	case "point":
		for _, e := range x.machine.Energies {
			st := x.get(key("energy", e.ID))
			if x.has(e.OnlyWith) && cuts(x.machine.Find(id).(*manual.Point), e) && st != "live" && st != "live+" {
				return false
			}
		}
	}
	return !sameWord(k, plain(x.startOf(k)), s)
}

func plain(s string) string {
	switch s {
	case "live+":
		return "live"
	case "isolated+":
		return "isolated"
	case "capped":
		return "off"
	case "drained":
		return "low"
	}
	return s
}

func (x *run) atEnd(p *manual.Procedure) {
	for _, s := range p.Leaves {
		x.judgeLeaves(s)
	}
	for k := range x.state {
		if _, named := leavesWord(p, k); named || !x.wrongAtEnd(k) {
			continue
		}
		if l := x.began[k]; l != nil {
			x.out[at(l.At, codeAtEnd(k, x.get(k)))] = true
		}
	}
	for s, amount := range x.needs {
		x.judgeSupply(p, s, amount)
	}
}

func (x *run) judgeLeaves(s manual.State) {
	if f, is := s.Thing.(*manual.Fastener); is && len(f.Holds) > 0 {
		if x.anyLoose(f) != (s.Word == "loose") {
			x.out[at(s.At, "state-mismatch")] = true
		}
		return
	}
	for _, k := range keysOf(s) {
		if x.there(k) && !sameWord(k, wordOf(s), x.get(k)) {
			x.out[at(s.At, "state-mismatch")] = true
		}
	}
}

// judgeSupply compares the amount used in this world with what is listed. Where
// nothing is listed the finding stands at line 0: which of the links is not
// compared.
func (x *run) judgeSupply(p *manual.Procedure, s *manual.Supply, amount float64) {
	have := 0.0
	where := refFinding{p.File.Path, 0, "not-supplied"}
	for _, u := range p.Supplies {
		if u.To != s {
			continue
		}
		where = at(u.At, "not-supplied")
		if s.Unit == "each" {
			n := 1.0
			if u.Amount != "" {
				fmt.Sscanf(u.Amount, "%g", &n)
			}
			have += n
			continue
		}
		q, err := quantity.Parse(u.Amount, quantity.Volume)
		if err != nil {
			return
		}
		have += q.Base()
	}
	if have < amount*(1-1e-9) {
		x.out[where] = true
	}
}
