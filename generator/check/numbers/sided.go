package numbers

import (
	"slices"
	"strings"

	"baybinder/generator/base/quantity"
	"baybinder/generator/language"
	"baybinder/generator/language/shape"
	"baybinder/generator/model"
	"baybinder/generator/read/sentence"
)

// sided is an amount that a text bounds in words, "at most 7 mm", "7 mm como
// mínimo": its side, Exact where there is none, and the words.
type sided struct {
	side   quantity.LimitKind
	said   string
	loose  bool // "7 mm or less", "≤ 7 mm", "a pad of at most 7 mm": of a reading it is as often what is out of the limit
	beyond bool // "more than 7 mm": what is bounded is not itself meant
}

// bounding is how words put an amount on a side, before what stands before them.
type bounding struct {
	sided

	before []string // of its clause
	needs  bool     // that it is ordered, or must be
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
		if s := a.sided(text, tag, nil); s.side != quantity.Exact {
			out = append(out, Bounded{a.Quantity, s.side, s.said})
		}
	}
	return out
}

// sided reads the words beside an amount, which may stand behind a link that brings
// something to a value. What is only supposed has no side.
func (a amountIn) sided(text, tag string, order *model.Link) sided {
	spoken := language.Known(tag)
	if spoken == nil {
		return sided{}
	}
	start, end := strings.TrimSuffix(strings.TrimSpace(text[:a.Start]), "pH"), text[a.End:]
	before, behind := clauseBefore(start), wordsBehind(end)
	if hasFigure(strings.Join(behind, " ")) {
		behind = nil // they may be the next amount's
	}
	b := boundingOf(&spoken.Bounds, a.said, before, behind)
	all := strings.Fields(strings.ToLower(start))
	all = all[:len(all)-len(before)+len(b.before)]
	if slices.ContainsFunc(all, func(w string) bool { return spoken.Asides.Supposing[w] }) {
		return sided{}
	}
	if b.needs || b.loose {
		return b.asked(spoken, behind, order, a.Fits(quantity.Duration))
	}
	return b.sided
}

// boundingOf reads an amount by the words before and behind it.
func boundingOf(w *shape.Bounds, amount string, before, behind []string) bounding {
	for _, at := range []struct {
		side           quantity.LimitKind
		either, behind []string
		sign           string
	}{
		{quantity.AtMost, w.AtMost, w.OrLess, "≤"},
		{quantity.AtLeast, w.AtLeast, w.OrMore, "≥"},
	} {
		if rest, p, is := cutEnd(before, at.either); is {
			n := len(rest)
			return bounding{sided: sided{side: at.side, said: p + " " + amount, loose: n > 0 && w.Having[rest[n-1]]}, before: rest}
		}
		if _, p, is := cutBegin(behind, at.either); is {
			return bounding{sided: sided{side: at.side, said: amount + " " + p}, before: before}
		}
		if _, p, is := cutBegin(behind, at.behind); is {
			return bounding{sided: sided{side: at.side, said: amount + " " + p, loose: true}, before: before}
		}
		if n := len(before); n > 0 && strings.HasSuffix(before[n-1], at.sign) {
			return bounding{sided: sided{side: at.side, said: at.sign + " " + amount, loose: true}, before: before[:n-1]}
		}
	}
	return compared(w, amount, before)
}

// compared reads an amount behind "less than", "more than", "up to".
func compared(w *shape.Bounds, amount string, before []string) bounding {
	for _, at := range []struct {
		side    quantity.LimitKind
		phrases []string
		beyond  bool
	}{{quantity.AtMost, w.Below, true}, {quantity.AtLeast, w.Above, true}, {quantity.AtMost, w.UpTo, false}} {
		if rest, p, is := cutEnd(before, at.phrases); is {
			return bounding{sided: sided{side: at.side, said: p + " " + amount, beyond: at.beyond}, before: rest, needs: true}
		}
	}
	return bounding{before: before}
}

// asked is the side of an amount that must be so, or that is ordered; of others what
// the words leave.
func (b bounding) asked(l *shape.Language, behind []string, order *model.Link, duration bool) sided {
	if s, is := b.demanded(l, behind); is {
		return s
	}
	denied := slices.ContainsFunc(b.before, func(w string) bool { return slices.Contains(l.Denials, w) })
	if b.needs && (denied || !b.behindOrder(&l.Bounds, order) && !b.inOrder(&l.Bounds, duration)) {
		return sided{}
	}
	return b.sided
}

// demanded is the side of an amount that must be so, "must be more than 1 MΩ": the
// other one behind a not.
func (b bounding) demanded(l *shape.Language, behind []string) (sided, bool) {
	must := lastPhrase(b.before, l.Bounds.Musts)
	if must < 0 {
		return sided{}, false
	}
	denials := 0
	from := len(b.before)
	between := 0
	being := slices.ContainsFunc(behind, func(w string) bool { return l.Bounds.Being[w] })
	for i, w := range b.before {
		switch {
		case slices.Contains(l.Denials, w):
			denials++
			from = min(from, i)
		case i <= must || l.Bounds.Always[w]:
		case l.Bounds.Being[w]:
			being = true
		default:
			between++
		}
	}
	s := b.sided
	s.loose = false
	if denials == 1 {
		s.side, s.said = opposite(s.side), strings.Join(b.before[from:], " ")+" "+s.said
	}
	return s, being && between == 0 && denials < 2
}

func opposite(side quantity.LimitKind) quantity.LimitKind {
	if side == quantity.AtMost {
		return quantity.AtLeast
	}
	return quantity.AtMost
}

// inOrder says that the words before are an order, with what leads from it to the
// amount: "wait", "wait for", "fill the tyre to".
func (b bounding) inOrder(w *shape.Bounds, duration bool) bool {
	words := b.before
	for len(words) > 0 && w.Lead[words[0]] {
		words = words[1:]
	}
	orders, to := w.Orders, w.To
	if duration {
		orders, to = w.Waits, w.For
	}
	rest, _, is := cutBegin(words, orders)
	return is && (len(rest) == 0 || to[rest[len(rest)-1]])
}

// behindOrder says that one word leads from a link that orders something to the amount.
func (b bounding) behindOrder(w *shape.Bounds, order *model.Link) bool {
	if order == nil || len(b.before) != 1 {
		return false
	}
	_, setting := order.To.(*model.Setting)
	return w.To[b.before[0]] || !setting && w.With[b.before[0]]
}

// orderBefore is the link of a sentence that brings something to a value, and behind
// which a place stands with no other link or sign between, save one comma.
func orderBefore(s sentence.Sentence, at int) *model.Link {
	for _, l := range s.Links {
		if l.Kind.Sets && l.End <= at && strings.IndexFunc(strings.TrimPrefix(s.Text[l.End:at], ","), parts) < 0 {
			return l.Link
		}
	}
	return nil
}

// lastPhrase is where the last of the phrases ends that stand among words: the place
// of its last word, less than 0 where there is none.
func lastPhrase(words, phrases []string) int {
	for end := len(words); end > 0; end-- {
		if endsIn(words[:end], phrases) {
			return end - 1
		}
	}
	return -1
}

// unbounded are words without those at their end that bound what stands behind them:
// "a sling for more than".
func unbounded(before []string, w *shape.Bounds) []string {
	for _, phrases := range [][]string{w.AtMost, w.AtLeast, w.Below, w.Above, w.UpTo} {
		if rest, _, is := cutEnd(before, phrases); is {
			return rest
		}
	}
	return before
}
