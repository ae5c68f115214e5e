package spanish

import "baybinder/generator/language/shape"

var asides = shape.Asides{
	Not:         []string{"no", "no a", "nunca", "nunca a", "jamás", "en vez de", "en vez de los", "en lugar de", "en lugar de los", "ya no"},
	Every:       []string{"cada"},
	Added:       []string{"otros", "otras", "otro", "otra"},
	More:        []string{"más", "adicionales"},
	Away:        []string{"del", "de la", "de los", "de las", "de un", "de una", "desde"},
	At:          "a",
	Steps:       []string{"en pasos de", "pasos de"},
	AtATime:     []string{"por minuto", "al minuto", "por hora", "a la hora", "al día", "por día", "a la vez", "cada vez", "de una vez", "por vuelta", "por semana", "al mes", "al año"},
	Makes:       []string{"es", "son", "da", "dan", "equivale a", "equivalen a", "="},
	About:       shape.SetOf("unos unas casi"),
	Turn:        shape.SetOf("vuelta vueltas muesca muescas"),
	Within:      []string{"dentro de", "dentro de los", "en los primeros", "durante los primeros"},
	New:         []string{"nuevo", "nueva", "nuevos", "nuevas"},
	PartOf:      []string{"los últimos", "las últimas", "el último", "los primeros", "las primeras", "el primer", "los restantes", "los otros", "los siguientes"},
	By:          []string{"en", "en unos"},
	Moves:       shape.SetOf("baja bajan baje bajó cae caen cayó caiga desciende descienden sube suben suba subió pierde pierden perdió gana ganan varía varían cambia cambian difiere"),
	Loses:       []string{"baja", "bajan", "baje", "bajó", "cae", "caen", "cayó", "pierde", "pierden", "perdió", "subió", "gana", "ganan", "ganó", "varía", "varían"},
	Found:       []string{"saltó a", "saltó a los", "saltó en", "abrió a", "abrió a los", "abría a", "cerró a", "disparó a", "disparaba a", "estaba a", "estaba en", "quedó a", "quedó en", "marcaba", "marcó", "tenía", "vino a"},
	Supposing:   shape.SetOf("si cuando hasta mientras salvo"),
	Ranges:      []shape.Range{{Between: "a"}, {Between: "hasta"}, {Before: "entre", Between: "y"}},
	OffBy:       []string{"más o menos", "más/menos", "más menos", "más-menos"},
	RangeBehind: shape.SetOf("de entre desde a en es son unos unas hasta con por para durante tiene tienen marca marcan"),
	AllOf:       shape.SetOf("todos todas ambos ambas cada y"),
	Of:          []string{"de", "para"},
	SetTo:       []string{"a", "en"},
	Things: shape.SetOf("lámpara luz linterna bombilla foco taladro amoladora sierra cargador ventilador aspiradora comprobador medidor multímetro voltímetro dial compresor regulador " +
		"polipasto grúa gato eslinga cincha cable alambre cadena carro cabrestante pórtico grillete cuerda barra palanca prolongación galga regla calibre micrómetro " +
		"cepillo botador broca lima vaso llave destornillador varilla tornillo perno espárrago manguera mordaza epoxi adhesivo pegamento sellador pintura imprimación cinta grasa " +
		"guante pistola horno termómetro reloj temporizador alicates martillo maza extractor imán espejo embudo trapo"),
	Vessels: shape.SetOf("bandeja bidón cubo jarra botella depósito recipiente lata garrafa tanque bote envase jeringa vaso caja bolsa cartucho tubo saco barril cuba cubeta"),
	Scales:  shape.SetOf("escala rango punta"),
	Media:   shape.SetOf("aire nitrógeno"),
	Breaks:  shape.SetOf("el la los las un una y o a en con sin por desde para de como si cuando mientras hasta luego antes después su sus este esta que es son"),
}

var denials = []string{"no", "nunca", "jamás", "sin", "ni", "nada", "nadie", "ningún", "ninguno", "ninguna"}
