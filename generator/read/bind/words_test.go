package bind_test

import (
	"fmt"
	"slices"
	"testing"

	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// A name in a machine's texts that the machine does not have is told once, at the
// name, and nothing below it is told besides; the texts of a section are read.
func TestAWrongNameInAMachinesTextsIsToldOnce(t *testing.T) {
	for name, c := range map[string]struct {
		text string
		want []string
		read int
	}{
		"as it is":          {"plug: { name: Clavija }\nseat: { name: Asiento }\n", nil, 2},
		"under its section": {"points:\n  plug: { name: Clavija }\nseat: { name: Asiento }\n", nil, 2},
		"as in its file":    {"name: Remolcador\npoints: { plug: { name: Clavija } }\nparts: { seat: { name: Asiento } }\n", nil, 3},
		"in both ways":      {"tug: { name: Remolcador }\noptions: { cab: Cabina }\npoints: { plug: { name: Clavija } }\n", nil, 2},
		"under another":     {"parts:\n  plug: { name: Clavija }\n", nil, 1},
		"no such section":   {"partes:\n  seat: { name: Asiento }\n", []string{"partes unknown-reference"}, 1},
		"one wrong below":   {"points:\n  plug: { name: Clavija }\n  plgu: { name: Clavija }\n", []string{"plgu unknown-reference"}, 1},
		"one wrong entry":   {"plgu: { name: Clavija, other: x }\nseat: { name: Asiento }\n", []string{"plgu unknown-reference"}, 1},
		"a field not known": {"plug: { other: x }\n", []string{"other unknown-field"}, 1},
	} {
		m, found := bind.Manual(source.FromText(map[string]string{
			"shop.yaml": "title: Shop\nalso: [es]\n", "machines/tug.es.yaml": c.text,
			"machines/tug.yaml": "name: Tug\npoints: { plug: { name: plug } }\nparts: { seat: { name: seat } }\n",
		}))
		var got []string
		for _, f := range found {
			got = append(got, fmt.Sprintf("%s %s", f.At.Text(), f.Code))
		}
		if !slices.Equal(got, c.want) || len(m.Words) != c.read {
			t.Errorf("%s: %q and %d entries read, want %q and %d", name, got, len(m.Words), c.want, c.read)
		}
	}
}

// An id that the register has not is to be written as it stands there, whatever stands
// below it, be it nothing; where entries stand below it, it is a section.
func TestWhatToWriteForAnUnknownId(t *testing.T) {
	const id, section = "write the id as it stands there, or take the entry out", "take the line out and begin the ids below it at the left margin: here texts stand by id, without sections"
	for text, want := range map[string]string{
		"hamer: {}\n": id, "hamer: { name: martillo }\n": id,
		"tools:\n  hammer: { name: martillo }\n":                   section,
		"hamer:\n  hammer: { name: martillo }\n  note: el nuevo\n": id,
	} {
		_, found := bind.Manual(source.FromText(map[string]string{
			"shop.yaml": "title: Shop\nalso: [es]\n", "register/tools.yaml": "hammer: { name: hammer, kind: other }\n", "register/tools.es.yaml": text,
		}))
		if len(found) != 1 || found[0].Code != "unknown-reference" || found[0].Mend != want {
			t.Errorf("%q: %v, want %q", text, found, want)
		}
	}
}
