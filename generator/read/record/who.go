package record

import (
	"regexp"
	"slices"
	"strings"

	"baybinder/generator/model"
)

// Worker is one name in a job's field for who works, as it was typed.
type Worker struct {
	Text string
	To   *model.Person // nil where the list of people has nobody of that name
}

var betweenNames = regexp.MustCompile(`\s*[,;/+&]\s*|\s+(?:and|y)\s+`)

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
	if p := PersonNamed(m, text); p != nil {
		return []Worker{{text, p}}
	}
	var out []Worker
	for _, who := range betweenNames.Split(text, -1) {
		if who != "" {
			out = append(out, Worker{who, PersonNamed(m, who)})
		}
	}
	return out
}

// PersonNamed finds a person by id or name, whatever the case; nil where nobody is
// called so.
func PersonNamed(m *model.Manual, text string) *model.Person {
	for _, p := range m.People {
		if text != "" && (strings.EqualFold(p.ID, text) || strings.EqualFold(p.Label(), text)) {
			return p
		}
	}
	return nil
}
