package bind

import (
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/nearest"
	"baybinder/generator/base/parallel"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
	"baybinder/generator/read/record"
	"baybinder/generator/read/syntax"
)

// answersFile is where the writer answers who said that a step is wrong.
const answersFile = "records/answers.csv"

// records reads the jobs that were done, and the writer's answers. A job whose
// procedure is not there any more is kept: what is said of that is said by a
// rule, for a change of the manual is no fault of the record.
func (b *binder) records() {
	files := b.filesIn("records/", ".json")
	if len(files) > 0 {
		b.readJobs(files)
	}
	b.answers()
}

func (b *binder) readJobs(files []*position.File) {
	r := record.NewReader()
	jobs, found := make([]*model.Job, len(files)), make([]notes, len(files))
	parallel.Each(len(files), func(i int) { jobs[i], found[i].list = r.Read(files[i]) })
	for i, j := range jobs {
		b.list = append(b.list, found[i].list...)
		if j == nil {
			b.lost = true
			continue
		}
		j.To = b.procedures.byID[j.Procedure]
		if j.To == nil {
			j.To = b.renamed[j.Procedure]
		}
		j.Silent = j.To == nil && b.procedures.broken
		b.m.Jobs = append(b.m.Jobs, j)
	}
}

// answers reads the answers. One of a record that is not there, or of a step
// that nobody said anything of, reaches nobody: it is told.
func (b *binder) answers() {
	byName := map[string]*model.Job{}
	var names []string
	for _, j := range b.m.Jobs {
		byName[j.Name] = j
		names = append(names, j.Name)
	}
	b.table(answersFile, syntax.Columns{Need: []string{"record", "step", "date", "answer"}}, func(row map[string]syntax.Cell, _ string) {
		a := model.Answer{At: row["record"].At, Step: row["step"].Text, Date: b.day(row["date"]), Words: row["answer"].Text}
		a.Record = strings.TrimSuffix(strings.TrimPrefix(row["record"].Text, "records/"), ".json")
		a.To = byName[a.Record]
		switch {
		case a.To == nil && b.lost:
		case a.To == nil:
			f := UnknownReference.At(a.At, "there is no record %s in records/", a.Record)
			if near := nearest.Of(a.Record, names); near != "" {
				f = f.WithMend("did you mean %s?", near)
			}
			b.add(f)
		case !noted(a.To, a.Step):
			b.add(UnknownReference.At(row["step"].At, "in that record nobody said that step %s is wrong", a.Step).
				WithMend("%s", notedSteps(a.To)))
		}
		b.m.Answers = append(b.m.Answers, a)
	})
}

func noted(j *model.Job, step string) bool {
	for _, n := range j.Notes {
		if n.Step == step {
			return true
		}
	}
	return false
}

func notedSteps(j *model.Job) finding.Words {
	var steps []string
	for _, n := range j.Notes {
		steps = append(steps, n.Step)
	}
	if len(steps) == 0 {
		return finding.Say("the record holds no such note; take the row out")
	}
	return finding.Say("write the step of the note: %s", strings.Join(steps, ", "))
}
