package quantity

import (
	"errors"
	"strings"
)

// Stretch is an amount that is waited for, and the most that it may come to
// where one is given: "10 min", "24 to 72 h".
type Stretch struct {
	Least Quantity
	Most  Quantity // zero where there is none
}

// ParseStretch reads a stretch, which must be all of text. The error is an
// *Error.
func ParseStretch(text string, want Dimension) (Stretch, error) {
	l, err := ParseRange(text, want)
	if err == nil {
		return Stretch{l.first, l.second}, nil
	}
	if e := new(Error); errors.As(err, &e) && e.cause == dashRange || strings.Contains(" "+text+" ", " to ") {
		return Stretch{}, err
	}
	q, err := Parse(text, want)
	return Stretch{Least: q}, err
}

// IsZero reports whether nothing was written.
func (s Stretch) IsZero() bool { return s.Least.IsZero() }

// Range is the stretch as a limit; ok is false where it has one end alone.
func (s Stretch) Range() (l Limit, ok bool) {
	if s.Most.IsZero() {
		return Limit{}, false
	}
	return between(s.Least, s.Most), true
}

// String returns the stretch as it is printed.
func (s Stretch) String() string {
	if l, ok := s.Range(); ok {
		return l.String()
	}
	return s.Least.String()
}
