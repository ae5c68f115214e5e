package numbers

import (
	"errors"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
	"baybinder/generator/read/bind"
	"baybinder/generator/trade/chemical"
	"baybinder/generator/trade/domain"
)

// knownStatements looks for the codes of a supply that are no hazard statement:
// findings of the rule unknown-reference.
func knownStatements(s *model.Supply) []finding.Finding {
	var found []finding.Finding
	for _, code := range s.GHS {
		_, err := chemical.Find(code)
		found = append(found, unknownCode(err, s.FieldAt("ghs."+code), "ghs")...)
	}
	return found
}

func unknownCode(err error, at position.Pos, what string) []finding.Finding {
	var bad *domain.Error
	if !errors.As(err, &bad) {
		return nil
	}
	return []finding.Finding{bind.UnknownReference.At(at, "%s: %v", what, bad).WithMend("%s", bad.Mend())}
}
