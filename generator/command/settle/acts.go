package settle

import (
	"cmp"
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/patch"
	"baybinder/generator/base/position"
	"baybinder/generator/check"
	"baybinder/generator/language"
	"baybinder/generator/model"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/jotting"
	"baybinder/generator/read/source"
	"baybinder/generator/read/syntax"
)

// candidate is words that certainly say a link, and the link.
type candidate struct {
	of      *model.Procedure
	id      string // what is acted on: the acts on one thing stand or fall together
	address string
	at      position.Pos
}

func (c candidate) pieces() []patch.Piece {
	return []patch.Piece{{At: c.at.Start, Text: "["}, {At: c.at.End, Text: "](" + c.address + ")"}}
}

// actor makes links of words, as long as no error comes of it.
type actor struct {
	tree  *source.Tree
	today model.Date

	accepted []candidate
	errors   map[string]int // of the manual with what is accepted
}

// acts gives the tree with links for the acts, tools and supplies that its
// procedures certainly say in words, what was put in and what was left.
func acts(tree *source.Tree, m *model.Manual, today model.Date) (*source.Tree, map[string]*acted) {
	a := &actor{tree: tree, today: today}
	told := map[string]*acted{}
	var pending []candidate
	for _, p := range m.Procedures {
		list, offers := said(m, p)
		if len(list)+len(offers) > 0 {
			told[p.File.Path] = &acted{file: p.File, offers: offers}
		}
		pending = append(pending, list...)
	}
	if len(pending) > 0 {
		_, a.errors = a.try(nil)
		pending = a.take(pending)
	}
	for _, c := range a.accepted {
		told[c.of.File.Path].done = append(told[c.of.File.Path].done, c)
	}
	for _, c := range pending {
		told[c.of.File.Path].left = append(told[c.of.File.Path].left, c)
	}
	return a.with(a.accepted), told
}

// take accepts what brings no error: all at once, else procedure by procedure,
// else thing by thing, again and again until nothing more is accepted. It gives
// back the rest.
func (a *actor) take(pending []candidate) []candidate {
	for changed := true; changed && len(pending) > 0; {
		before := len(pending)
		pending = a.accept(pending, func(candidate) string { return "" })
		if len(pending) == before {
			pending = a.accept(pending, func(c candidate) string { return c.of.ID })
		}
		if len(pending) == before {
			pending = a.accept(pending, func(c candidate) string { return c.of.ID + " " + c.id })
		}
		changed = len(pending) < before
	}
	return pending
}

// accept tries candidates by groups, in reading order, and gives back those
// that would bring an error.
func (a *actor) accept(pending []candidate, group func(candidate) string) (rest []candidate) {
	var names []string
	byName := map[string][]candidate{}
	for _, c := range pending {
		name := group(c)
		if byName[name] == nil {
			names = append(names, name)
		}
		byName[name] = append(byName[name], c)
	}
	for _, name := range names {
		if errors, now := a.try(byName[name]); !errors {
			a.accepted, a.errors = append(a.accepted, byName[name]...), now
			continue
		}
		rest = append(rest, byName[name]...)
	}
	return rest
}

// try says whether errors come of more links, and which errors there are then.
func (a *actor) try(more []candidate) (grown bool, errors map[string]int) {
	tree := a.with(slices.Concat(a.accepted, more))
	m, _ := bind.Manual(tree)
	tree = listed(tree, m, check.Run(&check.Context{Manual: m, Today: a.today}))
	m, found := bind.Manual(tree)
	errors = map[string]int{}
	for _, f := range append(found, check.Run(&check.Context{Manual: m, Today: a.today})...) {
		if f.Level == finding.Error {
			errors[f.At.File.Path+" "+f.Code]++
		}
	}
	for key, n := range errors {
		grown = grown || n > a.errors[key]
	}
	return grown, errors
}

// listed is a tree with the lists of its front matters completed.
func listed(tree *source.Tree, m *model.Manual, found []finding.Finding) *source.Tree {
	byPath := map[string][]patch.Piece{}
	for _, p := range m.Procedures {
		t := &text{manual: m, procedure: p, found: inFile(found, p.File)}
		t.lists()
		if len(t.inserts) > 0 {
			byPath[p.File.Path] = t.inserts
		}
	}
	return patched(tree, byPath)
}

// with is the tree with links for candidates.
func (a *actor) with(list []candidate) *source.Tree {
	byPath := map[string][]patch.Piece{}
	for _, c := range list {
		byPath[c.of.File.Path] = append(byPath[c.of.File.Path], c.pieces()...)
	}
	return patched(a.tree, byPath)
}

func patched(tree *source.Tree, byPath map[string][]patch.Piece) *source.Tree {
	out := &source.Tree{Root: tree.Root, Paths: tree.Paths, Problems: tree.Problems, Files: slices.Clone(tree.Files)}
	for i, f := range out.Files {
		if pieces := byPath[f.Path]; len(pieces) > 0 {
			out.Files[i] = patch.Applied(f, pieces)
		}
	}
	return out
}

// said finds what a procedure certainly says in words, and what it could say.
// A translation has the links of its original, so it is not looked at.
func said(m *model.Manual, p *model.Procedure) ([]candidate, []Note) {
	reader := jotting.New(m, p.For.To, tagOf(m))
	if reader == nil || p.Broken || p.Misread || p.Status == "retired" || p.For.ID != "" && p.For.To == nil {
		return nil, nil
	}
	var out []candidate
	var offers []Note
	for _, s := range p.Steps {
		reader.Begin()
		for i := range s.Blocks {
			b := &s.Blocks[i]
			if b.Role != model.Said || !b.Instructs() {
				continue
			}
			list, more := saidIn(reader, p, b)
			out, offers = append(out, list...), append(offers, more...)
		}
	}
	return sound(p, out), offers
}

func tagOf(m *model.Manual) string { return cmp.Or(m.Shop.Language, language.Default().Code) }

func saidIn(reader *jotting.Reader, p *model.Procedure, b *model.Block) (out []candidate, offers []Note) {
	words := b.At.Text()
	reading := reader.Among(words, b.Links, b.At.Start, jotting.Quoted(words))
	for _, l := range reading.Links {
		if kindIsUse(l.Kind) || l.Act {
			out = append(out, candidate{p, l.ID, l.Address(), b.At.Part(l.Start, l.End)})
		}
	}
	for _, o := range reading.Offers {
		if len(o.Addresses) > 0 && o.Why != jotting.AWait {
			at := b.At.Part(o.Start, o.End)
			offers = append(offers, Note{at, finding.Say("%s could be %s: %s", words[o.Start:o.End], finding.ListOf(" or ", o.Addresses), finding.Say(o.Why))})
		}
	}
	return out, offers
}

func kindIsUse(kind string) bool { return kind == model.LinkTool || kind == string(jotting.Supply) }

// sound leaves out what Markdown would not read as this link and no other.
func sound(p *model.Procedure, list []candidate) []candidate {
	before, _ := syntax.Read(p.File)
	fine := func(list []candidate) bool {
		var pieces []patch.Piece
		for _, c := range list {
			pieces = append(pieces, c.pieces()...)
		}
		after, _ := syntax.Read(patch.Applied(p.File, pieces))
		return len(addresses(after)) == len(addresses(before))+len(list)
	}
	if fine(list) {
		return list
	}
	return slices.DeleteFunc(list, func(c candidate) bool { return !fine([]candidate{c}) })
}

// acted is what was made of the words of one file.
type acted struct {
	file       *position.File // as it was
	done, left []candidate
	offers     []Note
	states     []state
}

// pieces are what is put into the file.
func (a *acted) pieces() []patch.Piece {
	if a == nil {
		return nil
	}
	var out []patch.Piece
	for _, s := range a.states {
		if piece, ok := s.piece(); ok {
			out = append(out, piece)
		}
	}
	for _, c := range a.done {
		out = append(out, c.pieces()...)
	}
	return out
}

// notes tells in a file with the links in it what was done and what was left.
func (a *acted) notes(t *text) {
	if a == nil {
		return
	}
	at := func(p position.Pos) position.Pos {
		by := 0
		for _, piece := range a.pieces() {
			if piece.At <= p.Start {
				by += len(piece.Text)
			}
		}
		return t.procedure.File.At(p.Start+by, p.End+by)
	}
	for _, s := range a.states {
		t.done(t.procedure.File.At(0, 0), "wrote %s: { %s }", s.field, strings.Join(s.lines, ", "))
	}
	slices.SortStableFunc(a.done, func(x, y candidate) int { return x.at.Start - y.at.Start })
	for _, c := range a.done {
		t.done(at(c.at), "made %s of %q", c.address, c.at.Text())
	}
	for _, c := range a.left {
		t.leave(at(c.at), "%q says %s, and with that link the check finds an error: see what is missing beside it", c.at.Text(), c.address)
	}
	for _, n := range a.offers {
		t.left = append(t.left, Note{at(n.At), n.Says})
	}
}
