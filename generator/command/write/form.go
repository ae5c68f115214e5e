package write

import (
	"reflect"
	"slices"
	"strings"

	"baybinder/generator/language"
	"baybinder/generator/model"
)

// FormField is one thing that a form asks.
type FormField struct {
	Key     string   `json:"key"`   // the field in the file
	Sort    string   `json:"sort"`  // text, texts (one a line), pairs (key: text, one a line), one, many, counts, yes
	Of      []Option `json:"of"`    // what can be chosen
	Need    bool     `json:"need"`  // it must be answered
	Kinds   []string `json:"kinds"` // it is asked of these kinds only; of all where empty
	Example string   `json:"example"`
	Now     []string `json:"now,omitempty"` // what it says, of an entry that is there
}

// Option is an answer that can be chosen.
type Option struct {
	ID    string `json:"id"`
	Label string `json:"label"`
}

// Form is what an entry is asked for.
type Form struct {
	In     string      `json:"in"`
	ID     string      `json:"id,omitempty"`    // of an entry that is there
	State  string      `json:"state,omitempty"` // of its file
	There  []Option    `json:"there"`           // those of a register that can be changed
	Fields []FormField `json:"fields"`
}

// ask is a field of a form before what can be chosen is known.
type ask struct {
	key, sort, of string // of: a register, a section of the machine, or "" for the values that the field takes
	need          bool
	kinds         string
	example       string
}

// forms are what new entries are asked for: what they must have, and what an
// offer rests on. What else an entry may have is written in the file.
var forms = map[string][]ask{
	"tools": {
		{key: "name", sort: "text", need: true, example: "13 mm socket"}, {key: "kind", sort: "one", need: true},
		{key: "fits", sort: "texts", kinds: "socket spanner screwdriver", example: "13 mm"},
		{key: "range", sort: "text", kinds: "torque-wrench tester", example: "5 to 25 N·m"},
		{key: "kept", sort: "text", example: "bay chest"}, {key: "needs", sort: "many", of: "roles"},
	},
	"hazards": {
		{key: "name", sort: "text", need: true}, {key: "nature", sort: "text", need: true}, {key: "harm", sort: "one", need: true}, {key: "happens", sort: "one"},
		{key: "consequence", sort: "text", need: true}, {key: "avoid", sort: "texts", need: true}, {key: "of", sort: "one", of: "energies fluids"},
		{key: "wear", sort: "many", of: "ppe"},
	},
	"holds": {
		{key: "name", sort: "text", need: true}, {key: "kind", sort: "one", need: true},
		{key: "of", sort: "one", of: "energies fluids", kinds: "wait measure look"},
		{key: "for", sort: "text", need: true, kinds: "wait", example: "5 min"},
		{key: "what", sort: "text", need: true, kinds: "measure look note"},
		{key: "limit", sort: "text", need: true, kinds: "measure", example: "at most 5 V dc"},
		{key: "with", sort: "one", of: "tools", kinds: "measure look"}, {key: "proved-on", sort: "one", of: "tools", kinds: "measure"},
		{key: "if-not", sort: "text", kinds: "measure look"},
		{key: "good", sort: "text", kinds: "look"}, {key: "looks-for", sort: "one", kinds: "look"},
		{key: "answers", sort: "pairs", need: true, kinds: "ask", example: "good: clean"},
		{key: "by", sort: "one", of: "roles", need: true, kinds: "sign check witness"}, {key: "how", sort: "one", kinds: "check"},
	},
	"supplies": {{key: "name", sort: "text", need: true}, {key: "unit", sort: "text", example: "L"}, {key: "kept", sort: "text"}},
	"roles":    {{key: "name", sort: "text", need: true}},
	"points":   {{key: "name", sort: "text", need: true}, {key: "where", sort: "text"}, {key: "lock", sort: "yes"}},
	"energies": {
		{key: "name", sort: "text", need: true}, {key: "kind", sort: "one", need: true}, {key: "points", sort: "many", of: "points"},
		{key: "voltage", sort: "text", kinds: "electric", example: "24 V dc"}, {key: "pressure", sort: "text", kinds: "pressure vacuum", example: "6 bar"},
		{key: "stored", sort: "yes"}, {key: "blocked-by", sort: "many", of: "tools", kinds: "gravity spring motion"},
	},
	"parts": {
		{key: "name", sort: "text", need: true}, {key: "kind", sort: "one"}, {key: "under", sort: "many", of: "parts"}, {key: "held-by", sort: "counts", of: "fasteners"},
		{key: "guards", sort: "many", of: "energies"}, {key: "prove-dead", sort: "many", of: "energies"},
		{key: "carries", sort: "one", of: "fluids", kinds: "line"}, {key: "mass", sort: "text", example: "14 kg"},
		{key: "alike", sort: "text", example: "panel-leads"}, {key: "renew-with", sort: "one", of: "supplies"},
	},
	"fasteners": {
		{key: "name", sort: "text", need: true}, {key: "across-flats", sort: "text", example: "13 mm"}, {key: "drive", sort: "text", example: "T30"},
		{key: "torque", sort: "text", example: "22 N·m"}, {key: "start", sort: "text"}, {key: "renew-with", sort: "one", of: "supplies"},
	},
	"fluids":   {{key: "name", sort: "text", need: true}, {key: "supply", sort: "one", of: "supplies"}, {key: "capacity", sort: "text", example: "4 L"}, {key: "bleed", sort: "yes"}},
	"settings": {{key: "name", sort: "text", need: true}, {key: "value", sort: "text", example: "180 ± 4 bar"}},
}

// sections are the parts of a machine's file, in the order in which they are
// filled: what another names comes before it.
var sections = []string{"points", "energies", "fasteners", "parts", "fluids", "settings"}

// entries are the types whose tags say which values a field takes.
var entries = map[string]reflect.Type{
	"tools": reflect.TypeFor[model.Tool](), "hazards": reflect.TypeFor[model.Hazard](), "holds": reflect.TypeFor[model.Hold](),
	"energies": reflect.TypeFor[model.Energy](), "parts": reflect.TypeFor[model.Part](),
}

// formOf is the form for a register or a section of a machine.
func formOf(b bench, m *model.Machine, in string) (*Form, error) {
	asked, known := forms[in]
	if !known || slices.Contains(sections, in) && m == nil {
		return nil, cannotNow
	}
	f := &Form{In: in, There: []Option{}}
	if !slices.Contains(sections, in) {
		f.There = optionsOf(b, m, in)
	}
	for _, a := range asked {
		field := FormField{Key: a.key, Sort: a.sort, Need: a.need, Kinds: strings.Fields(a.kinds), Example: a.example, Of: []Option{}}
		switch {
		case a.of != "":
			for of := range strings.FieldsSeq(a.of) {
				field.Of = append(field.Of, optionsOf(b, m, of)...)
			}
		case a.sort == "one":
			field.Of = values(b, in, a.key)
		}
		f.Fields = append(f.Fields, field)
	}
	return f, nil
}

// values are those that a field takes, in the words of the shop's language.
func values(b bench, in, key string) []Option {
	l := language.Of(b.Manual().Shop.Language)
	var out []Option
	for i := range entries[in].NumField() {
		field := entries[in].Field(i)
		name, _, _ := strings.Cut(field.Tag.Get("yaml"), ",")
		if name != key {
			continue
		}
		for value := range strings.FieldsSeq(field.Tag.Get("one")) {
			label := l.Write.Values[value]
			if label == "" {
				label = l.Words.Kinds[value]
			}
			out = append(out, Option{value, label})
		}
	}
	return out
}

func optionsOf(b bench, m *model.Machine, of string) []Option {
	all := b.Manual()
	switch of {
	case "tools":
		return options(all.Tools)
	case "ppe":
		return options(slices.DeleteFunc(slices.Clone(all.Tools), func(t *model.Tool) bool { return t.Kind != "ppe" }))
	case "roles":
		return options(all.Roles)
	case "supplies":
		return options(all.Supplies)
	case "hazards":
		return options(all.Hazards)
	case "holds":
		return options(all.Holds)
	}
	if m == nil {
		return nil
	}
	switch of {
	case "points":
		return options(m.Points)
	case "energies":
		return options(m.Energies)
	case "parts":
		return options(m.Parts)
	case "fasteners":
		return options(m.Fasteners)
	case "fluids":
		return options(m.Fluids)
	}
	return options(m.Settings)
}

func options[T model.Named](list []T) []Option {
	out := []Option{}
	for _, n := range list {
		if id := n.Base().ID; id != "" {
			out = append(out, Option{id, n.Label()})
		}
	}
	return out
}
