package check

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/model"
)

var noTime = finding.Rule{
	Code:       "no-time",
	Level:      finding.Advice,
	Acceptable: true,
	Title:      "A step without a time, where others have one",
	Why:        "The times of a job are added up. One step that is left out makes the sum too short, and nobody sees by how much.",
	Mend:       "Write [](time:8min) at the end of the step, or one time for the whole phase in its first paragraph.",
}

func runNoTime(_ *Context, p *model.Procedure) []finding.Finding {
	if unread(p) || !anyTime(p) {
		return nil
	}
	var found []finding.Finding
	for _, phase := range p.Phases {
		if phase.Lead != nil && timed(phase.Lead.Links) {
			continue
		}
		for _, s := range phase.Steps {
			found = append(found, untimed(s)...)
		}
	}
	return found
}

// anyTime says whether a phase or a step of the procedure has a time.
func anyTime(p *model.Procedure) bool {
	for _, phase := range p.Phases {
		if phase.Lead != nil && timed(phase.Lead.Links) {
			return true
		}
	}
	for _, s := range p.Steps {
		if timed(s.Links) {
			return true
		}
	}
	return false
}

func timed(links []*model.Link) bool {
	for _, link := range links {
		if link.Is(model.LinkTime) {
			return true
		}
	}
	return false
}

// untimed tells of a step, or of those of its sub-steps that lack a time: the
// time of a step is that of its sub-steps, or counts for them.
func untimed(s *model.Step) []finding.Finding {
	if timed(s.Links) || timeKnown(s) && len(s.Subs) == 0 {
		return nil
	}
	if len(s.Subs) == 0 {
		return []finding.Finding{noTime.At(s.At, "this step has no time, and others have").
			WithMend("write [](time:8min) at its end, or a time for the phase in its first paragraph")}
	}
	var found []finding.Finding
	for _, sub := range s.Subs {
		found = append(found, untimed(sub)...)
	}
	return found
}

// timeKnown says that a step's time stands elsewhere: it waits, performs
// another procedure, or is the refit of steps that have their own.
func timeKnown(s *model.Step) bool {
	known := false
	for _, link := range s.Links {
		hold, is := link.To.(*model.Hold)
		switch {
		case link.Kind.Stops && (link.Bad || is && hold.Lost("kind")):
			return true // it may be a wait
		case is && hold.Kind == "wait", link.Kind.Act == model.Call, link.Kind.Act == model.Reverse:
			known = true
		case link.Kind.Act != model.NoAct:
			return false
		}
	}
	return known
}
