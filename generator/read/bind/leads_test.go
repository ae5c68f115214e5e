package bind

import (
	"fmt"
	"reflect"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/read/source"
)

// whole is a manual in which every field that names something does.
var whole = map[string]string{
	"shop.yaml":              "title: Shop\nlocks: { tool: padlock, each: person }\nissue: { checked: [boss], approved: [old-boss], since: 2027-01-04 }\n",
	"register/roles.yaml":    "boss: { name: Boss, was: [old-boss] }\nhand: { name: Hand }\n",
	"register/tools.yaml":    "padlock: { name: padlock, kind: lock }\nprop: { name: prop, kind: aid, or: [cage], needs: [hand] }\ncage: { name: cage, kind: aid }\ngloves: { name: gloves, kind: ppe }\ntester: { name: tester, kind: tester }\n",
	"register/hazards.yaml":  "heat: { name: heat, nature: It is hot., harm: minor-injury, consequence: It burns., avoid: [Wait.], wear: [gloves], of: mains }\n",
	"register/holds.yaml":    "clear: { name: clear, kind: check, by: boss, how: apart }\ndead: { name: dead, kind: measure, what: it, of: mains, limit: at most 5 V dc, with: tester, proved-on: prop, tries: 2, call: hand }\n",
	"register/supplies.yaml": "oil: { name: oil, unit: L, hazards: [heat] }\nbolts: { name: bolts }\n",
	"machines/tug.yaml": `name: Tug
options: { cab: Cab }
restore-order: [mains]
before-isolate: [clear]
before-restore: [clear]
points: { plug: { name: plug, only-with: cab } }
energies:
  mains: { name: mains, kind: electric, points: [plug], blocked-by: [prop], contained-by: [cage], before-isolate: [clear], before-restore: [clear], only-with: cab }
parts:
  lid: { name: lid, only-with: cab }
  pump: { name: pump, under: [lid], prove-dead: [mains], guards: [mains], held-by: { nut: 2 }, freed-by: [nut], renew-with: bolts }
  pipe: { name: pipe, kind: line, carries: sump }
  hose: { name: hose, kind: line, carries: mains }
fasteners: { nut: { name: nut, renew-with: bolts, only-with: cab } }
fluids: { sump: { name: sump, supply: oil, needed-by: [mains], only-with: cab } }
settings: { stop: { name: stop, needed-by: [mains], only-with: cab } }
`,
	"procedures/old.md":         "---\ntitle: Old\nfor: tug\nstatus: retired\ninstead: job\n---\n## Work\n\n1. Look.\n",
	"procedures/job.md":         "---\ntitle: Job\nfor: tug\nneeds: [hand]\ntools: [prop]\nsupplies: { oil: 1 L }\nholds: [dead]\nhazards: { heat: { wear: [gloves], harm: death } }\nwas: [first-job]\n---\n## Work\n\n1. Look.\n",
	"readings/plans/start.yaml": "title: Start\ngives: [hand]\nread: [job]\nwatch: [job]\nperform: [job: 2]\nassessor: boss\n",
	"readings/people.csv":       "person,name,roles,started,plans\na,A,hand@2026-01-02 boss,2026-01-01,start\nb,B,,2026-01-01,\n",
	"readings/record.csv":       "date,person,procedure,act,fingerprint,by\n2026-03-01,a,first-job,read,1-8c1f0a93b2d4e5f6,b\n",
	"readings/roles.csv":        "date,person,role,act,by,reason\n2026-03-01,a,old-boss,gained,b,Plan.\n",
	"revisions.csv":             "procedure,revision,date,fingerprint,reason,written,checked,approved,walked,readers\njob,2,2026-03-01,1-8c1f0a93b2d4e5f6,Second.,a,b,a,a,none\nfirst-job,1,2026-02-01,1-8c1f0a93b2d4e5f6,First.,a,b,a,a,none\n",
}

// but is a manual in which some texts of files are others: file, old, new.
func but(t *testing.T, changes ...string) map[string]string {
	t.Helper()
	out := map[string]string{}
	for name, text := range whole {
		out[name] = text
	}
	for i := 0; i+2 < len(changes); i += 3 {
		if changes[i+1] != "" && !strings.Contains(out[changes[i]], changes[i+1]) {
			t.Fatalf("%s has no %q", changes[i], changes[i+1])
		}
		out[changes[i]] = strings.ReplaceAll(out[changes[i]], changes[i+1], changes[i+2])
		if changes[i+1] == "" {
			out[changes[i]] = changes[i+2]
		}
	}
	return out
}

// said are findings with their mends, in the order of their places.
func said(found []finding.Finding) (out []string) {
	for _, f := range finding.Sort(found) {
		line, col := f.At.LineCol()
		out = append(out, fmt.Sprintf("%s:%d:%d %s: %s | %s", f.At.Path(), line, col, f.Code, f.Message, f.Mend))
	}
	return out
}

// leading counts the references of a value that name something, and those that lead
// nowhere.
func leading(v reflect.Value, seen map[uintptr]bool, way string, count *int, lost *[]string) {
	switch v.Kind() {
	case reflect.Pointer:
		if !v.IsNil() && !seen[v.Pointer()] {
			seen[v.Pointer()] = true
			leading(v.Elem(), seen, way, count, lost)
		}
	case reflect.Slice:
		for i := range v.Len() {
			leading(v.Index(i), seen, way, count, lost)
		}
	case reflect.Struct:
		id, to := v.FieldByName("ID"), v.FieldByName("To")
		if name := v.Type().Name(); strings.HasPrefix(name, "Ref[") && !strings.HasSuffix(name, ".Entry]") && id.String() != "" { // of an entry's of: each procedure has its own
			*count++
			if to.IsNil() {
				*lost = append(*lost, way+" "+id.String())
			}
		}
		for i := range v.NumField() {
			if f := v.Type().Field(i); f.IsExported() {
				leading(v.Field(i), seen, way+"."+f.Name, count, lost)
			}
		}
	}
}

// Every name leads to what it names, by an earlier id too; nothing is told.
func TestEveryNameLeads(t *testing.T) {
	m, found := Manual(source.FromText(but(t)))
	for _, f := range said(found) {
		t.Error(f)
	}
	count := 0
	var lost []string
	leading(reflect.ValueOf(m), map[uintptr]bool{}, "", &count, &lost)
	// By hand: 3 of the shop, 2 of tools, 1 of a hazard, 4 of holds, 1 of a supply,
	// 20 of the machine, 2 and 7 of the procedures and 1 of the hazard as it is met,
	// 5 of the plan, 3 of a person, 2 each of a reading, an award and the revisions.
	if len(lost) > 0 || count != 55 {
		t.Errorf("of %d names these lead nowhere: %q", count, lost)
	}
	tug := m.Machines[0]
	if hose := tug.Find("hose").(*model.Part); hose.Bears.To != tug.Find("mains") || hose.Carries.ID != "" {
		t.Errorf("the hose bears %v and carries %q", hose.Bears.To, hose.Carries.ID)
	}
	if r := m.Revisions; r[0].Number != "1" || r[1].Number != "2" || r[0].Procedure.To != r[1].Procedure.To {
		t.Errorf("revisions are not in the order of their days, or of two procedures: %v", r)
	}
	if a := m.Awards; len(a) != 1 || a[0].Bad || a[0].Role.To != m.Roles[0] || a[0].Person.To != m.People[0] {
		t.Errorf("the award is %+v", a)
	}
	met := m.Procedures[0].Hazards[0].Met
	if met == nil || met.Harm != "death" || met.Nature != "It is hot." || len(met.Wear) != 1 || met.Wear[0].To == nil {
		t.Errorf("met: %+v", met)
	}
}

// A name that nothing has is told where it stands, once, and what it says is lost
// to its entry: no rule rests on it.
func TestEveryNameThatNothingHasIsTold(t *testing.T) {
	for _, c := range []struct {
		file, old, new string
		lost           func(m *model.Manual) bool
	}{
		{"shop.yaml", "tool: padlock", "tool: zzz", func(m *model.Manual) bool { return m.Shop.Lost("locks") }},
		{"shop.yaml", "checked: [boss]", "checked: [zzz]", nil},
		{"shop.yaml", "approved: [old-boss]", "approved: [zzz]", nil},
		{"register/tools.yaml", "or: [cage]", "or: [zzz]", func(m *model.Manual) bool { return m.Tools[1].Lost("or") }},
		{"register/tools.yaml", "needs: [hand]", "needs: [zzz]", func(m *model.Manual) bool { return m.Tools[1].Lost("needs") }},
		{"register/hazards.yaml", "wear: [gloves]", "wear: [zzz]", func(m *model.Manual) bool { return m.Hazards[0].Lost("wear") }},
		{"register/hazards.yaml", "of: mains", "of: zzz", func(m *model.Manual) bool { return m.Hazards[0].Lost("of") }},
		{"register/holds.yaml", "by: boss", "by: zzz", func(m *model.Manual) bool { return m.Holds[0].Lost("by") }},
		{"register/holds.yaml", "of: mains", "of: zzz", func(m *model.Manual) bool { return m.Holds[1].Lost("of") }},
		{"register/holds.yaml", "with: tester", "with: zzz", func(m *model.Manual) bool { return m.Holds[1].Lost("with") }},
		{"register/holds.yaml", "proved-on: prop", "proved-on: zzz", func(m *model.Manual) bool { return m.Holds[1].Lost("proved-on") }},
		{"register/holds.yaml", "call: hand", "call: zzz", func(m *model.Manual) bool { return m.Holds[1].Lost("call") }},
		{"register/supplies.yaml", "hazards: [heat]", "hazards: [zzz]", func(m *model.Manual) bool { return m.Supplies[0].Lost("hazards") }},
		{"machines/tug.yaml", "restore-order: [mains]", "restore-order: [zzz]", func(m *model.Manual) bool { return m.Machines[0].Lost("restore-order") }},
		{"machines/tug.yaml", "\nbefore-isolate: [clear]", "\nbefore-isolate: [zzz]", func(m *model.Manual) bool { return m.Machines[0].Lost("before-isolate") }},
		{"machines/tug.yaml", "\nbefore-restore: [clear]", "\nbefore-restore: [zzz]", func(m *model.Manual) bool { return m.Machines[0].Lost("before-restore") }},
		{"machines/tug.yaml", "plug: { name: plug, only-with: cab", "plug: { name: plug, only-with: zzz", func(m *model.Manual) bool { return m.Machines[0].Points[0].Lost("only-with") }},
		{"machines/tug.yaml", "points: [plug]", "points: [zzz]", func(m *model.Manual) bool {
			return m.Machines[0].Energies[0].Lost("points") && m.Machines[0].Points[0].Lost(model.Cutting)
		}},
		{"machines/tug.yaml", "blocked-by: [prop]", "blocked-by: [zzz]", func(m *model.Manual) bool { return m.Machines[0].Energies[0].Lost("blocked-by") }},
		{"machines/tug.yaml", "contained-by: [cage]", "contained-by: [zzz]", func(m *model.Manual) bool { return m.Machines[0].Energies[0].Lost("contained-by") }},
		{"machines/tug.yaml", "], before-isolate: [clear]", "], before-isolate: [zzz]", func(m *model.Manual) bool { return m.Machines[0].Energies[0].Lost("before-isolate") }},
		{"machines/tug.yaml", "before-restore: [clear], only-with: cab", "before-restore: [zzz], only-with: cab", func(m *model.Manual) bool { return m.Machines[0].Energies[0].Lost("before-restore") }},
		{"machines/tug.yaml", "before-restore: [clear], only-with: cab", "before-restore: [clear], only-with: zzz", func(m *model.Manual) bool { return m.Machines[0].Energies[0].Lost("only-with") }},
		{"machines/tug.yaml", "lid: { name: lid, only-with: cab", "lid: { name: lid, only-with: zzz", func(m *model.Manual) bool { return m.Machines[0].Parts[0].Lost("only-with") }},
		{"machines/tug.yaml", "under: [lid]", "under: [zzz]", func(m *model.Manual) bool { return m.Machines[0].Parts[1].Lost("under") }},
		{"machines/tug.yaml", "prove-dead: [mains]", "prove-dead: [zzz]", func(m *model.Manual) bool { return m.Machines[0].Parts[1].Lost("prove-dead") }},
		{"machines/tug.yaml", "guards: [mains]", "guards: [zzz]", func(m *model.Manual) bool { return m.Machines[0].Parts[1].Lost("guards") }},
		{"machines/tug.yaml", "held-by: { nut: 2 }", "held-by: { zzz: 2 }", func(m *model.Manual) bool {
			return m.Machines[0].Parts[1].Lost("held-by") && m.Machines[0].Fasteners[0].Lost(model.Holding)
		}},
		{"machines/tug.yaml", "freed-by: [nut]", "freed-by: [zzz]", func(m *model.Manual) bool { return m.Machines[0].Parts[1].Lost("freed-by") }},
		{"machines/tug.yaml", "freed-by: [nut], renew-with: bolts", "freed-by: [nut], renew-with: zzz", func(m *model.Manual) bool { return m.Machines[0].Parts[1].Lost("renew-with") }},
		{"machines/tug.yaml", "carries: sump", "carries: zzz", func(m *model.Manual) bool {
			return m.Machines[0].Parts[2].Lost("carries") && m.Machines[0].Fluids[0].Lost(model.Running)
		}},
		{"machines/tug.yaml", "nut: { name: nut, renew-with: bolts", "nut: { name: nut, renew-with: zzz", func(m *model.Manual) bool { return m.Machines[0].Fasteners[0].Lost("renew-with") }},
		{"machines/tug.yaml", "renew-with: bolts, only-with: cab", "renew-with: bolts, only-with: zzz", func(m *model.Manual) bool { return m.Machines[0].Fasteners[0].Lost("only-with") }},
		{"machines/tug.yaml", "supply: oil", "supply: zzz", func(m *model.Manual) bool { return m.Machines[0].Fluids[0].Lost("supply") }},
		{"machines/tug.yaml", "supply: oil, needed-by: [mains]", "supply: oil, needed-by: [zzz]", func(m *model.Manual) bool { return m.Machines[0].Fluids[0].Lost("needed-by") }},
		{"machines/tug.yaml", "supply: oil, needed-by: [mains], only-with: cab", "supply: oil, needed-by: [mains], only-with: zzz", func(m *model.Manual) bool { return m.Machines[0].Fluids[0].Lost("only-with") }},
		{"machines/tug.yaml", "stop, needed-by: [mains]", "stop, needed-by: [zzz]", func(m *model.Manual) bool { return m.Machines[0].Settings[0].Lost("needed-by") }},
		{"machines/tug.yaml", "stop, needed-by: [mains], only-with: cab", "stop, needed-by: [mains], only-with: zzz", func(m *model.Manual) bool { return m.Machines[0].Settings[0].Lost("only-with") }},
		{"procedures/old.md", "instead: job", "instead: zzz", func(m *model.Manual) bool { return m.Procedures[1].Lost("instead") }},
		{"procedures/job.md", "for: tug", "for: zzz", func(m *model.Manual) bool { return m.Procedures[0].Lost("for") }},
		{"procedures/job.md", "needs: [hand]", "needs: [zzz]", func(m *model.Manual) bool { return m.Procedures[0].Lost("needs") }},
		{"procedures/job.md", "tools: [prop]", "tools: [zzz]", func(m *model.Manual) bool { return m.Procedures[0].Lost("tools") }},
		{"procedures/job.md", "supplies: { oil: 1 L }", "supplies: { zzz: 1 L }", func(m *model.Manual) bool { return m.Procedures[0].Lost("supplies") }},
		{"procedures/job.md", "holds: [dead]", "holds: [zzz]", func(m *model.Manual) bool { return m.Procedures[0].Lost("holds") }},
		{"procedures/job.md", "hazards: { heat:", "hazards: { zzz:", func(m *model.Manual) bool { return m.Procedures[0].Lost("hazards") }},
		{"procedures/job.md", "wear: [gloves]", "wear: [zzz]", func(m *model.Manual) bool { return m.Procedures[0].Lost("hazards.wear") }},
		{"readings/plans/start.yaml", "gives: [hand]", "gives: [zzz]", func(m *model.Manual) bool { return m.Plans[0].Lost("gives") }},
		{"readings/plans/start.yaml", "read: [job]", "read: [zzz]", func(m *model.Manual) bool { return m.Plans[0].Lost("read") }},
		{"readings/plans/start.yaml", "watch: [job]", "watch: [zzz]", func(m *model.Manual) bool { return m.Plans[0].Lost("watch") }},
		{"readings/plans/start.yaml", "perform: [job: 2]", "perform: [zzz: 2]", func(m *model.Manual) bool { return m.Plans[0].Lost("perform") }},
		{"readings/plans/start.yaml", "assessor: boss", "assessor: zzz", func(m *model.Manual) bool { return m.Plans[0].Lost("assessor") }},
		{"readings/people.csv", "hand@2026-01-02", "zzz@2026-01-02", func(m *model.Manual) bool { return m.People[0].Lost("roles") }},
		{"readings/people.csv", ",start\n", ",zzz\n", func(m *model.Manual) bool { return m.People[0].Lost("plans") }},
		{"readings/record.csv", ",first-job,", ",zzz,", func(m *model.Manual) bool { return m.Record[0].Bad }},
		{"readings/record.csv", ",a,first", ",zzz,first", func(m *model.Manual) bool { return m.Record[0].Bad }},
		{"readings/record.csv", ",b\n", ",zzz\n", func(m *model.Manual) bool { return m.Record[0].Bad }},
		{"readings/roles.csv", ",old-boss,", ",zzz,", func(m *model.Manual) bool { return m.Awards[0].Bad }},
		{"readings/roles.csv", ",a,", ",zzz,", func(m *model.Manual) bool { return m.Awards[0].Bad }},
		{"readings/roles.csv", ",b,", ",zzz,", func(m *model.Manual) bool { return m.Awards[0].Bad }},
		{"readings/roles.csv", ",gained,", ",zzz,", func(m *model.Manual) bool { return m.Awards[0].Bad }},
		{"readings/roles.csv", "2026-03-01,", ",", func(m *model.Manual) bool { return m.Awards[0].Bad }},
		{"revisions.csv", "first-job,", "zzz,", nil},
		{"revisions.csv", "a,none\nfirst", "a,zzz\nfirst", nil},
		{"revisions.csv", "2026-02-01,1-8c1f0a93b2d4e5f6", "2026-02-01,", nil},
	} {
		m, found := Manual(source.FromText(but(t, c.file, c.old, c.new)))
		if len(found) != 1 || found[0].At.Path() != c.file {
			t.Errorf("%s: %s: %q", c.file, c.new, said(found))
		}
		if c.lost != nil && !c.lost(m) {
			t.Errorf("%s: %s: its entry still rests on it", c.file, c.new)
		}
	}
}

// What may stand in a file that could not be read is not missed.
func TestWhatCouldNotBeReadIsNotMissed(t *testing.T) {
	for _, name := range []string{
		"register/tools.yaml", "register/hazards.yaml", "register/holds.yaml", "register/supplies.yaml", "register/roles.yaml", "machines/tug.yaml", "readings/plans/start.yaml", "readings/people.csv",
	} {
		broken := "a: [\n"
		if strings.HasSuffix(name, ".csv") {
			broken = "person;name;roles;started;plans\n"
		}
		_, found := Manual(source.FromText(but(t, name, "", broken)))
		var elsewhere []string
		for _, f := range found {
			if f.At.Path() != name {
				elsewhere = append(elsewhere, said([]finding.Finding{f})...)
			}
		}
		if len(elsewhere) > 0 || len(found) == 0 {
			t.Errorf("%s: %q", name, elsewhere)
		}
	}
}

// Each field of an override stands in the place of the register's.
func TestEachFieldOfAnOverride(t *testing.T) {
	m, found := Manual(source.FromText(but(t, "procedures/job.md", "heat: { wear: [gloves], harm: death }", "heat: { nature: N., harm: damage, happens: will, consequence: C., symbol: W017, first-aid: F., avoid: [One., Two.], wear: [], because: B. }")))
	met, own := m.Procedures[0].Hazards[0].Met, m.Hazards[0]
	if got := fmt.Sprint(met.Nature, met.Harm, met.Happens, met.Consequence, met.Symbol, met.FirstAid, met.Avoid, len(met.Wear)); got != "N.damagewillC.W017F.[One. Two.] 0" || len(found) > 0 {
		t.Errorf("%s %q", got, said(found))
	}
	if got := fmt.Sprint(own.Nature, own.Harm, own.Happens, own.Consequence, own.Symbol, own.FirstAid, own.Avoid, len(own.Wear)); got != "It is hot.minor-injurycouldIt burns.[Wait.] 1" {
		t.Errorf("the register: %s", got)
	}
}

// One text is tried, and read again, as the manual would have it.
func TestAProcedureIsReadAgain(t *testing.T) {
	tree := source.FromText(but(t))
	b := All(tree)
	p := b.Manual.Procedures[0]
	file := source.FromText(map[string]string{"procedures/job.md": "---\ntitle: Other\nfor: tug\n---\n## Strip\n\n1. [Off](remove:lid).\n2. [Off](remove:zzz).\n"}).Files[0]
	tried, found := b.Try(file)
	if tried == p || p.Title != "Job" || tried.Title != "Other" || len(tried.Steps) != 2 || tried.Steps[0].Links[0].To != b.Manual.Machines[0].Find("lid") || len(found) != 1 {
		t.Errorf("tried: %+v %q", tried, said(found))
	}
	found = b.Again(p, file)
	if p.Title != "Other" || len(p.Steps) != 2 || p.Steps[0].Of != p || p.Steps[0].Links[0].To != b.Manual.Machines[0].Find("lid") || len(found) != 1 {
		t.Errorf("again: %+v %q", p, said(found))
	}
	translated := source.FromText(map[string]string{"procedures/job.es.md": "---\ntitle: Otro\n---\n## Obra\n\n1. [Quite](remove:lid).\n"}).Files[0]
	if es, found := b.Try(translated); es.Original != p || es.Phases[0].ID != "strip" || es.For.To != p.For.To || es.Steps[0].Links[0].Bad || len(found) != 0 {
		t.Errorf("a translation: %+v %q", es, said(found))
	}
}

// Each state word stands once in the list of all.
func TestStateWords(t *testing.T) {
	words := StateWords()
	slices.Sort(words)
	if got := strings.Join(words, " "); got != "altered cleared dead full isolated live locked loose low off on placed released reset tight unbled" {
		t.Error(got)
	}
}
