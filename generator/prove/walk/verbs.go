package walk

import "strings"

// verbs are the words for acts, in English and Spanish, by the link kind that
// they could be and by what they are said of. A bar stands where the thing may
// come between: take|off is "take off the lid" and "take the lid off". They
// are matched at the beginning of a clause, where an order stands; "the bolt
// that you loosen" is none.
var verbs = []struct {
	kind string
	of   sort
	said string
}{
	{"remove", aPart, "remove detach dismount open take|off take|out lift|off lift|out pull|off pull|out " +
		"quite quitar quita saque sacar saca retire retirar retira desmonte desmontar desmonta abra abrir abre"},
	{"refit", aPart, "refit reattach put|back monte montar monta"},
	{"disconnect", aPart, "disconnect unplug desconecte desconectar desconecta desenchufe desenchufar desenchufa"},
	{"connect", aPart, "connect reconnect plug|in conecte conectar conecta enchufe enchufar enchufa"},
	{"cap", aPart, "cap tape tapar tapa"},
	{"loosen", aFastener, "undo loosen slacken unscrew remove back|out take|out take|off " +
		"afloje aflojar afloja desatornille desatornillar desatornilla quite quitar quita saque sacar saca"},
	{"tighten", aFastener, "tighten retighten torque apriete apretar aprieta atornille atornillar atornilla"},
	{"isolate", anEnergy, "isolate switch|off turn|off cut|off apague apagar apaga aísle aislar aísla corte cortar corta " +
		"desconecte desconectar desconecta"},
	{"lock", anEnergy, "lock bloquee bloquear bloquea"},
	{"release", anEnergy, "release libere liberar libera"},
	{"prove", anEnergy, "prove"},
	{"unlock", anEnergy, "unlock desbloquee desbloquear desbloquea"},
	{"restore", anEnergy, "restore switch|on turn|on encienda encender enciende conecte conectar conecta " +
		"restablezca restablecer restablece"},
	{"drain", aFluid, "drain let|out drene drenar drena vacíe vaciar vacía"},
	{"fill", aFluid, "fill refill top|up llene llenar llena rellene rellenar rellena"},
	{"bleed", aFluid, "bleed purgue purgar purga"},

	// What these do depends on the thing: a switch is opened to cut, a valve to
	// bring back.
	{"restore", anEnergy, "plug|in start run arranque arrancar arranca enchufe enchufar enchufa"},
	{either, anEnergy, "open close shut pull|out pull switch turn bridge put|in leave|in take|out " +
		"abra abrir abre cierre cerrar cierra saque sacar saca gire girar gira puentee puentear puentea meta meter mete deje dejar deja"},
	{eitherSetting, aSetting, "open close shut pull switch turn bridge put|in leave|in take|out " +
		"abra abrir abre cierre cerrar cierra gire girar gira puentee puentear puentea"},
	{"place", aTool, "put|in leave|in ponga poner pon coloque colocar coloca meta meter mete inserte insertar inserta deje dejar deja"},
	{"clear", aTool, "take|out pull|out pull saque sacar saca quite quitar quita retire retirar retira"},
}

// Kinds of which one or the other is meant.
const (
	either        = "isolate restore"
	eitherSetting = "alter reset"
)

// verb is one word for an act.
type verb struct {
	head, tail string
	kind       string
	of         sort
}

// verbsByHead finds the verbs that begin with a word.
var verbsByHead = func() map[string][]verb {
	out := map[string][]verb{}
	for _, v := range verbs {
		for said := range strings.FieldsSeq(v.said) {
			head, tail, _ := strings.Cut(said, "|")
			out[head] = append(out[head], verb{head, tail, v.kind, v.of})
		}
	}
	return out
}()

// articles may stand between a verb and the name of a thing.
var articles = wordSet("the a an its this that these those both all each every other " +
	"one two three four five six seven eight ten twelve " +
	"el la los las un una su sus este esta estos estas ambos ambas todos todas cada " +
	"dos tres cuatro cinco seis siete ocho diez doce")

// joiners stand before a second order in a sentence.
var joiners = wordSet("and then now y e luego después ahora")

func wordSet(text string) map[string]bool {
	out := map[string]bool{}
	for w := range strings.FieldsSeq(text) {
		out[w] = true
	}
	return out
}
