package syntax

import (
	"slices"
	"testing"

	"baybinder/generator/base/position"
)

// Where code and addresses stand in a step, worked out from the text by the
// rules of CommonMark 0.31.2 for code spans (6.1), fenced code blocks (4.5) and
// links (6.3).
func TestPlacesOfCodeAndAddresses(t *testing.T) {
	for _, c := range []struct {
		text            string
		code, addresses []string
	}{
		{"Press `START` now.", []string{"`START`"}, nil},
		{"Press `` a ` b `` and `c`.", []string{"`` a ` b ``", "`c`"}, nil},
		{"A \\` is no code, nor is ` alone.", nil, nil},
		{"[Press `GO`](part:pump), then [stop](part:lid)", []string{"`GO`"}, []string{"part:pump", "part:lid"}},
		{"[a](<part:pump> \"title\")", nil, []string{"part:pump"}},
		{"<https://example.org/a>", nil, []string{"https://example.org/a"}},
		{"[a][pump]\n\n[pump]: part:pump", nil, []string{""}},
		{"Read:\n\n   ```txt\n   DANGER: 400 V\n   ```", []string{"```txt\n   DANGER: 400 V\n   ```"}, nil},
		{"Read:\n\n   - `a`\n   - b", []string{"`a`"}, nil},
	} {
		f := position.NewFile("p.md", "---\ntitle: T\n---\n## Work\n\n1. "+c.text+"\n")
		d, _ := Read(f)
		var code, addresses []string
		for _, b := range d.Phases[0].Body[0].Item.Blocks {
			for _, at := range b.Code {
				code = append(code, at.Text())
			}
			for _, l := range b.Links {
				if l.From == 0 {
					addresses = append(addresses, "")
					continue
				}
				addresses = append(addresses, f.Text[l.From:l.From+len(l.Address)])
			}
		}
		if !slices.Equal(code, c.code) || !slices.Equal(addresses, c.addresses) {
			t.Errorf("%q: code %q, want %q; addresses %q, want %q", c.text, code, c.code, addresses, c.addresses)
		}
	}
}
