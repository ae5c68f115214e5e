package bind

import (
	"strings"
	"testing"

	"baybinder/generator/model"
	"baybinder/generator/read/source"
)

// shed is a manual to link in.
var shed = map[string]string{
	"shop.yaml":           "title: Shop\nalso: [es]\n",
	"register/tools.yaml": "broom: { name: broom, kind: other }\nstand: { name: stand, kind: aid }\n",
	"register/holds.yaml": "seat: { name: seat, kind: ask, answers: { good: clean, worn: scored } }\nlook: { name: look, kind: look, what: it }\nnote: { name: jotting, kind: note, what: it }\n",
	"machines/tug.yaml": `name: Tug
options: { cab: Cab, jib: Jib }
points: { plug: { name: plug } }
energies: { mains: { name: mains, kind: electric, points: [plug] } }
parts:
  lid: { name: lid, alike: lids }
  hood: { name: hood, alike: lids }
fasteners: { bolt: { name: bolt } }
orders: { corners: [rear, front] }
`,
	"procedures/sub/mop.md": "---\ntitle: Mop\n---\n## Work\n\n1. Mop. [](step:first-mop)\n2. Mop.\n",
	"pictures/seat.png":     "x",
	"pictures/old/seat.png": "x",
}

// linked are the findings of a step's words, with the link that is first in it.
func linked(t *testing.T, words string, more ...string) (*model.Link, *model.Step, []string) {
	t.Helper()
	files := map[string]string{"procedures/job.md": "---\ntitle: Job\nfor: tug\npeople: 2\nposts: { door: at the door }\n---\n## Strip\n\n1. [](step:begin) Look.\n2. [Off](remove:lid).\n\n## Refit it\n\n1. " + words + "\n"}
	for name, text := range shed {
		files[name] = text
	}
	for i := 0; i+1 < len(more); i += 2 {
		files[more[i]] = more[i+1]
	}
	m, found := Manual(source.FromText(files))
	for _, p := range m.Procedures {
		if p.ID == "job" {
			step := p.Phases[1].Steps[0]
			if len(step.Links) == 0 {
				t.Fatalf("%s: no link", words)
			}
			return step.Links[0], step, said(found)
		}
	}
	t.Fatal("no job")
	return nil, nil, nil
}

// What is told of a link says what is wrong, and what to write: the nearest name
// first, else what there is.
func TestWhatIsToldOfALink(t *testing.T) {
	for words, want := range map[string]string{
		"[x](tool:brom)":                  "there is no tool brom | did you mean broom?",
		"[x](tool:zzz-y)":                 "there is no tool zzz-y | add to register/tools.yaml, or name one that is there: zzz-y: { name: zzz y, kind: other }",
		"[x](hazard:zzz)":                 "there is no hazard zzz | add to register/hazards.yaml, or name one that is there: zzz: { name: zzz, harm: …, nature: …, consequence: …, avoid: [ … ] }",
		"[x](tool:Bad_Id)":                "there is no tool Bad_Id | write it in register/tools.yaml, or name one that is there",
		"[x](machine:tugg)":               "there is no machine tugg | did you mean tug?",
		"[x](machine:zebra)":              "there is no machine zebra | write it in machines/, or name one that is there",
		"[x](see:mop#first-mob)":          "Mop has no step first-mob | did you mean first-mop?",
		"[x](see:mop#other)":              "Mop has no step other | name the step there with [](step:other)",
		"[x](see:mop#first%2Dmop)":        "",
		"[x](see:m%6Fp)":                  "",
		"[x](see:mop%zz)":                 "there is no procedure mop%zz | write it in procedures/, or name one that is there",
		"[x](post:dor)":                   "the procedure has no post dor | did you mean door?",
		"[x](post:zzz)":                   "the procedure has no post zzz | write it in the front matter: posts: { zzz: where the person stands }",
		"[x](post:door)":                  "",
		"[x](if:seat=odd)":                `seat has no answer "odd" | write if:seat=ANSWER with one of: good, worn`,
		"[x](if:look=odd)":                "look is a look: only an ask hold has answers | ",
		"[x](if:seat=worn)":               "",
		"[x](if-not:seat)":                "seat is a ask: only a measure or a look can fail | for an ask hold write if:seat=ANSWER",
		"[x](noted:look)":                 "look is a look: it records no note | name a hold of kind note",
		"[x](noted:note)":                 "",
		"[x](people:0)":                   "people:0 is not a number of people | write people:2",
		"[x](people:100)":                 "people:100 is not a number of people | write people:2",
		"[x](people:two)":                 "people:two is not a number of people | write people:2",
		"[x](people:1)":                   "",
		"[x](people:99)":                  "",
		"[x](time:0min)":                  "a time must be longer than nothing | write time:8min",
		"[x](time:soon)":                  "| write time:90s, time:8min or time:1h30min",
		"[x](time:8min) [y](time:8min)":   "",
		"[x](within:5min)":                "",
		"[x](within:5min#begin)":          "",
		"[x](within:0s#begin)":            "a time must be longer than nothing | write within:8min",
		"[x](within:5min#zzz)":            "Job has no step zzz | name the step there with [](step:zzz)",
		"[x](tol:broom)":                  "there is no link kind tol: | did you mean tool:?",
		"[x](zzzzzzzz:broom)":             "there is no link kind zzzzzzzz: | the kinds are: ",
		"[x](javascript:x)":               "javascript: is not followed from a page | link to a page with https:",
		"[x](remove:mains)":               "remove: needs a part; mains is an energy | what can be written of it: isolate:, lock:, release:, prove:, unlock:, restore:, test-live:",
		"[x](isolate:lid)":                "isolate: needs an energy or point; lid is a part | what can be written of it: remove:",
		"[x](remove:corners)":             "remove: needs a part; corners is an order | name another thing",
		"[x](remove:lod)":                 "the Tug has no part lod | did you mean lid?",
		"[x](mark:lidz)":                  "the Tug has no group of look-alikes lidz | did you mean lids?",
		"[x](isolate:zzz)":                "the Tug has no energy or point zzz | write it in machines/tug.yaml, or name a thing that is there",
		"[x](tighten:bolt#zzz)":           "the Tug has no fastener zzz | write it in machines/tug.yaml, or name a thing that is there",
		"[x](reverse:stripp)":             "the procedure has no phase stripp | did you mean strip?",
		"[x](reverse:zzzz)":               "the procedure has no phase zzzz | its phases are: strip, refit-it",
		"[x](reverse:strip)":              "",
		"[x](reverse:str%69p#lid)":        "",
		"[x](reverse:strip!lid,hood)":     "",
		"[x](reverse:strip#lod)":          "the Tug has no part lod | did you mean lid?",
		"[x](when:jab)":                   "the Tug has no option jab | did you mean ",
		"[x](when:crane)":                 "the Tug has no option crane | its options are: cab, jib",
		"[x](when:!cab)":                  "",
		"[x](pause:always)":               "pause:always says nothing | write pause: or pause:never",
		"[x](optional:x)":                 "optional:x says nothing | write optional:",
		"[x](mop.md)":                     "there is no file mop.md in the manual | did you mean ../procedures/sub/mop.md?",
		"[x](zzz.md)":                     "there is no file zzz.md in the manual | write its path from this file; a link to a procedure is best written see:its-id",
		"[x]()":                           "there is no file (the address is empty) in the manual | write its path",
		"[x](/sub/mop.md)":                "there is no file /sub/mop.md in the manual | did you mean",
		"[x](sub/mop.md#work)":            "",
		"[x](sub/mop.md?x=1)":             "",
		"![x](seat.png)":                  "there is no picture seat.png in the manual | did you mean ../pictures/old/seat.png?",
		"![x](zzz.png)":                   "there is no picture zzz.png in the manual | write its path from this file, as in ../../pictures/seat.svg",
		"![x](https://example.com/x.png)": "a picture from https: is not shown: the pages fetch nothing from elsewhere | put the picture into pictures/",
		"![x](../pictures/seat.png)":      "",
		"[x](step:Bad_Name)":              `the step's name "Bad_Name" `,
		"[x](step:begin)":                 "a second step named begin | give it a name of its own",
		"[x](https://example.com)":        "",
	} {
		link, _, got := linked(t, words)
		switch {
		case want == "" && (len(got) > 0 || link.Bad):
			t.Errorf("%s: %q, bad %v", words, got, link.Bad)
		case want != "" && (len(got) != 1 || !strings.Contains(got[0], want)):
			t.Errorf("%s: %q, want %q", words, got, want)
		case want != "" && !link.Bad && !strings.Contains(words, "step:begin"):
			t.Errorf("%s: the link is taken as right", words)
		}
	}
}

// The first link of a paragraph that says something else than on:refit is no note
// for the refit, and is told.
func TestWhatIsToldOfAnotherOn(t *testing.T) {
	_, _, got := linked(t, "[Look](part:lid).\n\n   [x](on:strip)")
	if len(got) != 1 || !strings.Contains(got[0], "on:strip says nothing | write on:refit") {
		t.Errorf("%q", got)
	}
}

// What a link of no kind, or to nothing, was probably meant for stands with it.
func TestWhatALinkWasMeantFor(t *testing.T) {
	for words, want := range map[string]string{
		"[x](zzzzzzzz:lid)": "lid", "[x](zzzzzzzz:broom)": "broom", "[x](zzzzzzzz:seat)": "seat", "[x](zzzzzzzz:mop)": "mop", "[x](zzzzzzzz:hod)": "hood", "[x](zzzzzzzz:qqqq)": "",
		"[x](tool:brom)": "broom", "[x](tool:qqqqq)": "", "[x](remove:lod)": "lid", "[x](remove:qqqqq)": "", "[x](remov:lid)": "lid",
	} {
		link, _, _ := linked(t, words)
		got := ""
		if near := link.Besides().Near; near != nil {
			got = near.Base().ID
		}
		if got != want || !link.Bad {
			t.Errorf("%s: meant for %q, want %q", words, got, want)
		}
	}
	if link, _, _ := linked(t, "[x](remov:lid)"); !link.Odd || link.Kind.Name != "remove" {
		t.Errorf("a kind that is nearly one: %+v", link)
	}
}

// What good links carry.
func TestWhatALinkCarries(t *testing.T) {
	link, step, _ := linked(t, "[x](people:2) [y](within:5min#begin) [z](when:!cab)")
	if step.People != 2 || link.Amount().Value != 2 || step.Links[1].Step() == nil || step.Links[1].Step().Number != "1.1" || step.Links[1].Amount().Base() != 300 || !step.Links[2].Not || step.Links[2].ID != "cab" {
		t.Errorf("%+v", step.Links)
	}
	link, _, _ = linked(t, "[x](reverse:strip#lid)")
	if link.Phase() == nil || link.Phase().ID != "strip" || link.Part() == nil || link.Part().ID != "lid" {
		t.Errorf("%+v", link)
	}
	link, _, _ = linked(t, "[x](reverse:strip!lid,hood)")
	if link.Part() != nil || len(link.Parts()) != 2 {
		t.Errorf("%+v", link)
	}
	link, _, _ = linked(t, "[x](tighten:bolt#hood)")
	if link.Part() == nil || link.Part().ID != "hood" || link.Bad {
		t.Errorf("%+v", link)
	}
	link, _, _ = linked(t, "[x](sub/mop.md)")
	if to, is := link.To.(*model.Procedure); !is || to.ID != "mop" {
		t.Errorf("%+v", link)
	}
}

// "A phase's id keeps the letters of any script": one that was written while ids
// were of a to z alone still leads to its phase, where it can mean only one.
func TestAPhaseByTheIdThatItHad(t *testing.T) {
	for phases, want := range map[string]string{"## Démontage Ø\n\n1. Look.\n": "", "## Démontage Ø\n\n1. Look.\n\n## Démontage Ж\n\n1. Look.\n": "the procedure has no phase demontage"} {
		_, found := Manual(source.FromText(map[string]string{"shop.yaml": "title: S\n", "procedures/a.md": "---\ntitle: A\n---\n" + phases + "\n## Z\n\n1. [x](reverse:demontage)\n"}))
		got := strings.Join(said(found), "; ")
		if (want == "") != (got == "") || !strings.Contains(got, want) {
			t.Errorf("%s: %q", phases, got)
		}
	}
}

// Lines of expects and leaves: what a thing cannot be, and what nothing is called.
func TestWhatIsToldOfStates(t *testing.T) {
	for line, want := range map[string]string{
		"lid: off": "", "mains: dead": "", "plug: locked": "", "bolt: loose": "", "stand: placed": "",
		"lid: dead":    `lid cannot be "dead" | write one of: on, off`,
		"plug: dead":   `plug cannot be "dead" | write one of: live, isolated, locked`,
		"lod: off":     "lod is not a thing of the Tug, or a tool | did you mean lid?",
		"stnd: placed": "stnd is not a thing of the Tug, or a tool | did you mean stand?",
		"qqqqq: off":   "qqqqq is not a thing of the Tug, or a tool | write for: with the machine, and the id as the machine's file has it",
		"corners: off": "corners is not a thing of the Tug, or a tool | write for:",
		"cornerz: off": "cornerz is not a thing of the Tug, or a tool | write for:",
		"lids: off":    "lids is not a thing of the Tug, or a tool | did you mean lid?",
	} {
		m, found := Manual(source.FromText(merged(shed, "procedures/job.md", "---\ntitle: Job\nfor: tug\nleaves: { "+line+", hood: off }\n---\n## Work\n\n1. Look.\n")))
		got := said(found)
		if want == "" && len(got) > 0 || want != "" && (len(got) != 1 || !strings.Contains(got[0], want)) {
			t.Errorf("%s: %q, want %q", line, got, want)
		}
		states := m.Procedures[0].Leaves
		if states[0].Unknown != (want != "") || states[1].Unknown || states[1].Thing == nil {
			t.Errorf("%s: %+v", line, states)
		}
	}
	_, found := Manual(source.FromText(merged(shed, "procedures/job.md", "---\ntitle: Job\nleaves: { qqqqq: placed }\n---\n## Work\n\n1. Look.\n")))
	if got := said(found); len(got) != 1 || !strings.Contains(got[0], "qqqqq is not a tool | ") {
		t.Errorf("without a machine: %q", got)
	}
}

func merged(base map[string]string, more ...string) map[string]string {
	files := map[string]string{}
	for name, text := range base {
		files[name] = text
	}
	for i := 0; i+1 < len(more); i += 2 {
		files[more[i]] = more[i+1]
	}
	return files
}
