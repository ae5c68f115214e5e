package check

import (
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
)

// runWordsNotTranslated tells, at each entry of a register or a machine, of the
// texts that a translated page prints in the shop's language. Dangers and holds
// are told at their links, and are errors there.
func runWordsNotTranslated(c *Context) []finding.Finding {
	var found []finding.Finding
	for _, language := range c.Manual.Shop.Also {
		out := &printout{seen: map[[2]string]int{}}
		for _, p := range c.Manual.Translated {
			if o := p.Original; p.Language == language && o != nil && !unread(o) && !unread(p) && !p.Draft() && !o.Draft() {
				out.page(c.Manual, o, p)
			}
		}
		for _, e := range out.entries {
			found = append(found, e.untold(c.Manual, language)...)
		}
	}
	return found
}

// printedEntry is an entry of which a translated page prints some texts.
type printedEntry struct {
	register, id string
	at           position.Pos
	fields       []string // with a text
}

func (e *printedEntry) untold(m *model.Manual, language string) []finding.Finding {
	missing := slices.DeleteFunc(slices.Clone(e.fields), func(field string) bool { return !m.LacksWords(e.register, e.id, language, field) })
	if len(missing) == 0 {
		return nil
	}
	f := notTranslated.At(e.at, "%s is printed on pages in %s and not translated: %s", e.label(), language, strings.Join(missing, ", "))
	f.Level = finding.Advice
	switch e.register {
	case "shop":
		f = f.WithMend("write in shop.%s.yaml: %s: …", language, missing[0])
	case "tools", "supplies", "roles":
		f = f.WithMend("write in register/%s.%s.yaml: %s: { %s: … }; until then the page shows it as it is, marked", e.register, language, e.id, missing[0])
	default:
		f = f.WithMend("write in %s.%s.yaml: %s: { %s: … }; until then the page shows it as it is, marked", e.register, language, e.id, missing[0])
	}
	return []finding.Finding{f}
}

func (e *printedEntry) label() finding.Words {
	if e.id == "" {
		return finding.Say("the shop")
	}
	return finding.Say("%s", e.id)
}

// printout is the entries that the pages of one language print, in the order in
// which they are met.
type printout struct {
	entries []printedEntry
	seen    map[[2]string]int
}

// text is a field and what is written there.
type text struct{ field, words string }

// entry adds those texts of an entry that are written.
func (x *printout) entry(register, id string, at position.Pos, texts ...text) {
	key := [2]string{register, id}
	i, known := x.seen[key]
	if !known {
		i = len(x.entries)
		x.seen[key] = i
		x.entries = append(x.entries, printedEntry{register: register, id: id, at: at})
	}
	e := &x.entries[i]
	for _, t := range texts {
		if t.words != "" && !slices.Contains(e.fields, t.field) {
			e.fields = append(e.fields, t.field)
		}
	}
}

// page adds what the page of a translation prints of entries: its frame (but not
// the shop's title, which is a name), what
// stands before the job, and what its acts change.
func (x *printout) page(m *model.Manual, o, p *model.Procedure) {
	x.entry("shop", "", m.Shop.At, text{"notice", m.Shop.Notice}, text{"emergency", m.Shop.Emergency})
	for _, r := range o.Needs {
		x.role(r.To)
	}
	for _, u := range o.Tools {
		x.tool(u.To, true)
	}
	for _, u := range o.Supplies {
		if s := u.To; s != nil && !s.Unread {
			x.entry("supplies", s.ID, s.At, text{"name", s.Name}, text{"kept", s.Kept})
		}
	}
	for _, u := range o.Hazards {
		if u.To != nil {
			for _, w := range u.To.Wear {
				x.tool(w.To, false)
			}
		}
	}
	for _, l := range allLinks(p) {
		if h, is := l.To.(*model.Hold); is && !l.Bad {
			x.tool(h.With.To, false)
			x.tool(h.ProvedOn.To, false)
			x.role(h.By.To)
			x.role(h.Call.To)
		}
	}
	if machine := o.For.To; machine != nil && !machine.Unread {
		x.machine(machine, o)
	}
}

func (x *printout) role(r *model.Role) {
	if r != nil && !r.Unread {
		x.entry("roles", r.ID, r.At, text{"name", r.Name})
	}
}

// tool adds a tool's name, and where it is kept where it is fetched.
func (x *printout) tool(t *model.Tool, fetched bool) {
	if t == nil || t.Unread {
		return
	}
	x.entry("tools", t.ID, t.At, text{"name", t.Name})
	if fetched {
		x.entry("tools", t.ID, t.At, text{"kept", t.Kept})
	}
}

// machine adds the machine's name and the things that the steps change: how
// they stand is told under each step.
func (x *printout) machine(m *model.Machine, o *model.Procedure) {
	x.entry("machines/"+m.ID, m.ID, m.At, text{"name", m.Name})
	for _, s := range o.Steps {
		for _, l := range s.Links {
			switch {
			case l.Bad:
			case l.Is(model.LinkWhen) && len(m.Options) > 0:
				x.entry("machines/"+m.ID, m.ID, m.At, text{"options", m.Options[0].Value})
			case l.Kind.Act != model.NoAct:
				x.acted(m, l.To)
			}
		}
	}
}

func (x *printout) acted(m *model.Machine, n model.Named) {
	add := func(id string, at position.Pos, texts ...text) { x.entry("machines/"+m.ID, id, at, texts...) }
	point := func(p *model.Point) {
		if p != nil && !p.Unread {
			add(p.ID, p.At, text{"name", p.Name}, text{"where", p.Where})
		}
	}
	switch to := n.(type) {
	case *model.Energy:
		add(to.ID, to.At, text{"name", to.Name})
		for _, ref := range to.Points {
			point(ref.To)
		}
	case *model.Point:
		point(to)
	case *model.Part:
		add(to.ID, to.At, text{"name", to.Name}, text{"old", to.Old})
	case *model.Fastener:
		add(to.ID, to.At, text{"name", to.Name}, text{"lubricant", to.Lubricant}, text{"mark-after", to.MarkAfter}, text{"retorque", to.Retorque})
	case *model.Fluid:
		add(to.ID, to.At, text{"name", to.Name})
	case *model.Setting:
		add(to.ID, to.At, text{"name", to.Name})
	}
}
