package check

import (
	"strings"
	"testing"
	"unicode/utf8"

	"baybinder/generator/base/casefile"
	"baybinder/generator/base/finding"
)

// FuzzChecks runs everything over a manual that holds one machine, one
// register's text under all registers' names and one procedure, all hostile:
// nothing panics, every place is inside its file, and every finding has the
// words that a renderer needs. The seeds are the cases' own files.
func FuzzChecks(f *testing.F) {
	for _, name := range caseNames(f) {
		archive, err := caseNamed(name)
		if err != nil {
			f.Fatal(err)
		}
		for _, which := range []string{"bad/", "good/"} {
			machine, register, procedure := seeds(casefile.Part(archive, which))
			f.Add(machine, register, procedure)
		}
	}
	f.Fuzz(func(t *testing.T, machine, register, procedure string) {
		if !utf8.ValidString(machine) || !utf8.ValidString(register) || !utf8.ValidString(procedure) || len(machine+register+procedure) > 1<<14 {
			t.Skip() // what is not UTF-8 is not read at all
		}
		files := map[string]string{
			"shop.yaml": "title: Test shop\nalso: [es]\nlocks: { tool: padlock }\n", "machines/tug.yaml": machine, "machines/press.yaml": machine,
			"procedures/sweep.md": procedure, "procedures/sweep.es.md": procedure, "procedures/a-lower.md": procedure,
		}
		for _, name := range []string{"tools", "hazards", "holds", "supplies", "roles"} {
			files["register/"+name+".yaml"] = register
		}
		wellTold(t, findIn(files))
	})
}

// FuzzRecords runs everything over a manual that holds a hostile record, a
// hostile list of answers and a hostile list of people.
func FuzzRecords(f *testing.F) {
	for _, name := range caseNames(f) {
		archive, err := caseNamed(name)
		if err != nil {
			f.Fatal(err)
		}
		for _, which := range []string{"bad/", "good/"} {
			files := casefile.Part(archive, which)
			for file, text := range files {
				if strings.HasPrefix(file, "records/") && strings.HasSuffix(file, ".json") {
					f.Add(text, files["records/answers.csv"], files["readings/people.csv"])
				}
			}
		}
	}
	f.Fuzz(func(t *testing.T, record, answers, people string) {
		if !utf8.ValidString(record) || !utf8.ValidString(answers) || !utf8.ValidString(people) || len(record+answers+people) > 1<<14 {
			t.Skip() // what is not UTF-8 is not read at all
		}
		wellTold(t, findIn(map[string]string{
			"machines/tug.yaml":     "name: Tug\noptions: { cab: Cab, canopy: Canopy }\nonly-one-of: [[cab, canopy]]\nunits: [{ serials: 1 to 9, options: [cab] }]\n",
			"register/holds.yaml":   "gap: { name: gap, kind: measure, what: the gap, limit: 0.3 to 0.5 mm }\n",
			"procedures/set-gap.md": "---\ntitle: Set the gap\nfor: tug\nholds: [gap]\n---\n## Work\n\n1. Measure [the gap](hold:gap).\n",
			"records/a.json":        record, "records/b.json": record, "records/answers.csv": answers, "readings/people.csv": people,
		}))
	})
}

// wellTold says that every finding stands inside its file and has the words
// that a renderer needs.
func wellTold(t *testing.T, list []finding.Finding) {
	t.Helper()
	for _, found := range list {
		at := found.At
		if at.File == nil || at.Start < 0 || at.End < at.Start || at.End > len(at.File.Text) {
			t.Errorf("%s [%s] stands at %d to %d of %d bytes", found.Message, found.Code, at.Start, at.End, len(at.File.Text))
		}
		if found.Message == "" || strings.Contains(found.Message, "%!") || strings.Contains(found.Mend, "%!") {
			t.Errorf("the words of %s are %q and %q", found.Code, found.Message, found.Mend)
		}
		if Named(found.Code) == nil {
			t.Errorf("the code %s is not in the catalogue", found.Code)
		}
	}
}

// seeds are the first machine, register and procedure of a case.
func seeds(files map[string]string) (machine, register, procedure string) {
	for name, text := range files {
		switch top, _, _ := strings.Cut(name, "/"); {
		case top == "machines" && (machine == "" || text < machine):
			machine = text
		case top == "register" && (register == "" || text < register):
			register = text
		case top == "procedures" && (procedure == "" || text < procedure):
			procedure = text
		}
	}
	return machine, register, procedure
}
