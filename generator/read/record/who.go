package record

import (
	"regexp"
	"slices"
	"strings"

	"baybinder/generator/model"
)

// Worker is one name in a job's field for who works, as it was typed.
type Worker struct {
	Text  string
	To    *model.Person   // nil where the list of people has nobody of that name, or several
	Alike []*model.Person // the several
}

var betweenNames = regexp.MustCompile(`\s*[,;/+&]\s*|\s+(?:and|y|e|und)\s+`)

// Workers are those whom a job names: one, or several. A name that the list of
// people has as a whole is not taken apart.
func Workers(m *model.Manual, j *model.Job) []Worker {
	return named(m, strings.TrimSpace(j.Worker))
}

// Doers are those who did a job: whom it names, and to whom it was handed over,
// each once.
func Doers(m *model.Manual, j *model.Job) []Worker {
	out := Workers(m, j)
	for _, hand := range j.HandOvers {
		for _, who := range slices.Concat(named(m, strings.TrimSpace(hand.From)), named(m, strings.TrimSpace(hand.To))) {
			same := func(w Worker) bool { return w.To == who.To && (w.To != nil || strings.EqualFold(w.Text, who.Text)) }
			if !slices.ContainsFunc(out, same) {
				out = append(out, who)
			}
		}
	}
	return out
}

// named are those whom a text names.
func named(m *model.Manual, text string) []Worker {
	if whole := Named(m, text); whole.To != nil || whole.Alike != nil {
		return []Worker{whole}
	}
	var out []Worker
	for _, who := range betweenNames.Split(text, -1) {
		if who != "" {
			out = append(out, Named(m, who))
		}
	}
	return out
}

// Named is the person of an id or a name, whatever the case. An id is one
// person's; a name that two people have, initials perhaps, says neither.
func Named(m *model.Manual, text string) Worker {
	w := Worker{Text: text}
	if text == "" {
		return w
	}
	for _, p := range m.People {
		switch {
		case strings.EqualFold(p.ID, text):
			return Worker{Text: text, To: p}
		case strings.EqualFold(p.Label(), text):
			w.Alike = append(w.Alike, p)
		}
	}
	if len(w.Alike) == 1 {
		w.To, w.Alike = w.Alike[0], nil
	}
	return w
}
