package numbers

import (
	"slices"
	"strings"

	"baybinder/generator/base/quantity"
	"baybinder/generator/language/shape"
)

// clause is what stands around an amount that words put on a side: what says whether
// that is ordered. Of the words before it the bounding ones are the last.
type clause struct {
	*shape.Language

	amount   amountIn
	before   []string // with those of links
	bounding int      // how many of them put it on its side
	behind   []string
}

// keeps says that the clause orders something to be kept on that side: "keep the room
// above 8 °C", "den Druck unter 2 bar halten".
func (c clause) keeps() bool {
	orders := c.Bounds.Keeps
	if c.amount.Fits(quantity.Duration) {
		orders = slices.Concat(c.Bounds.Waits, orders)
	}
	if c.endsInOrder(c.Bounds.LateKeeps) {
		return c.canBeKept(c.plain(), true)
	}
	what, ordered := c.behindOrder(orders)
	return ordered && c.ends() && c.canBeKept(what, false)
}

// ends says that nothing stands behind the amount that belongs to it; of an order for
// some time the verb may, "lassen Sie ihn weniger als 3 min abkühlen".
func (c clause) ends() bool {
	if slices.ContainsFunc(c.behind, c.isDenial) {
		return false
	}
	return len(c.behind) == 0 || c.goesOn(0) || c.Acts.Late && len(c.behind) == 1 && c.amount.Fits(quantity.Duration)
}

// sees says that the clause orders that something is seen to be on that side, "make
// sure that it stays above 8 °C", and whether that it is not.
func (c clause) sees() (is, denied bool) {
	what, ordered := c.behindOrder(c.Bounds.Sees)
	what = c.withoutAt(what)
	if n := len(what); !ordered || n == 0 || slices.ContainsFunc(what, func(w string) bool { return c.Bounds.Told[w] }) || !c.Bounds.Is[what[n-1]] && (len(c.behind) == 0 || !c.Bounds.Is[c.behind[0]]) {
		return false, false
	}
	return true, slices.ContainsFunc(what, c.isDenial)
}

// forbids says that the clause forbids that something comes to that side: "never let
// the oil get over 60 °C".
func (c clause) forbids() bool {
	_, forbidden := c.behindOrder(c.Bounds.Forbids)
	return forbidden && slices.ContainsFunc(c.before, func(w string) bool { return c.Bounds.Goes[w] })
}

// endsWithOrder says that the order stands behind the amount: "auf weniger als 40 N·m
// anziehen", "weniger als 30 Minuten warten".
func (c clause) endsWithOrder() bool {
	what := c.plain()
	if c.denies(what) {
		return false
	}
	last := ""
	if len(what) > 0 {
		last = what[len(what)-1]
	}
	if c.amount.Fits(quantity.Duration) {
		return c.endsInOrder(c.Bounds.LateWaits) && (c.Bounds.For[last] || !c.leads(last))
	}
	return c.endsInOrder(c.Bounds.LateOrders) && (c.Bounds.To[last] || c.Bounds.With[last])
}

// plain are the words before those that bound the amount.
func (c clause) plain() []string { return c.before[:len(c.before)-c.bounding] }

// behindOrder gives the words between the amount and one of the orders with which the
// clause begins, or what stands in it behind its last "and".
func (c clause) behindOrder(orders []string) (between []string, is bool) {
	words := c.plain()
	joins := func(w string) bool { return shape.Among(c.Acts.Joiners, w) }
	last := len(words)
	for last > 0 && !joins(words[last-1]) {
		last--
	}
	for _, from := range []int{last, 0} {
		one := words[from:]
		for len(one) > 0 && (c.Bounds.Lead[one[0]] || c.Bounds.Always[one[0]]) {
			one = one[1:]
		}
		if rest, _, begins := cutBegin(one, orders); begins {
			return rest, !slices.ContainsFunc(rest, joins)
		}
	}
	return nil, false
}

// endsInOrder says that one of the orders stands behind the amount, and nothing behind
// it that makes no order of it.
func (c clause) endsInOrder(orders []string) bool {
	rest, _, is := cutBegin(c.behind, orders)
	return is && (len(rest) == 0 || c.goesOn(len(c.behind)-len(rest)))
}

// goesOn says that with one of the words behind the amount something else begins.
func (c clause) goesOn(at int) bool { return c.Verbs.After[c.behind[at]] }

// canBeKept says that what is named can be kept on a side, and is not what is told by
// it: "keep bags under 495 g apart", "hold the pads that are under 2 mm". Where the order
// stands before it, it has an article: one does not keep "pumping" there, nor "closed".
func (c clause) canBeKept(what []string, late bool) bool {
	what = c.withoutAt(what)
	n := len(what)
	if n == 0 {
		return true
	}
	named := shape.Among(c.Acts.Articles, what[0]) // "keep the oil", "keep it"
	owned := c.leads(what[n-1]) && (n > 1 || !named)
	return (late || named || c.Verbs.Articles[what[0]]) && !owned && !c.amount.Fits(quantity.Mass) && !c.denies(what) && !c.Bounds.Being[what[n-1]]
}

// withoutAt are words without the one at their end that leads to an amount.
func (c clause) withoutAt(words []string) []string {
	if n := len(words); n > 0 && c.Bounds.At[words[n-1]] && !c.amount.Fits(quantity.Duration) {
		return words[:n-1]
	}
	return words
}

// withThat is a text in which no comma parts an order from the "that" behind it,
// "achten Sie darauf, dass".
func withThat(w *shape.Bounds, text string) string {
	if w.That == "" {
		return text
	}
	return strings.ReplaceAll(text, ", "+w.That+" ", " "+w.That+" ")
}

// denies says that words turn an order round, or make none of what stands behind them.
func (c clause) denies(words []string) bool {
	return slices.ContainsFunc(words, func(w string) bool { return c.isDenial(w) || c.Bounds.Told[w] })
}

func (c clause) isDenial(word string) bool { return slices.Contains(c.Denials, word) }

// leads says that a word leads from a thing to what is its own: "a pad with", "bags of".
func (c clause) leads(word string) bool {
	return c.Asides.Breaks[word] || slices.Contains(c.Asides.SetTo, word)
}
