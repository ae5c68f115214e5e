package check

import (
	"strings"

	"baybinder/generator/base/finding"
)

var passive = finding.Rule{
	Code:  "passive",
	Level: finding.Advice,
	Title: "An instruction that does not say who acts",
	Why:   "\"Must be tightened\" can be read as said of somebody else, or as done already. \"Tighten\" is said to whoever reads it.",
	Mend:  "Begin with the verb: not \"the bolts must be tightened\", but \"tighten the bolts\". What is looked for (\"the lid is shut\") may stay as it is.",
}

// passiveWords are the words of a passive order (ASD-STE100, rule 3.6, active
// voice, and 5.3, the imperative; 3.6 from memory). What is only told, "the
// valve is closed", may be a state that is looked for: it is left alone.
type passiveWords struct {
	orders     [][]string // "must be"
	between    map[string]bool
	endings    []string
	irregular  map[string]bool
	adverbEnds string
}

var passives = map[string]*passiveWords{
	"en": {
		orders: [][]string{{"must", "be"}, {"must", "not", "be"}, {"should", "be"}, {"should", "not", "be"}, {"shall", "be"}, {"shall", "not", "be"},
			{"has", "to", "be"}, {"have", "to", "be"}, {"needs", "to", "be"}, {"need", "to", "be"}, {"is", "to", "be"}, {"are", "to", "be"}},
		between: wordSet(`now then also always never again first only`),
		endings: []string{"ed"},
		irregular: wordSet(`bent blown bought brought built cut done drawn driven fed found given ground held hung kept laid led left let lit
			made met put read said seen sent set shown shut spun swept taken thrown told torn undone withdrawn worn wound written`),
		adverbEnds: "ly",
	},
	"es": {
		orders: [][]string{{"debe", "ser"}, {"deben", "ser"}, {"debería", "ser"}, {"deberían", "ser"}, {"deberá", "ser"}, {"deberán", "ser"},
			{"tiene", "que", "ser"}, {"tienen", "que", "ser"}, {"ha", "de", "ser"}, {"han", "de", "ser"}},
		between:    wordSet(`ya siempre nunca primero sólo solo`),
		endings:    []string{"ado", "ada", "ados", "adas", "ido", "ida", "idos", "idas", "ído", "ída", "ídos", "ídas"},
		irregular:  wordSet(`abierto abierta abiertos abiertas hecho hecha hechos hechas puesto puesta puestos puestas escrito escrita escritos escritas visto vista vistos vistas suelto suelta sueltos sueltas`),
		adverbEnds: "mente",
	},
}

func runPassive(w *writing, text []sentence) []finding.Finding {
	if w.passive == nil {
		return nil
	}
	var found []finding.Finding
	for _, s := range text {
		for i := range s {
			if n := w.passive.order(s[i:]); n > 0 {
				at := s[i : i+n].at()
				found = append(found, passive.At(at, "%q does not say who acts", strings.Join(strings.Fields(at.Text()), " ")).
					WithMend("begin the instruction with its verb"))
			}
		}
	}
	return found
}

// order is how many words of a passive order a sentence begins with, or 0.
func (p *passiveWords) order(s sentence) int {
	for _, words := range p.orders {
		last := len(words) - 1
		if !says(s, words[:last]) {
			continue
		}
		i := p.behind(s, last)
		if i == len(s) || s[i].said != words[last] {
			continue
		}
		if i = p.behind(s, i+1); i < len(s) && p.participle(s[i].said) {
			return i + 1
		}
	}
	return 0
}

// behind is the place of the next word that is no adverb.
func (p *passiveWords) behind(s sentence, i int) int {
	for i < len(s) && (p.between[s[i].said] || strings.HasSuffix(s[i].said, p.adverbEnds)) {
		i++
	}
	return i
}

func (p *passiveWords) participle(said string) bool {
	if p.irregular[said] {
		return true
	}
	for _, end := range p.endings {
		if len(said) > len(end)+2 && strings.HasSuffix(said, end) {
			return true
		}
	}
	return false
}
