package write_test

import (
	"bytes"
	"encoding/json"
	"io"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"baybinder/generator"
	"baybinder/generator/command/write"
	"baybinder/generator/model"
)

var today = model.Date{Year: 2026, Month: 5, Day: 4}

// token is what a page of the run knows.
const token = "a-token-of-the-test"

// shop is a small manual; all values are invented.
var shop = map[string]string{
	"shop.yaml":              "title: Shop\n",
	"register/tools.yaml":    "socket-10: { name: 10 mm socket, kind: socket, fits: [10 mm] }\nsling: { name: sling, kind: lifting, needs: [rigger] }\nlamp: { name: lamp, kind: aid }\n",
	"register/hazards.yaml":  "pinch: { name: pinch point, harm: minor-injury, nature: The lid drops., consequence: It pinches., avoid: [Hold the lid.] }\n",
	"register/holds.yaml":    "seen: { name: seat, kind: look, what: the seat, good: clean }\n",
	"register/supplies.yaml": "gasket: { name: gasket, unit: each }\n",
	"register/roles.yaml":    "rigger: { name: Rigger }\n",
	"machines/rig.yaml":      "name: Rig\nparts:\n  seat: { name: seat, held-by: { bolt: 4 } }\n  lid: { name: lid, under: [seat] }\nfasteners:\n  bolt: { name: bolt, across-flats: 10 mm }\n",
	"procedures/job.md":      job,
}

const job = `---
# kept by hand
title: Job   # the name
for: rig
status: draft
tools: [lamp]
---
What it is for.

## Strip

1. Look with the [lamp](tool:lamp).
2. Wipe the seat.

   It is dirty.
   1. First with a rag.
   2. Then dry.
3. Sweep.

## Refit

1. Stop.
`

// desk is a manual on a desk, with the server around it.
type desk struct {
	t      *testing.T
	folder string
	desk   *write.Desk
	server *httptest.Server
	page   string // the procedure's
	sheet  *write.Sheet
}

func newDesk(t *testing.T, files map[string]string) *desk {
	t.Helper()
	folder := t.TempDir()
	for name, text := range files {
		put(t, folder, name, text)
	}
	return deskOf(t, folder)
}

// deskOf is a desk for a manual that is there.
func deskOf(t *testing.T, folder string) *desk {
	t.Helper()
	w, err := write.New(folder, generator.NewWriting(generator.Options{Manual: folder, Today: today, Preview: true}), token, today)
	must(t, err)
	site := http.HandlerFunc(func(w http.ResponseWriter, _ *http.Request) { w.WriteHeader(http.StatusTeapot) })
	d := &desk{t: t, folder: folder, desk: w, server: httptest.NewServer(w.Wrap(site)), page: "procedures/job.html"}
	t.Cleanup(d.server.Close)
	return d
}

func put(t *testing.T, folder, name, text string) {
	t.Helper()
	full := filepath.Join(folder, filepath.FromSlash(name))
	must(t, os.MkdirAll(filepath.Dir(full), 0o755))
	must(t, os.WriteFile(full, []byte(text), 0o644))
}

func must(t *testing.T, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}

func (d *desk) file(name string) string {
	d.t.Helper()
	data, err := os.ReadFile(filepath.Join(d.folder, filepath.FromSlash(name)))
	must(d.t, err)
	return string(data)
}

// request is one as a page of the run makes it.
func (d *desk) request(route string, body []byte) *http.Request {
	d.t.Helper()
	r, err := http.NewRequest(http.MethodPost, d.server.URL+write.Root+route, bytes.NewReader(body))
	must(d.t, err)
	r.Header.Set("Origin", d.server.URL)
	r.Header.Set("Content-Type", "application/json")
	r.Header.Set("Baybinder-Token", token)
	return r
}

func (d *desk) send(r *http.Request) (int, []byte) {
	d.t.Helper()
	answer, err := http.DefaultClient.Do(r)
	must(d.t, err)
	defer answer.Body.Close()
	data, err := io.ReadAll(answer.Body)
	must(d.t, err)
	return answer.StatusCode, data
}

// questioned asks one route as a page of the run does.
func (d *desk) questioned(route string, asked write.Asked) (int, write.Told) {
	d.t.Helper()
	body, err := json.Marshal(asked)
	must(d.t, err)
	status, data := d.send(d.request(route, body))
	var told write.Told
	if err := json.Unmarshal(data, &told); err != nil {
		d.t.Fatalf("%s: %d %s", route, status, data)
	}
	return status, told
}

// ask asks one route about the procedure as it was shown last.
func (d *desk) ask(route string, act write.Act) (int, write.Told) {
	d.t.Helper()
	asked := write.Asked{Page: d.page, Act: act}
	if d.sheet != nil {
		asked.State = d.sheet.State
	}
	status, told := d.questioned(route, asked)
	if told.Sheet != nil {
		d.sheet = told.Sheet
	}
	return status, told
}

// must asks what must be answered.
func (d *desk) must(route string, act write.Act) write.Told {
	d.t.Helper()
	status, told := d.ask(route, act)
	if status != http.StatusOK {
		d.t.Fatalf("%s %+v: %d %s %s", route, act, status, told.Why, told.More)
	}
	return told
}

// Each act changes the bytes that it is about, and no other.
func TestActsChangeOnlyTheirBytes(t *testing.T) {
	t.Parallel()
	for name, c := range map[string]struct {
		act      write.Act
		old, now string // what is replaced in the file
		on       string
	}{
		"words":           {write.Act{Do: "words", Step: "1.3", Text: "Sweep the floor.\r\n\r\nTwice. "}, "3. Sweep.", "3. Sweep the floor.\n\n   Twice.", "1.3"},
		"words over subs": {write.Act{Do: "words", Step: "1.2", Text: "Wipe the seat.\n\nIt is oily."}, "It is dirty.", "It is oily.", "1.2"},
		"words of a sub":  {write.Act{Do: "words", Step: "1.2.2", Text: "Then dry it."}, "Then dry.", "Then dry it.", "1.2.2"},
		"a list grows":    {write.Act{Do: "words", Step: "1.3", Text: "Use the [socket](tool:socket-10)."}, "[lamp]\n---|3. Sweep.", "[lamp, socket-10]\n---|3. Use the [socket](tool:socket-10).", "1.3"},
		"a list shrinks":  {write.Act{Do: "words", Step: "1.1", Text: "Look."}, "tools: [lamp]|1. Look with the [lamp](tool:lamp).", "tools: []|1. Look.", "1.1"},
		"a role and two":  {write.Act{Do: "words", Step: "1.3", Text: "Lift with the [sling](tool:sling). [](people:2)"}, "status: draft\ntools: [lamp]|3. Sweep.", "status: draft\nneeds: [rigger]\npeople: 2\ntools: [lamp, sling]|3. Lift with the [sling](tool:sling). [](people:2)", "1.3"},
		"new":             {write.Act{Do: "new", After: "1.2", Text: "Look again."}, "   2. Then dry.\n", "   2. Then dry.\n3. Look again.\n", "1.3"},
		"new sub":         {write.Act{Do: "new", After: "1.2.1", Text: "Then a brush."}, "with a rag.\n", "with a rag.\n   2. Then a brush.\n", "1.2.2"},
		"new at the end":  {write.Act{Do: "new", After: "2.1", Text: "Go."}, "1. Stop.\n", "1. Stop.\n2. Go.\n", "2.2"},
		"new first":       {write.Act{Do: "new", Phase: "refit", Text: "Go."}, "1. Stop.\n", "1. Go.\n1. Stop.\n", "2.1"},
		"several":         {write.Act{Do: "steps", After: "2.1", Texts: []string{"Go.", " ", "Come."}}, "1. Stop.\n", "1. Stop.\n2. Go.\n3. Come.\n", "2.3"},
		"out":             {write.Act{Do: "out", Step: "1.2"}, "2. Wipe the seat.\n\n   It is dirty.\n   1. First with a rag.\n   2. Then dry.\n", "", "1.2"},
		"out of the list": {write.Act{Do: "out", Step: "1.1"}, "tools: [lamp]|1. Look with the [lamp](tool:lamp).\n", "tools: []|", "1.1"},
		"first sub out":   {write.Act{Do: "out", Step: "1.2.1"}, "   1. First with a rag.\n   2. Then dry.\n", "   1. Then dry.\n", "1.2.1"},
		"move down":       {write.Act{Do: "move", Step: "1.1", After: "1.3"}, "1. Look with the [lamp](tool:lamp).\n|3. Sweep.\n", "|3. Sweep.\n4. Look with the [lamp](tool:lamp).\n", "1.3"},
		"move up":         {write.Act{Do: "move", Step: "1.3", After: "1.1"}, "(tool:lamp).\n|3. Sweep.\n", "(tool:lamp).\n2. Sweep.\n|", "1.2"},
		"move elsewhere":  {write.Act{Do: "move", Step: "1.2", Phase: "refit"}, "2. Wipe the seat.\n\n   It is dirty.\n   1. First with a rag.\n   2. Then dry.\n|1. Stop.\n", "|1. Wipe the seat.\n\n   It is dirty.\n   1. First with a rag.\n   2. Then dry.\n1. Stop.\n", "2.1"},
		"split":           {write.Act{Do: "split", Step: "1.3", Text: "Sweep.\nThe floor.\nThe bench."}, "3. Sweep.", "3. Sweep.\n   1. The floor.\n   2. The bench.", "1.3"},
		"page":            {write.Act{Do: "page", After: "1.3", Texts: []string{"Go.", "## Work", "Look.", " ", "## Refit", "Stop."}}, "3. Sweep.\n\n## Refit", "3. Sweep.\n4. Go.\n\n## Work\n\n1. Look.\n\n## Refit 2\n\n1. Stop.\n\n## Refit", "1.4"},
		"page of phases":  {write.Act{Do: "page", After: "2.1", Texts: []string{"## Return", "Go.", "Come."}}, "1. Stop.\n", "1. Stop.\n\n## Return\n\n1. Go.\n2. Come.\n", ""},
		"page of steps":   {write.Act{Do: "page", After: "2.1", Texts: []string{"Go.", "Come."}}, "1. Stop.\n", "1. Stop.\n2. Go.\n3. Come.\n", "2.3"},
		"phase":           {write.Act{Do: "phase", After: "strip", Text: "Work  at it\n"}, "## Refit", "## Work at it\n\n## Refit", ""},
		"last phase":      {write.Act{Do: "phase", After: "refit", Text: "Return"}, "1. Stop.\n", "1. Stop.\n\n## Return\n", ""},
		"heading":         {write.Act{Do: "heading", Phase: "refit", Text: "Put back"}, "## Refit", "## Put back", ""},
		"title":           {write.Act{Do: "front", Field: "title", Text: "Job: the \"first\""}, "title: Job ", `title: "Job: the \"first\"" `, ""},
		"summary":         {write.Act{Do: "front", Field: "summary", Text: "Wipe it"}, "# the name\n", "# the name\nsummary: Wipe it\n", ""},
		"found":           {write.Act{Do: "expect", Texts: []string{"seat: off", "lamp: placed"}}, "tools: [lamp]\n", "tools: [lamp]\nexpects: { seat: off, lamp: placed }\n", ""},
		"people":          {write.Act{Do: "front", Field: "people", Text: "2"}, "status: draft\n", "status: draft\npeople: 2\n", ""},
	} {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			d := newDesk(t, shop)
			d.must("open", write.Act{})
			want := job
			news := strings.Split(c.now, "|")
			for i, old := range strings.Split(c.old, "|") {
				if strings.Count(want, old) != 1 {
					t.Fatalf("%q stands %d times", old, strings.Count(want, old))
				}
				want = strings.Replace(want, old, news[i], 1)
			}
			told := d.must("save", c.act)
			if got := d.file("procedures/job.md"); got != want {
				t.Errorf("got\n%s\nwant\n%s", got, want)
			}
			if c.on != "" && told.On != c.on {
				t.Errorf("the writer looks at %q, want %q", told.On, c.on)
			}
			d.must("undo", write.Act{})
			if got := d.file("procedures/job.md"); got != job {
				t.Errorf("undone it is\n%s", got)
			}
			d.must("redo", write.Act{})
			if got := d.file("procedures/job.md"); got != want {
				t.Errorf("done again it is\n%s", got)
			}
		})
	}
}
