package jotting

import (
	"baybinder/generator/language/shape"
)

// clauseReader reads one sentence.
type clauseReader struct {
	*Reader
	text   string
	words  []token
	links  []Link
	offers []Offer

	silent  bool    // the sentence forbids, or makes its orders depend on something
	forbid  bool    // it forbids: its tools are not used
	saying  bool    // the clause says when, and orders nothing
	handled int     // up to where a tool is put somewhere or taken away
	tools   bool    // that order is none of a tool: one that it names is used
	ante    []thing // what the last act of the sentence was done to
}

func (c *clauseReader) read() {
	for _, w := range c.words {
		c.silent = c.silent || c.tongue.ifs[w.word]
	}
	if c.silent {
		c.conditional()
	}
	c.walk()
	c.bare()
}

// walk goes through the sentence, clause by clause.
func (c *clauseReader) walk() {
	begins := true
	for i := 0; i < len(c.words); {
		w := c.words[i]
		if w.stop >= comma {
			begins, c.saying = true, false
		}
		if i > 0 && w.stop == together && c.tongue.joiners[c.words[i-1].word] {
			begins = true
		}
		next := i
		if begins {
			next = c.clause(i)
		}
		if next == i {
			next = c.mention(i, begins)
		}
		if next == i && c.tongue.not[w.word] {
			c.silent, c.forbid = true, true
		}
		if next == i {
			begins = begins && c.tongue.joiners[w.word]
			next = i + 1
		} else {
			begins = false
		}
		i = next
	}
}

// clause reads what stands at the beginning of a clause. It gives back where
// it went on to; its own beginning where there is no order.
func (c *clauseReader) clause(i int) int {
	i = c.lead(i)
	if i >= len(c.words) {
		return i
	}
	if c.tongue.when[c.words[i].word] && !c.isName(i) {
		c.saying = true
	}
	if c.silent || c.saying || c.words[i].inside {
		return i
	}
	for _, read := range []func(int) int{c.nounFirst, c.padlocks, c.ordered} {
		if next := read(i); next > i {
			return next
		}
	}
	return i
}

// lead passes the phrases that may stand before an order.
func (c *clauseReader) lead(i int) int {
	for _, phrase := range c.tongue.leads {
		if i < len(c.words) && heads(c.words[i:], phrase) && i+len(phrase) < len(c.words) && c.words[i+len(phrase)].stop == together {
			return c.lead(i + len(phrase))
		}
	}
	return i
}

func (c *clauseReader) isName(i int) bool {
	n, _ := c.at(c.words, i)
	return n != nil
}

// stopsAt says that a clause ends before a word.
func (c *clauseReader) stopsAt(i int) bool {
	return i >= len(c.words) || c.words[i].stop >= comma
}

// object is the things that are named from a word on, with how the last was
// called, and where the words go on.
type object struct {
	names      []*name
	begin, end int // words
	ends       []int
	old, fresh bool
}

// objects reads one name or several: "the upper line and the lower line".
func (c *clauseReader) objects(i int) (o object, ok bool) {
	o.begin = i
	for {
		k := i
		n, long := c.at(c.words, k)
		for n == nil && long == 0 && k < len(c.words) && (k == i || c.words[k].stop == together) && c.passable(c.words[k].word, &o) {
			if k++; k >= len(c.words) || c.words[k].stop != together {
				break
			}
			n, long = c.at(c.words, k)
		}
		if n == nil {
			return o, len(o.names) > 0
		}
		o.names = append(o.names, n)
		o.end = k + long
		o.ends = append(o.ends, o.end)
		for o.end < len(c.words) && c.words[o.end].stop == together && (c.tongue.fresh[c.words[o.end].word] || c.tongue.old[c.words[o.end].word]) {
			c.passable(c.words[o.end].word, &o)
			o.end++
		}
		if !c.ends(c.words, o.end) {
			return o, false
		}
		i = o.end
		if i >= len(c.words) || c.words[i].stop > comma {
			return o, true
		}
		if c.tongue.or[c.words[i].word] {
			return o, false // one or the other
		}
		if !c.tongue.joiners[c.words[i].word] && c.words[i].stop != comma {
			return o, true
		}
		for i < len(c.words) && c.tongue.joiners[c.words[i].word] {
			i++
		}
		if i >= len(c.words) {
			return o, true
		}
	}
}

// passable is a word that may stand between an order and a name.
func (c *clauseReader) passable(w string, o *object) bool {
	t := c.tongue
	o.old, o.fresh = o.old || t.old[w], o.fresh || t.fresh[w]
	return t.articles[w] || t.numbers[w] || isFigure(w) || t.old[w] || t.fresh[w]
}

// act notes an act.
func (c *clauseReader) act(kind string, t thing, from, to int) {
	c.links = append(c.links, c.link(kind, t, from, to))
	c.ante = []thing{t}
	c.note(kind, t)
}

func (c *clauseReader) link(kind string, t thing, from, to int) Link {
	return Link{Kind: kind, ID: t.named.Base().ID, Start: c.words[from].start, End: c.words[to-1].end, Act: true}
}

// mention notes a thing that is named and nothing is done to.
func (c *clauseReader) mention(i int, first bool) int {
	n, long := c.at(c.words, i)
	if n == nil || len(n.of) != 1 || n.of[0].kind == "" || !c.begins(i) {
		return i
	}
	if first && long == 1 && !c.stopsAt(i+1) { // "grease the nipple" names no grease
		return i
	}
	t := n.of[0]
	if used := t.sort == shape.Tool || t.sort == Supply; used && c.forbid || i < c.handled && !(used && c.tools) {
		return i + long
	}
	c.links = append(c.links, Link{Kind: t.kind, ID: t.named.Base().ID, Start: c.words[i].start, End: c.words[i+long-1].end})
	return i + long
}

// begins says whether a name can begin at a word: behind an article, a count, a
// preposition or an order, and not behind a noun that makes a longer name of it.
func (c *clauseReader) begins(i int) bool {
	if i == 0 || c.words[i].stop != together {
		return true
	}
	w := c.words[i-1].word
	t := c.tongue
	return t.articles[w] || t.numbers[w] || isFigure(w) || t.fresh[w] || t.old[w] || t.behind[w] || t.joiners[w] || t.at[w] || len(t.verbs[w]) > 0
}
