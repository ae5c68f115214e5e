package schema

import (
	"fmt"
	"reflect"
	"slices"
	"strings"

	"baybinder/generator/base/position"
	"baybinder/generator/base/quantity"
	"baybinder/generator/check"
	"baybinder/generator/model"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/decode"
)

// writer makes one schema; the structs that it meets are kept once, by name.
type writer struct {
	defs map[string]*Schema
}

// fields describes a map of fields.
func (w *writer) fields(t reflect.Type) *Schema {
	s := &Schema{Type: []string{"object"}, Properties: map[string]*Schema{}, AdditionalProperties: false}
	for _, f := range decode.Fields(t) {
		field := w.field(f)
		field.Description = f.Doc
		s.Properties[f.Name] = field
		if f.Need || slices.Contains(f.Asked, "*") {
			s.Required = append(s.Required, f.Name)
		}
	}
	s.AllOf = asked(t)
	return s
}

// asked is what an entry of one kind or another cannot do without.
func asked(t reflect.Type) []*Schema {
	var kinds []string
	byKind := map[string]*Schema{}
	for _, f := range decode.Fields(t) {
		for _, kind := range f.Asked {
			if kind == "*" {
				continue
			}
			then := byKind[kind]
			if then == nil {
				then = &Schema{Properties: map[string]*Schema{}}
				byKind[kind], kinds = then, append(kinds, kind)
			}
			then.Required = append(then.Required, f.Name)
			then.Properties[f.Name] = &Schema{MinLength: 1, MinProperties: 1}
		}
	}
	slices.Sort(kinds)
	var rules []*Schema
	for _, kind := range kinds {
		rules = append(rules, &Schema{
			If:   &Schema{Properties: map[string]*Schema{"kind": {Const: kind}}, Required: []string{"kind"}},
			Then: byKind[kind],
		})
	}
	return rules
}

// def describes a struct once, and names it.
func (w *writer) def(t reflect.Type) *Schema {
	name := strings.ToLower(t.Name())
	if w.defs[name] == nil {
		w.defs[name] = &Schema{} // a struct inside itself would end here
		w.defs[name] = w.fields(t)
	}
	return &Schema{Ref: "#/$defs/" + name}
}

// entries describes a map from id to entry.
func (w *writer) entries(t reflect.Type) *Schema {
	s := mapOf(w.def(t))
	s.PropertyNames = id()
	return s
}

// field describes what a field may hold. Its cases are those of decode.
func (w *writer) field(f decode.Field) *Schema {
	if s := w.shape(f); s != nil {
		return s
	}
	t := f.Type
	switch t.Kind() {
	case reflect.String:
		switch {
		case len(f.One) > 0:
			return oneOf(f.One)
		case f.Dim != quantity.None:
			return amount(quantity.Pattern(f.Dim)+"|^$", f.Dim.Example()) // to decode it is a text
		}
		return text()
	case reflect.Int:
		return number(f.Some)
	case reflect.Bool:
		s := yesNo()
		if f.Word != "" {
			s.Enum = append(s.Enum, f.Word)
		}
		return s
	case reflect.Pointer:
		return w.def(t.Elem())
	case reflect.Struct:
		return w.def(t)
	case reflect.Slice:
		return w.list(f)
	}
	panic("schema: no case for a field of type " + t.String())
}

func (w *writer) list(f decode.Field) *Schema {
	item := f.Type.Elem()
	if item.Kind() == reflect.Pointer {
		return w.entries(item.Elem())
	}
	one := f
	one.Type = item
	s := listOf(w.field(one))
	if reference(item) != nil {
		return &Schema{AnyOf: []*Schema{s, keysAlone()}}
	}
	if f.Many {
		return &Schema{AnyOf: []*Schema{text(), s}}
	}
	return s
}

// shape describes the manual's own shapes; nil where a field is none of them.
func (w *writer) shape(f decode.Field) *Schema {
	switch reflect.Zero(f.Type).Interface().(type) {
	case quantity.Quantity:
		return amount(quantity.Pattern(f.Dim), f.Dim.Example())
	case quantity.Stretch:
		return amount(quantity.StretchPattern(f.Dim), f.Dim.RangeExample())
	case quantity.Limit:
		pattern := quantity.LimitPattern(f.Dim)
		if f.Word != "" {
			pattern += "|^" + f.Word + "$"
		}
		return amount(pattern, f.Dim.RangeExample())
	case []quantity.Quantity:
		return listOf(amount(quantity.StagePattern(), "30 N·m, 90°"))
	case model.Date:
		return day()
	case model.Condition:
		return text()
	case model.AdviceCode:
		return oneOf(check.Acceptable)
	case []model.Pair:
		return mapOf(text())
	case []model.State:
		return states()
	case []model.HazardUse:
		return w.hazards()
	case []model.Order:
		s := mapOf(listOf(text()))
		s.PropertyNames = id()
		return s
	case []model.Unit:
		return listOf(w.units())
	case []model.Acceptance:
		return listOf(w.def(reflect.TypeFor[model.Acceptance]()))
	case []model.ShownUnits:
		return shownUnits()
	case []model.DatedUnit:
		return mapOf(day())
	case model.Stored:
		return &Schema{AnyOf: []*Schema{yesNo(), w.def(f.Type)}}
	}
	return reference(f.Type)
}

// reference describes an id, or a list of ids that may hold amounts.
func reference(t reflect.Type) *Schema {
	if t.Kind() == reflect.Slice {
		if _, is := reflect.New(t.Elem()).Interface().(interface{ SetAmount(string, position.Pos) }); is {
			return idsWith(amountOf(t.Elem()))
		}
		return nil
	}
	if _, is := reflect.New(t).Interface().(interface{ Set(string, position.Pos) }); is {
		return id()
	}
	return nil
}

// amountOf describes what may stand behind an id: how much of a supply, in its
// own unit; how many of anything else.
func amountOf(t reflect.Type) *Schema {
	if t == reflect.TypeFor[model.Use[model.Supply]]() {
		return &Schema{Title: "how much, such as 4 L", Type: []string{"string", "number", "null"}}
	}
	return &Schema{Title: "how many", Type: []string{"string", "integer", "null"}, Pattern: "^[1-9][0-9]*$", Minimum: one()}
}

func one() *int { n := 1; return &n }

// idsWith describes [one, two: 4], or a map from id to what it carries.
func idsWith(carries *Schema) *Schema {
	pairs := func(least int) *Schema {
		return &Schema{Type: []string{"object"}, PropertyNames: id(), AdditionalProperties: carries, MinProperties: least}
	}
	return &Schema{AnyOf: []*Schema{listOf(&Schema{AnyOf: []*Schema{id(), pairs(1)}}), pairs(0)}}
}

func (w *writer) hazards() *Schema {
	return idsWith(&Schema{AnyOf: []*Schema{{Type: []string{"null"}}, w.def(reflect.TypeFor[model.HazardOverride]())}})
}

// units describes a row of serial numbers, which are a text to decode.
func (w *writer) units() *Schema {
	s := w.fields(reflect.TypeFor[model.Unit]())
	says := s.Properties["serials"].Description
	s.Properties["serials"] = &Schema{
		Description: says + ", such as 101 to 130", Type: []string{"string", "integer"}, Pattern: quantity.SerialsPattern(), Minimum: new(int),
	}
	return s
}

func states() *Schema {
	s := oneOf(bind.StateWords())
	s.Type = append(s.Type, "boolean")
	s.Enum = append(s.Enum, true, false) // on and off, as some editors read them
	m := mapOf(s)
	m.PropertyNames = id()
	return m
}

// shownUnits describes { torque: [N·m, lbf·ft] }.
func shownUnits() *Schema {
	s := &Schema{Type: []string{"object"}, Properties: map[string]*Schema{}, AdditionalProperties: false}
	for _, d := range quantity.Dimensions() {
		s.Properties[d.String()] = listOf(&Schema{Type: []string{"string"}, Pattern: quantity.UnitPattern(d)})
	}
	return s
}

func text() *Schema { return &Schema{Type: []string{"string", "number", "boolean"}} }

func oneOf(words []string) *Schema {
	s := &Schema{Type: []string{"string"}}
	for _, w := range words {
		s.Enum = append(s.Enum, w)
	}
	return s
}

func yesNo() *Schema { return &Schema{Enum: []any{"yes", "no", true, false}} }

// largest is the largest whole number that decode takes.
const largest = 1_000_000

// keysAlone is a list of ids written as a map, with nothing behind them.
func keysAlone() *Schema {
	s := mapOf(&Schema{Type: []string{"null"}})
	s.PropertyNames = id()
	return s
}

func number(some bool) *Schema {
	most := largest
	if some {
		return &Schema{Type: []string{"integer", "string"}, Pattern: "^(?:[1-9][0-9]{0,5}|1000000)$", Minimum: one(), Maximum: &most}
	}
	return &Schema{Type: []string{"integer", "string"}, Pattern: "^(?:0|[1-9][0-9]{0,5}|1000000)$", Minimum: new(int), Maximum: &most}
}

func amount(pattern, example string) *Schema {
	return &Schema{Title: "such as " + example, Type: []string{"string"}, Pattern: pattern}
}

// day describes a day of the calendar. That of leap years is the check's.
func day() *Schema {
	return &Schema{Title: "year-month-day", Type: []string{"string"},
		Pattern: "^[0-9]{4}-(?:(?:0[13578]|1[02])-(?:0[1-9]|[12][0-9]|3[01])|(?:0[469]|11)-(?:0[1-9]|[12][0-9]|30)|02-(?:0[1-9]|[12][0-9]))$"}
}

func listOf(item *Schema) *Schema { return &Schema{Type: []string{"array"}, Items: item} }

func mapOf(value *Schema) *Schema {
	return &Schema{Type: []string{"object"}, AdditionalProperties: value}
}

// id describes an id. A whole number and true may be ones.
func id() *Schema {
	return &Schema{
		Type: []string{"string", "integer", "boolean"}, Pattern: "^[a-z0-9]+(?:-[a-z0-9]+)*$", MaxLength: decode.LongestID,
		Minimum: new(int), Not: &Schema{Type: []string{"string"}, Pattern: fmt.Sprintf("^(?:%s)$", decode.WindowsKeeps)},
	}
}
