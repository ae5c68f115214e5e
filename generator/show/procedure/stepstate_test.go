package procedure

import (
	"fmt"
	"slices"
	"strings"
	"testing"
)

// A step that takes out a kept plug says whose lock it is, by the people of its
// job (29 CFR 1910.147(a)(2)(iii)(A): exclusive control of the one who works),
// and a step that tests an energy names the settings that it is altered with.
func TestAStepSaysWhatItsStateIs(t *testing.T) {
	job := func(people string) string {
		return "---\ntitle: T\nfor: mixer\npeople: " + people + "\nholds: [ok]\n---\n## Work\n\n1. [Out](isolate:mains).\n2. [Higher](alter:stop), [other](alter:lamp).\n" +
			"3. [On](test-live:mains). [](people:2) [](hold:ok)\n4. [Back](reset:stop), [and this](reset:lamp).\n"
	}
	s := siteOf(t, map[string]string{
		"shop.yaml":           "title: Shop\n",
		"register/roles.yaml": "boss: { name: Boss }\n",
		"register/holds.yaml": "ok: { name: ok, kind: sign, by: boss }\n",
		"machines/mixer.yaml": "name: Mixer\npoints: { plug: { name: mains plug, lock: kept } }\nenergies: { mains: { name: mains, kind: electric, points: [plug] } }\n" +
			"settings: { stop: { name: end stop, needed-by: [mains] }, lamp: { name: lamp } }\n",
		"procedures/one.md": job("1"),
		"procedures/two.md": job("2"),
	})
	for id, want := range map[string]string{"one": "mains plug: keep it with you, or in reach and in sight", "two": "mains plug: with more than one person at work it is no lock"} {
		p := procedureOf(t, s, id)
		if got := s.keptPlugs(p.Steps[0]); len(got) != 1 || !strings.HasPrefix(got[0], want) {
			t.Errorf("%s says %q of its plug", id, got)
		}
		if got := s.testedAltered(p.Steps[2]); !slices.Equal(got, []string{"end stop is altered during this test"}) {
			t.Errorf("%s says %q of its test", id, got)
		}
	}
}

// An isolator in the same step as a plug, by its point or its energy, says nothing;
// a plug of two energies is said once. What is tested is told of what it needs:
// what the step itself alters too, another's settings not.
func TestWhatAStepSaysOfItsState(t *testing.T) {
	s := siteOf(t, map[string]string{
		"shop.yaml":           "title: Shop\n",
		"register/roles.yaml": "boss: { name: Boss }\n",
		"register/holds.yaml": "ok: { name: ok, kind: sign, by: boss }\n",
		"machines/mixer.yaml": "name: Mixer\npoints: { plug: { name: plug, lock: kept }, switch: { name: switch, lock: yes } }\nenergies:\n  mains: { name: mains, kind: electric, points: [plug, switch] }\n" +
			"  drum: { name: drum, kind: motion, points: [plug] }\nsettings: { stop: { name: end stop, needed-by: [mains] }, gate: { name: gate, needed-by: [mains, drum] } }\nparts: { lid: { name: lid } }\n",
		"procedures/job.md": "---\ntitle: T\nfor: mixer\nholds: [ok]\n---\n## Work\n\n1. [Lid](remove:lid), [off](isolate:switch).\n2. [Out](isolate:mains), [and](isolate:drum).\n3. Mind [the drum](energy:drum), [out](isolate:plug).\n" +
			"4. [Higher](alter:stop), [on](test-live:mains). [](hold:ok)\n5. Look at [the gate](setting:gate), [on](test-live:mains), [and](test-live:drum).\n6. [Open](alter:gate), [on](test-live:drum), [and](test-live:mains).\n7. Mind [the mains](energy:mains).\n",
	})
	p := procedureOf(t, s, "job")
	for i, want := range []string{"0 0", "1 0", "1 0", "0 1", "0 1", "0 2", "0 0"} {
		if got := fmt.Sprint(len(s.keptPlugs(p.Steps[i])), " ", len(s.testedAltered(p.Steps[i]))); got != want {
			t.Errorf("1.%d: %s plugs and settings, want %s", i+1, got, want)
		}
	}
}
