package record

import (
	"os"
	"strings"
	"testing"
	"unicode/utf8"

	"baybinder/generator/base/position"
)

// whole is a record as the page saves it, with every field that it may write.
func whole(t testing.TB) string {
	t.Helper()
	text, err := os.ReadFile("testdata/whole.json")
	if err != nil {
		t.Fatal(err)
	}
	return string(text)
}

func TestReadsWhatThePageSaves(t *testing.T) {
	f := position.NewFile("records/2026/job.json", whole(t))
	j, found := NewReader().Read(f)
	if len(found) > 0 {
		t.Fatal(found)
	}
	if j.Name != "2026/job" || j.Procedure != "isolate-tug-traction" || j.Unit.Serial != "112" || len(j.Steps) != 3 || len(j.Gaps) != 1 || j.Clock[0].Back != 30 || len(j.HandOvers) != 1 || j.HandOvers[0].Locks != "17, 18" || j.HandOvers[0].To != "A.V." {
		t.Errorf("%+v", j)
	}
	if got := j.Day().String(); got != "2026-05-04" {
		t.Errorf("saved 00:30 at the bay, 22:30 of the day before in UTC: the day is %s", got)
	}
	h := j.Holds[1]
	if h.Low != nil || *h.High != 5 || *h.Values[0].Value != 0.4 || *h.Failed[0].Values[0].Value != 6.1 {
		t.Errorf("%+v", h)
	}
	for what, at := range map[string]position.Pos{
		`"isolate-tug-traction"`: j.ProcedureAt, `"A.V."`: j.WorkerAt, `"112"`: j.Unit.SerialAt, `"lithium"`: j.Unit.OptionsAt[0],
		`"1.2"`: j.Steps[1].Place, `"traction-dead"`: h.Place, "0.4": h.ValuesAt[0],
	} {
		if at.Text() != what {
			t.Errorf("the place of %s holds %s", what, at.Text())
		}
	}
}

// Any cut of a record is told, at the place where it breaks off, and nothing of
// it counts.
func TestACutRecordIsTold(t *testing.T) {
	text, r := strings.TrimRight(whole(t), "\n"), NewReader()
	for n := range len(text) {
		if !utf8.ValidString(text[:n]) {
			continue
		}
		j, found := r.Read(position.NewFile("records/cut.json", text[:n]))
		if j != nil || len(found) != 1 || found[0].Code != "syntax" || found[0].At.Start < len(strings.TrimRight(text[:n], " \n"))-1 {
			t.Fatalf("cut at %d of %d: %v %v", n, len(text), j, found)
		}
	}
}

// A time of a year before the calendar's first whole one is a slip, wherever it
// stands; one of any year after is not.
func TestTimesOfNoYearAreTold(t *testing.T) {
	for year, want := range map[string]string{"0000-": "wrong-type", "0026-": "wrong-type", "1582-": "wrong-type", "1583-": "", "2026-": ""} {
		text := strings.Replace(whole(t), "2026-", year, 1)
		j, found := NewReader().Read(position.NewFile("records/x.json", text))
		got := ""
		if len(found) == 1 && text[found[0].At.Start:found[0].At.Start+6] == `"`+year {
			got = found[0].Code
		}
		if got != want || (j == nil) != (want != "") || len(found) > 1 {
			t.Errorf("%s: %v %v", year, j, found)
		}
	}
}

func FuzzRead(f *testing.F) {
	f.Add(whole(f))
	for _, hostile := range []string{
		"", "null", "[]", "{}", "{", `{"record":1}`, `{"record":2}`, `{"record":1,"record":1}`, strings.Repeat("[", 10_000), strings.Repeat(`{"a":`, 10_000),
		`{"steps":[{"step":"1.1","at":"2026-12-31T23:59:60Z"}]}`, `{"a/b":{"#":1},"":{"":[]}}`, "{\"\\u0000\":\"\\ud800\"}", "1 2", `{"a":1e999}`,
	} {
		f.Add(hostile)
	}
	for _, swap := range [][2]string{{`"met": true`, `"met": 1`}, {"2026-05-04", "2026-02-30"}, {`"back": 30`, `"back": 30.0`}, {`"back": 30`, `"back": 1e30`}, {"6.1", "-0"}, {":30:00", ":59:60"}} {
		f.Add(strings.ReplaceAll(whole(f), swap[0], swap[1]))
	}
	r := NewReader()
	f.Fuzz(func(t *testing.T, text string) {
		if !utf8.ValidString(text) || len(text) > 1<<16 {
			t.Skip() // what is not UTF-8 is not read at all
		}
		j, found := r.Read(position.NewFile("records/x.json", text))
		if (j == nil) != (len(found) > 0) {
			t.Fatalf("a job and findings: %v %v", j, found)
		}
		for _, x := range found {
			if at := x.At; at.File == nil || at.Start < 0 || at.End < at.Start || at.End > len(at.File.Text) {
				t.Errorf("%s stands at %d to %d", x.Message, x.At.Start, x.At.End)
			}
			if x.Message == "" || strings.Contains(x.Message+x.Mend, "%!") {
				t.Errorf("the words of %s are %q", x.Code, x.Message)
			}
		}
		if j != nil && (len(j.Unit.Options) != len(j.Unit.OptionsAt) || j.File == nil) {
			t.Errorf("%+v", j)
		}
	})
}
