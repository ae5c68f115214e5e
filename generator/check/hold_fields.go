package check

import (
	"reflect"
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/read/decode"
)

// runHoldFields asks for what a hold of its kind cannot do without.
func runHoldFields(c *Context) []finding.Finding {
	var found []finding.Finding
	for _, h := range c.Manual.Holds {
		missing := missingOfHold(h)
		if len(missing) > 0 && !h.Lost("kind") {
			found = append(found, decode.MissingField.At(h.At, "%s is a hold of kind %s and has no %s", h.ID, h.Kind, finding.ListOf(" nor ", missing)).
				WithMend("write %s", toWrite(missing)))
		}
	}
	return found
}

// missingOfHold is by the tags of the fields, as the schema is.
func missingOfHold(h *model.Hold) []string {
	var missing []string
	v := reflect.ValueOf(h).Elem()
	for _, f := range decode.Fields(v.Type()) {
		if slices.Contains(f.Asked, h.Kind) && !h.Lost(f.Name) && saysNothing(v.FieldByIndex(f.Index)) {
			missing = append(missing, f.Name)
		}
	}
	return missing
}

// saysNothing says of a field that it was left out, or written without a word.
func saysNothing(v reflect.Value) bool {
	if ref, is := v.Interface().(model.Ref[model.Role]); is {
		return ref.ID == ""
	}
	return v.IsZero() || v.Kind() == reflect.Slice && v.Len() == 0
}
