package numbers

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/model"
)

// TooFewPeople is told at the people: link, or at the do: of a procedure that
// takes more.
var TooFewPeople = finding.Rule{
	Code:  "too-few-people",
	Title: "A step that needs more people than the job has",
	Why:   "The job is begun by as many as the page says, and stands half open until a second person is found.",
	Mend:  "Write people: in the front matter with the most that any step or called procedure needs.",
}

// tooFewPeople looks for steps that ask for more people than the procedure has.
func tooFewPeople(j *job) []finding.Finding {
	p := j.of
	if p.Broken || p.Lost("people") {
		return nil
	}
	var found []finding.Finding
	for _, phase := range p.Phases {
		if phase.Lead != nil {
			found = append(found, asksForMore(p, phase.Lead.Links)...)
		}
	}
	for _, s := range p.Steps {
		found = append(found, asksForMore(p, s.Links)...)
	}
	return found
}

func asksForMore(p *model.Procedure, links []*model.Link) []finding.Finding {
	var found []finding.Finding
	for _, link := range links {
		if link.Bad {
			continue
		}
		if n := int(link.Amount().Value); link.Is(model.LinkPeople) && n > p.People {
			found = append(found, fewer(p, link, finding.Say("this needs %s", persons(n)), n))
		}
		callee, is := link.To.(*model.Procedure)
		if is && link.Kind.Act == model.Call && !callee.Broken && !callee.Lost("people") && callee.People > p.People {
			found = append(found, fewer(p, link, finding.Say("%s takes %s", callee.Label(), persons(callee.People)), callee.People))
		}
	}
	return found
}

func fewer(p *model.Procedure, link *model.Link, why finding.Words, need int) finding.Finding {
	return TooFewPeople.At(link.At, "%s, and this procedure has %s", why, persons(p.People)).
		WithMend("write people: %d in the front matter", need)
}

func persons(n int) finding.Words {
	if n == 1 {
		return finding.Say("one person")
	}
	return finding.Say("%d people", n)
}
