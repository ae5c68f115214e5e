package write_test

import (
	"fmt"
	"net/http"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator/command/write"
)

// text is a procedure as a person at an editor sees it: lines, of which each
// step is one. It knows nothing of how the desk works.
type text struct {
	ending string
	head   []string
	phases [2][]string // the steps of each
}

func (x *text) String() string {
	out := append([]string{}, x.head...)
	for i, steps := range x.phases {
		out = append(out, "", fmt.Sprintf("## Phase %d", i+1), "")
		out = append(out, steps...)
	}
	return strings.Join(append(out, ""), x.ending)
}

func (x *text) clone() *text {
	out := &text{ending: x.ending, head: x.head}
	for i, steps := range x.phases {
		out.phases[i] = append([]string{}, steps...)
	}
	return out
}

// step is a line in which a step is written, and its words.
func step(number int, words string) string { return fmt.Sprintf("%d. %s", number, words) }

func (x *text) number(phase, i int) (n int) {
	_, _ = fmt.Sscanf(x.phases[phase][i], "%d.", &n)
	return n
}

func (x *text) words(phase, i int) string {
	_, words, _ := strings.Cut(x.phases[phase][i], ". ")
	return words
}

func insert(list []string, at int, line string) []string {
	return append(list[:at:at], append([]string{line}, list[at:]...)...)
}

func remove(list []string, at int) []string { return append(list[:at:at], list[at+1:]...) }

// edit is one drawn edit: made here to the lines, and said as an act.
func (x *text) edit(t *rapid.T) write.Act {
	phase := rapid.IntRange(0, 1).Draw(t, "phase")
	steps := x.phases[phase]
	i := rapid.IntRange(0, len(steps)-1).Draw(t, "step")
	at := fmt.Sprintf("%d.%d", phase+1, i+1)
	words := rapid.StringMatching(`[A-Z][a-zäéß]{0,8}( [a-zא-ת&*!#0-9-]{1,9}){0,5}\.`).Draw(t, "words")
	switch rapid.SampledFrom([]string{"words", "new", "first", "out", "move", "top"}).Draw(t, "do") {
	case "words":
		steps[i] = step(x.number(phase, i), words)
		return write.Act{Do: "words", Step: at, Text: words}
	case "new":
		x.phases[phase] = insert(steps, i+1, step(x.number(phase, i)+1, words))
		return write.Act{Do: "new", After: at, Text: words}
	case "first":
		x.phases[phase] = insert(steps, 0, step(1, words))
		return write.Act{Do: "new", Phase: fmt.Sprintf("phase-%d", phase+1), Text: words}
	case "out":
		if len(steps) == 1 {
			return x.edit(t)
		}
		x.phases[phase] = remove(steps, i)
		return write.Act{Do: "out", Step: at}
	case "move":
		to := rapid.IntRange(0, len(steps)-1).Draw(t, "to")
		if to == i || len(steps) == 1 {
			return x.edit(t)
		}
		line := step(x.number(phase, to)+1, x.words(phase, i))
		act := write.Act{Do: "move", Step: at, After: fmt.Sprintf("%d.%d", phase+1, to+1)}
		x.phases[phase] = insert(steps, to+1, line)
		if to < i {
			i++
		}
		x.phases[phase] = remove(x.phases[phase], i)
		return act
	default:
		if len(steps) == 1 {
			return x.edit(t)
		}
		x.phases[1-phase] = insert(x.phases[1-phase], 0, step(1, x.words(phase, i)))
		x.phases[phase] = remove(steps, i)
		return write.Act{Do: "move", Step: at, Phase: fmt.Sprintf("phase-%d", 2-phase)}
	}
}

// Random edits through the routes, and the same made to the lines, end in the
// same bytes, whatever the line ends; undone one by one they give each state
// back.
func TestEditsAreThoseOfTheText(t *testing.T) {
	t.Parallel()
	d := newDesk(t, shop)
	rapid.Check(t, func(t *rapid.T) {
		x := &text{
			ending: rapid.SampledFrom([]string{"\n", "\r\n"}).Draw(t, "ending"),
			head:   []string{rapid.SampledFrom([]string{"---", "\ufeff---"}).Draw(t, "mark"), "title:   Job  # as it is", "# kept", "status: draft", "---", "Why.\t", "", "More. "},
			phases: [2][]string{{step(1, "One."), step(2, "Two."), step(2, "Three.")}, {step(7, "Four."), step(9, "Five.")}},
		}
		name := filepath.Join(d.folder, "procedures", "job.md")
		if err := os.WriteFile(name, []byte(x.String()), 0o644); err != nil {
			t.Fatal(err)
		}
		d.sheet = nil
		d.must("open", write.Act{})
		states := []string{x.String()}
		for range rapid.IntRange(1, 6).Draw(t, "edits") {
			x = x.clone()
			act := x.edit(t)
			d.must("save", act)
			if now := x.String(); now != states[len(states)-1] { // what moves nothing is no step back
				states = append(states, now)
			}
			if got := d.file("procedures/job.md"); got != x.String() {
				t.Fatalf("after %+v\n%q\nwant\n%q", act, got, x.String())
			}
		}
		for i := len(states) - 2; i >= 0; i-- {
			if status, told := d.ask("undo", write.Act{}); status != http.StatusOK || d.file("procedures/job.md") != states[i] {
				t.Fatalf("undone: %d %s\n%q\nwant\n%q", status, told.Why, d.file("procedures/job.md"), states[i])
			}
		}
	})
}
