package write_test

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// text is a procedure as a person at an editor sees it: lines, with what is kept
// by hand among them. It knows nothing of how the desk works.
type text struct {
	ending, mark   string
	title, summary string
	machine        string
	people         string
	tools          []string
	expects        []string // lines: "seat: off"
	leaves         []string
	phases         []*stretch
}

// stretch is a phase.
type stretch struct {
	name  string
	steps []*line
}

// line is a step with its number as it is written, and its sub-steps.
type line struct {
	number int
	words  string
	subs   []*line
}

func (x *text) String() string {
	blocks := []string{x.head()}
	for _, ph := range x.phases {
		blocks = append(blocks, "## "+ph.name)
		var rows []string
		for _, s := range ph.steps {
			rows = append(rows, s.rows("")...)
		}
		if len(rows) > 0 {
			blocks = append(blocks, strings.Join(rows, "\n"))
		}
	}
	return x.mark + strings.ReplaceAll(strings.Join(blocks, "\n\n")+"\n", "\n", x.ending)
}

// head is the front matter, with the prose under it.
func (x *text) head() string {
	rows := []string{"---", "title:   " + quoted(x.title) + "  # as it is"}
	if x.summary != "" {
		rows = append(rows, "summary: "+quoted(x.summary))
	}
	rows = append(rows, "# kept", "for: "+x.machine+" # so far", "status: draft")
	if x.people != "" {
		rows = append(rows, "people: "+x.people)
	}
	rows = append(rows, "tools: ["+strings.Join(x.tools, ", ")+"]  # by hand")
	if len(x.expects) > 0 {
		rows = append(rows, "expects: { "+strings.Join(x.expects, ", ")+" }")
	}
	if len(x.leaves) > 0 {
		rows = append(rows, "leaves: { "+strings.Join(x.leaves, ", ")+" }")
	}
	return strings.Join(append(rows, "was: [older]", "---", "Why.\t", "", "More. "), "\n")
}

// quoted is a text as YAML has it: in quotes unless it is letters and spaces.
func quoted(text string) string {
	if regexp.MustCompile(`^[A-Za-z][A-Za-z ]*$`).MatchString(text) {
		return text
	}
	return strconv.Quote(text)
}

// rows are the lines of a step: what is below it is set in by the width of its
// number.
func (s *line) rows(indent string) []string {
	head := fmt.Sprintf("%s%d. ", indent, s.number)
	out := []string{head + s.words}
	for _, sub := range s.subs {
		out = append(out, sub.rows(strings.Repeat(" ", len(head)))...)
	}
	return out
}

func (s *line) clone() *line {
	out := &line{number: s.number, words: s.words}
	for _, sub := range s.subs {
		out.subs = append(out.subs, sub.clone())
	}
	return out
}

func (x *text) clone() *text {
	out := *x
	out.tools, out.expects, out.leaves, out.phases = slices.Clone(x.tools), slices.Clone(x.expects), slices.Clone(x.leaves), nil
	for _, ph := range x.phases {
		copied := &stretch{name: ph.name}
		for _, s := range ph.steps {
			copied.steps = append(copied.steps, s.clone())
		}
		out.phases = append(out.phases, copied)
	}
	return &out
}

// linked is a link to a tool that the register has; misspelt is one that it has
// under another name.
var linked, misspelt = regexp.MustCompile(`\(tool:(lamp|brush|rag)\)`), "(tool:brushh)"

// uses are the tools that the steps name, in reading order, each once.
func (x *text) uses() []string {
	var out []string
	for _, m := range linked.FindAllStringSubmatch(x.String(), -1) {
		if !slices.Contains(out, m[1]) {
			out = append(out, m[1])
		}
	}
	return out
}

// settle makes the list of tools follow the steps, as they were before an edit
// and are now: what came is listed at the end, what went is listed no more. While
// a name is misspelt, what it means may be any line: then none goes.
func (x *text) settle(before []string) {
	after := x.uses()
	for _, id := range after {
		if !slices.Contains(x.tools, id) {
			x.tools = append(x.tools, id)
		}
	}
	if strings.Contains(x.String(), misspelt) {
		return
	}
	x.tools = slices.DeleteFunc(x.tools, func(id string) bool { return slices.Contains(before, id) && !slices.Contains(after, id) })
}

// all are the steps of all phases with their numbers as the page counts them,
// sub-steps behind theirs.
func (x *text) all(do func(number string, s *line)) {
	for n, ph := range x.phases {
		for i, s := range ph.steps {
			do(fmt.Sprintf("%d.%d", n+1, i+1), s)
			for k, sub := range s.subs {
				do(fmt.Sprintf("%d.%d.%d", n+1, i+1, k+1), sub)
			}
		}
	}
}

// left is how the machine is left, where that is plain to see: a seat that was
// in place is taken off, and nothing is put back. Its bolts go with it.
func (x *text) left() []string {
	text := x.String()
	if len(x.expects) > 0 || strings.Contains(text, "(reverse:") || strings.Count(text, "(remove:seat)") != 1 {
		return nil
	}
	return []string{"seat: off"}
}

// id is the id of a phase: here names are plain words.
func (ph *stretch) id() string { return strings.ReplaceAll(strings.ToLower(ph.name), " ", "-") }

// shelf is a register or a machine's section as a person sees it: an entry a
// line, what stands behind one stays.
type shelf struct {
	ending, above, indent string
	entries               []*entry
	below                 string
}

// entry is an entry with its fields in the order in which they were written.
type entry struct {
	id, behind string
	fields     [][2]string // name and value, as YAML
}

func (x *shelf) String() string {
	out := x.above
	for _, e := range x.entries {
		var fields []string
		for _, f := range e.fields {
			fields = append(fields, f[0]+": "+f[1])
		}
		out += x.indent + e.id + ": { " + strings.Join(fields, ", ") + " }" + e.behind + "\n"
	}
	return strings.ReplaceAll(out+x.below, "\n", x.ending)
}

func (x *shelf) clone() *shelf {
	out := *x
	out.entries = nil
	for _, e := range x.entries {
		out.entries = append(out.entries, &entry{e.id, e.behind, slices.Clone(e.fields)})
	}
	return &out
}

// set gives a field a value; without one it goes.
func (e *entry) set(name, value string) {
	i := slices.IndexFunc(e.fields, func(f [2]string) bool { return f[0] == name })
	switch {
	case value == "" && i >= 0:
		e.fields = slices.Delete(e.fields, i, i+1)
	case i >= 0:
		e.fields[i][1] = value
	case value != "":
		e.fields = append(e.fields, [2]string{name, value})
	}
}
