package walk_test

import (
	"fmt"

	"baybinder/generator/base/position"
	"baybinder/generator/model"
)

// Known: DERIVED.

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
func optionSets(m *model.Machine) []map[string]bool {
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
	m     *model.Manual
	top   *model.Procedure
	dead  map[*model.Link]bool // reverse: links with a finding
	found map[refFinding]bool

	locked int // the most points that were locked at once

	walked int // worlds; more than mostWorlds are given up

	there   map[string]map[raw]bool // by procedure and options
	tooMany bool

	reversed, something map[*model.Link]bool // reverse: links that were done; that had something to take back
}

// referenceWalk is everything that the walk of one procedure finds. It is false
// where there are too many worlds.
func referenceWalk(m *model.Manual, p *model.Procedure, dead map[*model.Link]bool) (map[refFinding]bool, int, bool) {
	r := &reference{m: m, top: p, dead: dead, there: map[string]map[raw]bool{}}
	idle := map[*model.Link]bool{}
	for _, l := range reverseLinks(p) {
		if r.worlds(p); r.givenUp() {
			return nil, 0, false
		}
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
	return r.found, r.locked, !r.givenUp()
}

// givenUp says that there are more worlds than the reference walks: nothing that
// it found is of use.
func (r *reference) givenUp() bool { return r.tooMany || r.walked > mostWorlds }

func reverseLinks(p *model.Procedure) []*model.Link {
	var out []*model.Link
	for _, s := range p.Steps {
		for _, l := range s.Links {
			if l.Is("reverse") {
				out = append(out, l)
			}
		}
	}
	return out
}

func (r *reference) worlds(p *model.Procedure) {
	r.walked, r.locked = 0, 0
	if r.found == nil {
		r.found = map[refFinding]bool{}
	}
	for f := range r.found {
		if f.code != "reverse" {
			delete(r.found, f)
		}
	}
	r.reversed, r.something = map[*model.Link]bool{}, map[*model.Link]bool{}
	for _, set := range optionSets(p.For.To) {
		w := &refWorld{options: set, known: map[string]int{}}
		for {
			f := r.alone(p, p.For.To, w, "")
			r.locked = max(r.locked, f.padlocks)
			for k := range f.out {
				r.found[k] = true
			}
			if r.walked++; r.givenUp() {
				return
			}
			if !w.advance() {
				break
			}
		}
	}
}

func at(p position.Pos, code string) refFinding {
	line, _ := p.LineCol()
	return refFinding{p.Path(), line, code}
}

// raw is a fault before it is asked whose fault it is.
type raw struct {
	path string // the calls on the way, from the procedure that is walked alone
	link *model.Link
	code string
	what string
}

// frame is one procedure on the way.
type frame struct {
	p    *model.Procedure
	path string
	link *model.Link // under way
	step *model.Step
}

type refTaking struct {
	link *model.Link
	step *model.Step
}

type refUndo struct {
	kind string // part, fastening, fastener, tool, setting
	id   string
	part *model.Part
	tool *model.Tool
	fast *model.Fastener
	set  *model.Setting
	step *model.Step
	pos  int
	new  bool

	depth int
}

type refOpening struct {
	part   *model.Part
	marked bool
	where  []*model.Link // path of links
	callee string
}

// run is the walk of one procedure in one world, callees inlined.
type run struct {
	*reference
	w       *refWorld
	machine *model.Machine
	top     *model.Procedure
	state   map[string]string
	before  map[string]string // the link under way
	start   map[string]string
	began   map[string]*model.Link
	owed    map[owing]bool // by do: link and thing
	movedBy map[string]*model.Link
	below   map[string]bool // stands as something that was performed left it, and that is told there
	inside  bool            // a callee walked alone, for its caller
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
	needs   map[*model.Supply]float64

	padlocks int               // the most points that were locked at once and not at the start
	byHand   map[string]bool   // path and part: its fasteners are begun by hand
	lost     map[string][]lost // hold|path → proofs
	taken    map[string]bool
	looks    []refLook
	waited   map[string]refWaited
	applying bool // the word of a callee is taken: no act
}

// refLook is a look for a leak without pressure.
type refLook struct {
	link, top *model.Link
	path, of  string
	told      bool // where the callee is walked alone
}

type openedAt struct {
	link *model.Link
	step *model.Step
}

type refWaiting struct {
	part *model.Part
	key  string
	link *model.Link
	path string
}

// alone walks a procedure from what it expects.
func (r *reference) alone(p *model.Procedure, m *model.Machine, w *refWorld, path string) *run {
	x := &run{
		reference: r, w: w, machine: m, top: p, state: map[string]string{}, began: map[string]*model.Link{}, owed: map[owing]bool{}, movedBy: map[string]*model.Link{}, below: map[string]bool{}, inside: path != "",
		raws: map[raw]bool{}, out: map[refFinding]bool{},
		opened: map[string][]openedAt{}, alike: map[string]*refOpening{}, needs: map[*model.Supply]float64{},
		lost: map[string][]lost{}, byHand: map[string]bool{}, taken: map[string]bool{}, waited: map[string]refWaited{},
	}
	x.state = x.expected(p)
	x.waitedBefore()
	x.start = map[string]string{}
	for k, v := range x.state {
		x.start[k] = v
	}
	x.procedure(p, path)
	if path == "" {
		x.waitsAtEnd()
		for _, k := range x.looks {
			if !k.told {
				x.faultAt(k.link, k.path, "leak-look-without-pressure", k.of, k.top)
			}
		}
		x.atEnd(p)
	}
	return x
}
