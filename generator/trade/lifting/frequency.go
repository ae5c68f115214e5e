package lifting

import "math"

// Duration is how long people lift in a shift.
type Duration uint8

// Short is up to 1 h, Moderate up to 2 h, Long up to 8 h of lifting.
const (
	Short Duration = iota
	Moderate
	Long
)

func (d Duration) words() string {
	return [...]string{"up to 1 h", "1 to 2 h", "2 to 8 h"}[min(d, Long)]
}

// frequencies is table 5, p. 15: lifts per minute, then FM for short, moderate
// and long work, each with the hands below and from waist height at the origin
// (75 cm, 30 in).
var frequencies = [][]float64{
	{0.2, 1.00, 1.00, 0.95, 0.95, 0.85, 0.85},
	{0.5, 0.97, 0.97, 0.92, 0.92, 0.81, 0.81},
	{1, 0.94, 0.94, 0.88, 0.88, 0.75, 0.75},
	{2, 0.91, 0.91, 0.84, 0.84, 0.65, 0.65},
	{3, 0.88, 0.88, 0.79, 0.79, 0.55, 0.55},
	{4, 0.84, 0.84, 0.72, 0.72, 0.45, 0.45},
	{5, 0.80, 0.80, 0.60, 0.60, 0.35, 0.35},
	{6, 0.75, 0.75, 0.50, 0.50, 0.27, 0.27},
	{7, 0.70, 0.70, 0.42, 0.42, 0.22, 0.22},
	{8, 0.60, 0.60, 0.35, 0.35, 0.18, 0.18},
	{9, 0.52, 0.52, 0.30, 0.30, 0.00, 0.15},
	{10, 0.45, 0.45, 0.26, 0.26, 0.00, 0.13},
	{11, 0.41, 0.41, 0.00, 0.23, 0.00, 0.00},
	{12, 0.37, 0.37, 0.00, 0.21, 0.00, 0.00},
	{13, 0.00, 0.34, 0.00, 0.00, 0.00, 0.00},
	{14, 0.00, 0.31, 0.00, 0.00, 0.00, 0.00},
	{15, 0.00, 0.28, 0.00, 0.00, 0.00, 0.00},
}

// Frequency is FM, for lifts per minute, how long, and whether the hands are at
// waist height or above at the origin. Between the rows of table 5 it is linear
// (p. 7); below 0.2 it is that of 0.2, above 15 it is 0.
func Frequency(lifts float64, d Duration, waistHigh bool) float64 {
	column := 1 + 2*int(min(d, Long))
	if waistHigh {
		column++
	}
	lifts = math.Max(lifts, frequencies[0][0])
	for i := 1; i < len(frequencies); i++ {
		low, high := frequencies[i-1], frequencies[i]
		if lifts > high[0] {
			continue
		}
		part := (lifts - low[0]) / (high[0] - low[0])
		return low[column] + part*(high[column]-low[column])
	}
	return 0
}

func durationOf(minutes float64) Duration {
	switch {
	case minutes <= 60:
		return Short
	case minutes <= 120:
		return Moderate
	}
	return Long
}
