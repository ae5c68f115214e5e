package chemical

import (
	"strings"

	"baybinder/generator/trade/working"
)

// Explain is the label with its working: the signal word from those of all
// statements, and which pictograms and statements give way to which.
func (l Label) Explain() working.Working {
	all := append(append([]Statement{}, l.Statements...), l.Covered...)
	w := working.Working{
		Formula: "signal word = the strongest of the statements",
		Result:  l.wordOrNone(),
		Source:  "UN GHS 1.4.10.5.3, CLP articles 20 and 26 (from memory); statements as the CLP regulation prints them",
	}
	var put []string
	for _, s := range all {
		put = append(put, strings.TrimSpace(s.Code+" "+s.Word.String()))
		w.Terms = append(w.Terms, working.Term{Sign: s.Code, Words: s.Text, Value: signWords(s, all)})
	}
	w.Put = strings.Join(put, ", ")
	for _, s := range all {
		if other := twofold[s.Code]; other != "" {
			w.Assumes = append(w.Assumes, other)
		}
	}
	for _, s := range l.Covered {
		w.Assumes = append(w.Assumes, "The label may leave "+s.Code+" out: a graver statement says it.")
	}
	if len(l.Optional) > 0 {
		w.Assumes = append(w.Assumes, "The label may leave "+l.Optional[0].String()+" out beside the flame or the skull.")
	}
	w.Assumes = append(w.Assumes, "This word is of the chemical's label. It is no DANGER, WARNING or CAUTION of a step.")
	return w
}

func (l Label) wordOrNone() string {
	if l.Word == NoWord {
		return "none"
	}
	return l.Word.String()
}

// signWords are the pictogram of a statement, or why it is not on the label.
func signWords(s Statement, all []Statement) string {
	switch {
	case s.Sign == NoSign:
		return "no pictogram"
	case outranked(s, all):
		return s.Sign.String() + " gives way to a graver pictogram"
	}
	return s.Sign.String() + ", " + s.Sign.Shows()
}
