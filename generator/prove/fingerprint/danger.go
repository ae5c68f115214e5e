package fingerprint

import (
	"regexp"
	"slices"
	"strings"

	"baybinder/generator/language"
)

// guarded are the link kinds of hazards, holds and energy acts, and of the
// conditions on which they are met.
var guarded = strings.Fields("hazard hold isolate lock release prove unlock restore test-live when if if-not again optional within")

// limits are the fields that bound or measure something, name the hazards of a
// supply and the energies of a part, or say what a supply is and in what order
// to go round.
var limits = strings.Fields("amount range length adds torque stage voltage pressure temperature gas-volume precharge capacity mass value across-flats thread class condition rated stored held-by retorque hazards ghs prove-dead guards needed-by supply renew-with places")

// negations are the words of every language that turn a sentence round, with the
// word that they turn: a lost not passes for nothing.
var negations = func() *regexp.Regexp {
	var words []string
	for _, l := range language.All() {
		words = append(words, l.Denials...)
	}
	return regexp.MustCompile(`(?i)(?:\b(?:` + strings.Join(words, "|") + `)|n['’]t)\b(?:\W+[\pL\pN-]+)?`)
}()

var number = regexp.MustCompile(`\d+(?:[.,]\d+)*`)

// danger is a line that nobody may change unnoticed, and which of the steps
// without danger that both forms have stand before it.
type danger struct {
	line   string
	before string
}

// dangers are what of a form nobody may change unnoticed, in its order:
// hazards, holds, energy acts and limits, the numbers that stand in words, and
// the states that the job begins and ends in. A hold that goes past a step
// moved, though its own words did not.
func dangers(blocks []block, anchors map[string]bool) []danger {
	var out []danger
	var before []string
	for _, b := range blocks {
		lines := b.dangers()
		for _, line := range lines {
			out = append(out, danger{line, strings.Join(slices.Sorted(slices.Values(before)), "\n")})
		}
		if text := b.text(); len(lines) == 0 && anchors[text] {
			before = append(before, text)
		}
	}
	return out
}

func (b block) text() string { return strings.Join(b.lines, "\n") }

// anchors are the blocks that stand once in each of two forms. The beginning of
// a phase in which nothing is said is none.
func anchors(old, new []block) map[string]bool {
	had, both := texts(old), map[string]bool{}
	for text, n := range texts(new) {
		both[text] = text != "" && n == 1 && had[text] == 1
	}
	return both
}

// dangers are the lines of a block that nobody may change unnoticed.
func (b block) dangers() []string {
	var out []string
	var inside bool
	for _, line := range b.lines {
		switch word, rest, _ := strings.Cut(line, " "); word {
		case "": // a field of a link
			if inside || limiting(line) {
				out = append(out, line)
			}
			continue
		case "link":
			kind, _, _ := strings.Cut(rest, " ")
			if inside = kind == "supply" || slices.Contains(guarded, kind); inside {
				out = append(out, line)
			}
			continue
		case "expects", "leaves":
			out = append(out, line)
		case "words", "at", "because":
			out = append(out, number.FindAllString(rest, -1)...)
			for _, not := range negations.FindAllString(rest, -1) {
				out = append(out, strings.ToLower(oneSpace(not)))
			}
		}
		inside = false
	}
	return out
}

func limiting(field string) bool {
	name, _, _ := strings.Cut(field, ":")
	return slices.ContainsFunc(strings.Fields(name), func(w string) bool { return slices.Contains(limits, w) })
}

// inOrder are the steps that stand once in each of two forms, in the order of
// one of them, with their depths: one that is a sub-step now moved.
func inOrder(blocks, other []block) []string {
	own, count := texts(blocks), texts(other)
	var out []string
	for _, b := range blocks {
		if at := b.text(); b.depth != "" && own[at] == 1 && count[at] == 1 {
			out = append(out, b.depth+"\n"+at)
		}
	}
	return out
}

// texts counts how often each text stands.
func texts(blocks []block) map[string]int {
	count := map[string]int{}
	for _, b := range blocks {
		count[b.text()]++
	}
	return count
}

// DangerMoved says whether something that nobody may change unnoticed is another
// in one form than in the other, or stands elsewhere: a hazard, a hold, a limit
// or an energy act, what a supply is, a not, and the order of the steps.
func DangerMoved(before, now Form) bool {
	english := &language.Default().Readings.Changes // nothing is told
	old, new := blocks(before.Own(), english), blocks(now.Own(), english)
	both := anchors(old, new)
	return !slices.Equal(dangers(old, both), dangers(new, both)) || !slices.Equal(inOrder(old, new), inOrder(new, old))
}
