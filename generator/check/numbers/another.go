package numbers

import (
	"math"
	"slices"
	"strings"
	"unicode"

	"baybinder/generator/base/quantity"
	"baybinder/generator/language"
	"baybinder/generator/language/shape"
	"baybinder/generator/model"
)

// another says whether an amount is, by the words around it, not that of what
// the sentence links: of a lamp or a hoist that nobody links, of what should not
// be, of how often or how far apart something is done. The words are those of
// every language, as a shop writes more than one.
func (b *beside) another(text string, q quantity.Found) bool {
	before, behind := wordsBefore(text[:q.Start]), wordsBehind(text[q.End:])
	return (q.Fits(quantity.Length) || q.Fits(quantity.Duration) && b.measuresIn(quantity.Duration)) && b.outOfScale(q.Quantity) || slices.ContainsFunc(language.All(), func(l *shape.Language) bool {
		a := &l.Asides
		switch {
		case endsIn(before, a.Not):
			return true
		case stepped(q) && (endsIn(before, a.Steps) || beginsWith(behind, a.AtATime)):
			return true
		case stepped(q) && inATime(a, behind), moves(a, q, before, behind), endsIn(before, a.Found), endsIn(before, a.PartOf):
			return true
		case q.Fits(quantity.Duration) && endsIn(before, a.Within), q.Fits(quantity.Length) && endsIn(before, a.New), ofTurn(a, before):
			return true
		case q.Fits(quantity.Duration) && (endsIn(before, a.Every) || endsIn(before, a.Added) || beginsWith(behind, a.More)):
			return true
		case q.Fits(quantity.Duration) && perTime(a, behind) && !b.measuresIn(quantity.Duration):
			return true
		case q.Fits(quantity.Length) && (endsIn(before, a.Every) || !b.sold(quantity.Length) && beginsWith(behind, a.Away) && endsIn(before, []string{a.At})):
			return true
		case (endsIn(before, l.Bounds.Below) || endsIn(before, l.Bounds.Above)) && slices.ContainsFunc(b.of.limits, func(limit quantity.Quantity) bool { return quantity.Agrees(q.Quantity, limit) }):
			return true
		}
		return b.ofThing(l, q, unbounded(before, &l.Bounds), behind)
	})
}

// inATime says that an amount is how fast something goes: "0.1 bar every 3 min".
func inATime(a *shape.Asides, behind []string) bool {
	return len(behind) > 1 && slices.Contains(a.Every, behind[0]) && hasFigure(behind[1])
}

// perTime says that an amount is how much of it there is in some time, "1 s a day": of a
// duration that is how wrong a clock goes, and no wait.
func perTime(a *shape.Asides, behind []string) bool {
	_, phrase, is := cutBegin(behind, a.AtATime)
	_, unit := cutLastWord(phrase)
	return is && (isTime(unit) || isTime(strings.ToUpper(unit[:1])+unit[1:])) // "Tag"
}

func isTime(word string) bool {
	found := quantity.Find("1 " + word)
	return len(found) == 1 && (found[0].Fits(quantity.Duration) || found[0].Fits(quantity.Calendar))
}

// measuresIn says that something stated of a kind of amount is what is measured.
func (b *beside) measuresIn(d quantity.Dimension) bool {
	return slices.ContainsFunc(b.rivals, func(r rival) bool {
		h, is := r.of.(*model.Hold)
		return is && h.Kind == "measure" && r.Fits(d)
	})
}

// sold says that an amount of that kind is one of a supply that is linked: "cut 4 m from
// the rope" is no distance.
func (b *beside) sold(d quantity.Dimension) bool {
	return slices.ContainsFunc(b.most, func(r rival) bool { return r.Fits(d) })
}

// moves says that an amount is how far something moves: "drops by 0.2 bar", "pierde 0,2
// bar". What is turned is set by that.
func moves(a *shape.Asides, q quantity.Found, before, behind []string) bool {
	if q.Fits(quantity.Angle) || q.Fits(quantity.Turns) || q.Fits(quantity.Torque) {
		return false
	}
	if rest, _, by := cutEnd(before, a.By); by {
		near := rest[max(0, len(rest)-mostBetween):]
		return slices.ContainsFunc(near, func(w string) bool { return a.Moves[w] }) || len(behind) > 0 && a.Moves[behind[0]]
	}
	return endsIn(before, a.Loses)
}

// mostBetween is how many words stand between what moves and how far.
const mostBetween = 3

// mostOutOfScale is how many times a length, or a time that is measured, can be another
// and still be meant for it.
const mostOutOfScale = 100

// outOfScale says that an amount is far from all that is stated of its kind, and by no
// slip of a unit or a point: the 6 m of a rope whose diameter is measured, the day after
// which the seconds are read that a clock is wrong.
func (b *beside) outOfScale(q quantity.Quantity) bool {
	rivals := rivalsOf(slices.Concat(b.rivals, b.most), q)
	return q.Value != 0 && !slices.ContainsFunc(rivals, func(r rival) bool {
		tens := math.Abs(math.Log10(q.Base() / r.Base()))
		return tens <= math.Log10(mostOutOfScale) || math.Abs(tens-math.Round(tens)) < sameTens
	})
}

// sameTens is how near to a whole power of ten two amounts with the same figures are.
const sameTens = 1e-9

// converts says whether an amount is an end of what makes one kind of amount of
// another: "one turn is 1.5 mm".
func converts(text string, found []amountIn, i int) bool {
	makes := func(one, other int) bool {
		if one < 0 || other >= len(found) || found[other].Fits(found[one].Unit.Dimension()) {
			return false
		}
		between := strings.ToLower(strings.TrimSpace(text[found[one].End:found[other].Start]))
		return inAnyLanguage(func(l *shape.Language) bool { return slices.Contains(l.Asides.Makes, between) })
	}
	return makes(i, i+1) || makes(i-1, i)
}

// ofTurn says that words say what a turn makes of another kind of amount: "one turn of
// the nut gives about". Of how far something is turned they say nothing.
func ofTurn(a *shape.Asides, before []string) bool {
	if n := len(before); n > 1 && a.About[before[n-1]] {
		before = before[:n-1]
	}
	rest, _, makes := cutEnd(before, a.Makes)
	return makes && slices.ContainsFunc(rest, func(w string) bool { return a.Turn[w] })
}

// stepped says that an amount can be how finely a thing is set or read. So much of a
// supply at a time is an amount of it, and so long at a time a wait.
func stepped(q quantity.Found) bool {
	return !q.Fits(quantity.Volume) && !q.Fits(quantity.Mass) && !q.Fits(quantity.Duration)
}

// ofThing says whether an amount is that of a thing which the words name beside
// it and which nobody links: "the 24 V lamp", "una grúa de 500 kg".
func (b *beside) ofThing(l *shape.Language, q quantity.Found, before, behind []string) bool {
	is := func(word string) bool {
		return !b.names[word] && (isOneOf(l, l.Asides.Things, word) ||
			(q.Fits(quantity.Volume) || q.Fits(quantity.Mass)) && isOneOf(l, l.Asides.Vessels, word) ||
			q.Fits(quantity.Voltage) && isOneOf(l, l.Asides.Scales, word) ||
			q.Fits(quantity.Pressure) && isOneOf(l, l.Asides.Media, word))
	}
	if len(behind) > 1 && behind[0] == l.Numbers.Of && is(behind[1]) {
		return true
	}
	if !l.Acts.NounFirst && leadsTo(behind, l.Asides.Breaks, is) {
		return true
	}
	n := len(before)
	if n == 0 {
		return false
	}
	if owner, has := strings.CutSuffix(strings.ReplaceAll(before[n-1], "’", "'"), "'s"); has {
		return is(owner)
	}
	if q.Fits(quantity.Voltage) && n > 1 && endsIn(before, l.Asides.SetTo) && is(before[n-2]) {
		return true
	}
	if !endsIn(before, l.Asides.Of) {
		return false
	}
	before = slices.Clone(before[:n-1])
	slices.Reverse(before)
	if l.Acts.NounFirst { // "garrafa de sosa de 5 L"
		before = slices.DeleteFunc(before, func(w string) bool { return w == l.Numbers.Of })
	}
	return leadsTo(before, l.Asides.Breaks, is)
}

// leadsTo says that the first of the words is one that is looked for, or the
// second, behind a word that belongs to it: "inspection lamp".
func leadsTo(list []string, breaks shape.Set, is func(string) bool) bool {
	for i, word := range list {
		switch {
		case i == 2 || breaks[word]:
			return false
		case is(word):
			return true
		}
	}
	return false
}

// isOneOf says that a word is in a set, or several of one there; where nouns are
// glued together, that it ends in one: "Ölkanne".
func isOneOf(l *shape.Language, set shape.Set, word string) bool {
	has := func(word string) bool {
		if set[word] || !l.Acts.Glued {
			return set[word]
		}
		for one := range set {
			if strings.HasSuffix(word, one) {
				return true
			}
		}
		return false
	}
	return has(word) || slices.ContainsFunc(l.Verbs.Plurals, func(end string) bool { return has(strings.TrimSuffix(word, end)) })
}

// mostWordsAside is how far from an amount a word is looked for.
const mostWordsAside = 5

// wordsBefore are the last words of a text, in small letters, as far as the
// nearest sign that parts a clause or a link.
func wordsBefore(text string) []string {
	list := clauseBefore(text)
	return list[max(0, len(list)-mostWordsAside):]
}

// clauseBefore are all of them.
func clauseBefore(text string) []string {
	return strings.Fields(strings.ToLower(text[strings.LastIndexFunc(text, parts)+1:]))
}

// wordsBehind are the first words of a text, in small letters.
func wordsBehind(text string) []string {
	text = strings.TrimPrefix(text, "-")
	if at := strings.IndexFunc(text, parts); at >= 0 {
		text = text[:at]
	}
	list := strings.Fields(strings.ToLower(strings.ReplaceAll(text, ".", " ")))
	return list[:min(len(list), mostWordsAside)]
}

func parts(c rune) bool {
	return unicode.IsControl(c) && !unicode.IsSpace(c) || strings.ContainsRune(",;:()!?", c)
}

// endsIn says that words end in one of the phrases.
func endsIn(list []string, phrases []string) bool {
	_, _, is := cutEnd(list, phrases)
	return is
}

// cutEnd takes the phrase off in which words end, where it is one of those.
func cutEnd(list []string, phrases []string) (rest []string, phrase string, is bool) {
	for _, p := range phrases {
		left, n := p, len(list)
		for left != "" && n > 0 {
			at := strings.LastIndexByte(left, ' ')
			if left[at+1:] != list[n-1] {
				break
			}
			left, n = left[:max(at, 0)], n-1
		}
		if left == "" {
			return list[:n], p, true
		}
	}
	return list, "", false
}

// beginsWith says that words begin with one of the phrases.
func beginsWith(list []string, phrases []string) bool {
	_, _, is := cutBegin(list, phrases)
	return is
}

// cutBegin takes the phrase off with which words begin, where it is one of those.
func cutBegin(list []string, phrases []string) (rest []string, phrase string, is bool) {
	for _, p := range phrases {
		left, n := p, 0
		for left != "" && n < len(list) {
			word, behind, _ := strings.Cut(left, " ")
			if word != list[n] {
				break
			}
			left, n = behind, n+1
		}
		if left == "" {
			return list[n:], p, true
		}
	}
	return list, "", false
}
