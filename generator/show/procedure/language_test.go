package procedure

import (
	"strings"
	"testing"
)

// twoTongues is a manual of which one procedure is translated, and not all of
// its registers.
func twoTongues() map[string]string {
	return map[string]string{
		"shop.yaml":            "title: Shop\nnotice: For trained staff.\nalso: [es]\n",
		"shop.es.yaml":         "notice: Solo para personal formado.\n",
		"register/tools.yaml":  "socket: { name: 13 mm socket, kind: socket, fits: [13 mm], kept: bench }\n",
		"register/roles.yaml":  "hand: { name: Hand }\n",
		"machines/rig.yaml":    "name: Rig\noptions: { cab: with a cab, roof: with a roof }\nparts:\n  lid: { name: lid, held-by: { bolt: 4 } }\n  pipe: { name: pipe }\nfasteners: { bolt: { name: bolt, across-flats: 13 mm, start: by hand } }\n",
		"machines/rig.es.yaml": "rig: { name: Equipo, options: { roof: con techo } }\nlid: { name: tapa }\n",
		"register/hazards.yaml": `steam: { name: steam, nature: Steam comes out., harm: minor-injury, consequence: It burns., avoid: [Stand aside.], first-aid: Cool the skin. }
`,
		"register/hazards.es.yaml": `steam: { name: vapor, nature: Sale vapor., consequence: Quema., avoid: [Apártese.], first-aid: Enfríe la piel. }
`,
		"register/holds.yaml":    "colour: { name: colour, kind: ask, answers: { red: red, blue: blue } }\nlevel: { name: level, kind: look, what: the glass, good: half full }\n",
		"register/holds.es.yaml": "colour: { name: color, answers: { blue: azul, red: rojo } }\n",
		"procedures/open.md": `---
title: Open the rig
for: rig
people: 2
posts: { front: at the front, back: at the back }
tools: [socket]
hazards: [steam: { nature: Steam at 90 °C comes out. }]
holds: [colour, level]
---
## Strip

1. [Take the lid off](remove:lid) with the [](tool:socket). Mind [the steam](hazard:steam). [](post:front) [](post:back)

   [When you refit it](on:refit), clean the rim.

   [Then](on:refit) look at it.
2. [With a roof](when:roof), [ask](hold:colour). [Only on a cab](when:cab).
3. [Look](hold:level). Then [close](see:close).

## Refit

1. [Refit in reverse](reverse:strip)
`,
		"procedures/open.es.md": `---
title: Abrir el equipo
posts: { front: delante }
hazards: [steam: { nature: Sale vapor a 90 °C. }]
---
## Desmontar

1. [Quite la tapa](remove:lid) con el [](tool:socket). Cuidado con [el vapor](hazard:steam). [](post:front) [](post:back)

   [Al montarla](on:refit), limpie el borde.

   [Después](on:refit), mírelo.
2. [Con techo](when:roof), [pregunte](hold:colour). [Solo con cabina](when:cab).
3. [Mire](hold:level). Luego [cierre](see:close).

## Montar

1. [Monte al revés](reverse:strip)
`,
		"procedures/close.md":    "---\ntitle: Close the rig\n---\n## Work\n\n1. Look.\n",
		"procedures/sweep.md":    "---\ntitle: Sweep\n---\n## Work\n\n1. Sweep.\n",
		"procedures/sweep.es.md": "---\ntitle: Barrer\nstatus: draft\n---\n## Trabajo\n\n1. Barra.\n",
	}
}

// foreign is a text as it stands before the page is written.
func untold(text string) string { return "\ue000" + text + "\ue001" }

func TestTextsInAnotherLanguage(t *testing.T) {
	s := siteOf(t, twoTongues())
	es := s.In("es")
	if n := len(es.Translated()); n != 1 {
		t.Fatalf("%d procedures are translated, want 1: a draft of a translation is not published", n)
	}
	p := es.Translated()[0]
	v := es.Procedure(p)
	first, second, third := v.Phases[0].Parts[0].Step, v.Phases[0].Parts[1].Step, v.Phases[0].Parts[2].Step
	derived := v.Phases[1].Parts[0].Step.Derived[0]
	var lines []string
	for _, n := range derived.Notes {
		lines = append(lines, string(n))
	}
	for what, c := range map[string]struct{ got, want string }{
		"title":                      {v.Title, "Abrir el equipo"},
		"language":                   {v.Lang, "es"},
		"notice":                     {v.Notice, "Solo para personal formado."},
		"the shop's title":           {v.Shop, untold("Shop")},
		"a phase keeps its id":       {v.Phases[0].ID + " " + string(v.Phases[0].Title), "phase-strip Desmontar"},
		"machine":                    {v.Plate[0], "Equipo"},
		"a tool's empty link":        {string(first.Text[0]), `Quite la tapa con el <b class="tool">` + untold("13 mm socket") + `</b>`},
		"an overridden nature":       {first.Boxes[0].Messages[0].Nature, "Sale vapor a 90 °C."},
		"the register's":             {first.Boxes[0].Messages[0].Consequence, "Quema."},
		"signal word":                {first.Boxes[0].Word, "PRECAUCIÓN"},
		"first aid":                  {v.FirstAid[0].Hazard + ": " + v.FirstAid[0].Text, "vapor: Enfríe la piel."},
		"posts":                      {strings.Join(first.Posts, "; "), "front: delante; back: " + untold("at the back")},
		"options":                    {second.When[0].Text + " " + second.When[1].Text, "Solo con: con techo. Solo con: " + untold("with a cab") + "."},
		"answers by their keys":      {second.Holds[0].Answers[0].Key + " " + second.Holds[0].Answers[0].Value, "red rojo"},
		"a sentence of the shop's":   {third.Holds[0].Lines[0], untold("The glass.")},
		"a part of the refit":        {derived.Text, "Montar: tapa"},
		"fasteners":                  {string(derived.Fastened[0].Turns[0]) + " " + derived.Fastened[0].Name + ": " + derived.Fastened[0].More, "4 × " + untold("bolt") + ": empezar: " + untold("by hand")},
		"notes in their order":       {strings.Join(lines, ""), "<p>Al montarla, limpie el borde.</p><p>Después, mírelo.</p>"},
		"page":                       {v.Here, "procedures/open.es.html"},
		"one job for both":           {v.Bay.Shop + " " + v.Bay.Procedure, "Shop open"},
		"a page that is not there":   {string(third.Text[0]), `Mire. Luego <a class="procedure" href="../procedures/close.html">cierre</a>.`},
		"what its link is elsewhere": {es.Link("../", p).Name + " " + es.Link("../", p).Address, "Abrir el equipo ../procedures/open.es.html"},
		"switch":                     {v.Tongues[0].Name + " " + v.Tongues[0].Address + " " + v.Tongues[1].Name, "English ../procedures/open.html Español"},
	} {
		if !strings.Contains(c.got, c.want) {
			t.Errorf("%s: %q, want %q in it", what, c.got, c.want)
		}
	}
	if v := s.Procedure(p); v.Title != "Open the rig" || len(v.Tongues) != 2 || v.Tongues[0].Current == v.Tongues[1].Current {
		t.Errorf("the original: %q, %v", v.Title, v.Tongues)
	}
}
