package write_test

import (
	"fmt"
	"maps"
	"net/http"
	"slices"
	"strings"
	"sync"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator/base/draws"
	"baybinder/generator/base/needed"
	"baybinder/generator/command/write"
)

// files are those of a manual that is written, as a person at an editor sees
// them. n tells names apart.
type files struct {
	job   *text
	tools *shelf
	parts *shelf
	n     int
}

const jobFile, toolsFile, rigFile = "procedures/job.md", "register/tools.yaml", "machines/rig.yaml"

func (x *files) clone() *files {
	return &files{x.job.clone(), x.tools.clone(), x.parts.clone(), x.n}
}

// all are the texts by path.
func (x *files) all() map[string]string {
	return map[string]string{jobFile: x.job.String(), toolsFile: x.tools.String(), rigFile: x.parts.String()}
}

// drawn are files with comments, spaces and line ends of their own.
func drawn(t *rapid.T) *files {
	ending := rapid.SampledFrom([]string{"\n", "\r\n"}).Draw(t, "ending")
	last := rapid.SampledFrom([]string{"[Refit](reverse:strip).", "Five."}).Draw(t, "last")
	bolt := [2]string{"held-by", "{ bolt: 4 }"}
	return &files{
		job: &text{
			ending: ending, mark: rapid.SampledFrom([]string{"", "\ufeff"}).Draw(t, "mark"), title: "Job", machine: "rig", tools: []string{"lamp"},
			phases: []*stretch{
				{"Strip", []*line{{1, "One.", nil}, {2, "Two.", []*line{{1, "A.", nil}, {2, "B.", nil}}}, {2, "[Take the seat off](remove:seat).", nil}}},
				{"Later", nil},
				{"Refit", []*line{{7, "Four, with the [brush]" + misspelt + ".", nil}, {9, last, nil}}},
			},
		},
		tools: &shelf{ending: ending, above: "# counted in May\n\n", entries: []*entry{
			{"lamp", "  # mine", [][2]string{{"name", "lamp"}, {"kind", "aid"}, {"kept", "shelf"}}}, {"brush", "", [][2]string{{"name", "brush"}, {"kind", "aid"}}}, {"rag", " # red", [][2]string{{"name", "rag"}, {"kind", "aid"}}},
		}},
		parts: &shelf{ending: ending, above: "name: Rig   # the old one\nparts:\n", indent: "  ", entries: []*entry{
			{"seat", " # four", [][2]string{{"name", "seat"}, bolt}}, {"lid", "", [][2]string{{"name", "lid"}}},
		}, below: "\n# short ones\nfasteners:\n  bolt: { name: bolt }\n"},
	}
}

// Random edits of every kind through the routes, and the same made to the lines,
// end in the same bytes, whatever the line ends; undone one by one they give each
// state back.
func TestEditsAreThoseOfTheText(t *testing.T) {
	t.Parallel()
	var mu sync.Mutex
	done := map[string]bool{}
	draws.Check(t, 24, 2100, func(r *rapid.T) {
		x := drawn(r)
		manual := maps.Clone(shop)
		maps.Copy(manual, x.all())
		d := newDesk(t, manual)
		defer d.server.Close()
		d.must("open", write.Act{})
		states := []map[string]string{x.all()}
		for _, name := range rapid.Permutation(kindsOfEdits).Draw(r, "edits") {
			x = x.clone()
			said, can := x.edit(r, d, name)
			if !can {
				continue
			}
			mu.Lock()
			done[name] = true
			mu.Unlock()
			if now := x.all(); !maps.Equal(now, states[len(states)-1]) { // what moves nothing is no step back
				states = append(states, now)
			}
			d.same(r, fmt.Sprintf("after %s %+v", name, said), x.all())
		}
		for _, before := range slices.Backward(states[:len(states)-1]) {
			if status, told := d.ask("undo", write.Act{}); status != http.StatusOK {
				r.Fatalf("undone: %d %s", status, told.Why)
			}
			d.same(r, "undone", before)
		}
	})
	for _, name := range kindsOfEdits {
		if !done[name] && needed.InCI() { // there the draws are the same each time
			t.Errorf("no edit of the kind %q was drawn", name)
		}
	}
}

// same compares the files on the disk.
func (d *desk) same(t *rapid.T, when string, want map[string]string) {
	for name, text := range want {
		if got := d.file(name); got != text {
			t.Fatalf("%s: %s\n%q\nwant\n%q", when, name, got, text)
		}
	}
}

// kindsOfEdits are all that are drawn.
var kindsOfEdits = []string{
	"words", "new", "first", "steps", "out", "move", "top", "split", "sub words", "new sub", "sub out", "sub move",
	"mend", "leave", "phase", "heading", "phase out", "refit", "title", "summary", "machine", "people", "expect",
	"new tool", "tool", "new part", "part",
}

// edit is a drawn edit of a kind: made here to the lines, and asked of the desk.
// It is false where there is nothing that it could be done to.
func (x *files) edit(t *rapid.T, d *desk, name string) (any, bool) {
	x.n++
	if strings.HasSuffix(name, "tool") || strings.HasSuffix(name, "part") {
		return x.entry(t, d, name), true
	}
	was, before := x.job.clone(), x.job.uses()
	act, can := x.act(t, d, name)
	if !can {
		x.job = was
		return act, false
	}
	x.job.settle(before)
	if status, told := d.ask("save", act); status != http.StatusOK {
		t.Fatalf("%+v: %d %s %s\n%s", act, status, told.Why, told.More, d.file(jobFile))
	}
	return act, true
}

// said are the words of a step: one sentence or several, with a tool or without.
func said(t *rapid.T, name string) string {
	sentence := rapid.StringMatching(`[A-Z][a-zäéß]{0,8}( [a-zא-ת&*!#0-9-]{1,9}){0,5}\.`)
	out := strings.Join(rapid.SliceOfN(sentence, 1, 3).Draw(t, name), " ")
	if tool := rapid.SampledFrom([]string{"", "", "lamp", "brush", "rag"}).Draw(t, "tool"); tool != "" {
		out += " With the [" + tool + "](tool:" + tool + ")."
	}
	return out
}

// plainWord is a name that needs a quote now and then.
func plainWord(t *rapid.T, n int) string {
	return rapid.StringMatching(`[A-Z][a-z]{1,8}`).Draw(t, "name") + rapid.SampledFrom([]string{"", " again", ": \"so\"", ", it"}).Draw(t, "end")
}

// act is one of the acts on the procedure.
func (x *files) act(t *rapid.T, d *desk, name string) (write.Act, bool) {
	job := x.job
	switch name {
	case "mend":
		return x.mended(d)
	case "leave":
		job.leaves = job.left()
		return write.Act{Do: "leave"}, len(job.leaves) > 0
	}
	n := rapid.IntRange(0, len(job.phases)-1).Draw(t, "phase")
	if name == "phase out" {
		n = max(0, slices.IndexFunc(job.phases, func(ph *stretch) bool { return len(ph.steps) == 0 }))
	}
	ph := job.phases[n]
	switch name {
	case "phase":
		made := &stretch{name: fmt.Sprintf("Phase %d", x.n)}
		act := write.Act{Do: "phase", After: ph.id(), Text: made.name}
		job.phases = slices.Insert(job.phases, n+1, made)
		return act, true
	case "heading":
		return x.heading(ph)
	case "phase out":
		job.phases = slices.Delete(job.phases, n, n+1)
		return write.Act{Do: "out", Phase: ph.id()}, len(ph.steps) == 0
	case "title":
		job.title = plainWord(t, x.n)
		return write.Act{Do: "front", Field: "title", Text: job.title}, true
	case "summary":
		job.summary = plainWord(t, x.n)
		return write.Act{Do: "front", Field: "summary", Text: job.summary}, true
	case "machine":
		job.machine = "rig"
		return write.Act{Do: "front", Field: "for", Text: "rig"}, true
	case "people":
		job.people = fmt.Sprint(rapid.IntRange(2, 9).Draw(t, "people"))
		return write.Act{Do: "front", Field: "people", Text: job.people}, true
	case "expect":
		job.expects = rapid.SampledFrom([][]string{nil, {"lid: off"}, {"seat: off", "lid: off"}, {"bolt: loose"}, {"lid: off", "seat: off"}}).Draw(t, "lines")
		return write.Act{Do: "expect", Texts: job.expects}, true
	case "first", "refit", "steps":
		return x.written(t, name, ph)
	}
	if len(ph.steps) == 0 {
		return write.Act{}, false
	}
	i := rapid.IntRange(0, len(ph.steps)-1).Draw(t, "step")
	if strings.Contains(name, "sub") {
		i = max(0, slices.IndexFunc(ph.steps, func(s *line) bool { return len(s.subs) > 1 }))
	}
	at := fmt.Sprintf("%d.%d", n+1, i+1)
	if strings.Contains(name, "sub") {
		return ph.steps[i].sub(t, name, at)
	}
	return x.step(t, name, n, i, at)
}

// mended is the name of a tool as the register has it, by the button that the
// page shows at the step: the first of its first finding.
func (x *files) mended(d *desk) (write.Act, bool) {
	at := ""
	x.job.all(func(number string, s *line) {
		if strings.Contains(s.words, misspelt) {
			at, s.words = number, strings.ReplaceAll(s.words, misspelt, "(tool:brush)")
		}
	})
	for _, ph := range d.sheet.Phases {
		for _, s := range ph.Steps {
			if s.Number == at && len(s.Found) > 0 {
				return *s.Found[0].Ways[0].Act, true
			}
		}
	}
	return write.Act{}, false
}

// heading gives a phase another name: what reverses it follows.
func (x *files) heading(ph *stretch) (write.Act, bool) {
	act := write.Act{Do: "heading", Phase: ph.id(), Text: fmt.Sprintf("Named %d", x.n)}
	old := "(reverse:" + ph.id() + ")"
	ph.name = act.Text
	for _, other := range x.job.phases {
		for _, s := range other.steps {
			s.words = strings.ReplaceAll(s.words, old, "(reverse:"+ph.id()+")")
		}
	}
	return act, true
}

// written are steps that come first in a phase.
func (x *files) written(t *rapid.T, name string, ph *stretch) (write.Act, bool) {
	act := write.Act{Do: "new", Phase: ph.id()}
	switch name {
	case "refit":
		act.Text = "[Refit everything](reverse:" + x.job.phases[0].id() + ")."
	case "first":
		act.Text = said(t, "words")
	default:
		act.Do, act.Texts = "steps", []string{said(t, "words"), said(t, "words")}
	}
	for i, text := range append(act.Texts, act.Text) {
		if text != "" {
			ph.steps = slices.Insert(ph.steps, i, &line{i + 1, text, nil})
		}
	}
	return act, true
}

// step is an act on a step.
func (x *files) step(t *rapid.T, name string, n, i int, at string) (write.Act, bool) {
	ph := x.job.phases[n]
	s := ph.steps[i]
	switch name {
	case "words":
		s.words = said(t, "words")
		return write.Act{Do: "words", Step: at, Text: s.words}, true
	case "new":
		made := &line{s.number + 1, said(t, "words"), nil}
		ph.steps = slices.Insert(ph.steps, i+1, made)
		return write.Act{Do: "new", After: at, Text: made.words}, true
	case "out":
		ph.steps = slices.Delete(ph.steps, i, i+1)
		return write.Act{Do: "out", Step: at}, true
	case "split":
		return s.split(at)
	case "top":
		to := rapid.IntRange(0, len(x.job.phases)-1).Draw(t, "to")
		if to == n {
			return write.Act{}, false
		}
		ph.steps = slices.Delete(ph.steps, i, i+1)
		s.number = 1
		other := x.job.phases[to]
		other.steps = slices.Insert(other.steps, 0, s)
		return write.Act{Do: "move", Step: at, Phase: other.id()}, true
	}
	to := rapid.IntRange(0, len(ph.steps)-1).Draw(t, "to")
	if to == i {
		return write.Act{}, false
	}
	ph.steps = moved(ph.steps, i, to)
	return write.Act{Do: "move", Step: at, After: fmt.Sprintf("%d.%d", n+1, to+1)}, true
}

// moved puts a step behind another, whose number it follows.
func moved(list []*line, from, behind int) []*line {
	s := list[from]
	s.number = list[behind].number + 1
	list = slices.Insert(slices.Clone(list), behind+1, s)
	if behind < from {
		from++
	}
	return slices.Delete(list, from, from+1)
}

// split makes sub-steps of the sentences behind the first. Each ends before a
// capital.
func (s *line) split(at string) (write.Act, bool) {
	var parts []string
	for _, word := range strings.SplitAfter(s.words, ". ") {
		if n := len(parts); n > 0 && !startsSentence(word) {
			parts[n-1] += word
			continue
		}
		parts = append(parts, word)
	}
	if len(parts) < 2 || len(s.subs) > 0 {
		return write.Act{}, false
	}
	act := write.Act{Do: "split", Step: at, Text: s.words}
	s.words = strings.TrimSuffix(parts[0], " ")
	for i, part := range parts[1:] {
		s.subs = append(s.subs, &line{i + 1, strings.TrimSuffix(part, " "), nil})
	}
	return act, true
}

func startsSentence(text string) bool { return text[0] >= 'A' && text[0] <= 'Z' }

// sub is an act on a sub-step.
func (s *line) sub(t *rapid.T, name, at string) (write.Act, bool) {
	if len(s.subs) < 2 {
		return write.Act{}, false
	}
	i := rapid.IntRange(0, len(s.subs)-1).Draw(t, "sub")
	sub := fmt.Sprintf("%s.%d", at, i+1)
	switch name {
	case "sub words":
		s.subs[i].words = said(t, "words")
		return write.Act{Do: "words", Step: sub, Text: s.subs[i].words}, true
	case "new sub":
		made := &line{s.subs[i].number + 1, said(t, "words"), nil}
		s.subs = slices.Insert(s.subs, i+1, made)
		return write.Act{Do: "new", After: sub, Text: made.words}, true
	case "sub out":
		s.firstGoes(i)
		s.subs = slices.Delete(s.subs, i, i+1)
		return write.Act{Do: "out", Step: sub}, true
	}
	to := rapid.IntRange(0, len(s.subs)-1).Draw(t, "to")
	if to == i {
		return write.Act{}, false
	}
	gone, number := s.subs[i], s.subs[to].number
	s.firstGoes(i)
	s.subs = moved(s.subs, i, to)
	s.subs[slices.Index(s.subs, gone)].number = number + 1
	return write.Act{Do: "move", Step: sub, After: fmt.Sprintf("%s.%d", at, to+1)}, true
}

// firstGoes lets the second of the sub-steps be the first: a list under words
// begins with 1.
func (s *line) firstGoes(i int) {
	if i == 0 {
		s.subs[1].number = s.subs[0].number
	}
}

// entry is an edit of the register or of the machine's file.
func (x *files) entry(t *rapid.T, d *desk, name string) any {
	list, in, page, fields := x.tools, "tools", "procedures/job.html", []string{"name", "kept"}
	if strings.HasSuffix(name, "part") {
		list, in, page, fields = x.parts, "parts", "machines/rig.html", []string{"name", "mass"}
	}
	asked := write.Asked{Page: page, In: in, Fields: answers{}}
	if strings.HasPrefix(name, "new") {
		asked.Fields["name"] = []string{fmt.Sprintf("Thing %d", x.n)}
		made := &entry{id: fmt.Sprintf("thing-%d", x.n), fields: [][2]string{{"name", asked.Fields["name"][0]}}}
		if in == "tools" {
			asked.Fields["kind"] = []string{"aid"}
			made.set("kind", "aid")
		} else {
			asked.Fields["held-by"] = []string{"bolt 2"}
			made.set("held-by", "{ bolt: 2 }")
		}
		list.entries = append(list.entries, made)
	} else {
		e := list.entries[rapid.IntRange(0, len(list.entries)-1).Draw(t, "entry")]
		_, told := d.questioned("form", write.Asked{Page: page, In: in, ID: e.id})
		asked.ID, asked.State = e.id, told.Form.State
		field := rapid.SampledFrom(fields).Draw(t, "field")
		value := map[string]string{"name": plainWord(t, x.n), "kept": rapid.SampledFrom([]string{"", "bay", "bay, left"}).Draw(t, "kept"), "mass": rapid.SampledFrom([]string{"", "14 kg", "2 kg"}).Draw(t, "mass")}[field]
		asked.Fields[field] = []string{value}
		e.set(field, quotedEntry(value))
	}
	if status, told := d.questioned("entry", asked); status != http.StatusOK {
		t.Fatalf("%+v: %d %s %s", asked, status, told.Why, told.More)
	}
	d.sheet = nil
	d.must("open", write.Act{})
	return asked
}

// quotedEntry is a value as YAML has it: letters, figures and spaces are plain.
func quotedEntry(value string) string {
	if value == "14 kg" || value == "2 kg" || value == "" {
		return value
	}
	return quoted(value)
}
