// Package fingerprint says in one short word what a reader of a procedure acts on: the word moves when that moves, and with nothing else.
//
// The word is "1-" and the first 16 hex digits of the SHA-256 of the form: the
// lines below. The form ends with the callees' fingerprints on lines of their
// own, so that what a procedure says itself can be told from what it performs.
// The leading number is the form's: it changes when other lines are written.
//
// # Decided where the format is silent
//
// The form covers the machine, people, needs, posts, expects and leaves, phase leads, each step's
// words with reasons and refit notes, links, time, the amounts of the lists, and a hazard as the
// procedure meets it; not titles, headings, prose between steps, `step:` names and emphasis. An
// empty link counts as its register's words, so that `settle` moves nothing.
package fingerprint

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"html"
	"regexp"
	"slices"
	"strings"

	"baybinder/generator/model"
)

// Version is the number that fingerprints of this form begin with.
const Version = "1-"

// Form is what a reader acts on, as lines. A line without an indent opens a
// block: the procedure's own lines, a phase, a step. In a block stand the words
// and the links, and two deep the fields of what a link names.
type Form []string

const calleeLine = "callee "

// Print is the form's fingerprint.
func (f Form) Print() string {
	sum := sha256.Sum256([]byte(f.Text()))
	return Version + hex.EncodeToString(sum[:8])
}

// Text is the form as it is kept and hashed.
func (f Form) Text() string { return strings.Join(f, "\n") + "\n" }

// Parse is the form of a text that Text made.
func Parse(text string) Form { return strings.Split(strings.TrimSuffix(text, "\n"), "\n") }

// Own is the form without its callees' fingerprints.
func (f Form) Own() Form {
	return slices.DeleteFunc(slices.Clone(f), func(line string) bool { return strings.HasPrefix(line, calleeLine) })
}

// Callee is the fingerprint that a callee had; "" where there is none of that
// id.
func (f Form) Callee(id string) string {
	for _, line := range f {
		if print, is := strings.CutPrefix(line, calleeLine+id+" "); is {
			return print
		}
	}
	return ""
}

// Book holds the forms of a manual's procedures. It is not made for use by
// several goroutines at once.
type Book struct {
	forms  map[*model.Procedure]Form
	prints map[*model.Procedure]string // of those forms
	open   map[*model.Procedure]bool
}

// NewBook is an empty book; forms are made when they are asked for.
func NewBook() *Book {
	return &Book{forms: map[*model.Procedure]Form{}, prints: map[*model.Procedure]string{}, open: map[*model.Procedure]bool{}}
}

// Of is the fingerprint of a procedure.
func (b *Book) Of(p *model.Procedure) string {
	form := b.Form(p)
	if b.prints[p] == "" {
		b.prints[p] = form.Print()
	}
	return b.prints[p]
}

// Form is the form of a procedure. Of a ring of calls, which is a finding of
// its own, the one that closes it has no fingerprint here.
func (b *Book) Form(p *model.Procedure) Form {
	if f, known := b.forms[p]; known {
		return f
	}
	b.open[p] = true
	defer delete(b.open, p)
	w := &writer{procedure: p}
	w.heading()
	for _, phase := range p.Phases {
		w.phase(phase)
	}
	for _, callee := range callees(p) {
		print := "ring"
		if !b.open[callee] {
			print = b.Of(callee)
		}
		w.line(0, calleeLine+callee.ID, print)
	}
	b.forms[p] = w.form
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
		w.line(1, "for", p.For.ID)
	}
	w.line(1, "people", fmt.Sprint(p.People))
	for _, id := range ids(p.Needs) {
		w.line(1, "needs", id)
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
		lines = append(lines, s.ID+" "+s.Word)
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

var markup = regexp.MustCompile(`<[^>]*>`)

// plain is the text of a block. An empty link has its register's words, so that
// settle, which writes them in, moves nothing.
func plain(b *model.Block) string {
	var text strings.Builder
	for i, part := range b.Parts {
		text.WriteString(html.UnescapeString(markup.ReplaceAllString(part, "")))
		if i < len(b.Links) {
			text.WriteString(linkWords(b.Links[i]))
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
