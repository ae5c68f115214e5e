package jotting

import (
	"slices"
	"strings"

	"baybinder/generator/language/shape"
	"baybinder/generator/model"
)

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
