// Package people changes readings/people.csv: who comes, who leaves and who comes back. Nothing but the row in question changes.
//
// # Decided where the format is silent
//
// Who is added starts on the day, unless it is said otherwise. The last day of who leaves is the day;
// the first day of who comes back is the day, and their absence becomes a span. A last day may lie
// ahead.
package people

import (
	"errors"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"github.com/rogpeppe/go-internal/lockedfile"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/nearest"
	"baybinder/generator/derive/training"
	"baybinder/generator/model"
	"baybinder/generator/read/decode"
)

// New is somebody who is added.
type New struct {
	ID      string
	Name    string
	Roles   []string // ids, each with @ and its day where that is known
	Started model.Date
	Plans   []string
}

// Add adds a person to the list of a manual's folder. The error says why not;
// then nothing was written.
func Add(m *model.Manual, folder string, n New) error {
	if err := addable(m, n); err != nil {
		return err
	}
	return change(folder, func(t *table) error {
		return t.add(map[string]string{
			"person": n.ID, "name": n.Name, "roles": strings.Join(n.Roles, " "), "started": n.Started.String(), "plans": strings.Join(n.Plans, " "),
		})
	})
}

// addable says all that speaks against adding somebody.
func addable(m *model.Manual, n New) error {
	var wrong []error
	if why := decode.BadIDWhy(n.ID); !why.IsZero() {
		wrong = append(wrong, finding.Refuse("the id %q %s", n.ID, why))
	}
	if p := model.ByID(m.People, n.ID); p != nil {
		why := finding.Refuse("%s is in readings/people.csv already", n.ID)
		if len(p.Left) > 0 {
			why = finding.Refuse("%s is in readings/people.csv already; who comes back: readings people back %s", n.ID, n.ID)
		}
		wrong = append(wrong, why)
	}
	for _, r := range n.Roles {
		id, day, dated := strings.Cut(r, "@")
		wrong = append(wrong, there(finding.Say("role"), id, m.Roles))
		if _, ok := model.ParseDate(day); dated && !ok {
			wrong = append(wrong, finding.Refuse("%q is not a day of the calendar: write %s@2026-03-02", day, id))
		}
	}
	for _, id := range n.Plans {
		wrong = append(wrong, there(finding.Say("reading plan"), id, m.Plans))
	}
	return errors.Join(wrong...)
}

// there says that nothing has an id, with the nearest that has.
func there[T model.Named](what finding.Words, id string, list []T) error {
	ids := model.IDs(list)
	if slices.Contains(ids, id) {
		return nil
	}
	if near := nearest.Of(id, ids); near != "" {
		return finding.Refuse("there is no %s %s: did you mean %s?", what, id, near)
	}
	return finding.Refuse("there is no %s %s", what, id)
}

// Leave notes a last day, of all who are named or of none.
func Leave(m *model.Manual, folder string, ids []string, last model.Date) error {
	return eachLeft(m, folder, ids, func(p *model.Person) (string, error) {
		switch n := len(p.Left); {
		case p.Away(last):
			return "", finding.Refuse("%s was not there on %s: they had left before", p.ID, last)
		case n > 0 && p.Left[n-1].Back.IsZero():
			return "", finding.Refuse("%s has a last day already: %s", p.ID, p.Left[n-1].Last)
		case n > 0 && last.Before(p.Left[n-1].Back), last.Before(p.Started):
			return "", finding.Refuse("%s came later than %s", p.ID, last)
		}
		return strings.TrimSpace(spans(p.Left) + " " + last.String()), nil
	})
}

// Back notes the first day of who came back, of all who are named or of none.
func Back(m *model.Manual, folder string, ids []string, first model.Date) error {
	return eachLeft(m, folder, ids, func(p *model.Person) (string, error) {
		n := len(p.Left)
		switch {
		case n == 0 || !p.Left[n-1].Back.IsZero():
			return "", finding.Refuse("%s has not left", p.ID)
		case !p.Left[n-1].Last.Before(first):
			return "", finding.Refuse("%s was there until %s: they come back on a later day", p.ID, p.Left[n-1].Last)
		}
		left := slices.Clone(p.Left)
		left[n-1].Back = first
		return spans(left), nil
	})
}

// spans are the cell of the absences of a person.
func spans(list []model.Absence) string {
	var out []string
	for _, a := range list {
		text := a.Last.String()
		if !a.Back.IsZero() {
			text += ".." + a.Back.String()
		}
		out = append(out, text)
	}
	return strings.Join(out, " ")
}

// eachLeft works out the cell of everybody who is named, and writes all or none.
func eachLeft(m *model.Manual, folder string, ids []string, cell func(p *model.Person) (string, error)) error {
	cells := map[string]string{}
	var wrong []error
	for _, id := range ids {
		p := model.ByID(m.People, id)
		switch {
		case p == nil:
			wrong = append(wrong, there(finding.Say("person"), id, m.People))
			continue
		case p.LeftUnread:
			wrong = append(wrong, finding.Refuse("when %s left cannot be read: baybinder check says where", id))
			continue
		}
		text, err := cell(p)
		if err != nil {
			wrong = append(wrong, err)
			continue
		}
		cells[id] = text
	}
	if err := errors.Join(wrong...); err != nil {
		return err
	}
	return change(folder, func(t *table) error { return t.set("left", cells) })
}

// change changes the list while nobody else does, whole or not at all, and puts
// the table of roles there where it is not.
func change(folder string, with func(t *table) error) error {
	name := filepath.Join(folder, "readings", "people.csv")
	if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
		return err
	}
	err := lockedfile.Transform(name, func(old []byte) ([]byte, error) {
		t, err := read(old)
		if err == nil {
			err = with(t)
		}
		if err != nil {
			return nil, finding.Refuse("people.csv: %s", err)
		}
		return t.text, nil
	})
	if err != nil {
		return err
	}
	return training.BeginRoles(folder)
}
