package generator

import (
	"bytes"
	"context"
	"errors"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/show/page"
	"baybinder/generator/show/publish"
	"baybinder/generator/show/readings"
	"baybinder/theme"
)

// namesPeople is the file by which a folder of readings is known: names must
// never be written where a site is served from.
const namesPeople = "names-people.txt"

// readingsLeaves are the pages that name people: a folder of their own.
func readingsLeaves(r *readings.Readings) []leaf {
	m := r.Manual
	all := []leaf{
		{"index.html", func(w *bytes.Buffer) { theme.WriteReadingsFront(w, r.Front()) }},
		{"matrix.html", func(w *bytes.Buffer) { theme.WriteMatrix(w, r.Matrix()) }},
		{"procedures/index.html", func(w *bytes.Buffer) { theme.WriteProcedureList(w, r.ProcedureIndex()) }},
	}
	all = each(all, m.Plans, func(w *bytes.Buffer, p *model.Plan) { theme.WriteAssignment(w, r.Assignment(p)) })
	for _, p := range m.Plans {
		all = append(all, leaf{readings.PlanMatrixPage(p), func(w *bytes.Buffer) { theme.WriteMatrix(w, r.PlanMatrix(p)) }})
	}
	for _, p := range m.People {
		all = append(all,
			leaf{readings.PersonPage(p), func(w *bytes.Buffer) { theme.WritePerson(w, r.Person(p)) }},
			leaf{readings.AgainPage(p), func(w *bytes.Buffer) { theme.WriteAgainSheet(w, r.Again(p)) }})
	}
	for _, j := range r.Counted() {
		all = append(all, leaf{r.RecordPageOf(j), func(w *bytes.Buffer) { theme.WriteRecord(w, r.RecordWithNames(j)) }})
	}
	for _, p := range r.Procedures {
		all = append(all,
			leaf{page.PageOf(p), func(w *bytes.Buffer) { theme.WriteProcedureReaders(w, r.Procedure(p)) }},
			leaf{readings.SignInPage(p), func(w *bytes.Buffer) { theme.WriteSignIn(w, r.SignIn(p)) }},
			leaf{readings.ExercisePage(p), func(w *bytes.Buffer) { theme.WriteExercise(w, r.Exercise(p, false)) }},
			leaf{readings.AnswersPage(p), func(w *bytes.Buffer) { theme.WriteExercise(w, r.Exercise(p, true)) }})
	}
	return all
}

// beginReadings starts the folder of the readings. A site is never replaced by
// pages that name people: it may be served from there.
func beginReadings(folder string, waiting func(who string)) (*publish.Site, error) {
	if _, err := os.Stat(filepath.Join(folder, "index.html")); err == nil {
		if _, err := os.Stat(filepath.Join(folder, namesPeople)); err != nil {
			return nil, finding.Refuse("%s holds pages that are no readings, and the readings name people: name another folder with --readings", folder)
		}
	}
	return publish.Begin(folder, waiting)
}

func writeReadings(ctx context.Context, folder *publish.Site, r *Result, s *pages) error {
	all := finished(s.Site, readingsLeaves(readings.Of(s.procedure)))
	if err := putPages(ctx, folder, all, nil); err != nil {
		return err
	}
	r.ReadingsPages = len(all)
	files, err := theme.Files(spoken(r.Manual.Shop)...)
	if err != nil {
		return err
	}
	for name, data := range files {
		if strings.HasSuffix(name, ".css") { // these pages run nothing
			if err := folder.Put("theme/"+name, data); err != nil {
				return err
			}
		}
	}
	return folder.Put(namesPeople, []byte("The pages in this folder name people. They are not part of the manual's site: do not publish them.\n"))
}

// separate refuses folders of which one holds the other, or is it: a folder in
// the manual would be read as part of it, and one in the site published.
func separate(o Options) error {
	readings, err := realPath(o.Readings)
	if err != nil {
		return err
	}
	for _, other := range []struct {
		what finding.Words
		path string
	}{{finding.Say("the manual"), o.Manual}, {finding.Say("the site"), o.To}} {
		path, err := realPath(other.path)
		if err != nil {
			return err
		}
		if holds(path, readings) || holds(readings, path) {
			return finding.Refuse("the readings' folder %s and %s in %s must not hold each other: name another folder with --readings", o.Readings, other.what, other.path)
		}
	}
	return nil
}

func holds(outer, inner string) bool {
	rel, err := filepath.Rel(outer, inner)
	return err == nil && rel != ".." && !strings.HasPrefix(rel, ".."+string(filepath.Separator))
}

// realPath is a path without links, as far as it exists.
func realPath(name string) (string, error) {
	full, err := filepath.Abs(name)
	if err != nil {
		return "", err
	}
	var rest []string
	for at := full; ; at = filepath.Dir(at) {
		real, err := filepath.EvalSymlinks(at)
		switch {
		case err == nil:
			slices.Reverse(rest)
			return filepath.Join(append([]string{real}, rest...)...), nil
		case !errors.Is(err, os.ErrNotExist) || at == filepath.Dir(at):
			return "", err
		}
		rest = append(rest, filepath.Base(at))
	}
}
