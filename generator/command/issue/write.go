package issue

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strconv"

	"baybinder/generator/base/atomicfile"
	"baybinder/generator/base/finding"
	"baybinder/generator/base/ledger"
	"baybinder/generator/base/patch"
	"baybinder/generator/derive/training"
	"baybinder/generator/model"
)

// Write adds the rows, all of them or none, keeps the words, and changes the
// front matter of what is retired or brought back. The words are written while
// the place of the rows is held, so that a number has one text.
func Write(list []*Issued, o Order) error {
	changes, err := frontMatter(o.Folder, list)
	if err != nil {
		return err
	}
	var rows []ledger.Row
	for _, i := range list {
		rows = append(rows, i.row(o))
	}
	if err := atomicfile.WriteAll(o.Folder, changes); err != nil {
		return finding.Refuse("the front matter could not be written, and nothing was issued: %s", err)
	}
	err = ledger.Append(path(o.Folder, "revisions.csv"), columns, rows, func(stands []ledger.Row) error { return keepAll(list, stands, o.Folder) })
	if err != nil {
		for k := range changes {
			changes[k].Was, changes[k].Now = changes[k].Now, changes[k].Was
		}
		return errors.Join(err, atomicfile.WriteAll(o.Folder, changes))
	}
	return training.BeginRoles(o.Folder)
}

// frontMatter is what becomes of the files of what is retired or brought back.
func frontMatter(folder string, list []*Issued) ([]atomicfile.Change, error) {
	var out []atomicfile.Change
	for _, i := range list {
		if len(i.pieces) == 0 {
			continue
		}
		f := i.Procedure.File
		old, err := os.ReadFile(path(folder, f.Path))
		if err != nil {
			return nil, err
		}
		if !unchanged(f, old) {
			return nil, finding.Refuse("%s was changed meanwhile; nothing was issued: run it again", f.Path)
		}
		out = append(out, atomicfile.Change{Path: f.Path, Was: old, Now: patch.Apply(old, i.pieces)})
	}
	return out, nil
}

func (i *Issued) row(o Order) ledger.Row {
	return ledger.Row{
		"procedure": i.Procedure.ID, "revision": strconv.Itoa(i.Number), "date": o.Date.String(), "fingerprint": i.Fingerprint, "reason": o.Reason,
		"written": o.Written, "checked": o.Checked, "approved": o.Approved, "walked": o.Walked, "readers": i.Readers, "words": i.Words, "language": i.Language,
	}
}

// keepAll keeps the words of all, unless one was issued meanwhile.
func keepAll(list []*Issued, stands []ledger.Row, folder string) error {
	for _, i := range list {
		number := strconv.Itoa(i.Number)
		for _, r := range stands {
			if r["procedure"] == i.Procedure.ID && r["revision"] == number && r["language"] == i.Language {
				return finding.Refuse("revision %s of %s was issued meanwhile", number, i.Procedure.ID)
			}
		}
	}
	for _, i := range list {
		if i.kept == "" {
			continue // of what was retired nothing had been kept
		}
		if err := keep(path(folder, model.KeptPath(i.Procedure.ID, strconv.Itoa(i.Number), i.Language)), i.kept); err != nil {
			return err
		}
	}
	return nil
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
		return finding.Refuse("the words of the revision cannot be kept: %s", err)
	}
	return err
}
