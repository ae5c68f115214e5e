package bind

import (
	"path"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
)

// picture binds an image.
func (l *linker) picture(link *model.Link, scheme string, has bool) {
	if has {
		l.bad(link, UnsafeLink.At(link.At, "a picture from %s: is not shown: the pages fetch nothing from elsewhere", scheme).
			WithMend("put the picture into pictures/ and write its path from this file"))
		return
	}
	name, ok := l.inside(link.Address)
	if !ok {
		l.bad(link, MissingPicture.At(link.At, "there is no picture %s in the manual", orNothing(link.Address)).WithMend("%s", l.nearFile(name, finding.Say("write its path from this file, as in ../../pictures/seat.svg"))))
		return
	}
	link.Kind, link.ID = model.PictureLink, name
	l.publish(link, name)
}

// publish notes a file that a page shows or leads to. What is not published is
// told, and on the page its words stand alone.
func (l *linker) publish(link *model.Link, name string) {
	why, mend := l.publishable(name, fromFile)
	_, unsafe := l.unsafe[name]
	if why.IsZero() && !unsafe {
		l.draft.pictures = append(l.draft.pictures, name)
		return
	}
	link.Kind, link.Bad = model.UnknownLink, true
	if !why.IsZero() {
		l.add(UnsafeLink.At(link.At, "%s", why).WithMend("%s", mend))
		return
	}
	l.draft.unsafe = append(l.draft.unsafe, name)
}

// file binds a relative address: another procedure's file is that procedure.
func (l *linker) file(link *model.Link) {
	name, ok := l.inside(link.Address)
	if !ok {
		l.bad(link, BrokenLink.At(link.At, "there is no file %s in the manual", orNothing(link.Address)).WithMend("%s", l.nearFile(name, finding.Say("write its path from this file; a link to a procedure is best written see:its-id"))))
		return
	}
	link.Kind, link.ID = model.FileLink, name
	if id, _ := stem(name); strings.HasPrefix(name, "procedures/") && path.Ext(name) == ".md" {
		if to := l.procedures.byID[id]; to != nil {
			link.To = to
			return
		}
	}
	l.publish(link, name)
}

func orNothing(address string) finding.Words {
	if address == "" {
		return finding.Say("(the address is empty)")
	}
	return finding.Say("%s", address)
}

// inside is the path inside the manual that a relative address leads to.
func (l *linker) inside(address string) (string, bool) {
	address, _, _ = strings.Cut(address, "#")
	address, _, _ = strings.Cut(address, "?")
	if address == "" || strings.HasPrefix(address, "/") {
		return address, false
	}
	address = strings.ReplaceAll(address, "%20", " ")
	name := path.Join(path.Dir(l.draft.File.Path), address)
	return name, l.tree.Has(name)
}

// nearFile offers the file of the same name elsewhere in the manual.
func (l *linker) nearFile(name string, otherwise finding.Words) finding.Words {
	base := path.Base(name)
	best := ""
	for have := range l.tree.Paths {
		if path.Base(have) == base && base != "." && (best == "" || have < best) {
			best = have
		}
	}
	if best == "" {
		return otherwise
	}
	up := strings.Repeat("../", strings.Count(l.draft.File.Path, "/"))
	return finding.Say("did you mean %s?", up+best)
}
