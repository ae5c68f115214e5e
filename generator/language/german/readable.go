package german

import "baybinder/generator/language/words"

var readable = words.Readable{
	Title: "Wie schwer die Schritte zu lesen sind",
	Intro: "Die schwersten zuerst. Es ist eine Zahl, um Texte zu vergleichen, und kein Mangel: für die Schritte einer Werkstatt ist kein Grenzwert veröffentlicht. Kürzere Sätze und kürzere Wörter heben sie.",
	Figures: map[string]string{
		"en": "Lesbarkeit nach Flesch (1948), aus Satz- und Wortlänge: unter 30 sehr schwer, 30 bis 50 schwer, 50 bis 60 ziemlich schwer, 60 bis 70 einfach, 70 bis 90 leicht, ab 90 sehr leicht. Stufe: Schuljahr in den Vereinigten Staaten (Flesch-Kincaid).",
		"es": "Verständlichkeit nach Szigriszt-Pazos (1993), aus Satz- und Wortlänge, in den Stufen der INFLESZ-Skala (2008): unter 40 sehr schwer, 40 bis 55 ziemlich schwer, 55 bis 65 einfach, 65 bis 80 leicht, über 80 sehr leicht.",
	},
	Other:     "Für diese Sprache gibt es hier keine Formel: der längste Satz steht zuerst.",
	Procedure: "Anweisung", Ease: "Lesbarkeit", Longest: "Längster Satz", Step: "Schritt", WordsInSteps: "Wörter in Schritten",
	EaseGrade: "%.0f · Stufe %.0f", TooShort: "unter 100 Wörtern: zu kurz zum Messen", NoFormula: "keine Formel",
	More: "Gezeigt werden die %d schwersten von %d Anweisungen.",
}
