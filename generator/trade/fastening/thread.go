// Package fastening computes with threads, bolts, torques and the tools that turn them.
//
// Lengths of threads and heads are millimetres, as a thread's name gives them;
// areas are square millimetres, stresses megapascals (N/mm²), forces newtons,
// torques newton metres, and every function says so. Amounts with units enter
// and leave in Load and Setting alone.
//
// The formulas judge a single bolt under a torque. They know nothing of the
// joint, of heat, of a worn thread or of a yield-controlled tightening.
package fastening

import (
	"math"
	"regexp"
	"strconv"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/trade/domain"
)

// Thread is a metric ISO thread.
type Thread struct {
	Diameter float64 // nominal, mm
	Pitch    float64 // mm
}

// coarse holds the coarse pitch of each size, mm (ISO 261). M5 to M24 follow
// from the stress areas that were seen in print; the rest is from memory.
var coarse = map[float64]float64{
	1.6: 0.35, 2: 0.4, 2.5: 0.45, 3: 0.5, 3.5: 0.6, 4: 0.7, 5: 0.8, 6: 1, 7: 1, 8: 1.25, 10: 1.5, 12: 1.75,
	14: 2, 16: 2, 18: 2.5, 20: 2.5, 22: 2.5, 24: 3, 27: 3, 30: 3.5, 33: 3.5, 36: 4, 39: 4, 42: 4.5, 45: 4.5,
	48: 5, 52: 5, 56: 5.5, 60: 5.5, 64: 6,
}

// CoarsePitch is the coarse pitch of a size, mm, where there is one.
func CoarsePitch(diameter float64) (pitch float64, ok bool) {
	pitch, ok = coarse[diameter]
	return pitch, ok
}

// metric is a thread's name with an optional pitch and tolerance class.
var metric = regexp.MustCompile(`^M ?(\d+(?:\.\d+)?)(?: ?[x×X*] ?(\d+(?:\.\d+)?))?(?: ?- ?\d[a-zA-Z](?:\d[a-zA-Z])?)?$`)

// ParseThread reads M8, M8x1.25 or M8×1.25; a tolerance class behind it, as in
// M8x1-6g, is passed over. Without a pitch the thread is coarse. The pitch of
// a metric thread is never above the coarse one of its size, so M8x25 is a
// length and no pitch, and is refused. The error is a *refused.Error.
func ParseThread(text string) (Thread, error) {
	found := metric.FindStringSubmatch(strings.TrimSpace(text))
	if found == nil {
		return Thread{}, &domain.Error{Given: text, Why: finding.Say("is not a metric thread"), Write: finding.Say("write it as M8 or M8x1.25, with a decimal point")}
	}
	t := Thread{Diameter: number(found[1])}
	standard, known := CoarsePitch(t.Diameter)
	if found[2] == "" {
		t.Pitch = standard
		if !known {
			return Thread{}, &domain.Error{Given: text, Why: finding.Say("has no coarse pitch"), Write: finding.Say("write the pitch too, as in M9x1.25")}
		}
		return t, nil
	}
	t.Pitch = number(found[2])
	if !known {
		standard = t.Diameter / 4 // no size is coarser than M1, whose pitch is a quarter of it
	}
	if t.Pitch <= 0 || t.Pitch > standard {
		return Thread{}, &domain.Error{Given: text, Why: finding.Say("has a pitch that no such thread has"), Write: pitchMend(t, known)}
	}
	return t, nil
}

func pitchMend(t Thread, known bool) finding.Words {
	size := "M" + plain(t.Diameter)
	if !known {
		return finding.Say("write the pitch behind the x, and no length, as in M9x1.25")
	}
	return finding.Say("write %sx%s, or a finer pitch; a length does not belong here", size, plain(coarse[t.Diameter]))
}

// MeansMetric reports whether a text sets out to name a metric thread, so that
// one that cannot be read is a slip and not a pipe or an inch thread.
func MeansMetric(text string) bool { return startsMetric.MatchString(strings.TrimSpace(text)) }

var startsMetric = regexp.MustCompile(`^[mM] ?\d`)

// Coarse says that the thread has the coarse pitch of its size.
func (t Thread) Coarse() bool { return t.Pitch == coarse[t.Diameter] }

// String is the thread with its pitch, "M8x1.25".
func (t Thread) String() string { return "M" + plain(t.Diameter) + "x" + plain(t.Pitch) }

// pitchLoss is how many pitches the diameter of the stressed section is below
// the nominal: the section's diameter is the mean of the pitch diameter
// (d − 0.6495 P) and the root diameter (d − 1.2269 P).
const pitchLoss = 0.9382

// StressArea is the nominal stress area, mm²: As = π/4·(d − 0.9382·P)².
// Source: ISO 898-1, 9.1.6.1, the formula from memory; it gives the printed
// areas of M5 to M24 within 0.4 %.
func (t Thread) StressArea() float64 {
	d := t.Diameter - pitchLoss*t.Pitch
	return math.Pi / 4 * d * d
}

func number(text string) float64 {
	n, err := strconv.ParseFloat(text, 64)
	if err != nil {
		return math.NaN() // the pattern lets figures through alone
	}
	return n
}

func plain(n float64) string { return strconv.FormatFloat(n, 'f', -1, 64) }
