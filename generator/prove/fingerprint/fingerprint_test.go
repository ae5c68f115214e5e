package fingerprint

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator/base/position"
	"baybinder/generator/model"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

var press = map[string]string{
	"shop.yaml": "title: Shop\nalso: [es]\n",
	"register/tools.yaml": "spanner-13: { name: 13 mm spanner, kind: spanner, fits: [13 mm], kept: shelf 1, owned: 2, number: S-1 }\n" +
		"wrench: { name: torque wrench, kind: torque-wrench, range: 4 to 50 N·m, kept: shelf 2, calibration: { every: 12 months, last: 2026-01-02 } }\n",
	"register/hazards.yaml":  "oil-jet: { name: oil jet, nature: Oil is under pressure., harm: serious-injury, consequence: It cuts., avoid: [Stand aside.], of: oil }\n",
	"register/holds.yaml":    "settle-wait: { name: wait, kind: wait, for: 10 min, of: oil }\nseat-look: { name: seat, kind: look, what: the seat, good: dry }\n",
	"register/supplies.yaml": "grease: { name: grease, unit: g, kept: oil store, waste: oily bin }\n",
	"machines/press.yaml": "name: Press\noptions: { guard: Light guard }\npoints: { valve: { name: valve, where: left side, lock: yes } }\n" +
		"energies: { oil: { kind: pressure, pressure: 200 bar, points: [valve], stored: yes } }\n" +
		"parts: { lid: { held-by: { lid-bolt: 4 } } }\nfasteners: { lid-bolt: { name: lid bolt, torque: 22 N·m, across-flats: 13 mm } }\n",
	"procedures/sweep.md": "---\ntitle: Sweep\n---\n## Work\n\n1. Sweep the bay.\n",
	"procedures/lid.md": "---\ntitle: Lid off\nsummary: Old words.\nfor: press\npeople: 2\nhazards: [oil-jet]\ntools: [spanner-13, wrench]\nholds: [settle-wait, seat-look]\nsupplies: { grease: 20 g }\n---\n" +
		"Some words before.\n\n## Work\n\n1. [Shut the valve](isolate:oil) and [lock it](lock:oil). [](hazard:oil-jet) [](time:4min)\n" +
		"2. [](hold:settle-wait)\n3. [Lift the lid off](remove:lid) with the [](tool:spanner-13). [](people:2)\n" +
		"4. [With the guard](when:guard), look at the seat. [](hold:seat-look)\n5. Put on [](supply:grease).\n6. [Sweep](do:sweep).\n7. Tell the foreman.\n",
}

type edit struct{ file, from, to string }

// inert are edits of what no reader acts on, named as the format's page lists
// them: kept, owned, number, calibration, summary, translations, comments, the
// order of registers; and white space, and what settle writes.
var inert = []edit{
	{"register/tools.yaml", "kept: shelf 1", "kept: shelf 9"},
	{"register/tools.yaml", "owned: 2", "owned: 7"},
	{"register/tools.yaml", "number: S-1", "number: S-2"},
	{"register/tools.yaml", "last: 2026-01-02", "last: 2026-05-06"},
	{"register/supplies.yaml", "kept: oil store", "kept: elsewhere"},
	{"register/holds.yaml", "seat-look:", "# a comment\nother: { name: other, kind: look, what: x, good: y }\nseat-look:"},
	{"procedures/lid.md", "summary: Old words.", "summary: New words."},
	{"procedures/lid.md", "title: Lid off", "title: Take the lid off # a comment"},
	{"procedures/lid.md", "[spanner-13, wrench]", "[wrench, spanner-13]"},
	{"procedures/lid.md", "7. Tell the foreman.", "7. Tell   the\n   foreman."},
	{"procedures/lid.md", "[](hold:settle-wait)", "[wait](hold:settle-wait)"},
	{"procedures/lid.md", "[](tool:spanner-13)", "[13 mm spanner](tool:spanner-13)"},
	{"procedures/lid.md", "[](hazard:oil-jet)", "[oil jet](hazard:oil-jet)"},
	{"procedures/lid.md", "Some words before.", "Other words before."},
	{"procedures/lid.md", "look at the seat", "*look* at the seat"},
	{"procedures/lid.es.md", "", "---\ntitle: Tapa\n---\n## Work\n\n1. Nada.\n"},
	{"register/tools.es.yaml", "", "spanner-13: { name: llave }\n"},
}

// moving are edits of what a reader acts on.
var moving = []edit{
	{"register/tools.yaml", "fits: [13 mm]", "fits: [14 mm]"},
	{"register/hazards.yaml", "harm: serious-injury", "harm: death"},
	{"register/hazards.yaml", "Stand aside.", "Stand back."},
	{"register/holds.yaml", "for: 10 min", "for: 12 min"},
	{"register/holds.yaml", "good: dry", "good: clean"},
	{"register/supplies.yaml", "waste: oily bin", "waste: blue bin"},
	{"machines/press.yaml", "torque: 22 N·m", "torque: 24 N·m"},
	{"machines/press.yaml", "lid-bolt: 4", "lid-bolt: 6"},
	{"machines/press.yaml", "where: left side", "where: right side"},
	{"machines/press.yaml", "pressure: 200 bar", "pressure: 210 bar"},
	{"machines/press.yaml", "stored: yes", "stored: { gas-volume: 4 L }"},
	{"machines/press.yaml", "held-by: { lid-bolt: 4 }", "held-by: { lid-bolt: 4 }, mass: 4 kg, lift: { horizontal: 30 cm, vertical: 40 cm, travel: 30 cm, coupling: good }"},
	{"procedures/lid.md", "4min", "5min"},
	{"procedures/lid.md", "(people:2)", "(people:1)"},
	{"procedures/lid.md", "people: 2\n", "people: 3\n"},
	{"procedures/lid.md", "when:guard", "when:!guard"},
	{"procedures/lid.md", "grease: 20 g", "grease: 30 g"},
	{"procedures/lid.md", "foreman", "driver"},
	{"procedures/lid.md", "(lock:oil)", "(point:valve)"},
	{"procedures/lid.md", "hazards: [oil-jet]", "hazards: { oil-jet: { consequence: It blinds. } }"},
	{"procedures/lid.md", "5. Put on [](supply:grease).\n", ""},
	{"procedures/sweep.md", "Sweep the bay.", "Sweep the bay twice."},
}

func (e edit) in(t require, files map[string]string) {
	if _, has := files[e.file]; has && !strings.Contains(files[e.file], e.from) {
		t.Fatalf("%s does not hold %q: the edit would do nothing", e.file, e.from)
	}
	if e.from == "" {
		files[e.file] = e.to
		return
	}
	files[e.file] = strings.Replace(files[e.file], e.from, e.to, 1)
}

type require interface{ Fatalf(string, ...any) }

func formOf(t require, files map[string]string, id string) Form {
	m, _ := bind.Manual(source.FromText(files))
	i := slices.IndexFunc(m.Procedures, func(p *model.Procedure) bool { return p.ID == id })
	if i < 0 {
		t.Fatalf("there is no %s", id)
	}
	return NewCache().Form(m.Procedures[i])
}

func TestOnlyWhatAReaderActsOnMovesIt(t *testing.T) {
	before := formOf(t, press, "lid")
	rapid.Check(t, func(t *rapid.T) {
		files := maps.Clone(press)
		for _, i := range rapid.SliceOfDistinct(rapid.IntRange(0, len(inert)-1), rapid.ID[int]).Draw(t, "inert") {
			inert[i].in(t, files)
		}
		if now := formOf(t, files, "lid"); now.Print() != before.Print() {
			t.Fatalf("moved by what no reader acts on:\n%s", strings.Join(Changes(before, now, english), "\n"))
		}
		e := rapid.SampledFrom(moving).Draw(t, "moving")
		e.in(t, files)
		now := formOf(t, files, "lid")
		if now.Print() == before.Print() {
			t.Fatalf("not moved by %v", e)
		}
		if len(Changes(before, now, english)) == 0 {
			t.Fatalf("it moved by %v, and nothing is said of it", e)
		}
	})
}

func TestEveryMovingEditMovesItAlone(t *testing.T) {
	before := formOf(t, press, "lid")
	for _, e := range moving {
		files := maps.Clone(press)
		e.in(t, files)
		now := formOf(t, files, "lid")
		if now.Print() == before.Print() {
			t.Errorf("not moved by %v", e)
		}
		if own := now.Own().Text() == before.Own().Text(); own != (e.file == "procedures/sweep.md") {
			t.Errorf("%v: own matter the same: %v", e, own)
		}
	}
}

func TestAFormIsReadBackAsItWas(t *testing.T) {
	f := formOf(t, press, "lid")
	if got := Parse(f.Text()).Print(); got != f.Print() || len(got) != len("2-8c1f0a93b2d4e5f6") {
		t.Errorf("got %s, want %s", got, f.Print())
	}
}

// A comma spares the readers; a hazard, a hold, a limit and an energy act do
// not, nor do another supply, a not that came or went and another order: the
// format's page, "What is issued stays issued".
func TestDangerMoved(t *testing.T) {
	cases := map[edit]bool{
		{"procedures/lid.md", "Tell the foreman", "Tell it the foreman"}:           false,
		{"procedures/lid.md", "look at the seat", "look at its seat"}:              false,
		{"register/supplies.yaml", "name: grease", "name: green grease"}:           true, // another supply
		{"procedures/lid.md", "Tell the foreman", "Do not tell the foreman"}:       true,
		{"procedures/lid.md", "Tell the foreman", "Tell nobody"}:                   true,
		{"procedures/sweep.md", "the bay", "the whole bay"}:                        false,
		{"register/holds.yaml", "for: 10 min", "for: 12 min"}:                      true,
		{"register/hazards.yaml", "It cuts.", "It cuts deep."}:                     true,
		{"machines/press.yaml", "22 N·m", "24 N·m"}:                                true,
		{"machines/press.yaml", "200 bar", "210 bar"}:                              true,
		{"procedures/lid.md", " and [lock it](lock:oil)", ""}:                      true,
		{"procedures/lid.md", "when:guard", "when:!guard"}:                         true,
		{"procedures/lid.md", "grease: 20 g", "grease: 30 g"}:                      true,
		{"procedures/lid.md", "Tell the foreman", "Wait 5 min"}:                    true,
		{"procedures/lid.md", "people: 2\n", "people: 2\nleaves: { oil: dead }\n"}: true,
	}
	before := formOf(t, press, "lid")
	for e, want := range cases {
		files := maps.Clone(press)
		e.in(t, files)
		if got := DangerMoved(before, formOf(t, files, "lid")); got != want {
			t.Errorf("%v: got %v, want %v", e, got, want)
		}
	}
}

// The amounts of an energy that a step only mentions are limits too, whatever kind
// it is of: "readers: none is refused where a … limit … moved".
func TestAmountsOfAnEnergyThatIsMentioned(t *testing.T) {
	files := map[string]string{
		"shop.yaml": "title: Shop\n",
		"machines/dryer.yaml": "name: Dryer\npoints: { main: { name: main switch } }\nenergies:\n  heat: { kind: heat, temperature: 180 °C, points: [main] }\n  fan: { kind: electric, voltage: 400 V ac, points: [main] }\n" +
			"  air: { kind: pressure, pressure: 8 bar, points: [main], stored: { gas-volume: 4 L, precharge: 2 bar } }\n",
		"procedures/look.md": "---\ntitle: Look\nfor: dryer\n---\n## Work\n\n1. Mind the [heat](energy:heat), the [fan](energy:fan) and the [air](energy:air).\n",
	}
	before := formOf(t, files, "look")
	for from, to := range map[string]string{"180 °C": "190 °C", "400 V": "500 V", "8 bar": "9 bar", "4 L": "5 L", "2 bar": "3 bar"} {
		other := maps.Clone(files)
		edit{"machines/dryer.yaml", from, to}.in(t, other)
		if !DangerMoved(before, formOf(t, other, "look")) {
			t.Errorf("%s became %s, and the readers could be spared it", from, to)
		}
	}
	other := maps.Clone(files)
	edit{"procedures/look.md", "Mind", "Look at"}.in(t, other)
	if DangerMoved(before, formOf(t, other, "look")) {
		t.Error("another word, and the readers cannot be spared it")
	}
}

// A hold that goes past a step moved, though neither's words did, and so did two
// steps that changed places; one without danger may come or go.
func TestDangerThatGoesPastAStep(t *testing.T) {
	const front = "---\ntitle: Lid\nholds: [seat-look]\n---\n## Work\n\n"
	form := func(steps ...string) Form {
		files := maps.Clone(press)
		text := front
		for i, s := range steps {
			text += fmt.Sprintf("%d. %s\n", i+1, s)
		}
		files["procedures/lid.md"] = text
		return formOf(t, files, "lid")
	}
	const hold, open, reach, tell = "[Look](hold:seat-look).", "Open the lid.", "Reach in.", "Tell the foreman."
	before := form(open, hold, reach, tell)
	cases := map[string]struct {
		now  Form
		want bool
	}{
		"the same":                      {form(open, hold, reach, tell), false},
		"hands in before the hold":      {form(open, reach, hold, tell), true},
		"the hold first":                {form(hold, open, reach, tell), true},
		"the hold last":                 {form(open, reach, tell, hold), true},
		"two behind the hold exchanged": {form(open, hold, tell, reach), true}, // the order of steps
		"one more at the end":           {form(open, hold, reach, tell, "Go home."), false},
		"one more at the start":         {form("Come in.", open, hold, reach, tell), false},
		"one less":                      {form(open, hold, reach), false},
		"a comma before the hold":       {form("Open, then, the lid.", hold, reach, tell), false},
	}
	for name, c := range cases {
		if got := DangerMoved(before, c.now); got != c.want {
			t.Errorf("%s: %v, want %v", name, got, c.want)
		}
	}
	// A phase that begins elsewhere moves no hold, whether anything is said at its
	// beginning or not: no step is passed.
	phases := func(one, two string) Form {
		files := maps.Clone(press)
		files["procedures/lid.md"] = strings.Replace(front, "## Work\n", "## Work\n\nSlowly.\n", 1) + one + "\n## Rest\n\n" + two
		return formOf(t, files, "lid")
	}
	if DangerMoved(phases("1. "+open+"\n2. "+hold+"\n", "1. "+reach+"\n"), phases("1. "+open+"\n", "1. "+hold+"\n2. "+reach+"\n")) {
		t.Error("a hold that is in the next phase now, and passed no step, moved")
	}
}

func TestChangesAreSaidForAReader(t *testing.T) {
	cases := map[edit]string{
		{"register/holds.yaml", "for: 10 min", "for: 12 min"}:                          "step 1.2: hold wait, for: 12 min, was 10 min",
		{"register/holds.yaml", "name: wait", "name: settling"}:                        "step 1.2: it says “settling”, was “wait”\nstep 1.2: hold settling, was wait",
		{"procedures/lid.md", " [](hazard:oil-jet)", ""}:                               "step 1.1: it says “Shut the valve and lock it.”, was “Shut the valve and lock it. oil jet”\nstep 1.1: no longer: hazard oil jet",
		{"procedures/lid.md", "4min", "5min"}:                                          "step 1.1: time: 300 s, was 240 s",
		{"procedures/lid.md", "people: 2\n", "people: 2\nleaves: { oil: dead }\n"}:     "the whole job: now also: leaves oil: dead",
		{"procedures/lid.md", "5. Put on [](supply:grease).\n", "5. Put on grease.\n"}: "step 1.5: no longer: supply grease",
	}
	before := formOf(t, press, "lid")
	for e, want := range cases {
		files := maps.Clone(press)
		e.in(t, files)
		if got := strings.Join(Changes(before, formOf(t, files, "lid"), english), "\n"); got != want {
			t.Errorf("%v: got\n%s\nwant\n%s", e, got, want)
		}
	}
}

func TestChangesAreSaidStepByStep(t *testing.T) {
	files := maps.Clone(press)
	edit{"machines/press.yaml", "22 N·m", "24 N·m"}.in(t, files)
	edit{"procedures/lid.md", "7. Tell the foreman.", "7. Tell the driver.\n8. Go home."}.in(t, files)
	edit{"procedures/sweep.md", "the bay", "the whole bay"}.in(t, files)
	got := Changes(formOf(t, press, "lid"), formOf(t, files, "lid"), english)
	want := []string{
		"step 1.3: remove lid, held-by lid bolt torque: 24 N·m, was 22 N·m",
		"step 1.7: it says “Tell the driver.”, was “Tell the foreman.”",
		"step 1.8 is new: it says “Go home.”",
		"what it performs changed: sweep",
	}
	if !slices.Equal(got, want) {
		t.Errorf("got\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
}

// Of two things that are called otherwise now each is told beside the one in its
// place, however many fields they have.
func TestWhatIsCalledOtherwiseIsToldInItsPlace(t *testing.T) {
	files := maps.Clone(press)
	edit{"procedures/lid.md", "2. [](hold:settle-wait)\n", "2. [](hold:settle-wait) [](hold:seat-look)\n"}.in(t, files)
	before := formOf(t, files, "lid")
	edit{"register/holds.yaml", "name: wait, kind: wait, for: 10 min, of: oil", "name: settling, kind: wait, for: 12 min"}.in(t, files)
	edit{"register/holds.yaml", "name: seat, kind: look, what: the seat", "name: saddle, kind: look, what: the saddle"}.in(t, files)
	got := strings.Join(Changes(before, formOf(t, files, "lid"), english), "\n")
	for _, want := range []string{
		"step 1.2: hold settling, was wait", "step 1.2: hold settling, for: 12 min, was 10 min", "step 1.2: no longer: hold wait, of: oil",
		"step 1.2: hold saddle, was seat", "step 1.2: hold saddle, what: the saddle, was the seat",
	} {
		if !strings.Contains(got, want) {
			t.Errorf("not told: %s\nin\n%s", want, got)
		}
	}
}

// A kept form that was edited is not the one its fingerprint was taken of.
func TestKeptWordsAreProvedByTheirFingerprint(t *testing.T) {
	f := formOf(t, press, "lid")
	text := Keep(press["procedures/lid.md"], f)
	r := &model.Revision{Fingerprint: f.Print(), Kept: position.NewFile("revisions/lid/1.md", text)}
	if got, ok := Kept(r); !ok || got.Text() != f.Text() {
		t.Errorf("what was kept is not read back: %v", ok)
	}
	if !Intact(r) {
		t.Error("what was kept is taken for altered")
	}
	for _, bad := range []string{strings.Replace(text, "Some words before", "Other words before", 1), strings.TrimSuffix(text, "\n"), text[:len(text)/2]} {
		if r.Kept = position.NewFile("revisions/lid/1.md", bad); Intact(r) {
			t.Errorf("taken for the words as they were issued: %q", bad)
		}
	}
	r.Kept = position.NewFile("revisions/lid/1.md", text[strings.Index(text, fenceStart):])
	if _, ok := Kept(r); !ok || Intact(r) {
		t.Error("of words that were deleted the form is kept, and they are not as they were issued")
	}
	cut := text[:strings.Index(text, fenceStart)+40]
	for _, bad := range []string{strings.Replace(text, "for: 10 min", "for: 1 min", 1), press["procedures/lid.md"], cut} {
		r.Kept = position.NewFile("revisions/lid/1.md", bad)
		if _, ok := Kept(r); ok {
			t.Errorf("taken for the words of the fingerprint: %q", bad)
		}
	}
}

// An id that no reader sees may be another: the name and the fields stand in its
// place. The first form, which is compared for ever, holds the ids.
func TestIDsThatNoReaderSeesMoveNothing(t *testing.T) {
	m, _ := bind.Manual(source.FromText(press))
	lid := m.Procedures[slices.IndexFunc(m.Procedures, func(p *model.Procedure) bool { return p.ID == "lid" })]
	before := NewCache().Form(lid)
	for _, id := range []string{"spanner-13", "oil-jet", "settle-wait", "seat-look", "grease: ", "valve", "guard", "lid-bolt", "sweep"} {
		id, tail, _ := strings.Cut(id, ":")
		files := map[string]string{}
		for name, text := range press {
			for _, at := range []string{"(hazard:", "(hold:", "(tool:", "(supply:", "(do:", "(when:", "[", ", ", "{ ", "\n"} {
				for _, end := range []string{")", "]", ",", ":", " }"} {
					text = strings.ReplaceAll(text, at+id+end, at+"x-"+id+end)
				}
			}
			if strings.HasPrefix(text, id+":") {
				text = "x-" + text
			}
			files[strings.Replace(name, "/"+id+".md", "/x-"+id+".md", 1)] = text
		}
		files["procedures/x-sweep.md"] = strings.Replace(files["procedures/x-sweep.md"], "title:", "was: [sweep]\ntitle:", 1)
		if files["procedures/x-sweep.md"] == "" {
			delete(files, "procedures/x-sweep.md")
		}
		now, found := bind.Manual(source.FromText(files))
		if len(found) > 0 {
			t.Fatalf("%s%s: %v", id, tail, found[0])
		}
		p := now.Procedures[slices.IndexFunc(now.Procedures, func(p *model.Procedure) bool { return p.ID == "lid" })]
		book := NewCache()
		if book.Of(p) != before.Print() {
			t.Errorf("the id of %s moved it:\n%s", id, strings.Join(Changes(before, book.Form(p), english), "\n"))
		}
		if first := NewCache().Like(lid, "1-"); book.Like(p, "1-") == first {
			t.Errorf("the id of %s did not move the first form", id)
		}
	}
}

// Another procedure in a do: is the procedure's own change, whatever the words;
// the same one under another id is none.
func TestAnotherCalleeIsAChangeOfItsOwn(t *testing.T) {
	r := &model.Revision{}
	m, _ := bind.Manual(source.FromText(press))
	lid := m.Procedures[slices.IndexFunc(m.Procedures, func(p *model.Procedure) bool { return p.ID == "lid" })]
	f := NewCache().Form(lid)
	r.Fingerprint, r.Kept = f.Print(), position.NewFile("revisions/lid/1.md", Keep(press["procedures/lid.md"], f))
	cases := map[string]map[string]string{
		"other":  {"procedures/other.md": "---\ntitle: Sweep\n---\n## Work\n\n1. Sweep the yard.\n"},
		"cellar": {"procedures/cellar.md": "---\ntitle: Sweep\nwas: [sweep]\n---\n## Work\n\n1. Sweep the bay.\n"},
	}
	for id, more := range cases {
		files := maps.Clone(press)
		maps.Copy(files, more)
		files["procedures/lid.md"] = strings.Replace(files["procedures/lid.md"], "do:sweep", "do:"+id, 1)
		if id == "cellar" {
			delete(files, "procedures/sweep.md")
		}
		now, _ := bind.Manual(source.FromText(files))
		p := now.Procedures[slices.IndexFunc(now.Procedures, func(p *model.Procedure) bool { return p.ID == "lid" })]
		if got, want := NewCache().Unissued(p, r), id == "other"; got != want {
			t.Errorf("do:%s: changed since issue %v, want %v", id, got, want)
		}
	}
}

// A revision is found by the fingerprint that its words had in the first form.
func TestARevisionIsKnownByItsFirstForm(t *testing.T) {
	m, _ := bind.Manual(source.FromText(press))
	book, p := NewCache(), m.Procedures[0]
	r := &model.Revision{Fingerprint: book.Of(p), Kept: position.NewFile("r.md", Keep("words", book.Form(p), book.Older(p)...))}
	if first := book.Like(p, "1-0"); !Has(r, first) || !Has(r, r.Fingerprint) || Has(r, "1-0000000000000000") || !Intact(r) {
		t.Errorf("%s is not known as %s", r.Fingerprint, first)
	}
}
