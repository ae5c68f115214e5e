package decode

import (
	"testing"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
	"baybinder/generator/read/syntax"
)

// FuzzStruct reads a hostile text as an entry of each register, as a machine and
// as a shop: nothing panics, and what is told stands within the text.
func FuzzStruct(f *testing.F) {
	for _, text := range []string{
		"name: x\nkind: socket\nkepd: a", "name: [x]\nowned: 010", "limit: at most 5 V dc\nat: [a, b]", "calibration: { every: 12 months, units: { a: 2026-02-30 } }",
		"parts: { lid: { name: lid, under: [lid] } }\nunits: [{ serials: 9 to 1, options: [x] }]\n", "a: &a { b: *a }", "? [a]\n: b", "answers: { a: b, a: c }", "12: 13\n~: ~",
	} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		if len(text) > 1<<12 {
			t.Skip() // as much as a long entry
		}
		file := position.NewFile("a.yaml", text)
		n, _ := syntax.YAML(file, 0, len(file.Text))
		if n == nil {
			return
		}
		for _, into := range []any{new(model.Tool), new(model.Hazard), new(model.Hold), new(model.Supply), new(model.Role), new(model.Machine), new(model.Shop)} {
			d := &Decoder{}
			d.Struct(n, into, finding.Say("this entry"), n.At)
			for _, found := range d.Findings {
				if at := found.At; at.File == nil || at.Start < 0 || at.End < at.Start || at.End > len(file.Text) || found.Message == "" {
					t.Errorf("%q stands at %d to %d of %d bytes", found.Message, at.Start, at.End, len(file.Text))
				}
			}
		}
	})
}
