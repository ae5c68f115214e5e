package procedure

import (
	"regexp"
	"strings"
	"testing"

	"baybinder/generator/show/page"
)

// drawn are the signs of gear and boxes, in the order in which they are read.
func (p *Procedure) drawn() (out []page.HTML) {
	boxes := func(list []page.Box) {
		for _, b := range list {
			out = append(out, b.Alert)
			for _, m := range b.Messages {
				out = append(out, m.Sign)
			}
			for _, g := range b.Wear {
				out = append(out, g.Sign)
			}
		}
	}
	var step func(*Step)
	step = func(st *Step) {
		boxes(st.Boxes)
		for i := range st.Derived {
			boxes(st.Derived[i].Boxes)
		}
		for i := range st.Subs {
			step(&st.Subs[i])
		}
	}
	for _, g := range p.Before.Wear {
		out = append(out, g.Sign)
	}
	for i := range p.Phases {
		boxes(p.Phases[i].Boxes)
		for _, part := range p.Phases[i].Parts {
			if part.Step != nil {
				step(part.Step)
			}
		}
	}
	return out
}

// Each sign is drawn once on a page, where it is met first, under an id of its
// own; where it is met again the page points there.
func TestSignsAreDrawnOnce(t *testing.T) {
	base := with(yard, "register/tools.yaml", "gloves: { name: gloves, kind: ppe }\nvisor: { name: face shield, kind: ppe }\n", "register/hazards.yaml",
		"heat: { name: heat, nature: It is hot., harm: minor-injury, consequence: It burns., avoid: [Wait.], symbol: W017, wear: [gloves] }\n"+
			"edge: { name: edge, nature: It is sharp., harm: minor-injury, consequence: It cuts., avoid: [Look.], symbol: W024 }\n"+
			"jet: { name: jet, nature: It is thin., harm: death, consequence: It kills., avoid: [Wait.], symbol: W039, wear: [visor] }\n")
	v := jobAt(t, base, "for: tug\nhazards: [heat, edge, jet]\n", "## Strip\n\n[](hazard:heat)\n\nMind this.\n\n1. [Off](remove:seat). [](hazard:edge)\n2. These.\n   1. A. [](hazard:heat)\n   2. B. [](hazard:jet)\n\n"+
		"## Refit\n\n1. [In reverse](reverse:strip)\n2. Look. [](hazard:heat)\n")
	g, use := regexp.MustCompile(`<g id="([^"]+)">`), regexp.MustCompile(`<use href="#([^"]+)"/>`)
	ids, drawn, points := map[string]bool{}, 0, 0
	for _, sign := range v.drawn() {
		text := string(sign)
		switch {
		case g.MatchString(text):
			id := g.FindStringSubmatch(text)[1]
			if ids[id] || strings.Contains(text, "<use") {
				t.Errorf("%s is drawn twice, or points too", id)
			}
			ids[id] = true
			drawn++
		case use.MatchString(text):
			if !ids[use.FindStringSubmatch(text)[1]] {
				t.Errorf("%s points at what does not stand before it", text)
			}
			points++
		case strings.Contains(text, "<svg"):
			t.Errorf("neither drawn nor pointed: %s", text)
		}
	}
	// Drawn: two pieces of gear, the alert, heat and edge; W039 is written in
	// words. Points: gloves with each heat (lead, 1.2.1, 2.2), the visor with the
	// jet; the alert of all boxes but the first; heat twice, edge at the refit.
	if drawn != 5 || points != 3+1+5+2+1 {
		t.Errorf("%d signs are drawn and %d times one is pointed at", drawn, points)
	}
	if !ids["sign-1"] || !ids["sign-5"] {
		t.Errorf("the ids are %v", ids)
	}
}

// What is no drawing of a sign, or not a whole one, stays as it is.
func TestOnlySignsAreDrawnOnce(t *testing.T) {
	d := signsOnce{}
	for _, text := range []string{"", "words", `<svg viewBox="0 0 64 64"><path/>`, `<svg viewBox="0 0 9 9"><path/></svg>`} {
		sign := page.HTML(text)
		d.once(&sign)
		d.once(&sign)
		if string(sign) != text {
			t.Errorf("%s became %s", text, sign)
		}
	}
}
