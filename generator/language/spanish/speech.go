package spanish

import (
	_ "embed"

	"baybinder/generator/language/shape"
)

//go:embed procedure.md
var procedure string

var speech = shape.Speech{
	MakeSafe: "Dejar sin energía", Strip: "Desmontar", Work: "Trabajo", Refit: "Montar", GiveBack: "Devolver al servicio",

	Summary:   "Lo que se quita para llegar a una pieza, y cómo vuelve a su sitio: %s.",
	Intro:     "Haga esto para trabajar en: %s. El orden sale de lo que está debajo de qué en el archivo de la máquina.",
	UnitsOnly: "Solo para unidades %s.", OnUnits: "En las unidades %s: ",
	With: "con ", Without: "sin ", And: " y ",
	The: "%s",

	Isolate: "corte en: %s", Lock: "ponga su candado", Here: "Está aquí: %s.", Cuts: "Corta: %s.",
	Release: "suelte la energía que queda: %s", WaitOut: "espere: %s", PlaceBlock: "coloque: %s", BlockHold: "Sujeta: %s.",
	Prove: "pruebe que no queda energía: %s", SayProof: "Diga aquí qué lo muestra.", Mind: "Cuidado: %s.",

	Mark: "marque para no confundir: %s", TakeOff: "desmonte: %s", Disconnect: "desconecte: %s", Cap: "tape la boca", Unplug: "desenchufe: %s",
	HeldBy: "Lo sujeta: %s.", Use: "use: %s.", Carries: "Lo lleva: %s.", WhenRefit: "Al montarlo",
	SayWork: "diga aquí qué se hace en: %s", Reverse: "monte todo en orden inverso",

	Clear: "retire: %s", Unlock: "quite su candado: %s", LeakLook: "busque fugas: %s", Ends: "el trabajo termina con: %s",
	Dry: "seque lo derramado: %s", Fill: "rellene: %s", FillWith: " con %s", Bleed: "purgue: %s",
	Restore: "conecte de nuevo: %s", RestorePoint: "conecte de nuevo en: %s", ComeBack: "deje volver: %s",

	PutBack: "monte: %s", Connect: "conecte: %s", PlugIn: "enchufe: %s", Undo: "afloje: %s", Tighten: "apriete: %s",
	LetOut: "vacíe: %s", Alter: "cambie: %s", Reset: "vuelva a poner como estaba: %s", Perform: "haga esto: %s", Stop: "pare aquí: %s",
}
