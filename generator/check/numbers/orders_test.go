package numbers

import (
	"strings"
	"testing"
)

// The opposites and the names of points are the format's.
func TestWordsDisagree(t *testing.T) {
	point := func(name, step string) files {
		return jobOf("", step).with(replaced("machines/tug.yaml", "plug: { name: service plug }", "plug: { name: "+name+" }"))
	}
	twoPoints := func(one, other, step string) files {
		text := strings.Replace(base["machines/tug.yaml"], "plug: { name: service plug }", "plug: { name: "+one+" }, tap: { name: "+other+" }", 1)
		return jobOf("", step).with(files{"machines/tug.yaml": strings.Replace(text, "pressure: 180 bar, points: [plug]", "pressure: 180 bar, points: [plug, tap]", 1)})
	}
	spanish := func(name, step string) files {
		return point(name, step).with(files{"shop.yaml": "title: Taller\nlanguage: es\n"})
	}
	german := func(name, step string) files {
		return point(name, step).with(files{"shop.yaml": "title: Werkstatt\nlanguage: de\n"})
	}
	connector := func(step string) files {
		return jobOf("", step).with(replaced("machines/tug.yaml", "fasteners:", "  clip-plug: { name: sensor plug, kind: connector }\nfasteners:"))
	}
	seal := func(name, step string) files {
		return jobOf("", step).with(replaced("machines/tug.yaml", "fasteners:", "  seal: { name: "+name+" }\nfasteners:"))
	}
	translated := func(name, tag, step string) files {
		return spanish(name, "[Mire](isolate:plug).").with(files{
			"shop.yaml": "title: Taller\nlanguage: es\nalso: [en, de]\n", "procedures/job." + tag + ".md": "---\ntitle: Job\n---\n## Strip\n\n1. " + step + "\n",
		})
	}
	expect(t, map[string]files{
		"a switch put on":              point("main switch", "⟦words-disagree⟧[Switch the battery on](isolate:plug)."),
		"a switch closed":              point("main switch", "⟦words-disagree⟧[Close the switch](isolate:plug)."),
		"a switch opened":              point("main switch", "[Open the switch](isolate:plug), [close it](restore:plug)."),
		"a valve opened":               point("inlet valve", "⟦words-disagree⟧[Open the valve](isolate:plug)."),
		"a valve closed":               point("inlet valve", "[Shut the valve](isolate:plug), [open it](restore:plug)."),
		"a plug pulled to restore, es": spanish("clavija de servicio", "[Desenchufe la clavija](isolate:plug). ⟦words-disagree⟧[Desenchufe la clavija](restore:plug)."),
		"a plug put in to restore, es": spanish("clavija de servicio", "[Desenchufe la clavija](isolate:plug). [Desenchufe la lámpara y enchufe la clavija](restore:plug)."),
		"a plug valve is a valve":      point("plug valve", "⟦words-disagree⟧[Open it](isolate:plug)."),
		"a vent":                       point("vent valve", "[Open it](isolate:plug), ⟦words-disagree⟧[open it](restore:plug)."),
		"an earthing switch":           point("earthing switch", "[Close it](isolate:plug), ⟦words-disagree⟧[close it](restore:plug)."),
		"the switch of a valve":        point("switch of the inlet valve", "⟦words-disagree⟧[Close it](isolate:plug)."),
		"a number behind it":           point("isolator Q1", "⟦words-disagree⟧[Close it](isolate:plug)."),
		"a name that says neither":     point("lever", "[Close it](isolate:plug), [open it](isolate:plug)."),
		"off and on":                   point("lever", "⟦words-disagree⟧[Switch it on](isolate:plug), ⟦words-disagree⟧[turn the pump off](restore:plug)."),
		"off and on, right":            point("lever", "[Turn the key on the panel off](isolate:plug), [turn it on](restore:plug)."),
		"behind and":                   point("lever", "⟦words-disagree⟧[Look and unlock it](lock:plug)."),
		"behind a comma":               point("lever", "⟦words-disagree⟧[Look, unlock it](lock:plug)."),
		"the lock is no order":         point("lever", "[Take your lock off](unlock:plug), [take tag and lock off](unlock:plug)."),
		"a lock hung to unlock":        point("lever", "⟦words-disagree⟧[Put your lock on](unlock:plug), ⟦words-disagree⟧[hang the padlock](unlock:plug)."),
		"a lock off to lock":           point("lever", "⟦words-disagree⟧[Take your lock off](lock:plug), ⟦words-disagree⟧[remove the padlock](lock:plug)."),
		"a lock hung, taken off":       point("lever", "[Hang your lock](lock:plug), [take your lock out of the box and put it on](lock:plug), [take the key out of the lock](lock:plug), [remove it](unlock:plug)."),
		"Spanish, a lock":              spanish("palanca", "⟦words-disagree⟧[Ponga su candado](unlock:plug), [quite su candado](unlock:plug), ⟦words-disagree⟧[retire el candado](lock:plug), [cuelgue el candado](lock:plug)."),
		"curtly behind a comma":        jobOf("supplies: [oil: 4 L]", "⟦words-disagree⟧[Look, drain oil](fill:lift-oil)."),
		"a noun behind and":            jobOf("tools: [socket-13]", "[Look at seal and fit at both ends](remove:seat)."),
		"a noun and its kind":          jobOf("supplies: [oil: 4 L]", "[Fill plug out](drain:lift-oil)."),
		"both are said":                point("main switch", "[Close the lid and open the switch](isolate:plug)."),
		"a bolt":                       jobOf("tools: [socket-13, wrench-20-100]", "⟦words-disagree⟧[Undo the bolts](tighten:seat-bolt), ⟦words-disagree⟧[close them](loosen:seat-bolt), [open them](loosen:seat-bolt)."),
		"a connector pulled":           connector("⟦words-disagree⟧[Pull the plug](connect:clip-plug), [plug it in](connect:clip-plug), [pull on it once it is plugged in](connect:clip-plug), [pull the plug up to the lid and push it home](connect:clip-plug)."),
		"a connector plugged in":       connector("⟦words-disagree⟧[Plug it in](disconnect:clip-plug), [pull the plug](disconnect:clip-plug), ⟦words-disagree⟧[plug the lead in](remove:clip-plug)."),
		"a part":                       jobOf("tools: [socket-13]", "⟦words-disagree⟧[Put the seat back](remove:seat), ⟦words-disagree⟧[take the seat off](refit:seat), [put it in](refit:seat)."),
		"a fluid":                      jobOf("supplies: [oil: 4 L]", "⟦words-disagree⟧[Fill it](drain:lift-oil), ⟦words-disagree⟧[drain the oil](fill:lift-oil), [fill plug out, drain it](drain:lift-oil)."),
		"Spanish, a switch":            spanish("interruptor general", "⟦words-disagree⟧[Cierre el interruptor](isolate:plug), [abra el interruptor](isolate:plug)."),
		"Spanish, a valve":             spanish("válvula de entrada", "⟦words-disagree⟧[Abra la válvula](isolate:plug), [cierre la válvula](isolate:plug)."),
		"Spanish, a vent":              spanish("válvula de purga", "[Abra la válvula](isolate:plug), ⟦words-disagree⟧[cierre la válvula](isolate:plug)."),
		"Spanish, an earth":            spanish("seccionador de puesta a tierra", "[Cierre el seccionador](isolate:plug)."),
		"Spanish, a bolt":              spanish("palanca", "⟦words-disagree⟧[Afloje la tuerca](tighten:clip)."),
		"German, a switch":             german("Hauptschalter", "⟦words-disagree⟧[Schließen Sie den Schalter](isolate:plug), [öffnen Sie ihn](isolate:plug)."),
		"German, a glued valve":        german("Gashahn", "⟦words-disagree⟧[Öffnen Sie den Gashahn](isolate:plug), [schließen Sie den Gashahn](isolate:plug)."),
		"German, a glued vent":         german("Kondensatablasshahn", "[Öffnen Sie ihn](isolate:plug), ⟦words-disagree⟧[schließen Sie ihn](isolate:plug)."),
		"German, an order behind":      german("Hebel", "⟦words-disagree⟧[Muttern lösen](tighten:clip), [Muttern anziehen](tighten:clip)."),
		"German, an earth":             german("Erdungstrenner", "[Schließen Sie ihn](isolate:plug)."),
		"a valve in a translation":     translated("válvula de entrada", "en", "⟦words-disagree⟧[Open the inlet valve](isolate:plug), [close it](isolate:plug)."),
		"a vent in a translation":      translated("válvula de purga", "de", "[Öffnen Sie das Ventil](isolate:plug), ⟦words-disagree⟧[schließen Sie es](isolate:plug)."),
		"a name of the translation":    translated("RV-2", "en", "⟦words-disagree⟧[Open it](isolate:plug).").with(files{"machines/tug.en.yaml": "plug: { name: inlet valve }\n"}),
		"a language without words":     point("main switch", "[Close the switch](isolate:plug).").with(files{"shop.yaml": "title: Werk\nlanguage: de\n"}),
		"a lock taken off, curtly":     point("lever", "⟦words-disagree⟧[Remove padlock](lock:plug)."),
		"behind a semicolon":           point("lever", "⟦words-disagree⟧[Look; unlock it](lock:plug)."),
		"behind a colon":               point("lever", "⟦words-disagree⟧[Look: unlock it](lock:plug)."),
		"one word":                     point("lever", "⟦words-disagree⟧[Lock](unlock:plug)."),
		"turned on, at once":           point("lever", "⟦words-disagree⟧[Turn on the panel](isolate:plug)."),
		"on the panel":                 point("lever", "[Turn the key on the panel](isolate:plug)."),
		"on in the middle":             point("lever", "⟦words-disagree⟧[Turn the pump on now](isolate:plug)."),
		"an energy by its point":       point("main switch", "⟦words-disagree⟧[Close the switch](isolate:traction), [open it](isolate:traction)."),
		"an energy by both":            twoPoints("main switch", "battery plug", "⟦words-disagree⟧[Close both](isolate:lift), [open both](isolate:lift)."),
		"points that say two ways":     twoPoints("main switch", "inlet valve", "[Close both](isolate:lift), [open both](isolate:lift)."),
		"an energy without a point":    jobOf("", "[Close it](isolate:air), [open it](isolate:air)."),
		"a new one fitted":             seal("seal", "⟦words-disagree⟧[Fit the new seal](renew:seal), ⟦words-disagree⟧[fit a seal](renew:seal), ⟦words-disagree⟧[put in the new seal](renew:seal), ⟦words-disagree⟧[install it](renew:seal)."),
		"a new one, taken off":         seal("seal", "[Take the old seal out and fit the new one](renew:seal), [renew the seal](renew:seal), [replace the seal, fit the new one dry](renew:seal), [unscrew the seal](renew:seal), [change the seal](renew:seal)."),
		"a new one, and a tool for it": seal("seal", "[Fit the puller to the seal](renew:seal), [put the old seal in box 4](renew:seal), [mount a dial on the shaft](renew:seal), [new seal](renew:seal)."),
		"Spanish, a new one":           seal("junta de la tapa", "⟦words-disagree⟧[Monte la junta nueva](renew:seal), ⟦words-disagree⟧[instalar la nueva junta](renew:seal), [cambie la junta](renew:seal), [quite la junta y monte la nueva](renew:seal), [monte el extractor](renew:seal).").with(files{"shop.yaml": "title: Taller\nlanguage: es\n"}),
		"German, a new one":            seal("Deckeldichtung", "⟦words-disagree⟧[Neue Dichtung einlegen](renew:seal), ⟦words-disagree⟧[setzen Sie die neue Dichtung ein](renew:seal), ⟦words-disagree⟧[Deckeldichtung einbauen](renew:seal), [Dichtung ersetzen](renew:seal), [alte Dichtung herausnehmen](renew:seal), [Abzieher aufsetzen](renew:seal), [bauen Sie die Dichtung aus](renew:seal).").with(files{"shop.yaml": "title: Werkstatt\nlanguage: de\n"}),
		"German, a lock":               german("Hebel", "⟦words-disagree⟧[Schloss abnehmen](lock:plug), ⟦words-disagree⟧[das eigene Vorhängeschloss abnehmen](lock:plug), ⟦words-disagree⟧[nehmen Sie Ihr Schloss ab](lock:plug), ⟦words-disagree⟧[entfernen Sie das Bügelschloss](lock:plug), [Schloss anbringen](lock:plug), [hängen Sie Ihr Schloss ein](lock:plug)."),
		"German, a lock to unlock":     german("Hebel", "⟦words-disagree⟧[Schloss anbringen](unlock:plug), ⟦words-disagree⟧[hängen Sie Ihr Schloss ein](unlock:plug), [Schloss abnehmen](unlock:plug), [Schlüssel vom Schloss abnehmen](lock:plug), [Kappe abnehmen](lock:plug)."),
		"a lock, tail first":           point("lever", "⟦words-disagree⟧[Take off your own lock](lock:plug), ⟦words-disagree⟧[put on the lock](unlock:plug), [take off the cap](lock:plug)."),
		"Spanish, one's own lock":      spanish("palanca", "⟦words-disagree⟧[Quite su propio candado](lock:plug), [quite el tapón](lock:plug)."),
		"the name of what it is of":    jobOf("tools: [socket-13]", "[Fit pin](remove:line).").with(replaced("machines/tug.yaml", "name: lift line", "name: fit pin")),
	})
	says(t, point("main switch", "[Switch the battery on](isolate:plug)."),
		`the words say "Switch … on", and the link says isolate: the energy, or the point, is switched off`,
		"change the words or the link; the one that stays is what is done to the main switch")
}
