package procedure

import (
	"encoding/json"
	"maps"
	"regexp"
	"slices"
	"strings"

	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/show/page"
)

// Bay is what the bay's script must know of a procedure to keep its job: the
// page holds it as attributes, so that no script stands in the page itself.
type Bay struct {
	Shop        string
	Procedure   string
	Revision    string
	Fingerprint string // of that revision
	Machine     string // "" for a general procedure
	Options     string // JSON: option id to words, those that the page asks about
	Units       string // JSON: rows of serial numbers with the options that they have
	OnlyOne     string // JSON: options of which a unit has at most one
	Amounts     string // a pattern of the amounts in the names of options; "" where there are none
}

// unitRow is a row of a machine's serial numbers, for the script.
type unitRow struct {
	From    int      `json:"from"`
	To      int      `json:"to"`
	Options []string `json:"options"`
}

// Terms are the conditions of a step in the ids that a unit's choice is made
// of: "lithium !cab", and the outcomes of holds, "if-not:bus-dead" or
// "if:seat-state=worn".
type Terms struct {
	Options  string
	Outcomes string
}

func (s *Pages) bay(p *model.Procedure) Bay {
	v := Bay{Shop: s.Manual.Shop.Title, Procedure: p.ID}
	if r := s.LastRevision(p); r != nil {
		v.Revision, v.Fingerprint = r.Number, r.Fingerprint
	}
	m := p.For.To
	if m == nil {
		return v
	}
	v.Machine = m.ID
	names := map[string]string{}
	for i, text := range s.Options(m) {
		names[m.Options[i].Key] = text
	}
	if amounts := s.AmountsIn(slices.Sorted(maps.Values(names))); len(amounts) > 0 {
		for i := range amounts {
			amounts[i] = regexp.QuoteMeta(amounts[i])
		}
		v.Amounts = "(" + strings.Join(amounts, "|") + ")"
	}
	rows := []unitRow{}
	for _, u := range m.Units {
		rows = append(rows, unitRow{u.From, u.To, append([]string{}, u.Options...)})
	}
	v.Options, v.Units, v.OnlyOne = asJSON(names), asJSON(rows), asJSON(append([][]string{}, m.OnlyOneOf...))
	return v
}

// asJSON writes plain values; they cannot fail to be written.
func asJSON(v any) string {
	out, err := json.Marshal(v)
	if err != nil {
		return ""
	}
	return string(out)
}

// terms gathers the conditions among links.
func terms(links []*model.Link) Terms {
	var options, outcomes []string
	for _, l := range links {
		switch {
		case l.Bad:
		case l.Is(model.LinkWhen) && l.Not:
			options = append(options, "!"+l.ID)
		case l.Is(model.LinkWhen):
			options = append(options, l.ID)
		case l.Is(model.LinkIfNot):
			outcomes = append(outcomes, "if-not:"+l.ID)
		case l.Is(model.LinkIf):
			outcomes = append(outcomes, "if:"+l.ID+"="+l.Frag())
		}
	}
	return Terms{strings.Join(options, " "), strings.Join(outcomes, " ")}
}

// reversedTerms are the conditions of a derived step: those of the step that
// it reverses, of all that holds that step, and of the part itself.
func reversedTerms(d *walk.Derived) Terms {
	var links []*model.Link
	for st := d.From; st != nil; st = st.Parent {
		links = append(links, st.Links...)
	}
	if d.From.Phase.Lead != nil {
		links = append(links, d.From.Phase.Lead.Links...)
	}
	v := Terms{Options: terms(links).Options} // an outcome of the strip is in the past
	if part, ok := d.Thing.(*model.Part); ok && part.OnlyWith.Option != "" {
		v.Options = strings.TrimSpace(v.Options + " " + optionTerm(part.OnlyWith.Option, part.OnlyWith.Not))
	}
	return v
}

// guarded says that a step cannot be skipped: people are hurt where it is.
func guarded(boxes []page.Box, links []*model.Link) bool {
	return slices.ContainsFunc(boxes, func(b page.Box) bool { return b.Class != "notice" }) ||
		slices.ContainsFunc(links, func(l *model.Link) bool { return l.Kind.Guarded || l.Kind.Stops })
}

// changes names what a step changes, as "remove:seat-base".
func changes(links []*model.Link) string {
	var out []string
	for _, l := range links {
		if l.Kind.Act != model.NoAct && l.Kind.Act != model.Call && l.Kind.Act != model.Reverse {
			out = append(out, l.Kind.Name+":"+l.ID)
		}
	}
	return strings.Join(out, " ")
}

// valued says that a text holds an amount: the short view keeps it.
func valued(b *model.Block) bool { return len(quantity.Find(b.Plain)) > 0 }
