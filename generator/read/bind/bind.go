// Package bind turns the files of a manual into its model: what was written becomes typed values, and every name leads to what it names.
//
// # Decided where the format is silent
//
// Ids that Windows keeps for itself (con, nul, com1 …) are `bad-id`. A picture from elsewhere is
// `unsafe-link`: pages make no request. A machine link in a procedure without `for:` is
// `unknown-reference`, told once a procedure. A picture in a register is named from the manual's
// folder. A thing of a machine without a name is called by its id. A step's name is the
// step's alone, as an id is. A machine's texts in another language stand by the ids of its things and
// its own, or in sections as in its own file. A front matter that does not parse and holds a line
// `status: draft` is a draft's all the same.
package bind

import (
	"path"
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/parallel"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
	"baybinder/generator/read/decode"
	"baybinder/generator/read/source"
	"baybinder/generator/read/syntax"
)

// binder is one run over a manual's files.
type binder struct {
	notes
	tree *source.Tree
	m    *model.Manual

	tools      *index[model.Tool]
	hazards    *index[model.Hazard]
	holds      *index[model.Hold]
	supplies   *index[model.Supply]
	roles      *index[model.Role]
	machines   *index[model.Machine]
	procedures *index[model.Procedure]
	plans      *index[model.Plan]
	people     *index[model.Person]
	renamed    map[string]*model.Procedure // by an earlier id

	alsoAt    map[string]position.Pos // where the shop names a language
	otherTags map[string]bool         // tags of files that are another region's of one: told

	lost bool // a record could not be read: an answer to it is not unknown

	unsafe map[string]finding.Finding // drawings that are not published
	shown  map[string]bool            // of these, those that an entry shows

	drafts []*draft // procedures whose steps are not bound yet
}

// Manual binds a manual. Everything that could be read is in the model; what
// could not is in the findings, which are in no order.
func Manual(tree *source.Tree) (*model.Manual, []finding.Finding) {
	b := All(tree)
	return b.Manual, b.Findings
}

// Bound is a bound manual, and what it takes to bind one of its files again.
type Bound struct {
	Manual   *model.Manual
	Findings []finding.Finding // in no order
	binder   *binder
}

// All binds a manual as Manual does, and can bind single files again.
func All(tree *source.Tree) *Bound {
	b := newBinder(tree)
	b.problems()
	b.lookThrough()
	b.shop()
	b.registers()
	b.machineFiles()
	b.shopWords()
	b.machineWords()
	b.m.IndexWords()
	b.procedureFiles()
	b.leadRegisters()
	b.leadMachines()
	b.bindProcedures()
	b.translations()
	b.readings()
	b.records()
	b.toldPictures()
	b.drafts = nil
	return &Bound{Manual: b.m, Findings: b.list, binder: b}
}

// Again reads and binds one procedure anew, from what its file holds now. Its
// place in the model stays, so that all that leads to it leads to what it is
// now. The findings are its own alone.
func (b *Bound) Again(p *model.Procedure, f *position.File) []finding.Finding {
	d := readProcedure(f)
	*p = *d.Procedure
	d.Procedure = p
	d.outline(numbers{})
	own := notes{list: slices.Concat(d.reading, d.decoder.Findings)}
	l := newLinker(b.binder, &own, d)
	l.procedure()
	b.binder.pictured(d)
	return own.list
}

// Try reads and binds a procedure as it would be with another text. It stands
// in no manual, and nothing of this one changes; several may be tried at once.
func (b *Bound) Try(f *position.File) (*model.Procedure, []finding.Finding) {
	d := readProcedure(f)
	if d.Language != "" {
		d.Original = b.binder.procedures.byID[d.ID]
	}
	d.outline(numbers{})
	if d.Language != "" {
		d.follow()
	}
	own := notes{list: slices.Concat(d.reading, d.decoder.Findings)}
	newLinker(b.binder, &own, d).procedure()
	return d.Procedure, own.list
}

func newBinder(tree *source.Tree) *binder {
	return &binder{
		tree:       tree,
		m:          &model.Manual{Pictures: map[string]bool{}, Files: tree.Paths},
		tools:      newIndex[model.Tool]("tool", "register/tools.yaml"),
		hazards:    newIndex[model.Hazard]("hazard", "register/hazards.yaml"),
		holds:      newIndex[model.Hold]("hold", "register/holds.yaml"),
		supplies:   newIndex[model.Supply]("supply", "register/supplies.yaml"),
		roles:      newIndex[model.Role]("role", "register/roles.yaml"),
		machines:   newIndex[model.Machine]("machine", "machines/"),
		procedures: newIndex[model.Procedure]("procedure", "procedures/"),
		plans:      newIndex[model.Plan]("reading plan", "readings/plans/"),
		people:     newIndex[model.Person]("person", "readings/people.csv"),
		shown:      map[string]bool{},
		renamed:    map[string]*model.Procedure{},
		alsoAt:     map[string]position.Pos{},
		otherTags:  map[string]bool{},
	}
}

// problems tells of the files that could not be read at all. What would have
// been in them is not missed.
func (b *binder) problems() {
	for _, p := range b.tree.Problems {
		b.add(syntax.Syntax.At(p.File.At(0, 0), "%s", p.Why).WithMend("%s", p.Mend))
		b.brokenFile(p.File.Path)
	}
}

// brokenFile notes that a file could not be read: ids that it may hold are not
// unknown.
func (b *binder) brokenFile(name string) {
	switch dir := path.Dir(name); {
	case name == "register/tools.yaml":
		b.tools.broken = true
	case name == "register/hazards.yaml":
		b.hazards.broken = true
	case name == "register/holds.yaml":
		b.holds.broken = true
	case name == "register/supplies.yaml":
		b.supplies.broken = true
	case name == "register/roles.yaml":
		b.roles.broken = true
	case name == "readings/people.csv":
		b.people.broken = true
	case dir == "machines":
		b.machines.broken = true
	case dir == "readings/plans":
		b.plans.broken = true
	case strings.HasPrefix(name, "procedures"):
		b.procedures.broken = true
	}
}

// yaml reads a file that is one YAML document; nil where it could not be read.
func (b *binder) yaml(f *position.File) *syntax.Node {
	node, findings := syntax.File(f)
	b.list = append(b.list, findings...)
	if node == nil {
		b.brokenFile(f.Path)
	}
	return node
}

// decode runs a decoder over a node and keeps its findings.
func (b *binder) decode(run func(d *decode.Decoder)) {
	d := &decode.Decoder{}
	run(d)
	b.list = append(b.list, d.Findings...)
}

// filesIn lists the text files below a folder that have the ending.
func (b *binder) filesIn(folder, ext string) []*position.File {
	var out []*position.File
	for _, f := range b.tree.Files {
		if strings.HasPrefix(f.Path, folder) && path.Ext(f.Path) == ext {
			out = append(out, f)
		}
	}
	return out
}

func (b *binder) file(name string) *position.File { return b.tree.File(name) }

// firstLine is where a file's own findings stand.
func firstLine(f *position.File) position.Pos { return f.At(0, len(f.Line(1))) }

// fileID judges the id that a file's name makes.
func (b *binder) fileID(id string, f *position.File) {
	b.decode(func(d *decode.Decoder) { d.ID(id, firstLine(f)) })
}

// bindProcedures binds the links of every procedure, some at once.
func (b *binder) bindProcedures() {
	found := make([]notes, len(b.drafts))
	b.outlines()
	parallel.Each(len(b.drafts), func(i int) {
		l := newLinker(b, &found[i], b.drafts[i])
		l.procedure()
		b.drafts[i].doc = nil // ten thousand of them would double the memory
	})
	for i, d := range b.drafts {
		b.list = append(b.list, found[i].list...)
		b.pictured(d)
	}
}

// pictured notes the pictures that a procedure shows.
func (b *binder) pictured(d *draft) {
	for _, name := range d.pictures {
		b.m.Pictures[name] = b.m.Pictures[name] || !d.Draft()
	}
}

func sorted(list []string) []string {
	slices.Sort(list)
	return list
}
