package quantity

// Marker is the sign between the whole of a number and its parts. The SI
// Brochure (5.4.4) and ISO 80000-1 (7.3.2) take the point or the comma,
// whichever is customary in the language; both from memory.
type Marker byte

// The markers. What the manual's files say in fields stands with a point.
const (
	Point Marker = iota
	Comma
)

// Write writes the numbers of a text, which stands with points, with the marker.
// It is for amounts alone: in M8x1.25, 8.8 and a date the point is no marker.
func (m Marker) Write(text string) string {
	if m == Point {
		return text
	}
	out := []byte(text)
	for i := 1; i+1 < len(out); i++ {
		if out[i] == '.' && isDigit(out[i-1]) && isDigit(out[i+1]) {
			out[i] = ','
		}
	}
	return string(out)
}
