package rename

import (
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/nearest"
	"baybinder/generator/model"
	"baybinder/generator/read/decode"
)

// Kinds are what can be renamed; those from part on are things of a machine.
var Kinds = strings.Fields("procedure machine tool hazard hold supply role part fastener energy point fluid setting option order group")

// target is what is renamed.
type target struct {
	kind    string
	id      string
	machine *model.Machine // whose thing it is; nil for what is no machine's
}

func (t target) named(id string) target {
	t.id = id
	return t
}

// in is the target in another binding of the manual.
func (t target) in(m *model.Manual) target {
	for _, machine := range m.Machines {
		if t.machine != nil && machine.ID == t.machine.ID {
			t.machine = machine
			return t
		}
	}
	return t
}

func ofMachine(kind string) bool {
	return slices.Index(Kinds, kind) >= slices.Index(Kinds, "part")
}

// find finds what is to be renamed.
func find(m *model.Manual, o Options) (target, error) {
	t := target{kind: o.Kind, id: o.Old}
	if !slices.Contains(Kinds, o.Kind) {
		return t, finding.Refuse("there is no kind %s: the kinds are %s", o.Kind, strings.Join(Kinds, ", "))
	}
	if ofMachine(o.Kind) {
		return findThing(m, o)
	}
	if o.Machine != "" {
		return t, finding.Refuse("a %s belongs to no machine: leave out --machine", o.Kind)
	}
	ids := t.ids(m)
	if slices.Contains(ids, o.Old) {
		return t, nil
	}
	return t, noSuch(o.Kind, o.Old, ids)
}

func findThing(m *model.Manual, o Options) (target, error) {
	var have []target
	var ids []string
	known := o.Machine == ""
	for _, machine := range m.Machines {
		if o.Machine != "" && machine.ID != o.Machine {
			continue
		}
		known = true
		t := target{o.Kind, o.Old, machine}
		ids = append(ids, t.ids(m)...)
		if slices.Contains(t.ids(m), o.Old) {
			have = append(have, t)
		}
	}
	switch {
	case !known:
		return target{}, noSuch("machine", o.Machine, target{kind: "machine"}.ids(m))
	case len(have) == 0:
		return target{}, noSuchThing(o.Kind, o.Old, ids)
	case len(have) > 1:
		var names []any
		for _, t := range have {
			names = append(names, "--machine "+t.machine.ID)
		}
		return target{}, finding.Refuse("several machines have the %s %s: write %s", o.Kind, o.Old, finding.List{Items: names, Last: " or "})
	}
	return have[0], nil
}

func noSuch(kind, id string, ids []string) error {
	if near := nearest.Of(id, ids); near != "" {
		return finding.Refuse("there is no %s %s: did you mean %s?", kind, id, near)
	}
	return finding.Refuse("there is no %s %s", kind, id)
}

func noSuchThing(kind, id string, ids []string) error {
	if near := nearest.Of(id, ids); near != "" {
		return finding.Refuse("no machine has the %s %s: did you mean %s?", kind, id, near)
	}
	return finding.Refuse("no machine has the %s %s", kind, id)
}

// free says why an id cannot be the new one.
func free(m *model.Manual, t target, id string) error {
	if why := decode.BadIDWhy(id); !why.IsZero() {
		return finding.Refuse("the id %q %s", id, why)
	}
	if slices.Contains(t.ids(m), id) {
		return finding.Refuse("there is a %s %s already", t.kind, id)
	}
	if t.machine != nil && t.kind != "option" && t.machine.Find(id) != nil {
		return finding.Refuse("the %s has %s already: ids are unique within a machine's file, whatever the section", t.machine.Label(), id)
	}
	for _, p := range m.Procedures {
		if t.kind == "procedure" && p.ID != t.id && slices.Contains(p.Was, id) {
			return finding.Refuse("%s was the id of %s once, and its records are kept under it: take another", id, p.ID)
		}
	}
	for _, r := range m.Roles {
		if t.kind == "role" && r.ID != t.id && slices.Contains(r.Was, id) {
			return finding.Refuse("%s was the id of %s once, and its rows are kept under it: take another", id, r.ID)
		}
	}
	if taken := collect(m, t.named(id)); len(taken.places) > 0 {
		return finding.Refuse("%s names %s already, which nothing is yet: change it back to %s first", where(taken.places[0]), id, t.id)
	}
	return nil
}

// ids are the ids of all things of the target's kind.
func (t target) ids(m *model.Manual) []string {
	var out []string
	if t.kind == "option" {
		for _, o := range t.machine.Options {
			out = append(out, o.Key)
		}
		return out
	}
	for _, n := range t.things(m) {
		out = append(out, n.Base().ID)
	}
	return out
}

// things are all things of the target's kind, but for options, which have no
// entry.
func (t target) things(m *model.Manual) []model.Named {
	switch t.kind {
	case "procedure":
		return model.AsNamed(m.Procedures)
	case "machine":
		return model.AsNamed(m.Machines)
	case "tool":
		return model.AsNamed(m.Tools)
	case "hazard":
		return model.AsNamed(m.Hazards)
	case "hold":
		return model.AsNamed(m.Holds)
	case "supply":
		return model.AsNamed(m.Supplies)
	case "role":
		return model.AsNamed(m.Roles)
	case "part":
		return model.AsNamed(t.machine.Parts)
	case "fastener":
		return model.AsNamed(t.machine.Fasteners)
	case "energy":
		return model.AsNamed(t.machine.Energies)
	case "point":
		return model.AsNamed(t.machine.Points)
	case "fluid":
		return model.AsNamed(t.machine.Fluids)
	case "setting":
		return model.AsNamed(t.machine.Settings)
	case "group":
		return model.AsNamed(t.machine.Groups)
	case "order":
		var out []model.Named
		for i := range t.machine.Orders {
			out = append(out, &t.machine.Orders[i])
		}
		return out
	}
	return nil
}

// kindOf is the kind of what a reference names, by a nil pointer to its type.
func kindOf(of any) string {
	switch of.(type) {
	case *model.Procedure:
		return "procedure"
	case *model.Machine:
		return "machine"
	case *model.Tool:
		return "tool"
	case *model.Hazard:
		return "hazard"
	case *model.Hold:
		return "hold"
	case *model.Supply:
		return "supply"
	case *model.Role:
		return "role"
	case *model.Part:
		return "part"
	case *model.Fastener:
		return "fastener"
	case *model.Energy:
		return "energy"
	case *model.Point:
		return "point"
	case *model.Fluid:
		return "fluid"
	}
	return "" // of:, which collect looks at by itself; plans and people, whose ids stay
}
