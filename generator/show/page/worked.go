package page

import (
	"bytes"
	"html"
	"strconv"
	"strings"

	"baybinder/generator/trade/working"
)

// A computed number stands in a page's texts between private signs, with its
// working before it. Once the page is written it becomes a link to that working
// at the page's foot. One function, Worked, makes such a number; what counts the
// lines beside it, or is an ordinal, needs none.
const (
	worksOut = "\ue003" // its working follows
	isShown  = "\ue004" // the number follows
	wasShown = "\ue005" // it ends
	between  = "\ue006" // the texts of a working
	footHere = "\ue007" // where the workings go
)

// Worked is a number that leads to its working; "" stays "".
func Worked(text string, c Computed) string {
	if text == "" || !c.Working.Known() {
		return text
	}
	w := &c.Working
	fields := []string{c.Title, w.Formula, w.Put, w.Result, w.Source}
	for _, t := range w.Terms {
		fields = append(fields, "t", t.Sign, t.Words, t.Value)
	}
	for _, a := range w.Assumes {
		fields = append(fields, "a", a)
	}
	for i, f := range fields {
		fields[i] = bare(f)
	}
	return worksOut + strings.Join(fields, between) + isShown + bare(text) + wasShown
}

// Unworked is a text whose numbers lead nowhere: on paper, and where it is read
// out of its place.
func Unworked(text string) string { return bare(text) }

// FootHere is where the workings of a page go.
func FootHere() string { return footHere }

// Workings are the computed numbers of a page, at its foot.
type Workings struct {
	Title  string // over all of them
	Source string // before each source
	List   []Computed
}

// unpacked is a working from the texts before its number, as they stand in markup.
func unpacked(markup string) Computed {
	fields := strings.Split(html.UnescapeString(markup), between)
	c := Computed{Title: fields[0], Working: working.Working{Formula: fields[1], Put: fields[2], Result: fields[3], Source: fields[4]}}
	for rest := fields[5:]; len(rest) > 1; {
		if rest[0] == "a" {
			c.Working.Assumes, rest = append(c.Working.Assumes, rest[1]), rest[2:]
			continue
		}
		c.Working.Terms, rest = append(c.Working.Terms, working.Term{Sign: rest[1], Words: rest[2], Value: rest[3]}), rest[4:]
	}
	return c
}

// bare is a text in which no number is led from to its working.
func bare(text string) string {
	if !strings.Contains(text, worksOut) && !strings.Contains(text, isShown) {
		return text
	}
	var out strings.Builder
	for {
		before, rest, is := strings.Cut(text, worksOut)
		out.WriteString(before)
		if !is {
			break
		}
		if _, text, is = strings.Cut(rest, isShown); !is {
			break
		}
	}
	return strings.ReplaceAll(out.String(), wasShown, "")
}

// Finish writes a page with its computed numbers as links, their workings at its
// foot, and what is not in its language marked. out must be empty.
func (s *Site) Finish(out *bytes.Buffer, page []byte, foot func(to *bytes.Buffer, w Workings)) {
	if !bytes.Contains(page, []byte(footHere)) {
		out.Write(s.foreign(page))
		return
	}
	s.worked(out, page, foot)
	if bytes.Contains(out.Bytes(), []byte(closes)) {
		done := s.foreign(out.Bytes())
		out.Reset()
		out.Write(done)
	}
}

func (s *Site) worked(out *bytes.Buffer, page []byte, foot func(to *bytes.Buffer, w Workings)) {
	f := finishing{out: out, anchors: map[string]int{}}
	w := Workings{Title: s.Speaks.Worked.Section, Source: s.Words.Source}
	for len(page) > 0 {
		at := bytes.IndexByte(page, worksOut[0])
		if at < 0 {
			out.Write(page)
			return
		}
		f.pass(page[:at])
		page = page[at:]
		switch {
		case bytes.HasPrefix(page, []byte(worksOut)):
			packed, rest, _ := bytes.Cut(page[len(worksOut):], []byte(isShown))
			shown, rest, _ := bytes.Cut(rest, []byte(wasShown))
			f.number(packed, shown)
			page = rest
		case bytes.HasPrefix(page, []byte(footHere)):
			if w.List = f.list; len(w.List) > 0 {
				foot(out, w)
			}
			page = page[len(footHere):]
		case len(page) > 0:
			out.WriteByte(page[0])
			page = page[1:]
		}
	}
}

// finishing is a page while its numbers become links.
type finishing struct {
	out     *bytes.Buffer
	anchors map[string]int // by the packed working: which of list
	list    []Computed
	inTag   bool
	inside  [len(closed)]bool // an element in which no link can stand
}

// usual is how many workings most pages have room in.
const usual = 16

// closed are elements in which no link can stand, or leads a screen reader
// astray: a number in them stays plain. They are what stands behind "<" of their tags.
var closed = [...]struct{ from, to []byte }{
	{[]byte("a "), []byte("/a>")}, {[]byte("summary"), []byte("/summary>")}, {[]byte("title"), []byte("/title>")},
	{[]byte("svg"), []byte("/svg>")},
}

// pass writes what stands between numbers, and remembers what it leaves open.
func (f *finishing) pass(text []byte) {
	f.out.Write(text)
	if open, shut := bytes.LastIndexByte(text, '<'), bytes.LastIndexByte(text, '>'); open >= 0 || shut >= 0 {
		f.inTag = open > shut
	}
	for at := bytes.IndexByte(text, '<'); at >= 0; at = bytes.IndexByte(text, '<') {
		text = text[at+1:]
		f.tag(text)
	}
}

// tag remembers the element that a tag opens or closes. tag is what stands behind
// its "<", and what follows.
func (f *finishing) tag(tag []byte) {
	name := bytes.TrimPrefix(tag, []byte("/"))
	if len(name) == 0 || name[0] != 'a' && name[0] != 's' && name[0] != 't' {
		return // nearly all
	}
	for i := range closed {
		switch {
		case bytes.HasPrefix(tag, closed[i].from):
			f.inside[i] = true
		case bytes.HasPrefix(tag, closed[i].to):
			f.inside[i] = false
		}
	}
}

// number writes a number, as a link where one can stand. The same working stands
// at the foot once.
func (f *finishing) number(packed, shown []byte) {
	if f.inTag || f.inside != [len(closed)]bool{} {
		f.out.Write(shown)
		return
	}
	n := f.anchors[string(packed)]
	if n == 0 {
		if f.list == nil {
			f.list = make([]Computed, 0, usual)
		}
		written := string(packed)
		f.list = append(f.list, unpacked(written))
		n = len(f.list)
		f.list[n-1].Anchor = "working-" + strconv.Itoa(n)
		f.anchors[written] = n
	}
	f.out.WriteString(`<a class="computed" href="#working-`)
	f.out.Write(strconv.AppendInt(f.out.AvailableBuffer(), int64(n), 10))
	f.out.WriteString(`">`)
	f.out.Write(shown)
	f.out.WriteString(`</a>`)
}
