package numbers

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/base/quantity"
	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/trade/fastening"
	"baybinder/generator/trade/working"
)

// TorqueOverProof is told at the fastener in the machine's file.
var TorqueOverProof = finding.Rule{
	Code:  "torque-over-proof",
	Title: "A torque that stretches the bolt for good",
	Why:   "Above its proof load a bolt stays longer than it was: it lets go in service, or tears when it is tightened the next time.",
	Mend:  "Look the torque up again, and the thread, the class and the condition: oil or zinc makes more pull of the same torque.",
}

// torqueOverProof holds the pull of a fastener's highest torque against the
// proof load of its thread and class. Angles are not computed.
func torqueOverProof(f *model.Fastener) []finding.Finding {
	if f.Lost("thread", "class", "condition", "torque", "stages") {
		return nil
	}
	thread, err := fastening.ParseThread(f.Thread)
	if err != nil {
		return nil
	}
	class, err := fastening.ParseClass(f.Class)
	if err != nil {
		return nil
	}
	friction, ok := fastening.FrictionOf(f.Condition)
	if !ok {
		return nil
	}
	load, ok := fastening.LoadOf(thread, class, friction, highest(f))
	if !ok || !load.Over() {
		return nil
	}
	return []finding.Finding{TorqueOverProof.At(torqueAt(f), "%s pull %s into the %s, %s, class %s, and its proof load is %s",
		highest(f), load.Clamp, f.Label(), thread, class.Code, load.Proof).
		WithMend("look up torque, thread, class and condition again; %s", worked(func(in *words.Worked) working.Working {
			return load.Explain(&in.Bolt)
		}))}
}

// torqueAt is where the machine's file says how tight a fastener is.
func torqueAt(f *model.Fastener) position.Pos {
	if len(f.Stages) > 0 {
		return f.FieldAt("stages")
	}
	return f.FieldAt("torque")
}

// highest is the highest torque of a fastener: the upper end of its torque, or
// its highest stage.
func highest(f *model.Fastener) quantity.Quantity {
	var most quantity.Quantity
	for _, q := range ofDimension(f.Stages, quantity.Torque) {
		if q.Base() > most.Base() {
			most = q
		}
	}
	if len(f.Stages) > 0 || f.Torque.IsZero() {
		return most
	}
	if _, high, has := f.Torque.Ends(); has {
		return high
	}
	return f.Torque.Numbers()[0]
}
