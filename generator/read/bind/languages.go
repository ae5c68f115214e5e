package bind

import (
	"path"
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/language"
	"baybinder/generator/model"
	"baybinder/generator/read/decode"
	"baybinder/generator/read/syntax"
)

// LanguageUnknown is told at the field that names it.
var LanguageUnknown = finding.Rule{
	Code:  "language-unknown",
	Level: finding.Advice,
	Title: "A language for which the program has no words",
	Why:   "What the program itself puts on a page (Before you start, Fetch, Wait) stands there in another language, and what it understands of texts it cannot look for.",
	Mend:  "The manual's own texts stand as they are written. The pages mark the borrowed words with their language, so that a screen reader speaks them right. A language is added to the program as one folder.",
}

// shopLanguages writes the shop's tags the one way in which files and pages
// have them, and tells of those that the program has no words for.
func (b *binder) shopLanguages(s *model.Shop, node *syntax.Node) {
	if n := node.Get("language"); n != nil && s.Language != "" {
		if tag := b.tag("language", s.Language, n.At); tag != "" {
			s.Language = tag
		} else {
			s.Language = language.Default().Code
		}
	}
	var also []string
	for i, text := range s.Also {
		tag := b.tag("also", text, tagAt(node.Get("also"), i))
		if tag != "" && tag != s.Language && !slices.Contains(also, tag) {
			also = append(also, tag)
			b.alsoAt[tag] = tagAt(node.Get("also"), i)
		}
	}
	s.Also = also
}

// relatedTag is the shop's tag that is of the same language as one that it does not
// have, of another region or of none: es-MX beside files in es; "" where there is
// none.
func (b *binder) relatedTag(tag string) string {
	of, _, _ := strings.Cut(tag, "-")
	for _, also := range b.m.Shop.Also {
		if language, _, _ := strings.Cut(also, "-"); language == of {
			return also
		}
	}
	return ""
}

// otherRegion tells once, where the shop names its languages, that files are written
// in another tag of one of them.
func (b *binder) otherRegion(tag, also string) {
	if b.otherTags[tag] {
		return
	}
	b.otherTags[tag] = true
	mend := finding.Say("write %s, or %s in the names of the files", tag, also)
	if slices.ContainsFunc(b.tree.Files, func(f *position.File) bool { _, own := stem(f.Path); return own == also }) {
		mend = finding.Say("add %s beside it, or write %s in the names of the files", tag, also)
	}
	b.add(UnknownReference.At(b.alsoAt[also], "the shop has the language %s, and there are files in %s", also, tag).WithMend("%s", mend))
}

// tagAt is where the i-th tag of a list stands.
func tagAt(n *syntax.Node, i int) position.Pos {
	if n == nil || i >= len(n.Items) {
		return n.At
	}
	return n.Items[i].At
}

// tag is a tag in its one form; "" for what is none.
func (b *binder) tag(field, text string, at position.Pos) string {
	tag, ok := language.Tag(text)
	if !ok {
		b.add(decode.WrongType.At(at, "%s: %q is no language tag", field, text).WithMend("write a tag of BCP 47, such as en, es or es-MX"))
		return ""
	}
	if language.Known(tag) == nil {
		near := language.Of(tag)
		b.add(LanguageUnknown.At(at, "the program has no words in %s; its pages borrow those of %s", tag, near.Several.Name).
			WithMend("it has them in: %s", strings.Join(codes(), ", ")))
	}
	return tag
}

func codes() []string {
	var out []string
	for _, l := range language.All() {
		out = append(out, l.Code)
	}
	return out
}

// stem is a file's name without its ending, and the language where there is
// one, in its one form: "pump", "es-MX" of pump.es-mx.md.
func stem(name string) (id, tag string) {
	id, tag = parted(name)
	if one, ok := language.Tag(tag); ok {
		return id, one
	}
	return id, tag
}

// parted is a file's name at its last dot, as it is written.
func parted(name string) (id, tag string) {
	id = strings.TrimSuffix(path.Base(name), path.Ext(name))
	if i := strings.LastIndexByte(id, '.'); i > 0 {
		return id[:i], id[i+1:]
	}
	return id, ""
}

// originalOf is the file that a translated one goes with: tools.yaml of
// tools.es.yaml.
func originalOf(name string) string {
	id, _ := parted(name)
	return path.Join(path.Dir(name), id) + path.Ext(name)
}
