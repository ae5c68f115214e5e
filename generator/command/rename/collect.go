package rename

import (
	"path"
	"reflect"
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
	"baybinder/generator/read/decode"
	"baybinder/generator/read/syntax"
)

// collector gathers every place where an id stands: the id alone, without the
// signs around it.
type collector struct {
	target
	m      *model.Manual
	places []position.Pos
	files  map[string]bool // files whose name is the id
	lost   []position.Pos  // it is named here, and written in a way that is not seen
	doubt  error           // what cannot be said without a person
}

// collect gathers the places of a target.
func collect(m *model.Manual, t target) *collector {
	c := &collector{target: t, m: m, files: map[string]bool{}}
	c.fileNames()
	c.definitions()
	c.fields()
	c.of()
	c.wordsOf()
	for _, p := range m.People {
		for i := range p.Roles {
			c.reference(&p.Roles[i].Ref, nil)
		}
	}
	for _, p := range slices.Concat(m.Procedures, m.Translated) {
		c.links(p)
	}
	return c
}

// sure says whether all places are known for certain.
func (c *collector) sure() error {
	if c.doubt != nil {
		return c.doubt
	}
	if len(c.lost) > 0 {
		return finding.Refuse("%s: %s is named here in a way that cannot be changed safely: write it plainly first", where(c.lost[0]), c.id)
	}
	return nil
}

// all are the files of the manual that can hold a place.
func (c *collector) all() []*position.File {
	seen := map[*position.File]bool{}
	var out []*position.File
	add := func(f *position.File) {
		if f != nil && !seen[f] {
			seen[f] = true
			out = append(out, f)
		}
	}
	for _, at := range c.places {
		add(at.File)
	}
	for _, p := range slices.Concat(c.m.Procedures, c.m.Translated) {
		add(p.File)
	}
	for _, m := range c.m.Machines {
		add(m.At.File)
	}
	for i := range c.m.Words {
		add(c.m.Words[i].At.File)
	}
	return out
}

// newPath is a path as it is after the rename.
func (c *collector) newPath(name, id string) string {
	if !c.files[name] {
		return name
	}
	return path.Join(path.Dir(name), id+strings.TrimPrefix(path.Base(name), c.id))
}

// at notes that the id stands at a place, perhaps in quotes and behind a !.
func (c *collector) at(at position.Pos) {
	text := at.Text()
	start := len(text) - len(strings.TrimLeft(text, `"'!`))
	rest, is := strings.CutPrefix(text[start:], c.id)
	if !is || strings.Trim(rest, `"'`) != "" {
		c.lost = append(c.lost, at)
		return
	}
	c.place(at.Part(start, start+len(c.id)))
}

func (c *collector) place(at position.Pos) {
	if !slices.Contains(c.places, at) {
		c.places = append(c.places, at)
	}
}

// fileNames notes the files whose name is the id.
func (c *collector) fileNames() {
	for _, p := range slices.Concat(c.m.Procedures, c.m.Translated) {
		if c.kind == "procedure" && p.ID == c.id {
			c.files[p.File.Path] = true
		}
	}
	for _, m := range c.m.Machines {
		if c.kind == "machine" && m.ID == c.id {
			c.files[m.At.Path()] = true
		}
	}
	for _, w := range c.m.Words {
		if c.kind == "machine" && w.Register == "machines/"+c.id {
			c.files[w.At.Path()] = true
		}
	}
}

// definitions notes the keys under which the thing is written.
func (c *collector) definitions() {
	switch c.kind {
	case "procedure", "machine":
	case "option", "group":
		c.byNode()
	default:
		for _, n := range c.things(c.m) {
			if n.Base().ID == c.id {
				c.at(n.Base().At)
			}
		}
	}
}

// byNode notes options and groups, which are words to the model: their places
// are read from the machine's file once more.
func (c *collector) byNode() {
	f := c.machine.At.File
	root, _ := syntax.YAML(f, 0, len(f.Text))
	if c.kind == "group" {
		if parts := root.Get("parts"); parts != nil {
			for _, p := range parts.Pairs {
				c.texts(p.Value.Get("alike"))
			}
		}
		return
	}
	for _, o := range c.machine.Options {
		if o.Key == c.id {
			c.at(o.KeyAt)
		}
	}
	c.texts(root.Get("only-one-of"))
	if units := root.Get("units"); units != nil {
		for _, row := range units.Items {
			c.texts(row.Get("options"))
		}
	}
}

// texts notes the texts of a value that are the id.
func (c *collector) texts(n *syntax.Node) {
	if n == nil {
		return
	}
	if n.Kind == syntax.Scalar && n.Text == c.id {
		c.at(n.At)
	}
	for _, item := range n.Items {
		c.texts(item)
	}
}

// fields notes what the fields of all files refer to.
func (c *collector) fields() {
	m := c.m
	c.each(reflect.ValueOf(m.Shop), nil)
	for _, list := range []any{m.Tools, m.Hazards, m.Holds, m.Supplies, m.Roles, m.Plans} {
		c.each(reflect.ValueOf(list), nil)
	}
	for _, machine := range m.Machines {
		c.each(reflect.ValueOf(machine), machine)
	}
	for _, p := range slices.Concat(m.Procedures, m.Translated) {
		c.each(reflect.ValueOf(p), c.machineOf(p))
	}
}

// machineOf is the machine of a procedure; a translation has its original's.
func (c *collector) machineOf(p *model.Procedure) *model.Machine {
	if p.Language != "" {
		for _, original := range c.m.Procedures {
			if original.ID == p.ID {
				return original.For.To
			}
		}
	}
	return p.For.To
}

// reference is what every manual.Ref is.
type reference interface {
	Written() (id string, at position.Pos)
	Kind() any
}

// each goes through what the tags of the model say was written, which stands
// in a file of the machine or speaks of it.
func (c *collector) each(v reflect.Value, machine *model.Machine) {
	switch v.Kind() {
	case reflect.Pointer:
		if !v.IsNil() {
			c.each(v.Elem(), machine)
		}
	case reflect.Slice:
		for i := range v.Len() {
			c.each(v.Index(i), machine)
		}
	case reflect.Struct:
		c.value(v, machine)
	}
}

func (c *collector) value(v reflect.Value, machine *model.Machine) {
	switch x := v.Addr().Interface().(type) {
	case *model.HazardUse:
		c.reference(&x.Ref, machine)
		c.each(reflect.ValueOf(x.Over), machine)
	case reference:
		c.reference(x, machine)
	case *model.State:
		c.state(x, machine)
	case *model.Condition:
		if c.kind == "option" && machine == c.machine && x.Option == c.id {
			c.at(x.At)
		}
	default:
		for _, f := range decode.Fields(v.Type()) {
			c.each(v.FieldByIndex(f.Index), machine)
		}
	}
}

func (c *collector) reference(r reference, machine *model.Machine) {
	if id, at := r.Written(); id == c.id && kindOf(r.Kind()) == c.kind && (c.machine == nil || c.machine == machine) {
		c.at(at)
	}
}

// state notes a line of expects or leaves, which speaks of a thing of the
// machine, or else of a tool.
func (c *collector) state(s *model.State, machine *model.Machine) {
	if s.ID != c.id {
		return
	}
	_, tool := s.Thing.(*model.Tool)
	if s.Thing == nil {
		tool = machine.Find(s.ID) == nil
	}
	if tool && c.kind == "tool" || !tool && c.isThing() && machine == c.machine {
		c.at(s.At)
	}
}

// isThing says whether the target is one of the things of a machine that share
// their ids.
func (c *collector) isThing() bool { return ofMachine(c.kind) && c.kind != "option" }

// wordsOf notes the entries in other languages: of the registers, of a machine and its
// options, and of its things.
func (c *collector) wordsOf() {
	registers := map[string]string{"tool": "tools", "hazard": "hazards", "hold": "holds", "supply": "supplies", "role": "roles", "machine": "machines/" + c.id}
	register := registers[c.kind]
	if c.machine != nil {
		register = "machines/" + c.machine.ID
	}
	for _, w := range c.m.Words {
		switch {
		case w.Register != register:
		case c.kind == "option" && w.ID == c.machine.ID:
			for i, key := range w.Keys["options"] {
				if key == c.id {
					c.at(w.KeysAt["options"][i])
				}
			}
		case c.kind == "machine":
			if w.ID == c.id && w.At.Text() != "name" && w.At.Text() != "options" { // its own texts stand by its id, or as in its file
				c.at(w.At)
			}
		case w.ID == c.id:
			c.at(w.At)
		}
	}
}

// of notes the energy or fluid that hazards and holds are about. An entry names
// it by id alone, so which machine's is meant depends on who uses the entry.
func (c *collector) of() {
	if c.kind != "energy" && c.kind != "fluid" {
		return
	}
	for _, h := range c.m.Hazards {
		c.ofEntry(h, &h.Of)
	}
	for _, h := range c.m.Holds {
		c.ofEntry(h, &h.Of)
	}
}

func (c *collector) ofEntry(entry model.Named, ref *model.Ref[model.Entry]) {
	if ref.ID != c.id {
		return
	}
	mine, others := c.users(entry)
	switch {
	case mine && len(others) > 0:
		c.doubt = finding.Refuse("%s: %s is about %s, and is used on the %s as well, which has one of its own: give that machine an entry of its own first",
			where(ref.At), entry.Base().ID, c.id, others[0].Label())
	case mine, len(others) == 0 && !c.elsewhere():
		c.at(ref.At)
	}
}

// users says whether procedures of the machine use an entry, and which other
// machines that have the id do.
func (c *collector) users(entry model.Named) (mine bool, others []*model.Machine) {
	for _, p := range c.m.Procedures {
		machine := c.machineOf(p)
		if machine == nil || !uses(p, entry) {
			continue
		}
		if machine == c.machine {
			mine = true
		} else if has(machine, c.id) && !slices.Contains(others, machine) {
			others = append(others, machine)
		}
	}
	return mine, others
}

func uses(p *model.Procedure, entry model.Named) bool {
	for _, u := range p.Hazards {
		if model.Named(u.To) == entry {
			return true
		}
	}
	for _, r := range p.Holds {
		if model.Named(r.To) == entry {
			return true
		}
	}
	for _, l := range p.Links() {
		if l.To == entry {
			return true
		}
	}
	return false
}

// elsewhere says whether another machine has an energy or a fluid of the id.
func (c *collector) elsewhere() bool {
	return slices.ContainsFunc(c.m.Machines, func(m *model.Machine) bool { return m != c.machine && has(m, c.id) })
}

func has(m *model.Machine, id string) bool {
	switch m.Find(id).(type) {
	case *model.Energy, *model.Fluid:
		return true
	}
	return false
}
