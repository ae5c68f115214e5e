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
		found = append(found, vagueIn(one, w.phrases)...)
	}
	return found
}

// vagueIn looks at every word of a sentence, and takes the longest phrase that
// begins there.
func vagueIn(s sentence, phrases map[string][][]string) []finding.Finding {
	var found []finding.Finding
	for i := 0; i < len(s); i++ {
		n := 0
		for _, phrase := range phrases[s[i].said] {
			if len(phrase) > n && says(s[i:], phrase) {
				n = len(phrase)
			}
		}
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
var vagueByFirst = byCode(func(l *shape.Language) map[string][][]string {
	out := map[string][][]string{}
	for _, phrase := range l.Vague {
		words := strings.Fields(phrase)
		out[words[0]] = append(out[words[0]], words)
	}
	return out
})
