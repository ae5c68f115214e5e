package write

import (
	"slices"
	"strconv"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/patch"
	"baybinder/generator/base/position"
	"baybinder/generator/check"
	"baybinder/generator/check/numbers"
	"baybinder/generator/model"
	"baybinder/generator/offers"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/edit"
)

// Mend names one way to mend a finding: by the finding's code and place, and by
// its number among the ways.
type Mend struct {
	Code string `json:"code"`
	At   int    `json:"at"`
	N    int    `json:"n"`
}

// mend mends a finding that stands.
func mend(b bench, p *model.Procedure, a Act) (string, int, error) {
	for _, f := range b.found {
		if f.Code != a.Mend.Code || f.At.Path() != p.File.Path || f.At.Start != a.Mend.At {
			continue
		}
		if ways := b.Mends(f); a.Mend.N >= 0 && a.Mend.N < len(ways) {
			if edits := ways[a.Mend.N].Edits; within(edits, p.File.Path) {
				return offers.Apply(p.File, edits), f.At.Start, nil
			}
		}
	}
	return "", 0, cannotNow
}

// mostCured is of how many findings of a step the cures are looked for.
const mostCured = 3

// cures are the steps that, written before one, take an error in it away: for
// each finding of the step, by its words.
func (d *Desk) cures(a Asked) (*Told, error) {
	p, err := d.asSeen(a)
	if err != nil {
		return nil, err
	}
	s := findStep(p, a.Act.Step)
	if s == nil {
		return nil, noStep
	}
	b, told, before := d.bench(), &Told{Cures: []Found{}}, Act{Do: "new", Phase: s.Phase.ID}
	for _, x := range p.Steps {
		if x.Parent == s.Parent && x.Phase == s.Phase && x.At.Start < s.At.Start {
			before = Act{Do: "new", After: x.Number}
		}
	}
	for _, f := range b.found {
		here, _ := b.Here(p.File.Path, f.At.Start)
		if f.At.Path() != p.File.Path || here.Step != s || f.Rule.Level != finding.Error || walk.Leaves(f.Rule) || len(told.Cures) == mostCured {
			continue
		}
		said := found(f)
		for _, o := range b.Cures(s, f) {
			act := before
			act.Text = o.Sentence
			said.Ways = append(said.Ways, Way{Title: o.Label, Act: &act})
		}
		if len(said.Ways) > 0 {
			told.Cures = append(told.Cures, said)
		}
	}
	return told, nil
}

func within(edits []offers.Edit, path string) bool {
	return !slices.ContainsFunc(edits, func(e offers.Edit) bool { return e.At.Path() != path })
}

// settled are the rules whose findings a list or a number of the front matter
// mends.
var settled = []*finding.Rule{&check.NotListed, &check.NotUsed, &check.MissingQualification, &numbers.TooFewPeople}

// settle is a procedure's text with its lists as its steps have them now. What
// was found before the writer began stays, and so does what was kept in a list
// then: it is not the writer's edit. b is the manual with the text in it.
func settle(b bench, p *model.Procedure, before map[string]int, kept func(id string) bool) (string, bool) {
	before = clone(before)
	for _, f := range b.found {
		if f.At.Path() != p.File.Path || !slices.Contains(settled, f.Rule) {
			continue
		}
		if key := sameFinding(f); before[key] > 0 {
			before[key]--
			continue
		}
		if f.Rule == &check.NotUsed && kept(f.At.Text()) {
			continue
		}
		if text, ok := settleOne(b, p, f); ok {
			return text, true
		}
	}
	return "", false
}

// unjudged tells of a procedure's lists what no step named, and check could not
// say so of: there was no step, or one had a link to what is not there, which may
// have meant any line.
func unjudged(p *model.Procedure) func(id string) bool {
	if p == nil {
		return func(string) bool { return false }
	}
	links := p.Links()
	doubt := len(p.Steps) == 0 || slices.ContainsFunc(links, func(l *model.Link) bool { return l.ID != "" && l.To == nil && l.Kind.List != model.NoList })
	return func(id string) bool {
		return doubt && !slices.ContainsFunc(links, func(l *model.Link) bool { return l.ID == id })
	}
}

func settleOne(b bench, p *model.Procedure, f finding.Finding) (string, bool) {
	switch f.Rule {
	case &check.MissingQualification:
		var ids []string
		for _, r := range f.Related {
			if id := r.At.Text(); slices.ContainsFunc(b.Manual().Roles, func(x *model.Role) bool { return x.ID == id }) && !slices.Contains(ids, id) {
				ids = append(ids, id)
			}
		}
		piece, ok := edit.Grow(p.File, "needs", ids)
		return grown(p.File, piece, ok && len(ids) > 0)
	case &numbers.TooFewPeople:
		piece, ok := edit.Put(p.File, "people", strconv.Itoa(crew(p)))
		return grown(p.File, piece, ok && crew(p) > max(1, p.People))
	}
	if ways := b.Mends(f); len(ways) > 0 && within(ways[0].Edits, p.File.Path) {
		return offers.Apply(p.File, ways[0].Edits), true
	}
	return "", false
}

func grown(f *position.File, piece patch.Piece, ok bool) (string, bool) {
	if !ok {
		return "", false
	}
	return patch.Applied(f, []patch.Piece{piece}).Text, true
}

// crew is how many people the step with the most has.
func crew(p *model.Procedure) int {
	most := 0
	for _, s := range p.Steps {
		n, _ := s.Crew()
		most = max(most, n)
	}
	return most
}

func clone(m map[string]int) map[string]int {
	out := make(map[string]int, len(m))
	for k, v := range m {
		out[k] = v
	}
	return out
}

// sameFinding tells a finding again in a file that was edited: by its code and
// the words that it stands at.
func sameFinding(f finding.Finding) string { return f.Code + " " + f.At.Text() }

// counted are findings of a file, by what tells them again.
func counted(found []finding.Finding, path string) map[string]int {
	out := map[string]int{}
	for _, f := range found {
		if f.At.Path() == path {
			out[sameFinding(f)]++
		}
	}
	return out
}
