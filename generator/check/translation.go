package check

import (
	"html"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/manual"
)

// inSteps calls look for every step that stands in both, by its number.
func inSteps(original, translated *manual.Procedure, look func(o, t *manual.Step)) {
	for _, t := range translated.Steps {
		if o := stepNumbered(original, t.Number); o != nil {
			look(o, t)
		}
	}
}

func stepNumbered(p *manual.Procedure, number string) *manual.Step {
	for _, s := range p.Steps {
		if s.Number == number {
			return s
		}
	}
	return nil
}

// lacking are the steps of one that the other lacks, the outermost only;
// phases that it lacks as a whole are left out.
func lacking(p, other *manual.Procedure) []*manual.Step {
	var out []*manual.Step
	for _, s := range p.Steps {
		if slices.Index(p.Phases, s.Phase) >= len(other.Phases) || stepNumbered(other, s.Number) != nil {
			continue
		}
		if s.Parent == nil || !slices.Contains(out, s.Parent) && stepNumbered(other, s.Parent.Number) != nil {
			out = append(out, s)
		}
	}
	return out
}

// typed says that a link is one of ours, and not a picture or a page elsewhere.
func typed(l *manual.Link) bool {
	return l.Kind.Target != manual.ToAddress
}

// address is a typed link as two languages must have it alike: an amount by
// its value.
func address(l *manual.Link) string {
	if l.Is("time") && !l.Bad {
		return "time:" + strconv.FormatFloat(l.Amount.Base(), 'g', -1, 64)
	}
	_, rest, _ := manual.SplitAddress(l.Address)
	return l.Kind.Name + ":" + rest
}

// addresses are the typed links of blocks, sorted.
func addresses(blocks []manual.Block) []string {
	var out []string
	for i := range blocks {
		for _, l := range blocks[i].Links {
			if typed(l) {
				out = append(out, address(l))
			}
		}
	}
	slices.Sort(out)
	return out
}

// less are the strings of a that b has not as often; both are sorted.
func less(a, b []string) []string {
	var out []string
	for _, x := range a {
		if i, found := slices.BinarySearch(b, x); found {
			b = slices.Delete(slices.Clone(b), i, i+1)
			continue
		}
		out = append(out, x)
	}
	return out
}

var (
	tag    = regexp.MustCompile(`<[^>]*>`)
	figure = regexp.MustCompile(`\d+(?:[.,\x{00a0}\x{202f}\x{2009}]\d+)*`)
)

// figures are the numbers of texts in a language, each once, sorted. Figures
// count, words such as "two" do not.
func figures(language string, texts []string) []string {
	var out []string
	for _, text := range texts {
		for _, token := range figure.FindAllString(text, -1) {
			out = append(out, value(language, token))
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

var (
	thin      = strings.NewReplacer("\u00a0", "", "\u202f", "", "\u2009", "")
	thousands = regexp.MustCompile(`^[1-9]\d{0,2}(,\d{3})+$`)
)

// value writes a number the same way in every language: a comma is a decimal
// point, but in English before three figures, where it parts the thousands.
// Thin spaces part the thousands everywhere (ISO 80000-1, 7.3.1, from memory).
func value(language, token string) string {
	token = thin.Replace(token)
	if language == "en" && thousands.MatchString(token) {
		token = strings.ReplaceAll(token, ",", "")
	}
	token = strings.ReplaceAll(token, ",", ".")
	if v, err := strconv.ParseFloat(token, 64); err == nil {
		return strconv.FormatFloat(v, 'f', -1, 64)
	}
	return token // a date or a version: figure by figure
}

// said are the texts of a step without the words of those typed links that are
// in without: where one language leaves them to the register, the other may
// write them out.
func said(blocks []manual.Block, without map[string]bool) []string {
	var out []string
	for i := range blocks {
		for _, part := range blocks[i].Parts {
			out = append(out, html.UnescapeString(tag.ReplaceAllString(part, " ")))
		}
		for _, l := range blocks[i].Links {
			if typed(l) && !without[address(l)] {
				out = append(out, l.Text)
			}
		}
	}
	return out
}

// wordless are the typed links that have no words of their own.
func wordless(blocks ...[]manual.Block) map[string]bool {
	out := map[string]bool{}
	for _, list := range blocks {
		for i := range list {
			for _, l := range list[i].Links {
				if l.Text == "" {
					out[address(l)] = true
				}
			}
		}
	}
	return out
}
