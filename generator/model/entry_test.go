package model

import "testing"

// TestParseDate: a day of the Gregorian calendar, as ISO 8601 writes it (from
// memory). A year before it is a slip of the hand.
//
// Known: FROM MEMORY.
func TestParseDate(t *testing.T) {
	for text, want := range map[string]bool{
		"2026-03-02": true, "2028-02-29": true, "1583-01-01": true,
		"1582-12-31": false, "0026-03-02": false, "0000-01-01": false, "2026-02-29": false, "2026-3-2": false, "": false,
	} {
		if day, ok := ParseDate(text); ok != want || ok && day.String() != text {
			t.Errorf("%q is %v, %v", text, day, ok)
		}
	}
}
