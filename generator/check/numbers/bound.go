package numbers

import (
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/quantity"
	"baybinder/generator/language"
	"baybinder/generator/model"
)

// bound is an end that a hold states, and on which side of it is right.
type bound struct {
	rival

	side quantity.LimitKind // AtMost, AtLeast
}

// boundsOf are the ends that a hold states on one side alone: those of its wait,
// and of a limit that is open on the other.
func boundsOf(h *model.Hold) []bound {
	var out []bound
	add := func(side quantity.LimitKind, list ...quantity.Quantity) {
		for _, q := range given(list...) {
			out = append(out, bound{rival{Quantity: q, of: h, who: register}, side})
		}
	}
	add(quantity.AtLeast, h.For.Least)
	add(quantity.AtMost, h.For.Most)
	if h.Limit.Kind == quantity.AtMost || h.Limit.Kind == quantity.AtLeast {
		add(h.Limit.Kind, numbersOf(h.Limit)...)
	}
	return out
}

// says is a bound as a message names it.
func (b bound) says() finding.Words {
	if b.side == quantity.AtMost {
		return finding.Say("at most %s", b.Quantity)
	}
	return finding.Say("at least %s", b.Quantity)
}

// sided is an amount that a text bounds in words: "at most 7 mm", "7 mm como
// mínimo". Exact is the side of one that it does not.
func (a amountIn) sided(text, tag string) (side quantity.LimitKind, said string) {
	spoken := language.Known(tag)
	if spoken == nil {
		return quantity.Exact, ""
	}
	start, end := text[:a.Start], text[a.End:]
	if slices.ContainsFunc(strings.Fields(strings.ToLower(start)), func(w string) bool { return spoken.Asides.Supposing[w] }) {
		return quantity.Exact, ""
	}
	before, behind := wordsBefore(start), wordsBehind(end)
	for _, s := range []struct {
		side    quantity.LimitKind
		phrases []string
	}{{quantity.AtMost, spoken.Asides.AtMost}, {quantity.AtLeast, spoken.Asides.AtLeast}} {
		for _, p := range s.phrases {
			switch one := []string{p}; {
			case endsIn(before, one):
				return s.side, p + " " + a.said
			case beginsWith(behind, one) && !hasFigure(strings.Join(behind, " ")):
				return s.side, a.said + " " + p
			}
		}
	}
	return quantity.Exact, ""
}

// turnedRound is the bound that an amount is, where the words give it the other
// side and no bound has that.
func turnedRound(q quantity.Quantity, side quantity.LimitKind, bounds []bound) *bound {
	if side == quantity.Exact {
		return nil
	}
	var turned *bound
	for i, b := range bounds {
		switch {
		case !q.Fits(b.Unit.Dimension()) || !quantity.Agrees(q, b.Quantity):
		case b.side == side:
			return nil
		default:
			turned = &bounds[i]
		}
	}
	return turned
}

// boundTurned is told of a link in whose own words a bound of its hold stands with
// the other side; a branch says what is out of it.
func boundTurned(link *model.Link, amounts []amountIn, tag string) []finding.Finding {
	h, is := link.To.(*model.Hold)
	if !is || link.Kind.Branches {
		return nil
	}
	for _, a := range amounts {
		side, said := a.sided(link.Text, tag)
		if b := turnedRound(a.Quantity, side, boundsOf(h)); b != nil {
			return []finding.Finding{ValueDisagrees.At(link.At, "the words say %s, and %s says %s", said, finding.Say(b.who), b.says()).
				WithMend("write %s, or leave the words empty; a number of another thing goes outside the link", b.says()).
				See(h.At, "it is stated here")}
		}
	}
	return nil
}
