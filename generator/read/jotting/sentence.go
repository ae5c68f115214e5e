package jotting

import (
	"slices"
	"strings"

	"baybinder/generator/language/shape"
	"baybinder/generator/model"
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

// nounFirst reads "rope cover off", and "panel cover and seat deck on".
func (c *clauseReader) nounFirst(i int) int {
	o, ok := c.objects(i)
	if !ok || o.end >= len(c.words) || c.words[o.end].stop != together {
		return i
	}
	tail, last := c.words[o.end].word, o.end+1
	back := c.tongue.on[tail]
	if last < len(c.words) && c.words[last].stop == together && c.tongue.on[tail] && c.tongue.on[c.words[last].word] {
		last++ // "back in"
	}
	if !back && !c.tongue.off[tail] || !c.stopsAt(last) {
		return i
	}
	var kinds []string
	var things []thing
	for _, n := range o.names {
		t, kind := c.toggled(n, back)
		if kind == "" {
			return i
		}
		kinds, things = append(kinds, kind), append(things, t)
	}
	return c.acts(kinds, things, i, last, o)
}

// toggled is the act that off and on are of a thing.
func (c *clauseReader) toggled(n *name, on bool) (thing, string) {
	if t, is := n.only(shape.Part); is {
		if on {
			return t, "refit"
		}
		return t, "remove"
	}
	if t, is := n.only(shape.Energy); is {
		if on {
			return t, "restore"
		}
		return t, "isolate"
	}
	return thing{}, ""
}

// padlocks reads "put your lock on it" behind an isolation of the same step,
// and "take the lock off" where one thing is locked.
func (c *clauseReader) padlocks(i int) int {
	k, head := i, ""
	if !c.tongue.padlock[c.words[k].word] {
		head = c.words[k].word
		for k++; k < len(c.words) && c.words[k].stop == together && !c.tongue.padlock[c.words[k].word]; k++ {
			if w := c.words[k].word; !c.tongue.articles[w] && !c.tongue.on[w] && !c.tongue.off[w] {
				return i
			}
		}
	}
	if k >= len(c.words) || k > i && c.words[k].stop != together {
		return i
	}
	end := k + 1
	for !c.stopsAt(end) && !c.tongue.joiners[c.words[end].word] {
		if w := c.words[end].word; !c.tongue.on[w] && !c.tongue.off[w] && !c.tongue.it[w] && !c.tongue.articles[w] {
			return i
		}
		end++
	}
	return c.padlock(i, end, head)
}

// padlock is the act of a clause that speaks of a padlock.
func (c *clauseReader) padlock(i, end int, head string) int {
	off := slices.ContainsFunc(c.words[i:end], func(w token) bool { return c.tongue.off[w.word] })
	on := slices.ContainsFunc(c.words[i:end], func(w token) bool { return c.tongue.on[w.word] })
	verbs := func(kind string, of shape.Thing) bool {
		return slices.ContainsFunc(c.tongue.verbs[head], func(v verb) bool { return v.kind == kind && v.of == of })
	}
	switch {
	case off || head != "" && verbs("clear", shape.Tool) && !on:
		if len(c.locked) != 1 {
			return i
		}
		c.act("unlock", c.locked[0], i, end)
	case on && (head == "" || verbs("place", shape.Tool)), head != "" && (verbs("place", shape.Tool) || verbs("refit", shape.Part)), head == "" && end == i+1 && len(c.tongue.on) > 0:
		if len(c.isolated) != 1 {
			return i
		}
		c.act("lock", c.isolated[0], i, end)
	default:
		return i
	}
	return end
}

// ordered reads an order and what it is said of.
func (c *clauseReader) ordered(i int) int {
	found := c.tongue.orders(c.words, i)
	if len(found) == 0 {
		return i
	}
	if next := c.shared(i, found); next > i {
		return next
	}
	for _, tailed := range []bool{true, false} {
		for _, o := range found {
			if (o.tail != "") != tailed {
				continue
			}
			if next := c.try(i, i, o, found); next > i {
				return next
			}
		}
	}
	_, c.handled = c.phrase(i, found)
	c.tools = !slices.ContainsFunc(found, func(o order) bool { return o.of == shape.Tool })
	c.offer(i, found)
	return i
}

// try reads what an order that begins at a word is said of. begin is where the
// words of its link begin.
func (c *clauseReader) try(begin, i int, o order, all []order) int {
	k := i + o.n
	early := o.tail != "" && k < len(c.words) && c.words[k].stop == together && c.words[k].word == o.tail
	if early {
		k++
	}
	if o.it {
		return c.pronoun(begin, k, o)
	}
	if k >= len(c.words) || c.words[k].stop != together {
		return begin
	}
	if c.tongue.it[c.words[k].word] && c.ends(c.words, k+1) && !c.startsObject(k) {
		return c.pronoun(begin, k+1, o)
	}
	if o.of == shape.Energy && (o.tail == "" || early) {
		for k+1 < len(c.words) && c.tongue.at[c.words[k].word] && !c.tongue.articles[c.words[k].word] && c.words[k+1].stop == together {
			k++
		}
	}
	obj, ok := c.objects(k)
	if !ok {
		return begin
	}
	end := obj.end
	if o.tail != "" && !early {
		if end >= len(c.words) || c.words[end].stop != together || c.words[end].word != o.tail {
			return begin
		}
		end++
	}
	return c.done(begin, end, o, obj)
}

// startsObject says that a name stands behind a word that could stand for one:
// "those bolts".
func (c *clauseReader) startsObject(k int) bool {
	_, ok := c.objects(k)
	return ok
}

// done notes the acts of an order on all that it names, if each is certain.
func (c *clauseReader) done(begin, end int, o order, obj object) int {
	kinds, things := make([]string, len(obj.names)), make([]thing, len(obj.names))
	for i, n := range obj.names {
		t, is := n.only(o.of)
		kinds[i] = c.kindOf(o, t, end, obj)
		things[i] = t
		if (!is || kinds[i] == "") && i > 0 { // the rest is another clause
			obj.names, end = obj.names[:i], obj.ends[i-1]
			break
		}
		if !is || kinds[i] == "" {
			return begin
		}
	}
	return c.acts(kinds, things, begin, end, obj)
}

// acts notes an act on each of several things; the words of each go as far as its
// name, those of the last to the end.
func (c *clauseReader) acts(kinds []string, things []thing, begin, end int, obj object) int {
	from := begin
	for i := range obj.names {
		to := end
		if len(obj.names) > 1 && i+1 < len(obj.names) {
			to = obj.ends[i]
		}
		c.act(kinds[i], things[i], from, to)
		from = to
		for from < end && (c.tongue.joiners[c.words[from].word] || c.tongue.articles[c.words[from].word]) {
			from++
		}
	}
	c.ante = things[:len(obj.names)]
	return end
}

// pronoun notes an act on what the act before it was done to: "cap it".
func (c *clauseReader) pronoun(begin, end int, o order) int {
	if o.tail != "" && end < len(c.words) && c.words[end].word == o.tail && c.words[end].stop == together {
		end++
	} else if o.tail != "" && c.words[end-1].word != o.tail {
		return begin
	}
	if len(c.ante) != 1 || c.ante[0].sort != o.of || !c.stopsAt(end) && !c.tongue.behind[c.words[end].word] {
		return begin
	}
	kind := c.kindOf(o, c.ante[0], end, object{})
	if kind == "" {
		return begin
	}
	c.act(kind, c.ante[0], begin, end)
	return end
}

// shared reads two orders that have one object: "switch off and lock the
// isolator".
func (c *clauseReader) shared(i int, found []order) int {
	for _, o := range found {
		k := i + o.n
		if o.tail != "" {
			if k >= len(c.words) || c.words[k].word != o.tail || c.words[k].stop != together {
				continue
			}
			k++
		}
		if k+1 >= len(c.words) || c.words[k].stop != together || !c.tongue.joiners[c.words[k].word] || c.words[k+1].stop != together {
			continue
		}
		for _, second := range c.tongue.orders(c.words, k+1) {
			if second.of != o.of || second.it {
				continue
			}
			was := len(c.links)
			if next := c.try(k+1, k+1, second, nil); next > k+1 && len(c.links) == was+1 {
				t := c.ante[0]
				if kind := c.kindOf(o, t, next, object{}); kind != "" {
					c.links = slices.Insert(c.links, was, c.link(kind, t, i, k))
					c.note(kind, t)
					if second.kind == "lock" {
						c.note("lock", t)
					}
					return next
				}
				c.links = c.links[:was]
			}
		}
	}
	return i
}

// kindOf is the one link kind that an order of a thing is, "" where that is not
// certain.
func (c *clauseReader) kindOf(o order, t thing, end int, obj object) string {
	if t.named == nil {
		return ""
	}
	switch to := t.named.(type) {
	case *model.Point:
		if o.kind == "release" || o.kind == "prove" {
			return ""
		}
		return c.cut(o, to.Label())
	case *model.Energy:
		if len(to.Points) == 0 && o.kind != "release" && o.kind != "prove" {
			return ""
		}
		return c.cutAll(o, to)
	case *model.Part:
		return partKind(o, to, obj)
	case *model.Tool:
		return c.toolKind(o, to, end)
	}
	if strings.Contains(o.kind, " ") {
		return ""
	}
	return o.kind
}

// partKind is said by kind: a line is disconnected, a part that is done with is
// renewed.
func partKind(o order, p *model.Part, obj object) string {
	apart := p.Kind == "line" || p.Kind == "wire" || p.Kind == "connector"
	switch {
	case o.kind == "cap" && !apart:
		return ""
	case o.kind == "cap":
		return "cap"
	case o.kind == "remove" || o.kind == "disconnect":
		switch {
		case obj.old && p.RenewWith.To != nil:
			return "renew"
		case obj.fresh:
			return ""
		case apart:
			return "disconnect"
		}
		return "remove"
	case apart:
		return "connect"
	}
	return "refit"
}

// toolKind is certain only of what stays where it was put, or was put there
// before.
func (c *clauseReader) toolKind(o order, t *model.Tool, end int) string {
	switch t.Kind {
	case "socket", "spanner", "screwdriver", "torque-wrench", "angle-gauge", "tester", "ppe", "lock":
		return ""
	}
	was := slices.ContainsFunc(c.placed, func(x thing) bool { return x.named == model.Named(t) })
	stays := end < len(c.words) && c.words[end].stop == together && c.tongue.under[c.words[end].word]
	switch {
	case o.kind == "place" && !was && (c.blocks[t.ID] || stays || o.tail != "" && c.tongue.under[o.tail]):
		return "place"
	case o.kind == "clear" && was:
		return "clear"
	}
	return ""
}

// cut is what an order does at a point: where opening could be either, its
// name says which.
func (c *clauseReader) cut(o order, label string) string {
	if o.kind != shape.Either {
		return o.kind
	}
	return c.turned(o, c.tongue.Acts.Cutting(label))
}

func (c *clauseReader) cutAll(o order, e *model.Energy) string {
	if o.kind != shape.Either {
		return o.kind
	}
	how := shape.Unsaid
	for i, p := range e.Points {
		if p.To == nil || i > 0 && c.tongue.Acts.Cutting(p.To.Label()) != how {
			return ""
		}
		how = c.tongue.Acts.Cutting(p.To.Label())
	}
	return c.turned(o, how)
}

func (c *clauseReader) turned(o order, how shape.Cutting) string {
	head := strings.Join(o.head, "-")
	open := shape.Among(c.tongue.open, head)
	shut := shape.Among(c.tongue.shut, head)
	pulled := shape.Among(c.tongue.pulled, head) || o.tail == "out"
	switch {
	case open && how == shape.Opened, shut && how == shape.Closed, pulled && how == shape.Opened:
		return "isolate"
	case open && how == shape.Closed, shut && how == shape.Opened:
		return "restore"
	}
	return ""
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
