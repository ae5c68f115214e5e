package training

import (
	"fmt"
	"path/filepath"
	"slices"
	"strings"

	"baybinder/generator/ledger"
	"baybinder/generator/manual"
)

// Columns are those of readings/record.csv.
var Columns = strings.Fields("date person procedure act fingerprint by")

// Entry is what is to be recorded.
type Entry struct {
	Folder    string // the manual's
	Person    string
	Procedure string
	Act       string // read, watched, performed, taught
	By        string // under whose eye
	Date      manual.Date
}

// Record adds a row to the record and returns the fingerprint that it holds.
func Record(m *manual.Manual, e Entry) (string, error) {
	at := slices.IndexFunc(m.Procedures, func(p *manual.Procedure) bool { return p.ID == e.Procedure })
	switch {
	case !known(m, e.Person):
		return "", fmt.Errorf("%s is not in readings/people.csv", e.Person)
	case at < 0:
		return "", fmt.Errorf("there is no procedure %s", e.Procedure)
	case e.By != "" && !known(m, e.By):
		return "", fmt.Errorf("%s, who is to have witnessed it, is not in readings/people.csv", e.By)
	case e.By == e.Person:
		return "", fmt.Errorf("%s cannot witness what they did themselves", e.By)
	}
	print := NewHall(m, e.Date).Fingerprint(m.Procedures[at])
	row := ledger.Row{
		"date": e.Date.String(), "person": e.Person, "procedure": e.Procedure, "act": e.Act, "fingerprint": print, "by": e.By,
	}
	return print, ledger.Append(filepath.Join(e.Folder, "readings", "record.csv"), Columns, row, nil)
}

func known(m *manual.Manual, person string) bool {
	return slices.ContainsFunc(m.People, func(p *manual.Person) bool { return p.ID == person })
}
