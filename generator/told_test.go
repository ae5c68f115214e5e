package generator_test

import (
	"fmt"
	"go/ast"
	"go/token"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"baybinder/generator/check"
	"baybinder/generator/command/schema"
	"baybinder/generator/derive/training"
	"baybinder/generator/language"
	"baybinder/generator/model"
	"baybinder/generator/read/jotting"
)

// A language that tells findings tells all of them: a table that lacks some
// would leave a shop with two languages on one page, and nobody would know.
func TestFindingsAreToldWhole(t *testing.T) {
	t.Parallel()
	program, source := templates(t), goText(t)
	for _, l := range language.All() {
		if len(l.Findings.Texts) == 0 {
			continue // it says nothing and is told in English, whole
		}
		for _, why := range untold(program, source, l.Findings.Texts) {
			t.Errorf("%s: %s", l.Code, why)
		}
	}
}

// The test above sees what is lacking, what does not fit and what is left over.
func TestAnUntoldTemplateIsNamed(t *testing.T) {
	t.Parallel()
	program, source := map[string]bool{"%s has no %d": true, "it is here": true, "%s: %s": true, "20 % of it": false}, `case 1: return "torque"`
	for _, c := range []struct {
		texts map[string]string
		want  string
	}{
		{map[string]string{"20 % of it": "el 20 % de eso", "%s has no %d": "%[2]d de %[1]s", "it is here": "aquí"}, ""},
		{map[string]string{"20 % of it": "el 20 % de eso", "%s has no %d": "sin %[2]d", "it is here": "aquí"}, ""},
		{map[string]string{"20 % of it": "el 20 % de eso", "torque": "par", "a torque": "un par", "it is here": "aquí"}, `it lacks "%s has no %d"`},
		{map[string]string{"20 % of it": "el 20 % de eso", "%s has no %d": "%d de %s", "it is here": "aquí"}, `"%d de %s" takes other values than "%s has no %d"`},
		{map[string]string{"20 % of it": "el 20 % de eso", "%s has no %d": "sin %s", "it is here": "aquí"}, `"sin %s" takes other values than "%s has no %d"`},
		{map[string]string{"20 % of it": "el 20 % de eso", "%s has no %d": "%s y %d", "it is here": "aquí", "gone": "ido"}, `"gone" is no template of the program`},
		{map[string]string{"20 % of it": "el 20 % de eso", "%s has no %d": "%s y %d", "it is here": ""}, `it lacks "it is here"`},
	} {
		if got := strings.Join(untold(program, source, c.texts), "; "); got != c.want {
			t.Errorf("%q: %q, want %q", c.texts, got, c.want)
		}
	}
}

// untold is what is wrong with a table. A template without a letter is the same
// in every language. What is a word by itself, with its article or without, only
// has to stand somewhere in the program.
func untold(program map[string]bool, source string, texts map[string]string) []string {
	var out []string
	for _, template := range slices.Sorted(maps.Keys(program)) {
		switch here := texts[template]; {
		case !letter.MatchString(verbOf.ReplaceAllString(template, "")):
		case here == "":
			out = append(out, fmt.Sprintf("it lacks %q", template))
		case program[template] && !takesTheSame(template, here):
			out = append(out, fmt.Sprintf("%q takes other values than %q", here, template))
		}
	}
	for _, template := range slices.Sorted(maps.Keys(texts)) {
		_, told := program[template]
		if word := article.ReplaceAllString(template, ""); !told && !strings.Contains(source, template) && !strings.Contains(source, word) {
			out = append(out, fmt.Sprintf("%q is no template of the program", template))
		}
	}
	return out
}

var article = regexp.MustCompile(`^an? `)

var (
	letter = regexp.MustCompile(`[a-zA-Z]`)
	verbOf = regexp.MustCompile(`%[-+# 0]*(?:\[(\d+)\])?[\d.]*([a-zA-Z%])`)
)

// takesTheSame says that a translation takes the values of a template: in their order,
// or each by its index, of which one may be left out.
func takesTheSame(template, here string) bool {
	given, taken := verbsOf(template), verbsOf(here)
	indexed := strings.Contains(here, "%[")
	for i, verb := range taken {
		if given[i] != verb {
			return false
		}
	}
	return indexed || len(taken) == len(given)
}

// verbsOf are the verbs of a template by the index of their value, from 1.
func verbsOf(template string) map[int]string {
	out := map[int]string{}
	next := 1
	for _, m := range verbOf.FindAllStringSubmatch(template, -1) {
		if m[2] == "%" {
			continue
		}
		if m[1] != "" {
			next, _ = strconv.Atoi(m[1]) // figures alone
		}
		out[next] = m[2]
		next++
	}
	return out
}

// goText is the program's own source, without the tables.
func goText(t *testing.T) string {
	t.Helper()
	var out strings.Builder
	err := filepath.WalkDir(".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || !strings.HasSuffix(name, ".go") || strings.HasSuffix(name, "_test.go") || strings.Contains(name, "/findings_") {
			return err
		}
		text, err := os.ReadFile(name)
		out.Write(text)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return out.String()
}

// templates are what the program can tell of a manual, and whether it takes
// values: the words of its rules, and the templates that stand in calls that
// tell.
func templates(t *testing.T) map[string]bool {
	t.Helper()
	out := map[string]bool{}
	for _, r := range check.Catalogue() {
		for _, text := range []string{r.Title, r.Why, r.Mend} {
			if text != "" {
				out[text] = false
			}
		}
	}
	for _, f := range check.Families() {
		out[f.Title] = false
	}
	for _, k := range model.Kinds {
		out[k.Says] = false
	}
	for _, state := range []training.State{training.Due, training.Overdue, training.Stale, training.RunsOut, training.RunOut} {
		out[string(state)] = false
	}
	for _, act := range []string{"read", "watch", "perform", "renew", "review", "gained", "renewed", "withdrawn"} { // of what is due; of a role
		out[act] = false
	}
	for _, words := range []training.Words{training.AsIssued, training.Altered, training.NotKept} {
		out[string(words)] = false
	}
	for _, why := range []string{jotting.Depends, jotting.NameOnly, jotting.Misspelt, jotting.NoOrder, jotting.NoName, jotting.Reversal, schema.Files[0].Says} {
		out[why] = false
	}
	for word := range language.Default().Words.States { // as a file says that a thing stands
		out[word] = false
	}
	for dir, files := range goFiles(t) {
		room := roomOf(dir, files)
		for _, f := range files {
			for _, d := range f.Decls {
				for _, text := range room.told(t, d) {
					out[text] = true
				}
			}
		}
	}
	return out
}

// tellers are the functions that take templates, and where these stand among
// their values: those of package finding, and those of one folder that hand on
// what they are given.
var tellers = map[string]teller{
	"At": {"", []int{1}}, "WithMend": {"", []int{0}}, "See": {"", []int{1}},
	"Say": {"finding", []int{0}}, "Refuse": {"finding", []int{0}}, "Count": {"finding", []int{1, 2}}, "ListOf": {"finding", []int{0}},
	"find": {"generator/prove/walk", []int{3}}, "findOnce": {"generator/prove/walk", []int{3}}, "behind": {"generator/prove/walk", []int{1}},
	"contained": {"generator/prove/walk", []int{2}}, "notAsked": {"generator/prove/walk", []int{2}},
	"inform": {"cmd/baybinder", []int{0}}, "remark": {"cmd/baybinder", []int{0}}, "progress": {"cmd/baybinder", []int{0}}, "inShop": {"cmd/baybinder", []int{0}},
	"phrase": {"generator/base/finding", []int{0}}, "told": {"generator/offers", []int{0}},
	"done": {"generator/command/settle", []int{1}}, "leave": {"generator/command/settle", []int{1}}, "lack": {"generator/command/begin", []int{0}},
}

type teller struct {
	of     string // a folder, or the package by whose name it is called; "" is any
	places []int
}

// tells says that a call in a folder is of the teller, and not of another
// function of its name.
func (t teller) tells(call *ast.CallExpr, dir string) bool {
	switch t.of {
	case "":
		return dir != "generator/command/editor" // which has an At of its own
	case "finding":
		f, is := call.Fun.(*ast.SelectorExpr)
		if !is {
			return dir == "generator/base/finding"
		}
		of, is := f.X.(*ast.Ident)
		return is && of.Name == "finding"
	}
	return t.of == dir
}

// room is a package: what its names stand for.
type room struct {
	dir   string
	funcs map[string]*ast.FuncDecl
	names map[string]ast.Expr
}

func roomOf(dir string, files []*ast.File) *room {
	r := &room{dir, map[string]*ast.FuncDecl{}, map[string]ast.Expr{}}
	for _, f := range files {
		for _, d := range f.Decls {
			switch d := d.(type) {
			case *ast.FuncDecl:
				r.funcs[d.Name.Name] = d
			case *ast.GenDecl:
				for _, spec := range d.Specs {
					if v, is := spec.(*ast.ValueSpec); is && len(v.Values) == len(v.Names) {
						for i, name := range v.Names {
							r.names[name.Name] = v.Values[i]
						}
					}
				}
			}
		}
	}
	return r
}

// told are the templates of a declaration.
func (r *room) told(t *testing.T, d ast.Decl) []string {
	t.Helper()
	var out []string
	ast.Inspect(d, func(n ast.Node) bool {
		call, is := n.(*ast.CallExpr)
		if !is {
			return true
		}
		name := called(call)
		teller, tells := tellers[name]
		if !tells || !teller.tells(call, r.dir) {
			return true
		}
		for _, i := range teller.places {
			if i >= len(call.Args) {
				continue
			}
			texts, read := r.texts(call.Args[i], d, 0)
			place := name == "At" && len(call.Args) == 2 // in a file: vet asks for a constant where it is a template
			word := name == "Say" && len(call.Args) == 1 // by itself: the cases below tell it
			if !read && !place && !word {
				t.Errorf("%s: the template of a %s cannot be read from the source: %T", r.dir, name, call.Args[i])
			}
			out = append(out, texts...)
		}
		return true
	})
	return slices.DeleteFunc(out, func(text string) bool { return text == "" })
}

func called(call *ast.CallExpr) string {
	switch f := call.Fun.(type) {
	case *ast.Ident:
		return f.Name
	case *ast.SelectorExpr:
		return f.Sel.Name
	}
	return ""
}

// texts are the texts that an expression can be; false where that is not known.
func (r *room) texts(e ast.Expr, in ast.Decl, deep int) (out []string, read bool) {
	if deep > 4 {
		return nil, false
	}
	switch e := e.(type) {
	case *ast.BasicLit:
		text, err := strconv.Unquote(e.Value)
		return []string{text}, err == nil && e.Kind == token.STRING
	case *ast.ParenExpr:
		return r.texts(e.X, in, deep)
	case *ast.BinaryExpr:
		return r.sum(e, in, deep)
	case *ast.SelectorExpr: // of a rule, whose words are all told; of words that were made elsewhere
		return nil, slices.Contains([]string{"Title", "Why", "Mend", "Template", "Last"}, e.Sel.Name)
	case *ast.IndexExpr:
		if of, is := e.X.(*ast.Ident); is {
			return r.texts(of, in, deep+1)
		}
	case *ast.CompositeLit:
		return r.items(e, in, deep)
	case *ast.Ident:
		return r.named(e.Name, in, deep)
	case *ast.CallExpr:
		if called(e) == "String" { // of a rule's level
			return nil, true
		}
		if called(e) == "choose" && len(e.Args) == 3 {
			return r.all(e.Args[1:], in, deep)
		}
		if f := r.funcs[called(e)]; f != nil {
			return r.returned(f, deep)
		}
	}
	return nil, false
}

// sum is one text of several.
func (r *room) sum(e *ast.BinaryExpr, in ast.Decl, deep int) ([]string, bool) {
	left, first := r.texts(e.X, in, deep)
	right, second := r.texts(e.Y, in, deep)
	if e.Op != token.ADD || !first || !second || len(left) != 1 || len(right) != 1 {
		return nil, false
	}
	return []string{left[0] + right[0]}, true
}

func (r *room) all(list []ast.Expr, in ast.Decl, deep int) (out []string, read bool) {
	for _, e := range list {
		texts, ok := r.texts(e, in, deep)
		out, read = append(out, texts...), read || ok
	}
	return out, read
}

// items are the values of a list or a map.
func (r *room) items(e *ast.CompositeLit, in ast.Decl, deep int) ([]string, bool) {
	var values []ast.Expr
	for _, item := range e.Elts {
		if pair, is := item.(*ast.KeyValueExpr); is {
			item = pair.Value
		}
		values = append(values, item)
	}
	return r.all(values, in, deep)
}

// named are the texts of a name: of the package, or what is put into it in the
// declaration. Into the parameter of a function that tells its callers put it.
func (r *room) named(name string, in ast.Decl, deep int) (out []string, read bool) {
	f, is := in.(*ast.FuncDecl)
	if is {
		if t, tells := tellers[f.Name.Name]; tells && (t.of == r.dir || r.dir == "generator/base/finding") {
			return nil, true
		}
		ast.Inspect(f, func(n ast.Node) bool {
			for _, value := range putInto(name, n) {
				texts, ok := r.texts(value, in, deep+1)
				out, read = append(out, texts...), read || ok
			}
			return true
		})
	}
	if value := r.names[name]; !read && value != nil {
		return r.texts(value, in, deep+1)
	}
	return out, read
}

// putInto are the values that a name is given by an assignment or declaration.
func putInto(name string, n ast.Node) (out []ast.Expr) {
	switch n := n.(type) {
	case *ast.AssignStmt:
		for i, to := range n.Lhs {
			if x, is := to.(*ast.Ident); is && x.Name == name && len(n.Lhs) == len(n.Rhs) {
				out = append(out, n.Rhs[i])
			}
		}
	case *ast.ValueSpec:
		for i, x := range n.Names {
			if x.Name == name && len(n.Names) == len(n.Values) {
				out = append(out, n.Values[i])
			}
		}
	}
	return out
}

// returned are the texts that a function gives back.
func (r *room) returned(f *ast.FuncDecl, deep int) (out []string, read bool) {
	ast.Inspect(f, func(n ast.Node) bool {
		if back, is := n.(*ast.ReturnStmt); is && len(back.Results) > 0 {
			texts, ok := r.texts(back.Results[0], f, deep+1)
			out, read = append(out, texts...), read || ok
		}
		return true
	})
	return out, read
}
