package check

import "strings"

// grammar is the little of a language that tells an instruction from a list of
// nouns. It would rather miss an action than see one in "the clamp and seal".
type grammar struct {
	verbs      map[string]bool // imperatives that are no noun
	either     map[string]bool // imperatives that are nouns as well
	objects    map[string]bool // what follows a verb and no noun
	ways       map[string]bool // what follows a verb that is no noun
	toward     map[string]bool // those of ways that follow no noun
	joiners    map[string]bool
	conditions map[string]bool // first words of a condition
	same       [][]string      // what says that two things are done at once
}

var grammars = map[string]*grammar{
	"en": {
		verbs: wordSet(`open close remove lower raise disconnect connect install tighten loosen undo unscrew unplug unlock
			isolate refit replace put attach detach lay rinse wipe scrape sweep apply pour carry bring take send
			write read tell prove restore renew unclip rotate adjust inspect examine weigh`),
		either: wordSet(`release check measure press switch lift turn pull push place fit wash fill record slide
			swing dry clean bleed call insert hang move clip drain seal clamp cap plug bolt screw pin lock paint oil grease tape cover stop start mark tag tap
			brush file hammer chock block jack hook label spray level test look torque drill cut shim support strap tie vent set
			hold pump charge drive`),
		objects:    wordSet(`the a an it them its your his her each both all this that these those every`),
		ways:       wordSet(`out off on up down in into at for from with over under by back away again through round around`),
		toward:     wordSet(`out off on up down into over back away through round around again`),
		joiners:    wordSet(`and then`),
		conditions: wordSet(`if when once after before with without on for until while unless`),
		same:       [][]string{{"at", "the", "same", "time"}, {"at", "once"}, {"while"}, {"together"}},
	},
	"es": {
		verbs: wordSet(`abra abrir cierre cerrar quite quitar retire retirar baje bajar suba subir levante levantar gire girar
			empuje empujar tire tirar pulse pulsar apriete apretar afloje aflojar desconecte desconectar conecte conectar
			instale instalar inserte insertar desenrosque desenroscar enrosque enroscar desenchufe desenchufar aísle aislar
			monte montar desmonte desmontar sustituya sustituir coloque colocar ponga poner mueva mover lave lavar limpie limpiar
			seque secar rasque rascar aplique aplicar vierta verter llene llenar lleve llevar traiga traer saque sacar escriba
			escribir lea leer anote anotar avise avisar mida medir compruebe comprobar libere liberar purgue purgar vacíe vaciar
			deslice deslizar ajuste ajustar inspeccione inspeccionar pese pesar`),
		either:     wordSet(`marque pare corte bloquee bombee cargue tape cubra pinte llame mire pruebe`),
		objects:    wordSet(`el la los las un una unos unas lo su sus cada ambos ambas este esta estos estas todos todas`),
		ways:       wordSet(`hacia con en por hasta de a desde sobre bajo otra`),
		joiners:    wordSet(`y e luego después`),
		conditions: wordSet(`si cuando una tras antes después con sin en para hasta mientras al`),
		same:       [][]string{{"al", "mismo", "tiempo"}, {"a", "la", "vez"}, {"mientras"}},
	},
}

func wordSet(words string) map[string]bool {
	set := map[string]bool{}
	for _, w := range strings.Fields(words) {
		set[w] = true
	}
	return set
}

// verb says whether the word at i is an imperative. Behind and, a verb needs
// what it acts on: "and lift the lid", not "and lift".
func (g *grammar) verb(s sentence, i int, joined bool) bool {
	if g == nil || !g.verbs[s[i].said] && !g.either[s[i].said] {
		return false
	}
	noun := g.either[s[i].said]
	if i+1 == len(s) {
		return !joined && !noun
	}
	next := s[i+1]
	switch {
	case g.objects[next.said]:
		return true
	case next.link != nil && next.link != s[i].link: // the thing's own name
		return !noun
	case noun:
		return !joined && g.toward[next.said] // "lift out", and not "release of the press"
	case next.said == "" || g.ways[next.said]: // an amount, or whereto
		return true
	}
	return !joined
}

func (g *grammar) joins(said string) bool { return g != nil && g.joiners[said] }

func (g *grammar) conditional(said string) bool { return g != nil && g.conditions[said] }

// atOnce says that what a sentence asks for is done at the same time.
func (g *grammar) atOnce(s sentence) bool {
	for i := range s {
		for _, words := range g.same {
			if says(s[i:], words) {
				return true
			}
		}
	}
	return false
}
