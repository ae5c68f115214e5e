package jotting

import (
	"slices"
	"strings"

	"baybinder/generator/base/nearest"
	"baybinder/generator/base/quantity"
	"baybinder/generator/language"
	"baybinder/generator/language/shape"
	"baybinder/generator/model"
)

// Why words stay words.
const (
	Depends  = "it depends on something"
	NameOnly = "the name is not whole"
	Misspelt = "the name is not spelled so"
	NoOrder  = "no order stands beside it"
	NoName   = "nothing that the machine or a register has is named"
	AWait    = "a wait"
	Reversal = "the refit of all that came off"
)

// mostOffers is how many links are offered for one place: more are no help.
const mostOffers = 4

// offer notes what an order could be said of that is not certain.
func (c *clauseReader) offer(i int, found []order) {
	found = slices.DeleteFunc(slices.Clone(found), func(o order) bool { return o.tail != "" && !c.inClause(i, o.tail) })
	if len(found) == 0 {
		return
	}
	from, to := c.phrase(i, found)
	o := Offer{Start: c.words[i].start, End: c.words[max(i, to-1)].end, Why: NoName}
	if from < to {
		o.Addresses, o.Why = c.near(c.words[from:to], found)
	}
	c.offers = append(c.offers, o)
}

// inClause says that a word stands in the clause that begins at another.
func (c *clauseReader) inClause(i int, word string) bool {
	for k := i + 1; k < len(c.words) && c.words[k].stop == together; k++ {
		if c.words[k].word == word {
			return true
		}
	}
	return false
}

// phrase is the words that stand where a name would: behind an order, its
// second word and what may stand between, up to a word that ends a name.
func (c *clauseReader) phrase(i int, found []order) (from, to int) {
	from = i + found[0].n
	passed := func(w string) bool {
		return c.passable(w, &object{}) || slices.ContainsFunc(found, func(o order) bool { return o.tail == w })
	}
	for from < len(c.words) && c.words[from].stop == together && passed(c.words[from].word) {
		from++
	}
	for to = from; to < len(c.words) && c.words[to].stop == together && c.words[to].word != "" && !c.tongue.behind[c.words[to].word] && to-from < 4; to++ {
	}
	return from, to
}

// near are the links that an order of these words could be: of a name that they
// are the head of, else of one that is spelled nearly so.
func (c *clauseReader) near(phrase []token, found []order) ([]string, string) {
	var said []string
	for _, w := range phrase {
		said = append(said, w.word)
	}
	var out, labels []string
	whole := map[string]string{}
	for _, n := range c.everyName() {
		kind, t := c.orderOf(n, found)
		if kind == "" {
			continue
		}
		address := kind + ":" + t.named.Base().ID
		label := strings.Join(n.words, " ")
		labels, whole[label] = append(labels, label), address
		if c.headOf(n.words, phrase) && !slices.Contains(out, address) {
			out = append(out, address)
		}
	}
	if len(out) > 0 && len(out) <= mostOffers {
		return out, NameOnly
	}
	if best := nearest.Spelled(strings.Join(said, " "), labels); best != "" && len(out) == 0 {
		return []string{whole[best]}, Misspelt
	}
	return nil, NoName
}

// everyName is every name, in an order that does not change.
func (r *Reader) everyName() []*name {
	var out []*name
	for _, list := range r.names {
		for i := range list {
			out = append(out, &list[i])
		}
	}
	slices.SortFunc(out, func(a, b *name) int { return slices.Compare(a.words, b.words) })
	return out
}

// orderOf is what one of several orders is of a name.
func (c *clauseReader) orderOf(n *name, found []order) (string, thing) {
	for _, o := range found {
		if t, is := n.only(o.of); is {
			if kind := c.kindOf(o, t, len(c.words), object{}); kind != "" {
				return kind, t
			}
		}
	}
	return "", thing{}
}

// headOf says that the words are the noun of a name, or more of it: "the bolts"
// of lid bolt.
func (c *clauseReader) headOf(name []string, phrase []token) bool {
	if len(phrase) >= len(name) {
		return false
	}
	part := name[len(name)-len(phrase):]
	if c.tongue.Acts.NounFirst {
		part = name[:len(phrase)]
	}
	return c.tongue.says(phrase, part)
}

// conditional offers what a sentence orders under a condition.
func (c *clauseReader) conditional() {
	again := clauseReader{Reader: c.copied(), words: c.words, text: c.text}
	again.walk()
	for _, l := range again.links {
		if l.Act {
			c.offers = append(c.offers, Offer{l.Start, l.End, []string{l.Address()}, Depends})
		}
	}
}

// copied is the reader, which the one who has it may spoil.
func (r *Reader) copied() *Reader {
	one := *r
	one.locked, one.placed, one.isolated = slices.Clone(r.locked), slices.Clone(r.placed), slices.Clone(r.isolated)
	return &one
}

// bare offers a fastener with a torque beside it and no order, and a wait.
func (c *clauseReader) bare() {
	amounts := quantity.Places(c.sentence())
	if len(amounts) == 0 || c.silent {
		return
	}
	begin := c.words[0].start
	for _, l := range c.links {
		if l.Kind == string(shape.Fastener) && slices.ContainsFunc(amounts, func(p quantity.Place) bool { return c.hasTorque(p) }) {
			c.offers = append(c.offers, Offer{l.Start, l.End, []string{"tighten:" + l.ID}, NoOrder})
		}
	}
	if !slices.ContainsFunc(c.words, func(w token) bool { return c.tongue.Jotted.Wait[w.word] }) {
		return
	}
	for _, p := range amounts {
		if q, err := quantity.Parse(c.sentence()[p.Start:p.End], quantity.Duration); err == nil {
			c.offers = append(c.offers, Offer{begin + p.Start, begin + p.End, c.waits(q), AWait})
		}
	}
}

func (c *clauseReader) sentence() string {
	return c.text[c.words[0].start:c.words[len(c.words)-1].end]
}

func (c *clauseReader) hasTorque(p quantity.Place) bool {
	_, err := quantity.Parse(c.sentence()[p.Start:p.End], quantity.Torque)
	return err == nil
}

// waits are the holds that last as long.
func (c *clauseReader) waits(q quantity.Quantity) []string {
	var out []string
	for _, h := range c.holds {
		ours := h.Of.ID == "" || c.machine != nil && c.machine.Find(h.Of.ID) != nil
		if h.Kind == "wait" && ours && h.For.Least.Base() == q.Base() && len(out) < mostOffers {
			out = append(out, model.LinkHold+":"+h.ID)
		}
	}
	return out
}

// Hazards are those of a register that a warning may mean: of the energies of
// the machine or of none, those first that share most words with it.
func Hazards(manual *model.Manual, m *model.Machine, text, tag string) []*model.Hazard {
	said := stems(text, tag)
	shared := func(text string) (n int) {
		for stem := range stems(text, tag) {
			if said[stem] {
				n++
			}
		}
		return n
	}
	score := func(h *model.Hazard) int { return 3*shared(h.Label()) + shared(h.Nature+" "+h.Consequence) }
	var out []*model.Hazard
	for _, h := range manual.Hazards {
		ours := h.Of.ID == "" || m != nil && m.Find(h.Of.ID) != nil
		if ours && (score(h) > 0 || len(said) == 0 && h.Of.ID != "") {
			out = append(out, h)
		}
	}
	slices.SortStableFunc(out, func(a, b *model.Hazard) int { return score(b) - score(a) })
	return out[:min(len(out), mostOffers)]
}

// stems are the stems of a text's words, without those that stand in any.
func stems(text, tag string) map[string]bool {
	out := map[string]bool{}
	l := language.Of(tag)
	for _, w := range shape.PlainWords(text) {
		if len(w) > 2 && !l.Jotted.Behind[w] && !l.Verbs.Articles[w] && !l.Jotted.Not[w] {
			out[language.Stem(tag, w)] = true
		}
	}
	return out
}
