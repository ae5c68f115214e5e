package jobs

import (
	"fmt"
	"strings"
	"testing"

	"baybinder/generator/show/page/pagetest"

	"baybinder/generator/show/page"
)

func TestJobsOfAProcedureAndAMachine(t *testing.T) {
	s := recordedSite(t, map[string]string{
		"a.json":      pagetest.Job(),
		"deep/a.json": pagetest.Job("2026-04-29", "2026-05-01", `"set-gap"`, `"gap-setting"`, `"worker": "A.V."`, `"worker": ""`),
		"later.json":  pagetest.Job("2026-04-29", "2026-05-05"), // the day after the site's
	})
	p := s.Manual.Procedures[0]
	v := s.JobsOf("../", p, false)
	if len(v.Rows) != 2 || len(v.Measured) != 1 {
		t.Fatalf("%+v", v)
	}
	row := v.Rows[1]
	if row.When != (page.Link{Name: "2026-04-29 09:00", Address: "../records/a.html"}) || row.Unit != "4" || page.Unworked(row.Steps) != "2 of 3" || page.Unworked(row.Gaps) != "1, at step 1.2" || row.Who != "" {
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
	if m.Title != "gap" || len(m.Rows) != 4 || page.Unworked(m.Text) != "6 values from 2026-04-29 to 2026-05-01: the least is 0.4, the greatest 0.8 mm. Limit: 0.3 to 0.5 mm. Out of the limit: 2." {
		t.Errorf("%+v", m)
	}
	last := m.Rows[2]
	if last.Values[0] != (PlacedValue{"left", "0,4 mm"}) || last.Limit != "0.3 to 0.5 mm" || last.Verdict != "within the limit" || m.Rows[3].Verdict != "out of the limit, measured again" {
		t.Errorf("%+v", m.Rows)
	}
	if s.JobsOf("", s.Manual.Procedures[0], false) == nil || recordedSite(t, nil).JobsOf("", p, false) != nil {
		t.Error("a procedure without jobs shows some")
	}
}

// A record of another revision says so; its own limit judges it, and its values
// are drawn in the unit of the limit that stands: 0.4 mm is 15.748 thou (GNU
// units 2.22), so 16 thou are 0.4064 mm.
func TestJobsOfAnotherRevision(t *testing.T) {
	s := recordedSite(t, map[string]string{
		"a.json": pagetest.Job(`"revision": ""`, `"revision": "2"`, `"unit": "mm", "low": 0.3, "high": 0.5`, `"unit": "thou", "high": 20`, `"typed": "0,4", "value": 0.4`, `"typed": "16", "value": 16`,
			`"typed": "0.5", "value": 0.5`, `"typed": "17", "value": 17`, `"typed": "0.8", "value": 0.8`, `"typed": "31", "value": 31`),
		"b.json": pagetest.Job(`"revision": ""`, `"revision": "2"`, "T08:00", "T08:05", `, "low": 0.3, "high": 0.5`, ""),
		"c.json": pagetest.Job("T08:00", "T08:06", `"unit": "mm", "low": 0.3, "high": 0.5`, `"unit": "V dc", "high": 5`),
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

// The page of a record holds everything but names; with leave, those too.
func TestRecordPage(t *testing.T) {
	s := recordedSite(t, map[string]string{"a.json": pagetest.Job(`"clock": []`, `"clock": [{ "at": "2026-04-29T08:40:00+02:00", "back": 5 }]`)})
	j := s.Counted()[0]
	frame := s.RecordFrame(s.RecordPageOf(j), j)
	text := func(named bool) string { return page.Unworked(fmt.Sprintf("%+v", *s.Record(frame, j, named))) }
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
		"records/a.json":        pagetest.Job(append(pagetest.Note("1.1", "Look where?"), `{ "serial": "4", "options": ["cab"] }`, `{ "serial": "", "options": [] }`)...),
	})
	said := s.AllSaid("").Notes
	if len(s.Counted()) != 0 || len(said) != 1 || said[0].Record.Address != "" || said[0].Step.Address != "" || said[0].Procedure.Address != "" {
		t.Errorf("%v %+v", s.Counted(), said)
	}
}

// Five hundred jobs stay usable: ten rows stand open, the rest is folded.
func TestManyJobs(t *testing.T) {
	records := map[string]string{}
	for i := range 500 {
		records[fmt.Sprintf("%03d.json", i)] = pagetest.Job("2026-04-29", fmt.Sprintf("%d-%02d-%02d", 2000+i/25, i%12+1, i%28+1))
	}
	v := recordedSite(t, records).JobsOf("", recordedSite(t, records).Manual.Procedures[0], false)
	if v != nil {
		t.Fatal("a procedure of another manual has jobs")
	}
	s := recordedSite(t, records)
	v = s.JobsOf("", s.Manual.Procedures[0], false)
	if len(v.Rows) != shownJobs || len(v.Older) != 490 || len(v.Measured[0].Rows) != shownReadings || len(v.Measured[0].Older) != 1000-shownReadings || v.OlderOnes() != "Older ones: 490" {
		t.Errorf("%d and %d jobs, %d and %d values", len(v.Rows), len(v.Older), len(v.Measured[0].Rows), len(v.Measured[0].Older))
	}
	if n := strings.Count(string(v.Measured[0].Plot), "<circle"); n < 900 {
		t.Errorf("%d marks", n)
	}
}
