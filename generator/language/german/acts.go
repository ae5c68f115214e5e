package german

import (
	"strings"

	"baybinder/generator/language/shape"
)

// acts are orders as they are said to somebody, "Lösen Sie die Mutter", and the
// same in the infinitive, which stands at the end: "Mutter lösen".
var acts = shape.Acts{
	Undo:     "lösen löse lockern lockere",
	Tighten:  "ziehen|an ziehen|nach ziehen|fest anziehen nachziehen festziehen",
	Open:     "öffnen öffne aufdrehen drehen|auf drehe|auf",
	Shut:     "schließen schließe zudrehen drehen|zu drehe|zu",
	Remove:   "entfernen entferne ausbauen abnehmen demontieren nehmen|ab bauen|aus ziehen|ab abbauen bauen|ab herausnehmen nehmen|heraus herausziehen ziehen|heraus abheben heben|ab",
	Fit:      "einbauen montieren montiere bauen|ein setzen|ein einsetzen einlegen legen|ein anbauen bauen|an anbringen bringen|an aufsetzen setzen|auf",
	Fill:     "füllen fülle auffüllen nachfüllen",
	Drain:    "entleeren entleere ablassen lassen|ab",
	Lock:     "verschließen verschließe sperren|ab",
	Unlock:   "aufschließen entsperren schließen|auf",
	Off:      "ausschalten abschalten freischalten trennen trenne schalten|aus schalte|aus schalten|ab schalte|ab schalten|frei schalte|frei",
	On:       "einschalten zuschalten schalten|ein schalte|ein schalten|zu schalte|zu",
	Placed:   "legen lege stellen stelle hängen hänge anhängen aufhängen einhängen",
	Emptied:  "leeren leere",
	Pulled:   "ziehen ziehe abziehen",
	Renewed:  "erneuern erneuere ersetzen ersetze tauschen tausche austauschen wechseln wechsle auswechseln",
	Fresh:    "neu neue neuen neues neuer",
	Up:       "hochlegen legen|hoch hochdrücken drücken|hoch hochklappen klappen|hoch",
	Down:     "herunterlegen legen|herunter herunterdrücken drücken|herunter herunterklappen klappen|herunter",
	Hung:     "schloss schlösser vorhängeschloss vorhängeschlösser",
	Joiners:  "und",
	Articles: "sie den die das der dem des einen eine ein seinen seine sein ihren ihre ihr eigene eigenen eigenes beide alle jeden jede diese diesen",
	Nouns:    "sperre",
	Switches: "schalter trennschalter hauptschalter sicherung stecker trenner automat automaten",
	Valves:   "ventil hahn kugelhahn absperrhahn absperrventil", Vents: "entlüftung entlüftungsventil ablass ablassventil ablasshahn entleerung entleerungshahn abblase abblasehahn abblaseventil", Earthing: "erde erdung erdungsschalter erdungstrenner", Blocks: "doppelabsperrung",
	Sides:        "links rechts vorn hinten oben unten eins zwei drei vier nord süd ost west",
	Glued:        true,
	Late:         true,
	Prepositions: "von an am bei für in im auf hinter unter über neben zu zum zur aus mit",
}

var (
	ones = strings.Fields("eins zwei drei vier fünf sechs sieben acht neun zehn elf zwölf dreizehn vierzehn fünfzehn sechzehn siebzehn achtzehn neunzehn zwanzig")
	tens = strings.Fields("zwanzig dreißig vierzig fünfzig sechzig siebzig achtzig neunzig")
)

// spelled is a ten and one to nine: "einundzwanzig".
func spelled(ten, one int) string {
	if one == 0 {
		return "einund" + tens[ten]
	}
	return ones[one] + "und" + tens[ten]
}

var numbers = shape.Counting(shape.Numbers{
	Words:    ones,
	Spelled:  shape.SpelledOf(ones, tens, spelled, "ein", "eine", "einen", "einem", "einer"),
	Hundreds: shape.Spelled{"hundert": 100}, Thousand: "tausend", And: "und",
	Glued: []string{"tausend", "hundert", "einhalb", "einviertel"}, Before: []string{"dreiviertel", "viertel"},
	Apart:  shape.SetOf("komma paar einige mehrere viele etliche dutzend"),
	Dozens: shape.Spelled{"dutzend": 12, "halbes dutzend": 6, "halbe dutzend": 6, "halben dutzend": 6},
	Parts: []shape.Fraction{
		{Said: "halb", Of: 0.5}, {Said: "halbe", Of: 0.5}, {Said: "halber", Of: 0.5}, {Said: "halben", Of: 0.5}, {Said: "halbes", Of: 0.5}, {Said: "halbem", Of: 0.5},
		{Said: "viertel", Of: 0.25}, {Said: "dreiviertel", Of: 0.75}, {Said: "anderthalb", Of: 1.5}, {Said: "drittel", Of: 1. / 3},
	},
	Plus: []shape.Fraction{
		{Said: "einhalb", Of: 0.5}, {Said: "einviertel", Of: 0.25}, {Said: "und eine halbe", Of: 0.5}, {Said: "und einen halben", Of: 0.5}, {Said: "und ein halber", Of: 0.5},
		{Said: "und eine viertel", Of: 0.25}, {Said: "und einen viertel", Of: 0.25}, {Said: "und ein viertel", Of: 0.25}, {Said: "und ein drittel", Of: 1. / 3},
	},
	Many: shape.SetOf("beide beiden alle"), Plurals: []string{"en", "ern", "eln", "s"},
	Of: "von", Articles: []string{"den", "die", "alle", "ihren", "diesen"},
})

var verbs = shape.Verbs{
	Said: []shape.Verb{
		{Kind: "remove", Of: shape.Part, Said: "entfernen entferne ausbauen abnehmen nehmen|ab bauen|aus öffnen öffne"},
		{Kind: "refit", Of: shape.Part, Said: "einbauen montieren montiere bauen|ein setzen|ein"},
		{Kind: "disconnect", Of: shape.Part, Said: "trennen trenne abziehen ziehen|ab"},
		{Kind: "connect", Of: shape.Part, Said: "anschließen schließen|an stecken|ein"},
		{Kind: "cap", Of: shape.Part, Said: "verschließen verschließe"},
		{Kind: "loosen", Of: shape.Fastener, Said: "lösen löse lockern lockere entfernen entferne"},
		{Kind: "tighten", Of: shape.Fastener, Said: "anziehen nachziehen festziehen ziehen|an ziehen|nach ziehen|fest"},
		{Kind: "isolate", Of: shape.Energy, Said: "trennen trenne ausschalten abschalten schalten|aus schalten|ab"},
		{Kind: "lock", Of: shape.Energy, Said: "verschließen verschließe"},
		{Kind: "release", Of: shape.Energy, Said: "entladen entlade entspannen entspanne"},
		{Kind: "prove", Of: shape.Energy, Said: `
			prüfen|auf|spannungsfreiheit prüfe|auf|spannungsfreiheit prüfen|auf|energiefreiheit prüfe|auf|energiefreiheit
			prüfen|auf|druckfreiheit prüfe|auf|druckfreiheit prüfen|auf|drucklosigkeit prüfe|auf|drucklosigkeit
			prüfen|sie|die|spannungsfreiheit stellen|sie|die|spannungsfreiheit stellen|sie|die|energiefreiheit weisen|sie|die|spannungsfreiheit weisen|sie|die|energiefreiheit`},
		{Kind: "unlock", Of: shape.Energy, Said: "aufschließen schließen|auf"},
		{Kind: "restore", Of: shape.Energy, Said: "einschalten schalten|ein starten starte"},
		{Kind: "drain", Of: shape.Fluid, Said: "ablassen lassen|ab entleeren entleere"},
		{Kind: "fill", Of: shape.Fluid, Said: "füllen fülle auffüllen nachfüllen füllen|auf füllen|nach"},
		{Kind: "bleed", Of: shape.Fluid, Said: "entlüften entlüfte"},
		{Kind: shape.Either, Of: shape.Energy, Said: "öffnen öffne schließen schließe drehen drehe aufdrehen zudrehen"},
		{Kind: shape.EitherSetting, Of: shape.Setting, Said: "öffnen öffne schließen schließe drehen drehe aufdrehen zudrehen überbrücken überbrücke"},
		{Kind: "place", Of: shape.Tool, Said: "legen lege setzen setze einlegen"},
		{Kind: "clear", Of: shape.Tool, Said: "wegnehmen nehmen|weg ziehen|heraus"},
	},
	Articles: shape.SetOf("sie den die das der einen eine ein seinen seine ihren ihre beide alle jeden jede diese diesen dieses zwei drei vier fünf sechs sieben acht zehn zwölf"),
	Little:   shape.SetOf("nur auch beide alle wieder erneut nochmals ganz vollständig langsam vorsichtig"),
	Joiners:  shape.SetOf("und dann jetzt danach"),
	Late:     true,
	Parts:    shape.SetOf("an ab aus auf nach fest"),
	Plurals:  []string{"n", "en", "e", "er", "s"},
	After:    shape.SetOf("mit und dann danach an ein auf bis für im oder vor nach bevor während wenn falls wie erst zuerst nochmals aber von anziehen nachziehen festziehen auffüllen nachfüllen füllen einstellen zurückstellen"),
}
