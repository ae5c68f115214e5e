package check

import (
	"regexp"
	"strings"

	"baybinder/generator/bind"
	"baybinder/generator/finding"
	"baybinder/generator/manual"
	"baybinder/generator/nearest"
	"baybinder/generator/record"
)

// runRecordPerson judges who did a job, where the shop keeps a list of people.
// A job without a name is nobody's, and says so itself.
func runRecordPerson(c *Context) []finding.Finding {
	if len(c.Manual.People) == 0 {
		return nil
	}
	var names []string
	for _, p := range c.Manual.People {
		names = append(names, p.ID, p.Label())
	}
	var found []finding.Finding
	for _, j := range record.Counted(c.Manual.Jobs, c.Today) {
		for _, who := range workers(c.Manual, j.Worker) {
			if personNamed(c.Manual, who) != nil {
				continue
			}
			f := bind.UnknownPerson.At(j.WorkerAt, "%s, who did this job, is not in readings/people.csv", who)
			f.Level = finding.Advice // the list is of people in training, and a name typed at the bay is no id
			if near := nearest.Of(who, names); near != "" {
				found = append(found, f.WithMend("did you mean %s?", near))
				continue
			}
			found = append(found, f.WithMend("add the person, or write the name as people.csv has it"))
		}
	}
	return found
}

var betweenNames = regexp.MustCompile(`\s*[,;/+&]\s*|\s+(?:and|y)\s+`)

// workers are the people in the field for who works: one name, or several.
func workers(m *manual.Manual, text string) []string {
	text = strings.TrimSpace(text)
	if text == "" || personNamed(m, text) != nil {
		return nil
	}
	var out []string
	for _, who := range betweenNames.Split(text, -1) {
		if who != "" {
			out = append(out, who)
		}
	}
	return out
}

// personNamed finds a person by id or name, whatever the case.
func personNamed(m *manual.Manual, text string) *manual.Person {
	for _, p := range m.People {
		if strings.EqualFold(p.ID, text) || strings.EqualFold(p.Label(), text) {
			return p
		}
	}
	return nil
}
