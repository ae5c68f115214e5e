package check

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
	"baybinder/generator/read/decode"
)

// runLimitOf asks that a measure's limit is in a dimension that can show its
// energy. An id may be an energy of several machines: one that it can show is
// enough.
func runLimitOf(c *Context) []finding.Finding {
	var found []finding.Finding
	for _, h := range c.Manual.Holds {
		if h.Lost("kind", "limit", "of") || h.Kind != "measure" || h.Limit.IsZero() || h.Of.ID == "" {
			continue
		}
		if e := unshown(c.Manual, h); e != nil {
			want := e.Shows()[0]
			found = append(found, decode.Quantity.At(h.FieldAt("limit"), "limit: %s shows nothing of %s, which is of kind %s", h.Limit, e.ID, e.Kind).
				WithMend("write %s, such as %s", want.InWords(), provingLimit[want]).See(e.At, "the energy is here"))
		}
	}
	return found
}

// unshown is an energy that a measure is of and cannot show; nil where it shows
// one, or where a machine has something else of that id.
func unshown(m *model.Manual, h *model.Hold) *model.Energy {
	var dark *model.Energy
	for _, x := range m.Machines {
		thing := x.Find(h.Of.ID)
		if thing == nil {
			continue
		}
		e, is := thing.(*model.Energy)
		if !is || e.Lost("kind") || e.ShownIn(h.Limit.Unit.Dimension()) {
			return nil
		}
		dark = e
	}
	return dark
}

// provingLimit is a limit in each dimension at which a proof would stand by the
// shop's own limits as they are when it says nothing of them.
var provingLimit = map[quantity.Dimension]string{
	quantity.Voltage: "at most 5 V dc", quantity.Pressure: "at most 0.5 bar", quantity.Temperature: "at most 40 °C",
}
