package chemical

import "slices"

// Label is what a chemical's label says for its hazards.
type Label struct {
	Word       Word
	Signs      []Sign // in the order of their numbers
	Optional   []Sign // those of Signs that may be left out
	Statements []Statement
	Covered    []Statement // what need not be said, because a graver statement says it
}

// LabelOf works out the label of a chemical from the codes of its statements, in
// their order; a code that comes twice is taken once. The error is a
// *refused.Error of the first code that is unknown.
//
// The signal word is the strongest: with Danger there is no Warning. Source: UN
// GHS 1.4.10.5.3 and CLP articles 20 and 26, from memory, as a page on the
// precedence rules has them.
func LabelOf(codes []string) (Label, error) {
	var all []Statement
	for _, text := range codes {
		s, err := Find(text)
		if err != nil {
			return Label{}, err
		}
		if !slices.Contains(all, s) {
			all = append(all, s)
		}
	}
	l := Label{Signs: signs(all)}
	for _, s := range all {
		l.Word = max(l.Word, s.Word)
		if covered(s, all) {
			l.Covered = append(l.Covered, s)
			continue
		}
		l.Statements = append(l.Statements, s)
	}
	if slices.Contains(l.Signs, GasCylinder) && (slices.Contains(l.Signs, Flame) || slices.Contains(l.Signs, Skull)) {
		l.Optional = []Sign{GasCylinder}
	}
	return l, nil
}

// signs are the pictograms that the statements leave, in order.
func signs(all []Statement) []Sign {
	var out []Sign
	for _, s := range all {
		if s.Sign != NoSign && !outranked(s, all) && !slices.Contains(out, s.Sign) {
			out = append(out, s.Sign)
		}
	}
	slices.Sort(out)
	return out
}

// outranked says whether the pictogram of a statement gives way. Only the
// exclamation mark does: to the skull everywhere; to corrosion where it stands
// for skin or eyes; to the health hazard of an allergy of the lungs where it
// stands for an allergy of the skin, or for skin or eyes. Source: as LabelOf.
func outranked(s Statement, all []Statement) bool {
	if s.Sign != ExclamationMark {
		return false
	}
	irritates := s.part == skinItch || s.part == eyesSting
	return slices.ContainsFunc(all, func(other Statement) bool {
		return other.Sign == Skull ||
			other.Sign == Corrosion && irritates ||
			other.part == breathAllergy && (irritates || s.part == skinAllergy)
	})
}

// covered says whether a graver statement says the same: burns of the skin say
// that of the eyes, and lasting harm to water life says the harm. Source: as
// LabelOf.
func covered(s Statement, all []Statement) bool {
	graver := map[string]string{"H318": "H314", "H400": "H410"}[s.Code]
	return graver != "" && slices.ContainsFunc(all, func(other Statement) bool { return other.Code == graver })
}
