package page

import (
	"fmt"
	"strings"
	"testing"
)

const jobProcedure = `---
title: Set the gap
for: rig
holds: [gap]
was: [gap-setting]
---
## Work

1. Park [the rig](machine:rig).
2. [](step:measuring) Measure [the gap](hold:gap).
3. Write it down.
`

const jobMachine = "name: Rig\noptions: { cab: Cab }\nunits:\n  - { serials: 1 to 9, options: [cab] }\n"

// aJob writes a record; each change is old text, new text.
func aJob(changes ...string) string {
	text := `{
  "record": 1, "shop": "Shop", "procedure": "set-gap", "title": "Set the gap", "revision": "",
  "unit": { "serial": "4", "options": ["cab"] }, "worker": "A.V.",
  "started": "2026-04-29T08:00:00+02:00", "saved": "2026-04-29T09:00:00+02:00",
  "steps": [
    { "step": "1.1", "id": "s1-1", "words": "Park the rig.", "state": "done", "at": "2026-04-29T08:10:00+02:00" },
    { "step": "1.2", "id": "measuring", "words": "Measure the gap.", "state": "done", "at": "2026-04-29T08:20:00+02:00" },
    { "step": "1.3", "id": "s1-3", "words": "Write it down.", "state": "does not apply", "at": "2026-04-29T08:20:00+02:00", "reason": "no paper" }
  ],
  "holds": [
    { "step": "1.2", "hold": "gap", "kind": "measure", "met": true, "at": "2026-04-29T08:19:00+02:00", "unit": "mm", "low": 0.3, "high": 0.5,
      "values": [{ "where": "left", "typed": "0,4", "value": 0.4 }, { "where": "right", "typed": "0.5", "value": 0.5 }],
      "failed": [{ "at": "2026-04-29T08:15:00+02:00", "values": [{ "where": "left", "typed": "0.8", "value": 0.8 }] }] },
    { "step": "1.3", "hold": "release", "kind": "sign", "met": true, "signed": { "name": "G.M.", "at": "2026-04-29T08:50:00+02:00" } }
  ],
  "gaps": [{ "step": "1.2", "at": "2026-04-29T08:20:00+02:00", "unticked": ["1.1"], "holds": ["Measure: gap"] }],
  "notes": [], "clock": []
}
`
	for i := 0; i+1 < len(changes); i += 2 {
		if !strings.Contains(text, changes[i]) {
			panic("the record has no " + changes[i])
		}
		text = strings.ReplaceAll(text, changes[i], changes[i+1])
	}
	return text
}

func jobSite(t *testing.T, records map[string]string) *Site {
	t.Helper()
	files := map[string]string{
		"machines/rig.yaml": jobMachine, "procedures/set-gap.md": jobProcedure,
		"register/holds.yaml": "gap: { name: gap, kind: measure, what: the gap, at: [left, right], limit: 0.3 to 0.5 mm }\n",
	}
	for name, text := range records {
		files["records/"+name] = text
	}
	return siteOf(t, files)
}

// note is a note to a step, as a change of aJob.
func note(step, words string) []string {
	return []string{`"notes": []`, fmt.Sprintf(`"notes": [{ "step": "%s", "at": "2026-04-29T08:30:00+02:00", "words": "%s" }]`, step, words)}
}

func TestJobsOfAProcedureAndAMachine(t *testing.T) {
	s := jobSite(t, map[string]string{
		"a.json":      aJob(),
		"deep/a.json": aJob("2026-04-29", "2026-05-01", `"set-gap"`, `"gap-setting"`, `"worker": "A.V."`, `"worker": ""`),
		"later.json":  aJob("2026-04-29", "2026-05-05"), // the day after the site's
	})
	p := s.Manual.Procedures[0]
	v := s.JobsOf("../", p, false)
	if len(v.Rows) != 2 || len(v.Measured) != 1 {
		t.Fatalf("%+v", v)
	}
	row := v.Rows[1]
	if row.When != (Link{Name: "2026-04-29 09:00", Address: "../records/a.html"}) || row.Unit != "4" || row.Steps != "2 of 3" || row.Gaps != "1, at step 1.2" || row.Who != "" {
		t.Errorf("%+v", row)
	}
	if got := v.Rows[0].When.Address; got != "../records/deep-a.html" {
		t.Error(got)
	}
	named := s.JobsAt("", s.Manual.Machines[0], true)
	if named.Rows[1].Who != "A.V." || named.Rows[0].Who != "nobody named" || named.Rows[0].Procedure.Address != "procedures/set-gap.html" || !named.Mixed {
		t.Errorf("%+v", named.Rows)
	}
	m := v.Measured[0]
	if m.Title != "gap" || len(m.Rows) != 4 || m.Text != "6 values from 2026-04-29 to 2026-05-01: the least is 0.4, the greatest 0.8 mm. Limit: 0.3 to 0.5 mm. Out of the limit: 2." {
		t.Errorf("%+v", m)
	}
	last := m.Rows[2]
	if last.Values[0] != (PlacedValue{"left", "0,4 mm"}) || last.Limit != "0.3 to 0.5 mm" || last.Verdict != "within the limit" || m.Rows[3].Verdict != "out of the limit, measured again" {
		t.Errorf("%+v", m.Rows)
	}
	if s.JobsOf("", s.Manual.Procedures[0], false) == nil || jobSite(t, nil).JobsOf("", p, false) != nil {
		t.Error("a procedure without jobs shows some")
	}
}

// A record of another revision says so; its own limit judges it, and its values
// are drawn in the unit of the limit that stands: 0.4 mm is 15.748 thou (GNU
// units 2.22), so 16 thou are 0.4064 mm.
func TestJobsOfAnotherRevision(t *testing.T) {
	s := jobSite(t, map[string]string{
		"a.json": aJob(`"revision": ""`, `"revision": "2"`, `"unit": "mm", "low": 0.3, "high": 0.5`, `"unit": "thou", "high": 20`, `"typed": "0,4", "value": 0.4`, `"typed": "16", "value": 16`,
			`"typed": "0.5", "value": 0.5`, `"typed": "17", "value": 17`, `"typed": "0.8", "value": 0.8`, `"typed": "31", "value": 31`),
		"b.json": aJob(`"revision": ""`, `"revision": "2"`, "T08:00", "T08:05", `, "low": 0.3, "high": 0.5`, ""),
		"c.json": aJob("T08:00", "T08:06", `"unit": "mm", "low": 0.3, "high": 0.5`, `"unit": "V dc", "high": 5`),
	})
	v := s.JobsOf("", s.Manual.Procedures[0], false)
	if got := v.Rows[2].Revision; got != "made with revision 2" {
		t.Error(got)
	}
	m := v.Measured[0]
	if !strings.Contains(m.Text, "6 values") || !strings.Contains(m.Text, "the least is 0.4, the greatest 0.8 mm") || !strings.Contains(m.Text, "Out of the limit: 1.") {
		t.Error(m.Text) // the volts are not drawn; of b no limit is known
	}
	verdicts := map[string]int{}
	for _, r := range m.Rows {
		verdicts[r.Verdict+" "+r.Limit]++
	}
	if verdicts["limit not recorded "] != 2 || verdicts["within the limit at most 20 thou"] != 1 || verdicts["out of the limit, measured again at most 20 thou"] != 1 || verdicts["within the limit at most 5 V dc"] != 2 {
		t.Errorf("%v", verdicts)
	}
	if !strings.Contains(string(m.Plot), `<desc id="plot-1-text">6 values`) {
		t.Error(m.Plot)
	}
}

// A note leads to its step as it is now: by the step's name, by its number
// where the words are the same, by its words where they moved.
func TestANoteLeadsToItsStep(t *testing.T) {
	for _, c := range []struct {
		what, step string
		changes    []string
		want       string
	}{
		{"the number of what stands", "1.1", nil, "#s1-1"},
		{"a step that the record itself does not list", "1.2", []string{`"revision": ""`, `"revision": "1"`, `"step": "1.2", "id"`, `"step": "4.7", "id"`}, ""},
		{"the name", "4.7", []string{`"revision": ""`, `"revision": "1"`, `"step": "1.2"`, `"step": "4.7"`}, "#measuring"},
		{"the number, with the same words", "1.3", []string{`"revision": ""`, `"revision": "1"`}, "#s1-3"},
		{"the words, under another number", "9.9", []string{`"revision": ""`, `"revision": "1"`, `"step": "1.3", "id": "s1-3"`, `"step": "9.9", "id": "s9-9"`}, "#s1-3"},
		{"other words, of an earlier revision", "1.3", []string{`"revision": ""`, `"revision": "1"`, "Write it down.", "Burn it."}, ""},
		{"a step that nobody has", "7.7", []string{`"revision": ""`, `"revision": "1"`}, ""},
	} {
		s := jobSite(t, map[string]string{"a.json": aJob(append(note(c.step, "Wrong."), c.changes...)...)})
		said := s.saidOf("../", s.Manual.Procedures[0]).Notes[0]
		if want := c.want; want != "" && said.Step.Address != "../procedures/set-gap.html"+want || want == "" && said.Step.Address != "" {
			t.Errorf("%s: %q, want %q", c.what, said.Step.Address, want)
		}
	}
}

func TestAnswersReachTheirNotes(t *testing.T) {
	records := map[string]string{
		"a.json":      aJob(note("1.2", "The gauge does not reach.")...),
		"b, (1).json": aJob(append(note("1.3", "No paper here."), "2026-04-29", "2026-04-30")...),
		"answers.csv": "record,step,date,answer\na,1.2,2026-05-02,\"There is a long one, on shelf 2.\"\na,1.2,2026-05-05,Not to be seen before its day.\n",
	}
	s := jobSite(t, records)
	notes := s.allSaid("").Notes
	if len(notes) != 2 || notes[0].Words != "No paper here." || notes[0].Line != `"b, (1)",1.3,2026-05-04,""` || notes[0].Record.Address != "records/b-1.html" {
		t.Fatalf("what is open stands first: %+v", notes)
	}
	if a := notes[1].Answers; len(a) != 1 || a[0] != (Answered{"Answer, 2026-05-02:", "There is a long one, on shelf 2."}) || notes[1].Line != "" {
		t.Errorf("%+v", notes[1])
	}
	page := s.Procedure(s.Manual.Procedures[0])
	steps := page.Phases[0].Parts
	if steps[1].Step.Said != "" || steps[2].Step.Said != "Said to be wrong: 1, see the foot of the page" || len(page.Said.Notes) != 2 {
		t.Errorf("an open note is told at its step, an answered one at the foot: %q %q", steps[1].Step.Said, steps[2].Step.Said)
	}
	if s.JobsOf("", s.Manual.Procedures[0], false) == nil {
		t.Error("no jobs")
	}
}

// The page of a record holds everything but names; with leave, those too.
func TestRecordPage(t *testing.T) {
	s := jobSite(t, map[string]string{"a.json": aJob(`"clock": []`, `"clock": [{ "at": "2026-04-29T08:40:00+02:00", "back": 5 }]`)})
	j := s.Counted()[0]
	frame := s.RecordFrame(s.RecordPageOf(j), j)
	text := func(named bool) string { return fmt.Sprintf("%+v", *s.Record(frame, j, named)) }
	for _, want := range []string{"Rig", "unit 4", "begun 2026-04-29 08:00", "saved 2026-04-29 09:00", "Steps done: 2 of 3", "with: Cab", "step 1.2 was ticked before 1.1", "stop still open: Measure: gap",
		"set back by 5 min", "gap: given up 08:15: left 0.8 mm; left 0,4 mm, right 0.5 mm; within the limit; limit 0.3 to 0.5 mm", "does not apply: no paper, 08:20", "release: signed 08:50"} {
		if !strings.Contains(text(false), want) {
			t.Errorf("%q is not on the page: %s", want, text(false))
		}
	}
	for _, name := range []string{"A.V.", "G.M."} {
		if strings.Contains(text(false), name) || !strings.Contains(text(true), name) {
			t.Errorf("%s: on the page without leave, or not on it with leave", name)
		}
	}
}

// What was done by a draft is no page of the published site; the writer is told
// what was said of it all the same.
func TestJobsOfADraft(t *testing.T) {
	s := siteOf(t, map[string]string{
		"procedures/set-gap.md": "---\ntitle: Set the gap\nstatus: draft\n---\n## Work\n\n1. Look.\n",
		"records/a.json":        aJob(append(note("1.1", "Look where?"), `{ "serial": "4", "options": ["cab"] }`, `{ "serial": "", "options": [] }`)...),
	})
	said := s.allSaid("").Notes
	if len(s.Counted()) != 0 || len(said) != 1 || said[0].Record.Address != "" || said[0].Step.Address != "" || said[0].Procedure.Address != "" {
		t.Errorf("%v %+v", s.Counted(), said)
	}
}

// Five hundred jobs stay usable: ten rows stand open, the rest is folded.
func TestManyJobs(t *testing.T) {
	records := map[string]string{}
	for i := range 500 {
		records[fmt.Sprintf("%03d.json", i)] = aJob("2026-04-29", fmt.Sprintf("%d-%02d-%02d", 2000+i/25, i%12+1, i%28+1))
	}
	v := jobSite(t, records).JobsOf("", jobSite(t, records).Manual.Procedures[0], false)
	if v != nil {
		t.Fatal("a procedure of another manual has jobs")
	}
	s := jobSite(t, records)
	v = s.JobsOf("", s.Manual.Procedures[0], false)
	if len(v.Rows) != shownJobs || len(v.Older) != 490 || len(v.Measured[0].Rows) != shownReadings || len(v.Measured[0].Older) != 1000-shownReadings || v.OlderOnes() != "Older ones: 490" {
		t.Errorf("%d and %d jobs, %d and %d values", len(v.Rows), len(v.Older), len(v.Measured[0].Rows), len(v.Measured[0].Older))
	}
	if n := strings.Count(string(v.Measured[0].Plot), "<circle"); n < 900 {
		t.Errorf("%d marks", n)
	}
}
