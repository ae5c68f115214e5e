package write

import (
	"strings"

	"baybinder/generator/language"
	"baybinder/generator/language/shape"
	"baybinder/generator/model"
)

// facts are what an entry says, a line each, in the shop's language: a value by
// itself where it says enough, otherwise behind what a form asks for it.
func facts(b bench, n model.Named) []string {
	f := factsIn{l: language.Of(b.Manual().Shop.Language)}
	switch n := n.(type) {
	case *model.Tool:
		f.say(f.word(n.Kind), strings.Join(n.Fits, ", "), written(n.Range), n.Kept)
	case *model.Supply:
		f.say(n.Unit, n.Kept)
	case *model.Hazard:
		f.say(n.Nature, n.Consequence)
	case *model.Hold:
		f.say(f.word(n.Kind), n.What, written(n.For), written(n.Limit))
	case *model.Energy:
		f.say(f.word(n.Kind))
		f.asked("points", labels(n.Points))
	case *model.Point:
		f.say(n.Where)
	case *model.Part:
		f.asked("under", labels(n.Under))
		f.asked("held-by", amounts(n.HeldBy))
	case *model.Fastener:
		f.say(written(n.AcrossFlats), written(n.Torque))
	case *model.Fluid:
		f.say(written(n.Capacity))
	case *model.Setting:
		f.say(n.Value)
	case *model.Procedure:
		f.say(n.Summary)
	}
	return f.lines
}

// factsIn are facts in the words of a language.
type factsIn struct {
	l     *shape.Language
	lines []string
}

// say adds values that say enough by themselves.
func (f *factsIn) say(values ...string) {
	for _, v := range values {
		if v = strings.TrimSpace(v); v != "" {
			f.lines = append(f.lines, v)
		}
	}
}

// asked adds a value behind what a form asks for it.
func (f *factsIn) asked(field, value string) {
	if value == "" {
		return
	}
	question := f.l.Write.Fields[field]
	if !strings.HasSuffix(question, "?") {
		question += ":"
	}
	f.lines = append(f.lines, question+" "+value)
}

// word is a value of the format in the words of the language.
func (f *factsIn) word(value string) string { return wordOf(f.l, value) }

func wordOf(l *shape.Language, value string) string {
	if label := l.Write.Values[value]; label != "" {
		return label
	}
	return l.Words.Kinds[value]
}

// written is a value as it is written; "" where there is none.
func written(v interface {
	IsZero() bool
	String() string
}) string {
	if v.IsZero() {
		return ""
	}
	return v.String()
}

// amounts are the fasteners that hold a part, with how many.
func amounts(list []model.Use[model.Fastener]) string {
	var out []string
	for _, u := range list {
		out = append(out, strings.TrimSpace(u.Amount+" "+labelOr(u.To, u.ID)))
	}
	return strings.Join(out, ", ")
}

// labels are the names of what a list names.
func labels[T any, P interface {
	*T
	model.Named
}](refs []model.Ref[T]) string {
	var out []string
	for _, r := range refs {
		out = append(out, labelOr(P(r.To), r.ID))
	}
	return strings.Join(out, ", ")
}

func labelOr[T any, P interface {
	*T
	model.Named
}](to P, id string) string {
	if to == nil {
		return id
	}
	return to.Label()
}
