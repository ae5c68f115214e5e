package write_test

import (
	"maps"
	"net/http"
	"strings"
	"testing"

	"baybinder/generator/command/write"
)

// kept is the shop with files as people keep them: comments, quotes, spaces and
// line ends of their own. All values are invented.
func kept() map[string]string {
	files := maps.Clone(shop)
	files["register/tools.yaml"] = "# counted in May\nsocket-10: { name:  '10 mm socket', kind: socket, fits: [ 10 mm,8 mm ],   kept: bay } # loose\n" +
		"sling:\n  name: sling   # blue\n  kind: lifting\n\n  # the course\n  needs:\n    - rigger # since 2020\n  kept: \"bay: two\"\nlamp: { name: lamp, kind: aid,\n  kept: shelf }\n"
	files["machines/rig.yaml"] = "name: Rig\r\nparts:\r\n  seat: { name: seat, held-by: { bolt: 4 } } # four\r\n  lid:\r\n    name: lid\r\n    under:\r\n    - seat   # above\r\n    held-by:\r\n      bolt: 2 # short ones\r\n    # the end\r\nfasteners:\r\n  bolt: { name: bolt, across-flats: 10 mm }\r\n"
	return files
}

// An entry that is there is changed where the answer differs, and no other byte
// moves: comments, quotes, spaces, line ends, the order of fields.
func TestAnEntryIsChangedInPlace(t *testing.T) {
	t.Parallel()
	const page, machine = "procedures/job.html", "machines/rig.html"
	for name, c := range map[string]struct {
		page, in, id string
		fields       answers
		old, now     string
	}{
		"a name":            {page, "tools", "socket-10", answers{"name": {"10 mm socket, long"}}, "'10 mm socket'", `"10 mm socket, long"`},
		"one more":          {page, "tools", "socket-10", answers{"fits": {"10 mm", "8 mm", "3/8 in"}}, "10 mm,8 mm ]", "10 mm,8 mm, 3/8 in ]"},
		"one less":          {page, "tools", "socket-10", answers{"fits": {"8 mm"}}, "[ 10 mm,8 mm ]", "[ 8 mm ]"},
		"none":              {page, "tools", "socket-10", answers{"fits": {""}}, " fits: [ 10 mm,8 mm ],  ", ""},
		"the last of all":   {page, "tools", "socket-10", answers{"kept": {""}}, ",   kept: bay", ""},
		"a new field":       {page, "tools", "socket-10", answers{"needs": {"rigger"}}, "kept: bay }", "kept: bay, needs: [rigger] }"},
		"two fields":        {page, "tools", "socket-10", answers{"name": {"socket"}, "kept": {"chest"}}, "'10 mm socket', kind: socket, fits: [ 10 mm,8 mm ],   kept: bay", "socket, kind: socket, fits: [ 10 mm,8 mm ],   kept: chest"},
		"below its name":    {page, "tools", "sling", answers{"kept": {"bay 3"}}, "\"bay: two\"", "bay 3"},
		"a name below":      {page, "tools", "sling", answers{"name": {"strap"}}, "sling   # blue", "strap   # blue"},
		"a list below":      {page, "tools", "sling", answers{"needs": {}}, "  needs:\n    - rigger # since 2020\n", ""},
		"a line more":       {page, "tools", "sling", answers{"kept": {}}, "  kept: \"bay: two\"\n", ""},
		"in two lines":      {page, "tools", "lamp", answers{"kept": {"wall"}}, "shelf", "wall"},
		"how many":          {machine, "parts", "seat", answers{"held-by": {"bolt 6"}}, "bolt: 4", "bolt: 6"},
		"how many, below":   {machine, "parts", "lid", answers{"held-by": {"bolt 3"}}, "bolt: 2 #", "bolt: 3 #"},
		"under nothing":     {machine, "parts", "lid", answers{"under": {}}, "    under:\r\n    - seat   # above\r\n", ""},
		"a field below":     {machine, "parts", "lid", answers{"mass": {"14 kg"}}, "# short ones\r\n", "# short ones\r\n    mass: 14 kg\r\n"},
		"a machine's bolt":  {machine, "fasteners", "bolt", answers{"torque": {"22 N·m"}}, "10 mm }", "10 mm, torque: 22 N·m }"},
		"a hazard":          {page, "hazards", "pinch", answers{"avoid": {"Hold the lid.", "Wear gloves."}}, "[Hold the lid.]", "[Hold the lid., Wear gloves.]"},
		"a stop":            {page, "holds", "seen", answers{"good": {"clean, dry"}}, "good: clean", `good: "clean, dry"`},
		"a supply":          {page, "supplies", "gasket", answers{"unit": {""}}, ", unit: each", ""},
		"nothing":           {page, "roles", "rigger", answers{}, "", ""},
		"what is the same":  {page, "tools", "sling", answers{"needs": {"rigger"}, "name": {"sling"}}, "", ""},
		"what is not there": {page, "tools", "lamp", answers{"needs": {}}, "", ""},
	} {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			files := kept()
			d := newDesk(t, files)
			path := "register/" + c.in + ".yaml"
			if c.page == machine {
				path = "machines/rig.yaml"
			}
			status, told := d.questioned("form", write.Asked{Page: c.page, In: c.in, ID: c.id})
			if status != http.StatusOK || told.Form == nil {
				t.Fatalf("its form: %d %+v", status, told)
			}
			status, told = d.questioned("entry", write.Asked{Page: c.page, In: c.in, ID: c.id, State: told.Form.State, Fields: c.fields})
			if status != http.StatusOK {
				t.Fatalf("%d %s %s", status, told.Why, told.More)
			}
			if strings.Count(files[path], c.old) != 1 && c.old != "" {
				t.Fatalf("%q does not stand once in %s", c.old, path)
			}
			if got, want := d.file(path), strings.Replace(files[path], c.old, c.now, 1); got != want {
				t.Fatalf("%s is\n%s\nwant\n%s", path, got, want)
			}
			if c.old == "" {
				return
			}
			if status, _ := d.questioned("undo", write.Asked{Page: c.page}); status != http.StatusOK || d.file(path) != files[path] {
				t.Errorf("undone: %d\n%s", status, d.file(path))
			}
		})
	}
}

// A form says what stands in the entry. What it cannot ask it leaves alone.
func TestAFormSaysWhatStands(t *testing.T) {
	t.Parallel()
	files := kept()
	files["register/holds.yaml"] = "state: { name: state, kind: ask, answers: { good: clean, bad: \"dirty, wet\" } }\n"
	files["machines/rig.yaml"] = "name: Rig\nenergies:\n  mains: { name: mains, kind: electric, stored: { capacitance: 4 mF }, points: [] }\nparts:\n  seat: { name: seat, held-by: { bolt: 4 }, under: [gone] }\nfasteners:\n  bolt: { name: bolt }\n"
	d := newDesk(t, files)
	for _, c := range []struct{ in, id, field, want string }{
		{"tools", "socket-10", "fits", "10 mm|8 mm"}, {"tools", "sling", "needs", "rigger"}, {"tools", "sling", "kept", "bay: two"},
		{"holds", "state", "answers", "good: clean|bad: dirty, wet"}, {"parts", "seat", "held-by", "bolt 4"}, {"parts", "seat", "under", "gone"},
		{"energies", "mains", "stored", "it is not asked"}, {"energies", "mains", "kind", "electric"},
	} {
		_, told := d.questioned("form", write.Asked{Page: "machines/rig.html", In: c.in, ID: c.id})
		got := "it is not asked"
		if told.Form == nil {
			t.Errorf("%s has no form: %+v", c.id, told)
			continue
		}
		for _, f := range told.Form.Fields {
			if f.Key == c.field {
				got = strings.Join(f.Now, "|")
			}
		}
		if got != c.want {
			t.Errorf("%s of %s is %q, want %q", c.field, c.id, got, c.want)
		}
	}
}

// What is wrong with an answer, and a file that changed underneath, are told,
// and nothing is written.
func TestAChangeThatIsWrongIsNotWritten(t *testing.T) {
	t.Parallel()
	d := newDesk(t, kept())
	_, told := d.questioned("form", write.Asked{Page: "procedures/job.html", In: "tools", ID: "lamp"})
	state := told.Form.State
	for name, c := range map[string]struct {
		id, state string
		fields    answers
		why       string
	}{
		"no name":      {"lamp", state, answers{"name": {""}}, "Missing"},
		"another kind": {"lamp", state, answers{"kind": {"toy"}}, "CannotNow"},
		"an error":     {"lamp", state, answers{"range": {"some"}}, "NotSaved"},
		"not there":    {"gone", state, answers{"name": {"x"}}, "NoPlace"},
		"an old state": {"lamp", "", answers{"name": {"x"}}, "FileChanged"},
	} {
		status, told := d.questioned("entry", write.Asked{Page: "procedures/job.html", In: "tools", ID: c.id, State: c.state, Fields: c.fields})
		if status == http.StatusOK || told.Why != c.why {
			t.Errorf("%s: %d %s %s, want %s", name, status, told.Why, told.More, c.why)
		}
	}
	if d.file("register/tools.yaml") != kept()["register/tools.yaml"] {
		t.Error("it changed")
	}
}
