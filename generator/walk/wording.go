package walk

import (
	"slices"
	"strings"

	"baybinder/generator/manual"
)

// literal1 is one condition of a case.
type literal1 struct {
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
		for _, l := range some {
			_ = l
		}
		rest = w.andNot(rest, w.cube(some))
	}
	if len(cases) == 4 {
		cases[3] = "in other cases"
	}
	return strings.Join(cases, ", or ")
}

// simplest is a case in which f holds, with the conditions that are not needed
// left out.
func (w *walk) simplest(f, rest fn) []literal1 {
	var some []literal1
	for v, value := range w.path(rest) {
		some = append(some, literal1{v, value})
	}
	// An absent option is the first to be left out: what a unit has says more.
	slices.SortFunc(some, func(a, b literal1) int {
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
	slices.SortFunc(some, func(a, b literal1) int { return int(a.v - b.v) })
	return some
}

func (w *walk) cube(some []literal1) fn {
	f := yes
	for _, l := range some {
		f = w.and(f, w.literal(l.v, l.value))
	}
	return f
}

// caseWords puts a case into words: the unit first, then what happened.
func (w *walk) caseWords(some []literal1) string {
	var unit, happened []string
	for _, l := range some {
		v := w.vars[l.v]
		if v.kind == anOption {
			with := "without "
			if l.value == 1 {
				with = "with "
			}
			unit = append(unit, with+w.optionWords(v.option))
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
	switch v.kind {
	case anOutcome:
		if is {
			return "the " + v.hold.Label() + " failed"
		}
		return "the " + v.hold.Label() + " passed"
	case anAnswer:
		if is {
			return "the " + v.hold.Label() + " is " + answerWords(v.hold, v.answer)
		}
		return "the " + v.hold.Label() + " is not " + answerWords(v.hold, v.answer)
	}
	if is {
		return "step " + v.step.Number + " is done"
	}
	return "step " + v.step.Number + " is left out"
}

func answerWords(h *manual.Hold, key string) string {
	for _, a := range h.Answers {
		if a.Key == key && a.Value != "" {
			return a.Value
		}
	}
	return key
}
