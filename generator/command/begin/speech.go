package begin

import (
	"strings"

	"baybinder/generator/model"
)

// speech is what a begun procedure shows on its page, in one language. %s is
// the name of a thing, or a link that names it. A register does not say whether
// a name is masculine or feminine: where a language must know that for its
// article, the name stands behind a colon.
type speech struct {
	makeSafe, strip, work, refit, giveBack string // phases

	summary, intro, unitsOnly, onUnits string
	with, without, and                 string
	the                                string

	isolate, lock, here, cuts               string
	release, waitOut, placeBlock, blockHold string
	prove, sayProof, mind                   string

	mark, takeOff, disconnect, cap, unplug string
	heldBy, use, carries, whenRefit        string
	sayWork, reverse                       string

	clear, unlock, leakLook, ends   string
	dry, fill, fillWith, bleed      string
	restore, restorePoint, comeBack string
}

var english = speech{
	makeSafe: "Make safe", strip: "Strip", work: "Work", refit: "Refit", giveBack: "Return",

	summary:   "What comes off to reach the %s, and how it goes back.",
	intro:     "Perform this to work on %s. The order follows from what is under what in the machine's file.",
	unitsOnly: "For units %s only.", onUnits: "On units %s: ",
	with: "with ", without: "without ", and: " and ",
	the: "the %s",

	isolate: "switch off at the %s", lock: "put your lock on it", here: "It is here: %s.", cuts: "It cuts %s.",
	release: "release the %s", waitOut: "wait out the %s", placeBlock: "put the %s in place", blockHold: "It holds %s.",
	prove: "prove the %s dead", sayProof: "Say here what shows it.", mind: "Mind: %s.",

	mark: "mark the %s against swapping", takeOff: "take the %s off", disconnect: "disconnect the %s", cap: "cap it", unplug: "unplug the %s",
	heldBy: "It is held by %s.", use: "use %s.", carries: "The %s carries it.", whenRefit: "When you refit it",
	sayWork: "say here what is done at %s", reverse: "refit everything in reverse",

	clear: "take the %s away", unlock: "take your lock off the %s", leakLook: "look for a leak: %s", ends: "the job ends with the %s",
	dry: "dry what was spilled of the %s", fill: "fill up the %s", fillWith: " with %s", bleed: "bleed the %s",
	restore: "switch the %s on again", restorePoint: "switch on again at the %s", comeBack: "let the %s come back",
}

var spanish = speech{
	makeSafe: "Dejar sin energía", strip: "Desmontar", work: "Trabajo", refit: "Montar", giveBack: "Devolver al servicio",

	summary:   "Lo que se quita para llegar a una pieza, y cómo vuelve a su sitio: %s.",
	intro:     "Haga esto para trabajar en: %s. El orden sale de lo que está debajo de qué en el archivo de la máquina.",
	unitsOnly: "Solo para unidades %s.", onUnits: "En las unidades %s: ",
	with: "con ", without: "sin ", and: " y ",
	the: "%s",

	isolate: "corte en: %s", lock: "ponga su candado", here: "Está aquí: %s.", cuts: "Corta: %s.",
	release: "suelte la energía que queda: %s", waitOut: "espere: %s", placeBlock: "coloque: %s", blockHold: "Sujeta: %s.",
	prove: "pruebe que no queda energía: %s", sayProof: "Diga aquí qué lo muestra.", mind: "Cuidado: %s.",

	mark: "marque para no confundir: %s", takeOff: "desmonte: %s", disconnect: "desconecte: %s", cap: "tape la boca", unplug: "desenchufe: %s",
	heldBy: "Lo sujeta: %s.", use: "use: %s.", carries: "Lo lleva: %s.", whenRefit: "Al montarlo",
	sayWork: "diga aquí qué se hace en: %s", reverse: "monte todo en orden inverso",

	clear: "retire: %s", unlock: "quite su candado: %s", leakLook: "busque fugas: %s", ends: "el trabajo termina con: %s",
	dry: "seque lo derramado: %s", fill: "rellene: %s", fillWith: " con %s", bleed: "purgue: %s",
	restore: "conecte de nuevo: %s", restorePoint: "conecte de nuevo en: %s", comeBack: "deje volver: %s",
}

// speechOf is the speech of a shop: that of its language, or English.
func speechOf(m *model.Manual) *speech {
	if inSpanish(m) {
		return &spanish
	}
	return &english
}

func inSpanish(m *model.Manual) bool {
	return m.Shop.Language == "es" || strings.HasPrefix(m.Shop.Language, "es-")
}
