package model

import "testing"

// People type names where an id is asked for.
func TestWhoIsMeant(t *testing.T) {
	people := []*Person{
		{Entry: Entry{ID: "t-01"}, Name: "Ana Kowalska"},
		{Entry: Entry{ID: "t-02"}, Name: "J. Berg"},
		{Entry: Entry{ID: "t-03"}, Name: "J. Berg"},
		{Entry: Entry{ID: "foreman"}},
	}
	for text, want := range map[string]string{
		"Ana Kowalska": "t-01", "ana kowalska": "t-01", "T-01": "t-01", "Foreman": "foreman", "foremen": "foreman",
		"J. Berg": "", "Ana": "", "": "",
	} {
		if got := WhoIsMeant(people, text); got != want {
			t.Errorf("%q is %q, want %q", text, got, want)
		}
	}
}
