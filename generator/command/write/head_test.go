package write_test

import (
	"maps"
	"net/http"
	"strings"
	"testing"

	"baybinder/generator/command/write"
)

// locker is a machine that is switched off by one procedure and on by another.
// All values are invented.
func locker() map[string]string {
	files := maps.Clone(shop)
	files["machines/rig.yaml"] = "name: Rig\npoints:\n  plug: { name: plug, lock: yes }\nenergies:\n  power: { name: power, kind: electric, voltage: 24 V dc, points: [plug] }\nparts:\n  seat: { name: seat }\n"
	files["procedures/off.md"] = "---\ntitle: Off\nfor: rig\nstatus: draft\nleaves: { power: locked }\n---\n\n## Work\n\n1. [Off](isolate:plug) and [lock](lock:plug).\n"
	files["procedures/job.md"] = "---\ntitle: On\nstatus: draft\n---\n\n## Work\n"
	return files
}

// Once its machine is named a return is offered how it finds that, and then its
// steps; what it says is told in the shop's language.
func TestAReturnIsOfferedItsSteps(t *testing.T) {
	t.Parallel()
	files := locker()
	files["shop.yaml"] += "language: de\n"
	d := newDesk(t, files)
	d.must("open", write.Act{})
	offered := func() string {
		var out []string
		for _, g := range d.must("choices", write.Act{Phase: "work"}).Choices.Groups {
			for _, c := range g.Items {
				if len(c.Way) == 0 {
					out = append(out, g.Name+": "+c.Label)
				}
			}
		}
		return strings.Join(out, "; ")
	}
	if got := offered(); strings.Contains(got, "FoundAs") || strings.Contains(got, "plug") {
		t.Errorf("without a machine it is offered %s", got)
	}
	d.must("save", write.Act{Do: "front", Field: "for", Text: "rig"})
	if got := offered(); !strings.HasPrefix(got, "FoundAs: Wie nach: Off") || strings.Contains(got, "StillOpen") {
		t.Errorf("with its machine it is offered %s", got)
	}
	way := d.must("starts", write.Act{}).Starts.Ways[0]
	if way.Detail != "plug: mit Schloss gesichert" {
		t.Errorf("it says %s", way.Detail)
	}
	d.must("save", *way.Act)
	if want := "---\ntitle: On\nfor: rig\nstatus: draft\nexpects: { plug: locked }\n---\n"; !strings.HasPrefix(d.file("procedures/job.md"), want) {
		t.Errorf("the file is\n%s", d.file("procedures/job.md"))
	}
	if got := offered(); strings.Contains(got, "FoundAs") || !strings.Contains(got, "StillOpen") {
		t.Errorf("once it says how it finds it, it is offered %s", got)
	}
	if s := d.sheet.Start; len(s) != 1 || s[0].Label != "plug" || s[0].Said != "mit Schloss gesichert" {
		t.Errorf("the sheet says %+v", s)
	}
}

// A thing that the machine has not, and a word that the thing cannot be, are not
// written.
func TestWhatCannotStandIsNotWritten(t *testing.T) {
	t.Parallel()
	files := locker()
	files["procedures/job.md"] = strings.Replace(files["procedures/job.md"], "title: On\n", "title: On\nfor: rig\n", 1)
	d := newDesk(t, files)
	d.must("open", write.Act{})
	for _, line := range []string{"door: off", "seat: locked", "seat", "seat: off }\nleaves: { power: dead", ""} {
		if status, told := d.ask("save", write.Act{Do: "expect", Texts: []string{line}}); status == http.StatusOK || told.Why != "CannotNow" {
			t.Errorf("%q: %d %s", line, status, told.Why)
		}
	}
	if status, told := d.ask("save", write.Act{Do: "front", Field: "for", Text: "other"}); status == http.StatusOK || told.Why != "CannotNow" {
		t.Errorf("a machine that is not there: %d %s", status, told.Why)
	}
	if d.file("procedures/job.md") != files["procedures/job.md"] {
		t.Error("it changed")
	}
}
