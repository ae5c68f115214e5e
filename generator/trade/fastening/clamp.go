package fastening

// Friction is how a torque turns into pull: the nut factor K of T = K·F·d, and
// the span in which it is found on real joints of that condition.
type Friction struct {
	Condition string
	K         float64
	Low, High float64 // the slippery and the rough end
}

// frictions: the nut factors are a fastener chart's that quotes T = K·D·F
// (0.20 plain and dry, 0.17 zinc plated and dry, 0.15 lubricated). The spans of
// dry (0.20 to 0.25) and of lubricated (oil 0.15 to 0.20, anti-seize 0.12 to
// 0.16) are an engineering site's; that of zinc is common practice, no source.
var frictions = []Friction{
	{"dry", 0.20, 0.20, 0.25},
	{"zinc", 0.17, 0.15, 0.20},
	{"lubricated", 0.15, 0.12, 0.20},
}

// FrictionOf is the friction of a condition: dry, zinc or lubricated. A
// condition that is not said is dry.
func FrictionOf(condition string) (Friction, bool) {
	if condition == "" {
		condition = "dry"
	}
	for _, f := range frictions {
		if f.Condition == condition {
			return f, true
		}
	}
	return Friction{}, false
}

// ClampLoad is the pull in a bolt, N, at a torque in N·m: F = T/(K·d), with
// the nominal diameter d in metres. All three must be above zero; the short
// form holds below yield. Source: T = K·D·F, the short form of the trade.
func ClampLoad(torque, k, diameter float64) float64 { return torque / (k * diameter) }

// Stress is the stress in the bolt, MPa, under a pull in N.
func (t Thread) Stress(load float64) float64 { return load / t.StressArea() }
