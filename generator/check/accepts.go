package check

import (
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/read/decode"
)

// accept takes out the advice that a writer weighed and does not follow. An
// acceptance without a reason accepts nothing; one that takes nothing out is
// told, so that it does not hide what comes later.
func accept(p *model.Procedure, list []finding.Finding) []finding.Finding {
	for _, a := range p.Accepts {
		if !slices.Contains(Acceptable, string(a.Code)) {
			list = append(list, decode.NotOneOf(a.CodeAt, "code", string(a.Code), Acceptable))
			continue
		}
		if strings.TrimSpace(a.Because) == "" {
			list = append(list, decode.MissingField.At(a.At, "this acceptance has no because").
				WithMend("write because: with the reason, or take the acceptance out"))
			continue
		}
		step := p.FindStep(a.Place)
		before := len(list)
		list = slices.DeleteFunc(list, func(f finding.Finding) bool {
			return f.Code == string(a.Code) && f.At.File == p.File && step != nil && standsIn(f, step)
		})
		if len(list) == before && !unread(p) {
			list = append(list, NotUsed.At(a.At, "step %s has no %s to accept", a.Place, a.Code).
				WithMend("take the acceptance out, or write the step's number or name as it is now"))
		}
	}
	return list
}

// standsIn says whether a finding stands in a step's own text.
func standsIn(f finding.Finding, s *model.Step) bool {
	return slices.ContainsFunc(s.Blocks, func(b model.Block) bool {
		return f.At.Start >= b.At.Start && f.At.Start <= b.At.End
	})
}
