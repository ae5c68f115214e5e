package spanish

import "baybinder/generator/language/shape"

var bounds = shape.Bounds{
	AtMost:  []string{"como máximo", "como mucho", "a lo sumo", "no más de", "no superior a", "no mayor de", "nunca más de", "nunca por encima de", "no superar", "no superar los", "no debe superar", "no debe superar los", "no puede superar", "no puede superar los", "no debe pasar de", "no puede pasar de", "no debe exceder", "no debe exceder de", "no supere", "no supere los", "no exceda", "no exceda de", "no pase de", "sin pasar de", "sin superar", "sin superar los", "máximo", "máx", "máx.", "un máximo de"},
	AtLeast: []string{"como mínimo", "al menos", "por lo menos", "no menos de", "no inferior a", "no menor de", "nunca menos de", "nunca por debajo de", "no baje de", "no debe bajar de", "no puede bajar de", "sin bajar de", "mínimo", "mín", "mín.", "un mínimo de"},
	Having:  shape.SetOf("de con"),
	OrLess:  []string{"o menos"},
	OrMore:  []string{"o más"},
	Below:   []string{"baja de", "no llega a", "por debajo de los", "por debajo de", "debajo de", "bajo", "menos de", "inferior a", "menor de", "menor que", "baje de", "baje de los"},
	Above:   []string{"pasa de", "supera", "por encima de los", "por encima de", "encima de", "más de", "superior a", "mayor de", "mayor que", "suba de", "suba de los", "pase de", "pase de los", "supere", "supere los"},
	UpTo:    []string{"hasta"},
	Musts:   []string{"debe", "deben", "tiene que", "tienen que", "ha de", "han de", "hay que"},
	Being:   shape.SetOf("ser estar tener haber dar marcar medir pesar mostrar quedar mantenerse permanecer quedarse caer bajar subir"),
	Always:  shape.SetOf("siempre todavía entonces"),
	Waits:   []string{"espere", "esperar", "deje enfriar", "deje reposar", "deje secar", "deje actuar", "deje", "déjelo", "déjela", "dejar enfriar", "dejar reposar", "remoje", "purgue", "cebe", "enjuague"},
	Orders:  []string{"llene", "llenar", "infle", "inflar", "ponga", "suba", "caliente", "enfríe", "cargue", "gire", "mantenga", "vierta", "verter", "añada", "añadir", "apriete", "apretar", "poner", "subir", "bajar", "cargar", "girar", "ajuste", "ajustar", "regule", "regular", "reponga"},
	For:     shape.SetOf("durante"),
	To:      shape.SetOf("a"),
	With:    shape.SetOf("con"),
	Lead:    shape.SetOf("y luego después ahora primero"),

	Keeps:   []string{"mantenga", "mantener", "mantén", "manténgalo", "manténgala", "manténgalos", "manténgalas", "conserve", "conservar"},
	At:      shape.SetOf("a en"),
	Told:    shape.SetOf("que quien cuyo cuya puede pueden podría abierto abierta abiertos abiertas cerrado cerrada cerrados cerradas parado parada antes después mientras pero porque cuando lo"),
	Forbids: []string{"no deje que", "nunca deje que", "no permita que", "nunca permita que", "evite que", "vigile que no", "cuide que no"},
	Goes:    shape.SetOf("suba pase supere baje caiga llegue quede esté"),
	Sees:    []string{"asegúrese de que", "asegurarse de que", "compruebe que", "comprobar que", "verifique que", "vea que", "procure que", "cuide que"},
	SoThat:  []string{"de modo que", "de forma que", "de manera que", "para que", "hasta que"},
	Is:      shape.SetOf("es sea está esté hay haya tiene tenga marca marque mide mida pesa pese queda quede quedan queden sube suba baja baje"),
}
