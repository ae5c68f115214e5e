package numbers

import (
	"cmp"
	"iter"
	"maps"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/quantity"
	"baybinder/generator/language"
	"baybinder/generator/model"
	"baybinder/generator/read/sentence"
)

// valuesBeside holds the amounts in the sentences of steps, outside the words
// of links, against what the links of the same sentence state. Reasons are
// left out: they speak of what else could be.
func valuesBeside(j *job) []finding.Finding {
	var found []finding.Finding
	for s, drained := range letOut(j) {
		for i := range s.Blocks {
			if b := &s.Blocks[i]; b.Role != model.Why && slices.ContainsFunc(b.Parts, j.hasNumber) {
				found = append(found, blockBeside(j, s, drained, b)...)
			}
		}
	}
	return found
}

func hasFigure(text string) bool {
	for i := range len(text) {
		if isFigure(text[i]) {
			return true
		}
	}
	return false
}

// fluids says of each that something was done to whether it is out.
type fluids map[*model.Fluid]bool

// letOut goes through the steps of a procedure, with what is out when their own
// fluids are filled in.
func letOut(j *job) iter.Seq2[*model.Step, fluids] {
	return func(yield func(*model.Step, fluids) bool) {
		drained, performed := fluids{}, performed{j.book, map[*model.Procedure]fluids{}}
		for _, s := range j.of.Steps {
			follow(drained, performed, s, model.Drain)
			if !yield(s, drained) {
				return
			}
			follow(drained, performed, s, model.Fill)
		}
	}
}

// follow keeps what was let out, and what was filled again.
func follow(drained fluids, performed performed, s *model.Step, act model.Act) {
	for _, l := range s.Links {
		switch to := l.To.(type) {
		case *model.Fluid:
			if l.Kind.Act == act {
				drained[to] = act == model.Drain
			}
		case *model.Procedure:
			if l.Kind.Act == model.Call && act == model.Drain { // before what the step fills itself
				left, _ := performed.leftBy(to)
				maps.Copy(drained, left)
			}
		}
	}
}

// performed are the procedures that one performs: in the book, or of a ring.
type performed struct {
	*Book
	ring map[*model.Procedure]fluids
}

// leftBy is what a performed procedure leaves out and filled, and whether a ring
// of calls is among what it performs: the same however often it is performed, so
// each is gone through once. A ring leaves nothing.
func (d performed) leftBy(p *model.Procedure) (left fluids, ring bool) {
	if known, is := d.left.Load(p); is {
		return known.(fluids), false
	}
	if known, is := d.ring[p]; is {
		return known, true
	}
	d.ring[p] = nil
	left = fluids{}
	for _, s := range p.Steps {
		for _, l := range s.Links {
			switch to := l.To.(type) {
			case *model.Fluid:
				if l.Kind.Act == model.Drain || l.Kind.Act == model.Fill {
					left[to] = l.Kind.Act == model.Drain
				}
			case *model.Procedure:
				if l.Kind.Act == model.Call {
					inner, round := d.leftBy(to)
					maps.Copy(left, inner)
					ring = ring || round
				}
			}
		}
	}
	d.ring[p] = left
	if !ring {
		d.left.Store(p, left)
	}
	return left, ring
}

func blockBeside(j *job, step *model.Step, drained fluids, b *model.Block) []finding.Finding {
	var found []finding.Finding
	for _, s := range sentence.Of(b) {
		if !j.hasNumber(s.Text) {
			continue
		}
		if states := besideOf(j, step, drained, s.Links); !states.unknown {
			found = append(found, states.judge(s)...)
		}
	}
	return found
}

// judge finds the amounts of a sentence that nothing in it states: one finding
// at the first of them, which names all.
func (b *beside) judge(s sentence.Sentence) []finding.Finding {
	var wrong []typed
	amounts := amountsOf(s, b)
	for _, t := range amounts {
		if rivals := b.against(t); len(rivals) > 0 {
			t.rivals = rivals
			wrong = append(wrong, t)
		}
	}
	if len(wrong) == 0 {
		return b.turned(s, amounts)
	}
	slices.SortStableFunc(wrong, func(a, b typed) int { return cmp.Compare(a.Start, b.Start) })
	var said, told []string
	var right []finding.Words
	for _, t := range wrong {
		said = append(said, t.said)
		for _, r := range t.rivals {
			text := r.says(t.Tolerance)
			if english := text.String(); !slices.Contains(told, english) {
				told, right = append(told, english), append(right, text)
			}
		}
	}
	first := wrong[0]
	who, form := statersOf(wrong), finding.Say("the sentence says %s, and %s says %s")
	if len(who) > 1 {
		form = finding.Say("the sentence says %s, and %s say %s")
	}
	return []finding.Finding{ValueDisagrees.At(s.At.Part(first.Start, first.End), form.Template, listOf(said), listOf(who), listOf(right)).
		WithMend("write that number; what is said of another thing stands in a sentence of its own").
		See(first.rivals[0].of.Base().At, "it is stated here")}
}

// statersOf is who states what amounts are held against.
func statersOf(wrong []typed) []finding.Words {
	var who []string
	for _, t := range wrong {
		for _, r := range t.rivals {
			if !slices.Contains(who, r.who) {
				who = append(who, r.who)
			}
		}
	}
	var out []finding.Words
	for _, w := range who {
		out = append(out, finding.Say(w))
	}
	return out
}

// says is a rival as a message names it: with its thing.
func (r rival) says(tolerance bool) finding.Words {
	if tolerance || r.limit.Kind == quantity.PlusMinus || r.limit.Kind == quantity.Between {
		return finding.Say("%s for the %s", r.limit, r.of.Label())
	}
	return finding.Say("%s for the %s", r.Quantity, r.of.Label())
}

// typed is an amount in a sentence's own words.
type typed struct {
	amountIn
	bare   model.Named // of a number without a unit, what the link before it acts on
	times  float64     // how often it is said to be taken; 1 where nothing is said
	edge   bool        // something is: before an angle, the width of an edge that is broken
	rivals []rival
}

// amountsOf are the amounts of a sentence that may be another thing's: not what
// a linked tool is called by, and not the size of a can.
func amountsOf(s sentence.Sentence, b *beside) []typed {
	var out []typed
	found := withLowerEnds(s.Text, b.of.language())
	for i, q := range found {
		if counts(s.Text, b.of.language(), found, i) || b.toolsRange(s.Text, found, i) || b.toolsOwn(s, q.Found) || rating(s.Text, q.Found) || converts(s.Text, found, i) || b.another(s.Text, q.Found) {
			continue
		}
		times, said := timesOf(s.Text[:q.Start])
		out = append(out, typed{amountIn: q, times: times, edge: said})
	}
	for _, bare := range slices.Concat(bareNumbers(s), plainRanges(s), plainBounds(s, b.of.language())) {
		if !slices.ContainsFunc(out, func(t typed) bool { return t.End == bare.End }) {
			out = append(out, bare)
		}
	}
	return out
}

var factor = regexp.MustCompile(`(\d+)\s*[x×]\s*$`)

// timesOf is the number of times that an amount is said to be taken, as in
// "2 x 45°"; 1 where nothing is said.
func timesOf(before string) (times float64, said bool) {
	m := factor.FindStringSubmatch(before)
	if m == nil {
		return 1, false
	}
	n, _ := strconv.Atoi(m[1]) // figures alone
	return float64(n), true
}

// agrees says whether an amount is a stated one, or is so many times taken.
func (t typed) agrees(q quantity.Quantity) bool {
	all := t.Quantity
	all.Value *= t.times
	return quantity.Agrees(t.Quantity, q) || quantity.Agrees(all, q)
}

// chamfer says whether an amount is the angle of an edge that is broken, "2 x
// 45°", "1 x 45°".
func (t typed) chamfer() bool {
	return t.edge && t.Fits(quantity.Angle) && t.Value == 45
}

// against gives what an amount should have been, nothing where it is right in one
// of the ways that it can be read, or nothing of its dimension is stated.
func (b *beside) against(t typed) []rival {
	rivals := b.againstAs(t)
	right := t.readAnyWay(func(q quantity.Quantity) bool {
		t.Quantity = q
		return len(b.againstAs(t)) == 0
	})
	if right {
		return nil
	}
	return rivals
}

// againstAs is against, of an amount as one of the ways reads it.
func (b *beside) againstAs(t typed) []rival {
	switch {
	case t.bare != nil:
		return b.bareAgainst(t)
	case t.Tolerance:
		return b.toleranceAgainst(t)
	case t.Value == 0 && (b.zero || b.fallen(t)), t.chamfer(), b.timed && isDuration(t.Quantity), slices.ContainsFunc(b.free, t.Fits), agreesWithOne(t.Quantity, b.words):
		return nil
	}
	rivals := rivalsOf(b.rivals, t.Quantity)
	if slices.ContainsFunc(rivals, func(r rival) bool { return t.isMiddleOf(r.limit) }) || slices.ContainsFunc(b.said, t.isMiddleOf) {
		return nil
	}
	most := rivalsOf(b.most, t.Quantity)
	if slices.ContainsFunc(rivals, func(r rival) bool { return t.agrees(r.Quantity) }) ||
		slices.ContainsFunc(most, func(r rival) bool { return t.Base()*t.times <= r.Base() || t.agrees(r.Quantity) }) {
		return nil
	}
	return append(rivals, most...)
}

// fallen says whether nothing is a reading within a limit that the sentence
// stops at: what is measured has fallen to it.
func (b *beside) fallen(t typed) bool {
	return slices.ContainsFunc(b.rivals, func(r rival) bool {
		_, measured := r.of.(*model.Hold)
		return measured && t.Fits(r.Unit.Dimension()) && r.limit.Kind == quantity.AtMost
	})
}

// toleranceAgainst holds what stands behind ± against the tolerances that are
// stated, where there are any.
func (b *beside) toleranceAgainst(t typed) []rival {
	if slices.ContainsFunc(b.said, func(l quantity.Limit) bool { _, right := t.offOf(l); return right }) {
		return nil
	}
	var out []rival
	for _, r := range b.rivals {
		held, right := t.offOf(r.limit)
		switch {
		case right:
			return nil
		case held:
			out = append(out, r)
		}
	}
	return out
}

// spanOf is a tolerance in a unit whose zero is nothing: a span of 1 °C is 1 K.
func spanOf(q quantity.Quantity) quantity.Quantity {
	switch q.Unit {
	case quantity.Celsius:
		q.Unit = quantity.Kelvin
	case quantity.Fahrenheit:
		return quantity.Of(q.Value/1.8, quantity.Kelvin, 6)
	}
	return q
}

func rivalsOf(list []rival, q quantity.Quantity) []rival {
	var out []rival
	for _, r := range list {
		if q.Fits(r.Unit.Dimension()) {
			out = append(out, r)
		}
	}
	return out
}

// toolsOwn says whether an amount is what a tool is called by, right at its
// link: "the 17 mm [socket]", in Spanish "[vaso] de 17 mm".
func (b *beside) toolsOwn(s sentence.Sentence, q quantity.Found) bool {
	return slices.ContainsFunc(s.Links, func(l sentence.Placed) bool {
		tool, is := l.To.(*model.Tool)
		if !is || l.Start > len(s.Text) || !atLink(s.Text, q, l) {
			return false
		}
		states := statedByTool(tool)
		if len(sameKind(slices.Concat(states.values, states.words), q.Quantity)) == 0 {
			return true // nothing is stated of it that could disagree
		}
		return agreesWithOne(q.Quantity, states.values) || agreesWithOne(q.Quantity, states.words)
	})
}

func atLink(text string, q quantity.Found, l sentence.Placed) bool {
	if q.End <= l.Start {
		return strings.TrimSpace(text[q.End:l.Start]) == ""
	}
	return q.Start >= l.End && language.IsOf(strings.TrimSpace(text[l.End:q.Start]))
}

var ratingBefore = regexp.MustCompile(`\bCAT\s+I[IV]*\s*$`)

// rating says whether a voltage is a tester's category, "CAT III 1000 V".
func rating(text string, q quantity.Found) bool { return ratingBefore.MatchString(text[:q.Start]) }
