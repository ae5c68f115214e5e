package german

import "baybinder/generator/language/words"

var several = words.Language{Name: "Deutsch", Languages: "Diese Seite in einer anderen Sprache", AtThe: "%s an: %s",
	OnUnits: "an Geräten %s", With: "mit %s", Without: "ohne %s", Where: "wenn %s", And: " und ", OrElse: ", oder ", OtherCases: "in anderen Fällen",
	Failed: "nicht erfüllt: %s (Schritt %s)", Passed: "erfüllt: %s (Schritt %s)", Was: "%s (Schritt %s) ist: %s", WasNot: "%s (Schritt %s) ist nicht: %s",
	StepDone: "Schritt %s ist getan", StepLeftOut: "Schritt %s ist ausgelassen",
	BoltLoad: "Schraubenkraft", NotJudged: "nicht beurteilt: keine Tabelle hat dieses Gewinde und diese Klasse", ByHand: "handfest", Direct: "DC", Alternating: "AC", About: "etwa", AtMost: "höchstens", AtLeast: "mindestens", To: "bis",
	Day: "Tag", Days: "Tage", Week: "Woche", Weeks: "Wochen", Month: "Monat", Months: "Monate", Year: "Jahr", Years: "Jahre",
	KeptPlug:      "ein Stecker, den behält, wer allein arbeitet",
	KeptAlone:     "%s: Behalten Sie ihn bei sich, oder in Reichweite und in Sicht. Er ist Ihr Schloss nur, solange Sie allein arbeiten",
	KeptByNobody:  "%s: Arbeitet mehr als eine Person, ist er kein Schloss",
	TestedAltered: "%s ist bei dieser Prüfung verstellt",
	FreedBy:       "Geht nur ab und an, wenn diese gelöst sind",
}
