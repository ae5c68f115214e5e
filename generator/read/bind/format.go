package bind

import (
	"slices"

	"baybinder/generator/model"
)

// StateWords are the words that expects and leaves may hold, of whatever thing.
func StateWords() []string {
	var all []string
	for _, n := range []model.Named{
		&model.Point{}, &model.Energy{}, &model.Part{}, &model.Fastener{}, &model.Fluid{}, &model.Tool{}, &model.Setting{},
	} {
		for _, w := range StateWordsOf(n) {
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
