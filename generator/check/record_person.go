package check

import (
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/nearest"
	"baybinder/generator/model"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/record"
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
		for _, who := range record.Workers(c.Manual, j) {
			if who.To != nil {
				continue
			}
			if len(who.Alike) > 0 {
				found = append(found, alike(j, who))
				continue
			}
			f := bind.UnknownPerson.At(j.WorkerAt, "%s, who did this job, is not in readings/people.csv", who.Text)
			f.Level = finding.Advice // the list is of people in training, and a name typed at the bay is no id
			if near := nearest.Of(who.Text, names); near != "" {
				found = append(found, f.WithMend("did you mean %s?", near))
				continue
			}
			found = append(found, f.WithMend("add the person, or write the name as people.csv has it"))
		}
	}
	return found
}

// alike tells a name that several people have: whoever is meant, nobody is taken
// for them.
func alike(j *model.Job, who record.Worker) finding.Finding {
	f := bind.UnknownPerson.At(j.WorkerAt, "%s, who did this job, is the name of several people: %s", who.Text, strings.Join(model.IDs(who.Alike), ", "))
	f.Level = finding.Advice
	return f.WithMend("give them names in readings/people.csv that differ; at the bay, write the id")
}
