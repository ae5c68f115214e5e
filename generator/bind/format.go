package bind

import (
	"slices"

	"baybinder/generator/manual"
)

// StateWords are the words that expects and leaves may hold, of whatever thing.
func StateWords() []string {
	var all []string
	for _, n := range []manual.Named{
		&manual.Point{}, &manual.Energy{}, &manual.Part{}, &manual.Fastener{}, &manual.Fluid{}, &manual.Tool{}, &manual.Setting{},
	} {
		for _, w := range stateWords(n) {
			if !slices.Contains(all, w) {
				all = append(all, w)
			}
		}
	}
	return all
}

// TextFields are the fields of a register that people read, and so those that
// a file in another language may hold.
func TextFields(register string) []string { return slices.Clone(textFields[register]) }
