package fastening

// Series is a standard's series of head widths.
type Series uint8

// The series. Two bolts with one thread may differ in their heads, which is
// why a width across flats is never read off the thread.
const (
	ISO272   Series = iota // hexagon heads and nuts of today, ISO 4014, 4017, 4032
	OldDIN                 // DIN 931, 933, 934 of before: M10, M12, M14 and M22 differ
	HexKey                 // the key of a socket cap screw, ISO 4762
	SmallJIS               // small hexagons of JIS, from memory
)

// String is the series in words.
func (s Series) String() string {
	return [...]string{"ISO 272", "older DIN", "hex key, ISO 4762", "small hexagon, JIS"}[s]
}

// flats are widths across flats, mm, by thread diameter, 0 where the series
// has none. Source: "Wrench Size Chart" and two more public charts; the hex
// keys of M14, M18 and M22 and all of JIS are from memory.
var flats = map[float64][4]float64{
	5: {8, 8, 4, 0}, 6: {10, 10, 5, 0}, 8: {13, 13, 6, 12}, 10: {16, 17, 8, 14}, 12: {18, 19, 10, 17}, 14: {21, 22, 12, 19},
	16: {24, 24, 14, 22}, 18: {27, 27, 14, 0}, 20: {30, 30, 17, 0}, 22: {34, 32, 17, 0}, 24: {36, 36, 19, 0},
}

// AcrossFlats is the width across flats, mm, that a series gives to a thread,
// fine or coarse.
func AcrossFlats(t Thread, s Series) (width float64, ok bool) {
	if int(s) >= len(flats[t.Diameter]) {
		return 0, false
	}
	width = flats[t.Diameter][s]
	return width, width > 0
}

// SeriesOf are the series of hexagon heads in which a thread has that width.
// None is no fault: flange bolts, plugs and nuts of unions have their own.
func SeriesOf(t Thread, width float64) []Series {
	var all []Series
	for _, s := range []Series{ISO272, OldDIN, SmallJIS} {
		if w, ok := AcrossFlats(t, s); ok && w == width {
			all = append(all, s)
		}
	}
	return all
}
