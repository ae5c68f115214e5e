package jotting

import (
	"slices"
	"strings"

	"baybinder/generator/language/shape"
)

// verb is one word for an act.
type verb struct {
	head []string // "re energise" is two words
	tail string
	kind string // the link kinds that it could be
	of   shape.Thing
}

// tongue is a language made ready: every word without its accents.
type tongue struct {
	*shape.Language
	verbs    map[string][]verb // by the first word
	articles shape.Set
	joiners  shape.Set
	numbers  shape.Set
	behind   shape.Set
	not      shape.Set
	ifs      shape.Set
	when     shape.Set
	or       shape.Set
	it       shape.Set
	fresh    shape.Set
	old      shape.Set
	off, on  shape.Set
	under    shape.Set
	at       shape.Set
	padlock  shape.Set
	leads    [][]string
	open     string
	shut     string
	pulled   string
	plurals  []string
}

func tongueOf(l *shape.Language) *tongue {
	t := &tongue{Language: l, verbs: map[string][]verb{}}
	j := &l.Jotted
	for to, from := range map[*shape.Set]shape.Set{
		&t.articles: l.Verbs.Articles, &t.joiners: l.Verbs.Joiners, &t.behind: j.Behind, &t.not: j.Not, &t.ifs: j.If, &t.when: j.When,
		&t.or: j.Or, &t.it: j.It, &t.fresh: j.Fresh, &t.old: j.Old, &t.off: j.Off, &t.on: j.On, &t.under: j.Under, &t.at: j.At, &t.padlock: j.Padlock,
		&t.numbers: shape.SetOf(strings.Join(l.Numbers.Words, " ")),
	} {
		*to = shape.Set{}
		for w := range from {
			(*to)[plain(w)] = true
		}
	}
	for w := range strings.FieldsSeq(l.Acts.Articles) {
		t.articles[plain(w)] = true
	}
	for _, lead := range j.Lead {
		t.leads = append(t.leads, strings.Fields(plain(lead)))
	}
	t.open, t.shut, t.pulled = plain(l.Acts.Open), plain(l.Acts.Shut), plain(l.Acts.Pulled)
	t.plurals = l.Verbs.Plurals
	t.learn(l)
	return t
}

// learn takes in the orders: those by which act-in-words is told, and those of
// notes. What sits under a tail is told before what has none.
func (t *tongue) learn(l *shape.Language) {
	add := func(kind string, of shape.Thing, said string) {
		for order := range strings.FieldsSeq(plain(said)) {
			head, tail, _ := strings.Cut(order, "|")
			v := verb{strings.Split(head, "-"), tail, kind, of}
			same := func(x verb) bool {
				return slices.Equal(x.head, v.head) && x.tail == tail && x.kind == kind && x.of == of
			}
			if !slices.ContainsFunc(t.verbs[v.head[0]], same) {
				t.verbs[v.head[0]] = append(t.verbs[v.head[0]], v)
			}
		}
	}
	for _, v := range slices.Concat(l.Verbs.Said, l.Jotted.Said) {
		add(v.Kind, v.Of, v.Said)
	}
	a := &l.Acts
	add("loosen", shape.Fastener, a.Undo)
	add("tighten", shape.Fastener, a.Tighten)
	add("remove", shape.Part, a.Remove)
	add("refit", shape.Part, a.Fit)
	add("isolate", shape.Energy, a.Off)
	add("restore", shape.Energy, a.On)
	add("lock", shape.Energy, a.Lock)
	add("unlock", shape.Energy, a.Unlock)
	add("fill", shape.Fluid, a.Fill)
	add("drain", shape.Fluid, a.Drain)
	add("place", shape.Tool, a.Placed)
}

// singulars are a word, and the words of which it is the plural.
func (t *tongue) singulars(word string) []string {
	out := []string{word}
	for _, ending := range t.plurals {
		if one, is := strings.CutSuffix(word, ending); is && one != "" {
			out = append(out, one)
		}
	}
	return out
}

// says compares a name with the words of a sentence; any of them may stand in
// the plural, and nothing may stand between them but a comma of the name's own.
func (t *tongue) says(words []token, name []string) bool {
	if len(words) < len(name) {
		return false
	}
	for i, w := range name {
		if i > 0 && words[i].stop > comma || !slices.Contains(t.singulars(words[i].word), w) {
			return false
		}
	}
	return true
}

// orders are the verbs that begin at a word, with how many words their heads
// have. Where an ending stands for the thing (bloquéelo), it is told.
func (t *tongue) orders(words []token, i int) (found []order) {
	word := words[i].word
	for _, v := range t.verbs[word] {
		if heads(words[i:], v.head) {
			found = append(found, order{v, len(v.head), false})
		}
	}
	for _, ending := range t.Jotted.Endings {
		stem, is := strings.CutSuffix(word, ending)
		for _, v := range t.verbs[stem] {
			if is && len(v.head) == 1 {
				found = append(found, order{v, 1, true})
			}
		}
	}
	return found
}

// order is a verb where it stands in a sentence.
type order struct {
	verb
	n  int  // words of its head
	it bool // its ending stands for the thing
}

func heads(words []token, head []string) bool {
	if len(words) < len(head) {
		return false
	}
	for i, h := range head {
		if words[i].word != h || i > 0 && words[i].stop != together {
			return false
		}
	}
	return true
}
