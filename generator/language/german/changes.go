package german

import "baybinder/generator/language/words"

// changes are the words for what is another in a revision.
var changes = words.Changes{
	Step:         "Schritt %s",
	Phase:        "Abschnitt %d",
	Job:          "die ganze Arbeit",
	Gone:         "%s ist weg: %s",
	New:          "%s ist neu: %s",
	Silent:       "es steht nichts darin",
	Renumbered:   "%s war %s",
	Reordered:    "%s hat dasselbe in anderer Reihenfolge",
	Other:        "%s: %s, war %s",
	Also:         "%s: jetzt auch: %s",
	NoLonger:     "%s: nicht mehr: %s",
	Says:         "es heißt",
	Reason:       "der Grund ist",
	AtRefit:      "beim Einbau heißt es",
	Performs:     "führt jetzt aus: %s",
	Performed:    "geändert ist, was sie ausführt: %s",
	NotPerformed: "nicht mehr ausgeführt: %s",
	Terms: map[string]string{
		"tool": "Werkzeug", "supply": "Material", "role": "Befähigung", "post": "Posten", "hazard": "Gefahr", "hold": "Halt",
		"isolate": "trennen", "lock": "mit Schloss sichern", "release": "ablassen", "prove": "Energiefreiheit feststellen", "unlock": "Schloss abnehmen", "restore": "einschalten",
		"test-live": "für eine Prüfung einschalten", "remove": "ausbauen", "disconnect": "abklemmen", "refit": "einbauen", "connect": "anklemmen", "renew": "erneuern",
		"cap": "verschließen", "loosen": "lösen", "tighten": "anziehen", "mark": "kennzeichnen", "place": "setzen", "clear": "wegnehmen",
		"alter": "verstellen", "reset": "zurückstellen", "drain": "ablassen", "fill": "füllen", "bleed": "entlüften", "dry": "trocknen",
		"part": "Teil", "fastener": "Verbindungselement", "energy": "Energie", "point": "Trennstelle", "fluid": "Flüssigkeit", "setting": "Einstellung",
		"machine": "Maschine", "noted": "notiert", "do": "eine Anweisung ausführen", "see": "siehe", "reverse": "umgekehrt", "each": "je",
		"between": "dazwischen", "when": "wenn", "if-not": "wenn nicht", "if": "wenn", "again": "erneut", "optional": "wahlweise",
		"people": "Personen", "time": "Zeit", "within": "innerhalb von", "pause": "Pause", "adds": "verlängert um", "again-in": "erneut in",
		"alike": "ähnliche", "amount": "Menge", "answer": "Antwort", "at": "an", "avoid": "wie man es vermeidet", "before-isolate": "vor dem Trennen",
		"before-restore": "vor dem Einschalten", "blocked-by": "gehalten mit", "by": "durch", "call": "rufen", "capacity": "Füllmenge", "carries": "führt",
		"consequence": "Folge", "contained-by": "eingeschlossen mit", "first-aid": "Erste Hilfe", "fits": "passt auf", "for": "für", "freed-by": "frei mit",
		"gas-volume": "Gasvolumen", "ghs": "GHS", "good": "gut", "guards": "schützt vor", "happens": "tritt ein", "harm": "Schaden",
		"hazards": "Gefahren", "held-by": "gehalten von", "how": "wie", "kind": "Art", "length": "Länge", "limit": "Grenze",
		"looks-for": "gesucht wird", "mass": "Masse", "name": "Name", "nature": "was es ist", "near": "nahe der Grenze", "needed-by": "gebraucht von",
		"needs": "verlangt", "note": "Hinweis", "of": "von", "old": "das Alte", "option": "Ausstattung", "or": "oder",
		"places": "Stellen", "precharge": "Vorfülldruck", "pressure": "Druck", "prove-dead": "vorher Energiefreiheit feststellen", "proved-on": "geprüft an", "range": "Bereich",
		"rated": "Tragfähigkeit", "serial": "Seriennummer", "stored": "gespeichert", "symbol": "Zeichen", "temperature": "Temperatur", "tries": "Versuche",
		"under": "unter", "unit": "Einheit", "value": "Wert", "voltage": "Spannung", "wait": "Wartezeit", "waste": "Abfall", "wear": "zu tragen",
		"what": "was", "why": "warum", "with": "mit", "where": "wo", "only-with": "nur mit", "travel": "Weg",
		"frequency": "Häufigkeit", "duration": "Dauer", "coupling": "Griff", "lift": "Heben", "horizontal": "waagerecht", "vertical": "senkrecht",
		"asymmetry": "Drehung", "thread": "Gewinde", "class": "Festigkeitsklasse", "across-flats": "Schlüsselweite", "drive": "Antrieb", "torque": "Drehmoment",
		"stage": "Stufe", "condition": "Zustand", "lubricant": "Schmierstoff", "sequence": "Reihenfolge", "start": "Beginn", "mark-after": "danach kennzeichnen",
		"retorque": "Nachziehen", "renew-with": "erneuern mit", "expects": "erwartet", "leaves": "hinterlässt",
	},
}

// marks are the words for what was amiss with those who did a job.
var marks = words.Marks{
	Away:   "%s war am %s nicht da",
	Unread: "%s hatte %s nicht so gelesen, wie es am %s stand",
	Lacks:  "niemand, der es tat, hatte %s am %s",
	Signed: "%s, Unterschrift bei %s, hatte nicht %s am %s",
}
