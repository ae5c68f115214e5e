package check

import (
	"baybinder/generator/language"
	"bytes"
	"cmp"
	"regexp"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"baybinder/generator/base/position"
	"baybinder/generator/base/quantity"
	"baybinder/generator/derive/readability"
	"baybinder/generator/model"
)

// word is a word of a sentence as a reader counts it, or a link without words
// (then said is what the page prints for it, and counts that many).
type word struct {
	said  string // in small letters; "" for what is one word whatever stands in it, and in an entry's name
	at    position.Pos
	link  *model.Link // the link that it stands in, or nil
	comma bool        // a comma stands behind it
	how   bool        // it begins what a colon explains
	count int
}

// sentence is what stands between two full stops. A colon, a semicolon and a
// dash end one as well.
type sentence []word

// count is the number of its words.
func (s sentence) count() int {
	n := 0
	for _, w := range s {
		n += w.count
	}
	return n
}

// at is its place, from the first word to the last.
func (s sentence) at() position.Pos {
	return position.Pos{File: s[0].at.File, Start: s[0].at.Start, End: s[len(s)-1].at.End}
}

// prose reads the texts of steps, one step after another, in memory that it
// uses again: what it gives is good until it reads the next step.
type prose struct {
	words     []word
	sentences []sentence
	texts     [][]sentence
	block     block
}

// instructions are the texts of a step that tell what to do: its paragraphs
// and lists together, and each note for the refit, which is read at another
// time. Reasons tell nobody to do anything.
func (p *prose) instructions(s *model.Step) [][]sentence {
	p.words, p.sentences, p.texts = p.words[:0], p.sentences[:0], p.texts[:0]
	for i := range s.Blocks {
		if b := &s.Blocks[i]; b.Instructs() && b.Role != model.OnRefit {
			p.read(b)
		}
	}
	p.texts = append(p.texts, p.sentences)
	for i := range s.Blocks {
		if b := &s.Blocks[i]; b.Instructs() && b.Role == model.OnRefit {
			begin := len(p.sentences)
			p.read(b)
			p.texts = append(p.texts, p.sentences[begin:])
		}
	}
	return p.texts
}

// read adds the sentences of a block. Where the rules of counting are not sure
// (a text in quotes, in brackets, behind a colon) it counts the fewer words:
// advice that may be wrong is not given.
func (p *prose) read(b *model.Block) {
	source := b.At.Text()
	r := &p.block
	r.at, r.source, r.links = b.At, source, r.links[:0]
	r.text = append(r.text[:0], source...)
	for _, at := range b.Code {
		r.blank(max(0, at.Start-b.At.Start), min(at.End-b.At.Start, len(r.text)))
	}
	r.found = p.words[len(p.words):]
	for _, link := range b.Links {
		r.takeLink(link)
	}
	if bytes.IndexByte(r.text, '"') >= 0 || bytes.IndexByte(r.text, '<') >= 0 || strings.Contains(source, "“") || strings.Contains(source, "«") {
		r.one(oneWord.FindAllIndex(r.text, -1))
	}
	for _, at := range b.Code {
		r.add(max(0, at.Start-b.At.Start), min(at.End-b.At.Start, len(r.text)), "")
	}
	if bytes.IndexByte(r.text, '(') >= 0 {
		r.drop(inBrackets)
	}
	r.amounts()
	r.words()
	p.words = append(p.words, r.found...) // in place, unless they outgrew it
	p.sentences = r.split(p.sentences)
}

// block finds the words of a block. The text keeps its length: what is read is
// made spaces, so that every offset stays the file's.
type block struct {
	at     position.Pos
	source string // as it is written
	text   []byte
	links  []linkSpan
	found  []word
	apart  []word // of these, while they are put in order
	ends   []int  // of its sentences
}

// linkSpan is where the words of a link stand, in the text.
type linkSpan struct {
	start, end         int
	nameStart, nameEnd int // from start, of the name of the entry that it names
	link               *model.Link
}

var (
	oneWord    = regexp.MustCompile(`"[^"\n]*"|“[^”\n]*”|«[^»\n]*»|<[^>\s]+>`)
	inBrackets = regexp.MustCompile(`\([^()]*\)`)
	listItem   = regexp.MustCompile(`\n\s*[-*+]\s`)
)

// takeLink leaves of a link its words alone.
func (r *block) takeLink(link *model.Link) {
	start, end := link.At.Start-r.at.Start, link.At.End-r.at.Start
	if start < 0 || end > len(r.text) || end <= start {
		return
	}
	middle := bytes.LastIndex(r.text[start:end], []byte("]("))
	switch {
	case link.Kind == model.PictureLink:
		r.blank(start, end)
	case middle < 0: // a bare address, or one that is written elsewhere
	case link.Text == "":
		r.blank(start, end)
		r.found = append(r.found, word{at: r.at.Part(start, end), link: link, count: countWords(printed(link))})
	default:
		r.blank(start, start+1)
		r.blank(start+middle, end)
		span := linkSpan{start: start, end: start + middle, link: link}
		span.nameStart, span.nameEnd = nameIn(r.source[start:start+middle], link)
		r.links = append(r.links, span)
	}
}

// nameIn is where the name of a hazard, a hold or another entry stands in the
// words of its link. It is a name and never an order.
func nameIn(words string, link *model.Link) (start, end int) {
	switch link.To.(type) {
	case *model.Hazard, *model.Hold, *model.Tool, *model.Supply, *model.Role:
		name := strings.ToLower(link.To.Label())
		small := strings.ToLower(words)
		if i := strings.Index(small, name); i >= 0 && len(small) == len(words) {
			return i, i + len(name)
		}
	}
	return 0, 0
}

// printed is what the page prints for a link without words.
func printed(link *model.Link) string {
	switch link.Kind.Target {
	case model.ToOutcome, model.ToAnswer, model.ToGroup, model.ToOrder:
		return ""
	default: // the others are no concern of this
	}
	if link.To == nil {
		return ""
	}
	return link.To.Label()
}

func (r *block) blank(start, end int) {
	for i := start; i < end; i++ {
		r.text[i] = ' '
	}
}

// one makes one word of each of these places.
func (r *block) one(places [][]int) {
	for _, m := range places {
		r.add(m[0], m[1], "")
	}
}

func (r *block) drop(pattern *regexp.Regexp) {
	for _, m := range pattern.FindAllIndex(r.text, -1) {
		r.blank(m[0], m[1])
	}
}

// amounts makes one word of each number with its unit, and of a range.
func (r *block) amounts() {
	if !slices.ContainsFunc(r.text, isFigure) {
		return
	}
	for _, p := range quantity.Places(string(r.text)) {
		r.add(p.Start, p.End, "")
	}
}

func isFigure(c byte) bool { return '0' <= c && c <= '9' }

// words adds the words that are left, and puts all in the order of the text:
// these are in it already, and what was found before them is little.
func (r *block) words() {
	before := len(r.found)
	for start, end := nextWord(r.text, 0); start < end; start, end = nextWord(r.text, end) {
		r.add(start, end, strings.ToLower(r.source[start:end]))
	}
	r.order(before)
}

// order puts the first n words among those behind them, which are in order; of
// two at one place the former stays in front.
func (r *block) order(n int) {
	slices.SortStableFunc(r.found[:n], func(a, b word) int { return cmp.Compare(a.at.Start, b.at.Start) })
	r.apart = append(r.apart[:0], r.found[:n]...)
	first, next, to := r.apart, r.found[n:], r.found[:0]
	for len(first) > 0 {
		if len(next) > 0 && next[0].at.Start < first[0].at.Start {
			to, next = append(to, next[0]), next[1:]
		} else {
			to, first = append(to, first[0]), first[1:]
		}
	}
}

// nextWord finds the next word of a text: letters and figures, and between two
// of them one of the signs that join. The two offsets are the same where there
// is none.
func nextWord[T string | []byte](text T, from int) (start, end int) {
	start, end = -1, from
	for i := from; i < len(text); {
		c, size := rune(text[i]), 1
		if c >= utf8.RuneSelf {
			c, size = utf8.DecodeRuneInString(string(text[i:min(i+utf8.UTFMax, len(text))]))
		}
		switch {
		case unicode.IsLetter(c) || unicode.IsNumber(c):
			if start < 0 {
				start = i
			}
			end = i + size
		case start >= 0 && (end < i || !readability.JoinsWords(c)):
			return start, end
		}
		i += size
	}
	return max(start, from), max(end, from)
}

func countWords(text string) (n int) {
	for start, end := nextWord(text, 0); start < end; start, end = nextWord(text, end) {
		n++
	}
	return n
}

// stops are the places of the signs that end a sentence, and of list items.
func (r *block) stops() []int {
	out := r.ends[:0]
	for i := 0; i < len(r.text); i++ {
		c, _ := utf8.DecodeRune(r.text[i:]) // of the bytes behind its first none is a sign
		switch c {
		case '—', '–':
			out = append(out, i)
		case '.', '!', '?', ';', ':', '…':
			if rest := r.text[i+utf8.RuneLen(c):]; len(rest) == 0 || strings.ContainsRune(" \t\n\"*_)”»", firstRune(rest)) {
				out = append(out, i)
			}
		}
	}
	if bytes.IndexByte(r.text, '\n') >= 0 {
		for _, m := range listItem.FindAllIndex(r.text, -1) {
			out = append(out, m[0])
		}
		slices.Sort(out)
	}
	r.ends = out
	return out
}

func firstRune(text []byte) rune {
	c, _ := utf8.DecodeRune(text)
	return c
}

// add notes a word, and whether a comma stands behind it and its link.
func (r *block) add(start, end int, said string) {
	w := word{said: said, at: r.at.Part(start, end), count: 1}
	for _, l := range r.links {
		if start < l.start || start >= l.end {
			continue
		}
		w.link = l.link
		if start >= l.start+l.nameStart && start < l.start+l.nameEnd {
			w.said = ""
		}
	}
	for _, c := range r.text[end:] {
		if c != ' ' && c != '*' && c != '_' {
			w.comma = c == ','
			break
		}
	}
	r.found = append(r.found, w)
	r.blank(start, end)
}

// split parts the words at the stops, and adds the sentences. A link without
// words at the start of a sentence belongs to the one before: it stands behind
// its full stop.
func (r *block) split(out []sentence) []sentence {
	stops := r.stops()
	begin := 0
	fresh := false
	for i := range r.found {
		w := &r.found[i]
		for len(stops) > 0 && r.at.Start+stops[0] < w.at.Start {
			w.how = r.text[stops[0]] == ':'
			stops, fresh = stops[1:], true
		}
		switch hollow := w.link != nil && w.link.Text == ""; {
		case i == begin || !fresh:
			fresh = false
		case hollow:
			w.count = 0 // printed behind the full stop
		default:
			out = append(out, sentence(r.found[begin:i:i]))
			begin, fresh = i, false
		}
	}
	if begin < len(r.found) {
		out = append(out, sentence(r.found[begin:len(r.found):len(r.found)]))
	}
	return out
}

// languageOf is the language that a procedure is written in.
func languageOf(m *model.Manual, p *model.Procedure) string {
	return cmp.Or(p.Language, m.Shop.Language, language.Default().Code)
}

// codeOf is the code of the language whose words those of a tag are: es of
// es-MX; "" where the program does not speak it.
func codeOf(tag string) string {
	if l := language.Known(tag); l != nil {
		return l.Code
	}
	return ""
}
