package page

import (
	"bytes"
	"strconv"
	"sync"

	"baybinder/generator/base/finding"
)

// Finish writes a page with the private signs of its texts as elements: what is
// not in its language is marked, a computed number leads to its working, and the
// workings stand at its foot, where it has one.
func (s *Site) Finish(out *bytes.Buffer, page []byte, foot func(to *bytes.Buffer, w Workings)) {
	f := finishings.Get().(*finishing)
	defer finishings.Put(f)
	f.begin(s)
	page = shown(page)
	f.out, f.foot, f.footed = out, foot, bytes.Contains(page, []byte(footHere))
	f.write(page)
}

// shown is a page in which no sign steers a terminal or a browser: controls but
// tabs and line ends, which HTML does not allow (HTML Standard, 13.2.3.5), stand
// as U+FFFD. They come from texts that people pasted, and from what YAML escapes.
func shown(page []byte) []byte {
	if !steers(page) {
		return page
	}
	return bytes.Map(func(r rune) rune {
		if finding.IsControl(r) {
			return '\ufffd'
		}
		return r
	}, page)
}

// steers looks for such a sign.
func steers(page []byte) bool {
	for i, b := range page {
		if maySteer[b] && (b != beforeC1 || i+1 < len(page) && page[i+1] < 0xa0) {
			return true
		}
	}
	return false
}

// beforeC1 is the first byte of U+0080 to U+00BF in UTF-8. Of these U+0080 to U+009F
// are controls.
const beforeC1 = 0xc2

// maySteer says with which bytes such a sign begins: every byte of the site is
// looked up in it.
var maySteer = func() (is [256]bool) {
	for b := range byte(' ') {
		is[b] = b != '\t' && b != '\n'
	}
	is[0x7f], is[beforeC1] = true, true
	return is
}()

// finishings are used again: most pages have as many workings as the next.
var finishings = sync.Pool{New: func() any { return &finishing{anchors: map[string]int{}, units: map[string]int{}} }}

// finishing is a page while its signs become elements.
type finishing struct {
	out    *bytes.Buffer
	site   *Site
	foot   func(to *bytes.Buffer, w Workings)
	footed bool // the page has a foot for its workings

	anchors map[string]int // by the packed working: which of list
	list    []Computed
	inTag   bool
	inside  [len(closed)]bool // an element in which no link can stand
	marked  int               // elements with a language that are open
	worked  bytes.Buffer      // the workings, before their own signs are elements

	units map[string]int // what unitAt found in the pages of one site; no more than manyUnits
}

// manyUnits is how many texts behind numbers are remembered.
const manyUnits = 2000

// begin begins a page of a site, and forgets the last one.
func (f *finishing) begin(s *Site) {
	if f.site != s || len(f.units) > manyUnits {
		clear(f.units)
	}
	f.site = s
	clear(f.anchors)
	clear(f.list)
	f.list, f.inTag, f.inside, f.marked = f.list[:0], false, [len(closed)]bool{}, 0
	f.worked.Reset()
}

// closed are elements in which no link can stand, or leads a screen reader
// astray: a number in them stays plain. They are what stands behind "<" of their
// tags. In those up to inDrawing no element of text can stand.
var closed = [...]struct{ from, to string }{
	inTitle: {"title", "/title>"}, inScript: {"script", "/script>"}, inOption: {"option", "/option>"}, inDrawing: {"svg", "/svg>"},
	{"a ", "/a>"}, {"summary", "/summary>"},
}

const (
	inTitle = iota
	inScript
	inOption
	inDrawing
	noText // how many these are
)

// firstOfSign is the byte with which every private sign begins (UTF-8).
const firstOfSign = '\xee'

// write writes a piece of the page.
func (f *finishing) write(page []byte) {
	for len(page) > 0 {
		at := bytes.IndexByte(page, firstOfSign)
		if at < 0 {
			at = len(page)
		}
		f.pass(page[:at])
		page = f.sign(page[at:])
	}
}

// sign writes what a sign at the beginning of a piece stands for, and gives what
// follows.
func (f *finishing) sign(page []byte) []byte {
	is := func(sign string) bool { return bytes.HasPrefix(page, []byte(sign)) }
	switch {
	case len(page) == 0:
		return page
	case is(opens):
		f.mark(f.site.Manual.Shop.Language)
	case is(borrows):
		f.mark(f.site.Speaks.Code)
	case is(closes):
		f.unmark()
	case is(worksOut):
		packed, rest, _ := bytes.Cut(page[len(worksOut):], []byte(isShown))
		shown, rest, _ := bytes.Cut(rest, []byte(wasShown))
		f.number(packed, shown)
		return rest
	case is(footHere):
		f.workings()
	default: // no sign of ours
		f.out.WriteByte(page[0])
		return page[1:]
	}
	return page[len(opens):] // all are of one length
}

// mark begins a text of a language. In attributes and in the window's title no
// element can stand, and the signs go.
func (f *finishing) mark(language string) {
	if f.inTag || f.inside[inTitle] {
		return
	}
	f.out.WriteString(`<span lang="`)
	f.out.WriteString(language)
	f.out.WriteString(`">`)
	f.marked++
}

func (f *finishing) unmark() {
	if f.inTag || f.inside[inTitle] || f.marked == 0 {
		return
	}
	f.out.WriteString("</span>")
	f.marked--
}

// pass writes what stands between signs, each amount in it as one that is not
// parted, and remembers what it leaves open. Most of a page is written as it
// stands, in pieces as long as can be.
func (f *finishing) pass(text []byte) {
	for at := 0; at < len(text); {
		if f.inTag {
			end := bytes.IndexByte(text[at:], '>') + 1
			if f.inTag = end == 0; f.inTag {
				break
			}
			at += end
			continue
		}
		end := bytes.IndexByte(text[at:], '<')
		if end < 0 {
			end = len(text) - at
		}
		if f.elements() {
			if written := f.amounts(text[:at+end], at); written > 0 {
				text, at = text[written:], at-written
			}
		}
		if at += end; at < len(text) {
			f.inTag = true
			f.tag(text[at+1:])
		}
	}
	f.out.Write(text)
}

// elements says that elements of text can stand here.
func (f *finishing) elements() bool {
	return [noText]bool(f.inside[:noText]) == [noText]bool{}
}

// tag remembers the element that a tag opens or closes. tag is what stands behind
// its "<", and what follows.
func (f *finishing) tag(tag []byte) {
	shut := len(tag) > 0 && tag[0] == '/'
	for i := range closed {
		name := closed[i].from
		if shut {
			name = closed[i].to
		}
		if len(tag) > 1 && tag[1] == name[1] && tag[0] == name[0] && bytes.HasPrefix(tag, []byte(name)) { // seldom
			f.inside[i] = !shut
		}
	}
}

// number writes a number, as a link where one can stand. The same working stands
// at the foot once.
func (f *finishing) number(packed, shown []byte) {
	if !f.footed || f.inTag || f.inside != [len(closed)]bool{} {
		f.write(shown)
		return
	}
	n := f.anchors[string(packed)]
	if n == 0 {
		written := string(packed)
		f.list = append(f.list, unpacked(written))
		n = len(f.list)
		f.list[n-1].Anchor = "working-" + strconv.Itoa(n)
		f.anchors[written] = n
	}
	f.out.WriteString(`<a class="computed" href="#working-`)
	f.out.Write(strconv.AppendInt(f.out.AvailableBuffer(), int64(n), 10))
	f.out.WriteString(`">`)
	f.write(shown)
	f.out.WriteString(`</a>`)
}

// workings writes those of the numbers so far, as they are marked themselves.
func (f *finishing) workings() {
	if len(f.list) == 0 {
		return
	}
	f.foot(&f.worked, Workings{Title: f.site.Speaks.Worked.Section, Source: f.site.Words.Source, List: f.list})
	f.write(f.worked.Bytes())
}
