package fingerprint

import (
	"fmt"
	"slices"
	"strings"

	"baybinder/generator/model"
)

// link writes a link's kind and id, and what its reader acts on of the entry
// that it names. Signs for the program alone are left out.
func (w *writer) link(link *model.Link) {
	switch {
	case link.Kind.Silent:
		return
	case link.Is(model.LinkTime):
		w.line(1, "time", fmt.Sprint(link.Amount().Base()), "s")
		return
	}
	w.line(1, "link", link.Kind.Name, w.target(link))
	if link.Is(model.LinkWhen) {
		words, _ := w.procedure.For.To.Option(link.ID)
		w.field("option", words)
		return
	}
	if link.Part() != nil {
		w.thing(link.Part())
	}
	w.thing(link.To)
}

// thing writes the acted-on fields of an entry. Where it is kept, how many
// there are, its stock number and its calibration are the stores' matter.
func (w *writer) thing(n model.Named) {
	switch t := n.(type) {
	case *model.Tool:
		w.tool(t)
	case *model.Supply:
		w.supply(t)
	case *model.Hazard:
		w.hazard(t)
	case *model.Hold:
		w.hold(t)
	case *model.Role:
		w.common(&t.Common)
	case *model.Point:
		w.field("name", t.Label())
		w.point("", t)
	case *model.Energy:
		w.energy(t)
	case *model.Part:
		w.part(t)
	case *model.Fastener:
		w.fastener("", t)
	case *model.Fluid:
		w.fluid(t)
	case *model.Setting:
		w.field("name", t.Label())
		w.field("value", t.Value)
		w.field("needed-by", sorted(w, t.NeededBy))
		w.condition("", t.OnlyWith)
	case *model.Order:
		w.field("places", strings.Join(t.Labels, ", "))
	case *model.Group:
		for _, p := range t.Parts {
			w.field("part", p.Label())
		}
	}
}

func (w *writer) common(c *model.Common) {
	w.field("name", c.Name)
	w.field("note", c.Note)
}

func (w *writer) tool(t *model.Tool) {
	w.common(&t.Common)
	w.field("amount", amountOf(w.procedure.Tools, t.ID))
	w.field("kind", t.Kind)
	if !t.Range.IsZero() {
		w.field("range", t.Range)
	}
	w.field("length", t.Length)
	w.field("adds", t.Adds)
	w.field("fits", strings.Join(t.Fits, ", "))
	w.field("rated", t.Rated)
	w.field("or", sorted(w, t.Or))
	w.field("needs", sorted(w, t.Needs))
}

func (w *writer) supply(s *model.Supply) {
	w.common(&s.Common)
	w.field("amount", amountOf(w.procedure.Supplies, s.ID))
	w.field("unit", s.Unit)
	w.field("hazards", sorted(w, s.Hazards))
	ghs := slices.Sorted(slices.Values(s.GHS))
	w.field("ghs", strings.Join(ghs, ", "))
	w.field("waste", s.Waste)
}

// amountOf is what the procedure's list says is needed.
func amountOf[T any](list []model.Use[T], id string) string {
	for _, u := range list {
		if u.ID == id {
			return u.Amount
		}
	}
	return ""
}

// hazard writes a hazard as this procedure meets it.
func (w *writer) hazard(h *model.Hazard) {
	for _, use := range w.procedure.Hazards {
		if use.ID == h.ID && use.Met != nil {
			h = use.Met
		}
	}
	w.common(&h.Common)
	w.field("nature", h.Nature)
	w.field("harm", h.Harm)
	w.field("happens", h.Happens)
	w.field("consequence", h.Consequence)
	for _, a := range h.Avoid {
		w.field("avoid", a)
	}
	w.field("wear", sorted(w, h.Wear))
	w.field("symbol", h.Symbol)
	w.field("first-aid", h.FirstAid)
	w.field("of", w.of(h.Of.ID))
}

func (w *writer) hold(h *model.Hold) {
	w.common(&h.Common)
	w.field("kind", h.Kind)
	w.field("for", h.For)
	w.field("of", w.of(h.Of.ID))
	w.field("why", h.Why)
	w.field("what", h.What)
	for _, place := range h.Places {
		w.field("at", place)
	}
	if !h.Limit.IsZero() {
		w.field("limit", h.Limit)
	}
	if !h.Near.IsZero() {
		w.field("near", h.Near)
	}
	w.field("again-in", h.AgainIn)
	w.field("with", name(w, h.With))
	w.field("proved-on", name(w, h.ProvedOn))
	w.field("if-not", h.IfNot)
	w.field("tries", h.Tries)
	w.field("call", name(w, h.Call))
	w.field("good", h.Good)
	w.field("looks-for", h.LooksFor)
	for _, a := range h.Answers {
		w.field("answer", w.answer(a))
	}
	w.field("by", name(w, h.By))
	w.field("how", h.How)
}

func (w *writer) point(before string, p *model.Point) {
	w.field(before+"where", p.Where)
	if p.Lock {
		w.field(before+"lock", yesOr("kept", p.Kept))
	}
	w.condition(before, p.OnlyWith)
}

func (w *writer) energy(e *model.Energy) {
	w.field("name", e.Label())
	w.field("kind", e.Kind)
	w.field("voltage", e.Voltage)
	if !e.Pressures.IsZero() {
		w.field("pressure", e.Pressures)
	}
	w.field("temperature", e.Temperature)
	for _, p := range e.Points {
		w.field("point", name(w, p))
		switch {
		case p.To == nil:
		case w.ids:
			w.field("point "+p.ID+" name", p.To.Label())
			w.point("point "+p.ID+" ", p.To)
		default:
			w.point("point "+p.To.Label()+" ", p.To)
		}
	}
	if e.Stored.Yes {
		w.field("stored", fmt.Sprint("yes ", e.Stored.Capacitance, " ", e.Stored.Resistance))
		if !e.Stored.Wait.IsZero() {
			w.field("stored wait", e.Stored.Wait)
		}
		w.field("gas-volume", e.Stored.GasVolume)
		w.field("precharge", e.Stored.Precharge)
	}
	w.field("blocked-by", sorted(w, e.BlockedBy))
	w.field("contained-by", sorted(w, e.ContainedBy))
	w.field("before-isolate", sorted(w, e.BeforeIsolate))
	w.field("before-restore", sorted(w, e.BeforeRestore))
	w.condition("", e.OnlyWith)
}

func (w *writer) condition(before string, c model.Condition) {
	if c.Option == "" {
		return
	}
	not := ""
	if c.Not {
		not = "!"
	}
	w.field(before+"only-with", not+w.option(c.Option))
}

func (w *writer) part(p *model.Part) {
	w.field("name", p.Label())
	if p.Kind != "part" { // the page speaks by kind: lift out, disconnect, unplug
		w.field("kind", p.Kind)
	}
	w.field("under", sorted(w, p.Under))
	w.field("prove-dead", sorted(w, p.ProveDead))
	w.field("guards", sorted(w, p.Guards))
	w.field("alike", w.alike(p))
	for _, held := range p.HeldBy {
		called := name(w, held.Ref)
		w.field("held-by", called+" "+held.Amount)
		if held.To != nil {
			w.fastener("held-by "+called+" ", held.To)
		}
	}
	w.field("freed-by", sorted(w, p.FreedBy))
	w.field("carries", name(w, p.Carries)+name(w, p.Bears)) // one of them at most
	w.condition("", p.OnlyWith)
	w.field("mass", p.Mass)
	w.lift(p.Lift)
	w.source("renew-with", p.RenewWith)
	if p.Serial {
		w.field("serial", "yes")
	}
	w.field("old", p.Old)
}

func (w *writer) lift(l *model.Lift) {
	if l == nil {
		return
	}
	w.liftEnd("lift ", &l.LiftEnd)
	w.field("lift travel", l.Travel)
	w.field("lift frequency", l.Frequency)
	w.field("lift duration", l.Duration)
	w.field("lift coupling", l.Coupling)
	if l.To != nil {
		w.liftEnd("lift to ", l.To)
	}
}

func (w *writer) liftEnd(before string, e *model.LiftEnd) {
	w.field(before+"horizontal", e.Horizontal)
	w.field(before+"vertical", e.Vertical)
	w.field(before+"asymmetry", e.Asymmetry)
}

func (w *writer) fastener(before string, f *model.Fastener) {
	w.field(before+"name", f.Label())
	w.field(before+"thread", f.Thread)
	w.field(before+"class", f.Class)
	w.field(before+"across-flats", f.AcrossFlats)
	w.field(before+"drive", f.Drive)
	if !f.Torque.IsZero() {
		w.field(before+"torque", f.Torque)
	}
	if f.ByHand {
		w.field(before+"torque", "hand")
	}
	for _, s := range f.Stages {
		w.field(before+"stage", s)
	}
	w.field(before+"condition", f.Condition)
	w.field(before+"lubricant", f.Lubricant)
	w.field(before+"sequence", strings.Join(f.Sequence, ", "))
	w.field(before+"start", f.Start)
	w.field(before+"mark-after", f.MarkAfter)
	w.field(before+"retorque", f.Retorque)
	w.source(before+"renew-with", f.RenewWith)
	w.condition(before, f.OnlyWith)
}

func (w *writer) fluid(f *model.Fluid) {
	w.field("name", f.Label())
	w.source("supply", f.Supply)
	w.field("capacity", f.Capacity)
	if f.Bleed {
		w.field("bleed", yesOr("live", f.BledLive))
	}
	w.field("needed-by", sorted(w, f.NeededBy))
	w.condition("", f.OnlyWith)
}

// name is what a reference is called: its id in the first form, else the name of
// what it leads to.
func name[T any](w *writer, ref model.Ref[T]) string {
	if ref.To == nil {
		return ref.ID
	}
	to, _ := any(ref.To).(model.Named)
	return w.named(ref.ID, to)
}

func (w *writer) named(id string, to model.Named) string {
	if w.ids || to == nil {
		return id
	}
	return to.Label()
}

// names are the names of a list whose order says nothing.
func names[T any](w *writer, refs []model.Ref[T]) []string {
	var out []string
	for _, r := range refs {
		out = append(out, name(w, r))
	}
	slices.Sort(out)
	return out
}

func sorted[T any](w *writer, refs []model.Ref[T]) string { return strings.Join(names(w, refs), ", ") }

// yesOr is the word that stands for more than yes, where it does.
func yesOr(word string, is bool) string {
	if is {
		return word
	}
	return "yes"
}
