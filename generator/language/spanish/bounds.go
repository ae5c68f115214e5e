package spanish

import "baybinder/generator/language/shape"

var bounds = shape.Bounds{
	AtMost:  []string{"como máximo", "como mucho", "a lo sumo", "no más de", "no superior a", "no mayor de", "máximo", "máx", "máx.", "un máximo de"},
	AtLeast: []string{"como mínimo", "al menos", "por lo menos", "no menos de", "no inferior a", "no menor de", "mínimo", "mín", "mín.", "un mínimo de"},
	Having:  shape.SetOf("de con"),
	OrLess:  []string{"o menos"},
	OrMore:  []string{"o más"},
	Below:   []string{"por debajo de", "debajo de", "bajo", "menos de", "inferior a", "menor de", "menor que"},
	Above:   []string{"por encima de", "encima de", "más de", "superior a", "mayor de", "mayor que"},
	UpTo:    []string{"hasta"},
	Musts:   []string{"debe", "deben", "tiene que", "tienen que", "ha de", "han de", "hay que"},
	Being:   shape.SetOf("ser estar tener haber dar marcar medir pesar mostrar quedar"),
	Always:  shape.SetOf("siempre todavía entonces"),
	Waits:   []string{"espere", "esperar", "deje", "déjelo", "déjela", "remoje", "purgue"},
	Orders:  []string{"llene", "llenar", "infle", "inflar", "ponga", "suba", "caliente", "enfríe", "cargue", "gire", "mantenga", "vierta", "verter", "añada", "apriete"},
	For:     shape.SetOf("durante"),
	To:      shape.SetOf("a"),
	With:    shape.SetOf("con"),
	Lead:    shape.SetOf("y luego después ahora primero"),
}
