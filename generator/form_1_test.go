package generator

import (
	"errors"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/base/finding"
	"baybinder/generator/command/issue"
	"baybinder/generator/command/people"
	"baybinder/generator/derive/training"
	"baybinder/generator/model"
)

// The shop of testdata/form-1 was written, issued and recorded with the program
// whose fingerprints were of the first form, and is kept as that program left
// it. No later version may find anything new in its records, nor call what
// nobody touched changed.

func form1(t *testing.T) string {
	t.Helper()
	root := t.TempDir()
	if err := os.CopyFS(root, os.DirFS(filepath.Join("testdata", "form-1"))); err != nil {
		t.Fatal(err)
	}
	return root
}

func checkOn(t *testing.T, root, day string) *Result {
	t.Helper()
	today, ok := model.ParseDate(day)
	if !ok {
		t.Fatal(day)
	}
	r, err := Check(Options{Manual: root, Today: today})
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func edit1(t *testing.T, root, name, from, to string) {
	t.Helper()
	full := filepath.Join(root, filepath.FromSlash(name))
	data, err := os.ReadFile(full)
	if err != nil || !strings.Contains(string(data), from) {
		t.Fatalf("%s does not hold %q: %v", name, from, err)
	}
	if err := os.WriteFile(full, []byte(strings.Replace(string(data), from, to, 1)), 0o644); err != nil {
		t.Fatal(err)
	}
}

// foundIn are the codes of what is found in what people did and issued.
func foundIn(r *Result) []string {
	var out []string
	for _, f := range r.Findings {
		name := f.At.Path()
		if strings.HasPrefix(name, "readings/") || strings.HasPrefix(name, "records/") || name == "revisions.csv" || f.Code == "changed-since-issue" || f.Level == finding.Error {
			out = append(out, name+": "+f.Code)
		}
	}
	return out
}

func TestAShopOfTheFirstFormIsReadAsItWas(t *testing.T) {
	t.Parallel()
	r := checkOn(t, form1(t), "2026-03-01")
	if found := foundIn(r); len(found) > 0 {
		t.Errorf("found in a shop that nobody touched: %q", found)
	}
	staff := training.NewStandings(r.Manual, model.Date{Year: 2026, Month: 3, Day: 1})
	var got []string
	for _, s := range staff.Standings() {
		got = append(got, s.Person.ID+" "+s.Reading.Procedure.ID+" "+string(s.State))
	}
	// As the program of the day said it, by hand from the rows: the trainee who
	// read the broom before it was issued has read what was issued the day after.
	want := []string{
		"t-01 make-safe good", "t-01 lid-job good", "t-01 sweep good",
		"t-02 make-safe good", "t-02 lid-job good", "t-02 sweep due",
	}
	if !slices.Equal(got, want) {
		t.Errorf("got  %q\nwant %q", got, want)
	}
	fitter := staff.Roles(r.Manual.People[0])
	if len(fitter) != 1 || fitter[0].ID != "fitter" || fitter[0].On.String() != "2026-01-12" {
		t.Errorf("the role that the plan gave: %+v", fitter)
	}
	if len(r.Manual.Jobs) != 1 || r.Manual.Jobs[0].To == nil || len(r.Manual.Answers) != 1 || r.Manual.Answers[0].To == nil {
		t.Error("the half-done job or its answer is lost")
	}
}

// An upgrade lets no change pass either: what the first form held is compared
// in the first form.
func TestAChangeToAShopOfTheFirstFormIsTold(t *testing.T) {
	t.Parallel()
	for _, e := range [][3]string{
		{"machines/press.yaml", "torque: 24 N·m", "torque: 26 N·m"},
		{"machines/press.yaml", "supply: oil-32, capacity", "supply: rag, capacity"},
		{"register/hazards.yaml", "Stand aside.", "Stand well aside."},
		{"register/holds.yaml", "for: 2 min", "for: 3 min"},
		{"procedures/sweep.md", "Never leave", "Leave"},
		{"procedures/press/lid-job.md", "Mark both lines", "Mark the two lines"},
	} {
		root := form1(t)
		edit1(t, root, e[0], e[1], e[2])
		found := checkOn(t, root, "2026-03-01").Findings
		if !slices.ContainsFunc(found, func(f finding.Finding) bool { return f.Code == "changed-since-issue" }) {
			t.Errorf("%s: %q for %q is not told", e[0], e[2], e[1])
		}
	}
}

// The shop goes on with the program of today: what stands in its tables stays as
// it is, byte for byte, columns that it lacks are added behind it, and neither a
// later issue nor a later row brings a finding into what stood.
func TestAShopOfTheFirstFormGoesOn(t *testing.T) {
	root := form1(t)
	text := func(name string) string {
		data, err := os.ReadFile(filepath.Join(root, filepath.FromSlash(name)))
		if err != nil {
			t.Fatal(err)
		}
		return string(data)
	}
	tables := []string{"revisions.csv", "readings/record.csv"}
	before := map[string]string{}
	for _, name := range tables {
		before[name] = text(name)
	}
	job := text("records/lid-job-half-2026-02-12.json")

	edit1(t, root, "procedures/sweep.md", "Never leave", "Never ever leave")
	r := checkOn(t, root, "2026-03-02")
	today := model.Date{Year: 2026, Month: 3, Day: 2}
	o := issue.Order{Folder: root, Changed: true, Date: today, Reason: "A stronger word.", Readers: "reread"}
	done, err := issue.Prepare(r.Manual, r.Findings, o)
	if err == nil {
		err = errors.Join(issue.Settle(done, o.Readers), issue.Write(done, o))
	}
	if err != nil || len(done) != 1 || done[0].Procedure.ID != "sweep" || len(done[0].Changes) == 0 {
		t.Fatalf("issued %+v: %v", done, err)
	}
	if err := people.Add(checkOn(t, root, "2026-03-02").Manual, root, people.New{ID: "t-77", Name: "Newcomer", Started: today}); err != nil {
		t.Fatal(err)
	}
	m := checkOn(t, root, "2026-03-02").Manual
	var entries []training.Entry
	for _, who := range []string{"t-01", "t-77"} {
		entries = append(entries, training.Entry{Folder: root, Person: who, Procedure: "sweep", Act: "read", Note: "in class", Date: today})
	}
	if _, err := training.RecordAll(m, root, entries); err != nil {
		t.Fatal(err)
	}
	if err := people.Leave(m, root, []string{"t-02"}, today); err != nil {
		t.Fatal(err)
	}

	for _, name := range tables {
		if !strings.HasPrefix(text(name), before[name]) {
			t.Errorf("%s: what stood was changed", name)
		}
	}
	if text("records/lid-job-half-2026-02-12.json") != job {
		t.Error("the half-done job was changed")
	}
	after := checkOn(t, root, "2026-03-03")
	if found := foundIn(after); len(found) > 0 {
		t.Errorf("found in a shop that goes on: %q", found)
	}
	staff := training.NewStandings(after.Manual, model.Date{Year: 2026, Month: 3, Day: 3})
	for _, s := range staff.Standings() {
		if s.Person.ID == "t-02" || s.Person.ID == "t-01" && s.State != training.Good {
			t.Errorf("%s %s %s", s.Person.ID, s.Reading.Procedure.ID, s.State)
		}
	}
	if len(after.Manual.Jobs) != 1 || after.Manual.Jobs[0].To == nil {
		t.Error("the half-done job is lost")
	}
}
