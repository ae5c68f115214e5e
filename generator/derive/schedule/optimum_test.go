package schedule_test

import (
	"encoding/json"
	"fmt"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator/base/needed"
	"baybinder/generator/derive/schedule"
	"baybinder/generator/prove/walk"
)

// Known: SEEN.

// job is what the solver is asked.
type job struct {
	People int    `json:"people"`
	Tasks  []task `json:"tasks"`
}

type task struct {
	Seconds int   `json:"seconds"`
	People  int   `json:"people"`
	After   []int `json:"after"`
}

type answer struct {
	Status string
	Time   float64
}

// optima are the shortest times of jobs by the npm package highs 1.15.3, an
// unrelated solver of linear programs in whole numbers.
func optima(t *testing.T, jobs []job) []answer {
	t.Helper()
	folder, err := filepath.Abs(filepath.Join("..", "..", "..", ".ci", "node_modules"))
	if err != nil {
		t.Fatal(err)
	}
	_, err = os.Stat(filepath.Join(folder, "highs"))
	needed.Judge(t, err == nil, "highs")
	asked, err := json.Marshal(jobs)
	if err != nil {
		t.Fatal(err)
	}
	name := filepath.Join(t.TempDir(), "jobs.json")
	if err := os.WriteFile(name, asked, 0o600); err != nil {
		t.Fatal(err)
	}
	out, err := exec.Command("node", filepath.Join("testdata", "optimum.cjs"), folder, name).Output()
	var answers []answer
	if err != nil || json.Unmarshal(out, &answers) != nil || len(answers) != len(jobs) {
		t.Fatalf("highs did not run: %v\n%s", err, out)
	}
	return answers
}

// written is a job as it is drawn: a manual's steps in minutes, so that the
// solver's list of tasks is made of what was drawn and not of the plan.
type written struct {
	head, body string
	people     int
	steps      []writtenStep
}

type writtenStep struct{ minutes, crew, wait int }

// unitMinutes is the time that the solver counts in: every drawn time is a
// multiple of it, the wait of the register too.
const unitMinutes = 5

func drawWritten(t *rapid.T) written {
	w := written{people: rapid.IntRange(1, 3).Draw(t, "people")}
	w.head = fmt.Sprintf("people: %d\n", w.people)
	var lines []string
	for range rapid.IntRange(6, 14).Draw(t, "steps") {
		line := rapid.SampledFrom(drawnSteps).Draw(t, "step")
		s := writtenStep{minutes: unitMinutes * rapid.IntRange(1, 3).Draw(t, "minutes"), crew: rapid.IntRange(1, w.people).Draw(t, "crew")}
		if strings.Contains(line, "hold:wait") {
			s.wait = 20
		}
		w.steps = append(w.steps, s)
		lines = append(lines, fmt.Sprintf("%s [](time:%dmin) [](people:%d)", line, s.minutes, s.crew))
	}
	w.body = "## Work\n\n1. " + strings.Join(lines, "\n1. ") + "\n"
	return w
}

// job is the drawn job for the solver, with the least and the chain that the
// book says: a step follows every earlier one that it may not pass, and its wait
// follows its own work.
func (w written) job(t interface{ Fatalf(string, ...any) }) (j job, least, chain, bay int) {
	m, found := bound(w.files())
	if len(found) > 0 {
		t.Fatalf("%v\n%s", found, w.body)
	}
	book := schedule.NewCache(walk.All(m))
	p := m.Procedures[0]
	j.People = w.people
	last := make([]int, len(w.steps)) // each step's last task
	for i, s := range w.steps {
		var after []int
		for before := range i {
			if !book.Free(p.Steps[before], p.Steps[i]) {
				after = append(after, last[before])
			}
		}
		j.Tasks = append(j.Tasks, task{s.minutes / unitMinutes, s.crew, after})
		if s.wait > 0 {
			j.Tasks = append(j.Tasks, task{s.wait / unitMinutes, 0, []int{len(j.Tasks) - 1}})
		}
		last[i] = len(j.Tasks) - 1
	}
	plan := book.Rows(p)[0]
	return j, plan.Least, plan.Chain, plan.Bay
}

func (w written) files() map[string]string {
	files := map[string]string{"procedures/job.md": "---\ntitle: Job\nfor: rig\n" + w.head + "---\n" + w.body}
	for name, text := range rig {
		files[name] = text
	}
	return files
}

// Known optima of generated jobs of 6 to 14 steps: with a crowd of people the
// shortest is the longest chain, to the second, and with the job's own people it
// lies between the bound and the written order.
func TestBoundAgainstHiGHS(t *testing.T) {
	const draws = 12
	var jobs []job
	var says []string
	var leasts, chains, bays []int
	draw := rapid.Custom(drawWritten)
	for seed := range draws {
		w := draw.Example(seed)
		j, least, chain, bay := w.job(t)
		crowd := job{100, j.Tasks}
		jobs, says = append(jobs, j, crowd), append(says, w.head+w.body)
		leasts, chains, bays = append(leasts, least), append(chains, chain), append(bays, bay)
	}
	answers := optima(t, jobs)
	exact := 0
	for i := range draws {
		own, crowd := answers[2*i], answers[2*i+1]
		if own.Status != "Optimal" || crowd.Status != "Optimal" {
			t.Fatalf("%q, %q for\n%s", own.Status, crowd.Status, says[i])
		}
		best, most := seconds(own), seconds(crowd)
		if chains[i] != most {
			t.Errorf("the longest chain takes %d s, and with a crowd the shortest is %d\n%s", chains[i], most, says[i])
		}
		if leasts[i] > best || best > bays[i] {
			t.Errorf("bound %d, optimum %d, as written %d\n%s", leasts[i], best, bays[i], says[i])
		}
		if leasts[i] == best {
			exact++
		}
	}
	if exact == 0 {
		t.Errorf("the bound is the optimum of none of %d jobs", draws)
	}
}

// The judge itself objects to what cannot be: a task for two where there is one.
func TestHiGHSObjects(t *testing.T) {
	got := optima(t, []job{{1, []task{{Seconds: 2, People: 2}}}, {1, []task{{Seconds: 2, People: 1}, {Seconds: 3, People: 1}}}})
	if got[0].Status != "Infeasible" || got[1].Status != "Optimal" || got[1].Time != 5 {
		t.Errorf("%+v", got)
	}
}

func seconds(a answer) int { return int(math.Round(a.Time)) * unitMinutes * 60 }
