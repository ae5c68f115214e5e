package spanish

import "baybinder/generator/language/shape"

// verbs are said in orders.
var verbs = shape.Verbs{
	Said: []shape.Verb{
		{Kind: "remove", Of: shape.Part, Said: "quite quitar quita saque sacar saca retire retirar retira desmonte desmontar desmonta abra abrir abre"},
		{Kind: "refit", Of: shape.Part, Said: "monte montar monta"},
		{Kind: "disconnect", Of: shape.Part, Said: "desconecte desconectar desconecta desenchufe desenchufar desenchufa"},
		{Kind: "connect", Of: shape.Part, Said: "conecte conectar conecta enchufe enchufar enchufa"},
		{Kind: "cap", Of: shape.Part, Said: "tape tapar tapa"},
		{Kind: "loosen", Of: shape.Fastener, Said: "afloje aflojar afloja suelte soltar suelta desatornille desatornillar desatornilla desenrosque desenroscar desenrosca quite quitar quita saque sacar saca"},
		{Kind: "tighten", Of: shape.Fastener, Said: "apriete apretar aprieta reapriete reapretar reaprieta atornille atornillar atornilla enrosque enroscar enrosca"},
		{Kind: "isolate", Of: shape.Energy, Said: "apague apagar apaga aísle aislar aísla corte cortar corta desconecte desconectar desconecta"},
		{Kind: "lock", Of: shape.Energy, Said: "bloquee bloquear bloquea"},
		{Kind: "release", Of: shape.Energy, Said: "libere liberar libera"},
		{Kind: "prove", Of: shape.Energy, Said: `
			compruebe|la|ausencia|de|tensión|de comprobar|la|ausencia|de|tensión|de comprueba|la|ausencia|de|tensión|de
			verifique|la|ausencia|de|tensión|de verificar|la|ausencia|de|tensión|de verifica|la|ausencia|de|tensión|de
			compruebe|sin|tensión comprobar|sin|tensión comprueba|sin|tensión compruebe|sin|presión comprobar|sin|presión comprueba|sin|presión
			verifique|sin|tensión verificar|sin|tensión verifica|sin|tensión verifique|sin|presión verificar|sin|presión verifica|sin|presión
			pruebe|sin|energía probar|sin|energía prueba|sin|energía compruebe|sin|energía comprobar|sin|energía comprueba|sin|energía`},
		{Kind: "unlock", Of: shape.Energy, Said: "desbloquee desbloquear desbloquea"},
		{Kind: "restore", Of: shape.Energy, Said: "encienda encender enciende conecte conectar conecta restablezca restablecer restablece"},
		{Kind: "drain", Of: shape.Fluid, Said: "drene drenar drena vacíe vaciar vacía"},
		{Kind: "fill", Of: shape.Fluid, Said: "llene llenar llena rellene rellenar rellena"},
		{Kind: "bleed", Of: shape.Fluid, Said: "purgue purgar purga"},

		// What these do depends on the thing: a switch is opened to cut, a valve to
		// bring back.
		{Kind: "restore", Of: shape.Energy, Said: "arranque arrancar arranca enchufe enchufar enchufa"},
		{Kind: shape.Either, Of: shape.Energy, Said: "abra abrir abre cierre cerrar cierra saque sacar saca gire girar gira puentee puentear puentea meta meter mete deje dejar deja"},
		{Kind: shape.EitherSetting, Of: shape.Setting, Said: "abra abrir abre cierre cerrar cierra gire girar gira puentee puentear puentea"},
		{Kind: "place", Of: shape.Tool, Said: "ponga poner pon coloque colocar coloca meta meter mete inserte insertar inserta deje dejar deja"},
		{Kind: "clear", Of: shape.Tool, Said: "saque sacar saca quite quitar quita retire retirar retira"},
	},
	Articles: shape.SetOf("el la los las un una su sus este esta estos estas ambos ambas todos todas cada dos tres cuatro cinco seis siete ocho diez doce"),
	Little:   shape.SetOf("solo sólo también ambos ambas todos todas nuevamente completamente totalmente despacio lentamente"),
	Joiners:  shape.SetOf("y e luego después ahora"),
	Plurals:  []string{"s", "es"},
	After:    shape.SetOf("con y e luego después por de en usando o antes tras mientras cuando hasta como para si otra primero pero desde durante al"),
}
