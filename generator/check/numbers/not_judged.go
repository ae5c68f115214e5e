package numbers

import (
	"errors"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/trade/domain"
)

// NotJudged is told where something is written that the program has no table
// for, so that a check that people count on is not made.
var NotJudged = finding.Rule{
	Code:  "not-judged",
	Level: finding.Advice,
	Title: "Something that the program cannot judge",
	Why:   "A thread or a class that no table has, or a sign that is not drawn, may be right. But nothing was worked out from it, and a page without a finding looks as if it had been.",
	Mend:  "Look the number up again; where it is right, leave it as it is.",
}

// notInTables is the finding for a thread or a class that sets out to be of ISO
// 898-1 and that the tables do not know. What is of another standard (G 1/4,
// 3/8-16 UNC, A2-70) is no finding.
func notInTables(err error, f *model.Fastener, field string) []finding.Finding {
	var bad *domain.Error
	if !errors.As(err, &bad) {
		return nil
	}
	return []finding.Finding{NotJudged.At(f.FieldAt(field), "%s: %v, so that the bolt load of %s is not judged", field, bad, f.Label()).WithMend("%s", bad.Mend())}
}

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
		WithMend("write torque: 22 N·m, or torque: hand")}
}
