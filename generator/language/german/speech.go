package german

import (
	_ "embed"

	"baybinder/generator/language/shape"
)

//go:embed procedure.md
var procedure string

// speech says things without an article, whose gender no name tells.
var speech = shape.Speech{
	MakeSafe: "Sichern", Strip: "Zerlegen", Work: "Arbeit", Refit: "Zusammenbauen", GiveBack: "Wieder in Betrieb nehmen",

	Summary:   "Was ausgebaut wird, um an ein Teil zu kommen, und wie es zurückkommt: %s.",
	Intro:     "Tun Sie dies, um hier zu arbeiten: %s. Die Reihenfolge folgt daraus, was in der Maschinendatei unter was liegt.",
	UnitsOnly: "Nur für Geräte %s.", OnUnits: "An Geräten %s: ",
	With: "mit ", Without: "ohne ", And: " und ",
	The: "%s",

	Isolate: "abschalten an: %s", Lock: "das eigene Schloss anbringen", Here: "Es ist hier: %s.", Cuts: "Getrennt wird: %s.",
	Release: "ablassen, was übrig ist: %s", WaitOut: "abwarten: %s", PlaceBlock: "%s einsetzen", BlockHold: "Gehalten wird: %s.",
	Prove: "Energiefreiheit feststellen: %s", SayProof: "Sagen Sie hier, was es zeigt.", Mind: "Beachten Sie: %s.",

	Mark: "gegen Verwechseln markieren: %s", TakeOff: "%s ausbauen", Disconnect: "%s abklemmen", Cap: "das Ende verschließen", Unplug: "%s abziehen",
	HeldBy: "Gehalten von: %s.", Use: "dazu: %s.", Carries: "Darin ist: %s.", WhenRefit: "Beim Einbau",
	SayWork: "sagen Sie hier, was hier getan wird: %s", Reverse: "alles in umgekehrter Reihenfolge einbauen",

	Clear: "%s wegnehmen", Unlock: "das eigene Schloss abnehmen: %s", LeakLook: "nach Lecks sehen: %s", Ends: "die Arbeit endet mit: %s",
	Dry: "aufnehmen, was ausgelaufen ist: %s", Fill: "%s auffüllen", FillWith: " mit %s", Bleed: "%s entlüften",
	Restore: "wieder einschalten: %s", RestorePoint: "wieder einschalten an: %s", ComeBack: "wiederkommen lassen: %s",

	PutBack: "%s einbauen", Connect: "%s anschließen", PlugIn: "%s einstecken", Undo: "%s lösen", Tighten: "%s festziehen",
	LetOut: "%s ablassen", Alter: "%s verstellen", Reset: "%s zurückstellen", Perform: "ausführen: %s", Stop: "hier anhalten: %s",
}
