package decode

import (
	"reflect"
	"strings"
	"sync"

	"baybinder/generator/base/quantity"
)

// field is what the tags of a struct's field say.
type field struct {
	name  string
	index []int
	need  bool
	item  bool     // what is read is an entry of its list
	many  bool     // a list that may be written as a single text
	some  bool     // a number that is at least one
	one   []string // the words it may hold
	dim   quantity.Dimension
	like  string   // an amount that it could have, where the dimension's own example could not be
	asked []string // the kinds of entry that cannot do without it
	doc   string
	word  string // that may stand in place of an amount
	sets  string // the switch that the word sets
}

// Field is what is known of a field of the format, for those who describe it
// or look for what stands in it.
type Field struct {
	Name  string
	Type  reflect.Type
	Index []int // of the field in its struct
	Need  bool  // it must be there
	Many  bool  // a list that may be written as a single text
	Some  bool  // a number that is at least one
	One   []string
	Dim   quantity.Dimension
	Asked []string // the kinds of entry that cannot do without it; "*" for all
	Doc   string
	Word  string // that may stand in place of an amount
}

// Fields lists the fields of a struct, those of embedded structs in their place.
func Fields(t reflect.Type) []Field {
	var list []Field
	for _, f := range fieldsOf(t) {
		list = append(list, Field{f.name, t.FieldByIndex(f.index).Type, f.index, f.need, f.many, f.some, f.one, f.dim, f.asked, f.doc, f.word})
	}
	return list
}

var fieldCache sync.Map // reflect.Type → []field

// fieldsOf lists the fields of a struct in the order in which they are
// declared, those of embedded structs in their place.
func fieldsOf(t reflect.Type) []field {
	if known, ok := fieldCache.Load(t); ok {
		return known.([]field)
	}
	list := readFields(t, nil)
	fieldCache.Store(t, list)
	return list
}

func readFields(t reflect.Type, at []int) []field {
	var list []field
	for i := range t.NumField() {
		f := t.Field(i)
		index := append(append([]int{}, at...), i)
		name, options, _ := strings.Cut(f.Tag.Get("yaml"), ",")
		switch {
		case options == "inline":
			list = append(list, readFields(f.Type, index)...)
		case name == "" || name == "-":
		default:
			list = append(list, field{
				name: name, index: index,
				need: options == "need", many: options == "many", some: options == "some",
				one:   strings.Fields(f.Tag.Get("one")),
				dim:   quantity.DimensionNamed(f.Tag.Get("dim")),
				like:  f.Tag.Get("like"),
				word:  f.Tag.Get("word"),
				sets:  f.Tag.Get("sets"),
				asked: strings.Fields(f.Tag.Get("asked")),
				doc:   f.Tag.Get("doc"),
			})
		}
	}
	return list
}

func find(list []field, name string) (field, bool) {
	for _, f := range list {
		if f.name == name {
			return f, true
		}
	}
	return field{}, false
}

func names(list []field) []string {
	out := make([]string, len(list))
	for i, f := range list {
		out[i] = f.name
	}
	return out
}
