package check

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/model"
)

var HollowLink = finding.Rule{
	Code:       "hollow-link",
	Level:      finding.Advice,
	Acceptable: true,
	Title:      "A hold, a hazard or a torque whose brackets are empty",
	Why:        "The page prints the register's words for an empty link. Whoever opens the file itself sees nothing there, does not stop, or does not see the torque.",
	Mend:       "Write words between the brackets: [Wait 60 min](hold:capacitor-wait). baybinder settle writes the register's words there.",
}

func runHollowLink(_ *Context, p *model.Procedure) []finding.Finding {
	var found []finding.Finding
	for _, link := range allLinks(p) {
		if link.Kind.Worded && link.Text == "" && !link.Bad {
			found = append(found, HollowLink.At(link.At, "the brackets of this %s: are empty: who reads the file itself sees nothing here", link.Kind.Name).
				WithMend("write them: [%s](%s), or let baybinder settle do it", link.To.Label(), link.Address).WithSettle())
		}
	}
	return found
}
