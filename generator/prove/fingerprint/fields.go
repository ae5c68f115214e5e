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
	case link.Is("step"), link.Is("why"), link.Is("on"):
		return
	case link.Is("time"):
		w.line(1, "time", fmt.Sprint(link.Amount().Base()), "s")
		return
	}
	id := link.ID
	if link.Is("within") {
		id = fmt.Sprint(link.Amount().Base(), " s")
	}
	if link.Not {
		id = "!" + id
	}
	if link.Sign != 0 {
		id += string(link.Sign) + link.Frag
	}
	if id == "" {
		id = link.Address
	}
	w.line(1, "link", link.Kind.Name, id)
	if link.Is("when") {
		words, _ := w.procedure.For.To.Option(link.ID)
		w.field("option", words)
		return
	}
	if link.Part != nil {
		w.thing(link.Part)
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
		w.field("needed-by", sortedIDs(t.NeededBy))
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
	w.field("or", sortedIDs(t.Or))
	w.field("needs", sortedIDs(t.Needs))
}

func (w *writer) supply(s *model.Supply) {
	w.common(&s.Common)
	w.field("amount", amountOf(w.procedure.Supplies, s.ID))
	w.field("unit", s.Unit)
	w.field("hazards", sortedIDs(s.Hazards))
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
	w.field("wear", sortedIDs(h.Wear))
	w.field("symbol", h.Symbol)
	w.field("first-aid", h.FirstAid)
	w.field("of", h.Of.ID)
}

func (w *writer) hold(h *model.Hold) {
	w.common(&h.Common)
	w.field("kind", h.Kind)
	w.field("for", h.For)
	w.field("of", h.Of.ID)
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
	w.field("with", h.With.ID)
	w.field("proved-on", h.ProvedOn.ID)
	w.field("if-not", h.IfNot)
	w.field("tries", h.Tries)
	w.field("call", h.Call.ID)
	w.field("good", h.Good)
	w.field("looks-for", h.LooksFor)
	for _, a := range h.Answers {
		w.field("answer", a.Key+" "+a.Value)
	}
	w.field("by", h.By.ID)
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
		w.field("point", p.ID)
		if p.To != nil {
			w.field("point "+p.ID+" name", p.To.Label())
			w.point("point "+p.ID+" ", p.To)
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
	w.field("blocked-by", sortedIDs(e.BlockedBy))
	w.field("contained-by", sortedIDs(e.ContainedBy))
	w.field("before-isolate", sortedIDs(e.BeforeIsolate))
	w.field("before-restore", sortedIDs(e.BeforeRestore))
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
	w.field(before+"only-with", not+c.Option)
}

func (w *writer) part(p *model.Part) {
	w.field("name", p.Label())
	if p.Kind != "part" { // the page speaks by kind: lift out, disconnect, unplug
		w.field("kind", p.Kind)
	}
	w.field("under", sortedIDs(p.Under))
	w.field("prove-dead", sortedIDs(p.ProveDead))
	w.field("guards", sortedIDs(p.Guards))
	w.field("alike", p.Alike)
	for _, held := range p.HeldBy {
		w.field("held-by", held.ID+" "+held.Amount)
		if held.To != nil {
			w.fastener("held-by "+held.ID+" ", held.To)
		}
	}
	w.field("freed-by", sortedIDs(p.FreedBy))
	w.field("carries", p.Carries.ID+p.Bears.ID) // one of them at most
	w.condition("", p.OnlyWith)
	w.field("mass", p.Mass)
	w.lift(p.Lift)
	w.field("renew-with", p.RenewWith.ID)
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
	w.field(before+"renew-with", f.RenewWith.ID)
	w.condition(before, f.OnlyWith)
}

func (w *writer) fluid(f *model.Fluid) {
	w.field("name", f.Label())
	w.field("supply", f.Supply.ID)
	w.field("capacity", f.Capacity)
	if f.Bleed {
		w.field("bleed", yesOr("live", f.BledLive))
	}
	w.field("needed-by", sortedIDs(f.NeededBy))
	w.condition("", f.OnlyWith)
}

// ids are the ids of a list whose order says nothing.
func ids[T any](refs []model.Ref[T]) []string {
	var out []string
	for _, r := range refs {
		out = append(out, r.ID)
	}
	slices.Sort(out)
	return out
}

func sortedIDs[T any](refs []model.Ref[T]) string { return strings.Join(ids(refs), ", ") }

// yesOr is the word that stands for more than yes, where it does.
func yesOr(word string, is bool) string {
	if is {
		return word
	}
	return "yes"
}
