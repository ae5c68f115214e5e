package fastening

import (
	"fmt"
	"strconv"

	"baybinder/generator/base/quantity"
	"baybinder/generator/language/words"
	"baybinder/generator/trade/working"
)

// Load is what a torque does to a bolt.
type Load struct {
	Clamp     quantity.Quantity // at the condition's nut factor
	Low, High quantity.Quantity // at the rough and the slippery end of its span
	Proof     quantity.Quantity
	Share     float64 // of the proof load: 0.75 is 75 %

	torque   quantity.Quantity
	thread   Thread
	class    Class
	friction Friction
	proof    Proof
}

// Over says that the bolt is pulled above its proof load: it stays longer than
// it was, and is not to be used again.
func (l Load) Over() bool { return l.Share > 1 }

// LoadOf computes the pull that a torque makes in a bolt and holds it against
// the bolt's proof load. It is false where the torque is none, or the class has
// no bolts of that size.
func LoadOf(t Thread, c Class, f Friction, torque quantity.Quantity) (Load, bool) {
	proof, ok := ProofOf(t, c)
	if !ok || torque.Unit.Dimension() != quantity.Torque || torque.Base() <= 0 {
		return Load{}, false
	}
	at := func(k float64) float64 { return ClampLoad(torque.Base(), k, t.Diameter/1000) }
	l := Load{
		Clamp: kilonewtons(at(f.K)), Low: kilonewtons(at(f.High)), High: kilonewtons(at(f.Low)),
		Proof: kilonewtons(proof.Load), Share: at(f.K) / proof.Load,
		torque: torque, thread: t, class: c, friction: f, proof: proof,
	}
	return l, true
}

func kilonewtons(newtons float64) quantity.Quantity {
	return quantity.Of(newtons/1000, quantity.Kilonewton, 3)
}

// Explain is the load with its working.
func (l Load) Explain(say *words.Bolt) working.Working {
	t, c, f, p, torque := l.thread, l.class, l.friction, l.proof, l.torque
	k := strconv.FormatFloat(f.K, 'f', 2, 64)
	return working.Working{
		Formula: "F = T/(K·d)",
		Put:     fmt.Sprintf("%s/(%s · %s mm)", torque, k, plain(t.Diameter)),
		Result:  fmt.Sprintf(say.Share, l.Clamp, l.Share*100, l.Proof),
		Terms: []working.Term{
			{Sign: "T", Words: say.T, Value: torque.String()},
			{Sign: "K", Words: fmt.Sprintf(say.K, say.Conditions[f.Condition]), Value: k},
			{Sign: "d", Words: say.D, Value: plain(t.Diameter) + " mm"},
			{Sign: "Fp", Words: fmt.Sprintf(say.Fp, t, c.Code), Value: p.words(), Names: true},
		},
		Assumes: []string{
			fmt.Sprintf(say.Span, f.Low, f.High, l.Low, l.High), say.Thread,
		},
		Source: fmt.Sprintf(say.Source, p.source(say)),
	}
}

// words is the proof load with how it came about.
func (p Proof) words() string {
	if p.Printed {
		return kilonewtons(p.Load).String()
	}
	return fmt.Sprintf("%.1f mm² · %s MPa = %s", p.Area, plain(p.Stress), kilonewtons(p.Load))
}

func (p Proof) source(say *words.Bolt) string {
	if p.Printed {
		return say.Tables
	}
	return say.Stress
}
