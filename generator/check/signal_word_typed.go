package check

import (
	"baybinder/generator/language"
	"baybinder/generator/language/shape"
	"regexp"
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
)

var signalWordTyped = finding.Rule{
	Code:  "signal-word-typed",
	Title: "A signal word that was typed",
	Why:   "The signal word follows from the harm and from how likely it is, the same on every page. A typed one can say less than the register, and it stands in no box.",
	Mend:  "Link the hazard: Mind [the charged capacitors](hazard:charged-capacitors). What is painted on the machine is quoted as code: `DANGER`.",
}

const signalMend = "link the hazard, [words](hazard:its-id): the box writes the signal word; what is painted on the machine goes between ` `"

func runSignalWordTyped(c *Context, p *model.Procedure) []finding.Finding {
	words := signalsOf(c.Manual.Shop)
	if !words.mayStandIn(p.File.Text) {
		return nil
	}
	var found []finding.Finding
	for _, b := range p.Blocks() {
		if strings.HasPrefix(b.Parts[0], "<pre") {
			continue
		}
		for _, at := range words.find(b) {
			found = append(found, signalWordTyped.At(at, "%s is typed here as a signal word", at.Text()).WithMend(signalMend))
		}
	}
	return found
}

// runSignalWordInRegister looks at the texts that stand in boxes and holds.
func runSignalWordInRegister(c *Context) []finding.Finding {
	words := signalsOf(c.Manual.Shop)
	var found []finding.Finding
	look := func(e *model.Entry, texts ...string) {
		if word := words.first(texts); word != "" {
			found = append(found, signalWordTyped.At(e.At, "a text of %s has %s typed as a signal word", e.ID, word).
				WithMend("take the word out: the box writes it, from harm and happens"))
		}
	}
	for _, h := range c.Manual.Hazards {
		look(&h.Entry, append([]string{h.Nature, h.Consequence, h.FirstAid, h.Note}, h.Avoid...)...)
	}
	for _, h := range c.Manual.Holds {
		look(&h.Entry, h.Why, h.What, h.IfNot, h.Note)
	}
	return found
}

// signals are the signal words of one language, ready to be looked for.
type signals struct {
	words    []string       // in capitals
	small    []string       // in small letters
	capitals *regexp.Regexp // in capitals before a sign
	strong   *regexp.Regexp // in any letters in strong text before a sign
}

// languages of a shop.
type languages []*signals

// signalWords are the words by language: those of ANSI Z535.6 and those that
// are used for them, accents left off as well.
var signalWords = byCode(func(l *shape.Language) *signals { return newSignals(l.Signals...) })

// after is what makes a word a signal word: a colon, a dash or an exclamation
// mark behind it, and only markup or the end of a link between.
const after = `[*_\s]*(?:\]\([^)\s]*\)[*_\s]*)?(?:[:!–—]|-(?:[^\pL\pN]|$))`

func newSignals(words ...string) *signals {
	any := `(` + strings.Join(words, "|") + `)`
	small := make([]string, len(words))
	for i, w := range words {
		small[i] = strings.ToLower(w)
	}
	return &signals{
		words:    words,
		small:    small,
		capitals: regexp.MustCompile(`(?:^|[^\pL\pN-])` + any + after),
		strong:   regexp.MustCompile(`(?:\*\*|__)[*_\[]*(?i:` + any + `)` + after),
	}
}

// signalsOf are the words of English and of the shop's languages.
func signalsOf(s *model.Shop) languages {
	list := languages{signalWords[language.Default().Code]}
	for _, tag := range append([]string{s.Language}, s.Also...) {
		if words := signalWords[codeOf(tag)]; words != nil && !slices.Contains(list, words) {
			list = append(list, words)
		}
	}
	return list
}

// mayStandIn is a quick look: most texts have neither a signal word in
// capitals nor strong text.
func (l languages) mayStandIn(text string) bool {
	if strings.Contains(text, "**") || strings.Contains(text, "__") {
		return true
	}
	for _, s := range l {
		for _, word := range s.words {
			if strings.Contains(text, word) {
				return true
			}
		}
	}
	return false
}

// find is every place of a signal word in a block.
func (l languages) find(b *model.Block) []position.Pos {
	if !l.mayStandIn(b.At.Text()) {
		return nil
	}
	text := string(b.Written(' '))
	var out []position.Pos
	told := map[int]bool{}
	for _, pattern := range l.patterns(text) {
		for _, m := range pattern.FindAllStringSubmatchIndex(text, -1) {
			if !told[m[2]] {
				told[m[2]] = true
				out = append(out, b.At.Part(m[2], m[3]))
			}
		}
	}
	return out
}

// patterns are those of which a text holds a word at all: a pattern takes long
// to go through a text in vain.
func (l languages) patterns(text string) []*regexp.Regexp {
	var out []*regexp.Regexp
	small := ""
	if strings.Contains(text, "**") || strings.Contains(text, "__") {
		small = strings.ToLower(text)
	}
	holds := func(text string) func(string) bool {
		return func(word string) bool { return strings.Contains(text, word) }
	}
	for _, s := range l {
		if slices.ContainsFunc(s.words, holds(text)) {
			out = append(out, s.capitals)
		}
		if slices.ContainsFunc(s.small, holds(small)) {
			out = append(out, s.strong)
		}
	}
	return out
}

// first is the first signal word in a list of texts, or "".
func (l languages) first(texts []string) string {
	for _, text := range texts {
		for _, s := range l {
			if m := s.capitals.FindStringSubmatch(text); m != nil {
				return m[1]
			}
		}
	}
	return ""
}
