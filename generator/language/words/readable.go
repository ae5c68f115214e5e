package words

// Readable are the words of the tables that say how hard the steps are to
// read.
type Readable struct {
	Title, Intro                   string
	English, Spanish               string // what the figure is, where the text is in that language
	Other                          string // where it is in another
	Procedure, Ease, Longest, Step string
	WordsInSteps                   string
	EaseGrade                      string // the figure, a school year
	TooShort, NoFormula            string
	More                           string // how many are listed, of how many
}

// Figure says what the figure is of texts in a language.
func (w *Readable) Figure(language string) string {
	switch language {
	case "en":
		return w.English
	case "es":
		return w.Spanish
	}
	return w.Other
}

// ReadableIn are the words in a language; English where the theme does not
// speak it.
func ReadableIn(language string) *Readable {
	if language == "es" {
		return &readableInSpanish
	}
	return &readableInEnglish
}

var readableInEnglish = Readable{
	Title:     "How hard the steps are to read",
	Intro:     "The hardest first. It is a figure to compare texts by, not a finding: no limit is published for a workshop's steps. Shorter sentences and shorter words raise it.",
	English:   "Flesch reading ease (1948), from sentence and word length: under 30 very hard, 30 to 50 hard, 50 to 60 fairly hard, 60 to 70 plain, 70 to 90 easy, from 90 very easy. Grade: school year in the United States (Flesch-Kincaid).",
	Spanish:   "Szigriszt-Pazos perspicuity (1993), from sentence and word length, in the bands of the INFLESZ scale (2008): under 40 very hard, 40 to 55 fairly hard, 55 to 65 plain, 65 to 80 easy, over 80 very easy.",
	Other:     "There is no formula here for this language: the longest sentence leads.",
	Procedure: "Procedure", Ease: "Reading ease", Longest: "Longest sentence", Step: "step", WordsInSteps: "Words in steps",
	EaseGrade: "%.0f · grade %.0f", TooShort: "under 100 words: too short to measure", NoFormula: "no formula",
	More: "The %d hardest of %d procedures are listed.",
}

var readableInSpanish = Readable{
	Title:     "Lo difíciles de leer que son los pasos",
	Intro:     "Primero los más difíciles. Es una cifra para comparar textos, no un defecto: no hay un límite publicado para los pasos de un taller. Con frases y palabras más cortas, sube.",
	English:   "Facilidad de lectura de Flesch (1948), según el largo de frases y palabras: menos de 30 muy difícil, 30 a 50 difícil, 50 a 60 algo difícil, 60 a 70 normal, 70 a 90 fácil, desde 90 muy fácil. Grado: curso escolar en Estados Unidos (Flesch-Kincaid).",
	Spanish:   "Perspicuidad de Szigriszt-Pazos (1993), según el largo de frases y palabras, con los grados de la escala INFLESZ (2008): menos de 40 muy difícil, 40 a 55 algo difícil, 55 a 65 normal, 65 a 80 fácil, más de 80 muy fácil.",
	Other:     "Aquí no hay fórmula para este idioma: primero va la frase más larga.",
	Procedure: "Procedimiento", Ease: "Facilidad", Longest: "Frase más larga", Step: "paso", WordsInSteps: "Palabras en los pasos",
	EaseGrade: "%.0f · grado %.0f", TooShort: "menos de 100 palabras: muy corto para medirlo", NoFormula: "sin fórmula",
	More: "Se muestran los %d más difíciles de %d procedimientos.",
}
