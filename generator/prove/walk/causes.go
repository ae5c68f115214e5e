package walk

import (
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/parallel"
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// manyCallers is at the end of how many issued procedures what one act of a
// procedure that they perform left undone is told once, at that act.
const manyCallers = 3

// spot is a thing whatever the layout that numbers it.
type spot struct {
	sort  sort
	named model.Named
	part  *model.Part
}

func (w *walk) spot(x thing) spot {
	i := w.lay.things[x]
	return spot{i.sort, i.named, i.part}
}

// debt is what a procedure leaves undone at its end, at the do: that did it.
type debt struct {
	rule *rule
	of   spot
	at   *model.Link
	told bool // in what is performed already: it is counted and not told
}

// act is a link of a procedure that left something undone in those that perform
// it, by one rule.
type act struct {
	link *model.Link
	rule *rule
}

// common is what several procedures leave undone by one act.
type common struct {
	act
	things  []finding.Words
	told    int // of the callers, those that nobody else tells of it
	callers []*model.Procedure
	calls   []*model.Link
}

// debts are what the procedure leaves undone that a call did.
func (w *walk) debts() []debt {
	out := w.counted
	for _, i := range w.left {
		if i.at.link.Kind != nil && i.at.link.Kind.Act == model.Call {
			out = append(out, debt{rule: i.rule, of: w.spot(i.thing), at: i.at.link})
		}
	}
	return out
}

// openers are the links that put things where they are at the end, where that is
// not as they normally are.
func (w *walk) openers() map[spot]*model.Link {
	out := map[spot]*model.Link{}
	for _, x := range w.touched {
		open := w.Is(w.state[x], ^states(0, unknown))
		w.each(w.began[x], open, func(e event, _ diagram.Func) {
			if p := w.spot(x); e.link != nil && out[p] == nil {
				out[p] = e.link
			}
		})
	}
	return out
}

// behind is the act that a debt comes of, in the procedure that is performed or
// in one that it performs; nil where there is none.
func (s *shared) behind(d debt) *model.Link {
	l := d.at
	for l != nil && l.Kind.Act == model.Call {
		callee, _ := l.To.(*model.Procedure)
		w := s.walks[callee]
		if w == nil {
			return nil
		}
		l = w.openers[d.of]
	}
	return l
}

// causes are the acts that leave something undone in many procedures, in the
// order of the manual.
func (s *shared) causes() []*common {
	var out []*common
	by := map[act]*common{}
	for _, p := range s.manual.Procedures {
		w := s.walks[p]
		if w == nil || !p.Issued() {
			continue
		}
		for _, d := range w.debts {
			l := s.behind(d)
			if l == nil {
				continue
			}
			key := act{l, d.rule}
			c := by[key]
			if c == nil {
				c = &common{act: key}
				by[key], out = c, append(out, c)
			}
			c.note(p, d)
		}
	}
	return slices.DeleteFunc(out, func(c *common) bool { return c.told < manyCallers })
}

func (c *common) note(p *model.Procedure, d debt) {
	if !slices.Contains(c.callers, p) {
		c.callers = append(c.callers, p)
		if !d.told {
			c.told++
		}
	}
	if !slices.Contains(c.calls, d.at) {
		c.calls = append(c.calls, d.at)
	}
	label := labelAt(d.of.named, d.of.part)
	if !slices.ContainsFunc(c.things, func(t finding.Words) bool { return same(t, label) }) {
		c.things = append(c.things, label)
	}
}

// finding tells it at the act.
func (c *common) finding() finding.Finding {
	f := c.rule.At(c.link.At, "%s, in %d procedures that perform this: %s", finding.Say(heads[c.rule]), len(c.callers), finding.ListOf("", c.things)).
		WithMend("put it right once, in a procedure that they all perform afterwards, or in each of the %d", len(c.callers))
	for _, l := range c.calls {
		f = f.See(l.At, "here it is performed, and not put right by the end")
	}
	return f
}

// tellOnce tells what many procedures leave undone by one act at that act, and
// walks those procedures again without it.
func (s *shared) tellOnce(walks []*Walk) []finding.Finding {
	if s.tellAll {
		return nil
	}
	causes := s.causes()
	if len(causes) == 0 {
		return nil
	}
	var out []finding.Finding
	s.elsewhere = map[act]bool{}
	for _, c := range causes {
		s.elsewhere[c.act] = true
		out = append(out, c.finding())
	}
	parallel.Each(len(walks), func(i int) {
		if slices.ContainsFunc(walks[i].debts, s.toldElsewhere) {
			walks[i] = s.walk(s.manual.Procedures[i])
		}
	})
	return out
}

// toldElsewhere says that a debt is told at the act that it comes of.
func (s *shared) toldElsewhere(d debt) bool {
	return len(s.elsewhere) > 0 && s.elsewhere[act{s.behind(d), d.rule}]
}
