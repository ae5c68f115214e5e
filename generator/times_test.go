package generator_test

import (
	"bytes"
	"encoding/json"
	"path"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"golang.org/x/net/html"
)

// Known: DERIVED.

// printedTimes reads the times of a procedure's page off the page itself, and
// adds up on its own what is printed there.
type printedTimes struct {
	t    *testing.T
	site map[string]*html.Node
}

// unitRow is what a page prints for a kind of unit.
type unitRow struct {
	cases      string // its units, as the script reads them
	bay        int    // before the start
	from, to   []int  // of each phase in the time line
	phaseNames []string
	least      int // of the note; 0 for none
}

func attr(n *html.Node, name string) string {
	for _, a := range n.Attr {
		if a.Key == name {
			return a.Val
		}
	}
	return ""
}

func has(n *html.Node, name string) bool {
	return slices.ContainsFunc(n.Attr, func(a html.Attribute) bool { return a.Key == name })
}

func classed(n *html.Node, class string) bool {
	return slices.Contains(strings.Fields(attr(n, "class")), class)
}

// all are the elements below a node, it too, that are so, in their order; what
// lies below one that is so is looked at only with deep.
func all(n *html.Node, deep bool, is func(*html.Node) bool) []*html.Node {
	if n.Type == html.ElementNode && is(n) && !deep {
		return []*html.Node{n}
	}
	var out []*html.Node
	if n.Type == html.ElementNode && is(n) {
		out = append(out, n)
	}
	for c := range n.ChildNodes() {
		out = append(out, all(c, deep, is)...)
	}
	return out
}

func textOf(n *html.Node) string {
	var b strings.Builder
	for c := range n.Descendants() {
		if c.Type == html.TextNode {
			b.WriteString(c.Data)
		}
	}
	return b.String()
}

var timePart = regexp.MustCompile(`(\d+(?:\.\d+)?) (h|min|s)\b`)

// secondsIn is the time that a text says; false where it says more than a time.
func secondsIn(text string) (int, bool) {
	sum := 0.0
	for _, m := range timePart.FindAllStringSubmatch(text, -1) {
		n, _ := strconv.ParseFloat(m[1], 64)
		sum += n * map[string]float64{"h": 3600, "min": 60, "s": 1}[m[2]]
	}
	return int(sum), strings.TrimSpace(timePart.ReplaceAllString(text, "")) == ""
}

var (
	ofWorkAndBay = regexp.MustCompile(`of work, ([\d hmins]+) in the bay`)
	fromAndTo    = regexp.MustCompile(`^from (.+?) to ([\d hmins]+)`)
	leastSays    = regexp.MustCompile(`cannot take less than ([\d hmins]+) with`)
)

// rows are the kinds of unit of a page, as its two places print them.
func (p *printedTimes) rows(page *html.Node) []unitRow {
	var out []unitRow
	line := all(page, false, func(n *html.Node) bool { return classed(n, "time-line") })
	if len(line) == 0 {
		return nil
	}
	before := all(page, false, func(n *html.Node) bool { return classed(n, "before") })[0]
	bays := ofWorkAndBay.FindAllStringSubmatch(textOf(before), -1)
	for i, div := range all(line[0], false, func(n *html.Node) bool { return n.Data == "div" }) {
		r := unitRow{cases: attr(div, "data-cases")}
		said := bays[0] // the one time of all kinds
		if len(bays) > 1 {
			said = bays[i]
		}
		r.bay, _ = secondsIn(said[1])
		for _, li := range all(div, false, func(n *html.Node) bool { return n.Data == "li" }) {
			m := fromAndTo.FindStringSubmatch(textOf(li.LastChild))
			from, _ := secondsIn(m[1])
			to, _ := secondsIn(m[2])
			r.from, r.to = append(r.from, from), append(r.to, to)
			r.phaseNames = append(r.phaseNames, textOf(li.FirstChild))
		}
		if m := leastSays.FindStringSubmatch(textOf(div)); m != nil {
			r.least, _ = secondsIn(m[1])
		}
		out = append(out, r)
	}
	return out
}

// fits says that a unit meets conditions such as "lithium !cab".
func fits(unit []string, terms string) bool {
	for _, term := range strings.Fields(terms) {
		if option, not := strings.CutPrefix(term, "!"); slices.Contains(unit, option) == not {
			return false
		}
	}
	return true
}

// ordinary says that a step is done on a unit where nothing is out of order. A
// question has the first answer of its block.
func (p *printedTimes) ordinary(page, step *html.Node, unit []string) bool {
	if !fits(unit, attr(step, "data-when")) || has(step, "data-optional") {
		return false
	}
	for _, term := range strings.Fields(attr(step, "data-if")) {
		id, answer, is := strings.Cut(strings.TrimPrefix(term, "if:"), "=")
		if !is || strings.HasPrefix(term, "if-not:") || answer != p.firstAnswer(page, id) {
			return false
		}
	}
	return true
}

func (p *printedTimes) firstAnswer(page *html.Node, hold string) string {
	for _, h := range all(page, true, func(n *html.Node) bool { return attr(n, "data-hold") == hold }) {
		for _, a := range all(h, true, func(n *html.Node) bool { return has(n, "data-answer") }) {
			return attr(a, "data-answer")
		}
	}
	return ""
}

// printedStep is a step as it is printed.
type printedStep struct {
	id       string
	own      int // its own time
	waits    int
	calls    int
	callsAny bool
	back     []string // the steps that its derived steps take back
	subs     []printedStep
}

func (p *printedTimes) step(name string, page, li *html.Node, unit []string) printedStep {
	s := printedStep{id: attr(li, "id")}
	row := all(li, false, func(n *html.Node) bool { return classed(n, "row") })[0]
	for _, tags := range all(row, false, func(n *html.Node) bool { return classed(n, "tags") }) {
		for _, tag := range all(tags, false, func(n *html.Node) bool { return n.Data == "li" }) {
			if seconds, only := secondsIn(textOf(tag)); only {
				s.own += seconds
			}
		}
	}
	for _, h := range all(row, false, func(n *html.Node) bool { return has(n, "data-wait") }) {
		seconds, _ := strconv.Atoi(attr(h, "data-wait"))
		s.waits += seconds
	}
	for _, call := range all(row, false, func(n *html.Node) bool { return classed(n, "call") }) {
		link := all(call, false, func(n *html.Node) bool { return n.Data == "a" })[0]
		s.callsAny = true
		s.calls += p.bay(path.Join(path.Dir(name), attr(link, "href")), unit)
	}
	for _, list := range all(li, false, func(n *html.Node) bool { return classed(n, "subs") }) {
		for _, sub := range all(list, false, func(n *html.Node) bool { return classed(n, "step") }) {
			if !classed(sub, "from-strip") {
				if p.ordinary(page, sub, unit) {
					s.subs = append(s.subs, p.step(name, page, sub, unit))
				}
				continue
			}
			for _, a := range all(sub, true, func(n *html.Node) bool { return n.Data == "a" && strings.HasPrefix(textOf(n), "reverses step") }) {
				if of := strings.TrimPrefix(attr(a, "href"), "#"); !slices.Contains(s.back, of) {
					s.back = append(s.back, of)
				}
			}
		}
	}
	return s
}

// bay is what a page prints for a unit, 0 where it has no time.
func (p *printedTimes) bay(name string, unit []string) int {
	page := p.site[name]
	if page == nil {
		p.t.Fatalf("no page %s", name)
	}
	for _, r := range p.rows(page) {
		if r.of(unit) {
			return r.bay
		}
	}
	return 0
}

func (r *unitRow) of(unit []string) bool {
	return slices.ContainsFunc(strings.Split(r.cases, "|"), func(some string) bool { return fits(unit, some) })
}

// units are the kinds of unit that a page's machine has: those of its list, else
// one with each option alone and one with none.
func (p *printedTimes) units(page *html.Node) [][]string {
	bay := all(page, false, func(n *html.Node) bool { return attr(n, "id") == "bay" })[0]
	var listed []struct{ Options []string }
	var options map[string]string
	for name, into := range map[string]any{"data-units": &listed, "data-options": &options} {
		if text := attr(bay, name); text != "" {
			must(p.t, json.Unmarshal([]byte(text), into))
		}
	}
	var out [][]string
	for _, u := range listed {
		out = append(out, u.Options)
	}
	if len(listed) == 0 {
		out = append(out, nil)
		for option := range options {
			out = append(out, []string{option})
		}
	}
	return out
}

// timesOf are the seconds of each step by its own time or its share of the
// phase's, and the phase's time in the bay.
func timesOf(steps []printedStep, shared int, known map[string]int) (bay int) {
	leaves := func(free func(*printedStep) bool) []*printedStep {
		var out []*printedStep
		var visit func(list []printedStep)
		visit = func(list []printedStep) {
			for i := range list {
				if len(list[i].subs) == 0 && list[i].own == 0 && free(&list[i]) {
					out = append(out, &list[i])
				}
				visit(list[i].subs)
			}
		}
		visit(steps)
		return out
	}
	to := leaves(func(s *printedStep) bool { return s.waits == 0 && !s.callsAny })
	if len(to) == 0 {
		to = leaves(func(*printedStep) bool { return true })
	}
	for i, s := range to {
		s.own = shared*(i+1)/len(to) - shared*i/len(to)
	}
	var add func(list []printedStep) int
	add = func(list []printedStep) int {
		sum := 0
		for _, s := range list {
			known[s.id] = s.own
			if s.own == 0 && s.waits == 0 && !s.callsAny {
				for _, of := range s.back {
					sum += known[of]
				}
			}
			sum += s.own + s.waits + s.calls + add(s.subs)
		}
		return sum
	}
	return add(steps)
}

// What is printed adds up to what is printed, on every page of the demo and for
// each kind of unit: a phase takes its own printed time, the times of its steps,
// its waits and what its page says of the procedures that it performs; the
// phases follow each other without a gap and end at the time in the bay; no bound
// is above that. The sums are this test's own.
func TestPrintedTimesAddUp(t *testing.T) {
	t.Parallel()
	p := &printedTimes{t, map[string]*html.Node{}}
	for name, data := range pages(t, demoSite(t)) {
		if path.Dir(name) == "procedures" && strings.Count(name, ".") == 1 {
			doc, err := html.Parse(bytes.NewReader(data))
			must(t, err)
			p.site[name] = doc
		}
	}
	judged := 0
	for name, page := range p.site {
		rows := p.rows(page)
		if len(rows) == 0 {
			continue
		}
		for _, unit := range p.units(page) {
			for _, r := range rows {
				if r.of(unit) {
					judged += p.judge(name, page, unit, r)
				}
			}
		}
	}
	if judged < 100 {
		t.Errorf("only %d phases were judged", judged)
	}
}

// judge adds up a page for a kind of unit; it says how many phases it judged.
func (p *printedTimes) judge(name string, page *html.Node, unit []string, r unitRow) int {
	known := map[string]int{}
	now, n := 0, 0
	for _, section := range all(page, false, func(n *html.Node) bool { return classed(n, "phase") }) {
		if !fits(unit, attr(section, "data-when")) {
			continue
		}
		head := all(section, false, func(n *html.Node) bool { return n.Data == "h2" })[0]
		shared := 0
		for _, small := range all(head, false, func(n *html.Node) bool { return n.Data == "small" }) {
			shared, _ = secondsIn(textOf(small))
		}
		var steps []printedStep
		for _, li := range all(section, false, func(n *html.Node) bool { return classed(n, "step") }) {
			if p.ordinary(page, li, unit) {
				steps = append(steps, p.step(name, page, li, unit))
			}
		}
		if len(steps) == 0 {
			continue
		}
		want := timesOf(steps, shared, known)
		if n >= len(r.from) {
			p.t.Errorf("%s, %v: more phases than the time line has", name, unit)
			return n
		}
		if r.from[n] != now || r.to[n]-r.from[n] != want {
			p.t.Errorf("%s, %v, %s: from %d to %d s; printed parts come to %d s after %d", name, unit, r.phaseNames[n], r.from[n], r.to[n], want, now)
		}
		now = r.to[n]
		n++
	}
	if n == 0 {
		return 0 // a procedure for other units
	}
	if n != len(r.from) || now != r.bay || r.least > r.bay {
		p.t.Errorf("%s, %v: %d of %d phases, %d s, and %d s in the bay, at least %d s", name, unit, n, len(r.from), now, r.bay, r.least)
	}
	return n
}
