package words

// Readable are the words of the tables that say how hard the steps are to
// read.
type Readable struct {
	Title, Intro                   string
	Figures                        map[string]string // what the figure is, by the language of the texts
	Other                          string            // where there is none for it
	Procedure, Ease, Longest, Step string
	WordsInSteps                   string
	EaseGrade                      string // the figure, a school year
	TooShort, NoFormula            string
	More                           string // how many are listed, of how many
}

// Figure says what the figure is of texts in a language, by its code.
func (w *Readable) Figure(code string) string {
	if figure, known := w.Figures[code]; known {
		return figure
	}
	return w.Other
}
