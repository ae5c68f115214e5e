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
	x.waitsMoved(k, was, to)
}

func (x *run) has(c model.Condition) bool {
	return c.Option == "" || x.w.options[c.Option] != c.Not
}

// wordOf is the word of a line of expects or leaves: what takes no lock cannot
// be more than isolated.
func wordOf(s model.State) string {
	if s.Word == "locked" {
		switch n := s.Thing.(type) {
		case *model.Energy:
			if !lockable(n) {
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
