package numbers

import (
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
	"baybinder/generator/read/decode"
	"baybinder/generator/trade/lifting"
)

// plausibleLift holds the measures of a part's lift against the limits of the
// equation, and looks for what it needs and does not have: findings of the
// rules quantity and missing-field.
func plausibleLift(p *model.Part) []finding.Finding {
	l := p.Lift
	var found []finding.Finding
	missing := func(what string, mend finding.Words) {
		found = append(found, decode.MissingField.At(p.At, "%s has a lift and no %s, so its limit cannot be computed", p.ID, what).WithMend("%s", mend))
	}
	if p.Mass.IsZero() && !p.Lost("mass") {
		missing("mass", finding.Say("write mass: …, or take lift out"))
	}
	switch {
	case p.Lost("lift"):
	case l.To == nil && l.Travel.IsZero():
		missing("travel", finding.Say("write travel: how far up or down it goes, or to: { horizontal: …, vertical: … } for the other end"))
	case l.To != nil && !l.Travel.IsZero():
		found = append(found, decode.Quantity.At(p.FieldAt("lift.travel"), "lift: travel and to both say how far %s goes up or down", p.ID).
			WithMend("leave travel out: it is the difference of the two heights"))
	}
	bounds := len(found)
	for _, b := range lifting.Bounds(p) {
		if p.Lost("lift." + b.Field) {
			continue
		}
		found = append(found, outOfBound(p, b)...)
	}
	if a, known := lifting.OfPart(p, 1); known && a.Limit.Value <= 0 && len(found) == bounds {
		found = append(found, decode.Quantity.At(p.FieldAt("lift"), "lift: so often for so long, nothing of %s is lifted by hand", p.ID).
			WithMend("look the frequency and the duration up again, or lift it with gear and take lift out"))
	}
	return found
}

func outOfBound(p *model.Part, b lifting.Bound) []finding.Finding {
	switch {
	case b.Below() && b.Given.Base() <= 0 || b.Given.Base() < 0:
		return []finding.Finding{decode.Quantity.At(liftAt(p, b.Field), "lift: %s is %s, which cannot be", b.Field, b.Say(b.Given)).
			WithMend("write what it is, from %s to %s", b.Least, b.Most)}
	case b.Below():
		return []finding.Finding{decode.Quantity.At(liftAt(p, b.Field), "lift: %s is %s: the hands are never nearer to the ankles than %s", b.Field, b.Say(b.Given), b.Least).
			WithMend("measure from the middle of the ankles to the middle of the hands; write %s where it is less", b.Least)}
	case b.Above():
		return []finding.Finding{decode.Quantity.At(liftAt(p, b.Field), "lift: %s is %s: beyond %s nothing is lifted by hand", b.Field, b.Say(b.Given), b.Say(b.Most)).
			WithMend("look it up again; if it is so, lift it with gear and take lift out")}
	}
	return nil
}

// liftAt is where a measure of a part's lift stands.
func liftAt(p *model.Part, field string) position.Pos {
	if at := p.FieldAt("lift." + strings.ReplaceAll(field, ": ", ".")); at != p.At {
		return at
	}
	return p.FieldAt("lift")
}
