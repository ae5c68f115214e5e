package rename

import (
	"path"
	"slices"
	"strings"

	"baybinder/generator/base/position"
	"baybinder/generator/model"
	"baybinder/generator/read/syntax"
)

// links notes the addresses of a procedure's links that name the target.
func (c *collector) links(p *model.Procedure) {
	machine := c.machineOf(p)
	for _, l := range p.Links() {
		for _, from := range c.inAddress(l, machine) {
			c.inLink(l, from)
		}
	}
}

// inAddress is where in a link's address the id stands: byte offsets.
func (c *collector) inAddress(l *model.Link, machine *model.Machine) []int {
	if l.Kind.Target == model.ToAddress {
		if from, is := c.inFileName(l); is {
			return []int{from}
		}
		return nil
	}
	start := strings.Index(l.Address, ":") + 1
	base, rest := l.Address[start:], ""
	if i := strings.IndexAny(base, l.Kind.Frag); i >= 0 {
		base, rest = base[:i], base[i+1:]
	}
	var out []int
	if c.namedBy(l.Kind.Target, machine) {
		id := base
		if c.kind == "option" {
			id = strings.TrimPrefix(base, "!")
		}
		if id == c.id {
			out = append(out, start+len(base)-len(id))
		}
	}
	if c.isThing() && machine == c.machine && (l.Kind.Target == model.ToPhase || l.Kind.Target == model.ToFastener) {
		at := start + len(base) + 1
		for _, id := range strings.Split(rest, ",") {
			if id == c.id {
				out = append(out, at)
			}
			at += len(id) + 1
		}
	}
	return out
}

// namedBy says whether a link of a kind names things of the target's kind.
func (c *collector) namedBy(t model.Target, machine *model.Machine) bool {
	switch t {
	case model.ToTool:
		return c.kind == "tool"
	case model.ToSupply:
		return c.kind == "supply"
	case model.ToRole:
		return c.kind == "role"
	case model.ToHazard:
		return c.kind == "hazard"
	case model.ToHold, model.ToOutcome, model.ToAnswer, model.ToNote:
		return c.kind == "hold"
	case model.ToMachine:
		return c.kind == "machine"
	case model.ToProcedure:
		return c.kind == "procedure"
	case model.ToOption:
		return c.kind == "option" && machine == c.machine
	case model.ToEnergy, model.ToPoint, model.ToEnergyOrPoint, model.ToPart, model.ToFastener,
		model.ToGroup, model.ToFluid, model.ToSetting, model.ToOrder:
		return c.isThing() && machine == c.machine
	case model.NoTarget, model.ToPost, model.ToPhase, model.ToRefit, model.ToPause, model.ToName, model.ToPeople, model.ToTime, model.ToWithin, model.ToAddress:
	}
	return false
}

// inFileName is where the id stands in the address of a file whose name it is.
func (c *collector) inFileName(l *model.Link) (int, bool) {
	if !c.files[l.ID] {
		return 0, false
	}
	address, _, _ := strings.Cut(l.Address, "#")
	address, _, _ = strings.Cut(address, "?")
	from := len(address) - len(path.Base(address))
	return from, strings.HasPrefix(address[from:], c.id+".")
}

// inLink notes the id at an offset of a link's address, wherever that is
// written.
func (c *collector) inLink(l *model.Link, from int) {
	starts := addressStarts(l)
	if len(starts) == 0 {
		c.lost = append(c.lost, l.At)
	}
	for _, start := range starts {
		c.place(l.At.File.At(start+from, start+from+len(c.id)))
	}
}

// addressStarts are the offsets in the file at which a link's address begins:
// in the link, or where its name is defined.
func addressStarts(l *model.Link) []int {
	if l.From > 0 && strings.HasPrefix(l.At.File.Text[l.From:], l.Address) { // else it is written with escapes
		return []int{l.From}
	}
	return definedAt(l.At.File, l.Address)
}

func definedAt(f *position.File, address string) []int {
	var out []int
	for _, d := range syntax.Definitions(f) {
		if d.Address == address && d.At.Text() == address && !slices.Contains(out, d.At.Start) {
			out = append(out, d.At.Start)
		}
	}
	return out
}
