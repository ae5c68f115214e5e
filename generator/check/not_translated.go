package check

import (
	"slices"
	"strings"
	"unicode"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
)

var notTranslated = finding.Rule{
	Code:  "not-translated",
	Title: "A translation that leaves something out",
	Why:   "Whoever reads the page in that language does not do a step that is not there, and does not heed a caution in words that they cannot read. A shop may translate one procedure after another; what it translates, it translates whole.",
	Mend:  "Write the step as the original has it. Write the texts of its hazards and holds in register/hazards.LANGUAGE.yaml and register/holds.LANGUAGE.yaml. Until all is there, status: draft in the translation keeps it back.",
}

func runNotTranslated(c *Context, p *model.Procedure) []finding.Finding {
	original := p.Original
	if original == nil || unread(original) || unread(p) {
		return nil
	}
	var found []finding.Finding
	steps := paired(original, p)
	for _, phase := range steps.lostPhases {
		found = append(found, notTranslated.At(p.At, "the phase %q of the original is not here", phase.Title.Plain).
			WithMend("write it as ## and its steps").See(phase.At, "the phase is here"))
	}
	for _, s := range steps.lost {
		found = append(found, notTranslated.At(p.At, "step %s of the original is not here", s.Number).
			WithMend("write it where the original has it").See(s.At, "the step is here"))
	}
	for _, pair := range steps.both {
		o, t := pair[0], pair[1]
		if text := words(o); len(text) >= leastWords && slices.Equal(text, words(t)) {
			found = append(found, notTranslated.At(t.At, "step %s has the words of the original", t.Number).
				WithMend("write it in the page's language"))
		}
	}
	return append(found, untoldDangers(c, original, p)...)
}

// leastWords is from how many words on two texts that are alike are one text:
// "Stop!" and a name may be the same in two languages.
const leastWords = 5

func words(s *model.Step) []string {
	var out []string
	for _, b := range s.Blocks {
		for _, w := range strings.Fields(b.Plain) {
			if strings.ContainsFunc(w, unicode.IsLetter) {
				out = append(out, w)
			}
		}
	}
	return out
}

// untoldDangers are the texts of hazards and holds that the page shows and
// that are not there in its language. Names of tools and parts may be missing:
// the page prints the original's.
func untoldDangers(c *Context, original, p *model.Procedure) []finding.Finding {
	var found []finding.Finding
	seen := map[model.Named]bool{}
	for _, l := range allLinks(p) {
		if l.To == nil || seen[l.To] {
			continue
		}
		seen[l.To] = true
		switch to := l.To.(type) {
		case *model.Hazard:
			missing := missingTexts(c.Manual, "hazards", to.ID, p.Language, to.Texts())
			own, lacks := overridden(original, p, to)
			missing = slices.DeleteFunc(missing, func(field string) bool { return slices.Contains(own, field) })
			found = append(found, untold(p, l.At, "hazards", to.ID, missing)...)
			if len(lacks) > 0 {
				found = append(found, notTranslated.At(l.At, "the original says of %s otherwise than the register, and not here: %s", to.ID, strings.Join(lacks, ", ")).
					WithMend("write it in this front matter: hazards: [%s: { %s: … }]", to.ID, lacks[0]))
			}
		case *model.Hold:
			found = append(found, untold(p, l.At, "holds", to.ID, missingTexts(c.Manual, "holds", to.ID, p.Language, to.Texts()))...)
		}
	}
	return found
}

func untold(p *model.Procedure, at position.Pos, register, id string, missing []string) []finding.Finding {
	if len(missing) == 0 {
		return nil
	}
	return []finding.Finding{notTranslated.At(at, "%s is not translated: %s", id, strings.Join(missing, ", ")).
		WithMend("write in register/%s.%s.yaml: %s: { %s: … }", register, p.Language, id, missing[0])}
}

func missingTexts(m *model.Manual, register, id, language string, texts []model.Text) []string {
	var out []string
	for _, t := range texts {
		if m.LacksWords(register, id, language, t.Field) {
			out = append(out, t.Field)
		}
	}
	return out
}

// overridden are the fields that the original says of a hazard in its own
// front matter, and those of them that the translation does not.
func overridden(original, p *model.Procedure, h *model.Hazard) (own, lacks []string) {
	over := overrideOf(original, h)
	if over == nil {
		return nil, nil
	}
	var here []string
	if o := overrideOf(p, h); o != nil {
		for _, t := range o.Texts() {
			here = append(here, t.Field)
		}
	}
	for _, t := range over.Texts() {
		own = append(own, t.Field)
		if !slices.Contains(here, t.Field) {
			lacks = append(lacks, t.Field)
		}
	}
	return own, lacks
}

func overrideOf(p *model.Procedure, h *model.Hazard) *model.HazardOverride {
	for _, use := range p.Hazards {
		if use.To == h {
			return use.Over
		}
	}
	return nil
}
