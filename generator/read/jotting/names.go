package jotting

import (
	"slices"
	"strings"

	"baybinder/generator/language/shape"
	"baybinder/generator/model"
)

// thing is what a name names: of a machine or of a register.
type thing struct {
	named model.Named
	sort  shape.Thing
	kind  string // the link that mentions it
}

// Supply is a sort of thing that no order is said of here.
const Supply shape.Thing = "supply"

// name is a name, word by word, and all that are called so.
type name struct {
	words []string
	of    []thing
}

func sortOf(n model.Named) shape.Thing {
	switch n.(type) {
	case *model.Point, *model.Energy:
		return shape.Energy
	case *model.Part:
		return shape.Part
	case *model.Fastener:
		return shape.Fastener
	case *model.Fluid:
		return shape.Fluid
	case *model.Setting:
		return shape.Setting
	case *model.Tool:
		return shape.Tool
	case *model.Group:
		return shape.Group
	}
	return Supply
}

// mentionOf is the kind of link that mentions a thing.
func mentionOf(n model.Named) string {
	switch n.(type) {
	case *model.Point:
		return "point"
	case *model.Group:
		return ""
	case *model.Supply:
		return "supply"
	}
	return string(sortOf(n))
}

// learn takes in the names of a machine's things and of the registers, and what
// they are called in the language of the texts.
func (r *Reader) learn(manual *model.Manual, tag string) {
	for _, t := range manual.Tools {
		r.call(manual, tag, "tools", t)
	}
	for _, s := range manual.Supplies {
		r.call(manual, tag, "supplies", s)
	}
	r.learnTitles(manual)
	m := r.machine
	if m == nil {
		return
	}
	register := "machines/" + m.ID
	for _, list := range [][]model.Named{model.AsNamed(m.Points), model.AsNamed(m.Energies), model.AsNamed(m.Parts), model.AsNamed(m.Fasteners), model.AsNamed(m.Fluids), model.AsNamed(m.Settings), model.AsNamed(m.Groups)} {
		for _, n := range list {
			r.call(manual, tag, register, n)
		}
	}
	for _, e := range m.Energies {
		for _, t := range slices.Concat(e.BlockedBy, e.ContainedBy) {
			r.blocks[t.ID] = true
		}
	}
}

// learnTitles takes in the procedures that can be performed here.
func (r *Reader) learnTitles(manual *model.Manual) {
	for _, p := range manual.Procedures {
		if !p.Issued() || p.Broken || p.For.ID != "" && (r.machine == nil || p.For.To != r.machine) {
			continue
		}
		title := said(tokens(p.Title, nil))
		if _, twice := r.titles[title]; twice || title == "" {
			r.titles[title] = ""
			continue
		}
		r.titles[title] = p.ID
	}
}

// said is the words of a text, one space between them.
func said(words []token) string {
	var out []string
	for _, w := range words {
		out = append(out, w.word)
	}
	return strings.Join(out, " ")
}

// call makes the names of a thing known: the one it has, its first part before
// a comma, and those in the language.
func (r *Reader) call(manual *model.Manual, tag, register string, n model.Named) {
	e := n.Base()
	if e.Misread {
		return
	}
	labels := []string{n.Label()}
	if w := manual.WordsOf(register, e.ID, tag); w != nil {
		labels = append(labels, w.Texts["name"]...)
	}
	t := thing{named: n, sort: sortOf(n), kind: mentionOf(n)}
	for _, label := range labels {
		r.add(label, t)
		if short, _, is := strings.Cut(label, ","); is {
			r.add(short, t)
		}
	}
}

func (r *Reader) add(label string, t thing) {
	var words []string
	for _, w := range tokens(label, nil) {
		words = append(words, w.word)
	}
	if len(words) == 0 {
		return
	}
	list := r.names[words[0]]
	i := slices.IndexFunc(list, func(n name) bool { return slices.Equal(n.words, words) })
	if i < 0 {
		r.names[words[0]] = append(list, name{words, []thing{t}})
		return
	}
	if !slices.ContainsFunc(list[i].of, func(x thing) bool { return x.named == t.named }) {
		list[i].of = append(list[i].of, t)
	}
}

// at is the longest name that begins with a word of a sentence, and how many
// words it has. It is nil where none does, or where the words behind make
// another of it.
func (r *Reader) at(words []token, i int) (*name, int) {
	var best *name
	n := 0
	for _, first := range r.tongue.singulars(words[i].word) {
		for k := range r.names[first] {
			one := &r.names[first][k]
			if len(one.words) > n && r.tongue.says(words[i:], one.words) {
				best, n = one, len(one.words)
			}
		}
	}
	if best == nil || !r.ends(words, i+n) {
		return nil, n
	}
	return best, n
}

// ends says whether a name can end before a word: a noun would make a longer
// name of it.
func (r *Reader) ends(words []token, i int) bool {
	if i >= len(words) || words[i].stop != together {
		return true
	}
	w := words[i].word
	return w == "" || r.tongue.behind[w] || isFigure(w)
}

func isFigure(w string) bool { return w != "" && w[0] >= '0' && w[0] <= '9' }

// only is the one thing of a name that an order is said of.
func (n *name) only(of shape.Thing) (thing, bool) {
	var out []thing
	for _, t := range n.of {
		if t.sort == of {
			out = append(out, t)
		}
	}
	if len(out) != 1 {
		return thing{}, false
	}
	return out[0], true
}
