package german

import "baybinder/generator/language/shape"

var asides = shape.Asides{
	Not:     []string{"nicht", "nicht mit", "nicht auf", "nie", "niemals", "statt", "statt der", "anstatt"},
	Every:   []string{"alle", "jede"},
	Added:   []string{"weitere", "nochmals", "noch"},
	More:    []string{"länger", "mehr", "später", "früher"},
	Away:    []string{"von", "vom", "auseinander", "entfernt", "abstand"},
	Steps:   []string{"in schritten von", "schritten von"},
	AtATime: []string{"pro minute", "in der minute", "pro stunde", "in der stunde", "am tag", "pro tag", "auf einmal", "jedes mal", "pro umdrehung", "je umdrehung", "pro woche", "im monat", "im jahr"},
	Makes:   []string{"ist", "sind", "macht", "machen", "gibt", "ergibt", "entspricht", "entsprechen", "="},
	About:   shape.SetOf("etwa ungefähr rund knapp"),
	Turn:    shape.SetOf("umdrehung umdrehungen drehung drehungen viertelumdrehung vierteldrehung raste rasten"),
	Within:  []string{"innerhalb von", "innerhalb", "binnen", "in den ersten"},
	New:     []string{"neu"},
	PartOf:  []string{"die letzten", "die ersten", "den letzten", "den ersten", "der letzten", "der ersten", "die restlichen", "den restlichen", "die übrigen", "den übrigen", "die nächsten", "den nächsten", "das letzte", "das erste", "den ersten rund"},
	By:      []string{"um", "um etwa", "um rund", "um ca."},
	Moves:   shape.SetOf("fällt fallen fiel sinkt sinken sank steigt steigen stieg verliert verlor gewinnt ändert ändern verstellt weicht abweicht abfällt absinkt ansteigt nachlässt senkt hebt erhöht verringert höher niedriger tiefer weniger mehr"),
	Loses:   []string{"verliert", "verliert es", "verliert er", "verliert sie", "verlor", "gewinnt"},
	Found: []string{"kam bei", "kam erst bei", "kam schon bei", "öffnete bei", "öffnete erst bei", "öffnete schon bei", "schloss bei", "sprach bei", "löste bei", "löste erst bei", "löste schon bei", "schaltete bei", "stand bei", "stand auf", "war bei", "war auf", "lag bei",
		"war eingestellt auf", "es hatte", "es zeigte"},
	Supposing:   shape.SetOf("wenn falls sobald bis solange"),
	Ranges:      []shape.Range{{Between: "bis"}, {Before: "zwischen", Between: "und"}, {Before: "von", Between: "auf"}},
	OffBy:       []string{"plus/minus", "plus minus", "plus-minus", "plusminus", "plus oder minus"},
	RangeBehind: shape.SetOf("von zwischen auf bei mit für ist sind hat haben zeigt zeigen"),
	AllOf:       shape.SetOf("alle beide jede jeden und"),
	Of:          []string{"von", "für"},
	SetTo:       []string{"auf", "bei"},
	Things: shape.SetOf("lampe leuchte handlampe taschenlampe birne bohrmaschine schleifer säge ladegerät lüfter prüfer messgerät multimeter kompressor regler " +
		"hebezeug kran heber wagenheber schlinge gurt kabel draht kette winde schäkel seil stange hebel verlängerung fühlerlehre lineal messschieber " +
		"bürste dorn bohrer feile schlüssel nuss schraubendreher schraube bolzen schlauch klemme kleber klebstoff dichtmasse farbe band fett " +
		"handschuh pistole ofen thermometer uhr zange hammer abzieher magnet spiegel trichter lappen"),
	Vessels: shape.SetOf("kanne fass wanne eimer flasche tank behälter kanister becher spritze dose topf beutel kiste kübel kartusche tube sack gefäß"),
	Scales:  shape.SetOf("bereich messbereich skala"),
	Media:   shape.SetOf("luft stickstoff druckluft"),
	Breaks:  shape.SetOf("der die das den dem ein eine einen und oder mit ohne auf in an zu von für bis dann vor nach als wenn sobald sein seine ist sind"),
}
