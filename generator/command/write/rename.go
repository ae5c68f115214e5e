package write

import (
	"bytes"
	"cmp"
	"slices"

	"baybinder/generator/base/atomicfile"
	"baybinder/generator/base/turn"
	"baybinder/generator/command/rename"
	"baybinder/generator/model"
	"baybinder/generator/read/decode"
	"baybinder/generator/read/syntax"
)

// kindsOf are the kinds of a rename by the list that their entries stand in.
var kindsOf = map[string]string{
	"procedures": "procedure", "machines": "machine",
	"tools": "tool", "hazards": "hazard", "holds": "hold", "supplies": "supply", "roles": "role",
	"points": "point", "energies": "energy", "parts": "part", "fasteners": "fastener", "fluids": "fluid", "settings": "setting",
}

// Renamed is what a rename did.
type Renamed struct {
	ID      string   `json:"id"`
	Places  int      `json:"places"`
	Files   int      `json:"files"`
	Reissue []string `json:"reissue"` // titles of what differs from its last revision now
}

// rename gives an entry, or the page's own procedure or machine, another id
// wherever the manual names it. It is one save, and undone as one.
func (d *Desk) rename(a Asked) (*Told, error) {
	m, err := d.machineOf(a.Page)
	if err != nil {
		return nil, err
	}
	o := rename.Options{Manual: d.root, Today: d.today, Kind: kindsOf[a.In], Old: a.ID, New: syntax.PlainID(one(a.Fields["id"]))}
	if m != nil && slices.Contains(sections, a.In) {
		o.Machine = m.ID
	}
	switch {
	case o.Kind == "" || o.New == o.Old:
		return nil, cannotNow
	case d.stateBehind(a, m) != a.State:
		return nil, errChanged
	case !decode.BadIDWhy(o.New).IsZero():
		return nil, badID
	case d.taken(m, a.In, o.New):
		return nil, idTaken
	}
	done, err := turn.In(d.root, nil)
	if err != nil {
		return nil, err
	}
	defer done()
	r, all, err := rename.Changes(o)
	if err == nil {
		err = d.writeSeveral(all)
	}
	if err != nil {
		return nil, err
	}
	d.dirty = true
	d.remember(save{Do: "rename", Path: all[0].Path, several: all})
	return d.afterRename(a, o, r, all)
}

// taken says that something of the kind has an id already; in a machine's file
// anything of it.
func (d *Desk) taken(m *model.Machine, in, id string) bool {
	b, lists := d.bench(), []string{in}
	if slices.Contains(sections, in) {
		lists = sections
	}
	all := map[string]bool{}
	switch in {
	case "procedures":
		all = taken(b.Manual().Procedures)
	case "machines":
		all = taken(b.Manual().Machines)
	}
	return all[id] || kindsOf[in] != "" && in != "procedures" && in != "machines" && slices.ContainsFunc(lists, func(list string) bool {
		return slices.ContainsFunc(optionsOf(b, m, list), func(o Option) bool { return o.ID == id })
	})
}

// stateBehind is the state of the file in which the thing stands that is renamed.
func (d *Desk) stateBehind(a Asked, m *model.Machine) string {
	path, _ := listAt(m, a.In)
	switch a.In {
	case "procedures":
		if p := d.procedureOf(a.Page); p != nil && p.ID == a.ID {
			path = p.File.Path
		}
	case "machines":
		if m != nil && m.ID == a.ID {
			path = m.At.Path()
		}
	}
	data, err := d.look(path)
	if err != nil {
		return ""
	}
	return stateOf(data)
}

// afterRename tells what was done, and where the writer looks on.
func (d *Desk) afterRename(a Asked, o rename.Options, r *rename.Result, all []atomicfile.Change) (*Told, error) {
	said := &Renamed{ID: o.New, Places: r.Places, Files: len(all), Reissue: []string{}}
	for _, p := range r.Reissue {
		said.Reissue = append(said.Reissue, p.Label())
	}
	if o.Kind == "procedure" || o.Kind == "machine" {
		if _, err := d.look("shop.yaml"); err != nil {
			return nil, err
		}
		for _, c := range all {
			if c.To != "" && d.pageOf(c.To) != "" {
				return &Told{Renamed: said, Page: d.pageOf(c.To)}, nil
			}
		}
	}
	told, err := d.show(a)
	if err == nil {
		told.Renamed = said
	}
	return told, err
}

// writeSeveral writes the files of a rename, all or none. It is refused where one
// is not as it was, or leads out of the manual.
func (d *Desk) writeSeveral(all []atomicfile.Change) error {
	for _, c := range all {
		if _, err := d.inside(cmp.Or(c.To, c.Path)); err != nil {
			return err
		}
		switch now, err := d.bytes(c.Path); {
		case err != nil:
			return err
		case now == nil || !bytes.Equal(now, c.Was):
			return errChanged
		}
	}
	return atomicfile.WriteAll(d.root, all)
}

// turned are a save's changes, forth or back.
func (s save) turned(forth bool) []atomicfile.Change {
	if forth {
		return s.several
	}
	var out []atomicfile.Change
	for _, c := range s.several {
		back := atomicfile.Change{Path: cmp.Or(c.To, c.Path), Was: c.Now, Now: c.Was}
		if c.To != "" {
			back.To = c.Path
		}
		out = append(out, back)
	}
	return out
}

// stands is the path at which the file of a save stands once that is undone, or
// done again. Of a rename it is that of the file which moved.
func (s save) stands(forth bool) string {
	for _, c := range s.turned(forth) {
		if c.To != "" {
			return c.To
		}
	}
	return s.Path
}
