package handbook

import (
	"fmt"
	"reflect"
	"strings"

	"baybinder/generator/base/quantity"
	"baybinder/generator/check"
	"baybinder/generator/model"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/decode"
	"baybinder/generator/read/syntax"
)

// reference are the pages that are made from the program's tables.
func reference() map[string]string {
	return map[string]string{
		"procedures/reference/fields.md":     fieldsPage(),
		"procedures/reference/link-kinds.md": kindsPage(),
		"procedures/reference/findings.md":   findingsPage(),
	}
}

// page is a procedure that is being written.
type page struct{ strings.Builder }

func newPage(title, summary, words string) *page {
	p := &page{}
	fmt.Fprintf(p, "---\ntitle: %s\nsummary: %q\n---\n%s\n", title, summary, words)
	return p
}

func (p *page) phase(title string) { fmt.Fprintf(p, "\n## %s\n\n", title) }

func (p *page) step(term, words string) {
	fmt.Fprintf(p, "1. `%s` %s\n", term, plain(words))
}

// plain is a text of the program's as Markdown that means itself; what stands
// between backticks stays so.
func plain(text string) string {
	parts := strings.Split(text, "`")
	for i := range parts {
		if i%2 == 0 {
			parts[i] = strings.NewReplacer("[", `\[`, "]", `\]`, "<", `\<`, "*", `\*`, "_", `\_`).Replace(parts[i])
		}
	}
	return strings.Join(parts, "`")
}

func kindsPage() string {
	p := newPage("Link kinds", "Every kind of link, and what it says.", "A link is written `[words](kind:id)`. A link without words prints the name of what it names.")
	p.phase("Kinds")
	for _, k := range model.Kinds {
		words := k.Says
		if k.List != model.NoList {
			words += "; what it names is listed in the front matter"
		}
		if k.Frag != "" {
			words += fmt.Sprintf("; behind the id may stand a second part (%s)", strings.Join(strings.Split(k.Frag, ""), " or "))
		}
		p.step(k.Name+":", words+".")
	}
	return p.String()
}

func findingsPage() string {
	p := newPage("Findings", "Every finding: when it is told, why, and what to do.", "`baybinder explain CODE` shows an example of each, and the same mended. An error stops what is issued; advice does not.")
	for _, f := range check.Families() {
		p.phase(f.Title)
		for _, rule := range f.Rules {
			p.step(rule.Code, fmt.Sprintf("(%s) %s.", rule.Level, rule.Title))
			fmt.Fprintf(p, "\n   %s\n\n   *Mend:* %s\n\n", plain(rule.Why), plain(rule.Mend))
		}
	}
	return p.String()
}

// described is a file of the manual and the struct that it is read into.
type described struct {
	title string
	of    reflect.Type
}

// filesOfManual are the files of a manual whose fields are read, in the order in
// which the handbook shows them.
var filesOfManual = []described{
	{"Front matter of procedures", reflect.TypeFor[model.Procedure]()},
	{"Shop, shop.yaml", reflect.TypeFor[model.Shop]()},
	{"Tools, register tools.yaml", reflect.TypeFor[model.Tool]()},
	{"Hazards, register hazards.yaml", reflect.TypeFor[model.Hazard]()},
	{"Holds, register holds.yaml", reflect.TypeFor[model.Hold]()},
	{"Supplies, register supplies.yaml", reflect.TypeFor[model.Supply]()},
	{"Roles, register roles.yaml", reflect.TypeFor[model.Role]()},
	{"Machines", reflect.TypeFor[model.Machine]()},
	{"Reading plans", reflect.TypeFor[model.Plan]()},
}

// eachField goes through the fields of a struct and of those in it.
func eachField(prefix string, t reflect.Type, tell func(string, decode.Field)) {
	for _, f := range decode.Fields(t) {
		tell(prefix+f.Name, f)
		if in := inner(f.Type); in != nil && in != t {
			eachField(prefix+f.Name+".", in, tell)
		}
	}
}

// inner is the struct with fields of its own that a field holds, or nil.
func inner(t reflect.Type) reflect.Type {
	for t.Kind() == reflect.Slice || t.Kind() == reflect.Pointer {
		t = t.Elem()
	}
	if t.Kind() != reflect.Struct || !strings.HasSuffix(t.PkgPath(), "/model") || len(decode.Fields(t)) == 0 {
		return nil
	}
	return t
}

func fieldsPage() string {
	p := newPage("Fields", "Every field of every file, and the columns of the tables.", "A field that is needed says so. What is written as an amount is a number and a unit: `4.5 L`, `at most 5 V dc`.")
	for _, d := range filesOfManual {
		p.phase(d.title)
		eachField("", d.of, func(name string, f decode.Field) { p.step(name, fieldWords(f)) })
	}
	p.phase("Tables")
	for _, t := range tables {
		p.step(t.name, "has the columns "+strings.Join(append(append([]string{}, t.columns.Need...), t.columns.Later...), ", ")+".")
	}
	return p.String()
}

// tables are the files of rows.
var tables = []struct {
	name    string
	columns syntax.Columns
}{
	{"readings/people.csv", bind.PeopleColumns},
	{"readings/record.csv", bind.RecordColumns},
	{"readings/roles.csv", bind.RolesColumns},
	{"revisions.csv", bind.RevisionColumns},
}

// fieldWords say what a field is, and what it may hold.
func fieldWords(f decode.Field) string {
	words := f.Doc
	switch {
	case f.Need || len(f.Asked) == 1 && f.Asked[0] == "*":
		words += " (needed)"
	case len(f.Asked) > 0:
		words += " (needed for " + strings.Join(f.Asked, ", ") + ")"
	}
	one := f.One
	if f.Type == reflect.TypeFor[model.AdviceCode]() {
		one = check.Acceptable
	}
	if len(one) > 0 {
		words += ": " + strings.Join(one, ", ")
	}
	if f.Dim != quantity.None {
		words += ", such as `" + f.Dim.Example() + "`"
	}
	if f.Word != "" {
		words += ", or `" + f.Word + "`"
	}
	return words + "."
}
