package bind

import (
	"path"
	"regexp"
	"strings"

	"baybinder/generator/base/arena"
	"baybinder/generator/base/finding"
	"baybinder/generator/base/nearest"
	"baybinder/generator/base/parallel"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
	"baybinder/generator/read/decode"
	"baybinder/generator/read/syntax"
)

// draft is a procedure on its way: its front matter is read, its links are not
// bound.
type draft struct {
	*model.Procedure
	doc      *syntax.Document
	decoder  decode.Decoder
	reading  []finding.Finding
	pictures []string
	unsafe   []string // drawings that are not published
	steps    arena.Of[model.Step]
	done     int // steps that ended
}

// procedureFiles reads procedures/, some files at once.
func (b *binder) procedureFiles() {
	files := b.filesIn("procedures/", ".md")
	read := make([]*draft, len(files))
	parallel.Each(len(files), func(i int) { read[i] = readProcedure(files[i]) })
	for _, d := range read {
		b.list = append(b.list, d.reading...)
		b.list = append(b.list, d.decoder.Findings...)
		if d.Language != "" {
			b.translated(d)
		} else if b.firstOfItsID(d) {
			b.drafts = append(b.drafts, d)
			b.m.Procedures = append(b.m.Procedures, d.Procedure)
		}
	}
	for _, p := range b.m.Procedures {
		for _, old := range p.Was {
			if b.renamed[old] == nil {
				b.renamed[old] = p
			}
		}
	}
}

func readProcedure(f *position.File) *draft {
	doc, findings := syntax.Read(f)
	id, language := stem(f.Path)
	d := &draft{doc: doc, reading: findings, Procedure: &model.Procedure{
		Entry: model.Entry{ID: id, At: doc.FrontAt},
		File:  f, Language: language, Broken: doc.Broken, Topic: topic(f.Path),
	}}
	switch {
	case doc.Front == nil:
	case !strings.HasPrefix(f.Text, "---"):
		d.reading = append(d.reading, decode.MissingField.At(doc.FrontAt, "this procedure has no front matter, and so no title").
			WithMend("begin the file with three lines: ---, title: …, ---; baybinder begin procedure ID writes a file that has them"))
	default:
		d.decoder.Struct(doc.Front, d.Procedure, finding.Say("the front matter"), doc.FrontAt)
	}
	if d.People == 0 {
		d.People = 1
		d.nobody()
	}
	if d.Status == "" {
		d.Status = "issued"
		if d.Broken && saysDraft.MatchString(f.Text) {
			d.Status = "draft" // a half-written front matter is a draft all the same
		}
	}
	return d
}

// nobody tells of a job for no people at all.
func (d *draft) nobody() {
	if n := d.doc.Front.Get("people"); n != nil && n.Text == "0" {
		d.Lose("people")
		d.decoder.Findings = append(d.decoder.Findings, decode.WrongType.At(n.At, "a job takes at least one person").WithMend("write people: 1, or take the line out"))
	}
}

var saysDraft = regexp.MustCompile(`(?m)\A---\n(?:.*\n)*?status:[ \t]*draft[ \t]*(?:#.*)?$`)

// topic is the folders between procedures/ and the file.
func topic(name string) string {
	dir := path.Dir(name)
	if dir == "procedures" {
		return ""
	}
	return strings.TrimPrefix(dir, "procedures/")
}

// firstOfItsID says whether the procedure stands: of two with one id the first
// by path does. An id that cannot be used is told here, and not again where the
// procedure is named.
func (b *binder) firstOfItsID(d *draft) bool {
	b.fileID(d.ID, d.File)
	if first := b.procedures.byID[d.ID]; first != nil {
		b.add(syntax.DuplicateID.At(d.At, "a second procedure %s", d.ID).
			WithMend("give one of the two files another name").See(first.At, "the first is here"))
		return false
	}
	b.procedures.byID[d.ID] = d.Procedure
	return true
}

// translated keeps procedures/**/<id>.<lang>.md, the first by path of two.
func (b *binder) translated(d *draft) {
	if !b.knownLanguage(d.Language, d.File) {
		return
	}
	for _, p := range b.m.Translated {
		if p.ID == d.ID && p.Language == d.Language {
			b.add(syntax.DuplicateID.At(d.At, "a second translation of %s into %s", d.ID, d.Language).
				WithMend("take one of the two files away").See(p.At, "the first is here"))
			return
		}
	}
	b.m.Translated = append(b.m.Translated, d.Procedure)
	b.drafts = append(b.drafts, d)
}

// outlines makes the phases and steps of every procedure, those of originals
// first: a translation takes from its original what is not for reading.
func (b *binder) outlines() {
	n := numbers{}
	for _, d := range b.drafts {
		if d.Language == "" {
			d.outline(n)
		}
	}
	for _, d := range b.drafts {
		if d.Language != "" {
			d.Original = b.procedures.byID[d.ID]
			d.outline(n)
			d.follow()
		}
	}
}

// follow gives a translation the machine and the phase ids of its original: an
// address such as reverse:strip is the same in every language.
func (d *draft) follow() {
	from := d.Original
	if from == nil {
		return
	}
	if d.For.ID == "" {
		d.For = from.For
	}
	for i, phase := range d.Phases {
		if i < len(from.Phases) {
			phase.ID = from.Phases[i].ID
		}
	}
}

// translations judges that every translation has an original.
func (b *binder) translations() {
	for _, p := range b.m.Translated {
		if _, f := b.procedures.find(p.ID, p.At); f != nil {
			f.Message = "there is no procedure " + p.ID + " that this translates"
			b.add(*f)
		}
	}
}

// front makes the references of a front matter lead.
func (l *linker) front() {
	d := l.draft
	r := reader{l.notes, &d.Entry}
	if d.Original == nil || d.For.At != d.Original.For.At {
		lead(r, "for", l.machines, &d.For)
	} else {
		d.For.To = l.machines.byID[d.For.ID] // told at the original where there is none
	}
	lead(r, "instead", l.procedures, &d.Instead)
	leadAll(r, "needs", l.roles, d.Needs)
	leadUses(r, "tools", l.tools, d.Tools)
	leadUses(r, "supplies", l.supplies, d.Supplies)
	leadAll(r, "holds", l.holds, d.Holds)
	for i := range d.Hazards {
		l.hazardUse(&d.Hazards[i])
	}
	l.states(d.Expects)
	l.states(d.Leaves)
}

func (l *linker) hazardUse(use *model.HazardUse) {
	r := reader{l.notes, &l.draft.Entry}
	lead(r, "hazards", l.hazards, &use.Ref)
	if use.Over != nil {
		leadAll(r, "hazards.wear", l.tools.asking(", kind: ppe"), use.Over.Wear)
	}
	use.Met = override(use.To, use.Over)
}

// override is a hazard as a procedure meets it.
func override(h *model.Hazard, over *model.HazardOverride) *model.Hazard {
	if h == nil || over == nil {
		return h
	}
	met := *h
	set := func(field *string, text string) {
		if text != "" {
			*field = text
		}
	}
	set(&met.Nature, over.Nature)
	set(&met.Harm, over.Harm)
	set(&met.Happens, over.Happens)
	set(&met.Consequence, over.Consequence)
	set(&met.Symbol, over.Symbol)
	set(&met.FirstAid, over.FirstAid)
	if len(over.Avoid) > 0 {
		met.Avoid = over.Avoid
	}
	if over.WearSaid {
		met.Wear = over.Wear
	}
	return &met
}

// StateWordsOf are the words of expects and leaves by what they are said of.
func StateWordsOf(n model.Named) []string {
	switch n.(type) {
	case *model.Point:
		return []string{"live", "isolated", "locked"}
	case *model.Energy:
		return []string{"live", "isolated", "locked", "released", "dead"}
	case *model.Part:
		return []string{"on", "off"}
	case *model.Fastener:
		return []string{"tight", "loose"}
	case *model.Fluid:
		return []string{"full", "low", "unbled"}
	case *model.Tool:
		return []string{"placed", "cleared"}
	case *model.Setting:
		return []string{"altered", "reset"}
	}
	return nil
}

// states binds the lines of expects or leaves.
func (l *linker) states(states []model.State) {
	for i := range states {
		s := &states[i]
		s.Thing = l.stateThing(s)
		if s.Thing == nil || s.Unknown {
			s.Unknown = true
			continue
		}
		if words := StateWordsOf(s.Thing); !contains(words, s.Word) {
			s.Unknown = true
			l.add(decode.WrongType.At(s.WordAt, "%s cannot be %q", s.Thing.Label(), s.Word).
				WithMend("write one of: %s", strings.Join(words, ", ")))
		}
	}
}

// stateThing is what a line of expects or leaves speaks of: a thing of the
// machine, or a tool that stays in place.
func (l *linker) stateThing(s *model.State) model.Named {
	if thing := l.machine().Find(s.ID); thing != nil && StateWordsOf(thing) != nil {
		return thing
	}
	if tool := l.tools.byID[s.ID]; tool != nil {
		return tool
	}
	if l.machineUnread() || l.tools.broken || l.machine() != nil && l.machine().Lost("points", "energies", "parts", "fasteners", "fluids", "settings") {
		return nil
	}
	what := finding.Say("a tool")
	if m := l.machine(); m != nil {
		what = finding.Say("a thing of the %s, or a tool", m.Label())
	}
	f := UnknownReference.At(s.At, "%s is not %s", s.ID, what)
	near := l.stateNear(s.ID)
	if near == nil {
		l.add(f.WithMend("write for: with the machine, and the id as the machine's file has it"))
		return nil
	}
	l.add(f.WithMend("did you mean %s?", near.Base().ID))
	s.Unknown = true
	return near
}

// stateNear is the thing that a line of expects or leaves was probably meant
// for; nil where there is none.
func (l *linker) stateNear(id string) model.Named {
	ids := l.tools.ids()
	if m := l.machine(); m != nil {
		for _, n := range things(m) {
			if StateWordsOf(n) != nil {
				ids = append(ids, n.Base().ID)
			}
		}
	}
	near := nearest.Of(id, ids)
	if thing := l.machine().Find(near); thing != nil && StateWordsOf(thing) != nil {
		return thing
	}
	if tool := l.tools.byID[near]; tool != nil {
		return tool
	}
	return nil
}

func contains(list []string, s string) bool {
	for _, x := range list {
		if x == s {
			return true
		}
	}
	return false
}
