package numbers

import (
	"slices"
	"strings"
	"unicode"

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
	just bool               // on neither: it is set to this
	full bool               // of all that there is: who says "at least" means it and no more
}

// boundsOf are the ends that a limit has: one, or both of a range and a tolerance.
func boundsOf(n model.Named, who string, l quantity.Limit) []bound {
	at := func(side quantity.LimitKind, q quantity.Quantity) bound {
		return bound{rival: rival{Quantity: q, of: n, who: who}, side: side}
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
	return []bound{{rival: rival{Quantity: h.For.Least, of: h, who: register}, side: quantity.AtLeast}}
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
	if b.just {
		return finding.Say("%s", b.Quantity)
	}
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

// turnedRound is the bound that an amount is, where the words give it the other
// side and no bound has that.
func (s sided) turnedRound(bounds []bound, is func(bound) bool) *bound {
	var turned *bound
	for i, b := range bounds {
		switch {
		case s.side == quantity.Exact || s.loose && b.measured() || b.full && !s.beyond || !is(b):
		case b.just && s.beyond:
			turned = &bounds[i]
		case b.just || b.side == s.side:
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
		said := a.sided(link.Text, tag, spoken{})
		if b := said.turnedRound(boundsBehind(link), a.isBound); b != nil {
			return []finding.Finding{ValueDisagrees.At(link.At, "the words say %s, and %s says %s", said.said, finding.Say(b.who), b.says()).
				WithMend("write %s, or leave the words empty; a number of another thing goes outside the link", b.says()).
				See(b.of.Base().At, "it is stated here")}
		}
	}
	return nil
}

// branchTurned is told of a branch for what failed whose own words name what passes:
// "if it is thicker than 2 mm", of at least 2 mm.
func branchTurned(link *model.Link, amounts []amountIn, tag string) []finding.Finding {
	h, is := link.To.(*model.Hold)
	tongue := language.Known(tag)
	if !is || !link.Is(model.LinkIfNot) || tongue == nil {
		return nil
	}
	for _, a := range amounts {
		said := a.boundingIn(link.Text, tongue)
		if !said.beyond || slices.ContainsFunc(said.before, func(w string) bool { return slices.Contains(tongue.Denials, w) }) {
			continue
		}
		for _, b := range boundsOf(h, register, h.Limit) {
			if b.side == said.side && a.isBound(b) {
				return []finding.Finding{ValueDisagrees.At(link.At, "the words say %s, and this is done where it is not %s", said.said, b.says()).
					WithMend("write what is out of the limit, or take if-not: away").See(h.At, "it is stated here")}
			}
		}
	}
	return nil
}

// isBound says that an amount, read in one of its ways, is the end that is stated:
// each is the other, rounded. One minute may be what 90 s are called, and is no end
// of them.
func (a amountIn) isBound(b bound) bool {
	return a.readAnyWay(func(q quantity.Quantity) bool {
		return quantity.Agrees(q, b.Quantity) && quantity.Agrees(b.Quantity, q)
	})
}

// turned is told at the first bound that stands in a sentence with the other side.
func (b *beside) turned(s sentence.Sentence, amounts []typed) []finding.Finding {
	for _, t := range amounts {
		said := t.sided(s.Text, b.of.language(), spokenBefore(s, t.Start))
		said.loose = said.loose && !b.onlyNamed(s.Text, t, said)
		if r := said.turnedRound(b.bounds, t.isBound); r != nil {
			return []finding.Finding{ValueDisagrees.At(s.At.Part(t.Start, t.End), "the sentence says %s, and %s says %s", said.said, finding.Say(r.who), finding.Say("%s for the %s", r.says(), r.of.Label())).
				WithMend("write %s; what is said of another thing stands in a sentence of its own", r.says()).
				See(r.of.Base().At, "it is stated here")}
		}
	}
	return nil
}

// onlyNamed says that a sentence names what is measured and its bound, and nothing
// else: "Room at 2 °C or above." What is out of it would have an order behind it.
func (b *beside) onlyNamed(text string, t typed, said sided) bool {
	tongue := language.Known(b.of.language())
	rest, whole := strings.CutPrefix(strings.ToLower(text[t.Start:]), strings.ToLower(said.said))
	if tongue == nil || !whole || strings.ContainsFunc(rest, unicode.IsLetter) {
		return false
	}
	named := false
	for _, w := range strings.Fields(strings.ToLower(strings.NewReplacer(":", " ", ",", " ").Replace(text[:t.Start]))) {
		switch {
		case b.names[w] || b.nouns[w]:
			named = true
		case !tongue.Verbs.Articles[w] && !tongue.Bounds.At[w] && !slices.Contains(tongue.Asides.Of, w):
			return false
		}
	}
	return named
}

// isBound says the same of an amount in a sentence: a number without a unit is read
// in that of what the link before it acts on.
func (t typed) isBound(b bound) bool {
	if t.bare == nil {
		return t.amountIn.isBound(b)
	}
	return t.bare == b.of && quantity.Agrees(t.inUnitOf(b.Quantity), b.Quantity)
}
