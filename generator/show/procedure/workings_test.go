package procedure

import (
	"slices"
	"strings"
	"testing"

	"baybinder/generator/model"
	"baybinder/generator/show/page"
)

// How many of a tool and of people a job needs is worked out from what each of
// its procedures lists, those that it performs through others too, each once.
func TestCountsOfAJobAreWorkedOut(t *testing.T) {
	front := func(title, more, body string) string {
		return "---\ntitle: " + title + "\n" + more + "---\n## Work\n\n" + body
	}
	s := siteOf(t, with(bench,
		"procedures/job.md", front("Job", "tools: [jack: 2]\n", "1. [](tool:jack) [a](do:mid).\n2. [b](do:mid).\n"),
		"procedures/mid.md", front("Mid", "people: 3\n", "1. [a](do:deep) [](see:other).\n"),
		"procedures/deep.md", front("Deep", "people: 2\ntools: [jack: 4, rope]\n", "1. [](tool:jack) [](tool:rope).\n"),
		"procedures/other.md", front("Other", "people: 9\ntools: [jack: 9]\n", "1. [](tool:jack).\n"),
		"procedures/alone.md", front("Alone", "", "1. Look.\n")))
	p := procedureOf(t, s, "job")
	v := s.Procedure(p)
	if got := v.Before.People; page.Unworked(got) != "3 people at once" || !strings.Contains(got, "max(1 (Job); 3 (Mid); 2 (Deep))") {
		t.Errorf("people: %q", got)
	}
	jack := s.Manual.Tools[slices.IndexFunc(s.Manual.Tools, func(t *model.Tool) bool { return t.ID == "jack" })]
	if got := s.ofTool(p, jack); page.Unworked(got) != "4" || !strings.Contains(got, "max(2 (Job); 4 (Deep))") {
		t.Errorf("tools: %q", got)
	}
	if got := s.Procedure(procedureOf(t, s, "alone")).Before.People; got != "" {
		t.Errorf("one person: %q", got)
	}
	if got := page.Unworked(s.Procedure(procedureOf(t, s, "deep")).Before.People); got != "2 people at once" {
		t.Errorf("two: %q", got)
	}
}

// Padlocks are counted at the points that stand locked at once; where the list
// has more of them, it is the list's count; a list's count of another tool is.
func TestLocksAreWorkedOut(t *testing.T) {
	for _, c := range []struct{ head, tool, count, put string }{
		{"people: 2\n", "padlock", "4", "2 · 2"},
		{"people: 2\ntools: [padlock: 6]\n", "padlock", "6", "max(6 (Job))"},
		{"people: 2\ntools: [jack: 4]\n", "jack", "4", "max(4 (Job))"},
	} {
		base := with(bench, "machines/rig.yaml", "name: Rig\npoints: { plug: { name: plug, lock: yes }, cock: { name: cock, lock: yes } }\nenergies: { mains: { name: mains, kind: electric, points: [plug] }, air: { name: air, kind: pressure, points: [cock] } }\n")
		s := siteOf(t, with(base, "procedures/job.md", "---\ntitle: Job\nfor: rig\n"+c.head+"---\n## Work\n\n1. [Off](isolate:mains), [lock](lock:mains).\n2. [Off](isolate:air), [lock](lock:air). [](tool:jack)\n3. [a](unlock:air) [b](restore:air).\n4. [a](unlock:mains) [b](restore:mains).\n"))
		tool := s.Manual.Tools[slices.IndexFunc(s.Manual.Tools, func(t *model.Tool) bool { return t.ID == c.tool })]
		if got := s.ofTool(procedureOf(t, s, "job"), tool); page.Unworked(got) != c.count || !strings.Contains(got, c.put) {
			t.Errorf("%s%s: %q, want %s by %s", c.head, c.tool, got, c.count, c.put)
		}
	}
}

// What is used up by several procedures is their sum; by one it is its own.
func TestSuppliesAreSummed(t *testing.T) {
	s := siteOf(t, with(bench, "procedures/job.md", "---\ntitle: Job\nsupplies: { oil: 2 L }\n---\n## Work\n\n1. [](supply:oil) [Do it](do:low).\n", "procedures/low.md", "---\ntitle: Low\nsupplies: { oil: 1 L }\n---\n## Work\n\n1. [](supply:oil).\n"))
	for id, want := range map[string]string{"job": "3 L|2 L (Job) + 1 L (Low)", "low": "1 L|"} {
		amount := s.Procedure(procedureOf(t, s, id)).Before.Shelves[0].Items[0].Amount
		sum, put, _ := strings.Cut(want, "|")
		if page.Unworked(amount) != sum || !strings.Contains(amount, put) {
			t.Errorf("%s: %q", id, amount)
		}
	}
}
