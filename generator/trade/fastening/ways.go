package fastening

import (
	"fmt"

	"baybinder/generator/base/quantity"
	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/trade/working"
)

// Way is one wrench that a torque can be set with.
type Way struct {
	Wrench  *model.Tool
	Adapter *model.Tool       // nil where the wrench turns the fastener straight
	Set     quantity.Quantity // what the wrench is set to: the torque itself without an adapter
	torque  quantity.Quantity // at the fastener
	known   bool              // Set is worked out
}

// Explain is the setting behind an adapter with its working; none where the
// wrench's length is not known, or no adapter is between.
func (w Way) Explain(say *words.Adapter) working.Working {
	if !w.known {
		return working.Working{}
	}
	length, adds := w.Wrench.Length, w.Adapter.Adds
	return working.Working{
		Formula: "S = T·L/(L + A)",
		Put:     fmt.Sprintf("%s · %s/(%s + %s)", w.torque, length, length, adds),
		Result:  w.Set.String(),
		Terms: []working.Term{
			{Sign: "T", Words: say.T, Value: w.torque.String()},
			{Sign: "L", Words: fmt.Sprintf(say.L, w.Wrench.Label()), Value: length.String(), Names: true},
			{Sign: "A", Words: fmt.Sprintf(say.A, w.Adapter.Label()), Value: adds.String(), Names: true},
		},
		Assumes: []string{say.InLine, say.Grip},
		Source:  say.Source,
	}
}

// Torques are the torques that a fastener is tightened to: every amount that its
// torque states, or each of its stages that is a torque.
func Torques(f *model.Fastener) []quantity.Quantity {
	if len(f.Stages) == 0 && !f.Torque.IsZero() {
		return f.Torque.Numbers()
	}
	var out []quantity.Quantity
	for _, q := range f.Stages {
		if q.Unit.Dimension() == quantity.Torque {
			out = append(out, q)
		}
	}
	return out
}

// Ways are the ways to set a torque of a fastener: each wrench that covers it as
// set, from 20 % of its maximum up, with each of the drivers between. A wrench
// that says no range may be set to anything. Drivers that are known not to fit
// are none; one that may fit takes nothing from the wrench on the fastener.
func Ways(f *model.Fastener, torque quantity.Quantity, wrenches, drivers []*model.Tool) []Way {
	straight, adapters := between(f, drivers)
	var out []Way
	for _, w := range wrenches {
		if straight && usedFor(w, torque.Base()) {
			out = append(out, Way{Wrench: w, Set: torque})
		}
		for _, a := range adapters {
			if way, ok := behind(w, a, torque); ok {
				out = append(out, way)
			}
		}
	}
	return out
}

// between says what may stand between wrench and fastener: nothing that moves
// the setting, or one of the adapters.
func between(f *model.Fastener, drivers []*model.Tool) (straight bool, adapters []*model.Tool) {
	heads, fitting := Heads(f.AcrossFlats, f.Drive), 0
	for _, d := range drivers {
		sizes := Sizes(d.Fits)
		fits := FitsAny(sizes, heads)
		if fits {
			fitting++
			straight = straight || d.Adds.IsZero()
		}
		if !d.Adds.IsZero() && (fits || len(sizes) == 0 || len(heads) == 0) {
			adapters = append(adapters, d)
		}
	}
	return straight || fitting == 0, adapters
}

// behind is the way through an adapter. The length of a wrench that nobody wrote
// leaves nothing to work out: it is taken as it is, without a working.
func behind(wrench, adapter *model.Tool, torque quantity.Quantity) (Way, bool) {
	way := Way{Wrench: wrench, Adapter: adapter, Set: torque, torque: torque}
	if wrench.Length.Base() <= 0 {
		return way, usedFor(wrench, torque.Base())
	}
	set, err := Setting(torque, wrench.Length, adapter.Adds)
	if err != nil || !usedFor(wrench, SettingFor(torque.Base(), wrench.Length.Base(), adapter.Adds.Base(), 0)) {
		return way, false
	}
	way.Set, way.known = set, true
	return way, true
}

// usedFor says whether a wrench is used at a setting, N·m.
func usedFor(wrench *model.Tool, setting float64) bool {
	w, ok := WrenchOf(wrench.Range)
	return !ok || wrench.Lost("range") || w.Covers(setting)
}
