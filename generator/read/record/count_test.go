package record

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"baybinder/generator/model"
)

func day(text string) model.Date {
	d, ok := model.ParseDate(text)
	if !ok {
		panic(text)
	}
	return d
}

func at(text string) time.Time {
	t, err := time.Parse(time.RFC3339, text)
	if err != nil {
		panic(err)
	}
	return t
}

func names(jobs []*model.Job) string {
	var out []string
	for _, j := range jobs {
		out = append(out, j.Name)
	}
	return strings.Join(out, " ")
}

func TestCounted(t *testing.T) {
	p := &model.Procedure{Entry: model.Entry{ID: "swap"}}
	job := func(name, started, saved string) *model.Job {
		return &model.Job{Name: name, Procedure: "swap", To: p, Started: at(started), Saved: at(saved)}
	}
	first := job("first", "2026-04-02T08:00:00+02:00", "2026-04-02T09:00:00+02:00")
	middle := job("middle", "2026-05-01T08:00:00+02:00", "2026-05-01T09:00:00+02:00")
	whole := job("whole", "2026-05-01T06:00:00Z", "2026-05-01T10:00:00+02:00") // the same start, written otherwise
	old := job("by-an-earlier-id", "2026-05-02T08:00:00+02:00", "2026-05-02T09:00:00+02:00")
	old.Procedure = "swap-it"
	other := job("other-unit", "2026-05-01T08:00:00+02:00", "2026-05-03T10:00:00+02:00")
	other.Unit.Serial = "7"
	late := job("late", "2026-11-25T23:30:00-05:00", "2026-11-25T23:50:00-05:00") // the 26th in UTC
	all := []*model.Job{late, other, whole, middle, old, first}
	for today, want := range map[string]string{
		"2026-04-01": "", "2026-04-02": "first", "2026-05-01": "first whole", "2026-05-04": "first whole by-an-earlier-id other-unit",
		"2026-11-24": "first whole by-an-earlier-id other-unit", "2026-11-25": "first whole by-an-earlier-id other-unit late",
	} {
		if got := names(Counted(all, day(today))); got != want {
			t.Errorf("on %s: %s, want %s", today, got, want)
		}
	}
}

// The auditor's question: on a day, which jobs used which revision.
func TestUsed(t *testing.T) {
	p, q := &model.Procedure{Entry: model.Entry{ID: "swap"}}, &model.Procedure{Entry: model.Entry{ID: "sweep"}}
	ref := func(p *model.Procedure) model.Ref[model.Procedure] {
		return model.Ref[model.Procedure]{ID: p.ID, To: p}
	}
	m := &model.Manual{Revisions: []model.Revision{
		{Procedure: ref(p), Number: "1", Date: day("2026-03-01"), Fingerprint: "1-a"},
		{Procedure: ref(q), Number: "9", Date: day("2026-03-01"), Fingerprint: "1-q"},
		{Procedure: ref(p), Number: "2", Date: day("2026-05-02"), Fingerprint: "1-b"},
	}}
	job := func(revision, print, when string) {
		m.Jobs = append(m.Jobs, &model.Job{Name: when, Procedure: "swap", To: p, Revision: revision, Fingerprint: print, Started: at(when + "T08:00:00Z"), Saved: at(when + "T09:00:00Z")})
	}
	job("", "", "2026-02-01")
	job("1", "", "2026-04-01")
	job("1", "1-a", "2026-05-02") // begun on the day of the second, with the first
	job("2", "1-b", "2026-05-03")
	job("2", "1-x", "2026-05-04") // of that number, and other words
	m.Jobs = append(m.Jobs, &model.Job{Procedure: "sweep", To: q, Revision: "9", Saved: at("2026-04-01T09:00:00Z")})
	lines := func(today string) string {
		var out []string
		for _, u := range Used(m, p, day(today)) {
			out = append(out, fmt.Sprintf("%s:%s/%s/%t/%t/%t", u.Job.Name[5:], u.Revision, u.Fingerprint, u.Issued != nil, u.Old(), Current(m, u.Job, day(today))))
		}
		return strings.Join(out, " ")
	}
	for today, want := range map[string]string{
		"2026-02-01": "02-01://false/false/true",
		"2026-04-01": "02-01://false/false/false 04-01:1/1-a/true/false/true",
		"2026-05-04": "02-01://false/false/false 04-01:1/1-a/true/false/false 05-02:1/1-a/true/true/false 05-03:2/1-b/true/false/true 05-04:2/1-x/true/true/false",
	} {
		if got := lines(today); got != want {
			t.Errorf("on %s:\n%s\nwant\n%s", today, got, want)
		}
	}
}

func TestWithin(t *testing.T) {
	n := func(v float64) *float64 { return &v }
	for _, c := range []struct {
		v         float64
		low, high *float64
		want      bool
	}{
		{5, nil, n(5), true}, {5.0001, nil, n(5), false}, {2, n(2), nil, true}, {1.9999, n(2), nil, false}, {0, nil, n(0), true}, {0.01, nil, n(0), false},
		{0.1 + 0.2, n(0.3), n(0.3), true}, {-3, n(-3), n(-1), true}, {-3.1, n(-3), n(-1), false}, {1e9, nil, nil, true},
	} {
		if got := Within(c.v, c.low, c.high); got != c.want {
			t.Errorf("%v within %v: %t", c.v, c, got)
		}
	}
}

// A job was done with what stands on a day where it says that revision, by its words
// or, saved without them, by its number; before any was issued, where it says none; of
// a procedure that is not there never.
func TestCurrent(t *testing.T) {
	p := &model.Procedure{Entry: model.Entry{ID: "swap"}}
	m := &model.Manual{Revisions: []model.Revision{
		{Procedure: model.Ref[model.Procedure]{ID: "swap", To: p}, Number: "1", Date: day("2026-05-01"), Fingerprint: "1-a"},
		{Procedure: model.Ref[model.Procedure]{ID: "swap", To: p}, Number: "2", Date: day("2026-06-01"), Fingerprint: "1-b"},
	}}
	for _, c := range []struct {
		job  model.Job
		on   string
		want bool
	}{
		{model.Job{To: p}, "2026-04-30", true},
		{model.Job{To: p, Revision: "1", Fingerprint: "1-a"}, "2026-04-30", false},
		{model.Job{To: p, Revision: "1", Fingerprint: "1-a"}, "2026-05-01", true},
		{model.Job{To: p, Revision: "1"}, "2026-05-31", true},
		{model.Job{To: p, Revision: "1", Fingerprint: "1-c"}, "2026-05-31", false},
		{model.Job{To: p, Revision: "1", Fingerprint: "1-a"}, "2026-06-01", false},
		{model.Job{To: p, Revision: "2", Fingerprint: "1-b"}, "2026-06-01", true},
		{model.Job{Procedure: "gone"}, "2026-04-30", false},
	} {
		if got := Current(m, &c.job, day(c.on)); got != c.want {
			t.Errorf("revision %q, %q, on %s: %t", c.job.Revision, c.job.Fingerprint, c.on, got)
		}
	}
}
