package german

import "baybinder/generator/language/words"

var closeOut = words.CloseOut{
	Missed: "Leicht vergessen: %s.", After: "die Arbeit sieht fertig aus", Follows: "es folgt auf einen Halt",
	Repeats: "es sind %d", NoTrace: "nachher sieht man nichts davon", Hidden: "das nächste Teil verdeckt es",
	Different: "es braucht anderes Werkzeug", Small: "es ist klein",
	CountOf: "gezählt, von %d",
	Title:   "Geschlossen gezählt", Intro: "Alles, was geöffnet wurde, geschlossen gezählt. Sehen Sie die Maschine an, nicht die Haken oben.",
	Opened: "Geöffnet", Closed: "Geschlossen", What: "Was", HowMany: "Wie viele", Seen: "Gesehen", AtTheStart: "am Anfang",
	MissedSteps: "Andere Schritte, die leicht vergessen werden", MissedAll: "Leicht vergessene Schritte: %d.", MissedMark: "leicht vergessen",
	Cap: "Kappe: %s", Tape: "Isolierung am Ende: %s", CapOut: "abgenommen", TapeOff: "abgenommen",
	On: "eingebaut", Tight: "fest", Full: "voll", Away: "weggenommen", Back: "zurückgestellt", Live: "unter Energie", LocksOff: "Schlösser ab, unter Energie",
	CountSeen: "geschlossen gesehen: {0} von {1}", CountMissed: "leicht vergessen: {0} von {1}", NotTicked: "noch nicht abgehakt", TickRow: "Geschlossen gesehen: {0}",
}
