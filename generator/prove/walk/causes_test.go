package walk_test

import (
	"fmt"
	"os"
	"strings"
	"testing"

	"golang.org/x/tools/txtar"

	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// Of what many leave undone the finding says in how many, and leads to each do:
// that performs it.
func TestCommonCauseCountsCallers(t *testing.T) {
	data, err := os.ReadFile("testdata/left-isolated-common.txtar")
	if err != nil {
		t.Fatal(err)
	}
	files := shopFiles(t)
	for _, f := range txtar.Parse(data).Files {
		if name, is := strings.CutPrefix(f.Name, "bad/"); is {
			files[name] = string(f.Data)
		}
	}
	m, _ := bind.Manual(source.FromText(files))
	found := walk.All(m).Common
	if len(found) != 1 {
		t.Fatalf("told %v", found)
	}
	if want := "in 4 procedures that perform this: traction battery"; !strings.Contains(found[0].Message, want) {
		t.Errorf("%q does not say %q", found[0].Message, want)
	}
	var at []string
	for _, r := range found[0].Related {
		at = append(at, r.At.Path()+" "+r.At.Text())
	}
	want := "procedures/one.md [Make it safe](do:safe), procedures/three.md [Make it safe](do:safe), procedures/two.md [Make it safe](do:safe), procedures/whole.md [Do one](do:one)"
	if got := strings.Join(at, ", "); got != want {
		t.Errorf("related: %s\nwant: %s", got, want)
	}
}

// sharedRig is a machine whose jobs share how it is made safe and how it goes
// back to service.
var sharedRig = map[string]string{
	"shop.yaml":               "title: Shop\n",
	"register/supplies.yaml":  "oil: { name: oil, unit: L }\n",
	"register/holds.yaml":     "gauge: { name: gauge, kind: look, of: pressure, what: gauge, good: zero }\nlamp: { name: lamp, kind: look, of: mains, what: lamp, good: dark }\n",
	"register/hazards.yaml":   "shock: { name: shock, nature: A shock., harm: death, happens: could, consequence: It kills., avoid: [Wait.], of: mains }\n",
	"procedures/make-safe.md": "---\ntitle: Make safe\nfor: rig\nleaves: { mains: dead, pressure: dead }\nholds: [gauge, lamp]\n---\n\n## Work\n\n1. [Off](isolate:mains), [lock](lock:mains).\n2. [Prove](prove:mains). [](hold:lamp)\n3. [Shut](isolate:pressure), [lock](lock:pressure).\n4. [Let out](release:pressure).\n5. [Prove](prove:pressure). [](hold:gauge)\n",
	"machines/rig.yaml": `name: Rig
points:
  plug: { name: plug, lock: yes }
  tap: { name: tap, lock: yes }
energies:
  mains: { name: mains, kind: electric, voltage: 24 V dc, points: [plug] }
  pressure: { name: pressure, kind: pressure, pressure: 100 bar, points: [tap], stored: yes }
parts:
  lid: { name: lid, held-by: { bolt: 4 }, guards: [mains] }
  pipe: { name: pipe, kind: line, under: [lid], held-by: { nut: 1 }, carries: oil, prove-dead: [pressure] }
fasteners: { bolt: { name: bolt }, nut: { name: nut } }
fluids: { oil: { name: oil, capacity: 4 L, supply: oil, bleed: yes, needed-by: [pressure] } }
`,
}

// backToService are the lines of the shared return to service.
var backToService = []string{
	"[Pipe on](connect:pipe)", "[tighten it](tighten:nut)", "[Lid on](refit:lid)", "[tighten it](tighten:bolt)",
	"[Fill](fill:oil)", "[Bleed](bleed:oil)", "[Unlock](unlock:pressure)", "[Open](restore:pressure)", "[Unlock](unlock:mains)", "[On](restore:mains)",
}

// sharedShop has ten jobs that end with the same return to service, in which the
// line of that number is missing; none with -1.
func sharedShop(missing int) map[string]string {
	files := map[string]string{}
	for name, text := range sharedRig {
		files[name] = text
	}
	back := "---\ntitle: Return to service\nfor: rig\nexpects: { mains: dead, pressure: dead, lid: off, pipe: off, oil: low }\nsupplies: [oil: 4 L]\n---\n\n## Work\n\n"
	for i, line := range backToService {
		if i != missing {
			back += "1. " + line + ".\n"
		}
	}
	files["procedures/return.md"] = back
	for i := range 10 {
		files[fmt.Sprintf("procedures/job-%d.md", i)] = fmt.Sprintf("---\ntitle: Job %d\nfor: rig\nhazards: [shock]\n---\n\n## Work\n\n1. [Make safe](do:make-safe).\n2. [Lid off](remove:lid). [](hazard:shock)\n3. [Pipe off](disconnect:pipe).\n4. [Return to service](do:return).\n", i)
	}
	return files
}

// A line that is missing in a shared return to service is told there, and in
// none of the ten jobs that end with it.
func TestAMissingLineIsToldWhereItIsMissing(t *testing.T) {
	for missing := -1; missing < len(backToService); missing++ {
		m, found := bind.Manual(source.FromText(sharedShop(missing)))
		if len(found) > 0 {
			t.Fatal(found[0].Message)
		}
		told := 0
		for _, f := range walk.All(m).Findings(m) {
			if told++; missing < 0 || f.At.Path() != "procedures/return.md" {
				t.Errorf("without %d: %s: %s", missing, f.At.Path(), f.Message)
			}
		}
		if told == 0 && missing >= 0 {
			t.Errorf("nothing is told where %s is missing", backToService[missing])
		}
	}
}
