// Package sentence parts the text of a step into sentences, with the links that
// belong to each.
//
// A sentence ends at a full stop, an exclamation or a question mark before a
// space, and at the end of its paragraph; not at a colon or a semicolon. Links
// behind its end with no word between them belong to it:
//
//	Wait for the inverter. [](hold:inverter-wait)
package sentence

import (
	"bytes"
	"regexp"
	"slices"
	"strings"
	"sync"
	"unicode"
	"unicode/utf8"

	"baybinder/generator/base/position"
	"baybinder/generator/model"
)

// Sentence is a sentence and the links that belong to it, in the order in
// which they stand.
type Sentence struct {
	Text  string // as it is written, links and code blanked out: every offset stays the file's
	At    position.Pos
	Links []Placed
}

// Placed is a link and where it stands: bytes of the text of its sentence,
// behind which it may stand.
type Placed struct {
	*model.Link
	Start, End int
}

// Hole is what a link is blanked out with: no letter, no figure and no space.
const Hole = '\x01'

// Of parts a block into its sentences.
func Of(b *model.Block) []Sentence {
	r := read(b)
	defer readings.Put(r)
	var out []Sentence
	for i, s := range r.spans {
		one := Sentence{Text: string(r.text[s.start:s.end]), At: b.At.Part(s.start, s.end)}
		for _, l := range r.links {
			if l.span == i || l.alsoOf == i {
				one.Links = append(one.Links, Placed{l.Link, l.Start - s.start, l.End - s.start})
			}
		}
		if len(one.Links) > 0 || r.firstWord(s) < s.end {
			out = append(out, one)
		}
	}
	return out
}

// Behind says of each link of a block whether it is one that only marks its
// step (a hazard, a hold, people, a time, an option) and stands behind the end
// of a sentence. It is nil where there is none.
func Behind(b *model.Block) []bool {
	if !slices.ContainsFunc(b.Links, marks) {
		return nil
	}
	r := read(b)
	defer readings.Put(r)
	var out []bool
	for _, l := range r.links {
		if !l.behind || !marks(l.Link) {
			continue
		}
		if out == nil {
			out = make([]bool, len(b.Links))
		}
		out[slices.Index(b.Links, l.Link)] = true
	}
	return out
}

// marks says whether the boxes and marks of a step say what a link says.
func marks(l *model.Link) bool {
	switch l.Kind.Name {
	case "hazard", "hold", "people", "time", "within", "when":
		return true
	}
	return false
}

// reading is a block that is being parted.
type reading struct {
	text  []byte
	links []linked
	spans []span
	run   []*linked // of moveBack
}

// readings are read into again: nothing that Of and Behind give is of theirs.
var readings = sync.Pool{New: func() any { return new(reading) }}

// linked is a link with its place in the block and its sentences.
type linked struct {
	Placed
	span, alsoOf int // alsoOf is -1, or the sentence in front of a link that is one by itself
	behind       bool
}

// span is where a sentence stands.
type span struct {
	start, end int
	stopped    bool // by its own full stop
	apart      bool // it begins a list item or a row: nothing in it belongs to what is in front
}

func read(b *model.Block) *reading {
	r := readings.Get().(*reading)
	r.text, r.links, r.spans = b.AppendWritten(r.text[:0], 'x'), r.links[:0], r.spans[:0] // code is what a display or a label reads, and nothing that is ordered
	r.blankSpaces()
	r.blankMarks()
	for _, link := range b.Links {
		start, end := link.At.Start-b.At.Start, link.At.End-b.At.Start
		if start < 0 || end > len(r.text) || end <= start {
			continue
		}
		fill(r.text[start:end], Hole)
		r.links = append(r.links, linked{Placed: Placed{link, start, end}, alsoOf: -1})
	}
	r.part()
	r.share()
	return r
}

var (
	hardSpace = regexp.MustCompile(`&nbsp;|&#160;|&thinsp;`)
	newItem   = regexp.MustCompile(`\n\s*(?:[-*+]\s|\||\n)`)
)

// blankSpaces makes spaces of those that are written by name.
func (r *reading) blankSpaces() {
	if bytes.IndexByte(r.text, '&') >= 0 {
		for _, m := range hardSpace.FindAllIndex(r.text, -1) {
			fill(r.text[m[0]:m[1]], ' ')
		}
	}
}

// blankMarks takes out the signs of emphasis.
func (r *reading) blankMarks() {
	if bytes.IndexByte(r.text, '*') < 0 {
		return
	}
	for i, c := range r.text {
		if c == '*' && i+1 < len(r.text) && r.text[i+1] != ' ' || c == '*' && i > 0 && r.text[i-1] != '\n' && r.text[i-1] != ' ' {
			r.text[i] = ' '
		}
	}
}

func fill(text []byte, with byte) {
	for i := range text {
		text[i] = with
	}
}

// part finds the sentences.
func (r *reading) part() {
	var apart []int
	if bytes.IndexByte(r.text, '\n') >= 0 {
		for _, m := range newItem.FindAllIndex(r.text, -1) {
			apart = append(apart, m[0])
		}
	}
	begin := span{}
	for i := 0; i < len(r.text); i++ {
		if len(apart) > 0 && apart[0] == i {
			r.close(begin, i, false)
			begin, apart = span{start: i, apart: true}, apart[1:]
			continue
		}
		if c := r.text[i]; c != '.' && c != '!' && c != '?' {
			continue
		}
		if end := r.stop(begin.start, i); end > 0 {
			r.close(begin, end, true)
			begin, i = span{start: end}, end-1
		}
	}
	r.close(begin, len(r.text), false)
}

func (r *reading) close(s span, end int, stopped bool) {
	s.end, s.stopped = end, stopped
	if len(bytes.TrimSpace(r.text[s.start:end])) > 0 {
		r.spans = append(r.spans, s)
	}
}

// stop is the end of the sentence whose last sign may be the one at i, or 0.
func (r *reading) stop(begin, i int) int {
	end := i + 1
	for end < len(r.text) {
		c, size := utf8.DecodeRune(r.text[end:])
		if !strings.ContainsRune(`*_"')]”’».!?`, c) {
			break
		}
		end += size
	}
	switch {
	case end < len(r.text) && r.text[end] != Hole && !isSpace(r.text[end:]):
		return 0
	case r.text[i] == '.' && shortened(r.text[begin:i]):
		return 0
	}
	return end
}

func isSpace(text []byte) bool {
	c, _ := utf8.DecodeRune(text)
	return unicode.IsSpace(c)
}

// shortWords end in a full stop that ends no sentence.
var shortWords = map[string]bool{
	"approx": true, "ca": true, "max": true, "min": true, "e.g": true, "i.e": true, "fig": true, "ref": true, "vol": true, "resp": true, "incl": true,
	"aprox": true, "máx": true, "mín": true, "p": true, "ej": true, "núm": true, "pág": true,
}

// shortened says whether a text ends in a word that a full stop shortens.
func shortened(text []byte) bool {
	begin := bytes.LastIndexFunc(text, func(c rune) bool { return unicode.IsSpace(c) || c == '(' || c == Hole })
	word := strings.ToLower(string(text[begin+1:]))
	if word == "min" { // "5 min." ends a sentence
		before := bytes.TrimSpace(text[:begin+1])
		return len(before) == 0 || !unicode.IsDigit(rune(before[len(before)-1]))
	}
	return shortWords[word]
}

// share gives each link its sentence.
func (r *reading) share() {
	for i := range r.links {
		l := &r.links[i]
		l.span = slices.IndexFunc(r.spans, func(s span) bool { return l.Start >= s.start && l.Start < s.end })
	}
	for i := 1; i < len(r.spans); i++ {
		if !r.spans[i].apart {
			r.moveBack(i)
		}
	}
}

// moveBack gives the links with which a sentence begins, and no word stands
// before or among them, to the one in front.
func (r *reading) moveBack(i int) {
	s := r.spans[i]
	word := r.firstWord(s)
	run := r.run[:0]
	for k := range r.links {
		if l := &r.links[k]; l.span == i && l.Start < word {
			run = append(run, l)
		}
	}
	r.run = run
	front := r.front(i)
	if word == s.end {
		for _, l := range run {
			r.moveAlone(l, s, front)
		}
		return
	}
	for _, l := range run[:r.opener(run, word)] {
		l.span, l.behind = front, true
	}
}

// front is the sentence to which links behind the end belong.
func (r *reading) front(i int) int {
	for i--; i > 0 && !r.spans[i].apart && r.firstWord(r.spans[i]) == r.spans[i].end; i-- {
	}
	return i
}

// moveAlone gives away a link of a sentence that has no words but those of
// links. With a full stop of its own it is a sentence and is read as one; what
// stops the work or warns is held beside what is in front all the same.
func (r *reading) moveAlone(l *linked, s span, front int) {
	switch {
	case !s.stopped:
		l.span, l.behind = front, true
	case l.Text == "" || marks(l.Link):
		l.alsoOf = front
	}
}

// opener is the place in a run of links of the one with which the sentence
// itself begins: the last that has words, where the sentence goes on behind it
// ("[With a cab](when:cab), lift"), and what a sign joins to it. Behind a mark
// a capital begins a sentence of its own.
func (r *reading) opener(run []*linked, word int) int {
	n := len(run)
	if n == 0 || run[n-1].Text == "" {
		return n
	}
	last := run[n-1]
	first, _ := utf8.DecodeRune(r.text[word:])
	if marks(last.Link) && unicode.IsUpper(first) && len(bytes.TrimSpace(r.text[last.End:word])) == 0 {
		return n
	}
	for n--; n > 0 && run[n-1].Text != "" && len(bytes.TrimSpace(r.text[run[n-1].End:run[n].Start])) > 0; n-- {
	}
	return n
}

// firstWord is where the first word outside links begins, the end where there
// is none.
func (r *reading) firstWord(s span) int {
	at := bytes.IndexFunc(r.text[s.start:s.end], func(c rune) bool { return unicode.IsLetter(c) || unicode.IsDigit(c) })
	if at < 0 {
		return s.end
	}
	return s.start + at
}
