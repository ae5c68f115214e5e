package check

import (
	"baybinder/generator/language/shape"
	"strings"

	"baybinder/generator/base/finding"
)

var vague = finding.Rule{
	Code:       "vague",
	Level:      finding.Advice,
	Acceptable: true,
	Title:      "Words that two people read in two ways",
	Why:        "As needed, some, properly: each is a decision that the writer left to whoever stands at the bay, and nobody can check it afterwards.",
	Mend:       "Say how much, how often, until what is seen, or to which torque. What stands on the machine is quoted: \"some\".",
}

func runVague(w *writing, text []sentence) []finding.Finding {
	var found []finding.Finding
	for _, one := range text {
		found = append(found, vagueIn(one, w.phrases, w.byHand)...)
	}
	return found
}

// vagueIn looks at every word of a sentence, and takes the longest phrase that
// begins there. How tight a hand makes it is not vague.
func vagueIn(s sentence, phrases, byHand map[string][][]string) []finding.Finding {
	var found []finding.Finding
	for i := 0; i < len(s); i++ {
		if n := longest(s[i:], byHand); n > 0 {
			i += n - 1
			continue
		}
		n := longest(s[i:], phrases)
		if n == 0 {
			continue
		}
		at := s[i : i+n].at()
		found = append(found, vague.At(at, "%q can be read in two ways", strings.Join(strings.Fields(at.Text()), " ")).
			WithMend("say how much, how often, or until what is seen"))
		i += n - 1
	}
	return found
}

// longest is the number of words of the longest phrase that a sentence begins with.
func longest(s sentence, phrases map[string][][]string) int {
	n := 0
	for _, phrase := range phrases[s[0].said] {
		if len(phrase) > n && says(s, phrase) {
			n = len(phrase)
		}
	}
	return n
}

// says is true where a sentence begins with these words.
func says(s sentence, words []string) bool {
	if len(s) < len(words) {
		return false
	}
	for i, w := range words {
		if s[i].said != w {
			return false
		}
	}
	return true
}

// vagueByFirst finds the phrases by language and first word.
var vagueByFirst = byCode(func(l *shape.Language) map[string][][]string { return byFirst(l.Vague) })

// byHandByFirst finds the phrases for what is made tight by hand.
var byHandByFirst = byCode(func(l *shape.Language) map[string][][]string { return byFirst(l.ByHand) })

func byFirst(phrases []string) map[string][][]string {
	out := map[string][][]string{}
	for _, phrase := range phrases {
		words := strings.Fields(phrase)
		out[words[0]] = append(out[words[0]], words)
	}
	return out
}
