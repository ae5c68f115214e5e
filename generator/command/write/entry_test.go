package write_test

import (
	"bytes"
	"encoding/json"
	"image"
	"image/color"
	"image/jpeg"
	"image/png"
	"net/http"
	"net/url"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"baybinder/generator/command/write"
)

// entry asks for a new entry, from a page.
func (d *desk) entry(page, in string, fields map[string][]string) (int, write.Told) {
	d.t.Helper()
	return d.questioned("entry", write.Asked{Page: page, In: in, Fields: fields})
}

type answers = map[string][]string

// A new entry goes to the end of its list, in the file's own indent, and no
// other byte moves.
func TestAnEntryGoesIntoItsList(t *testing.T) {
	t.Parallel()
	const page, machine = "procedures/job.html", "machines/rig.html"
	for name, c := range map[string]struct {
		page, in string
		fields   answers
		file     string
		old, now string
	}{
		"a tool":      {page, "tools", answers{"name": {"13 mm  socket"}, "kind": {"socket"}, "fits": {"13 mm", "", "1/2 in"}}, "register/tools.yaml", "kind: aid }\n", "kind: aid }\n13-mm-socket: { name: 13 mm socket, kind: socket, fits: [13 mm, 1/2 in] }\n"},
		"of a kind":   {page, "tools", answers{"name": {"sling"}, "kind": {"lifting"}, "fits": {"13 mm"}, "needs": {"rigger"}}, "register/tools.yaml", "kind: aid }\n", "kind: aid }\nsling-2: { name: sling, kind: lifting, needs: [rigger] }\n"},
		"odd words":   {page, "tools", answers{"name": {"a: {b}, #c \"d\""}, "kind": {"other"}}, "register/tools.yaml", "kind: aid }\n", "kind: aid }\na-b-c-d: { name: \"a: {b}, #c \\\"d\\\"\", kind: other }\n"},
		"no letters":  {page, "tools", answers{"name": {"ключ"}, "kind": {"spanner"}}, "register/tools.yaml", "kind: aid }\n", "kind: aid }\ntool: { name: ключ, kind: spanner }\n"},
		"a question":  {page, "holds", answers{"name": {"state"}, "kind": {"ask"}, "answers": {"good: clean", "Worn out"}}, "register/holds.yaml", "good: clean }\n", "good: clean }\nstate: { name: state, kind: ask, answers: { good: clean, worn-out: Worn out } }\n"},
		"a part":      {machine, "parts", answers{"name": {"bus bar"}, "under": {"lid", "seat"}, "held-by": {"bolt 2"}}, "machines/rig.yaml", "under: [seat] }\n", "under: [seat] }\n  bus-bar: { name: bus bar, under: [lid, seat], held-by: { bolt: 2 } }\n"},
		"a section":   {machine, "points", answers{"name": {"plug"}, "lock": {"yes"}}, "machines/rig.yaml", "across-flats: 10 mm }\n", "across-flats: 10 mm }\npoints:\n  plug: { name: plug, lock: yes }\n"},
		"no points":   {machine, "energies", answers{"name": {"load"}, "kind": {"gravity"}, "stored": {"yes"}}, "machines/rig.yaml", "across-flats: 10 mm }\n", "across-flats: 10 mm }\nenergies:\n  load: { name: load, kind: gravity, stored: yes, points: [] }\n"},
		"one of all":  {machine, "fasteners", answers{"name": {"lid"}}, "machines/rig.yaml", "across-flats: 10 mm }\n", "across-flats: 10 mm }\n  lid-2: { name: lid }\n"},
		"from a page": {page, "parts", answers{"name": {"cap"}}, "machines/rig.yaml", "under: [seat] }\n", "under: [seat] }\n  cap: { name: cap }\n"},
	} {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			d := newDesk(t, shop)
			status, told := d.entry(c.page, c.in, c.fields)
			want := strings.Replace(shop[c.file], c.old, c.now, 1)
			if got := d.file(c.file); status != http.StatusOK || got != want {
				t.Fatalf("%d %s %s\n%s\nwant\n%s", status, told.Why, told.More, got, want)
			}
			if c.in == "tools" && (len(told.Found) != 1 || !strings.Contains(told.Found[0].Text, "](tool:")) {
				t.Errorf("a step names it as %+v", told.Found)
			}
			if status, _ := d.questioned("undo", write.Asked{Page: c.page}); status != http.StatusOK || d.file(c.file) != shop[c.file] {
				t.Errorf("undone: %d\n%s", status, d.file(c.file))
			}
		})
	}
}

// A list that is not there yet begins with its first entry, and is gone again
// when that is taken back.
func TestTheFirstEntryMakesItsFile(t *testing.T) {
	t.Parallel()
	d := newDesk(t, map[string]string{"shop.yaml": "title: Shop\n", "procedures/job.md": "---\ntitle: Job\nstatus: draft\n---\n"})
	if status, told := d.entry("procedures/job.html", "roles", answers{"name": {"Fitter"}}); status != http.StatusOK || d.file("register/roles.yaml") != "fitter: { name: Fitter }\n" {
		t.Fatalf("%d %s %s", status, told.Why, told.More)
	}
	d.questioned("undo", write.Asked{Page: "procedures/job.html"})
	if _, err := os.Stat(filepath.Join(d.folder, "register", "roles.yaml")); !os.IsNotExist(err) {
		t.Errorf("it is still there: %v", err)
	}
}

// What is missing, cannot be chosen or would be an error is told, and nothing is
// written.
func TestAnEntryThatIsWrongIsNotWritten(t *testing.T) {
	t.Parallel()
	d := newDesk(t, shop)
	for name, c := range map[string]struct {
		page, in string
		fields   answers
		why      string
	}{
		"no name":       {"procedures/job.html", "tools", answers{"name": {" "}, "kind": {"socket"}}, "Missing"},
		"no kind":       {"procedures/job.html", "tools", answers{"name": {"x"}}, "Missing"},
		"another kind":  {"procedures/job.html", "tools", answers{"name": {"x"}, "kind": {"toy"}}, "CannotNow"},
		"another role":  {"procedures/job.html", "tools", answers{"name": {"x"}, "kind": {"aid"}, "needs": {"boss }, y: {"}}, "CannotNow"},
		"another list":  {"procedures/job.html", "people", answers{"name": {"x"}}, "CannotNow"},
		"a path":        {"procedures/job.html", "../tools", answers{"name": {"x"}}, "CannotNow"},
		"another page":  {"index.html", "tools", answers{"name": {"x"}, "kind": {"aid"}}, "NoPage"},
		"no wait":       {"procedures/job.html", "holds", answers{"name": {"x"}, "kind": {"wait"}, "for": {"some time"}}, "NotSaved"},
		"no number":     {"machines/rig.html", "parts", answers{"name": {"x"}, "held-by": {"bolt 0"}}, "CannotNow"},
		"no bolt":       {"machines/rig.html", "parts", answers{"name": {"x"}, "held-by": {"nut 2"}}, "CannotNow"},
		"a long answer": {"procedures/job.html", "roles", answers{"name": {strings.Repeat("x", 5000)}}, "TooLong"},
	} {
		status, told := d.entry(c.page, c.in, c.fields)
		if status == http.StatusOK || told.Why != c.why {
			t.Errorf("%s: %d %s %s, want %s", name, status, told.Why, told.More, c.why)
		}
	}
	for _, file := range []string{"register/tools.yaml", "register/holds.yaml", "register/roles.yaml", "machines/rig.yaml"} {
		if d.file(file) != shop[file] {
			t.Errorf("%s changed", file)
		}
	}
}

// Something new begins as a draft, under a name that nobody has.
func TestSomethingNewBegins(t *testing.T) {
	t.Parallel()
	d := newDesk(t, shop)
	for name, c := range map[string]struct {
		fields     answers
		page, file string
		holds      []string
	}{
		"empty":    {answers{"title": {"Job: two"}, "machine": {"rig"}}, "procedures/job-two.html", "procedures/job-two.md", []string{"---\ntitle: \"Job: two\"\nfor: rig\nstatus: draft\n---\n"}},
		"the same": {answers{"title": {"Job"}}, "procedures/job-2.html", "procedures/job-2.md", []string{"title: Job\nstatus: draft\n"}},
		"a part":   {answers{"title": {"Lid"}, "machine": {"rig"}, "part": {"lid"}}, "procedures/lid.html", "procedures/lid.md", []string{"status: draft", "(remove:seat)", "(part:lid)", "(reverse:strip"}},
		"a text":   {answers{"title": {"Old job"}, "machine": {"rig"}, "text": {"Strip\n1. Remove the seat.\n2. Sweep."}}, "procedures/old-job.html", "procedures/old-job.md", []string{"status: draft", "(remove:seat)", "Sweep."}},
		"machine":  {answers{"name": {"Yard press"}}, "machines/yard-press.html", "machines/yard-press.yaml", []string{"name: Yard press\n"}},
	} {
		status, told := d.questioned("begin", write.Asked{Fields: c.fields})
		if status != http.StatusOK || told.Page != c.page {
			t.Errorf("%s: %d %+v", name, status, told)
			continue
		}
		for _, text := range c.holds {
			if !strings.Contains(d.file(c.file), text) {
				t.Errorf("%s holds no %q:\n%s", name, text, d.file(c.file))
			}
		}
	}
	for name, fields := range map[string]answers{"nothing": {}, "no such machine": {"title": {"x"}, "machine": {"y"}, "part": {"z"}}, "a bad machine": {"title": {"x"}, "machine": {"a\nb: c"}}, "a long title": {"title": {strings.Repeat("x", 9000)}}} {
		if status, told := d.questioned("begin", write.Asked{Fields: fields}); status == http.StatusOK {
			t.Errorf("%s: %+v", name, told)
		}
	}
}

func (d *desk) picture(kind string, data []byte, words string) (int, write.Told) {
	d.t.Helper()
	r := d.request("picture?"+url.Values{"page": {d.page}, "words": {words}}.Encode(), data)
	r.Header.Set("Content-Type", kind)
	status, answer := d.send(r)
	var told write.Told
	_ = json.Unmarshal(answer, &told) // a refusal of the guard is no JSON
	return status, told
}

// A picture goes into pictures/ as it was sent, and a step shows it; what is no
// picture, whatever it says of itself, does not.
func TestAPictureGoesIntoItsFolder(t *testing.T) {
	t.Parallel()
	files := map[string]string{"procedures/deep/er/job.md": job}
	for name, text := range shop {
		if name != "procedures/job.md" {
			files[name] = text
		}
	}
	d := newDesk(t, files)
	small := image.NewRGBA(image.Rect(0, 0, 8, 6))
	small.Set(1, 1, color.White)
	var jpg, pngs, wide bytes.Buffer
	must(t, jpeg.Encode(&jpg, small, nil))
	must(t, png.Encode(&pngs, small))
	must(t, png.Encode(&wide, image.NewRGBA(image.Rect(0, 0, 5000, 1))))
	for i, want := range []string{"pictures/the-seat.jpg", "pictures/the-seat-2.jpg"} {
		status, told := d.picture("image/jpeg", jpg.Bytes(), "The [seat]")
		if status != http.StatusOK || told.Found[0].Text != `![The \[seat\]](../../../`+want+`)` || d.file(want) != jpg.String() {
			t.Fatalf("%d: %d %+v", i, status, told)
		}
	}
	if status, _ := d.picture("image/png", pngs.Bytes(), "dots"); status != http.StatusOK || d.file("pictures/dots.png") != pngs.String() {
		t.Errorf("a PNG: %d", status)
	}
	for name, c := range map[string]struct {
		kind   string
		data   []byte
		words  string
		status int
	}{
		"a drawing":     {"image/svg+xml", []byte("<svg xmlns='http://www.w3.org/2000/svg'/>"), "x", http.StatusUnsupportedMediaType},
		"a lie":         {"image/png", []byte("<script>"), "x", http.StatusUnprocessableEntity},
		"too wide":      {"image/png", wide.Bytes(), "x", http.StatusUnprocessableEntity},
		"without words": {"image/png", pngs.Bytes(), " ", http.StatusUnprocessableEntity},
		"too large":     {"image/jpeg", make([]byte, 5<<20), "x", http.StatusRequestEntityTooLarge},
		"nothing":       {"image/jpeg", nil, "x", http.StatusUnprocessableEntity},
	} {
		if status, told := d.picture(c.kind, c.data, c.words); status != c.status {
			t.Errorf("%s: %d %+v", name, status, told)
		}
	}
	list, err := os.ReadDir(filepath.Join(d.folder, "pictures"))
	if err != nil || len(list) != 3 {
		t.Errorf("%d pictures, %v", len(list), err)
	}
}

// A step that is opened too early is told which step before it would mend that.
func TestAStepBeforeItMends(t *testing.T) {
	t.Parallel()
	files := map[string]string{}
	for name, text := range shop {
		files[name] = text
	}
	files["procedures/job.md"] = strings.Replace(job, "3. Sweep.", "3. [Take the lid off](remove:lid).", 1)
	d := newDesk(t, files)
	d.must("open", write.Act{})
	told := d.must("cures", write.Act{Step: "1.3"})
	if len(told.Cures) != 1 || len(told.Cures[0].Ways) == 0 || told.Cures[0].Ways[0].Act.After != "1.2" {
		t.Fatalf("%+v", told.Cures)
	}
	d.must("save", *told.Cures[0].Ways[0].Act)
	if !strings.Contains(d.file("procedures/job.md"), "3. [Take the seat off](remove:seat). Use the [10 mm socket](tool:socket-10).\n3. [Take the lid off](remove:lid).") {
		t.Errorf("it wrote\n%s", d.file("procedures/job.md"))
	}
	for _, f := range d.sheet.Phases[0].Steps[5].Found {
		if f.Code == told.Cures[0].Code {
			t.Errorf("it is still so: %+v", f)
		}
	}
}
