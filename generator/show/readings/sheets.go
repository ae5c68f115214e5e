package readings

import (
	"fmt"

	"baybinder/generator/derive/training"
	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/show/page"
)

// SignIn is the sheet that a class signs: everybody who is there, one procedure,
// its revision.
type SignIn struct {
	page.Frame
	Training *words.Readings
	Plate    []string
	People   []string
	Free     []int // lines without a name
}

// freeLines are for who is in the class and not in the list.
const freeLines = 4

// SignInPage is the path of a procedure's sign-in sheet. An id holds no dot, so no
// procedure's page has that name.
func SignInPage(p *model.Procedure) string { return "procedures/" + p.ID + ".sign-in.html" }

// SignIn makes the sign-in sheet of a procedure.
func (r *Readings) SignIn(p *model.Procedure) *SignIn {
	v := &SignIn{Frame: r.frame(SignInPage(p), fmt.Sprintf(r.words.SignInOf, p.Title)), Training: r.words, Plate: r.Plate(p), Free: make([]int, freeLines)}
	for _, person := range r.here {
		v.People = append(v.People, person.Label())
	}
	return v
}

// AgainSheet is what one person is to read again, what changed of it, and a place
// to sign.
type AgainSheet struct {
	page.Frame
	Training *words.Readings
	Note     string
	Rows     []Again
}

// Again is one procedure that is to be read again.
type Again struct {
	page.Link
	Revision string   // that stands
	Read     string   // when it was read last
	By       string   // until when
	Changes  []string // step by step; nil where they cannot be said
}

// AgainPage is the path of a person's sheet of what is to be read again.
func AgainPage(p *model.Person) string { return "people/" + p.ID + ".again.html" }

// Again makes a person's sheet of what is to be read again.
func (r *Readings) Again(p *model.Person) *AgainSheet {
	v := &AgainSheet{Frame: r.frame(AgainPage(p), fmt.Sprintf(r.words.AgainOf, p.Label())), Training: r.words, Note: fmt.Sprintf(r.words.FrontNote, r.Today)}
	seen := map[*model.Procedure]bool{}
	for i := range r.standings[p] {
		x := &r.standings[p][i]
		to := x.Reading.Procedure
		if x.Last == nil || x.State == training.Good || seen[to] {
			continue
		}
		seen[to] = true
		row := Again{Link: r.Link(v.Up, to), Read: fmt.Sprintf(r.words.ReadOn, x.Last.Date), By: r.by(x), Changes: r.changesFor(p, to)}
		if rev := r.LastRevision(to); rev != nil {
			row.Revision = fmt.Sprintf(r.Words.Revision, rev.Number, rev.Date)
		}
		v.Rows = append(v.Rows, row)
	}
	return v
}

// changesFor is what changed of a procedure for one who read it before.
func (r *Readings) changesFor(p *model.Person, to *model.Procedure) []string {
	for _, m := range r.changed[to] {
		for _, person := range m.People {
			if person == p {
				return m.Steps
			}
		}
	}
	return nil
}
