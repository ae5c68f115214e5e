package words

// Language are the words of pages in more than one language.
type Language struct {
	Name      string // the language's own name
	Languages string // what the switch is called
	AtThe     string // a fastener, a part

	AtMost, AtLeast, To string // of a limit: "at most 5 V", "2 to 6 bar"
}

// LanguageIn are those words in a language; English where the theme does not
// speak it.
func LanguageIn(language string) *Language {
	if language == "es" {
		return &languageInSpanish
	}
	return &languageInEnglish
}

// NameOf is a language's own name; its code where the theme does not speak it.
func NameOf(language string) string {
	if language == "en" || language == "es" {
		return LanguageIn(language).Name
	}
	return language
}

var languageInEnglish = Language{Name: "English", Languages: "This page in another language", AtThe: "%s at the %s", AtMost: "at most", AtLeast: "at least", To: "to"}

var languageInSpanish = Language{Name: "Español", Languages: "Esta página en otro idioma", AtThe: "%s de: %s", AtMost: "como máximo", AtLeast: "como mínimo", To: "a"}
