package judge

import (
	"errors"

	"baybinder/generator/bind"
	"baybinder/generator/finding"
	"baybinder/generator/manual"
	"baybinder/generator/source"
	"baybinder/generator/trade/chemical"
	"baybinder/generator/trade/refused"
)

// knownStatements looks for the codes of a supply that are no hazard statement:
// findings of the rule unknown-reference.
func knownStatements(s *manual.Supply) []finding.Finding {
	var found []finding.Finding
	for _, code := range s.GHS {
		_, err := chemical.Find(code)
		found = append(found, unknownCode(err, s.At, "ghs")...)
	}
	return found
}

func unknownCode(err error, at source.Pos, what string) []finding.Finding {
	var bad *refused.Error
	if !errors.As(err, &bad) {
		return nil
	}
	return []finding.Finding{bind.UnknownReference.At(at, "%s: %v", what, bad).WithMend("%s", bad.Mend())}
}
