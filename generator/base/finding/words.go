package finding

import (
	"fmt"
	"strings"
)

// Words are a template and what stands at its places. The template is a
// constant of the program, by which the words are found in another language.
// The values are names, ids, links, paths and amounts of the manual, which are
// the same in every language; numbers; and what the program says in words of its
// own, which is Words again or a List.
type Words struct {
	Template string // of package fmt: "%s is listed, and no step uses it"
	Values   []any
}

// Say are words of the program, as the value of other words:
//
//	r.At(at, "%s, and the list has %s", name, finding.Say("no wrench"))
func Say(format string, args ...any) Words { return Words{format, args} }

// Count are the words for one thing or for another number of them, in which
// that number is the first value: Count(n, "%d step", "%d steps").
func Count(n int, one, many string, args ...any) Words {
	if n == 1 {
		many = one
	}
	return Words{many, append([]any{n}, args...)}
}

// String is the words in English.
func (w Words) String() string {
	text, _ := english.Say(w)
	return text
}

// IsZero says that there are no words.
func (w Words) IsZero() bool { return w.Template == "" }

// List are values one behind another. Between the last two stand words of the
// program, such as " and "; "" is a comma, as between the others.
type List struct {
	Items []any
	Last  string
}

// String is the list in English.
func (l List) String() string {
	text, _ := english.list(l)
	return text
}

// ListOf is a list of texts or words: ListOf(" and ", names).
func ListOf[T any](last string, items []T) List {
	l := List{Last: last}
	for _, item := range items {
		l.Items = append(l.Items, item)
	}
	return l
}

// Spoken is a value that says itself in a language, by its BCP 47 tag, "" for
// English: a working, of which a language has the words elsewhere.
type Spoken func(lang string) string

// String is the value in English.
func (s Spoken) String() string { return s("") }

// Sayer is what the program has words for, such as an error.
type Sayer interface{ Says() Words }

// Tongue is a language that findings are told in. The zero value is English.
//
// Texts has each template of the program by its English words, letter by letter:
// those of Rule.At, WithMend and See, those of Say, Count and List inside
// them, and the title, reason and mend of each rule. A template of package fmt
// takes the same values as the English one; where their order is another one, or
// one is left out or said twice, each verb has its index ("%[2]s de %[1]s"). A
// template without a letter ("%s: %s") is the same everywhere and has no entry.
// Values are told before they are filled in: what stands at a %s has no article
// of the language, and neither gender nor number is known of a name.
type Tongue struct {
	Lang  string // BCP 47
	Texts map[string]string
	And   func(next string) string // what stands before the last of a list for " and "; nil for what Texts has
}

var english = &Tongue{}

// Say is words in the language; false where it lacks some of them, and then it
// is English.
func (t *Tongue) Say(w Words) (text string, known bool) {
	if text, known = t.say(w); known || t.Lang == "" {
		return text, known
	}
	text, _ = english.Say(w)
	return text, false
}

func (t *Tongue) say(w Words) (text string, known bool) {
	template, known := t.text(w.Template)
	if len(w.Values) == 0 {
		return strings.ReplaceAll(template, "%%", "%"), known
	}
	values := make([]any, len(w.Values))
	for i, v := range w.Values {
		said, has := t.value(v)
		values[i], known = said, known && has
	}
	return fmt.Sprintf(template, values...), known
}

// Rule is a rule with its title, reason and mend in the language; as it is where
// the language lacks one of them.
func (t *Tongue) Rule(r *Rule) *Rule {
	said, all := *r, true
	for _, text := range []*string{&said.Title, &said.Why, &said.Mend} {
		here, known := t.say(Words{Template: *text})
		*text, all = here, all && known
	}
	if !all {
		return r
	}
	return &said
}

// text is a template in the language. One without a letter is the same in all.
func (t *Tongue) text(template string) (string, bool) {
	if t.Lang == "" || !hasWords(template) {
		return template, true
	}
	here, known := t.Texts[template]
	return here, known
}

// hasWords says that a template has words besides its values.
func hasWords(template string) bool {
	for i := 0; i < len(template); i++ {
		switch c := template[i]; {
		case c == '%':
			for i++; i < len(template) && strings.IndexByte("+-# 0.[]123456789", template[i]) >= 0; i++ {
			}
		case c >= 'a' && c <= 'z', c >= 'A' && c <= 'Z':
			return true
		}
	}
	return false
}

func (t *Tongue) value(v any) (any, bool) {
	switch v := v.(type) {
	case Words:
		return t.say(v)
	case List:
		return t.list(v)
	case Spoken:
		return v(t.Lang), true
	case Sayer:
		return t.say(v.Says())
	}
	return v, true
}

func (t *Tongue) list(l List) (string, bool) {
	var out strings.Builder
	all := true
	for i, item := range l.Items {
		said, known := t.value(item)
		text := fmt.Sprint(said)
		all = all && known
		switch {
		case i == 0:
		case i < len(l.Items)-1 || l.Last == "":
			out.WriteString(", ")
		default:
			last, known := t.last(l.Last, text)
			out.WriteString(last)
			all = all && known
		}
		out.WriteString(text)
	}
	return out.String(), all
}

// last is what stands before the last of a list.
func (t *Tongue) last(words, next string) (string, bool) {
	if words == " and " && t.And != nil {
		return t.And(next), true
	}
	return t.text(words)
}

// Tell is a finding in the language; as it is where the language lacks some of
// its words.
func (t *Tongue) Tell(f Finding) Finding {
	if t.Lang == "" {
		return f
	}
	said, all := f, true
	put := func(to *string, w Words) {
		if !w.IsZero() {
			text, known := t.say(w)
			*to, all = text, all && known
		}
	}
	put(&said.Message, f.Says)
	put(&said.Mend, f.Asks)
	said.Related = make([]Place, len(f.Related))
	for i, r := range f.Related {
		said.Related[i] = r
		put(&said.Related[i].Message, r.Says)
	}
	if !all {
		return f
	}
	said.Lang = t.Lang
	return said
}

// TellAll tells findings in the language, in their order.
func (t *Tongue) TellAll(list []Finding) []Finding {
	if t.Lang == "" {
		return list
	}
	out := make([]Finding, len(list))
	for i, f := range list {
		out[i] = t.Tell(f)
	}
	return out
}
