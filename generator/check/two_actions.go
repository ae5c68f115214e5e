package check

import (
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
)

var twoActions = finding.Rule{
	Code:       "two-actions",
	Level:      finding.Advice,
	Acceptable: true,
	Title:      "A step that asks for more than one action",
	Why:        "A step is ticked off once. Of two actions in one step, the second is the one that is forgotten after an interruption.",
	Mend:       "Make a step of each. Isolate and lock, unlock and restore, free and cap, fill and bleed, refit and tighten of one thing, and putting in the tool that holds a load are one action, and so is what is done at the same time. The limit is actions-in-a-step in shop.yaml.",
}

// actionsInAStep is the limit where the shop has none: ASD-STE100, rule 5.2,
// one instruction, unless actions are simultaneous.
const actionsInAStep = 1

func runTwoActions(w *writing, text []sentence) []finding.Finding {
	done := actionsIn(text, w.grammar)
	if len(done) <= w.actions {
		return nil
	}
	return []finding.Finding{twoActions.At(done[w.actions].at, "this step asks for %d actions; the shop's limit is %d", len(done), w.actions).
		WithMend("make a step of each")}
}

// action is something to do: what a typed act says, or an imperative verb.
type action struct {
	at    position.Pos
	act   *model.Link // nil where it is words only
	names []model.Named

	unsure bool // something of it could not be read
}

// actionsIn are the actions of a text, those that are one action told once.
func actionsIn(text []sentence, g *grammar) []action {
	var done []action
	before := 0 // the actions without those of the sentence before
	for _, s := range text {
		if act := s.actBehind(g); act != nil && len(done) > before && done[len(done)-1].act == nil {
			done[len(done)-1].act = act
			continue
		}
		together := g != nil && g.atOnce(s)
		first := len(done)
		before = first
		for i, clause := range clauses(s, g) {
			if i == 0 && s[0].how && first > 0 {
				continue // it says how the action before the colon is done
			}
			for _, a := range clause.actions(g) {
				if together && len(done) > first || slices.ContainsFunc(done, a.isOneWith) {
					continue
				}
				done = append(done, a)
			}
		}
	}
	return done
}

// actBehind is the typed act whose words are all that a sentence is, and no order: behind
// the end of an order they name what that was. "Paint a mark on each. [Pipes](mark:pipes)"
func (s sentence) actBehind(g *grammar) *model.Link {
	link := s[0].link
	if link == nil || link.Kind.Act == model.NoAct || g == nil || g.verb(s, 0, false) {
		return nil
	}
	for _, w := range s {
		if w.link != link && (w.link == nil || w.link.Kind.Act != model.NoAct) {
			return nil
		}
	}
	return link
}

// clause is a part of a sentence that begins where a verb can stand.
type clause []word

// clauses parts a sentence behind its condition, and at and, then. What is not
// followed by a verb or a typed act is no new clause: "lid and gasket".
func clauses(s sentence, g *grammar) []clause {
	var out []clause
	begin := 0
	conditional := startsConditional(s, g)
	for i := range s {
		behind := i > 0 && (g.joins(s[i-1].said) || conditional && s[i-1].comma)
		if i > 0 && s[i-1].comma {
			conditional = false
		}
		if behind && !inTitle(s, i) && (opensAct(s, i) || g.verb(s, i, g.joins(s[i-1].said))) {
			out = append(out, clause(s[begin:i]))
			begin = i
		}
	}
	return append(out, clause(s[begin:]))
}

// startsConditional says that a sentence begins with its condition.
func startsConditional(s sentence, g *grammar) bool {
	if link := s[0].link; link != nil {
		switch link.Kind.Name {
		case "when", "if", "if-not", "optional", "on":
			return true
		}
	}
	return g.conditional(s[0].said)
}

// inTitle says that a word stands in the name of something else to read.
func inTitle(s sentence, i int) bool { return s[i].link != nil && s[i].link.Is(model.LinkSee) }

// opensAct says that the words of a typed act begin here.
func opensAct(s sentence, i int) bool {
	link := s[i].link
	return link != nil && link.Kind.Act != model.NoAct && link.Text != "" && (i == 0 || s[i-1].link != link)
}

// actions of a clause are its typed acts; where it has none, its verb.
func (c clause) actions(g *grammar) []action {
	var out []action
	verbal := action{}
	for i, w := range c {
		if w.link == nil || i > 0 && c[i-1].link == w.link {
			continue
		}
		if w.link.Kind.Act != model.NoAct {
			out = append(out, action{at: w.link.At, act: w.link, unsure: murky(w.link)})
			continue
		}
		verbal.unsure = verbal.unsure || murky(w.link)
		if w.link.To != nil {
			verbal.names = append(verbal.names, w.link.To)
		}
	}
	if len(out) > 0 || len(c) == 0 || !g.verb(sentence(c), 0, false) {
		return out
	}
	verbal.at = c[0].at
	return []action{verbal}
}

// murky says that a link could not be bound, or that it is not known of what it
// is that it names.
func murky(l *model.Link) bool {
	return l.Bad || l.To != nil && l.To.Base().Lost("of", "held-by", "points", "blocked-by", model.Holding, model.Cutting)
}

// isOneWith says that two actions are one: the same act on several things, the
// pairs that the format names, the undoing of what holds a part that is taken
// off, and the measurement that a proof is, whichever is told first.
func (a action) isOneWith(b action) bool {
	if a.unsure || b.unsure {
		return true // what could not be read may be what makes them one
	}
	switch {
	case a.act == nil && b.act == nil:
		return false
	case a.act == nil:
		return holdsOneOf(a.names, b.act.To) || proves(a.names, b.act)
	case b.act == nil:
		return b.isOneWith(a)
	}
	one := func(x, y model.Act) bool {
		return a.act.Kind.Act == x && b.act.Kind.Act == y || a.act.Kind.Act == y && b.act.Kind.Act == x
	}
	switch {
	case a.act.Kind.Act == b.act.Kind.Act:
		return true
	case one(model.Isolate, model.Lock), one(model.Unlock, model.Restore):
		return sameCut(a.act.To, b.act.To)
	case one(model.Remove, model.Cap), one(model.Renew, model.Cap), one(model.Fill, model.Bleed):
		return a.act.To == b.act.To
	case one(model.Refit, model.Tighten), one(model.Loosen, model.Cap), one(model.Loosen, model.Remove), one(model.Loosen, model.Renew):
		return holds(a.act.To, b.act.To) || holds(b.act.To, a.act.To)
	case one(model.Release, model.Place):
		return bears(a.act.To, b.act.To) || bears(b.act.To, a.act.To)
	}
	return false
}

// bears says that a tool is what holds the load that is let down onto it.
func bears(tool, energy model.Named) bool {
	t, isTool := tool.(*model.Tool)
	e, isEnergy := energy.(*model.Energy)
	return isTool && isEnergy && slices.ContainsFunc(e.BlockedBy, func(ref model.Ref[model.Tool]) bool { return ref.To == t })
}

// proves says that one of the holds is how an energy is proved dead.
func proves(holds []model.Named, act *model.Link) bool {
	return act.Kind.Act == model.Prove && slices.ContainsFunc(holds, func(n model.Named) bool {
		hold, is := n.(*model.Hold)
		return is && hold.Of.ID == act.ID
	})
}

func holdsOneOf(fasteners []model.Named, part model.Named) bool {
	return slices.ContainsFunc(fasteners, func(f model.Named) bool { return holds(f, part) })
}

// holds says whether one is a fastener of the other.
func holds(fastener, part model.Named) bool {
	f, isFastener := fastener.(*model.Fastener)
	p, isPart := part.(*model.Part)
	return isFastener && isPart && slices.Contains(f.Holds, p)
}

// sameCut says whether two links name the same point, or a point and what it
// cuts.
func sameCut(a, b model.Named) bool {
	cuts := func(x, y model.Named) bool {
		p, isPoint := x.(*model.Point)
		e, isEnergy := y.(*model.Energy)
		return isPoint && isEnergy && slices.Contains(p.Cuts, e)
	}
	return a == b || cuts(a, b) || cuts(b, a)
}
