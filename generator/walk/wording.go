package walk

import (
	"slices"
	"strings"

	"baybinder/generator/manual"
)

// term is one condition of a case.
type term struct {
	v     int32
	value int
}

// only says in words where a function holds; "" where it holds everywhere.
func (w *walk) only(f fn) string {
	if f.constant() {
		return ""
	}
	var cases []string
	for rest := w.and(f, w.all()); rest != no && len(cases) < 4; {
		some := w.simplest(f, rest)
		if len(some) == 0 {
			return ""
		}
		cases = append(cases, w.caseWords(some))
		rest = w.andNot(rest, w.cube(some))
	}
	if len(cases) == 4 {
		cases[3] = "in other cases"
	}
	return strings.Join(cases, ", or ")
}

// simplest is a case in which f holds, with the conditions that are not needed
// left out.
func (w *walk) simplest(f, rest fn) []term {
	var some []term
	for v, value := range w.path(rest) {
		some = append(some, term{v, value})
	}
	// An absent option is the first to be left out: what a unit has says more.
	slices.SortFunc(some, func(a, b term) int {
		if a.value != b.value {
			return a.value - b.value
		}
		return int(b.v - a.v)
	})
	bad := w.andNot(w.all(), f)
	for i := 0; i < len(some); {
		less := slices.Delete(slices.Clone(some), i, i+1)
		if w.and(w.cube(less), bad) == no {
			some = less
			continue
		}
		i++
	}
	slices.SortFunc(some, func(a, b term) int { return int(a.v - b.v) })
	return some
}

func (w *walk) cube(some []term) fn {
	f := yes
	for _, l := range some {
		f = w.and(f, w.literal(l.v, l.value))
	}
	return f
}

// caseWords puts a case into words: the unit first, then what happened.
func (w *walk) caseWords(some []term) string {
	var unit, happened []string
	for _, l := range some {
		v := w.vars[l.v]
		if v.kind == anOption {
			unit = append(unit, choose(l.value == 1, "with ", "without ")+w.optionWords(v.option))
			continue
		}
		happened = append(happened, outcomeWords(v, l.value == 1))
	}
	var parts []string
	if len(unit) > 0 {
		parts = append(parts, "on units "+strings.Join(unit, " and "))
	}
	if len(happened) > 0 {
		parts = append(parts, "where "+strings.Join(happened, " and "))
	}
	return strings.Join(parts, ", ")
}

func (w *walk) optionWords(id string) string {
	if words, ok := w.lay.machine.Option(id); ok && words != "" {
		return words
	}
	return id
}

func outcomeWords(v variable, is bool) string {
	at := ""
	if v.step != nil {
		at = " in step " + v.step.Number
	}
	switch v.kind {
	case anOutcome:
		return "the " + v.hold.Label() + at + choose(is, " failed", " passed")
	case anAnswer:
		return "the " + v.hold.Label() + at + choose(is, " is ", " is not ") + answerWords(v.hold, v.answer)
	}
	return "step " + v.step.Number + choose(is, " is done", " is left out")
}

func choose(is bool, then, otherwise string) string {
	if is {
		return then
	}
	return otherwise
}

func answerWords(h *manual.Hold, key string) string {
	for _, a := range h.Answers {
		if a.Key == key && a.Value != "" {
			return a.Value
		}
	}
	return key
}
