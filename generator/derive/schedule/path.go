package schedule

// Task is a piece of work or a wait.
type Task struct {
	Seconds int
	People  int   // 0 for a wait: it keeps nobody
	After   []int // the tasks that are over before it begins, all earlier in the list
}

// Longest is the longest chain of tasks that follow each other: its seconds,
// and its tasks in their order. No number of people makes the work shorter.
func Longest(tasks []Task) (seconds int, chain []int) {
	ends := make([]int, len(tasks))
	from := make([]int, len(tasks))
	last := -1
	for i, t := range tasks {
		from[i] = -1
		start := 0
		for _, a := range t.After {
			if ends[a] > start {
				start, from[i] = ends[a], a
			}
		}
		if ends[i] = start + t.Seconds; ends[i] > seconds {
			seconds, last = ends[i], i
		}
	}
	for ; last >= 0; last = from[last] {
		chain = append(chain, last)
	}
	for i, j := 0, len(chain)-1; i < j; i, j = i+1, j-1 {
		chain[i], chain[j] = chain[j], chain[i]
	}
	return seconds, chain
}

// AtLeast is a time that so much work cannot be done under by so many people,
// whatever its order: the longest chain, or the work shared out without a gap.
func AtLeast(chain, work, people int) int {
	people = max(people, 1)
	return max(chain, (work+people-1)/people)
}
