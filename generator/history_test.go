package generator_test

import (
	"slices"
	"strings"
	"testing"
	"time"

	"baybinder/generator"
	"baybinder/generator/derive/training"
	"baybinder/generator/language"
	"baybinder/generator/model"
	"baybinder/generator/read/record"
)

// The demo is a shop two years on: all is issued and its words are kept, people
// came and went, roles were gained and ran out, working with locks is inspected,
// jobs were done by people who were fit for them on the day.
func TestTheDemoHasAPast(t *testing.T) {
	t.Parallel()
	m := demo(t).Manual
	staff := training.NewStandings(m, demoDay)

	revised := 0
	for _, p := range m.Procedures {
		a := staff.Account(p)
		if a.Stood == nil || a.Words != training.AsIssued {
			t.Errorf("%s: issued %v, words %q", p.ID, a.Stood != nil, a.Words)
			continue
		}
		if a.Stood.Number != "1" {
			revised++
		}
	}
	first, last := m.Revisions[0].Date, m.Revisions[len(m.Revisions)-1].Date
	if days := last.Time().Sub(first.Time()).Hours() / 24; days < 700 || revised < 10 {
		t.Errorf("revisions from %s to %s, of %d procedures more than one", first, last, revised)
	}

	gone := slices.DeleteFunc(slices.Clone(m.People), func(p *model.Person) bool {
		return len(p.Left) == 0 || !p.Left[len(p.Left)-1].Back.IsZero()
	})
	if len(m.People) != 10 || len(gone) != 2 {
		t.Errorf("%d people, %d of whom left", len(m.People), len(gone))
	}
	acts := map[string]int{}
	for _, r := range m.Record {
		acts[r.Act]++
	}
	for _, a := range m.Awards {
		acts[a.Act]++
	}
	for _, act := range []string{"read", "watched", "performed", "told", "inspected", "gained", "renewed", "withdrawn"} {
		if acts[act] == 0 {
			t.Errorf("nobody was ever %s", act)
		}
	}
	for _, i := range staff.Inspections() {
		if i.State != training.Due {
			t.Errorf("%s is to be inspected by %s", i.What.Base().ID, i.By)
		}
	}
	jobs := record.Counted(m.Jobs, demoDay)
	if len(jobs) < 4 {
		t.Errorf("%d jobs", len(jobs))
	}
	for _, j := range jobs {
		if fit := staff.Fitness(j); !fit.UpToDate() || slices.ContainsFunc(fit.Workers, func(w training.Worker) bool { return w.Person == nil }) {
			t.Errorf("%s: %q", j.Name, fit.Marks(&language.Default().Readings.Marks))
		}
	}
}

// What time brings: who was away when a wait became longer comes back to a
// reading that is stale and a role that ran out, and nothing else is told.
func TestTheDemoLaterInTheYear(t *testing.T) {
	t.Parallel()
	r, err := generator.Check(generator.Options{Manual: "../content", Today: model.Date{Year: 2026, Month: time.November, Day: 25}})
	must(t, err)
	var got []string
	for _, f := range r.Findings {
		got = append(got, f.Code)
		if !strings.Contains(f.Message, "C.N.") {
			t.Errorf("%s [%s]", f.Message, f.Code)
		}
	}
	slices.Sort(got)
	if want := []string{"reading-stale", "role-expired"}; !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}

// Evidence stands on the pages that name people: who answers for a revision, who
// was seen to work by it and what was found, what was taken away and why.
func TestTheEvidenceOfTheDemo(t *testing.T) {
	t.Parallel()
	_, readings, _ := withReadings(t, "../content")
	folder := unparted(pages(t, readings))
	for page, want := range map[string][]string{
		"procedures/isolate-tug-traction.html": {
			"By its capacitors and resistors the circuit is below 5 V after 10 min, not after 5.", "read it again",
			"Nothing to change: the wait of 10 min is kept.", "To be inspected by 2027-04-30.",
		},
		"procedures/isolate-compressor.html": {"2 es", "As the English text: 20 min."},
		"procedures/change-drive-wheel.html": {"need not know"},
		"people/g-m.html":                    {"withdrawn on 2026-04-15: It ran out on 14 April: no charging before the next course."},
		"people/b-k.html":                    {"Watched"},
		"index.html":                         {"acts left"},
	} {
		for _, words := range want {
			if !strings.Contains(string(folder[page]), words) {
				t.Errorf("%s does not say %q", page, words)
			}
		}
	}
	for _, gone := range []string{">B.K.<", ">E.R.<", ">C.N.<"} {
		if strings.Contains(string(folder["matrix.html"]), gone) {
			t.Errorf("the matrix has %s, who is not there", gone)
		}
	}
}
