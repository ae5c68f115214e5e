// Package fingerprint says in one short word what a reader of a procedure acts on: the word moves when that moves, and with nothing else.
//
// The word is the number of the form, a hyphen, and the first 16 hex digits of
// the SHA-256 of the form: the lines below. The form ends with the callees'
// fingerprints on lines of their own, so that what a procedure says itself can
// be told from what it performs.
//
// There are two forms. The first names things by their ids. The second, which is
// issued now, has in the place of an id that no reader sees the name and the
// fields that the reader acts on. The first goes on being written beside it: a
// fingerprint is compared in the form of its own number for ever, so that an
// upgrade neither calls everything changed nor lets a change pass. A field that
// the model gains is written in both, where it is set.
//
// # Decided where the format is silent
//
// The form covers the machine, people, needs, posts, expects and leaves, phase leads, each step's
// words with reasons and refit notes, links, time, the amounts of the lists, and a hazard as the
// procedure meets it; not titles, headings, prose between steps, `step:` names and emphasis. An
// empty link counts as its register's words, so that `settle` moves nothing. In the second form a
// phase is its place and an answer its words; of `see:` and of a picture nothing but that it is there
// (a picture's bytes are in the hash of the words); of `do:` what is performed, which the callee's line
// says: the callees' ids stand in what is kept, and are not hashed. Another callee is the caller's own
// change. A *not* is taken with the word behind it. Swapped steps that are the same in both count as
// another order; a step that was changed and moved in one go is told as changed.
//
// The hash of the words: titles, summaries and texts of what performs or is performed are those files'
// own. Words inside pictures are the pictures' bytes.
package fingerprint

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"slices"
	"strings"

	"baybinder/generator/model"
)

// Version is the number that fingerprints of today's form begin with.
const Version = "2-"

// The forms by the number that their fingerprints begin with, and the line that
// the second begins with.
const (
	firstForm  = "1-"
	secondForm = "2-"
	secondLine = "form 2"
)

// number is that of the form.
func (f Form) number() string {
	if len(f) > 0 && f[0] == secondLine {
		return secondForm
	}
	return firstForm
}

// Form is what a reader acts on, as lines. A line without an indent opens a
// block: the procedure's own lines, a phase, a step. In a block stand the words
// and the links, and two deep the fields of what a link names.
type Form []string

const calleeLine = "callee "

// Print is the form's fingerprint.
func (f Form) Print() string {
	sum := sha256.Sum256([]byte(f.hashed().Text()))
	return f.number() + hex.EncodeToString(sum[:8])
}

// hashed is the form without what is kept to find a callee by.
func (f Form) hashed() Form {
	if f.number() == firstForm {
		return f
	}
	out := slices.Clone(f)
	for i, line := range out {
		if rest, is := strings.CutPrefix(line, calleeLine); is {
			_, print, _ := strings.Cut(rest, " ")
			out[i] = calleeLine + print
		}
	}
	return out
}

// Text is the form as it is kept and hashed.
func (f Form) Text() string { return strings.Join(f, "\n") + "\n" }

// Parse is the form of a text that Text made.
func Parse(text string) Form { return strings.Split(strings.TrimSuffix(text, "\n"), "\n") }

// Own is the form without its callees' fingerprints.
func (f Form) Own() Form {
	return slices.DeleteFunc(slices.Clone(f), func(line string) bool { return strings.HasPrefix(line, calleeLine) })
}

// Callee is the fingerprint that a callee had, by the id that it has now or had
// before; "" where there is none.
func (f Form) Callee(p *model.Procedure) string {
	for _, c := range f.callees() {
		if c.is(p) {
			return c.print
		}
	}
	return ""
}

// calleeOf is a line of a form about a callee.
type calleeOf struct{ id, print string }

func (c calleeOf) is(p *model.Procedure) bool { return c.id == p.ID || slices.Contains(p.Was, c.id) }

func (f Form) callees() []calleeOf {
	var out []calleeOf
	for _, line := range f {
		if rest, is := strings.CutPrefix(line, calleeLine); is {
			id, print, _ := strings.Cut(rest, " ")
			out = append(out, calleeOf{id, print})
		}
	}
	return out
}

// sameCallees says whether a procedure performs now what a form says, however
// that changed.
func (f Form) sameCallees(p *model.Procedure) bool {
	return slices.EqualFunc(f.callees(), callees(p), calleeOf.is)
}

// Book holds the forms of a manual's procedures. It is not made for use by
// several goroutines at once.
type Cache struct {
	forms  map[sheet]Form
	prints map[sheet]string // of those forms
	open   map[sheet]bool
}

// sheet is a procedure in a form.
type sheet struct {
	procedure *model.Procedure
	number    string
}

// NewBook is an empty book; forms are made when they are asked for.
func NewCache() *Cache {
	return &Cache{forms: map[sheet]Form{}, prints: map[sheet]string{}, open: map[sheet]bool{}}
}

// Of is the fingerprint of a procedure in today's form.
func (b *Cache) Of(p *model.Procedure) string { return b.print(sheet{p, Version}) }

// Like is the fingerprint of a procedure in the form of another fingerprint;
// "" where that is of a form that this program does not know.
func (b *Cache) Like(p *model.Procedure, print string) string {
	number, known := numberOf(print)
	if !known {
		return ""
	}
	return b.print(sheet{p, number})
}

// Known says whether a fingerprint is of a form that this program writes.
func Known(print string) bool {
	_, known := numberOf(print)
	return known
}

func numberOf(print string) (number string, known bool) {
	for _, n := range []string{firstForm, secondForm} {
		if strings.HasPrefix(print, n) {
			return n, true
		}
	}
	return "", false
}

func (b *Cache) print(s sheet) string {
	form := b.form(s)
	if b.prints[s] == "" {
		b.prints[s] = form.Print()
	}
	return b.prints[s]
}

// Form is the form of a procedure, as it is issued today.
func (b *Cache) Form(p *model.Procedure) Form { return b.form(sheet{p, Version}) }

// Beside is the form of a procedure in the same form as another, to lay beside
// it.
func (b *Cache) Beside(p *model.Procedure, was Form) Form { return b.form(sheet{p, was.number()}) }

// form is the form of a procedure. Of a ring of calls, which is a finding of
// its own, the one that closes it has no fingerprint here.
func (b *Cache) form(s sheet) Form {
	if f, known := b.forms[s]; known {
		return f
	}
	b.open[s] = true
	defer delete(b.open, s)
	w := &writer{procedure: s.procedure, ids: s.number == firstForm}
	if !w.ids {
		w.line(0, secondLine)
	}
	w.heading()
	for _, phase := range s.procedure.Phases {
		w.phase(phase)
	}
	for _, callee := range callees(s.procedure) {
		print, of := "ring", sheet{callee, s.number}
		if !b.open[of] {
			print = b.print(of)
		}
		w.line(0, calleeLine+callee.ID, print)
	}
	b.forms[s] = w.form
	return w.form
}

// callees are what a procedure performs, each once, in reading order.
func callees(p *model.Procedure) []*model.Procedure {
	var out []*model.Procedure
	for _, link := range p.Calls {
		if to, is := link.To.(*model.Procedure); is && !slices.Contains(out, to) {
			out = append(out, to)
		}
	}
	return out
}

type writer struct {
	procedure *model.Procedure
	ids       bool // the first form: things are named by their ids
	form      Form
}

// line writes words at a depth, white space made one.
func (w *writer) line(depth int, words ...string) {
	w.form = append(w.form, strings.Repeat(" ", depth)+oneSpace(strings.Join(words, " ")))
}

// field writes a field of what a link names; an empty one is not there.
func (w *writer) field(name string, value any) {
	if text := oneSpace(fmt.Sprint(value)); text != "" && text != "0" {
		w.line(2, name+":", text)
	}
}

func oneSpace(text string) string { return strings.Join(strings.Fields(text), " ") }

// heading writes what holds for the whole procedure: for which machine, who,
// how many, where they stand, and from and to which state.
func (w *writer) heading() {
	p := w.procedure
	w.line(0, "procedure")
	if p.For.ID != "" {
		w.line(1, "for", name(w, p.For))
	}
	w.line(1, "people", fmt.Sprint(p.People))
	for _, need := range names(w, p.Needs) {
		w.line(1, "needs", need)
	}
	for _, post := range p.Posts {
		w.line(1, "post", post.Key, post.Value)
	}
	w.states("expects", p.Expects)
	w.states("leaves", p.Leaves)
}

// states writes states by id: their order in the front matter says nothing.
func (w *writer) states(name string, states []model.State) {
	var lines []string
	for _, s := range states {
		lines = append(lines, w.named(s.ID, s.Thing)+" "+s.Word)
	}
	slices.Sort(lines)
	for _, l := range lines {
		w.line(1, name, l)
	}
}

func (w *writer) phase(phase *model.Phase) {
	w.line(0, "phase")
	if phase.Lead != nil {
		w.block(phase.Lead)
	}
	for _, s := range phase.Steps {
		w.step(s, 1)
	}
}

func (w *writer) step(s *model.Step, depth int) {
	w.line(0, "step", fmt.Sprint(depth))
	for i := range s.Blocks {
		w.block(&s.Blocks[i])
	}
	for _, sub := range s.Subs {
		w.step(sub, depth+1)
	}
}

var blockNames = map[model.BlockRole]string{model.Said: "words", model.OnRefit: "at the refit", model.Why: "because"}

func (w *writer) block(b *model.Block) {
	if text := oneSpace(plain(b)); text != "" {
		w.line(1, blockNames[b.Role], text)
	}
	for _, link := range b.Links {
		w.link(link)
	}
}

// plain is the text of a block. An empty link has its register's words, so that
// settle, which writes them in, moves nothing.
func plain(b *model.Block) string {
	var text strings.Builder
	for r := range b.Runs() {
		text.WriteString(r.Words())
		if r.Link != nil {
			text.WriteString(linkWords(r.Link))
		}
	}
	return text.String()
}

func linkWords(link *model.Link) string {
	if strings.TrimSpace(link.Text) == "" && link.To != nil {
		return link.To.Label()
	}
	return link.Text
}
