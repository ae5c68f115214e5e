package procedure

import (
	"testing"

	"baybinder/generator/show/jobs"
	"baybinder/generator/show/page/pagetest"
)

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
		s := recordedSite(t, map[string]string{"a.json": pagetest.Job(append(pagetest.Note(c.step, "Wrong."), c.changes...)...)})
		said := s.SaidOf("../", s.Manual.Procedures[0]).Notes[0]
		if want := c.want; want != "" && said.Step.Address != "../procedures/set-gap.html"+want || want == "" && said.Step.Address != "" {
			t.Errorf("%s: %q, want %q", c.what, said.Step.Address, want)
		}
	}
}

func TestAnswersReachTheirNotes(t *testing.T) {
	records := map[string]string{
		"a.json":      pagetest.Job(pagetest.Note("1.2", "The gauge does not reach.")...),
		"b, (1).json": pagetest.Job(append(pagetest.Note("1.3", "No paper here."), "2026-04-29", "2026-04-30")...),
		"answers.csv": "record,step,date,answer\na,1.2,2026-05-02,\"There is a long one, on shelf 2.\"\na,1.2,2026-05-05,Not to be seen before its day.\n",
	}
	s := recordedSite(t, records)
	notes := s.AllSaid("").Notes
	if len(notes) != 2 || notes[0].Words != "No paper here." || notes[0].Line != `"b, (1)",1.3,2026-05-04,""` || notes[0].Record.Address != "records/b-1.html" {
		t.Fatalf("what is open stands first: %+v", notes)
	}
	if a := notes[1].Answers; len(a) != 1 || a[0] != (jobs.Answered{Head: "Answer, 2026-05-02:", Words: "There is a long one, on shelf 2."}) || notes[1].Line != "" {
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
