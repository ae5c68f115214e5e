package numbers

import (
	"slices"

	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
	"baybinder/generator/trade/fastening"
)

// stated is what the thing that a link names says in numbers.
type stated struct {
	who    string              // "the register", "the machine's file"
	values []quantity.Quantity // of its fields: what the words are held against
	words  []quantity.Quantity // of its name and description: these may be repeated
}

const (
	register    = "the register"
	machineFile = "the machine's file"
)

// statedBy gathers the numbers behind a link. A changed setting has another
// value by intent, so alter: is held against nothing.
func statedBy(link *model.Link) stated {
	switch to := link.To.(type) {
	case *model.Tool:
		return statedByTool(to)
	case *model.Hold:
		return statedByHold(to, link.Kind.Branches)
	case *model.Role:
		return stated{register, given(to.RenewEvery), inText(to.Name)}
	case *model.Fastener:
		return statedByFastener(to)
	case *model.Energy:
		values := given(to.Voltage, to.Temperature, to.Stored.Capacitance, to.Stored.Resistance, to.Stored.Wait, to.Stored.GasVolume, to.Stored.Precharge)
		values = append(values, numbersOf(to.Pressures)...)
		return stated{machineFile, values, inText(to.Name)}
	case *model.Part:
		return stated{machineFile, given(to.Mass), inText(to.Name)}
	case *model.Fluid:
		return stated{machineFile, given(to.Capacity), inText(to.Name)}
	case *model.Setting:
		if link.Kind.Act != model.Alter {
			limit, _ := quantity.ParseLimit(to.Value, quantity.None)
			return stated{machineFile, inText(to.Value), append(inText(to.Name), endsOf(limit)...)}
		}
	case nil:
		if link.Is(model.LinkTime) || link.Is(model.LinkWithin) {
			return stated{who: "the link", values: given(link.Amount())}
		}
	}
	return stated{}
}

func statedByTool(t *model.Tool) stated {
	values := append(numbersOf(t.Range), given(t.Length, t.Adds)...)
	for _, size := range t.Fits {
		values = append(values, sizeOf(size)...)
	}
	values = append(values, inText(t.Rated)...)
	if t.Calibration != nil {
		values = append(values, given(t.Calibration.Every)...)
	}
	return stated{register, values, inText(t.Name)}
}

// statedByHold has what is near the limit among the words where a branch asks: it opens
// out of the limit.
func statedByHold(h *model.Hold, branch bool) stated {
	values := append(given(h.For.Least, h.For.Most, h.AgainIn), numbersOf(h.Limit)...)
	words := slices.Concat(inText(h.Name), inText(h.What), endsOf(h.Limit), endsOf(h.Near))
	if branch {
		return stated{register, values, append(words, numbersOf(h.Near)...)}
	}
	return stated{register, append(values, numbersOf(h.Near)...), words}
}

// statedByFastener has the diameter of the thread among the words: an M8 bolt
// is called an 8 mm bolt by some, and its head is 13 mm.
func statedByFastener(f *model.Fastener) stated {
	values := append(numbersOf(f.Torque), given(f.Stages...)...)
	values = append(values, given(f.AcrossFlats)...)
	values = append(values, sizeOf(f.Drive)...)
	values = append(values, inText(f.Retorque)...)
	words := append(inText(f.Name), endsOf(f.Torque)...)
	if thread, err := fastening.ParseThread(f.Thread); err == nil {
		for _, mm := range []float64{thread.Diameter, thread.Pitch} {
			words = append(words, quantity.Quantity{Value: mm, Unit: quantity.Millimetre})
		}
	}
	return stated{machineFile, values, words}
}

// sizeOf is the width in a size such as "hex 6 mm", as it was written.
func sizeOf(text string) []quantity.Quantity {
	if _, err := fastening.ParseSize(text); err != nil {
		return nil
	}
	return inText(text)
}

// given leaves out what is not there.
func given(list ...quantity.Quantity) []quantity.Quantity {
	var out []quantity.Quantity
	for _, q := range list {
		if !q.IsZero() {
			out = append(out, q)
		}
	}
	return out
}

func numbersOf(l quantity.Limit) []quantity.Quantity {
	if l.IsZero() {
		return nil
	}
	return l.Numbers()
}

// endsOf are the ends of a tolerance: of 210 ± 5 bar, 205 and 215 bar.
func endsOf(l quantity.Limit) []quantity.Quantity {
	if l.Kind != quantity.PlusMinus {
		return nil
	}
	low, high, _ := l.Ends()
	return []quantity.Quantity{low, high}
}

// inText are the amounts of a text, tolerances left out.
func inText(text string) []quantity.Quantity {
	var out []quantity.Quantity
	for _, q := range quantity.Find(text) {
		if !q.Tolerance {
			out = append(out, q.Quantity)
		}
	}
	return out
}
