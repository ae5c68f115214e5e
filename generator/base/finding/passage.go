package finding

import (
	"fmt"
	"strings"
)

// Passage is a stretch of a report that is told in one language.
type Passage struct {
	Lang string `json:"lang"` // BCP 47; "" is English
	Text string `json:"text"` // with the ends of its lines
}

// Plain is passages as one text.
func Plain(list []Passage) string {
	var text strings.Builder
	for _, p := range list {
		text.WriteString(p.Text)
	}
	return text.String()
}

// report is passages one behind another, and what the next is told in.
type report struct {
	tongue   *Tongue
	passages []Passage
}

// add puts a text behind the last passage, or into it where that is of the same
// language.
func (r *report) add(lang, text string) {
	if n := len(r.passages); n > 0 && r.passages[n-1].Lang == lang {
		r.passages[n-1].Text += text
		return
	}
	r.passages = append(r.passages, Passage{lang, text})
}

// same is a text that belongs to the passage before it, such as the end of a line.
func (r *report) same(text string) {
	if n := len(r.passages); n > 0 {
		r.passages[n-1].Text += text
		return
	}
	r.add(r.tongue.Lang, text)
}

// manual is a text of the manual's own.
func (r *report) manual(format string, args ...any) {
	r.add(r.tongue.Lang, fmt.Sprintf(format, args...))
}

// phrase is words of the report; English where its language lacks them.
func (r *report) phrase(format string, args ...any) {
	text, known := r.tongue.Say(Say(format, args...))
	lang := r.tongue.Lang
	if !known {
		lang = ""
	}
	r.add(lang, text)
}

func (r *report) lines() int {
	n := 0
	for _, p := range r.passages {
		n += strings.Count(p.Text, "\n")
	}
	return n
}

// take puts another report behind.
func (r *report) take(other *report) {
	for _, p := range other.passages {
		r.add(p.Lang, p.Text)
	}
}

// around is what the words around a finding are told in: as it is told itself, so
// that one that is told in English for want of words is English, whole.
func (r *report) around(f Finding) *Tongue {
	if f.Lang != r.tongue.Lang {
		return english
	}
	return r.tongue
}
