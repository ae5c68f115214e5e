package walk_test

import (
	"fmt"
	"strings"

	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
)

// codeAtEnd is the code for a thing that is left so.
func codeAtEnd(k, state string) string {
	kind, _, _ := strings.Cut(k, ":")
	switch kind {
	case "energy", "point":
		return "left-isolated"
	case "part":
		return "left-off"
	case "fastening", "fastener":
		return "left-loose"
	case "fluid":
		if state == "unbled" {
			return "not-bled"
		}
		return "left-low"
	case "tool":
		return "left-in-place"
	case "setting":
		return "left-altered"
	}
	return ""
}

// wrongAtEnd says that a thing which leaves does not name is neither whole nor
// as it was at the start.
func (x *run) wrongAtEnd(k string) bool {
	kind, id, _ := strings.Cut(k, ":")
	s := x.get(k)
	if kind == "spill" || kind == "gap" || kind == "asked" || kind == "group" || !x.there(k) {
		return false
	}
	if sameWord(k, normalOf(k), s) {
		return false
	}
	switch kind {
	case "fastening":
		_, part, _ := strings.Cut(id, "@")
		if x.get(key("part", part)) != "on" {
			return false
		}
		return x.startOf(k) != "loose" || x.startOf(key("part", part)) != "on"
	case "energy":
		if e := x.machine.Find(id).(*model.Energy); e.Kind == "heat" && len(e.Points) == 0 {
			return false // it warms up again by itself
		}
		for _, l := range x.top.Leaves {
			if pt, is := l.Thing.(*model.Point); is && l.Word != "live" && x.has(pt.OnlyWith) && cuts(pt, x.machine.Find(id).(*model.Energy)) {
				return false
			}
		}
		if e := x.machine.Find(id).(*model.Energy); len(e.Points) == 0 && x.heldByWhatIsLeft(e) {
			return false
		}
	case "point":
		for _, e := range x.machine.Energies {
			st := x.get(key("energy", e.ID))
			if x.hasEnergy(e) && cuts(x.machine.Find(id).(*model.Point), e) && st != "live" && st != "live+" {
				return false
			}
		}
	}
	return !sameWord(k, plain(x.startOf(k)), s)
}

// heldByWhatIsLeft says that a tool which holds a load is left in place, and told
// of.
func (x *run) heldByWhatIsLeft(e *model.Energy) bool {
	for _, b := range e.BlockedBy {
		if b.To == nil {
			continue
		}
		k := key("tool", b.To.ID)
		if _, named := x.leavesWord(x.top, k); !named && x.wrongAtEnd(k) {
			return true
		}
	}
	return false
}

func plain(s string) string {
	switch s {
	case "live+":
		return "live"
	case "isolated+":
		return "isolated"
	case "capped":
		return "off"
	case "drained":
		return "low"
	}
	return s
}

func (x *run) atEnd(p *model.Procedure) {
	for _, s := range p.Leaves {
		x.judgeLeaves(s)
	}
	for k := range x.state {
		if _, named := x.leavesWord(p, k); named || !x.wrongAtEnd(k) {
			continue
		}
		l := x.began[k]
		if fast, part, is := strings.Cut(k, "@"); is && l == nil && strings.HasPrefix(fast, "fastening:") {
			l = x.movedBy[key("part", part)] // loose from the start: its part went on over it
		}
		if l != nil && !x.owed[owing{l, k}] && !x.below[k] {
			x.out[at(l.At, codeAtEnd(k, x.get(k)))] = true
		}
	}
	for s, amount := range x.needs {
		x.judgeSupply(p, s, amount)
	}
}

func (x *run) judgeLeaves(s model.State) {
	if f, is := s.Thing.(*model.Fastener); is && len(f.Holds) > 0 {
		if x.anyLoose(f) != (s.Word == "loose") {
			x.out[at(s.At, "state-mismatch")] = true
		}
		return
	}
	for _, k := range keysOf(s) {
		if x.there(k) && !sameWord(k, x.wordOf(s), x.get(k)) {
			x.out[at(s.At, "state-mismatch")] = true
		}
	}
}

// judgeSupply compares the amount used in this world with what is listed. Where
// nothing is listed the finding stands at line 0: which of the links is not
// compared.
func (x *run) judgeSupply(p *model.Procedure, s *model.Supply, amount float64) {
	have := 0.0
	where := refFinding{p.File.Path, 0, "not-supplied"}
	for _, u := range p.Supplies {
		if u.To != s {
			continue
		}
		where = at(u.At, "not-supplied")
		if s.Unit == "each" {
			n := 1.0
			if u.Amount != "" {
				fmt.Sscanf(u.Amount, "%g", &n)
			}
			have += n
			continue
		}
		q, err := quantity.Parse(u.Amount, quantity.Volume)
		if err != nil {
			return
		}
		have += q.Base()
	}
	if have < amount*(1-1e-9) {
		x.out[where] = true
	}
}
