package numbers

import "baybinder/generator/model"

// valuesLost says that a number that an entry states could not be read, or what
// it is stated of: nothing is held against the others.
func valuesLost(n model.Named) bool {
	e := n.Base()
	switch n.(type) {
	case *model.Fastener:
		return e.Lost("torque", "stages", "retorque", "name")
	case *model.Part:
		return e.Lost("mass", "held-by", "name")
	case *model.Energy:
		return e.Lost("voltage", "pressure", "temperature", "stored", "name")
	case *model.Point:
		return e.Lost("name", model.Cutting)
	case *model.Fluid:
		return e.Lost("capacity", "supply", "name")
	case *model.Setting:
		return e.Lost("value", "name")
	case *model.Hold:
		return e.Lost("kind", "for", "limit", "what", "of", "name")
	case *model.Supply:
		return e.Lost("unit", "name")
	case *model.Tool:
		return e.Lost("kind", "range", "fits", "length", "rated", "name")
	}
	return e.Unread
}
