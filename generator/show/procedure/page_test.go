package procedure

import (
	"fmt"
	"strings"
	"testing"

	"baybinder/generator/model"
	"baybinder/generator/show/jobs"
	"baybinder/generator/show/page"
	"baybinder/generator/show/page/pagetest"
)

func namesOf(list []page.Link) string {
	var out []string
	for _, l := range list {
		name := l.Name
		if l.Note != "" {
			name += " (" + l.Note + ")"
		}
		out = append(out, name)
	}
	return strings.Join(out, ", ")
}

// What calls a procedure, what points at it and what it calls stand at its foot:
// each once, callers and pointers by name, calls in their order.
func TestAroundAProcedure(t *testing.T) {
	call := func(title, links string) string { return "---\ntitle: " + title + "\n---\n## Work\n\n" + links }
	s := siteOf(t, map[string]string{
		"procedures/job.md": call("Job", "1. [a](do:zinc).\n2. [a](do:zinc), look.\n3. [b](do:acid).\n"), "procedures/zinc.md": call("Zinc", "1. Look.\n"), "procedures/acid.md": call("Acid", "1. Look.\n"),
		"procedures/a.md": call("Zebra", "1. [x](do:job).\n2. [y](see:acid).\n"), "procedures/b.md": call("Apple", "1. [x](do:job).\n2. [y](see:acid).\n"),
	})
	v := s.Procedure(procedureOf(t, s, "job"))
	acid := s.Procedure(procedureOf(t, s, "acid"))
	for what, c := range map[string][2]string{
		"calls":   {namesOf(v.Calls), "Zinc, Acid"},
		"callers": {namesOf(v.CalledBy), "Apple, Zebra"},
		"seen":    {namesOf(acid.SeenBy) + "/" + namesOf(v.SeenBy), "Apple, Zebra/"},
	} {
		if c[0] != c[1] {
			t.Errorf("%s: %s, want %s", what, c[0], c[1])
		}
	}
}

// A draft says that it is one, and so does a draft of a translation; a retired
// procedure says what stands instead, where it does.
func TestWhetherToWorkFromIt(t *testing.T) {
	look := "---\n## Work\n\n1. Look.\n"
	m, walks := pagetest.Manual(t, map[string]string{
		"shop.yaml":          "title: Shop\nalso: [es]\n",
		"procedures/a.md":    "---\ntitle: A\nstatus: draft\n" + look,
		"procedures/b.md":    "---\ntitle: B\n" + look,
		"procedures/c.md":    "---\ntitle: C\nstatus: retired\ninstead: b\n" + look,
		"procedures/d.md":    "---\ntitle: D\nstatus: retired\n" + look,
		"procedures/e.md":    "---\ntitle: E\n" + look,
		"procedures/e.es.md": "---\ntitle: E\nstatus: draft\n---\n## Obra\n\n1. Mire.\n",
	})
	s := Of(jobs.Of(page.NewSite(m, walks, nil, pagetest.Day, true))) // a preview shows drafts
	for id, want := range map[string]string{"a": "true none", "b": "false none", "c": "false B", "d": "false ", "e": "false none"} {
		v := s.Procedure(procedureOf(t, s, id))
		instead := "none"
		if v.Retired != nil {
			instead = v.Retired.Name
		}
		if got := fmt.Sprint(v.Draft, " ", instead); got != want {
			t.Errorf("%s: %s, want %s", id, got, want)
		}
	}
	if es := s.In("es").Procedure(procedureOf(t, s, "e")); !es.Draft {
		t.Error("the draft of a translation says not that it is one")
	}
}

// The plate says the machine, the revision, and by when it is looked at again.
func TestThePlate(t *testing.T) {
	rev := "procedure,revision,date,fingerprint,reason,written,checked,approved,walked,readers\njob,1,2026-03-01,1-0000000000000000,First.,a,b,c,a,none\n"
	for i, c := range []struct {
		files []string
		head  string
		want  string
	}{
		{nil, "for: tug\n", "Tug · not issued yet"},
		{nil, "", "Any machine · not issued yet"},
		{[]string{"revisions.csv", rev, "shop.yaml", "title: Shop\nreview-every: 24 months\n"}, "for: tug\n", "Tug · rev 1 · 2026-03-01 · review by 2028-03-01"},
	} {
		v := jobAt(t, with(yard, c.files...), c.head, "## Work\n\n1. Look.\n")
		if got := page.Unworked(strings.Join(v.Plate, " · ")); got != c.want {
			t.Errorf("%d: %s, want %s", i, got, c.want)
		}
	}
}

// Who is needed: a role that the front matter does not list names the first
// step that brings it, by a call, a link or a tool.
func TestWhoIsNeeded(t *testing.T) {
	base := map[string]string{
		"register/roles.yaml": "boss: { name: Boss }\nlift: { name: Lifting }\nweld: { name: Welding }\npaint: { name: Painting }\n",
		"register/tools.yaml": "hoist: { name: hoist, kind: lifting, needs: [lift] }\nbrush: { name: brush, kind: aid }\n",
		"register/holds.yaml": "seen: { name: seen, kind: check, by: boss, how: together }\nagain: { name: again, kind: check, by: weld, how: together }\n",
		"procedures/weld.md":  "---\ntitle: Weld\nneeds: [weld, paint, lift]\n---\n## Work\n\n1. Weld.\n",
	}
	v := jobAt(t, base, "needs: [boss]\ntools: [hoist, brush]\nholds: [seen, again]\n", "## Work\n\n1. With the [](tool:brush), [look](see:weld). [](hold:seen)\n2. [Painter](role:paint) and [boss](role:boss). [](hold:again)\n3. Lift with the [](tool:hoist).\n4. [Weld](do:weld). [](hold:seen)\n5. [Weld](do:weld).\n")
	who := strings.Split(namesOf(v.Before.Who), ", ")
	for _, want := range []string{"Boss", "Painting (1.2)", "Lifting (1.3)", "Welding (1.4)"} {
		if !strings.Contains(", "+strings.Join(who, ", ")+",", ", "+want+",") {
			t.Errorf("%q has no %s", who, want)
		}
	}
	if got := namesOf(v.Before.Seconds); got != "Boss (1.1, 1.4), Welding (1.2)" {
		t.Errorf("besides: %s", got)
	}
}

// What to fetch stands by its place, then by its name; what has no place last.
func TestWhatToFetch(t *testing.T) {
	base := map[string]string{
		"register/tools.yaml":    "b-tool: { name: brush, kind: aid, kept: crib }\na-tool: { name: awl, kind: aid, kept: crib }\nlamp: { name: lamp, kind: aid }\nchock: { name: chock, kind: aid, kept: bay }\njack: { name: jack, kind: aid }\n",
		"register/supplies.yaml": "rag: { name: rag, unit: each, kept: bay }\noil: { name: oil, unit: L }\n",
	}
	v := jobAt(t, base, "tools: [b-tool, lamp, a-tool, chock: 2, jack]\nsupplies: { oil: 2 L, rag: }\n", "## Work\n\n1. Take [](tool:b-tool) [](tool:lamp) [](tool:a-tool) [](tool:chock) [](tool:jack) [](supply:oil) [](supply:rag).\n")
	var got []string
	for _, shelf := range v.Before.Shelves {
		var items []string
		for _, i := range shelf.Items {
			items = append(items, strings.TrimSpace(i.Name+" "+page.Unworked(i.Amount)))
		}
		got = append(got, shelf.Place+": "+strings.Join(items, ", "))
	}
	if text := strings.Join(got, "; "); text != "bay: chock 2, rag; crib: awl, brush; No place is written: jack, lamp, oil 2 L" {
		t.Error(text)
	}
	s := siteOf(t, base)
	if shelves := s.sortShelves([]kept{{"", Item{Link: page.Link{Name: "a"}}}, {"z", Item{Link: page.Link{Name: "b"}}}, {"", Item{Link: page.Link{Name: "c"}}}, {"y", Item{Link: page.Link{Name: "d"}}}}); len(shelves) != 3 || shelves[0].Place != "y" || shelves[1].Place != "z" || len(shelves[2].Items) != 2 {
		t.Errorf("%+v", shelves)
	}
}

// What is made dead on the way is said with its size, and for the units that
// have it.
func TestWhatIsMadeDead(t *testing.T) {
	base := map[string]string{
		"machines/rig.yaml": "name: Rig\noptions: { pack: Pack, cab: Cab }\npoints: { plug: { name: plug }, cock: { name: cock }, tap: { name: tap }, knob: { name: knob } }\nenergies:\n  mains: { name: mains, kind: electric, voltage: 24 V dc, points: [plug] }\n" +
			"  pack: { name: pack, kind: pressure, pressure: 8 bar, points: [cock], only-with: pack }\n  heat: { name: heat, kind: heat, temperature: 90 °C, points: [tap], only-with: \"!cab\" }\n  drum: { name: drum, kind: motion, points: [knob] }\n",
		"register/holds.yaml": "dead: { name: dead, kind: look, of: mains, what: it, good: off }\n",
		"shop.yaml":           "title: Shop\n",
		"procedures/off.md":   "---\ntitle: Off\nfor: rig\nleaves: { mains: isolated, pack: isolated, heat: isolated, drum: isolated }\n---\n## Work\n\n1. [a](isolate:mains).\n2. [a](isolate:pack).\n3. [a](isolate:heat).\n4. [a](isolate:drum).\n",
	}
	s := siteOf(t, base)
	v := s.Procedure(procedureOf(t, s, "off"))
	var got []string
	for _, d := range v.Before.Dead {
		got = append(got, strings.TrimSpace(page.Unworked(d.Text)+" "+d.Cases))
	}
	if text := strings.Join(got, "; "); text != "mains, 24 V dc; pack, 8 bar pack; heat, 90 °C !cab; drum" {
		t.Error(text)
	}
	p := procedureOf(t, s, "off")
	if d := s.dead(&model.Procedure{}, p.For.To.Energies[1]); d.Cases != "" {
		t.Errorf("a general procedure asks nothing of the unit: %q", d.Cases)
	}
	if d := s.dead(p, &model.Energy{OnlyWith: model.Condition{Option: "pack"}}); d.Cases != "" {
		t.Errorf("another machine's: %q", d.Cases)
	}
}

// What the program looked at, in numbers: acts in steps (a reverse: is one),
// calls and derived steps, and how many steps are words only.
func TestWhatWasChecked(t *testing.T) {
	for body, want := range map[string]string{
		"1. Look.\n2. Look.\n":               "This page names no action whose order the program could check; its steps are plain words, stops and checks.",
		"1. [Off](remove:pump).\n2. Look.\n": "The program checked the order of 1 actions (1 in a step); 1 of 2 steps are words that it cannot check.|1 + 0 + 0",
		"1. [Off](remove:pump).\n2. [Do it](do:other).\n\n## Back\n\n1. [Back](reverse:work)\n":                                          "The program checked the order of 4 actions (2 in steps, 1 procedure performed, 1 step that follows from the strip); 0 of 3 steps|2 + 1 + 1",
		"1. [Off](remove:pump), [and](remove:seat).\n2. [Do it](do:other).\n3. [And](do:other).\n\n## Back\n\n1. [Back](reverse:work)\n": "The program checked the order of 7 actions (3 in steps, 2 procedures performed, 2 steps that follow from the strip); 0 of 4|3 + 2 + 2",
	} {
		v := jobAt(t, with(yard, "procedures/other.md", "---\ntitle: Other\nfor: tug\n---\n## Work\n\n1. [Off](remove:rail).\n2. [On](refit:rail).\n"), "for: tug\n", "## Work\n\n"+body)
		plain, put, _ := strings.Cut(want, "|")
		if got := page.Unworked(v.Checked); !strings.HasPrefix(got, plain) || !strings.Contains(v.Checked, put) {
			t.Errorf("%s: %s, want %s", body, v.Checked, want)
		}
	}
	ring := jobAt(t, with(yard, "procedures/other.md", "---\ntitle: Other\nfor: tug\n---\n## Work\n\n1. [Do](do:job).\n"), "for: tug\n", "## Work\n\n1. [Do](do:other).\n")
	if !strings.HasPrefix(ring.Checked, "The order of the actions was not checked") {
		t.Errorf("a ring: %s", ring.Checked)
	}
}

// What was worked out of a procedure is worked out anew where it is forgotten.
func TestAChangedProcedureIsWorkedOutAnew(t *testing.T) {
	s := siteOf(t, with(pump, "procedures/job.md", "---\ntitle: Job\nfor: rig\n---\n## Work\n\n1. [Do it](do:other).\n2. [Tight](tighten:screw).\n",
		"procedures/other.md", "---\ntitle: Other\nfor: rig\n---\n## Work\n\n1. [Loose](loosen:screw).\n2. [Tight](tighten:screw). [](time:5min)\n"))
	p, other := procedureOf(t, s, "job"), procedureOf(t, s, "other")
	if again, rows := s.TightAlready(p), s.Times.Rows(other); !again[p.Steps[1].Links[0]] || len(rows) != 1 || rows[0].Bay != 300 {
		t.Fatalf("%v, %v", again, rows)
	}
	other.Steps = other.Steps[:1]
	other.Phases[0].Steps = other.Steps
	if again, rows := s.TightAlready(p), s.Times.Rows(other); !again[p.Steps[1].Links[0]] || rows[0].Bay != 300 {
		t.Errorf("before it is forgotten: %v, %v", again, rows)
	}
	s.Changed(other)
	if again, rows := s.TightAlready(p), s.Times.Rows(other); again[p.Steps[1].Links[0]] || len(rows) > 0 && rows[0].Bay != 0 {
		t.Errorf("after it was forgotten: %v, %v", again, rows)
	}
}
