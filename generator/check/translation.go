package check

import (
	"regexp"
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/base/quantity"
	"baybinder/generator/language"
	"baybinder/generator/model"
)

// pairing says which phase and which step of a translation is which of its
// original. Steps of phases that only one of them has are left out.
type pairing struct {
	phases                  [][2]*model.Phase // original, translation
	lostPhases, addedPhases []*model.Phase
	both                    [][2]*model.Step // original, translation
	lost, added             []*model.Step    // the outermost of those that stand on one side only
}

func paired(original, translated *model.Procedure) *pairing {
	p := &pairing{}
	if len(original.Phases) != len(translated.Phases) {
		p.bySteps(original, translated)
		return p
	}
	for i := range original.Phases {
		p.phases = append(p.phases, [2]*model.Phase{original.Phases[i], translated.Phases[i]})
		p.steps(original.Phases[i].Steps, translated.Phases[i].Steps)
	}
	return p
}

// bySteps pairs two bodies of which one has more phases: the steps as if there were
// none, and then each phase with the one that its first step stands in, so that one
// heading too few is told once and not of every step behind it.
func (p *pairing) bySteps(original, translated *model.Procedure) {
	p.steps(outermost(original), outermost(translated))
	at := map[*model.Step]*model.Phase{}
	for _, pair := range p.both {
		at[pair[0]] = pair[1].Phase
	}
	for _, o := range original.Phases {
		i := slices.IndexFunc(o.Steps, func(s *model.Step) bool { return at[s] != nil })
		if i < 0 || p.taken(at[o.Steps[i]]) {
			p.lostPhases = append(p.lostPhases, o)
			continue
		}
		p.phases = append(p.phases, [2]*model.Phase{o, at[o.Steps[i]]})
	}
	for _, t := range translated.Phases {
		if !p.taken(t) {
			p.addedPhases = append(p.addedPhases, t)
		}
	}
	p.lost = slices.DeleteFunc(p.lost, func(s *model.Step) bool { return slices.Contains(p.lostPhases, s.Phase) })
	p.added = slices.DeleteFunc(p.added, func(s *model.Step) bool { return slices.Contains(p.addedPhases, s.Phase) })
}

// taken says that a phase of the translation is one of the original's.
func (p *pairing) taken(t *model.Phase) bool {
	return slices.ContainsFunc(p.phases, func(pair [2]*model.Phase) bool { return pair[1] == t })
}

func outermost(p *model.Procedure) []*model.Step {
	var out []*model.Step
	for _, phase := range p.Phases {
		out = append(out, phase.Steps...)
	}
	return out
}

// steps pairs two lists of steps: one by one where they are as long, else by
// their links, so that one step too few is told once and not of every step
// after it.
func (p *pairing) steps(original, here []*model.Step) {
	if len(original) == len(here) {
		p.between(original, here)
		return
	}
	alike := commonLinks(original, here)
	i, j, fromI, fromJ := 0, 0, 0, 0
	for i < len(original) && j < len(here) {
		switch {
		case linksOf(original[i]) == linksOf(here[j]):
			p.between(original[fromI:i], here[fromJ:j])
			p.pair(original[i], here[j])
			i, j = i+1, j+1
			fromI, fromJ = i, j
		case alike[i+1][j] >= alike[i][j+1]:
			i++
		default:
			j++
		}
	}
	p.between(original[fromI:], here[fromJ:])
}

// between pairs, one by one, what stands between two pairs.
func (p *pairing) between(original, here []*model.Step) {
	n := min(len(original), len(here))
	for i := range n {
		p.pair(original[i], here[i])
	}
	p.lost = append(p.lost, original[n:]...)
	p.added = append(p.added, here[n:]...)
}

func (p *pairing) pair(original, here *model.Step) {
	p.both = append(p.both, [2]*model.Step{original, here})
	p.steps(original.Subs, here.Subs)
}

// commonLinks is how many steps from i and j on can be paired by their links:
// the length of the longest common subsequence.
func commonLinks(a, b []*model.Step) [][]int {
	n := make([][]int, len(a)+1)
	for i := range n {
		n[i] = make([]int, len(b)+1)
	}
	for i := len(a) - 1; i >= 0; i-- {
		for j := len(b) - 1; j >= 0; j-- {
			n[i][j] = max(n[i+1][j], n[i][j+1])
			if linksOf(a[i]) == linksOf(b[j]) {
				n[i][j] = n[i+1][j+1] + 1
			}
		}
	}
	return n
}

func linksOf(s *model.Step) string {
	list, _ := addresses(s.Blocks)
	return strings.Join(list, "\n")
}

// typed says that a link is one of ours, and not a picture or a page elsewhere.
func typed(l *model.Link) bool {
	return l.Kind.Target != model.ToAddress
}

// address is a typed link as two languages must have it alike: an amount by
// its value.
func address(l *model.Link) string {
	if l.Is(model.LinkTime) && !l.Bad {
		return "time:" + strconv.FormatFloat(l.Amount().Base(), 'g', -1, 64)
	}
	if l.Is(model.LinkWithin) && !l.Bad {
		return "within:" + strconv.FormatFloat(l.Amount().Base(), 'g', -1, 64) + "#" + l.Frag()
	}
	_, rest, _ := model.SplitAddress(l.Address)
	return l.Kind.Name + ":" + rest
}

// addresses are the typed links of blocks, sorted, and how many links could not
// be read.
func addresses(blocks []model.Block) (list []string, unread int) {
	for i := range blocks {
		for _, l := range blocks[i].Links {
			switch {
			case l.Bad:
				unread++
			case typed(l):
				list = append(list, address(l))
			}
		}
	}
	slices.Sort(list)
	return list, unread
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

var figure = regexp.MustCompile(`\d+(?:[.,\x{00a0}\x{202f}\x{2009}]\d+)*`)

// figures are the numbers of texts in a language that stand in figures, each once,
// sorted.
func figures(tag string, texts []string) []string {
	var out []string
	for _, text := range texts {
		for _, token := range figure.FindAllString(text, -1) {
			out = append(out, value(tag, token))
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// largeFigures are the figures of texts that may be a thousand times as much: in a
// language with the comma for a decimal marker, a point before three figures parts
// the thousands as often as it is copied from elsewhere ("2.000 Hübe").
func largeFigures(tag string, texts []string) map[string]string {
	if language.Marker(tag) == quantity.Point {
		return nil
	}
	out := map[string]string{}
	for _, text := range texts {
		for _, token := range figure.FindAllString(text, -1) {
			if dotted.MatchString(token) {
				out[value(tag, token)] = strings.ReplaceAll(token, ".", "")
			}
		}
	}
	return out
}

var (
	dotted    = regexp.MustCompile(`^[1-9]\d{0,2}(\.\d{3})+$`)
	thin      = strings.NewReplacer("\u00a0", "", "\u202f", "", "\u2009", "")
	thousands = regexp.MustCompile(`^[1-9]\d{0,2}(,\d{3})+$`)
)

// value writes a number the same way in every language: a comma is a decimal
// point, but before three figures in a language such as English, where it parts the
// thousands.
// Thin spaces part the thousands everywhere (ISO 80000-1, 7.3.1, from memory).
func value(tag, token string) string {
	token = thin.Replace(token)
	if thousands.MatchString(token) && language.Marker(tag) == quantity.Point {
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
func said(blocks []model.Block, without map[string]bool) []string {
	var out []string
	for i := range blocks {
		for r := range blocks[i].Runs() {
			out = append(out, r.Words())
		}
		for _, l := range blocks[i].Links {
			if typed(l) && !without[address(l)] && l.Text != l.Address { // <tool:broom-7> is no words
				out = append(out, l.Text)
			}
		}
	}
	return out
}

// wordless are the typed links that have no words of their own.
func wordless(blocks ...[]model.Block) map[string]bool {
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
