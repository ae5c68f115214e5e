package check

import (
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
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
	for _, phase := range p.Phases[min(len(p.Phases), len(original.Phases)):] {
		t.add(phase.At, original.At, "the original has no phase here", "take the phase out, or write it in the original too")
	}
	steps := paired(original, p)
	for _, s := range steps.added {
		t.add(s.At, original.At, "the original has no step "+s.Number, "take the step out, or write it in the original too")
	}
	for i, phase := range p.Phases[:min(len(p.Phases), len(original.Phases))] {
		t.texts(phase.At, original.Phases[i].At, "this phase's first paragraph", leadOf(original.Phases[i]), leadOf(phase))
	}
	for _, pair := range steps.both {
		t.texts(pair[1].At, pair[0].At, "step "+pair[1].Number, pair[0].Blocks, pair[1].Blocks)
	}
	t.frontMatter()
	return t.found
}

// comparison is a translation beside its original.
type comparison struct {
	c           *Context
	original, p *model.Procedure
	found       []finding.Finding
}

func (t *comparison) add(at, there position.Pos, message, mend string) {
	t.found = append(t.found, translationDiffers.At(at, "%s", message).WithMend("%s", mend).See(there, "the original is here"))
}

func leadOf(p *model.Phase) []model.Block {
	if p.Lead == nil {
		return nil
	}
	return []model.Block{*p.Lead}
}

// texts compares the links and the figures of a step or of a phase's lead. A link
// that could not be read may be any that the other side has.
func (t *comparison) texts(at, there position.Pos, what string, original, here []model.Block) {
	want, unread := addresses(original)
	have, unreadHere := addresses(here)
	if lacks := less(want, have); len(lacks) > unreadHere {
		t.add(at, there, what+" lacks a link of the original: "+strings.Join(lacks, ", "), "write it where the original has it: [words]("+lacks[0]+")")
	}
	if more := less(have, want); len(more) > unread {
		t.add(at, there, what+" has a link that the original has not: "+strings.Join(more, ", "), "take it out, or write it in the original too")
	}
	free := wordless(original, here)
	a, b := figures(t.c.Manual.Shop.Language, said(original, free)), figures(t.p.Language, said(here, free))
	if words := otherFigures(a, b); words != "" {
		t.add(at, there, what+" has other figures than the original: "+words, "write the figures of the original")
	}
}

// otherFigures says which figures stand on one side only; "" where none does.
func otherFigures(original, here []string) string {
	var out []string
	if lost := less(original, here); len(lost) > 0 {
		out = append(out, strings.Join(lost, " ")+" is missing")
	}
	if more := less(here, original); len(more) > 0 {
		out = append(out, strings.Join(more, " ")+" is new")
	}
	return strings.Join(out, "; ")
}

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
			t.add(p.At, o.At, l.name+": is not the original's", "take "+l.name+": out of the translation: the original's counts")
		}
	}
	if p.People > 1 && p.People != o.People {
		t.add(p.At, o.At, "people: is not the original's", "take people: out of the translation: the original's counts")
	}
	for _, use := range p.Hazards {
		t.hazard(&use)
	}
}

// hazard compares a hazard of the front matter: only its texts may be other.
func (t *comparison) hazard(use *model.HazardUse) {
	if use.To == nil {
		return
	}
	i := slices.IndexFunc(t.original.Hazards, func(o model.HazardUse) bool { return o.To == use.To })
	if i < 0 {
		t.add(use.At, t.original.At, "the original does not meet "+use.ID, "take it out")
		return
	}
	if use.Over == nil {
		return
	}
	over := t.original.Hazards[i].Over
	if over == nil {
		t.add(use.At, t.original.Hazards[i].At, "the original says nothing of "+use.ID+" but what the register says", "translate it in register/hazards."+t.p.Language+".yaml")
		return
	}
	if use.Over.Harm != "" && use.Over.Harm != over.Harm || use.Over.Happens != "" && use.Over.Happens != over.Happens {
		t.add(use.At, t.original.Hazards[i].At, "harm and happens are the original's", "take them out of the translation")
	}
	for _, text := range use.Over.Texts() {
		if why := t.c.differs(t.p.Language, over.Texts(), text.Field, text.Words, nil); why != "" {
			t.add(use.At, t.original.Hazards[i].At, use.ID+", "+why, "write what the original says, and no more")
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
			if why := c.differs(w.Language, texts, t.Field, w.Texts[t.Field], w.Keys[t.Field]); why != "" {
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

// differs says what is other in a translated field; "" where nothing is, or
// where the field is not translated.
func (c *Context) differs(language string, texts []model.Text, field string, words, keys []string) string {
	i := slices.IndexFunc(texts, func(t model.Text) bool { return t.Field == field })
	if len(words) == 0 || i < 0 {
		return ""
	}
	t := texts[i]
	if len(words) != len(t.Words) {
		return field + ": has another number of lines"
	}
	if t.Keys != nil && !slices.Equal(sortedOf(t.Keys), sortedOf(keys)) {
		return field + ": has other answers: " + strings.Join(t.Keys, ", ") + " must stand there"
	}
	if other := otherFigures(figures(c.Manual.Shop.Language, t.Words), figures(language, words)); other != "" {
		return field + ": has other figures: " + other
	}
	return ""
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
