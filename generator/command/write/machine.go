package write

import (
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/show/page"
)

// MachineSheet is a machine's file as it lies on the desk.
type MachineSheet struct {
	ID       string    `json:"id"`
	State    string    `json:"state"`
	File     string    `json:"file"`
	Title    string    `json:"title"`
	Sections []Section `json:"sections"`
	Found    []Found   `json:"found"`
	Errors   int       `json:"errors"`
	Advice   int       `json:"advice"`
	Back     *save     `json:"back"`
	Forth    *save     `json:"forth"`
}

// Section is one part of a machine's file.
type Section struct {
	In      string  `json:"in"`
	Entries []Thing `json:"entries"`
}

// Thing is one entry of a section, and what the file says of it.
type Thing struct {
	Option
	Facts []string `json:"facts"`
}

// machineAt is the machine whose page has an address; nil where there is none.
func (d *Desk) machineAt(at string) *model.Machine {
	b := d.manual.Bench()
	if b == nil {
		return nil
	}
	i := slices.IndexFunc(b.Manual().Machines, func(m *model.Machine) bool { return page.PageOf(m) == at })
	if i < 0 {
		return nil
	}
	return b.Manual().Machines[i]
}

// machineOf is the machine that a page is of, or is for; nil where it is for
// any. The manual is looked at first.
func (d *Desk) machineOf(at string) (*model.Machine, error) {
	if _, err := d.look("shop.yaml"); err != nil {
		return nil, err
	}
	if m := d.machineAt(at); m != nil {
		return m, nil
	}
	if p := d.procedureOf(at); p != nil {
		return p.For.To, nil
	}
	return nil, noPage
}

// machineSheet is a machine as it lies on the desk.
func (d *Desk) machineSheet(m *model.Machine) *MachineSheet {
	b := d.bench()
	s := &MachineSheet{ID: m.ID, State: d.seen[m.At.Path()], File: m.At.Path(), Title: m.Label(), Back: last(d.done), Forth: last(d.undone)}
	for _, in := range sections {
		section := Section{In: in, Entries: []Thing{}}
		for _, o := range optionsOf(b, m, in) {
			section.Entries = append(section.Entries, Thing{o, facts(b, m.Find(o.ID))})
		}
		s.Sections = append(s.Sections, section)
	}
	for _, f := range b.found {
		if f.At.Path() != s.File {
			continue
		}
		if f.Level == finding.Error {
			s.Errors++
		} else {
			s.Advice++
		}
		s.Found = append(s.Found, found(f))
	}
	return s
}

// show is the page of a procedure or of a machine as it lies on the desk.
func (d *Desk) show(a Asked) (*Told, error) {
	if _, err := d.look("shop.yaml"); err != nil {
		return nil, err
	}
	if m := d.machineAt(a.Page); m != nil {
		if _, err := d.look(m.At.Path()); err != nil {
			return nil, err
		}
		return &Told{Machine: d.machineSheet(d.machineAt(a.Page))}, nil
	}
	return d.open(a)
}

func (d *Desk) form(a Asked) (*Told, error) {
	m, err := d.machineOf(a.Page)
	if err != nil {
		return nil, err
	}
	if a.ID == "" {
		f, err := formOf(d.bench(), m, a.In)
		return &Told{Form: f}, err
	}
	f, state, err := d.formFor(m, a.In, a.ID)
	if err != nil {
		return nil, err
	}
	f.State = state
	return &Told{Form: f}, nil
}
