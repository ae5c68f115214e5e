package german

import "baybinder/generator/language/words"

var jobs = words.Jobs{
	Done: "Getane Arbeiten", Procedure: "Anweisung", Saved: "Gespeichert", Unit: "Gerät", Revision: "Ausgabe", StepsDone: "Schritte getan", Gaps: "Lücken", Who: "Getan von",
	TickNoProof: "Ein Haken sagt, wer einen Schritt wann abgehakt hat. Für sich allein beweist er nichts.",
	NamesApart:  "Namen stehen in den Lesenachweisen der Werkstatt, nicht auf diesen Seiten.",
	OfSteps:     "%d von %d",
	MadeWith:    "getan nach Ausgabe %s", NotIssuedThen: "getan vor der ersten Ausgabe",
	NoUnit: "kein Gerät gewählt", OptionsOnly: "mit: %s", UnitNo: "Gerät %s", NoGaps: "keine", GapsAt: "%d, bei Schritt %s",
	FoldedRows:   "Ältere: %d",
	WhatMeasured: "Was gemessen wurde", LimitHead: "Grenzwert damals", Value: "Wert", Where: "Wo", When: "Wann", Verdict: "Damals beurteilt", Limit: "Grenzwert",
	Within: "im Grenzwert", Out: "außerhalb des Grenzwerts", NotJudged: "Grenzwert nicht festgehalten", GivenUp: "außerhalb des Grenzwerts, noch einmal gemessen", Numbers: "Alle Werte als Zahlen",
	PlotOne:  "Ein Wert, %s, am %s. %s",
	PlotDay:  "%d Werte am %s: der kleinste ist %s, der größte %s %s. %s Außerhalb des Grenzwerts: %d.",
	PlotText: "%d Werte vom %s bis %s: der kleinste ist %s, der größte %s %s. %s Außerhalb des Grenzwerts: %d.",
	LimitIs:  "Grenzwert: %s.", NoLimit: "Im Handbuch steht kein Grenzwert.",
	AtMost: "höchstens %s", AtLeast: "mindestens %s", Between: "%s bis %s",
	Said: "Als falsch gemeldet", SaidIntro: "Was Techniker zu einem Schritt sagten, und die Antwort des Schreibers.", SaidHere: "Als falsch gemeldet: %d, siehe am Fuß der Seite",
	NotAnswered: "Noch nicht beantwortet.", Answered: "Antwort, %s:",
	AnswerHow: "Zum Antworten fügen Sie die Zeile unten in %s ein, mit Ihren Worten zwischen den Anführungszeichen.", AnswerHead: "Die erste Zeile der Datei ist:", NothingSaid: "Niemand sagte, dass ein Schritt falsch ist.", Step: "Schritt",
	Record: "Nachweis", RecordOf: "Nachweis: %s", Begun: "begonnen %s", SavedAt: "gespeichert %s", DoneBy: "Getan von: %s", NobodyNamed: "niemand genannt",
	PartlyDone: "Dieser Nachweis wurde gespeichert, bevor jeder Schritt getan war.", Clock: "Uhr", ClockBack: "%s: die Uhr des Rechners wurde um %d min zurückgestellt. Zeiten davor sind nicht verlässlich.",
	Words: "Worte", State: "Stand", Holds: "Halte",
	WaitFrom: "von %s bis %s", WaitOver: "zu Ende", WaitRuns: "beim Speichern nicht zu Ende", NotMet: "nicht erfüllt", Met: "erfüllt",
	Proved: "Prüfer vorher und nachher geprüft", NotProved: "Prüfer nicht geprüft", Good: "gut", NotGood: "nicht gut", Signed: "unterschrieben %s", SignedBy: "unterschrieben von %s, %s",
	GapBefore: "Lücke: Schritt %s wurde vor %s abgehakt.", GapHolds: "Lücke: Schritt %s wurde abgehakt, und ein Halt war noch offen: %s.", GivenUpAt: "aufgegeben %s:",
	NotYet: "noch nicht", InHand: "in Arbeit", StepDone: "getan", DoesNotApply: "trifft nicht zu", NotOnUnit: "nicht an diesem Gerät", NotNeeded: "nicht nötig",
	HandedOver:  "Übergeben bei Schritt %s, %s.",
	HandedTo:    "Von %s an %s.",
	HandedLocks: "Nummern der Schlösser: %s.",
}
