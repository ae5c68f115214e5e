package spanish

import (
	"strings"

	"baybinder/generator/language/shape"
)

var acts = shape.Acts{
	Undo:     "afloje aflojar afloja suelte soltar suelta desatornille desatornillar desatornilla desenrosque desenroscar desenrosca",
	Tighten:  "apriete apretar aprieta reapriete reapretar atornille atornillar atornilla enrosque enroscar enrosca",
	Open:     "abra abrir abre",
	Shut:     "cierre cerrar cierra",
	Remove:   "quite quitar quita saque sacar saca retire retirar retira desmonte desmontar desmonta desconecte desconectar desconecta desenchufe desenchufar desenchufa",
	Fit:      "monte montar monta instale instalar instala conecte conectar conecta enchufe enchufar enchufa",
	Fill:     "llene llenar llena rellene rellenar rellena",
	Drain:    "vacíe vaciar vacía drene drenar drena",
	Lock:     "bloquee bloquear bloquea",
	Unlock:   "desbloquee desbloquear desbloquea",
	Off:      "apague apagar apaga aísle aislar aísla corte cortar corta desconecte desconectar desconecta desenchufe desenchufar desenchufa",
	On:       "encienda encender enciende conecte conectar conecta enchufe enchufar enchufa restablezca restablecer restablece",
	Placed:   "ponga poner pon coloque colocar coloca vuelva cuelgue colgar cuelga",
	Emptied:  "",
	Pulled:   "desconecte desconectar desconecta desenchufe desenchufar desenchufa saque sacar saca tire",
	Renewed:  "renueve renovar renueva sustituya sustituir sustituye reemplace reemplazar reemplaza cambie cambiar cambia",
	Fresh:    "nuevo nueva nuevos nuevas",
	Up:       "suba subir sube levante levantar levanta arme armar arma rearme rearmar rearma active activar activa",
	Down:     "baje bajar baja desactive desactivar desactiva",
	Clitics:  "lo la los las",
	Again:    "vuelva|a volver|a vuelve|a",
	Hung:     "candado candados cerradura cerraduras",
	Joiners:  "y e",
	Articles: "el la los las un una su sus propio lo este esta estos estas ambos ambas todos todas cada",
	Nouns:    "corte cierre saca retira llena monta",
	Switches: "interruptor seccionador disyuntor fusible enchufe clavija automático diferencial magnetotérmico",
	Valves:   "válvula llave grifo", Vents: "purga purgador venteo ventilación drenaje vaciado descarga desahogo", Earthing: "tierra", Blocks: "bloqueo",
	NounFirst: true,
}

var (
	ones     = strings.Fields("uno dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince dieciséis diecisiete dieciocho diecinueve veinte")
	tens     = strings.Fields("veinte treinta cuarenta cincuenta sesenta setenta ochenta noventa")
	twenties = strings.Fields("veintiuno veintidós veintitrés veinticuatro veinticinco veintiséis veintisiete veintiocho veintinueve")
)

// spelled is a ten and one to nine: "treinta y cinco".
func spelled(ten, one int) string {
	if ten == 0 {
		return twenties[one]
	}
	return tens[ten] + " y " + ones[one]
}

// Spanish has no un and una: before a noun they are the article.
var numbers = shape.Counting(shape.Numbers{
	Words:   ones,
	Spelled: shape.SpelledOf(ones, tens, spelled, "un", "una"),
	Hundreds: shape.Spelled{
		"cien": 100, "ciento": 100, "doscientos": 200, "doscientas": 200, "trescientos": 300, "trescientas": 300, "cuatrocientos": 400, "cuatrocientas": 400,
		"quinientos": 500, "quinientas": 500, "seiscientos": 600, "seiscientas": 600, "setecientos": 700, "setecientas": 700,
		"ochocientos": 800, "ochocientas": 800, "novecientos": 900, "novecientas": 900,
	},
	Thousand: "mil",
	Apart:    shape.SetOf("coma varios varias algunos algunas muchos muchas docena"),
	Dozens:   shape.Spelled{"docena de": 12, "docenas de": 12, "media docena de": 6},
	Parts: []shape.Fraction{
		{Said: "medio", Of: 0.5}, {Said: "media", Of: 0.5}, {Said: "medios", Of: 0.5}, {Said: "medias", Of: 0.5},
		{Said: "cuarto de", Of: 0.25}, {Said: "cuartos de", Of: 0.25}, // "cuarto" alone is the fourth, and a room
		{Said: "tercio de un", Of: 1. / 3}, {Said: "tercio de una", Of: 1. / 3}, {Said: "tercio de", Of: 1. / 3}, {Said: "tercios de un", Of: 1. / 3}, {Said: "tercios de una", Of: 1. / 3}, {Said: "tercios de", Of: 1. / 3},
	},
	Plus: []shape.Fraction{{Said: "y medio", Of: 0.5}, {Said: "y media", Of: 0.5}, {Said: "y cuarto", Of: 0.25}, {Said: "y un cuarto", Of: 0.25}, {Said: "y un tercio", Of: 1. / 3}, {Said: "y tres cuartos", Of: 0.75}},
	Many: shape.SetOf("los las ambos ambas estos estas sus"), Plurals: []string{"s"},
	Of: "de", Articles: []string{"los", "las", "sus", "estos", "estas"},
})
