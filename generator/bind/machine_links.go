package bind

import (
	"strings"

	"baybinder/generator/manual"
	"baybinder/generator/nearest"
)

// hasMachine says whether machine links have a machine here. That they have
// none is told once a procedure.
func (l *linker) hasMachine(link *manual.Link) bool {
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
func (l *linker) thing(link *manual.Link, id string) manual.Named {
	if to := l.machine().Find(id); to != nil {
		return to
	}
	link.Bad = true
	if l.machineUnread() {
		return nil
	}
	f := UnknownReference.At(link.At, "the %s has no %s %s", l.machine().Label(), wanted(link.Kind.Target), id)
	if near := nearest.Of(id, l.candidates(link.Kind.Target)); near != "" {
		f = f.WithMend("did you mean %s?", near)
	} else {
		f = f.WithMend("write it in machines/%s.yaml, or name a thing that is there", l.machine().ID)
	}
	l.add(f)
	return nil
}

// candidates are the ids that a link of the target could have meant.
func (l *linker) candidates(t manual.Target) []string {
	var ids []string
	for _, n := range things(l.machine()) {
		if fitsTarget(n, t) {
			ids = append(ids, n.Base().ID)
		}
	}
	for _, g := range l.machine().Groups {
		if t == manual.ToGroup {
			ids = append(ids, g.ID)
		}
	}
	return ids
}

// toMachineThing binds a link to a part, an energy and so on.
func (l *linker) toMachineThing(link *manual.Link) {
	split(link, link.Kind.Frag)
	if !l.hasMachine(link) {
		return
	}
	to := l.thing(link, link.ID)
	if to == nil {
		return
	}
	if !fitsTarget(to, link.Kind.Target) {
		l.bad(link, UnknownReference.At(link.At, "%s: needs %s; %s is %s", link.Kind.Name, article(wanted(link.Kind.Target)), link.ID, article(isA(to))).
			WithMend("%s", l.otherKinds(to)))
		return
	}
	link.To = to
	if link.Sign == '#' {
		link.Part, _ = l.thing(link, link.Frag).(*manual.Part)
		if link.Part == nil {
			link.Bad = true
		}
	}
}

// otherKinds names the acts that the thing can have.
func (l *linker) otherKinds(to manual.Named) string {
	var names []string
	for _, k := range manual.Kinds {
		if k.Act != manual.NoAct && k.Machine() && fitsTarget(to, k.Target) {
			names = append(names, k.Name+":")
		}
	}
	if len(names) == 0 {
		return "name another thing"
	}
	return "what can be written of it: " + strings.Join(names, ", ")
}

func fitsTarget(n manual.Named, t manual.Target) bool {
	switch n.(type) {
	case *manual.Energy:
		return t == manual.ToEnergy || t == manual.ToEnergyOrPoint
	case *manual.Point:
		return t == manual.ToPoint || t == manual.ToEnergyOrPoint
	case *manual.Part:
		return t == manual.ToPart || t == manual.ToPhase
	case *manual.Fastener:
		return t == manual.ToFastener
	case *manual.Group:
		return t == manual.ToGroup
	case *manual.Fluid:
		return t == manual.ToFluid
	case *manual.Setting:
		return t == manual.ToSetting
	case *manual.Order:
		return t == manual.ToOrder
	}
	return false
}

// wanted is the word for what a target names.
func wanted(t manual.Target) string {
	switch t {
	case manual.ToEnergy:
		return "energy"
	case manual.ToPoint:
		return "point"
	case manual.ToEnergyOrPoint:
		return "energy or point"
	case manual.ToPart, manual.ToPhase:
		return "part"
	case manual.ToFastener:
		return "fastener"
	case manual.ToGroup:
		return "group of look-alikes"
	case manual.ToFluid:
		return "fluid"
	case manual.ToSetting:
		return "setting"
	case manual.ToOrder:
		return "order"
	}
	return "thing"
}

func isA(n manual.Named) string {
	for _, t := range []manual.Target{manual.ToEnergy, manual.ToPoint, manual.ToPart, manual.ToFastener, manual.ToGroup, manual.ToFluid, manual.ToSetting, manual.ToOrder} {
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
