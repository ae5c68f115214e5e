package numbers

import (
	"cmp"
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
		if s := a.sided(text, tag, spoken{}); s.side != quantity.Exact {
			out = append(out, Bounded{a.Quantity, s.side, s.said})
		}
	}
	return out
}

// spoken is what the links of a sentence add to the words before an amount in it.
type spoken struct {
	order  *model.Link // behind which it stands, and which brings something to a value
	before string      // the words, with those of links
}

// spokenBefore is that of an amount at a place in a sentence.
func spokenBefore(s sentence.Sentence, at int) spoken {
	var before strings.Builder
	from := 0
	for _, l := range s.Links {
		if l.Start < from || l.End > at {
			continue
		}
		before.WriteString(s.Text[from:l.Start])
		before.WriteString(said(l.Link))
		from = l.End
	}
	before.WriteString(s.Text[from:at])
	return spoken{orderBefore(s, at), before.String()}
}

// said are the words that a link has in its sentence, the name of what it mentions
// where it has none.
func said(l *model.Link) string {
	if l.Text == "" && l.To != nil && l.Kind.Act == model.NoAct && !l.Kind.Worded {
		return l.To.Label()
	}
	return l.Text
}

// sided reads the words beside an amount. What is only supposed has no side.
func (a amountIn) sided(text, tag string, links spoken) sided {
	tongue := language.Known(tag)
	if tongue == nil {
		return sided{}
	}
	start, end := strings.TrimSuffix(strings.TrimSpace(text[:a.Start]), "pH"), text[a.End:]
	before, behind := clauseBefore(start), wordsBehind(end)
	if hasFigure(strings.Join(behind, " ")) {
		behind = nil // they may be the next amount's
	}
	b := boundingOf(&tongue.Bounds, a.said, before, behind)
	all := strings.Fields(strings.ToLower(start))
	bounding := len(before) - len(b.before)
	if slices.ContainsFunc(all[:len(all)-bounding], func(w string) bool { return tongue.Asides.Supposing[w] }) {
		return sided{}
	}
	if !b.needs && !b.loose {
		return b.sided
	}
	c := clause{tongue, a, clauseBefore(withThat(&tongue.Bounds, cmp.Or(strings.TrimSuffix(strings.TrimSpace(links.before), "pH"), start))), bounding, behind}
	sees, denied := c.sees()
	switch {
	case c.forbids(), sees && denied:
		b.side, b.loose = opposite(b.side), false
		return b.sided
	case sees, c.keeps():
		b.loose = false
		return b.sided
	}
	return b.asked(c, links.order)
}

// boundingIn is how an amount of a text stands there by the words beside it alone.
func (a amountIn) boundingIn(text string, tongue *shape.Language) bounding {
	return boundingOf(&tongue.Bounds, a.said, clauseBefore(text[:a.Start]), wordsBehind(text[a.End:]))
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
func (b bounding) asked(c clause, order *model.Link) sided {
	if s, is := b.demanded(c.Language, c.behind); is {
		return s
	}
	denied := slices.ContainsFunc(b.before, c.isDenial)
	ordered := b.purpose(&c.Bounds, order) || c.endsWithOrder() || b.behindOrder(&c.Bounds, order, c.ends()) || b.inOrder(&c.Bounds, c.amount.Fits(quantity.Duration))
	if b.needs && (denied || !ordered) {
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

// behindOrder says that nothing, or one word, leads from a link that orders something
// to the amount.
func (b bounding) behindOrder(w *shape.Bounds, order *model.Link, ends bool) bool {
	if order == nil || len(b.before) > 1 {
		return false
	}
	if len(b.before) == 0 {
		return ends
	}
	_, setting := order.To.(*model.Setting)
	return w.To[b.before[0]] || !setting && w.With[b.before[0]]
}

// purpose says that an amount is what something is set for: "so that it trips above".
func (b bounding) purpose(w *shape.Bounds, order *model.Link) bool {
	if order == nil {
		return false
	}
	_, setting := order.To.(*model.Setting)
	return setting && lastPhrase(b.before, w.SoThat) >= 0
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
