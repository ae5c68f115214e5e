package check

import (
	"slices"
	"strings"
	"testing"

	"baybinder/generator/base/casefile"
	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// placesOf are the findings of a manual as file:line:column: code.
func placesOf(files map[string]string) []string {
	var out []string
	for _, f := range findIn(files) {
		out = append(out, place(f))
	}
	return out
}

const gapJob = `{ "record": 1, "shop": "Test shop", "procedure": "set-gap", "title": "Set the gap", "revision": "",
  "unit": { "serial": "7", "options": ["cab"] }, "worker": "WORKER",
  "started": "2026-11-03T08:03:00.000+01:00", "saved": "2026-11-03T09:00:00.000+01:00",
  "steps": [{ "step": "STEP", "id": "s1-1", "words": "Measure the gap.", "state": "done", "at": "2026-11-03T09:00:00.000+01:00" }],
  "holds": [{ "step": "1.1", "hold": "gap", "kind": "measure", "met": true, "unit": "mm",LIMITS "values": [{ "where": "", "typed": "VALUE", "value": VALUE }], "failed": [] }],
  "gaps": [], "notes": [], "clock": [] }
`

// gap is a manual with a record of a job, whose limit did not come along.
func gap(worker, step, value string) map[string]string {
	return map[string]string{
		"machines/tug.yaml":     "name: Tug\noptions: { cab: Cab }\nunits:\n  - { serials: 1 to 5, options: [] }\n  - { serials: 6 to 9, options: [cab] }\nparts: { lid: { name: lid } }\n",
		"register/holds.yaml":   "gap: { name: gap, kind: measure, what: the gap, limit: 0.3 to 0.5 mm }\n",
		"register/tools.yaml":   "gauge: { name: gauge, kind: other }\n",
		"readings/people.csv":   "person,name,roles,started,plans\na-v,A.V.,,2026-11-02,\na-w,B.K.,,2026-11-02,\nb-k,B.K.,,2026-11-02,\n",
		"procedures/set-gap.md": "---\ntitle: Set the gap\nfor: tug\ntools: [gauge]\nholds: [gap]\n---\n## Work\n\n1. With the [](tool:gauge), measure [the gap](hold:gap).\n2. [Take the lid off](remove:lid).\n\n## Refit\n\n1. [Refit in reverse](reverse:work).\n",
		"records/a.json":        strings.NewReplacer("WORKER", worker, "STEP", step, "VALUE", value, "LIMITS", "").Replace(gapJob),
	}
}

// gapWithin is one whose record brought its own limit along.
func gapWithin(value string) map[string]string {
	files := gap("A.V.", "1.1", value)
	files["records/a.json"] = strings.Replace(files["records/a.json"], `"unit": "mm",`, `"unit": "mm", "low": 0.3, "high": 0.7,`, 1)
	return files
}

// Records, at their edges: each name is looked for, the step that a reversal expands
// into is numbered below its own, a limit that stands is that of the hold.
func TestRecordsAtTheEdge(t *testing.T) {
	for name, c := range map[string]struct {
		files map[string]string
		want  []string
	}{
		"as it is":                 {gap("A.V.", "1.1", "0.4"), nil},
		"a step of a reversal":     {gap("A.V.", "2.1.1", "0.4"), nil},
		"no step of a reversal":    {gap("A.V.", "1.1.1", "0.4"), []string{`records/a.json: record-differs: "1.1.1"`}},
		"out of what stands":       {gap("A.V.", "1.1", "0.6"), []string{"records/a.json: record-disagrees: 0.6"}},
		"in what it brought along": {gapWithin("0.6"), nil},
		"out of that":              {gapWithin("0.8"), []string{"records/a.json: record-disagrees: 0.8"}},
		"two, of whom is unsure":   {gap("B.K. and C.N.", "1.1", "0.4"), []string{`records/a.json: unknown-person: "B.K. and C.N."`, `records/a.json: unknown-person: "B.K. and C.N."`}},
	} {
		if got := textPlaces(findIn(c.files)); !slices.Equal(got, c.want) {
			t.Errorf("%s: %q, want %q", name, got, c.want)
		}
	}
}

// Each of several is told of, and what is right beside it is not.
func TestEachOfSeveralIsTold(t *testing.T) {
	for name, c := range map[string]struct {
		files map[string]string
		want  []string
	}{
		"two acceptances": {map[string]string{"procedures/a.md": "---\ntitle: Sweep\naccepts:\n  - { code: broken-link, at: 1.1, because: Why not. }\n  - { code: vague, at: 1.1 }\n---\n## Work\n\n1. Sweep.\n"},
			[]string{"procedures/a.md:4:13: wrong-type", "procedures/a.md:5:5: missing-field"}},
		"two units": {map[string]string{"register/supplies.yaml": "oil: { name: oil, unit: litre }\nwax: { name: wax, unit: lumps }\n"},
			[]string{"register/supplies.yaml:1:25: quantity", "register/supplies.yaml:2:25: quantity"}},
	} {
		if got := placesOf(c.files); !slices.Equal(got, c.want) {
			t.Errorf("%s: %q, want %q", name, got, c.want)
		}
	}
}

// What stands outside the steps is mended as a step or as a mention.
func TestAnActOutsideTheStepsMayBeAMention(t *testing.T) {
	found := findIn(map[string]string{
		"machines/tug.yaml":   "name: Tug\nparts: { lid: { name: lid } }\n",
		"register/roles.yaml": "fitter: { name: Fitter }\n",
		"register/holds.yaml": "look: { name: look, kind: look, what: the lid, good: dry }\n",
		"procedures/a.md":     "---\ntitle: Look\nfor: tug\nholds: [look]\n---\nWho [took the lid off](remove:lid) looks.\n\nThen [look](hold:look).\n\n## Work\n\n1. [Look](hold:look).\n",
	})
	var mends []string
	for _, f := range found {
		mends = append(mends, f.Code+": "+f.Mend)
	}
	want := []string{
		"not-a-step: write it as a step, 1. at the margin, or as a mention, part:lid",
		"not-a-step: write it as a step, with 1. at the margin, under the phase that it belongs to",
	}
	if !slices.Equal(mends, want) {
		t.Errorf("mends %q, want %q", mends, want)
	}
}

// A translation's front matter needs its texts alone: a list that it has is the
// original's, and so is what a hazard does ("Languages", "Only hazards take
// overrides", the contract).
func TestFrontMatterOfATranslation(t *testing.T) {
	const over = "{ harm: serious-injury, happens: could, consequence: It burns at 90 °C. }"
	const at, hazard = "procedures/a.es.md:1:1: translation-differs", "procedures/a.es.md:3:11: translation-differs"
	for name, c := range map[string]struct {
		front, original string
		want            []string
	}{
		"none":                   {"", "", nil},
		"the list":               {"tools: [rag, gauge]", "", nil},
		"another list":           {"tools: [rag]", "", []string{at}},
		"the hazard":             {"hazards: [hot-oil]", "", nil},
		"a hazard of its own":    {"hazards: [cold]", "", []string{hazard}},
		"the same harm":          {"hazards: [hot-oil: { harm: serious-injury }]", over, nil},
		"another harm":           {"hazards: [hot-oil: { harm: minor-injury }]", over, []string{hazard}},
		"another probability":    {"hazards: [hot-oil: { happens: will }]", over, []string{hazard}},
		"the same probability":   {"hazards: [hot-oil: { happens: could }]", over, nil},
		"its text in words":      {"hazards: [hot-oil: { consequence: Quema a 90 °C. }]", over, nil},
		"another figure in it":   {"hazards: [hot-oil: { consequence: Quema a 70 °C. }]", over, []string{hazard}},
		"an override of its own": {"hazards: [hot-oil: { consequence: Quema. }]", "", []string{hazard}},
	} {
		files := translatedManual()
		files["register/hazards.yaml"] += "cold: { name: cold, nature: It is cold., harm: minor-injury, consequence: It hurts., avoid: [Wait first.] }\n"
		files["register/hazards.es.yaml"] += "cold: { name: frío, nature: Está frío., consequence: Duele., avoid: [Espere antes.] }\n"
		if c.original != "" {
			files["procedures/a.md"] = strings.Replace(files["procedures/a.md"], "hazards: [hot-oil]", "hazards: { hot-oil: "+c.original+" }", 1)
		}
		if c.front != "" {
			files["procedures/a.es.md"] = strings.Replace(files["procedures/a.es.md"], "tapón\n---", "tapón\n"+c.front+"\n---", 1)
		}
		got := slices.DeleteFunc(placesOf(files), func(line string) bool { return !strings.HasSuffix(line, ": translation-differs") })
		if !slices.Equal(got, c.want) {
			t.Errorf("%s: %q, want %q", name, got, c.want)
		}
	}
}

// A time in which a step ends is the original's, to the second.
func TestWithinOfATranslation(t *testing.T) {
	for within, differs := range map[string]bool{"300s": false, "301s": true} {
		files := map[string]string{
			"shop.yaml":          "title: Test shop\nalso: [es]\n",
			"procedures/a.md":    "---\ntitle: Wipe\n---\n## Work\n\n1. Wipe.\n2. Rub. [](within:5min)\n",
			"procedures/a.es.md": "---\ntitle: Limpiar\n---\n## Trabajo\n\n1. Limpie.\n2. Frote. [](within:" + within + ")\n",
		}
		if got := placesOf(files); (len(got) > 0) != differs {
			t.Errorf("%s: %q", within, got)
		}
	}
}

// Entries looks at what stands in registers and machines, and at nothing else.
func TestEntriesLooksAtEntries(t *testing.T) {
	m, _ := bind.Manual(source.FromText(map[string]string{
		"shop.yaml":              "title: Test shop\n",
		"register/supplies.yaml": "oil: { name: oil, unit: lumps }\n",
		"readings/people.csv":    "person,name,roles,started,plans\nt-01,First,,2026-01-01,\n",
		"readings/record.csv":    "date,person,procedure,act,fingerprint,by\n2026-02-01,t-01,a,read,1-083f4b5a1c931fd6,\n2026-02-01,t-01,a,read,1-083f4b5a1c931fd6,\n",
		"procedures/a.md":        "---\ntitle: Sweep\n---\n## Work\n\n1. Sweep.\n",
	}))
	c := &Context{Manual: m, Today: model.Date{Year: 2026, Month: 11, Day: 25}}
	codes := func(list []finding.Finding) (out []string) {
		for _, f := range list {
			out = append(out, f.Code)
		}
		return out
	}
	if got := codes(Entries(c)); !slices.Equal(got, []string{"quantity"}) {
		t.Errorf("of the entries: %q", got)
	}
	if got := codes(Whole(c)); !slices.Contains(got, "quantity") || !slices.Contains(got, "record-twice") {
		t.Errorf("of the whole: %q", got)
	}
}

// Several things that one act is done to are one action; two acts are two.
func TestOneActOnSeveralThingsIsOneAction(t *testing.T) {
	for step, want := range map[string]bool{
		"[Take the lid off](remove:lid) and [take the cover off](remove:cover).": false,
		"[Take the lid off](remove:lid) and [mark the pipes](mark:pipes).":       true,
	} {
		told := slices.ContainsFunc(findIn(map[string]string{
			"machines/tug.yaml": "name: Tug\nparts:\n  lid: { name: lid }\n  cover: { name: cover }\n  pipe-a: { name: pipe A, alike: pipes }\n  pipe-b: { name: pipe B, alike: pipes }\n",
			"procedures/a.md":   "---\ntitle: Open\nfor: tug\n---\n## Work\n\n1. " + step + "\n",
		}), func(f finding.Finding) bool { return f.Code == "two-actions" })
		if told != want {
			t.Errorf("%s: two actions: %v", step, told)
		}
	}
}

// The gear of a hazard is printed on a translated page: "any other register text that it
// prints is not-translated, once, at that entry" (the contract).
func TestGearOfAHazardIsTranslated(t *testing.T) {
	for gear, want := range map[string][]string{
		"":                            {"register/tools.yaml: not-translated: gloves"},
		"gloves: { name: guantes }\n": nil,
	} {
		files := translatedManual()
		files["register/tools.yaml"] += "gloves: { name: gloves, kind: ppe }\n"
		files["register/tools.es.yaml"] += gear
		files["register/hazards.yaml"] = strings.Replace(files["register/hazards.yaml"], "avoid:", "wear: [gloves], avoid:", 1)
		if got := textPlaces(findIn(files)); !slices.Equal(got, want) {
			t.Errorf("%q: %q, want %q", gear, got, want)
		}
	}
}

// A finding outside readings/ that names somebody of the list of people is of a rule
// that says so: no page of the site shows it.
func TestWhoIsNamedIsSaid(t *testing.T) {
	for _, name := range caseNames(t) {
		archive, err := caseNamed(name)
		if err != nil {
			t.Fatal(err)
		}
		files := casefile.Part(archive, "bad/")
		people, _ := bind.Manual(source.FromText(files))
		for _, f := range findIn(files) {
			for _, p := range people.People {
				named := strings.Contains(f.Message, p.Name) && p.Name != "" || slices.Contains(strings.FieldsFunc(f.Message, func(c rune) bool { return strings.ContainsRune(" ,:;()", c) }), p.ID)
				if named && !f.Rule.Names && !strings.HasPrefix(f.At.Path(), "readings/") {
					t.Errorf("%s: %s names %s: %s", name, f.Code, p.ID, f.Message)
				}
			}
		}
	}
}

// A draft's findings are advice, and nobody else's ("Findings", the contract).
func TestFindingsOfADraftAreAdvice(t *testing.T) {
	files := map[string]string{}
	for id, status := range map[string]string{"a": "draft", "b": "issued"} {
		files["procedures/"+id+".md"] = "---\ntitle: Sweep " + id + "\nstatus: " + status + "\n---\n## Work\n\n1. Sweep with the [broom](tool:broom).\n"
	}
	for _, f := range findIn(files) {
		if want := map[string]finding.Level{"procedures/a.md": finding.Advice, "procedures/b.md": finding.Error}[f.At.Path()]; f.Level != want {
			t.Errorf("%s: %s", place(f), f.Level)
		}
	}
}

// What a list is held against by a field that could not be read is in doubt: what it
// may have used is not told as unused.
func TestDoubtOfLists(t *testing.T) {
	manual := func() map[string]string {
		return map[string]string{
			"machines/tug.yaml":      "name: Tug\nfasteners: { nut: { name: nut, renew-with: new-nut } }\n",
			"register/tools.yaml":    "meter: { name: meter, kind: tester }\nmask: { name: mask, kind: ppe }\n",
			"register/supplies.yaml": "new-nut: { name: new nut, unit: each }\n",
			"register/hazards.yaml":  "dust: { name: dust, nature: Dust flies., harm: minor-injury, consequence: It hurts the eyes., avoid: [Look away.], wear: [mask] }\n",
			"register/holds.yaml":    "gap: { name: gap, kind: measure, what: the gap, limit: 0.3 to 0.5 mm, with: meter }\n",
			"procedures/a.md":        "---\ntitle: Work\nfor: tug\ntools: [meter]\nsupplies: [new-nut: 1]\nholds: [gap]\n---\n## Undo\n\n1. [Undo the nut](loosen:nut).\n2. [Do the nut up](tighten:nut).\n\n## Look\n\n1. Measure [the gap](hold:gap).\n",
		}
	}
	spoilEach(t, []unreadCase{
		{"nothing", "procedures/a.md", "", "", ""},
		{"with of a hold", "register/holds.yaml", "with: meter", "with: metre", "unknown-reference: metre"},
		{"a hold's with by another kind", "register/holds.yaml", "with: meter", "with: [meter]", "wrong-type: ["},
		{"renew-with of a fastener", "machines/tug.yaml", "renew-with: new-nut", "renew-with: new-nuts", "unknown-reference: new-nuts"},
	}, manual)
}

// The hazards of a phase's first paragraph are met in its steps, whichever phase it is.
func TestAHazardOfALaterPhaseIsUsed(t *testing.T) {
	files := map[string]string{
		"register/hazards.yaml": "dust: { name: dust, nature: Dust flies., harm: minor-injury, consequence: It hurts the eyes., avoid: [Look away.] }\n",
		"procedures/a.md":       "---\ntitle: Sweep\nhazards: [dust]\n---\n## Fetch\n\n1. Fetch the broom.\n\n## Work\n\nMind [the dust](hazard:dust).\n\n1. Sweep.\n",
	}
	if got := placesOf(files); len(got) > 0 {
		t.Errorf("%q", got)
	}
}

// A job that is for no machine names no unit.
func TestAJobForNoMachine(t *testing.T) {
	for unit, want := range map[string][]string{
		`{ "serial": "", "options": [] }`:  nil,
		`{ "serial": "7", "options": [] }`: {`records/a.json: record-differs: "unit"`},
	} {
		files := gap("A.V.", "1.1", "0.4")
		files["procedures/set-gap.md"] = "---\ntitle: Set the gap\ntools: [gauge]\nholds: [gap]\n---\n## Work\n\n1. With the [](tool:gauge), measure [the gap](hold:gap).\n"
		files["records/a.json"] = strings.Replace(files["records/a.json"], `{ "serial": "7", "options": ["cab"] }`, unit, 1)
		if got := textPlaces(findIn(files)); !slices.Equal(got, want) {
			t.Errorf("%s: %q, want %q", unit, got, want)
		}
	}
}

// Sentences whose writing is right, at the edges of the rules: what is red was done by
// nobody, and the items of a list are sentences of their own. Common practice, no source.
func TestRightWritingAtTheEdge(t *testing.T) {
	for _, step := range []string{
		"See it: the lamp must be red.",
		"Fetch:\n\n   - the long broom from the rack behind the door\n   - the short broom from the rack beside the window\n   - the wide pan from the shelf above the bench\n\n   Then sweep.",
	} {
		if got := placesOf(map[string]string{"procedures/a.md": "---\ntitle: Sweep\n---\n## Work\n\n1. " + step + "\n"}); len(got) > 0 {
			t.Errorf("%s: %q", step, got)
		}
	}
}
