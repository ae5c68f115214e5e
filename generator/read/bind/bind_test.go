package bind

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
	"baybinder/generator/read/source"
)

// The examples in the format's description, copied as they stand there, are
// read whole: what is told of them is only that the examples leave out some of
// the entries that they name.
func TestTheFormatsExamplesAreRead(t *testing.T) {
	tree, err := source.Read(filepath.Join("testdata", "format"))
	if err != nil {
		t.Fatal(err)
	}
	m, findings := Manual(tree)
	for _, f := range findings {
		if f.Code != "unknown-reference" {
			t.Errorf("%s: %s [%s]", f.At.Path(), f.Message, f.Code)
		}
	}
	if len(m.Tools) != 4 || len(m.Hazards) != 1 || len(m.Holds) != 8 || len(m.Supplies) != 2 || len(m.Roles) != 2 || len(m.Machines) != 1 {
		t.Errorf("%d tools, %d hazards, %d holds, %d supplies, %d roles", len(m.Tools), len(m.Hazards), len(m.Holds), len(m.Supplies), len(m.Roles))
	}
	tug := m.Machines[0]
	for _, id := range []string{"service-plug", "traction", "seat-base", "lid-bolt", "lift-oil", "relief", "bleed-order", "lift-lines"} {
		if tug.Find(id) == nil {
			t.Errorf("the machine has no %s", id)
		}
	}
	if p := m.Procedures[0]; len(p.Phases) != 3 || len(p.Steps) != 8 || p.For.To != tug || p.People != 2 {
		t.Errorf("%d phases, %d steps", len(p.Phases), len(p.Steps))
	}
}

// What the examples say is in the model, value by value.
func TestTheFormatsExamplesMeanWhatTheySay(t *testing.T) {
	tree, err := source.Read(filepath.Join("testdata", "format"))
	if err != nil {
		t.Fatal(err)
	}
	m, _ := Manual(tree)
	tug := m.Machines[0]
	hold := func(id string) *model.Hold {
		return m.Holds[slices.IndexFunc(m.Holds, func(h *model.Hold) bool { return h.ID == id })]
	}
	traction := tug.Find("traction").(*model.Energy)
	hood := tug.Find("inverter-lid").(*model.Part)
	head := tug.Find("head-bolt").(*model.Fastener)
	for what, pair := range map[string][2]any{
		"the shop's first unit of torque": {m.Shop.ShowUnits[0].Units[0], quantity.NewtonMetre},
		"the shop's limit":                {m.Shop.Limits.Lift.String(), "23 kg"},
		"the shop's language":             {fmt.Sprint(m.Shop.Language, m.Shop.Also), "en[es]"},
		"a range":                         {m.Tools[0].Range.String(), "20 to 100 N·m"},
		"a day":                           {m.Tools[0].Calibration.Last.String(), "2026-03-02"},
		"what is worn":                    {len(m.Hazards[0].Wear), 2},
		"how long a wait is":              {hold("capacitor-wait").For.String(), "60 min"},
		"the places of a measurement":     {len(hold("bus-dead").Places), 3},
		"a limit":                         {hold("bus-dead").Limit.String(), "at most 5 V dc"},
		"the tries":                       {hold("bus-dead").Tries, 3},
		"an answer":                       {hold("seat-state").Answers[1].Key + "=" + hold("seat-state").Answers[1].Value, "worn=scored"},
		"a lock":                          {tug.Points[0].Lock, true},
		"a voltage":                       {traction.Voltage.String(), "360 V dc"},
		"what is stored":                  {traction.Stored.Capacitance.String(), "1000 µF"},
		"what is stored, as a switch":     {tug.Find("lift").(*model.Energy).Stored.Yes, true},
		"what a point cuts":               {tug.Points[0].Cuts[0], traction},
		"what is under":                   {hood.Under[0].To, tug.Find("seat-base")},
		"what is over":                    {len(tug.Find("seat-base").(*model.Part).Over), 3},
		"how many bolts hold":             {hood.HeldBy[0].Amount, "8"},
		"what a bolt holds":               {len(tug.Find("lid-bolt").(*model.Fastener).Holds), 2},
		"the stages":                      {len(head.Stages), 3},
		"a sequence":                      {fmt.Sprint(head.Sequence), "[spiral]"},
		"a tolerance":                     {tug.Find("relief").(*model.Setting).Value, "180 ± 4 bar"},
		"the lines of a fluid":            {len(tug.Find("lift-oil").(*model.Fluid).Lines), 2},
		"an order":                        {len(tug.Find("bleed-order").(*model.Order).Labels), 4},
		"look-alikes":                     {len(tug.Groups[0].Parts), 2},
		"serial numbers":                  {fmt.Sprint(tug.Units[1].From, tug.Units[1].To, tug.Units[1].Options), "131 160 [cab cold-pack]"},
		"an amount":                       {m.Procedures[0].Supplies[0].Amount, "4 L"},
		"a role's day":                    {m.People[0].Roles[0].On.String(), "2026-03-01"},
		"a plan's times":                  {m.Plans[0].Perform[0].Amount, "3"},
		"a revision's readers":            {m.Revisions[0].Readers, "reread"},
	} {
		if pair[0] != pair[1] {
			t.Errorf("%s: %v, want %v", what, pair[0], pair[1])
		}
	}
}

// A register's condition that begins with ! is the condition turned round.
func TestConditions(t *testing.T) {
	m, findings := Manual(source.FromText(map[string]string{
		"shop.yaml": "title: a", "machines/tug.yaml": "name: Tug\noptions: { cab: Cab }\nparts:\n  a: { name: a, only-with: cab }\n  b: { name: b, only-with: \"!cab\" }\n",
	}))
	a, b := m.Machines[0].Parts[0].OnlyWith, m.Machines[0].Parts[1].OnlyWith
	if a.Option != "cab" || a.Not || b.Option != "cab" || !b.Not || len(findings) > 0 {
		t.Errorf("%+v %+v %v", a, b, findings)
	}
}

// An override changes what a procedure meets, and not the register.
func TestOverrides(t *testing.T) {
	m, findings := Manual(source.FromText(map[string]string{
		"shop.yaml":             "title: a",
		"register/tools.yaml":   "gloves: { name: gloves, kind: ppe }\nmask: { name: mask, kind: ppe }\n",
		"register/hazards.yaml": "oil: { name: oil, nature: Hot., harm: minor-injury, consequence: It burns., avoid: [Wait.], wear: [gloves] }\n",
		"procedures/a.md":       "---\ntitle: a\nhazards: { oil: { harm: death, wear: [] } }\n---\n## W\n\n1. x\n",
		"procedures/b.md":       "---\ntitle: b\nhazards: { oil: }\n---\n## W\n\n1. x\n",
	}))
	a, b := m.Procedures[0].Hazards[0], m.Procedures[1].Hazards[0]
	if a.Met.Harm != "death" || len(a.Met.Wear) != 0 || a.Met.Nature != "Hot." || a.To.Harm != "minor-injury" || b.Met != b.To || b.To.Happens != "could" {
		t.Errorf("%+v %+v %v", a.Met, b.Met, findings)
	}
}

// What cannot be read on disk is told once, and what may have been in it is
// not missed.
func TestAFileThatCannotBeReadIsToldOnce(t *testing.T) {
	root := t.TempDir()
	for name, text := range map[string]string{
		"shop.yaml":              "title: a",
		"register/tools.yaml":    "se\xf1al: { name: x }",
		"procedures/a.md":        "---\ntitle: a\ntools: [broom]\n---\n## W\n\n1. [x](tool:broom)\n2. [y](do:nul)\n3. [z](see:latin)\n",
		"procedures/nul.md":      "---\ntitle: nul\n---\n## W\n\n1. x\n",
		"procedures/latin.md":    "---\ntitle: \xe9\n---\n",
		"readings/people.csv":    "\xff\xfe",
		"readings/record.csv":    "date,person,procedure,act,fingerprint,by\n2026-11-03,t-01,a,read,1-8c1f0a93b2d4e5f6,\n",
		"machines/con.yaml":      "name: Conveyor\n",
		"machines/sub/deep.yaml": "name: Deep\n",
	} {
		full := filepath.Join(root, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(full), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(full, []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	tree, err := source.Read(root)
	if err != nil {
		t.Fatal(err)
	}
	_, findings := Manual(tree)
	want := []string{
		"machines/con.yaml bad-id", "machines/sub/deep.yaml bad-id", "procedures/latin.md syntax", "procedures/nul.md bad-id",
		"readings/people.csv syntax", "register/tools.yaml syntax",
	}
	if got := told(findings); !slices.Equal(got, want) {
		t.Errorf("told %v\nwant %v", got, want)
	}
}

func told(findings []finding.Finding) []string {
	var out []string
	for _, f := range finding.Sort(findings) {
		out = append(out, f.At.Path()+" "+f.Code)
	}
	return out
}

// An empty folder is a manual without a shop, and that is all that is told.
func TestAnEmptyManual(t *testing.T) {
	m, findings := Manual(source.FromText(nil))
	if got := told(findings); !slices.Equal(got, []string{"shop.yaml missing-field"}) {
		t.Errorf("told %v", got)
	}
	if m.Shop == nil || m.Shop.Language != "en" || m.Shop.Writing.WordsInAStep != 20 {
		t.Errorf("the shop's defaults are %+v", m.Shop)
	}
}

// Half a front matter that says draft is a draft: it stops nobody's build.
func TestABrokenDraftIsADraft(t *testing.T) {
	for front, want := range map[string]string{
		"title: a: b\nstatus: draft\n":           "draft",
		"status: draft # soon\ntitle: [\n":       "draft",
		"title: a: b\n":                          "issued",
		"title: a: b\nsummary: status: draft\n":  "issued",
		"title: fine\nstatus: retired\n":         "retired",
		"title: a: b\nstatus: drafty\n":          "issued",
		"title: a: b\nnote: x\nstatus:  draft\n": "draft",
	} {
		m, _ := Manual(source.FromText(map[string]string{"shop.yaml": "title: a", "procedures/a.md": "---\n" + front + "---\n## W\n\n1. x\n"}))
		if got := m.Procedures[0].Status; got != want {
			t.Errorf("%q: the status is %s, want %s", front, got, want)
		}
	}
}

// Two runs over the same files tell the same and make the same model.
func TestBindingIsTheSameEveryTime(t *testing.T) {
	tree, err := source.Read(filepath.Join("testdata", "format"))
	if err != nil {
		t.Fatal(err)
	}
	_, first := Manual(tree)
	for range 5 {
		_, again := Manual(tree)
		if fmt.Sprint(finding.Sort(again)) != fmt.Sprint(finding.Sort(first)) {
			t.Fatal("two runs differ")
		}
	}
	if !strings.Contains(fmt.Sprint(told(first)), "unknown-reference") {
		t.Error("nothing was told to compare")
	}
}

// A step is called by its phase, its place in that and its place in the step above:
// as its list shows it.
func TestStepsAreNumberedByTheirPlaces(t *testing.T) {
	m, _ := Manual(source.FromText(map[string]string{
		"shop.yaml":         "title: Shop\n",
		"procedures/job.md": "---\ntitle: Job\n---\n## Off\n\n1. One.\n   1. Below.\n   2. Below.\n      1. Deep.\n2. Two.\n\n## On\n\n1. Three.\n",
	}))
	var got []string
	for _, s := range m.Procedures[0].Steps {
		got = append(got, s.Number)
	}
	if want := []string{"1.1", "1.1.1", "1.1.2", "1.1.2.1", "1.2", "2.1"}; !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}
