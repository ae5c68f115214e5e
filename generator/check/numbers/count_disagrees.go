package numbers

import (
	"baybinder/generator/language"
	"baybinder/generator/language/shape"
	"cmp"
	"maps"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
)

// CountDisagrees is told at the fastener's link.
var CountDisagrees = finding.Rule{
	Code:  "count-disagrees",
	Title: "A number of fasteners that is not the machine's",
	Why:   "Who counts four and finds five leaves one in, or takes the wrong part off.",
	Mend:  "Write the number that holds the part, or mend held-by in the machine's file.",
}

// countsDisagree holds the counts before and in the words of fasteners' links
// against what holds the parts that the step takes off or refits.
func countsDisagree(j *job) []finding.Finding {
	words := countWordsOf(j.language())
	var found []finding.Finding
	for _, s := range j.of.Steps {
		for b := range s.Blocks {
			block := &s.Blocks[b]
			for i, link := range block.Links {
				f, is := link.To.(*model.Fastener)
				if !is || link.Bad || f.Lost(model.Holding) {
					continue
				}
				n := words.typed(block.Parts[i], link, f)
				switch {
				case n == 0:
				case turnsAlone(s, link):
					found = append(found, turnedDisagrees(link, f, n, words.all(block.Parts[i], link))...)
				default:
					found = append(found, countDisagrees(s, link, f, n)...)
				}
			}
		}
	}
	return found
}

func countDisagrees(s *model.Step, link *model.Link, f *model.Fastener, typed int) []finding.Finding {
	held, ok := heldBy(s, link, f)
	if !ok || slices.ContainsFunc(held, func(h holding) bool { return h.count == typed }) {
		return nil
	}
	h := held[0]
	return []finding.Finding{CountDisagrees.At(link.At, "the words count %d, and the %s is held by %d", typed, h.what, h.count).
		WithMend("write %d, or mend held-by in the machine's file", h.count).See(h.part.At, "it is counted here")}
}

// turnsAlone says that a link loosens or tightens a fastener in a step that moves no
// part.
func turnsAlone(s *model.Step, link *model.Link) bool {
	return (link.Kind.Act == model.Loosen || link.Kind.Act == model.Tighten) && len(partsOf(s)) == 0
}

// turnedDisagrees holds the count of a fastener that is loosened or tightened by itself
// against all that there are of it. Fewer may be turned than there are, where the
// words do not say that it is all of them.
func turnedDisagrees(link *model.Link, f *model.Fastener, typed int, all bool) []finding.Finding {
	sums, names, sum := map[int]bool{0: true}, []string{}, 0
	parts := meantAt(link, f.Holds)
	for _, p := range parts {
		if uncounted(p, f) {
			return nil
		}
		n := countAt(p, f)
		for _, had := range slices.Collect(maps.Keys(sums)) {
			sums[had+n] = true
		}
		names, sum = append(names, p.Label()), sum+n
	}
	if sum == 0 || sums[typed] || typed < sum && !all {
		return nil
	}
	return []finding.Finding{CountDisagrees.At(link.At, "the words count %d, and the %s is held by %d", typed, listOf(names), sum).
		WithMend("write %d, or mend held-by in the machine's file", sum).See(parts[0].At, "it is counted here")}
}

// meantAt are those of some parts that a fastener's link means: the one that it names,
// or all.
func meantAt(link *model.Link, parts []*model.Part) []*model.Part {
	if link.Part() == nil {
		return parts
	}
	return slices.DeleteFunc(slices.Clone(parts), func(p *model.Part) bool { return p != link.Part() })
}

// all says that the count at a link is of all that there are: "the six bolts".
func (c countWords) all(before string, link *model.Link) bool {
	words := append(strings.Fields(model.Unmarked(before)), strings.Fields(link.Text)...)
	for i, w := range words[min(1, len(words)):] {
		if c.count(w) > 0 && slices.Contains(c.Articles, strings.ToLower(words[i])) {
			return true
		}
	}
	return false
}

// holding is how many of a fastener hold a part, or several parts together.
type holding struct {
	what  finding.List // its names
	part  *model.Part
	count int
}

// heldBy is how many of a fastener hold each part that a step takes off or
// refits, and all of them together. It is false where there is none, or one of
// them is not known.
func heldBy(s *model.Step, link *model.Link, f *model.Fastener) ([]holding, bool) {
	var held []holding
	var names []string
	sum := 0
	for _, part := range meantAt(link, partsOf(s)) {
		if uncounted(part, f) {
			return nil, false
		}
		if n := countAt(part, f); n > 0 {
			held = append(held, holding{listOf([]string{part.Label()}), part, n})
			names = append(names, part.Label())
			sum += n
		}
	}
	if len(held) == 0 {
		return nil, false
	}
	return append(held, holding{listOf(names), held[0].part, sum}), true
}

// partsOf are the parts that a step takes off or puts back, each once.
func partsOf(s *model.Step) []*model.Part {
	var out []*model.Part
	for _, link := range s.Links {
		part, is := link.To.(*model.Part)
		if is && link.Kind.MovesPart() && !link.Bad && !slices.Contains(out, part) {
			out = append(out, part)
		}
	}
	return out
}

// uncounted says that it is not known how many of a fastener hold a part: what holds
// it could not be read, or has no number.
func uncounted(part *model.Part, f *model.Fastener) bool {
	return part.Lost("held-by") || slices.ContainsFunc(part.HeldBy, func(use model.Use[model.Fastener]) bool {
		n, err := strconv.Atoi(use.Amount)
		return use.To == f && (err != nil || n < 1)
	})
}

// countAt is how many of a fastener hold a part, 0 where no number is given.
func countAt(part *model.Part, f *model.Fastener) int {
	for _, use := range part.HeldBy {
		if n, err := strconv.Atoi(use.Amount); use.To == f && err == nil {
			return n
		}
	}
	return 0
}

// countWords are the words for one to twenty in a language, and the words of
// "two of the four".
type countWords struct {
	shape.Numbers
	plurals []string // how a noun's plural ends
}

// countWordsOf is the words of a language; of others only figures are read.
func countWordsOf(tag string) countWords {
	if l := language.Known(tag); l != nil {
		return countWords{l.Numbers, l.Verbs.Plurals}
	}
	return countWords{}
}

// typed is the count that is typed at a link: the first of its own words, else the
// one of an act's that stands before the fastener's name, else the last word before
// it. Of "two of the four" it is the four; it is 0 where there is none.
func (c countWords) typed(before string, link *model.Link, f *model.Fastener) int {
	own := strings.Fields(link.Text)
	n := cmp.Or(c.ofThe(own), c.first(own, link.Text))
	if link.Kind.Act != model.NoAct {
		n = cmp.Or(n, c.named(own, f.Label()))
	}
	return cmp.Or(n, c.last(strings.Fields(model.Unmarked(before))))
}

// last is the count that the last of the words is.
func (c countWords) last(words []string) int {
	if len(words) == 0 {
		return 0
	}
	for i := max(0, len(words)-mostOfDozens); i < len(words); i++ {
		if n, used := c.dozens(words[i:]); i+used == len(words) && !(i > 0 && c.Apart[strings.ToLower(words[i-1])]) {
			return n
		}
	}
	return c.count(words[len(words)-1])
}

// mostOfDozens is more words than a number of dozens takes.
const mostOfDozens = 4

// dozens is the number of dozens with which words begin, and how many of them it
// takes: "half a dozen", "two dozen", "docena de".
func (c countWords) dozens(words []string) (n, used int) {
	many := 1
	if n := c.count(words[0]); n > 0 {
		many, used = n, 1
	}
	for i := min(len(words)-used, mostOfDozens); i > 0; i-- {
		if n := c.Dozens[strings.ToLower(strings.Join(words[used:used+i], " "))]; n > 0 {
			return many * n, used + i
		}
	}
	return 0, 0
}

// named is the one count among the words of an order, "Undo the four bolts": before
// a word of the fastener's name, to which a plural or a first part may be lacking.
func (c countWords) named(words []string, name string) int {
	count, found := 0, 0
	for i := 1; i+1 < len(words); i++ {
		n, next := c.count(words[i]), i+1
		if dozens, used := c.dozens(words[i:]); used > 0 && i+used < len(words) {
			n, next = dozens, i+used
		}
		if n == 0 {
			continue
		}
		found++
		if said := strings.ToLower(strings.TrimRight(words[next], ",;:.")); slices.ContainsFunc(strings.Fields(strings.ToLower(name)), func(own string) bool { return c.isOf(own, said) }) {
			count = n
		}
		i = next - 1
	}
	if found > 1 {
		return 0
	}
	return count
}

// isOf says that a word is another, or its plural, or the end of it that the other
// is a kind of: "Schrauben" of a "Blechschraube".
func (c countWords) isOf(own, said string) bool {
	for _, plural := range append([]string{""}, c.plurals...) {
		if one := strings.TrimSuffix(said, plural); len(one) > 2 && strings.HasSuffix(own, one) {
			return true
		}
	}
	return false
}

// first is the count with which a text begins; an amount such as "22 N·m" is
// none.
func (c countWords) first(words []string, text string) int {
	if len(words) == 0 {
		return 0
	}
	if found := quantity.Find(text); len(found) > 0 && found[0].Start == 0 {
		return 0
	}
	for i := range min(2, len(words)) { // "a dozen", "half a dozen"
		if n, _ := c.dozens(words[i:]); n > 0 {
			return n
		}
	}
	n := c.count(words[0])
	if n == 0 {
		return 0
	}
	return cmp.Or(c.ofThe(words[1:]), n)
}

// ofThe is the four of "of the four".
func (c countWords) ofThe(words []string) int {
	if len(words) < 2 || c.Of == "" || words[0] != c.Of {
		return 0
	}
	words = words[1:]
	if len(words) > 1 && slices.Contains(c.Articles, words[0]) {
		words = words[1:]
	}
	return c.count(words[0])
}

var figures = regexp.MustCompile(`^[1-9]\d{0,2}$`)

// count reads figures, or one to twenty in the language.
func (c countWords) count(word string) int {
	if figures.MatchString(word) {
		n, _ := strconv.Atoi(word) // three figures
		return n
	}
	return slices.Index(c.Words, strings.ToLower(word)) + 1
}
