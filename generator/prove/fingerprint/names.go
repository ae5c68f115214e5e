package fingerprint

import (
	"fmt"
	"slices"
	"strings"

	"baybinder/generator/model"
)

// target is what a link leads to, as its line says it.
func (w *writer) target(link *model.Link) string {
	if w.ids {
		return address(link)
	}
	return w.seen(link)
}

// address is a link's own, as the first form has it.
func address(link *model.Link) string {
	id := link.ID
	if link.Is(model.LinkWithin) {
		id = fmt.Sprint(link.Amount().Base(), " s")
	}
	if link.Not {
		id = "!" + id
	}
	if link.Sign != 0 {
		id += string(link.Sign) + link.Frag()
	}
	if id == "" {
		id = link.Address
	}
	return id
}

// seen is what a reader sees of where a link leads: the name of a thing, whose
// fields follow it, and of what has no name its words or its place.
func (w *writer) seen(link *model.Link) string {
	not := ""
	if link.Not {
		not = "not "
	}
	switch {
	case link.Is(model.LinkDo), link.Is(model.LinkSee), link.Kind == model.PictureLink, link.Kind == model.FileLink && link.To != nil:
		return ""
	case link.Is(model.LinkWhen):
		return not + w.option(link.ID)
	case link.Phase() != nil:
		return strings.TrimSpace(fmt.Sprint("phase ", 1+slices.Index(w.procedure.Phases, link.Phase()), " ", partsSeen(link)))
	case link.To == nil:
		return address(link)
	}
	text := link.To.Label()
	if hold, is := link.To.(*model.Hold); is && link.Is(model.LinkIf) {
		for _, a := range hold.Answers {
			if a.Key == link.Frag() {
				text += ", " + a.Value
			}
		}
	}
	return strings.TrimSpace(text + " " + partsSeen(link))
}

// partsSeen are the parts that a link names behind its sign.
func partsSeen(link *model.Link) string {
	var out []string
	for _, p := range link.Parts() {
		out = append(out, p.Label())
	}
	slices.Sort(out)
	switch {
	case len(out) > 0:
		return "without " + strings.Join(out, ", ")
	case link.Part() != nil:
		return "at " + link.Part().Label()
	}
	return ""
}

// option is what an option is called.
func (w *writer) option(id string) string {
	if words, has := w.procedure.For.To.Option(id); !w.ids && has && words != "" {
		return words
	}
	return id
}

// of is the thing of the machine that an entry of a register comes from.
func (w *writer) of(id string) string {
	m := w.procedure.For.To
	if w.ids || m == nil || id == "" {
		return id
	}
	return w.named(id, m.Find(id))
}

func (w *writer) answer(a model.Pair) string {
	if w.ids {
		return a.Key + " " + a.Value
	}
	return a.Value
}

// alike are the parts that one can be swapped with by mistake.
func (w *writer) alike(p *model.Part) string {
	m := w.procedure.For.To
	if w.ids || m == nil || p.Alike == "" {
		return p.Alike
	}
	var out []string
	for _, other := range m.Parts {
		if other.Alike == p.Alike {
			out = append(out, other.Label())
		}
	}
	slices.Sort(out)
	return strings.Join(out, ", ")
}

// source is the supply from which something comes, and in the second form what
// that is.
func (w *writer) source(field string, ref model.Ref[model.Supply]) {
	w.field(field, name(w, ref))
	s := ref.To
	if w.ids || s == nil {
		return
	}
	w.field(field+" note", s.Note)
	w.field(field+" unit", s.Unit)
	w.field(field+" hazards", sorted(w, s.Hazards))
	w.field(field+" ghs", strings.Join(slices.Sorted(slices.Values(s.GHS)), ", "))
}
