package begin

import (
	"fmt"
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/nearest"
	"baybinder/generator/base/position"
	"baybinder/generator/check"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// Reached is a procedure that reaches a part.
type Reached struct {
	Path    string          // its file inside the manual
	Off     []*model.Part   // what comes off, in order
	Missing []finding.Words // what the registers lack for it to be right, in words
}

// Reach writes a procedure that reaches a part of a machine: what makes it
// safe, what comes off, a place for the work, the refit and the return. It is
// a draft: the work is not written, and nobody has walked it through. What it
// lacks stands in it as a comment.
func Reach(n New) (*Reached, error) {
	r, text, err := ReachText(n)
	if err != nil {
		return nil, err
	}
	return r, n.write(text)
}

// ReachText is what Reach writes, unwritten.
func ReachText(n New) (*Reached, string, error) {
	tree, m, err := n.read()
	if err != nil {
		return nil, "", err
	}
	machine, part, err := n.target(m)
	if err != nil {
		return nil, "", err
	}
	r, err := newReach(m, machine, part)
	if err != nil {
		return nil, "", err
	}
	r.compose()
	if len(r.missing) == 0 {
		// What a name or a number in the registers does to the text cannot be
		// foreseen; the checks see it.
		for _, f := range n.faults(tree, r.text(n.title())) {
			r.lack("%s (%s)", f.Says, f.Code)
		}
	}
	return &Reached{Path: n.path(), Off: r.off, Missing: r.missing}, r.text(n.title()), nil
}

// faults are what the checks and the walk find in the procedure, were it
// written.
func (n New) faults(tree *source.Tree, text string) []finding.Finding {
	with := &source.Tree{Root: tree.Root, Paths: tree.Paths, Problems: tree.Problems}
	file := position.NewFile(n.path(), text)
	with.Files = append(slices.Clone(tree.Files), file)
	slices.SortFunc(with.Files, func(a, b *position.File) int { return strings.Compare(a.Path, b.Path) })
	m, found := bind.Manual(with)
	found = slices.Concat(found, walk.All(m).Findings(m), check.Run(&check.Context{Manual: m, Today: n.Today}))
	found = slices.DeleteFunc(found, func(f finding.Finding) bool { return f.At.File != file })
	return finding.Sort(found)
}

// target finds the machine and its part.
func (n New) target(m *model.Manual) (*model.Machine, *model.Part, error) {
	if n.Machine == "" {
		return nil, nil, finding.Refuse("a part is one of a machine: name the machine with --for")
	}
	machine := model.ByID(m.Machines, n.Machine)
	if !machine.Whole() {
		return nil, nil, finding.Refuse("%s could not be read as a whole: baybinder check says what to mend in it first", machine.At.Path())
	}
	if part := model.ByID(machine.Parts, n.Part); part != nil {
		return machine, part, nil
	}
	ids := model.IDs(machine.Parts)
	switch near := nearest.Of(n.Part, ids); {
	case near != "":
		return nil, nil, finding.Refuse("%s has no part %s: did you mean %s?", machine.ID, n.Part, near)
	case len(ids) == 0:
		return nil, nil, finding.Refuse("%s has no part %s: it has no parts", machine.ID, n.Part)
	}
	return nil, nil, finding.Refuse("%s has no part %s: its parts are %s", machine.ID, n.Part, strings.Join(ids, ", "))
}

// reach works out a procedure that reaches a part. It reads the bound manual
// and nothing else.
type reach struct {
	*way
	manual  *model.Manual
	cuts    []*cut
	paper   *document
	missing []finding.Words
}

func newReach(m *model.Manual, machine *model.Machine, part *model.Part) (*reach, error) {
	way, err := findWay(machine, part)
	if err != nil {
		return nil, err
	}
	r := &reach{way: way, manual: m, paper: &document{Speech: speechOf(m), tongue: tongueOf(m), machine: machine, locks: m.Shop.Locks}}
	for _, p := range way.touched() {
		r.unread(p)
	}
	r.cuts = r.findCuts()
	return r, nil
}

// lack notes what is missing, once.
func (r *reach) lack(format string, args ...any) {
	what := finding.Say(format, args...)
	if !slices.ContainsFunc(r.missing, func(w finding.Words) bool { return w.String() == what.String() }) {
		r.missing = append(r.missing, what)
	}
}

// unread notes a thing that could not be read as a whole: what it is under, or
// what must be dead, may be just what is missing.
func (r *reach) unread(n model.Named) {
	if n.Base().Misread {
		r.lack("%s, as it should be in %s: baybinder check says what cannot be read", n.Base().ID, r.machine.At.Path())
	}
}

// text is the whole file.
func (r *reach) text(title string) string {
	summary := fmt.Sprintf(r.paper.Summary, r.to.Label())
	return r.paper.front(title, summary, r.missing) + r.paper.body.String()
}

// compose writes the body, phase by phase.
func (r *reach) compose() {
	p := r.paper
	fmt.Fprintf(&p.body, p.Intro+"\n", p.named("part", r.to))
	if len(r.here) > 0 {
		p.lead = fmt.Sprintf(p.UnitsOnly, p.units(r.here))
	}
	r.makeSafe()
	r.strip()
	p.phase(p.Work)
	p.say(nil, fmt.Sprintf(p.SayWork, p.named("part", r.to)))
	r.refit()
	r.giveBack()
}
