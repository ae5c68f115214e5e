// Package pagetest has the small manuals that the tests of pages read.
package pagetest

import (
	"fmt"
	"strings"
	"testing"

	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// Day is the day of the pages that tests make.
var Day = model.Date{Year: 2026, Month: 5, Day: 4}

// Manual binds and walks a manual that is written as texts. Findings fail the
// test, but not that of a language whose words are borrowed.
func Manual(t *testing.T, files map[string]string) (*model.Manual, *walk.Result) {
	t.Helper()
	if files["shop.yaml"] == "" {
		files["shop.yaml"] = "title: Shop\nshow-units: { torque: [N·m, lbf·ft], pressure: [bar, psi] }\n"
	}
	m, findings := bind.Manual(source.FromText(files))
	for _, f := range findings {
		if f.Rule == &bind.LanguageUnknown {
			continue // what is borrowed then is looked at
		}
		t.Fatalf("%s: %s [%s]", f.At.Path(), f.Message, f.Code)
	}
	return m, walk.All(m)
}

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

// Recorded are the texts of a manual with one procedure, and with records by
// their file names.
func Recorded(records map[string]string) map[string]string {
	files := map[string]string{
		"machines/rig.yaml": jobMachine, "procedures/set-gap.md": jobProcedure,
		"register/holds.yaml": "gap: { name: gap, kind: measure, what: the gap, at: [left, right], limit: 0.3 to 0.5 mm }\n",
	}
	for name, text := range records {
		files["records/"+name] = text
	}
	return files
}

// Job writes a record; each change is old text, new text.
func Job(changes ...string) string {
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

// Note is a note to a step, as a change of Job.
func Note(step, words string) []string {
	return []string{`"notes": []`, fmt.Sprintf(`"notes": [{ "step": "%s", "at": "2026-04-29T08:30:00+02:00", "words": "%s" }]`, step, words)}
}
