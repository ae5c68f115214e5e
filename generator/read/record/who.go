package record

import (
	"regexp"
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
	text := strings.TrimSpace(j.Worker)
	if p := personNamed(m, text); p != nil {
		return []Worker{{text, p}}
	}
	var out []Worker
	for _, who := range betweenNames.Split(text, -1) {
		if who != "" {
			out = append(out, Worker{who, personNamed(m, who)})
		}
	}
	return out
}

// personNamed finds a person by id or name, whatever the case.
func personNamed(m *model.Manual, text string) *model.Person {
	for _, p := range m.People {
		if text != "" && (strings.EqualFold(p.ID, text) || strings.EqualFold(p.Label(), text)) {
			return p
		}
	}
	return nil
}
