package procedure

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"baybinder/generator/model"
	"baybinder/generator/read/sentence"
	"baybinder/generator/show/page"
)

// pressWaits says of the waits of a step which a press begins. At most one runs from
// the tick of the step before: what stands behind another begins when that is over.
func pressWaits(v *Step, st *model.Step) {
	if !slices.ContainsFunc(v.Holds, func(h page.Hold) bool { return h.Kind == "wait" }) {
		return
	}
	runs, n := following(st), 0
	for _, l := range st.Links {
		if h, is := l.To.(*model.Hold); is && l.Kind.Stops {
			v.Holds[n].Pressed = h.Kind == "wait" && l != runs
			n++
		}
	}
}

// following is the wait of a step that runs from the tick of the step before: nothing
// else is asked for first, in the same step. Else it would be over before the plug
// was pulled that it waits for. It is nil where there is none.
func following(st *model.Step) *model.Link {
	for i := range st.Blocks {
		b := &st.Blocks[i]
		if b.Role != model.Said {
			continue
		}
		for _, s := range sentence.Of(b) {
			if wait, asked := firstOf(s); asked || wait != nil {
				return wait
			}
		}
	}
	return nil
}

// firstOf is the wait that a sentence asks for before all else, and whether it asks
// for something else before.
func firstOf(s sentence.Sentence) (wait *model.Link, asked bool) {
	for _, l := range s.Links {
		if h, is := l.To.(*model.Hold); is && l.Kind.Stops && h.Kind == "wait" && !(l.Start >= len(s.Text) && begins(l.Link)) {
			return l.Link, false
		}
		if asks(l.Kind) {
			return nil, true
		}
	}
	return nil, strings.ContainsFunc(s.Text, unicode.IsLetter)
}

// begins says whether the words of a wait that stand behind the end of a sentence
// are a sentence themselves, "Hang up the sign. [Wait 10 min]", and not what
// settle writes into empty brackets, "Wait for the oil. [settling]".
func begins(wait *model.Link) bool {
	first, _ := utf8.DecodeRuneInString(wait.Text)
	return unicode.IsUpper(first) && wait.To != nil && wait.Text != wait.To.Label()
}

// asks says whether a link of a kind is something to do or to use.
func asks(k *model.Kind) bool {
	return k.Act != model.NoAct || k.Stops || k.List == model.ListTools || k.List == model.ListSupplies
}
