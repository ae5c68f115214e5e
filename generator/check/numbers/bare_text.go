package numbers

import (
	"regexp"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
)

// bareText is a whole number, a tolerance or a range of them, and nothing behind it.
// One figure alone is a position as often as an amount; with decimals it is a plain
// ratio or a pH, which is compared.
var bareText = regexp.MustCompile(`^(?:\d{2,}|\d+\s*(?:±|to)\s*\d+)$`)

// bareTexts looks for numbers without a unit in the texts that state an amount: the
// value of a setting, and what lifting gear is rated for. What the words of a step
// say is not compared with them.
func bareTexts(m *model.Manual, _ model.Date) []finding.Finding {
	var found []finding.Finding
	for _, x := range m.Machines {
		for _, s := range x.Settings {
			if text := strings.TrimSpace(s.Value); !s.Lost("value") && bareText.MatchString(text) {
				found = append(found, unitless(&s.Entry, "value", text, s.Label()).
					WithMend("write its unit, such as %s bar; of a position its word too, such as notch %s", text, text))
			}
		}
	}
	for _, t := range m.Tools {
		if text := strings.TrimSpace(t.Rated); t.Kind == "lifting" && !t.Lost("kind", "rated") && bareText.MatchString(text) {
			found = append(found, unitless(&t.Entry, "rated", text, t.Label()).WithMend("write its unit, such as %s kg", text))
		}
	}
	return found
}

func unitless(e *model.Entry, field, text, label string) finding.Finding {
	return NotJudged.At(e.FieldAt(field), "%s: %q has no unit, so that nothing is compared with it: %s", field, text, label)
}
