package check

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/base/quantity"
	"baybinder/generator/check/numbers"
	"baybinder/generator/model"
)

var translationDiffers = finding.Rule{
	Code:  "translation-differs",
	Title: "A translation that says something else",
	Why:   "The order of work, the energies and the refit are worked out from the original's links. If a translation has another link, another step or another number, the page says one thing and was checked for another.",
	Mend:  "Give each step the links, people, times and figures of the original. The order of links in a step is free; a decimal comma is a decimal point.",
}

func runTranslationDiffers(c *Context, p *model.Procedure) []finding.Finding {
	original := p.Original
	if original == nil || unread(original) || unread(p) {
		return nil
	}
	t := &comparison{c: c, original: original, p: p}
	steps := paired(original, p)
	for _, phase := range steps.addedPhases {
		t.add(phase.At, original.At, finding.Say("the original has no phase here"), finding.Say("take the phase out, or write it in the original too"))
	}
	for _, s := range steps.added {
		t.add(s.At, original.At, finding.Say("the original has no step %s", s.Number), finding.Say("take the step out, or write it in the original too"))
	}
	t.prose(original.Intro, p.Intro)
	for _, pair := range steps.phases {
		t.texts(pair[1].At, pair[0].At, finding.Say("this phase's first paragraph"), leadOf(pair[0]), leadOf(pair[1]))
		t.prose(proseOf(pair[0]), proseOf(pair[1]))
	}
	for _, pair := range steps.both {
		t.texts(pair[1].At, pair[0].At, finding.Say("step %s", pair[1].Number), pair[0].Blocks, pair[1].Blocks)
	}
	t.frontMatter()
	return t.found
}

// comparison is a translation beside its original.
type comparison struct {
	c           *Context
	original, p *model.Procedure
	found       []finding.Finding
	wrong       map[*model.Procedure][]wrongNumber // of each text, in its order
}

func (t *comparison) add(at, there position.Pos, message, mend finding.Words) {
	t.found = append(t.found, translationDiffers.At(at, "%s", message).WithMend("%s", mend).See(there, "the original is here"))
}

var takeOut = finding.Say("take it out, or write it in the original too")

func leadOf(p *model.Phase) []model.Block {
	if p.Lead == nil {
		return nil
	}
	return []model.Block{*p.Lead}
}

// texts compares the links and the figures of a step or of a phase's lead. A link
// that could not be read may be any that the other side has.
func (t *comparison) texts(at, there position.Pos, what finding.Words, original, here []model.Block) {
	want, unread := addresses(original)
	have, unreadHere := addresses(here)
	lacks, more := less(want, have), less(have, want)
	switch lacking, others := len(lacks) > unreadHere, len(more) > unread; {
	case lacking && others:
		t.add(at, there, finding.Say("%s has other links than the original: %s is missing; %s is new", what, strings.Join(lacks, ", "), strings.Join(more, ", ")),
			finding.Say("write it as the original has it: [words](%s)", lacks[0]))
	case lacking:
		t.add(at, there, finding.Say("%s lacks a link of the original: %s", what, strings.Join(lacks, ", ")), finding.Say("write it where the original has it: [words](%s)", lacks[0]))
	case others:
		t.add(at, there, finding.Say("%s has a link that the original has not: %s", what, strings.Join(more, ", ")), takeOut)
	}
	t.numbers(at, there, what, original, here)
}

// prose compares the figures of what stands outside steps, paragraph by paragraph;
// a translation that parts its paragraphs otherwise is read as one.
func (t *comparison) prose(original, here []model.Block) {
	if len(original) == 0 || len(here) == 0 {
		return
	}
	paragraph := finding.Say("this paragraph")
	if len(original) != len(here) {
		t.numbers(here[0].At, original[0].At, paragraph, original, here)
		return
	}
	for i := range here {
		t.numbers(here[i].At, original[i].At, paragraph, original[i:i+1], here[i:i+1])
	}
}

// proseOf is what stands between the steps of a phase.
func proseOf(p *model.Phase) []model.Block {
	var out []model.Block
	for _, part := range p.Body {
		if part.Prose != nil && part.Prose != p.Lead {
			out = append(out, *part.Prose)
		}
	}
	return out
}

// numbers compares the figures of two texts, and their amounts.
func (t *comparison) numbers(at, there position.Pos, what finding.Words, original, here []model.Block) {
	free := wordless(original, here)
	theirs, ours := said(original, free), said(here, free)
	lost, more := figuresApart(countedIn(t.c.Manual.Shop.Language, theirs), countedIn(t.p.Language, ours))
	if words := apartWords(lost, more); !words.IsZero() && !t.toldOf(t.p, here, more) && !t.toldOf(t.original, original, lost) {
		t.add(at, there, finding.Say("%s has other figures than the original: %s", what, words), finding.Say("write the figures of the original"))
	}
	if want, have := otherAmount(inLanguage{t.c.Manual.Shop.Language, theirs}, inLanguage{t.p.Language, ours}); want != "" && !t.toldOf(t.p, here, []string{have}) && !t.toldOf(t.original, original, []string{want}) {
		t.add(at, there, finding.Say("%s says %s, and the original %s", what, have, want), finding.Say("write %s, as the original has it", want))
	}
}

// wrongNumber is a number of a text that is told of by what it is held against.
type wrongNumber struct {
	at   position.Pos
	said string
}

// toldOf says that some numbers of a step's texts are all told of by what they are
// held against: one wrong number is one fault, and the other text may be right.
func (t *comparison) toldOf(p *model.Procedure, blocks []model.Block, said []string) bool {
	if len(said) == 0 {
		return false
	}
	var wrong []string
	all := t.wrongIn(p)
	for _, b := range blocks {
		from, _ := slices.BinarySearchFunc(all, b.At.Start, func(n wrongNumber, start int) int { return cmp.Compare(n.at.Start, start) })
		for _, n := range all[from:] {
			if n.at.Start >= b.At.End {
				break
			}
			if n.at.End <= b.At.End {
				wrong = append(wrong, n.said)
			}
		}
	}
	tag := cmp.Or(p.Language, t.c.Manual.Shop.Language)
	return len(wrong) > 0 && !slices.ContainsFunc(said, func(number string) bool { return !amongWrong(tag, number, wrong) })
}

// amongWrong says that a number is one of those that are told of, in figures, written
// out or as an amount: "three", "at most 10 V ac".
func amongWrong(tag, number string, wrong []string) bool {
	in := figures(tag, wrong)
	if bareFigure(number) || slices.Contains(in, number) {
		return slices.Contains(in, number)
	}
	if strings.Contains(strings.ToLower(strings.Join(wrong, "\n")), strings.ToLower(number)) {
		return true
	}
	if words := countedIn(tag, []string{number}).words; len(words) == 1 && words[0].said == number {
		return slices.Contains(in, words[0].value)
	}
	amounts := quantity.Find(number)
	return len(amounts) > 0 && slices.ContainsFunc(quantity.Find(strings.Join(wrong, "\n")), func(w quantity.Found) bool { return sameAmount(w.Quantity, amounts[0].Quantity) })
}

// wrongIn are the numbers of a text that are told of, looked for once, in its order.
func (t *comparison) wrongIn(p *model.Procedure) []wrongNumber {
	if known, is := t.wrong[p]; is {
		return known
	}
	var out []wrongNumber
	for _, f := range numbers.Procedure(t.c.Manual, &t.c.followed, p) {
		switch f.Rule {
		case &numbers.ValueDisagrees:
			out = append(out, wrongNumber{f.At, f.At.Text()})
		case &numbers.CountDisagrees:
			out = append(out, wrongNumber{f.At, fmt.Sprint(f.Says.Values[0])}) // the count stands before the link
		}
	}
	slices.SortStableFunc(out, func(a, b wrongNumber) int { return cmp.Compare(a.at.Start, b.at.Start) })
	if t.wrong == nil {
		t.wrong = map[*model.Procedure][]wrongNumber{}
	}
	t.wrong[p] = out
	return out
}

// bareFigure says that a number stands in figures alone, without a unit.
func bareFigure(number string) bool { return figure.FindString(number) == number }

// frontMatter: a translation's front matter needs its texts only. A list that
// it has must be the original's.
func (t *comparison) frontMatter() {
	o, p := t.original, t.p
	lists := []struct {
		name       string
		have, want []string
	}{
		{"tools", usesOf(p.Tools), usesOf(o.Tools)}, {"supplies", usesOf(p.Supplies), usesOf(o.Supplies)},
		{"holds", refsOf(p.Holds), refsOf(o.Holds)}, {"needs", refsOf(p.Needs), refsOf(o.Needs)},
		{"expects", statesOf(p.Expects), statesOf(o.Expects)}, {"leaves", statesOf(p.Leaves), statesOf(o.Leaves)},
		{"for", []string{p.For.ID}, []string{o.For.ID}},
	}
	for _, l := range lists {
		if len(l.have) > 0 && !slices.Equal(l.have, l.want) {
			t.add(p.At, o.At, notTheOriginals(l.name), takeListOut(l.name))
		}
	}
	if p.People > 1 && p.People != o.People {
		t.add(p.At, o.At, notTheOriginals("people"), takeListOut("people"))
	}
	for _, use := range p.Hazards {
		t.hazard(&use)
	}
}

func notTheOriginals(field string) finding.Words {
	return finding.Say("%s: is not the original's", field)
}

func takeListOut(field string) finding.Words {
	return finding.Say("take %s: out of the translation: the original's counts", field)
}

// hazard compares a hazard of the front matter: only its texts may be other.
func (t *comparison) hazard(use *model.HazardUse) {
	if use.To == nil {
		return
	}
	i := slices.IndexFunc(t.original.Hazards, func(o model.HazardUse) bool { return o.To == use.To })
	if i < 0 {
		t.add(use.At, t.original.At, finding.Say("the original does not meet %s", use.ID), finding.Say("take it out"))
		return
	}
	if use.Over == nil {
		return
	}
	over := t.original.Hazards[i].Over
	if over == nil {
		t.add(use.At, t.original.Hazards[i].At, finding.Say("the original says nothing of %s but what the register says", use.ID),
			finding.Say("translate it in register/hazards.%s.yaml", t.p.Language))
		return
	}
	if use.Over.Harm != "" && use.Over.Harm != over.Harm || use.Over.Happens != "" && use.Over.Happens != over.Happens {
		t.add(use.At, t.original.Hazards[i].At, finding.Say("harm and happens are the original's"), finding.Say("take them out of the translation"))
	}
	for _, text := range use.Over.Texts() {
		if why := t.c.differs(t.p.Language, over.Texts(), text.Field, text.Words, nil); !why.IsZero() {
			t.add(use.At, t.original.Hazards[i].At, finding.Say("%s, %s", use.ID, why), finding.Say("write what the original says, and no more"))
		}
	}
}

// runWordsDiffer looks at the texts of hazards and holds in other languages.
func runWordsDiffer(c *Context) []finding.Finding {
	var found []finding.Finding
	for i := range c.Manual.Words {
		w := &c.Manual.Words[i]
		texts, at := c.registered(w)
		for _, t := range texts {
			if why := c.differs(w.Language, texts, t.Field, w.Texts[t.Field], w.Keys[t.Field]); !why.IsZero() {
				found = append(found, translationDiffers.At(w.At, "%s, %s", w.ID, why).WithMend("write what the register says, and no more").See(at, "the register's entry is here"))
			}
		}
	}
	return found
}

// registered are the texts of the register's own entry.
func (c *Context) registered(w *model.Words) ([]model.Text, position.Pos) {
	switch w.Register {
	case "hazards":
		for _, h := range c.Manual.Hazards {
			if h.ID == w.ID && !h.Misread {
				return h.Texts(), h.At
			}
		}
	case "holds":
		for _, h := range c.Manual.Holds {
			if h.ID == w.ID && !h.Misread {
				return h.Texts(), h.At
			}
		}
	}
	return nil, position.Pos{}
}

// differs says what is other in a translated field; no words where nothing is, or
// where the field is not translated.
func (c *Context) differs(language string, texts []model.Text, field string, words, keys []string) finding.Words {
	i := slices.IndexFunc(texts, func(t model.Text) bool { return t.Field == field })
	if len(words) == 0 || i < 0 {
		return finding.Words{}
	}
	t := texts[i]
	if len(words) != len(t.Words) {
		return finding.Say("%s: has another number of lines", field)
	}
	if t.Keys != nil && !slices.Equal(sortedOf(t.Keys), sortedOf(keys)) {
		return finding.Say("%s: has other answers: %s must stand there", field, strings.Join(t.Keys, ", "))
	}
	if other := otherFigures(countedIn(c.Manual.Shop.Language, t.Words), countedIn(language, words)); !other.IsZero() {
		return finding.Say("%s: has other figures: %s", field, other)
	}
	if want, have := otherAmount(inLanguage{c.Manual.Shop.Language, t.Words}, inLanguage{language, words}); want != "" {
		return finding.Say("%s: says %s, and not %s", field, have, want)
	}
	return finding.Words{}
}

func sortedOf(list []string) []string { return slices.Sorted(slices.Values(list)) }

func usesOf[T any](list []model.Use[T]) []string {
	var out []string
	for _, u := range list {
		out = append(out, strings.TrimSpace(u.ID+" "+u.Amount))
	}
	slices.Sort(out)
	return out
}

func refsOf[T any](list []model.Ref[T]) []string {
	var out []string
	for _, r := range list {
		out = append(out, r.ID)
	}
	slices.Sort(out)
	return out
}

func statesOf(list []model.State) []string {
	var out []string
	for _, s := range list {
		out = append(out, s.ID+" "+s.Word)
	}
	slices.Sort(out)
	return out
}
