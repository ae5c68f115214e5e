package jotting

import (
	"slices"
	"strings"

	"baybinder/generator/language/shape"
	"baybinder/generator/model"
)

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
