package schema

import (
	"testing"
	"unicode/utf8"

	"baybinder/generator/base/position"
	"baybinder/generator/read/decode"
	"baybinder/generator/read/syntax"
)

// FuzzSchema reads a hostile text by the schema and by the decoder of each kind
// of file: what the schema takes, the decoder refuses in no form of a value.
// Each input goes through twenty schemas, whose judge takes some milliseconds: a
// thousand a second is out of reach.
func FuzzSchema(f *testing.F) {
	for _, text := range []string{"a: { name: x, kind: socket }", "title: Shop\nalso: [es]", "name: Tug\nparts: { lid: { name: lid } }", "[]", "a: 1.5", "a: ~", "read: [a]\nwithin: 6 months\ntitle: x"} {
		f.Add(text)
	}
	judges := compiled(f)
	f.Fuzz(func(t *testing.T, text string) {
		if !utf8.ValidString(text) || len(text) > 1<<11 {
			t.Skip() // what is not UTF-8 is not read at all
		}
		file := position.NewFile("a.yaml", text)
		n, found := syntax.YAML(file, 0, len(file.Text))
		if n == nil || len(found) > 0 || n.Kind != syntax.Map {
			return
		}
		for name, read := range decoders {
			if judges[name] == nil || judges[name].Validate(plain(n)) != nil {
				continue
			}
			d := &decode.Decoder{}
			read(d, n)
			for _, told := range d.Findings {
				if formal(told) {
					t.Errorf("%s: the schema takes it, and the program says: %s\n%s", name, told.Message, text)
				}
			}
		}
	})
}
