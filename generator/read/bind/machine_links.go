package bind

import (
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/nearest"
	"baybinder/generator/model"
)

// hasMachine says whether machine links have a machine here. That they have
// none is told once a procedure.
func (l *linker) hasMachine(link *model.Link) bool {
	if l.machine() != nil {
		return true
	}
	link.Bad = true
	if l.machineUnread() || l.noMachine || l.draft.Language != "" {
		return false
	}
	l.noMachine = true
	l.add(UnknownReference.At(link.At, "%s: names a thing of a machine, and this procedure is for none", link.Kind.Name).
		WithMend("write for: MACHINE in the front matter; a procedure for any machine says it in words"))
	return false
}

// thing is the machine's thing of an id; it marks the link where there is none.
func (l *linker) thing(link *model.Link, id string) model.Named {
	if to := l.machine().Find(id); to != nil {
		return to
	}
	link.Bad = true
	if l.machineUnread() || l.machine().Lost(sectionsOf[link.Kind.Target]...) || link.Kind.Target == model.ToGroup && alikeLost(l.machine()) {
		return nil
	}
	f := UnknownReference.At(link.At, "the %s has no %s %s", l.machine().Label(), finding.Say(wanted(link.Kind.Target)), id)
	if near := nearest.Of(id, l.candidates(link.Kind.Target)); near != "" {
		f = f.WithMend("did you mean %s?", near).WithFix(id, near)
		link.Besides().Near = l.machine().Find(near)
	} else {
		f = f.WithMend("write it in machines/%s.yaml, or name a thing that is there", l.machine().ID)
	}
	l.add(f)
	return nil
}

// sectionsOf are the sections of a machine's file that hold what a link can name.
var sectionsOf = map[model.Target][]string{
	model.ToEnergy: {"energies"}, model.ToPoint: {"points"}, model.ToEnergyOrPoint: {"energies", "points"},
	model.ToPart: {"parts"}, model.ToPhase: {"parts"}, model.ToGroup: {"parts"}, model.ToFastener: {"fasteners"},
	model.ToFluid: {"fluids"}, model.ToSetting: {"settings"}, model.ToOrder: {"orders"},
}

// alikeLost says that a part does not say readably what it is like.
func alikeLost(m *model.Machine) bool {
	return slices.ContainsFunc(m.Parts, func(p *model.Part) bool { return p.Lost("alike") })
}

// candidates are the ids that a link of the target could have meant.
func (l *linker) candidates(t model.Target) []string {
	var ids []string
	for _, n := range things(l.machine()) {
		if fitsTarget(n, t) {
			ids = append(ids, n.Base().ID)
		}
	}
	for _, g := range l.machine().Groups {
		if t == model.ToGroup {
			ids = append(ids, g.ID)
		}
	}
	return ids
}

// toMachineThing binds a link to a part, an energy and so on.
func (l *linker) toMachineThing(link *model.Link) {
	split(link, link.Kind.Frag)
	if !l.hasMachine(link) {
		return
	}
	to := l.thing(link, link.ID)
	if to == nil {
		return
	}
	if !fitsTarget(to, link.Kind.Target) {
		l.bad(link, UnknownReference.At(link.At, "%s: needs %s; %s is %s", link.Kind.Name, finding.Say(article(wanted(link.Kind.Target))), link.ID, finding.Say(article(isA(to)))).
			WithMend("%s", l.otherKinds(to)))
		return
	}
	link.To = to
	if link.Sign == '#' {
		link.Besides().Part, _ = l.thing(link, link.Frag()).(*model.Part)
		if link.Part() == nil {
			link.Bad = true
		}
	}
}

// otherKinds names the acts that the thing can have.
func (l *linker) otherKinds(to model.Named) finding.Words {
	var names []string
	for _, k := range model.Kinds {
		if k.Act != model.NoAct && k.Machine() && fitsTarget(to, k.Target) {
			names = append(names, k.Name+":")
		}
	}
	if len(names) == 0 {
		return finding.Say("name another thing")
	}
	return finding.Say("what can be written of it: %s", strings.Join(names, ", "))
}

func fitsTarget(n model.Named, t model.Target) bool {
	switch n.(type) {
	case *model.Energy:
		return t == model.ToEnergy || t == model.ToEnergyOrPoint
	case *model.Point:
		return t == model.ToPoint || t == model.ToEnergyOrPoint
	case *model.Part:
		return t == model.ToPart || t == model.ToPhase
	case *model.Fastener:
		return t == model.ToFastener
	case *model.Group:
		return t == model.ToGroup
	case *model.Fluid:
		return t == model.ToFluid
	case *model.Setting:
		return t == model.ToSetting
	case *model.Order:
		return t == model.ToOrder
	}
	return false
}

// wanted is the word for what a target names.
func wanted(t model.Target) string {
	switch t {
	case model.ToEnergy:
		return "energy"
	case model.ToPoint:
		return "point"
	case model.ToEnergyOrPoint:
		return "energy or point"
	case model.ToPart, model.ToPhase:
		return "part"
	case model.ToFastener:
		return "fastener"
	case model.ToGroup:
		return "group of look-alikes"
	case model.ToFluid:
		return "fluid"
	case model.ToSetting:
		return "setting"
	case model.ToOrder:
		return "order"
	default: // the others are no concern of this
	}
	return "thing"
}

func isA(n model.Named) string {
	for _, t := range []model.Target{model.ToEnergy, model.ToPoint, model.ToPart, model.ToFastener, model.ToGroup, model.ToFluid, model.ToSetting, model.ToOrder} {
		if fitsTarget(n, t) {
			return wanted(t)
		}
	}
	return "thing"
}

func article(word string) string {
	if strings.ContainsRune("aeiou", rune(word[0])) {
		return "an " + word
	}
	return "a " + word
}
