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

// report is passages one behind another, and what the next is told in.
type report struct {
	tongue   *Tongue // nil is English
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
	r.add(r.lang(), text)
}

// manual is a text of the manual's own.
func (r *report) manual(format string, args ...any) { r.add(r.lang(), fmt.Sprintf(format, args...)) }

// phrase is words of the report; English where its language lacks them.
func (r *report) phrase(format string, args ...any) {
	tongue := r.tongue
	if tongue == nil {
		tongue = english
	}
	text, known := tongue.Say(Say(format, args...))
	lang := tongue.Lang
	if !known {
		lang = ""
	}
	r.add(lang, text)
}

func (r *report) lang() string {
	if r.tongue == nil {
		return ""
	}
	return r.tongue.Lang
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
	if r.tongue == nil || f.Lang != r.tongue.Lang {
		return english
	}
	return r.tongue
}
