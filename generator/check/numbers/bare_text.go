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
	look := func(e *model.Entry, field, text, label, mend string) {
		if text = strings.TrimSpace(text); !e.Lost(field) && bareText.MatchString(text) {
			found = append(found, NotJudged.At(e.FieldAt(field), "%s: %q has no unit, so that nothing is compared with it: %s", field, text, label).
				WithMend("write "+mend, text))
		}
	}
	for _, x := range m.Machines {
		for _, s := range x.Settings {
			look(&s.Entry, "value", s.Value, s.Label(), "its unit, such as %[1]s bar; of a position its word, such as notch %[1]s")
		}
	}
	for _, t := range m.Tools {
		if t.Kind == "lifting" {
			look(&t.Entry, "rated", t.Rated, t.Label(), "its unit, such as %s kg")
		}
	}
	return found
}
