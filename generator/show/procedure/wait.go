package procedure

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"baybinder/generator/model"
	"baybinder/generator/read/sentence"
)

// begunByPress says whether a wait of a step cannot run from the tick of the step
// before: something is asked for first, in the same step. It would be over before
// the plug was pulled that it waits for.
func begunByPress(st *model.Step, wait *model.Link) bool {
	for i := range st.Blocks {
		b := &st.Blocks[i]
		if b.Role != model.Said {
			continue
		}
		for _, s := range sentence.Of(b) {
			if first, here := before(s, wait); first || here {
				return first
			}
		}
	}
	return false
}

// before says whether a sentence asks for something that comes before a wait, and
// whether the wait belongs to it.
func before(s sentence.Sentence, wait *model.Link) (asked, here bool) {
	for _, l := range s.Links {
		if l.Link == wait {
			return l.Start >= len(s.Text) && begins(wait), true
		}
		if asks(l.Kind) {
			return true, false
		}
	}
	return strings.ContainsFunc(s.Text, unicode.IsLetter), false
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
