package procedure

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/model"
	"baybinder/generator/show/jobs"
	"baybinder/generator/show/page"
	"baybinder/generator/show/page/pagetest"
)

// What a phase is: its time where it says one, whether it may be broken off, and
// its prose between its steps.
func TestWhatAPhaseShows(t *testing.T) {
	v := jobAt(t, yard, "for: tug\nhazards: [heat]\n", "## One\n\n[](time:20min) [](pause:never) [](hazard:heat)\n\n1. Look.\n\nMind this.\n\n1. Look.\n\n## Two\n\n[](pause:)\n\n1. Look. [](time:5min)\n\n## Three\n\n1. Look. [](pause:)\n2. Look. [](pause:never)\n\n## Four\n\n[](time:1s)\n\n1. Look.\n")
	var got []string
	for _, phase := range v.Phases {
		parts := ""
		for _, part := range phase.Parts {
			switch {
			case part.Step == nil:
				parts += "p"
			case part.Step.Pause:
				parts += "P"
			default:
				parts += "s"
			}
		}
		got = append(got, fmt.Sprint(phase.Time, " ", phase.Never, " ", len(phase.Boxes), " ", parts))
	}
	if text := strings.Join(got, "; "); text != "20 min true 1 sps;  false 0 s;  false 0 Ps; 1 s false 0 s" {
		t.Error(text)
	}
}

// A step whose only act is on what some units have is for those units, though
// nobody says so; the script and the reader are told.
func TestAStepForWhatSomeUnitsHave(t *testing.T) {
	v := jobAt(t, yard, "for: tug\n", "## Work\n\n1. [Off](remove:door).\n2. [Off](remove:rail).\n3. [With a pack](when:pack), [on](refit:door).\n4. [On](refit:rail). [](optional:)\n5. Look.\n")
	var got []string
	for _, part := range v.Phases[0].Parts {
		got = append(got, part.Step.Terms.Options+" "+textsOf(part.Step.When)+fmt.Sprint(" ", part.Step.Optional))
	}
	want := []string{"cab Only with: Cab. (unit) false", "!cab Only without: Cab. (unit) false", "pack cab Only with: Cold pack. (unit); Only with: Cab. (unit) false", "!cab Only without: Cab. (unit) true", "  false"}
	if !slices.Equal(got, want) {
		t.Errorf("got %q\nwant %q", got, want)
	}
}

// "a tool, a hold, a call, an order, a part, a fastener": what stands under a
// step is what its links are about.
func TestWhatStandsUnderAStep(t *testing.T) {
	base := with(pump, "register/roles.yaml", "boss: { name: Boss }\n", "machines/rig.yaml", pump["machines/rig.yaml"]+"orders: { corners: [left, right] }\n", "procedures/other.md", "---\ntitle: Other\npeople: 2\n---\n## Work\n\n1. Look. [](time:5min)\n")
	for _, c := range []struct{ before, words, want string }{
		{"", "Look.", ""},
		{"", "[Boss](role:boss) looks. [](optional:) [](time:5min)", "Boss; may be left out; 5 min"},
		{"", "[At each](each:corners), look.", "in this order: left, right"},
		{"", "[Out](renew:pump).", "the old one: return"},
		{"", "[Out](renew:core).", ""},
		{"", "[Off](remove:pump).", ""},
		{"[Out](renew:pump).", "[In](refit:pump).", "new: exchange pump; write down its serial number"},
		{"[Off](remove:pump).", "[In](refit:pump).", ""},
		{"[Out](renew:core).", "[In](refit:pump).", ""},
		{"[Off](remove:lid).", "[On](refit:lid).", "bolt: new: new bolt"},
		{"[Off](remove:one).", "[On](refit:one).", "nut: begin: by hand, two turns"},
		{"", "[Tight](tighten:bolt).", "bolt: 22 N·m (16.2 lbf·ft); on the thread: oil; mark: paint; tighten again: after 50 km"},
		{"", "[Loose](loosen:bolt).", ""},
		{"", "[Bolt](fastener:bolt).", ""},
		{"", "[Tight](tighten:long-stud).", "long stud, stage 1: 30 N·m (22 lbf·ft); long stud, stage 2: 60 N·m (44 lbf·ft); long stud, stage 3: 90°; sequence: star"},
		{"[Tight](tighten:long-stud).", "[Check](tighten:long-stud).", "long stud, stage 3: 90°; sequence: star"},
		{"", "[Check it at 60 N·m and 90°](tighten:long-stud).", "long stud, stage 1: 30 N·m (22 lbf·ft); long stud, stage 2: 60 N·m (44 lbf·ft); long stud, stage 3: 90°; sequence: star"},
		{"", "[Turn it by 90°](tighten:long-stud).", "long stud, stage 3: 90°; sequence: star"},
		{"", "[Turn it by 90° within 5 min](tighten:long-stud).", "long stud, stage 3: 90°; sequence: star"},
		{"", "[Within 5 min turn it by 90°](tighten:long-stud).", "long stud, stage 3: 90°; sequence: star"},
		{"", "[Tight](tighten:short-stud).", "short stud: 30 N·m (22 lbf·ft)"},
		{"", "[Tight](tighten:latch).", ""},
	} {
		before := ""
		if c.before != "" {
			before = "1. " + c.before + "\n"
		}
		v := jobAt(t, base, "for: rig\nsupplies: [new-pump, new-bolt: 4]\n", "## Work\n\n"+before+"1. "+c.words+"\n")
		parts := v.Phases[0].Parts
		if got := page.Unworked(strings.Join(parts[len(parts)-1].Step.Tags, "; ")); !strings.EqualFold(got, c.want) {
			t.Errorf("%s %s: %q, want %q", c.before, c.words, got, c.want)
		}
	}
	v := jobAt(t, base, "for: rig\npeople: 2\n", "## Work\n\n1. [Do it](do:other). Look. [](see:other)\n2. [See](see:other).\n3. Look. [](within:5min) [](within:10min)\n")
	call := v.Phases[0].Parts[0].Step.Call
	if call == nil || call.Name != "Other" || call.People != 2 || call.Then != "then come back to step 1.1" || page.Unworked(call.Time) != "5 min" || call.Still || v.Phases[0].Parts[1].Step.Call != nil {
		t.Errorf("the calls are %+v", call)
	}
	if got := v.Phases[0].Parts[2].Step.Within; got != "300 600" {
		t.Errorf("within %q", got)
	}
}

// A wait of what stores a charge shows the time that it must last: R·C·ln(V/safe)
// = 100 kΩ · 1000 µF · ln(360/60) = 179 s (the format's "Numbers").
func TestAWaitShowsWhatItMustLast(t *testing.T) {
	base := map[string]string{
		"shop.yaml": "title: Shop\n", "register/holds.yaml": "rest: { name: rest, kind: wait, for: 10 min, of: bus }\nsoak: { name: soak, kind: wait, for: 10 min }\ndry: { name: dry, kind: look, what: it, good: dry }\n",
		"machines/rig.yaml": "name: Rig\npoints: { plug: { name: plug } }\nenergies: { bus: { name: bus, kind: electric, voltage: 360 V dc, points: [plug], stored: { capacitance: 1000 µF, resistance: 100 kΩ } } }\n",
	}
	v := jobAt(t, base, "for: rig\nholds: [rest, soak, dry]\n", "## Work\n\n1. [Off](isolate:bus). [](hold:rest) [](hold:soak) [](hold:dry)\n2. [Not dry](if-not:dry), [on](restore:bus).\n")
	holds := v.Phases[0].Parts[0].Step.Holds
	if len(holds) != 3 || len(holds[0].Computed) != 1 || len(holds[1].Computed) != 0 || !strings.Contains(page.Unworked(holds[0].Computed[0].Title), "minimum 3 min") {
		t.Errorf("%+v", holds)
	}
	if n := len(v.Phases[0].Parts[1].Step.Holds); n != 0 {
		t.Errorf("%d holds where one is mentioned", n)
	}
}

// "Posts … who stands where, for two-person steps": a step for several that names
// one post names the others too; one person's names its own.
func TestWhoStandsWhere(t *testing.T) {
	for words, want := range map[string]string{
		"Push. [](post:cab) [](people:2)":                "cab: at the pedal; wheel: at the nipple",
		"Push. [](post:wheel) [](people:2)":              "wheel: at the nipple; cab: at the pedal",
		"Push. [](post:cab) [](post:wheel) [](people:2)": "cab: at the pedal; wheel: at the nipple",
		"Push. [](post:cab)":                             "cab: at the pedal",
		"Push. [](people:2)":                             "",
		"Push.":                                          "",
	} {
		v := jobAt(t, yard, "for: tug\npeople: 2\nposts: { cab: at the pedal, wheel: at the nipple }\n", "## Work\n\n1. "+words+"\n")
		if got := strings.Join(v.Phases[0].Parts[0].Step.Posts, "; "); got != want {
			t.Errorf("%s: %q, want %q", words, got, want)
		}
	}
}

// A reverse: says in words what it expands into.
func TestWhatAReverseSays(t *testing.T) {
	for link, want := range map[string]string{"reverse:strip": "Refit in reverse of Strip.", "reverse:strip#plate": "Refit in reverse of Strip, as far as the plate.", "reverse:strip!plate,lid": "Refit in reverse of Strip, all but: plate, lid."} {
		v := jobAt(t, pump, "for: rig\n", "## Strip\n\n1. [Off](remove:lid).\n2. [Off](remove:plate).\n3. [Off](remove:ring).\n\n## Refit\n\n1. [Back]("+link+")\n")
		if got := v.Phases[1].Parts[0].Step.Reverse; got != want {
			t.Errorf("%s: %q", link, got)
		}
		if st := v.Phases[0].Parts[0].Step; st.Reverse != "" || len(st.Derived) != 0 {
			t.Errorf("a strip: %+v", st)
		}
	}
}

// What a fastener's sequence is drawn for: those of the part that is named, of
// the only one that they hold, else of none.
func TestHowManyAreTightened(t *testing.T) {
	s := siteOf(t, with(pump, "machines/rig.yaml", "name: Rig\nparts: { a: { name: a, held-by: { nut: 4, bolt: 3 } }, b: { name: b, held-by: { nut: 6 } } }\nfasteners: { nut: { name: nut }, bolt: { name: bolt }, screw: { name: screw } }\n",
		"procedures/job.md", "---\ntitle: Job\nfor: rig\n---\n## Work\n\n1. [x](tighten:nut#b).\n2. [x](tighten:nut).\n3. [x](tighten:bolt).\n4. [x](tighten:screw).\n"))
	for i, want := range []int{6, 0, 3, 0} {
		l := procedureOf(t, s, "job").Steps[i].Links[0]
		if got := heldAt(l, l.To.(*model.Fastener)); got != want {
			t.Errorf("1.%d: %d", i+1, got)
		}
	}
}

// Hazards are met as the procedure has them, each once; those of supplies before
// the first step of the phase that uses one, if its first paragraph has not.
func TestHazardsOfAStep(t *testing.T) {
	base := map[string]string{
		"register/hazards.yaml":  "skin: { name: skin, nature: It is thin., harm: minor-injury, consequence: It cracks., avoid: [Wear gloves.] }\n",
		"register/supplies.yaml": "oil: { name: oil, unit: L, hazards: [skin] }\n",
	}
	for body, want := range map[string]string{
		"1. A [](supply:oil).\n2. B [](supply:oil).\n":                            "1 0",
		"1. A [](supply:oil).\n2. B [](supply:oil). [](hazard:skin)\n":            "1 1",
		"[](hazard:skin)\n\n1. A [](supply:oil).\n2. B [](supply:oil).\n":         "0 0",
		"[](time:5min)\n\n1. A [](supply:oil).\n2. B [](supply:oil).\n":           "1 0",
		"1. A.\n2. B [](supply:oil). [](hazard:skin)\n":                           "0 1",
		"1. A. [](hazard:skin) [](hazard:skin)\n\n## B\n\n1. B [](supply:oil).\n": "1 1",
	} {
		v := jobAt(t, base, "hazards: [skin: { nature: It is very thin. }]\nsupplies: { oil: 1 L }\n", "## A\n\n"+body)
		var got []string
		for _, phase := range v.Phases {
			for _, part := range phase.Parts {
				n := 0
				for _, b := range part.Step.Boxes {
					n += len(b.Messages)
					if b.Messages[0].Nature != "It is very thin." {
						t.Errorf("%s: %q", body, b.Messages[0].Nature)
					}
				}
				got = append(got, fmt.Sprint(n))
			}
		}
		if text := strings.Join(got, " "); text != want {
			t.Errorf("%s: %s, want %s", body, text, want)
		}
	}
}

// An answer is said in its words; one that has none by its key.
func TestAnswersInWords(t *testing.T) {
	s := siteOf(t, with(yard, "procedures/job.md", "---\ntitle: Job\nfor: tug\nholds: [seat]\n---\n## Work\n\n1. Ask. [](hold:seat)\n2. [Good](if:seat=good), a.\n3. [Worn](if:seat=worn), a.\n"))
	p := procedureOf(t, s, "job")
	for i, want := range map[int]string{1: "clean", 2: "scored"} {
		if got := s.answerText(p.Steps[i].Links[0]); got != want {
			t.Errorf("%d: %q, want %q", i, got, want)
		}
	}
}

// A note that has no answer is told at its step.
func TestAStepWithoutNotesSaysNothing(t *testing.T) {
	v := jobAt(t, yard, "for: tug\n", "## Work\n\n1. Look.\n")
	if said := v.Phases[0].Parts[0].Step.Said; said != "" {
		t.Error(said)
	}
}

// A draft of a translation may have more steps than the original: those are not
// shown.
func TestATranslationWithMoreSteps(t *testing.T) {
	m, walks := pagetest.Manual(t, map[string]string{
		"shop.yaml": "title: Shop\nalso: [es]\n", "procedures/a.md": "---\ntitle: A\n---\n## Work\n\n1. Look.\n2. Wipe.\n",
		"procedures/a.es.md": "---\ntitle: A\nstatus: draft\n---\n## Obra\n\n1. Mire.\n2. Limpie.\n3. Pinte.\n",
		"procedures/b.md":    "---\ntitle: B\n---\n## Work\n\n1. Look.\n2. Wipe.\n", "procedures/b.es.md": "---\ntitle: B\nstatus: draft\n---\n## Obra\n\n1. Mire.\n",
	})
	s := Of(jobs.Of(page.NewSite(m, walks, nil, pagetest.Day, true))).In("es")
	for _, p := range m.Procedures {
		if n := len(s.Procedure(p).Phases[0].Parts); n != 2 {
			t.Errorf("%s: %d steps", p.ID, n)
		}
	}
}

// A list in the prose is no paragraph of its own, and what is not printed is none.
func TestProseIsWrapped(t *testing.T) {
	v := jobAt(t, yard, "for: tug\n", "Read this.\n\n* one\n* two\n\n[](time:5min)\n\n## Work\n\n1. Look.\n")
	if len(v.Intro) < 2 || v.Intro[0] != "<p>Read this.</p>" || !strings.HasPrefix(string(v.Intro[1]), "<ul>") {
		t.Errorf("%q", v.Intro)
	}
	for _, text := range v.Intro[2:] {
		if strings.Contains(string(text), "<p>") {
			t.Errorf("an empty paragraph: %q", text)
		}
	}
}
