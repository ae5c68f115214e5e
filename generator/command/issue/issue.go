// Package issue issues revisions: rows in revisions.csv, which are only ever added to, and the words as they were.
//
// # Decided where the format is silent
//
// --all takes in what was never issued and what is another than its last revision. Of several, a
// first issue is written with reread where the others' readers are spared. A retirement's row keeps
// the last revision's fingerprint and words, and is written though the manual has errors. Issuing a
// procedure that is retired brings it back: its status: and instead: are taken out. Translations are
// counted by themselves, from 1.
package issue

import (
	"errors"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/ledger"
	"baybinder/generator/base/patch"
	"baybinder/generator/base/picture"
	"baybinder/generator/base/position"
	"baybinder/generator/check"
	"baybinder/generator/derive/training"
	"baybinder/generator/language"
	"baybinder/generator/model"
	"baybinder/generator/prove/fingerprint"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/edit"
)

// columns are those of revisions.csv.
var columns = ledger.Columns{Need: bind.RevisionColumns.Need, Later: bind.RevisionColumns.Later}

// Issued is what was issued, or is to be.
type Issued struct {
	Procedure   *model.Procedure
	Language    string // of a translation; "" of the original
	Number      int
	Fingerprint string
	Words       string   // the hash of the words and pictures
	Changes     []string // for the reader, since the last revision, step by step
	First       bool
	Unkept      bool // the last revision's words are not there to compare with
	Retired     bool
	Back        bool            // it was retired
	Readers     string          // reread, tell, none, retired; "" until it is said
	Last        *model.Revision // nil of a first

	shop   string           // the tag of its language, in which changes are told
	text   *model.Procedure // the procedure, or its translation
	moved  bool             // what readers cannot be spared
	unseen finding.Words    // why it cannot be compared; "" where it can
	kept   string           // what is kept of the words
	pieces []patch.Piece    // of the front matter
}

// AsksReaders says that it must be said what its readers do.
func (i *Issued) AsksReaders() bool { return !i.First && !i.Retired }

// Prepare works out what an order would issue, and writes nothing.
func Prepare(m *model.Manual, found []finding.Finding, o Order) ([]*Issued, error) {
	texts, err := chosen(m, found, o)
	if err == nil {
		err = o.fit(m, found, texts)
	}
	if err != nil {
		return nil, err
	}
	book := fingerprint.NewCache()
	var list []*Issued
	var wrong []error
	for _, text := range texts {
		i := &Issued{Procedure: originalOf(m, text), Language: text.Language, shop: m.Shop.Language, text: text, Retired: o.Retire, Last: lastOf(m, text)}
		if err := i.prepare(book, o); err != nil {
			wrong = append(wrong, err)
		}
		list = append(list, i)
	}
	return list, errors.Join(wrong...)
}

// fit refuses an order that cannot be carried out whatever the procedures are.
func (o Order) fit(m *model.Manual, found []finding.Finding, texts []*model.Procedure) error {
	switch {
	case strings.TrimSpace(o.Reason) == "":
		return finding.Refuse("say why with --reason: it is what readers are told")
	case o.Instead != "" && !o.Retire:
		return finding.Refuse("--instead goes with --retire: it names what stands in place of what is retired")
	case o.Retire && o.Language != "":
		return finding.Refuse("a procedure is retired in all its languages: leave out --language")
	case o.Retire && (o.All || o.Changed):
		return finding.Refuse("name what is retired: --retire goes with neither --all nor --changed")
	case o.Number != 0 && len(texts) > 1:
		return finding.Refuse("--revision is the number of one procedure: name one")
	case o.Instead != "" && model.ByID(m.Procedures, o.Instead) == nil:
		return training.NoProcedure(m, o.Instead)
	case o.Retire:
		return nil
	}
	back := slices.ContainsFunc(texts, func(p *model.Procedure) bool { return p.Status == "retired" })
	for _, f := range found {
		mended := f.Rule == &check.ChangedSinceIssue || back && f.Rule == &check.CallsDraft // by this very issue
		if f.Stops() && !mended {
			line, _ := f.At.LineCol()
			return finding.Refuse("the manual has errors, the first at %s:%d (%s): run check, and mend them first", f.At.Path(), line, f.Says)
		}
	}
	return o.allowed(m)
}

// allowed refuses an order that names nobody, or the wrong one, for what shop.yaml
// asks: its rows could never be taken back.
func (o Order) allowed(m *model.Manual) error {
	rule := m.Shop.Issue
	if rule == nil || rule.Since.IsZero() || o.Date.Before(rule.Since) {
		return nil
	}
	hall := training.NewStandings(m, o.Date)
	judge := func(flag, who string, missing error, roles []model.Ref[model.Role]) error {
		switch hall.IssuerFault(who, roles, o.Date) {
		case "":
			return nil
		case training.NobodyNamed:
			return missing
		case training.NotKnown:
			return finding.Refuse("--%s: %s", flag, training.NotInPeople(m, who))
		}
		return finding.Refuse("--%s: %s held none of the roles on %s that issue: of shop.yaml asks for", flag, who, o.Date)
	}
	return errors.Join(
		judge("checked", o.Checked, finding.Refuse("shop.yaml asks who has checked it: add --checked WHO"), rule.Checked),
		judge("approved", o.Approved, finding.Refuse("shop.yaml asks who has approved it: add --approved WHO"), rule.Approved))
}

// prepare works out one revision.
func (i *Issued) prepare(book *fingerprint.Cache, o Order) error {
	if err := i.number(o); err != nil {
		return err
	}
	if err := i.status(o); err != nil {
		return err
	}
	if i.Retired && i.Last != nil {
		i.asItWas()
		return nil
	}
	words, err := wordsOf(o.Folder, i.text)
	if err != nil {
		return err
	}
	i.Words, i.Fingerprint = words, book.Of(i.text)
	i.kept = fingerprint.Keep(patch.Applied(i.text.File, i.pieces).Text, book.Form(i.text), book.Older(i.text)...)
	if i.Readers = "retired"; !i.Retired {
		i.Readers = ""
		i.compare(book)
	}
	return nil
}

// number is one more than the last revision's, or the one that was asked for.
func (i *Issued) number(o Order) error {
	i.Number = max(o.Number, 1)
	i.First = i.Last == nil
	if i.First {
		return nil
	}
	number, err := strconv.Atoi(i.Last.Number)
	if err != nil && o.Number == 0 {
		return finding.Refuse("the last revision of %s is %q, which is no number: say with --revision which this is", i.Procedure.ID, i.Last.Number)
	}
	if i.Number = o.Number; o.Number == 0 {
		i.Number = number + 1
	}
	if i.Number <= number {
		return finding.Refuse("revision %d of %s stands already: the next is %d", number, i.Procedure.ID, number+1)
	}
	if o.Date.Before(i.Last.Date) {
		return finding.Refuse("revision %s of %s is of %s: a later one cannot be of %s", i.Last.Number, i.Procedure.ID, i.Last.Date, o.Date)
	}
	return nil
}

// status is what becomes of the front matter: who retires a procedure says so in
// it, and who issues a retired one takes that out.
func (i *Issued) status(o Order) error {
	p := i.Procedure
	i.Back = !o.Retire && p.Status == "retired"
	ok := true
	add := func(piece patch.Piece, safe bool) { i.pieces, ok = append(i.pieces, piece), ok && safe }
	if o.Retire && p.Status != "retired" {
		add(edit.Put(p.File, "status", "retired"))
	}
	if o.Retire && o.Instead != "" && o.Instead != p.Instead.ID {
		add(edit.Put(p.File, "instead", o.Instead))
	}
	if i.Back && i.Language == "" {
		add(edit.Drop(p.File, "status"))
		if p.Instead.ID != "" {
			add(edit.Drop(p.File, "instead"))
		}
	}
	if !ok {
		return finding.Refuse("%s: there is no safe place for status: in its front matter: write it there by hand first", p.File.Path)
	}
	return nil
}

// asItWas takes the last revision's fingerprint and words over: what is retired
// is what stood.
func (i *Issued) asItWas() {
	i.Readers, i.Fingerprint, i.Words = "retired", i.Last.Fingerprint, i.Last.Words
	if i.Last.Kept != nil {
		i.kept = i.Last.Kept.Text
	}
}

// compare lays the form beside the last revision's.
func (i *Issued) compare(book *fingerprint.Cache) {
	if i.First {
		i.unseen = finding.Say("there is no earlier revision to compare with")
		return
	}
	was, kept := fingerprint.Kept(i.Last)
	if !kept {
		i.Unkept = true
		if i.Last.Fingerprint != book.Like(i.text, i.Last.Fingerprint) {
			i.unseen = finding.Say("the words of revision %s were not kept, or are not those of its fingerprint", i.Last.Number)
		}
		return
	}
	form := book.Beside(i.text, was)
	i.Changes = fingerprint.Changes(was, form, &language.Of(i.shop).Readings.Changes)
	i.moved = fingerprint.DangerMoved(was, form)
}

// Settle says what the readers of each are to do, and refuses to spare them what
// they must know. Nothing is taken as said that was not.
func Settle(list []*Issued, readers string) error {
	var wrong []error
	for _, i := range list {
		switch {
		case i.Retired:
			continue
		case readers == "" && !i.First:
			wrong = append(wrong, finding.Refuse("say what the readers of %s must do: add --readers reread, --readers tell or --readers none", i.Procedure.ID))
		case readers == "", readers == "none" && i.First && len(list) > 1:
			i.Readers = "reread"
		case readers == "none" && !i.unseen.IsZero():
			wrong = append(wrong, finding.Refuse("%s: %s, so --readers none is refused: write tell or reread", i.Procedure.ID, i.unseen))
		case readers == "none" && i.moved:
			wrong = append(wrong, finding.Refuse("%s: a hazard, hold, limit or energy act, a supply, a “not” or the order of steps moved, so --readers none is refused; write tell or reread:\n  %s",
				i.Procedure.ID, strings.Join(i.Changes, "\n  ")))
		default:
			i.Readers = readers
		}
	}
	return errors.Join(wrong...)
}

// wordsOf is the hash of a procedure's words and pictures.
func wordsOf(folder string, p *model.Procedure) (string, error) {
	sums := map[string]string{}
	for _, name := range p.Pictures() {
		data, err := os.ReadFile(filepath.Join(folder, filepath.FromSlash(name)))
		if err != nil {
			return "", finding.Refuse("a picture of it cannot be read: %s", err)
		}
		sums[name] = picture.Sum(name, data)
	}
	return fingerprint.Words(p, sums), nil
}

// path is where a file of the manual is.
func path(folder, name string) string { return filepath.Join(folder, filepath.FromSlash(name)) }

// unchanged says whether a file's bytes are still the text that was checked.
func unchanged(f *position.File, data []byte) bool {
	return position.NewFile(f.Path, string(data)).Text == f.Text
}
