package german

import "baybinder/generator/language/words"

var timeLine = words.TimeLine{
	Title: "Zeitlinie", Intro: "Die Schritte nacheinander, wie sie geschrieben sind.",
	Picture: "%d Abschnitte in %s, nacheinander; die Liste darunter sagt dasselbe.",
	From:    "von %s bis %s", People: "bis zu %d Personen", Waits: "davon %s Wartezeit",
	NoTime: "%d Schritte haben keine Zeit", NoTimeOne: "1 Schritt hat keine Zeit",
	Work: "Arbeit; so hoch wie Personen gleichzeitig", Wait: "eine Wartezeit", Call: "eine andere Anweisung, die hier ausgeführt wird",
	Least:       "Dieselbe Arbeit kann in keiner Reihenfolge weniger als %s mit %d Personen dauern.",
	LeastOne:    "Dieselbe Arbeit kann in keiner Reihenfolge weniger als %s mit einer Person dauern.",
	Decide:      "Was es bestimmt: Schritte %s. Die Schritte bleiben in der Reihenfolge, in der sie geschrieben sind.",
	Range:       "%s bis %s",
	WorkWorked:  "%s Arbeit. Wie das gerechnet ist",
	WorkFormula: "die Zeit jedes Schritts für jede seiner Personen, Abschnitt für Abschnitt",
	BayWorked:   "%s am Platz. Wie das gerechnet ist",
	BayFormula:  "die Abschnitte nacheinander",
	SumSource:   "die Zeiten der Schritte, Abschnitte, Wartezeiten und ausgeführten Anweisungen auf dieser Seite",
	Second:      "bei Schritt %s dazu: %s",
	NoTimeUpTo:  "bis zu %d Schritte haben keine Zeit", NoTimeUpToOne: "bei einigen dieser Geräte hat 1 Schritt keine Zeit",
	WaitsWorked: "%s Wartezeit. Wie das gerechnet ist", WaitsFormula: "die Wartezeiten der Schritte und der Anweisungen, die sie ausführen",
	PhaseWorked: "%s: von %s bis %s. Wie das gerechnet ist", PhaseFormula: "der Beginn, dann was nacheinander geschieht",
	LeastWorked: "Nicht weniger als %s. Wie das gerechnet ist", LeastFormula: "das Längere von der längsten Kette und der lückenlos verteilten Arbeit",
	LeastChain: "Schritte %s", LeastShared: "%s Arbeit / %d",
	LeastSource: "der kritische Weg durch die Zeiten dieser Seite; keine Reihenfolge derselben Arbeit ist kürzer",
}
