package generator_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/language"
)

// plain are the functions of the pages that make text of a number which leads to
// no working, with why it needs none.
var plain = map[string]string{
	"jobs.booked":              "a name of a file",
	"jobs.OlderOnes":           "counts the rows that are folded under it",
	"jobs.measuredAt":          "an id",
	"jobs.decimal":             "the limit of a record, as it was typed",
	"jobs.plotText":            "its text leads to its working in plotWorked; in the picture nothing can",
	"jobs.rounded":             "a value of a record",
	"jobs.Record":              "by how much a clock was set back, as the record has it",
	"procedure.missed":         "how many of a fastener or a tool, as the files have it",
	"procedure.whyMissed":      "likewise",
	"procedure.closeOut":       "a step's number",
	"procedure.numberOf":       "how many of a fastener, as the machine's file has it",
	"procedure.itemWords":      "a step's number",
	"procedure.fastened":       "how many of a fastener, as the machine's file has it",
	"procedure.tightness":      "the place of a stage",
	"procedure.once":           "an id",
	"procedure.inRound":        "an id",
	"procedure.phase":          "a phase's time, as it was typed",
	"procedure.step":           "counts the notes at the page's foot, where it leads",
	"procedure.within":         "a time that was typed, in seconds, for the script",
	"procedure.fastener":       "the place of a stage",
	"procedure.untimedPut":     "goes into a working",
	"procedure.peopleOf":       "goes into a working",
	"procedure.untimedWords":   "leads to its working in untimed",
	"procedure.drawnLine":      "a picture: the list below it says the same, worked out",
	"procedure.workWorked":     "is a working",
	"procedure.computedPhase":  "is a working",
	"procedure.waitsOf":        "goes into a working",
	"procedure.computedLeast":  "is a working",
	"procedure.listings":       "goes into a working",
	"readings.countedFrom":     "compares days: what is shown is worked out in Until",
	"readings.placed":          "a place in an order: the answer to an exercise",
	"readings.derived":         "how many of a fastener, as the machine's file has it",
	"readings.tightness":       "the place of a stage",
	"readings.shuffled":        "a seed",
	"readings.grids":           "places in a list",
	"readings.NumberText":      "a place in a list",
	"readings.assigned":        "places in a list",
	"readings.ticks":           "a place, of how many the plan asks for",
	"readings.since":           "a revision's number",
	"readings.heap":            "counts the rest of a list: a test counts it again",
	"page.Amount":              "an amount as it was typed",
	"page.QRPicture":           "a picture",
	"page.PictureOf":           "how large a picture is shown",
	"page.ComputedLift":        "the title of a working",
	"page.triesAndCall":        "tries that were typed",
	"page.ends":                "the ends of a limit, for the script",
	"page.Duration":            "leads to its working where it is used",
	"page.Spanned":             "leads to its working in BayTime and Spread",
	"page.digits":              "goes into a working",
	"page.BayWorked":           "is a working",
	"page.bayPut":              "goes into a working",
	"page.exactly":             "an amount as it stands in the manual, with the calendar's word for its unit",
	"procedure.moves":          "numbers for the script alone, of rows on the same page",
	"page.UsesOf":              "counts the rest of a list, to which it leads",
	"page.number":              "a computed number's own link",
	"front.readableIn":         "how many rows of how many are listed below it",
	"front.row":                "a step's number",
	"front.inFull":             "goes into a working",
	"front.listed":             "a place in a file",
	"page.PartAt":              "a name of a file",
	"page.PartsOf":             "places in a list",
	"register.torqueRow":       "how many of a fastener, as the machine's file has it; the place of a stage",
	"register.serials":         "serial numbers, as the machine's file has them",
	"register.Hazards":         "an order",
	"register.machineFastener": "the place of a stage",
	"register.Tool":            "how many are owned, as the register has it",
	"register.Tools":           "likewise",
}

// marks are the functions through which a computed number leads to its working.
var marks = []string{"Worked", "WorkedHow", "Tallied", "AmountWorked", "Until", "converted", "PeopleWorked", "waited", "untimed", "withOthers"}

// counting are the words of the program that take a number.
func counting() map[string]bool {
	takes, names := regexp.MustCompile(`%(?:\.\d)?[dfg]`), map[string]bool{}
	var look func(v reflect.Value)
	look = func(v reflect.Value) {
		for i := range v.NumField() {
			switch f := v.Field(i); f.Kind() {
			case reflect.Struct:
				look(f)
			case reflect.String:
				if takes.MatchString(f.String()) {
					names[v.Type().Field(i).Name] = true
				}
			}
		}
	}
	look(reflect.ValueOf(*language.Default()))
	return names
}

// numbersMade says whether a function makes text of a number, and whether it
// leads one to its working.
func numbersMade(f *ast.FuncDecl, words map[string]bool) (makes, leads bool) {
	literal := regexp.MustCompile(`%(?:\.\d)?[dfg]`)
	ast.Inspect(f, func(n ast.Node) bool {
		call, is := n.(*ast.CallExpr)
		if !is {
			return true
		}
		name, of := "", ""
		switch fun := call.Fun.(type) {
		case *ast.Ident:
			name = fun.Name
		case *ast.SelectorExpr:
			name = fun.Sel.Name
			if x, is := fun.X.(*ast.Ident); is {
				of = x.Name
			}
		}
		leads = leads || slices.Contains(marks, name)
		switch {
		case of == "strconv" && (name == "Itoa" || strings.HasPrefix(name, "Format")),
			name == "Duration" || name == "Elapsed" || name == "ElapsedText" || name == "Beside" || name == "Number" || name == "AddTo",
			of == "words" && name == "Count":
			makes = true
		case strings.HasPrefix(name, "Sprintf") && len(call.Args) > 0:
			switch format := call.Args[0].(type) {
			case *ast.BasicLit:
				makes = makes || literal.MatchString(format.Value)
			case *ast.SelectorExpr:
				makes = makes || words[format.Sel.Name]
			}
		}
		return true
	})
	return makes, leads
}

// A function of the pages that makes text of a number leads it to its working,
// or says why it needs none; templates write no number but what is counted again
// by a test.
func TestNumbersOfPagesAreWrittenByOneFunction(t *testing.T) {
	t.Parallel()
	words, met := counting(), map[string]bool{}
	for dir, files := range goFiles(t) {
		room, is := strings.CutPrefix(dir, "generator/show/")
		if !is || slices.Contains([]string{"plot", "search", "publish", "page/pagetest"}, room) {
			continue
		}
		for _, file := range files {
			for _, d := range file.Decls {
				f, is := d.(*ast.FuncDecl)
				if !is {
					continue
				}
				name := room + "." + f.Name.Name
				makes, leads := numbersMade(f, words)
				if !makes || leads {
					continue
				}
				if met[name] = true; plain[name] == "" {
					t.Errorf("%s makes text of a number, leads it to no working, and says nowhere why", name)
				}
			}
		}
	}
	for name := range plain {
		if !met[name] {
			t.Errorf("%s makes no such text: take it out of the table", name)
		}
	}
	templates, err := filepath.Glob("../theme/*.qtpl")
	must(t, err)
	for _, name := range templates {
		data, err := os.ReadFile(name)
		must(t, err)
		for _, at := range regexp.MustCompile(`\{%[df] `).FindAllStringIndex(string(data), -1) {
			line := string(data[strings.LastIndexByte(string(data[:at[0]-60]), '<'):at[1]])
			if !regexp.MustCompile(`data-counts=|class="counts"|class="num"|data-[a-z]+="$|data-[a-z]+="\{%d $`).MatchString(line) {
				t.Errorf("%s writes a number that no test counts again: %s", name, line)
			}
		}
	}
}

// The test above sees each way to write a number, and what leads it on.
func TestAWrittenNumberIsSeen(t *testing.T) {
	t.Parallel()
	for body, want := range map[string][2]bool{
		`return strconv.Itoa(n)`:                               {true, false},
		`return fmt.Sprintf("%d of them", n)`:                  {true, false},
		`return fmt.Sprintf(w.SoFar, 1, n)`:                    {true, false},
		`return Worked(strconv.Itoa(n), c)`:                    {true, true},
		`return s.Tallied(page.Duration(n), "", "", "", "")`:   {true, true},
		`return fmt.Sprintf("%s and %s", a, b)`:                {false, false},
		`return words.Count(w.PeopleAtOnce, n)`:                {true, false},
		`return quantity.Of(1, u, 2).In(v).Beside(u).String()`: {true, false},
	} {
		file, err := parser.ParseFile(token.NewFileSet(), "a.go", "package a\nfunc f() string { "+body+" }", 0)
		must(t, err)
		makes, leads := numbersMade(file.Decls[0].(*ast.FuncDecl), counting())
		if got := [2]bool{makes, leads}; got != want {
			t.Errorf("%s: %v, want %v", body, got, want)
		}
	}
}
