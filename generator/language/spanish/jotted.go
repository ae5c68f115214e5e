package spanish

import "baybinder/generator/language/shape"

// jotted are the words of notes as mechanics jot them, and of old procedures.
var jotted = shape.Jotted{
	Said: []shape.Verb{
		{Kind: "remove", Of: shape.Part, Said: "extraiga extraer extrae desatornille desatornillar desatornilla desenrosque desenroscar desenrosca desarme desarmar desarma levante levantar levanta"},
		{Kind: "refit", Of: shape.Part, Said: "coloque colocar coloca ponga poner pon instale instalar instala remonte remontar enrosque enroscar enrosca cierre cerrar cierra inserte insertar inserta meta meter mete"},
		{Kind: "disconnect", Of: shape.Part, Said: "suelte soltar suelta"},
		{Kind: "connect", Of: shape.Part, Said: "reconecte reconectar reconecta"},
		{Kind: "cap", Of: shape.Part, Said: "tapone taponar tapona"},
		{Kind: "loosen", Of: shape.Fastener, Said: "suelte soltar suelta desenrosque desenroscar desenrosca retire retirar retira extraiga extraer extrae desmonte desmontar desmonta"},
		{Kind: "tighten", Of: shape.Fastener, Said: "reapriete reapretar reaprieta enrosque enroscar enrosca"},
		{Kind: "isolate", Of: shape.Energy, Said: "desenchufe desenchufar desenchufa"},
		{Kind: "release", Of: shape.Energy, Said: "descargue descargar descarga despresurice despresurizar despresuriza"},
		{Kind: "restore", Of: shape.Energy, Said: "reconecte reconectar reconecta"},
		{Kind: "drain", Of: shape.Fluid, Said: "vacie"},
		{Kind: "fill", Of: shape.Fluid, Said: "reponga reponer repon eche echar echa"},
		{Kind: "mark", Of: shape.Group, Said: "marque marcar marca"},
		{Kind: "clear", Of: shape.Tool, Said: "aparte apartar aparta"},
	},
	Lead:    []string{"primero", "luego", "después", "ahora", "por último", "con cuidado", "vuelva a", "vuelve a", "volver a", "también", "debe", "hay que", "se debe"},
	It:      shape.SetOf("lo la los las"),
	Endings: []string{"lo", "la", "los", "las"},
	Fresh:   shape.SetOf("nuevo nueva nuevos nuevas"),
	Old:     shape.SetOf("viejo vieja viejos viejas usado usada usados usadas gastado gastada"),
	Off:     shape.SetOf("fuera"),
	On:      shape.SetOf("dentro puesto puesta"),
	At:      shape.SetOf("en el la"),
	Under:   shape.SetOf("debajo bajo en entre detrás"),
	Padlock: shape.SetOf("candado candados"),
	Not:     shape.SetOf("no nunca jamás tampoco sin"),
	If:      shape.SetOf("si salvo"),
	When:    shape.SetOf("cuando una después antes tras con mientras al para hasta en"),
	Or:      shape.SetOf("o u"),
	Behind: shape.SetOf(`y e o con a al en hasta desde por sin entre para hacia se que está están es son debe deben si cuando antes después mientras luego
		primero otra uniformemente despacio nuevo nueva nuevos nuevas viejo vieja viejos viejas usado usada poco un una dos tres cuatro cinco seis siete ocho
		completamente totalmente cada lo la los las el su sus a mano debajo puede pueden cede pesa queda quedan corta`),
	Wait:     shape.SetOf("espere esperar espera deje dejar deja"),
	Reverse:  []string{"orden inverso", "a la inversa", "en sentido inverso", "orden contrario"},
	Step:     shape.SetOf("paso"),
	Toolbox:  shape.SetOf("herramienta herramientas material materiales útiles repuestos consumibles"),
	Contents: []string{"necesarias", "necesarios", "necesario", "necesaria", "necesita", "y material", "y materiales", "lista"},
	ToChoose: "Un peligro que hay que elegir (aquí se escribió %s)",
}
