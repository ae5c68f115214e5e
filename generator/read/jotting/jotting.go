// Package jotting recognises, in words as people jot them down, the acts and the
// things that a manual has names for.
//
// It knows the names of a machine's things and of the registers, and the orders
// of a language (generator/language, which has those of act-in-words too). It is
// pure: a text goes in, places in it come out. layout.go finds the phases and
// steps of a text, sentence.go the links of one step.
//
// # What is certain
//
// An order stands at the beginning of a clause, with the whole name of a thing
// behind it and nothing but articles, counts, and new or old between:
//
//	Undo the six cover screws and take the rear cover off.
//
// A name counts only where no other noun follows (the motor of "the motor
// bracket" is none), where it names one thing of the sort that the order is said
// of, and where nothing forbids the act, makes it depend on something or offers
// another instead (not, if, or). A step that is the whole title of an issued procedure performs it.
// All else stays words and is an Offer: a name
// that is misspelt or only begun, a wait, a fastener with a torque and no order.
package jotting

import (
	"slices"
	"strings"

	"baybinder/generator/language"
	"baybinder/generator/model"
)

// Link is a link that words of a text certainly are.
type Link struct {
	Kind, ID   string
	Start, End int // the words, bytes of the text
	Act        bool
}

// Address is what the link leads to.
func (l Link) Address() string { return l.Kind + ":" + l.ID }

// Offer is what words of a text could be, for the writer to decide.
type Offer struct {
	Start, End int
	Addresses  []string // the best first; none where nothing is near
	Why        string
}

// Reading is what was recognised in the text of one step.
type Reading struct {
	Links  []Link
	Offers []Offer
}

// Reader reads texts for one machine in one language. It remembers from text to
// text what is locked and what was left in place, as the steps of one job do.
type Reader struct {
	machine *model.Machine
	holds   []*model.Hold
	tongue  *tongue
	names   map[string][]name // by the first word
	blocks  map[string]bool   // tools that hold a load
	titles  map[string]string // of procedures for this machine or for any: title to id, "" where two have it

	locked, placed []thing
	isolated       []thing
	did            func(to int) // remembers the links up to a byte of the text
}

// New is a reader; nil where the program does not know the language's words. m
// may be nil.
func New(manual *model.Manual, m *model.Machine, tag string) *Reader {
	spoken := language.Known(tag)
	if spoken == nil || len(spoken.Jotted.Said) == 0 {
		return nil
	}
	r := &Reader{machine: m, holds: manual.Holds, tongue: tongueOf(spoken), names: map[string][]name{}, blocks: map[string]bool{}, titles: map[string]string{}}
	r.learn(manual, tag)
	return r
}

// Step reads the text of one step. skip says of a byte whether it stands in
// something that is no text: a link that is there already, code. It may be nil.
func (r *Reader) Step(text string, skip func(int) bool) Reading {
	r.Begin()
	return r.Read(text, skip)
}

// Begin begins a step: what is called it there was named there.
func (r *Reader) Begin() { r.isolated = nil }

// Read reads a piece of a step.
func (r *Reader) Read(text string, skip func(int) bool) Reading {
	var out Reading
	all := tokens(text, skip)
	if id := r.titles[said(all)]; id != "" {
		out.Links = []Link{{Kind: model.LinkDo, ID: id, Start: all[0].start, End: all[len(all)-1].end, Act: true}}
		return out
	}
	for _, s := range sentences(all) {
		if r.did != nil {
			r.did(s[0].start)
		}
		one := clauseReader{Reader: r, words: s, text: text}
		one.read()
		out.Links = append(out.Links, one.links...)
		out.Offers = append(out.Offers, one.offers...)
	}
	slices.SortStableFunc(out.Links, func(a, b Link) int { return a.Start - b.Start })
	out.Links = balanced(out.Links, text)
	return out
}

// balanced takes into a link the signs of emphasis that close behind it, and
// leaves out a link that would part such signs.
func balanced(links []Link, text string) []Link {
	var out []Link
	for _, l := range links {
		if strings.Count(text[l.Start:l.End], "*")%4 != 0 {
			for l.End < len(text) && text[l.End] == '*' {
				l.End++
			}
		}
		if n := strings.Count(text[l.Start:l.End], "**"); n%2 == 0 && strings.Count(text[l.Start:l.End], "*") == 2*n && !strings.Contains(text[l.Start:l.End], "__") {
			out = append(out, l)
		}
	}
	return out
}

// Among reads a piece of a step that has links already, which begins at an
// offset of its file: their words are no text, and what they do is remembered.
func (r *Reader) Among(text string, links []*model.Link, start int, skip func(int) bool) Reading {
	in := func(i int) bool {
		return skip != nil && skip(i) || slices.ContainsFunc(links, func(l *model.Link) bool { return i >= l.At.Start-start && i < l.At.End-start })
	}
	r.did = func(to int) {
		for len(links) > 0 && links[0].At.Start-start < to {
			if l := links[0]; l.To != nil && l.Kind.Act != model.NoAct {
				r.note(l.Kind.Name, thing{named: l.To, sort: sortOf(l.To)})
			}
			links = links[1:]
		}
	}
	out := r.Read(text, in)
	r.did(len(text))
	r.did = nil
	return out
}

// note remembers what a step did for the ones after it.
func (r *Reader) note(kind string, t thing) {
	drop := func(list []thing) []thing {
		return slices.DeleteFunc(list, func(x thing) bool { return x.named == t.named })
	}
	switch kind {
	case "isolate":
		r.isolated = append(drop(r.isolated), t)
	case "lock":
		r.locked = append(drop(r.locked), t)
	case "unlock":
		r.locked = drop(r.locked)
	case "place":
		r.placed = append(drop(r.placed), t)
	case "clear":
		r.placed = drop(r.placed)
	}
}
