package generator_test

import (
	"slices"
	"strings"

	"baybinder/generator/base/quantity"
)

// amounts are all amounts in texts, each once, in order, one a line.
func amounts(texts []string) string {
	var out []string
	for _, t := range texts {
		for _, f := range quantity.Find(t) {
			out = append(out, f.String())
		}
	}
	slices.Sort(out)
	return strings.Join(slices.Compact(out), "\n")
}
