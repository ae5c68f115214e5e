package numbers

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/model"
)

// NoTorque is told of a threaded fastener that nothing says how to tighten.
var NoTorque = finding.Rule{
	Code:  "no-torque",
	Level: finding.Advice,
	Title: "A threaded fastener without a torque",
	Why:   "How tight is then everybody's own guess: too loose works itself off, too tight strips.",
	Mend:  "Write torque: or stages:, or torque: hand for what is tightened by hand.",
}

func noTorque(f *model.Fastener) []finding.Finding {
	if f.Lost("torque", "stages", "condition", "thread") || f.Thread == "" || f.ByHand || !f.Torque.IsZero() || len(f.Stages) > 0 || f.Condition != "" {
		return nil
	}
	return []finding.Finding{NoTorque.At(f.At, "%s has a thread, and nothing says how tight it is", f.ID).
		WithMend("write torque: with the number of the machine's own papers, or torque: hand")}
}
