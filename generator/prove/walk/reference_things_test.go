package walk_test

import (
	"strings"

	"baybinder/generator/model"
)

func key(kind, id string) string       { return kind + ":" + id }
func fasteningKey(f, p string) string  { return "fastening:" + f + "@" + p }
func (x *run) get(k string) string     { return orNormal(x.state[k], k) }
func (x *run) startOf(k string) string { return orNormal(x.start[k], k) }

func orNormal(s, k string) string {
	if s != "" {
		return s
	}
	return normalOf(k)
}

func normalOf(k string) string {
	kind, _, _ := strings.Cut(k, ":")
	switch kind {
	case "energy", "point":
		return "live"
	case "part":
		return "on"
	case "fastening", "fastener":
		return "tight"
	case "fluid":
		return "full"
	case "spill":
		return "dry"
	case "tool":
		return "cleared"
	case "setting":
		return "reset"
	case "group":
		return "unmarked"
	case "gap":
		return "closed"
	}
	return ""
}

func (x *run) set(k, to string) {
	if x.get(k) == to {
		return
	}
	was := x.get(k)
	x.state[k] = to
	delete(x.below, k)
	x.waitsMoved(k, was, to)
}

func (x *run) has(c model.Condition) bool {
	return c.Option == "" || x.w.options[c.Option] != c.Not
}

// hasEnergy says that the unit has an energy and, where it has points at all,
// one of them: that it has none is told at the machine's file, and nothing else
// is said of it.
func (x *run) hasEnergy(e *model.Energy) bool {
	return x.has(e.OnlyWith) && (len(e.Points) == 0 || len(x.pointsOf(e)) > 0)
}

// keptOut is how a kept plug stands that is out: locked where the outermost
// procedure is one person's.
func (x *run) keptOut() string {
	if x.top.People <= 1 {
		return "locked"
	}
	return "isolated"
}

// pointsOf are the points of an energy that the unit has.
func (x *run) pointsOf(e *model.Energy) []*model.Point {
	var out []*model.Point
	for _, p := range e.Points {
		if x.has(p.To.OnlyWith) {
			out = append(out, p.To)
		}
	}
	return out
}

// hasPoint says that the unit has a point. One that leaves an energy without any
// point on some unit is told of at the machine's file, and counts where it cuts
// something.
func (x *run) hasPoint(p *model.Point) bool {
	if !x.has(p.OnlyWith) || !x.leavesAGap(p) {
		return x.has(p.OnlyWith)
	}
	for _, e := range p.Cuts {
		if x.has(e.OnlyWith) {
			return true
		}
	}
	return false
}

// leavesAGap says that an energy which a point cuts is, on some unit, without any
// of its points.
func (x *run) leavesAGap(p *model.Point) bool {
	for _, e := range p.Cuts {
		for _, unit := range unitsOf(x.machine) {
			has := func(c model.Condition) bool { return c.Option == "" || unit[c.Option] != c.Not }
			bare := has(e.OnlyWith)
			for _, q := range e.Points {
				bare = bare && !has(q.To.OnlyWith)
			}
			if bare {
				return true
			}
		}
	}
	return false
}

// unitsOf are the options that a unit of a machine may have.
func unitsOf(m *model.Machine) []map[string]bool {
	var out []map[string]bool
	for _, u := range m.Units {
		has := map[string]bool{}
		for _, o := range u.Options {
			has[o] = true
		}
		out = append(out, has)
	}
	if len(m.Units) > 0 {
		return out
	}
	for bits := range 1 << len(m.Options) {
		has := map[string]bool{}
		for i, o := range m.Options {
			has[o.Key] = bits>>i&1 == 1
		}
		if oneOfEach(m, has) {
			out = append(out, has)
		}
	}
	return out
}

func oneOfEach(m *model.Machine, has map[string]bool) bool {
	for _, group := range m.OnlyOneOf {
		n := 0
		for _, o := range group {
			if has[o] {
				n++
			}
		}
		if n > 1 {
			return false
		}
	}
	return true
}

// hasAt says that the unit has a part and, at it, a fastener.
func (x *run) hasAt(f *model.Fastener, p *model.Part) bool {
	return x.has(p.OnlyWith) && x.has(f.OnlyWith)
}

// wordOf is the word of a line of expects or leaves: what takes no lock cannot
// be more than isolated.
func (x *run) wordOf(s model.State) string {
	if p, is := s.Thing.(*model.Point); is && p.Kept && s.Word != "live" {
		return x.keptOut()
	}
	if s.Word == "locked" {
		switch n := s.Thing.(type) {
		case *model.Energy:
			if !x.lockable(n) {
				return "isolated"
			}
		case *model.Point:
			if !n.Lock {
				return "isolated"
			}
		}
	}
	return s.Word
}
