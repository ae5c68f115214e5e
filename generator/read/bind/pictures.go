package bind

import (
	"bytes"
	"net/url"
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/parallel"
	"baybinder/generator/base/picture"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
	"baybinder/generator/read/syntax"
)

// MissingPicture is told at the link or the field that names it.
var MissingPicture = finding.Rule{
	Code:  "missing-picture",
	Title: "A picture that is not in the manual",
	Why:   "A step that says \"as shown\" and shows nothing is guessed at.",
	Mend:  "Put the picture into pictures/, or write its path from this file.",
}

// lookThrough looks at the pictures of the manual, some at once: how large each is,
// and which drawings would run or fetch something; these are not published.
func (b *binder) lookThrough() {
	var names []string
	for name := range b.tree.Paths {
		if picture.Inside(name) && picture.Kind(name) {
			names = append(names, name)
		}
	}
	slices.Sort(names)
	found, sizes := make([]*finding.Finding, len(names)), make([]picture.Size, len(names))
	parallel.Each(len(names), func(i int) {
		if picture.IsSVG(names[i]) {
			sizes[i], found[i] = b.lookAt(names[i])
		} else {
			sizes[i] = b.sizeOf(names[i])
		}
	})
	b.unsafe, b.m.Sizes = map[string]finding.Finding{}, map[string]picture.Size{}
	for i, f := range found {
		if f != nil {
			b.unsafe[names[i]] = *f
		}
		if sizes[i] != (picture.Size{}) {
			b.m.Sizes[names[i]] = sizes[i]
		}
	}
}

// sizeOf reads the head of a picture. What cannot be read is told where it is
// copied.
func (b *binder) sizeOf(name string) picture.Size {
	f, err := b.tree.Open(name)
	if err != nil {
		return picture.Size{}
	}
	defer f.Close()
	return picture.SizeOf(name, f)
}

// lookAt reads a drawing.
func (b *binder) lookAt(name string) (picture.Size, *finding.Finding) {
	data, err := b.tree.Bytes(name)
	if err != nil {
		return picture.Size{}, nil // what cannot be read is told where it is copied
	}
	size, fault := picture.SizeOf(name, bytes.NewReader(data)), picture.SVG(data)
	if fault == nil {
		return size, nil
	}
	file := position.NewFile(name, string(data))
	at := min(fault.At, len(file.Text))
	f := UnsafeLink.At(file.At(at, at), "this drawing is not published: %s", fault.Why).
		WithMend("take it out, or save the drawing as a plain SVG of lines, fills and texts")
	return size, &f
}

// Where a path to a picture begins.
var fromFile, fromManual = finding.Say("from this file"), finding.Say("from the manual's folder")

// publishable says why a file is not published, and what to do; no words where it is.
// What is in a drawing is told at the drawing. A copy is named by its path from there.
func (b *binder) publishable(name string, from finding.Words) (why, mend finding.Words) {
	switch {
	case !picture.Inside(name):
		return finding.Say("%s is not in pictures/, and only what is there is published", name), finding.Say("put a copy that everybody may see into pictures/, and write its path %s", from)
	case !picture.Kind(name):
		return finding.Say("%s is of a kind that is not published: a browser could run it", name), finding.Say("save it as a picture or a PDF, in pictures/")
	}
	return finding.Words{}, finding.Words{}
}

// toldPictures tells of the drawings that are not published, each once. Where
// only drafts show one it is advice, as all that is found in drafts.
func (b *binder) toldPictures() {
	for name, f := range b.unsafe {
		level, used := finding.Advice, b.shown[name]
		if used {
			level = finding.Error
		}
		for _, d := range b.drafts {
			if slices.Contains(d.unsafe, name) {
				used = true
				if !d.Draft() {
					level = finding.Error
				}
			}
		}
		if used {
			f.Level = level
			b.add(f)
		}
	}
}

// shopAddress judges where the site is served: links are printed that begin
// with it.
func (b *binder) shopAddress(s *model.Shop, node *syntax.Node) {
	n := node.Get("address")
	if n == nil || s.Address == "" {
		return
	}
	u, err := url.Parse(s.Address)
	if err == nil && (u.Scheme == "http" || u.Scheme == "https") && u.Host != "" && !strings.ContainsAny(s.Address, " \"<>") {
		return
	}
	b.add(UnsafeLink.At(n.At, "address: is where the site is served, and %q is no page with http: or https:", s.Address).
		WithMend("write address: http://shop-pc/manual/"))
	s.Address = ""
}
