package german

import "baybinder/generator/language/words"

var worked = words.Worked{
	LiftAlone:    "Hebeindex %s: %s, %s, von Hand durch eine Person; empfohlener Grenzwert %s. Wie das gerechnet ist",
	LiftTogether: "Hebeindex %s: %s, %s, von Hand durch %d Personen; empfohlener Grenzwert je %s. Wie das gerechnet ist",
	GasOut:       "Beim Entladen von: %s entweichen etwa %s Gas. Wie das gerechnet ist",
	FluidOut:     "Beim Entladen von: %s fließen etwa %s Flüssigkeit aus dem Speicher. Wie das gerechnet ist",
	Setting:      "%s, %s: mit %s wird %s auf %s eingestellt. Wie das gerechnet ist",
	Label:        "Signalwort und Piktogramme. Wie das gefunden ist", Signal: "Das Signalwort. Wie das gefunden ist",
	Calibration: "%s: gültig bis %s. Wie das gerechnet ist",
	Section:     "Wie die Zahlen gerechnet sind",
	Source:      "Quelle: %s",
	Sum:         "%s: insgesamt %s. Wie das gerechnet ist", SumFormula: "was jede Anweisung der Arbeit verbraucht, zusammengezählt",
	SumSource: "die Mengen, die die Anweisungen nennen",
	Locks:     "%d von: %s. Wie das gerechnet ist", LocksFormula: "gleichzeitig gesperrte Stellen · Schlösser an jeder",
	LocksPut: "%d · %d", LocksSource: "die Reihenfolge der Schritte, und wie viele Schlösser die Werkstatt an eine Stelle hängt",
	AfterAngle: "Sie wird um einen Winkel gedreht: Das Drehmoment sagt nichts über die Last der Schraube.",
	Discharge:  discharge, Bolt: bolt, Adapter: adapter, Gas: gas, Lift: lift, Safety: safety, Chemical: chemical, Sums: sums,
}
