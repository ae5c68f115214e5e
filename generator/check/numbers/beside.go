package numbers

import (
	"cmp"
	"slices"
	"strings"

	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
	"baybinder/generator/read/sentence"
)

// beside is what the links of one sentence say in numbers: what an amount in
// the sentence's own words is held against.
type beside struct {
	of      *job
	drained map[*model.Fluid]bool // what the procedure has let out before this step

	rivals  []rival              // one of a dimension must be the typed one
	bounds  []bound              // ends of what is stated
	most    []rival              // or no less than it: amounts of a supply
	words   []quantity.Quantity  // may be said as well: of names, of what a branch asks
	said    []quantity.Limit     // these too
	free    []quantity.Dimension // of settings that are changed: another value is meant
	tools   []*model.Tool
	names   map[string]bool // words of the names of what is linked, tools left out
	nouns   map[string]bool // words of what is measured
	zero    bool            // an act that leaves nothing stands in the sentence
	timed   bool            // the words of a hold state a duration
	unknown bool            // something in it could not be read
}

// rival is a number that a register or a machine file states.
type rival struct {
	quantity.Quantity
	limit quantity.Limit // that it is of, where it is one
	of    model.Named
	who   string
}

// besideOf gathers the numbers behind the links of a sentence of a step.
func besideOf(j *job, step *model.Step, drained map[*model.Fluid]bool, links []sentence.Placed) *beside {
	b := &beside{of: j, drained: drained, names: map[string]bool{}, nouns: map[string]bool{}}
	for _, l := range links {
		if l.Bad || l.To != nil && valuesLost(l.To) {
			b.unknown = true
			return b
		}
		b.link(l.Link)
	}
	b.unknown = b.unknown || unproved(step, links)
	return b.supplies(links)
}

// unproved says that an energy is proved dead with no hold of it in its step: that
// is told, and a limit in words may be the one that is missing.
func unproved(step *model.Step, links []sentence.Placed) bool {
	return slices.ContainsFunc(links, func(l sentence.Placed) bool {
		e, is := l.To.(*model.Energy)
		return is && l.Kind.Act == model.Prove && !takesHoldOf(step, e)
	})
}

// takesHoldOf says that a step takes a hold of an energy. One that could not be read
// may have had the limit that the words say.
func takesHoldOf(s *model.Step, e *model.Energy) bool {
	return slices.ContainsFunc(s.Links, func(l *model.Link) bool {
		h, is := l.To.(*model.Hold)
		return is && (l.Is(model.LinkHold) || l.Is(model.LinkAgain)) && h.Of.ID == e.ID
	})
}

func (b *beside) link(l *model.Link) {
	if l.Is(model.LinkWithin) {
		b.words = append(b.words, l.Amount())
	}
	b.zero = b.zero || l.Kind.Empties
	if l.Kind.Act == model.Reverse {
		b.reversed(l)
	}
	switch to := l.To.(type) {
	case *model.Tool:
		b.tools = append(b.tools, to)
	case *model.Hold:
		b.hold(l, to)
	case *model.Setting:
		b.setting(l, to)
	case *model.Fluid:
		b.fluid(l, to)
	default:
		b.thing(to)
	}
}

// thing takes the numbers of what is acted on or mentioned, whatever the act.
func (b *beside) thing(n model.Named) {
	switch to := n.(type) {
	case *model.Fastener:
		b.fastener(to)
	case *model.Part:
		b.part(to)
	case *model.Energy:
		b.energy(to)
	case *model.Point:
		b.named(to)
		for _, e := range to.Cuts {
			b.energy(e)
		}
	}
}

// named lets an entry's own name be said. A file's unread entry is unknown.
func (b *beside) named(n model.Named) {
	b.unknown = b.unknown || valuesLost(n)
	b.words = append(b.words, inText(n.Label())...)
	for word := range strings.FieldsSeq(strings.ToLower(n.Label())) {
		b.names[word] = true
	}
}

func (b *beside) state(n model.Named, who string, list ...quantity.Quantity) {
	for _, q := range given(list...) {
		b.rivals = append(b.rivals, rival{Quantity: q, of: n, who: who})
	}
}

// limit takes what a limit states, and the ends of a tolerance.
func (b *beside) limit(n model.Named, who string, l quantity.Limit) {
	if l.IsZero() {
		return
	}
	b.bounds = append(b.bounds, boundsOf(n, who, l)...)
	for _, q := range append(l.Numbers(), endsOf(l)...) {
		b.rivals = append(b.rivals, rival{q, l, n, who})
	}
}

func (b *beside) fastener(f *model.Fastener) {
	b.named(f)
	if len(f.Stages) == 0 {
		b.limit(f, machineFile, f.Torque)
	}
	b.state(f, machineFile, f.Stages...)
	b.words = append(b.words, inText(f.Retorque)...)
}

func (b *beside) part(p *model.Part) {
	b.named(p)
	b.state(p, machineFile, p.Mass)
	for _, use := range p.HeldBy {
		if use.To != nil { // else what holds it is lost, and all is unknown
			b.fastener(use.To)
		}
	}
}

func (b *beside) energy(e *model.Energy) {
	b.named(e)
	b.state(e, machineFile, e.Voltage, e.Temperature)
	b.limit(e, machineFile, e.Pressures)
	b.words = append(b.words, given(e.Stored.Capacitance, e.Stored.Resistance, e.Stored.Wait, e.Stored.GasVolume, e.Stored.Precharge)...)
}

// hold takes the wait or the limit of what the work stops for. A branch may
// repeat the limit that it asks about; and a hold of an energy may say what it
// begins with.
func (b *beside) hold(l *model.Link, h *model.Hold) {
	if l.Is(model.LinkNoted) {
		return
	}
	b.named(h)
	b.words = append(b.words, inText(h.What)...)
	for word := range strings.FieldsSeq(strings.ToLower(h.What)) {
		b.nouns[word] = true
	}
	if of, is := b.of.of.For.To.Find(h.Of.ID).(*model.Energy); is {
		b.unknown = b.unknown || blind(h, of)
		b.words = append(b.words, given(of.Voltage, of.Temperature)...)
		b.words = append(b.words, numbersOf(of.Pressures)...)
	}
	if l.Kind.Branches {
		b.words = append(b.words, given(h.For.Least, h.For.Most)...)
		b.words = append(b.words, append(numbersOf(h.Limit), endsOf(h.Limit)...)...)
		b.said = append(b.said, limitsOf(l)...)
		return
	}
	b.bounds = append(b.bounds, waited(h)...)
	b.words = append(b.words, numbersOf(h.Near)...)
	b.said = append(b.said, h.Near)
	b.words = append(b.words, given(h.AgainIn)...)
	b.state(h, register, h.For.Least, h.For.Most)
	b.limit(h, register, h.Limit)
	b.timed = b.timed || l.Is(model.LinkHold) && slices.ContainsFunc(amountsIn(l.Text, b.of.language()), func(a amountIn) bool { return isDuration(a.Quantity) })
}

func isDuration(q quantity.Quantity) bool { return q.Fits(quantity.Duration) }

// setting takes the value of a setting. One that is changed has another by
// intent: any of that dimension may be said.
func (b *beside) setting(l *model.Link, s *model.Setting) {
	b.named(s)
	if l.Kind.Act == model.Alter {
		for _, q := range inText(s.Value) {
			b.free = append(b.free, q.Unit.Dimension())
		}
		return
	}
	b.settingValue(s)
}

func (b *beside) settingValue(s *model.Setting) {
	if limit, err := quantity.ParseLimit(s.Value, quantity.None); err == nil {
		b.limit(s, machineFile, limit)
		if _, _, has := limit.Ends(); !has && limit.Kind == quantity.Exact {
			b.bounds = append(b.bounds, bound{rival: rival{limit.Numbers()[0], limit, s, machineFile}, just: true})
		}
		return
	}
	b.state(s, machineFile, inText(s.Value)...)
}

// fluid takes a circuit's capacity: what is filled in where it was drained, and
// else the most that can be said of it.
func (b *beside) fluid(l *model.Link, f *model.Fluid) {
	b.named(f)
	whole := rival{Quantity: f.Capacity, of: f, who: machineFile}
	switch {
	case f.Capacity.IsZero():
	case l.Kind.Act == model.Fill && b.drained[f]:
		b.rivals = append(b.rivals, whole)
	case l.Kind.Act == model.Fill:
		b.upTo(b.of.lessOf(whole, f))
	default:
		b.upTo(whole)
	}
}

// upTo takes the most that can be said of an amount.
func (b *beside) upTo(most rival) {
	b.most = append(b.most, most)
	b.bounds = append(b.bounds, bound{rival: most, side: quantity.AtMost, full: true})
}

// lessOf is the most that can be filled into a circuit: what it holds, or what the
// procedure brings of its supply, where that is less.
func (j *job) lessOf(whole rival, f *model.Fluid) rival {
	if f.Supply.To == nil {
		return whole
	}
	brought := rival{of: f.Supply.To, who: "the list of supplies"}
	for _, use := range cmp.Or(j.of.Original, j.of).Supplies {
		q, err := quantity.Parse(use.Amount, whole.Unit.Dimension())
		if use.To != f.Supply.To || err != nil || q.Value <= 0 {
			continue
		}
		if !brought.IsZero() {
			return whole // which of two lines is meant is not known
		}
		brought.Quantity = q
	}
	if brought.IsZero() || brought.Base() >= whole.Base() {
		return whole
	}
	return brought
}

// supplies takes what the procedure lists of the supplies that a sentence
// names. What is filled into a circuit is held against its capacity.
func (b *beside) supplies(links []sentence.Placed) *beside {
	for _, l := range links {
		s, is := l.To.(*model.Supply)
		if !is || filledFrom(links, s) {
			continue
		}
		b.words = append(b.words, inText(s.Name)...)
		for word := range strings.FieldsSeq(strings.ToLower(s.Label())) {
			b.names[word] = true // 50 g of grease are this grease's
		}
		for _, use := range cmp.Or(b.of.of.Original, b.of.of).Supplies {
			if listed, err := quantity.Parse(use.Amount, quantity.None); use.To == s && err == nil {
				b.upTo(rival{Quantity: listed, of: s, who: "the list of supplies"})
			}
		}
	}
	return b
}

func filledFrom(links []sentence.Placed, s *model.Supply) bool {
	return slices.ContainsFunc(links, func(l sentence.Placed) bool {
		f, is := l.To.(*model.Fluid)
		return is && l.Kind.Act == model.Fill && f.Supply.To == s && !f.Capacity.IsZero()
	})
}

// reversed takes what a reverse: puts back, tightens and resets.
func (b *beside) reversed(l *model.Link) {
	for _, n := range b.of.back[l] {
		b.thing(n)
	}
	for _, s := range b.of.of.Steps {
		for _, altered := range s.Links {
			if altered.Bad && s.Phase == l.Phase() {
				b.unknown = true // it may be of what is put back
			}
			if setting, is := altered.To.(*model.Setting); is && s.Phase == l.Phase() && altered.Kind.Act == model.Alter && !altered.Bad {
				b.named(setting)
				b.settingValue(setting)
			}
		}
	}
}
