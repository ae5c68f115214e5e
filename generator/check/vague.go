package check

import (
	"strings"

	"baybinder/generator/base/finding"
)

var vague = finding.Rule{
	Code:  "vague",
	Level: finding.Advice,
	Title: "Words that two people read in two ways",
	Why:   "As needed, some, properly: each is a decision that the writer left to whoever stands at the bay, and nobody can check it afterwards.",
	Mend:  "Say how much, how often, until what is seen, or to which torque. What stands on the machine is quoted: \"some\".",
}

// vaguePhrases are words that say nothing that can be measured or looked at.
// The list is ours: it holds what has no exact use in a step.
var vaguePhrases = map[string][]string{
	"en": {
		"as needed", "as required", "as necessary", "as appropriate", "as applicable",
		"if necessary", "if needed", "if required", "if appropriate", "where necessary", "when necessary",
		"adequate", "adequately", "appropriate", "appropriately", "sufficient", "sufficiently", "suitable", "suitably",
		"proper", "properly", "carefully", "tight", "tight enough", "long enough", "hard enough",
		"some", "a few", "several", "a little", "a bit", "slightly", "a while",
		"periodically", "regularly", "from time to time", "etc", "and so on", "and the like",
	},
	"es": {
		"según sea necesario", "según se requiera", "según corresponda", "según convenga",
		"si es necesario", "si hace falta", "si procede", "cuando sea necesario", "cuando haga falta",
		"adecuado", "adecuada", "adecuadamente", "apropiado", "apropiada", "suficiente", "suficientemente",
		"debidamente", "con cuidado", "apretado", "apretada", "bien apretado", "bien apretada",
		"algún", "alguna", "algunos", "algunas", "unos cuantos", "unas cuantas", "varios", "varias", "un poco", "ligeramente",
		"periódicamente", "regularmente", "de vez en cuando", "etc", "y demás",
	},
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
var vagueByFirst = func() map[string]map[string][][]string {
	out := map[string]map[string][][]string{}
	for language, phrases := range vaguePhrases {
		out[language] = map[string][][]string{}
		for _, phrase := range phrases {
			words := strings.Fields(phrase)
			out[language][words[0]] = append(out[language][words[0]], words)
		}
	}
	return out
}()
