package procedure

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/derive/slips"
	"baybinder/generator/model"
	"baybinder/generator/show/page"
)

// bench is a machine with one thing of every kind to open and close.
var bench = map[string]string{
	"register/tools.yaml": "jack: { name: jack stand, kind: aid }\nrope: { name: rope, kind: aid }\nprop: { name: prop, kind: aid }\npadlock: { name: padlock, kind: lock }\n",
	"shop.yaml":           "title: Shop\nlocks: { tool: padlock, each: person }\n",
	"machines/rig.yaml": `name: Rig
options: { cab: Cab, pack: Pack }
points: { plug: { name: plug, lock: yes }, cock: { name: cock } }
energies:
  mains: { name: mains, kind: electric, points: [plug] }
  air: { name: air, kind: pressure, pressure: 8 bar, points: [cock] }
  spring: { name: spring, kind: spring, points: [], stored: yes }
  forks: { name: forks, kind: gravity, points: [], stored: yes, blocked-by: [prop] }
parts:
  door: { name: door, only-with: cab }
  lid: { name: lid, held-by: { bolt: 4, clip: 1 } }
  pipe: { name: pipe, kind: line, held-by: { nut: 1 } }
  lead: { name: lead, kind: wire }
fasteners: { bolt: { name: bolt }, clip: { name: clip }, nut: { name: nut }, screw: { name: bleed screw } }
fluids: { oil: { name: oil, supply: oil, capacity: 4 L } }
settings: { relief: { name: relief, value: 180 bar }, stop: { name: stop } }
`,
	"register/supplies.yaml": "oil: { name: oil, unit: L }\n",
}

// rowsOf are the lines of a close-out list: "key what: state ×count (units) opened-closed".
func rowsOf(c CloseOut) []string {
	var out []string
	for _, r := range c.Rows {
		text := fmt.Sprintf("%s %s: %s", r.Key, r.What, page.Unworked(r.State))
		if r.Count != "" {
			text += " ×" + page.Unworked(r.Count)
		}
		if r.When != "" {
			text += " (" + r.When + ")"
		}
		opened := ""
		if r.Opened != nil {
			opened = r.Opened.Name
		}
		out = append(out, text+" "+opened+"-"+r.Closed.Name)
	}
	return out
}

// "everything that was opened is counted closed": one line a thing, by its kind.
// What no point cuts and no tool holds has a line of its own; a cap that was put
// in is taken out; counts are the machine file's, and the list's of a tool.
func TestWhatWasOpenedIsCountedClosed(t *testing.T) {
	for _, c := range []struct{ head, body, want string }{
		{"", "1. [Off](remove:lid).\n2. [On](refit:lid).\n3. [Tight](tighten:bolt#lid).\n",
			"part:lid lid: on 1.1-1.2, fastener:bolt#lid bolt at the lid: tight ×4 1.1-1.3, fastener:clip#lid clip at the lid: tight ×1 1.1-1.2"},
		{"", "1. [Off](disconnect:pipe), [closed](cap:pipe).\n2. [On](connect:pipe).\n",
			"part:pipe pipe: on 1.1-1.2, cap:pipe cap: pipe: taken out 1.1-1.2, fastener:nut#pipe nut at the pipe: tight ×1 1.1-1.2"},
		{"", "1. [Off](disconnect:lead).\n2. [Taped](cap:lead).\n3. [On](connect:lead).\n", "part:lead lead: on 1.1-1.3, cap:lead insulation on the end: lead: taken off 1.2-1.3"},
		{"", "1. [Off](disconnect:pipe).\n2. [With a cab](when:cab), [closed](cap:pipe).\n3. [On](connect:pipe). [Tight](tighten:nut)\n",
			"part:pipe pipe: on 1.1-1.3, cap:pipe cap: pipe: taken out (on units with Cab) 1.2-1.3, fastener:nut#pipe nut at the pipe: tight ×1 1.1-1.3"},
		{"", "1. [Down](isolate:air).\n2. [Up](restore:air).\n", "point:cock cock: live 1.1-1.2"},
		{"people: 2\n", "1. [Off](isolate:mains).\n2. [Lock](lock:mains).\n3. [Unlock](unlock:mains).\n4. [On](restore:mains).\n", "point:plug plug: locks off, live ×2 1.1-1.4"},
		{"", "1. [Let down](release:spring).\n2. [Wind](restore:spring).\n", "energy:spring spring: live 1.1-1.2"},
		{"tools: [prop]\n", "1. [Prop](place:prop).\n2. [Away](clear:prop).\n", "tool:prop prop: taken away ×1 1.1-1.2"},
		{"tools: [jack: 4]\n", "1. [Under](place:jack).\n2. [Away](clear:jack).\n", "tool:jack jack stand: taken away ×4 1.1-1.2"},
		{"supplies: { oil: 4 L }\n", "1. [Out](drain:oil).\n2. [In](fill:oil).\n", "fluid:oil oil: full 1.1-1.2"},
		{"", "1. [Higher](alter:relief), [off](alter:stop).\n2. [Back](reset:relief) [and this](reset:stop).\n", "setting:relief relief: set back: 180 bar 1.1-1.2, setting:stop stop: set back 1.1-1.2"},
		{"", "1. [Off](remove:door).\n2. [On](refit:door).\n", "part:door door: on (on units with Cab) 1.1-1.2"},
		{"", "1. [With a cab](when:cab), [off](remove:door).\n2. [With a cab](when:cab), [on](refit:door).\n", "part:door door: on 1.1-1.2"},
		{"", "[With a cab](when:cab).\n\n1. [Off](remove:door).\n\n## Back\n\n1. [On](refit:door).\n2. Look.\n", "part:door door: on 1.1-2.1"},
		{"", "1. [Off](remove:door).\n\n## Back\n\n[With a cab](when:cab).\n\n1. [On](refit:door).\n", "part:door door: on 1.1-2.1"},
		{"expects: { lid: off }\n", "1. [On](refit:lid). [Tight](tighten:bolt), [tight](tighten:clip).\n", "part:lid lid: on -1.1, fastener:bolt#lid bolt at the lid: tight ×4 -1.1, fastener:clip#lid clip at the lid: tight ×1 -1.1"},
		{"expects: { pipe: off }\n", "1. Look.\n2. [On](connect:pipe).\n3. [Loose](loosen:nut).\n4. [Tight](tighten:nut).\n", "part:pipe pipe: on -1.2, fastener:nut#pipe nut at the pipe: tight ×1 -1.4"},
		{"", "1. [Loose](loosen:nut).\n2. [Tight](tighten:nut).\n", "fastener:nut#pipe nut at the pipe: tight ×1 1.1-1.2"},
		{"", "1. [Off](disconnect:pipe).\n2. [On](connect:pipe).\n3. [Tight](tighten:nut).\n4. [Loose](loosen:nut).\n5. [Tight](tighten:nut).\n", "part:pipe pipe: on 1.1-1.2, fastener:nut#pipe nut at the pipe: tight ×1 1.1-1.5"},
		{"", "1. [Loose](loosen:nut), [off](disconnect:pipe).\n2. [On](connect:pipe), [tight](tighten:nut).\n", "part:pipe pipe: on 1.1-1.2, fastener:nut#pipe nut at the pipe: tight ×1 1.1-1.2"},
		{"expects: { nut: loose }\n", "1. [Off](disconnect:pipe).\n2. [On](connect:pipe).\n3. [Tight](tighten:nut).\n", "part:pipe pipe: on 1.1-1.2, fastener:nut#pipe nut at the pipe: tight ×1 1.1-1.3"},
		{"", "1. [Open](loosen:screw).\n2. [Shut](tighten:screw).\n", "fastener:screw bleed screw: tight ×1 1.1-1.2"},
		{"", "1. Look.\n", ""},
	} {
		s := siteOf(t, with(bench, "procedures/job.md", "---\ntitle: Job\nfor: rig\n"+c.head+"---\n## Work\n\n"+c.body))
		p := procedureOf(t, s, "job")
		out := s.closeOut(p, slips.Of(p, s.Walks.Of(p)), nil)
		if got := strings.Join(rowsOf(out), ", "); got != c.want {
			t.Errorf("%s\n got %s\nwant %s", c.body, got, c.want)
		}
		if out.Empty() != (c.want == "") {
			t.Errorf("%s: empty %v", c.body, out.Empty())
		}
	}
}

// A line is closed by the derived step of a refit, a fastener's by the one that
// tightens it; where everybody tightens it, not by who likes.
func TestWhichStepClosesALine(t *testing.T) {
	base := with(bench, "machines/rig.yaml", "name: Rig\nparts:\n  lid: { name: lid, held-by: { bolt: 4 } }\n  one: { name: pipe one, kind: line, held-by: { nut: 1 } }\n  two: { name: pipe two, kind: line, held-by: { nut: 1 } }\n"+
		"fasteners: { bolt: { name: bolt }, nut: { name: nut, start: by hand } }\n", "register/holds.yaml", "seat: { name: seat, kind: ask, answers: { good: clean, worn: scored } }\n")
	for _, c := range []struct{ body, want string }{
		{"1. [Off](disconnect:one).\n2. [Off](disconnect:two).\n3. [Off](remove:lid).\n\n## Back\n\n1. [In reverse](reverse:work)\n",
			"part:lid 1.3-2.1.1, fastener:bolt#lid 1.3-2.1.1, part:two 1.2-2.1.2, fastener:nut#two 1.2-2.1.4, part:one 1.1-2.1.3, fastener:nut#one 1.1-2.1.5"},
		{"1. [Off](remove:lid). [](hold:seat)\n2. [On](refit:lid).\n3. [Tight](tighten:bolt).\n4. [Worn](if:seat=worn), [again](tighten:bolt).\n", "part:lid 1.1-1.2, fastener:bolt#lid 1.1-1.3"},
		{"1. [Off](remove:lid). [](hold:seat)\n2. [On](refit:lid).\n3. [Worn](if:seat=worn), [tight](tighten:bolt).\n4. [Good](if:seat=good), [tight](tighten:bolt).\n", "part:lid 1.1-1.2, fastener:bolt#lid 1.1-1.4"},
		{"1. [Off](remove:lid).\n2. [On](refit:lid).\n3. [Tight](tighten:bolt).\n4. [If you like](optional:), these.\n   1. [Again](tighten:bolt).\n5. Look.\n", "part:lid 1.1-1.2, fastener:bolt#lid 1.1-1.3"},
		{"1. [Off](remove:lid).\n2. [On](refit:lid).\n3. [If you like](optional:), [tight](tighten:bolt).\n4. [Tight](tighten:bolt).\n", "part:lid 1.1-1.2, fastener:bolt#lid 1.1-1.4"},
	} {
		s := siteOf(t, with(base, "procedures/job.md", "---\ntitle: Job\nfor: rig\nholds: [seat]\n---\n## Work\n\n"+c.body))
		p := procedureOf(t, s, "job")
		var got []string
		for _, r := range s.closeOut(p, slips.Of(p, s.Walks.Of(p)), nil).Rows {
			got = append(got, r.Key+" "+r.Opened.Name+"-"+r.Closed.Name)
		}
		slices.Sort(got)
		want := strings.Split(c.want, ", ")
		slices.Sort(want)
		if !slices.Equal(got, want) {
			t.Errorf("%s\n got %q\nwant %q", c.body, got, want)
		}
	}
}

// Of the steps with three signs or more, a tenth of the job's, the highest first,
// and no fewer than one of them has its line.
func TestTheMostMissed(t *testing.T) {
	signs := func(n int) slips.Flags {
		return slips.Flags{After: true, Follows: n > 1, Repeats: n > 2, NoTrace: n > 3, Hidden: n > 4}
	}
	for _, c := range []struct {
		scores []int
		want   string
	}{
		{nil, ""}, {[]int{1, 2}, ""}, {[]int{1, 3, 2}, "2"}, {[]int{3, 4}, "2"}, {[]int{3, 3}, "1"},
		{[]int{1, 1, 1, 1, 1, 1, 3, 4, 5, 1}, "9"}, {[]int{1, 1, 1, 1, 1, 1, 3, 4, 5, 1, 1}, "9 8"},
		{[]int{1, 1, 1, 1, 1, 1, 3, 4, 5, 3, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1}, "9 8"}, {[]int{3, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1}, "1"},
	} {
		var items []slips.Item
		for i, n := range c.scores {
			items = append(items, slips.Item{Step: &model.Step{Number: fmt.Sprint(i + 1)}, Flags: signs(n)})
		}
		var got []string
		for _, it := range mostMissed(items) {
			got = append(got, it.Number())
		}
		if strings.Join(got, " ") != c.want {
			t.Errorf("%v: %q, want %q", c.scores, got, c.want)
		}
	}
}

// Why a step is easily missed is the sign that says most; of several things
// alike it says of how many, and the tick asks for the number.
func TestWhyAStepIsMissed(t *testing.T) {
	s := siteOf(t, map[string]string{})
	all := slips.Flags{After: true, Follows: true, Repeats: true, NoTrace: true, Hidden: true, Different: true, Small: true}
	for i, want := range []string{"the next part covers it", "nothing shows it afterwards", "the job looks done already", "it follows a stop", "there are 4 of them", "it takes other tools", "it is small"} {
		if got := s.whyMissed(&slips.Item{Flags: all, Count: 4}); got != "Easily missed: "+want+"." {
			t.Errorf("%d: %q", i, got)
		}
		*[]*bool{&all.Hidden, &all.NoTrace, &all.After, &all.Follows, &all.Repeats, &all.Different, &all.Small}[i] = false
	}
	flags := slips.Flags{After: true, Hidden: true, Repeats: true}
	items := []slips.Item{{Step: &model.Step{Number: "1"}, Count: 1, Flags: flags}}
	if m := s.missed(items)["1"]; m == nil || m.Count != 0 || m.Counted != "" {
		t.Errorf("of one: %+v", m)
	}
	items[0].Count = 2
	if m := s.missed(items)["1"]; m == nil || m.Count != 2 || !strings.HasPrefix(m.Counted, "counted, of ") {
		t.Errorf("of two: %+v", m)
	}
}

// An easily missed step has its line at the step, and one in the list: the row
// that it closes, once, else a line of its own with its words, cut at a word.
func TestEasilyMissedSteps(t *testing.T) {
	s := siteOf(t, with(bench, "procedures/job.md", "---\ntitle: Job\nfor: rig\n---\n## Work\n\n1. [Off](remove:lid), [and](disconnect:pipe).\n2. These.\n   1. [On](refit:lid), [and](connect:pipe).\n"+
		"3. [](step:paint)\n\n   [Because](why:) it shows.\n\n   Paint a line\n   over the nuts.\n4. "+strings.Repeat("twelve bytes ", 7)+"end.\n5. "+strings.Repeat("x", 95)+"\n6. "+strings.Repeat("é", 90)+"\n7. [](step:quiet)\n8. I "+strings.Repeat("x", 95)+"\n"))
	p := procedureOf(t, s, "job")
	items := slips.Of(p, s.Walks.Of(p))
	missed := map[string]*Missed{"1.2.1": {Count: 3}, "1.3": {Count: 2}, "1.4": {}, "1.5": {}, "1.6": {}, "1.7": {}, "1.8": {}}
	c := s.closeOut(p, items, missed)
	marked := 0
	for _, r := range c.Rows {
		if r.Missed {
			marked++
		}
	}
	if marked != 1 || !c.Rows[0].Missed {
		t.Errorf("one row of the step has the mark, the first: %d", marked)
	}
	var got []string
	for _, r := range c.Steps {
		got = append(got, r.Key+" "+r.What+" "+r.Count+" "+r.Closed.Name)
		if !r.Missed {
			t.Errorf("%s has no mark", r.Key)
		}
	}
	want := []string{
		"step:1.3 Paint a line over the nuts. 2 1.3", "step:1.4 " + strings.TrimSpace(strings.Repeat("twelve bytes ", 6)+"twelve") + " …  1.4", "step:1.5 " + strings.Repeat("x", 90) + " …  1.5",
		"step:1.6 " + strings.Repeat("é", 90) + "  1.6", "step:1.7 \"1.7\"  1.7", "step:1.8 I …  1.8",
	}
	if !slices.Equal(got, want) {
		t.Errorf("got %q\nwant %q", got, want)
	}
	v := s.Procedure(p)
	mark(v.Phases[0].Parts, missed)
	parts := v.Phases[0].Parts
	if parts[0].Step.Missed != nil || parts[1].Step.Missed != nil || parts[1].Step.Subs[0].Missed == nil || parts[2].Step.Missed == nil {
		t.Error("the steps have not their lines")
	}
}

// The page of a job marks its easily missed steps, those of the refit too, and
// says how many they are in all.
func TestThePageMarksMissedSteps(t *testing.T) {
	base := with(bench, "machines/rig.yaml", "name: Rig\nparts:\n  lid: { name: lid }\n  cover: { name: cover, under: [lid], held-by: { bolt: 4 } }\nfasteners: { bolt: { name: bolt, torque: 22 N·m } }\n", "register/tools.yaml", "wrench: { name: wrench, kind: torque-wrench, range: 10 to 60 N·m }\npadlock: { name: padlock, kind: lock }\n")
	// The bolts of the cover: four, hidden by the lid, and no trace is left.
	v := jobAt(t, base, "for: rig\ntools: [wrench]\n", "## Work\n\nBegin.\n\nMind this.\n\n1. [Off](remove:lid).\n2. [Off](remove:cover).\n3. [On](refit:cover).\n4. [Tight](tighten:bolt) with the [wrench](tool:wrench).\n5. [On](refit:lid).\n")
	if st := v.Phases[0].Parts[4].Step; st.Missed == nil || st.Missed.Count != 4 || st.Missed.Text != "Easily missed: the next part covers it." {
		t.Errorf("%+v", st.Missed)
	}
	if got := page.Unworked(v.CloseOut.Count); !strings.HasPrefix(got, "Easily missed steps: 1.") || !strings.Contains(v.CloseOut.Count, "min(5/10; 1)") {
		t.Errorf("in all: %s", v.CloseOut.Count)
	}
	refit := jobAt(t, base, "for: rig\ntools: [wrench]\n", "## Work\n\n1. [Off](remove:lid).\n2. [Off](remove:cover) with the [wrench](tool:wrench).\n\n## Back\n\n1. [In reverse](reverse:work)\n")
	derived := refit.Phases[1].Parts[0].Step.Derived
	if derived[0].Missed == nil || derived[1].Missed != nil {
		t.Errorf("of the refit: %+v %+v", derived[0].Missed, derived[1].Missed)
	}
	if none := jobAt(t, base, "for: rig\n", "## Work\n\n1. Look.\n"); none.CloseOut.Count != "" || !none.CloseOut.Empty() {
		t.Errorf("none: %+v", none.CloseOut)
	}
}

// One lock is one person's, and so it says.
func TestWhoseLocks(t *testing.T) {
	for people, want := range map[string]string{"": "1 person", "people: 2\n": "2 people at once"} {
		s := siteOf(t, with(bench, "procedures/job.md", "---\ntitle: Job\nfor: rig\n"+people+"---\n## Work\n\n1. [Off](isolate:mains).\n2. [Lock](lock:mains).\n3. [Unlock](unlock:mains).\n4. [On](restore:mains).\n"))
		if got := s.locksOn(procedureOf(t, s, "job")); !strings.Contains(got, want) {
			t.Errorf("%q: %q", people, got)
		}
	}
}

// Of several of a tool the count opens to its working; of one there is nothing
// to work out.
func TestCountsOfTools(t *testing.T) {
	s := siteOf(t, with(bench, "procedures/job.md", "---\ntitle: Job\nfor: rig\ntools: [rope: 3, prop, jack: 2]\n---\n## Work\n\n1. [A](tool:rope) [b](tool:prop) [c](tool:jack).\n"))
	p := procedureOf(t, s, "job")
	for id, want := range map[string]string{"rope": "3", "prop": "1", "jack": "2", "padlock": "1"} {
		tool := s.Manual.Tools[slices.IndexFunc(s.Manual.Tools, func(t *model.Tool) bool { return t.ID == id })]
		got := s.ofTool(p, tool)
		if page.Unworked(got) != want || (got == want) != (want == "1") {
			t.Errorf("%s: %q, want %s", id, got, want)
		}
	}
}

// A list with as many rows as steps is not empty.
func TestAListIsEmptyWithNeither(t *testing.T) {
	row := []CloseRow{{}}
	for _, c := range []struct {
		list CloseOut
		want bool
	}{{CloseOut{}, true}, {CloseOut{Rows: row}, false}, {CloseOut{Steps: row}, false}, {CloseOut{Rows: row, Steps: row}, false}} {
		if got := c.list.Empty(); got != c.want {
			t.Errorf("%d rows, %d steps: %v", len(c.list.Rows), len(c.list.Steps), got)
		}
	}
}
