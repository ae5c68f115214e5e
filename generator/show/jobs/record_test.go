package jobs

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"baybinder/generator/model"
	"baybinder/generator/show/page"
	"baybinder/generator/show/page/pagetest"
)

// A record is judged by the part of the limit that it brought along: both ends
// are near, beyond it is within, and out of the limit is out whatever is near.
func TestNearTheLimitInARecord(t *testing.T) {
	for values, want := range map[string]string{
		"0.45, 0.4": "near the limit, again in 3 months", "0.4, 0.5": "near the limit, again in 3 months",
		"0.44, 0.4": "within the limit", "0.45, 0.6": "out of the limit",
	} {
		left, right, _ := strings.Cut(values, ", ")
		s := recordedSite(t, map[string]string{"a.json": pagetest.Job(
			`"low": 0.3, "high": 0.5`, `"low": 0.3, "high": 0.5, "near": { "low": 0.45, "high": 0.5, "again": "3 months" }`,
			`"typed": "0,4", "value": 0.4`, `"typed": "`+left+`", "value": `+left, `"typed": "0.5", "value": 0.5`, `"typed": "`+right+`", "value": `+right)})
		if got := s.JobsOf("", s.Manual.Procedures[0], false).Measured[0].Rows[0].Verdict; got != want {
			t.Errorf("%s: %q, want %q", values, got, want)
		}
		record := s.Record(page.Frame{}, s.Manual.Jobs[0], false)
		if text := fmt.Sprint(record.Steps); !strings.Contains(text, want) {
			t.Errorf("%s: the record says %s", values, text)
		}
	}
}

// A record says where a step or a wait ended later than it should.
func TestLateIsToldInARecord(t *testing.T) {
	s := recordedSite(t, nil)
	j := &model.Job{Started: at("2026-04-29T08:00:00Z"), Steps: []model.JobStep{
		{Number: "1.1", State: "done", At: at("2026-04-29T08:20:00Z"), Latest: at("2026-04-29T08:15:00Z"), Late: true},
		{Number: "1.2", State: "done", At: at("2026-04-29T08:25:00Z"), Latest: at("2026-04-29T08:30:00Z")},
	}, Holds: []model.JobHold{{Step: "1.2", Hold: "cure", Kind: "wait", Met: true, Latest: at("2026-04-29T08:24:00Z"), Late: true}}}
	steps := s.Record(page.Frame{}, j, false).Steps
	if got := steps[0].State; got != "done, 08:20; later than 08:15, when it was due" {
		t.Error(got)
	}
	if got := steps[1].State + " " + steps[1].Holds[0]; got != "done, 08:25 cure: over; later than 08:24, when it was due" {
		t.Error(got)
	}
}

func at(text string) time.Time {
	t, err := time.Parse(time.RFC3339, text)
	if err != nil {
		panic(err)
	}
	return t
}
