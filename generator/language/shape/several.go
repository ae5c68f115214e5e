package shape

import (
	"slices"
	"strconv"
	"strings"
)

// OfSeveral says that a word before a name is said of several, and the name is that of
// one: "four", "both", of a bolt. Of a name that ends as several do it is false.
func (l *Language) OfSeveral(word, name string) bool {
	word = strings.ToLower(word)
	n, err := strconv.Atoi(word)
	if many := l.Numbers.Spelled[word] > 1 || l.Numbers.Many[word] || err == nil && n > 1; !many {
		return false
	}
	name, _, _ = strings.Cut(name, ",")
	words := PlainWords(name)
	if end := slices.IndexFunc(words, func(w string) bool { return Among(l.Acts.Prepositions, w) || w == l.Numbers.Of }); end > 0 {
		words = words[:end]
	}
	if l.Acts.NounFirst {
		words = words[:min(len(words), 1)]
	}
	return len(words) > 0 && !slices.ContainsFunc(l.Numbers.Plurals, func(end string) bool { return strings.HasSuffix(words[len(words)-1], end) })
}
