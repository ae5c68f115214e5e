package numbers

import (
	"slices"

	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
	"baybinder/generator/trade/fastening"
)

// job is what one procedure's own steps do that numbers are asked of.
type job struct {
	manual *model.Manual
	of     *model.Procedure
	limits []quantity.Quantity // up to which the shop calls an energy safe
	turns  []turn
	lifts  []lift
	loads  []lift                           // lifts, and the parts that a step loosens: what its lifting gear carries
	sizes  map[*model.Tool][]fastening.Size // what tools fit, once it was read

	back  map[*model.Link][]model.Named // what a reverse: puts back and tightens
	book  *Book
	again map[*model.Link]bool // links that tighten what is tight

	tools      []*model.Tool // see toolsOf
	toolsKnown bool
}

// scene is where an act happens: its step, its link (remove, refit, loosen,
// tighten or reverse), and what there is to work with.
type scene struct {
	step  *model.Step
	link  *model.Link
	tools toolbox
}

// turn is a fastener that is undone or tightened.
type turn struct {
	scene
	fastener *model.Fastener
	tightens bool // to its torque
	again    bool // it is tight already: the last stage alone is asked for
}

// asked is the fastener with the stages that the turn asks for.
func (t turn) asked() *model.Fastener { return fastening.Asked(t.fastener, t.again) }

// lift is a part that is taken off or put back by a step of its own.
type lift struct {
	part *model.Part
	scene
}

// undoing is an act that a reverse: can take back: a part that came off, or a
// fastener that was undone.
type undoing struct {
	phase    *model.Phase
	part     *model.Part
	fastener *model.Fastener
	tools    toolbox // with those of the step's notes for the refit
}

// worker goes through a procedure from the first step to the last. It follows
// what is off, loose and in place in one world, in which every condition holds:
// enough to know what a reverse: brings back and with what, and no more. What
// the walk finds wrong with the order of the acts is not told here.
type worker struct {
	job
	undone []undoing
	open   map[model.Named]bool // parts that are off, fasteners that are loose
	placed []*model.Tool
}

// followWork goes through a procedure.
func followWork(m *model.Manual, book *Book, p *model.Procedure) *job {
	limits := m.Shop.Limits
	w := worker{job: job{manual: m, of: p, limits: given(limits.SafeVoltageDC, limits.SafeVoltageAC, limits.SafePressure, limits.SafeTouch), sizes: map[*model.Tool][]fastening.Size{}, back: map[*model.Link][]model.Named{}, book: book, again: book.tight.Again(p)}, open: map[model.Named]bool{}}
	w.tools, w.toolsKnown = toolsOf(p)
	for _, s := range p.Expects {
		w.state(s)
	}
	for _, s := range p.Steps {
		w.step(s)
	}
	return &w.job
}

// state notes a tool that stands in place as expects or leaves says.
func (w *worker) state(s model.State) {
	if tool, is := s.Thing.(*model.Tool); is && s.Word == "placed" {
		w.placed = append(w.placed, tool)
	}
}

func (w *worker) step(s *model.Step) {
	tools := toolboxOf(s.Links)
	tools.placed = slices.Clone(w.placed)
	for _, link := range s.Links {
		if !link.Bad {
			w.act(scene{s, link, tools})
		}
	}
}

func (w *worker) act(at scene) {
	switch to := at.link.To.(type) {
	case *model.Fastener:
		w.fastener(at, to)
	case *model.Part:
		w.part(at, to)
	case *model.Tool:
		w.place(at.link.Kind.Act, to)
	case *model.Procedure:
		if at.link.Kind.Act == model.Call {
			w.call(to)
		}
	case nil:
		if at.link.Kind.Act == model.Reverse {
			w.reverse(at)
		}
	}
}

func (w *worker) fastener(at scene, f *model.Fastener) {
	switch at.link.Kind.Act {
	case model.Loosen:
		w.turn(at, f, false)
		w.slacken(at, f)
		w.undo(at, undoing{fastener: f})
	case model.Tighten:
		w.turn(at, f, true)
		w.open[f] = false
	default: // the others are no concern of this
	}
}

// slacken notes the parts that a loosen: link lets go: the one that it names,
// else those of the step, which are lifts already, else every part that is on
// and that the fastener holds.
func (w *worker) slacken(at scene, f *model.Fastener) {
	parts := f.Holds
	if at.link.Part() != nil {
		parts = []*model.Part{at.link.Part()}
	} else if slices.ContainsFunc(f.Holds, func(p *model.Part) bool { return liftsIn(at.step, p) }) {
		return
	}
	for _, p := range parts {
		if !w.open[p] && !p.Unread {
			w.loads = append(w.loads, lift{p, at})
		}
	}
}

func liftsIn(s *model.Step, p *model.Part) bool {
	return slices.ContainsFunc(s.Links, func(l *model.Link) bool {
		return l.To == model.Named(p) && l.Kind.MovesPart()
	})
}

func (w *worker) part(at scene, p *model.Part) {
	switch k := at.link.Kind; {
	case k.TakesOff:
		w.undo(at, undoing{part: p})
	case k.PutsBack:
		w.open[p] = false
	default:
		return
	}
	w.held(at, p, false)
	w.lifts = append(w.lifts, lift{p, at})
	w.loads = append(w.loads, lift{p, at})
}

// undo notes what a later reverse: of the phase takes back, with the tools that
// the step's notes for the refit add.
func (w *worker) undo(at scene, u undoing) {
	u.phase, u.tools = at.step.Phase, at.tools
	for _, b := range at.step.Blocks {
		if b.Role == model.OnRefit {
			u.tools = u.tools.with(toolboxOf(b.Links))
		}
	}
	w.open[u.thing()] = true
	w.undone = append(w.undone, u)
}

func (u undoing) thing() model.Named {
	if u.part != nil {
		return u.part
	}
	return u.fastener
}

// held turns the fasteners of a part.
func (w *worker) held(at scene, p *model.Part, tightens bool) {
	for _, use := range p.HeldBy {
		if use.To != nil {
			w.turn(at, use.To, tightens)
		}
	}
}

func (w *worker) turn(at scene, f *model.Fastener, tightens bool) {
	w.turns = append(w.turns, turn{at, f, tightens, w.again[at.link]})
}

func (w *worker) place(act model.Act, tool *model.Tool) {
	switch act {
	case model.Place:
		w.placed = append(w.placed, tool)
	case model.Clear:
		w.placed = slices.DeleteFunc(w.placed, func(t *model.Tool) bool { return t == tool })
	default: // the others are no concern of this
	}
}

// call takes over what a called procedure leaves in place, takes away and
// refits. What it does itself is judged where it stands.
func (w *worker) call(callee *model.Procedure) {
	for _, s := range callee.Steps {
		for _, l := range s.Links {
			switch to := l.To.(type) {
			case *model.Tool:
				if l.Kind.Act == model.Clear {
					w.place(model.Clear, to)
				}
			case *model.Part:
				if l.Kind.Act == model.Refit {
					w.open[to] = false
				}
			}
		}
	}
	for _, s := range callee.Leaves {
		w.state(s)
	}
}

// reverse takes back what a phase undid and is still so, the last first: as
// far as a part, or all but some. Each is put back with the tools of its own
// step and those of the reversing one.
func (w *worker) reverse(at scene) {
	upTo := at.link.Part()
	if upTo != nil && !w.open[upTo] {
		return
	}
	for _, u := range slices.Backward(w.undone) {
		if !w.open[u.thing()] || !u.meant(at.link) {
			continue
		}
		w.open[u.thing()] = false
		w.putBack(scene{at.step, at.link, u.tools.with(at.tools)}, u)
		if upTo != nil && u.part == upTo {
			return
		}
	}
}

// meant says whether a reverse: link means what was undone.
func (u undoing) meant(reverse *model.Link) bool {
	left := reverse.Sign == '!' && u.part != nil && slices.Contains(reverse.Parts(), u.part)
	return u.phase == reverse.Phase() && !left
}

func (w *worker) putBack(at scene, u undoing) {
	w.back[at.link] = append(w.back[at.link], u.thing())
	if u.fastener != nil {
		w.turn(at, u.fastener, true)
		return
	}
	w.held(at, u.part, true)
}
