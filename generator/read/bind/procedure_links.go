package bind

import (
	"net/url"
	"strings"
	"unicode/utf8"

	"golang.org/x/text/unicode/norm"

	"baybinder/generator/base/nearest"
	"baybinder/generator/model"
	"baybinder/generator/read/syntax"
)

func (l *linker) toProcedure(link *model.Link) {
	split(link, link.Kind.Frag)
	link.ID = decoded(link.ID)
	if link.Sign != 0 {
		link.Besides().Frag = decoded(link.Frag())
	}
	named(l, link, l.procedures)
	to, _ := link.To.(*model.Procedure)
	if to == nil || link.Sign == 0 {
		return
	}
	if link.Besides().Step = to.FindStep(link.Frag()); link.Step() == nil && !to.Broken {
		l.noStep(link, to)
	}
}

// noStep tells of a step that a procedure does not have.
func (l *linker) noStep(link *model.Link, in *model.Procedure) {
	var names []string
	for _, s := range in.Steps {
		if s.Name != "" {
			names = append(names, s.Name)
		}
	}
	f := UnknownReference.At(link.At, "%s has no step %s", in.Label(), link.Frag())
	if near := nearest.Of(link.Frag(), names); near != "" {
		f = f.WithMend("did you mean %s?", near).WithFix(link.Frag(), near)
	} else {
		f = f.WithMend("name the step there with [](step:%s)", syntax.PlainID(link.Frag()))
	}
	l.bad(link, f)
}

func (l *linker) toPost(link *model.Link) {
	var names []string
	posts := l.draft.Posts
	if l.draft.Original != nil {
		posts = l.draft.Original.Posts
	}
	for _, p := range posts {
		if p.Key == link.ID {
			return
		}
		names = append(names, p.Key)
	}
	if l.draft.Broken || l.draft.Lost("posts") {
		link.Bad = true
		return
	}
	f := UnknownReference.At(link.At, "the procedure has no post %s", link.ID)
	if near := nearest.Of(link.ID, names); near != "" {
		f = f.WithMend("did you mean %s?", near)
	} else {
		f = f.WithMend("write it in the front matter: posts: { %s: where the person stands }", syntax.PlainID(link.ID))
	}
	l.bad(link, f)
}

// decoded is a part of an address without percent signs (RFC 3986, 2.1), its
// letters put together as an id has them. What is no such encoding stays.
func decoded(part string) string {
	if plain, err := url.PathUnescape(part); err == nil && utf8.ValidString(plain) {
		part = plain
	}
	return norm.NFC.String(part)
}

// phaseCalled finds a phase by its id, else the one phase whose id it was while
// ids were of a to z alone.
func (l *linker) phaseCalled(id string) *model.Phase {
	if ph := l.draft.FindPhase(id); ph != nil {
		return ph
	}
	var was *model.Phase
	for i, ph := range l.draft.Phases {
		if syntax.PlainID(l.draft.doc.Phases[i].Title.Plain) != id || id == "" {
			continue
		}
		if was != nil {
			return nil
		}
		was = ph
	}
	return was
}

// toPhase binds reverse:PHASE, reverse:PHASE#PART and reverse:PHASE!PART,PART.
func (l *linker) toPhase(link *model.Link) {
	split(link, link.Kind.Frag)
	link.ID = decoded(link.ID)
	if link.Besides().Phase = l.phaseCalled(link.ID); link.Phase() == nil {
		var ids []string
		for _, p := range l.draft.Phases {
			ids = append(ids, p.ID)
		}
		f := UnknownReference.At(link.At, "the procedure has no phase %s", link.ID)
		if near := nearest.Of(link.ID, ids); near != "" {
			f = f.WithMend("did you mean %s?", near)
		} else if len(ids) > 0 {
			f = f.WithMend("its phases are: %s", strings.Join(ids, ", "))
		} else {
			f = f.WithMend("it has no phases yet: write one above its steps, such as ## Strip")
		}
		l.bad(link, f)
		return
	}
	if link.Sign == 0 || !l.hasMachine(link) {
		return
	}
	for _, id := range strings.Split(link.Frag(), ",") {
		part, ok := l.thing(link, id).(*model.Part)
		if !ok {
			return
		}
		link.Besides().Parts = append(link.Parts(), part)
	}
	if link.Sign == '#' {
		link.Besides().Part = link.Parts()[0]
	}
}

func (l *linker) toOption(link *model.Link) {
	id, not := strings.CutPrefix(link.ID, "!")
	link.ID, link.Not = id, not
	if !l.hasMachine(link) {
		return
	}
	if _, known := l.machine().Option(id); known {
		return
	}
	link.Bad = true
	if !l.machineUnread() {
		l.addIf(unknownOption(l.machine(), id, link.At))
	}
}
