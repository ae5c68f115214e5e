package training

import (
	"bytes"
	"testing"
	"unicode/utf8"

	"baybinder/generator/base/finding"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// FuzzTables reads hostile tables and asks all that can be asked of them:
// nothing panics; a row that is left out is told of, and so is one that leads
// to nobody; and what is answered can be written.
func FuzzTables(f *testing.F) {
	const row = "2026-01-15,t-01,alone,read,1-1111111111111111,\n"
	f.Add(people, heads+row, revs+"alone,1,2026-01-01,1-1111111111111111,why,a,b,,,reread\n", plan)
	f.Add(people, heads+row+row[:20], revs+"alone,1,2026-01-01,\"1-", plan)
	f.Add("\ufeff"+people, "date,person\r\n", "procedure\n", "title: x\ngives: [cleaner]\nperform: { sweep: 999999999999999999999 }\nwithin: 99999999 years\n")
	f.Add("person,name,roles,started,plans\nt-01,,@ cleaner@ @2026-01-01 cleaner@9999-12-31,0001-01-01,start start\n", heads+"9999-12-31,t-01,wash,performed,,t-01\n0001-01-01,t-01,sweep,taught,0-0,\n", revs+",,,,,,,,,\n", "read: [wash]\nwithin: 0 days\n")
	f.Fuzz(func(t *testing.T, people, record, revisions, plan string) {
		files := map[string]string{
			"shop.yaml": "title: Shop\n", "register/roles.yaml": roles, "procedures/sweep.md": sweep, "procedures/wash.md": wash, "procedures/alone.md": alone,
			"readings/people.csv": people, "readings/record.csv": record, "revisions.csv": revisions, "readings/plans/start.yaml": plan,
			"revisions/alone/1.md": alone + "\n```fingerprint\n" + plan + "```\n",
		}
		for _, text := range files {
			if !utf8.ValidString(text) || len(text) > 1<<13 {
				t.Skip() // what is not UTF-8 is not read at all
			}
		}
		m, found := bind.Manual(source.FromText(files))
		for i := range m.Record {
			if r := &m.Record[i]; (r.Person.To == nil || r.Procedure.To == nil || r.Date.IsZero()) && finding.Errors(found) == 0 {
				t.Errorf("row %+v counts for nothing, and nothing is told", r)
			}
		}
		h := NewStandings(m, on("2026-05-04"))
		items := append(h.Items(), h.Reviews()...)
		h.Changes(items)
		for _, p := range m.Procedures {
			h.Account(p)
			h.Crew(p)
		}
		var out bytes.Buffer
		if CSV(&out, items) != nil || ICal(&out, items, on("2026-05-04")) != nil {
			t.Error("what is due cannot be written")
		}
	})
}
