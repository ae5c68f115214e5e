package words

// Watch are the words of the box of findings that `watch` puts over a page, as
// its script gets them.
type Watch struct {
	Lang  string `json:"lang"`
	Last  string `json:"last"`  // over findings that stopped the build
	Found string `json:"found"` // over the others
	Close string `json:"close"`
}

// WatchIn are the words in a language; English where the theme does not speak
// it.
func WatchIn(language string) Watch {
	if language == "es" {
		return watchInSpanish
	}
	return watchInEnglish
}

var watchInEnglish = Watch{Lang: "en", Last: "This is the last good page", Found: "Found by the last build", Close: "Close"}

var watchInSpanish = Watch{Lang: "es", Last: "Esta es la última página buena", Found: "Lo que encontró la última comprobación", Close: "Cerrar"}
