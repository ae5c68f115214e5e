package spanish

import "baybinder/generator/language/shape"

var grammar = shape.Grammar{
	Verbs: shape.SetOf(`abra abrir cierre cerrar quite quitar retire retirar baje bajar suba subir levante levantar gire girar
			empuje empujar tire tirar pulse pulsar apriete apretar afloje aflojar desconecte desconectar conecte conectar
			instale instalar inserte insertar desenrosque desenroscar enrosque enroscar desenchufe desenchufar aísle aislar
			monte montar desmonte desmontar sustituya sustituir coloque colocar ponga poner mueva mover lave lavar limpie limpiar
			seque secar rasque rascar aplique aplicar vierta verter llene llenar lleve llevar traiga traer saque sacar escriba
			escribir lea leer anote anotar avise avisar mida medir compruebe comprobar libere liberar purgue purgar vacíe vaciar
			deslice deslizar ajuste ajustar inspeccione inspeccionar pese pesar`),
	Either:     shape.SetOf(`marque pare corte bloquee bombee cargue tape cubra pinte llame mire pruebe`),
	Objects:    shape.SetOf(`el la los las un una unos unas lo su sus cada ambos ambas este esta estos estas todos todas`),
	Ways:       shape.SetOf(`hacia con en por hasta de a desde sobre bajo otra`),
	Joiners:    shape.SetOf(`y e luego después`),
	Conditions: shape.SetOf(`si cuando una tras antes después con sin en para hasta mientras al`),
	Same:       [][]string{{"al", "mismo", "tiempo"}, {"a", "la", "vez"}, {"mientras"}},
}

var passive = shape.Passive{
	Orders: [][]string{{"debe", "ser"}, {"deben", "ser"}, {"debería", "ser"}, {"deberían", "ser"}, {"deberá", "ser"}, {"deberán", "ser"},
		{"tiene", "que", "ser"}, {"tienen", "que", "ser"}, {"ha", "de", "ser"}, {"han", "de", "ser"}},
	Between:    shape.SetOf(`ya siempre nunca primero sólo solo`),
	Endings:    []string{"ado", "ada", "ados", "adas", "ido", "ida", "idos", "idas", "ído", "ída", "ídos", "ídas"},
	Irregular:  shape.SetOf(`abierto abierta abiertos abiertas hecho hecha hechos hechas puesto puesta puestos puestas escrito escrita escritos escritas visto vista vistos vistas suelto suelta sueltos sueltas`),
	AdverbEnds: "mente",
}

// vague is our list: it holds what has no exact use in a step.
var vague = []string{
	"según sea necesario", "según se requiera", "según corresponda", "según convenga",
	"si es necesario", "si hace falta", "si procede", "cuando sea necesario", "cuando haga falta",
	"adecuado", "adecuada", "adecuadamente", "apropiado", "apropiada", "suficiente", "suficientemente",
	"debidamente", "con cuidado", "apretado", "apretada", "bien apretado", "bien apretada",
	"algún", "alguna", "algunos", "algunas", "unos cuantos", "unas cuantas", "varios", "varias", "un poco", "ligeramente",
	"periódicamente", "regularmente", "de vez en cuando", "etc", "y demás",
}
