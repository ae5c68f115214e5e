package page

import (
	"baybinder/generator/manual"
	"baybinder/generator/trade/electrical"
	"baybinder/generator/trade/fastening"
	"baybinder/generator/trade/working"
)

// leastWait is the computed minimum of a wait for an electric energy that
// stores a charge, on the procedure's machine.
func (s *Site) leastWait(m *manual.Machine, h *manual.Hold) (least string, w working.Working) {
	e, ok := m.Find(h.Of.ID).(*manual.Energy)
	if h.Kind != "wait" || !ok || e.Kind != "electric" {
		return "", working.Working{}
	}
	store := electrical.Store{Voltage: e.Voltage, Capacitance: e.Stored.Capacitance, Resistance: e.Stored.Resistance}
	wait, ok := store.WaitFor(s.Manual.Shop.Limits.SafeVoltageDC)
	if !ok {
		return "", working.Working{}
	}
	return wait.Least.String(), wait.Working
}

// Setting is what a wrench is set to when an adapter makes it longer.
type Setting struct {
	Text    string // "17.5 N·m for 22 N·m"
	Working working.Working
}

// settings are the wrench settings of a step that tightens through an adapter:
// one for each torque, where the step names one wrench with a length and one
// tool that adds to it.
func settings(st *manual.Step) []Setting {
	wrench, adapter := leverOf(st)
	if wrench == nil || adapter == nil {
		return nil
	}
	var out []Setting
	for _, l := range st.Links {
		f, ok := l.To.(*manual.Fastener)
		if !ok || l.Kind.Act != manual.Tighten || f.Torque.IsZero() {
			continue
		}
		torque := f.Torque.Numbers()[0]
		if set, w, err := fastening.Setting(torque, wrench.Length, adapter.Adds); err == nil {
			out = append(out, Setting{Text: set.String() + " (" + torque.String() + ")", Working: w})
		}
	}
	return out
}

// leverOf is the wrench and the adapter that a step names.
func leverOf(st *manual.Step) (wrench, adapter *manual.Tool) {
	for _, l := range st.Links {
		t, ok := l.To.(*manual.Tool)
		switch {
		case !ok:
		case t.Kind == "torque-wrench" && !t.Length.IsZero():
			wrench = t
		case !t.Adds.IsZero():
			adapter = t
		}
	}
	return wrench, adapter
}
