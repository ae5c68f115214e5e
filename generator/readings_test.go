package generator_test

import (
	"context"
	"flag"
	"fmt"
	"io/fs"
	"math/rand/v2"
	"os"
	"path"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/performance"
	"github.com/chromedp/chromedp"

	"baybinder/generator"
	"baybinder/generator/base/finding"
	"baybinder/generator/bigmanual"
	"baybinder/generator/command/issue"
	"baybinder/generator/derive/training"
	"baybinder/generator/model"
)

// Known: DERIVED.

// trained is the demo manual as it was begun with a record of its own: readings
// that are true, that are stale and that nobody asked for, performances, roles
// that ran out, jobs that were done before anything was issued.
func trained(t *testing.T) string {
	t.Helper()
	folder := filepath.Join(t.TempDir(), "content")
	must(t, bigmanual.Begun("../content", folder))
	must(t, os.CopyFS(filepath.Join(folder, "records"), os.DirFS("testdata/jobs")))
	must(t, os.WriteFile(filepath.Join(folder, "readings/people.csv"), []byte(`person,name,roles,started,plans
a-v,A.V.,,2026-04-20,first-week
e-r,E.R.,,2026-04-01,first-week
c-n,C.N.,mechanic lifting@2023-05-15,2026-04-27,compressor-work
f-t,F.T.,mechanic lifting@2025-06-02 press-work@2023-01-02,2026-04-27,press-work
g-m,G.M.,mechanic electrical-80@2025-03-10 press-work@2024-04-01 electrical-400@2024-04-01,2026-04-27,press-work evening-shift
h-p,H.P.,mechanic foreman trainer,2026-04-27,evening-shift
`), 0o644))
	shop := filepath.Join(folder, "shop.yaml")
	text, err := os.ReadFile(shop)
	must(t, err)
	must(t, os.WriteFile(shop, regexp.MustCompile(`(?m)^issue: .*\n`).ReplaceAll(text, nil), 0o644)) // anybody may issue here
	give(t, folder, "2026-04-10", "isolate-press")
	for _, row := range []string{"g-m isolate-press read", "f-t isolate-press read", "c-n isolate-press read", "a-v tug-walk-round read", "h-p isolate-press taught"} {
		set(t, folder, "2026-04-28", row, "")
	}
	set(t, folder, "2026-04-29", "g-m isolate-press performed", "h-p")
	file := filepath.Join(folder, "procedures/press/isolate-press.md")
	text, err = os.ReadFile(file)
	must(t, err)
	must(t, os.WriteFile(file, []byte(strings.Replace(string(text), "\n1. ", "\n1. Look first. ", 1)), 0o644))
	give(t, folder, "2026-05-02", "isolate-press")
	set(t, folder, "2026-05-03", "f-t isolate-press read", "")
	return folder
}

// give issues a procedure.
func give(t *testing.T, folder, day, procedure string) {
	t.Helper()
	date, _ := model.ParseDate(day)
	r, err := generator.Check(generator.Options{Manual: folder, Today: date})
	must(t, err)
	_, err = issueNow(r.Manual, r.Findings, issue.Order{Folder: folder, Procedures: []string{procedure}, Date: date, Reason: "For the test.", Written: "h-p", Checked: "h-p", Readers: "reread"})
	must(t, err)
}

// set adds a row to the record.
func set(t *testing.T, folder, day, row, by string) {
	t.Helper()
	date, _ := model.ParseDate(day)
	r, err := generator.Check(generator.Options{Manual: folder, Today: date})
	must(t, err)
	w := strings.Fields(row)
	_, err = training.RecordAll(r.Manual, folder, []training.Entry{{Folder: folder, Person: w[0], Procedure: w[1], Act: w[2], By: by, Date: date}})
	must(t, err)
}

// withReadings builds a manual's site and its readings.
func withReadings(t *testing.T, folder string) (site, readings string, r *generator.Result) {
	t.Helper()
	to := t.TempDir()
	site, readings = filepath.Join(to, "site"), filepath.Join(to, "readings")
	r, err := generator.Build(generator.Options{Manual: folder, To: site, Readings: readings, Today: demoDay})
	must(t, err)
	if r.Errors() > 0 {
		t.Fatal(r.Findings)
	}
	return site, readings, r
}

// theTrained is a trained manual with its readings, made when a test first asks for
// it. Nobody changes it.
var theTrained struct {
	sync.Mutex
	folder, readings string
}

func trainedReadings(t *testing.T) (folder, readings string) {
	t.Helper()
	theTrained.Lock()
	defer theTrained.Unlock()
	if theTrained.readings == "" {
		top, err := os.MkdirTemp("", "trained")
		must(t, err)
		atEnd(func() { _ = os.RemoveAll(top) })
		theTrained.folder, readings = filepath.Join(top, "content"), filepath.Join(top, "readings")
		must(t, os.CopyFS(theTrained.folder, os.DirFS(trained(t))))
		_, err = generator.Build(generator.Options{Manual: theTrained.folder, To: filepath.Join(top, "site"), Readings: readings, Today: demoDay})
		must(t, err)
		theTrained.readings = readings
	}
	return theTrained.folder, theTrained.readings
}

// names are the people of a manual as a text may name them: by id or by name.
func names(people []*model.Person) *regexp.Regexp {
	var words []string
	for _, p := range people {
		words = append(words, regexp.QuoteMeta(p.ID), regexp.QuoteMeta(p.Name))
	}
	return regexp.MustCompile(`(?:^|[^\pL\pN-])(` + strings.Join(words, "|") + `)(?:$|[^\pL\pN-])`)
}

// No file of the site names a person of people.csv, whether the readings are
// written too or not, and whatever the findings say of them.
func TestTheSiteNamesNobody(t *testing.T) {
	t.Parallel()
	told := trained(t) // and a job by somebody who had not read what stood: the finding says who
	give(t, told, "2026-04-20", "isolate-tug-traction")
	for _, folder := range []string{"../content", told} {
		site, readings, r := withReadings(t, folder)
		if folder == told && !slices.ContainsFunc(r.Findings, func(f finding.Finding) bool { return f.Names && strings.Contains(f.Message, "G.M.") }) {
			t.Error("nothing is found that names somebody: the test looks at nothing")
		}
		alone := filepath.Join(t.TempDir(), "site")
		_, err := generator.Build(generator.Options{Manual: folder, To: alone, Today: demoDay})
		must(t, err)
		with, without, anyone := pages(t, site), pages(t, alone), names(r.Manual.People)
		if len(with) != len(without) {
			t.Errorf("%s: %d files with the readings, %d without", folder, len(with), len(without))
		}
		for name, data := range with {
			if string(without[name]) != string(data) {
				t.Errorf("%s: %s is another where the readings are written too", folder, name)
			}
			if found := anyone.FindString(name + "\n" + string(data)); found != "" {
				t.Errorf("%s: %s names someone: %q", folder, name, found)
			}
		}
		for _, p := range r.Manual.People { // the test sees a name where there is one
			sheet, err := os.ReadFile(filepath.Join(readings, "people", p.ID+".html"))
			must(t, err)
			if anyone.FindString(p.Name) == "" || anyone.FindString(" "+p.ID+".") == "" || !anyone.Match(sheet) {
				t.Errorf("%s: the sheet of %s names nobody", folder, p.ID)
			}
		}
	}
}

// The readings are the same bytes each time; every address in them leads to a
// file of theirs.
func TestReadingsLead(t *testing.T) {
	t.Parallel()
	folder, readings := trainedReadings(t)
	_, again, _ := withReadings(t, folder)
	site, second := pages(t, readings), pages(t, again)
	ids := map[string]map[string]bool{}
	for name, data := range site {
		if string(second[name]) != string(data) {
			t.Errorf("%s differs", name)
		}
		ids[name] = map[string]bool{}
		if path.Ext(name) == ".html" {
			for _, e := range elements(t, data) {
				if id := e.attr["id"]; id != "" && ids[name][id] {
					t.Errorf("%s: the id %s stands twice", name, id)
				}
				ids[name][e.attr["id"]] = true
			}
		}
	}
	for name, data := range site {
		if path.Ext(name) == ".html" {
			for _, e := range elements(t, data) {
				leads(t, site, ids, name, e)
			}
		}
	}
}

// The jobs stand in the readings with names: on the first page, at their
// procedure, on the sheet of each who did them, and each by itself. One of a
// later day is not known yet.
func TestReadingsShowWhoDidWhat(t *testing.T) {
	t.Parallel()
	folder := trained(t)
	both := filepath.Join(folder, "records", "tug-112-stop-test-2026-04-30.json")
	text, err := os.ReadFile(both)
	must(t, err)
	must(t, os.WriteFile(both, []byte(strings.Replace(string(text), `"D.S."`, `"D.S. and h-p"`, 1)), 0o644))
	_, readings, _ := withReadings(t, folder)
	folderPages := pages(t, readings)
	const isolated, stopped, later = "records/tug-112-isolate-2026-04-29.html", "records/tug-112-stop-test-2026-04-30.html", "records/tug-112-stop-test-2026-11-12.html"
	if folderPages[later] != nil {
		t.Error("a job of a later day has a page")
	}
	for _, c := range []struct {
		page, leads string // the page, and where it leads
		says        string
		want        bool
	}{
		{"index.html", isolated, ">G.M.<", true}, {"index.html", stopped, ">D.S. and h-p<", true}, {"index.html", later, "", false},
		{"procedures/isolate-tug-traction.html", isolated, ">G.M.<", true}, {"procedures/isolate-tug-traction.html", stopped, "", false},
		{"people/g-m.html", isolated, ">G.M.<", true}, {"people/g-m.html", stopped, "", false},
		{"people/h-p.html", stopped, ">D.S. and h-p<", true}, {"people/h-p.html", isolated, "", false}, {"people/a-v.html", isolated, "", false},
		{isolated, "people/g-m.html", "Done by: G.M.", true}, {isolated, "procedures/isolate-tug-traction.html", "The floor behind bay 3 slopes.", true},
		{stopped, "people/h-p.html", "Done by: D.S. and h-p", true},
	} {
		found := false
		for _, e := range elements(t, folderPages[c.page]) {
			found = found || e.tag == "a" && path.Join(path.Dir(c.page), e.attr["href"]) == c.leads
		}
		if found != c.want {
			t.Errorf("%s leads to %s: %v", c.page, c.leads, found)
		}
		if !strings.Contains(string(folderPages[c.page]), c.says) {
			t.Errorf("%s does not say %q", c.page, c.says)
		}
	}
}

// A folder of readings lies apart from the manual and the site, takes no site's
// place, and a refusal publishes nothing.
func TestReadingsLieApart(t *testing.T) {
	t.Parallel()
	folder := trained(t)
	top := t.TempDir()
	site, other, mine := filepath.Join(top, "site"), filepath.Join(top, "other"), filepath.Join(top, "mine")
	must(t, os.MkdirAll(mine, 0o755))
	must(t, os.WriteFile(filepath.Join(mine, "letter.txt"), []byte("mine"), 0o644))
	must(t, os.Symlink(folder, filepath.Join(top, "link")))
	_, err := generator.Build(generator.Options{Manual: folder, To: other, Today: demoDay})
	must(t, err)
	for _, bad := range []string{
		folder, filepath.Join(folder, "readings", "pages"), filepath.Dir(folder), filepath.Join(top, "link", "pages"),
		site, filepath.Join(site, "readings"), top, other, mine,
	} {
		if _, err := generator.Build(generator.Options{Manual: folder, To: site, Readings: bad, Today: demoDay}); err == nil {
			t.Errorf("the readings were written to %s", bad)
		}
		if _, err := os.Stat(site); err == nil {
			t.Fatalf("a site was published although the readings could not go to %s", bad)
		}
	}
	for range 2 { // the second takes the place of the first
		_, err := generator.Build(generator.Options{Manual: folder, To: site, Readings: filepath.Join(top, "readings"), Today: demoDay})
		must(t, err)
	}
}

// readingsKinds is one page of every kind of the readings.
var readingsKinds = []string{
	"index.html", "matrix.html", "procedures/index.html", "plans/press-work.html", "plans/press-work.matrix.html", "people/g-m.html", "people/f-t.html",
	"procedures/isolate-press.html", "exercises/replace-ram-seal.html", "exercises/replace-ram-seal.answers.html",
	"procedures/isolate-tug-traction.html", "records/tug-112-isolate-2026-04-29.html",
}

// TestReadingsAreAccessible judges one page of every kind as the site's are.
func TestReadingsAreAccessible(t *testing.T) {
	t.Parallel()
	axe, err := os.ReadFile(npmTool(t, "axe-core/axe.min.js"))
	must(t, err)
	_, readings := trainedReadings(t)
	judgeAll(t, string(axe), readings, readingsKinds)
}

func TestReadingsAreConformingHTML(t *testing.T) {
	t.Parallel()
	_, readings := trainedReadings(t)
	var files, styles []string
	must(t, filepath.WalkDir(readings, func(full string, d fs.DirEntry, err error) error {
		switch filepath.Ext(full) {
		case ".html":
			files = append(files, full)
		case ".css":
			styles = append(styles, full)
		}
		return err
	}))
	for name, judge := range judges {
		looked := files
		if name == "vnu" {
			looked = append(styles, files...)
		}
		for _, f := range judge(t, looked) {
			t.Errorf("%s: %s", name, f)
		}
	}
}

// Each printed page of an exercise says that it is one.
func TestExerciseIsMarkedOnEachPage(t *testing.T) {
	t.Parallel()
	_, readings := trainedReadings(t)
	ctx, _ := browser(t)
	for name, want := range map[string]string{
		"replace-ram-seal": "EXERCISE. Never work from this sheet.", "replace-ram-seal.answers": "ANSWERS TO AN EXERCISE. Never work from this sheet.",
		"isolate-tug-traction": "EXERCISE. Never work from this sheet.",
	} {
		must(t, chromedp.Do(ctx, chromedp.Navigate("file://"+filepath.Join(readings, "exercises", name+".html"))))
		for _, paper := range [][2]float64{{8.27, 11.69}, {8.5, 11}} {
			_, sheets := printed(t, ctx, paper[0], paper[1])
			if name == "replace-ram-seal" && len(sheets) < 3 {
				t.Errorf("%s has %d pages: the test looks at nothing", name, len(sheets))
			}
			for i, p := range sheets {
				if !strings.Contains(p, squeezed(want)) {
					t.Errorf("%s on %v: page %d of %d does not say that it is an exercise", name, paper, i+1, len(sheets))
				}
			}
		}
	}
}

// large is whether the crowd is as large as the format's limits ask; a test run,
// which has less time, takes a fifth of the matrix.
var large = flag.Bool("large", false, "a crowd of 200 people and 500 procedures, instead of 80 and 240")

// crowd writes a manual of many procedures with many people in training, each
// with two plans of 60 procedures, a part of them read.
func crowd(t testing.TB, folder string) (people, procedures int) {
	t.Helper()
	const plans, each = 10, 60
	if people, procedures = 80, 240; *large {
		people, procedures = 200, 500
	}
	if err := bigmanual.Write(folder, procedures, 1); err != nil {
		t.Fatal(err)
	}
	m, err := generator.Check(generator.Options{Manual: folder, Today: demoDay})
	if err != nil {
		t.Fatal(err)
	}
	r := rand.New(rand.NewPCG(7, 7))
	write := func(name, text string) {
		full := filepath.Join(folder, name)
		if err := os.MkdirAll(filepath.Dir(full), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(full, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	read := make([][]string, plans)
	for i := range plans {
		for range each {
			id := m.Manual.Procedures[r.IntN(procedures)].ID
			if !strings.Contains(strings.Join(read[i], " ")+" ", id+" ") {
				read[i] = append(read[i], id)
			}
		}
		write(fmt.Sprintf("readings/plans/plan-%d.yaml", i), fmt.Sprintf("title: Plan %d\nread: [%s]\nwithin: 6 months\n", i, strings.Join(read[i], ", ")))
	}
	var list, record strings.Builder
	list.WriteString("person,name,roles,started,plans\n")
	record.WriteString("date,person,procedure,act,fingerprint,by\n")
	for i := range people {
		a, b := r.IntN(plans), r.IntN(plans-1)
		if b >= a {
			b++
		}
		fmt.Fprintf(&list, "t-%03d,Trainee %03d,,2025-12-01,plan-%d plan-%d\n", i, i, a, b)
		for _, id := range read[a] {
			if r.IntN(2) == 0 {
				fmt.Fprintf(&record, "2026-01-0%d,t-%03d,%s,read,1-0123456789abcdef,\n", 1+r.IntN(9), i, id)
			}
		}
	}
	write("readings/people.csv", list.String())
	write("readings/record.csv", record.String())
	return people, procedures
}

// The matrix of 200 people and 500 procedures stays a page that a shop PC can
// show: under 2 MB, as 20 bytes a field are; how long it takes to draw, of its
// thread's own time, is told. It is built and loaded once, for that, for a wide
// screen and for paper.
func TestLargeMatrix(t *testing.T) {
	t.Parallel()
	folder := t.TempDir()
	people, procedures := crowd(t, folder)
	_, readings, r := withReadings(t, folder)
	t.Logf("%d pages and %d of readings", r.Pages, r.ReadingsPages)
	for _, name := range []string{"matrix.html", "index.html", "plans/plan-1.html", "plans/plan-1.matrix.html"} {
		info, err := os.Stat(filepath.Join(readings, name))
		must(t, err)
		t.Logf("%s: %d kB", name, info.Size()/1000)
		if info.Size() > int64(20*people*procedures) {
			t.Errorf("%s has %d bytes", name, info.Size())
		}
	}
	ctx, _ := browser(t)
	_, err := chromedp.Call(ctx, performance.Enable, performance.EnableParams{TimeDomain: performance.EnableTimeDomainThreadTicks})
	must(t, err)
	must(t, chromedp.Do(ctx, chromedp.EmulateViewport(1280, 900), chromedp.Navigate("file://"+filepath.Join(readings, "matrix.html"))))
	js[any](t, ctx, `new Promise((done) => document.readyState === 'complete' ? done(0) : addEventListener('load', () => done(0)))`)
	fields := js[int64](t, ctx, `document.body.offsetHeight && document.querySelectorAll('.grid tbody td').length`)
	t.Logf("%d fields drawn in %.1f s of the page's thread", fields, threadSeconds(t, ctx))
	if fields < int64(people*procedures*4/5) {
		t.Errorf("the matrix has %d fields: the test looks at nothing", fields)
	}
	stays := js[bool](t, ctx, `(() => { const g = document.querySelector('.grid'); g.scrollTo(400, 3000);
		const box = g.getBoundingClientRect(), head = g.querySelector('thead th').getBoundingClientRect(), row = g.querySelectorAll('tbody th')[80].getBoundingClientRect();
		return g.scrollTop > 2000 && Math.abs(head.top - box.top) < 3 && Math.abs(row.left - box.left) < 3; })()`)
	if !stays {
		t.Error("the heads of the matrix do not stay where they are while it is moved")
	}
	js[any](t, ctx, `document.querySelector('.grid').scrollTo(0, 0); 0`)
	matrixOnAWideScreen(t, ctx)
	matrixOnPaper(t, ctx, r.Manual)
}

// matrixOnAWideScreen looks at the page that is open: on a screen of 1600 by 1000
// the large matrix shows at least 40 people and 25 procedures at once, with what is
// open of each, and can leave out the procedures of which nothing is.
func matrixOnAWideScreen(t *testing.T, ctx context.Context) {
	t.Helper()
	resize(t, ctx, 1600, 1000)
	const whole = `(() => { const g = document.querySelector('.grid'); g.scrollIntoView(); const top = g.querySelector('thead').getBoundingClientRect().bottom, box = g.getBoundingClientRect();
		const seen = (e) => { const r = e.getBoundingClientRect(); return r.width > 0 && r.left >= 0 && r.right <= Math.min(box.right, innerWidth) + 1 && r.bottom <= Math.min(box.bottom, innerHeight) + 1 && r.bottom > 0; };
		const people = [...g.querySelectorAll('thead th a')].filter(seen).length;
		const rows = [...g.querySelectorAll('tbody tr:not(.topic):not(.totals) > th')].filter((e) => seen(e) && e.getBoundingClientRect().top >= top - 1).length;
		return people * 1000 + rows; })()`
	seen := js[int64](t, ctx, whole)
	t.Logf("%d people and %d procedures at once", seen/1000, seen%1000)
	if seen/1000 < 40 || seen%1000 < 25 {
		t.Errorf("%d people and %d procedures are seen at once", seen/1000, seen%1000)
	}
	open := js[bool](t, ctx, `(() => { const g = document.querySelector('.grid'), shut = g.querySelectorAll('tr.shut'), n = () => [...g.querySelectorAll('tbody tr')].filter((e) => e.offsetHeight > 0).length;
		const before = n(); document.querySelector('#only-open').click(); return shut.length === 0 || n() === before - shut.length; })()`)
	if !open {
		t.Error("what is done stays where only what is open is asked for")
	}
	js[any](t, ctx, `document.querySelector('#only-open').click(); 0`)
}

// matrixOnPaper prints the large matrix, which ends: everybody stands on the paper
// beside everything, forty people and as many procedures a sheet.
func matrixOnPaper(t *testing.T, ctx context.Context, m *model.Manual) {
	t.Helper()
	_, sheets := printed(t, ctx, 8.27, 11.69)
	t.Logf("%d people and %d procedures on %d sheets", len(m.People), len(m.Procedures), len(sheets))
	if most := len(m.People) / 40 * (len(m.Procedures)/30 + 1); len(sheets) > most {
		t.Errorf("the matrix is %d sheets, more than %d", len(sheets), most)
	}
	whole := strings.Join(sheets, " ")
	for _, p := range m.People {
		if !strings.Contains(whole, squeezed(p.Label())) {
			t.Errorf("%s is not on paper", p.Label())
		}
	}
	rows := strings.Split(js[string](t, ctx, `[...document.querySelector('.grid').querySelectorAll('tbody th a')].map((a) => a.textContent).join('\n')`), "\n")
	if len(rows) < len(m.Procedures)*4/5 {
		t.Errorf("the matrix has %d procedures: the test looks at nothing", len(rows))
	}
	for _, name := range rows {
		if n := strings.Count(whole, squeezed(name)); n < len(m.People)/40 {
			t.Errorf("%s is on paper %d times", name, n)
		}
	}
	for i, sheet := range sheets {
		if !strings.Contains(sheet, "Trainee") || !strings.Contains(sheet, "Jobnumber") {
			t.Errorf("sheet %d does not say whose columns or which rows it has", i+1)
		}
	}
}

// threadSeconds is how long the thread of the open page has worked.
func threadSeconds(t *testing.T, ctx context.Context) float64 {
	t.Helper()
	got, err := chromedp.Call(ctx, performance.GetMetrics, cdp.Empty{})
	must(t, err)
	for _, m := range got.Metrics {
		if m.Name == "TaskDuration" {
			return m.Value
		}
	}
	t.Fatal("the browser tells no TaskDuration")
	return 0
}
