// Package arena hands out many small values from few pieces of memory: a large manual has a million of them.
package arena

import "strings"

// piece is how many values one piece of memory holds. What a procedure holds
// fills some, and half of the last stays empty.
const piece = 8

// Of is a slab of one type. Its zero value is ready. A piece of memory lives as
// long as one value of it: give a slab to what lives and dies together.
type Of[T any] struct{ rest []T }

// New is one more value, zero.
func (s *Of[T]) New() *T { return &s.Slice(1)[0] }

// Slice is n more values in a row, zero; it cannot grow into what comes after.
func (s *Of[T]) Slice(n int) []T {
	if n > len(s.rest) {
		s.rest = make([]T, max(n, piece))
	}
	out := s.rest[:n:n]
	s.rest = s.rest[n:]
	return out
}

// Text is a slab of texts. Its zero value is ready.
type Text struct{ b strings.Builder }

// sheet is how many bytes of text one piece of memory holds.
const sheet = 1 << 10

// Keep is a text as a string, which stays as it is.
func (t *Text) Keep(text []byte) string {
	if t.b.Cap()-t.b.Len() < len(text) {
		t.b = strings.Builder{} // what was kept lives on in the old one's memory
		t.b.Grow(max(len(text), sheet))
	}
	start := t.b.Len()
	t.b.Write(text)
	return t.b.String()[start:]
}
