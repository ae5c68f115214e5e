package generator_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/language"
	"baybinder/generator/language/shape"
)

// floors are the rooms under generator, each standing on those before it: a
// package imports from its own room and from those, and never from one behind.
var floors = []string{"base", "language", "model", "trade", "read", "prove", "derive", "check", "offers", "show", "command"}

// shown are the rooms of pages, in the same way: rooms of one floor stand beside
// each other, and none imports its neighbour.
var shown = [][]string{{"page"}, {"jobs"}, {"procedure", "register", "front"}, {"readings"}}

// leaves of the theme stand on no room, and any may use them.
var bare = []string{"theme/signs"}

// hands are the packages that may touch files; a name with a slash at its end
// is a whole room.
var hands = []string{"generator", "generator/read/source", "generator/show/publish", "generator/base/atomicfile", "generator/base/kept", "generator/base/ledger", "generator/base/needed", "generator/base/turn", "generator/command/", "generator/bigmanual", "cmd/"}

// clocks are the packages that may ask what time it is: the day that dated
// rules use is passed in at the top.
var clocks = []string{"cmd/", "generator/command/watch"}

// floorOf is where a package stands: the number of its room, before all rooms
// for what stands on none, and behind all for what uses them.
func floorOf(dir string) int {
	if slices.Contains(bare, dir) {
		return -1
	}
	room, _, _ := strings.Cut(strings.TrimPrefix(dir, "generator/"), "/")
	if i := slices.Index(floors, room); i >= 0 && strings.HasPrefix(dir, "generator/") {
		return i
	}
	return len(floors)
}

// shownOf is the floor of a room of pages; -1 for another package.
func shownOf(dir string) int {
	room, is := strings.CutPrefix(dir, "generator/show/")
	return slices.IndexFunc(shown, func(floor []string) bool { return is && slices.Contains(floor, room) })
}

// fault is what is wrong with an arrow from one package to another; "" is right.
func fault(from, to string) string {
	if floorOf(to) > floorOf(from) {
		return from + " imports " + to + ", which stands above it: the rooms are " + strings.Join(floors, ", ")
	}
	if f, t := shownOf(from), shownOf(to); f >= 0 && t >= 0 && f <= t {
		return from + " imports " + to + ", which does not stand below it"
	}
	return ""
}

// goFiles parses every file of the program, by folder.
func goFiles(t *testing.T) map[string][]*ast.File {
	t.Helper()
	files := map[string][]*ast.File{}
	for _, top := range []string{"cmd", "generator", "theme"} {
		err := fs.WalkDir(os.DirFS(".."), top, func(name string, d fs.DirEntry, err error) error {
			if err != nil || !strings.HasSuffix(name, ".go") || strings.HasSuffix(name, "_test.go") {
				return err
			}
			f, err := parser.ParseFile(token.NewFileSet(), filepath.Join("..", name), nil, 0)
			files[path.Dir(name)] = append(files[path.Dir(name)], f)
			return err
		})
		if err != nil {
			t.Fatal(err)
		}
	}
	return files
}

func TestArrowsPointDown(t *testing.T) {
	t.Parallel()
	for dir, files := range goFiles(t) {
		for _, f := range files {
			for _, spec := range f.Imports {
				to, ours := strings.CutPrefix(strings.Trim(spec.Path.Value, `"`), "baybinder/")
				if said := fault(dir, to); ours && said != "" {
					t.Error(said)
				}
			}
		}
	}
}

// The test above objects to a wrong arrow.
func TestAWrongArrowIsNamed(t *testing.T) {
	t.Parallel()
	for _, c := range []struct {
		from, to string
		wrong    bool
	}{
		{"generator/base/quantity", "generator/model", true},
		{"generator/prove/walk", "generator/check", true},
		{"generator/check", "generator/show/page", true},
		{"generator/offers", "generator/command/rename", true},
		{"generator/offers", "generator/check", false},
		{"generator/language/words", "generator/model", true},
		{"generator/read/source", "theme", true},
		{"generator/check", "generator/prove/walk", false},
		{"generator/command/rename", "generator/read/edit", false},
		{"theme", "generator/show/page", false},
		{"generator/show/page", "generator/show/jobs", true},
		{"generator/show/register", "generator/show/procedure", true},
		{"generator/show/readings", "generator/show/procedure", false},
		{"generator/show/page", "generator/show/search", false},
		{"cmd/baybinder", "generator", false},
	} {
		if said := fault(c.from, c.to); (said != "") != c.wrong {
			t.Errorf("%s to %s: %q", c.from, c.to, said)
		}
	}
}

// calls says whether a file calls the named function, or any of the package
// for "".
func calls(f *ast.File, pkg, name string) (found bool) {
	ast.Inspect(f, func(n ast.Node) bool {
		if s, ok := n.(*ast.SelectorExpr); ok {
			x, ok := s.X.(*ast.Ident)
			found = found || ok && x.Name == pkg && x.Obj == nil && (name == "" || s.Sel.Name == name)
		}
		return !found
	})
	return found
}

func may(dir string, list []string) bool {
	return slices.ContainsFunc(list, func(a string) bool { return dir == a || strings.HasSuffix(a, "/") && strings.HasPrefix(dir, a) })
}

func TestFewTouchFilesOrTheClock(t *testing.T) {
	t.Parallel()
	for dir, files := range goFiles(t) {
		for _, f := range files {
			if calls(f, "os", "") && imports(f, "os") && !may(dir, hands) {
				t.Errorf("%s uses os: files are read by read/source and written by show/publish, base/atomicfile and the commands", dir)
			}
			if calls(f, "time", "Now") && !may(dir, clocks) {
				t.Errorf("%s asks what time it is: today is passed in at the top", dir)
			}
		}
	}
}

func imports(f *ast.File, name string) bool {
	return slices.ContainsFunc(f.Imports, func(s *ast.ImportSpec) bool { return strings.Trim(s.Path.Value, `"`) == name })
}

// Which language is which is known in the room of languages alone: elsewhere
// nothing is said of one by its code.
func TestNoCodeOfALanguageIsCompared(t *testing.T) {
	t.Parallel()
	for dir, files := range goFiles(t) {
		if strings.HasPrefix(dir, "generator/language") {
			continue
		}
		for _, f := range files {
			for _, code := range codesIn(f) {
				t.Errorf("%s has the code of a language, %s: ask generator/language what it needs of it", dir, code)
			}
		}
	}
}

// codesIn are the literals of a file that are the code of a language.
func codesIn(f *ast.File) (found []string) {
	ast.Inspect(f, func(n ast.Node) bool {
		if lit, ok := n.(*ast.BasicLit); ok && lit.Kind == token.STRING {
			text := strings.TrimSuffix(strings.Trim(lit.Value, "\"`"), "-")
			if slices.ContainsFunc(language.All(), func(l *shape.Language) bool { return l.Code == text }) {
				found = append(found, lit.Value)
			}
		}
		return true
	})
	return found
}

// The test above sees a code in each place where one can stand.
func TestACodeOfALanguageIsFound(t *testing.T) {
	t.Parallel()
	for text, want := range map[string]int{
		`if l == "es" { }`: 1, `switch l { case "en": }`: 1, `x = map[string]int{"en": 1, "es": 2}`: 2, `y(l, "es-")`: 1, `y("yes")`: 0,
	} {
		f, err := parser.ParseFile(token.NewFileSet(), "x.go", "package x\nfunc f() { "+text+" }", 0)
		if err != nil {
			t.Fatal(err)
		}
		if got := codesIn(f); len(got) != want {
			t.Errorf("%s: %q, want %d", text, got, want)
		}
	}
}

// A kind of link is asked for by its constant or by what it does, never by a
// text of the asker's own: a slip in one would match nothing.
func TestNoKindIsNamedByAText(t *testing.T) {
	t.Parallel()
	for dir, files := range goFiles(t) {
		for _, f := range files {
			ast.Inspect(f, func(n ast.Node) bool {
				c, is := n.(*ast.CallExpr)
				if !is || len(c.Args) != 1 {
					return true
				}
				called, is := c.Fun.(*ast.SelectorExpr)
				if text, literal := c.Args[0].(*ast.BasicLit); is && literal && called.Sel.Name == "Is" && text.Kind == token.STRING {
					t.Errorf("%s: Is(%s): use the constant of model/kinds.go", dir, text.Value)
				}
				return true
			})
		}
	}
}
