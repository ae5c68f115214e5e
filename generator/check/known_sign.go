package check

import (
	"baybinder/generator/language"
	"cmp"
	"regexp"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/check/numbers"
	"baybinder/generator/read/bind"
	"baybinder/theme/signs"
)

// signNumber is the form of the numbers of ISO 7010.
var signNumber = regexp.MustCompile(`^[EFMPW][0-9]{3}$`)

// runKnownSign asks that a hazard's symbol is a sign that the pages can draw. A
// number of ISO 7010 that is not drawn is right, and stands in the box as a name.
func runKnownSign(c *Context) []finding.Finding {
	var found []finding.Finding
	look := func(id, symbol string, at position.Pos) {
		if _, known := signs.Find(symbol); known || symbol == "" {
			return
		}
		if signNumber.MatchString(symbol) {
			found = append(found, numbers.NotJudged.At(at, "%s has the symbol %s, and the pages do not draw that sign: its name stands in the box", id, symbol).
				WithMend("look the number up in ISO 7010; where it is right, leave it"))
			return
		}
		f := bind.UnknownReference.At(at, "%s has the symbol %s, and the pages can draw no such sign", id, symbol)
		if near, ok := signs.Find(cmp.Or(language.SignNumber(symbol), signs.Nearest(symbol))); ok {
			found = append(found, f.WithMend("did you mean %s (%s)?", near.Number, finding.Spoken(func(lang string) string {
				return cmp.Or(language.Of(lang).Signs[near.Number], near.Name)
			})))
			return
		}
		found = append(found, f.WithMend("write a number of ISO 7010, such as W012 (Electricity)"))
	}
	for _, h := range c.Manual.Hazards {
		look(h.ID, h.Symbol, h.FieldAt("symbol"))
	}
	for _, p := range c.Manual.Procedures {
		for _, use := range p.Hazards {
			if use.Over != nil {
				look(use.ID, use.Over.Symbol, use.At)
			}
		}
	}
	return found
}
