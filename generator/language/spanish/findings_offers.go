package spanish

// findingsOffers is why a step is offered, and what a mend would do.
var findingsOffers = map[string]string{
	"%s from the start":                                "%s desde el principio",
	"it is %s":                                         "está %s",
	"it is %s, and takes a lock":                       "está %s, y admite candado",
	"it is %s, and some of it stays behind":            "está %s, y algo queda acumulado",
	"it is %s, and not proved dead":                    "está %s, y sin comprobar",
	"it is %s, and its end is open":                    "está %s, y su extremo queda abierto",
	"it is %s: what ran out looks like a leak":         "está %s: lo derramado parece una fuga",
	"it is on, and nothing comes off before it is cut": "tiene energía, y no se quita nada antes de cortarla",
	"it is on, and under nothing":                      "está en su sitio, y no tiene nada encima",
	"it is on, and what it was under is off: %s":       "está en su sitio, y lo que tenía encima ya está fuera: %s",
	"it is tight":                                      "está con su apriete",
	"it is full":                                       "está a nivel",
	"it is as set":                                     "está en su ajuste",
	"the circuit was open":                             "el circuito estuvo abierto",
	"the %s is put on only with it round it":           "«%s» recibe energía solo con esto alrededor",
	"it is taken before anything is cut off":           "se hace antes de cortar nada",
	"it is taken before anything comes back on":        "se hace antes de devolver ninguna energía",
	"things that %s opened are still open: %d":         "sigue abierto algo que se abrió en «%s»: %d",
	"%d parts look alike, and are not marked":          "%d piezas se parecen, y no llevan marca",
	"things stand as it expects them":                  "todo está como lo espera",
	"it leaves things ready for what follows":          "deja todo listo para lo que sigue",
	"it leaves %s %s":                                  "deja «%s» %s",
	"still in the way: %s":                             "todavía en medio: %s",

	"write %s":                               "escribir %s",
	"write its words: %s":                    "escribir su texto: %s",
	"it stays so on purpose, leaves: { %s }": "se queda así a propósito, leaves: { %s }",
	"list it: %s":                            "ponerlo en la lista: %s",
	"take it out of %s":                      "quitarlo de %s",
}
