package chemical

import "slices"

// Stage is when a precaution is wanted. They are the groups of the GHS's own
// P-statements, but for the general ones. Source: CLP annex IV, the numbering.
type Stage uint8

// Before and during use, when it has gone wrong, for keeping, for getting rid.
const (
	Use Stage = iota
	Mishap
	Keep
	Waste
)

// Precaution is one thing to do, in our own words. ID names it for whoever
// translates it.
type Precaution struct {
	ID    string // "no-flames"
	Stage Stage
	Text  string
}

// advice is a precaution and the parts that call for it. The words are ours:
// common practice, no source. The safety data sheet goes before them.
type advice struct {
	Precaution
	parts []part
}

var skin = []part{onSkin, burnsSkin, skinItch, skinAllergy}
var breath = []part{breathed, breathAllergy, airways}

var advices = []advice{
	{Precaution{"no-flames", Use, "Keep it away from flames, sparks and hot surfaces. Do not smoke."}, []part{burns, feedsFire, meetsAir, inCan}},
	{Precaution{"no-sparks", Use, "Earth the cans when you pour, and use tools that do not spark."}, []part{burns}},
	{Precaution{"no-fuel", Use, "Keep it away from oil, grease and cloths."}, []part{feedsFire}},
	{Precaution{"no-air", Use, "Keep it out of the air."}, []part{meetsAir}},
	{Precaution{"no-water", Use, "Keep it away from water and damp."}, []part{meetsWater}},
	{Precaution{"gloves", Use, "Wear gloves that this stuff does not get through."}, slices.Concat(skin, []part{later})},
	{Precaution{"eye-protection", Use, "Wear eye protection."}, []part{burnsSkin, eyes, eyesSting}},
	{Precaution{"air-the-place", Use, "Work in moving air; do not breathe vapour, mist or dust."}, slices.Concat(breath, []part{burns, later})},
	{Precaution{"ask-first", Use, "Read the safety data sheet before the first use. If you are pregnant, or not sure, ask first."}, []part{later}},
	{Precaution{"no-food", Use, "Do not eat or drink near it. Wash your hands afterwards."}, slices.Concat(skin, []part{swallowed, lungs, later})},
	{Precaution{"no-drain", Use, "Keep it out of drains, soil and water."}, []part{water}},

	{Precaution{"rinse-eyes", Mishap, "In the eyes: rinse with water for 15 min, lids open, lenses out. See a doctor."}, []part{burnsSkin, eyes, eyesSting}},
	{Precaution{"wash-skin", Mishap, "On the skin: take wet clothes off and wash with much water."}, skin},
	{Precaution{"fresh-air", Mishap, "Breathed in: go out into fresh air. Call for help if breathing is hard."}, breath},
	{Precaution{"no-vomiting", Mishap, "Swallowed: do not bring it up again. Call the poison centre at once."}, []part{lungs, burnsSkin}},
	{Precaution{"poison-centre", Mishap, "Swallowed: rinse the mouth and call the poison centre."}, []part{swallowed}},
	{Precaution{"see-doctor", Mishap, "If you were exposed, or feel unwell later, see a doctor and take the label with you."}, []part{later}},
	{Precaution{"take-up-spill", Mishap, "Spilled: take it up before it runs anywhere."}, []part{water, eatsMetal}},

	{Precaution{"keep-cool", Keep, "Keep it cool, closed, and where air moves."}, []part{burns, feedsFire, meetsAir, lungs, breathed, airways}},
	{Precaution{"bottle-upright", Keep, "Keep it out of the sun, where air moves, upright and tied."}, []part{underGas}},
	{Precaution{"can-cool", Keep, "Keep it out of the sun and below 50 °C. Do not pierce or burn the can, also when it is empty."}, []part{inCan}},
	{Precaution{"own-can", Keep, "Keep it in the can it came in."}, []part{eatsMetal, burnsSkin}},
	{Precaution{"dry-place", Keep, "Keep it dry."}, []part{meetsWater}},
	{Precaution{"locked-up", Keep, "Keep it locked up."}, []part{swallowed, lungs, onSkin, burnsSkin, breathed, later}},

	{Precaution{"own-waste", Waste, "Put what is left, and the empty can, into the waste for it; never into a drain or a common bin."}, []part{burns, feedsFire, swallowed, lungs, onSkin, burnsSkin, breathed, later, water, ozone}},
}

// Precautions are what to do for the hazards of a label, in the order of use,
// mishap, keeping and waste; each once. Statements that are covered count too.
func (l Label) Precautions() []Precaution {
	var out []Precaution
	for _, a := range advices {
		if slices.ContainsFunc(slices.Concat(l.Statements, l.Covered), func(s Statement) bool { return slices.Contains(a.parts, s.part) }) {
			out = append(out, a.Precaution)
		}
	}
	return out
}
