package training

import (
	"bytes"
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"unicode/utf8"

	"pgregory.net/rapid"

	"baybinder/generator/base/needed"
	"baybinder/generator/model"
)

// Known: SEEN, FROM MEMORY.

// told is what the npm package ical.js reads in a calendar.
type told struct {
	Faults []string
	Events []struct {
		UID, Summary, Day, Transp string
		Whole                     bool
		Days                      float64
		Alarms                    []struct {
			Action, Text string
			Before       float64 // days
		}
	}
}

func icalJS(t *testing.T, text string) told {
	t.Helper()
	folder, err := filepath.Abs(filepath.Join("..", "..", "..", ".ci", "node_modules"))
	if err != nil {
		t.Fatal(err)
	}
	_, err = os.Stat(filepath.Join(folder, "ical.js"))
	needed.Judge(t, err == nil, "ical.js")
	name := filepath.Join(t.TempDir(), "due.ics")
	if err := os.WriteFile(name, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	out, err := exec.Command("node", filepath.Join("testdata", "calendar.mjs"), folder, name).CombinedOutput()
	var read told
	if err != nil || json.Unmarshal(out, &read) != nil {
		t.Fatalf("ical.js did not run: %v\n%s", err, out)
	}
	return read
}

func calendarOf(t *testing.T, items []Item) string {
	t.Helper()
	var out bytes.Buffer
	if err := ICal(&out, items, on("2026-05-04")); err != nil {
		t.Fatal(err)
	}
	return out.String()
}

func itemCalled(name string) Item {
	return Item{
		Person: &model.Person{Entry: model.Entry{ID: "t-01"}, Name: "First"}, Act: "read", State: Due, By: on("2028-02-29"),
		What: &model.Procedure{Title: name, Entry: model.Entry{ID: "long"}},
	}
}

// An unrelated reader finds in the calendar what was written, whatever the
// names hold.
func TestCalendarAgainstICalJS(t *testing.T) {
	names := []string{
		"Lid off", `a, b; c \ d: "e"`, `back\nslash, not a line`, "ends in a backslash \\", strings.Repeat("ü", 200), strings.Repeat("€𝛀", 60),
		"BEGIN:VEVENT", " leading and trailing ", strings.Repeat("x", 74), strings.Repeat("x", 75) + " y", "日本語の手順書、" + strings.Repeat("長", 50), "a\tb",
	}
	var items []Item
	for _, n := range names {
		i := itemCalled(n)
		i.What.Base().ID = n // so that each has a UID of its own
		items = append(items, i)
	}
	read := icalJS(t, calendarOf(t, items))
	if len(read.Faults) > 0 || len(read.Events) != len(names) {
		t.Fatalf("%d events of %d, and %v", len(read.Events), len(names), read.Faults)
	}
	seen := map[string]bool{}
	for i, e := range read.Events {
		if want := "First: read " + names[i] + " (due)"; e.Summary != want {
			t.Errorf("it reads %q, want %q", e.Summary, want)
		}
		if e.Day != "2028-02-29" || !e.Whole || e.Days != 1 || e.Transp != "TRANSPARENT" || seen[e.UID] {
			t.Errorf("%+v", e)
		}
		if len(e.Alarms) != 1 || e.Alarms[0].Action != "DISPLAY" || e.Alarms[0].Before != 7 || e.Alarms[0].Text != "First: read "+names[i] {
			t.Errorf("alarms: %+v", e.Alarms)
		}
		seen[e.UID] = true
	}
}

// A review is a day of nobody's: the reader finds it beside what people do, with
// a UID of its own.
func TestReviewInTheCalendar(t *testing.T) {
	review := itemCalled("Lid off")
	review.Person, review.Act = nil, "review"
	read := icalJS(t, calendarOf(t, []Item{itemCalled("Lid off"), review}))
	if len(read.Faults) > 0 || len(read.Events) != 2 || read.Events[1].Summary != "review Lid off (due)" || read.Events[1].Day != "2028-02-29" || read.Events[0].UID == read.Events[1].UID {
		t.Errorf("%+v", read)
	}
}

// The reader is one that objects: to a calendar cut short, to a line that was
// broken without a fold, and to an event without what it must have.
func TestICalJSObjects(t *testing.T) {
	good := calendarOf(t, []Item{itemCalled(strings.Repeat("long ", 30))})
	for name, bad := range map[string]string{
		"cut short":   good[:len(good)/2],
		"not folded":  strings.Replace(good, "\r\n ", "\r\n", 1),
		"no UID":      strings.Replace(good, "UID:", "X-UID:", 1),
		"no trigger":  strings.Replace(good, "TRIGGER:", "X-TRIGGER:", 1),
		"no PRODID":   strings.Replace(good, "PRODID:", "X-PRODID:", 1),
		"local stamp": strings.Replace(good, "T000000Z", "T000000", 1),
	} {
		if read := icalJS(t, bad); len(read.Faults) == 0 {
			t.Errorf("%s: it has no objection", name)
		}
	}
}

// The folded line that RFC 5545, 3.1, shows is the long one cut anywhere, with
// a space before what follows; unfolding takes both away. The text that
// 3.3.11 shows has its line ends written as \n. Both from memory of the RFC.
func TestFoldingAndEscapingOfTheRFC(t *testing.T) {
	unfold := func(text string) string { return strings.ReplaceAll(text, "\r\n ", "") }
	const long = "DESCRIPTION:This is a long description that exists on a long line."
	if got := unfold("DESCRIPTION:This is a lo\r\n ng description\r\n  that exists on a long line."); got != long {
		t.Fatalf("the test unfolds wrongly: %q", got)
	}
	if got := escaped("Project XYZ Final Review\nConference Room - 3B\nCome Prepared."); got != `Project XYZ Final Review\nConference Room - 3B\nCome Prepared.` {
		t.Errorf("3.3.11: %q", got)
	}
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringMatching(`[ -~ü€𝛀]{0,300}`).Draw(t, "text")
		var out bytes.Buffer
		c := &calendar{w: &out}
		c.line("X:" + text)
		if got := unfold(out.String()); got != "X:"+text+"\r\n" {
			t.Fatalf("unfolded it is %q", got)
		}
		for line := range strings.SplitSeq(strings.TrimSuffix(out.String(), "\r\n"), "\r\n") {
			if len(line) > 75 || !utf8.ValidString(line) {
				t.Fatalf("%d octets: %q", len(line), line)
			}
		}
	})
}
