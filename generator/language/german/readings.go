package german

import "baybinder/generator/language/words"

var readings = words.Readings{
	Changes: changes, Marks: marks,
	Plans: "Lesepläne", InPlans: "Lesepläne, in denen sie steht",
	InPlansNote: "Wer einem davon folgt, liest sie. Wird eine Ausgabe zum erneuten Lesen herausgegeben, ist das Lesen veraltet.",
	PlanIntro:   "Lesen Sie in dieser Reihenfolge: nichts steht vor dem, worauf es aufbaut. Haken Sie ab, was getan ist, mit Datum und Unterschrift.",
	LeadsTo:     "Führt zu: %s", WithinTime: "Frist ab dem Beginn: %s", Assessor: "Ausgeführt unter den Augen von jemandem, der ist: %s", AnyAssessor: "wozu der Plan führt",
	InAll: "%d Anweisungen, etwa %s Lesen.", TimeRule: "Wörter mit 238 in der Minute (Brysbaert 2019); 12 s für ein Bild und 20 s für eine Tabelle, nach eigener Regel.",
	BuildsOn: "Baut auf %s auf", AddedToPlan: "hier, weil eine Anweisung des Plans sie ausführt",
	Read: "Gelesen", Watched: "Zugesehen", PerformedOf: "Ausgeführt, %d von %d", Performed: "Ausgeführt",
	Date: "Datum", AssessorSign: "Prüfer", Reader: "Leser", Started: "Begonnen", AllRead: "Alles getan",

	Front: "Lesenachweise", FrontNote: "Stand %s. Diese Seiten nennen Personen: sie gehören nicht zur Site des Handbuchs.",
	Matrix: "Übersicht", MatrixOf: "Übersicht: %s", People: "Personen", Procedures: "Anweisungen",
	Reviews: "Überprüfungen, die fällig sind oder es bald werden", ReviewIs: "zu überprüfen bis zum %s", ReviewWas: "war zu überprüfen bis zum %s",
	InspectIs: "die Arbeit danach ist zu prüfen bis zum %s", InspectWas: "die Arbeit danach war zu prüfen bis zum %s",
	RolesRunOut: "Befähigungen, die abliefen oder bald ablaufen", RunsOutOn: "läuft ab nach dem %s", RanOutOn: "lief ab nach dem %s",
	Overdue: "überfällig", Stale: "veraltet: seit dem Lesen geändert", Due: "fällig", Good: "gelesen: gilt noch", ActsLeft: "es fehlt etwas: gelesen, noch zuzusehen oder auszuführen",
	OverdueMark: "Ü", StaleMark: "V", DueMark: "F", GoodMark: "G", ActsMark: "E",
	NobodyIs: "Niemand.", AndMore: "und %d weitere", By: "Bis", ByDay: "bis zum %s",
	MatrixNote: "Ein leeres Feld: kein Plan dieser Person fragt danach, und es gibt keinen Nachweis.", PeopleFrom: "Personen %d bis %d",
	NotAsked: "von keinem Plan gefragt", NobodyInTraining: "Niemand folgt einem Plan, und nichts ist festgehalten.", Person: "Person", State: "Stand", LastRead: "Zuletzt gelesen",
	OpenInManual: "Im Handbuch öffnen", NoPlan: "Sie steht in keinem Plan.",

	RolesHeld: "Befähigungen", NoRoles: "Keine Befähigung ist aufgeschrieben.", HeldSince: "seit dem %s", NoEnd: "läuft nicht ab", NotYetGained: "ab dem %s",
	Next: "Was als Nächstes kommt", NothingNext: "Nichts ist mehr zu tun.", Record: "Was festgehalten ist", NoRecord: "Nichts ist festgehalten.", WitnessedBy: "Unter den Augen von",
	StillTrue: "gilt noch", NoLongerTrue: "seitdem geändert", Taught: "Gelehrt", Done: "Getan", ToWatch: "noch zuzusehen", SoFar: "%d von %d Mal ausgeführt",

	WhoMay: "Wer das heute tun darf", WhoMayNote: "Nach den Befähigungen in den Dateien des Handbuchs, am %s. Es sagt nicht, wer gesund, ausgeruht oder da ist: der Meister entscheidet, und örtliche Regeln gehen vor.",
	HoldAll: "Haben alle Befähigungen, die sie verlangt", HoldSome: "Haben einige davon oder hatten sie", NobodyHolds: "An diesem Tag hat niemand: %s.",
	NobodyElse: "Wer hier nicht genannt ist, hat keine dieser Befähigungen.", Anyone: "Keine Befähigung wird verlangt: jeder, der in der Werkstatt eingewiesen ist.", Between: "%d Personen gleichzeitig haben sie zusammen.",
	HowAllStand: "Wer sie gelesen hat", NobodyAsked: "Kein Plan verlangt von jemandem, sie zu lesen, und kein Lesen ist festgehalten.",
	MakesStale: "Was durch eine Änderung hier veraltet", MakesStaleNote: "Wird die nächste Ausgabe zum erneuten Lesen herausgegeben, veraltet dieses Lesen:", MakesStaleNone: "Kein Lesen gilt jetzt, also veraltet keines.",
	LookAtCallers: "Diese führen sie aus, in jeder Tiefe: sehen Sie sie an, wenn sie sich ändert", WhatChanged: "Was sich für die änderte, deren Lesen veraltet ist", ReadRevision: "Seit Ausgabe %s", ReadUnissued: "Seit einem Text, der nie herausgegeben wurde",
	WordsNotKept: "Die gelesenen Worte wurden nicht behalten: was sich änderte, ist nicht zu sagen.", NothingForThem: "Nichts, wonach ein Leser handelt.", NotHeld: "fehlt",

	Exercise: "Lückenblatt", Answers: "Lösungen dazu", ExerciseTitle: "Übung: %s", AnswersTitle: "Lösungen: %s",
	ExerciseMark: "ÜBUNG. Arbeiten Sie nie nach diesem Blatt.", AnswersMark: "LÖSUNGEN EINER ÜBUNG. Arbeiten Sie nie nach diesem Blatt.",
	ExerciseHow: "In jedem Abschnitt stehen die Schritte in falscher Reihenfolge. Schreiben Sie in jedes Kästchen den Platz, den der Schritt in seinem Abschnitt hat; schreiben Sie Drehmomente und Winkel hinein und das Signalwort jeder Warnung. Bilder, Gründe und Text zwischen den Schritten fehlen.",
	WorkFrom:    "Die Anweisung, nach der gearbeitet wird", Score: "Richtig", SignalWord: "Signalwort",
	ExerciseDone: "Durchgesehen von", NoSteps: "Diese Anweisung hat keine Schritte.",
	NotRead: "nicht so gelesen, wie es steht: %s",
	SignIn:  "Unterschriftenliste einer Schulung", SignInOf: "Unterschriften: %s", SignInNote: "Wer unterschreibt, hat die hier genannte Ausgabe durchgenommen. Danach: readings record --people … --did read.", Trainer: "Schulung durch", Signature: "Unterschrift",
	Again: "Erneut zu lesen", AgainOf: "Erneut zu lesen: %s", ReadOn: "gelesen am %s", NothingAgain: "Nichts ist erneut zu lesen.",
	Told: "Über eine Änderung unterrichtet", Inspected: "Bei der Arbeit geprüft", ScoreIs: "richtig: %s", Open: "Offen", OnlyOpen: "Nur was offen ist", MarkedJob: "Vermerkt",

	Revisions: "Ausgaben", RevisionNo: "Ausg.", Reason: "Warum", Written: "Geschrieben", Checked: "Geprüft", Approved: "Freigegeben", Walked: "Durchgegangen",
	Readers: "Leser", Reread: "lesen sie erneut", Tell: "werden unterrichtet", Spared: "müssen es nicht wissen", RetiredThen: "außer Gebrauch genommen", ToAll: "lesen sie",
	Inspections: "Prüfungen bei der Arbeit", InspectBy: "Zu prüfen bis zum %s.", NoInspection: "Niemand wurde bei der Arbeit danach geprüft.", Worked: "Arbeitete", Inspector: "Prüfte",
	OnUnit: "An", Found: "Befund", Withdrawn: "entzogen am %s",
}
