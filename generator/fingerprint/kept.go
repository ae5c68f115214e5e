package fingerprint

import (
	"strings"

	"baybinder/generator/manual"
)

const (
	fenceStart = "\n```fingerprint\n"
	fenceEnd   = "```\n"
)

// Keep is what is kept of an issued revision: the words as they were, and below
// them the form, so that the next revision can be laid beside it.
func Keep(words string, f Form) string {
	if !strings.HasSuffix(words, "\n") {
		words += "\n"
	}
	return words + fenceStart + f.Text() + fenceEnd
}

// Kept is the form of an issued revision; not ok where its words were not kept,
// or are not the ones that its fingerprint was taken of.
func Kept(r *manual.Revision) (f Form, ok bool) {
	if r.Kept == nil {
		return nil, false
	}
	i := strings.LastIndex(r.Kept.Text, fenceStart)
	if i < 0 {
		return nil, false
	}
	text, _, closed := strings.Cut(r.Kept.Text[i+len(fenceStart):], fenceEnd)
	f = Parse(text)
	return f, closed && f.Print() == r.Fingerprint
}

// Last is the last issued revision of a procedure, or nil.
func Last(m *manual.Manual, p *manual.Procedure) *manual.Revision {
	for i := len(m.Revisions) - 1; i >= 0; i-- {
		if m.Revisions[i].Procedure.To == p {
			return &m.Revisions[i]
		}
	}
	return nil
}

// Unissued says whether a procedure's own matter is another than it was at a
// revision. Where only what it performs has moved, that is the callee's change
// and not its own. A fingerprint of another form says nothing.
func (b *Book) Unissued(p *manual.Procedure, r *manual.Revision) bool {
	now := b.Form(p)
	if r.Fingerprint == now.Print() || r.Fingerprint != "" && !strings.HasPrefix(r.Fingerprint, Version) {
		return false
	}
	was, ok := Kept(r)
	return !ok || was.Own().Text() != now.Own().Text()
}
