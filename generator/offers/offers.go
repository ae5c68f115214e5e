// Package offers says what can be written at a place of a procedure, from how things stand there.
//
// It takes a bound manual with its walk, unsaved texts and all, and a place in
// a file, and answers in plain values: what is here, what can be written here,
// what else uses a thing, what a mend would change. Editors and pages ask it;
// it knows neither.
//
// Each offer is tried before it is made: the procedure with its sentence in it
// is bound, walked and checked in memory. What is found at the sentence itself
// is what is in the way; what is found elsewhere, or is left undone at the end,
// is named with the offer. So an offer never says more than the check does.
//
// # Decided where the format is silent
//
// An offer holds only what the machine file and the registers say: a hazard, a
// hold or a tool is in its sentence where an entry is `of` that energy, or fits
// that fastener, and a tool that the procedure lists goes before another. Of a fluid
// as much is listed as the circuit holds. What only some units have is said in the
// detail; no condition is written, for the act implies it. What
// its sentence names it adds to the lists, and to `needs` the roles of its
// tools. Points are switched off and locked in one step. Of fasteners that hold
// parts, none is offered to be undone by itself: they come with the part. A part
// that has `renew-with` is offered to be taken off as ever: whether it is worn
// is for the writer to say. A procedure is offered to be performed where it
// leaves or expects something by name, or leaves an energy cut. Of what performs the procedure, the first
// four are tried with each offer: what would be found in them is named with it;
// that of others is the check's to tell.
package offers

import (
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/check"
	"baybinder/generator/language"
	"baybinder/generator/language/shape"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
)

// Bench is a manual on a writer's bench: bound, walked, and how it is checked.
// Nothing here changes it, and several may ask at once.
type Bench struct {
	Bound   *bind.Bound
	Walks   *walk.Result
	Context *check.Context
}

// Manual is the bound manual.
func (b *Bench) Manual() *model.Manual { return b.Bound.Manual }

// Procedure is the one whose file has a path; nil where there is none.
// Translations are procedures too.
func (b *Bench) Procedure(path string) *model.Procedure {
	for _, p := range slices.Concat(b.Manual().Procedures, b.Manual().Translated) {
		if p.File.Path == path {
			return p
		}
	}
	return nil
}

// speech are the words in which sentences are written: those of the language in
// which the shop writes.
func (b *Bench) speech() *shape.Speech { return &language.Of(b.Manual().Shop.Language).Speech }

// tongue is what the shop's findings are told in.
func (b *Bench) tongue() *finding.Tongue { return &language.Of(b.Manual().Shop.Language).Findings }

// told is words of the program as the shop says them.
func (b *Bench) told(format string, args ...any) string {
	text, _ := b.tongue().Say(finding.Say(format, args...))
	return text
}

// Edit puts a text in place of what stands somewhere.
type Edit struct {
	At   position.Pos
	Text string
}

// Need is an entry that an offer's sentence names besides its act, because the
// act asks for it.
type Need struct {
	Kind  string // of the link: hazard, hold, tool, supply
	Entry model.Named
}

// Offer is a step that can be written.
type Offer struct {
	Kind     string      // of the act's link: "remove"
	Entry    model.Named // what it acts on; of reverse: nil
	Address  string      // of the act's link: "remove:seat-base"
	Label    string      // the act in the shop's language: "Take the seat base off"
	Detail   string      // what it takes: "4 × seat bolt, 13 mm"
	Sentence string      // the step that it writes, as Markdown
	Why      string      // why it can be done now, or why it is due
	Needs    []Need
	InTheWay []string          // why it cannot be done yet; empty where it can
	Brings   []finding.Finding // what would be found elsewhere, or left undone, once it is written
	Edits    []Edit            // what taking it changes: the step, and the lists of the front matter

	rank    int
	amounts map[model.Named]string // of supplies, as the list of the front matter has them
}

// Possible says that the act can be done at the place as things stand there.
func (o *Offer) Possible() bool { return len(o.InTheWay) == 0 }
