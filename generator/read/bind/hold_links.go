package bind

import (
	"strings"

	"baybinder/generator/model"
)

// toHoldOf binds a link to a hold of a kind: what failed, what was answered,
// what was noted.
func (l *linker) toHoldOf(link *model.Link) {
	split(link, link.Kind.Frag)
	named(l, link, l.holds)
	hold, _ := link.To.(*model.Hold)
	if hold == nil || hold.Lost("kind", "answers") {
		return
	}
	switch target := link.Kind.Target; {
	case target == model.ToOutcome && hold.Kind != "measure" && hold.Kind != "look":
		l.bad(link, UnknownReference.At(link.At, "%s is a %s: only a measure or a look can fail", hold.Label(), hold.Kind).
			WithMend("for an ask hold write if:%s=ANSWER", hold.ID))
	case target == model.ToNote && hold.Kind != "note":
		l.bad(link, UnknownReference.At(link.At, "%s is a %s: it records no note", hold.Label(), hold.Kind).
			WithMend("name a hold of kind note"))
	case target == model.ToAnswer:
		l.answer(link, hold)
	}
}

func (l *linker) answer(link *model.Link, hold *model.Hold) {
	if hold.Kind == "ask" && len(hold.Answers) == 0 {
		link.Bad = true // that it has none is told there
		return
	}
	var answers []string
	for _, a := range hold.Answers {
		if a.Key == link.Frag() && hold.Kind == "ask" {
			return
		}
		answers = append(answers, a.Key)
	}
	f := UnknownReference.At(link.At, "%s has no answer %q", hold.Label(), link.Frag())
	if hold.Kind != "ask" {
		f = UnknownReference.At(link.At, "%s is a %s: only an ask hold has answers", hold.Label(), hold.Kind)
	} else {
		f = f.WithMend("write if:%s=ANSWER with one of: %s", hold.ID, strings.Join(answers, ", "))
	}
	l.bad(link, f)
}
