package offers

import (
	"fmt"
	"strings"

	"baybinder/generator/model"
)

// Facts are what the machine file and the registers say of an entry, a line
// each; what is not said is left out.
func Facts(n model.Named) []string {
	var out facts
	switch n := n.(type) {
	case *model.Tool:
		out.say("kind", n.Kind)
		out.say("fits", strings.Join(n.Fits, ", "))
		out.say("range", written(n.Range.IsZero(), n.Range.String()))
		out.say("rated", n.Rated)
		out.say("kept", n.Kept)
	case *model.Supply:
		out.say("unit", n.Unit)
		out.say("kept", n.Kept)
		out.say("GHS", strings.Join(n.GHS, ", "))
	case *model.Hazard:
		out.say("", n.Nature)
		out.say("", n.Consequence)
		out.say("", strings.Join(n.Avoid, " "))
		out.say("wear", idsOf(n.Wear))
	case *model.Hold:
		out.hold(n)
	case *model.Energy:
		out.say("kind", n.Kind)
		out.say("voltage", written(n.Voltage.IsZero(), n.Voltage.String()))
		out.say("pressure", written(n.Pressures.IsZero(), n.Pressures.String()))
		out.say("cut at", idsOf(n.Points))
		out.say("", written(!n.Stored.Yes, "some stays behind after it is cut"))
	case *model.Point:
		out.say("where", n.Where)
		out.say("", written(!n.Lock, "it takes a lock"))
	case *model.Part:
		out.part(n)
	case *model.Fastener:
		out.say("size", sizeWords(n))
		out.say("torque", torqueWords(n))
		out.say("start", n.Start)
		out.say("renew with", n.RenewWith.ID)
	case *model.Fluid:
		out.say("supply", n.Supply.ID)
		out.say("capacity", written(n.Capacity.IsZero(), n.Capacity.String()))
	case *model.Setting:
		out.say("value", n.Value)
	case *model.Procedure:
		out.say("", n.Summary)
		out.say("status", n.Status)
	}
	return out
}

type facts []string

func (f *facts) say(name, value string) {
	switch value = strings.TrimSpace(value); {
	case value == "":
	case name == "":
		*f = append(*f, value)
	default:
		*f = append(*f, name+": "+value)
	}
}

func (f *facts) hold(h *model.Hold) {
	f.say("kind", h.Kind)
	f.say("for", written(h.For.IsZero(), h.For.String()))
	f.say("what", h.What)
	f.say("limit", written(h.Limit.IsZero(), h.Limit.String()))
	f.say("with", h.With.ID)
	f.say("why", h.Why)
	f.say("if not", h.IfNot)
}

func (f *facts) part(p *model.Part) {
	f.say("under", idsOf(p.Under))
	var held []string
	for _, h := range p.HeldBy {
		held = append(held, strings.TrimSpace(fmt.Sprintf("%s %s", h.Amount, h.ID)))
	}
	f.say("held by", strings.Join(held, ", "))
	f.say("mass", written(p.Mass.IsZero(), p.Mass.String()))
	f.say("proved dead first", idsOf(p.ProveDead))
	f.say("guards", idsOf(p.Guards))
	f.say("carries", p.Carries.ID)
}

func written(empty bool, text string) string {
	if empty {
		return ""
	}
	return text
}

func idsOf[T any](refs []model.Ref[T]) string {
	var out []string
	for _, r := range refs {
		out = append(out, r.ID)
	}
	return strings.Join(out, ", ")
}
