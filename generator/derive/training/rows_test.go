package training

import (
	"slices"
	"strings"
	"testing"

	"baybinder/generator/model"
)

// The expectations follow the format's "People and roles over time"; each names
// the sentence.

// "Twice the same row is record-twice, save performed: a plan counts how often."
// Any column that differs makes another row of it; where it was read from does not.
func TestTheSameRowTwice(t *testing.T) {
	whole := Entry{Person: "t-01", Procedure: "alone", Act: "taught", By: "t-02", On: "x", Language: "es", Score: "9", Note: "n", Date: on("2026-02-01"), Where: "a.csv:2"}
	m := shop("readings/people.csv", early, "readings/record.csv", "date,person,procedure,act,fingerprint,by,on,language,score,note\n2026-02-01,t-01,alone,taught,"+print(shop(), "alone")+",t-02,x,es,9,n\n")
	empty := shop("readings/people.csv", early)
	for name, change := range map[string]func(e *Entry){
		"":          func(e *Entry) { e.Where = "a.csv:3" },
		"date":      func(e *Entry) { e.Date = on("2026-02-02") },
		"person":    func(e *Entry) { e.Person, e.By = "t-02", "" },
		"procedure": func(e *Entry) { e.Procedure = "sweep" },
		"act":       func(e *Entry) { e.Act = "told" },
		"by":        func(e *Entry) { e.By = "" },
		"on":        func(e *Entry) { e.On = "y" },
		"language":  func(e *Entry) { e.Language = "" },
		"score":     func(e *Entry) { e.Score = "8" },
		"note":      func(e *Entry) { e.Note = "" },
		"performed": func(e *Entry) { e.Act = "performed" },
	} {
		again := whole
		change(&again)
		for where, m := range map[string]*model.Manual{"in the record": m, "among the new": empty} {
			entries := []Entry{whole, again}
			done, err := Prepare(m, entries)
			if err != nil {
				t.Fatal(name, err)
			}
			if got := done[1].Twice; got != (name == "") {
				t.Errorf("another %q, %s: twice is %v", name, where, got)
			}
		}
	}
}

// What cannot have been is told of every row, and the rows behind it are looked at
// all the same.
func TestEveryWrongRowIsTold(t *testing.T) {
	row := func(person, procedure, where string) Entry {
		return Entry{Person: person, Procedure: procedure, Act: "read", Date: on("2026-03-02"), Where: where}
	}
	done, err := Prepare(shop("readings/people.csv", early), []Entry{
		row("t-01", "alone", "a.csv:2"), row("t-99", "alone", "a.csv:3"), row("t-02", "alone", "a.csv:4"), row("t-01", "nothing", "a.csv:5"),
	})
	if len(done) != 2 || err == nil || !strings.Contains(err.Error(), "a.csv:3") || !strings.Contains(err.Error(), "a.csv:5") {
		t.Errorf("%d rows can be recorded, %v", len(done), err)
	}
}

// "A reading is recorded as the last issued revision" (the package's own rule), and
// of what was never issued as what stands.
func TestAsWhatAReadingIsRecorded(t *testing.T) {
	const one, two = "1-1111111111111111", "1-2222222222222222"
	row := func(n, day, print string) string {
		return "alone," + n + "," + day + "," + print + ",why,a,b,,,reread\n"
	}
	for rows, want := range map[string]string{
		"":                          print(shop(), "alone"),
		row("1", "2026-01-02", one): one,
		row("1", "2026-01-02", one) + row("2", "2026-02-01", two): two,
		row("1", "2026-01-02", one) + row("2", "2026-04-01", two): one, // issued later than the reading
	} {
		m := shop("readings/people.csv", early, "revisions.csv", revs+rows)
		done, err := Prepare(m, []Entry{{Person: "t-01", Procedure: "alone", Act: "read", Date: on("2026-03-01")}})
		if err != nil || done[0].Fingerprint != want {
			t.Errorf("of %q it is recorded as %v, %v, want %s", rows, done, err, want)
		}
	}
}

// Who is not in the list is told with whom may be meant, or with what to do.
func TestWhoIsNotInTheList(t *testing.T) {
	m := shop("readings/people.csv", "person,name,roles,started,plans\nanna,Anna,,2026-01-01,\n")
	for person, want := range map[string]string{"annna": "did you mean anna?", "xyzzyplugh": "add a row with that id first"} {
		_, err := Prepare(m, []Entry{{Person: person, Procedure: "alone", Act: "read", Date: on("2026-03-01")}})
		if err == nil || !strings.HasSuffix(err.Error(), want) {
			t.Errorf("%s: %v, want %q", person, err, want)
		}
	}
	for id, want := range map[string]string{"alonee": "did you mean alone?", "xyzzyplugh": "there is no procedure xyzzyplugh"} {
		_, err := Prepare(m, []Entry{{Person: "anna", Procedure: id, Act: "read", Date: on("2026-03-01")}})
		if err == nil || !strings.HasSuffix(err.Error(), want) {
			t.Errorf("%s: %v, want %q", id, err, want)
		}
	}
}

// Rows of a file: what a cell leaves open is as in all; the error says file and line.
func TestRowsFromAFile(t *testing.T) {
	all := Entry{Act: "read", Date: on("2026-03-02"), By: "t-02"}
	got, err := From("rows.csv", []byte("\ufeffprocedure, person ,date,note,fingerprint\nalone,t-01,2026-03-01,x,\n,,,,\nsweep, t-03 \n"), all)
	want := []Entry{
		{Person: "t-01", Procedure: "alone", Act: "read", By: "t-02", Note: "x", Date: on("2026-03-01"), Where: "rows.csv:2"},
		{Person: "t-03", Procedure: "sweep", Act: "read", By: "t-02", Date: on("2026-03-02"), Where: "rows.csv:4"},
	}
	if err != nil || !slices.Equal(got, want) {
		t.Errorf("%+v, %v", got, err)
	}
	if got, err := From("rows.csv", []byte("person,procedure,date\nt-01,alone,2026-03-02\n"), all); err != nil || len(got) != 1 {
		t.Errorf("a row of today: %v, %v", got, err)
	}
	if got, err := From("rows.csv", []byte("person,procedure\nt-01\n"), all); err != nil || len(got) != 1 || got[0].Procedure != "" {
		t.Errorf("a row that ends early: %v, %v", got, err)
	}
	for text, want := range map[string]string{
		"":                                        "holds no rows",
		"person;procedure\n":                      "semicolons",
		"person,procedure\n":                      "no row below",
		"person,procedur\n":                       "rows.csv:1: there is no column procedur: did you mean procedure?",
		"person,procedure,xyzzyplugh\n":           "there is no column xyzzyplugh: the first line is",
		"person,note\nt-01,x\n":                   "the column procedure is not there",
		"person,procedure\nt-01,a,b\n":            "rows.csv:2: this row has 3 cells, the first line has 2",
		"person,procedure,date\na,b,2026-02-30\n": "rows.csv:2: \"2026-02-30\" is not a day",
		"person,procedure,date\na,b,\nc,d,2026-03-03\n": "rows.csv:3: 2026-03-03 lies ahead",
		"person,procedure,fingerprint\na,b,1-1\n":       "rows.csv:2: a fingerprint stands here",
		"person,procedure\na,\"b\n":                     "rows.csv: ",
	} {
		if _, err := From("rows.csv", []byte(text), all); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%q: %v, want %q", text, err, want)
		}
	}
}

// Several revisions to be told of stand beside a procedure whose reading is of
// nothing that was issued, which hides none of the others.
func TestOneUnknownReadingHidesNoOther(t *testing.T) {
	now, other := print(shop(), "alone"), print(shop(), "sweep")
	const head = "procedure,revision,date,fingerprint,reason,written,checked,approved,walked,readers,words\n"
	rows := heads
	text := head
	for _, p := range []struct{ id, print string }{{"alone", now}, {"sweep", other}} {
		rows += "2026-01-15,t-01," + p.id + ",read," + p.print + ",\n"
		text += p.id + ",1,2026-01-02," + p.print + ",First,a,b,,,reread,1111111111111111\n" + p.id + ",2,2026-02-01," + p.print + ",A word,a,b,,,tell,2222222222222222\n"
	}
	for name, c := range map[string]struct {
		rows string
		want int
	}{
		"both read":              {rows, 2},
		"the first never":        {strings.Replace(rows, ",alone,read,", ",alone,watched,", 1), 1},
		"the second never":       {strings.Replace(rows, ",sweep,read,", ",sweep,watched,", 1), 1},
		"the first of something": {strings.Replace(rows, now, "1-9999999999999999", 1), 1},
		"read twice, told once":  {rows + "2026-02-01,t-01,sweep,told,,\n", 1},
	} {
		m := shop("readings/people.csv", early, "revisions.csv", text, "readings/record.csv", c.rows)
		n := 0
		for _, i := range NewStandings(m, on("2026-02-08")).Items() {
			if i.Act == "tell" {
				n++
			}
		}
		if n != c.want {
			t.Errorf("%s: %d to be told, want %d", name, n, c.want)
		}
	}
}

// Of several readings up to a job's day the last counts, and of two of one day
// the one that held then: what was read later, or of what was asked for again, is
// none of it.
func TestWhichReadingCountsForAJob(t *testing.T) {
	now, was := print(shop(), "alone"), "1-1111111111111111"
	revisions := revs + "alone,1,2026-01-02," + was + ",why,a,b,,,reread\nalone,2,2026-02-01," + now + ",why,a,b,,,reread\n"
	read := func(day, print string) string { return day + ",t-01,alone,read," + print + ",\n" }
	for name, c := range map[string]struct{ rows, last string }{
		"the old alone":             {read("2026-01-15", was), ""},
		"the new alone":             {read("2026-02-02", now), "2026-02-02"},
		"the old, then the new":     {read("2026-01-15", was) + read("2026-02-02", now), "2026-02-02"},
		"the new, then the old":     {read("2026-02-02", now) + read("2026-01-15", was), "2026-02-02"},
		"both on a day":             {read("2026-02-02", was) + read("2026-02-02", now), "2026-02-02"},
		"both on a day, other way":  {read("2026-02-02", now) + read("2026-02-02", was), "2026-02-02"},
		"on the day of the job":     {read("2026-02-10", now), "2026-02-10"},
		"after the job":             {read("2026-02-11", now), ""},
		"watched, and never read":   {strings.Replace(read("2026-02-02", now), ",read,", ",watched,", 1), ""},
		"before, and after the job": {read("2026-02-02", now) + read("2026-02-11", was), "2026-02-02"},
	} {
		m := shop("readings/people.csv", early, "revisions.csv", revisions, "readings/record.csv", heads+c.rows)
		at := on("2026-02-10").Time()
		f := NewStandings(m, on("2026-12-01")).Fitness(&model.Job{Procedure: "alone", To: procedure(m, "alone"), Worker: "t-01", Started: at, Saved: at})
		w := f.Workers[0]
		if (len(w.Unread) == 0) != (c.last != "") || c.last != "" && (len(w.Read) != 1 || w.Read[0].Date != on(c.last) || w.Read[0].Fingerprint != now) {
			t.Errorf("%s: read %+v, not read %d", name, w.Read, len(w.Unread))
		}
	}
}

// Nothing is left to do of what was read as it stands, watched where it is to be,
// and performed as often as is asked.
func TestWhenNothingIsLeftToDo(t *testing.T) {
	for want, all := range map[bool][]Standing{
		true: {
			{State: Good}, {State: Good, MustWatch: true, Watched: true}, {State: Good, Watched: true},
			{State: Good, Perform: 2, Performed: 2}, {State: Good, Perform: 2, Performed: 3},
		},
		false: {
			{State: Stale}, {State: Due}, {State: Overdue, Watched: true, Performed: 1}, {State: Good, MustWatch: true},
			{State: Good, Perform: 2, Performed: 1}, {State: Good, Perform: 1, Watched: true, MustWatch: true},
		},
	} {
		for _, s := range all {
			if s.Done() != want {
				t.Errorf("%+v: done is %v", s, s.Done())
			}
		}
	}
}
