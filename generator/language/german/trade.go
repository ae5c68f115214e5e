package german

import "baybinder/generator/language/words"

var discharge = words.Discharge{
	R: "Widerstand, über den entladen wird", C: "Kapazität", V: "Spannung vor dem Abschalten", AtItsPeak: ", am Scheitel", Safe: "die sichere Spannung der Werkstatt, Gleichspannung",
	AtLeast: "%s, also mindestens %s",
	Whole:   "Der Entladewiderstand ist heil. Ist er es nicht, reicht keine Wartezeit: messen, bevor Hände hineingehen.",
	Marked:  "Widerstand und Kapazität sind wie aufgedruckt. Mit einem Kondensator 20 %% und einem Widerstand 5 %% darüber dauert es %s.",
	Alone:   "Nichts speist den Kreis mehr. Zu Beginn hält er %s J: E = ½·C·V².",
	Maker:   "Die Wartezeit des Herstellers geht vor.",
	Source:  "exponentielle Entladung, V = V0·e^(−t/RC)",
}

var bolt = words.Bolt{
	Share: "%s, %.0f %% der Prüfkraft von %s",
	T:     "Drehmoment", K: "Mutternfaktor, %s", D: "Durchmesser des Gewindes", Fp: "Prüfkraft von %s, Klasse %s",
	Conditions: map[string]string{"dry": "trocken", "zinc": "verzinkt", "lubricated": "geschmiert"},
	Span:       "Der Mutternfaktor einer wirklichen Verbindung liegt zwischen %.2f und %.2f, die Zugkraft also zwischen %s und %s.",
	Thread:     "Das Drehmoment ist allein das des Gewindes: Eine Sicherungsmutter, ein strenges Gewinde oder eine trockene Dichtung braucht ihr eigenes.",
	Source:     "T = K·d·F, Kurzform des Handwerks; Prüfkraft: %s", Tables: "ISO 898-1, Tabellen 4 und 5", Stress: "As·Sp nach ISO 898-1",
}

var adapter = words.Adapter{
	T: "Drehmoment an der Schraube", L: "%s, von der Hand bis zum Vierkant", A: "was dazukommt: %s",
	InLine: "Der Einsatz steht in einer Linie mit dem Schlüssel. Im rechten Winkel, bei 90°, ist nichts zu berichtigen: das Drehmoment selbst einstellen.",
	Grip:   "Die Hand ist in der Mitte des Griffs; nichts verlängert ihn.",
	Source: "US Army TM 9-254, Bild 45",
}

var gas = words.Gas{
	Gas: "%s Gas, beim Druck der Luft", Fluid: "%s Flüssigkeit",
	Vessel: "Rauminhalt des Behälters", Gauge: "Druck, den das Manometer zeigt", Air: "Druck der Luft ringsum",
	FluidOut: "Rauminhalt des Gases, wenn die Flüssigkeit draußen ist", Precharge: "Vorfülldruck des Gases, nach seinem Manometer", Before: "Druck vor dem Ablassen, nach seinem Manometer",
	Warm:        "Das Gas ist wieder so warm wie vor dem Ablassen. Während es ausströmt, ist es kälter und weniger.",
	Breathed:    "In einer geschlossenen Bucht nimmt ein anderes Gas als Luft den Platz der Atemluft ein.",
	AloneIs:     "Das ist der Speicher allein: Was der Kreis selbst ablässt, kommt hinzu.",
	Keeps:       "Das Gas behält seinen Vorfülldruck, wenn die Flüssigkeit draußen ist. Das ist eine andere Energie, die für sich abgelassen wird.",
	Right:       "Der Vorfülldruck stimmt. Ist Gas entwichen, hat mehr Flüssigkeit seinen Platz.",
	GivesOff:    "Auf einmal abgelassen, gibt das Gas etwa %s ab: E = p·V/(k − 1)·(1 − (p2/p)^((k − 1)/k)), k = 1.4, von seinem absoluten Druck p auf p2.",
	SourceGas:   "Gesetz von Boyle; Normaldruck 101.325 kPa; Energie in der Form von ASME PCC-2, 501-II, k = 1.4",
	SourceFluid: "Gesetz von Boyle, p·V = konstant; Normaldruck 101.325 kPa; Energie in der Form von ASME PCC-2, 501-II, k = 1.4",
}

var lift = words.Lift{
	Index: "%.1f, bei einem Grenzwert von %.1f %s", None: "keiner: Das wird nicht von Hand gehoben",
	L: "Last", LOfSeveral: "Last: von %s für %d Personen hat jede", LC: "was im besten Fall gehoben werden darf",
	HM: "Hände vor den Knöcheln, H = %s", VM: "Hände über dem Boden, V = %s", DM: "Weg, D = %s", AM: "Drehung des Körpers, A = %s°",
	FM: "wie oft, F = %s, für %s in einer Schicht", CM: "Griff der Hände, %s", Minute: "%s Hübe/min",
	Hours:   map[string]string{"up to 1 h": "bis zu 1 h", "1 to 2 h": "1 bis 2 h", "2 to 8 h": "2 bis 8 h"},
	Holds:   map[string]string{"good": "gut", "fair": "mäßig", "poor": "schlecht"},
	Hands:   "Zwei Hände, im Stehen, Platz zum Bewegen, trockener Boden und eine Last, die stillhält.",
	Above:   "Ein Index über 1 belastet manche, über 3 fast alle.",
	Several: "Die Gleichung gilt für eine Person; NIOSH hat keine für mehrere. Hier ist angenommen, dass alle gleich viel tragen: Wer am schweren Ende steht, hat mehr.",
	Worse:   "Von den zwei Enden des Hebens ist dies das schlechtere: %s.", AtMachine: "wo das Teil an der Maschine sitzt", WhereItGoes: "wo es abgesetzt und wieder aufgenommen wird",
	Source: "NIOSH 94-110, Rev. 9/2021",
}

var safety = words.Safety{
	Formula: "Signalwort = der Schaden, und wie sicher er folgt, wenn die Gefahr nicht vermieden wird", Put: "%s, der folgen %s",
	Harms:   map[string]string{"death": "Tod", "serious-injury": "schwere Verletzung", "minor-injury": "leichte Verletzung", "damage": "Sachschaden"},
	Happens: map[string]string{"will": "wird", "could": "kann"},
	Words:   "Tod oder schwere Verletzung, die folgen wird, ist GEFAHR, die folgen kann, WARNUNG; eine leichte Verletzung ist VORSICHT; Sachschaden allein ist HINWEIS.",
	Most:    "Ein Kasten für mehrere Gefahren trägt das Wort der größten.",
	Source:  "ANSI Z535.4-2007, 4.14, wie angeführt",
}

var chemical = words.Chemical{
	Danger: "Gefahr", Warning: "Achtung", Statements: statements, Precautions: precautions,
	Formula: "Signalwort = das stärkste der Hinweise", None: "keines",
	Source: "UN GHS 1.4.10.5.3, CLP Artikel 20 und 26 (aus dem Gedächtnis); Hinweise, wie die CLP-Verordnung sie druckt",
	NoSign: "kein Piktogramm", GivesWay: "%s weicht einem schwereren Piktogramm",
	Signs: map[string]string{
		"GHS01": "explodierende Bombe", "GHS02": "Flamme", "GHS03": "Flamme über einem Kreis", "GHS04": "Gasflasche", "GHS05": "Ätzwirkung",
		"GHS06": "Totenkopf mit gekreuzten Knochen", "GHS07": "Ausrufezeichen", "GHS08": "Gesundheitsgefahr", "GHS09": "Umwelt",
	},
	Twofold:  "%s ist Kategorie %s (%s) oder %s (%s). Welche es hier ist, ist nicht gesagt: Gezeigt wird die schwerere.",
	WithSign: "%s, %s", NoPictogram: "%s, kein Piktogramm",
	Covered: "Das Etikett darf %s weglassen: Ein schwererer Hinweis sagt es.", Optional: "Das Etikett darf %s neben der Flamme oder dem Totenkopf weglassen.",
	OfTheChemical: "Dieses Wort gehört zum Etikett des Stoffes. Es ist kein GEFAHR, WARNUNG oder VORSICHT eines Schritts.",
}
