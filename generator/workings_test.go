package generator_test

import (
	"bytes"
	"fmt"
	"io/fs"
	"iter"
	"os"
	"path"
	"path/filepath"
	"reflect"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
	"unicode"

	"baybinder/generator/language"
	"baybinder/generator/language/shape"
	"baybinder/generator/model"

	"golang.org/x/net/html"
)

// Known: DERIVED.

// On every page of the demo, those that name people too, each number that the
// manual's files do not say leads to its working: to one at the foot of its own
// page, or to the list that it counts. Each working has inputs, an equals sign, a
// result and a source, is led to, and says the number that leads to it.
func TestEveryNumberIsWrittenOrWorkedOut(t *testing.T) {
	t.Parallel()
	written := readNumbers(t, "../content")
	demoSite(t)
	seen, sums := 0, 0
	for _, folder := range []string{theDemo().site, theDemo().people} {
		site := pages(t, folder)
		parsed := map[string]*html.Node{}
		for name, data := range site {
			if path.Ext(name) == ".html" {
				doc, err := html.Parse(bytes.NewReader(data))
				must(t, err)
				parsed[name] = doc
			}
		}
		for name, doc := range parsed {
			n, s := workingsStand(t, name, doc)
			seen, sums = seen+n, sums+s
			for _, wrong := range miscounted(parsed, name, doc) {
				t.Errorf("%s: %s", name, wrong)
			}
			for _, loose := range unworked(doc, written) {
				t.Errorf("%s: %q is not in the manual's files and leads to no working", name, loose)
			}
		}
	}
	if sums < 1000 {
		t.Errorf("only %d workings were calculated again", sums)
	}
	if seen < 1000 {
		t.Errorf("only %d workings", seen)
	}
}

// workingsStand says what is wrong with the workings of a page.
func workingsStand(t *testing.T, name string, doc *html.Node) (seen, sums int) {
	t.Helper()
	sections := all(doc, false, func(n *html.Node) bool { return classed(n, "workings") })
	if len(sections) > 1 {
		t.Errorf("%s: %d sections of workings", name, len(sections))
	}
	known := map[string]string{}
	for _, w := range all(doc, false, func(n *html.Node) bool { return classed(n, "worked-out") }) {
		id := attr(w, "id")
		if len(sections) != 1 || w.Parent != sections[0] || sections[0].NextSibling != nil && strings.TrimSpace(textOf(sections[0].NextSibling)) != "" {
			t.Errorf("%s: a working stands elsewhere than at the foot: %s", name, textOf(w))
		}
		if code := textOf(all(w, false, func(n *html.Node) bool { return n.Data == "code" })[0]); strings.Count(code, " = ") < 2 {
			t.Errorf("%s: no formula, no input or no result: %s", name, code)
		}
		if paragraphs := all(w, false, func(n *html.Node) bool { return n.Data == "p" }); !strings.Contains(textOf(paragraphs[len(paragraphs)-1]), ": ") {
			t.Errorf("%s: no source: %s", name, textOf(w))
		}
		known[id] = textOf(w)
		seen++
	}
	led := map[string]bool{}
	for _, a := range all(doc, false, func(n *html.Node) bool { return classed(n, "computed") }) {
		id, is := strings.CutPrefix(attr(a, "href"), "#")
		if led[id] = true; !is || known[id] == "" {
			t.Errorf("%s: %s leads to no working: %s", name, textOf(a), attr(a, "href"))
		}
		for _, n := range numberToken.FindAllString(textOf(a), -1) {
			if !strings.Contains(known[id], n) {
				t.Errorf("%s: %s is not in its working: %s", name, n, known[id])
			}
		}
	}
	for id := range known {
		if !led[id] {
			t.Errorf("%s: nothing leads to %s", name, id)
		}
	}
	return seen, recalculated(t, name, sections)
}

// miscounted are numbers that count what stands elsewhere, and do not.
func miscounted(site map[string]*html.Node, name string, doc *html.Node) []string {
	var out []string
	for _, a := range all(doc, false, func(n *html.Node) bool { return classed(n, "counts") }) {
		to, id, _ := strings.Cut(attr(a, "href"), "#")
		list := elementNamed(site[path.Join(path.Dir(name), to)], id)
		if list == nil {
			out = append(out, attr(a, "href")+" is not there")
		} else if n := len(all(list, false, func(n *html.Node) bool { return n.Data == "li" })); strconv.Itoa(n) != textOf(a) {
			out = append(out, fmt.Sprintf("%s: %d stand there, %s are counted", attr(a, "href"), n, textOf(a)))
		}
	}
	for _, n := range all(doc, false, func(n *html.Node) bool { return attr(n, "data-counts") != "" }) {
		if want := strconv.Itoa(countedBy(n)); numberToken.FindString(textOf(n)) != want && textOf(n)+want != "0" {
			out = append(out, fmt.Sprintf("%q counts %s: there are %s", textOf(n), attr(n, "data-counts"), want))
		}
	}
	return out
}

// countedBy counts what a number says that it counts.
func countedBy(n *html.Node) int {
	up := func(name string) *html.Node {
		for p := range n.Ancestors() {
			if p.Data == name {
				return p
			}
		}
		return nil
	}
	open := func(cell *html.Node) bool { return strings.ContainsAny(textOf(cell), "OSDA") }
	cells := func(row *html.Node) []*html.Node {
		return all(row, false, func(n *html.Node) bool { return n.Data == "td" || n.Data == "th" })
	}
	switch attr(n, "data-counts") {
	case "list":
		return len(all(up("details"), false, func(n *html.Node) bool { return n.Data == "li" }))
	case "heap", "rest":
		links := len(all(all(up("li"), false, func(n *html.Node) bool { return n.Data == "p" })[0], false, func(n *html.Node) bool { return n.Data == "a" }))
		other := map[string]string{"heap": "rest", "rest": "heap"}[attr(n, "data-counts")]
		for _, o := range all(up("li"), false, func(n *html.Node) bool { return attr(n, "data-counts") == other }) {
			m, _ := strconv.Atoi(numberToken.FindString(textOf(o)))
			if other == "heap" {
				return m - links
			}
			links += m
		}
		return links
	case "said":
		said := 0
		for _, li := range all(elementNamed(up("html"), "said"), false, func(n *html.Node) bool { return n.Data == "li" }) {
			step := all(li, false, func(n *html.Node) bool { return n.Data == "a" })[0]
			answers := all(li, false, func(n *html.Node) bool { return classed(n, "answered") })
			if textOf(step) == attr(up("li"), "data-step") && strings.TrimSpace(textOf(answers[0])) == textOf(answers[0].FirstChild) {
				said++
			}
		}
		return said
	case "row":
		return len(slices.DeleteFunc(cells(up("tr"))[2:], func(c *html.Node) bool { return !open(c) }))
	case "column":
		at, sum := slices.Index(cells(up("tr")), n), 0
		for _, row := range all(up("table"), false, func(n *html.Node) bool {
			return n.Data == "tr" && n.Parent.Data == "tbody" && !classed(n, "totals") && !classed(n, "topic")
		}) {
			if open(cells(row)[at]) {
				sum++
			}
		}
		return sum
	case "heaps":
		at, who, sum := slices.Index(cells(up("tr")), n)-2, textOf(cells(up("tr"))[0]), 0
		piles := all(up("main"), false, func(n *html.Node) bool { return n.Data == "section" && classed(n, "around") })[1:]
		for _, b := range all(piles[at], false, func(n *html.Node) bool { return attr(n, "data-counts") == "heap" }) {
			if item := b.Parent; strings.HasPrefix(strings.TrimSpace(textOf(item)), who) {
				sum += countedBy(b)
			}
		}
		return sum
	}
	return -1
}

// elementNamed is the element of an id; nil where there is none.
func elementNamed(doc *html.Node, id string) *html.Node {
	if doc == nil {
		return nil
	}
	if found := all(doc, false, func(n *html.Node) bool { return attr(n, "id") == id }); len(found) > 0 {
		return found[0]
	}
	return nil
}

// numberToken is a number.
var numberToken = regexp.MustCompile(`\d+(?:[.,]\d+)*`)

// numbersRead are the numbers of the manual's files and of the program's own
// words, each with the word before it and with the word behind it; a number that
// is more than figures, as a date or a code, also by itself, and the value of a
// field as ": 4".
type numbersRead map[string]bool

// readNumbers reads them.
func readNumbers(t *testing.T, folder string) numbersRead {
	t.Helper()
	w := numbersRead{}
	must(t, filepath.WalkDir(folder, func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		data, err := os.ReadFile(name)
		w.take(clockOfRecord.ReplaceAllString(string(data), "$1 $2"))
		return err
	}))
	for _, l := range language.All() {
		w.texts(reflect.ValueOf(*l))
	}
	w.take(demoDay.String())
	return w
}

var (
	clockOfRecord = regexp.MustCompile(`(\d\d)T(\d\d:\d\d)`)
	comma         = regexp.MustCompile(`(\d),(\d)`)
	joined        = regexp.MustCompile(`(\d)(\pL|°|%)`)
	fieldValue    = regexp.MustCompile(`[:,] *"?(\d+)\b`)
	figures       = regexp.MustCompile(`^\d+$`)
)

// pointed is a text with points in its numbers, which Spanish and German pages
// write with commas.
func pointed(text string) string { return comma.ReplaceAllString(text, "$1.$2") }

// take takes the numbers of a text: a value behind its field is also one before
// the field's word, "people: 2" and "2 people".
func (w numbersRead) take(text string) {
	for _, form := range []string{text, joined.ReplaceAllString(text, "$1 $2"), pointed(text), joined.ReplaceAllString(pointed(text), "$1 $2")} {
		for word := range around(form) {
			w[word.before+" "+word.number], w[word.number+" "+word.behind] = true, true
			w[word.number+" "+word.before] = true
			w[word.number] = w[word.number] || !figures.MatchString(word.number)
		}
	}
	for _, m := range fieldValue.FindAllStringSubmatch(text, -1) {
		w[": "+m[1]] = true
	}
}

// has says that a number of a page is written.
func (w numbersRead) has(n placed) bool {
	return w[n.before+" "+n.number] || w[n.number+" "+n.behind] || w[n.number]
}

// texts takes the program's own words.
func (w numbersRead) texts(v reflect.Value) {
	switch v.Kind() {
	case reflect.String:
		w.take(v.String())
	case reflect.Struct:
		for i := range v.NumField() {
			w.texts(v.Field(i))
		}
	case reflect.Map:
		if v.Type() != reflect.TypeFor[shape.Set]() {
			for _, key := range v.MapKeys() {
				w.texts(v.MapIndex(key))
			}
		}
	}
}

// placed is a number with the words around it.
type placed struct{ before, number, behind string }

// around are the numbers of a text.
func around(text string) iter.Seq[placed] {
	return func(yield func(placed) bool) {
		fields := strings.FieldsFunc(text, func(r rune) bool { return unicode.IsSpace(r) || strings.ContainsRune("\"'{}[],;:()@", r) })
		for i := range fields {
			fields[i] = strings.TrimRight(fields[i], ".?!")
		}
		for i, f := range fields {
			if !numberToken.MatchString(f) {
				continue
			}
			n := placed{number: f}
			if i > 0 {
				n.before = fields[i-1]
			}
			if i+1 < len(fields) {
				n.behind = fields[i+1]
			}
			if !yield(n) {
				return
			}
		}
	}
}

// unworked are the numbers of a page that stand in no file of the manual with
// the word before them or the word behind them, and lead to no working.
func unworked(doc *html.Node, w numbersRead) []string {
	var out []string
	body := all(doc, false, func(n *html.Node) bool { return n.Data == "body" })[0]
	for n := range body.Descendants() {
		if n.Type != html.TextNode || !numberToken.MatchString(n.Data) || told(n) {
			continue
		}
		text := revisionOf.ReplaceAllString(stageOf.ReplaceAllString(pointed(n.Data), "$1$2"), "$1 ·")
		spaced := slices.Collect(around(joined.ReplaceAllString(text, "$1 $2")))
		for number := range around(text) {
			apart := slices.ContainsFunc(spaced, func(p placed) bool { return strings.HasPrefix(number.number, p.number) && w.has(p) })
			if !w.has(number) && !apart && !ordinal.MatchString(number.number) && !(w[": "+number.number] && valued(n)) {
				out = append(out, strings.TrimSpace(n.Data)+" <"+n.Parent.Data+" "+attr(n.Parent, "class")+">")
			}
		}
	}
	return out
}

var (
	ordinal    = regexp.MustCompile(`^\d+(\.\d+)+$`)                        // of a step
	revisionOf = regexp.MustCompile(`\b(rev) \d+ ·`)                        // as revisions.csv numbers them
	stageOf    = regexp.MustCompile(`(^|, |stage |etapa )\d:|(Torque) \d$`) // of a torque
)

// told says that a number is worked out, counted where it stands, drawn, on
// paper alone, where the page has it too, or no
// number but a place in an order or a short code.
func told(n *html.Node) bool {
	for up := range n.Ancestors() {
		if slices.Contains([]string{"svg", "code", "pre", "script"}, up.Data) || attr(up, "data-counts") != "" || up.Data == "a" && attr(up, "href") == "#n"+textOf(up) {
			return true
		}
		for _, class := range []string{"computed", "counts", "workings", "num", "way-back", "to-page", "place", "square", "ticks", "short-code", "every-page-foot"} {
			if classed(up, class) {
				return true
			}
		}
	}
	return false
}

// valued says that a place shows the value of a field by itself: how many hold a
// part, how many a shop owns, how many tries, which unit, how much to fetch.
func valued(n *html.Node) bool {
	for up := range n.Ancestors() {
		if up.Data == "dd" || up.Data == "td" {
			return true
		}
		for _, class := range []string{"turns", "note", "counted", "hold", "facts-asked", "fetch", "side-row", "plate", "record-lines", "around"} {
			if classed(up, class) {
				return true
			}
		}
	}
	return false
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

// What a page computes and leads nowhere is found; so is a working that does not
// come to what is printed, and a number that counts wrong.
func TestANumberWithoutAWorkingIsFound(t *testing.T) {
	w := numbersRead{}
	w.take("people: 2\nfor: 60min\nlast: 2026-03-02\n")
	for text, want := range map[string]int{
		`<p>It takes <a class="computed" href="#working-1">48 min</a>.</p>`: 0,
		`<p>It takes 49 min.</p>`:                1,
		`<p>2 people, 60 min</p>`:                0,
		`<p>3 people</p>`:                        1,
		`<p>good to 2027-03-02</p>`:              1,
		`<p>since 2026-03-02, at step 4.6.1</p>`: 0,
		`<svg><text>77 min</text></svg>`:         0,
	} {
		doc, err := html.Parse(strings.NewReader(text))
		must(t, err)
		if got := unworked(doc, w); len(got) != want {
			t.Errorf("%s: %q", text, got)
		}
	}
	doc, err := html.Parse(strings.NewReader(`<p><a class="counts" href="#used">3</a></p><section id="used"><li>one</li><li>two</li></section>` +
		`<details><summary>Open: <b data-counts="list">2</b></summary><ul><li>a</li></ul></details>`))
	must(t, err)
	if got := miscounted(map[string]*html.Node{"": doc}, "", doc); len(got) != 2 {
		t.Errorf("miscounted: %q", got)
	}
}
