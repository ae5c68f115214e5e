package fingerprint

import (
	"maps"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/base/position"
	"baybinder/generator/model"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// long is a procedure of two phases with sub-steps, reasons and refit notes, and
// links that name a part, a phase, an answer and a time behind their signs.
var long = map[string]string{
	"shop.yaml":           "title: Shop\n",
	"register/tools.yaml": "spanner: { name: spanner, kind: spanner, fits: [13 mm] }\n",
	"register/holds.yaml": "seat: { name: seat, kind: look, what: the seat, good: dry }\nstate: { name: state, kind: ask, answers: { good: clean, worn: scored } }\n",
	"register/roles.yaml": "fitter: { name: Fitter }\n",
	"machines/press.yaml": "name: Press\noptions: { guard: Light guard, cab: Cab }\n" +
		"parts: { lid: { name: lid, held-by: { bolt: 4 } }, hose-a: { name: hose A, alike: hoses }, hose-b: { name: hose B, alike: hoses }, tray: { name: tray, held-by: { bolt: 2 } } }\n" +
		"fasteners: { bolt: { name: bolt } }\n",
	"procedures/sweep.md": "---\ntitle: Sweep\n---\n## Work\n\n1. Sweep the bay.\n",
	"procedures/dust.md":  "---\ntitle: Dust\n---\n## Work\n\n1. Dust the bay.\n",
	"procedures/long.md": `---
title: Long
for: press
people: 2
posts: { gate: by the gate, roof: on the roof }
tools: [spanner]
holds: [seat, state]
---
## Strip

All of it in one go.

1. Undo it.
   1. Left end.
   2. Right end.
2. [Lid off](remove:lid), [undo](loosen:bolt#tray).

   [Because](why:) it drips.

   [](on:refit) Wipe it.
3. Ask [the state](hold:state). [](within:5min)

## Back

1. [If it is clean](if:state=good), [with the guard](when:guard), look.
2. [All back](reverse:strip!hose-a,hose-b).
3. [Hose](part:hose-a) and [sweep](do:sweep).
`,
}

// Where a link leads is told with all that a reader sees of it: the answer, the
// part at which a fastener is undone. In the first form what is not its id alone
// stands as it was written.
func TestWhereALinkLeadsIsTold(t *testing.T) {
	first := func(files map[string]string) Form {
		m, _ := bind.Manual(source.FromText(files))
		i := slices.IndexFunc(m.Procedures, func(p *model.Procedure) bool { return p.ID == "long" })
		return NewCache().Beside(m.Procedures[i], Form{})
	}
	for _, c := range []struct{ from, to, want, wantFirst string }{
		{"if:state=good", "if:state=worn", "step 2.1: if state, scored, was state, clean", "step 2.1: if state=worn, was state=good"},
		{"loosen:bolt#tray", "loosen:bolt#lid", "step 1.2: loosen bolt at lid, was bolt at tray\nstep 1.2: loosen bolt at lid, held-by: bolt 4, was bolt 2", "step 1.2: loosen bolt#lid, was bolt#tray\nstep 1.2: loosen bolt#lid, held-by: bolt 4, was bolt 2"},
		{"when:guard", "when:!guard", "step 2.1: when not Light guard, was Light guard", "step 2.1: when !guard, was guard"},
		{"when:guard", "when:cab", "step 2.1: when Cab, was Light guard", "step 2.1: when cab, was guard\nstep 2.1: when cab, option: Cab, was Light guard"},
		{"(hold:state)", "(hold:seat)", "step 1.3: hold seat, was state", "step 1.3: hold seat, was state"},
		{"remove:lid", "remove:hose-b", "step 1.2: remove hose B, was lid", "step 1.2: remove hose B, was lid"},
	} {
		files := maps.Clone(long)
		edit{"procedures/long.md", c.from, c.to}.in(t, files)
		was, now := formOf(t, long, "long"), formOf(t, files, "long")
		if got := strings.Join(Changes(was, now, english), "\n"); !strings.HasPrefix(got+"\n", c.want+"\n") || strings.Contains(got, "option:") {
			t.Errorf("%q for %q: got\n%s\nwant\n%s", c.to, c.from, got, c.want)
		}
		if got := strings.Join(Changes(first(long), first(files), english), "\n"); !strings.HasPrefix(got, c.wantFirst) {
			t.Errorf("%q for %q in the first form: got\n%s\nwant\n%s", c.to, c.from, got, c.wantFirst)
		}
	}
}

// told is what is said of an edit of the long procedure.
func told(t *testing.T, e edit) string {
	t.Helper()
	files := maps.Clone(long)
	e.in(t, files)
	return strings.Join(Changes(formOf(t, long, "long"), formOf(t, files, "long"), english), "\n")
}

// Each change is told at the number that the step has on its page: phase, step,
// sub-step.
func TestChangesAreToldAtTheirNumbers(t *testing.T) {
	const file = "procedures/long.md"
	for _, c := range []struct {
		from, to, want string
	}{
		{"Right end.", "Other end.", "step 1.1.2: it says “Other end.”, was “Right end.”"},
		{"Left end.", "Other end.", "step 1.1.1: it says “Other end.”, was “Left end.”"},
		{", look.", ", look up.", "step 2.1: it says “If it is clean, with the guard, look up.”, was “If it is clean, with the guard, look.”"},
		{"All of it", "Half of it", "phase 1: it says “Half of it in one go.”, was “All of it in one go.”"},
		{"it drips.", "it leaks.", "step 1.2: the reason is “Because it leaks.”, was “Because it drips.”"},
		{"Wipe it.", "Dry it.", "step 1.2: at the refit it says “Dry it.”, was “Wipe it.”"},
		{"people: 2", "people: 3", "the whole job: people: 3, was 2"},
		{"people: 2", "people: 2\nneeds: [fitter]", "the whole job: now also: needs: Fitter"},
		{"gate: by the gate", "gate: at the gate", "the whole job: post gate: at the gate, was by the gate"},
		{"gate: by the gate, roof: on the roof", "roof: on the roof, gate: by the gate", "the whole job has the same in another order"},
		{"people: 2", "people: 2\nexpects: { lid: on }", "the whole job: now also: expects lid: on"},
		{"   2. Right end.\n", "2. Right end.\n", "step 1.2 was step 1.1.2"},
		{"   1. Left end.\n   2. Right end.\n", "   1. Right end.\n   2. Left end.\n", "step 1.1.1 is gone: it says “Left end.”\nstep 1.1.2 is new: it says “Left end.”"},
		{"and [sweep](do:sweep).\n", "and [sweep](do:sweep).\n\n## Test\n\n1. Run it.\n", "phase 3 is new: it says nothing\nstep 3.1 is new: it says “Run it.”"},
		{"   1. Left end.\n   2. Right", "   1. Right", "step 1.1.1 is gone: it says “Left end.”"},
		{"3. [Hose](part:hose-a) and [sweep](do:sweep).", "3. [Hose](part:hose-a) and sweep.", "step 2.3: no longer: performing a procedure\nno longer performed: sweep"},
		{"[sweep](do:sweep)", "[sweep](do:dust)", "now it performs: dust\nno longer performed: sweep"},
		{"[sweep](do:sweep)", "[sweep](do:sweep) [and](do:dust)", "step 2.3: it says “Hose and sweep and.”, was “Hose and sweep.”\nstep 2.3: now also: performing a procedure\nnow it performs: dust"},
		{"(within:5min)", "(within:6min)", "step 1.3: within 360 s, was 300 s"},
	} {
		if got := told(t, edit{file, c.from, c.to}); got != c.want {
			t.Errorf("%q for %q: got\n%s\nwant\n%s", c.to, c.from, got, c.want)
		}
	}
}

// What a reader sees of where a link leads moves it: the part at which a
// fastener is undone, the parts that a reversal leaves out, the answer and its
// words, the option's words, the time. What nobody sees of it does not: the
// answer's key, the place that only see: leads to.
func TestWhereALinkLeads(t *testing.T) {
	before := formOf(t, long, "long").Print()
	for _, c := range []struct {
		file, from, to string
		moves          bool
	}{
		{"procedures/long.md", "loosen:bolt#tray", "loosen:bolt#lid", true},
		{"procedures/long.md", "loosen:bolt#tray", "loosen:bolt", true},
		{"procedures/long.md", "strip!hose-a,hose-b", "strip!hose-a", true},
		{"procedures/long.md", "strip!hose-a,hose-b", "strip!hose-b,hose-a", false}, // the same parts
		{"procedures/long.md", "strip!hose-a,hose-b", "strip#hose-a", true},
		{"procedures/long.md", "strip!hose-a,hose-b", "strip", true},
		{"procedures/long.md", "if:state=good", "if:state=worn", true},
		{"procedures/long.md", "when:guard", "when:!guard", true},
		{"procedures/long.md", "when:guard", "when:cab", true},
		{"procedures/long.md", "(within:5min)", "(within:300s)", false}, // the same time
		{"procedures/long.md", "(within:5min)", "(within:4min)", true},
		{"register/holds.yaml", "good: clean", "good: spotless", true},
		{"register/holds.yaml", "worn: scored", "worn: rough", true},
		{"machines/press.yaml", "guard: Light guard", "guard: Guard", true},
		{"machines/press.yaml", "name: hose B", "name: hose C", true}, // left out, and alike with what is named
		{"machines/press.yaml", "name: tray", "name: plate", true},
		{"machines/press.yaml", "cab: Cab", "cab: Cabin", false},
		{"procedures/sweep.md", "title: Sweep", "title: Sweeping", false},
	} {
		files := maps.Clone(long)
		edit{c.file, c.from, c.to}.in(t, files)
		if moved := formOf(t, files, "long").Print() != before; moved != c.moves {
			t.Errorf("%q for %q: moved %v", c.to, c.from, moved)
		}
	}
	keys := maps.Clone(long)
	keys["register/holds.yaml"] = strings.Replace(keys["register/holds.yaml"], "good: clean", "fine: clean", 1)
	keys["procedures/long.md"] = strings.Replace(keys["procedures/long.md"], "if:state=good", "if:state=fine", 1)
	if formOf(t, keys, "long").Print() != before {
		t.Error("the key of an answer, which no reader sees, moved it")
	}
}

// In the form an answer is its words, and no other's.
func TestAnAnswerIsItsWords(t *testing.T) {
	for key, want := range map[string]string{"good": "link if state, clean", "worn": "link if state, scored"} {
		files := maps.Clone(long)
		files["procedures/long.md"] = strings.Replace(files["procedures/long.md"], "if:state=good", "if:state="+key, 1)
		var got []string
		for _, line := range formOf(t, files, "long") {
			if line = strings.TrimSpace(line); strings.HasPrefix(line, "link if ") {
				got = append(got, line)
			}
		}
		if !slices.Equal(got, []string{want}) {
			t.Errorf("%s: %q, want %q", key, got, want)
		}
	}
}

// "A fingerprint is compared in the form of its own number for ever": what the
// demo issued is known by the fingerprints that stand in its table since then.
func TestTheDemosFingerprintsStay(t *testing.T) {
	tree, err := source.Read("../../../content")
	if err != nil {
		t.Fatal(err)
	}
	m, _ := bind.Manual(tree)
	book, compared, earlier := NewCache(), 0, 0
	for _, p := range m.Procedures {
		r := Last(m, p)
		if r == nil || r.Readers == "retired" {
			continue
		}
		was, kept := Kept(r)
		if !kept {
			t.Errorf("%s: what was kept of revision %s is not what was issued", p.ID, r.Number)
			continue
		}
		if compared++; was.Own().Text() != book.Beside(p, was).Own().Text() || book.Unissued(p, r) {
			t.Errorf("%s, revision %s, is another form of the same words now", p.ID, r.Number)
		}
		if first := book.Older(p)[0]; book.Of(p) == r.Fingerprint && len(was.callees()) == 0 && strings.Contains(r.Kept.Text, "\n1-") {
			if earlier++; !Has(r, first) {
				t.Errorf("%s, revision %s, is not known by %s", p.ID, r.Number, first)
			}
		}
	}
	if compared < 20 || earlier < 5 {
		t.Errorf("%d were compared, %d of them in their first form", compared, earlier)
	}
}

// Of a ring of calls each has a fingerprint, which its own words move and those
// of the other do too.
func TestARingHasFingerprints(t *testing.T) {
	ring := func(words string) map[string]string {
		return map[string]string{
			"shop.yaml":       "title: Shop\n",
			"procedures/a.md": "---\ntitle: A\n---\n## Work\n\n1. [B](do:b).\n",
			"procedures/b.md": "---\ntitle: B\n---\n## Work\n\n1. [A](do:a) " + words + ".\n",
		}
	}
	one, other := formOf(t, ring("now"), "a").Print(), formOf(t, ring("then"), "a").Print()
	if one == other || one != formOf(t, ring("now"), "a").Print() || !Known(one) {
		t.Errorf("%s and %s", one, other)
	}
}

// A fingerprint is compared in the form of its own number; one of a form that
// this program does not know says nothing.
func TestFormsByTheirNumbers(t *testing.T) {
	m, _ := bind.Manual(source.FromText(long))
	p := m.Procedures[slices.IndexFunc(m.Procedures, func(p *model.Procedure) bool { return p.ID == "long" })]
	book := NewCache()
	first, second := book.Like(p, "1-0123456789abcdef"), book.Like(p, "2-0123456789abcdef")
	if first == second || !strings.HasPrefix(first, "1-") || second != book.Of(p) || book.Older(p)[0] != first {
		t.Errorf("%s and %s", first, second)
	}
	for print, known := range map[string]bool{first: true, second: true, "3-0123456789abcdef": false, "": false, "0123": false} {
		if Known(print) != known || (book.Like(p, print) != "") != known {
			t.Errorf("%q is known: %v", print, Known(print))
		}
	}
	for print, want := range map[string]bool{
		first: false, second: false, "": false, "3-0123456789abcdef": false, "1-0123456789abcdef": true, "2-0123456789abcdef": true,
	} {
		if got := book.Unissued(p, &model.Revision{Fingerprint: print}); got != want {
			t.Errorf("another than revision %q: %v", print, got)
		}
	}
	form := book.Beside(p, Parse("procedure\n"))
	if form.number() != "1-" || form.Print() != first || book.Form(p).number() != "2-" {
		t.Errorf("beside a form without a number stands %s", form.number())
	}
	r := &model.Revision{Fingerprint: second, Kept: position.NewFile("r.md", Keep("words", book.Form(p), first))}
	for print, has := range map[string]bool{first: true, second: true, "1-0123456789abcdef": false, "2-0123456789abcdef": false, "3-0123456789abcdef": false, "": false} {
		if Has(r, print) != has {
			t.Errorf("the revision has %q: %v", print, !has)
		}
	}
	if r.Kept = nil; Has(r, first) || !Has(r, second) {
		t.Error("without what was kept only its own fingerprint is known")
	}
}

// What a form says of what is performed is found by the id that it has now or
// had before.
func TestTheFingerprintOfACallee(t *testing.T) {
	m, _ := bind.Manual(source.FromText(long))
	by := func(id string) *model.Procedure {
		return m.Procedures[slices.IndexFunc(m.Procedures, func(p *model.Procedure) bool { return p.ID == id })]
	}
	book := NewCache()
	form := book.Form(by("long"))
	if got := form.Callee(by("sweep")); got != book.Of(by("sweep")) {
		t.Errorf("sweep was %q", got)
	}
	if got := form.Callee(by("dust")); got != "" {
		t.Errorf("dust, which is not performed, was %q", got)
	}
	if got := form.Callee(&model.Procedure{Entry: model.Entry{ID: "brush"}, Was: []string{"sweep"}}); got != book.Of(by("sweep")) {
		t.Errorf("what was sweep before was %q", got)
	}
}

// What a fluid comes from is acted on though no step names it: what a supply is, in
// "What is issued stays issued" of the format.
func TestWhatAFluidComesFromMovesIt(t *testing.T) {
	files := maps.Clone(press)
	files["register/supplies.yaml"] += "lube-oil: { name: lube oil, unit: L, ghs: [H304], hazards: [oil-jet], note: Cold. }\n"
	files["machines/press.yaml"] += "fluids: { lube: { name: lube, supply: lube-oil } }\n"
	edit{"procedures/lid.md", "7. Tell", "7. [Fill](fill:lube).\n8. Tell"}.in(t, files)
	before := formOf(t, files, "lid").Print()
	for _, e := range []edit{
		{"register/supplies.yaml", "name: lube oil", "name: gear oil"}, {"register/supplies.yaml", "unit: L", "unit: kg"}, {"register/supplies.yaml", "ghs: [H304]", "ghs: [H302]"},
		{"register/supplies.yaml", "hazards: [oil-jet]", "hazards: []"}, {"register/supplies.yaml", "note: Cold.", "note: Warm."},
	} {
		other := maps.Clone(files)
		e.in(t, other)
		if formOf(t, other, "lid").Print() == before {
			t.Errorf("%v moves nothing", e)
		}
	}
}

// A form is of the second where its first line says so, and else of the first.
func TestAFormSaysWhichItIs(t *testing.T) {
	for want, f := range map[string]Form{"1-": {}, "2-": {secondLine}} {
		if got := f.Print(); !strings.HasPrefix(got, want) {
			t.Errorf("%v is %s", f, got)
		}
	}
}

// A not, in each language, is taken with the word behind it, and numbers in
// words, in reasons and in refit notes count: "What is issued stays issued" of
// the format.
func TestDangerInWords(t *testing.T) {
	const front = "---\ntitle: Lid\n---\n## Work\n\n"
	form := func(body string) Form {
		files := maps.Clone(press)
		files["procedures/lid.md"] = front + body
		return formOf(t, files, "lid")
	}
	for _, c := range []struct {
		was, is string
		moved   bool
	}{
		{"Do not touch it.", "Do not hold it.", true},
		{"Do not touch it.", "Please do not touch it.", false},
		{"Don't touch it.", "Do touch it.", true},
		{"No lo toque nunca.", "No lo toque.", true},
		{"Toque sin guantes.", "Toque con guantes.", true},
		{"Nicht berühren.", "Berühren.", true},
		{"Nie ohne Handschuhe berühren.", "Nie mit Handschuhen berühren.", true},
		{"Keine Hand hinein.", "Eine Hand hinein.", true},
		{"Die Knie beugen.", "Die Beine beugen.", false},
		{"Turn it 2 times.", "Turn it 3 times.", true},
		{"Turn it 1.5 times.", "Turn it 15 times.", true},
		{"Turn it twice.", "Turn it two times.", false},
		{"Sweep.\n\n   [Because](why:) 3 fell.", "Sweep.\n\n   [Because](why:) 4 fell.", true},
		{"Sweep.\n\n   [Because](why:) dust burns.", "Sweep.\n\n   [Because](why:) dust may burn.", false},
		{"Sweep.\n\n   [](on:refit) Use 2 drops.", "Sweep.\n\n   [](on:refit) Use 3 drops.", true},
		{"Sweep.", "Sweep.\n2. Look.", false},
		{"Sweep.\n2. Look.", "Look.\n2. Sweep.", true},
		{"Sweep.\n2. Wait there. [](hold:settle-wait)", "Wait here. [](hold:settle-wait)\n2. Sweep.", true},
		{"Sweep.\n2. Wait there. [](hold:settle-wait)", "Sweep.\n2. Wait here. [](hold:settle-wait)", false},
		{"Sweep.\n2. Sweep.\n3. Wait there. [](hold:settle-wait)", "Sweep.\n2. Wait here. [](hold:settle-wait)", false}, // which of the two is gone nobody knows
		{"Sweep:\n   1. Left.\n   2. Right.", "Sweep:\n   1. Right.\n   2. Left.", true},
		{"Sweep:\n   1. Left.\n2. Right.", "Sweep:\n   1. Left.\n   2. Right.", true},
	} {
		if got := DangerMoved(form("1. "+c.was+"\n"), form("1. "+c.is+"\n")); got != c.moved {
			t.Errorf("%q for %q: %v", c.is, c.was, got)
		}
	}
}
