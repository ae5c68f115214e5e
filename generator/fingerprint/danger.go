package fingerprint

import (
	"regexp"
	"slices"
	"strings"
)

// guarded are the link kinds of hazards, holds and energy acts, and of the
// conditions on which they are met.
var guarded = strings.Fields("hazard hold isolate lock release prove unlock restore test-live when if if-not again optional")

// limits are the fields that bound or measure something.
var limits = strings.Fields("amount range length adds torque stage voltage pressure capacity mass value across-flats thread class condition rated stored held-by retorque")

var number = regexp.MustCompile(`\d+(?:[.,]\d+)*`)

// danger is what of a form nobody may change unnoticed: hazards, holds, energy
// acts and limits, and the numbers that stand in words, in their order.
func (f Form) danger() []string {
	var out []string
	inside := false
	for _, line := range f.Own() {
		words := strings.Fields(line)
		switch {
		case len(words) == 0:
			continue
		case strings.HasPrefix(line, "  "):
			if inside || limiting(line) {
				out = append(out, line)
			}
			continue
		case words[0] == "link":
			inside = len(words) > 1 && slices.Contains(guarded, words[1])
			if inside {
				out = append(out, line)
			}
			continue
		case words[0] == "words" || words[0] == "at":
			out = append(out, number.FindAllString(line, -1)...)
		}
		inside = false
	}
	return out
}

func limiting(field string) bool {
	name, _, _ := strings.Cut(field, ":")
	return slices.ContainsFunc(strings.Fields(name), func(w string) bool { return slices.Contains(limits, w) })
}

// DangerMoved says whether a hazard, a hold, a limit or an energy act is
// another in one form than in the other.
func DangerMoved(before, now Form) bool { return !slices.Equal(before.danger(), now.danger()) }
