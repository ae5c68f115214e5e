package readings

import (
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"baybinder/generator/show/jobs"
	"baybinder/generator/show/procedure"

	"golang.org/x/tools/txtar"

	"baybinder/generator/model"
	"baybinder/generator/prove/fingerprint"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
	"baybinder/generator/show/page"
)

const rig = `
-- shop.yaml --
title: Shop
show-units: { torque: [N·m, lbf·ft] }
-- register/roles.yaml --
presser: { name: Presser, renew-every: 12 months }
fitter: { name: Fitter }
trainer: { name: Trainer }
-- register/hazards.yaml --
crush: { name: crush, nature: The ram drops., harm: serious-injury, happens: will, consequence: It crushes., avoid: [Stand clear.] }
scratch: { name: scratch, nature: Sharp edge., harm: damage, consequence: It scratches., avoid: [Cover it.] }
-- register/tools.yaml --
wrench: { name: "wrench, 5 to 25 N·m", kind: torque-wrench, range: 5 to 25 N·m }
-- machines/press.yaml --
name: Press
parts: { lid: { name: lid, held-by: { bolt: 4 } } }
fasteners:
  bolt: { name: lid bolt, torque: 22 N·m }
  head: { name: head bolt, stages: [30 N·m, 60 N·m, 90°] }
-- procedures/lid.md --
---
title: Lid off and on
for: press
needs: [fitter]
---
## Strip

1. [Take the lid off](remove:lid). Mind [it](hazard:crush) and [that](hazard:scratch).
2. Lay it on the bench.
3. Wipe the seat.

## Refit

1. [Put it back](reverse:strip) with the [](tool:wrench).
2. Check with 21 N·m that none turns.
3. [Tighten the head](tighten:head) to 30 N·m, then to 60 N·m, then by 90°.

## Look

1. Look at it from 45° once.
-- procedures/press-job.md --
---
title: Press job
for: press
needs: [presser, fitter]
people: 2
---
## Work

1. [Do the lid](do:lid).
-- readings/plans/start.yaml --
title: Start
gives: [presser]
read: [press-job]
watch: [press-job]
perform: [lid: 2]
assessor: trainer
within: 14 days
-- readings/plans/later.yaml --
title: Later
read: [lid]
within: 12 months
-- readings/people.csv --
person,name,roles,started,plans
aa,Ann,presser@2025-06-01 fitter,2026-04-30,start
bb,Ben,presser@2024-05-01 fitter,2026-04-01,start later
cc,Cem,fitter trainer,,
dd,Dee,,,
ee,Eli,presser@2025-05-03 presser@2024-05-03,,
-- readings/record.csv --
date,person,procedure,act,fingerprint,by
2026-05-01,aa,lid,read,PRINT,
2026-05-01,aa,lid,performed,PRINT,cc
2026-05-01,aa,lid,performed,PRINT,aa
2026-05-02,cc,lid,read,1-0000000000000000,
2026-05-09,dd,lid,read,PRINT,
`

// readingsOf binds a manual of the test. PRINT is the fingerprint of lid.
func readingsOf(t *testing.T, text, print string) *Readings {
	t.Helper()
	folder := t.TempDir()
	for _, f := range txtar.Parse([]byte(text)).Files {
		full := filepath.Join(folder, f.Name)
		if err := os.MkdirAll(filepath.Dir(full), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(full, []byte(strings.ReplaceAll(string(f.Data), "PRINT", print)), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	tree, err := source.Read(folder)
	if err != nil {
		t.Fatal(err)
	}
	m, found := bind.Manual(tree)
	if len(found) > 0 {
		t.Fatal(found)
	}
	return Of(procedure.Of(jobs.Of(page.NewSite(m, walk.All(m), found, model.Date{Year: 2026, Month: 5, Day: 4}, false))))
}

func rigReadings(t *testing.T) *Readings {
	first := readingsOf(t, rig, "1-0000000000000000")
	return readingsOf(t, rig, fingerprint.NewCache().Of(procedureNamed(first, "lid")))
}

func procedureNamed(r *Readings, id string) *model.Procedure {
	i := slices.IndexFunc(r.Manual.Procedures, func(p *model.Procedure) bool { return p.ID == id })
	return r.Manual.Procedures[i]
}

func texts(steps []ExerciseStep) string {
	var out strings.Builder
	for _, st := range steps {
		for _, w := range st.Words {
			out.WriteString(w.Hazards + ": " + w.Word + "\n")
		}
		for _, x := range slices.Concat(st.Text, st.Facts) {
			out.WriteString(string(x) + "\n")
		}
		out.WriteString(texts(st.Subs))
	}
	return out.String()
}

// The sheet has no torque, no angle of a stage and no signal word, and the
// steps of a phase not in their order; the answers have them all, at the same
// places.
func TestBlankOut(t *testing.T) {
	r := rigReadings(t)
	p := procedureNamed(r, "lid")
	sheet, answers := r.Exercise(p, false), r.Exercise(p, true)
	for i, ph := range sheet.Phases {
		text, full := texts(ph.Steps), texts(answers.Phases[i].Steps)
		for _, bad := range []string{"22 N", "21 N", "30 N", "60 N", "90°", "DANGER", "NOTICE", "lbf"} {
			if strings.Contains(text, bad) {
				t.Errorf("phase %d of the sheet says %s:\n%s", i+1, bad, text)
			}
		}
		gap := regexp.MustCompile(`<b class="answer">[^<]*</b>`)
		if got := gap.ReplaceAllString(full, `<span class="blank"></span>`); strings.ReplaceAll(strings.ReplaceAll(got, ": DANGER", ": "), ": NOTICE", ": ") != text {
			t.Errorf("phase %d: the answers are another sheet:\n%s\n%s", i+1, full, text)
		}
		var places []int
		for j, st := range answers.Phases[i].Steps {
			n, err := strconv.Atoi(st.Place)
			if err != nil || ph.Steps[j].Place != "" || st.Ordered != (len(ph.Steps) > 1) {
				t.Errorf("phase %d: place %q, on the sheet %q, asked for %v", i+1, st.Place, ph.Steps[j].Place, st.Ordered)
			}
			places = append(places, n)
		}
		if len(places) > 1 && slices.IsSorted(places) {
			t.Errorf("phase %d stands in its order", i+1)
		}
		slices.Sort(places)
		for j, n := range places {
			if n != j+1 {
				t.Errorf("phase %d has the places %v", i+1, places)
			}
		}
	}
	all := texts(answers.Phases[0].Steps) + texts(answers.Phases[1].Steps) + texts(answers.Phases[2].Steps)
	for _, want := range []string{"crush: DANGER", "scratch: NOTICE", `4 × lid bolt: <b class="answer">22 N·m`, `<b class="answer">21 N·m</b>`, `head bolt, 3: <b class="answer">90°</b>`, "wrench, 5 to 25 N·m", "from 45° once"} {
		if !strings.Contains(all, want) {
			t.Errorf("the answers do not say %s:\n%s", want, all)
		}
	}
	if !strings.Contains(texts(sheet.Phases[1].Steps), "wrench, 5 to 25 N·m") || !strings.Contains(texts(sheet.Phases[2].Steps), "from 45° once") {
		t.Error("the sheet leaves out what is no torque")
	}
}

// Whoever may do a job holds every role of it and of what it performs, on the
// day, and has read all of it: a role of 12 months gained on 2025-06-01 is held until 2026-06-01, one of
// 2024-05-01 ran out on 2025-05-01, and of two the later counts.
func TestCrew(t *testing.T) {
	r := rigReadings(t)
	c := r.Procedure(procedureNamed(r, "press-job")).May
	if !slices.Equal(c.Needs, []string{"Presser", "Fitter"}) || c.Nobody != "" || !strings.HasPrefix(page.Unworked(c.Between), "2 people") {
		t.Errorf("%+v", c)
	}
	var got []string
	for _, a := range c.All {
		got = append(got, "all "+a.Name+" "+page.Unworked(page.Joined(a.Holds)))
	}
	for _, a := range c.Some {
		got = append(got, "some "+a.Name+" "+page.Unworked(page.Joined(a.Lacks)))
	}
	want := []string{
		"some Ann not read as it stands: Press job", "some Ben Presser: ran out after 2025-05-01, not read as it stands: Press job, Lid off and on",
		"some Cem Presser: not held, not read as it stands: Press job, Lid off and on",
		"some Eli Presser: ran out after 2026-05-03, Fitter: not held, not read as it stands: Press job, Lid off and on",
	}
	if !slices.Equal(got, want) {
		t.Errorf("got  %q\nwant %q", got, want)
	}
	none := r.Procedure(procedureNamed(r, "lid")).May
	if len(none.All) != 1 || none.All[0].Name != "Ann" || len(none.Some) != 2 {
		t.Errorf("who may take the lid off: %+v", none)
	}
}

// The matrix has a letter for each way to stand; what is recorded and asked by
// no plan is in it, and what is dated later is not.
func TestMatrix(t *testing.T) {
	r := rigReadings(t)
	m := r.Matrix()
	var got []string
	for _, row := range m.Grids[0].Groups[0].Rows {
		line := row.Name + ":"
		for i, mark := range row.Marks {
			letter := "-"
			if mark != nil {
				letter = mark.Letter
			}
			line += " " + m.Grids[0].People[i].Name + " " + letter
		}
		got = append(got, line)
	}
	want := []string{"Lid off and on: Ann A Ben O Cem S", "Press job: Ann D Ben O Cem -"}
	if !slices.Equal(got, want) {
		t.Errorf("got  %q\nwant %q", got, want)
	}
	letters := map[string]bool{}
	for _, mark := range marksOf(r.words) {
		letters[mark.Letter] = true
	}
	if len(letters) != 5 {
		t.Errorf("two states have one letter: %v", letters)
	}
	lid := r.Procedure(procedureNamed(r, "lid"))
	if len(lid.Stale) != 1 || lid.Stale[0].Name != "Ann" || len(lid.Callers) != 1 || lid.Callers[0].Name != "Press job" {
		t.Errorf("a change of the lid makes stale %v, and is looked at in %v", lid.Stale, lid.Callers)
	}
	if ann := r.Person(r.Manual.People[0]); len(ann.Rows) != 3 || page.Unworked(page.Joined(ann.Plans[0].Next[0].Left)) != "performed 1 of 2 times" {
		t.Errorf("the sheet of Ann: %+v", ann)
	}
}

// The assignment is in the plan's order, closed over what is performed, with a
// square for each act that the plan asks for.
func TestAssignment(t *testing.T) {
	r := rigReadings(t)
	v := Plans{r.Site}.Assignment(r.Manual.Plans[1])
	var got []string
	for _, row := range v.Rows {
		line := strconv.Itoa(row.Number) + " " + row.Name
		for _, b := range row.BuildsOn {
			line += " <" + b.Name
		}
		for _, tick := range row.Ticks {
			line += ", " + tick.Name
			if tick.Sign {
				line += " signed"
			}
		}
		got = append(got, line)
	}
	want := []string{"1 Lid off and on, Read, Performed, 1 of 2 signed, Performed, 2 of 2 signed", "2 Press job <1, Read, Watched"}
	if !slices.Equal(got, want) {
		t.Errorf("got  %q\nwant %q", got, want)
	}
	if !v.Rows[0].Added || v.Rows[1].Added {
		t.Error("what the plan does not list is not marked, or what it lists is")
	}
}

// A last day is shown with the sum that gives it, by hand: 14 days from somebody's
// first day, or from the revision that asks to read again; never one from the other.
func TestTheLastDayIsCountedFromWhatAsks(t *testing.T) {
	text := strings.Replace(rig, "-- readings/people.csv --", "-- revisions.csv --\nprocedure,revision,date,fingerprint,reason,written,checked,approved,walked,readers\nlid,1,2026-05-02,1-0000000000000000,first,cc,dd,,,reread\n-- readings/people.csv --", 1)
	r := readingsOf(t, text, "1-0000000000000000")
	plan := r.Manual.Plans[slices.IndexFunc(r.Manual.Plans, func(p *model.Plan) bool { return p.ID == "start" })]
	for day, sum := range map[model.Date]string{
		{Year: 2026, Month: 5, Day: 14}: "2026-04-30 + 14 days",
		{Year: 2026, Month: 5, Day: 16}: "2026-05-02 + 14 days",
	} {
		if got := r.dueBy(r.Manual.People[0], plan, "by", day); !strings.Contains(got, sum) {
			t.Errorf("%s: %q, want %q", day, got, sum)
		}
	}
}
