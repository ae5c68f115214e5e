package walk

import (
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// term is one condition of a case.
type term struct {
	v     int32
	value int
}

// Cases are the units and outcomes that something holds for; nil is all.
type Cases [][]Condition

// Condition is one condition of a case.
type Condition struct {
	Option string      // an option's id; "" for an outcome
	Hold   *model.Hold // nil for an optional step
	Answer string      // of an ask hold
	Step   *model.Step // where the hold stands, or the optional step
	Is     bool        // it is so, and not the opposite
}

// mostCases is how many cases are told; the rest is "in other cases", a case
// without conditions.
const mostCases = 3

// cases says where a function holds; nil where it holds everywhere.
func (w *walk) cases(f diagram.Func) Cases {
	if f.Constant() {
		return nil
	}
	var out Cases
	for rest := w.And(f, w.all()); rest != diagram.No; {
		some := w.simplest(f, rest)
		if len(some) == 0 {
			return nil
		}
		if len(out) == mostCases {
			return append(out, nil)
		}
		out = append(out, w.conditionsOf(some))
		rest = w.AndNot(rest, w.cube(some))
	}
	return out
}

func (w *walk) conditionsOf(some []term) []Condition {
	var out []Condition
	for _, l := range some {
		v := w.vars[l.v]
		c := Condition{Hold: v.hold, Answer: v.answer, Step: v.step, Is: l.value == 1}
		if v.kind == anOption {
			c = Condition{Option: v.option, Is: l.value == 1}
		}
		out = append(out, c)
	}
	return out
}

// only says in words where a function holds; nothing where it holds everywhere.
func (w *walk) only(f diagram.Func) finding.Words { return w.casesWords(w.cases(f)) }

func (w *walk) casesWords(all Cases) finding.Words { return all.Words(w.lay.machine) }

// Words are cases in words, "on units with cab", with the options as the machine calls
// them; none where they are all there are. m may be nil.
func (all Cases) Words(m *model.Machine) finding.Words {
	var words finding.Words
	for _, c := range all {
		said := finding.Say("in other cases")
		if c != nil {
			said = caseWords(c, m)
		}
		words = behind(words, "%s, or %s", said)
	}
	return words
}

// simplest is a case in which f holds, with the conditions that are not needed
// left out.
func (w *walk) simplest(f, rest diagram.Func) []term {
	var some []term
	for v, value := range w.Witness(rest) {
		some = append(some, term{v, value})
	}
	// An absent option is the first to be left out: what a unit has says more.
	slices.SortFunc(some, func(a, b term) int {
		if a.value != b.value {
			return a.value - b.value
		}
		return int(b.v - a.v)
	})
	bad := w.AndNot(w.all(), f)
	for i := 0; i < len(some); {
		less := slices.Delete(slices.Clone(some), i, i+1)
		if w.And(w.cube(less), bad) == diagram.No {
			some = less
			continue
		}
		i++
	}
	slices.SortFunc(some, func(a, b term) int { return int(a.v - b.v) })
	return some
}

func (w *walk) cube(some []term) diagram.Func {
	f := diagram.Yes
	for _, l := range some {
		f = w.And(f, w.Literal(l.v, l.value))
	}
	return f
}

// caseWords puts a case into words: the unit first, then what happened.
func caseWords(some []Condition, m *model.Machine) finding.Words {
	var unit, happened []finding.Words
	for _, c := range some {
		if c.Option != "" {
			unit = append(unit, finding.Say(choose(c.Is, "with %s", "without %s"), optionWords(c.Option, m)))
			continue
		}
		happened = append(happened, outcomeWords(c))
	}
	var words finding.Words
	if len(unit) > 0 {
		words = finding.Say("on units %s", finding.ListOf(" and ", unit))
	}
	if len(happened) > 0 {
		words = behind(words, "%s, %s", finding.Say("where %s", finding.ListOf(" and ", happened)))
	}
	return words
}

func optionWords(id string, m *model.Machine) string {
	if words, ok := m.Option(id); ok && words != "" {
		return words
	}
	return id
}

func outcomeWords(c Condition) finding.Words {
	if c.Hold == nil {
		return finding.Say(choose(c.Is, "step %s is done", "step %s is left out"), c.Step.Number)
	}
	hold := finding.Say("%s", c.Hold.Label())
	if c.Step != nil {
		hold = finding.Say("%s in step %s", hold, c.Step.Number)
	}
	if c.Answer == "" {
		return finding.Say(choose(c.Is, "the %s failed", "the %s passed"), hold)
	}
	return finding.Say(choose(c.Is, "the %s is %s", "the %s is not %s"), hold, answerWords(c.Hold, c.Answer))
}

func choose(is bool, then, otherwise string) string {
	if is {
		return then
	}
	return otherwise
}

func answerWords(h *model.Hold, key string) string {
	for _, a := range h.Answers {
		if a.Key == key && a.Value != "" {
			return a.Value
		}
	}
	return key
}
