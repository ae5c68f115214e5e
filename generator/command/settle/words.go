package settle

import (
	"cmp"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/patch"
	"baybinder/generator/language"
	"baybinder/generator/model"
	"baybinder/generator/read/edit"
	"baybinder/generator/read/syntax"
)

// words writes the register's words into the empty links.
func (t *text) words() {
	var inserts []patch.Piece
	var did []Note
	for _, link := range links(t.procedure) {
		words := t.wordsFor(link)
		switch at, empty := hollow(link); {
		case !empty || words == "":
		case t.severalAt(link, words):
			t.leave(link.At, "%q would stand behind %q, which is said of several: write the words of %s yourself", words, lastWord(textBefore(link)), link.Address)
		default:
			inserts = append(inserts, patch.Piece{At: at, Text: edit.LinkText(words)})
			did = append(did, Note{At: link.At, Says: finding.Say("wrote \"%s\" into %s", words, link.Address)})
		}
	}
	if len(inserts) == 0 {
		return
	}
	if !t.sameLinks(inserts) {
		t.leave(t.procedure.At, "its empty links could not be filled without changing others")
		return
	}
	t.inserts = append(t.inserts, inserts...)
	t.did = append(t.did, did...)
}

// severalAt says that a mention stands behind a word for several of a thing whose
// name is that of one: "the four bolt". Its plural is the writer's to say. What the
// check asks for is written as it stands.
func (t *text) severalAt(link *model.Link, name string) bool {
	spoken := language.Known(cmp.Or(t.procedure.Language, tagOf(t.manual)))
	return spoken != nil && !link.Kind.Worded && spoken.OfSeveral(lastWord(textBefore(link)), name)
}

func textBefore(link *model.Link) string { return link.At.File.Text[:link.At.Start] }

// lastWord is the word that stands right before the end of a text, in its line.
func lastWord(text string) string {
	line := text[strings.LastIndexByte(text, '\n')+1:]
	words := strings.Fields(line)
	if len(words) == 0 || !strings.HasSuffix(line, " ") {
		return ""
	}
	return words[len(words)-1]
}

// hollow says whether a link has no words, and where they would go.
func hollow(link *model.Link) (at int, empty bool) {
	rest, opens := strings.CutPrefix(link.At.File.Text[link.At.Start:], "[")
	inside, _, closes := strings.Cut(rest, "]")
	return link.At.Start + 1, opens && closes && strings.TrimSpace(inside) == ""
}

// wordsFor is what an empty link prints, or "" where it is not one of those
// that name a thing: an act, a time or a condition is a sign for the program,
// and its words would disturb the sentence.
func (t *text) wordsFor(link *model.Link) string {
	if link.Bad || link.To == nil || !mentions(link.Kind) {
		return ""
	}
	if t.procedure.Language == "" {
		return join(link.To.Label())
	}
	return join(t.translated(link))
}

func mentions(k *model.Kind) bool {
	if k.Worded {
		return true
	}
	switch k.Target {
	case model.ToTool, model.ToSupply, model.ToRole, model.ToEnergy, model.ToPoint, model.ToPart,
		model.ToFastener, model.ToFluid, model.ToSetting, model.ToMachine:
		return k.Act == model.NoAct
	default: // the others are no concern of this
	}
	return false
}

// translated is the name of a register's entry in the procedure's language; a
// name in the wrong language is worse than none.
func (t *text) translated(link *model.Link) string {
	register := registerOf(link.To)
	for _, w := range t.manual.Words {
		if w.Language == t.procedure.Language && w.Register == register && w.ID == link.ID && len(w.Texts["name"]) > 0 {
			return w.Texts["name"][0]
		}
	}
	return ""
}

func registerOf(n model.Named) string {
	switch n.(type) {
	case *model.Tool:
		return "tools"
	case *model.Hazard:
		return "hazards"
	case *model.Hold:
		return "holds"
	case *model.Supply:
		return "supplies"
	case *model.Role:
		return "roles"
	}
	return ""
}

func join(words string) string { return strings.Join(strings.Fields(words), " ") }

// links are the links of a procedure, without those of its headings: words
// there would change the phase's id, which reverse: names.
func links(p *model.Procedure) []*model.Link {
	var all []*model.Link
	add := func(blocks ...model.Block) {
		for _, b := range blocks {
			all = append(all, b.Links...)
		}
	}
	add(p.Intro...)
	for _, phase := range p.Phases {
		if phase.Lead != nil {
			add(*phase.Lead)
		}
		for _, part := range phase.Body {
			if part.Prose != nil {
				add(*part.Prose)
			}
		}
	}
	for _, s := range p.Steps {
		add(s.Blocks...)
	}
	return all
}

// sameLinks says whether the pieces leave every link what it is. A name can
// hold anything, and Markdown has many signs.
func (t *text) sameLinks(inserts []patch.Piece) bool {
	before, _ := syntax.Read(t.procedure.File)
	after, _ := syntax.Read(patch.Applied(t.procedure.File, inserts))
	a, b := addresses(before), addresses(after)
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if a[i] != b[i] {
			return false
		}
	}
	return true
}

// addresses are those of a document's links, in reading order.
func addresses(d *syntax.Document) []string {
	var all []string
	add := func(blocks ...model.Block) {
		for _, b := range blocks {
			for _, link := range b.Links {
				all = append(all, link.Address)
			}
		}
	}
	var item func(i *syntax.Item)
	item = func(i *syntax.Item) {
		add(i.Blocks...)
		for _, sub := range i.Subs {
			item(sub)
		}
	}
	add(d.Intro...)
	for _, p := range d.Phases {
		add(p.Title)
		if p.Lead != nil {
			add(*p.Lead)
		}
		for _, part := range p.Body {
			if part.Item != nil {
				item(part.Item)
				continue
			}
			add(*part.Block)
		}
	}
	return all
}
