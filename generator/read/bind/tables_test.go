package bind

import (
	"fmt"
	"strings"
	"testing"

	"baybinder/generator/model"
	"baybinder/generator/read/source"
)

// compared looks at what is told: nothing, or one finding with such words in it.
func compared(t *testing.T, what string, got []string, want string) {
	t.Helper()
	if want == "" && len(got) > 0 || want != "" && (len(got) != 1 || !strings.Contains(got[0], want)) {
		t.Errorf("%s: %q, want %q", what, got, want)
	}
}

// Links stand in titles, prose and steps at every depth; a step has the links of
// all its paragraphs but those for the refit.
func TestLinksStandEverywhere(t *testing.T) {
	m, found := Manual(source.FromText(merged(shed, "procedures/job.md", "---\ntitle: Job\nfor: tug\npeople: 3\n---\nRead [one](tool:broom).\n\n## Strip [two](tool:broom)\n\nBegin [three](tool:broom).\n\nAnd [four](tool:broom).\n\n"+
		"1. [A](remove:lid).\n\n   [Then](on:refit) wipe with the [five](tool:broom).\n\n   [Because](why:) of [this](part:lid).\n\n   Last [six](tool:broom). [](people:2)\n   1. [Deep](remove:hood) [](people:3)\n\nBetween [seven](tool:broom).\n\n1. [B](part:lid) [on](see:mop).\n2. [](do:mop) [x](people:x)\n")))
	compared(t, "all", said(found), "people:x is not a number")
	p := m.Procedures[0]
	if p.ID != "job" {
		p = m.Procedures[1]
	}
	all := []*model.Link{p.Intro[0].Links[0], p.Phases[0].Title.Links[0], p.Phases[0].Lead.Links[0]}
	for _, part := range p.Phases[0].Body {
		if part.Prose != nil {
			all = append(all, part.Prose.Links...)
		}
	}
	if len(all) != 5 || len(p.Phases[0].Body) != 5 {
		t.Fatalf("%d links outside steps, %d parts", len(all), len(p.Phases[0].Body))
	}
	for i, l := range all {
		if l.To == nil {
			t.Errorf("the link %d outside steps leads nowhere", i+1)
		}
	}
	a, deep := p.Steps[0], p.Steps[1]
	if a.Blocks[0].Role != model.Said || a.Blocks[1].Role != model.OnRefit || a.Blocks[2].Role != model.Why || a.Blocks[3].Role != model.Said {
		t.Errorf("roles: %v", a.Blocks)
	}
	if len(a.Links) != 5 || a.People != 2 || deep.People != 3 || deep.Links[0].To == nil || p.Steps[3].People != 0 {
		t.Errorf("%d links, people %d %d %d", len(a.Links), a.People, deep.People, p.Steps[3].People)
	}
	if len(p.Calls) != 1 || p.Calls[0].To != model.Named(p.Steps[3].Links[0].To) {
		t.Errorf("calls: %v", p.Calls)
	}
}

// The last day of whom left, and the spans of who came back: "2027-03-15" or
// "2027-03-15..2027-08-02", several separated by spaces.
func TestWhenSomebodyLeft(t *testing.T) {
	for left, c := range map[string]struct {
		want string
		n    int
	}{
		"":                                  {"", 0},
		"2026-06-01":                        {"", 1},
		"2026-03-15..2026-08-02":            {"", 1},
		"2026-03-15..2026-08-02 2026-09-01": {"", 2},
		"2026-03-15..2026-08-02 2026-08-02..2026-09-02": {"", 2},
		"2026-03-15..2026-08-02 2026-08-01":             {"readings/people.csv:2:44 wrong-type: \"2026-08-01\" begins before the absence in front of it is over", 1},
		"2026-03-15 2026-08-01":                         {"begins before the absence in front of it is over", 1},
		"2026-03-15..":                                  {"has a day missing", 0},
		"..2026-03-15":                                  {"has a day missing", 0},
		"2026-03-15..2026-03-15":                        {"ends before it begins", 0},
		"2026-03-15..2026-03-14 2026-09-01":             {"ends before it begins", 1},
		"2025-12-31":                                    {"is before A started, on 2026-01-01 | mend the last day, or started", 0},
		"2026-01-01":                                    {"", 1},
		"2026-02-30":                                    {"readings/people.csv:2:21 wrong-type: \"2026-02-30\" is not a day", 0},
		"2026-03-15..2026-02-30":                        {"readings/people.csv:2:33 wrong-type: \"2026-02-30\" is not a day", 0},
	} {
		m, found := Manual(source.FromText(map[string]string{"shop.yaml": "title: S\n", "readings/people.csv": "person,name,roles,started,plans,left\na-1,A,,2026-01-01,," + left + "\n"}))
		want := c.want
		if strings.Contains(want, ":2:") {
			_, want, _ = strings.Cut(want, " ")
		}
		compared(t, left, said(found), want)
		if p := m.People[0]; len(p.Left) != c.n || p.LeftUnread != (c.want != "") {
			t.Errorf("%q: %v, unread %v", left, p.Left, p.LeftUnread)
		}
	}
}

// What a cell of a table cannot be is told at the cell.
func TestCellsOfTables(t *testing.T) {
	record := "date,person,procedure,act,fingerprint,by\n"
	revisions := "procedure,revision,date,fingerprint,reason,written,checked,approved,walked,readers,words\n"
	for _, c := range []struct{ file, text, want string }{
		{"readings/record.csv", record + "2026-03-01,a,job,performed,,\n", ""},
		{"readings/record.csv", record + "2026-03-01,a,job,read,,\n", "this row has no fingerprint"},
		{"readings/record.csv", record + "2026-03-01,a,job,read,xyz,\n", `"xyz" is no fingerprint`},
		{"readings/record.csv", record + ",a,job,performed,,\n", "this row has no date"},
		{"readings/record.csv", record + "2026-3-1x,a,job,performed,,\n", "is not a day of the calendar"},
		{"readings/record.csv", record + "2026-03-01,a,job,danced,,\n", `"danced" is not one of: read, watched, performed, taught, told, inspected`},
		{"readings/record.csv", record + "2026-03-01,First,job,performed,,\n", "First is not in readings/people.csv | did you mean a?"},
		{"readings/record.csv", record + "2026-03-01,qqqqq,job,performed,,\n", "qqqqq is not in readings/people.csv | "},
		{"readings/record.csv", "date,person,procedure,act,fingerprint\n2026-03-01,a,job,performed,\n", "readings/record.csv has no column by | its first line is: date,person,procedure,act,fingerprint,by"},
		{"readings/record.csv", "date,person,procedure,act,fingerprint,buy\n2026-03-01,a,job,performed,,\n", "readings/record.csv has no column buy | did you mean by?"},
		{"readings/record.csv", "date;person;procedure\n", "the cells of readings/record.csv are parted by semicolons"},
		{"revisions.csv", revisions + "job,1,2026-03-01,1-8c1f0a93b2d4e5f6,First.,a,a,a,a,none,\n", ""},
		{"revisions.csv", revisions + "job,1,2026-03-01,1-8c1f0a93b2d4e5f6,First.,a,a,a,a,none,0123456789abcdef\n", ""},
		{"revisions.csv", revisions + "job,1,2026-03-01,1-8c1f0a93b2d4e5f6,First.,a,a,a,a,none,xyz\n", `"xyz" is no hash of words`},
		{"revisions.csv", revisions + "job,1,2026-03-01,1-8c1f0a93b2d4e5f6,First.,a,a,a,a,none,\njob,1,2026-03-02,1-8c1f0a93b2d4e5f6,Second.,a,a,a,a,none,\n", "a second revision 1 of job | give the later of the two the next number"},
		{"readings/people.csv", "person,name,roles,started,plans\na,First,,2026-01-01,\na,Second,,2026-01-01,\n", "a second person a | give the second an id of its own"},
		{"readings/people.csv", "person,name,roles,started,plans\na,First,boss@soon,2026-01-01,\n", "is not a day of the calendar"},
		{"readings/people.csv", "person,name,roles,started,plans\na,First,boss,never,\n", "is not a day of the calendar"},
		{"readings/plans/Bad_Id.yaml", "title: T\n", "bad-id"},
		{"readings/plans/sub/start.yaml", "title: T\n", "a second reading plan start"},
		{"records/answers.csv", "record,step,date,answer\nzzz,1.1,2026-03-01,Yes.\n", "there is no record zzz in records/"},
	} {
		files := map[string]string{
			"shop.yaml": "title: S\n", "register/roles.yaml": "boss: { name: Boss }\n", "procedures/job.md": "---\ntitle: Job\n---\n## Work\n\n1. Look.\n",
			"readings/people.csv": "person,name,roles,started,plans\na,First,,2026-01-01,\n", "readings/plans/start.yaml": "title: T\n",
		}
		files[c.file] = c.text
		m, found := Manual(source.FromText(files))
		compared(t, c.file+" "+c.text, said(found), c.want)
		for _, r := range m.Record {
			if r.Bad != (c.want != "") {
				t.Errorf("%s: bad %v", c.text, r.Bad)
			}
		}
		if len(m.People) > 0 && strings.Contains(c.text, "soon") && len(m.People[0].Roles) != 0 || len(m.People) > 0 && m.People[0].StartUnread != strings.Contains(c.text, "never") {
			t.Errorf("%s: %+v", c.text, m.People[0])
		}
	}
}

// Texts in another language: what is translated, where it stands, and what is told.
func TestTextsInAnotherLanguage(t *testing.T) {
	for _, c := range []struct{ file, text, want string }{
		{"register/tools.es.yaml", "broom: { name: escoba, note: N. }\n", ""},
		{"register/tools.es.yaml", "broom: { kind: x }\n", "kind is not a text that is translated | only what people read is translated: name, note, kept"},
		{"register/tools.es.yaml", "broom: { name: [a, [b]] }\n", "name holds a list where a text belongs"},
		{"register/tools.es.yaml", "broom: { name: }\n", "name has no text"},
		{"register/tools.es.yaml", "broom: x\n", "it must be a map of texts"},
		{"register/tools.es.yaml", "- broom\n", "it must be a map from id to texts"},
		{"register/tools.es.yaml", "", ""},
		{"register/tols.yaml", "a: { name: a }\n", "there is no register tols, so this file is not read | did you mean tools.yaml?"},
		{"register/qqqqqq.yaml", "a: { name: a }\n", "there is no register qqqqqq, so this file is not read | the registers are: tools"},
		{"register/sub/tools.yaml", "a: { name: a }\n", "so this file is not read"},
		{"register/tools.en.yaml", "broom: { name: broom }\n", "en is the manual's own language: this is no translation"},
		{"register/tools.fr.yaml", "broom: { name: balai }\n", "the shop has no language fr | write also: [fr] in shop.yaml"},
		{"register/tools.es-mx.yaml", "broom: { name: escoba }\n", "the shop has the language es, and there are files in es-MX | write es-MX, or es in the names of the files"},
		{"shop.es.yaml", "title: Taller\n", ""},
		{"shop.es.yaml", "", ""},
		{"shop.es.yaml", "- x\n", "it must be a map of texts"},
		{"shop.fr.yaml", "title: Atelier\n", "the shop has no language fr"},
		{"machines/tug.es.yaml", "tug: { name: Remolque }\nlid: { name: tapa }\ncorners: [detrás, delante]\n", ""},
		{"machines/tug.es.yaml", "lid: { name: tapa }\nname: Remolque\n", ""},
		{"machines/tug.es.yaml", "cab: { name: Cabina }\n", "machines/tug.yaml has no entry cab | what is the machine's own stands by its id: tug: { options: { cab: … } }"},
		{"machines/zzz.es.yaml", "a: { name: a }\n", "there is no machine zzz that this translates | name the file as the machine's: machines/ID.es.yaml"},
		{"machines/tug.fr.yaml", "lid: { name: couvercle }\n", "the shop has no language fr"},
		{"procedures/zzz.es.md", "---\ntitle: Z\n---\n## Obra\n\n1. Mire.\n", "there is no procedure zzz that this translates"},
	} {
		m, found := Manual(source.FromText(merged(shed, c.file, c.text)))
		compared(t, c.file+" "+c.text, said(found), c.want)
		if strings.Contains(c.text, "Remolque") {
			own := 0
			for _, w := range m.Words {
				if w.ID == "tug" && fmt.Sprint(w.Texts["name"]) == "[Remolque]" {
					own++
				}
			}
			if own != 1 {
				t.Errorf("%s: %+v", c.text, m.Words)
			}
		}
		if half := len(m.HalfRead) > 0; half != strings.Contains(c.want, "it must be a map") {
			t.Errorf("%s %s: half read: %v", c.file, c.text, m.HalfRead)
		}
	}
}

// The shop's languages in their one form, each once; its address is a page.
func TestTheShopsLanguagesAndAddress(t *testing.T) {
	for _, c := range []struct{ text, language, also, address, want string }{
		{"language: ES-mx\nalso: [EN, en, es-MX]\n", "es-MX", "[en]", "", ""},
		{"language: \"1x\"\n", "en", "[]", "", "is no language tag"},
		{"also: [es, \"1x\"]\n", "en", "[es]", "", "is no language tag"},
		{"address: http://shop-pc/manual/\n", "en", "[]", "http://shop-pc/manual/", ""},
		{"address: https://shop-pc/\n", "en", "[]", "https://shop-pc/", ""},
		{"address: ftp://shop-pc/\n", "en", "[]", "", "is no page with http: or https:"},
		{"address: \"http://\"\n", "en", "[]", "", "is no page with http: or https:"},
		{"address: http://shop pc/\n", "en", "[]", "", "is no page with http: or https:"},
		{"address: shop-pc\n", "en", "[]", "", "is no page with http: or https:"},
	} {
		m, found := Manual(source.FromText(map[string]string{"shop.yaml": "title: S\n" + c.text}))
		compared(t, c.text, said(found), c.want)
		if s := m.Shop; s.Language != c.language || fmt.Sprint(s.Also) != c.also || s.Address != c.address {
			t.Errorf("%s: %s %v %q", c.text, s.Language, s.Also, s.Address)
		}
	}
}

// Pictures of entries are named from the manual's folder; only what is in pictures/
// and a picture is published.
func TestPicturesOfEntries(t *testing.T) {
	for file, entry := range map[string]string{
		"register/tools.yaml": "x: { name: x, kind: aid, picture: %s }\n", "register/hazards.yaml": "x: { name: x, nature: N., harm: damage, consequence: C., avoid: [A.], picture: %s }\n",
		"register/holds.yaml": "x: { name: x, kind: look, what: it, picture: %s }\n", "register/supplies.yaml": "x: { name: x, picture: %s }\n",
	} {
		for name, want := range map[string]string{
			"pictures/a.png": "", "pictures/./a.png": "", "pictures/zzz.png": "there is no picture pictures/zzz.png", "secret/a.png": "is not in pictures/, and only what is there is published", "pictures/a.js": "is of a kind that is not published",
			"pictures/bad.svg": "this drawing is not published",
		} {
			m, found := Manual(source.FromText(map[string]string{
				"shop.yaml": "title: S\n", file: fmt.Sprintf(entry, name), "pictures/a.png": "x", "secret/a.png": "x", "pictures/a.js": "x",
				"pictures/bad.svg": `<svg xmlns="http://www.w3.org/2000/svg"><script>x</script></svg>`,
			}))
			compared(t, file+" "+name, said(found), want)
			if m.Pictures["pictures/a.png"] != (want == "") || len(m.Pictures) > 1 {
				t.Errorf("%s %s: %v", file, name, m.Pictures)
			}
		}
	}
}

// A drawing that runs something is an error where an issued procedure shows it,
// advice where only a draft does, and nothing where nobody does.
func TestDrawingsThatRunSomething(t *testing.T) {
	for status, want := range map[string]string{"issued": "error", "draft": "advice", "none": ""} {
		files := map[string]string{"shop.yaml": "title: S\n", "pictures/bad.svg": `<svg xmlns="http://www.w3.org/2000/svg"><script>x</script></svg>`}
		if status != "none" {
			files["procedures/a.md"] = "---\ntitle: A\nstatus: " + status + "\n---\n## W\n\n1. ![x](../pictures/bad.svg)\n"
		}
		_, found := Manual(source.FromText(files))
		got := ""
		for _, f := range found {
			got += fmt.Sprint(f.Level)
		}
		if got != want {
			t.Errorf("%s: %q, want %q", status, got, want)
		}
	}
}

// Two parts that are under each other can never come off; a unit of a register is
// each where none is said.
func TestWhatIsToldOfMachines(t *testing.T) {
	for text, want := range map[string]string{
		"parts: { a: { name: a, under: [b] }, b: { name: b, under: [c] }, c: { name: c, under: [a] } }\n":                                                                "a is under itself, by way of a, b, c | take one of these out of under:",
		"parts: { a: { name: a, under: [b, c] }, b: { name: b, under: [c] }, c: { name: c } }\n":                                                                         "",
		"units: [{ serials: 1 to 2, options: [cab] }]\n":                                                                                                                 "the Tug has no option cab",
		"options: { cab: Cab }\nunits: [{ serials: 1 to 2, options: [cub] }]\n":                                                                                          "the Tug has no option cub | did you mean cab?",
		"options: { cab: Cab, jib: Jib }\nonly-one-of: [[cab, qqqq]]\n":                                                                                                  "the Tug has no option qqqq | its options are: cab, jib",
		"parts: { a: { name: a } }\nfasteners: { a: { name: a } }\n":                                                                                                     "this machine has a already | give the second an id of its own",
		"fluids: { a: { name: a, bleed: live } }\n":                                                                                                                      "a is bled live and has no needed-by",
		"points: { p: { name: p, lock: kept } }\nenergies: { e: { name: e, kind: pressure, points: [p] } }\n":                                                            "the p is no plug that can be kept: it cuts the e (pressure) too",
		"points: { p: { name: p, lock: kept } }\nenergies: { e: { name: e, kind: motion, points: [p] } }\n":                                                              "the p is no plug that can be kept: it cuts no electric energy",
		"points: { o: { name: o }, p: { name: p, lock: kept } }\nenergies: { e: { name: e, kind: electric, points: [p] }, f: { name: f, kind: motion, points: [p] } }\n": "",
	} {
		m, found := Manual(source.FromText(map[string]string{"shop.yaml": "title: S\n", "machines/tug.yaml": "name: Tug\n" + text}))
		compared(t, text, said(found), want)
		if strings.Contains(text, "units:") && !m.Machines[0].Lost("units") {
			t.Errorf("%s: the units are taken as read", text)
		}
		if strings.Contains(want, "no plug") && !m.Machines[0].Points[0].Lost("lock") {
			t.Errorf("%s: how it is locked is taken as known", text)
		}
	}
	m, found := Manual(source.FromText(map[string]string{"shop.yaml": "title: S\n", "machines/tug.yaml": "", "readings/plans/p.yaml": "", "register/supplies.yaml": "a: { name: a }\nb: { name: b, unit: L }\n", "register/tools.yaml": ""}))
	if m.Supplies[0].Unit != "each" || m.Supplies[1].Unit != "L" || len(m.Machines) != 1 || len(m.Plans) != 1 || len(found) != 2 {
		t.Errorf("%+v %q", m.Supplies, said(found))
	}
}

// The name of a file has its id, its language in one form, and its topic.
func TestWhatAFilesNameSays(t *testing.T) {
	for name, want := range map[string][2]string{
		"procedures/a.es.md": {"a", "es"}, "procedures/pump.es-mx.md": {"pump", "es-MX"}, "procedures/pump.md": {"pump", ""}, "procedures/.es.md": {".es", ""},
	} {
		if id, tag := stem(name); id != want[0] || tag != want[1] {
			t.Errorf("%s: %s %s", name, id, tag)
		}
	}
	for name, want := range map[string]string{"procedures/a.md": "", "procedures/lift/a.md": "lift", "procedures/lift/oil/a.md": "lift/oil"} {
		if got := topic(name); got != want {
			t.Errorf("%s: %s, want %s", name, got, want)
		}
	}
}

// Of two files with one id the first by path stands, and what comes after them is
// read.
func TestTheFirstByPathStands(t *testing.T) {
	job := func(title string) string { return "---\ntitle: " + title + "\n---\n## Work\n\n1. Look.\n" }
	m, found := Manual(source.FromText(map[string]string{
		"shop.yaml": "title: S\n", "procedures/a.md": job("First"), "procedures/x/a.md": job("Second"), "procedures/z.md": job("Last"),
		"readings/plans/a.yaml": "title: First\n", "readings/plans/b.yaml": "a: [\n", "readings/plans/x/a.yaml": "title: Second\n", "readings/plans/z.yaml": "title: Last\n",
	}))
	var got []string
	for _, p := range m.Procedures {
		got = append(got, p.Title)
	}
	for _, p := range m.Plans {
		got = append(got, p.Title)
	}
	if text := strings.Join(got, " "); text != "First Last First Last" || len(found) != 3 {
		t.Errorf("%s: %q", text, said(found))
	}
}

// A phase that is called where there is none yet, and an override of one line.
func TestSmallThings(t *testing.T) {
	_, found := Manual(source.FromText(map[string]string{"shop.yaml": "title: S\n", "procedures/a.md": "---\ntitle: A\n---\n[x](reverse:strip)\n"}))
	if got := strings.Join(said(found), "; "); !strings.Contains(got, "the procedure has no phase strip | it has no phases yet: write one above its steps") {
		t.Error(got)
	}
	m, _ := Manual(source.FromText(but(t, "procedures/job.md", "harm: death }", "avoid: [One.] }")))
	if got := m.Procedures[0].Hazards[0].Met.Avoid; fmt.Sprint(got) != "[One.]" {
		t.Errorf("%q", got)
	}
}

// A word of a cell is told where it stands in it.
func TestPlacesInACell(t *testing.T) {
	for roles, want := range map[string]string{"boss zzz": "2:12", "boss boss@soon": "2:17", "zzz boss": "2:7"} {
		_, found := Manual(source.FromText(map[string]string{"shop.yaml": "title: S\n", "register/roles.yaml": "boss: { name: Boss }\n", "readings/people.csv": "person,name,roles,started,plans\na-1,A," + roles + ",2026-01-01,\n"}))
		if len(found) != 1 || !strings.HasPrefix(said(found)[0], "readings/people.csv:"+want+" ") {
			t.Errorf("%s: %q, want it at %s", roles, said(found), want)
		}
	}
}

// Revisions stand in the order of their days, those of a translation apart; the
// pictures of what was issued with a hash of its words are looked at.
func TestRevisionsAndTheirPictures(t *testing.T) {
	job := func(picture string) string {
		return "---\ntitle: A\n---\n## W\n\n1. ![x](../pictures/" + picture + ")\n"
	}
	row := func(id, number, day, words, language string) string {
		return id + "," + number + "," + day + ",1-8c1f0a93b2d4e5f6,R.,a,b,a,a,none," + words + "," + language + "\n"
	}
	m, found := Manual(source.FromText(map[string]string{
		"shop.yaml": "title: S\nalso: [es]\n", "procedures/a.md": job("a.png"), "procedures/b.md": job("b.png"), "pictures/a.png": "x", "pictures/b.png": "y",
		"revisions.csv": "procedure,revision,date,fingerprint,reason,written,checked,approved,walked,readers,words,language\n" +
			row("b", "1", "2026-03-03", "", "") + row("a", "2", "2026-03-02", "0123456789abcdef", "") + row("a", "1", "2026-03-01", "0123456789abcdef", "") + row("a", "2", "2026-03-04", "", "es") + row("a", "1", "2026-03-03", "", "es"),
	}))
	var got []string
	for _, r := range m.Revisions {
		got = append(got, r.Procedure.ID+r.Number)
	}
	for _, r := range m.Renditions {
		got = append(got, r.Language+r.Number)
	}
	if text := strings.Join(got, " "); text != "a1 a2 b1 es1 es2" || len(found) != 0 {
		t.Errorf("%s %q", text, said(found))
	}
	if len(m.Sums) != 1 || m.Sums["pictures/a.png"] == "" {
		t.Errorf("looked at: %v", m.Sums)
	}
}

// The tenth step is 1.10.
func TestTheTenthStep(t *testing.T) {
	m, _ := Manual(source.FromText(map[string]string{"shop.yaml": "title: S\n", "procedures/a.md": "---\ntitle: A\n---\n## W\n\n" + strings.Repeat("1. Look.\n", 11)}))
	if steps := m.Procedures[0].Steps; steps[9].Number != "1.10" || steps[10].Number != "1.11" {
		t.Errorf("%s %s", steps[9].Number, steps[10].Number)
	}
}

// A translation into a language that the shop has not, or into its own, is told and
// stands nowhere.
func TestTranslationsThatAreNone(t *testing.T) {
	for tag, want := range map[string]int{"es": 1, "fr": 0, "en": 0, "es-MX": 0} {
		m, found := Manual(source.FromText(map[string]string{
			"shop.yaml": "title: S\nalso: [es]\n", "procedures/a.md": "---\ntitle: A\n---\n## W\n\n1. Look.\n", "procedures/a." + tag + ".md": "---\ntitle: B\n---\n## X\n\n1. Y.\n",
		}))
		if len(m.Translated) != want || len(found) != 1-want {
			t.Errorf("%s: %d translations, %q", tag, len(m.Translated), said(found))
		}
	}
}

// An energy that nearly is one is offered; texts that could not be read are unread.
func TestNearlyAnEnergy(t *testing.T) {
	for of, want := range map[string]string{"mainz": "did you mean mains?", "qqqqqqq": "write the id as a machine's file has it, or take of: out"} {
		_, found := Manual(source.FromText(but(t, "register/hazards.yaml", "of: mains", "of: "+of)))
		compared(t, of, said(found), "no machine has an energy or a fluid "+of+" | "+want)
	}
	for text, unread := range map[string]bool{"broom: { name: escoba }\n": false, "broom: { kind: x }\n": true, "broom: { name: [[a]] }\n": true, "broom: { name: }\n": true} {
		m, _ := Manual(source.FromText(merged(shed, "register/tools.es.yaml", text)))
		if len(m.Words) != 1 || m.Words[0].Unread != unread {
			t.Errorf("%s: %+v", text, m.Words)
		}
	}
}
