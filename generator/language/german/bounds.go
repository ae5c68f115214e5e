package german

import "baybinder/generator/language/shape"

var bounds = shape.Bounds{
	AtMost:  []string{"höchstens", "maximal", "max", "max.", "nicht mehr als", "nicht länger als", "nicht höher als", "nicht wärmer als", "nicht heißer als", "nicht dicker als", "nicht breiter als", "nicht größer als", "nicht über", "nie mehr als", "nie länger als", "nie über", "niemals über", "nicht überschreiten"},
	AtLeast: []string{"mindestens", "wenigstens", "minimal", "min", "min.", "nicht weniger als", "nicht kürzer als", "nicht niedriger als", "nicht kälter als", "nicht dünner als", "nicht schmaler als", "nicht kleiner als", "nicht unter", "nie weniger als", "nie kürzer als", "nie unter", "niemals unter", "nicht unterschreiten"},
	Having:  shape.SetOf("von mit"),
	OrLess:  []string{"oder weniger", "oder darunter", "oder kürzer"},
	OrMore:  []string{"oder mehr", "oder darüber", "oder länger"},
	Below:   []string{"unter", "unterhalb von", "weniger als", "kürzer als", "kleiner als", "niedriger als", "kälter als", "kühler als", "dünner als", "schmaler als"},
	Above:   []string{"über", "oberhalb von", "mehr als", "länger als", "größer als", "höher als", "wärmer als", "heißer als", "dicker als", "breiter als"},
	UpTo:    []string{"bis zu"},
	Musts:   []string{"muss", "müssen", "soll", "sollen", "sollte", "sollten"},
	Being:   shape.SetOf("liegen sein haben betragen zeigen anzeigen wiegen bleiben messen gehalten steigen fallen sinken"),
	Always:  shape.SetOf("immer stets noch dann überall"),
	Waits:   []string{"warten sie", "warte", "lassen sie es", "lassen sie", "lass es", "spülen sie", "weichen sie es"},
	Orders:  []string{"füllen sie", "fülle", "pumpen sie", "pumpe", "stellen sie", "stelle", "heizen sie", "kühlen sie", "laden sie", "gießen sie", "gieße", "halten sie", "drehen sie", "ziehen sie"},
	For:     shape.SetOf("für"),
	To:      shape.SetOf("auf"),
	With:    shape.SetOf("mit"),
	Lead:    shape.SetOf("und dann danach zuerst nun"),

	Keeps:      []string{"halten sie", "halte"},
	LateKeeps:  []string{"halten", "einstellen"},
	LateWaits:  []string{"warten", "abwarten", "stehen lassen", "ruhen lassen", "laufen lassen", "nachlaufen lassen", "ziehen lassen", "abkühlen lassen", "auskühlen lassen", "aushärten lassen", "härten lassen", "trocknen lassen", "abtropfen lassen", "absetzen lassen", "gehen lassen", "einwirken lassen", "spülen", "einweichen"},
	LateOrders: []string{"anziehen", "nachziehen", "festziehen", "einstellen", "zurückstellen", "stellen", "setzen", "füllen", "auffüllen", "aufpumpen", "pumpen", "bringen", "heizen", "aufheizen", "erwärmen", "kühlen", "abkühlen", "regeln", "spannen", "vorspannen"},
	At:         shape.SetOf("bei auf"),
	Sees:       []string{"achten sie darauf dass", "sorgen sie dafür dass", "stellen sie sicher dass", "prüfen sie dass", "kontrollieren sie dass"},
	That:       "dass",
	SoThat:     []string{"sodass", "so dass", "damit", "dass"},
	Is:         shape.SetOf("ist sind bleibt bleiben liegt liegen hat haben zeigt zeigen steht stehen wiegt misst beträgt steigt fällt"),
	Told:       shape.SetOf("kann können könnte darf dürfen will wollen wird werden würde man wir damit weil dass ob wer was bevor nachdem während aber denn"),
}
