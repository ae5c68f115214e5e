package generator_test

import (
	"bytes"
	"path"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/model"

	"golang.org/x/net/html"
)

// On every procedure's page of the demo the workings stand in one section at the
// foot, each with an equals sign and its source; each is led to by a number, no
// number leads to none, and none stands among the steps. Every time before the
// start leads to its own.
func TestWorkingsStandAtTheFoot(t *testing.T) {
	t.Parallel()
	seen, sums := 0, 0
	for name, data := range pages(t, demoSite(t)) {
		if path.Dir(name) != "procedures" {
			continue
		}
		doc, err := html.Parse(bytes.NewReader(data))
		must(t, err)
		sections := all(doc, false, func(n *html.Node) bool { return classed(n, "workings") })
		if len(sections) > 1 {
			t.Errorf("%s: %d sections of workings", name, len(sections))
		}
		known := map[string]bool{}
		for _, w := range all(doc, false, func(n *html.Node) bool { return classed(n, "worked-out") }) {
			id := attr(w, "id")
			if known[id] = true; len(sections) != 1 || w.Parent != sections[0] || !strings.HasPrefix(id, "working-") {
				t.Errorf("%s: a working stands elsewhere than at the foot: %s", name, textOf(w))
			}
			if text := textOf(w); !strings.Contains(text, " = ") || !strings.Contains(text, ": ") {
				t.Errorf("%s: no working: %s", name, text)
			}
			seen++
		}
		sums += addUp(t, name, sections)
		for _, loose := range unworked(doc) {
			t.Errorf("%s: %q is computed and leads to no working", name, loose)
		}
		led := map[string]bool{}
		for _, a := range all(doc, false, func(n *html.Node) bool { return strings.HasPrefix(attr(n, "href"), "#working-") }) {
			led[strings.TrimPrefix(attr(a, "href"), "#")] = true
		}
		for id := range known {
			if !led[id] {
				t.Errorf("%s: nothing leads to %s", name, id)
			}
		}
		for id := range led {
			if !known[id] {
				t.Errorf("%s: %s is not there", name, id)
			}
		}
		for _, before := range all(doc, false, func(n *html.Node) bool { return classed(n, "before") }) {
			for _, b := range all(before, false, func(n *html.Node) bool { return n.Data == "b" }) {
				if seconds, only := secondsIn(textOf(b)); only && seconds > 0 && b.Parent.Data != "a" {
					t.Errorf("%s: %s has no working", name, textOf(b))
				}
			}
		}
	}
	if sums < 200 {
		t.Errorf("only %d sums were added up again", sums)
	}
	if seen < 60 {
		t.Errorf("only %d workings", seen)
	}
}

// unworked are the times of a page's time line, and the numbers of what is to be
// fetched that are sums, which lead nowhere.
func unworked(doc *html.Node) []string {
	var out []string
	for _, line := range all(doc, false, func(n *html.Node) bool { return classed(n, "time-line") }) {
		for n := range line.Descendants() {
			if n.Type == html.TextNode && timePart.MatchString(n.Data) && !inside(n, "a", "svg") {
				out = append(out, n.Data)
			}
		}
	}
	return out
}

// inside says that a node stands in an element of one of the names.
func inside(n *html.Node, names ...string) bool {
	for up := range n.Ancestors() {
		if slices.Contains(names, up.Data) {
			return true
		}
	}
	return false
}

// A time that leads nowhere is found.
func TestANumberWithoutAWorkingIsFound(t *testing.T) {
	for text, want := range map[string]int{
		`<section class="time-line"><svg><text>1 h</text></svg><li><a href="#working-1">from 0 min to 5 min</a></li></section>`: 0,
		`<section class="time-line"><li><span>from 0 min to 5 min</span></li></section>`:                                        1,
	} {
		doc, err := html.Parse(strings.NewReader(text))
		must(t, err)
		if got := unworked(doc); len(got) != want {
			t.Errorf("%s: %q", text, got)
		}
	}
}

// What a job fetches of a supply that more than one of its procedures lists leads
// to its sum, and so do the locks that its points ask for.
func TestSumsOfTheKitAreWorkedOut(t *testing.T) {
	r := demo(t)
	site := pages(t, demoSite(t))
	sums := 0
	for _, p := range r.Manual.Procedures {
		data, shown := site["procedures/"+p.ID+".html"]
		if !shown {
			continue
		}
		doc, err := html.Parse(bytes.NewReader(data))
		must(t, err)
		lists := map[*model.Supply]int{}
		countLists(p, lists, map[*model.Procedure]bool{})
		for _, fetch := range all(doc, false, func(n *html.Node) bool { return classed(n, "fetch") }) {
			for _, li := range all(fetch, false, func(n *html.Node) bool { return n.Data == "li" }) {
				amounts := all(li, false, func(n *html.Node) bool { return n.Data == "b" })
				if len(amounts) == 0 {
					continue
				}
				worked := len(all(amounts[0], false, func(n *html.Node) bool { return n.Data == "a" })) == 1
				for supply, times := range lists {
					if !strings.HasSuffix(textOf(li), supply.Label()) || times < 2 {
						continue
					}
					if sums++; !worked {
						t.Errorf("%s: %s has no working", p.ID, textOf(li))
					}
				}
				if locks := r.Manual.Shop.Locks; locks != nil && strings.HasSuffix(textOf(li), locks.Tool.To.Label()) && !worked {
					t.Errorf("%s: %s has no working", p.ID, textOf(li))
				}
			}
		}
	}
	if sums < 5 {
		t.Errorf("only %d sums", sums)
	}
}

// countLists counts in how many procedures of a job a supply is listed with an
// amount.
func countLists(p *model.Procedure, lists map[*model.Supply]int, met map[*model.Procedure]bool) {
	if met[p] {
		return
	}
	met[p] = true
	for _, s := range p.Supplies {
		if s.To != nil && s.Amount != "" {
			lists[s.To]++
		}
	}
	for _, c := range p.Calls {
		if to, is := c.To.(*model.Procedure); is {
			countLists(to, lists, met)
		}
	}
}

// addUp adds the sums among the workings up again: what is printed comes to what
// is printed.
func addUp(t *testing.T, name string, sections []*html.Node) (sums int) {
	t.Helper()
	for _, section := range sections {
		for _, code := range all(section, false, func(n *html.Node) bool { return n.Data == "code" && n.Parent.Data == "p" }) {
			parts := strings.Split(textOf(code), " = ")
			if len(parts) != 3 || !strings.Contains(parts[1], " + ") && !strings.HasSuffix(parts[1], ")") {
				continue
			}
			want, isTime := secondsIn(parts[2])
			got := 0
			for _, term := range strings.Split(parts[1], " + ") {
				term, _, _ = strings.Cut(term, " (")
				seconds, only := secondsIn(term)
				isTime = isTime && only
				got += seconds
			}
			if !isTime || strings.HasPrefix(parts[1], "max(") {
				continue
			}
			if sums++; got != want {
				t.Errorf("%s: %s comes to %d s, %d s are printed", name, parts[1], got, want)
			}
		}
	}
	return sums
}
