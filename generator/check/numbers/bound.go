package numbers

import (
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/quantity"
	"baybinder/generator/language"
	"baybinder/generator/model"
	"baybinder/generator/read/sentence"
)

// bound is an end that is stated, and on which side of it is right.
type bound struct {
	rival

	side quantity.LimitKind // AtMost, AtLeast
}

// boundsOf are the ends that a limit has: one, or both of a range and a tolerance.
func boundsOf(n model.Named, who string, l quantity.Limit) []bound {
	at := func(side quantity.LimitKind, q quantity.Quantity) bound {
		return bound{rival{Quantity: q, of: n, who: who}, side}
	}
	if l.Kind == quantity.AtMost || l.Kind == quantity.AtLeast {
		return []bound{at(l.Kind, l.Numbers()[0])}
	}
	if low, high, has := l.Ends(); has {
		return []bound{at(quantity.AtLeast, low), at(quantity.AtMost, high)}
	}
	return nil
}

// waited are the ends of a wait.
func waited(h *model.Hold) []bound {
	if l, has := h.For.Range(); has {
		return boundsOf(h, register, l)
	}
	if h.For.IsZero() {
		return nil
	}
	return []bound{{rival{Quantity: h.For.Least, of: h, who: register}, quantity.AtLeast}}
}

// boundsBehind are the ends that a link's own words are held against: a branch says
// what is out of them, and what is changed has others.
func boundsBehind(link *model.Link) []bound {
	if link.Kind.Branches || link.Kind.Act == model.Alter {
		return nil
	}
	switch to := link.To.(type) {
	case *model.Hold:
		return append(waited(to), boundsOf(to, register, to.Limit)...)
	case *model.Setting:
		limit, _ := quantity.ParseLimit(to.Value, quantity.None)
		return boundsOf(to, machineFile, limit)
	case *model.Energy:
		return boundsOf(to, machineFile, to.Pressures)
	case *model.Fastener:
		if len(to.Stages) == 0 {
			return boundsOf(to, machineFile, to.Torque)
		}
	}
	return nil
}

// says is a bound as a message names it.
func (b bound) says() finding.Words {
	if b.side == quantity.AtMost {
		return finding.Say("at most %s", b.Quantity)
	}
	return finding.Say("at least %s", b.Quantity)
}

// measured says that a bound is what a reading is held against.
func (b bound) measured() bool {
	h, is := b.of.(*model.Hold)
	return is && h.Kind == "measure"
}

// sided is an amount that a text bounds in words, "at most 7 mm", "7 mm como
// mínimo": its side, Exact where there is none, and the words.
type sided struct {
	side  quantity.LimitKind
	said  string
	loose bool // "7 mm or less", "≤ 7 mm": of a reading it is as often what is out of the limit
}

// sided reads the words beside an amount. What is only supposed has no side.
func (a amountIn) sided(text, tag string) sided {
	spoken := language.Known(tag)
	start, end := strings.TrimSuffix(strings.TrimSpace(text[:a.Start]), "pH"), text[a.End:]
	if spoken == nil || slices.ContainsFunc(strings.Fields(strings.ToLower(start)), func(w string) bool { return spoken.Asides.Supposing[w] }) {
		return sided{}
	}
	before, behind := wordsBefore(start), wordsBehind(end)
	if hasFigure(strings.Join(behind, " ")) {
		behind = nil // they may be the next amount's
	}
	words := &spoken.Asides
	most := sideWords{quantity.AtMost, words.AtMost, words.OrLess, "≤"}.beside(a.said, before, behind)
	if most.side != quantity.Exact {
		return most
	}
	return sideWords{quantity.AtLeast, words.AtLeast, words.OrMore, "≥"}.beside(a.said, before, behind)
}

// sideWords are what puts an amount on a side: on either hand of it, behind it, and
// as a sign before it.
type sideWords struct {
	side           quantity.LimitKind
	either, behind []string
	sign           string
}

// beside reads an amount by the words before and behind it.
func (w sideWords) beside(amount string, before, behind []string) sided {
	for _, p := range w.either {
		if endsIn(before, []string{p}) {
			return sided{side: w.side, said: p + " " + amount}
		}
		if beginsWith(behind, []string{p}) {
			return sided{side: w.side, said: amount + " " + p}
		}
	}
	for _, p := range w.behind {
		if beginsWith(behind, []string{p}) {
			return sided{w.side, amount + " " + p, true}
		}
	}
	if n := len(before); n > 0 && strings.HasSuffix(before[n-1], w.sign) {
		return sided{w.side, w.sign + " " + amount, true}
	}
	return sided{}
}

// Bounded is an amount that a text bounds in words, and how it says that.
type Bounded struct {
	quantity.Quantity

	Side quantity.LimitKind // AtMost, AtLeast
	Said string             // "at most 7 mm"
}

// BoundedIn are the amounts that a text in a language bounds in words, in order.
func BoundedIn(text, tag string) []Bounded {
	var out []Bounded
	for _, a := range amountsIn(text, tag) {
		if s := a.sided(text, tag); s.side != quantity.Exact {
			out = append(out, Bounded{a.Quantity, s.side, s.said})
		}
	}
	return out
}

// turnedRound is the bound that an amount is, where the words give it the other
// side and no bound has that.
func (s sided) turnedRound(bounds []bound, is func(bound) bool) *bound {
	var turned *bound
	for i, b := range bounds {
		switch {
		case s.side == quantity.Exact || s.loose && b.measured() || !is(b):
		case b.side == s.side:
			return nil
		default:
			turned = &bounds[i]
		}
	}
	return turned
}

// boundTurned is told of a link in whose own words a bound stands with the other
// side.
func boundTurned(link *model.Link, amounts []amountIn, tag string) []finding.Finding {
	for _, a := range amounts {
		said := a.sided(link.Text, tag)
		if b := said.turnedRound(boundsBehind(link), a.isBound); b != nil {
			return []finding.Finding{ValueDisagrees.At(link.At, "the words say %s, and %s says %s", said.said, finding.Say(b.who), b.says()).
				WithMend("write %s, or leave the words empty; a number of another thing goes outside the link", b.says()).
				See(b.of.Base().At, "it is stated here")}
		}
	}
	return nil
}

// isBound says that an amount, read in one of its ways, is the end that is stated.
func (a amountIn) isBound(b bound) bool {
	return a.readAnyWay(func(q quantity.Quantity) bool { return quantity.Agrees(q, b.Quantity) })
}

// turned is told at the first bound that stands in a sentence with the other side.
func (b *beside) turned(s sentence.Sentence, amounts []typed) []finding.Finding {
	for _, t := range amounts {
		said := t.sided(s.Text, b.of.language())
		if r := said.turnedRound(b.bounds, t.isBound); r != nil {
			return []finding.Finding{ValueDisagrees.At(s.At.Part(t.Start, t.End), "the sentence says %s, and %s says %s", said.said, finding.Say(r.who), finding.Say("%s for the %s", r.says(), r.of.Label())).
				WithMend("write %s; what is said of another thing stands in a sentence of its own", r.says()).
				See(r.of.Base().At, "it is stated here")}
		}
	}
	return nil
}

// isBound says the same of an amount in a sentence: a number without a unit is read
// in that of what the link before it acts on.
func (t typed) isBound(b bound) bool {
	if t.bare == nil {
		return t.amountIn.isBound(b)
	}
	return t.bare == b.of && quantity.Agrees(t.inUnitOf(b.Quantity), b.Quantity)
}
