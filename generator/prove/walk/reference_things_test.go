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
