package german

// findingsOffers is why a step is offered, and what a mend would do.
var findingsOffers = map[string]string{
	"%s from the start":                                "%s von Anfang an",
	"it is %s":                                         "es ist %s",
	"it is %s, and takes a lock":                       "es ist %s und nimmt ein Schloss",
	"it is %s, and some of it stays behind":            "es ist %s, und etwas davon bleibt gespeichert",
	"it is %s, and not proved dead":                    "es ist %s, und die Energiefreiheit ist nicht festgestellt",
	"it is %s, and its end is open":                    "es ist %s, und das Ende ist offen",
	"it is %s: what ran out looks like a leak":         "es ist %s: was ausgelaufen ist, sieht aus wie ein Leck",
	"it is on, and nothing comes off before it is cut": "es ist unter Energie, und vor dem Trennen kommt nichts ab",
	"it is on, and under nothing":                      "es ist eingebaut, und nichts ist darüber",
	"it is on, and what it was under is off: %s":       "es ist eingebaut, und was darüber war, ist ausgebaut: %s",
	"it is tight":                                      "es ist fest",
	"it is full":                                       "es ist voll",
	"it is as set":                                     "es ist, wie es eingestellt war",
	"the circuit was open":                             "der Kreis war offen",
	"the %s is put on only with it round it":           "„%s“ bekommt nur Energie, wenn dies darum herum ist",
	"it is taken before anything is cut off":           "das wird getan, bevor etwas getrennt wird",
	"it is taken before anything comes back on":        "das wird getan, bevor etwas wiederkommt",
	"things that %s opened are still open: %d":         "noch offen ist, was „%s“ geöffnet hat: %d",
	"%d parts look alike, and are not marked":          "%d Teile sehen gleich aus und sind nicht gekennzeichnet",
	"things stand as it expects them":                  "alles steht so, wie sie es erwartet",
	"it leaves things ready for what follows":          "sie macht alles bereit für das, was folgt",
	"it leaves %s %s":                                  "sie lässt „%s“ so: %s",
	"still in the way: %s":                             "noch im Weg: %s",

	"write %s":                               "%s schreiben",
	"write its words: %s":                    "die Worte schreiben: %s",
	"it stays so on purpose, leaves: { %s }": "es bleibt mit Absicht so, leaves: { %s }",
	"list it: %s":                            "in die Liste setzen: %s",
	"take it out of %s":                      "aus %s herausnehmen",
}
