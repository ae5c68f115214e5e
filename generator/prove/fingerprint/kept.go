package fingerprint

import (
	"crypto/sha256"
	"encoding/hex"
	"slices"
	"strings"

	"baybinder/generator/model"
)

const (
	fenceStart = "\n```fingerprint\n"
	fenceEnd   = "```\n"
	wordsStart = "\n```words\n"
)

// Keep is what is kept of an issued revision: the words as they were, below
// them the form, so that the next revision can be laid beside it, and the first
// half of the SHA-256 of the words, so that an edit comes out. Behind it stand
// the fingerprints in earlier forms, by which records of the time before an
// upgrade know it.
func Keep(words string, f Form, older ...string) string {
	if !strings.HasSuffix(words, "\n") {
		words += "\n"
	}
	return words + fenceStart + f.Text() + fenceEnd + wordsStart + strings.Join(append([]string{wordsPrint(words)}, older...), "\n") + "\n" + fenceEnd
}

// Older are the fingerprints of a procedure in the earlier forms.
func (b *Cache) Older(p *model.Procedure) []string { return []string{b.print(sheet{p, firstForm})} }

// Has says whether a revision is of a fingerprint: its own, or that of the same
// words in an earlier form.
func Has(r *model.Revision, print string) bool {
	if r.Fingerprint == print {
		return true
	}
	if !Known(print) || r.Kept == nil {
		return false
	}
	_, after, _ := cutLast(r.Kept.Text, wordsStart)
	return slices.Contains(strings.Split(after, "\n"), print)
}

func wordsPrint(words string) string {
	sum := sha256.Sum256([]byte(words))
	return hex.EncodeToString(sum[:16])
}

// Intact says whether what was kept of a revision is as it was issued: the form
// and the words.
func Intact(r *model.Revision) bool {
	if _, ok := Kept(r); !ok {
		return false
	}
	words, after, _ := cutLast(r.Kept.Text, fenceStart)
	_, print, noted := cutLast(after, wordsStart)
	print, _, closed := strings.Cut(print, "\n"+fenceEnd)
	print, _, _ = strings.Cut(print, "\n") // fingerprints in earlier forms stand behind it
	return noted && closed && print == wordsPrint(words)
}

func cutLast(text, mark string) (before, after string, found bool) {
	i := strings.LastIndex(text, mark)
	if i < 0 {
		return text, "", false
	}
	return text[:i], text[i+len(mark):], true
}

// Kept is the form of an issued revision; not ok where its words were not kept,
// or are not the ones that its fingerprint was taken of.
func Kept(r *model.Revision) (f Form, ok bool) {
	if r.Kept == nil {
		return nil, false
	}
	_, after, found := cutLast(r.Kept.Text, fenceStart)
	if !found {
		return nil, false
	}
	text, _, closed := strings.Cut(after, fenceEnd)
	f = Parse(text)
	return f, closed && f.Print() == r.Fingerprint
}

// Last is the last issued revision of a procedure, or nil.
func Last(m *model.Manual, p *model.Procedure) *model.Revision {
	for i := range slices.Backward(m.Revisions) {
		if m.Revisions[i].Procedure.To == p {
			return &m.Revisions[i]
		}
	}
	return nil
}

// LastRendition is the last issued revision of a translation, or nil.
func LastRendition(m *model.Manual, text *model.Procedure) *model.Revision {
	for i := range slices.Backward(m.Renditions) {
		if r := &m.Renditions[i]; r.Procedure.To != nil && r.Procedure.To.ID == text.ID && strings.EqualFold(r.Language, text.Language) {
			return r
		}
	}
	return nil
}

// Unissued says whether a procedure's own matter is another than it was at a
// revision. Where only what it performs has moved, that is the callee's change
// and not its own. A fingerprint of a form that is not known says nothing.
func (b *Cache) Unissued(p *model.Procedure, r *model.Revision) bool {
	if r.Fingerprint != "" && !Known(r.Fingerprint) || r.Fingerprint == b.Like(p, r.Fingerprint) {
		return false
	}
	was, ok := Kept(r)
	return !ok || was.Own().Text() != b.Beside(p, was).Own().Text() || !was.sameCallees(p)
}
