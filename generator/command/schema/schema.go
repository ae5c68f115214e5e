// Package schema describes the manual's files as JSON Schema 2020-12, for editors that help while one writes.
//
// Everything in it comes from the tags of the manual's fields, which decode
// reads too, and from the tables of quantity and bind; kinds.go says what each
// type of field may hold. A schema sees one file at a time: what another file
// must have, and what two fields say together, is the check's.
//
// Editors make numbers and switches of unquoted words such as 12, 8.8 and yes
// before they ask a schema; the program reads every word as it is written. So a
// text may be a number here, and yes may be true. Only null is not taken for a
// text: it is what an editor makes of a value that was left out, which is a
// fault. An id that is the word null, or ~, needs quotes to please an editor.
//
// # Decided where the format is silent
//
// A text may be a number or a switch to an editor; null may not, so an id `null` needs quotes to
// please one. Rows of revisions.csv and record.csv are never renamed; `was:` keeps the old id. A
// rename is refused behind errors that hide references, and where NEW is named or taken.
// Fingerprints hold ids: a rename names the issued procedures to issue anew. Files are written
// beside their places, then moved; on failure all are put back; a kill between two moves leaves a
// mix, and `check` says which.
package schema

import (
	"bytes"
	"encoding/json"
	"reflect"
	"slices"
	"strings"

	"baybinder/generator/model"
	"baybinder/generator/read/bind"
)

// Dialect is the version of JSON Schema.
const Dialect = "https://json-schema.org/draft/2020-12/schema"

// Schema is a JSON Schema: the words of the language that are used here.
type Schema struct {
	Schema               string             `json:"$schema,omitempty"`
	Title                string             `json:"title,omitempty"`
	Description          string             `json:"description,omitempty"`
	Ref                  string             `json:"$ref,omitempty"`
	Type                 []string           `json:"type,omitempty"`
	Enum                 []any              `json:"enum,omitempty"`
	Const                string             `json:"const,omitempty"`
	Pattern              string             `json:"pattern,omitempty"`
	MinLength            int                `json:"minLength,omitempty"`
	MaxLength            int                `json:"maxLength,omitempty"`
	Minimum              *int               `json:"minimum,omitempty"`
	Maximum              *int               `json:"maximum,omitempty"`
	Items                *Schema            `json:"items,omitempty"`
	Properties           map[string]*Schema `json:"properties,omitempty"`
	AdditionalProperties any                `json:"additionalProperties,omitempty"` // a *Schema, or false
	PropertyNames        *Schema            `json:"propertyNames,omitempty"`
	MinProperties        int                `json:"minProperties,omitempty"`
	Required             []string           `json:"required,omitempty"`
	AnyOf                []*Schema          `json:"anyOf,omitempty"`
	AllOf                []*Schema          `json:"allOf,omitempty"`
	Not                  *Schema            `json:"not,omitempty"`
	If                   *Schema            `json:"if,omitempty"`
	Then                 *Schema            `json:"then,omitempty"`
	Defs                 map[string]*Schema `json:"$defs,omitempty"`
}

// JSON is the schema as a file.
func (s *Schema) JSON() []byte {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	if err := e.Encode(s); err != nil {
		panic(err) // a value of this type can be written
	}
	return b.Bytes()
}

// File is a kind of file of the manual, and what describes it.
type File struct {
	Name  string // "tools"
	Says  string // which files, in words
	Match string // their paths, as path.Match has them; "" for the front matter of procedures
	make  func() *Schema
}

// Schema is the description of the file.
func (f File) Schema() *Schema { return f.make() }

// Files are all that can be described, in the order of the format.
var Files = []File{
	{"procedure", "the front matter of procedures/**/*.md and its translations", "", root[model.Procedure]("the front matter of a procedure")},
	{"shop", "shop.yaml", "shop.yaml", root[model.Shop]("shop.yaml: the shop")},
	{"tools", "register/tools.yaml", "register/tools.yaml", register[model.Tool]("tools")},
	{"hazards", "register/hazards.yaml", "register/hazards.yaml", register[model.Hazard]("hazards")},
	{"holds", "register/holds.yaml", "register/holds.yaml", register[model.Hold]("holds")},
	{"supplies", "register/supplies.yaml", "register/supplies.yaml", register[model.Supply]("supplies")},
	{"roles", "register/roles.yaml", "register/roles.yaml", register[model.Role]("roles")},
	{"machine", "machines/*.yaml", "machines/*.yaml", root[model.Machine]("a kind of machine")},
	{"plan", "readings/plans/*.yaml", "readings/plans/*.yaml", root[model.Plan]("a reading plan")},
	{"tools-words", "register/tools.LANGUAGE.yaml", "register/tools.*.yaml", words("tools", "register/tools.LANGUAGE.yaml")},
	{"hazards-words", "register/hazards.LANGUAGE.yaml", "register/hazards.*.yaml", words("hazards", "register/hazards.LANGUAGE.yaml")},
	{"holds-words", "register/holds.LANGUAGE.yaml", "register/holds.*.yaml", words("holds", "register/holds.LANGUAGE.yaml")},
	{"supplies-words", "register/supplies.LANGUAGE.yaml", "register/supplies.*.yaml", words("supplies", "register/supplies.LANGUAGE.yaml")},
	{"roles-words", "register/roles.LANGUAGE.yaml", "register/roles.*.yaml", words("roles", "register/roles.LANGUAGE.yaml")},
	{"machine-words", "machines/ID.LANGUAGE.yaml", "machines/*.*.yaml", machineWords},
	{"shop-words", "shop.LANGUAGE.yaml", "shop.*.yaml", shopWords},
}

// root describes a file that is one struct.
func root[T any](title string) func() *Schema {
	return func() *Schema {
		w := &writer{defs: map[string]*Schema{}}
		s := w.fields(reflect.TypeFor[T]())
		s.Schema, s.Title, s.Defs = Dialect, title, w.defs
		return s
	}
}

// register describes a file that is a map from id to entry, or empty.
func register[T any](name string) func() *Schema {
	return func() *Schema {
		w := &writer{defs: map[string]*Schema{}}
		s := w.entries(reflect.TypeFor[T]())
		s.Schema, s.Title, s.Defs = Dialect, "register/"+name+".yaml: "+name+" by id", w.defs
		s.Type = append(s.Type, "null")
		return s
	}
}

// words describes the texts of a register or a machine in another language: a
// text, a list or a map of texts for each field that people read, by id.
func words(name, file string) func() *Schema {
	return func() *Schema {
		s := mapOf(texts(name))
		s.PropertyNames = id()
		s.Schema, s.Title = Dialect, file+": the texts of "+name+" in another language"
		s.Type = append(s.Type, "null")
		return s
	}
}

// machineWords describes those of a machine: by id, or as in its own file, an order's as
// its list.
func machineWords() *Schema {
	s := words("machines", "machines/ID.LANGUAGE.yaml")()
	entry := &Schema{AnyOf: []*Schema{texts("machines"), listOf(text())}}
	s.AdditionalProperties = entry
	s.Properties = map[string]*Schema{}
	own := texts("machines").Properties["name"]
	for _, field := range []string{"name", "options"} {
		s.Properties[field] = &Schema{AnyOf: append(slices.Clone(own.AnyOf), entry)}
	}
	for _, section := range bind.MachineSections() {
		s.Properties[section] = &Schema{AnyOf: []*Schema{entry, mapOf(entry)}}
	}
	return s
}

// shopWords describes what stands on every page, in another language.
func shopWords() *Schema {
	s := texts("shop")
	s.Schema, s.Title = Dialect, "shop.LANGUAGE.yaml: the shop's texts in another language"
	s.Type = append(s.Type, "null")
	return s
}

// texts are the fields that people read, each a text, a list or a map of them.
func texts(name string) *Schema {
	some := &Schema{AnyOf: []*Schema{text(), listOf(text()), mapOf(text())}}
	s := &Schema{Type: []string{"object"}, Properties: map[string]*Schema{}, AdditionalProperties: false}
	for _, field := range bind.TextFields(name) {
		s.Properties[field] = some
	}
	return s
}

// Named finds a file by name.
func Named(name string) (File, bool) {
	i := slices.IndexFunc(Files, func(f File) bool { return f.Name == name })
	if i < 0 {
		return File{}, false
	}
	return Files[i], true
}

// Folder is where a manual keeps its schemas: hidden, so that no page is made
// of them.
const Folder = ".schema"

// Path is where the file's schema is kept in a manual.
func (f File) Path() string { return Folder + "/" + f.Name + ".json" }

// Setting is the comment by which editors find the schema of a YAML file that
// stands at a path of the manual.
func (f File) Setting(at string) string {
	return "# yaml-language-server: $schema=" + strings.Repeat("../", strings.Count(at, "/")) + f.Path()
}
