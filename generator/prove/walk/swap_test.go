package walk_test

import (
	"fmt"
	"regexp"
	"sort"
	"strings"
	"sync/atomic"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator/base/draws"
	"baybinder/generator/base/needed"
	"baybinder/generator/derive/schedule"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// Two steps side by side that, as the schedule says, touch nothing in common
// may be done in either order: the walk finds the same faults and leaves the
// machine the same.
func TestFreeStepsMayBeSwapped(t *testing.T) {
	var swapped atomic.Int64
	draws.Check(t, 50, firstSeed, func(t *rapid.T) {
		files := drawManual(t)
		m, found := bind.Manual(source.FromText(files))
		readable(t, files, found)
		before := walk.Everything(m)
		book := schedule.NewCache(before)
		for _, p := range m.Procedures {
			for _, phase := range p.Phases {
				for i := 1; i < len(phase.Steps); i++ {
					a, b := phase.Steps[i-1], phase.Steps[i]
					if !book.Free(a, b) {
						continue
					}
					other := swappedText(files, p, a, b)
					if other == nil {
						continue
					}
					swapped.Add(1)
					n, _ := bind.Manual(source.FromText(other))
					after := walk.Everything(n)
					q := procedureOf(n, p.ID)
					if x, y := outcome(before, p), outcome(after, q); x != y {
						t.Fatalf("%s: steps %s and %s are not free:\n%s\nand swapped\n%s\n%s", p.ID, a.Number, b.Number, x, y, show(files))
					}
				}
			}
		}
	})
	if needed.InCI() && swapped.Load() == 0 { // there the draws are the same each time
		t.Error("no steps were swapped")
	}
}

func procedureOf(m *model.Manual, id string) *model.Procedure {
	for _, p := range m.Procedures {
		if p.ID == id {
			return p
		}
	}
	return nil
}

// swappedText is a manual with the texts of two steps, one after another, in
// the other order; nil where one is indented, and would be read as a sub-step, and
// where the second has sub-steps, which would become those of the first.
func swappedText(files map[string]string, p *model.Procedure, a, b *model.Step) map[string]string {
	out := map[string]string{}
	for name, text := range files {
		out[name] = text
	}
	name := "procedures/" + p.ID + ".md"
	text := files[name]
	start := strings.LastIndex(text[:a.At.Start+1], "\n") + 1
	middle := strings.LastIndex(text[:b.At.Start+1], "\n") + 1
	if text[start] == ' ' || text[middle] == ' ' {
		return nil
	}
	end := len(text)
	if i := strings.Index(text[middle:], "\n## "); i >= 0 {
		end = middle + i
	}
	for _, s := range b.Phase.Steps {
		if s.At.Start > b.At.Start {
			end = strings.LastIndex(text[:s.At.Start+1], "\n") + 1
			if text[end] == ' ' {
				return nil
			}
			break
		}
	}
	out[name] = text[:start] + text[middle:end] + text[start:middle] + text[end:]
	return out
}

var (
	stepNumber    = regexp.MustCompile(`step [0-9.]+`)
	betweenClause = regexp.MustCompile(`,? (and|where|on) |, `)
)

// outcome is what the walk of a procedure finds, and how it leaves things,
// whatever the places, and in whatever order the conditions of a state are named.
func outcome(r *walk.Result, p *model.Procedure) string {
	var out []string
	for _, f := range r.Of(p).Findings {
		if !strings.HasPrefix(f.Code, "left-") { // told together at the first; how things stand says the same
			out = append(out, f.Code)
		}
	}
	for _, s := range r.Stand(p, nil) {
		out = append(out, fmt.Sprint(s.Label(), " ", s.Word, " ", s.When))
	}
	for i, line := range out {
		clauses := betweenClause.Split(stepNumber.ReplaceAllString(line, "step"), -1)
		sort.Strings(clauses)
		out[i] = strings.Join(clauses, ", ")
	}
	sort.Strings(out)
	return strings.Join(out, "\n")
}
