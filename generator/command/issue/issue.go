// Package issue issues a revision of a procedure: a row in revisions.csv, which is only ever added to, and the words as they were.
package issue

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/ledger"
	"baybinder/generator/base/picture"
	"baybinder/generator/model"
	"baybinder/generator/prove/fingerprint"
	"baybinder/generator/read/bind"
)

// columns are those of revisions.csv.
var columns = ledger.Columns{Need: bind.RevisionColumns.Need, Later: bind.RevisionColumns.Later}

// ChangedSinceIssue is the code of the one error that issuing mends.
const ChangedSinceIssue = "changed-since-issue"

// Order says what is issued, why and by whom.
type Order struct {
	Folder    string // the manual's
	Procedure string
	Number    int // 0: one more than the last
	Date      model.Date
	Reason    string
	Written   string
	Checked   string
	Approved  string
	Walked    string
	Readers   string // reread, tell, none
}

// Issued is what was issued.
type Issued struct {
	Procedure   *model.Procedure
	Number      int
	Fingerprint string
	Words       string   // the hash of the words and pictures
	Changes     []string // for the reader, since the last revision, step by step
	First       bool
	Unkept      bool // the last revision's words are not there to compare with
}

// Run issues a revision of a checked manual. The error says why not; then
// nothing was written.
func Run(m *model.Manual, found []finding.Finding, o Order) (*Issued, error) {
	p, err := issuable(m, found, o)
	if err != nil {
		return nil, err
	}
	book := fingerprint.NewCache()
	words, err := wordsOf(o.Folder, p)
	if err != nil {
		return nil, err
	}
	i := &Issued{Procedure: p, Fingerprint: book.Of(p), Words: words}
	if err := i.compare(fingerprint.Last(m, p), book, o); err != nil {
		return nil, err
	}
	return i, i.write(book, o)
}

// issuable finds the procedure and refuses one that is not fit to be issued.
func issuable(m *model.Manual, found []finding.Finding, o Order) (*model.Procedure, error) {
	at := slices.IndexFunc(m.Procedures, func(p *model.Procedure) bool { return p.ID == o.Procedure })
	switch {
	case at < 0:
		return nil, fmt.Errorf("there is no procedure %s", o.Procedure)
	case strings.TrimSpace(o.Reason) == "":
		return nil, errors.New("say why with --reason: it is what readers are told")
	case !m.Procedures[at].Issued():
		return nil, fmt.Errorf("%s is %s: take that status out before it is issued", o.Procedure, m.Procedures[at].Status)
	}
	for _, f := range found {
		if f.Stops() && f.Code != ChangedSinceIssue {
			line, _ := f.At.LineCol()
			return nil, fmt.Errorf("the manual has errors, the first at %s:%d (%s): run check, and mend them first", f.At.Path(), line, f.Message)
		}
	}
	return m.Procedures[at], nil
}

// compare lays the form beside the last revision's.
func (i *Issued) compare(last *model.Revision, book *fingerprint.Cache, o Order) error {
	i.Number = max(o.Number, 1)
	i.First = last == nil
	if last == nil {
		return refuseUnseen(o, "there is no earlier revision to compare with")
	}
	number, err := strconv.Atoi(last.Number)
	if err != nil && o.Number == 0 {
		return fmt.Errorf("the last revision is %q, which is no number: say with --revision which this is", last.Number)
	}
	if i.Number = o.Number; o.Number == 0 {
		i.Number = number + 1
	}
	if i.Number <= number {
		return fmt.Errorf("revision %d of %s stands already: the next is %d", number, o.Procedure, number+1)
	}
	if o.Date.Before(last.Date) {
		return fmt.Errorf("revision %s is of %s: a later one cannot be of %s", last.Number, last.Date, o.Date)
	}
	was, kept := fingerprint.Kept(last)
	if !kept {
		i.Unkept = true
		if last.Fingerprint == book.Like(i.Procedure, last.Fingerprint) {
			return nil
		}
		return refuseUnseen(o, "the words of revision "+last.Number+" were not kept, or are not those of its fingerprint")
	}
	form := book.Beside(i.Procedure, was)
	i.Changes = fingerprint.Changes(was, form)
	if o.Readers == "none" && fingerprint.DangerMoved(was, form) {
		return fmt.Errorf("a hazard, hold, limit or energy act, a supply, a “not” or the order of steps moved, so --readers none is refused; write tell or reread:\n  %s", strings.Join(i.Changes, "\n  "))
	}
	return nil
}

// refuseUnseen refuses to spare the readers what cannot be compared.
func refuseUnseen(o Order, why string) error {
	if o.Readers != "none" {
		return nil
	}
	return fmt.Errorf("%s, so --readers none is refused: write tell or reread", why)
}

// write adds the row and keeps the words. The words are written while the row's
// place is held, so that a number has one text.
func (i *Issued) write(book *fingerprint.Cache, o Order) error {
	number := strconv.Itoa(i.Number)
	row := ledger.Row{
		"procedure": o.Procedure, "revision": number, "date": o.Date.String(), "fingerprint": i.Fingerprint, "reason": o.Reason,
		"written": o.Written, "checked": o.Checked, "approved": o.Approved, "walked": o.Walked, "readers": o.Readers, "words": i.Words,
	}
	words := fingerprint.Keep(i.Procedure.File.Text, book.Form(i.Procedure), book.Older(i.Procedure)...)
	return ledger.Append(filepath.Join(o.Folder, "revisions.csv"), columns, []ledger.Row{row}, func(stands []ledger.Row) error {
		for _, r := range stands {
			if r["procedure"] == o.Procedure && r["revision"] == number {
				return fmt.Errorf("revision %s of %s was issued meanwhile", number, o.Procedure)
			}
		}
		return keep(filepath.Join(o.Folder, filepath.FromSlash(model.KeptPath(o.Procedure, number, ""))), words)
	})
}

// wordsOf is the hash of a procedure's words and pictures.
func wordsOf(folder string, p *model.Procedure) (string, error) {
	sums := map[string]string{}
	for _, name := range p.Pictures() {
		data, err := os.ReadFile(filepath.Join(folder, filepath.FromSlash(name)))
		if err != nil {
			return "", fmt.Errorf("a picture of it cannot be read: %w", err)
		}
		sums[name] = picture.Sum(name, data)
	}
	return fingerprint.Words(p, sums), nil
}

// keep writes a revision's words. Those of a run that ended before its row was
// added are written over; a number with a row never comes here.
func keep(name, words string) error {
	if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
		return err
	}
	err := os.WriteFile(name, []byte(words), 0o644)
	var bad *fs.PathError
	if errors.As(err, &bad) {
		return fmt.Errorf("the words of the revision cannot be kept: %w", err)
	}
	return err
}
