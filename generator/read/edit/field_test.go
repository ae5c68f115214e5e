package edit

import (
	"testing"

	"baybinder/generator/base/position"
)

// Of a field of the front matter only what differs is written: comments, order
// and spacing of the rest stay.
func TestFront(t *testing.T) {
	locked := Value{Text: "{ plug: locked, lid: off }", Items: []string{"plug: locked", "lid: off"}}
	only := Value{Text: "{ lid: off }", Items: []string{"lid: off"}}
	for _, c := range []struct {
		was  string
		to   Value
		want string
	}{
		{"title:  T # so\nstatus: draft\n", locked, "title:  T # so\nstatus: draft\nexpects: { plug: locked, lid: off }\n"},
		{"expects: {plug:  locked} # why\ntitle: T\n", locked, "expects: {plug:  locked, lid: off} # why\ntitle: T\n"},
		{"expects:\n  lid: off   # kept\n  plug: isolated # cut\ntitle: T\n", Value{Text: "{ lid: off, plug: locked }", Items: []string{"lid: off", "plug: locked"}},
			"expects:\n  lid: off   # kept\n  plug: locked # cut\ntitle: T\n"},
		{"expects:\n  plug: locked # cut\n  lid: off   # kept\ntitle: T\n", only, "expects:\n  lid: off   # kept\ntitle: T\n"},
		{"expects: {}\ntitle: T\n", only, "expects: { lid: off }\ntitle: T\n"},
		{"title: T\nexpects: { lid: off }\nleaves: {} # none\n", Value{}, "title: T\nleaves: {} # none\n"},
		{"title: T\n", Value{}, "title: T\n"},
	} {
		now, ok := Front(position.NewFile("p.md", "---\n"+c.was+"---\nText.\n"), "expects", c.to)
		if !ok || now.Text != "---\n"+c.want+"---\nText.\n" {
			t.Errorf("%s → %s: %v\n%v\nwant\n%s", c.was, c.to.Text, ok, now, c.want)
		}
	}
	if now, ok := Front(position.NewFile("p.md", "Text.\n"), "expects", only); ok {
		t.Errorf("without a front matter: %s", now.Text)
	}
}
