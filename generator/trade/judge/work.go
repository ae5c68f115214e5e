package judge

import (
	"slices"

	"baybinder/generator/manual"
)

// job is what one procedure's own steps do that numbers are asked of.
type job struct {
	of    *manual.Procedure
	turns []turn
	lifts []lift
}

// turn is a fastener that is undone or tightened, and what with.
type turn struct {
	fastener *manual.Fastener
	tightens bool         // to its torque
	link     *manual.Link // of the act: remove, refit, loosen, tighten or reverse
	tools    toolbox
}

// lift is a part that is taken off or put back.
type lift struct {
	part  *manual.Part
	step  *manual.Step
	link  *manual.Link
	tools toolbox
}

// undoing is an act that a reverse: can take back: a part that came off, or a
// fastener that was undone.
type undoing struct {
	phase    *manual.Phase
	part     *manual.Part
	fastener *manual.Fastener
	tools    toolbox // with those of the step's notes for the refit
}

// worker goes through a procedure from the first step to the last. It follows
// what is off, loose and in place in one world, in which every condition holds:
// enough to know what a reverse: brings back and with what, and no more. What
// the walk finds wrong with the order of the acts is not told here.
type worker struct {
	job
	undone []undoing
	open   map[manual.Named]bool // parts that are off, fasteners that are loose
	placed []*manual.Tool
}

// followWork goes through a procedure.
func followWork(p *manual.Procedure) *job {
	w := worker{job: job{of: p}, open: map[manual.Named]bool{}}
	for _, s := range p.Expects {
		w.state(s)
	}
	for _, s := range p.Steps {
		w.step(s)
	}
	return &w.job
}

// state notes a tool that stands in place as expects or leaves says.
func (w *worker) state(s manual.State) {
	if tool, is := s.Thing.(*manual.Tool); is && s.Word == "placed" {
		w.placed = append(w.placed, tool)
	}
}

func (w *worker) step(s *manual.Step) {
	tools := toolboxOf(s.Links)
	tools.placed = slices.Clone(w.placed)
	for _, link := range s.Links {
		if !link.Bad {
			w.act(s, link, tools)
		}
	}
}

func (w *worker) act(s *manual.Step, link *manual.Link, tools toolbox) {
	switch to := link.To.(type) {
	case *manual.Fastener:
		w.fastener(s, link, to, tools)
	case *manual.Part:
		w.part(s, link, to, tools)
	case *manual.Tool:
		w.place(link.Kind.Act, to)
	case *manual.Procedure:
		w.call(link, to)
	case nil:
		if link.Kind.Act == manual.Reverse {
			w.reverse(link, tools)
		}
	}
}

func (w *worker) fastener(s *manual.Step, link *manual.Link, f *manual.Fastener, tools toolbox) {
	switch link.Kind.Act {
	case manual.Loosen:
		w.turn(f, false, link, tools)
		w.undo(s, undoing{phase: s.Phase, fastener: f, tools: tools})
	case manual.Tighten:
		w.turn(f, true, link, tools)
		w.open[f] = false
	}
}

func (w *worker) part(s *manual.Step, link *manual.Link, p *manual.Part, tools toolbox) {
	switch link.Kind.Act {
	case manual.Remove, manual.Renew:
		w.undo(s, undoing{phase: s.Phase, part: p, tools: tools})
	case manual.Refit:
		w.open[p] = false
	default:
		return
	}
	w.held(p, false, link, tools)
	w.lifts = append(w.lifts, lift{p, s, link, tools})
}

// undo notes what a later reverse: of the phase takes back, with the tools that
// the step's notes for the refit add.
func (w *worker) undo(s *manual.Step, u undoing) {
	for _, b := range s.Blocks {
		if b.Role == manual.OnRefit {
			u.tools = u.tools.with(toolboxOf(b.Links))
		}
	}
	w.open[u.thing()] = true
	w.undone = append(w.undone, u)
}

func (u undoing) thing() manual.Named {
	if u.part != nil {
		return u.part
	}
	return u.fastener
}

// held turns the fasteners of a part.
func (w *worker) held(p *manual.Part, tightens bool, link *manual.Link, tools toolbox) {
	if p.Unread {
		return
	}
	for _, use := range p.HeldBy {
		if use.To != nil {
			w.turn(use.To, tightens, link, tools)
		}
	}
}

func (w *worker) turn(f *manual.Fastener, tightens bool, link *manual.Link, tools toolbox) {
	if !f.Unread {
		w.turns = append(w.turns, turn{f, tightens, link, tools})
	}
}

func (w *worker) place(act manual.Act, tool *manual.Tool) {
	switch act {
	case manual.Place:
		w.placed = append(w.placed, tool)
	case manual.Clear:
		w.placed = slices.DeleteFunc(w.placed, func(t *manual.Tool) bool { return t == tool })
	}
}

// call takes over what a called procedure leaves in place, takes away and
// refits. What it does itself is judged where it stands.
func (w *worker) call(link *manual.Link, callee *manual.Procedure) {
	if link.Kind.Act != manual.Call {
		return
	}
	for _, s := range callee.Steps {
		for _, l := range s.Links {
			switch to := l.To.(type) {
			case *manual.Tool:
				if l.Kind.Act == manual.Clear {
					w.place(manual.Clear, to)
				}
			case *manual.Part:
				if l.Kind.Act == manual.Refit {
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
func (w *worker) reverse(link *manual.Link, tools toolbox) {
	if link.Phase == nil || link.Part != nil && !w.open[link.Part] {
		return
	}
	for i := len(w.undone) - 1; i >= 0; i-- {
		u := w.undone[i]
		if u.phase != link.Phase || !w.open[u.thing()] || link.Sign == '!' && slices.Contains(link.Parts, u.part) {
			continue
		}
		w.open[u.thing()] = false
		w.putBack(u, link, u.tools.with(tools))
		if link.Part != nil && u.part == link.Part {
			return
		}
	}
}

func (w *worker) putBack(u undoing, link *manual.Link, tools toolbox) {
	if u.fastener != nil {
		w.turn(u.fastener, true, link, tools)
		return
	}
	w.held(u.part, true, link, tools)
}
