package schedule_test

import (
	"math"
	"slices"
	"testing"

	"gonum.org/v1/gonum/graph/path"
	"gonum.org/v1/gonum/graph/simple"
	"pgregory.net/rapid"

	"baybinder/generator/derive/schedule"
)

// Known: SEEN, DERIVED, FROM MEMORY.

// drawTasks draws tasks that follow some of those before them.
func drawTasks(t *rapid.T, most, people int) []schedule.Task {
	tasks := make([]schedule.Task, rapid.IntRange(1, most).Draw(t, "tasks"))
	for i := range tasks {
		tasks[i].Seconds = rapid.IntRange(0, 9).Draw(t, "seconds")
		tasks[i].People = rapid.IntRange(0, people).Draw(t, "people")
		for a := range i {
			if rapid.IntRange(0, 2).Draw(t, "after") == 0 {
				tasks[i].After = append(tasks[i].After, a)
			}
		}
	}
	return tasks
}

// gonumLongest is the longest chain by gonum's Bellman-Ford: the shortest way
// from a source before all tasks to a sink behind them, with each task's time
// taken as less than nothing.
func gonumLongest(tasks []schedule.Task) int {
	g := simple.NewWeightedDirectedGraph(0, math.Inf(1))
	source, sink := simple.Node(len(tasks)), simple.Node(len(tasks)+1)
	for i, t := range tasks {
		g.SetWeightedEdge(g.NewWeightedEdge(source, simple.Node(i), 0))
		g.SetWeightedEdge(g.NewWeightedEdge(simple.Node(i), sink, float64(-t.Seconds)))
		for _, a := range t.After {
			g.SetWeightedEdge(g.NewWeightedEdge(simple.Node(a), simple.Node(i), float64(-tasks[a].Seconds)))
		}
	}
	ways, _ := path.BellmanFordFrom(source, g)
	_, length := ways.To(sink.ID())
	return int(-length)
}

func TestLongestAgreesWithGonum(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		tasks := drawTasks(t, 14, 2)
		got, chain := schedule.Longest(tasks)
		if want := gonumLongest(tasks); got != want {
			t.Fatalf("the longest chain of %v is %d, and %d by gonum", tasks, got, want)
		}
		sum := 0
		for i, c := range chain {
			sum += tasks[c].Seconds
			if i > 0 && !slices.Contains(tasks[c].After, chain[i-1]) {
				t.Fatalf("%v: task %d does not follow %d", tasks, c, chain[i-1])
			}
		}
		if sum != got {
			t.Fatalf("the chain %v of %v takes %d, not %d", chain, tasks, sum, got)
		}
	})
}

// best is the shortest that tasks take with so many people: every order that
// they may have is tried, each task begun as soon as it can be. One of these
// plans is the shortest of all (active schedules hold an optimum of the
// resource-constrained project scheduling problem: textbook, from memory).
func best(tasks []schedule.Task, people int) int {
	shortest := math.MaxInt
	ends := make([]int, len(tasks))
	var busy []int // people at work in each second
	var try func(placed, over int)
	try = func(placed, over int) {
		if placed == len(tasks) {
			shortest = min(shortest, over)
			return
		}
		for i, t := range tasks {
			if ends[i] > 0 || slices.ContainsFunc(t.After, func(a int) bool { return ends[a] == 0 }) {
				continue
			}
			start := 0
			for _, a := range t.After {
				start = max(start, ends[a]-1)
			}
			for !fits(busy, start, t, people) {
				start++
			}
			busy = occupy(busy, start, t, 1)
			ends[i] = start + t.Seconds + 1 // one up: 0 is not placed yet
			try(placed+1, max(over, start+t.Seconds))
			ends[i] = 0
			busy = occupy(busy, start, t, -1)
		}
	}
	try(0, 0)
	return shortest
}

func fits(busy []int, start int, t schedule.Task, people int) bool {
	for s := start; s < min(start+t.Seconds, len(busy)); s++ {
		if busy[s]+t.People > people {
			return false
		}
	}
	return true
}

func occupy(busy []int, start int, t schedule.Task, sign int) []int {
	for len(busy) < start+t.Seconds {
		busy = append(busy, 0)
	}
	for s := start; s < start+t.Seconds; s++ {
		busy[s] += sign * t.People
	}
	return busy
}

// The bound is no more than the optimum, and the optimum no more than one task
// after another. A longer wait, and a further task in front of some, never
// lower the bound or the optimum; a further person never raises the bound.
func TestBoundBelowOptimum(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		people := rapid.IntRange(1, 3).Draw(t, "at once")
		tasks := drawTasks(t, 6, people)
		bound, optimum := boundOf(tasks, people), best(tasks, people)
		sum := 0
		for _, task := range tasks {
			sum += task.Seconds
		}
		if bound > optimum || optimum > sum {
			t.Fatalf("%v with %d people: bound %d, optimum %d, one after another %d", tasks, people, bound, optimum, sum)
		}
		if more := boundOf(tasks, people+1); more > bound {
			t.Fatalf("%v: bound %d with %d people, and %d with one more", tasks, bound, people, more)
		}
		longer := slices.Clone(tasks)
		longer[rapid.IntRange(0, len(tasks)-1).Draw(t, "longer")].Seconds += 3
		after := schedule.Task{Seconds: 4, After: []int{0}} // a wait
		held := append(slices.Clone(longer), after)
		if boundOf(longer, people) < bound || best(longer, people) < optimum ||
			boundOf(held, people) < bound || best(held, people) < optimum {
			t.Fatalf("%v is shorter with a longer task or a wait", tasks)
		}
	})
}

func boundOf(tasks []schedule.Task, people int) int {
	chain, _ := schedule.Longest(tasks)
	work := 0
	for _, t := range tasks {
		work += t.Seconds * t.People
	}
	return schedule.AtLeast(chain, work, people)
}

// A day of four jobs in one bay, in minutes, invented for this project and
// solved by two unrelated solvers (MiniZinc with Gecode, and HiGHS): without
// limits 200 min; with one electrician, two mechanics, one beam and one test
// kit 245 min. The bound, which knows three people and no tools, lies between
// the first and the second.
func TestDayOfFourJobs(t *testing.T) {
	type row struct {
		name                    string
		minutes, people, waited int
		after                   string
	}
	rows := []row{
		{"TG1", 25, 1, 0, ""}, {"TG2", 10, 2, 10, "TG1"}, {"TG3", 40, 2, 0, "TG2"}, {"TG4", 60, 1, 0, "TG3"},
		{"TG5", 35, 2, 0, "TG4"}, {"TG6", 20, 2, 0, "TG5"},
		{"PR1", 30, 1, 0, ""}, {"PR2", 90, 1, 15, "PR1"}, {"PR3", 30, 1, 0, "PR2"},
		{"CO1", 20, 1, 0, ""}, {"CO2", 50, 1, 20, "CO1"}, {"CO3", 25, 1, 0, "CO2"},
		{"BA1", 30, 1, 0, ""}, {"BA2", 45, 1, 0, "BA1"},
	}
	var tasks []schedule.Task
	at := map[string]int{}
	for _, r := range rows {
		task := schedule.Task{Seconds: r.minutes, People: r.people}
		if r.after != "" {
			task.After = []int{at[r.after]}
		}
		if r.waited > 0 {
			tasks = append(tasks, schedule.Task{Seconds: r.waited, After: task.After})
			task.After = []int{len(tasks) - 1}
		}
		at[r.name] = len(tasks)
		tasks = append(tasks, task)
	}
	if chain, _ := schedule.Longest(tasks); chain != 200 {
		t.Errorf("the longest chain takes %d min, not 200", chain)
	}
	if bound := boundOf(tasks, 3); bound < 200 || bound > 245 {
		t.Errorf("the bound is %d min, not between 200 and 245", bound)
	}
}
