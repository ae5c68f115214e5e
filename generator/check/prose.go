package check

import (
	"cmp"
	"regexp"
	"slices"
	"strings"

	"baybinder/generator/manual"
	"baybinder/generator/quantity"
	"baybinder/generator/source"
)

// word is a word of a sentence as a reader counts it, or a link without words
// (then said is what the page prints for it, and counts that many).
type word struct {
	said  string // in small letters; "" for what is one word whatever stands in it
	at    source.Pos
	link  *manual.Link // the link that it stands in, or nil
	comma bool         // a comma stands behind it
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
func (s sentence) at() source.Pos {
	return source.Pos{File: s[0].at.File, Start: s[0].at.Start, End: s[len(s)-1].at.End}
}

// instructions are the texts of a step that tell what to do: its paragraphs
// and lists together, and each note for the refit, which is read at another
// time. Reasons tell nobody to do anything.
func instructions(s *manual.Step) [][]sentence {
	var own []sentence
	var all [][]sentence
	for i := range s.Blocks {
		switch b := &s.Blocks[i]; {
		case !b.Para && !strings.HasPrefix(b.Parts[0], "<ul"), b.Role == manual.Why:
		case b.Role == manual.OnRefit:
			all = append(all, sentences(b))
		default:
			own = append(own, sentences(b)...)
		}
	}
	return append([][]sentence{own}, all...)
}

// sentences reads a block. Where the rules of counting are not sure (a text in
// quotes, in brackets, behind a colon) it counts the fewer words: advice that
// may be wrong is not given.
func sentences(b *manual.Block) []sentence {
	r := &proseReader{at: b.At, text: []byte(withoutCode(b.At.Text()))}
	for _, link := range b.Links {
		r.takeLink(link)
	}
	r.one(oneWord)
	r.drop(inBrackets)
	r.amounts()
	r.words()
	return r.split()
}

// proseReader finds the words of a block. The text keeps its length: what is
// read is made spaces, so that every offset stays the file's.
type proseReader struct {
	at    source.Pos
	text  []byte
	links []linkSpan
	found []word
}

// linkSpan is where the words of a link stand, in the text.
type linkSpan struct {
	start, end int
	link       *manual.Link
}

var (
	oneWord     = regexp.MustCompile(`"[^"\n]*"|“[^”\n]*”|«[^»\n]*»|<[^>\s]+>`)
	inBrackets  = regexp.MustCompile(`\([^()]*\)`)
	wordPattern = regexp.MustCompile(`[\pL\pN]+(?:[-'’·./_×][\pL\pN]+)*`)
	stopPattern = regexp.MustCompile(`[.!?;:…](?:[\s"”»*_)]|$)|[—–]|\n\s*[-*+]\s`)
)

// takeLink leaves of a link its words alone.
func (r *proseReader) takeLink(link *manual.Link) {
	start, end := link.At.Start-r.at.Start, link.At.End-r.at.Start
	if start < 0 || end > len(r.text) || end <= start {
		return
	}
	middle := strings.LastIndex(string(r.text[start:end]), "](")
	switch {
	case link.Kind == manual.PictureLink:
		r.blank(start, end)
	case middle < 0: // a bare address, or one that is written elsewhere
	case link.Text == "":
		r.blank(start, end)
		r.found = append(r.found, word{at: r.at.Part(start, end), link: link, count: len(wordPattern.FindAllString(printed(link), -1))})
	default:
		r.blank(start, start+1)
		r.blank(start+middle, end)
		r.links = append(r.links, linkSpan{start, start + middle, link})
	}
}

// printed is what the page prints for a link without words.
func printed(link *manual.Link) string {
	switch link.Kind.Target {
	case manual.ToOutcome, manual.ToAnswer, manual.ToGroup, manual.ToOrder:
		return ""
	}
	if link.To == nil {
		return ""
	}
	return link.To.Label()
}

func (r *proseReader) blank(start, end int) {
	for i := start; i < end; i++ {
		r.text[i] = ' '
	}
}

// one makes one word of each match.
func (r *proseReader) one(pattern *regexp.Regexp) {
	for _, m := range pattern.FindAllIndex(r.text, -1) {
		r.add(m[0], m[1], "")
	}
	for _, m := range codeSpans(r.at.Text()) {
		r.add(m[0], m[1], "")
	}
}

func (r *proseReader) drop(pattern *regexp.Regexp) {
	for _, m := range pattern.FindAllIndex(r.text, -1) {
		r.blank(m[0], m[1])
	}
}

// amounts makes one word of each number with its unit, and of a range.
func (r *proseReader) amounts() {
	from, to := -1, -1
	for _, f := range quantity.Find(string(r.text)) {
		if from >= 0 && slices.Contains(between, strings.TrimSpace(string(r.text[to:f.Start]))) {
			to = f.End
			continue
		}
		r.amount(from, to)
		from, to = f.Start, f.End
	}
	r.amount(from, to)
}

// between are the words and signs that make one range of two amounts.
var between = []string{"to", "a", "-", "–", "±", "+"}

func (r *proseReader) amount(from, to int) {
	if from >= 0 {
		r.add(from, to, "")
	}
}

func (r *proseReader) words() {
	for _, m := range wordPattern.FindAllIndex(r.text, -1) {
		r.add(m[0], m[1], strings.ToLower(string(r.text[m[0]:m[1]])))
	}
}

// add notes a word, and whether a comma stands behind it and its link.
func (r *proseReader) add(start, end int, said string) {
	w := word{said: said, at: r.at.Part(start, end), count: 1}
	for _, l := range r.links {
		if start >= l.start && start < l.end {
			w.link = l.link
		}
	}
	rest := strings.TrimLeft(string(r.text[end:]), " *_")
	w.comma = strings.HasPrefix(rest, ",")
	r.found = append(r.found, w)
	r.blank(start, end)
}

// split parts the words at the stops. A link without words at the start of a
// sentence belongs to the one before: it stands behind its full stop.
func (r *proseReader) split() []sentence {
	slices.SortStableFunc(r.found, func(a, b word) int { return cmp.Compare(a.at.Start, b.at.Start) })
	stops := stopPattern.FindAllIndex(r.text, -1)
	var out []sentence
	fresh := true
	for _, w := range r.found {
		for len(stops) > 0 && r.at.Start+stops[0][0] < w.at.Start {
			stops, fresh = stops[1:], true
		}
		if hollow := w.link != nil && w.link.Text == ""; hollow && fresh && len(out) > 0 {
			w.count = 0 // printed behind the full stop
			out[len(out)-1] = append(out[len(out)-1], w)
			continue
		}
		if fresh {
			out, fresh = append(out, nil), false
		}
		out[len(out)-1] = append(out[len(out)-1], w)
	}
	return out
}

// codeSpans are the places of what stands between backticks.
func codeSpans(text string) [][2]int {
	var out [][2]int
	for i := 0; i < len(text); {
		ticks := run(text[i:])
		if ticks == 0 {
			i++
			continue
		}
		end := closing(text, i+ticks, ticks)
		if end > 0 {
			out = append(out, [2]int{i, end})
		}
		i = max(end, i+ticks)
	}
	return out
}

// languageOf is the language that a procedure is written in.
func languageOf(m *manual.Manual, p *manual.Procedure) string {
	return cmp.Or(p.Language, m.Shop.Language, "en")
}
