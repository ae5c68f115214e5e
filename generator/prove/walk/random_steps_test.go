package walk_test

import "fmt"

// steps draws the steps of one phase as they should be.
func (r *randomManual) steps(phase int, calls []string) []string {
	var out []string
	add := func(format string, args ...any) { out = append(out, fmt.Sprintf(format, args...)) }
	switch phase {
	case 0:
		for _, e := range r.energies {
			if r.odds(4, "skip energy") {
				continue
			}
			add("[a](isolate:%s) [b](lock:%s)", e, e)
			if e == "load" && r.yes("by stand") {
				add("[p](place:stand)")
			} else {
				r.letOut(e, add)
			}
			add("[d](prove:%s) [](hold:%s)", e, map[string]string{"power": "dead-power", "air": r.one([]string{"zero-air", "zero-air", "half-air", "zero"}, "zero"), "load": "look-load"}[e])
		}
	case 1:
		for _, p := range r.parts {
			if r.odds(4, "skip part") {
				continue
			}
			if r.alike && r.yes("mark") {
				add("[m](mark:hoses)")
			}
			add("[o](%s:%s) %s", []string{"remove", "renew", "disconnect"}[r.n(2, "off")], p, r.hazards())
			if contains(r.lines, p) && r.yes("cap") {
				add("[c](cap:%s)", p)
			}
		}
		if r.yes("drain") {
			add("[d](drain:oil)")
		}
		if r.yes("alter") {
			add("[a](alter:relief)")
		}
		if r.yes("place") {
			add("[a](place:gauge)")
		}
	case 2:
		switch r.n(3, "refit") {
		case 0:
			add("[r](reverse:strip)")
		case 1:
			add("[r](reverse:strip#%s)", r.one(r.parts, "as far as"))
			add("[r](reverse:strip)")
		case 2:
			add("[r](reverse:strip!%s)", r.one(r.parts, "but"))
			add("[r](reverse:strip)")
		default:
			for i := len(r.parts) - 1; i >= 0; i-- {
				add("[r](refit:%s)", r.parts[i])
				add("[b](tighten:bolt) [n](tighten:nut) [c](tighten:clip)")
			}
			add("[c](clear:gauge) [r](reset:relief)")
		}
		add("[f](fill:oil)")
		add("[l](loosen:screw) [b](bleed:oil)")
		add("[dry](dry:oil)")
		add("[](hold:leak)")
	case 3:
		for _, e := range r.energies {
			if r.odds(3, "ask") {
				add("[](hold:sign)")
			}
			add("[u](unlock:%s)", e)
			add("[v](restore:%s)", e)
		}
		if r.odds(3, "look again") {
			add("[](hold:leak)")
		}
		if r.yes("clear") {
			add("[s](clear:stand)")
		}
	}
	if len(calls) > 0 && r.odds(3, "call") {
		add("[x](do:%s)", r.one(calls, "callee"))
	}
	return out
}

func (r *randomManual) hazards() string {
	if r.odds(3, "no hazard") {
		return ""
	}
	return "[](hazard:shock) [](hazard:jet) [](hazard:crush)"
}

func contains(list []string, s string) bool {
	for _, x := range list {
		if x == s {
			return true
		}
	}
	return false
}

// spoil drops, doubles, swaps, adds and conditions steps.
func (r *randomManual) spoil(steps []string, calls []string) []string {
	var out []string
	for _, s := range steps {
		switch (r.n(15, "spoil") + 7) % 16 {
		case 0:
		case 1:
			out = append(out, s, s)
		case 2:
			out = append(out, s, r.randomAct(calls))
		case 3:
			out = append(out, r.condition()+" "+s)
		case 4:
			out = append(out, s+" [](pause:)")
		case 5:
			out = append(out, s+"\n\n   1. "+r.randomAct(calls)+"\n   2. "+r.condition()+" "+r.randomAct(calls))
		case 6:
			if len(out) > 0 {
				out[len(out)-1], s = s, out[len(out)-1]
			}
			out = append(out, s)
		default:
			out = append(out, s)
		}
	}
	if len(out) == 0 {
		out = append(out, "Words.")
	}
	return out
}

func (r *randomManual) condition() string {
	switch k := r.n(5, "condition"); {
	case k < 2 && len(r.options) > 0:
		return fmt.Sprintf("[w](when:%s%s)", []string{"", "!"}[r.n(1, "not")], r.one(r.options, "option"))
	case k == 2:
		return "[](optional:)"
	case k == 3:
		return r.one([]string{"[i](if-not:dead-power)", "[i](if-not:zero-air)"}, "failed")
	case k == 4:
		return fmt.Sprintf("[i](if:ask=%s)", []string{"good", "worn"}[r.n(1, "answer")])
	}
	return "[i](if-not:zero)"
}

func (r *randomManual) randomAct(calls []string) string {
	kinds := []string{"isolate", "lock", "release", "prove", "unlock", "restore", "test-live", "remove", "refit", "renew", "cap", "loosen", "tighten", "tighten#", "mark", "place", "clear", "alter", "reset", "drain", "fill", "bleed", "dry", "hold", "again", "do", "ask", "point"}
	switch k := r.one(kinds, "act"); k {
	case "isolate", "lock", "release", "prove", "unlock", "restore":
		return fmt.Sprintf("[x](%s:%s)", k, r.one(r.energies, "energy"))
	case "point":
		return fmt.Sprintf("[x](%s:%s)", []string{"isolate", "lock", "unlock", "restore"}[r.n(3, "point act")], r.one(r.points, "point"))
	case "test-live":
		return fmt.Sprintf("[x](test-live:%s) [](hazard:shock) [](hold:sign) %s", r.one(r.energies, "energy"), r.one([]string{"[](people:2)", "[](people:2)", ""}, "people"))
	case "remove", "refit", "renew", "cap":
		return fmt.Sprintf("[x](%s:%s) %s", k, r.one(r.parts, "part"), r.hazards())
	case "loosen", "tighten":
		return fmt.Sprintf("[x](%s:%s)", k, r.one([]string{"bolt", "nut", "clip", "screw"}, "fastener"))
	case "tighten#":
		return fmt.Sprintf("[x](tighten:%s#%s)", r.one([]string{"bolt", "nut", "clip"}, "fastener"), r.one(r.parts, "part"))
	case "mark":
		if r.alike {
			return "[x](mark:hoses)"
		}
	case "place", "clear":
		return fmt.Sprintf("[x](%s:%s)", k, r.one([]string{"stand", "prop", "gauge", "cage"}, "tool"))
	case "alter", "reset":
		return fmt.Sprintf("[x](%s:relief)", k)
	case "drain", "fill", "dry":
		return fmt.Sprintf("[x](%s:oil)", k)
	case "bleed":
		return fmt.Sprintf("[x](bleed:oil) [y](loosen:%s) %s", r.one([]string{"bolt", "nut", "screw"}, "fastener"), r.hazards())
	case "hold":
		return fmt.Sprintf("[](hold:%s)", r.one(r.holds, "hold"))
	case "again":
		return fmt.Sprintf("[](again:%s)", r.one([]string{"dead-power", "zero", "zero-air"}, "hold"))
	case "ask":
		return "[](hold:ask)"
	case "do":
		if len(calls) > 0 {
			return fmt.Sprintf("[x](do:%s)", r.one(calls, "callee"))
		}
	}
	return "Words only."
}
