package decode

import (
	"reflect"
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
	"baybinder/generator/read/syntax"
)

// shape reads the values that are neither a text, a number, a switch, a
// reference nor a list of these: the manual's own shapes.
func (d *Decoder) shape(n *syntax.Node, v reflect.Value, f field, key position.Pos) (ok, done bool) {
	switch out := v.Addr().Interface().(type) {
	case *quantity.Quantity:
		return d.amount(n, f, key, func(text string, dim quantity.Dimension) (err error) {
			*out, err = quantity.Parse(text, dim)
			return err
		}), true
	case *quantity.Stretch:
		return d.amount(n, f, key, func(text string, dim quantity.Dimension) (err error) {
			*out, err = quantity.ParseStretch(text, dim)
			return err
		}), true
	case *quantity.Limit:
		return d.amount(n, f, key, func(text string, dim quantity.Dimension) (err error) {
			*out, err = quantity.ParseLimit(text, dim)
			return err
		}), true
	case *[]quantity.Quantity:
		return d.stages(n, out, f, key), true
	case *model.Date:
		return d.date(n, out, f, key), true
	case *[]model.Pair:
		return d.pairs(n, f, key, func(p model.Pair) { *out = append(*out, p) }), true
	case *[]model.State:
		return d.states(n, out, f, key), true
	case *[]model.HazardUse:
		return d.hazards(n, out, f, key), true
	case *[]model.Order:
		return d.orders(n, out, f, key), true
	case *[]model.Unit:
		return d.units(n, out, f, key), true
	case *[]model.Acceptance:
		return d.acceptances(n, out, f, key), true
	case *[]model.ShownUnits:
		return d.shownUnits(n, out, f, key), true
	case *[]model.DatedUnit:
		return d.datedUnits(n, out, f, key), true
	case *model.Stored:
		return d.stored(n, out, f, key), true
	}
	if v.Kind() == reflect.Slice {
		if _, is := reflect.New(v.Type().Elem()).Interface().(amountSetter); is {
			return d.uses(n, v, f, key), true
		}
	}
	return false, false
}

// amountSetter is one line of a list that may hold amounts.
type amountSetter interface {
	setter
	SetAmount(text string, at position.Pos)
}

// uses reads [socket-10, wheel-chock: 4], or a map from id to amount.
func (d *Decoder) uses(n *syntax.Node, v reflect.Value, f field, key position.Pos) bool {
	add := func(id string, at position.Pos, amount *syntax.Node) bool {
		one := reflect.New(v.Type().Elem())
		use := one.Interface().(amountSetter)
		use.Set(id, at)
		if amount != nil && amount.Kind != syntax.Empty {
			if amount.Kind != syntax.Scalar {
				return d.wrong(amount, field{name: id}, at, finding.Say("an amount"), finding.Say("write %s: [%s: 4], or the id alone", f.name, id))
			}
			use.SetAmount(amount.Text, amount.At)
		}
		v.Set(reflect.Append(v, one.Elem()))
		return true
	}
	v.Grow(len(n.Items) + len(n.Pairs))
	return d.idList(n, f, key, add)
}

// idList reads a list of ids, each of which may be a map with one pair, or a
// map; add gets a nil value where there is only an id.
func (d *Decoder) idList(n *syntax.Node, f field, key position.Pos, add func(string, position.Pos, *syntax.Node) bool) bool {
	mend := func(n *syntax.Node) finding.Words {
		return finding.Say("write %s: [%s]", f.name, wordsIn(n, "one, two"))
	}
	ok := true
	pairs := make([]syntax.Pair, 0, len(n.Items)) // an id alone has no value
	switch n.Kind {
	case syntax.List:
		for _, item := range n.Items {
			switch {
			case item.Kind == syntax.Scalar && !namesNothing(item):
				pairs = append(pairs, syntax.Pair{Key: item.Text, KeyAt: item.At})
			case item.Kind == syntax.Map && len(item.Pairs) > 0:
				pairs = append(pairs, item.Pairs...)
			default:
				ok = d.wrong(item, f, key, finding.Say("a list of ids"), mend(item))
			}
		}
	case syntax.Map:
		pairs = n.Pairs
	default:
		return d.wrong(n, f, key, finding.Say("a list of ids"), mend(n))
	}
	for i := 0; i < len(pairs); i++ {
		if i+1 < len(pairs) && pairs[i].Value != nil {
			if comma, is := decimalComma(pairs[i].Value, pairs[i+1]); is {
				ok = d.add(comma)
				i++ // what stands behind the comma is the rest of this one
				continue
			}
		}
		if pairs[i].Key == "" {
			ok = d.add(WrongType.At(pairs[i].KeyAt, "%s has an entry without an id", f.name).WithMend("write the id before the colon, or take the entry out"))
			continue
		}
		ok = add(pairs[i].Key, pairs[i].KeyAt, pairs[i].Value) && ok
	}
	return ok
}

// hazards reads a list of ids, or a map from id to overrides.
func (d *Decoder) hazards(n *syntax.Node, out *[]model.HazardUse, f field, key position.Pos) bool {
	*out = slices.Grow(*out, len(n.Items)+len(n.Pairs))
	return d.idList(n, f, key, func(id string, at position.Pos, over *syntax.Node) bool {
		use, ok := model.HazardUse{}, true
		use.Set(id, at)
		if over != nil && over.Kind != syntax.Empty {
			use.Over = &model.HazardOverride{At: at, WearSaid: over.Get("wear") != nil}
			ok = d.within(f.name, func() bool {
				return d.fill(over, reflect.ValueOf(use.Over).Elem(), finding.Say("an override of %s", id), at)
			})
		}
		*out = append(*out, use)
		return ok
	})
}

func (d *Decoder) date(n *syntax.Node, out *model.Date, f field, key position.Pos) bool {
	day, ok := model.ParseDate(n.Text)
	if n.Kind != syntax.Scalar || !ok {
		return d.wrong(n, f, key, finding.Say("a day of the calendar"), finding.Say("write %s: 2026-03-02, as year, month and day", f.name))
	}
	*out = day
	return true
}

// stages reads torques and angles, each as written.
func (d *Decoder) stages(n *syntax.Node, out *[]quantity.Quantity, f field, key position.Pos) bool {
	if n.Kind != syntax.List {
		return d.wrong(n, f, key, finding.Say("a list of torques and angles"), finding.Say("write %s: [%s]", f.name, wordsIn(n, "30 N·m, 60 N·m, 90°")))
	}
	ok := true
	for _, item := range n.Items {
		if item.Kind == syntax.List {
			ok = d.wrong(item, f, key, finding.Say("a list of torques and angles"), finding.Say("take the inner brackets away: %s: [%s]", f.name, wordsIn(item, "30 N·m, 60 N·m, 90°")))
			continue
		}
		q, err := quantity.Parse(item.Text, quantity.None)
		if err == nil && q.Unit.Dimension() != quantity.Torque && q.Unit.Dimension() != quantity.Angle {
			_, err = quantity.Parse(item.Text, quantity.Torque)
		}
		if err != nil {
			ok = d.add(BadAmount(err, placeOf(item, key), f.name))
			continue
		}
		*out = append(*out, q)
	}
	return ok
}

// pairs reads a map from a word to a text.
func (d *Decoder) pairs(n *syntax.Node, f field, key position.Pos, add func(model.Pair)) bool {
	if n.Kind != syntax.Map {
		return d.wrong(n, f, key, finding.Say("a map"), finding.Say("write %s: { %s }", f.name, pairsIn(n)))
	}
	ok := true
	for _, p := range n.Pairs {
		if p.Value.Kind != syntax.Scalar {
			ok = d.wrong(p.Value, field{name: p.Key}, p.KeyAt, finding.Say("a text"), finding.Say("write %s: text, in quotes where it holds a comma or a colon", p.Key))
			continue
		}
		add(model.Pair{Key: p.Key, KeyAt: p.KeyAt, Value: p.Value.Text, ValueAt: p.Value.At})
	}
	return ok
}

// pairsIn are the pairs that were meant by a list, "good, bad" or "lid: off".
func pairsIn(n *syntax.Node) string {
	var out []string
	for _, item := range n.Items {
		switch {
		case item.Kind == syntax.Scalar && item.Text != "":
			out = append(out, item.Text+": text")
		case item.Kind == syntax.Map && len(item.Pairs) == 1 && item.Pairs[0].Value.Kind == syntax.Scalar:
			out = append(out, item.Pairs[0].Key+": "+item.Pairs[0].Value.Text)
		default:
			return "one: text, two: text"
		}
	}
	if len(out) == 0 {
		return "one: text, two: text"
	}
	return strings.Join(out, ", ")
}

func (d *Decoder) states(n *syntax.Node, out *[]model.State, f field, key position.Pos) bool {
	return d.pairs(n, f, key, func(p model.Pair) {
		*out = append(*out, model.State{ID: p.Key, At: p.KeyAt, Word: p.Value, WordAt: p.ValueAt})
	})
}

func (d *Decoder) orders(n *syntax.Node, out *[]model.Order, f field, key position.Pos) bool {
	if n.Kind != syntax.Map {
		return d.wrong(n, f, key, finding.Say("a map from id to list"), finding.Say("write orders: { bleed-order: [rear, front] }"))
	}
	for _, p := range n.Pairs {
		order := model.Order{Entry: model.Entry{ID: p.Key, At: p.KeyAt}}
		d.ID(p.Key, p.KeyAt)
		order.Unread = !d.list(p.Value, reflect.ValueOf(&order.Labels).Elem(), field{name: p.Key}, p.KeyAt)
		*out = append(*out, order)
	}
	return true
}

func (d *Decoder) units(n *syntax.Node, out *[]model.Unit, f field, key position.Pos) bool {
	if n.Kind != syntax.List {
		return d.wrong(n, f, key, finding.Say("a list"), finding.Say("write units: and under it - { serials: 101 to 130, options: [canopy] }"))
	}
	ok := true
	for i, item := range n.Items {
		u := model.Unit{At: placeOf(item, key)}
		if !d.within(f.name+"."+strconv.Itoa(i), func() bool { return d.fill(item, reflect.ValueOf(&u).Elem(), finding.Say("a row of units"), u.At) }) {
			ok = false
			continue
		}
		from, to, err := quantity.ParseSerials(u.Serials)
		if err != nil {
			ok = d.add(BadAmount(err, item.Get("serials").At, "serials"))
			continue
		}
		u.From, u.To = from, to
		*out = append(*out, u)
	}
	return ok
}

// acceptances reads a list of what the writer accepts.
func (d *Decoder) acceptances(n *syntax.Node, out *[]model.Acceptance, f field, key position.Pos) bool {
	if n.Kind != syntax.List {
		return d.wrong(n, f, key, finding.Say("a list"), finding.Say("write accepts: and under it - { code: vague, at: 2.3, because: … }"))
	}
	ok := true
	for _, item := range n.Items {
		a := model.Acceptance{At: placeOf(item, key)}
		if code := item.Get("code"); code != nil {
			a.CodeAt = code.At
		}
		if !d.within(f.name, func() bool { return d.fill(item, reflect.ValueOf(&a).Elem(), finding.Say("an acceptance"), a.At) }) {
			ok = false
			continue
		}
		*out = append(*out, a)
	}
	return ok
}

// shownUnits reads { torque: [N·m, lbf·ft] }.
func (d *Decoder) shownUnits(n *syntax.Node, out *[]model.ShownUnits, f field, key position.Pos) bool {
	if n.Kind != syntax.Map {
		return d.wrong(n, f, key, finding.Say("a map"), finding.Say("write show-units: { torque: [N·m, lbf·ft] }"))
	}
	ok := true
	for _, p := range n.Pairs {
		shown := model.ShownUnits{Dimension: quantity.DimensionNamed(p.Key)}
		if shown.Dimension == quantity.None {
			ok = d.add(WrongType.At(p.KeyAt, "%s is not a kind of amount", p.Key).WithMend("write torque, pressure, length, mass, volume or temperature"))
			continue
		}
		var units []string
		if !d.list(p.Value, reflect.ValueOf(&units).Elem(), field{name: p.Key}, p.KeyAt) {
			ok = false
			continue
		}
		for i, symbol := range units {
			unit, known := quantity.UnitNamed(symbol)
			if !known || unit.Dimension() != shown.Dimension {
				ok = d.add(Quantity.At(p.Value.Items[i].At, "%s is not a unit of %s", symbol, shown.Dimension).
					WithMend("write units of one kind, such as %s: [%s]", shown.Dimension, unitsOf(shown.Dimension)))
				continue
			}
			shown.Units = append(shown.Units, unit)
		}
		*out = append(*out, shown)
	}
	return ok
}

// unitsOf are the symbols of a dimension's units.
func unitsOf(d quantity.Dimension) string {
	var out []string
	for _, u := range quantity.Units(d) {
		out = append(out, u.Symbol())
	}
	return strings.Join(out, ", ")
}

// datedUnits reads { tw-07: 2026-03-02 }.
func (d *Decoder) datedUnits(n *syntax.Node, out *[]model.DatedUnit, f field, key position.Pos) bool {
	ok := true
	good := d.pairs(n, f, key, func(p model.Pair) {
		day, is := model.ParseDate(p.Value)
		if !is {
			ok = d.add(WrongType.At(p.ValueAt, "%s is %q; it must be a day of the calendar", p.Key, p.Value).WithMend("write 2026-03-02, as year, month and day"))
			return
		}
		*out = append(*out, model.DatedUnit{Name: p.Key, Last: day})
	})
	return ok && good
}

// stored reads yes, no, or what is stored: a charge or a gas.
func (d *Decoder) stored(n *syntax.Node, out *model.Stored, f field, key position.Pos) bool {
	if n.Kind == syntax.Map {
		out.Yes = true
		return d.within(f.name, func() bool { return d.fill(n, reflect.ValueOf(out).Elem(), finding.Say("%s", f.name), key) })
	}
	if n.Kind != syntax.Scalar || (n.Text != "yes" && n.Text != "no") {
		return d.wrong(n, f, key, finding.Say("yes, no, or what is stored"), finding.Say("write stored: yes, or stored: { capacitance: 1000 µF, resistance: 100 kΩ }, or for a gas stored: { gas-volume: 10 L }"))
	}
	out.Yes = n.Text == "yes"
	return true
}
